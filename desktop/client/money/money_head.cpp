#include "desktop/client/money/money_head.h"

#include <algorithm>

#include "core/compute/bank_lines.h"
#include "core/compute/contract_terms.h"

#include "desktop/client/desk.h"
#include "desktop/client/said.h"
#include "desktop/client/week_rows.h"

namespace ledgerboard::desk {

namespace {

HeadLine lineOf(const QString& name, model::Money money, const QString& rest) {
    HeadLine line;
    line.name = name;
    line.figure = Said::money(money);
    line.rest = rest;
    return line;
}

}  // namespace

MoneyHead::MoneyHead(QObject* parent) : QObject(parent) {
    connect(Desk::here(), &Desk::changed, this, &MoneyHead::changed);
    connect(Desk::here(), &Desk::wordsChanged, this, &MoneyHead::changed);
}

QVariantList MoneyHead::figures() const {
    const auto now = Desk::here()->now();
    if (now == nullptr) {
        return {};
    }
    const compute::Figures& job = now->figures.job;
    return {QVariant::fromValue(lineOf(tr("Committed"), job.committed, tr("signed, with changes"))),
            QVariant::fromValue(lineOf(tr("Billed"), job.billed, tr("bills, receipts and fees"))),
            QVariant::fromValue(lineOf(tr("Paid"), job.paid, tr("that left the account"))),
            QVariant::fromValue(lineOf(tr("Held"), job.held, tr("retainage not yet released"))),
            QVariant::fromValue(lineOf(tr("Owed"), job.owed, tr("billed less held and paid")))};
}

QString MoneyHead::aheadText() const {
    const auto now = Desk::here()->now();
    if (now == nullptr) {
        return {};
    }
    QStringList who;
    for (const auto& one : compute::paidAheadByCrew(now->rows, now->figures)) {
        who << tr("%1 by %2").arg(Said::text(one.name), Said::money(one.amount));
    }
    return who.isEmpty() ? QString()
                         : tr("Paid ahead of work seen: %1.").arg(who.join(QStringLiteral(", ")));
}

QString MoneyHead::barredText() const {
    const auto now = Desk::here()->now();
    if (now == nullptr) {
        return {};
    }
    QStringList who;
    for (const auto& one : compute::barredPayments(now->rows, now->figures)) {
        who << tr("%1, %2").arg(Said::text(one.name), Said::money(one.amount));
    }
    return who.isEmpty() ? QString()
                         : tr("Owed and barred: %1.").arg(who.join(QStringLiteral("; ")));
}

QString MoneyHead::askedText() const {
    const auto now = Desk::here()->now();
    if (now == nullptr || now->figures.unsignedChanges == 0) {
        return {};
    }
    return tr("%n change(s) asked and not decided; if signed %1.", nullptr,
              static_cast<int>(now->figures.unsignedChanges))
        .arg(Said::change(now->figures.ifAllSigned));
}

QString MoneyHead::unfinishedText() const {
    const auto now = Desk::here()->now();
    if (now == nullptr || now->figures.spendsWithoutAmount == 0) {
        return {};
    }
    return tr("%n row(s) without an amount: counted nowhere until it is entered.", nullptr,
              static_cast<int>(now->figures.spendsWithoutAmount));
}

int MoneyHead::waiting() const {
    const auto now = Desk::here()->now();
    if (now == nullptr) {
        return 0;
    }
    const compute::SettledLines settled(now->rows);
    return static_cast<int>(
        std::count_if(now->rows.bank_lines.begin(), now->rows.bank_lines.end(),
                      [&](const auto& line) { return settled.isWaiting(line); }));
}

}  // namespace ledgerboard::desk
