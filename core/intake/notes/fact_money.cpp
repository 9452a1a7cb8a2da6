// The facts that are sums of money: what is paid, put in, got for it and left over.
//
// Each figure and each phrase of facts.tsv may stand for one another once, nearest first, so that
// "buy 98k, work 37k, sell 169k" gives three facts and not one three times.
#include <algorithm>
#include <array>
#include <vector>

#include "core/intake/notes/fact_sums.h"
#include "core/intake/notes/fact_words.h"
#include "core/intake/notes/facts.h"

namespace ledgerboard::intake {

namespace {

constexpr std::int64_t kThousand = 1'000'000;  // thousandths
constexpr double kFarthest = 14.0;

std::string moneyText(std::int64_t thousandths) {
    return model::Money::fromMinor(thousandths / 10).toString();
}

// Least sensible value of each money fact, in dollars: below it the figure is another one.
std::int64_t leastOf(const std::string& fact) {
    if (fact == "profit") {
        return 2'000;
    }
    return fact == "budget" ? 4'000 : 20'000;
}

// "in 412k / out 589-610k", "240k in, 365k out": the short way to say for how much it is bought and
// sold.
std::string inOrOut(const Sentence& sentence, const Spots& spots, const Amount& amount, int taken) {
    constexpr int kOpening = 14;
    // "589-610k": both ends are of one size.
    const bool range = amount.value >= 100'000 && markIs(sentence, amount.end, '-');
    const bool told = taken <= kOpening || spots.objects.empty();
    if (!told || (amount.value < 20 * kThousand && !range)) {
        return {};
    }
    const bool closes = amount.end + 1 >= sentence.tokens.size() ||
                        sentence.tokens[amount.end + 1].kind == TokenKind::Mark;
    if (closes && (amount.kind == AmountKind::Money || amount.paired)) {
        const std::string_view next = lower(sentence, amount.end);
        if (next == "in" || next == "out" || next == "after") {
            return next == "in" ? "purchase" : "resale";
        }
    }
    if (amount.begin == 0) {
        return {};
    }
    const bool opens = amount.begin == 1 ||
                       sentence.tokens[amount.begin - 2].kind != TokenKind::Word ||
                       sentence.tokens[amount.begin - 2].word == kUnknown;
    const std::string_view word = lower(sentence, amount.begin - 1);
    return word == "in" && opens ? "purchase" : word == "out" ? "resale" : "";
}

// "Two forty" is 240 thousand; beside "265k" a bare 26 is a year or a day, and no 26 thousand.
std::int64_t wholePrice(const Sentence& sentence, const Spots& spots, const Amount& amount,
                        std::int64_t value) {
    // "Two hundred eighty-eight five": and five hundred.
    const bool andFive = value >= 100'000 && value < kThousand && value % 1000 == 0 &&
                         lower(sentence, amount.end) == "five";
    if (andFive) {
        return value * 1000 + 500'000;
    }
    // "Sixty quid" is no more than that.
    if (amount.kind == AmountKind::Money &&
        tables().number(sentence.tokens[amount.end - 1].word).kind == NumberKind::Currency) {
        return value;
    }
    // "Share £400, paid": written with its sign beside no other such sum it is no more either.
    const bool sign = amount.kind == AmountKind::Money && markIs(sentence, amount.begin, '$') &&
                      value < kThousand && spots.amounts.size() == 1;
    if (sign) {
        return value;
    }
    const bool plain =
        value < 32'000 && !amount.paired &&
        std::any_of(spots.amounts.begin(), spots.amounts.end(), [&](const Amount& other) {
            return other.value >= 10 * kThousand && yearOf(sentence, other) == 0;
        });
    return value < kThousand && !plain && (value >= 15'000 || amount.paired) ? value * 1000 : value;
}

// "Four and a quarter", of a house's price: hundreds of thousands.
bool isShortPrice(const Amount& amount) {
    const std::int64_t rest = amount.value % 1000;
    return amount.kind == AmountKind::Plain && amount.value > 1000 && amount.value < 10'000 &&
           (rest == 250 || rest == 500 || rest == 750) && amount.end > amount.begin + 2;
}

bool isMoneyFact(const std::string& fact) {
    return isOneOf(fact, {"purchase", "resale", "budget", "profit"});
}

// How far a phrase is from a figure; negative where they overlap.
double distanceOf(const Sentence& sentence, const Spots& spots, const RowSpot& cue,
                  const Amount& amount) {
    const bool before = cue.span.end <= amount.begin;
    if (!before && cue.span.begin < amount.end) {
        return -1;
    }
    const std::size_t begin = before ? cue.span.end : amount.end;
    const std::size_t end = before ? amount.begin : cue.span.begin;
    // "I have forty", "I have about forty": what stands right behind it is had.
    static const WordId kHave = tables().id("have");
    const bool had = begin == end || (before && end == begin + 1 &&
                                      isOneOf(lower(sentence, begin), {"about", "around", "only"}));
    if (sentence.tokens[cue.span.end - 1].word == kHave && !had) {
        return -1;
    }
    double far = static_cast<double>(end - begin) + (before ? 0.0 : 1.5);
    // "82,000 for the work", "25,000 of profit", "90,000 to buy": plainly of the figure before.
    const bool own = !before && begin == end &&
                     isOneOf(lower(sentence, cue.span.begin), {"for", "of", "to", "it", "we", "i",
                                                               "you", "net", "clear", "was", "is"});
    far -= own ? 1.2 : 0.0;
    for (std::size_t i = begin; i < end; ++i) {
        const std::string_view word = lower(sentence, i);
        far += markIs(sentence, i, ',') ? 1.0 : isOneOf(word, {"and", "but"}) ? 2.0 : 0.0;
    }
    far += strokesBetween(sentence, begin, end);
    // "Got it off the estate for 155"
    const bool leads =
        before && end > begin + 1 && isOneOf(lower(sentence, end - 1), {"for", "at"});
    far -= leads ? 1.0 : 0.0;
    for (const Amount& other : spots.amounts) {
        far += other.begin >= begin && other.end <= end && other.value >= 20'000 ? 4.0 : 0.0;
    }
    return far;
}

struct Figure {
    const Amount* amount = nullptr;
    std::string fact;
    double far = kFarthest;
    bool inherited = false;
    bool weak = false;  // its phrase is one that many things are said with
};

// Figures that may be sums of the deal, in order.
std::vector<Figure> figuresOf(const Sentence& sentence, const std::vector<Amount>& amounts,
                              const Spots& spots) {
    std::vector<Figure> figures;
    for (const Amount& amount : amounts) {
        const bool at = amount.begin > 0 && markIs(sentence, amount.begin - 1, '@');
        const bool rate = amount.perUnit && !(at && amount.value >= 20 * kThousand);
        if (amount.kind != AmountKind::Measured && amount.kind != AmountKind::Time &&
            yearOf(sentence, amount) == 0 && !rate && !isOfYears(sentence, amount) &&
            !isOfOther(sentence, amount) && !isOfArea(sentence, spots, amount)) {
            figures.push_back({&amount, {}, kFarthest, false});
        }
    }
    return figures;
}

bool isPlainMillions(const Amount& amount) {
    return amount.value >= 500 && amount.value < 20'000 && amount.value % 1000 != 0;
}

// "1.1 to buy, 1.65 out", "about 1.2 when it's finished": what a house costs or brings.
bool isShortMillions(const Sentence& sentence, const Spots& spots, const Amount& amount) {
    constexpr std::size_t kNear = 1;
    if (amount.kind != AmountKind::Plain || amount.end != amount.begin + 1 ||
        !isPlainMillions(amount) || amount.value < 1000 || amount.value >= 10'000 ||
        !spots.objects.empty() || isOfOther(sentence, amount)) {
        return false;
    }
    const bool out = amount.end + 1 >= sentence.tokens.size() ||
                     sentence.tokens[amount.end + 1].kind == TokenKind::Mark;
    const bool closes = out && isOneOf(lower(sentence, amount.end), {"in", "out"});
    return closes || std::any_of(spots.facts.begin(), spots.facts.end(), [&](const RowSpot& cue) {
               const bool near =
                   (cue.span.end <= amount.begin && cue.span.end + kNear >= amount.begin) ||
                   cue.span.begin == amount.end;
               return near && isOneOf(tables().facts[cue.row], {"purchase", "resale"});
           });
}

// The figures of a sentence, millions said short made whole: "sell 1.4m", "1.1 to 1.15 million".
std::vector<Amount> sumsIn(const Sentence& sentence, const Spots& spots) {
    constexpr std::int64_t kMillion = 1'000'000;
    std::vector<Amount> sums = spots.amounts;
    for (std::size_t i = sums.size(); i-- > 0;) {
        Amount& sum = sums[i];
        const bool letter = isPlainMillions(sum) && lower(sentence, sum.end - 1) == "m" &&
                            sentence.tokens[sum.end - 1].glued;
        const bool named =
            letter && std::any_of(spots.facts.begin(), spots.facts.end(), [&](const RowSpot& cue) {
                return isMoneyFact(tables().facts[cue.row]) &&
                       (cue.span.end == sum.begin || cue.span.begin == sum.end);
            });
        const bool ranges = i + 1 < sums.size() && sum.kind == AmountKind::Plain &&
                            sum.value < 20'000 && sums[i + 1].begin == sum.end + 1 &&
                            sums[i + 1].value >= kMillion * 1000 &&
                            (lower(sentence, sum.end) == "to" || markIs(sentence, sum.end, '-'));
        // "I'd put thirty in and rent it": no inches.
        const bool closes =
            sum.end >= sentence.tokens.size() || sentence.tokens[sum.end].kind == TokenKind::Mark;
        const bool put = sum.begin > 0 &&
                         isOneOf(lower(sentence, sum.begin - 1), {"put", "putting", "have", "got"});
        const bool inch = sum.kind == AmountKind::Measured &&
                          lower(sentence, sum.end - 1) == "in" && (put || (closes && sum.paired));
        if (inch) {
            sum.kind = AmountKind::Plain;
            sum.unit = kNone;
            --sum.end;
        }
        if (named || ranges || isShortMillions(sentence, spots, spots.amounts[i])) {
            sum.value *= kMillion;
            sum.kind = AmountKind::Money;
            sum.unit = kNone;
        }
    }
    return sums;
}

// "149 purchase 58 budget 259 sale": each figure with its phrase right behind it.
bool areLabelledBehind(const Spots& spots, std::vector<Figure>& figures) {
    std::vector<std::string> facts;
    for (const Figure& figure : figures) {
        const auto label =
            std::find_if(spots.facts.begin(), spots.facts.end(), [&](const RowSpot& cue) {
                return cue.span.begin == figure.amount->end && isMoneyFact(tables().facts[cue.row]);
            });
        if (label == spots.facts.end()) {
            break;
        }
        facts.push_back(tables().facts[label->row]);
    }
    // "…, 3/1, 1,080": figures of something else may follow, but no phrase.
    const bool all =
        facts.size() == figures.size() || (facts.size() > 1 && facts.size() >= spots.facts.size());
    for (std::size_t i = 0; all && facts.size() > 1 && i < facts.size(); ++i) {
        figures[i].fact = facts[i];
        figures[i].far = 0;
    }
    return all && facts.size() > 1;
}

// Words that many things are said with: of two phrases as near the other counts.
bool isWeakPhrase(const Sentence& sentence, const RowSpot& cue) {
    return !lower(sentence, cue.span.begin).starts_with("leav") &&
           isOneOf(lower(sentence, cue.span.end - 1),
                   {"me", "us", "says", "said", "thinks", "think", "house", "should", "ought", "we",
                    "sees", "agent", "broker", "realtor", "got"});
}

// Gives each figure its phrase: the nearest pair first, each once.
void pairUp(const Sentence& sentence, const Spots& spots, std::vector<Figure>& figures) {
    struct Pair {
        double far;
        double rank;
        std::size_t figure;
        std::size_t cue;
    };

    if (areLabelledBehind(spots, figures)) {
        return;
    }
    std::vector<Pair> pairs;
    for (std::size_t f = 0; f < figures.size(); ++f) {
        for (std::size_t c = 0; c < spots.facts.size(); ++c) {
            const double far = distanceOf(sentence, spots, spots.facts[c], *figures[f].amount);
            if (far >= 0 && far < kFarthest && isMoneyFact(tables().facts[spots.facts[c].row])) {
                const double weak = isWeakPhrase(sentence, spots.facts[c]) ? 1.6 : 0.0;
                pairs.push_back({far, far + weak, f, c});
            }
        }
    }
    std::stable_sort(pairs.begin(), pairs.end(),
                     [](const Pair& a, const Pair& b) { return a.rank < b.rank; });
    std::vector<bool> used(spots.facts.size(), false);
    for (const Pair& pair : pairs) {
        Figure& figure = figures[pair.figure];
        if (used[pair.cue]) {
            continue;
        }
        const std::string& fact = tables().facts[spots.facts[pair.cue].row];
        if (!figure.fact.empty()) {
            // "budget for the work, 80": the second phrase says the same.
            used[pair.cue] = figure.fact == fact && pair.far < figure.far + 4.0;
            continue;
        }
        figure.fact = fact;
        figure.far = pair.far;
        figure.weak = isWeakPhrase(sentence, spots.facts[pair.cue]);
        for (std::size_t c = 0; c < spots.facts.size(); ++c) {
            used[c] = used[c] || spots.facts[c].span.begin == spots.facts[pair.cue].span.begin;
        }
    }
}

// "178-182", "two forty, maybe two thirty": two readings of one fact.
void inherit(const Sentence& sentence, const Spots& spots, std::vector<Figure>& figures) {
    constexpr std::size_t kNear = 8;
    constexpr std::size_t kAtOnce = 2;
    const auto alike = [&](const Figure& a, const Figure& b) {
        const std::int64_t left = wholePrice(sentence, spots, *a.amount, a.amount->value);
        const std::int64_t right = wholePrice(sentence, spots, *b.amount, b.amount->value);
        return left > right / 10 * 6 && right > left / 10 * 6;
    };
    for (std::size_t i = 1; i < figures.size(); ++i) {
        const Figure& last = figures[i - 1];
        Figure& next = figures[i];
        const std::size_t gap = next.amount->begin - last.amount->end;
        const bool range = gap == 1 && (markIs(sentence, last.amount->end, '-') ||
                                        (lower(sentence, last.amount->end) == "to" &&
                                         alike(last, next) && last.far <= next.far));
        const bool weak = next.fact.empty() || next.far > 4.0 || range;
        // Two readings of a price are nearer than the price and the sale.
        const std::int64_t a = last.amount->value;
        const std::int64_t b = next.amount->value;
        const bool parted = last.fact == "purchase" && (a < b / 100 * 88 || b < a / 100 * 88);
        if (!last.fact.empty() && weak && !parted && gap <= kNear && next.fact != last.fact &&
            !isAsked(sentence, *last.amount) &&
            (range || (alike(last, next) &&
                       strokesBetween(sentence, last.amount->end, next.amount->begin) < 1))) {
            next.fact = last.fact;
            next.far = range ? 1.0 : 4.5;
            next.inherited = true;
        }
    }
    for (std::size_t i = figures.size(); i-- > 1;) {
        Figure& first = figures[i - 1];
        const Figure& next = figures[i];
        const std::size_t gap = next.amount->begin - first.amount->end;
        const bool range = gap == 1 && lower(sentence, first.amount->end) == "to" &&
                           first.far > next.far && !next.inherited;
        if ((first.fact.empty() || range) && !next.fact.empty() && gap <= kAtOnce &&
            alike(first, next)) {
            first.fact = next.fact;
            first.far = next.far + 1.0;
        }
    }
}

// "Sells at 429, call it 425": the last word takes the place of the sums like it before.
void takeLastWord(const Sentence& sentence, std::vector<Figure>& figures) {
    const std::size_t last = afterLastWord(sentence);
    const auto said = std::find_if(figures.begin(), figures.end(), [&](const Figure& figure) {
        return figure.amount->begin >= last && figure.amount->begin <= last + 1;
    });
    // "Five forty or call it five sixty": both.
    if (said == figures.end() || (last > 2 && lower(sentence, last - 3) == "or")) {
        return;
    }
    for (auto before = figures.begin(); before != said; ++before) {
        const std::int64_t left = before->amount->value;
        const std::int64_t right = said->amount->value;
        if (left < right / 4 * 5 && right < left / 4 * 5 && !before->fact.empty()) {
            said->fact = before->fact;
            said->far = 2.0;
            before->amount = nullptr;
        }
    }
    std::erase_if(figures, [](const Figure& figure) { return figure.amount == nullptr; });
}

// "In at 152, no, 148 all in": what takes the place of a sum is of the same fact.
void passOn(const Sentence& sentence, const Spots& spots, std::vector<Figure>& figures) {
    for (std::size_t i = 0; i + 1 < figures.size(); ++i) {
        if (!figures[i].fact.empty() && isTakenBack(sentence, spots, *figures[i].amount)) {
            figures[i + 1].fact = figures[i].fact;
            figures[i + 1].far = figures[i].far;
        }
    }
}

// "with 5,000 of contingency on top": no budget of its own.
bool isContingency(const Sentence& sentence, const Figure& figure) {
    const Amount& amount = *figure.amount;
    constexpr std::size_t kNear = 3;
    for (std::size_t i = amount.begin > kNear ? amount.begin - kNear : 0; i < amount.end + kNear;
         ++i) {
        if (markIs(sentence, i, '.') || markIs(sentence, i, ';')) {
            continue;
        }
        if (lower(sentence, i) == "contingency" && figure.far > 1.0) {
            const std::string_view next = lower(sentence, i + 1);
            return !isOneOf(next, {"included", "inclusive", "in"});
        }
    }
    return false;
}

// "Seventy from the bank and ten of ours, so eighty": what two others come to takes their place.
void takeSumOfParts(std::vector<Figure>& figures) {
    for (std::size_t i = 2; i < figures.size(); ++i) {
        Figure& sum = figures[i];
        Figure& one = figures[i - 2];
        Figure& two = figures[i - 1];
        const std::string& fact = one.fact.empty() ? two.fact : one.fact;
        const bool alike = one.fact.empty() || two.fact.empty() || one.fact == two.fact;
        const bool known = fact == "budget" || fact == "profit";
        if (known && alike && (sum.fact.empty() || sum.fact == fact || sum.far > 2.0) &&
            one.amount->value + two.amount->value == sum.amount->value) {
            sum.fact = fact;
            sum.far = std::min({one.far, two.far, sum.far});
            one.amount = nullptr;
            two.amount = nullptr;
            break;
        }
    }
    std::erase_if(figures, [](const Figure& figure) { return figure.amount == nullptr; });
}

bool opensWithCorrection(const Sentence& sentence) {
    return isOneOf(lower(sentence, 0), {"no", "actually", "sorry", "wait", "scratch", "correction",
                                        "make", "rather", "call"});
}

// The figures of a sentence, each with the fact that is said of it. `price`: what is paid, 0 until
// told.
std::vector<Figure> figuresWithFacts(const Sentence& sentence, const Spots& spots,
                                     const std::vector<Amount>& sums, int taken,
                                     std::int64_t price) {
    constexpr int kOpening = 14;
    const bool ofWork = !spots.objects.empty() && !spots.acts.empty() && taken > kOpening;
    std::vector<Figure> figures = figuresOf(sentence, sums, spots);
    pairUp(sentence, spots, figures);
    // "Budget 28k for the kitchen and bath, roof is done": said outright among the work.
    if (ofWork) {
        std::erase_if(figures, [](const Figure& figure) {
            const bool sum = figure.amount->kind == AmountKind::Money || figure.amount->paired;
            return figure.fact.empty() || figure.far > 1.0 || !sum ||
                   figure.amount->value < 10 * kThousand;
        });
    }
    for (Figure& figure : figures) {
        if (const std::string way = inOrOut(sentence, spots, *figure.amount, taken); !way.empty()) {
            // "Got it 92k. 38k in, 165k out.": put in.
            const bool work =
                way == "purchase" && price > 0 && figure.amount->value < price / 10 * 8;
            figure.fact = work ? "budget" : way;
            figure.far = 0.5;
        }
    }
    inherit(sentence, spots, figures);
    takeLastWord(sentence, figures);
    passOn(sentence, spots, figures);
    takeSumOfParts(figures);
    return figures;
}

}  // namespace

// What one figure says, once it has its fact; empty where it says none.
std::string FactReader::moneyFact(const Sentence& sentence, const Spots& spots,
                                  const std::string& fact, double far, const Amount& amount,
                                  std::int64_t& value) const {
    constexpr double kOutright = 3.0;
    if (fact.empty()) {
        return {};
    }
    const bool work = tellsWork(sentence, spots);
    const bool ofWork = !spots.objects.empty() && !spots.acts.empty();
    const bool asked = isAsked(sentence, amount) || wasOnlyOffered(sentence, amount) ||
                       (isOfOthers(sentence) && far > kOutright) ||
                       isOfOtherHouse(sentence, amount) ||
                       (isAsItStands(sentence, amount) && (fact != "purchase" || far > 1.0));
    if (countsThings(sentence, amount) || (ofWork && far > kOutright) ||
        ((fact == "purchase" || fact == "resale") && asked) ||
        isTakenBack(sentence, spots, amount)) {
        return {};
    }
    if ((fact == "purchase" || fact == "resale") && isShortPrice(amount)) {
        value *= 100'000;
    }
    // "Budget 6,800 for a new one": of one thing.
    if (fact == "budget" && has("budget") && taken_ > 20 && !spots.acts.empty()) {
        return {};
    }
    // "If I clear twenty-five": said outright of a sum, it is no day and no year.
    const bool sum = far <= 1.0 && (fact == "profit" || fact == "budget") && value >= 15'000 &&
                     value < kThousand;
    // "It says ninety-four": of anything.
    if (fact == "resale" && amount.kind == AmountKind::Plain && !amount.paired && value < 100'000 &&
        (far > 0 || !spots.objects.empty())) {
        return {};
    }
    // "CRAWL (under main) poly new 900", "sand that room, 150": of the work.
    const bool bare = amount.kind == AmountKind::Plain && !amount.paired && value < kThousand;
    if (fact == "budget" && bare && far > 2.0 && work) {
        return {};
    }
    value = sum ? value * 1000 : wholePrice(sentence, spots, amount, value);
    if (value < leastOf(fact) * 1000 || value > 100'000 * kThousand) {
        return {};
    }
    // "38,500 put by for the work, none of it for a hot tub": outright, where the notes open.
    constexpr int kOpening = 14;
    constexpr double kAtOnce = 2.0;
    const bool outright = taken_ <= kOpening && far <= (bare ? 1.0 : kAtOnce);
    // "Resale 690,000 or 715,000": what is open there is the sum.
    const bool open = spots.has(Cue::Open) && (far > kAtOnce || !spots.objects.empty());
    // "I want ninety net": no net of the house.
    const bool said = (fact == "profit" || fact == "budget") && far <= 0.5 && spots.acts.empty();
    const bool item = (!spots.objects.empty() && !outright && !said) || open;
    if (item && (fact == "budget" || fact == "profit" || open)) {
        return {};
    }
    if (fact == "resale" && purchase_ > 0 && value < purchase_ / 10 * 6) {
        return value <= purchase_ / 2 && !has("budget") ? "budget" : "";
    }
    return fact;
}

// Keeps a sum that no phrase explains: "Two hundred and eighteen thousand.", said among the facts.
void FactReader::addLooseSum(const Sentence& sentence, const Spots& spots, const Amount& amount) {
    const bool bare = amount.kind == AmountKind::Plain && !amount.paired;
    const bool round =
        bare && amount.value < kThousand && (amount.value < 100'000 || amount.value % 100'000 == 0);
    const bool ofWork = !spots.objects.empty() && !spots.acts.empty();
    const bool asks = markIs(sentence, sentence.tokens.size() - 1, '?');
    const bool figures = tellsFigures(sentence, spots);
    if ((round && (!figures || !sentence.whole.empty())) || ofWork || asks ||
        countsThings(sentence, amount) || isOfOthers(sentence) ||
        isOfOtherHouse(sentence, amount) || isAsItStands(sentence, amount) ||
        spots.has(Cue::Open) || isAsked(sentence, amount) || wasOnlyOffered(sentence, amount) ||
        isTakenBack(sentence, spots, amount)) {
        return;
    }
    const std::int64_t value = wholePrice(sentence, spots, amount, amount.value);
    if (value >= 4 * kThousand && value <= 100'000 * kThousand) {
        addLoose(sentence, LooseFigure::Of::Sum, value, {}, wordsBesideFigures(sentence, spots));
        loose_.back().round = round;
        loose_.back().written = amount.kind == AmountKind::Money && spots.acts.empty();
    }
}

bool FactReader::takeMoney(const Sentence& sentence, const Spots& spots) {
    constexpr int kOpening = 14;
    if (spots.amounts.empty()) {
        return false;
    }
    const std::vector<Amount> sums = sumsIn(sentence, spots);
    std::vector<Figure> figures = figuresWithFacts(sentence, spots, sums, taken_, purchase_);
    bool any = false;
    for (Figure& figure : figures) {
        const Amount& amount = *figure.amount;
        // "What are you paying?" "One eighty-five."
        const bool answers =
            isMoneyFact(asked_) && !any && (figure.far > 3.0 || figure.fact == "budget");
        if (answers) {
            figure.fact = asked_;
            figure.far = amount.kind == AmountKind::Money || amount.paired ? 4.0 : 5.0;
        }
        // "The budget is fifty thousand. No, make that forty-six."
        const bool corrects = !lastMoney_.empty() && lastDeal_ + 1 == taken_ && !any &&
                              opensWithCorrection(sentence) && figure.far > 2.0;
        if (corrects) {
            figure.fact = lastMoney_;
            figure.far = 2.0;
        }
        std::int64_t value = amount.value;
        if (isContingency(sentence, figure)) {
            continue;
        }
        const std::string fact = moneyFact(sentence, spots, figure.fact, figure.far, amount, value);
        if (fact.empty()) {
            addLooseSum(sentence, spots, amount);
            continue;
        }
        // "One eighty-seven, one eighty-seven five": said once more, to the hundred.
        const bool closer = any && lastMoney_ == fact && lastDeal_ == taken_ &&
                            value > lastValue_ && value < lastValue_ + kThousand;
        if (corrects || closer) {
            told_.pop_back();
        }
        if (fact == "purchase") {
            purchase_ = value;
        }
        // What it will sell for is somebody's guess.
        const int outright = fact == "resale" ? 88 : 92;
        const bool plain = spots.objects.empty() && (taken_ <= kOpening || lastDeal_ + 3 >= taken_);
        add(sentence, fact, moneyText(value),
            figure.far < 1.0 && amount.kind == AmountKind::Money && plain ? outright
            : figure.far < 3.0 && !figure.weak                            ? 84
            : figure.far < 5.0                                            ? 79
                                                                          : 70,
            value);
        lastMoney_ = fact;
        lastValue_ = value;
        any = true;
    }
    return any;
}

}  // namespace ledgerboard::intake
