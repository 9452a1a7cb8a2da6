#include "core/intake/notes/read_notes.h"

#include <deque>

#include "core/intake/notes/reader.h"
#include "core/model/saying.h"

namespace ledgerboard::intake {

namespace {

// The share of bytes that no text holds, in thousandths, above which notes are taken for binary.
constexpr std::size_t kMostOddPerThousand = 5;
// Notes of at least this many words must hold some that the tables know.
constexpr std::size_t kWordsToJudge = 40;
constexpr std::size_t kLeastKnownPercent = 18;

// Counts bytes that are neither text nor part of a well-formed UTF-8 character.
std::size_t oddBytes(std::string_view text) {
    std::size_t odd = 0;
    for (std::size_t i = 0; i < text.size();) {
        const auto byte = static_cast<unsigned char>(text[i]);
        if (byte >= 32 && byte < 0x80) {
            ++i;
            continue;
        }
        std::size_t length = 1;
        if (byte >= 0xF0 && byte < 0xF5) {
            length = 4;
        } else if (byte >= 0xE0 && byte < 0xF0) {
            length = 3;
        } else if (byte >= 0xC2 && byte < 0xE0) {
            length = 2;
        } else if (byte >= 0x80 ||
                   (byte < 32 && byte != '\n' && byte != '\r' && byte != '\t' && byte != '\f')) {
            ++odd;
        }
        bool whole = i + length <= text.size();
        for (std::size_t k = 1; k < length && whole; ++k) {
            whole = (static_cast<unsigned char>(text[i + k]) & 0xC0) == 0x80;
        }
        odd += length > 1 && !whole ? 1 : 0;
        i += whole ? length : 1;
    }
    return odd;
}

struct WordCount {
    std::size_t words = 0;
    std::size_t known = 0;
};

// Hands each sentence to the reader together with the one before it and the two after.
class Window {
  public:
    explicit Window(Reader& reader) : reader_(reader) {}

    void add(Sentence& sentence) {
        sentences_.push_back(std::move(sentence));
        if (sentences_.size() - at_ > 2) {
            take();
        }
    }

    void close() {
        while (at_ < sentences_.size()) {
            take();
        }
    }

  private:
    void take() {
        // Before the first, `at` is more than there are.
        const auto near = [&](std::size_t at) {
            return at < sentences_.size() ? &sentences_[at] : nullptr;
        };
        reader_.take(sentences_[at_], {near(at_ - 1), near(at_ + 1), near(at_ + 2)});
        ++at_;
        if (at_ > 1) {
            sentences_.pop_front();
            --at_;
        }
    }

    Reader& reader_;
    std::deque<Sentence> sentences_;
    std::size_t at_ = 0;  // the next to be taken
};

}  // namespace

model::Result<Reading> explainNotes(std::string_view notes, const ReadOptions& options) {
    if (notes.size() > options.mostBytes) {
        return model::cannotBeMet(
            model::saying("The notes are %1 bytes long and at most %2 are read at once: part them "
                          "into smaller files.",
                          notes.size(), options.mostBytes));
    }
    if (notes.starts_with("\xEF\xBB\xBF")) {
        notes.remove_prefix(3);
    }
    if (notes.find('\0') != std::string_view::npos ||
        oddBytes(notes) * 1000 > notes.size() * kMostOddPerThousand) {
        return model::cannotBeMet(
            "The notes are not plain text in UTF-8: save them as a text file and read that.");
    }
    Speller speller(tables().lexicon);
    Reader reader(options);
    reader.setUnits(unitsIn(notes));
    Window window(reader);
    WordCount count;
    eachSentence(notes, speller, [&](Sentence& sentence) {
        for (const Token& token : sentence.tokens) {
            count.words += token.kind == TokenKind::Word ? 1 : 0;
            count.known += token.kind == TokenKind::Word && token.word != kUnknown ? 1 : 0;
        }
        window.add(sentence);
    });
    window.close();
    if (count.words >= kWordsToJudge && count.known * 100 < count.words * kLeastKnownPercent) {
        return model::cannotBeMet(
            model::saying("Of %1 words in the notes only %2 are known: the reader understands "
                          "English alone. Translate the notes first.",
                          count.words, count.known));
    }
    return reader.finish();
}

model::Result<Draft> readNotes(std::string_view notes, const ReadOptions& options) {
    ReadOptions plain = options;
    plain.explain = false;
    model::Result<Reading> reading = explainNotes(notes, plain);
    if (!reading.ok()) {
        return reading.error();
    }
    return std::move(reading.value().draft);
}

}  // namespace ledgerboard::intake
