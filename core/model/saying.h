// What does core say to a person, so that a screen can say it in another language?
//
// An English sentence, or a part of one, with numbered places (%1 to %9) and what stands in each.
// text() is the English: what the command line prints and JSON holds. A client asks for the
// sentence in its own language and fills the places by its locale (core/qml/said.h). A sentence
// that is told one way of one thing and another of several ("1 item", "2 items") is two sentences.
// What keeps the English alone, as an error does, is known again there.
// Source: project decision. Core knows no language but English and no translation library; a
// sentence stands where it is said, not in a table far away. tests/ui/said_test.cpp asks that each
// has its Spanish with the same places.
#pragma once

#include <concepts>
#include <cstddef>
#include <cstdint>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "core/model/date.h"
#include "core/model/money.h"
#include "core/model/percent.h"
#include "core/model/result.h"

namespace ledgerboard::model {

class Saying;

// What stands in a place of a sentence.
struct Place {
    enum class Is {
        Words,    // of the book or of who uses it: the same in every language
        Count,    // number: how many
        Money,    // number: minor units, told in whole units
        Cents,    // number: minor units, told to the cent
        Change,   // number: minor units, told in whole units with its sign
        Percent,  // number: basis points
        Day,      // number: days as of Date::days(), told without its year
        FullDay,  // the same, with its year
        Weekday,  // the same, by its name alone: "Thursday"
        Saying,   // saying.front(): itself something core says
    };
    Is is = Is::Words;
    std::string text;  // in English
    std::int64_t number = 0;
    std::vector<Saying> saying;
};

class Saying {
  public:
    // Nothing said.
    Saying() = default;

    // Requires: where there are places, every %N of `pattern` has its place. saying() is for
    // sentences of core; this is for a text met as it is, such as an error's message.
    explicit Saying(std::string pattern, std::vector<Place> places = {})
        : pattern_(std::move(pattern)), places_(std::move(places)) {}

    // "asked %1, not signed"
    [[nodiscard]] const std::string& pattern() const { return pattern_; }

    [[nodiscard]] const std::vector<Place>& places() const { return places_; }

    [[nodiscard]] bool isEmpty() const { return pattern_.empty(); }

    // In English: "asked 15 May, not signed".
    [[nodiscard]] std::string text() const { return filled(pattern_, englishOf(places_)); }

    // `pattern` with %1 replaced by the first of `parts` and so on; a number that has no part stays
    // as it is. What is put in is not looked at again.
    [[nodiscard]] static std::string filled(std::string_view pattern,
                                            const std::vector<std::string>& parts) {
        std::string out;
        for (std::size_t k = 0; k < pattern.size(); ++k) {
            const char next = pattern[k] == '%' && k + 1 < pattern.size() ? pattern[k + 1] : '0';
            const auto place = static_cast<std::size_t>(next - '1');
            if (next >= '1' && next <= '9' && place < parts.size()) {
                out += parts[place];
                ++k;
            } else {
                out += pattern[k];
            }
        }
        return out;
    }

    friend bool operator==(const Saying& a, const Saying& b) {
        return a.pattern_ == b.pattern_ && a.text() == b.text();
    }

  private:
    [[nodiscard]] static std::vector<std::string> englishOf(const std::vector<Place>& places) {
        std::vector<std::string> out;
        out.reserve(places.size());
        for (const Place& place : places) {
            out.push_back(place.text);
        }
        return out;
    }

    std::string pattern_;
    std::vector<Place> places_;
};

// What may stand in a place.
[[nodiscard]] inline Place placed(std::string words) {
    return {Place::Is::Words, std::move(words), 0, {}};
}

[[nodiscard]] inline Place placed(std::string_view words) {
    return placed(std::string(words));
}

[[nodiscard]] inline Place placed(const char* words) {
    return placed(std::string(words));
}

template <std::integral Count>
[[nodiscard]] Place placed(Count count) {
    return {Place::Is::Count, std::to_string(count), static_cast<std::int64_t>(count), {}};
}

// "1250.00"
[[nodiscard]] inline Place placed(Money money) {
    return {Place::Is::Cents, money.toString(), money.minor(), {}};
}

// "72.5", without the sign.
[[nodiscard]] inline Place placed(Percent percent) {
    return {Place::Is::Percent, percent.toString(), percent.basisPoints(), {}};
}

// "Fri 15 May"
[[nodiscard]] inline Place placed(Date date) {
    return {Place::Is::Day, date.toShortText(), date.days(), {}};
}

[[nodiscard]] inline Place placed(Saying saying) {
    Place place{Place::Is::Saying, saying.text(), 0, {}};
    place.saying.push_back(std::move(saying));
    return place;
}

[[nodiscard]] inline Place placed(Place place) {
    return place;
}

// A sentence of core. Requires: `pattern` is written out in this very call, so that it is found
// there for translating.
template <std::size_t N, class... What>
[[nodiscard]] Saying saying(const char (&pattern)[N], What&&... what) {
    std::vector<Place> places;
    places.reserve(sizeof...(what));
    (places.push_back(placed(std::forward<What>(what))), ...);
    return Saying(std::string(pattern, N - 1), std::move(places));
}

// Words of the book or of who uses it, that are the same in every language.
[[nodiscard]] inline Saying asWritten(std::string words) {
    return words.empty() ? Saying() : Saying("%1", {placed(std::move(words))});
}

// Errors in such sentences. An error holds its English alone; a screen knows the sentence again.
[[nodiscard]] inline Error cannotBeMet(const Saying& said) {
    return cannotBeMet(said.text());
}

[[nodiscard]] inline Error wrongUse(const Saying& said) {
    return wrongUse(said.text());
}

[[nodiscard]] inline Error damaged(const Saying& said) {
    return damaged(said.text());
}

// The same error with the place named before it: "Quantity: it can't be below 0".
[[nodiscard]] inline Error inPlace(const Saying& place, const Error& error) {
    return Error{error.code, saying("%1: %2", place, Saying(error.message)).text()};
}

}  // namespace ledgerboard::model
