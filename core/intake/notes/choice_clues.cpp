#include "core/intake/notes/choice_clues.h"

#include <algorithm>

#include "core/intake/notes/speech.h"

namespace ledgerboard::intake {

namespace {

constexpr std::size_t kMostWords = 60;  // of a sentence: more is talk

// By word id. Nearly every open choice in the labelled talk has one of these in its sentence.
const std::vector<bool>& tellingWords() {
    static const std::vector<bool> kTell = [] {
        std::vector<bool> tell;
        for (const std::string_view stem :
             {"or",    "vs",    "whether", "if",      "either", "decid",  "undecid", "mayb",
              "might", "could", "choos",   "choic",   "pick",   "ask",    "depend",  "sure",
              "quot",  "price", "bid",     "torn",    "option", "versus", "know",    "think",
              "say",   "see",   "wait",    "both",    "two",    "til",    "until",   "open",
              "hold",  "call",  "vote",    "between", "budget", "money",  "settl",   "till",
              "debat", "argu",  "fight",   "whichev", "which",  "would",  "agre",    "fenc",
              "figur", "talk"}) {
            const WordId word = tables().id(stem);
            if (word != kUnknown) {
                tell.resize(std::max(tell.size(), std::size_t{word} + 1));
                tell[word] = true;
            }
        }
        return tell;
    }();
    return kTell;
}

// The words that clues of choices begin with, and those that stand for others.
struct Words {
    const ClueWords begin{"^"};
    const ClueWords end{"$"};
    const ClueWords keep{"~keep"};
    const ClueWords look{"~look"};
    const ClueWords work{"~work"};
    const ClueWords thing{"~thing"};
    const ClueWords stuff{"~stuff"};
    const ClueWords money{"~money"};
    const ClueWords time{"~time"};
    const ClueWords figure{"#"};
    const ClueWords mark{"."};
    const ClueWords word{"word"};
    const ClueWords says{"says"};
    const ClueWords near{"near"};
    const ClueWords here{"here"};
    const ClueWords next{"next"};
    const ClueWords nowhere{""};
};

const Words& words() {
    static const Words kWords;
    return kWords;
}

}  // namespace

bool ChoiceClues::mayOpen(const Sentence& sentence) {
    const std::vector<bool>& tell = tellingWords();
    const auto tells = [&](const Token& token) {
        return token.kind == TokenKind::Mark ? token.mark == '?' || token.mark == '/'
                                             : token.word < tell.size() && tell[token.word];
    };
    return std::any_of(sentence.tokens.begin(), sentence.tokens.end(), tells);
}

// A stem, but that marks that few write are one.
const ClueWords& ChoiceClues::wordOf(const Token& token) {
    return token.kind == TokenKind::Mark && !isMark(token, ".,;:!?()->$@&+/#\"'%=*~")
               ? words().mark
               : stems_.of(token);
}

// Things, stuffs, works and figures stand for all of their sort: "paint or tile" is "~work or
// ~stuff".
void ChoiceClues::addOwnWords(const Sentence& sentence, const Spots& spots, Clues& clues) {
    const Words& to = words();
    words_.assign(1, &to.begin);
    const std::size_t size = std::min(sentence.tokens.size(), kMostWords);
    for (std::size_t i = 0; i < size;) {
        std::size_t end = i;
        const ClueWords* sort = nullptr;
        for (const ActSpot& act : spots.acts) {
            if (act.span.begin == i && act.span.end > end && tables().acts[act.row].weight > 1) {
                end = act.span.end;
                const model::Treatment treatment = tables().acts[act.row].treatment;
                sort = treatment == model::Treatment::Keep      ? &to.keep
                       : treatment == model::Treatment::Inspect ? &to.look
                                                                : &to.work;
            }
        }
        for (const ObjectSpot& object : spots.objects) {
            if (object.span.begin == i && object.span.end > end) {
                end = object.span.end;
                sort = &to.thing;
            }
        }
        for (const CueSpot& cue : spots.cues) {
            if (cue.cue == Cue::Material && cue.span.begin == i && cue.span.end >= end) {
                end = cue.span.end;
                sort = &to.stuff;
            }
        }
        for (const Amount& amount : spots.amounts) {
            if (amount.begin == i && amount.end >= end) {
                end = amount.end;
                sort = amount.kind == AmountKind::Money  ? &to.money
                       : amount.kind == AmountKind::Time ? &to.time
                                                         : &to.figure;
            }
        }
        const ClueWords* stem = &wordOf(sentence.tokens[i]);
        if (end > i) {
            clues.add(&to.word, stem);
            words_.push_back(sort);
            i = end;
        } else {
            words_.push_back(stem);
            ++i;
        }
    }
    words_.push_back(&to.end);
    for (std::size_t i = 0; i < words_.size(); ++i) {
        clues.add(&to.says, words_[i]);
        if (i + 1 < words_.size()) {
            clues.add(&to.says, words_[i], words_[i + 1]);
        }
        if (i + 2 < words_.size()) {
            clues.add(&to.says, words_[i], words_[i + 1], words_[i + 2]);
        }
    }
}

// Words and runs of them, wherever they stand nearby; those of some sentences by where they stand
// as well.
void ChoiceClues::addWords(const Sentence* sentence, const ClueWords& kind, Clues& clues) {
    if (sentence == nullptr) {
        return;
    }
    const std::size_t size = std::min(sentence->tokens.size(), kMostWords);
    const Words& to = words();
    words_.assign(1, &to.begin);
    for (std::size_t i = 0; i < size; ++i) {
        words_.push_back(&wordOf(sentence->tokens[i]));
    }
    words_.push_back(&to.end);
    for (std::size_t i = 1; i < words_.size(); ++i) {
        if (i <= size) {
            clues.add(&to.near, words_[i]);
        }
        clues.add(&to.near, words_[i - 1], words_[i]);
        if (!kind.text().empty()) {
            clues.add(&kind, words_[i]);
            clues.add(&kind, words_[i - 1], words_[i]);
        }
        if (i > 1) {
            clues.add(&to.near, words_[i - 2], words_[i - 1], words_[i]);
        }
    }
}

void ChoiceClues::addSigns(const Sentence& sentence, const Spots& spots, const Openness& open,
                           const ChoiceSigns& signs, Clues& clues) {
    const auto flag = [&](bool is, std::string_view name) {
        if (is) {
            clues.add("is", name);
        }
    };
    clues.add("every");
    flag(open.surely, "surely");
    flag(open.choice, "choice");
    flag(open.asks, "asks");
    flag(open.otherwise, "otherwise");
    flag(open.condition, "condition");
    flag(open.thought, "thought");
    flag(open.hinted, "hinted");
    flag(open.both, "both");
    flag(open.priced, "priced");
    flag(open.materials > 1, "of stuffs");
    flag(signs.opens, "opens");
    flag(signs.dead, "dead");
    flag(signs.section, "section");
    flag(signs.matter, "of a thing");
    flag(signs.opens && open.surely, "surely opens");
    flag(signs.opens && !signs.matter, "opens of nothing");
    flag(sentence.terse, "terse");
    flag(sentence.bullet, "bullet");
    flag(sentence.spoken, "spoken");
    flag(sentence.alone, "alone");
    flag(sentence.opensLine, "opens its line");
    flag(sentence.heading, "heading");
    for (const CueSpot& cue : spots.cues) {
        if (cue.cue != Cue::Small && cue.cue != Cue::Filler && cue.cue != Cue::Material &&
            cue.cue != Cue::Stop) {
            clues.add("cue", cueName(cue.cue));
        }
    }
    const auto many = [](std::size_t count) {
        return std::to_string(std::min(count, std::size_t{3}));
    };
    const auto works = static_cast<std::size_t>(
        std::count_if(spots.acts.begin(), spots.acts.end(),
                      [](const ActSpot& act) { return tables().acts[act.row].weight > 1; }));
    clues.add("things", many(spots.objects.size()));
    clues.add("works", many(works));
    clues.add("figures", many(spots.amounts.size()));
    const std::size_t length = sentence.tokens.size();
    clues.add("length", length < 4    ? "tiny"
                        : length < 8  ? "short"
                        : length < 16 ? "middling"
                        : length < 30 ? "long"
                                      : "very long");
}

Clues ChoiceClues::read(const Sentence& sentence, const Spots& spots, const Openness& open,
                        const ChoiceSigns& signs, const Around& around, bool named) {
    Clues clues(named);
    addSigns(sentence, spots, open, signs, clues);
    addOwnWords(sentence, spots, clues);
    addWords(&sentence, words().here, clues);
    addWords(around.before, words().nowhere, clues);
    addWords(around.next, words().next, clues);
    addWords(around.later, words().nowhere, clues);
    if (named) {
        clues.settle();
    }
    return clues;
}

}  // namespace ledgerboard::intake
