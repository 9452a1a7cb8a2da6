// The part of the reader that hears headings which name no room: what is done to what they list.
#include <algorithm>
#include <span>

#include "core/intake/notes/reader.h"
#include "core/intake/notes/spaces.h"
#include "core/intake/notes/speech.h"

namespace ledgerboard::intake {

namespace {

using model::Treatment;

bool shouted(const Sentence& sentence) {
    bool letters = false;
    for (const Token& token : sentence.tokens) {
        for (const char c : token.text) {
            if (c >= 'a' && c <= 'z') {
                return false;
            }
            letters = letters || (c >= 'A' && c <= 'Z');
        }
    }
    return letters;
}

std::size_t wordCount(const Sentence& sentence) {
    return static_cast<std::size_t>(
        std::count_if(sentence.tokens.begin(), sentence.tokens.end(),
                      [](const Token& token) { return token.kind == TokenKind::Word; }));
}

// Whether the line is nothing but the name of a closet.
bool headsCloset(const Sentence& sentence, const Spots& spots) {
    if (spots.objects.size() != 1 || !spots.acts.empty() || !spots.spaces.empty()) {
        return false;
    }
    const ObjectSpot& object = spots.objects.front();
    const bool all =
        object.span.begin == 0 &&
        (object.span.end == sentence.tokens.size() ||
         (object.span.end + 1 == sentence.tokens.size() && isMark(sentence.tokens.back(), ":")));
    return all && tables().objects[object.object].name == "closet" && object.span.end > 1;
}

// "- living room floor" under "MEDIUM": the line has a room of its own.
bool opensWithSpace(const Sentence& sentence) {
    const std::vector<SpaceSpot> spaces = spacesIn(sentence.tokens);
    return !spaces.empty() && spaces.front().span.begin == 0;
}

// "CARPENTRY": a sort of work, and no name of a room.
bool isTrade(const Sentence& sentence) {
    const std::string& word = sentence.tokens.front().plain;
    return sentence.tokens.size() <= 2 &&
           std::any_of(tables().objects.begin(), tables().objects.end(),
                       [&](const ObjectRow& row) { return row.trade == word; });
}

// "FLOORS", "Windows + doors": whether a heading is nothing but things.
bool headsThings(const Sentence& sentence, const Spots& spots) {
    for (std::size_t i = 0; i < sentence.tokens.size(); ++i) {
        const bool thing =
            std::any_of(spots.objects.begin(), spots.objects.end(),
                        [&](const ObjectSpot& object) { return object.span.holds(i); });
        if (!thing && sentence.tokens[i].kind == TokenKind::Word && !wordIs(sentence, i, "and")) {
            return false;
        }
    }
    return !spots.objects.empty();
}

}  // namespace

// Headings whose words the tables don't hold as a space.
bool Reader::takePlaceHeading(const Sentence& sentence, const Spots& spots) {
    // "Linen closet", all there is in the line: the closet is where one stands.
    if (headsCloset(sentence, spots)) {
        const std::string name =
            writtenAs(std::span(sentence.tokens).first(spots.objects.front().span.end));
        walk_.learn(plainWord(name), plainWord(name), SpaceKind::Room);
        walk_.stand({plainWord(name)});
        section_ = {};
        meant_.objects.clear();
        return true;
    }
    // "Out", "Under" after the headings of rooms: what is out of doors, what is below.
    const bool under = wordIs(sentence, 0, "under");
    if (wordCount(sentence) != 1 || !(under || wordIs(sentence, 0, "out")) ||
        section_.is != Section::Plain || !walk_.hadHeading()) {
        return false;
    }
    const std::string place = under ? "crawl space" : "exterior";
    walk_.learn(place, under ? place : "outside", under ? SpaceKind::Room : SpaceKind::Outside);
    walk_.stand({place});
    meant_.objects.clear();
    return true;
}

// What the words of the heading mean for what is under it; of an `idle` one its orders don't count.
// False where they are no heading but work to be done.
bool Reader::hearSection(const Spots& spots, bool lists, bool idle) {
    const auto act = std::max_element(
        spots.acts.begin(), spots.acts.end(), [](const ActSpot& a, const ActSpot& b) {
            return tables().acts[a.row].weight < tables().acts[b.row].weight;
        });
    const bool acts = act != spots.acts.end() && !act->negated && !idle;
    const bool keeps = acts && tables().acts[act->row].treatment == Treatment::Keep;
    const bool orders = acts && lists && tables().acts[act->row].weight > 1;
    section_.act = keeps || orders ? act->row : kNone;
    if (keeps) {
        section_.is = Section::Keep;
    } else if (spots.has(Cue::Refused) || spots.has(Cue::Negation) ||
               (lists && spots.has(Cue::Chatter))) {
        section_.is = Section::NotDoing;
    } else if (spots.has(Cue::Open) || spots.has(Cue::Undecided)) {
        section_.is = Section::Open;
    } else if (!spots.acts.empty() && !orders && !idle) {
        return false;
    } else {
        section_.is = Section::Plain;
    }
    return true;
}

// "Undecided:", "NOT DOING", "Keep", "TO FIX": a heading that names no space.
bool Reader::takeSection(const Sentence& sentence, const Spots& spots, const Around& around) {
    const bool colon = isMark(sentence.tokens.back(), ":");
    const bool heading =
        sentence.heading || (sentence.alone && !sentence.bullet && (colon || shouted(sentence)));
    // "to fix" over a list needs no capital.
    const bool lists = around.next != nullptr && around.next->bullet && !sentence.bullet;
    const bool bare = sentence.alone && !sentence.bullet && wordCount(sentence) <= 3 &&
                      (sentence.tokens.front().capital || lists) &&
                      !isMark(sentence.tokens.back(), ".!?");
    if ((heading || bare) && takePlaceHeading(sentence, spots)) {
        return true;
    }
    // "Budget: 41,500": a figure heads nothing.
    const bool things = lists && !colon && heading && headsThings(sentence, spots);
    if ((!heading && !bare) || wordCount(sentence) > 5 || !spots.spaces.empty() ||
        (!spots.objects.empty() && !things) || !spots.amounts.empty()) {
        return false;
    }
    // "PAINT" is an order, "PLUMBING" none.
    const bool trade = isTrade(sentence) &&
                       std::none_of(spots.acts.begin(), spots.acts.end(), [](const ActSpot& act) {
                           return tables().acts[act.row].object != kNone;
                       });
    if (!hearSection(spots, lists, things || trade)) {
        return false;
    }
    const bool unnamed = section_.is == Section::Plain && section_.act == kNone && !things &&
                         !trade && !(lists && opensWithSpace(*around.next));
    meant_.objects.clear();
    if (unnamed && walk_.enterUnnamed(sentence)) {
        return true;
    }
    if (section_.is != Section::Open && lists) {
        walk_.beginList(sentence);
    } else if (section_.is != Section::Open) {
        walk_.stand({});
    }
    return true;
}

}  // namespace ledgerboard::intake
