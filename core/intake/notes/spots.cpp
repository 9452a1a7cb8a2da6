#include "core/intake/notes/spots.h"

#include <algorithm>

#include "core/intake/notes/spaces.h"

namespace ledgerboard::intake {

namespace {

// The words after a gap stand at most this many tokens after its head: "rip all of that old … out".
constexpr std::size_t kLongestGap = 9;
constexpr std::size_t kLongestPhrase = 8;

struct Longest {
    std::size_t end = 0;
    std::uint32_t row = kNone;
    std::uint8_t flag = 0;
    std::size_t words = 0;
};

bool isBreak(const Token& token) {
    return token.kind == TokenKind::Mark &&
           (token.mark == '.' || token.mark == ';' || token.mark == ':' || token.mark == '!' ||
            token.mark == '?');
}

// A hyphen between words is no more than a space: "double-hung".
bool isHyphen(std::span<const Token> tokens, std::size_t at) {
    return tokens[at].kind == TokenKind::Mark && tokens[at].mark == '-' && tokens[at].glued &&
           at + 1 < tokens.size() && tokens[at + 1].glued;
}

class Finder {
  public:
    explicit Finder(std::span<const Token> tokens) : tokens_(tokens) {}

    Spots run() {
        constexpr std::size_t kUsual = 8;  // of cues that begin at one word
        cues_.reserve(kUsual);
        found_.cues.reserve(tokens_.size());
        for (std::size_t i = 0; i < tokens_.size(); ++i) {
            if (tokens_[i].word != kUnknown) {
                walk(i);
            }
        }
        found_.amounts = amountsIn(tokens_);
        settleAnswers();
        settleStops();
        settleUnits();
        settleWorth();
        settleVerbs();
        found_.spaces = spacesIn(tokens_);
        settleCounts();
        return std::move(found_);
    }

  private:
    // Finds the longest phrase of each table that begins at `at`.
    void walk(std::size_t at) {
        Longest object;
        Longest act;
        Longest fact;
        heads_.clear();
        facts_.clear();
        cues_.clear();
        follow(0, at, false, object, act, fact);
        // "the roof's sound": "is" may hide in the word before.
        if (at > 0 && endsInIs(tokens_[at - 1].text)) {
            static const WordId kIs = tables().id("is");
            follow(tables().phrases.step(0, kIs), at, true, object, act, fact);
        }
        // "looks great" is "is great", though other phrases begin with "look".
        if (tables().looseness(tokens_[at].word) == kSeems && at + 1 < tokens_.size()) {
            static const WordId kIs = tables().id("is");
            follow(tables().phrases.step(0, kIs), at + 1, true, object, act, fact);
        }
        settle(at, object, act, fact);
    }

    // "out @ 362k", "board & batten": some marks are read as words.
    static WordId wordOrMark(const Token& token) {
        static const WordId kAt = tables().id("at");
        static const WordId kAnd = tables().id("and");
        const bool mark = token.kind == TokenKind::Mark;
        return mark && token.mark == '@' ? kAt : mark && token.mark == '&' ? kAnd : token.word;
    }

    // Follows the phrases from `node` on, word by word. "is completely shot": words that only
    // stress stand in no phrase's way; "looks sound" is "is sound".
    void follow(std::uint32_t node, std::size_t at, bool actsOnly, Longest& object, Longest& act,
                Longest& fact) {
        static const WordId kIs = tables().id("is");
        std::size_t words = 0;
        bool loose = actsOnly;
        for (std::size_t i = at; i < tokens_.size() && words < kLongestPhrase; ++i) {
            if (i > at && isHyphen(tokens_, i)) {
                continue;
            }
            const WordId word = i > at ? wordOrMark(tokens_[i]) : tokens_[i].word;
            std::uint32_t next = word == kUnknown ? 0 : tables().phrases.step(node, word);
            if (next == 0) {
                const std::uint8_t kind =
                    isManner(tokens_[i].text) ? kStresses : tables().looseness(word);
                if (kind == kStresses && (i > at || actsOnly)) {
                    loose = true;
                    continue;
                }
                loose = loose || kind == kSeems;
                next = kind == kSeems ? tables().phrases.step(node, kIs) : 0;
            }
            node = next;
            if (node == 0) {
                break;
            }
            ++words;
            for (const Meaning& meaning : tables().phrases.at(node)) {
                if (!loose || meaning.from == From::Act || meaning.from == From::GapHead) {
                    note(meaning, i + 1, at, object, act, fact);
                }
            }
        }
    }

    // "strongly", "beautifully"
    [[nodiscard]] static bool isManner(std::string_view text) {
        return text.size() > 5 && text.ends_with("ly") && text != "family" && text != "supply" &&
               text != "assembly" && text != "Family";
    }

    [[nodiscard]] static bool endsInIs(std::string_view text) {
        return text.size() > 2 && (text.ends_with("'s") || text.ends_with("\xE2\x80\x99s")) &&
               !text.starts_with("let") && !text.starts_with("Let");
    }

    void note(const Meaning& meaning, std::size_t end, std::size_t at, Longest& object,
              Longest& act, Longest& fact) {
        const Longest longest{end, meaning.row, meaning.flag, end - at};
        const bool longer = end > act.end;
        switch (meaning.from) {
            case From::Object:
                if (meaning.flag != kHeadingOnly && !isDoing(longest)) {
                    object = longest;
                }
                break;
            case From::Act:
                // "stain the siding", but "a stain on the ceiling".
                act = longer || (end == act.end && isOrder(meaning.row, act.row, at, end)) ? longest
                                                                                           : act;
                break;
            case From::GapHead:
                heads_.push_back(longest);
                break;
            case From::Fact:
                if (fact.end < end) {
                    facts_.clear();
                }
                fact = longest;
                facts_.push_back(meaning.row);
                break;
            case From::Caution:
                found_.cautions.push_back({{at, end}, meaning.row});
                break;
            case From::Cue:
                noteCue(static_cast<Cue>(meaning.row), end);
                break;
            default:
                break;
        }
    }

    // Of each cue the phrase found last.
    void noteCue(Cue cue, std::size_t end) {
        const auto known = std::find_if(cues_.begin(), cues_.end(),
                                        [&](const auto& one) { return one.first == cue; });
        if (known == cues_.end()) {
            cues_.emplace_back(cue, end);
        } else {
            known->second = end;
        }
    }

    // Of two treatments with the same words, whether the one that takes its objects after it is
    // meant: where the words stand as an order does.
    [[nodiscard]] bool isOrder(std::uint32_t row, std::uint32_t before, std::size_t at,
                               std::size_t end) const {
        const bool differ = tables().acts[row].side == Side::After && before != kNone &&
                            tables().acts[before].side == Side::Before;
        static const std::vector<WordId> kLeads = {
            tables().id("to"), tables().id("will"), tables().id("and"), tables().id("just"),
            tables().id("we"), tables().id("i"),    tables().id("then")};
        const bool leads =
            at == 0 || tokens_[at - 1].kind == TokenKind::Mark ||
            (tokens_[at - 1].word != kUnknown &&
             std::find(kLeads.begin(), kLeads.end(), tokens_[at - 1].word) != kLeads.end());
        static const WordId kOn = tables().id("on");
        static const WordId kIs = tables().id("is");
        const bool follows = end < tokens_.size() && tokens_[end].kind == TokenKind::Word &&
                             tokens_[end].word != kOn && tokens_[end].word != kIs &&
                             !tokens_[end - 1].text.ends_with("ed") &&
                             !tokens_[end - 1].text.ends_with('s');
        return differ && leads && follows;
    }

    void settle(std::size_t at, const Longest& object, const Longest& act, const Longest& fact) {
        std::sort(cues_.begin(), cues_.end());
        for (const auto& [cue, end] : cues_) {
            found_.cues.push_back({{at, end}, cue});
        }
        if (fact.row != kNone && at >= factsEnd_) {
            for (const std::uint32_t row : facts_) {
                found_.facts.push_back({{at, fact.end}, row});
            }
            factsEnd_ = fact.end;
        }
        if (object.row != kNone && at >= objectsEnd_) {
            ObjectSpot spot;
            spot.span = {at, object.end};
            spot.object = object.row;
            spot.material = object.flag == kMaterial;
            static const WordId kPorch = tables().id("porch");
            spot.porch = kPorch != kUnknown && tokens_[at].word == kPorch;
            found_.objects.push_back(spot);
            objectsEnd_ = object.end;
        }
        if (at < actsEnd_) {
            return;
        }
        ActSpot spot;
        if (act.row != kNone) {
            spot.span = {at, act.end};
            spot.row = act.row;
        }
        for (const Longest& head : heads_) {
            const Span tail = tailOf(head);
            if (tail.end > tail.begin && head.end >= spot.span.end) {
                spot.span = {at, head.end};
                spot.row = head.row;
                spot.tail = tail;
            }
        }
        if (spot.row != kNone) {
            found_.acts.push_back(spot);
            actsEnd_ = spot.span.end;
            if (spot.tail.end > spot.tail.begin) {
                tails_.push_back(spot.tail);
            }
        }
    }

    // Where the words after the gap stand, if they do before the clause ends.
    [[nodiscard]] Span tailOf(const Longest& head) const {
        const std::vector<WordId>& tail = tables().acts[head.row].tail;
        // "floor good, paint, window AC out": the verb is said and done with.
        if (head.end < tokens_.size() && tokens_[head.end].kind == TokenKind::Mark &&
            tokens_[head.end].mark == ',') {
            return {};
        }
        for (std::size_t i = head.end; i < tokens_.size() && i < head.end + kLongestGap; ++i) {
            if (isBreak(tokens_[i])) {
                break;
            }
            // "wants regrouting, nothing more"
            static const WordId kNothing = tables().id("nothing");
            bool same = i > head.end && (kNothing == kUnknown || tokens_[i - 1].word != kNothing);
            for (std::size_t k = 0; same && k < tail.size(); ++k) {
                same = i + k < tokens_.size() && tokens_[i + k].word == tail[k];
            }
            // "put my head in the hatch": a lone particle must close its clause, "in" above all.
            if (same && (tail.size() > 1 || closes(i + 1) || parts(i))) {
                return {i, i + tail.size()};
            }
        }
        return {};
    }

    // "take the wall down between here and the hall": a particle that needs nothing after it.
    [[nodiscard]] bool parts(std::size_t at) const {
        static const std::vector<WordId> kParting = {tables().id("out"),  tables().id("off"),
                                                     tables().id("down"), tables().id("up"),
                                                     tables().id("away"), tables().id("back")};
        static const std::vector<WordId> kAfter = {tables().id("the"), tables().id("a"),
                                                   tables().id("my")};
        const auto in = [&](WordId word, const std::vector<WordId>& words) {
            return word != kUnknown && std::find(words.begin(), words.end(), word) != words.end();
        };
        return in(tokens_[at].word, kParting) && !in(tokens_[at + 1].word, kAfter);
    }

    // Whether a clause can end before token `at`.
    [[nodiscard]] bool closes(std::size_t at) const {
        if (at >= tokens_.size() || tokens_[at].kind == TokenKind::Mark) {
            return true;
        }
        static const std::vector<WordId> kJoints = [] {
            std::vector<WordId> ids;
            for (const std::string_view word : {"and", "but", "so", "then", "for", "with", "of",
                                                "befor", "too", "becaus", "or", "if", "while"}) {
                ids.push_back(tables().id(word));
            }
            return ids;
        }();
        return tokens_[at].word != kUnknown &&
               std::find(kJoints.begin(), kJoints.end(), tokens_[at].word) != kJoints.end();
    }

    // "No, vinyl plank.": an answer, not that there is none.
    void settleAnswers() {
        static const WordId kNo = tables().id("no");
        const bool answers = tokens_.size() > 1 && kNo != kUnknown && tokens_[0].word == kNo &&
                             tokens_[1].kind == TokenKind::Mark &&
                             (tokens_[1].mark == ',' || tokens_[1].mark == '.');
        const auto first = [](const auto& spot) {
            return spot.span.begin == 0 && spot.span.end == 1;
        };
        if (answers) {
            std::erase_if(found_.acts, first);
            std::erase_if(found_.cues, first);
        }
    }

    // What stands within a phrase that only looks like an object or a treatment is dropped.
    void settleStops() {
        const auto stopped = [&](const Span& span) {
            return std::any_of(found_.cues.begin(), found_.cues.end(), [&](const CueSpot& cue) {
                return cue.cue == Cue::Stop && cue.span.begin <= span.begin &&
                       span.end <= cue.span.end;
            });
        };
        const auto inTail = [&](const Span& span) {
            return std::any_of(tails_.begin(), tails_.end(), [&](const Span& tail) {
                return tail.begin <= span.begin && span.end <= tail.end;
            });
        };
        // "built in 1950", but "keep the built-in".
        const auto joined = [&](const Span& span) {
            return span.end == span.begin + 3 && tokens_[span.begin + 1].kind == TokenKind::Mark &&
                   tokens_[span.begin + 1].glued && tokens_[span.begin + 2].glued;
        };
        std::erase_if(found_.objects, [&](const ObjectSpot& spot) {
            return stopped(spot.span) && !joined(spot.span);
        });
        std::erase_if(found_.acts,
                      [&](const ActSpot& spot) { return stopped(spot.span) || inTail(spot.span); });
    }

    // "the supply pipe, eight fixtures": the unit of a figure is no object of its own.
    void settleUnits() {
        static const WordId kFixture = tables().id("fixture");
        const auto counts = [&](const ObjectSpot& object) {
            return object.span.end <= object.span.begin + 1 && found_.objects.size() > 1 &&
                   tokens_[object.span.begin].word == kFixture;
        };
        const auto isUnit = [&](const ObjectSpot& object) {
            return std::any_of(
                found_.amounts.begin(), found_.amounts.end(), [&](const Amount& amount) {
                    return amount.begin > 0 && tokens_[amount.begin - 1].kind == TokenKind::Mark &&
                           amount.begin < object.span.begin && object.span.end <= amount.end + 1 &&
                           counts(object);
                });
        };
        std::erase_if(found_.objects, isUnit);
        // "walk 12 Nov": a walk through the house.
        static const WordId kWalk = tables().id("walk");
        std::erase_if(found_.objects, [&](const ObjectSpot& object) {
            return tokens_[object.span.begin].word == kWalk && object.span.end < tokens_.size() &&
                   object.span.end == object.span.begin + 1 &&
                   tokens_[object.span.end].kind == TokenKind::Number;
        });
        // "twelve squares and while they're up there": no squaring up.
        std::erase_if(found_.acts, [&](const ActSpot& act) {
            return std::any_of(found_.amounts.begin(), found_.amounts.end(),
                               [&](const Amount& amount) {
                                   return amount.begin < act.span.begin &&
                                          act.span.begin < amount.end && act.span.end <= amount.end;
                               });
        });
    }

    // "Bedrooms, all three: new carpet": how many rooms there are, not things.
    void settleCounts() {
        constexpr std::size_t kNear = 3;
        for (const SpaceSpot& space : found_.spaces) {
            std::erase_if(found_.amounts, [&](const Amount& amount) {
                return space.kind == SpaceKind::Group && amount.kind == AmountKind::Plain &&
                       amount.value == std::int64_t{space.count} * 1000 &&
                       amount.begin > space.span.end && amount.begin <= space.span.end + kNear &&
                       tokens_[amount.begin - 1].plain == "all";
            });
        }
    }

    // "R-30 blown": insulation by what it is worth.
    void settleWorth() {
        static const std::uint32_t kInsulation = tables().objectNamed("insulation");
        constexpr std::int64_t kLeast = 8'000;  // thousandths
        constexpr std::int64_t kMost = 60'000;
        const bool named =
            std::any_of(found_.objects.begin(), found_.objects.end(),
                        [](const ObjectSpot& spot) { return spot.object == kInsulation; });
        for (std::size_t i = 0; i + 2 < tokens_.size() && !named; ++i) {
            const Token& figure = tokens_[i + 2];
            if (tokens_[i].text != "R" || tokens_[i + 1].mark != '-' || !tokens_[i + 1].glued ||
                figure.kind != TokenKind::Number || figure.value < kLeast || figure.value > kMost) {
                continue;
            }
            ObjectSpot spot;
            spot.span = {i, i + 3};
            spot.object = kInsulation;
            const auto at =
                std::find_if(found_.objects.begin(), found_.objects.end(),
                             [&](const ObjectSpot& other) { return other.span.begin > i; });
            found_.objects.insert(at, spot);
            return;
        }
    }

    // "pulled" is no pull and "walled" no wall: a form of doing is an object only where the table
    // writes it so.
    [[nodiscard]] bool isDoing(const Longest& object) const {
        const std::string_view text = tokens_[object.end - 1].text;
        const std::string& plain = tokens_[object.end - 1].plain;
        // "walls pnt", "walls paint": an order in short, and no wall paint.
        const std::string* meaning = tables().lexicon.respelling(plain);
        const bool paints =
            object.words > 1 && plain == "paint" && tokens_[object.end - 2].text.ends_with('s');
        if (paints || (meaning != nullptr && *meaning == "paint" && object.words > 1)) {
            return true;
        }
        const bool doing = (text.ends_with("ed") || text.ends_with("ing")) && text.size() > 5;
        const ObjectRow& row = tables().objects[object.row];
        return doing && !(text.ends_with("ed") ? row.hasDone : row.hasDoing);
    }

    [[nodiscard]] bool cueAt(Cue cue, std::size_t at) const { return found_.endOf(cue, at) > at; }

    // "tile ok", "paint peeling": something is said of it at once.
    [[nodiscard]] bool isSubject(const Span& span) const {
        return std::any_of(found_.acts.begin(), found_.acts.end(), [&](const ActSpot& act) {
            // "tile (R)", "tile: ok"
            const bool code = act.span.begin == span.end + 1 &&
                              (tokens_[span.end].mark == '(' || tokens_[span.end].mark == ':' ||
                               tokens_[span.end].mark == '-');
            const bool ends =
                act.span.end >= tokens_.size() || tokens_[act.span.end].kind == TokenKind::Mark;
            return code || (act.span.begin == span.end &&
                            (tables().acts[act.row].side == Side::Before || ends) &&
                            tables().acts[act.row].object == kNone);
        });
    }

    // "Put tile down": what stands between a verb and its particle is a thing.
    [[nodiscard]] bool isInGap(const Span& span) const {
        return std::any_of(found_.acts.begin(), found_.acts.end(), [&](const ActSpot& act) {
            return act.tail.end > act.tail.begin && act.span.end <= span.begin &&
                   span.end <= act.tail.begin;
        });
    }

    // "Paint the trim" or "the paint is peeling": a treatment or an object?
    [[nodiscard]] bool actsHere(const Span& span) const {
        const std::string_view last = tokens_[span.end - 1].text;
        // "insulation ok" is no order to insulate; "pnt" is one to paint.
        if (last.ends_with('s') || last.ends_with('S') || last.ends_with("tion")) {
            return false;
        }
        const std::string* meaning = tables().lexicon.respelling(tokens_[span.end - 1].plain);
        if (meaning != nullptr && *meaning == "paint") {
            return true;
        }
        if (isSubject(span) || isInGap(span)) {
            return false;
        }
        if (span.begin == 0 || last.ends_with("ed")) {
            return true;
        }
        const Token& before = tokens_[span.begin - 1];
        // "vinyl floor > tile": what is to be there.
        if (before.kind == TokenKind::Mark && before.mark == '>') {
            return false;
        }
        // "walls paint, ceiling ok": what is done to the thing before, in shorthand.
        const bool closes = span.end >= tokens_.size() || tokens_[span.end].kind == TokenKind::Mark;
        const bool behind =
            closes && span.end == span.begin + 1 &&
            std::any_of(found_.objects.begin(), found_.objects.end(),
                        [&](const ObjectSpot& object) { return object.span.end == span.begin; });
        if (behind) {
            return true;
        }
        // "the tile here is fine": a noun.
        static const std::vector<WordId> kArticles = {
            tables().id("the"),   tables().id("this"), tables().id("that"),    tables().id("these"),
            tables().id("those"), tables().id("my"),   tables().id("our"),     tables().id("your"),
            tables().id("a"),     tables().id("old"),  tables().id("existing")};
        if (before.kind == TokenKind::Word && before.word != kUnknown &&
            std::find(kArticles.begin(), kArticles.end(), before.word) != kArticles.end()) {
            return false;
        }
        static const WordId kIs = tables().id("is");
        static const WordId kBe = tables().id("be");
        const bool going = before.word != kUnknown && (before.word == kIs || before.word == kBe ||
                                                       before.plain.ends_with("'m"));
        if (before.kind == TokenKind::Mark || (going && last.ends_with("ing"))) {
            return true;
        }
        if (span.end < tokens_.size() &&
            (cueAt(Cue::Small, span.end) || cueAt(Cue::Pronoun, span.end))) {
            const bool copula = cueAt(Cue::Passive, span.end);
            return !copula;
        }
        static const WordId kTo = tables().id("to");
        static const WordId kWill = tables().id("will");
        static const WordId kAnd = tables().id("and");
        static const WordId kJust = tables().id("just");
        static const WordId kThen = tables().id("then");
        static const WordId kWe = tables().id("we");
        static const WordId kI = tables().id("i");
        const WordId word = before.word;
        // "new backer board and tile": one of a row of things.
        const bool row = word == kAnd && std::any_of(found_.objects.begin(), found_.objects.end(),
                                                     [&](const ObjectSpot& object) {
                                                         return object.span.end + 1 == span.begin;
                                                     });
        if (row) {
            return false;
        }
        return word != kUnknown && (word == kTo || word == kWill || word == kAnd || word == kJust ||
                                    word == kThen || word == kWe || word == kI);
    }

    void settleVerbs() {
        for (ObjectSpot& object : found_.objects) {
            std::erase_if(found_.acts, [&](ActSpot& act) {
                const bool inside =
                    object.span.begin <= act.span.begin && act.span.end <= object.span.end;
                const bool shorter =
                    act.span.end - act.span.begin < object.span.end - object.span.begin;
                if (!inside) {
                    const bool covered =
                        act.span.begin <= object.span.begin && object.span.end <= act.span.end;
                    object.verb = object.verb || covered;
                    act.names = act.names ||
                                (covered && act.span.end == object.span.end &&
                                 act.span.begin < object.span.begin &&
                                 tables().acts[act.row].treatment != model::Treatment::Refinish &&
                                 tables().acts[act.row].object == object.object);
                    return false;
                }
                if (shorter || !actsHere(act.span)) {
                    return true;
                }
                object.verb = true;
                return false;
            });
        }
        std::erase_if(found_.objects, [](const ObjectSpot& spot) { return spot.verb; });
    }

    std::span<const Token> tokens_;
    Spots found_;
    std::vector<Longest> heads_;
    std::vector<std::uint32_t> facts_;
    std::vector<std::pair<Cue, std::size_t>> cues_;  // that begin at a place, and where they end
    std::vector<Span> tails_;
    std::size_t objectsEnd_ = 0;
    std::size_t actsEnd_ = 0;
    std::size_t factsEnd_ = 0;
};

}  // namespace

bool Spots::has(Cue cue) const {
    return std::any_of(cues.begin(), cues.end(),
                       [&](const CueSpot& spot) { return spot.cue == cue; });
}

std::vector<CueSpot>::const_iterator Spots::cuesFrom(std::size_t at) const {
    return std::lower_bound(
        cues.begin(), cues.end(), at,
        [](const CueSpot& one, std::size_t begin) { return one.span.begin < begin; });
}

std::size_t Spots::endOf(Cue cue, std::size_t at) const {
    for (auto spot = cuesFrom(at); spot != cues.end() && spot->span.begin == at; ++spot) {
        if (spot->cue == cue) {
            return spot->span.end;
        }
    }
    return at;
}

Spots findSpots(std::span<const Token> tokens) {
    Spots spots = Finder(tokens).run();
    std::vector<Span> fillers;
    for (const CueSpot& cue : spots.cues) {
        if (cue.cue == Cue::Filler) {
            fillers.push_back(cue.span);
        }
    }
    // "Paint, and that's it.": stands for nothing.
    std::erase_if(spots.cues, [&](const CueSpot& cue) {
        return cue.cue == Cue::Pronoun &&
               std::any_of(fillers.begin(), fillers.end(), [&](const Span& filler) {
                   return filler.begin <= cue.span.begin && filler.end >= cue.span.end;
               });
    });
    return spots;
}

}  // namespace ledgerboard::intake
