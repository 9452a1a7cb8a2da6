#include "desktop/client/money/contract_sheet.h"

#include <algorithm>

#include "core/compute/contract_terms.h"
#include "core/compute/papers.h"
#include "core/compute/positions.h"

#include "desktop/client/desk.h"
#include "desktop/client/said.h"

namespace ledgerboard::desk {

using compute::ContractFigures;
using model::Money;
namespace f = model::field;

namespace {

constexpr int kWork = 0;
constexpr int kGoods = 1;

// The columns by place.
constexpr int kChanges = 3;
constexpr int kNow = 4;
constexpr int kSeen = 5;
constexpr int kBilled = 6;
constexpr int kPaid = 7;
constexpr int kHeld = 8;
constexpr int kLeft = 9;
constexpr int kPayable = 10;

QString words(const QStringList& parts) {
    return parts.join(QLatin1Char(' '));
}

std::vector<RecordColumn> contractColumns() {
    return {{ContractSheet::tr("Contract"), f::Contract::name, 0, false},
            {ContractSheet::tr("Crew"), f::Contract::crew, 120, false},
            {ContractSheet::tr("Sum"), f::Contract::sum, 68, true},
            {ContractSheet::tr("Changes"), 0, 66, true},
            {ContractSheet::tr("Now"), 0, 68, true},
            {ContractSheet::tr("Seen"), 0, 58, true},
            {ContractSheet::tr("Billed"), 0, 76, true},
            {ContractSheet::tr("Paid"), 0, 68, true},
            {ContractSheet::tr("Held"), 0, 70, true},
            {ContractSheet::tr("To bill"), 0, 80, true},
            {ContractSheet::tr("Pay today"), 0, 84, true},
            {ContractSheet::tr("Signed"), f::Contract::signedOn, 100, false}};
}

}  // namespace

ContractSheet::ContractSheet(QObject* parent)
    : RecordSheet(model::Kind::Contract, &contractColumns, parent) {
    setHeadingColumns(1, kNow);
    begin();
}

QString ContractSheet::groupName(int group) const {
    return group == kWork ? tr("Work") : tr("Orders of goods");
}

std::vector<RecordLine> ContractSheet::linesOf() {
    std::vector<RecordLine> lines;
    for (const auto& figures : now()->figures.contracts) {
        const model::Contract& row = now()->rows.contracts[figures.contract];
        RecordLine line;
        line.id = row.id.raw();
        line.group = row.type == model::ContractKind::Order ? kGoods : kWork;
        line.counts = figures.now;
        line.cells = fieldCells(line.id);
        line.isDim = !figures.isSigned;
        if (figures.isSigned) {
            line.cells[kChanges] = Said::isNothing(figures.signedChanges)
                                       ? QString()
                                       : Said::change(figures.signedChanges);
            line.cells[kNow] = Said::money(figures.now);
            line.cells[kSeen] = Said::percent(figures.seen);
            line.cells[kLeft] = Said::money(figures.now - figures.billed);
        }
        line.cells[kBilled] = Said::money(figures.billed);
        line.cells[kPaid] = Said::money(figures.paid);
        line.cells[kHeld] = Said::isNothing(figures.held) ? QString() : Said::money(figures.held);
        line.cells[kPayable] = !figures.isSigned && figures.payableToday == Money{}
                                   ? tr("not signed")
                                   : Said::money(figures.payableToday);
        if (!figures.barredBy.empty()) {
            line.cells[kPayable] = tr("barred");
            line.strongCell = kPayable;
            line.isBarred = true;
        } else if (figures.paidAhead > Money{}) {
            line.strongCell = kPaid;
        }
        lines.push_back(std::move(line));
    }
    std::stable_sort(lines.begin(), lines.end(),
                     [](const auto& a, const auto& b) { return a.group < b.group; });
    return lines;
}

const ContractFigures* ContractSheet::figuresInHand() const {
    const auto id = idInHand();
    if (id.isNil()) {
        return nullptr;
    }
    for (const auto& figures : now()->figures.contracts) {
        if (now()->rows.contracts[figures.contract].id.raw() == id) {
            return &figures;
        }
    }
    return nullptr;
}

QString ContractSheet::barredText() const {
    const auto* figures = figuresInHand();
    if (figures == nullptr || figures->barredBy.empty()) {
        return {};
    }
    QStringList reasons;
    for (const auto& bar :
         compute::barsOn(now()->rows, now()->rows.contracts[figures->contract], now()->today)) {
        const QString who = Said::text(bar.who);
        switch (bar.why) {
            case compute::Bar::InsuranceLapsed:
                reasons << tr("the insurance of %1 lapsed on %2")
                               .arg(who, Said::day(*bar.on, now()->today));
                break;
            case compute::Bar::WaiverAwaited:
                reasons << tr("a lien waiver of %1 has not come").arg(who);
                break;
            case compute::Bar::FinalWaiver:
                reasons << tr("the work was accepted and the final lien waiver has not come");
                break;
        }
    }
    QString text = tr("Nothing may be paid: %1.").arg(reasons.join(QStringLiteral("; ")));
    if (figures->payableOnceCleared > Money{}) {
        text += QLatin1Char(' ') + tr("Once that is cleared, %1 can be paid.")
                                       .arg(Said::cents(figures->payableOnceCleared));
    }
    return text;
}

QStringList ContractSheet::detailsOf(const model::RawId& id) const {
    const auto* figures = figuresInHand();
    if (figures == nullptr) {
        return {};
    }
    const model::Contract& row = now()->rows.contracts[figures->contract];
    QStringList list;
    QStringList money;
    money << tr("Billed %1, paid %2, held %3, owed %4.")
                 .arg(Said::cents(figures->billed), Said::cents(figures->paid),
                      Said::cents(figures->held), Said::cents(figures->owed));
    if (figures->paidAhead > Money{}) {
        money << tr("Paid ahead of work seen: %1, %2 of the contract.")
                     .arg(Said::cents(figures->paidAhead), Said::percent(figures->paidAheadPoints));
    }
    if (figures->beyond > Money{}) {
        money << tr("Billed beyond the contract: %1.").arg(Said::cents(figures->beyond));
    }
    if (figures->depositBeyondLimit > Money{}) {
        money << tr("Its deposit is %1 beyond the limit set for the job.")
                     .arg(Said::cents(figures->depositBeyondLimit));
    }
    list << words(money);
    QStringList papers;
    const auto crew = compute::Positions<model::Crew>(now()->rows.crews).of(row.crew);
    if (row.type != model::ContractKind::Order && crew) {
        const auto until = compute::insuredUntil(now()->rows, now()->rows.crews[*crew]);
        papers << (until ? tr("Insured until %1.").arg(Said::day(*until, now()->today))
                         : tr("No insurance date was entered."));
    }
    if (row.retainage) {
        papers << tr("%1 held back of each bill.").arg(Said::percent(*row.retainage));
    }
    if (row.acceptedOn) {
        papers << tr("Accepted %1.").arg(Said::day(*row.acceptedOn, now()->today));
    }
    if (row.waiverReceivedOn) {
        papers
            << tr("Final lien waiver of %1.").arg(Said::day(*row.waiverReceivedOn, now()->today));
    }
    if (!row.note.empty()) {
        papers << Said::text(row.note);
    }
    list << words(papers);
    QStringList changes;
    for (const auto& change : now()->rows.changes) {
        if (change.contract.raw() == id) {
            changes << tr("%1 %2, %3")
                           .arg(Said::text(change.name),
                                change.amount ? Said::change(*change.amount) : QString(),
                                change.signedOn    ? tr("signed")
                                : change.refusedOn ? tr("refused")
                                                   : tr("asked, not signed"));
        }
    }
    if (!changes.isEmpty()) {
        list << tr("Changes: %1.").arg(changes.join(QStringLiteral("; ")));
    }
    list.removeAll(QString());
    return list;
}

}  // namespace ledgerboard::desk
