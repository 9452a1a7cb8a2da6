// What do the notes say of the deal: price, resale, budget, area, rooms, year, dates?
#pragma once

#include <string>
#include <vector>

#include "core/intake/notes/draft.h"
#include "core/intake/notes/sentences.h"
#include "core/intake/notes/spots.h"

namespace ledgerboard::intake {

class FactReader {
  public:
    // Takes in the next sentence. Returns true when it speaks of the deal and not of work.
    bool take(const Sentence& sentence, const Spots& spots);

    // The facts in the order of the notes; each reading of a fact once.
    [[nodiscard]] std::vector<DraftFact> facts() const { return facts_; }

    // The year the house was built, 0 where the notes do not say.
    [[nodiscard]] int built() const { return built_; }

  private:
    void add(const Sentence& sentence, const std::string& name, const std::string& value, int sure);
    bool takeMoney(const Sentence& sentence, const Spots& spots);
    [[nodiscard]] std::string moneyFact(const Sentence& sentence, const Spots& spots,
                                        const std::string& fact, double far, const Amount& amount,
                                        std::int64_t& value) const;
    bool takeArea(const Sentence& sentence, const Spots& spots);
    [[nodiscard]] std::int64_t looseArea(const Sentence& sentence, const Amount& amount) const;
    [[nodiscard]] int yearSaid(const Sentence& sentence, const Spots& spots,
                               const Amount& amount) const;
    bool takeFigures(const Sentence& sentence);
    [[nodiscard]] static std::string strokeDate(const Sentence& sentence);
    [[nodiscard]] static std::int64_t bathsWithParts(const Sentence& sentence, const Amount& baths);
    [[nodiscard]] static std::int64_t bathAndAHalf(const Sentence& sentence);
    [[nodiscard]] static std::int64_t sumOf(const Sentence& sentence);
    bool takeRooms(const Sentence& sentence, const Spots& spots);
    bool takeLabelled(const Sentence& sentence, const Spots& spots);

    // What a sentence counts; nullptr for what it does not.
    struct RoomCounts {
        const Amount* beds = nullptr;
        const Amount* baths = nullptr;
        const Amount* rooms = nullptr;
    };

    [[nodiscard]] static RoomCounts countsOf(const Sentence& sentence, const Spots& spots);
    [[nodiscard]] static std::string roomFact(const Sentence& sentence);
    [[nodiscard]] static std::int64_t moreOf(const Sentence& sentence, std::size_t at);
    [[nodiscard]] static bool saysOneBath(const Sentence& sentence);
    [[nodiscard]] static bool ofEachUnit(const Sentence& sentence);
    [[nodiscard]] static const Amount* countOf(const Sentence& sentence, const Spots& spots,
                                               std::size_t at);
    bool takeYear(const Sentence& sentence, const Spots& spots);
    bool takeTimes(const Sentence& sentence, const Spots& spots);
    bool takeBegin(const Sentence& sentence, const Spots& spots);
    [[nodiscard]] bool has(const std::string& name) const;

    std::vector<DraftFact> facts_;
    int built_ = 0;
    std::int64_t purchase_ = 0;  // thousandths of a dollar; 0 until said
    int yearSaid_ = 0;   // a year of our day met in the notes: dates without a year are of it
    int taken_ = 0;      // sentences taken
    int lastDeal_ = -9;  // the last sentence that spoke of the deal
    bool askedMarket_ = false;
    std::string asked_;      // the fact that the sentence before asked for
    std::string lastMoney_;  // the sum told last
    std::int64_t lastValue_ = 0;
};

}  // namespace ledgerboard::intake
