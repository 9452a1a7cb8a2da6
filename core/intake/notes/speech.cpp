#include "core/intake/notes/speech.h"

#include <algorithm>

namespace ledgerboard::intake {

bool isMark(const Token& token, std::string_view marks) {
    return token.kind == TokenKind::Mark && marks.find(token.mark) != std::string_view::npos;
}

std::size_t skipSmall(const Sentence& sentence, const Spots& spots, std::size_t at) {
    while (at < sentence.tokens.size()) {
        std::size_t next = at;
        for (const Cue cue : {Cue::Move, Cue::Enter, Cue::Small, Cue::Filler, Cue::Split}) {
            next = std::max(next, spots.endOf(cue, at));
        }
        if (next == at && isMark(sentence.tokens[at], ",-.:()*#&+/|\"'")) {
            next = at + 1;
        }
        if (next == at) {
            break;
        }
        at = next;
    }
    return at;
}

bool isInCapitals(const Sentence& sentence, const Span& span) {
    for (std::size_t i = span.begin; i < span.end; ++i) {
        for (const char c : sentence.tokens[i].text) {
            if (c >= 'a' && c <= 'z') {
                return false;
            }
        }
    }
    return true;
}

bool cueBefore(const Sentence& sentence, const Spots& spots, Cue cue, std::size_t at) {
    for (const CueSpot& spot : spots.cues) {
        if (spot.cue != cue || spot.span.end > at || spot.span.end + 4 < at) {
            continue;
        }
        std::size_t i = spot.span.end;
        while (i < at) {
            const std::size_t next = spots.endOf(Cue::Small, i);
            if (next == i) {
                break;
            }
            i = next;
        }
        if (i == at ||
            (i + 1 == at && sentence.tokens[i].kind == TokenKind::Word && cue == Cue::Enter)) {
            return true;
        }
    }
    return false;
}

bool listsThis(const Sentence& sentence) {
    return sentence.tokens.size() > 2 &&
           (wordIs(sentence, 0, "this") || wordIs(sentence, 0, "here")) &&
           isMark(sentence.tokens[1], ",");
}

bool isBreathless(const Sentence& sentence) {
    std::size_t marks = 0;
    for (const Token& token : sentence.tokens) {
        marks += token.kind == TokenKind::Mark ? 1 : 0;
    }
    return sentence.tokens.size() >= 8 && marks * 20 <= sentence.tokens.size() && !sentence.bullet;
}

bool afterPreposition(const Sentence& sentence, const Spots& spots, std::size_t at) {
    static const std::vector<WordId> kArticles = [] {
        std::vector<WordId> ids;
        for (const std::string_view word : {"the", "a", "an", "this", "my", "our"}) {
            ids.push_back(tables().id(word));
        }
        return ids;
    }();
    const auto is = [&](std::size_t i, const std::vector<WordId>& words) {
        return std::find(words.begin(), words.end(), sentence.tokens[i].word) != words.end();
    };
    while (at > 0 && sentence.tokens[at - 1].word != kUnknown && is(at - 1, kArticles)) {
        --at;
    }
    if (at == 0) {
        return false;
    }
    const bool cue = std::any_of(spots.cues.begin(), spots.cues.end(), [&](const CueSpot& spot) {
        const bool kind =
            spot.cue == Cue::Landmark || spot.cue == Cue::Locus || spot.cue == Cue::With;
        return kind && spot.span.end == at;
    });
    const bool act = std::any_of(spots.acts.begin(), spots.acts.end(), [&](const ActSpot& spot) {
        return spot.span.end == at && tables().acts[spot.row].side == Side::After;
    });
    static const WordId kAnd = tables().id("and");
    static const WordId kOr = tables().id("or");
    const WordId before = sentence.tokens[at - 1].word;
    return cue || act || (before != kUnknown && (before == kAnd || before == kOr));
}

bool stepsInto(const Sentence& sentence, std::size_t at) {
    while (at > 0 && (wordIs(sentence, at - 1, "the") || wordIs(sentence, at - 1, "this"))) {
        --at;
    }
    if (at == 0) {
        return false;
    }
    if (wordIs(sentence, at - 1, "in") || wordIs(sentence, at - 1, "into")) {
        return true;
    }
    const bool to = wordIs(sentence, at - 1, "to") || wordIs(sentence, at - 1, "in");
    if (!to || at < 2) {
        return false;
    }
    for (const std::string_view word : {"go", "going", "come", "over", "back", "up", "down", "on",
                                        "through", "next", "move", "head", "get"}) {
        if (wordIs(sentence, at - 2, word)) {
            return true;
        }
    }
    return false;
}

}  // namespace ledgerboard::intake
