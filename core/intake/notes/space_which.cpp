#include "core/intake/notes/space_which.h"

#include <algorithm>
#include <string_view>
#include <vector>

#include "core/intake/notes/one_of.h"
#include "core/intake/notes/space_names.h"

namespace ledgerboard::intake {

namespace {

using Which = std::pair<std::string, std::size_t>;

class After {
  public:
    After(std::span<const Token> tokens, std::size_t begin, std::size_t at)
        : tokens_(tokens), begin_(begin), at_(at) {}

    [[nodiscard]] Which run() const {
        // "Bedroom's at the back": said of it, and no name.
        if (at_ > 0 && tokens_[at_ - 1].text.ends_with("'s")) {
            return none();
        }
        for (const Which& which : {inLabel(), byOne(), onStorey(), onSide()}) {
            if (!which.first.empty()) {
                return which;
            }
        }
        return none();
    }

  private:
    [[nodiscard]] Which none() const { return {std::string(), at_}; }

    [[nodiscard]] bool is(std::size_t i, std::string_view stem) const {
        return i < tokens_.size() && tables().is(tokens_[i].word, stem);
    }

    [[nodiscard]] bool isMarkOf(std::size_t i, std::string_view marks) const {
        return i < tokens_.size() && tokens_[i].kind == TokenKind::Mark &&
               marks.find(tokens_[i].mark) != std::string_view::npos;
    }

    // The word of the tables that begins at `at`, unless it only counts.
    [[nodiscard]] Which qualifierAt(std::size_t at) const {
        const RowFound found = longestRow(tokens_, at, From::Qualifier);
        const std::string name =
            found.row == kNone ? std::string() : tables().qualifiers[found.row];
        return name.size() < 2 ? none() : Which(name, found.end);
    }

    // "BEDROOM FRONT", "Bed left:", "BATH (hall)", "Bedroom, back": a heading or a label of it.
    [[nodiscard]] Which inLabel() const {
        if (begin_ != 0) {
            return none();
        }
        const bool bracket = isMarkOf(at_, "(");
        const bool comma = isMarkOf(at_, ",");
        const auto [name, end] = qualifierAt(at_ + (bracket || comma ? 1 : 0));
        const bool closes = end >= tokens_.size() ||
                            (isMarkOf(end, ":-") && !isHyphen(tokens_, end)) ||
                            (comma && end + 1 == tokens_.size() && isMarkOf(end, "."));
        if (name.empty() || (bracket ? !isMarkOf(end, ")") : !closes)) {
            return none();
        }
        // "BATH (up)" says only where it is, "bath (old)" what it is like.
        static const std::vector<std::string_view> kSorts = {"hall",  "guest",   "kids",  "boys",
                                                             "girls", "primary", "small", "big"};
        const bool sort = isColor(name) || isOneOf(name, kSorts);
        return isSide(name) || ((bracket || comma) && sort) ? Which(name, bracket ? end + 1 : end)
                                                            : none();
    }

    // "Bedroom, the small one.", "Bedroom here, the guest."
    [[nodiscard]] Which byOne() const {
        std::size_t next = at_ + (is(at_, "here") ? 1 : 0);
        next += isMarkOf(next, ",") ? 1 : 0;
        if (!is(next, "the")) {
            return none();
        }
        const auto [name, end] = qualifierAt(next + 1);
        const bool one = is(end, "one");
        const std::size_t last = one ? end + 1 : end;
        const bool closes = last >= tokens_.size() || isMarkOf(last, ".,:;");
        return !name.empty() && closes && (one || is(at_, "here")) ? Which(name, last) : none();
    }

    // "the bathroom upstairs", "Bath up.", "bath down here"
    [[nodiscard]] Which onStorey() const {
        for (const std::string_view level : {"upstair", "downstair"}) {
            if (is(at_, level)) {
                return {std::string(level) + "s", at_ + 1};
            }
        }
        const bool up = is(at_, "up");
        // "There's a bedroom down here.": one that is there.
        const bool here = !is(at_ - 1, "bedroom") && (is(at_ + 1, "here") || is(at_ + 1, "there"));
        const bool closes =
            at_ + 1 >= tokens_.size() || here || tokens_[at_ + 1].kind == TokenKind::Mark;
        if (!closes || !(up || is(at_, "down"))) {
            return none();
        }
        return {up ? "upstairs" : "downstairs", at_ + (here ? 2 : 1)};
    }

    // "the bedroom at the front", "the bedroom on the lake side"
    [[nodiscard]] Which onSide() const {
        if (!is(at_, "at") && !is(at_, "in") && !is(at_, "on")) {
            return none();
        }
        std::size_t next = at_ + 1;
        next += is(next, "the") ? 1 : 0;
        for (const std::string_view side : {"front", "back", "rear", "left", "right"}) {
            const bool of = is(next + 1, "of") && !is(next + 3, "hous");
            if (is(next, side) && !of) {
                const std::size_t end = is(next + 1, "of") ? next + 4 : next + 1;
                return {side == "rear" ? "back" : std::string(side), end};
            }
        }
        static const std::vector<std::string_view> kAny = {"other", "far",  "same", "one",
                                                           "near",  "this", "that", "either"};
        const bool named = is(at_, "on") && next == at_ + 2 && next < tokens_.size() &&
                           tokens_[next].kind == TokenKind::Word && is(next + 1, "side") &&
                           !isOneOf(tokens_[next].plain, kAny);
        return named ? Which(tokens_[next].plain + " side", next + 2) : none();
    }

    std::span<const Token> tokens_;
    std::size_t begin_;
    std::size_t at_;
};

}  // namespace

bool isHyphen(std::span<const Token> tokens, std::size_t at) {
    return tokens[at].kind == TokenKind::Mark && tokens[at].mark == '-' && tokens[at].glued;
}

RowFound longestOpened(std::span<const Token> tokens, std::size_t at, From from) {
    RowFound found;
    std::uint32_t node = 0;
    for (std::size_t i = at; i < tokens.size(); ++i) {
        if (i > at && isHyphen(tokens, i)) {
            continue;
        }
        node = tokens[i].word == kUnknown ? 0 : tables().phrases.step(node, tokens[i].word);
        if (node == 0) {
            break;
        }
        for (const Meaning& meaning : tables().phrases.at(node)) {
            if (meaning.from == from) {
                found = {i + 1, meaning.row, meaning.flag};
            }
        }
    }
    return found;
}

std::pair<std::string, std::size_t> whichAfter(std::span<const Token> tokens, std::size_t begin,
                                               std::size_t at) {
    return After(tokens, begin, at).run();
}

std::string roomNamed(const std::string& which, const std::string& room) {
    std::string name = which + " " + room;
    std::uint32_t node = 0;
    for (std::size_t at = 0; at < name.size();) {
        const std::size_t end = std::min(name.find(' ', at), name.size());
        const WordId word = tables().id(std::string_view(name).substr(at, end - at));
        node = word == kUnknown ? 0 : tables().phrases.step(node, word);
        if (node == 0) {
            return name;
        }
        at = end + 1;
    }
    for (const Meaning& meaning : tables().phrases.at(node)) {
        if (meaning.from == From::Space) {
            return tables().spaces[meaning.row].name;
        }
    }
    return name;
}

}  // namespace ledgerboard::intake
