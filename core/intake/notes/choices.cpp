#include "core/intake/notes/choices.h"

#include <algorithm>
#include <set>

#include "core/intake/notes/links.h"
#include "core/intake/notes/speech.h"

namespace ledgerboard::intake {

namespace {

// "open" alone says so only as a label or at the end: "OPEN: the island", "…or oak? Open".
bool saysOpen(const Sentence& sentence, const CueSpot& cue) {
    const bool word =
        wordIs(sentence, cue.span.begin, "open") && cue.span.end == cue.span.begin + 1;
    if (!word) {
        return true;
    }
    const bool ends = cue.span.end >= sentence.tokens.size();
    if (ends) {
        return cue.span.begin == 0 || isMark(sentence.tokens[cue.span.begin - 1], ".?,;");
    }
    return isMark(sentence.tokens[cue.span.end], ":") ||
           (cue.span.begin == 0 && isMark(sentence.tokens[cue.span.end], ".-"));
}

// "The old owner couldn't decide": whose choice it was is over.
bool ofOthers(const Sentence& sentence, const CueSpot& cue) {
    constexpr std::size_t kNear = 3;
    for (std::size_t i = cue.span.begin > kNear ? cue.span.begin - kNear : 0; i < cue.span.begin;
         ++i) {
        for (const std::string_view word : {"owner", "seller", "they", "somebodi", "whoever"}) {
            if (wordIs(sentence, i, word)) {
                return true;
            }
        }
    }
    return false;
}

// "No tile or stone", "not painted or sealed": both are denied and nothing is chosen.
bool isDenied(const Sentence& sentence, std::size_t at) {
    constexpr std::size_t kNear = 5;
    for (std::size_t i = at; i > 0 && at - i < kNear && !isMark(sentence.tokens[i - 1], ".;:?,");
         --i) {
        for (const std::string_view word : {"no", "not", "never", "without", "neither", "hardly"}) {
            if (wordIs(sentence, i - 1, word)) {
                return true;
            }
        }
    }
    return false;
}

// "Quartz or butcher block", "granite at 2,900 like next door or quartz": two stuffs to choose
// from.
bool partsStuffs(const Sentence& sentence, const Spots& spots, std::size_t joint) {
    constexpr std::size_t kBefore = 9;
    constexpr std::size_t kAfter = 6;
    std::set<WordId> left;
    std::set<WordId> right;
    for (const CueSpot& cue : spots.cues) {
        if (cue.cue != Cue::Material) {
            continue;
        }
        const WordId word = sentence.tokens[cue.span.begin].word;
        if (cue.span.end <= joint && joint - cue.span.end < kBefore) {
            left.insert(word);
        } else if (cue.span.begin > joint && cue.span.begin - joint < kAfter) {
            right.insert(word);
        }
    }
    return std::any_of(left.begin(), left.end(), [&](WordId word) {
        return std::any_of(right.begin(), right.end(), [&](WordId other) { return other != word; });
    });
}

// Whether the sentence says that it holds whichever way another choice goes.
bool isSettledEitherWay(const Sentence& sentence, const Spots& spots) {
    // "Counters are going either way.": that much is settled.
    for (std::size_t i = 1; i + 1 < sentence.tokens.size(); ++i) {
        // "In either case the floor needs paint.": so is this.
        const bool inCase = wordIs(sentence, i - 1, "in") && wordIs(sentence, i, "either") &&
                            wordIs(sentence, i + 1, "case");
        if (inCase) {
            return true;
        }
        if (wordIs(sentence, i, "either") && wordIs(sentence, i + 1, "way") &&
            !wordIs(sentence, i - 1, "go") && !spots.has(Cue::Open) &&
            std::any_of(spots.acts.begin(), spots.acts.end(),
                        [&](const ActSpot& act) { return act.span.end <= i; })) {
            return true;
        }
    }
    return false;
}

// "They get tested, and then we'll see.": the test is ordered, and nothing chosen yet.
bool waitsForTest(const Sentence& sentence, const Spots& spots, const CueSpot& cue) {
    const bool see = wordIs(sentence, cue.span.end - 1, "see");
    const bool either =
        std::any_of(sentence.tokens.begin(), sentence.tokens.end(),
                    [](const Token& token) { return tables().is(token.word, "or"); });
    return see && !either &&
           std::any_of(spots.acts.begin(), spots.acts.end(), [&](const ActSpot& act) {
               const ActRow& row = tables().acts[act.row];
               return row.treatment == model::Treatment::Inspect && row.weight > 1 &&
                      act.span.end <= cue.span.begin;
           });
}

std::ptrdiff_t countOf(const Sentence& sentence, std::string_view stem) {
    const WordId word = tables().id(stem);
    return std::count_if(sentence.tokens.begin(), sentence.tokens.end(), [&](const Token& token) {
        return token.word != kUnknown && token.word == word;
    });
}

// "might be", "maybe twenty": doubt about how things are, not about what to do.
bool hintsAtWork(const Sentence& sentence, const Spots& spots, const CueSpot& cue) {
    for (const std::string_view word : {"be", "need", "have", "want", "is", "not", "never"}) {
        if (wordIs(sentence, cue.span.end, word)) {
            return false;
        }
    }
    if (spots.endOf(Cue::Soft, cue.span.begin) > cue.span.end) {
        return false;  // "might as well"
    }
    // "a crack you could lose a quarter in": how wide it is.
    if (wordIs(sentence, cue.span.begin, "you") && countOf(sentence, "or") == 0) {
        return false;
    }
    const bool figure =
        std::any_of(spots.amounts.begin(), spots.amounts.end(), [&](const Amount& amount) {
            return amount.begin == cue.span.end || amount.begin == cue.span.end + 1;
        });
    // "never a radiator in here either, add one": no more than also not.
    const bool also = wordIs(sentence, cue.span.begin, "either") &&
                      cue.span.end < sentence.tokens.size() &&
                      sentence.tokens[cue.span.end].kind == TokenKind::Mark;
    if (figure || also) {
        return false;
    }
    return std::any_of(spots.acts.begin(), spots.acts.end(), [&](const ActSpot& act) {
        const model::Treatment treatment = tables().acts[act.row].treatment;
        return act.span.begin >= cue.span.end && act.span.begin <= cue.span.end + 5 &&
               tables().acts[act.row].weight > 1 && treatment != model::Treatment::Keep &&
               treatment != model::Treatment::Inspect &&
               partedBy(sentence, spots, cue.span.end, act.span.begin) < 2.0;
    });
}

bool within(const Spots& spots, Cue kind, std::size_t at) {
    return std::any_of(spots.cues.begin(), spots.cues.end(),
                       [&](const CueSpot& cue) { return cue.cue == kind && cue.span.holds(at); });
}

// "Oak at 1,150 or laminate at 390", "tile is 1,400, poured concrete is 2,300": two ways with a
// price each.
bool pricedBothWays(const Sentence& sentence, const Spots& spots, int materials) {
    for (std::size_t a = 0; a + 1 < spots.amounts.size(); ++a) {
        for (std::size_t b = a + 1; b < spots.amounts.size(); ++b) {
            const Amount& one = spots.amounts[a];
            const Amount& two = spots.amounts[b];
            if (!isPrice(one) || !isPrice(two) || two.begin > one.end + 26) {
                continue;
            }
            bool parted = false;
            std::size_t words = 0;
            for (std::size_t i = one.end; i < two.begin; ++i) {
                const bool joint = wordIs(sentence, i, "or") || wordIs(sentence, i, "vs") ||
                                   isMark(sentence.tokens[i], "/");
                parted = parted || joint;
                words += parted && !joint && sentence.tokens[i].kind == TokenKind::Word ? 1 : 0;
            }
            const bool work =
                std::any_of(spots.acts.begin(), spots.acts.end(),
                            [](const ActSpot& act) { return tables().acts[act.row].weight > 1; });
            if (parted && words > 0 && (materials > 1 || work || !spots.objects.empty())) {
                return true;
            }
            if (!parted && materials > 1 && spots.objects.size() <= 2 && b == a + 1) {
                return true;
            }
        }
    }
    return false;
}

// "eight or ten years ago": about so many.
bool joinsFigures(const Spots& spots, std::size_t joint) {
    bool before = false;
    bool after = false;
    for (const Amount& amount : spots.amounts) {
        if (amount.begin < joint && joint < amount.end) {
            return true;
        }
        before = before || amount.end == joint;
        after = after || amount.begin == joint + 1;
    }
    return before && after;
}

// "rip it out or paint it": work near the word at `i`, before it and behind it.
bool hasWorkAtBothSides(const Spots& spots, std::size_t i) {
    const auto isWork = [](const ActSpot& act) { return tables().acts[act.row].weight > 1; };
    const bool left = std::any_of(spots.acts.begin(), spots.acts.end(), [&](const ActSpot& act) {
        return act.span.end <= i && i - act.span.end < 14 && isWork(act);
    });
    const bool right = std::any_of(spots.acts.begin(), spots.acts.end(), [&](const ActSpot& act) {
        return act.span.begin > i && act.span.begin - i < 9 && isWork(act);
    });
    return left && right;
}

// Where "or" joins two ways.
struct Joined {
    bool both = false;
    bool work = false;      // with work or a stuff at both sides
    bool question = false;  // a question mark stands in the sentence
    std::size_t last = 0;   // token of the last of them
};

Joined waysJoined(const Sentence& sentence, const Spots& spots) {
    Joined joined;
    for (std::size_t i = 0; i < sentence.tokens.size(); ++i) {
        if (joinsWays(sentence, spots, i)) {
            joined.both = true;
            joined.last = i;
            joined.work = joined.work || hasWorkAtBothSides(spots, i) ||
                          (partsStuffs(sentence, spots, i) && !isDenied(sentence, i));
        }
        joined.question = joined.question || isMark(sentence.tokens[i], "?");
    }
    return joined;
}

// "Either …" before the last "or", or "this could be a closet or it could be a second bath".
bool saysEither(const Sentence& sentence, const Spots& spots, std::size_t lastOr, bool matter) {
    for (const CueSpot& cue : spots.cues) {
        if (cue.cue == Cue::Either && matter && cue.span.begin < lastOr &&
            !wordIs(sentence, cue.span.end, "way")) {
            return true;
        }
    }
    const bool things = spots.objects.size() + spots.spaces.size() > 0;
    for (std::size_t i = 0; i < lastOr; ++i) {
        const bool could = wordIs(sentence, i, "could") &&
                           (wordIs(sentence, i + 1, "be") || wordIs(sentence, i + 1, "becom") ||
                            wordIs(sentence, i + 1, "go"));
        if (could && things) {
            return true;
        }
    }
    return false;
}

}  // namespace

bool isPrice(const Amount& amount) {
    constexpr std::int64_t kLeast = 100'000;  // thousandths
    const std::int64_t year = amount.value / 1000;
    const bool yearly = amount.kind == AmountKind::Plain && year >= 1900 && year <= 2060 &&
                        !amount.paired && amount.value % 1000 == 0;
    return !yearly && (amount.kind == AmountKind::Money || amount.perUnit ||
                       (amount.kind == AmountKind::Plain && amount.value >= kLeast));
}

bool joinsWays(const Sentence& sentence, const Spots& spots, std::size_t at) {
    // "some winter or other", "nine or ten", "a week or so", "it stays or I walk": no choice.
    static const std::vector<std::string_view> kNoChoice = {
        "other", "another", "so", "thereabout", "someth", "more", "less", "twice", "i"};
    const auto idle = [&](std::string_view word) { return wordIs(sentence, at + 1, word); };
    return wordIs(sentence, at, "or") && std::none_of(kNoChoice.begin(), kNoChoice.end(), idle) &&
           !joinsFigures(spots, at) && !within(spots, Cue::Correction, at) &&
           !within(spots, Cue::Filler, at);
}

Openness opennessOf(const Sentence& sentence, const Spots& spots) {
    Openness open;
    if (isSettledEitherWay(sentence, spots)) {
        return open;
    }
    std::set<WordId> materials;
    for (const CueSpot& cue : spots.cues) {
        const bool joint = wordIs(sentence, cue.span.begin, "or");
        if (cue.cue == Cue::Open && saysOpen(sentence, cue) && !ofOthers(sentence, cue) &&
            !waitsForTest(sentence, spots, cue) && !(joint && isDenied(sentence, cue.span.begin))) {
            open.surely = true;
        } else if (cue.cue == Cue::Asks && !ofOthers(sentence, cue)) {
            const bool otherwise = wordIs(sentence, cue.span.begin, "if") ||
                                   wordIs(sentence, cue.span.begin, "otherwis") ||
                                   wordIs(sentence, cue.span.begin, "els");
            (otherwise ? open.otherwise : open.asks) = true;
        } else if (cue.cue == Cue::Undecided && !open.hinted && hintsAtWork(sentence, spots, cue)) {
            open.hinted = true;
            open.hintAt = cue.span.begin;
        } else if (cue.cue == Cue::Material) {
            materials.insert(sentence.tokens[cue.span.begin].word);
        }
    }
    open.materials = static_cast<int>(materials.size());
    const Joined joined = waysJoined(sentence, spots);
    open.both = joined.both;
    const bool matter = open.materials > 1 ||
                        std::any_of(spots.acts.begin(), spots.acts.end(), [](const ActSpot& act) {
                            return tables().acts[act.row].weight > 1 &&
                                   tables().acts[act.row].treatment != model::Treatment::Inspect;
                        });
    const bool either = joined.both && saysEither(sentence, spots, joined.last, matter);
    // "If the price is low I close it in; if not, it stays."
    const std::ptrdiff_t conditions = countOf(sentence, "if");
    open.thought = open.hinted || open.both || either;
    // "If it comes back clean we scrape; if not, we talk.": what is found decides.
    const bool found = countOf(sentence, "clean") > 0 || countOf(sentence, "test") > 0;
    open.condition = conditions > 0 && !found;
    open.surely = open.surely || (open.asks && matter && open.thought) ||
                  (open.otherwise && matter && !found && (open.thought || conditions > 1));
    // "in 412k / out 589k" are sums of the deal.
    open.priced = spots.facts.size() < 2 && pricedBothWays(sentence, spots, open.materials);
    open.choice = either || joined.work || open.priced ||
                  (joined.question && open.both && open.materials > 1) ||
                  (open.both && open.materials > 1 && spots.amounts.size() > 1);
    return open;
}

}  // namespace ledgerboard::intake
