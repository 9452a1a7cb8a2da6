// Which part of the deal each sum is.
//
// A sum said without any word for it ("Two hundred and eighteen thousand.") is what fits: all sums
// of the notes are weighed together (fact_deal.h), each by the words beside it.
#include <algorithm>
#include <array>
#include <cstdlib>

#include "core/intake/notes/fact_deal.h"
#include "core/intake/notes/fact_told.h"

namespace ledgerboard::intake {

namespace {

using Of = LooseFigure::Of;

class SumSettler {
    static constexpr std::array<std::string_view, kDealParts> kParts = {"purchase", "budget",
                                                                        "resale"};
    static constexpr double kNeverSuits = -1000.0;

  public:
    explicit SumSettler(ToldFacts& facts) : facts_(facts) {}

    void run() {
        weighSums();
        closerSum();
        weighProfit();
        takeOtherOpinions();
        takeOtherReadings();
        dropFarOpinions();
    }

  private:
    void addSum(const std::string& name, const LooseFigure& figure) {
        facts_.add(name, figure, model::Money::fromMinor(figure.value / 10).toString());
    }

    void rename(ToldFact& told, const std::string& name) {
        constexpr int kSure = 75;
        told.fact.name = name;
        told.fact.source.sure = std::min(told.fact.source.sure, kSure);
    }

    // Something else was told of it as well.
    void contest(const std::string& name) {
        constexpr int kSure = 84;
        for (ToldFact& told : facts_.told) {
            if (told.fact.name == name) {
                told.fact.source.sure = std::min(told.fact.source.sure, kSure);
            }
        }
    }

    // Whether a sum for something else is told near by.
    [[nodiscard]] bool hasCompany(const ToldFact& told) const {
        constexpr int kNear = 2;
        return std::any_of(facts_.told.begin(), facts_.told.end(), [&](const ToldFact& other) {
            return other.sum > 0 && other.fact.name != told.fact.name &&
                   std::abs(other.at - told.at) <= kNear;
        });
    }

    [[nodiscard]] bool isLooseSum(const LooseFigure& figure) const {
        return figure.of == Of::Sum && facts_.isAmongFacts(figure) &&
               !(figure.round && facts_.isYear(figure));
    }

    // The sums told, each once, with how well it suits each part of the deal.
    [[nodiscard]] std::vector<DealSum> sumsToWeigh() const {
        constexpr std::size_t kMostSums = 24;
        constexpr double kOrder = 0.01;
        std::vector<DealSum> sums;
        const auto suit = [&](std::int64_t value, std::size_t part, double how) {
            auto known = std::find_if(sums.begin(), sums.end(),
                                      [&](const DealSum& sum) { return sum.value == value; });
            if (known == sums.end()) {
                if (how <= kNeverSuits || sums.size() >= kMostSums) {
                    return;
                }
                known = sums.insert(sums.end(), DealSum{value, {}});
                known->suits.fill(kNeverSuits);
            }
            // Of two that suit alike the one told first.
            const double later = kOrder * static_cast<double>(known - sums.begin());
            known->suits[part] = std::max(known->suits[part], how - later);
        };
        const std::int64_t most = mostToldOfDeal();
        for (const ToldFact& told : facts_.told) {
            for (std::size_t part = 0; told.sum > 0 && part < kDealParts; ++part) {
                suit(told.sum, part, suitsTold(told, part, most));
            }
        }
        for (const LooseFigure& figure : facts_.loose) {
            for (std::size_t part = 0; figure.of == Of::Sum && part < kDealParts; ++part) {
                suit(figure.value, part, suitsUntold(figure, part));
            }
        }
        return sums;
    }

    // The greatest sum told of the parts.
    [[nodiscard]] std::int64_t mostToldOfDeal() const {
        std::int64_t most = 0;
        for (const ToldFact& told : facts_.told) {
            most = told.fact.name == "profit" ? most : std::max(most, told.sum);
        }
        return most;
    }

    // How well a told sum suits a part: the one the words beside it say, or another.
    [[nodiscard]] double suitsTold(const ToldFact& told, std::size_t part,
                                   std::int64_t most) const {
        constexpr int kWeakly = 79;
        constexpr double kOutright = 4.0;
        constexpr double kLikely = 3.0;
        constexpr double kCompany = 0.4;
        constexpr double kOfAnother = 0.6;
        constexpr double kOfProfit = -1.0;
        if (told.fact.name == kParts[part]) {
            return (told.fact.source.sure > kWeakly ? kOutright : kLikely) +
                   (hasCompany(told) ? kCompany : 0.0);
        }
        // What is left over is less than half of what is spoken of.
        const bool profit = told.fact.name == "profit" && (most == 0 || told.sum < most / 2);
        return profit ? kOfProfit : kOfAnother;
    }

    // How well a sum without a word for it suits a part of the deal: by itself it is the price.
    [[nodiscard]] double suitsUntold(const LooseFigure& figure, std::size_t part) const {
        constexpr std::array<double, kDealParts> kBare = {1.4, 1.0, 0.8};
        constexpr std::array<std::int64_t, kDealParts> kLeast = {10, 4, 30};
        constexpr std::array<double, kDealParts> kRound = {0.3, 0.5, kNeverSuits};
        constexpr double kFar = 0.8;
        const bool fits = figure.value >= kLeast[part] * kThousandDollars;
        if (isLooseSum(figure) && fits && !(figure.round && !hasPlainSum())) {
            return figure.round ? kRound[part] : kBare[part];
        }
        // "The papers came back, £215,000 and the bottom field with it": wherever it is told.
        const bool plain = figure.written && figure.value >= 40 * kThousandDollars;
        return plain && fits ? kBare[part] - kFar : kNeverSuits;
    }

    [[nodiscard]] bool hasPlainSum() const {
        return std::any_of(facts_.told.begin(), facts_.told.end(),
                           [](const ToldFact& told) { return told.sum > 0; }) ||
               std::any_of(
                   facts_.loose.begin(), facts_.loose.end(),
                   [&](const LooseFigure& figure) { return !figure.round && isLooseSum(figure); });
    }

    // The part of the deal a told sum is: that whose sum it is, else its own where it is another
    // reading of it; "it'll go for 139 to 145": else that of the sum it was told with.
    [[nodiscard]] static std::size_t partOf(const ToldFact& told, const Deal& deal,
                                            const std::vector<ToldFact>& before) {
        std::size_t own = kDealParts;
        std::size_t likely = kDealParts;
        for (std::size_t part = 0; part < kDealParts; ++part) {
            if (told.sum == deal[part]) {
                return part;
            }
            const std::int64_t share = percentOf(told.sum, deal[part]);
            const auto toldWith = [&](const ToldFact& other) {
                return other.sum == deal[part] && other.at == told.at;
            };
            own = told.fact.name == kParts[part] && within(share, 70, 140) ? part : own;
            likely = part != 0 && within(share, 85, 117) &&
                             std::any_of(before.begin(), before.end(), toldWith)
                         ? part
                         : likely;
        }
        return own < kDealParts ? own : likely;
    }

    // Each sum becomes the part of the deal that it suits best beside the others; what contradicts
    // those is none.
    void weighSums() {
        const Deal deal = weighDeal(sumsToWeigh());
        const std::vector<ToldFact> before = facts_.told;
        for (ToldFact& told : facts_.told) {
            // "368 + 89 = 457": all of it together is no price.
            if (deal[0] > 0 && deal[1] > 0 && told.sum == deal[0] + deal[1]) {
                told.fact.name.clear();
                continue;
            }
            const std::string said = told.fact.name;
            const std::size_t part = told.sum > 0 ? partOf(told, deal, before) : kDealParts;
            const bool ofDeal = std::find(kParts.begin(), kParts.end(), said) != kParts.end();
            if (part < kDealParts && said != kParts[part]) {
                rename(told, std::string(kParts[part]));
            } else if (part == kDealParts && ofDeal) {
                contest(said);
                told.fact.name.clear();
            }
        }
        facts_.dropNameless();
        for (std::size_t part = 0; part < kDealParts; ++part) {
            for (const LooseFigure& figure : facts_.loose) {
                if (!facts_.has(kParts[part]) && figure.of == Of::Sum &&
                    figure.value == deal[part]) {
                    addSum(std::string(kParts[part]), figure);
                }
            }
        }
    }

    // "One eighty-four." "One eighty-four five.": said once more, to the hundred.
    void closerSum() {
        for (ToldFact& told : facts_.told) {
            for (const LooseFigure& figure : facts_.loose) {
                if (figure.of == Of::Sum && told.sum > 0 && within(figure.at - told.at, 0, 2) &&
                    figure.value > told.sum && figure.value < told.sum + kThousandDollars) {
                    told.sum = figure.value;
                    told.fact.value = model::Money::fromMinor(figure.value / 10).toString();
                }
            }
        }
    }

    // "He says it brings 399, and I'd be happy with 385": of the sale, and not left over.
    [[nodiscard]] bool isLikeWorth(std::int64_t sum) const {
        return std::any_of(facts_.told.begin(), facts_.told.end(), [&](const ToldFact& told) {
            return told.fact.name == "resale" && within(percentOf(sum, told.sum), 85, 117);
        });
    }

    // What is left over is less than the house, and no other price of it.
    void weighProfit() {
        const std::int64_t price = facts_.first("purchase");
        for (ToldFact& told : facts_.told) {
            if (told.fact.name == "profit" && isLikeWorth(told.sum)) {
                rename(told, "resale");
            } else if (told.fact.name == "profit" && price > 0 && told.sum > price) {
                rename(told, facts_.has("resale") ? "" : "resale");
            }
        }
        facts_.dropNameless();
    }

    // "I reckon two eighty-five." "Two seventy-five.": another opinion of what it will bring.
    void takeOtherOpinions() {
        const std::int64_t price = facts_.first("purchase");
        const std::vector<ToldFact> told = facts_.told;
        int priceAt = 0;
        for (const ToldFact& one : told) {
            priceAt = one.fact.name == "purchase" && priceAt == 0 ? one.at : priceAt;
        }
        for (const ToldFact& one : told) {
            for (const LooseFigure& figure : facts_.loose) {
                const bool besidePrice = figure.at == priceAt && one.at != priceAt;
                if (one.fact.name == "resale" && figure.of == Of::Sum && !besidePrice &&
                    std::abs(figure.at - one.at) <= 1 && percentOf(figure.value, price) > 103 &&
                    within(percentOf(figure.value, one.sum), 85, 117)) {
                    addSum("resale", figure);
                }
            }
        }
    }

    // "And we gave four-twelve." "Four-oh-nine.": what was paid is known best by who speaks last,
    // and so is what is said twice. "We've ninety to do it." "Eighty-five.": both.
    void takeOtherReadings() {
        constexpr int kNear = 2;
        constexpr int kFewWords = 2;
        const std::vector<ToldFact> told = facts_.told;
        for (const ToldFact& one : told) {
            const bool price = one.fact.name == "purchase";
            if (!price && one.fact.name != "budget") {
                continue;
            }
            for (const LooseFigure& figure : facts_.loose) {
                const bool other =
                    figure.of == Of::Sum && figure.words <= kFewWords &&
                    !(figure.round && facts_.isYear(figure)) &&
                    within(figure.at - one.at, 1, kNear) &&
                    within(percentOf(figure.value, one.sum), 85, 117) &&
                    std::none_of(facts_.told.begin(), facts_.told.end(),
                                 [&](const ToldFact& known) { return known.sum == figure.value; });
                if (!other) {
                    continue;
                }
                if (price && isSaidAfter(one.sum, figure.at)) {
                    continue;
                }
                addSum(one.fact.name, figure);
                if (price || isSaidAfter(figure.value, figure.at)) {
                    std::erase_if(facts_.told, [&](const ToldFact& known) {
                        return known.fact.name == one.fact.name && known.sum == one.sum;
                    });
                }
            }
        }
    }

    [[nodiscard]] bool isSaidAfter(std::int64_t sum, int at) const {
        constexpr int kNear = 3;
        return std::any_of(facts_.loose.begin(), facts_.loose.end(), [&](const LooseFigure& again) {
            return again.of == Of::Sum && again.value == sum && within(again.at - at, 1, kNear);
        });
    }

    // "The agent says 680 with a flat downstairs", said long after the deal was told.
    void dropFarOpinions() {
        constexpr int kFar = 4;
        const auto isAlone = [&](const ToldFact& one) {
            return std::none_of(facts_.told.begin(), facts_.told.end(), [&](const ToldFact& other) {
                return (other.fact.name != "resale" || other.sum != one.sum) &&
                       std::abs(other.at - one.at) <= kFar;
            });
        };
        std::vector<bool> alone;
        bool among = false;
        for (const ToldFact& told : facts_.told) {
            alone.push_back(told.fact.name == "resale" && isAlone(told));
            among = among || (told.fact.name == "resale" && !alone.back());
        }
        for (std::size_t i = facts_.told.size(); among && i-- > 0;) {
            if (alone[i]) {
                facts_.told.erase(facts_.told.begin() + static_cast<std::ptrdiff_t>(i));
            }
        }
    }

    ToldFacts& facts_;
};

}  // namespace

void settleSums(ToldFacts& facts) {
    SumSettler(facts).run();
}

}  // namespace ledgerboard::intake
