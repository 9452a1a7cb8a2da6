#include "core/compute/draws_ahead.h"

#include <algorithm>

#include "core/compute/planned_value.h"

namespace ledgerboard::compute {

namespace {

using model::Date;
using model::Money;

constexpr Money kWorthAsking = Money::of(8'000);
constexpr Money kBigPayment = Money::of(4'000);
constexpr int kFeesWorth = 10;
constexpr int kFriday = 4;
constexpr int kDaysPerWeek = 7;
constexpr int kTwoWeeks = 14;
constexpr int kReleaseWorkDays = 5;

int lag(const std::optional<std::int64_t>& days) {
    return static_cast<int>(std::clamp<std::int64_t>(days.value_or(0), 0, 3'650));
}

std::string dayText(Date day) {
    return day.toShortText();
}

// Walks the Fridays ahead. Lives for one call of drawsAheadOf.
class Planner {
  public:
    Planner(const model::JobRows& rows, const JobFigures& figures, const DrawsNow& now,
            const std::vector<std::optional<WorkSpan>>& ahead, const CashLine* without,
            std::optional<Date> saleOn, Date today)
        : rows_(rows),
          figures_(figures),
          now_(now),
          ahead_(ahead),
          without_(without),
          saleOn_(saleOn),
          today_(today),
          calendar_(rows.job),
          lastDay_(lastDayOf(ahead)) {
        for (const LenderLineFigures& line : now.lines) {
            lines_.push_back(line.inPlace);
            items_.push_back(line.items);
        }
        if (!now.byLines && !items_.empty()) {
            for (std::size_t k = 0; k < rows.items.size(); ++k) {
                if (figures.scope.lines[k].counting == Counting::Counts) {
                    items_.front().push_back(k);
                }
            }
        }
    }

    std::vector<DrawAhead> plan() {
        const Date end = std::max(today_, lastDay_.value_or(today_));
        constexpr int kMostWeeks = 520;
        for (int week = 0; week < kMostWeeks && !lines_.empty(); ++week) {
            const Date friday = today_ +
                                (kFriday - today_.weekday() + kDaysPerWeek) % kDaysPerWeek +
                                week * kDaysPerWeek;
            const bool isLast = friday >= end;
            look(friday, isLast);
            if (isLast) {
                break;
            }
        }
        if (!lines_.empty()) {
            askFinal(calendar_.finishOf(end + 1, kReleaseWorkDays));
        }
        return std::move(out_);
    }

  private:
    [[nodiscard]] Date moneyOn(Date askOn) const {
        return std::max(today_ + 1, askOn + lag(rows_.job.visitDays) + lag(rows_.job.fundDays));
    }

    [[nodiscard]] Drawn drawnBy(Date day, bool isFinal) const {
        std::vector<LineInPlace> lines = lines_;
        for (std::size_t k = 0; k < lines.size() && day > today_; ++k) {
            lines[k].allowed = seenBy(figures_, items_[k], ahead_, day, calendar_);
        }
        return drawnOf(lines, {rows_.job.holdback.value_or(model::Percent{}), now_.limit, isFinal});
    }

    void look(Date friday, bool isLast) {
        const Drawn drawn = drawnBy(friday, false);
        const bool isWorthItsFee = drawn.total.minor() >= kFeesWorth * now_.fee.minor();
        if (drawn.total <= now_.fee || !isWorthItsFee) {
            return;
        }
        std::string why;
        const Date money = moneyOn(friday);
        if (drawn.total >= kWorthAsking) {
            why = "what is in place and not yet drawn is worth the visit";
        } else if (const auto big = bigPaymentAfter(money)) {
            why = "before " + big->what + " on " + dayText(big->on);
        } else if (runsShortBefore(money + kDaysPerWeek)) {
            why = "without it the cash does not cover two weeks of bills";
        } else if (isLast) {
            why = "the work is planned to be finished";
        } else {
            return;
        }
        ask(friday, drawn, why, false);
    }

    void askFinal(Date day) {
        const Drawn drawn = drawnBy(day, true);
        if (drawn.total > now_.fee) {
            ask(day, drawn, "the final draw releases what was held back", true);
        }
    }

    void ask(Date on, const Drawn& drawn, const std::string& why, bool isFinal) {
        const Date money = moneyOn(on);
        if (saleOn_ && money > *saleOn_) {
            return;
        }
        out_.push_back({on, money, drawn.total, now_.fee, why, isFinal});
        drawnAhead_.emplace_back(money, drawn.total - now_.fee);
        for (std::size_t k = 0; k < lines_.size(); ++k) {
            lines_[k].paidBefore += drawn.lines[k].draw;
        }
    }

    [[nodiscard]] std::optional<CashMove> bigPaymentAfter(Date money) const {
        if (without_ == nullptr) {
            return std::nullopt;
        }
        for (const CashMove& move : without_->moves) {
            if (move.kind == CashKind::Work && move.isAhead && -move.amount >= kBigPayment &&
                move.on > money && move.on <= money + kDaysPerWeek) {
                return move;
            }
        }
        return std::nullopt;
    }

    // Whether on some day up to `until` less is left than the bills of the two weeks after it.
    [[nodiscard]] bool runsShortBefore(Date until) const {
        if (without_ == nullptr) {
            return false;
        }
        for (Date day = today_; day <= until; day = day + 1) {
            Money have = balanceOn(*without_, day);
            for (const auto& [on, received] : drawnAhead_) {
                have += on <= day ? received : Money{};
            }
            Money bills;
            for (const CashMove& move : without_->moves) {
                const bool isBill = move.amount < Money{} && move.kind != CashKind::Payoff;
                bills -=
                    isBill && move.on > day && move.on <= day + kTwoWeeks ? move.amount : Money{};
            }
            if (have < bills) {
                return true;
            }
        }
        return false;
    }

    const model::JobRows& rows_;
    const JobFigures& figures_;
    const DrawsNow& now_;
    const std::vector<std::optional<WorkSpan>>& ahead_;
    const CashLine* without_;
    std::optional<Date> saleOn_;
    Date today_;
    WorkCalendar calendar_;
    std::optional<Date> lastDay_;
    std::vector<LineInPlace> lines_;
    std::vector<std::vector<std::size_t>> items_;  // of each line
    std::vector<std::pair<Date, Money>> drawnAhead_;
    std::vector<DrawAhead> out_;
};

}  // namespace

std::vector<DrawAhead> openDrawsOf(const model::JobRows& rows, const DrawsNow& now, Date today) {
    Money askedOpen;
    for (const LenderLineFigures& line : now.lines) {
        askedOpen += line.askedOpen;
    }
    std::vector<DrawAhead> out;
    Money known;
    for (const model::Draw& draw : rows.draws) {
        if (isOpen(draw)) {
            known += draw.amount ? *draw.amount + draw.fee.value_or(Money{}) : Money{};
        }
    }
    for (const model::Draw& draw : rows.draws) {
        if (!isOpen(draw)) {
            continue;
        }
        DrawAhead one;
        const int funding = lag(rows.job.fundDays);
        one.moneyOn = draw.inspectedOn ? *draw.inspectedOn + funding
                                       : *draw.askedOn + lag(rows.job.visitDays) + funding;
        one.moneyOn = std::max(today + 1, one.moneyOn);
        one.fee = draw.amount ? draw.fee.value_or(Money{}) : draw.fee.value_or(now.fee);
        if (draw.amount) {
            one.total = *draw.amount + one.fee;
        } else {
            // Several without an amount: the first takes what their lines ask for.
            one.total = std::max(Money{}, askedOpen - known);
            known += one.total;
        }
        one.fee = std::min(one.fee, one.total);
        one.why = draw.number ? "draw " + std::to_string(*draw.number) + ", asked for already"
                              : "asked for already";
        out.push_back(one);
    }
    std::stable_sort(out.begin(), out.end(),
                     [](const DrawAhead& a, const DrawAhead& b) { return a.moneyOn < b.moneyOn; });
    return out;
}

std::vector<DrawAhead> drawsAheadOf(const model::JobRows& rows, const JobFigures& figures,
                                    const DrawsNow& now,
                                    const std::vector<std::optional<WorkSpan>>& ahead,
                                    const CashLine* without, std::optional<Date> saleOn,
                                    Date today) {
    std::vector<DrawAhead> out = openDrawsOf(rows, now, today);
    for (DrawAhead& one : Planner(rows, figures, now, ahead, without, saleOn, today).plan()) {
        out.push_back(std::move(one));
    }
    std::stable_sort(out.begin(), out.end(),
                     [](const DrawAhead& a, const DrawAhead& b) { return a.moneyOn < b.moneyOn; });
    return out;
}

}  // namespace ledgerboard::compute
