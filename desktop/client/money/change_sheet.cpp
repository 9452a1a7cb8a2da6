#include <algorithm>

#include "core/model/value.h"

#include "desktop/client/desk.h"
#include "desktop/client/money/contract_sheet.h"
#include "desktop/client/money/record_pen.h"
#include "desktop/client/said.h"

namespace ledgerboard::desk {

using model::Change;
using model::Money;
namespace f = model::field;

namespace {

constexpr int kAsked = 0;
constexpr int kSigned = 1;
constexpr int kRefused = 2;

constexpr int kAmount = 2;

std::vector<RecordColumn> changeColumns() {
    return {{ChangeSheet::tr("Change"), f::Change::name, 0, false},
            {ChangeSheet::tr("Contract"), f::Change::contract, 120, false},
            {ChangeSheet::tr("Amount"), f::Change::amount, 84, true},
            {ChangeSheet::tr("Days"), f::Change::days, 56, true},
            {ChangeSheet::tr("Asked"), f::Change::askedOn, 104, false},
            {ChangeSheet::tr("Signed"), f::Change::signedOn, 104, false},
            {ChangeSheet::tr("Refused"), f::Change::refusedOn, 104, false},
            {ChangeSheet::tr("Paid from"), f::Change::paidFrom, 110, false}};
}

const Change* changeIn(const JobNow& now, const model::RawId& id) {
    for (const auto& change : now.rows.changes) {
        if (change.id.raw() == id) {
            return &change;
        }
    }
    return nullptr;
}

int groupOf(const Change& change) {
    return change.signedOn ? kSigned : change.refusedOn ? kRefused : kAsked;
}

}  // namespace

ChangeSheet::ChangeSheet(QObject* parent)
    : RecordSheet(model::Kind::Change, &changeColumns, parent) {
    setHeadingColumns(1, kAmount);
    begin();
}

QString ChangeSheet::groupName(int group) const {
    return group == kAsked    ? tr("Asked, neither signed nor refused")
           : group == kSigned ? tr("Signed")
                              : tr("Refused");
}

std::vector<RecordLine> ChangeSheet::linesOf() {
    std::vector<RecordLine> lines;
    for (const auto& change : now()->rows.changes) {
        RecordLine line;
        line.id = change.id.raw();
        line.group = groupOf(change);
        line.counts = change.amount.value_or(Money{});
        line.cells = fieldCells(line.id);
        line.cells[kAmount] = change.amount ? Said::change(*change.amount) : QString();
        line.isDim = line.group == kRefused;
        line.strongCell = line.group == kAsked ? kAmount : -1;
        lines.push_back(std::move(line));
    }
    std::stable_sort(lines.begin(), lines.end(),
                     [](const auto& a, const auto& b) { return a.group < b.group; });
    return lines;
}

bool ChangeSheet::sign() {
    Desk& desk = *Desk::here();
    const auto* change = onItem() ? changeIn(*now(), idInHand()) : nullptr;
    if (change == nullptr) {
        return false;
    }
    if (change->signedOn) {
        desk.sayNotKept(
            tr("That change is signed already: Ctrl+Z takes it back, or clear the "
               "day it was signed."));
        return false;
    }
    if (!change->amount) {
        desk.sayNotKept(tr("Enter what the change adds before it is signed; 0 where nothing."));
        return false;
    }
    store::Action action("sign " + change->name);
    action.set(change->id.raw(), f::Change::signedOn, model::valueOf(now()->today));
    if (change->refusedOn) {
        action.set(change->id.raw(), f::Change::refusedOn, {});
    }
    return desk.keep(
        action, tr("Signed: %1, %2").arg(Said::text(change->name), Said::change(*change->amount)));
}

bool ChangeSheet::refuse() {
    Desk& desk = *Desk::here();
    const auto* change = onItem() ? changeIn(*now(), idInHand()) : nullptr;
    if (change == nullptr) {
        return false;
    }
    if (change->signedOn) {
        desk.sayNotKept(
            tr("That change is signed: what was signed is not refused. Clear the day "
               "it was signed first."));
        return false;
    }
    store::Action action("refuse " + change->name);
    action.set(change->id.raw(), f::Change::refusedOn, model::valueOf(now()->today));
    return desk.keep(action, tr("Refused: %1").arg(Said::text(change->name)));
}

QStringList ChangeSheet::detailsOf(const model::RawId& id) const {
    const auto* change = changeIn(*now(), id);
    if (change == nullptr) {
        return {};
    }
    QStringList list;
    if (!change->items.empty()) {
        QStringList items;
        for (const auto& item : change->items) {
            items << Said::text(namesIn(now()).nameOf(item.raw()));
        }
        list << tr("For %1.").arg(items.join(QStringLiteral("; ")));
    }
    list << Said::text(change->why);
    if (groupOf(*change) == kAsked) {
        list << tr("It counts nowhere until it is signed.") +
                    (change->paidFrom == model::PaidFrom::Unset
                         ? QLatin1Char(' ') + tr("Say what it is to be paid from.")
                         : QString());
    }
    list.removeAll(QString());
    return list;
}

}  // namespace ledgerboard::desk
