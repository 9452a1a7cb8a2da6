// The part of the reader that takes bare lists of things for work: "Tub, surround, toilet." after
// "gut it", "Backsplash, 30 feet of tile.", "new: cabs; ctop; sink".
#include <algorithm>

#include "core/intake/notes/one_of.h"
#include "core/intake/notes/reader.h"
#include "core/intake/notes/speech.h"

namespace ledgerboard::intake {

using model::Treatment;

namespace {

constexpr int kGutGoesOn = 3;  // sentences

std::uint32_t actNamed(std::string_view phrase) {
    const auto& acts = tables().acts;
    const auto row = std::find_if(acts.begin(), acts.end(),
                                  [&](const ActRow& act) { return act.phrase == phrase; });
    return row == acts.end() ? kNone : static_cast<std::uint32_t>(row - acts.begin());
}

// Gives the object at `loose` the treatment of `row`, as if it had been said.
void implyAct(Spots& spots, Linked& linked, std::size_t loose, std::uint32_t row) {
    const ObjectSpot& object = spots.objects[loose];
    spots.acts.push_back(
        ActSpot{.span = {object.span.begin, object.span.begin + 1}, .tail = {}, .row = row});
    linked.said.push_back(Said{.object = object.object,
                               .act = static_cast<std::uint32_t>(spots.acts.size() - 1),
                               .at = object.span.begin,
                               .spot = loose});
}

// "I want the whole thing new.": everything named after it is.
bool wantsAllNew(const Sentence& sentence, const Spots& spots) {
    const bool all = std::any_of(spots.cues.begin(), spots.cues.end(), [&](const CueSpot& cue) {
        const std::string& last = sentence.tokens[cue.span.end - 1].plain;
        return cue.cue == Cue::Pronoun &&
               (cue.span.end > cue.span.begin + 1 || last == "everything") &&
               (last == "thing" || last == "it" || last == "everything" || last == "lot");
    });
    return all && spots.objects.empty() && !spots.has(Cue::Negation) &&
           std::any_of(spots.acts.begin(), spots.acts.end(), [](const ActSpot& act) {
               const ActRow& row = tables().acts[act.row];
               return row.fresh && row.phrase.find("new") != std::string::npos;
           });
}

// Whether a list "new: …" begins in the sentence.
bool opensList(const Sentence& sentence, const Spots& spots) {
    if (wantsAllNew(sentence, spots)) {
        return true;
    }
    return std::any_of(spots.acts.begin(), spots.acts.end(), [&](const ActSpot& act) {
        const std::size_t end = act.span.end;
        return tables().acts[act.row].fresh && end < sentence.tokens.size() &&
               sentence.tokens[end].kind == TokenKind::Mark && sentence.tokens[end].mark == ':';
    });
}

// "Hard-wired smoke alarms, seven.": how many of a thing there are to be.
bool isCounted(const Sentence& sentence, const Spots& spots) {
    return std::any_of(spots.amounts.begin(), spots.amounts.end(), [&](const Amount& amount) {
        const bool after =
            std::any_of(spots.objects.begin(), spots.objects.end(), [&](const ObjectSpot& object) {
                return object.span.end + 1 == amount.begin &&
                       sentence.tokens[object.span.end].kind == TokenKind::Mark;
            });
        const bool closes = amount.end >= sentence.tokens.size() ||
                            sentence.tokens[amount.end].kind == TokenKind::Mark ||
                            wordIs(sentence, amount.end, "of");
        return amount.kind == AmountKind::Plain && amount.value <= 60'000 && after && closes;
    });
}

bool guts(const Sentence& sentence) {
    static const WordId kGut = tables().id("gut");
    static const WordId kSuit = tables().id("suit");
    return std::any_of(sentence.tokens.begin(), sentence.tokens.end(), [](const Token& token) {
        return token.word != kUnknown && (token.word == kGut || token.word == kSuit);
    });
}

// Nothing but things, figures and small words.
bool isFragment(const Sentence& sentence, const Spots& spots, std::size_t from, std::size_t end) {
    for (const Cue cue : {Cue::Passive, Cue::Chatter, Cue::Aside, Cue::Negation, Cue::Absent,
                          Cue::Hypothetical, Cue::Open, Cue::Same, Cue::Refused}) {
        const bool within =
            std::any_of(spots.cues.begin(), spots.cues.end(), [&](const CueSpot& spot) {
                return spot.cue == cue && spot.span.begin >= from && spot.span.begin < end;
            });
        if (within) {
            return false;
        }
    }
    std::size_t others = 0;
    for (std::size_t i = from; i < end; ++i) {
        const auto holds = [&](const auto& list) {
            return std::any_of(list.begin(), list.end(),
                               [&](const auto& one) { return one.span.holds(i); });
        };
        const bool figure =
            std::any_of(spots.amounts.begin(), spots.amounts.end(),
                        [&](const Amount& amount) { return amount.begin <= i && i < amount.end; });
        const bool small = std::any_of(spots.cues.begin(), spots.cues.end(), [&](const CueSpot& c) {
            const bool kind = c.cue == Cue::Small || c.cue == Cue::Material || c.cue == Cue::With;
            return kind && c.span.holds(i);
        });
        const bool mark = sentence.tokens[i].kind == TokenKind::Mark;
        // "- hall bath toilet": the line's own room.
        if (i < from + 4 && !spots.spaces.empty() && spots.spaces.front().span.begin == from &&
            spots.spaces.front().span.holds(i)) {
            continue;
        }
        if (!holds(spots.acts) && !holds(spots.objects) && !figure && !small && !mark &&
            !wordIs(sentence, i, "and")) {
            ++others;
        }
    }
    return others <= 1;
}

// "Sink untouched", "Peel the paper": something is said that no table knows.
bool saysUnknown(const Sentence& sentence, const Spots& spots, std::size_t from) {
    if (wordIs(sentence, from + 1, "the") && sentence.tokens[from].word == kUnknown) {
        return true;
    }
    const auto last = std::max_element(
        spots.objects.begin(), spots.objects.end(),
        [](const ObjectSpot& a, const ObjectSpot& b) { return a.span.end < b.span.end; });
    for (std::size_t i = last == spots.objects.end() ? from : last->span.end;
         i < sentence.tokens.size(); ++i) {
        const bool known =
            std::any_of(spots.cues.begin(), spots.cues.end(),
                        [&](const CueSpot& cue) { return cue.span.holds(i); }) ||
            std::any_of(spots.amounts.begin(), spots.amounts.end(),
                        [&](const Amount& amount) { return amount.begin <= i && i < amount.end; });
        if (sentence.tokens[i].kind == TokenKind::Word && !known) {
            return true;
        }
    }
    return false;
}

// Whether nothing is said of the thing in its part of the line: "…; LVP 120 sf; window ok".
bool standsAlone(const Sentence& sentence, const Spots& spots, std::size_t from, const Span& span) {
    const auto parts = [&](std::size_t at) {
        const Token& token = sentence.tokens[at];
        return token.kind == TokenKind::Mark &&
               (token.mark == ',' || token.mark == ';' || token.mark == '.' || token.mark == '/');
    };
    std::size_t begin = span.begin;
    while (begin > from && !parts(begin - 1)) {
        --begin;
    }
    std::size_t end = span.end;
    while (end < sentence.tokens.size() && !parts(end)) {
        ++end;
    }
    return isFragment(sentence, spots, begin, end);
}

// Whether no treatment stands in its part of the line: "BR2: carpet, paint".
bool isBare(const Sentence& sentence, const Spots& spots, std::size_t from, const Span& span) {
    const auto parts = [&](std::size_t at) {
        const Token& token = sentence.tokens[at];
        return token.kind == TokenKind::Mark && token.mark != '\'' && token.mark != '+';
    };
    const auto acts = [&](std::size_t at) {
        return std::any_of(spots.acts.begin(), spots.acts.end(),
                           [&](const ActSpot& act) { return act.span.holds(at); });
    };
    for (std::size_t i = span.begin; i-- > from && !parts(i);) {
        if (acts(i)) {
            return false;
        }
    }
    for (std::size_t i = span.end; i < sentence.tokens.size() && !parts(i); ++i) {
        if (acts(i)) {
            return false;
        }
    }
    return true;
}

// Things named with a word that asks for them.
bool asksForIt(const Sentence& sentence, const Spots& spots, const Placed& placed,
               const Linked& linked) {
    // "Then plank.", "And carpet.", "Plank again."
    bool next = false;
    for (const std::string_view lead : {"then", "and", "plus", "also", "just"}) {
        next = next || wordIs(sentence, placed.from, lead);
    }
    for (const std::size_t loose : linked.loose) {
        next = next || wordIs(sentence, spots.objects[loose].span.end, "again");
    }
    if (linked.loose.empty()) {
        return next;
    }
    // "Sink, the deep kind."
    for (std::size_t i = 2; i + 1 < sentence.tokens.size(); ++i) {
        const bool kind = wordIs(sentence, i, "kind") || wordIs(sentence, i, "sort") ||
                          wordIs(sentence, i, "type") || wordIs(sentence, i, "style");
        next = next || (kind && sentence.tokens[i + 1].kind == TokenKind::Mark &&
                        spots.objects[linked.loose.front()].span.begin <= placed.from + 1);
    }
    // "Proper timber door please."
    bool please = false;
    for (std::size_t i = 1; i < sentence.tokens.size(); ++i) {
        please = please || wordIs(sentence, i, "pleas");
    }
    return next || (please && !spots.has(Cue::Negation));
}

// A floor laid over what is there.
bool coversHere(const Sentence& sentence, const Spots& spots, const Placed& placed) {
    // "Vinyl plank on the floor.", "Plank through here too."
    const bool covers = spots.objects.size() == 1 &&
                        spots.objects.front().span.begin <= placed.from + 1 &&
                        tables().objects[spots.objects.front().object].family == "floor";
    bool where = false;
    for (std::size_t i = placed.from; covers && i < sentence.tokens.size(); ++i) {
        for (const std::string_view word : {"floor", "throughout", "through", "instead"}) {
            const bool on = word != "floor" || (i > 1 && wordIs(sentence, i - 2, "on"));
            where =
                where || (on && wordIs(sentence, i, word) && !spots.objects.front().span.holds(i));
        }
    }
    return covers && where;
}

}  // namespace

// "Mouse droppings in the drawers.": what nobody wants is to be looked into.
void Reader::takeTroubles(Spots& spots, Linked& linked) {
    static const std::uint32_t kImplied = actNamed("implied by the trouble");
    if (kImplied == kNone || spots.has(Cue::Chatter)) {
        return;
    }
    for (const std::size_t loose : linked.loose) {
        const ObjectSpot& object = spots.objects[loose];
        // "No mice", but "a smell, not gas".
        const bool denied =
            std::any_of(spots.cues.begin(), spots.cues.end(), [&](const CueSpot& cue) {
                const bool kind =
                    cue.cue == Cue::Negation || cue.cue == Cue::Absent || cue.cue == Cue::Refused;
                return kind && cue.span.begin <= object.span.begin &&
                       cue.span.end + 4 >= object.span.begin;
            });
        if (denied) {
            continue;
        }
        if (tables().objects[object.object].family != "trouble" || object.landmark) {
            continue;
        }
        implyAct(spots, linked, loose, kImplied);
    }
}

// "Water heater runs on propane, dated 2019": a thing of late years, of which nothing else is said,
// stays.
void Reader::takeYears(const Sentence& sentence, Spots& spots, Linked& linked) {
    static const std::uint32_t kImplied = actNamed("implied by its year");
    constexpr std::size_t kNear = 8;
    const bool other = std::any_of(linked.said.begin(), linked.said.end(), [&](const Said& said) {
        return tables().acts[spots.acts[said.act].row].weight > 0;
    });
    if (kImplied == kNone || other || spots.has(Cue::Chatter)) {
        return;
    }
    std::erase_if(linked.loose, [&](std::size_t loose) {
        const ObjectSpot object = spots.objects[loose];
        const bool late =
            std::any_of(spots.amounts.begin(), spots.amounts.end(), [&](const Amount& amount) {
                const std::int64_t year = amount.value / 1000;
                bool parted = false;
                for (std::size_t i = object.span.end; i < amount.begin; ++i) {
                    parted =
                        parted || sentence.tokens[i].mark == '.' || sentence.tokens[i].mark == ';';
                }
                return amount.kind == AmountKind::Plain && amount.value % 1000 == 0 &&
                       year >= 2008 && year <= 2035 && amount.begin >= object.span.end &&
                       amount.begin <= object.span.end + kNear && !parted;
            });
        if (!late || object.landmark || object.material) {
            return false;
        }
        implyAct(spots, linked, loose, kImplied);
        return true;
    });
}

// "cpt out, LVP 420 sf": a thing with nothing but its measure beside it is to be had.
void Reader::takeMeasured(const Sentence& sentence, Spots& spots, const Placed& placed,
                          Linked& linked) {
    static const std::uint32_t kImplied = actNamed("implied by the list");
    if (kImplied == kNone || linked.loose.empty()) {
        return;
    }
    std::erase_if(linked.loose, [&](std::size_t loose) {
        const ObjectSpot& object = spots.objects[loose];
        const bool measured =
            std::any_of(spots.amounts.begin(), spots.amounts.end(), [&](const Amount& amount) {
                const bool of =
                    amount.kind == AmountKind::Measured && wordIs(sentence, amount.end, "of") &&
                    amount.end + 4 >= object.span.begin && amount.end < object.span.begin;
                return of ||
                       ((amount.kind == AmountKind::Measured || amount.kind == AmountKind::Money) &&
                        amount.begin >= object.span.end && amount.begin <= object.span.end + 1);
            });
        // Shorthand lists what is to be had: "carpet, paint, closet doors".
        const bool asks = !sentence.tokens.empty() && sentence.tokens.back().mark == '?';
        const bool listed = sentence.terse && !asks && !placed.onlyPlace && !spots.acts.empty() &&
                            isBare(sentence, spots, placed.from, object.span);
        // "LVP 120 sf; window ok", "same plank thru here 165 sf"
        const bool laid =
            object.material && (sentence.terse || sentence.bullet) &&
            tables().objects[object.object].family == "floor" &&
            std::any_of(spots.amounts.begin(), spots.amounts.end(), [&](const Amount& amount) {
                return amount.kind == AmountKind::Measured && amount.begin >= object.span.end &&
                       amount.begin <= object.span.end + 3;
            });
        if (!(measured || listed || laid) || object.landmark || (object.material && !laid) ||
            !standsAlone(sentence, spots, placed.from, object.span)) {
            return false;
        }
        implyAct(spots, linked, loose, kImplied);
        return true;
    });
}

// "Carpet and paint.", "this one gets paint and carpet": what is laid, named beside an order to
// paint.
void Reader::takeLaid(const Sentence& sentence, Spots& spots, Linked& linked) {
    static const std::uint32_t kImplied = actNamed("implied by the list");
    if (kImplied == kNone || spots.has(Cue::Negation) || spots.has(Cue::Chatter)) {
        return;
    }
    const auto joint = [&](std::size_t at) {
        return wordIs(sentence, at, "and") ||
               (at < sentence.tokens.size() && sentence.tokens[at].kind == TokenKind::Mark &&
                sentence.tokens[at].mark == ',');
    };
    std::erase_if(linked.loose, [&](std::size_t loose) {
        const ObjectSpot object = spots.objects[loose];
        const bool laid = tables().objects[object.object].family == "floor" && !object.landmark;
        const bool beside =
            std::any_of(spots.acts.begin(), spots.acts.end(), [&](const ActSpot& act) {
                const bool paints = tables().acts[act.row].treatment == Treatment::Refinish &&
                                    tables().acts[act.row].object != kNone;
                const bool after = object.span.begin == act.span.end + 1 && joint(act.span.end);
                const bool before = object.span.end + 1 == act.span.begin && joint(object.span.end);
                const bool and2 = object.span.end == act.span.begin &&
                                  tables().acts[act.row].phrase.starts_with("and ");
                return paints && (after || before || and2);
            });
        if (!laid || !beside) {
            return false;
        }
        implyAct(spots, linked, loose, kImplied);
        return true;
    });
}

// "White ones instead.", "Three steel ones with footings.": said with no more than a figure and
// what they are like, new ones of what was spoken of.
void Reader::takeOnes(const Sentence& sentence, Spots& spots, const Placed& placed,
                      Linked& linked) {
    static const std::uint32_t kImplied = actNamed("implied by the list");
    static const std::vector<std::string_view> kPoint = {"this", "that",  "which", "no",    "every",
                                                         "the",  "those", "these", "other", "of"};
    constexpr std::size_t kShort = 9;
    constexpr std::size_t kNear = 4;
    const bool asks = !sentence.tokens.empty() && sentence.tokens.back().mark == '?';
    if (kImplied == kNone || meant_.objects.empty() || asks || placed.moved ||
        !linked.said.empty() || sentence.tokens.size() > kShort) {
        return;
    }
    const bool talk = spots.has(Cue::Negation) || spots.has(Cue::Chatter) || spots.has(Cue::Open) ||
                      spots.has(Cue::Passive) ||
                      std::any_of(spots.acts.begin(), spots.acts.end(), [](const ActSpot& act) {
                          return tables().acts[act.row].weight > 0;
                      });
    for (std::size_t i = 1; i < sentence.tokens.size() && i <= kNear && !talk; ++i) {
        const bool closes =
            i + 1 >= sentence.tokens.size() || sentence.tokens[i + 1].kind == TokenKind::Mark;
        const std::string& said = sentence.tokens[i].plain;
        if (said != "ones" && (said != "one" || !closes || !spots.amounts.empty())) {
            if (sentence.tokens[i].kind == TokenKind::Mark) {
                return;
            }
            continue;
        }
        for (std::size_t k = 0; k < i; ++k) {
            const std::string& word = sentence.tokens[k].plain;
            if (isOneOf(word, kPoint)) {
                return;
            }
        }
        spots.acts.push_back(ActSpot{.span = {i, i + 1}, .tail = {}, .row = kImplied});
        linked.said.push_back(Said{.object = meant_.objects.front(),
                                   .act = static_cast<std::uint32_t>(spots.acts.size() - 1),
                                   .at = i,
                                   .fromBefore = true});
        return;
    }
}

// "No smoke alarms anywhere, fit 4": a count of what is missing is to be had.
void Reader::takeCountOfAbsent(const Sentence& sentence, Spots& spots, Linked& linked) {
    static const std::uint32_t kAdded = actNamed("be added");
    constexpr std::int64_t kMost = 40'000;  // thousandths
    const bool said = std::any_of(linked.said.begin(), linked.said.end(), [&](const Said& one) {
        return tables().acts[spots.acts[one.act].row].weight > 0;
    });
    if (kAdded == kNone || said || spots.objects.size() != 1 || !spots.has(Cue::Absent)) {
        return;
    }
    const ObjectSpot& object = spots.objects.front();
    const bool counted =
        std::any_of(spots.amounts.begin(), spots.amounts.end(), [&](const Amount& amount) {
            return amount.kind == AmountKind::Plain && amount.begin >= object.span.end &&
                   amount.value >= 1000 && amount.value <= kMost && amount.value % 1000 == 0;
        });
    if (!counted || object.landmark || !isAbsent(sentence, spots, object.span)) {
        return;
    }
    std::erase(linked.loose, std::size_t{0});
    implyAct(spots, linked, 0, kAdded);
}

// "TO FIX" over "- bedroom 2 closet door": the heading says what is done to what a line only names,
// or tells a fault of. What is ticked is there already.
void Reader::takeHeaded(const Sentence& sentence, Spots& spots, Linked& linked) const {
    static const std::uint32_t kKept = actNamed("keep");
    const std::uint32_t row = sentence.ticked ? kKept : walk_.inList() ? section_.act : kNone;
    if (row == kNone || !sentence.opensLine) {
        return;
    }
    for (const Cue cue : {Cue::Chatter, Cue::Hypothetical, Cue::Refused, Cue::Negation}) {
        if (spots.has(cue)) {
            return;
        }
    }
    const bool ordered = std::any_of(spots.acts.begin(), spots.acts.end(), [](const ActSpot& act) {
        return tables().acts[act.row].weight > 1;
    });
    if (ordered) {
        return;
    }
    const std::size_t first = spots.acts.size();
    const std::uint32_t object = tables().acts[row].object;
    if (spots.objects.empty() && object != kNone) {
        spots.acts.push_back(ActSpot{.span = {0, 1}, .tail = {}, .row = row});
        linked.said.push_back(Said{.object = object,
                                   .act = static_cast<std::uint32_t>(spots.acts.size() - 1),
                                   .at = 0,
                                   .assumed = true});
    }
    for (std::size_t i = 0; i < spots.objects.size(); ++i) {
        if (!spots.objects[i].landmark && !spots.objects[i].material) {
            implyAct(spots, linked, i, row);
            std::erase(linked.loose, i);
        }
    }
    // The writer says what holds for all of the list.
    for (std::size_t i = first; i < spots.acts.size(); ++i) {
        spots.acts[i].own = true;
    }
}

// Gives the things of a bare list the treatment it implies.
void Reader::takeFragment(const Sentence& sentence, Spots& spots, const Placed& placed,
                          Linked& linked) {
    static const std::uint32_t kImplied = actNamed("implied by the list");
    if (sentence.opensLine || placed.moved) {
        line_.allNew = false;
        gutAge_ = kGutGoesOn + 1;
    }
    ++gutAge_;
    const bool listed = line_.allNew;
    line_.allNew = line_.allNew || opensList(sentence, spots);
    gutAge_ = guts(sentence) ? 0 : gutAge_;
    const bool measured = std::any_of(spots.amounts.begin(), spots.amounts.end(),
                                      [](const Amount& amount) {
                                          return amount.kind == AmountKind::Measured ||
                                                 amount.kind == AmountKind::Money;
                                      }) ||
                          isCounted(sentence, spots);
    // "Smoke detectors.": what a house is given where it has none.
    const bool asks = !sentence.tokens.empty() && sentence.tokens.back().mark == '?';
    const bool given = sentence.tokens.size() <= 5 && !linked.loose.empty() && !asks &&
                       std::all_of(linked.loose.begin(), linked.loose.end(), [&](std::size_t i) {
                           return tables().objects[spots.objects[i].object].freshAdds;
                       });
    // "- Apron sink, bridge faucet": a line of a list that is nothing but things.
    constexpr std::size_t kBare = 9;
    const bool opensWithRoom =
        !spots.spaces.empty() && spots.spaces.front().span.begin == 0 &&
        (placed.from == 0 || sentence.tokens[placed.from - 1].kind == TokenKind::Word);
    const bool bare = sentence.bullet && sentence.alone && !asks &&
                      (!placed.moved || walk_.inList() || opensWithRoom) &&
                      sentence.tokens.size() <= kBare && !sentence.heading &&
                      !saysUnknown(sentence, spots, placed.from);
    constexpr std::size_t kShort = 7;
    const bool next = asksForIt(sentence, spots, placed, linked);
    const bool covers = coversHere(sentence, spots, placed);
    const bool said = (next || covers) &&
                      sentence.tokens.size() <= (covers ? kShort + 4 : kShort) && !asks &&
                      spots.acts.empty();
    const bool wanted = given || listed || gutAge_ <= kGutGoesOn || measured || bare || said;
    if (kImplied == kNone || !wanted || linked.loose.empty() || !linked.said.empty() ||
        !isFragment(sentence, spots, placed.from, sentence.tokens.size())) {
        return;
    }
    for (const std::size_t loose : linked.loose) {
        const ObjectSpot& object = spots.objects[loose];
        if (object.landmark || (object.material && !covers)) {
            continue;
        }
        implyAct(spots, linked, loose, kImplied);
    }
}

}  // namespace ledgerboard::intake
