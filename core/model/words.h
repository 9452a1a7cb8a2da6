// Which words may stand in a field that takes one of a few?
//
// The word is what is stored, sent and shown; the enum is for code. The first value of each enum is
// "not said". Adding a word at the end is safe; changing one would orphan what is stored.
#pragma once

#include <array>
#include <cstdint>
#include <optional>
#include <span>
#include <string_view>

namespace ledgerboard::model {

enum class Treatment : std::uint8_t {
    Unset,
    Keep,
    Inspect,
    Clean,
    Repair,
    Refinish,
    Replace,
    Remove,
    Add,
    Relocate
};
enum class Measure : std::uint8_t {
    Unset,
    NoneOrDone,
    HalfAndHalf,
    WeightedSteps,
    CountedUnits,
    JudgedPercent
};
enum class LinkKind : std::uint8_t {
    Unset,
    FinishToStart,
    StartToStart,
    FinishToFinish,
    StartToFinish
};
enum class ContractKind : std::uint8_t { Unset, Subcontract, Order };
enum class SpendKind : std::uint8_t { Unset, Invoice, Payment, Receipt, Fee, Refund };
enum class PaidFrom : std::uint8_t { Unset, Contingency, NewMoney };
enum class Stage : std::uint8_t { Unset, Before, During, After };
enum class Purpose : std::uint8_t { Unset, Site, Receipt, Paper };
enum class Verdict : std::uint8_t { Unset, SaidFixed, Accepted, NotRight };
enum class PaperKind : std::uint8_t {
    Unset,
    Permit,
    Insurance,
    Licence,
    TaxForm,
    LienWaiver,
    Warranty,
    Clearance
};
enum class Outcome : std::uint8_t { Unset, Passed, Corrections };
enum class InterestBasis : std::uint8_t { Unset, Actual360, Actual365, ActualActual, Thirty360 };
enum class ChargedOn : std::uint8_t { Unset, Drawn, Whole };
enum class Role : std::uint8_t { Unset, Owner, CrewLead, Viewer };
enum class Language : std::uint8_t { Unset, English, Spanish };

// The words of an enum, in its order; element 0 is empty.
template <class E>
[[nodiscard]] constexpr std::span<const std::string_view> wordsOf();

#define LEDGERBOARD_WORDS(E)                                                 \
    template <>                                                              \
    [[nodiscard]] constexpr std::span<const std::string_view> wordsOf<E>() { \
        return words_detail::k##E;                                           \
    }

namespace words_detail {
inline constexpr std::array<std::string_view, 10> kTreatment = {
    "", "keep", "inspect", "clean", "repair", "refinish", "replace", "remove", "add", "relocate"};
inline constexpr std::array<std::string_view, 6> kMeasure = {
    "", "none or done", "half and half", "weighted steps", "counted units", "judged percent"};
inline constexpr std::array<std::string_view, 5> kLinkKind = {
    "", "finish to start", "start to start", "finish to finish", "start to finish"};
inline constexpr std::array<std::string_view, 3> kContractKind = {"", "subcontract", "order"};
inline constexpr std::array<std::string_view, 6> kSpendKind = {"",        "invoice", "payment",
                                                               "receipt", "fee",     "refund"};
inline constexpr std::array<std::string_view, 3> kPaidFrom = {"", "contingency", "new money"};
inline constexpr std::array<std::string_view, 4> kStage = {"", "before", "during", "after"};
inline constexpr std::array<std::string_view, 4> kPurpose = {"", "site", "receipt", "paper"};
inline constexpr std::array<std::string_view, 4> kVerdict = {"", "said fixed", "accepted",
                                                             "not right"};
inline constexpr std::array<std::string_view, 8> kPaperKind = {
    "", "permit", "insurance", "licence", "tax form", "lien waiver", "warranty", "clearance"};
inline constexpr std::array<std::string_view, 3> kOutcome = {"", "passed", "corrections"};
inline constexpr std::array<std::string_view, 5> kInterestBasis = {"", "actual/360", "actual/365",
                                                                   "actual/actual", "30/360"};
inline constexpr std::array<std::string_view, 3> kChargedOn = {"", "drawn", "whole"};
inline constexpr std::array<std::string_view, 4> kRole = {"", "owner", "crew lead", "viewer"};
inline constexpr std::array<std::string_view, 3> kLanguage = {"", "en", "es"};
}  // namespace words_detail

LEDGERBOARD_WORDS(Treatment)
LEDGERBOARD_WORDS(Measure)
LEDGERBOARD_WORDS(LinkKind)
LEDGERBOARD_WORDS(ContractKind)
LEDGERBOARD_WORDS(SpendKind)
LEDGERBOARD_WORDS(PaidFrom)
LEDGERBOARD_WORDS(Stage)
LEDGERBOARD_WORDS(Purpose)
LEDGERBOARD_WORDS(Verdict)
LEDGERBOARD_WORDS(PaperKind)
LEDGERBOARD_WORDS(Outcome)
LEDGERBOARD_WORDS(InterestBasis)
LEDGERBOARD_WORDS(ChargedOn)
LEDGERBOARD_WORDS(Role)
LEDGERBOARD_WORDS(Language)
#undef LEDGERBOARD_WORDS

// The word of a value; empty for "not said".
template <class E>
[[nodiscard]] constexpr std::string_view wordOf(E value) {
    return wordsOf<E>()[static_cast<std::size_t>(value)];
}

// The value of a word as stored. Empty where this version does not know the word.
template <class E>
[[nodiscard]] constexpr std::optional<E> fromWord(std::string_view word) {
    const auto words = wordsOf<E>();
    for (std::size_t k = 0; k < words.size(); ++k) {
        if (words[k] == word) {
            return static_cast<E>(k);
        }
    }
    return std::nullopt;
}

}  // namespace ledgerboard::model
