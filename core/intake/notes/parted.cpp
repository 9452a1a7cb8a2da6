#include <algorithm>

#include "core/intake/notes/links.h"

namespace ledgerboard::intake {

namespace {

// What a mark adds to how hard two stretches are parted. In halves of nothing in particular: the
// figures were weighed against each other on notes.
double costOf(const Token& mark) {
    const bool hyphen = mark.mark == '-' && mark.glued;
    switch (mark.mark) {
        case ',':
            return 1.2;
        case '-':
            return hyphen ? 0.0 : 1.0;
        case ':':
        case '>':
        case '(':
        case ')':
            return 1.0;
        case ';':
        case '.':
        case '?':
        case '!':
            return 5.5;
        case '/':
            return mark.glued ? 0.2 : 4.0;  // "sink ok / faucet drips"
        case '+':
        case '&':
            return 0.6;
        default:
            return 0.2;
    }
}

}  // namespace

double partedBy(const Sentence& sentence, const Spots& spots, std::size_t begin, std::size_t end,
                double enough) {
    static const WordId kAnd = tables().id("and");
    static const WordId kOr = tables().id("or");
    static const WordId kBut = tables().id("but");
    static const WordId kSo = tables().id("so");
    static const WordId kThen = tables().id("then");
    double cost = 0;
    // Where nothing but breath parts clauses: once it is said what is done to the things before.
    for (const ActSpot& act : spots.acts) {
        const Side side = tables().acts[act.row].side;
        if ((side == Side::Before || side == Side::Edge) && act.span.end > begin &&
            act.span.end < end && sentence.tokens[act.span.end].kind == TokenKind::Word &&
            sentence.tokens[act.span.end].word != kAnd) {
            cost += 1.5;
        }
    }
    auto cue = spots.cuesFrom(begin);
    for (std::size_t i = begin; i < end && i < sentence.tokens.size() && cost < enough; ++i) {
        const Token& token = sentence.tokens[i];
        bool turns = false;
        bool because = false;
        for (; cue != spots.cues.end() && cue->span.begin == i; ++cue) {
            turns = turns || cue->cue == Cue::Turn;
            because = because || cue->cue == Cue::Because;
        }
        if (token.kind == TokenKind::Mark) {
            cost += costOf(token);
            continue;
        }
        if (token.word == kUnknown) {
            continue;
        }
        if (turns && i > begin) {
            cost += 1.5;
        }
        if (token.word == kAnd) {
            cost += 0.6;
        } else if (token.word == kOr) {
            cost += 1.0;
        } else if (token.word == kSo || token.word == kThen) {
            cost += 3.5;
        } else if (token.word == kBut || because) {
            cost += 4.0;
        }
    }
    return cost;
}

}  // namespace ledgerboard::intake
