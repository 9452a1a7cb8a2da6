// Which sentence of core is this, and what stands in its places? An error, and most of what a page
// says, holds its English alone.
//
// sentences.txt has every sentence of core (core/qml/core_sentences.py); the longest that fits is
// taken. Threads: any.
#pragma once

#include <optional>

#include <QString>
#include <QStringList>

namespace ledgerboard::qml {

struct KnownSentence {
    QString pattern;    // "asked %1, not signed"
    QStringList parts;  // what stands in %1, %2 and so on
};

// Empty where no sentence with places fits.
[[nodiscard]] std::optional<KnownSentence> knownSentence(const QString& english);

}  // namespace ledgerboard::qml
