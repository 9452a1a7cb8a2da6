#include "core/qml/known_sentences.h"

#include <algorithm>
#include <vector>

#include <QFile>
#include <QRegularExpression>

namespace ledgerboard::qml {

namespace {

// A sentence with fewer letters of its own fits too much: a figure or a day must stand in one of
// its places.
constexpr qsizetype kFewLetters = 5;

struct Sentence {
    QString pattern;
    QStringList between;      // what stands before, between and behind the places
    std::vector<int> places;  // their numbers as they come, from 0
    qsizetype letters = 0;
};

std::optional<Sentence> read(const QString& pattern) {
    Sentence sentence{pattern, {QString()}, {}, 0};
    for (qsizetype k = 0; k < pattern.size(); ++k) {
        const int number = k + 1 < pattern.size() ? pattern[k + 1].digitValue() : 0;
        if (pattern[k] == QLatin1Char('%') && number > 0) {
            sentence.places.push_back(number - 1);
            sentence.between << QString();
            ++k;
        } else {
            sentence.letters += pattern[k].isLetter() ? 1 : 0;
            sentence.between.last() += pattern[k];
        }
    }
    // Two places side by side cannot be told apart.
    for (qsizetype k = 1; k + 1 < sentence.between.size(); ++k) {
        if (sentence.between[k].isEmpty()) {
            return std::nullopt;
        }
    }
    return sentence.places.empty() || sentence.letters == 0 ? std::nullopt
                                                            : std::optional(sentence);
}

const std::vector<Sentence>& sentences() {
    static const std::vector<Sentence> kAll = [] {
        std::vector<Sentence> all;
        QFile file(QStringLiteral(":/said/sentences.txt"));
        if (file.open(QIODevice::ReadOnly)) {
            for (const auto& line : QString::fromUtf8(file.readAll()).split(QLatin1Char('\n'))) {
                if (auto sentence = read(line)) {
                    all.push_back(std::move(*sentence));
                }
            }
        }
        std::stable_sort(all.begin(), all.end(), [](const Sentence& a, const Sentence& b) {
            return a.letters > b.letters;
        });
        return all;
    }();
    return kAll;
}

// A figure, a day, or what ends with one: "Roof crew 1,200".
bool isSure(const QString& part) {
    static const QRegularExpression kSure(QStringLiteral(
        "(^|\\s)([0-9][0-9.,]*|(Mon|Tue|Wed|Thu|Fri|Sat|Sun)[a-z]*( [0-9]+ [A-Z][a-z]+( "
        "[0-9]+)?)?)$"));
    return kSure.match(part).hasMatch();
}

std::optional<KnownSentence> fit(const Sentence& sentence, const QString& english) {
    if (!english.startsWith(sentence.between.first()) ||
        !english.endsWith(sentence.between.last())) {
        return std::nullopt;
    }
    KnownSentence known{sentence.pattern, {}};
    bool isKnown = sentence.letters >= kFewLetters;
    const qsizetype end = english.size() - sentence.between.last().size();
    qsizetype at = sentence.between.first().size();
    for (std::size_t k = 0; k < sentence.places.size(); ++k) {
        const bool isLast = k + 1 == sentence.places.size();
        const qsizetype until =
            isLast ? end : english.indexOf(sentence.between[static_cast<qsizetype>(k) + 1], at + 1);
        if (until <= at || until > end) {
            return std::nullopt;
        }
        const QString part = english.mid(at, until - at);
        isKnown = isKnown || isSure(part);
        while (known.parts.size() <= sentence.places[k]) {
            known.parts << QString();
        }
        known.parts[sentence.places[k]] = part;
        at = until + (isLast ? 0 : sentence.between[static_cast<qsizetype>(k) + 1].size());
    }
    return isKnown ? std::optional(known) : std::nullopt;
}

}  // namespace

std::optional<KnownSentence> knownSentence(const QString& english) {
    for (const auto& sentence : sentences()) {
        if (auto known = fit(sentence, english)) {
            return known;
        }
    }
    return std::nullopt;
}

}  // namespace ledgerboard::qml
