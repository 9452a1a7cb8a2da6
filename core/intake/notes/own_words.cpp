#include "core/intake/notes/own_words.h"

#include <algorithm>

#include "core/intake/notes/lessons.h"
#include "core/intake/notes/names.h"
#include "core/intake/notes/spaces.h"
#include "core/intake/notes/tables.h"
#include "core/intake/notes/tokens.h"

namespace ledgerboard::intake {

namespace {

using model::Treatment;

constexpr std::size_t kMostStemsRemembered = 20'000;

template <class Spot>
void dropWithin(std::vector<Spot>& spots, const Span& span) {
    std::erase_if(spots, [&](const Spot& spot) { return span.overlaps(spot.span); });
}

// Spots stand in the order of their first tokens.
template <class Spot>
void insertInOrder(std::vector<Spot>& spots, Spot spot) {
    const auto at = std::find_if(spots.begin(), spots.end(), [&](const Spot& other) {
        return other.span.begin > spot.span.begin;
    });
    spots.insert(at, std::move(spot));
}

// The row that says `treatment` as the row of `like` says its own: on the same side, as firmly.
std::uint32_t actLike(Treatment treatment, const ActRow* like) {
    const auto& acts = tables().acts;
    std::uint32_t best = kNone;
    int bestFit = -1;
    for (std::uint32_t i = 0; i < acts.size(); ++i) {
        const ActRow& row = acts[i];
        if (row.treatment != treatment || row.fresh || row.object != kNone || !row.tail.empty() ||
            row.weight < 2) {
            continue;
        }
        const Side side = like == nullptr ? Side::Any : like->side;
        const int fit = (row.side == side ? 2 : 0) + (row.weight == 3 ? 1 : 0);
        if (fit > bestFit) {
            best = i;
            bestFit = fit;
        }
    }
    return best;
}

}  // namespace

std::string saidOf(const OwnWord& word) {
    std::string said = "\"" + word.phrase + "\" ";
    if (word.nothing) {
        return said + "means no object";
    }
    if (!word.object.empty()) {
        return said + (phraseKey(word.phrase) == phraseKey(word.object) ? "is an object"
                                                                        : "means " + word.object);
    }
    if (!word.space.empty()) {
        return said + "means the space " + word.space;
    }
    return said + "means " + std::string(model::wordOf(word.treatment));
}

OwnWords::OwnWords(std::span<const OwnWord> words)
    : words_(words.begin(), words.end()), speller_(tables().lexicon) {
    for (std::size_t i = 0; i < words_.size(); ++i) {
        std::vector<std::string> stems = stemsIn(words_[i].phrase);
        if (!stems.empty()) {
            const std::string first = stems.front();
            phrases_[first].push_back({std::move(stems), i});
        }
    }
    // Of two with the same words the later holds.
    for (auto& [first, phrases] : phrases_) {
        std::sort(phrases.begin(), phrases.end(), [](const Phrase& a, const Phrase& b) {
            return a.stems.size() != b.stems.size() ? a.stems.size() > b.stems.size()
                                                    : a.word > b.word;
        });
    }
}

const std::string& OwnWords::stemOf(std::string_view written) {
    std::string word = plainWord(written);
    if (const auto known = stems_.find(word); known != stems_.end()) {
        return known->second;
    }
    if (stems_.size() >= kMostStemsRemembered) {
        stems_.clear();
    }
    std::string joined;
    for (const std::string& stem : speller_.stemsOf(word)) {
        joined += (joined.empty() ? "" : " ") + stem;
    }
    return stems_.emplace(std::move(word), std::move(joined)).first->second;
}

// The phrases that begin with the word; nullptr where none does.
const std::vector<OwnWords::Phrase>* OwnWords::phrasesAt(const Token& token) {
    if (token.kind != TokenKind::Word) {
        return nullptr;
    }
    const std::string& stems = stemOf(token.text);
    const auto found = phrases_.find(stems.substr(0, stems.find(' ')));
    return found == phrases_.end() ? nullptr : &found->second;
}

// Past the last token of the phrase, where it begins at `begin`; else `begin`.
std::size_t OwnWords::endOf(std::span<const Token> tokens, std::size_t begin,
                            const Phrase& phrase) {
    std::size_t at = begin;
    std::size_t next = 0;
    while (next < phrase.stems.size()) {
        if (at >= tokens.size()) {
            return begin;
        }
        const bool hyphen =
            tokens[at].kind == TokenKind::Mark && tokens[at].mark == '-' && at > begin;
        if (hyphen) {
            ++at;
            continue;
        }
        if (tokens[at].kind != TokenKind::Word) {
            return begin;
        }
        // One written word may stand for several stems; its tokens share their text.
        const std::string& stems = stemOf(tokens[at].text);
        for (std::size_t from = 0; from < stems.size();) {
            const std::size_t to = std::min(stems.find(' ', from), stems.size());
            if (next >= phrase.stems.size() ||
                stems.compare(from, to - from, phrase.stems[next]) != 0) {
                return begin;
            }
            ++next;
            from = to + 1;
        }
        const char* text = tokens[at].text.data();
        while (at < tokens.size() && tokens[at].text.data() == text) {
            ++at;
        }
    }
    return at;
}

std::vector<std::size_t> OwnWords::apply(std::span<const Token> tokens, Spots& spots) {
    std::vector<std::size_t> used;
    if (phrases_.empty()) {
        return used;
    }
    for (std::size_t begin = 0; begin < tokens.size();) {
        std::size_t past = begin + 1;
        const std::vector<Phrase>* phrases = phrasesAt(tokens[begin]);
        for (std::size_t k = 0; phrases != nullptr && k < phrases->size(); ++k) {
            const std::size_t word = (*phrases)[k].word;
            const std::size_t end = endOf(tokens, begin, (*phrases)[k]);
            if (end > begin && put(words_[word], {begin, end}, spots)) {
                past = end;
                if (std::find(used.begin(), used.end(), word) == used.end()) {
                    used.push_back(word);
                }
                break;
            }
        }
        begin = past;
    }
    return used;
}

// The row whose name or synonym the words are, all of them; kNone where there is none.
std::uint32_t OwnWords::knownRow(const std::string& object) {
    std::vector<Token> tokens;
    cutTokens(object, 0, speller_, tables().lexicon, tokens);
    std::uint32_t node = 0;
    for (const Token& token : tokens) {
        if (token.kind == TokenKind::Mark) {
            continue;
        }
        node = token.word == kUnknown ? 0 : tables().phrases.step(node, token.word);
        if (node == 0) {
            return kNone;
        }
    }
    for (const Meaning& meaning : tables().phrases.at(node)) {
        if (meaning.from == From::Object && node != 0) {
            return meaning.row;
        }
    }
    return kNone;
}

std::uint32_t OwnWords::rowOf(const std::string& object) {
    std::uint32_t known = tables().objectNamed(object);
    known = known == kNone ? knownRow(object) : known;
    if (known != kNone) {
        if (tables().objects[known].name != object) {
            called_[known] = object;
        }
        return known;
    }
    auto thing = std::find(things_.begin(), things_.end(), object);
    if (thing == things_.end()) {
        if (things_.size() >= kMostOwnThings) {
            return kNone;
        }
        things_.push_back(object);
        thing = things_.end() - 1;
    }
    return tables().ownThing(static_cast<std::size_t>(thing - things_.begin()));
}

// False where the word is not meant here.
bool OwnWords::put(const OwnWord& word, const Span& span, Spots& spots) {
    if (!word.space.empty()) {
        putSpace(word, span, spots);
        return true;
    }
    return word.treatment == Treatment::Unset ? putObject(word, span, spots)
                                              : putTreatment(word, span, spots);
}

bool OwnWords::putObject(const OwnWord& word, const Span& span, Spots& spots) {
    const bool inLonger =
        std::any_of(spots.objects.begin(), spots.objects.end(), [&](const ObjectSpot& spot) {
            return spot.span.begin <= span.begin && span.end <= spot.span.end &&
                   spot.span.end - spot.span.begin > span.end - span.begin;
        });
    const std::uint32_t row = word.nothing || inLonger ? kNone : rowOf(word.object);
    if (inLonger || (row == kNone && !word.nothing)) {
        return false;
    }
    dropWithin(spots.objects, span);
    if (word.nothing) {
        return true;
    }
    dropWithin(spots.spaces, span);
    dropWithin(spots.acts, span);
    ObjectSpot spot;
    spot.span = span;
    spot.object = row;
    insertInOrder(spots.objects, spot);
    return true;
}

void OwnWords::putSpace(const OwnWord& word, const Span& span, Spots& spots) {
    std::vector<Token> meant;
    cutTokens(word.space, 0, speller_, tables().lexicon, meant);
    const std::vector<SpaceSpot> known = spacesIn(meant);
    dropWithin(spots.objects, span);
    dropWithin(spots.spaces, span);
    SpaceSpot spot;
    if (known.size() == 1) {
        spot = known.front();
    } else {
        spot.key = plainWord(word.space);
        spot.shown = spot.key;
    }
    spot.span = span;
    insertInOrder(spots.spaces, std::move(spot));
}

bool OwnWords::putTreatment(const OwnWord& word, const Span& span, Spots& spots) {
    const auto said = std::find_if(spots.acts.begin(), spots.acts.end(),
                                   [&](const ActSpot& act) { return span.overlaps(act.span); });
    const bool isSaid = said != spots.acts.end();
    ActSpot act;
    act.span = span;
    act.own = true;
    act.row = actLike(word.treatment, isSaid ? &tables().acts[said->row] : nullptr);
    if (act.row == kNone) {
        return false;
    }
    if (isSaid) {
        act.passive = said->passive;
    }
    dropWithin(spots.acts, span);
    insertInOrder(spots.acts, act);
    return true;
}

std::string OwnWords::nameOf(const std::string& object) const {
    if (things_.empty() && called_.empty()) {
        return object;
    }
    const auto own = called_.find(tables().objectNamed(object));
    std::string name = own == called_.end() ? object : own->second;
    nameIn(name);
    return name;
}

void OwnWords::nameIn(std::string& text) const {
    for (std::size_t i = 0; i < things_.size(); ++i) {
        const std::string& name = tables().objects[tables().ownThing(i)].name;
        for (std::size_t at = text.find(name); at != std::string::npos;
             at = text.find(name, at + things_[i].size())) {
            text.replace(at, name.size(), things_[i]);
        }
    }
}

}  // namespace ledgerboard::intake
