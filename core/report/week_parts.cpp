#include "core/report/week_parts.h"

#include <algorithm>
#include <numeric>
#include <set>

#include "core/compute/concerns.h"
#include "core/compute/waits.h"
#include "core/model/overflow.h"
#include "core/report/plain_text.h"

namespace ledgerboard::report {

namespace {

using compute::Figures;
using compute::GroupFigures;
using compute::JobFigures;
using model::Money;
using model::Percent;

constexpr std::size_t kMostTrades = 14;

std::optional<Percent> shareOf(Money part, Money whole) {
    if (whole <= Money{}) {
        return std::nullopt;
    }
    return Percent::fromBasisPoints(
        model::divideRounded(model::multiplyWide(part.minor(), 10'000), whole.minor()));
}

bool isNothing(const Figures& figures) {
    for (const Money money : {figures.budgetNow, figures.committed, figures.billed, figures.held,
                              figures.paid, figures.forecast}) {
        if (money != Money{}) {
            return false;
        }
    }
    return figures.items == 0;
}

Amounts operator+(const Amounts& a, const Amounts& b) {
    return {a.budgetNow + b.budgetNow, a.committed + b.committed, a.billed + b.billed,
            a.held + b.held,           a.paid + b.paid,           a.forecast + b.forecast};
}

TradeMoney tradeOf(const GroupFigures& group) {
    TradeMoney trade{group.name.empty() ? "No trade" : group.name, amountsOf(group), Money{}};
    if (group.standing() == compute::Standing::Early) {
        trade.early = group.billed - group.planned;
    }
    return trade;
}

// Two letters of a name: the first of two words, else the first two of the one.
std::string lettersOf(std::string_view name) {
    const std::string shown = shownText(name, Script::Unicode);
    const auto space = shown.find(' ');
    std::string letters(frontOf(shown, 1));
    if (space != std::string::npos && space + 1 < shown.size()) {
        letters += frontOf(std::string_view(shown).substr(space + 1), 1);
    } else {
        letters = frontOf(shown, 2);
    }
    for (char& c : letters) {
        c = c >= 'a' && c <= 'z' ? static_cast<char>(c - 'a' + 'A') : c;
    }
    return letters;
}

}  // namespace

Amounts amountsOf(const Figures& figures) {
    return {figures.budgetNow, figures.committed, figures.billed,
            figures.held,      figures.paid,      figures.forecast};
}

Progress progressOf(const JobFigures& figures) {
    const Figures& job = figures.job;
    Progress progress;
    progress.done = job.shown;
    if (figures.undated < job.items) {
        progress.planned = shareOf(job.planned, job.budgetNow);
    }
    progress.spent = shareOf(job.billed, job.budgetNow);
    progress.paid = shareOf(job.paid, job.budgetNow);
    return progress;
}

std::vector<TradeMoney> tradesOf(const JobFigures& figures) {
    std::vector<TradeMoney> trades;
    for (const auto& group : figures.trades) {
        if (!isNothing(group)) {
            trades.push_back(tradeOf(group));
        }
    }
    if (trades.size() <= kMostTrades) {
        return trades;
    }
    std::vector<std::size_t> bySize(trades.size());
    std::iota(bySize.begin(), bySize.end(), std::size_t{0});
    auto size = [&trades](std::size_t k) {
        return std::max(trades[k].amounts.forecast, trades[k].amounts.budgetNow);
    };
    std::stable_sort(bySize.begin(), bySize.end(),
                     [&size](std::size_t a, std::size_t b) { return size(a) > size(b); });
    const std::set<std::size_t> kept(bySize.begin(), bySize.begin() + kMostTrades - 1);
    std::vector<TradeMoney> out;
    TradeMoney others{"All other trades", {}, {}};
    for (std::size_t k = 0; k < trades.size(); ++k) {
        if (kept.count(k) > 0) {
            out.push_back(trades[k]);
        } else {
            others.amounts = others.amounts + trades[k].amounts;
            others.early += trades[k].early;
        }
    }
    out.push_back(others);
    return out;
}

std::vector<RoomProgress> roomsOf(const model::JobRows& rows, const JobFigures& figures) {
    // A plan is told of a room where something in it has a planned finish.
    std::set<model::RawId> planned;
    for (const auto& line : figures.scope.lines) {
        if (line.counting == compute::Counting::Counts && line.finishOn) {
            planned.insert(line.space.raw());
        }
    }
    std::vector<RoomProgress> rooms;
    for (const auto& group : figures.spaces) {
        if (isNothing(group)) {
            continue;
        }
        RoomProgress room;
        room.name = group.name.empty() ? "No room" : group.name;
        for (const auto& space : rows.spaces) {
            if (space.id.raw() == group.id) {
                room.shortName = space.shortName;
                room.swatch = space.swatch;
            }
        }
        if (room.shortName.empty()) {
            room.shortName = lettersOf(room.name);
        }
        room.done = group.shown;
        if (planned.count(group.id) > 0) {
            room.planned = shareOf(group.planned, group.budgetNow);
        }
        room.over = group.beyondBudget();
        room.items = static_cast<std::int64_t>(group.items);
        rooms.push_back(std::move(room));
    }
    return rooms;
}

std::vector<NextEvent> nextOf(const model::JobRows& rows, const JobFigures& figures,
                              const compute::Plan& plan, model::Date today) {
    std::vector<NextEvent> next;
    for (const auto& wait : compute::waitsOf(rows, figures, plan, today)) {
        next.push_back({wait.kind, wait.on, wait.late, wait.what, wait.money});
    }
    return next;
}

std::vector<MissingPaper> papersOf(const model::JobRows& rows, model::Date today) {
    std::vector<MissingPaper> papers;
    for (const auto& paper : compute::missingPapersOf(rows, today)) {
        papers.push_back({paper.name.text(), paper.amount, paper.days});
    }
    return papers;
}

}  // namespace ledgerboard::report
