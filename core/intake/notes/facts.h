// What do the notes say of the deal: price, resale, budget, area, rooms, year, dates?
#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "core/intake/notes/draft.h"
#include "core/intake/notes/sentences.h"
#include "core/intake/notes/spots.h"

namespace ledgerboard::intake {

// A fact and how it was told.
struct ToldFact {
    DraftFact fact;
    std::int64_t sum = 0;  // of money, in thousandths; else 0
    int at = 0;            // the sentence that tells it, counted from 1
    bool asked = false;    // in a question
};

// A figure of the deal without a phrase that says what it is of.
struct LooseFigure {
    enum class Of : std::uint8_t { Sum, Date, Days, Year, LateYear, Area, Beds, AllBeds, Baths };
    Of of = Of::Sum;
    std::int64_t value = 0;  // thousandths; of a year the year, of days the days
    std::string text;        // of a date: ISO 8601
    int at = 0;
    int words = 99;        // that stand in its sentence beside the figures
    bool round = false;    // "forty": of money only among facts
    bool written = false;  // with the sign or the word of money: "£215,000", "ninety thousand"
    Source source;
};

// The facts, what the loose figures must be filled in and what contradicts the rest mended: a house
// is sold for more than is paid for it, and the work costs less than the house. `last`: the last
// sentence of the notes.
[[nodiscard]] std::vector<DraftFact> settledFacts(std::vector<ToldFact> told,
                                                  const std::vector<LooseFigure>& loose, int last);

class FactReader {
  public:
    // Takes in the next sentence. Returns true when it speaks of the deal and not of work.
    bool take(const Sentence& sentence, const Spots& spots);

    // The facts in the order of the notes; each reading of a fact once.
    [[nodiscard]] std::vector<DraftFact> facts() const {
        return settledFacts(told_, loose_, taken_);
    }

    // The year the house was built, 0 where the notes do not say.
    [[nodiscard]] int built() const;

  private:
    void add(const Sentence& sentence, const std::string& name, const std::string& value, int sure,
             std::int64_t sum = 0);
    void addLoose(const Sentence& sentence, LooseFigure::Of of, std::int64_t value,
                  const std::string& text = {}, int words = 99);
    void addLooseSum(const Sentence& sentence, const Spots& spots, const Amount& amount);
    bool takeMoney(const Sentence& sentence, const Spots& spots);
    [[nodiscard]] std::string moneyFact(const Sentence& sentence, const Spots& spots,
                                        const std::string& fact, double far, const Amount& amount,
                                        std::int64_t& value) const;
    bool takeArea(const Sentence& sentence, const Spots& spots);
    void tellArea(const Sentence& sentence, const Spots& spots, const Amount& amount, bool metres);
    void addLooseArea(const Sentence& sentence, const Spots& spots);
    [[nodiscard]] std::int64_t looseArea(const Sentence& sentence, const Amount& amount,
                                         bool saysArea) const;
    [[nodiscard]] int yearSaid(const Sentence& sentence, const Spots& spots,
                               const Amount& amount) const;
    bool takeOtherArea(const Sentence& sentence, const Spots& spots);
    [[nodiscard]] static std::int64_t mendedArea(const Sentence& sentence, const Amount& amount);
    bool takeFigures(const Sentence& sentence, const Spots& spots);
    [[nodiscard]] std::string strokeDate(const Sentence& sentence, std::size_t from) const;
    [[nodiscard]] static std::int64_t bathsWithParts(const Sentence& sentence, const Amount& baths);
    [[nodiscard]] static std::int64_t bathAndAHalf(const Sentence& sentence);
    [[nodiscard]] static std::int64_t sumOf(const Sentence& sentence);
    [[nodiscard]] static std::int64_t upAndDown(const Sentence& sentence, const Spots& spots);
    bool takeRooms(const Sentence& sentence, const Spots& spots);
    bool takeUncounted(const Sentence& sentence, const Spots& spots, const Amount* rooms);
    bool takeTwoCounts(const Sentence& sentence, const Spots& spots);
    bool takeLabelled(const Sentence& sentence, const Spots& spots);

    // What a sentence counts; nullptr for what it does not.
    struct RoomCounts {
        const Amount* beds = nullptr;
        const Amount* baths = nullptr;
        const Amount* rooms = nullptr;
    };

    [[nodiscard]] static RoomCounts countsOf(const Sentence& sentence, const Spots& spots);
    void addAllBedrooms(const Sentence& sentence, const Spots& spots, const Amount& beds);
    void addRooms(const Sentence& sentence, const Spots& spots, const RoomCounts& counts,
                  std::int64_t bathsSaid, bool twice);
    [[nodiscard]] static std::string roomFact(const Sentence& sentence);
    [[nodiscard]] static std::int64_t moreCounted(const Sentence& sentence, const Spots& spots,
                                                  const Amount& first, std::string_view stem);
    [[nodiscard]] static std::int64_t moreOf(const Sentence& sentence, std::size_t at);
    [[nodiscard]] static bool isPlainCount(const Sentence& sentence);
    [[nodiscard]] static bool saysOneBath(const Sentence& sentence);
    [[nodiscard]] static bool ofEachUnit(const Sentence& sentence);
    [[nodiscard]] static const Amount* countOf(const Sentence& sentence, const Spots& spots,
                                               std::size_t at);
    void takeOtherYear(const Sentence& sentence, const Spots& spots);
    void addLooseYear(const Sentence& sentence, const Spots& spots, const Amount& amount, int year);
    bool takeYear(const Sentence& sentence, const Spots& spots);
    bool takeTimes(const Sentence& sentence, const Spots& spots);
    [[nodiscard]] std::string dateAt(const Sentence& sentence, const Spots& spots, std::size_t at,
                                     bool ownYear) const;
    void addLooseDate(const Sentence& sentence, const Spots& spots);
    void noteDay(const Sentence& sentence, const Spots& spots);
    bool takeBegin(const Sentence& sentence, const Spots& spots);
    [[nodiscard]] bool has(const std::string& name) const;

    // Among the first sentences, or right beside what was told of the deal.
    [[nodiscard]] bool isEarly(int sentences) const {
        return taken_ <= sentences || lastDeal_ + 1 >= taken_;
    }

    std::vector<ToldFact> told_;
    std::vector<LooseFigure> loose_;
    int built_ = 0;
    std::int64_t purchase_ = 0;  // thousandths of a dollar; 0 until said
    std::string noted_;          // the day the notes are of, ISO 8601; empty until told
    int yearSaid_ = 0;       // a year of our day met in the notes: dates without a year are of it
    int taken_ = 0;          // sentences taken
    std::int64_t area_ = 0;  // as said last, in thousandths of its unit
    bool areaMetres_ = false;
    int areaAt_ = 0;
    int lastDeal_ = -9;  // the last sentence that spoke of the deal
    bool askedMarket_ = false;
    std::string asked_;      // the fact that the sentence before asked for
    std::string lastMoney_;  // the sum told last
    std::int64_t lastValue_ = 0;
};

}  // namespace ledgerboard::intake
