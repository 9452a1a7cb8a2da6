#include "desktop/client/deal_view.h"

#include <algorithm>
#include <array>
#include <cmath>

#include "core/model/overflow.h"

#include "desktop/client/background.h"
#include "desktop/client/desk.h"
#include "desktop/client/said.h"

namespace ledgerboard::desk {

using model::Money;

namespace {

struct Slider {
    int Wish::*value;
    int low;
    int high;
    int step;
    const char* name;
};

constexpr const char* kHere = "ledgerboard::desk::DealView";

constexpr std::array<Slider, 4> kSliders = {
    {{&Wish::resaleTenths, -200, 200, 5,
      QT_TRANSLATE_NOOP("ledgerboard::desk::DealView", "Resale")},
     {&Wish::workTenths, -200, 400, 5, QT_TRANSLATE_NOOP("ledgerboard::desk::DealView", "Work")},
     {&Wish::weeksLater, -4, 26, 1, QT_TRANSLATE_NOOP("ledgerboard::desk::DealView", "Finish")},
     {&Wish::rateHundredths, -300, 500, 25,
      QT_TRANSLATE_NOOP("ledgerboard::desk::DealView", "Loan rate")}}};

QString signedTenths(int tenths) {
    const QString sign = tenths < 0 ? QStringLiteral("\u2212") : QStringLiteral("+");
    return sign + Said::tenths(model::Percent::fromBasisPoints(std::abs(tenths) * 10));
}

QString percentText(const std::optional<double>& percent) {
    constexpr double kMost = 1e9;
    return percent && std::abs(*percent) < kMost
               ? QLocale().toString(*percent, 'f', 1) + QStringLiteral("\u00a0%")
               : QString();
}

struct Line {
    const char* words;
    std::optional<Money> now;
    std::optional<Money> then;
    bool isTotal = false;
    bool evenIfNothing = true;
};

}  // namespace

DealView::DealView(QObject* parent) : QObject(parent) {
    connect(Desk::here(), &Desk::changed, this, &DealView::follow);
    connect(Desk::here(), &Desk::weekChanged, this, &DealView::changed);
    connect(Desk::here(), &Desk::wordsChanged, this, &DealView::changed);
    follow();
}

void DealView::follow() {
    Desk& desk = *Desk::here();
    auto now = desk.now();
    if (now == nullptr || now == of_) {
        return;
    }
    of_ = now;
    inBackground(
        desk.pool(), this,
        [now] {
            return model::guarded([&] { return dealNowOf(now->rows, now->figures, now->today); });
        },
        [this, now](model::Result<DealNow> deal) {
            if (now != of_) {
                return;
            }
            trouble_ = deal.ok() ? QString() : Said::trouble(deal.error());
            now_ = deal.ok() ? std::make_shared<const DealNow>(std::move(deal).value()) : nullptr;
            work();
        });
    (void)desk.week();  // its spread
}

void DealView::work() {
    if (now_ != nullptr) {
        auto then = model::guarded([this] { return supposed(*now_, wish_); });
        if (then.ok()) {
            then_ = std::move(then).value();
        } else {
            Desk::here()->sayNotKept(Said::trouble(then.error()));
        }
    }
    emit changed();
}

void DealView::suppose(int which, int at) {
    if (which < 0 || which >= static_cast<int>(kSliders.size())) {
        return;
    }
    const Slider& slider = kSliders[static_cast<std::size_t>(which)];
    const int kept = std::clamp(at, slider.low, slider.high);
    if (wish_.*slider.value != kept) {
        wish_.*slider.value = kept;
        work();
    }
}

void DealView::forget() {
    wish_ = {};
    work();
}

QString DealView::profit() const {
    return now_ != nullptr && now_->plan.line.deal.profit
               ? Said::money(*now_->plan.line.deal.profit)
               : tr("not known");
}

QString DealView::profitThen() const {
    return isSupposed() && then_.deal.profit ? Said::money(*then_.deal.profit) : QString();
}

QString DealView::profitChange() const {
    return isSupposed() && now_ != nullptr && then_.deal.profit && now_->plan.line.deal.profit
               ? Said::change(*then_.deal.profit - *now_->plan.line.deal.profit)
               : QString();
}

QString DealView::spread() const {
    const auto week = Desk::here()->week();
    return week != nullptr && week->spreads.earn ? tr("8 in 10 between %1 and %2")
                                                       .arg(Said::money(week->spreads.earn->low),
                                                            Said::money(week->spreads.earn->high))
                                                 : QString();
}

QVariantList DealView::lines() const {
    QVariantList list;
    if (now_ == nullptr) {
        return list;
    }
    const compute::Deal& a = now_->plan.line.deal;
    const compute::Deal& b = then_.deal;
    const Line lines[] = {
        {QT_TR_NOOP("Resale, likely"), now_->job.resaleLikely, then_.job.resaleLikely},
        {QT_TR_NOOP("Season drop, for a sale that late"), a.seasonDrop, b.seasonDrop, false, false},
        {QT_TR_NOOP("Purchase price"), now_->job.purchasePrice, then_.job.purchasePrice},
        {QT_TR_NOOP("Buying costs"), a.buyingCosts, b.buyingCosts},
        {QT_TR_NOOP("Points"), a.points, b.points},
        {QT_TR_NOOP("Lender fees"), a.lenderFees, b.lenderFees},
        {QT_TR_NOOP("Lender's visits"), a.visitFees, b.visitFees, false, false},
        {QT_TR_NOOP("Interest"), a.interest, b.interest},
        {QT_TR_NOOP("Extension fee"), a.extensionFee, b.extensionFee},
        {QT_TR_NOOP("Holding"), a.holding, b.holding},
        {QT_TR_NOOP("Work, forecast"), now_->plan.figures.work, then_.work},
        {QT_TR_NOOP("Selling"), a.selling, b.selling},
        {QT_TR_NOOP("All in"), a.allIn, b.allIn, true},
        {QT_TR_NOOP("Profit, before income tax"), a.profit, b.profit, true},
        {QT_TR_NOOP("at the low resale"), a.profitLow, b.profitLow},
        {QT_TR_NOOP("at the high resale"), a.profitHigh, b.profitHigh},
        {QT_TR_NOOP("Break-even resale"), a.breakEvenResale, b.breakEvenResale},
        {QT_TR_NOOP("Cash at closing"), a.cashAtClosing, b.cashAtClosing},
        {QT_TR_NOOP("A day costs"), a.dayCosts, b.dayCosts},
        {QT_TR_NOOP("70 % of resale less work (common practice)"), a.ruleOfThumbOffer,
         b.ruleOfThumbOffer},
        {QT_TR_NOOP("Top offer for the wanted profit"), a.topOffer, b.topOffer},
    };
    for (const Line& line : lines) {
        if (!line.now || (!line.evenIfNothing && *line.now == Money{} &&
                          line.then.value_or(Money{}) == Money{})) {
            continue;
        }
        DealLine shown;
        shown.what = tr(line.words);
        shown.now = Said::money(*line.now);
        shown.isTotal = line.isTotal;
        if (isSupposed() && line.then) {
            shown.then = Said::money(*line.then);
            const Money change = *line.then - *line.now;
            shown.change = Said::isNothing(change) ? QString() : Said::change(change);
        }
        list << QVariant::fromValue(shown);
    }
    return list;
}

QVariantList DealView::suppositions() const {
    QVariantList list;
    for (std::size_t k = 0; k < kSliders.size(); ++k) {
        const Slider& slider = kSliders[k];
        Supposition line;
        line.name = QCoreApplication::translate(kHere, slider.name);
        line.low = slider.low;
        line.high = slider.high;
        line.step = slider.step;
        line.at = wish_.*slider.value;
        if (line.at == 0) {
            line.said = tr("as it stands");
        } else if (slider.value == &Wish::weeksLater) {
            line.said = line.at > 0 ? tr("%n week(s) later", nullptr, line.at)
                                    : tr("%n week(s) earlier", nullptr, -line.at);
        } else if (slider.value == &Wish::rateHundredths) {
            line.said = tr("%1 a year")
                            .arg((line.at > 0 ? QStringLiteral("+") : QStringLiteral("\u2212")) +
                                 QLocale().toString(std::abs(line.at) / 100.0, 'f', 2) +
                                 QStringLiteral("\u00a0%"));
        } else {
            line.said = signedTenths(line.at);
        }
        list << QVariant::fromValue(line);
    }
    return list;
}

QStringList DealView::profitValues() const {
    QStringList list;
    for (const Money value : then_.table.values) {
        list << Said::money(value);
    }
    return list;
}

QVariantList DealView::profitRows() const {
    QVariantList list;
    for (const auto& row : then_.table.rows) {
        ProfitRow line;
        line.when = (row.weeksLater == 0 ? (isSupposed() ? tr("as supposed") : tr("as forecast"))
                                         : tr("%n week(s) later", nullptr, row.weeksLater)) +
                    QStringLiteral(", ") + Said::dayMonth(row.finishOn);
        line.sold = Said::dayMonth(row.saleOn);
        for (const Money profit : row.profits) {
            line.profits << Said::money(profit);
        }
        list << QVariant::fromValue(line);
    }
    return list;
}

QStringList DealView::notes() const {
    QStringList list;
    if (now_ == nullptr) {
        return list;
    }
    const compute::Deal& deal = now_->plan.line.deal;
    const auto& earned = now_->earned;
    if (const QString margin = percentText(deal.marginPercent); !margin.isEmpty()) {
        list << tr("Margin %1 of resale.").arg(margin);
    }
    if (const QString drop = percentText(deal.resaleDropPercent);
        !drop.isEmpty() && *deal.resaleDropPercent > 0) {
        list << tr("A resale lower by %1 eats the profit.").arg(drop);
    }
    if (const QString cash = percentText(earned.onCashPercent);
        !cash.isEmpty() && earned.peakCashIn) {
        list << tr("Return on cash %1 of the %2 of own money in at the peak.")
                    .arg(cash, Said::money(*earned.peakCashIn));
    }
    if (const QString yearly = percentText(earned.yearlySimplePercent); !yearly.isEmpty()) {
        list << tr("A year, simple: %1.").arg(yearly);
    }
    if (deal.saleOn) {
        list << tr("Money from the sale by %1.").arg(Said::longDay(*deal.saleOn));
    }
    if (deal.daysToTermEnd) {
        list << (*deal.daysToTermEnd >= 0 ? tr("%n day(s) of float to the term end of the loan.",
                                               nullptr, *deal.daysToTermEnd)
                                          : tr("The sale comes %n day(s) after the term end: the "
                                               "extension fee is counted.",
                                               nullptr, -*deal.daysToTermEnd));
    }
    QStringList absent;
    for (const auto& input : deal.missing) {
        absent << Said::told(input.heading);
    }
    if (!absent.isEmpty()) {
        list << tr("No profit can be told without: %1.").arg(absent.join(QStringLiteral(", ")));
    }
    absent.clear();
    for (const auto& input : deal.leftOut) {
        absent << Said::told(input.heading);
    }
    if (!absent.isEmpty()) {
        list
            << tr("Not entered, so counted as nothing: %1.").arg(absent.join(QStringLiteral(", ")));
    }
    return list;
}

}  // namespace ledgerboard::desk
