// What of the rows copied from a spreadsheet can come into the scope or the price book, and what is
// wrong where?
//
// Tried in the background first: nothing comes in before the owner says so, and then only the rows
// that nothing is wrong with, as one action. Rows are numbered as they were copied, from 1. Where
// the first row is no row of headings, the columns are taken to be those of the sheet, from the
// left. Threads: the UI's.
#pragma once

#include <QObject>
#include <QVariantList>
#include <QtQml/qqmlregistration.h>

#include "core/intake/files/bring.h"

namespace ledgerboard::desk {

// One thing wrong with one row.
struct PasteProblem {
    Q_GADGET
    Q_PROPERTY(QString row MEMBER row)
    Q_PROPERTY(QString column MEMBER column)
    Q_PROPERTY(QString what MEMBER what)
    Q_PROPERTY(QString content MEMBER content)

  public:
    QString row;
    QString column;
    QString what;
    QString content;  // the row as it was copied
};

class PasteDesk : public QObject {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(QString kind MEMBER kind_)
    Q_PROPERTY(bool isOpen READ isOpen NOTIFY changed)
    Q_PROPERTY(bool isWorking READ isWorking NOTIFY changed)
    Q_PROPERTY(QString refused READ refused NOTIFY changed)
    Q_PROPERTY(QString title READ title NOTIFY changed)
    Q_PROPERTY(QString goodText READ goodText NOTIFY changed)
    Q_PROPERTY(QString headingsText READ headingsText NOTIFY changed)
    Q_PROPERTY(int good READ good NOTIFY changed)
    Q_PROPERTY(int wrong READ wrong NOTIFY changed)
    Q_PROPERTY(QVariantList problems READ problems NOTIFY changed)

  public:
    using QObject::QObject;

    // Tries what is on the clipboard, or `text`.
    Q_INVOKABLE void tryClipboard();
    Q_INVOKABLE void tryText(const QString& text);
    // Brings in the rows that nothing is wrong with.
    Q_INVOKABLE void bring();
    // The rows that are wrong, for the spreadsheet, with what is wrong behind each.
    Q_INVOKABLE void copyWrong();
    Q_INVOKABLE void close();

    [[nodiscard]] bool isOpen() const { return isOpen_; }

    [[nodiscard]] bool isWorking() const { return isWorking_; }

    // Why nothing of it can be read; empty where it can.
    [[nodiscard]] QString refused() const { return refused_; }

    [[nodiscard]] QString title() const;
    [[nodiscard]] QString goodText() const;
    [[nodiscard]] QString headingsText() const;
    // Rows that would change something.
    [[nodiscard]] int good() const;

    [[nodiscard]] int wrong() const { return static_cast<int>(trial_.wrongLines.size()); }

    [[nodiscard]] QVariantList problems() const;

  signals:
    void changed();

  private:
    QString kind_ = QStringLiteral("scope");  // of rows, as `bring` names it: or "prices"
    std::string bytes_;                       // with a row of headings
    bool madeHeadings_ = false;
    intake::BringTrial trial_;
    bool isOpen_ = false;
    bool isWorking_ = false;
    QString refused_;
};

}  // namespace ledgerboard::desk
