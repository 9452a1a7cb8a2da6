#include "mobile/mark_desk.h"

#include "core/compute/mark_wish.h"
#include "core/compute/pricing.h"
#include "core/qml/id_text.h"

#include "mobile/job_book.h"
#include "mobile/now/crew_day.h"
#include "mobile/said.h"

namespace ledgerboard::phone {

using compute::MarkWish;
using qml::idText;

namespace {

double share(model::Percent percent) {
    return static_cast<double>(percent.basisPoints()) / 10'000;
}

const JobNow* now() {
    return JobBook::here()->now();
}

// "Remove sheet floor, done; replace subfloor, from Monday"
QString neighbourText(const std::vector<std::size_t>& rows) {
    QStringList texts;
    for (const std::size_t k : rows) {
        const model::Item& row = now()->rows.items[k];
        const QString when =
            row.actualFinishOn
                ? MarkDesk::tr("done")
                : MarkDesk::tr("from %1").arg(Said::near(*row.plannedStartOn, now()->today));
        texts << Said::whatIsDone(row) + QStringLiteral(", ") + when;
    }
    return texts.join(QStringLiteral("; "));
}

}  // namespace

MarkDesk::MarkDesk(QObject* parent) : QObject(parent) {
    connect(JobBook::here(), &JobBook::changed, this, &MarkDesk::changed);
}

void MarkDesk::setItemId(const QString& id) {
    if (itemId_ == id) {
        return;
    }
    itemId_ = id;
    const auto raw = model::RawId::parse(id.toStdString());
    id_ = raw.ok() ? model::Id<model::Kind::Item>(raw.value()) : model::Id<model::Kind::Item>();
    emit itemIdChanged();
    emit changed();
}

Found MarkDesk::found() const {
    return now() == nullptr ? Found{} : findItem(*now(), id_);
}

const model::Item* MarkDesk::item() const {
    const Found at = found();
    return at.item == nullptr ? nullptr : &now()->rows.items[at.item->row];
}

bool MarkDesk::isThere() const {
    return item() != nullptr;
}

QString MarkDesk::place() const {
    const Found at = found();
    return at.space == nullptr ? QString() : Said::text(at.space->name);
}

QString MarkDesk::title() const {
    const auto* row = item();
    return row == nullptr
               ? QString()
               : (Said::treatment(row->treatment) + QLatin1Char(' ') + Said::text(row->object))
                     .trimmed();
}

QString MarkDesk::facts() const {
    const auto* row = item();
    if (row == nullptr) {
        return {};
    }
    QStringList facts;
    facts << Said::size(*row) << Said::text(row->selection) << Said::text(row->instructions);
    for (const auto& crew : now()->rows.crews) {
        if (crew.id == row->crew) {
            facts << Said::text(crew.name);
        }
    }
    facts.removeAll(QString());
    for (auto& fact : facts) {
        while (fact.endsWith(QLatin1Char('.'))) {
            fact.chop(1);
        }
    }
    return facts.join(QStringLiteral(". "));
}

bool MarkDesk::isSteps() const {
    const auto* row = item();
    return row != nullptr && compute::measureOf(*row) == model::Measure::WeightedSteps &&
           !row->steps.empty();
}

bool MarkDesk::isFinishedOnly() const {
    return stops() <= 1;
}

int MarkDesk::stops() const {
    const auto* row = item();
    return row == nullptr ? 1 : compute::stopsOf(*row);
}

int MarkDesk::lastStop() const {
    const auto* row = item();
    return row == nullptr ? 0 : compute::stopAt(*row, found().item->shown);
}

double MarkDesk::last() const {
    const Found at = found();
    return at.item == nullptr || !at.item->markedOn ? -1 : share(at.item->shown);
}

double MarkDesk::plan() const {
    const Found at = found();
    return at.item == nullptr || !at.item->plan ? -1 : share(*at.item->plan);
}

QString MarkDesk::lastText() const {
    const Found at = found();
    if (at.item == nullptr || !at.item->markedOn) {
        return {};
    }
    return tr("%1 on %2").arg(Said::percent(at.item->shown), Said::day(*at.item->markedOn));
}

QString MarkDesk::planText() const {
    const Found at = found();
    if (at.item == nullptr || !at.item->plan) {
        return {};
    }
    return tr("plan %1").arg(Said::percent(*at.item->plan));
}

QStringList MarkDesk::steps() const {
    QStringList names;
    if (const auto* row = item()) {
        for (const auto& step : row->steps) {
            names << Said::text(step.name);
        }
    }
    return names;
}

QStringList MarkDesk::stepsDone() const {
    const auto* row = item();
    if (row == nullptr) {
        return {};
    }
    if (found().item->isFinished()) {
        return steps();
    }
    // Of the last mark that names steps.
    QStringList names;
    for (const auto& mark : now()->rows.marks) {
        if (mark.item == row->id && !mark.stepsDone.empty()) {
            names.clear();
            for (const auto& step : compute::stepsIn(mark.stepsDone)) {
                names << Said::text(step);
            }
        }
    }
    return names;
}

QString MarkDesk::before() const {
    const Found at = found();
    return at.item == nullptr || now()->isOwner ? QString()
                                                : neighbourText(neighboursOf(*now(), at).before);
}

QString MarkDesk::after() const {
    const Found at = found();
    return at.item == nullptr || now()->isOwner ? QString()
                                                : neighbourText(neighboursOf(*now(), at).after);
}

bool MarkDesk::isReady() const {
    const auto* row = item();
    return row != nullptr && row->readyToLook && !row->acceptedOn;
}

bool MarkDesk::canSayReady() const {
    const auto* row = item();
    return row != nullptr && !now()->isOwner && !row->acceptedOn;
}

bool MarkDesk::canAccept() const {
    return isReady() && now()->isOwner;
}

QString MarkDesk::spaceId() const {
    const Found at = found();
    return at.space == nullptr ? QString() : idText(at.space->id);
}

QString MarkDesk::cautionAbout() const {
    const Found at = found();
    return at.item == nullptr || at.item->holdUps.empty()
               ? QString()
               : Said::told(now()->cautions.all[at.item->holdUps.front()].about);
}

QString MarkDesk::cautionText() const {
    const Found at = found();
    if (at.item == nullptr || at.item->holdUps.empty()) {
        return {};
    }
    const auto& caution = now()->cautions.all[at.item->holdUps.front()];
    QStringList parts{Said::told(caution.text()), Said::told(caution.consequence())};
    parts.removeAll(QString());
    return parts.isEmpty() ? Said::told(caution.why) : parts.join(QStringLiteral("\n\n"));
}

QString MarkDesk::cautionSource() const {
    const Found at = found();
    if (at.item == nullptr || at.item->holdUps.empty()) {
        return {};
    }
    const auto& caution = now()->cautions.all[at.item->holdUps.front()];
    QStringList parts{tr("Raised by: %1.").arg(Said::told(caution.why))};
    if (!caution.source().empty()) {
        parts << tr("Source: %1.").arg(Said::told(caution.source()));
    }
    parts << Said::told(compute::kCautionReminder);
    return parts.join(QLatin1Char(' '));
}

QString MarkDesk::figureAt(int stop) const {
    const auto* row = item();
    return row == nullptr ? QString() : Said::percent(compute::percentAt(*row, stop));
}

QString MarkDesk::countAt(int stop) const {
    const auto* row = item();
    if (row == nullptr || !row->quantity) {
        return {};
    }
    const auto wish = compute::wishAt(*row, stop);
    if (!wish.count && compute::measureOf(*row) != model::Measure::CountedUnits) {
        return {};
    }
    const auto count = wish.count.value_or(stop == 0 ? model::Quantity{} : *row->quantity);
    const bool isPieces = row->unit.empty() || compute::sameUnit(row->unit, "each");
    return tr("%1 of %2")
        .arg(Said::text(count.toString()),
             isPieces ? Said::text(row->quantity->toString()) : Said::size(*row));
}

bool MarkDesk::keepStop(int stop, const QString& note) {
    const auto* row = item();
    return row != nullptr && keep(compute::wishAt(*row, stop), note);
}

bool MarkDesk::keepSteps(const QStringList& done, const QString& note) {
    const auto* row = item();
    if (row == nullptr) {
        return false;
    }
    MarkWish wish;
    for (const auto& step : done) {
        wish.steps.push_back(step.toStdString());
    }
    if (done.isEmpty() || done.size() == static_cast<qsizetype>(row->steps.size())) {
        wish.steps.clear();
        wish.percent = done.isEmpty() ? model::Percent{} : model::Percent::whole();
    }
    return keep(std::move(wish), note);
}

bool MarkDesk::keepFinished(const QString& note) {
    return keep(compute::finishedWish(), note);
}

bool MarkDesk::sayReady(bool ready) {
    const auto* row = item();
    if (row == nullptr || !canSayReady()) {
        return false;
    }
    store::Action action("ready to look at " + row->object);
    action.set(row->id.raw(), model::field::Item::readyToLook,
               model::Value{std::int64_t{ready ? 1 : 0}});
    return JobBook::here()->keep(
        action, ready ? tr("%1: ready to be looked at").arg(Said::begun(row->object))
                      : tr("%1: not ready yet").arg(Said::begun(row->object)));
}

bool MarkDesk::accept() {
    const auto* row = item();
    if (row == nullptr || !canAccept()) {
        return false;
    }
    store::Action action("accept " + row->object);
    action.set(row->id.raw(), model::field::Item::acceptedOn,
               model::Value{std::int64_t{now()->today.days()}});
    return JobBook::here()->keep(action, tr("%1: accepted").arg(Said::begun(row->object)));
}

bool MarkDesk::keep(MarkWish wish, const QString& note) {
    const auto* row = item();
    JobBook& book = *JobBook::here();
    if (row == nullptr || !book.hasBook()) {
        return false;
    }
    wish.note = note.trimmed().toStdString();
    auto mark = compute::markOf(*row, wish, now()->today);
    if (!mark.ok()) {
        book.sayNotKept(Said::trouble(mark.error()));
        return false;
    }
    model::Mark& made = mark.value();
    const auto shown = compute::percentOf(*row, made);
    const bool saysBegun = shown && shown->basisPoints() > 0;
    if (saysBegun && !found().item->holdUps.empty()) {
        book.sayNotKept(tr("Read the caution first, and say that you have."));
        return false;
    }
    made.id = book.book().newId<model::Kind::Mark>(book.instant());
    made.by = book.by();
    made.onDevice = book.device();
    made.inSpiteOfCaution =
        compute::isInSpite(now()->cautions, made.item, made.markedOn, saysBegun);
    store::Action action("mark " + found().space->name + "/" + row->object);
    action.add(made);
    return book.keep(action, tr("%1: %2").arg(Said::begun(row->object),
                                              Said::done(shown.value_or(model::Percent{}))));
}

bool MarkDesk::acknowledge(const QString& testResult) {
    const Found at = found();
    JobBook& book = *JobBook::here();
    if (at.item == nullptr || at.item->holdUps.empty() || !book.hasBook()) {
        return false;
    }
    const auto& read = now()->cautions.all[at.item->holdUps.front()];
    store::Action action("acknowledge " + read.about + " of " + read.what);
    model::RawId record = read.record.raw();
    if (record.isNil()) {
        model::Caution row = compute::keptCaution(read, now()->rows.job.id);
        row.id = book.book().newId<model::Kind::Caution>(book.instant());
        record = row.id.raw();
        action.add(row);
    }
    action.set(record, model::field::Caution::acknowledgedBy, model::valueOf(book.by()));
    action.set(record, model::field::Caution::acknowledgedOn,
               model::Value{std::int64_t{now()->today.days()}});
    if (const std::string result = testResult.trimmed().toStdString(); !result.empty()) {
        action.set(record, model::field::Caution::testResult, model::Value{result});
    }
    return book.keep(
        action, tr("Caution on %1: noted").arg(Said::text(now()->rows.items[at.item->row].object)));
}

}  // namespace ledgerboard::phone
