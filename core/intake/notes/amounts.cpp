#include "core/intake/notes/amounts.h"

#include <algorithm>

namespace ledgerboard::intake {

namespace {

// Figures beyond this are taken for nothing that a house has or costs.
constexpr std::int64_t kMostValue = 1'000'000'000'000;  // thousandths: 10^9

struct WordIds {
    WordId a = tables().id("a");
    WordId an = tables().id("an");
    WordId and_ = tables().id("and");
    WordId of = tables().id("of");
    WordId by = tables().id("by");
    WordId x = tables().id("x");
    WordId point = tables().id("point");
    WordId per = tables().id("per");
    WordId at = tables().id("at");
    WordId each = tables().id("each");
    WordId m = tables().id("m");
    WordId half = tables().id("half");
};

const WordIds& ids() {
    static const WordIds kIds;
    return kIds;
}

class Counter {
  public:
    explicit Counter(std::span<const Token> tokens) : tokens_(tokens) {}

    std::vector<Amount> run() {
        std::size_t at = 0;
        while (at < tokens_.size()) {
            Amount amount;
            if (!read(at, amount)) {
                ++at;
                continue;
            }
            finish(amount);
            at = amount.end;
            amounts_.push_back(amount);
        }
        return std::move(amounts_);
    }

  private:
    [[nodiscard]] WordId word(std::size_t at) const {
        return at < tokens_.size() ? tokens_[at].word : kUnknown;
    }

    [[nodiscard]] bool mark(std::size_t at, char mark) const {
        return at < tokens_.size() && tokens_[at].kind == TokenKind::Mark &&
               tokens_[at].mark == mark;
    }

    [[nodiscard]] NumberRow number(std::size_t at) const {
        const bool isWord = at < tokens_.size() && tokens_[at].kind == TokenKind::Word;
        return isWord ? tables().number(tokens_[at].word) : NumberRow{};
    }

    // The running state of one figure.
    struct State {
        std::int64_t total = 0;  // what a scale word has closed
        std::int64_t group = 0;  // what is being built
        bool any = false;
        bool afterHundred = false;
        bool inDigits = false;
        bool inMillions = false;  // "one million" and nothing smaller behind it yet
    };

    bool read(std::size_t begin, Amount& amount) {
        State state;
        std::size_t at = begin;
        if (mark(at, '$')) {
            amount.kind = AmountKind::Money;
            ++at;
        }
        if (isPronoun(at)) {
            return false;
        }
        const bool article = word(at) != kUnknown && (word(at) == ids().a || word(at) == ids().an);
        if (article) {
            const NumberKind next = number(at + 1).kind;
            const bool counts = next == NumberKind::Times || next == NumberKind::Scale ||
                                next == NumberKind::Few || next == NumberKind::Money ||
                                next == NumberKind::Fraction;
            if (!counts) {
                return false;
            }
            ++at;
        }
        while (at < tokens_.size() && take(at, state, amount)) {
        }
        if (!state.any) {
            return false;
        }
        if (!state.inDigits && at > begin + 1) {
            state.group *= partOfScale(state, word(at - 2));
        }
        amount.begin = begin;
        amount.end = at;
        amount.value = std::min(state.total + state.group, kMostValue);
        return true;
    }

    // What the rest counts behind a scale word: "one million six" is six hundred thousand more,
    // "one million one twenty" a hundred and twenty thousand, "sixty-two thousand five" five
    // hundred; "two thousand five" is a year.
    [[nodiscard]] std::int64_t partOfScale(const State& state, WordId scale) const {
        constexpr std::int64_t kTen = 10'000;  // thousandths
        constexpr std::int64_t kHundred = 100'000;
        static const WordId kMillion = tables().id("million");
        static const WordId kThousand = tables().id("thousand");
        const bool tenths = state.group > 0 && state.group < kTen && scale != kUnknown;
        if (tenths && scale == kMillion) {
            return 100'000;
        }
        if (tenths && scale == kThousand && state.total >= 20'000 * std::int64_t{1000}) {
            return 100;
        }
        const bool thousands = state.inMillions && state.group >= kHundred;
        return thousands ? 1000 : 1;
    }

    // "that one", "new ones": no figure.
    [[nodiscard]] bool isPronoun(std::size_t at) const {
        static const WordId kOne = tables().id("one");
        if (word(at) != kOne || tokens_[at].kind != TokenKind::Word) {
            return false;
        }
        if (tokens_[at].text.ends_with('s') || tokens_[at].text.ends_with('S')) {
            return true;
        }
        static const std::vector<WordId> kBefore = [] {
            std::vector<WordId> before;
            for (const std::string_view stem : {"that", "this", "new", "the", "which", "anoth",
                                                "add", "no", "each", "everi", "old", "a"}) {
                before.push_back(tables().id(stem));
            }
            return before;
        }();
        return at > 0 && word(at - 1) != kUnknown &&
               std::find(kBefore.begin(), kBefore.end(), word(at - 1)) != kBefore.end();
    }

    // Takes the token at `at` into the figure; false when it does not belong to it.
    bool take(std::size_t& at, State& state, Amount& amount) {
        if (tokens_[at].kind == TokenKind::Number) {
            if (state.any && !(state.group == 0 && state.total > 0)) {
                return false;
            }
            state.group = tokens_[at].value;
            state.any = state.inDigits = true;
            ++at;
            return true;
        }
        if (tokens_[at].kind == TokenKind::Mark) {
            const bool hyphen = mark(at, '-') && tokens_[at].glued && state.any &&
                                !state.inDigits && number(at + 1).kind != NumberKind::None;
            at += hyphen ? 1 : 0;
            return hyphen;
        }
        const NumberRow row = number(at);
        switch (row.kind) {
            case NumberKind::Unit:
            case NumberKind::Teen:
            case NumberKind::Ten:
                return takeSmall(at, row, state, amount);
            case NumberKind::Times:
                state.group = std::min(state.group == 0 ? row.value
                                                        : state.group / 1000 * row.value +
                                                              state.group % 1000 * row.value / 1000,
                                       kMostValue);
                state.any = state.afterHundred = true;
                ++at;
                return true;
            case NumberKind::Scale:
            case NumberKind::Money:
                return takeScale(at, row, state, amount);
            case NumberKind::Digit:
                // "two oh five", "nineteen oh seven"
                if (state.any && !state.inDigits && state.total == 0 &&
                    ((state.group >= 1000 && state.group < 10'000) ||
                     (state.group >= 17'000 && state.group <= 20'000)) &&
                    number(at + 1).kind == NumberKind::Unit) {
                    state.group = state.group * 100 + number(at + 1).value;
                    amount.paired = true;
                    at += 2;
                    return true;
                }
                return takeJoint(at, state);
            case NumberKind::Few:
                return takeFew(at, row, state);
            case NumberKind::Fraction:
                return takeFraction(at, row, state);
            default:
                return takeJoint(at, state);
        }
    }

    bool takeSmall(std::size_t& at, NumberRow row, State& state, Amount& amount) {
        if (state.inDigits && !(state.group == 0 && state.total > 0)) {
            return false;
        }
        const std::int64_t group = state.group / 1000;
        const bool unit = row.kind == NumberKind::Unit;
        if (group == 0 || state.afterHundred) {
            state.group += row.value;
            state.afterHundred = state.afterHundred && row.kind == NumberKind::Ten;
        } else if (unit && group % 10 == 0 && group % 100 >= 20 && row.value > 0) {
            state.group += row.value;
        } else if (!unit && group < 100 && (state.total == 0 || state.inMillions)) {
            // "nineteen sixty", "one eighty": said in pairs.
            state.group = group * 100'000 + row.value;
            amount.paired = true;
        } else if (unit && amount.paired && group > 100 && group < 1000 && row.value > 0 &&
                   state.group % 1000 == 0) {
            // "two eighteen five": 218.5, of thousands.
            state.group += row.value / 10;
        } else if (unit && group > 20 && group < 100 && group % 10 != 0 && state.total == 0) {
            // "eighty-eight five": 88.5, of thousands as a rule.
            state.group = group * 1000 + row.value / 10;
            amount.paired = true;
        } else {
            return false;
        }
        state.any = true;
        ++at;
        return true;
    }

    bool takeScale(std::size_t& at, NumberRow row, State& state, Amount& amount) {
        const bool money = row.kind == NumberKind::Money;
        const bool letter = tokens_[at].text.size() == 1;  // "185k", never "k" by itself
        if (!state.any && (letter || money || at == 0 ||
                           (word(at - 1) != ids().a && number(at - 1).kind == NumberKind::None))) {
            const bool article = at > 0 && word(at - 1) == ids().a && !letter;
            if (!article) {
                return false;
            }
        }
        const std::int64_t group = state.group == 0 ? 1000 : state.group;
        if (group > kMostValue / (row.value / 1000)) {
            return false;
        }
        state.inMillions = state.total == 0 && row.value == 1'000'000'000;
        state.total += group * (row.value / 1000);
        state.group = 0;
        state.any = true;
        state.inDigits = false;
        state.afterHundred = true;
        if (money) {
            amount.kind = AmountKind::Money;
        }
        ++at;
        return true;
    }

    bool takeFew(std::size_t& at, NumberRow row, State& state) {
        if (state.any) {
            return false;
        }
        const std::size_t next = word(at + 1) == ids().of ? at + 2 : at + 1;
        const NumberKind kind = number(next).kind;
        state.group = row.value;
        state.any = true;
        const bool scaled =
            kind == NumberKind::Times || kind == NumberKind::Scale || kind == NumberKind::Money;
        at = scaled ? next : at + 1;
        return true;
    }

    bool takeFraction(std::size_t& at, NumberRow row, State& state) {
        if (state.any) {
            return false;
        }
        if (word(at + 1) != ids().a || number(at + 2).kind == NumberKind::None) {
            return false;  // "half of the wall" is no figure
        }
        state.group = row.value;
        state.any = true;
        at += 2;
        return true;
    }

    // "and", "point", "of": joints inside a figure.
    bool takeJoint(std::size_t& at, State& state) {
        if (!state.any) {
            return false;
        }
        if (word(at) == ids().and_ && word(at) != kUnknown) {
            if (word(at + 1) == ids().a && number(at + 2).kind == NumberKind::Fraction) {
                state.group += number(at + 2).value;
                at += 3;
                return true;
            }
            const NumberKind next = number(at + 1).kind;
            const bool small =
                next == NumberKind::Unit || next == NumberKind::Teen || next == NumberKind::Ten;
            // "nineteen and twenty-nine"
            const bool century = (state.group == 18'000 || state.group == 19'000) &&
                                 state.total == 0 && !state.inDigits;
            if (century && (next == NumberKind::Ten || next == NumberKind::Teen)) {
                state.group = state.group * 100 + number(at + 1).value;
                at += 2;
                return true;
            }
            // "Forty thousand and six weeks": two figures.
            const std::uint32_t unit = small ? unitAt(at + 2).first : kNone;
            const bool span =
                unit != kNone && state.total > 0 && tables().units[unit].measure == Measure::Time;
            if (small && state.afterHundred && !state.inDigits && !span) {
                ++at;
                return true;
            }
            return false;
        }
        if (word(at) == ids().point && word(at) != kUnknown &&
            number(at + 1).kind == NumberKind::Unit) {
            state.group += number(at + 1).value / 10;
            at += 2;
            return true;
        }
        return false;
    }

    // The unit phrase that begins at `at`; its row and where it ends.
    [[nodiscard]] std::pair<std::uint32_t, std::size_t> unitAt(std::size_t at) const {
        std::pair<std::uint32_t, std::size_t> found{kNone, at};
        std::uint32_t node = 0;
        for (std::size_t i = at; i < tokens_.size() && i < at + 5; ++i) {
            if (mark(i, '.') || mark(i, '-')) {
                continue;
            }
            node = tokens_[i].word == kUnknown ? 0 : tables().phrases.step(node, tokens_[i].word);
            if (node == 0) {
                break;
            }
            for (const Meaning& meaning : tables().phrases.at(node)) {
                if (meaning.from == From::Unit) {
                    found = {meaning.row, i + 1};
                }
            }
        }
        return found;
    }

    [[nodiscard]] static std::uint32_t unitNamed(std::string_view name) {
        const auto& units = tables().units;
        for (std::size_t i = 0; i < units.size(); ++i) {
            if (units[i].name == name) {
                return static_cast<std::uint32_t>(i);
            }
        }
        return kNone;
    }

    // What follows the figure: a unit, a currency word, "by twelve", "a foot".
    void finish(Amount& amount) {
        std::size_t at = amount.end;
        if (mark(at, '\'') || mark(at, '"')) {
            amount.unit = unitNamed(mark(at, '\'') ? "ft" : "in");
            amount.kind = AmountKind::Measured;
            amount.end = ++at;
        }
        takeBy(amount, at);
        // "1.31M": metres are written small.
        const bool millions = amount.kind == AmountKind::Plain && amount.value % 1000 != 0 &&
                              amount.value < 20'000 && amount.end < tokens_.size() &&
                              tokens_[amount.end].glued && tokens_[amount.end].text == "M";
        amount.kind = millions ? AmountKind::Money : amount.kind;
        if (amount.kind == AmountKind::Money) {
            takeMillions(amount);
            takePerUnit(amount);
            return;
        }
        const NumberKind next = number(amount.end).kind;
        if (next == NumberKind::Currency) {
            amount.kind = AmountKind::Money;
            ++amount.end;
            takePerUnit(amount);
            return;
        }
        if (mark(amount.end, '-')) {
            at = amount.end + 1;  // "six-week"
        } else {
            at = amount.end;
        }
        if (const auto [row, end] = unitAt(at); row != kNone && amount.unit == kNone &&
                                                !isWordIn(amount, end) &&
                                                !isSetAside(row, amount)) {
            amount.unit = row;
            amount.end = end;
            amount.kind = tables().units[row].measure == Measure::Time ? AmountKind::Time
                                                                       : AmountKind::Measured;
        }
        if (amount.begin > 0 && mark(amount.begin - 1, '@') && amount.kind == AmountKind::Plain) {
            amount.kind = AmountKind::Money;
            amount.perUnit = true;
        }
    }

    // "28,000 in profit", "four in the hall": no inches.
    [[nodiscard]] bool isWordIn(const Amount& amount, std::size_t end) const {
        static const WordId kIn = tables().id("in");
        static const std::vector<WordId> kAfter = [] {
            std::vector<WordId> after;
            for (const std::string_view stem :
                 {"the", "a", "this", "my", "all", "each", "here", "there", "profit", "total", "it",
                  "them", "our", "work", "hand", "repair", "cash", "material"}) {
                after.push_back(tables().id(stem));
            }
            return after;
        }();
        if (end == 0 || tokens_[end - 1].word != kIn || kIn == kUnknown) {
            return false;
        }
        constexpr std::int64_t kMostInches = 200'000;
        return amount.value >= kMostInches ||
               (word(end) != kUnknown &&
                std::find(kAfter.begin(), kAfter.end(), word(end)) != kAfter.end());
    }

    // "$1.2m", "1.31M"
    void takeMillions(Amount& amount) const {
        constexpr std::int64_t kMost = 900'000;
        const bool letter = amount.end < tokens_.size() && tokens_[amount.end].glued &&
                            (tokens_[amount.end].text == "m" || tokens_[amount.end].text == "M");
        if (letter && amount.value > 0 && amount.value <= kMost) {
            amount.value *= 1'000'000;
            ++amount.end;
        }
    }

    // "Twenty-six thousand set aside": no sets.
    [[nodiscard]] static bool isSetAside(std::uint32_t unit, const Amount& amount) {
        constexpr std::int64_t kMostSets = 1'000'000;
        return tables().units[unit].name == "set" && amount.value >= kMostSets;
    }

    void takeBy(Amount& amount, std::size_t at) {
        const bool joins = mark(at, 'x') ||
                           (word(at) != kUnknown && (word(at) == ids().by || word(at) == ids().x));
        if (!joins || amount.kind == AmountKind::Money) {
            return;
        }
        Amount other;
        if (!read(at + 1, other) || other.kind == AmountKind::Money || amount.value > 1'000'000 ||
            other.value > 1'000'000) {
            return;
        }
        amount.value = amount.value * other.value / 1000;
        amount.end = other.end;
        if (mark(amount.end, '\'')) {
            ++amount.end;
        }
        if (const auto [row, end] = unitAt(amount.end); row != kNone) {
            amount.end = tables().units[row].measure == Measure::Time ? amount.end : end;
        }
        amount.kind = AmountKind::Measured;
        amount.unit = unitNamed("sq ft");
    }

    void takePerUnit(Amount& amount) {
        if (amount.begin > 0 && mark(amount.begin - 1, '@')) {
            amount.perUnit = true;
        }
        const bool per = mark(amount.end, '/') ||
                         (word(amount.end) != kUnknown &&
                          (word(amount.end) == ids().per || word(amount.end) == ids().a));
        if (per && unitAt(amount.end + 1).first != kNone) {
            amount.perUnit = true;
            amount.end = unitAt(amount.end + 1).second;
        }
    }

    std::span<const Token> tokens_;
    std::vector<Amount> amounts_;
};

}  // namespace

std::vector<Amount> amountsIn(std::span<const Token> tokens) {
    return Counter(tokens).run();
}

}  // namespace ledgerboard::intake
