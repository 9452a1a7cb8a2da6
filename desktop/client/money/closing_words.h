// How are the sentences of compute::closingOf said in the language of the pages?
//
// They are fixed, or fixed but for figures; one that is neither is said as it stands, in English.
// Threads: any.
#pragma once

#include <string>

#include <QCoreApplication>
#include <QString>

namespace ledgerboard::desk {

class ClosingWords {
    Q_DECLARE_TR_FUNCTIONS(ClosingWords)

  public:
    [[nodiscard]] static QString said(const std::string& sentence);
};

}  // namespace ledgerboard::desk
