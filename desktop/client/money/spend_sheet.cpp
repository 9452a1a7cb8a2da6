#include "desktop/client/money/spend_sheet.h"

#include <algorithm>

#include <QDate>
#include <QLocale>

#include "core/compute/papers.h"
#include "core/model/value.h"

#include "desktop/client/desk.h"
#include "desktop/client/money/field_words.h"
#include "desktop/client/money/record_pen.h"
#include "desktop/client/said.h"

namespace ledgerboard::desk {

using model::Money;
using model::Spend;
using model::SpendKind;
namespace f = model::field;

namespace {

constexpr int kFor = 3;
constexpr int kAmount = 4;
constexpr int kHeld = 5;
constexpr int kOpen = 7;
constexpr int kPaper = 8;

constexpr int kMonths = 12;
constexpr int kUnfinished = -1;
constexpr int kUndated = 0;

std::vector<RecordColumn> spendColumns() {
    return {{SpendSheet::tr("Date"), f::Spend::spentOn, 106, false},
            {SpendSheet::tr("Kind"), f::Spend::type, 96, false},
            {SpendSheet::tr("Payee"), f::Spend::payee, 0, false},
            {SpendSheet::tr("For"), 0, 190, false},
            {SpendSheet::tr("Amount"), f::Spend::amount, 84, true},
            {SpendSheet::tr("Held"), 0, 72, true},
            {SpendSheet::tr("Due"), f::Spend::dueOn, 106, false},
            {SpendSheet::tr("To pay"), 0, 72, true},
            {SpendSheet::tr("Paper"), 0, 84, false}};
}

int monthOf(const Spend& spend) {
    return spend.spentOn ? spend.spentOn->year() * kMonths + spend.spentOn->month() - 1 : kUndated;
}

}  // namespace

SpendSheet::SpendSheet(QObject* parent) : RecordSheet(model::Kind::Spend, &spendColumns, parent) {
    setHeadingColumns(kFor, kAmount);
    begin();
}

QString SpendSheet::groupName(int group) const {
    if (group == kUnfinished) {
        return tr("To be completed");
    }
    if (group == kUndated) {
        return tr("Without a day, billed");
    }
    const QDate day(group / kMonths, group % kMonths + 1, 1);
    //: A month and its year, in Qt's letters
    return tr("%1, billed").arg(QLocale().toString(day, tr("MMMM yyyy")));
}

const Spend* SpendSheet::spendOf(const model::RawId& id) const {
    for (const auto& spend : now()->rows.spends) {
        if (spend.id.raw() == id) {
            return &spend;
        }
    }
    return nullptr;
}

const compute::SpendRead* SpendSheet::readOf(const model::RawId& id) const {
    for (const auto& read : now()->figures.spending) {
        if (now()->rows.spends[read.spend].id.raw() == id) {
            return &read;
        }
    }
    return nullptr;
}

QString SpendSheet::isFor(const Spend& spend) const {
    const auto& finder = namesIn(now());
    if (!spend.split.empty()) {
        return tr("%n item(s)", nullptr, static_cast<int>(spend.split.size()));
    }
    for (const auto& id : {spend.item.raw(), spend.contract.raw(), spend.crew.raw()}) {
        if (!id.isNil()) {
            return Said::text(finder.nameOf(id));
        }
    }
    return tr("the whole job");
}

QString SpendSheet::itemText() const {
    const auto* spend = onItem() ? spendOf(idInHand()) : nullptr;
    if (spend == nullptr) {
        return {};
    }
    QStringList parts{FieldWords::word(model::wordOf(spend->type)), Said::text(spend->payee)};
    if (spend->spentOn) {
        parts << Said::day(*spend->spentOn, now()->today);
    }
    parts.removeAll(QString());
    return parts.join(QStringLiteral(", "));
}

std::vector<RecordLine> SpendSheet::linesOf() {
    std::vector<const compute::SpendRead*> reads(now()->rows.spends.size(), nullptr);
    for (const auto& read : now()->figures.spending) {
        reads[read.spend] = &read;
    }
    std::vector<RecordLine> lines;
    std::vector<std::pair<std::int64_t, std::size_t>> order;
    for (std::size_t k = 0; k < now()->rows.spends.size(); ++k) {
        const Spend& spend = now()->rows.spends[k];
        RecordLine line;
        line.id = spend.id.raw();
        line.group = spend.amount ? monthOf(spend) : kUnfinished;
        line.cells = fieldCells(line.id);
        line.cells[kFor] = isFor(spend);
        if (const auto* read = reads[k]) {
            line.counts = read->effect.billed;
            line.cells[kHeld] =
                Said::isNothing(read->effect.held) ? QString() : Said::money(read->effect.held);
            line.cells[kOpen] = spend.type == SpendKind::Invoice && read->openAmount > Money{}
                                    ? Said::money(read->openAmount)
                                    : QString();
        }
        line.strongCell = line.cells[kOpen].isEmpty() ? -1 : kOpen;
        if (compute::isPaperUnseen(spend)) {
            line.cells[kPaper] = tr("not seen");
            line.strongCell = kPaper;
        }
        if (!spend.amount) {
            line.cells[kAmount] = tr("to come");
            line.strongCell = kAmount;
        }
        line.isDim = spend.amount && reads[k] == nullptr;
        const std::int64_t first = line.group == kUnfinished ? INT32_MIN : 0;
        order.emplace_back(first - (spend.spentOn ? spend.spentOn->days() : 0), lines.size());
        lines.push_back(std::move(line));
    }
    std::stable_sort(order.begin(), order.end());
    std::vector<RecordLine> sorted;
    sorted.reserve(order.size());
    for (const auto& [day, at] : order) {
        sorted.push_back(std::move(lines[at]));
    }
    return sorted;
}

void SpendSheet::turnPaper() {
    const auto* spend = onItem() ? spendOf(idInHand()) : nullptr;
    if (spend == nullptr) {
        return;
    }
    write(f::Spend::paperSeen, model::valueOf(!spend->paperSeen),
          spend->paperSeen ? tr("Paper not seen: %1").arg(itemText())
                           : tr("Paper seen: %1").arg(itemText()));
}

QVariantMap SpendSheet::paymentOf() const {
    const auto* spend = onItem() ? spendOf(idInHand()) : nullptr;
    const auto* read = spend == nullptr ? nullptr : readOf(idInHand());
    if (read == nullptr || spend->type != SpendKind::Invoice || !(read->openAmount > Money{})) {
        Desk::here()->sayNotKept(
            tr("A payment is entered from an invoice of which something is still to be paid."));
        return {};
    }
    const auto& finder = namesIn(now());
    const auto name = [&finder](const model::RawId& id) {
        return id.isNil() ? QString() : Said::text(finder.nameOf(id));
    };
    return {{QStringLiteral("type"), QStringLiteral("payment")},
            {QStringLiteral("spent_on"), Said::text(now()->today.toString())},
            {QStringLiteral("payee"), Said::text(spend->payee)},
            {QStringLiteral("amount"), Said::text(read->openAmount.toString())},
            {QStringLiteral("pays"), name(spend->id.raw())},
            {QStringLiteral("item"), name(spend->item.raw())},
            {QStringLiteral("contract"), name(spend->contract.raw())},
            {QStringLiteral("crew"), name(spend->crew.raw())}};
}

QStringList SpendSheet::detailsOf(const model::RawId& id) const {
    const auto* spend = spendOf(id);
    if (spend == nullptr) {
        return {};
    }
    QStringList list;
    if (!spend->amount) {
        list << (spend->photo.isNil()
                     ? tr("Its amount is still to come; until then it counts nowhere.")
                     : tr("Begun with a picture; enter its amount: until then it counts "
                          "nowhere."));
    }
    if (const auto* read = readOf(id)) {
        QStringList parts;
        for (const auto& part : read->parts) {
            parts << tr("%1 %2").arg(Said::text(now()->figures.scope.lines[part.line].name),
                                     Said::cents(part.amount));
        }
        QString text = Said::cents(spend->amount.value_or(Money{}));
        if (spend->tax) {
            text += tr(", tax in it %1").arg(Said::cents(*spend->tax));
        }
        list << tr("%1: %2.").arg(text, parts.join(QStringLiteral("; ")));
        if (read->openAmount > Money{} && spend->type == SpendKind::Invoice) {
            list << tr("Still to be paid: %1.").arg(Said::cents(read->openAmount));
        }
    }
    if (!spend->bankId.empty()) {
        list << tr("The bank's line: %1.").arg(Said::text(spend->bankId));
    }
    list << Said::text(spend->note);
    list.removeAll(QString());
    return list;
}

namespace {

std::vector<RecordColumn> ruleColumns() {
    return {{RuleSheet::tr("The bank writes"), f::PayeeRule::words, 0, false},
            {RuleSheet::tr("Payee"), f::PayeeRule::payee, 160, false},
            {RuleSheet::tr("Item"), f::PayeeRule::item, 180, false},
            {RuleSheet::tr("Contract"), f::PayeeRule::contract, 130, false},
            {RuleSheet::tr("Crew"), f::PayeeRule::crew, 124, false},
            {RuleSheet::tr("Not ours"), f::PayeeRule::notOurs, 90, false}};
}

}  // namespace

RuleSheet::RuleSheet(QObject* parent) : RecordSheet(model::Kind::PayeeRule, &ruleColumns, parent) {
    begin();
}

std::vector<RecordLine> RuleSheet::linesOf() {
    std::vector<RecordLine> lines;
    for (const auto& rule : now()->rows.payee_rules) {
        RecordLine line;
        line.id = rule.id.raw();
        line.cells = fieldCells(line.id);
        lines.push_back(std::move(line));
    }
    return lines;
}

}  // namespace ledgerboard::desk
