#include "desktop/client/alternates_view.h"

#include <algorithm>

#include <QLocale>

#include "core/model/overflow.h"
#include "core/qml/id_text.h"
#include "core/report/choices_text.h"

#include "desktop/client/background.h"
#include "desktop/client/desk.h"
#include "desktop/client/frontier_plot.h"
#include "desktop/client/said.h"

namespace ledgerboard::desk {

using compute::AlternateChoice;
using compute::OptionChoice;
using compute::SetChoice;
using model::Money;
using qml::idText;
namespace f = model::field;

namespace {

QString dash() {
    return QStringLiteral("\u2013");
}

}  // namespace

AlternatesView::AlternatesView(QObject* parent) : QObject(parent) {
    connect(Desk::here(), &Desk::changed, this, &AlternatesView::follow);
    connect(Desk::here(), &Desk::wordsChanged, this, [this] {
        draw();
        emit changed();
    });
    follow();
}

void AlternatesView::follow() {
    auto now = Desk::here()->now();
    if (now != nullptr && now != of_) {
        of_ = now;
        work();
    }
}

void AlternatesView::work() {
    const int asked = ++asked_;
    inBackground(
        Desk::here()->pool(), this,
        [now = of_, ask = ask_] { return model::guarded([&] { return choicesNowOf(*now, ask); }); },
        [this, now = of_, asked](model::Result<compute::Choices> choices) {
            if (asked != asked_) {
                return;
            }
            if (choices.ok()) {
                now_ = now;
                choices_ = std::make_shared<const compute::Choices>(std::move(choices).value());
                trouble_.clear();
                limitTrouble_.clear();
            } else if (choices_ != nullptr && now == now_) {
                // A limit that can't be asked for; what stands goes on standing.
                limitTrouble_ = Said::trouble(choices.error());
            } else {
                now_ = now;
                choices_ = nullptr;
                trouble_ = Said::trouble(choices.error());
            }
            takeWanted();
            keepInRange();
            draw();
            emit limitsChanged();
            emit changed();
            emit moved();
        });
}

void AlternatesView::draw() {
    plot_.show(choices_ == nullptr ? qml::PlotData()
                                   : frontierPlotOf(now_->rows, *choices_, now_->today));
}

void AlternatesView::keepInRange() {
    const int count = choices_ == nullptr ? 0 : static_cast<int>(choices_->alternates.size());
    alternate_ = std::clamp(alternate_, 0, std::max(0, count - 1));
    const int options =
        count == 0 ? 0
                   : static_cast<int>(
                         choices_->alternates[static_cast<std::size_t>(alternate_)].options.size());
    option_ = std::clamp(option_, 0, std::max(0, options - 1));
}

void AlternatesView::takeWanted() {
    if (wanted_.isEmpty() || choices_ == nullptr) {
        return;
    }
    for (std::size_t a = 0; a < choices_->alternates.size(); ++a) {
        const auto& alternate = choices_->alternates[a];
        const bool isIt = idText(now_->rows.alternates[alternate.alternate].id) == wanted_;
        for (std::size_t k = 0; k < std::max<std::size_t>(1, alternate.options.size()); ++k) {
            const bool isOption =
                k < alternate.options.size() &&
                idText(now_->rows.options[alternate.options[k].option].id) == wanted_;
            if (isOption || (isIt && k == 0)) {
                alternate_ = static_cast<int>(a);
                option_ = static_cast<int>(k);
                wanted_.clear();
                return;
            }
        }
    }
}

QString AlternatesView::alternateId() const {
    return choices_ == nullptr || choices_->alternates.empty()
               ? QString()
               : idText(now_->rows
                            .alternates[choices_->alternates[static_cast<std::size_t>(alternate_)]
                                            .alternate]
                            .id);
}

QString AlternatesView::optionId() const {
    const OptionChoice* here = inHand();
    return here == nullptr ? QString() : idText(now_->rows.options[here->option].id);
}

QString AlternatesView::question() const {
    return choices_ == nullptr || choices_->alternates.empty()
               ? QString()
               : Said::text(choices_->alternates[static_cast<std::size_t>(alternate_)].name);
}

void AlternatesView::move(int down, int right) {
    alternate_ += down;
    option_ += right;
    keepInRange();
    emit moved();
}

void AlternatesView::take(int alternate, int option) {
    alternate_ = alternate;
    option_ = option;
    keepInRange();
    emit moved();
}

void AlternatesView::limit(const QString& cash, const QString& finish, const QString& chance) {
    compute::ChoicesAsk ask;
    QString trouble;
    if (!cash.trimmed().isEmpty()) {
        auto money = Money::parse(cash.trimmed().remove(QLatin1Char(',')).toStdString());
        if (money.ok() && money.value() >= Money{}) {
            ask.cash = money.value();
        } else {
            trouble = money.ok() ? tr("The money can't be below 0.") : Said::trouble(money.error());
        }
    }
    if (!finish.trimmed().isEmpty()) {
        auto day = model::Date::parseLoose(finish.trimmed().toStdString());
        if (day.ok()) {
            ask.finishOn = day.value();
        } else {
            trouble = Said::trouble(day.error());
        }
    }
    if (!chance.trimmed().isEmpty()) {
        auto percent = model::Percent::parse(chance.trimmed().toStdString());
        if (percent.ok() && percent.value() > model::Percent{} &&
            percent.value() < model::Percent::whole()) {
            ask.chance = percent.value();
        } else {
            trouble = tr("The chance is between 0 and 100, such as 80.");
        }
    }
    if (!trouble.isEmpty()) {
        limitTrouble_ = trouble;
        emit limitsChanged();
        return;
    }
    ask_ = ask;
    limitTrouble_.clear();
    emit limitsChanged();
    if (of_ != nullptr) {
        work();
    }
}

const OptionChoice* AlternatesView::inHand() const {
    if (choices_ == nullptr || choices_->alternates.empty()) {
        return nullptr;
    }
    const auto& options = choices_->alternates[static_cast<std::size_t>(alternate_)].options;
    return options.empty() ? nullptr : &options[static_cast<std::size_t>(option_)];
}

bool AlternatesView::choose(const QString& why) {
    const OptionChoice* here = inHand();
    Desk& desk = *Desk::here();
    if (here == nullptr) {
        return false;
    }
    if (why.trimmed().isEmpty()) {
        desk.sayNotKept(
            tr("Say why: it is kept beside the decision, for when you ask yourself later."));
        return false;
    }
    const model::Option& chosen = now_->rows.options[here->option];
    if (const auto reason = compute::whyNotBesideDecided(now_->rows, chosen); !reason.isEmpty()) {
        desk.sayNotKept(tr("%1 can't be chosen: %2. Decide that one anew first.")
                            .arg(nameOf(*here), Said::told(reason)));
        return false;
    }
    const std::size_t alternate =
        choices_->alternates[static_cast<std::size_t>(alternate_)].alternate;
    store::Action action("choose " + report::optionLabel(chosen), desk.position());
    const model::RawId row = now_->rows.alternates[alternate].id.raw();
    action.set(row, f::Alternate::chosen, model::valueOf(chosen.id));
    action.set(row, f::Alternate::why, model::valueOf(why.trimmed().toStdString()));
    if (auto made = itemOfChoice(*now_, alternate, here->option)) {
        made->id = desk.book().newId<model::Kind::Item>(desk.instant());
        action.add(*made);
    }
    return desk.keep(action, tr("Decided: %1").arg(nameOf(*here)));
}

void AlternatesView::carry() {
    const OptionChoice* here = inHand();
    if (here == nullptr) {
        return;
    }
    Desk& desk = *Desk::here();
    if (here->isCarried) {
        desk.sayPlainly(tr("%1 is the one that is carried.").arg(nameOf(*here)));
        return;
    }
    const model::Option& option = now_->rows.options[here->option];
    const auto& alternate = choices_->alternates[static_cast<std::size_t>(alternate_)];
    store::Action action("carry " + report::optionLabel(option));
    action.set(now_->rows.alternates[alternate.alternate].id.raw(), f::Alternate::carried,
               model::valueOf(option.id));
    desk.keep(action, tr("Carried meanwhile: %1").arg(nameOf(*here)));
}

void AlternatesView::askChange(int decided) {
    int place = 0;
    for (std::size_t k = 0; now_ != nullptr && k < now_->rows.alternates.size(); ++k) {
        if (now_->rows.alternates[k].chosen.isNil() || place++ != decided) {
            continue;
        }
        Desk& desk = *Desk::here();
        if (auto change = changeWanted(*now_, k)) {
            change->id = desk.book().newId<model::Kind::Change>(desk.instant());
            store::Action action("ask for change order " + change->name);
            action.add(*change);
            desk.keep(action, tr("Change order asked for: %1. It counts once it is signed.")
                                  .arg(Said::text(change->name)));
        }
        return;
    }
}

QString AlternatesView::countText() const {
    if (choices_ == nullptr) {
        return {};
    }
    QStringList parts{tr("%n open", nullptr, static_cast<int>(choices_->alternates.size()))};
    if (choices_->decided > 0) {
        parts << tr("%n decided", nullptr, static_cast<int>(choices_->decided));
    }
    return parts.join(QStringLiteral(", "));
}

QStringList AlternatesView::figureNames() {
    return {tr("Costs"),          tr("Moves the finish"), tr("Adds to the sale"),
            tr("Profit, likely"), tr("at the low value"), tr("at the high value"),
            tr("Worth it from")};
}

QString AlternatesView::nameOf(const OptionChoice& option) const {
    return Said::text(report::optionLabel(now_->rows.options[option.option]));
}

OptionColumn AlternatesView::columnOf(const AlternateChoice& alternate, std::size_t option) const {
    const OptionChoice& one = alternate.options[option];
    OptionColumn column;
    column.name = nameOf(one);
    column.isBest = alternate.best == option;
    QStringList standing;
    if (column.isBest) {
        standing << tr("best");
    }
    if (one.isCarried) {
        standing << tr("carried meanwhile");
    }
    if (!one.whyNotOffered.isEmpty() || !one.isPriced) {
        standing << tr("in no set");
    }
    column.standing = standing.join(QStringLiteral(", "));
    const auto known = [&one](Money money, bool sign) {
        return !one.isPriced ? dash() : sign ? Said::change(money) : Said::money(money);
    };
    const int days = one.finishDays;
    column.figures = {known(one.cost, false),
                      days == 0  ? tr("not at all")
                      : days > 0 ? tr("%n day(s) later", nullptr, days)
                                 : tr("%n day(s) sooner", nullptr, -days),
                      one.hasValue || one.leavesAsIs ? Said::money(one.valueLikely) : dash(),
                      known(one.netLikely, true),
                      known(one.netLow, true),
                      known(one.netHigh, true),
                      known(one.breakEvenValue, false)};
    if (!one.isPriced && one.items == 0) {
        column.notes << tr("It has no cost yet.");
    } else if (!one.whyNotOffered.isEmpty()) {
        column.notes << Said::told(one.whyNotOffered);
    }
    if (!one.hasValue && !one.leavesAsIs) {
        column.notes << tr("Nobody said what it adds to the sale.");
    }
    if (one.cutByCeiling > Money{}) {
        column.notes
            << tr("The ceiling of the street cuts %1 off.").arg(Said::money(one.cutByCeiling));
    }
    return column;
}

QString AlternatesView::decideText(const AlternateChoice& alternate) const {
    const compute::Waiting& waiting = alternate.waiting;
    const QString becomes =
        alternate.carried
            ? tr("else it becomes “%1”").arg(nameOf(alternate.options[*alternate.carried]))
            : tr("else nothing is done");
    if (!waiting.decideBy) {
        return tr("No day to decide by is known; undecided, %1.").arg(becomes);
    }
    const QString day = Said::day(*waiting.decideBy, now_->today);
    return waiting.isLate ? tr("Was to be decided by %1; %2.").arg(day, becomes)
                          : tr("Decide by %1; %2.").arg(day, becomes);
}

QString AlternatesView::waitText(const AlternateChoice& alternate) const {
    const compute::Waiting& waiting = alternate.waiting;
    const QString price = Said::cents(choices_->dayCosts);
    if (waiting.perDay) {
        return tr("Each day after that costs %1: it holds up the finish.").arg(price);
    }
    if (waiting.floatThousandths) {
        return tr("It can wait %n working day(s) beyond that before the finish moves; from then a "
                  "day costs %1.",
                  nullptr, static_cast<int>(*waiting.floatThousandths / 1000))
            .arg(price);
    }
    return tr("Each day after that costs up to %1, if it holds up the finish: no plan tells.")
        .arg(price);
}

QVariantList AlternatesView::alternates() const {
    QVariantList list;
    if (choices_ == nullptr) {
        return list;
    }
    for (const AlternateChoice& alternate : choices_->alternates) {
        AlternateRow row;
        row.name = Said::text(alternate.name);
        row.decideBy = decideText(alternate);
        row.waiting = waitText(alternate);
        row.isLate = alternate.waiting.isLate;
        for (std::size_t k = 0; k < alternate.options.size(); ++k) {
            row.options << QVariant::fromValue(columnOf(alternate, k));
        }
        list << QVariant::fromValue(row);
    }
    return list;
}

QVariantList AlternatesView::decided() const {
    QVariantList list;
    for (std::size_t k = 0; now_ != nullptr && k < now_->rows.alternates.size(); ++k) {
        const model::Alternate& alternate = now_->rows.alternates[k];
        if (alternate.chosen.isNil()) {
            continue;
        }
        DecidedRow row;
        const QString space = Said::text(spaceName(now_->rows, alternate.space));
        row.name = (space.isEmpty() ? QString() : space + QStringLiteral(": ")) +
                   Said::text(alternate.question);
        for (const model::Option& option : now_->rows.options) {
            if (option.id == alternate.chosen) {
                row.chosen = Said::text(report::optionLabel(option));
            }
        }
        row.why =
            alternate.why.empty() ? QString() : tr("because %1").arg(Said::text(alternate.why));
        const auto wanted = model::guarded([&]() -> model::Result<std::optional<model::Change>> {
            return changeWanted(*now_, k);
        });
        if (wanted.ok() && wanted.value()) {
            row.wantsChange = true;
            row.change = tr("%1 of it is not in the budget: the baseline stays as it was frozen, "
                            "and a change order carries the difference.")
                             .arg(Said::change(*wanted.value()->amount));
        } else if (isChangeAsked(*now_, k)) {
            row.change = tr("Its change order is asked for and counts once it is signed.");
        }
        list << QVariant::fromValue(row);
    }
    return list;
}

const SetChoice* AlternatesView::best() const {
    if (choices_ == nullptr) {
        return nullptr;
    }
    const auto& best = choices_->bestAtChance ? choices_->bestAtChance : choices_->best;
    return best ? &*best : nullptr;
}

QString AlternatesView::setNames(const SetChoice& set) const {
    QStringList names;
    for (std::size_t k = 0; k < set.options.size(); ++k) {
        if (set.options[k]) {
            names << nameOf(choices_->alternates[k].options[*set.options[k]]);
        }
    }
    return names.isEmpty() ? tr("none of them") : names.join(QStringLiteral("; "));
}

QString AlternatesView::setFigures(const SetChoice& set) const {
    QString text =
        set.finishOn ? tr("costs %1, ends the work on %2 and earns %3")
                           .arg(Said::money(set.cost), Said::day(*set.finishOn, now_->today),
                                Said::money(set.net))
                     : tr("costs %1 and earns %2").arg(Said::money(set.cost), Said::money(set.net));
    if (set.netAtChance) {
        text += tr(", %1 at that chance").arg(Said::money(*set.netAtChance));
    }
    return text;
}

QStringList AlternatesView::bestOptions() const {
    QStringList list;
    if (const SetChoice* set = best()) {
        for (std::size_t k = 0; k < set->options.size(); ++k) {
            const AlternateChoice& alternate = choices_->alternates[k];
            list << tr("%1: %2").arg(
                Said::text(alternate.name),
                set->options[k] ? nameOf(alternate.options[*set->options[k]]) : tr("nothing"));
        }
    }
    return list;
}

QString AlternatesView::bestFigures() const {
    if (choices_ == nullptr || choices_->alternates.empty()) {
        return {};
    }
    const SetChoice* set = best();
    if (set == nullptr) {
        return tr("There is none: %1.").arg(Said::told(choices_->whyNone));
    }
    return tr("It %1.").arg(setFigures(*set));
}

QStringList AlternatesView::bestWhy() const {
    QStringList list;
    const SetChoice* set = best();
    if (set == nullptr) {
        return list;
    }
    if (set->options == choices_->now.options) {
        list << tr("It is what is carried now.");
    } else {
        list << tr("What is carried now %1: %2 less.")
                    .arg(setFigures(choices_->now), Said::money(set->net - choices_->now.net));
    }
    for (const AlternateChoice& alternate : choices_->alternates) {
        if (!alternate.worth) {
            continue;
        }
        list << (alternate.otherwise
                     ? tr("%1: with “%2” instead, the best that can be had earns %3 less.")
                           .arg(Said::text(alternate.name),
                                nameOf(alternate.options[*alternate.otherwise]),
                                Said::money(*alternate.worth))
                     : tr("%1: without it, the best that can be had earns %2 less.")
                           .arg(Said::text(alternate.name), Said::money(*alternate.worth)));
    }
    if (!choices_->proven) {
        list << tr(
            "The search was stopped before it was sure: a better set may exist. Decide some "
            "first.");
    }
    return list;
}

QString AlternatesView::standingOf(const SetChoice& set) const {
    QStringList parts;
    if (const SetChoice* first = best(); first != nullptr && set.options == first->options) {
        parts << tr("best");
    }
    if (set.options == choices_->now.options) {
        parts << tr("carried");
    }
    return parts.join(QStringLiteral(", "));
}

QVariantList AlternatesView::sets() const {
    QVariantList list;
    if (choices_ == nullptr) {
        return list;
    }
    for (const SetChoice& set : choices_->frontier) {
        SetRow row;
        row.cost = Said::money(set.cost);
        row.finish = set.finishOn ? Said::day(*set.finishOn, now_->today) : dash();
        row.net = Said::money(set.net);
        row.standing = standingOf(set);
        row.options = setNames(set);
        list << QVariant::fromValue(row);
    }
    return list;
}

QStringList AlternatesView::rests() const {
    QStringList list;
    if (choices_ == nullptr || choices_->alternates.empty()) {
        return list;
    }
    if (choices_->resale) {
        list << (choices_->ceiling
                     ? tr("The resale of %1 is the house with none of these; together no more than "
                          "the street's ceiling of %2.")
                           .arg(Said::money(*choices_->resale), Said::money(*choices_->ceiling))
                     : tr("The resale of %1 is the house with none of these.")
                           .arg(Said::money(*choices_->resale)));
    }
    list << tr("Selling takes %1 of what is added; a day costs %2. Before income tax.")
                .arg(Said::tenths(model::Percent::whole() - choices_->keptShare),
                     Said::cents(choices_->dayCosts));
    list << (choices_->hasPlan
                 ? tr("Days are those by which the finish of the plan moves.")
                 : tr("No plan tells: days are those of the options, as if the finish waited."));
    QStringList absent;
    for (const auto& input : choices_->leftOut) {
        absent << Said::told(input.heading);
    }
    if (!absent.isEmpty()) {
        list
            << tr("Not entered, so counted as nothing: %1.").arg(absent.join(QStringLiteral(", ")));
    }
    if (choices_->frontierCut) {
        list << tr(
            "There are too many sets to list: some that are missing may beat some that are "
            "here.");
    }
    return list;
}

}  // namespace ledgerboard::desk
