#include "desktop/client/mark_form.h"

#include <algorithm>

#include "core/compute/progress.h"

#include "desktop/client/desk.h"
#include "desktop/client/mark_work.h"
#include "desktop/client/said.h"
#include "desktop/client/scope_edit.h"

namespace ledgerboard::desk {

using compute::MarkWish;
using model::Measure;
using model::Percent;
using model::Result;

namespace {

// The names of the steps that the latest mark says are done; all of them where it is finished.
std::vector<bool> stepsDone(const JobNow& now, std::size_t item) {
    const auto& steps = now.rows.items[item].steps;
    std::vector<bool> done(steps.size(), now.figures.lines[item].shown >= Percent::whole());
    const compute::Marks marks(now.rows);
    const auto said = marks.of(item);
    if (said.empty() || done.empty() || done.front()) {
        return done;
    }
    for (const auto& name : compute::stepsIn(said.back().mark->stepsDone)) {
        for (std::size_t k = 0; k < steps.size(); ++k) {
            done[k] = done[k] || model::folded(steps[k].name) == model::folded(name);
        }
    }
    return done;
}

}  // namespace

const model::Item& MarkForm::row() const {
    return now_->rows.items[*item_];
}

bool MarkForm::isCounted() const {
    return isOpen() && compute::measureOf(row()) == Measure::CountedUnits && row().quantity &&
           *row().quantity > model::Quantity{};
}

bool MarkForm::isSteps() const {
    return isOpen() && compute::measureOf(row()) == Measure::WeightedSteps && !row().steps.empty();
}

void MarkForm::begin(const QString& id) {
    Desk& desk = *Desk::here();
    close();
    now_ = desk.now();
    if (now_ == nullptr) {
        return;
    }
    for (std::size_t k = 0; k < now_->rows.items.size(); ++k) {
        if (Said::text(now_->rows.items[k].id.raw().toString()) == id) {
            item_ = k;
        }
    }
    if (!item_) {
        return;
    }
    if (row().treatment == model::Treatment::Keep) {
        desk.sayNotKept(tr("%1 is kept as it is: there is nothing to mark.").arg(itemText()));
        close();
        return;
    }
    done_ = stepsDone(*now_, *item_);
    pull(compute::stopAt(row(), now_->figures.lines[*item_].shown));
    if (!isCounted()) {
        figure_ = Said::text(now_->figures.lines[*item_].shown.toString());
    }
    emit changed();
}

void MarkForm::close() {
    item_.reset();
    figure_.clear();
    emit changed();
}

void MarkForm::pull(int stop) {
    if (!isOpen()) {
        return;
    }
    const int kept = std::clamp(stop, 0, stops());
    const auto wish = compute::wishAt(row(), kept);
    figure_ = Said::text(wish.count     ? wish.count->toString()
                         : isCounted()  ? row().quantity->toString()
                         : wish.percent ? wish.percent->toString()
                                        : std::string());
    emit changed();
}

void MarkForm::turn(int step) {
    const auto at = static_cast<std::size_t>(step);
    if (step >= 0 && at < done_.size()) {
        done_[at] = !done_[at];
        emit changed();
    }
}

void MarkForm::setFigure(const QString& figure) {
    if (figure != figure_) {
        figure_ = figure;
        emit changed();
    }
}

Result<MarkWish> MarkForm::wish() const {
    MarkWish wish;
    const std::string typed = figure_.trimmed().toStdString();
    if (isSteps()) {
        for (std::size_t k = 0; k < done_.size(); ++k) {
            if (done_[k]) {
                wish.steps.push_back(row().steps[k].name);
            }
        }
        // All of them is finished, and none of them not begun.
        if (wish.steps.empty() || wish.steps.size() == done_.size()) {
            wish.percent = wish.steps.empty() ? Percent{} : Percent::whole();
            wish.steps.clear();
        }
        return wish;
    }
    if (isCounted()) {
        auto count = model::Quantity::parse(typed);
        if (!count.ok()) {
            return Said::refusal(tr("How many are done: %1").arg(Said::trouble(count.error())));
        }
        wish.count = count.value();
        return wish;
    }
    auto percent = Percent::parse(typed);
    if (!percent.ok()) {
        return Said::refusal(tr("How far it is: %1").arg(Said::trouble(percent.error())));
    }
    wish.percent = percent.value();
    return wish;
}

std::optional<Percent> MarkForm::percent() const {
    if (!isOpen()) {
        return std::nullopt;
    }
    const auto said = wish();
    if (!said.ok()) {
        return std::nullopt;
    }
    const auto mark = compute::markOf(row(), said.value(), now_->today);
    return mark.ok() ? compute::percentOf(row(), mark.value()) : std::nullopt;
}

bool MarkForm::keep(const QString& day, const QString& note) {
    if (!isOpen()) {
        return false;
    }
    Desk& desk = *Desk::here();
    model::Date on = now_->today;
    if (!day.trimmed().isEmpty()) {
        auto said = model::Date::parseLoose(day.trimmed().toStdString());
        if (!said.ok()) {
            desk.sayNotKept(tr("Seen on: %1").arg(Said::trouble(said.error())));
            return false;
        }
        on = said.value();
    }
    auto said = wish();
    if (!said.ok()) {
        desk.sayNotKept(Said::trouble(said.error()));
        return false;
    }
    said.value().note = note.trimmed().toStdString();
    auto made = markWork(desk.book(), *now_, {*item_}, said.value(), on, desk.instant());
    if (!made.ok()) {
        desk.sayNotKept(Said::trouble(made.error()));
        return false;
    }
    if (!made.value().heldUp.empty()) {
        const auto& first = made.value().heldUp.front();
        desk.sayNotKept(tr("%1 is not marked while a caution of it is open: %2. Ctrl+K to read "
                           "it.")
                            .arg(Said::text(first.what), Said::text(first.about)));
        return false;
    }
    if (made.value().marked == 0) {
        desk.sayPlainly(tr("That is finished already."));
        return true;
    }
    return desk.keep(made.value().action,
                     tr("%1: %2").arg(itemText(), Said::done(made.value().shown)));
}

QString MarkForm::itemText() const {
    return isOpen() ? Said::text(itemName(*now_, *item_)) : QString();
}

QString MarkForm::methodText() const {
    if (!isOpen()) {
        return {};
    }
    switch (compute::measureOf(row())) {
        case Measure::NoneOrDone:
            return tr("Measured as none or done: it earns nothing until it is finished.");
        case Measure::HalfAndHalf:
            return tr("Measured half and half: 50 % once it is begun, 100 % at finished.");
        case Measure::WeightedSteps:
            return isSteps() ? tr("Measured by its steps: which of them are done?")
                             : tr("Measured by steps, and has none yet: only not begun or "
                                  "finished can be said.");
        case Measure::CountedUnits:
            return isCounted()
                       ? tr("Measured by counting: how many of %1 %2 are done?")
                             .arg(Said::text(row().quantity->toString()), Said::text(row().unit))
                       : tr("Measured by counting, and has no quantity yet: only not begun or "
                            "finished can be said.");
        case Measure::Unset:
        case Measure::JudgedPercent:
            break;
    }
    return tr("Judged by eye: how far is it, in percent?");
}

QVariantList MarkForm::steps() const {
    QVariantList list;
    for (std::size_t k = 0; isSteps() && k < done_.size(); ++k) {
        const auto& step = row().steps[k];
        MarkStep shown;
        //: A step of the work and its share of the whole: "set tile, 60 %"
        shown.words = tr("%1, %2").arg(Said::text(step.name), Said::percent(step.percent));
        shown.isDone = done_[k];
        list << QVariant::fromValue(shown);
    }
    return list;
}

int MarkForm::stops() const {
    return isOpen() ? compute::stopsOf(row()) : 1;
}

int MarkForm::stop() const {
    const auto said = percent();
    return said ? compute::stopAt(row(), *said) : 0;
}

QString MarkForm::percentText() const {
    const auto said = percent();
    return said ? Said::done(*said) : QString();
}

double MarkForm::last() const {
    constexpr double kWhole = 10'000.0;
    return isOpen() ? static_cast<double>(now_->figures.lines[*item_].shown.basisPoints()) / kWhole
                    : -1.0;
}

QString MarkForm::lastText() const {
    return isOpen() ? tr("stands at %1").arg(Said::percent(now_->figures.lines[*item_].shown))
                    : QString();
}

}  // namespace ledgerboard::desk
