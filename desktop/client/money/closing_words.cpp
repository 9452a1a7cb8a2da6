#include "desktop/client/money/closing_words.h"

#include <QRegularExpression>

#include "desktop/client/said.h"

namespace ledgerboard::desk {

namespace {

constexpr const char* kSentences[] = {
    QT_TRANSLATE_NOOP("ClosingWords", "its work finished"),
    QT_TRANSLATE_NOOP("ClosingWords", "its punch items looked at"),
    QT_TRANSLATE_NOOP("ClosingWords", "its final inspections passed"),
    QT_TRANSLATE_NOOP("ClosingWords", "its debris gone"),
    QT_TRANSLATE_NOOP("ClosingWords", "its work accepted"),
    QT_TRANSLATE_NOOP("ClosingWords", "its last bill agreed"),
    QT_TRANSLATE_NOOP("ClosingWords", "its final waiver, conditional"),
    QT_TRANSLATE_NOOP("ClosingWords", "the last payment, retainage with it"),
    QT_TRANSLATE_NOOP("ClosingWords", "its final waiver, unconditional"),
    QT_TRANSLATE_NOOP("ClosingWords", "warranty papers"),
    QT_TRANSLATE_NOOP("ClosingWords", "no scope item is under it: is it done?"),
    QT_TRANSLATE_NOOP("ClosingWords", "none is open"),
    QT_TRANSLATE_NOOP("ClosingWords", "none is entered for it: did it need one?"),
    QT_TRANSLATE_NOOP("ClosingWords", "have you seen the place swept?"),
    QT_TRANSLATE_NOOP("ClosingWords", "only after the money has cleared; from its suppliers too"),
    QT_TRANSLATE_NOOP("ClosingWords", "none is entered: is there one?"),
    QT_TRANSLATE_NOOP("ClosingWords", "not in"),
    QT_TRANSLATE_NOOP("ClosingWords", "billed"),
    QT_TRANSLATE_NOOP("ClosingWords", "billed, charge-backs taken off"),
    QT_TRANSLATE_NOOP("ClosingWords", "paid"),
    QT_TRANSLATE_NOOP("ClosingWords", "the book has none"),
    QT_TRANSLATE_NOOP("ClosingWords", "every permit closed, with its final card"),
    QT_TRANSLATE_NOOP("ClosingWords", "leave to occupy, where the town gives one"),
    QT_TRANSLATE_NOOP("ClosingWords", "towns differ: ask the building office"),
    QT_TRANSLATE_NOOP("ClosingWords", "lead-work records from the certified firm"),
    QT_TRANSLATE_NOOP("ClosingWords", "kept three years (from memory)"),
    QT_TRANSLATE_NOOP("ClosingWords", "clearance letters after removal"),
    QT_TRANSLATE_NOOP("ClosingWords", "warranties"),
    QT_TRANSLATE_NOOP("ClosingWords", "manuals of what was put in"),
    QT_TRANSLATE_NOOP("ClosingWords", "paint colours, tile lots, models"),
    QT_TRANSLATE_NOOP("ClosingWords", "the survey"),
    QT_TRANSLATE_NOOP("ClosingWords", "keys, openers and codes"),
    QT_TRANSLATE_NOOP("ClosingWords", "utilities handed over, meters read"),
    QT_TRANSLATE_NOOP("ClosingWords", "before and after from the same spots"),
    QT_TRANSLATE_NOOP("ClosingWords", "the list of work, for what buyers are told"),
    QT_TRANSLATE_NOOP("ClosingWords", "nobody has decided"),
    QT_TRANSLATE_NOOP("ClosingWords", "not signed"),
    QT_TRANSLATE_NOOP("ClosingWords", "not held yet"),
    QT_TRANSLATE_NOOP("ClosingWords", "no amount entered, so it counts nowhere"),
    QT_TRANSLATE_NOOP("ClosingWords", "not seen yet"),
    QT_TRANSLATE_NOOP("ClosingWords", "held"),
    QT_TRANSLATE_NOOP("ClosingWords", "left to pay"),
    QT_TRANSLATE_NOOP("ClosingWords", "asked for, not funded"),
    QT_TRANSLATE_NOOP("ClosingWords",
                      "the lender holds this back until permit finals, waivers and punch are in"),
    QT_TRANSLATE_NOOP("ClosingWords", "Final draw"),
};

}  // namespace

QString ClosingWords::said(const std::string& sentence) {
    for (const char* known : kSentences) {
        if (sentence == known) {
            return tr(known);
        }
    }
    const QString text = Said::text(sentence);
    static const QRegularExpression kShown(QStringLiteral("^([0-9.]+) % shown$"));
    if (const auto found = kShown.match(text); found.hasMatch()) {
        return tr("%1\u00a0% shown").arg(found.captured(1));
    }
    static const QRegularExpression kFinished(QStringLiteral("^(\\d+) of (\\d+) items? finished$"));
    if (const auto found = kFinished.match(text); found.hasMatch()) {
        return tr("%1 of %n item(s) finished", nullptr, found.captured(2).toInt())
            .arg(found.captured(1));
    }
    static const QRegularExpression kOpen(QStringLiteral("^(\\d+) (?:is|are) open$"));
    if (const auto found = kOpen.match(text); found.hasMatch()) {
        return tr("%n open", nullptr, found.captured(1).toInt());
    }
    static const QRegularExpression kNext(QStringLiteral("^(held|left to pay); next: (.+)$"));
    if (const auto found = kNext.match(text); found.hasMatch()) {
        return tr("%1; next: %2")
            .arg(said(found.captured(1).toStdString()), said(found.captured(2).toStdString()));
    }
    return text;
}

}  // namespace ledgerboard::desk
