#include "core/compute/cash.h"

#include <algorithm>

#include "core/compute/deal_parts.h"

namespace ledgerboard::compute {

namespace {

using model::Date;
using model::Money;

constexpr int kTwoWeeks = 14;

Date firstOfNextMonth(Date day) {
    Date next = day - day.dayOfMonth() + 1;
    constexpr int kLongerThanAMonth = 32;
    next = next + kLongerThanAMonth;
    return next - next.dayOfMonth() + 1;
}

// Puts the moves together. Lives for one call of cashLineOf.
class Builder {
  public:
    Builder(const model::Job& job, const DealFigures& figures, const Deal& deal,
            const std::vector<CashMove>& work, const std::vector<DrawMoney>& draws)
        : job_(job), figures_(figures), terms_(dealTermsOf(job)), deal_(deal) {
        out_.deal = deal;
        out_.start = job.cashAtStart.value_or(Money{});
        out_.moves = work;
        for (const DrawMoney& draw : draws) {
            add(draw.on, CashKind::Draw, draw.received, draw.what, draw.isAhead);
            debt_ += draw.received + draw.fee;
        }
    }

    CashLine build() {
        note();
        if (!out_.missing.empty()) {
            out_.moves.clear();
            return std::move(out_);
        }
        add(*job_.purchasedOn, CashKind::Purchase, -*deal_.cashAtClosing, "cash at closing");
        addByMonth();
        addSale();
        std::stable_sort(out_.moves.begin(), out_.moves.end(),
                         [](const CashMove& a, const CashMove& b) { return a.on < b.on; });
        addDays();
        addLows();
        return std::move(out_);
    }

  private:
    void add(Date on, CashKind kind, Money amount, std::string what, bool isAhead) {
        if (amount != Money{}) {
            out_.moves.push_back({on, kind, amount, std::move(what), isAhead});
        }
    }

    void add(Date on, CashKind kind, Money amount, std::string what) {
        add(on, kind, amount, std::move(what), figures_.asOf && on > *figures_.asOf);
    }

    void note() {
        if (!job_.purchasedOn) {
            out_.missing.push_back({"Purchased", "purchased_on"});
        }
        if (!job_.purchasePrice) {
            out_.missing.push_back({"Purchase price", "purchase_price"});
        }
        if (!job_.cashAtStart) {
            out_.leftOut.push_back({"Cash at start", "cash_at_start"});
        }
        if (!job_.resaleLikely) {
            out_.leftOut.push_back({"Resale", "resale_likely"});
        }
        out_.leftOut.insert(out_.leftOut.end(), deal_.leftOut.begin(), deal_.leftOut.end());
    }

    // Interest and holding, by the first of each month and on the last day.
    void addByMonth() {
        Date last = deal_.saleOn.value_or(*job_.purchasedOn);
        if (!deal_.saleOn) {
            last = std::max(last, figures_.asOf.value_or(last));
            for (const CashMove& move : out_.moves) {
                last = std::max(last, move.on);
            }
        }
        Money interest;
        Money holding;
        for (Date day = firstOfNextMonth(*job_.purchasedOn);; day = firstOfNextMonth(day)) {
            const Date to = std::min(day, last);
            const Money interestNow = interestBy(job_, figures_, terms_, to);
            const Money holdingNow = holdingBy(job_, terms_, to);
            add(to, CashKind::Interest, interest - interestNow, "the lender");
            add(to, CashKind::Holding, holding - holdingNow, "owning the house");
            interest = interestNow;
            holding = holdingNow;
            if (to == last) {
                break;
            }
        }
    }

    void addSale() {
        if (!deal_.saleOn || !deal_.resale) {
            return;
        }
        out_.reachesSale = true;
        if (job_.termEndOn) {
            add(std::max(*job_.termEndOn, *job_.purchasedOn), CashKind::Extension,
                -deal_.extensionFee, "the lender");
        }
        add(*deal_.saleOn, CashKind::Sale, *deal_.resale - deal_.selling,
            "the sale, less what selling costs");
        add(*deal_.saleOn, CashKind::Payoff, -(terms_.purchaseLoan + debt_),
            "the lender, both loans");
    }

    void addDays() {
        Money balance = out_.start;
        for (const CashMove& move : out_.moves) {
            if (out_.days.empty() || out_.days.back().on != move.on) {
                out_.days.push_back({move.on, Money{}, Money{}, balance});
            }
            CashDay& day = out_.days.back();
            (move.amount > Money{} ? day.in : day.out) +=
                move.amount > Money{} ? move.amount : -move.amount;
            balance += move.amount;
            day.balance = balance;
        }
        out_.end = balance;
    }

    void addLows() {
        const Date today = figures_.asOf.value_or(*job_.purchasedOn);
        out_.today = balanceOn(out_, today);
        out_.lowestAhead = CashDay{today, Money{}, Money{}, out_.today};
        for (const CashDay& day : out_.days) {
            if (!out_.lowest || day.balance < out_.lowest->balance) {
                out_.lowest = day;
            }
            if (day.on > today && day.balance < out_.lowestAhead->balance) {
                out_.lowestAhead = day;
            }
            const bool beforeSale = !out_.reachesSale || day.on < *deal_.saleOn;
            if (beforeSale) {
                out_.peakCashIn = std::max(out_.peakCashIn, out_.start - day.balance);
            }
        }
        if (out_.today < Money{}) {
            out_.underZeroOn = today;
        }
        if (out_.today < outWithin(today)) {
            out_.underTwoWeeksOn = today;
        }
        for (const CashDay& day : out_.days) {
            if (day.on <= today) {
                continue;
            }
            if (!out_.underZeroOn && day.balance < Money{}) {
                out_.underZeroOn = day.on;
            }
            if (!out_.underTwoWeeksOn && day.balance < outWithin(day.on)) {
                out_.underTwoWeeksOn = day.on;
            }
        }
    }

    // What goes out in the two weeks after a day, the payoff from the sale's own money not counted.
    [[nodiscard]] Money outWithin(Date day) const {
        Money sum;
        for (const CashMove& move : out_.moves) {
            if (move.on > day && move.on <= day + kTwoWeeks && move.amount < Money{} &&
                move.kind != CashKind::Payoff) {
                sum -= move.amount;
            }
        }
        return sum;
    }

    const model::Job& job_;
    const DealFigures& figures_;
    DealTerms terms_;
    const Deal& deal_;
    Money debt_;
    CashLine out_;
};

}  // namespace

std::string_view wordsFor(CashKind kind) {
    switch (kind) {
        case CashKind::Purchase:
            return "purchase";
        case CashKind::Work:
            return "work";
        case CashKind::Retainage:
            return "retainage";
        case CashKind::Draw:
            return "draw";
        case CashKind::Interest:
            return "interest";
        case CashKind::Holding:
            return "holding";
        case CashKind::Extension:
            return "extension fee";
        case CashKind::Sale:
            return "sale";
        case CashKind::Payoff:
            return "loans paid off";
    }
    return "";
}

model::Result<CashLine> cashLineOf(const model::Job& job, DealFigures figures,
                                   const std::vector<CashMove>& work,
                                   const std::vector<DrawMoney>& draws) {
    const auto sale = saleDay(job, figures);
    std::vector<DrawMoney> inTime;
    figures.workDraws.clear();
    figures.visitFees = Money{};
    std::vector<DatedAmount> ahead;
    for (const DrawMoney& draw : draws) {
        if (sale && draw.on > *sale) {
            continue;
        }
        inTime.push_back(draw);
        figures.visitFees += draw.fee;
        (draw.isAhead ? ahead : figures.workDraws).push_back({draw.on, draw.received + draw.fee});
    }
    if (figures.drawsAhead) {
        figures.drawsAhead = ahead;
    } else {
        figures.workDraws.insert(figures.workDraws.end(), ahead.begin(), ahead.end());
    }
    auto worked = deal(job, figures);
    if (!worked.ok()) {
        return worked.error();
    }
    return Builder(job, figures, worked.value(), work, inTime).build();
}

Money balanceOn(const CashLine& line, Date on) {
    const auto after =
        std::upper_bound(line.days.begin(), line.days.end(), on,
                         [](Date day, const CashDay& entry) { return day < entry.on; });
    return after == line.days.begin() ? line.start : std::prev(after)->balance;
}

}  // namespace ledgerboard::compute
