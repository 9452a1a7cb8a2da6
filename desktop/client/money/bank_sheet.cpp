#include <algorithm>

#include "core/intake/bank/settle_line.h"
#include "core/model/value.h"

#include "desktop/client/desk.h"
#include "desktop/client/money/bank_words.h"
#include "desktop/client/money/field_words.h"
#include "desktop/client/money/record_pen.h"
#include "desktop/client/money/spend_sheet.h"
#include "desktop/client/said.h"

namespace ledgerboard::desk {

using intake::LineIs;
using model::Kind;
namespace f = model::field;

namespace {

constexpr int kGuess = 3;

constexpr qsizetype kMostNames = 8;

std::vector<RecordColumn> bankColumns() {
    return {{BankSheet::tr("Date"), 0, 106, false},
            {BankSheet::tr("Amount"), 0, 96, true},
            {BankSheet::tr("The bank writes"), 0, 240, false},
            {BankSheet::tr("Taken for"), 0, 0, false},
            {BankSheet::tr("Sure"), 0, 64, true}};
}

}  // namespace

QString BankWords::taken(const std::shared_ptr<const JobNow>& now, const intake::LineMatch& match) {
    const auto& finder = namesIn(now);
    switch (match.is) {
        case LineIs::Unknown:
            return {};
        case LineIs::Filed:
            return tr("the row %1").arg(Said::text(finder.nameOf(match.spend.raw())));
        case LineIs::Draw:
            return tr("draw %1").arg(Said::text(finder.nameOf(match.draw.raw())));
        case LineIs::NotOurs:
            return tr("not ours");
        case LineIs::NewSpend:
            break;
    }
    QString what = tr("the whole job");
    for (const auto& id :
         {match.fresh.crew.raw(), match.fresh.contract.raw(), match.fresh.item.raw()}) {
        what = id.isNil() ? what : Said::text(finder.nameOf(id));
    }
    //: A kind of spend and what it is for: "Receipt for Kitchen/cabinets"
    return tr("%1 for %2").arg(FieldWords::word(model::wordOf(match.fresh.type)), what);
}

QString BankWords::written(const model::BankLine& line) {
    return Said::text(line.payee.empty() ? line.memo : line.payee);
}

BankSheet::BankSheet(QObject* parent) : RecordSheet(Kind::BankLine, &bankColumns, parent) {
    begin();
}

std::vector<RecordLine> BankSheet::linesOf() {
    std::vector<RecordLine> lines;
    for (const auto& waiting : intake::waitingLines(now()->rows)) {
        RecordLine line;
        line.id = waiting.line.id.raw();
        const QString taken = BankWords::taken(now(), waiting.match);
        line.cells = {
            waiting.line.postedOn ? Said::day(*waiting.line.postedOn, now()->today) : QString(),
            waiting.line.amount ? Said::cents(*waiting.line.amount) : QString(),
            BankWords::written(waiting.line), taken.isEmpty() ? tr("not known") : taken,
            taken.isEmpty() ? QString() : QString::number(waiting.match.sure)};
        line.strongCell = taken.isEmpty() ? -1 : kGuess;
        lines.push_back(std::move(line));
    }
    return lines;
}

QString BankSheet::itemText() const {
    if (!onItem()) {
        return {};
    }
    for (const auto& line : now()->rows.bank_lines) {
        if (line.id.raw() == idInHand()) {
            return tr("%1, %2").arg(BankWords::written(line),
                                    Said::cents(line.amount.value_or(model::Money{})));
        }
    }
    return {};
}

QStringList BankSheet::detailsOf(const model::RawId& id) const {
    for (const auto& waiting : intake::waitingLines(now()->rows)) {
        if (waiting.line.id.raw() != id) {
            continue;
        }
        QStringList list;
        list << (waiting.match.is == LineIs::Unknown
                     ? tr("Nothing in the book says what it is for: name it, or make it a new row.")
                     : tr("%1, sure by %2 of 100: %3")
                           .arg(BankWords::taken(now(), waiting.match))
                           .arg(waiting.match.sure)
                           .arg(Said::text(waiting.match.reason)));
        if (!waiting.line.memo.empty()) {
            list << tr("The bank notes: %1").arg(Said::text(waiting.line.memo));
        }
        list << tr("It counts nowhere until it is filed or left out.");
        return list;
    }
    return {};
}

namespace {

bool settle(const std::shared_ptr<const JobNow>& now, const model::RawId& id,
            const intake::LineDecision& decision) {
    Desk& desk = *Desk::here();
    auto decided = intake::settleLine(desk.book(), desk.job(), model::Id<Kind::BankLine>(id),
                                      decision, desk.instant());
    if (!decided.ok()) {
        desk.sayNotKept(Said::trouble(decided.error()));
        return false;
    }
    const auto& done = decided.value();
    QString said = done.match.is == LineIs::NotOurs
                       ? BankSheet::tr("Left out: it is not ours")
                       : BankSheet::tr("Filed: %1").arg(BankWords::taken(now, done.match));
    if (!done.rule.empty()) {
        said += QStringLiteral(". ") +
                BankSheet::tr("From now on “%1” is taken for the same").arg(Said::text(done.rule));
    }
    if (!done.also.empty()) {
        said += QStringLiteral(". ") + BankSheet::tr("%n other line(s) filed with it", nullptr,
                                                     static_cast<int>(done.also.size()));
    }
    desk.sayKept(said, QStringLiteral("settle bank line"));
    return true;
}

}  // namespace

bool BankSheet::takeGuess() {
    intake::LineDecision decision;
    decision.takeGuess = true;
    return onItem() && settle(now(), idInHand(), decision);
}

bool BankSheet::leaveOut() {
    intake::LineDecision decision;
    decision.notOurs = true;
    return onItem() && settle(now(), idInHand(), decision);
}

bool BankSheet::fileTo(const QString& what, bool once) {
    if (!onItem()) {
        return false;
    }
    QString name = what.trimmed();
    if (name.isEmpty()) {
        Desk::here()->sayNotKept(
            tr("Name what it is for: an item, a contract, a crew, an invoice "
               "it pays, another row, a draw, or “job”."));
        return false;
    }
    intake::LineDecision decision;
    decision.learn = !once;
    const bool isJob = name.compare(QLatin1String("job"), Qt::CaseInsensitive) == 0 ||
                       name.compare(tr("job"), Qt::CaseInsensitive) == 0;
    if (!isJob) {
        const auto& finder = namesIn(now());
        auto found = finder.findAny(name.toStdString());
        if (const QStringList names = near(name); !found.ok() && names.size() == 1) {
            found = finder.findAny(names.first().toStdString());
        }
        if (!found.ok()) {
            Desk::here()->sayNotKept(Said::trouble(found.error()));
            return false;
        }
        decision.kind = found.value().first;
        decision.target = found.value().second;
    }
    return settle(now(), idInHand(), decision);
}

QStringList BankSheet::near(const QString& typed) const {
    QStringList names;
    const QString wanted = typed.trimmed();
    if (now() == nullptr || wanted.isEmpty()) {
        return names;
    }
    const auto& finder = namesIn(now());
    const auto take = [&](const auto& list) {
        for (const auto& row : list) {
            const QString name = Said::text(finder.nameOf(row.id.raw()));
            if (names.size() < kMostNames && name.contains(wanted, Qt::CaseInsensitive)) {
                names << name;
            }
        }
    };
    take(now()->rows.contracts);
    take(now()->rows.crews);
    take(now()->rows.items);
    names.removeDuplicates();
    return names;
}

}  // namespace ledgerboard::desk
