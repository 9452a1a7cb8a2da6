// What the facts of the deal say of one another.
//
// A sum said without any word for it ("Two hundred and eighteen thousand.") is what fits: the house
// is sold for more than is paid for it, and the work costs less than the house. The shares are a
// project decision: wide enough for a ruin and for a house that needs paint.
#include <algorithm>
#include <string_view>

#include "core/intake/notes/facts.h"

namespace ledgerboard::intake {

namespace {

using Of = LooseFigure::Of;

constexpr std::int64_t kThousand = 1'000'000;  // thousandths of a dollar

// `value` as a share of `whole` in percent; 0 where there is no whole.
std::int64_t percentOf(std::int64_t value, std::int64_t whole) {
    return whole <= 0 ? 0 : value / 1000 * 100 / (whole / 1000 == 0 ? 1 : whole / 1000);
}

bool within(std::int64_t value, std::int64_t low, std::int64_t high) {
    return value >= low && value <= high;
}

class Settler {
    // Words beside a figure in a sentence that names things or work.
    static constexpr int kMany = 99;

  public:
    Settler(std::vector<ToldFact> told, const std::vector<LooseFigure>& loose, int last)
        : told_(std::move(told)), loose_(loose), last_(last) {}

    std::vector<DraftFact> run() {
        fillShortYear(true);
        keepOnePrice();
        if (first("purchase") == 0 && first("budget") > 0) {
            fillPrice();
        }
        if (first("purchase") == 0) {
            takePriceFromOthers();
        }
        if (first("purchase") == 0) {
            fillPrice();
        }
        if (first("purchase") == 0) {
            fillPlainPrice();
        }
        closerSum();
        weighAgainstPrice();
        if (first("budget") == 0) {
            fillWork();
        }
        fillWorth();
        if (first("budget") == 0) {
            fillWork();
        }
        dropFarOpinions();
        fillDays();
        fillBegin();
        fillYear(kMany - 1);
        fillLateYear();
        fillYear(kMany);
        fillShortYear(false);
        fillOther("area_sqft", Of::Area);
        fillOther("bedrooms", Of::Beds);
        fillOther("baths", Of::Baths);
        std::vector<DraftFact> facts;
        facts.reserve(told_.size());
        for (ToldFact& told : told_) {
            facts.push_back(std::move(told.fact));
        }
        return facts;
    }

  private:
    // The sum first told for that fact; 0 where none was.
    [[nodiscard]] std::int64_t first(std::string_view name) const {
        for (const ToldFact& told : told_) {
            if (told.fact.name == name) {
                return told.sum;
            }
        }
        return 0;
    }

    [[nodiscard]] bool has(std::string_view name) const {
        return std::any_of(told_.begin(), told_.end(),
                           [&](const ToldFact& told) { return told.fact.name == name; });
    }

    // Sentences to the nearest fact; many where there is none.
    [[nodiscard]] int farFromFacts(int at) const {
        int far = 1000;
        for (const ToldFact& told : told_) {
            far = std::min(far, std::abs(told.at - at));
        }
        return far;
    }

    void add(const std::string& name, const LooseFigure& figure, const std::string& value) {
        const bool known = std::any_of(told_.begin(), told_.end(), [&](const ToldFact& told) {
            return told.fact.name == name && told.fact.value == value;
        });
        if (!known) {
            told_.push_back({{name, value, figure.source},
                             name == "built" || figure.of != Of::Sum ? 0 : figure.value,
                             figure.at});
        }
    }

    void addSum(const std::string& name, const LooseFigure& figure) {
        add(name, figure, model::Money::fromMinor(figure.value / 10).toString());
    }

    void rename(ToldFact& told, const std::string& name) {
        constexpr int kSure = 75;
        told.fact.name = name;
        told.fact.source.sure = std::min(told.fact.source.sure, kSure);
    }

    // Whether the figure is told among the facts, or where the notes close, with hardly a word.
    [[nodiscard]] bool isAmongFacts(const LooseFigure& figure) const {
        constexpr int kNear = 2;
        constexpr int kClosing = 6;
        constexpr int kMostWords = 7;
        const bool closes = figure.words <= kMostWords && figure.at + kClosing > last_ &&
                            (figure.of == Of::Sum || hasCompany(figure));
        return closes || farFromFacts(figure.at) <= (figure.round ? 1 : kNear);
    }

    // Whether another figure is told right beside it: "1991." "612 is the number."
    [[nodiscard]] bool hasCompany(const LooseFigure& figure) const {
        return std::any_of(loose_.begin(), loose_.end(), [&](const LooseFigure& other) {
            return &other != &figure && other.value != figure.value &&
                   std::abs(other.at - figure.at) <= 1;
        });
    }

    [[nodiscard]] bool isLooseSum(const LooseFigure& figure) const {
        return figure.of == Of::Sum && isAmongFacts(figure) && !(figure.round && isYear(figure));
    }

    // "Eighty three", of a house of 1983.
    [[nodiscard]] bool isYear(const LooseFigure& figure) const {
        const std::string two = std::to_string(figure.value / kThousand);
        return std::any_of(told_.begin(), told_.end(), [&](const ToldFact& told) {
            return told.fact.name == "built" && told.fact.value.ends_with(two);
        });
    }

    // Of two quite different prices the one told most surely is the house's own, then the first.
    void keepOnePrice() {
        std::int64_t price = 0;
        int sure = 0;
        for (const ToldFact& told : told_) {
            if (told.fact.name == "purchase" && told.fact.source.sure > sure) {
                price = told.sum;
                sure = told.fact.source.sure;
            }
        }
        std::erase_if(told_, [&](const ToldFact& told) {
            return told.fact.name == "purchase" && !within(percentOf(told.sum, price), 70, 140);
        });
    }

    // No price was said, but a sum too big for the work or for what is left over.
    void takePriceFromOthers() {
        std::int64_t most = 0;
        for (const ToldFact& told : told_) {
            most = std::max(most, told.sum);
        }
        for (const LooseFigure& figure : loose_) {
            most = isLooseSum(figure) ? std::max(most, figure.value) : most;
        }
        for (ToldFact& told : told_) {
            const bool other = told.fact.name == "budget" || told.fact.name == "profit";
            if (other && told.sum >= 20 * kThousand && within(percentOf(told.sum, most), 38, 97)) {
                rename(told, "purchase");
                return;
            }
        }
        const std::int64_t worth = first("resale");
        bool below = false;
        bool above = false;
        for (const LooseFigure& figure : loose_) {
            const std::int64_t share = percentOf(figure.value, worth);
            below = below || (isLooseSum(figure) && within(share, 25, 96));
            above = above || (isLooseSum(figure) && within(share, 108, 250));
        }
        ToldFact* least = nullptr;
        for (ToldFact& told : told_) {
            if (told.fact.name == "resale") {
                above = above || percentOf(told.sum, worth) >= 125;
                least = least == nullptr || told.sum < least->sum ? &told : least;
            }
        }
        if (least != nullptr && above && !below) {
            rename(*least, "purchase");
        }
    }

    // A round figure ("eighty three") may be a year as well: it is a price only beside other sums,
    // and for want of a plainer one.
    void fillPrice() {
        const std::int64_t worth = first("resale");
        const std::int64_t work = first("budget");
        for (const bool round : {false, true}) {
            for (const LooseFigure& figure : loose_) {
                const bool fits = (worth == 0 || within(percentOf(figure.value, worth), 25, 97)) &&
                                  (work == 0 || figure.value > work / 10 * 11);
                if (figure.round == round && isLooseSum(figure) && fits &&
                    figure.value >= 20 * kThousand && (!round || worth + work > 0)) {
                    addSum("purchase", figure);
                    return;
                }
            }
        }
    }

    // "The papers came back, £215,000 and the bottom field with it": a sum that is written out and
    // of no work, wherever it is told.
    void fillPlainPrice() {
        const std::int64_t worth = first("resale");
        const std::int64_t work = first("budget");
        for (const LooseFigure& figure : loose_) {
            const bool fits = (worth == 0 || within(percentOf(figure.value, worth), 25, 97)) &&
                              figure.value > work / 10 * 11;
            if (figure.of == Of::Sum && figure.written && fits && figure.value >= 40 * kThousand) {
                addSum("purchase", figure);
                return;
            }
        }
    }

    // "One eighty-four." "One eighty-four five.": said once more, to the hundred.
    void closerSum() {
        for (ToldFact& told : told_) {
            for (const LooseFigure& figure : loose_) {
                if (figure.of == Of::Sum && told.sum > 0 && within(figure.at - told.at, 0, 2) &&
                    figure.value > told.sum && figure.value < told.sum + kThousand) {
                    told.sum = figure.value;
                    told.fact.value = model::Money::fromMinor(figure.value / 10).toString();
                }
            }
        }
    }

    // "He says it brings 399, and I'd be happy with 385": of the sale, and not left over.
    [[nodiscard]] bool isLikeWorth(std::int64_t sum) const {
        return std::any_of(told_.begin(), told_.end(), [&](const ToldFact& told) {
            return told.fact.name == "resale" && within(percentOf(sum, told.sum), 85, 117);
        });
    }

    // "List 275, paid 254, sells 399": beside the last the first is no price of the finished house.
    [[nodiscard]] bool hasMuchMoreWorth(std::int64_t sum) const {
        return std::any_of(told_.begin(), told_.end(), [&](const ToldFact& told) {
            return told.fact.name == "resale" && percentOf(sum, told.sum) < 75;
        });
    }

    // What contradicts the price is another fact, or none.
    void weighAgainstPrice() {
        const std::int64_t price = first("purchase");
        if (price == 0) {
            return;
        }
        const bool work = has("budget");
        const bool worth = has("resale");
        for (ToldFact& told : told_) {
            const std::int64_t share = percentOf(told.sum, price);
            if (told.fact.name == "resale" && (told.sum == price || share > 500)) {
                rename(told, "");
            } else if (told.fact.name == "resale" &&
                       (share < 60 || (share < 115 && hasMuchMoreWorth(told.sum)))) {
                rename(told, work || share > 95 ? "" : "budget");
            } else if (told.fact.name == "budget" && share > 95 &&
                       told.sum > first("resale") - price) {
                // "We gave 61 for it. And 60 to spend.": for a ruin.
                const bool ruin =
                    told.fact.source.sure > 80 && !worth && share <= 160 && price < 120 * kThousand;
                rename(told, ruin ? "budget" : worth || share < 105 ? "" : "resale");
            } else if (told.fact.name == "profit" && isLikeWorth(told.sum)) {
                rename(told, "resale");
            } else if (told.fact.name == "profit" && share > 100) {
                rename(told, worth ? "" : "resale");
            }
        }
        std::erase_if(told_, [](const ToldFact& told) { return told.fact.name.empty(); });
    }

    void fillWork() {
        const std::int64_t price = first("purchase");
        const std::int64_t left = first("resale") - price;
        for (const LooseFigure& figure : loose_) {
            const bool fits = price > 0 && within(percentOf(figure.value, price), 4, 80) &&
                              (left <= 0 || figure.value <= left / 10 * 13);
            if (isLooseSum(figure) && fits) {
                addSum("budget", figure);
                return;
            }
        }
    }

    void fillWorth() {
        const std::int64_t price = first("purchase");
        if (price == 0) {
            return;
        }
        if (!has("resale")) {
            for (const LooseFigure& figure : loose_) {
                if (isLooseSum(figure) && within(percentOf(figure.value, price), 106, 300)) {
                    addSum("resale", figure);
                    break;
                }
            }
        }
        // "I reckon two eighty-five." "Two seventy-five.": another opinion beside it.
        const std::vector<ToldFact> told = told_;
        int priceAt = 0;
        for (const ToldFact& one : told) {
            priceAt = one.fact.name == "purchase" && priceAt == 0 ? one.at : priceAt;
        }
        for (const ToldFact& one : told) {
            for (const LooseFigure& figure : loose_) {
                const bool besidePrice = figure.at == priceAt && one.at != priceAt;
                if (one.fact.name == "resale" && figure.of == Of::Sum && !besidePrice &&
                    std::abs(figure.at - one.at) <= 1 && percentOf(figure.value, price) > 103 &&
                    within(percentOf(figure.value, one.sum), 85, 117)) {
                    addSum("resale", figure);
                }
            }
        }
    }

    // "The agent says 680 with a flat downstairs", said long after the deal was told.
    void dropFarOpinions() {
        constexpr int kFar = 4;
        const auto isAlone = [&](const ToldFact& one) {
            return std::none_of(told_.begin(), told_.end(), [&](const ToldFact& other) {
                return (other.fact.name != "resale" || other.sum != one.sum) &&
                       std::abs(other.at - one.at) <= kFar;
            });
        };
        std::vector<bool> alone;
        bool among = false;
        for (const ToldFact& told : told_) {
            alone.push_back(told.fact.name == "resale" && isAlone(told));
            among = among || (told.fact.name == "resale" && !alone.back());
        }
        for (std::size_t i = told_.size(); among && i-- > 0;) {
            if (alone[i]) {
                told_.erase(told_.begin() + static_cast<std::ptrdiff_t>(i));
            }
        }
    }

    // How long the work takes, where only a span is said.
    void fillDays() {
        constexpr int kNear = 1;
        if (has("duration_days")) {
            return;
        }
        for (const LooseFigure& figure : loose_) {
            if (figure.of == Of::Days && farFromFacts(figure.at) <= kNear) {
                add("duration_days", figure, std::to_string(figure.value));
                return;
            }
        }
    }

    // A day later than that of the walk, said among the facts, is when work begins.
    void fillBegin() {
        constexpr int kNear = 2;
        if (has("begin")) {
            return;
        }
        std::string walked;
        for (const LooseFigure& figure : loose_) {
            if (figure.of != Of::Date) {
                continue;
            }
            const bool heads = figure.at <= 2 && walked.empty() && farFromFacts(figure.at) > 0;
            if (heads) {
                walked = figure.text;
            } else if (figure.text > walked && farFromFacts(figure.at) <= kNear) {
                add("begin", figure, figure.text);
                return;
            }
        }
    }

    // "Eighty three.", where the notes open or close and no sum is meant by it.
    void fillShortYear(bool opening) {
        constexpr int kOpening = 3;
        constexpr int kMostWords = 1;
        constexpr std::int64_t kCentury = 1900;
        for (const LooseFigure& figure : loose_) {
            const std::int64_t year = figure.value / kThousand;
            const bool sum = std::any_of(told_.begin(), told_.end(), [&](const ToldFact& told) {
                return told.sum == figure.value ||
                       (opening && told.sum > 0 && told.at == figure.at);
            });
            const bool told = opening ? figure.at <= kOpening && figure.words <= kMostWords + 1
                                      : figure.words <= kMostWords && isAmongFacts(figure);
            if (!has("built") && figure.round && !sum && within(year, 20, 99) && told) {
                add("built", figure, std::to_string(kCentury + year));
            }
        }
    }

    // A year by itself, told beside what the house cost or has.
    void fillLateYear() {
        for (const LooseFigure& figure : loose_) {
            if (!has("built") && figure.of == Of::LateYear && isAmongFacts(figure)) {
                add("built", figure, std::to_string(figure.value));
            }
        }
    }

    // A year told where the notes open: one in a sentence that names things may be that of a thing.
    void fillYear(int mostWords) {
        for (const LooseFigure& figure : loose_) {
            if (!has("built") && figure.of == Of::Year && figure.words <= mostWords) {
                add("built", figure, std::to_string(figure.value));
            }
        }
    }

    void fillOther(const std::string& name, Of of) {
        for (const LooseFigure& figure : loose_) {
            if (!has(name) && figure.of == of && isAmongFacts(figure)) {
                add(name, figure, figure.text);
            }
        }
    }

    std::vector<ToldFact> told_;
    const std::vector<LooseFigure>& loose_;
    int last_ = 0;
};

}  // namespace

std::vector<DraftFact> settledFacts(std::vector<ToldFact> told,
                                    const std::vector<LooseFigure>& loose, int last) {
    return Settler(std::move(told), loose, last).run();
}

}  // namespace ledgerboard::intake
