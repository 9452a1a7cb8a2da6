#include "core/compute/lender_draws.h"

#include <algorithm>
#include <tuple>

#include "core/compute/positions.h"
#include "core/model/saying.h"

namespace ledgerboard::compute {

namespace {

using model::Money;
using model::Percent;
using model::saying;

// Works the lines out. Lives for one call of drawsNowOf.
class Drawer {
  public:
    Drawer(const model::JobRows& rows, const JobFigures& figures)
        : rows_(rows), figures_(figures), lenderLines_(rows.lender_lines) {}

    DrawsNow work() {
        out_.limit = drawLimitOf(rows_.job);
        out_.fee = rows_.job.visitFee.value_or(Money{});
        addLines();
        note();
        if (out_.lines.empty()) {
            return std::move(out_);
        }
        for (const std::size_t draw : drawsInOrder()) {
            spread(draw);
        }
        out_.isFinal = isAllDone();
        setDraws();
        return std::move(out_);
    }

  private:
    [[nodiscard]] Percent holdback() const { return rows_.job.holdback.value_or(Percent{}); }

    void addLines() {
        if (rows_.lender_lines.empty()) {
            if (rows_.job.workLoan) {
                LenderLineFigures whole;
                whole.name = "The whole work loan";
                whole.inPlace = {*rows_.job.workLoan, figures_.job.seen, Percent::whole(), {}};
                out_.lines.push_back(std::move(whole));
            }
            return;
        }
        out_.byLines = true;
        for (std::size_t k = 0; k < rows_.lender_lines.size(); ++k) {
            const model::LenderLine& row = rows_.lender_lines[k];
            LenderLineFigures line;
            line.line = k;
            line.name = row.name;
            line.inPlace.amount = row.amount.value_or(Money{});
            line.inPlace.share = row.shareLent.value_or(Percent::whole());
            out_.lines.push_back(std::move(line));
        }
        std::vector<WeightedPercent> seen(out_.lines.size());
        for (std::size_t k = 0; k < rows_.items.size(); ++k) {
            if (figures_.scope.lines[k].counting != Counting::Counts) {
                continue;
            }
            const auto line = lenderLines_.of(rows_.items[k].lenderLine);
            if (!line) {
                ++out_.itemsWithoutLine;
                continue;
            }
            out_.lines[*line].items.push_back(k);
            seen[*line].add(figures_.lines[k].budgetNow, figures_.lines[k].seen);
        }
        for (std::size_t k = 0; k < out_.lines.size(); ++k) {
            out_.lines[k].inPlace.allowed = seen[k].value();
        }
    }

    void note() {
        const model::Job& job = rows_.job;
        const std::pair<bool, AbsentInput> inputs[] = {
            {job.workLoan.has_value() || out_.byLines, {"Work loan", "work_loan"}},
            {job.holdback.has_value(), {"Holdback", "holdback"}},
            {job.visitFee.has_value(), {"Fee per visit", "visit_fee"}},
            {job.visitDays.has_value(), {"Days from ask to visit", "visit_days"}},
            {job.fundDays.has_value(), {"Days from visit to money", "fund_days"}}};
        for (const auto& [isEntered, input] : inputs) {
            if (!isEntered) {
                out_.leftOut.push_back(input);
            }
        }
    }

    // Draws that count, by the day they were asked for, then as they were entered.
    [[nodiscard]] std::vector<std::size_t> drawsInOrder() const {
        std::vector<std::size_t> order;
        for (std::size_t k = 0; k < rows_.draws.size(); ++k) {
            const model::Draw& draw = rows_.draws[k];
            if (draw.askedOn || draw.inspectedOn || draw.fundedOn) {
                order.push_back(k);
            }
        }
        const auto day = [&](std::size_t k) {
            const model::Draw& draw = rows_.draws[k];
            return draw.askedOn       ? *draw.askedOn
                   : draw.inspectedOn ? *draw.inspectedOn
                                      : *draw.fundedOn;
        };
        std::sort(order.begin(), order.end(), [&](std::size_t a, std::size_t b) {
            return std::make_tuple(day(a), a) < std::make_tuple(day(b), b);
        });
        return order;
    }

    // What one draw came to, or asks for, added to what was paid before on its lines.
    void spread(std::size_t draw) {
        const model::Draw& row = rows_.draws[draw];
        std::vector<Money> parts(out_.lines.size());
        bool named = false;
        for (const model::DrawLine& part : rows_.draw_lines) {
            const auto line = lenderLines_.of(part.lenderLine);
            if (part.draw != row.id || !line) {
                continue;
            }
            named = true;
            noteRefusal(*line, row, part);
            LineInPlace then = out_.lines[*line].inPlace;
            then.allowed = part.allowed ? *part.allowed : part.asked.value_or(Percent{});
            parts[*line] = std::max(Money{}, lentInPlace(then, holdback()) - then.paidBefore);
        }
        if (row.amount) {
            const Money total = *row.amount + row.fee.value_or(Money{});
            parts = splitByBudget(total, named && sum(parts) > Money{} ? parts : room());
        }
        for (std::size_t k = 0; k < parts.size(); ++k) {
            out_.lines[k].inPlace.paidBefore += parts[k];
            out_.lines[k].askedOpen += isOpen(row) ? parts[k] : Money{};
        }
    }

    static Money sum(const std::vector<Money>& parts) {
        Money total;
        for (const Money part : parts) {
            total += part;
        }
        return total;
    }

    // What may still have been paid on each line by now; where that is nothing, its whole.
    [[nodiscard]] std::vector<Money> room() const {
        std::vector<Money> out;
        std::vector<Money> wholes;
        for (const LenderLineFigures& line : out_.lines) {
            const Money lent = lentInPlace(line.inPlace, holdback());
            out.push_back(std::max(Money{}, lent - line.inPlace.paidBefore));
            wholes.push_back(share(line.inPlace.share, line.inPlace.amount));
        }
        return sum(out) > Money{} ? out : wholes;
    }

    void noteRefusal(std::size_t line, const model::Draw& draw, const model::DrawLine& part) {
        if (part.allowed && part.asked && *part.allowed < *part.asked) {
            out_.lines[line].refused = {draw.number, *part.asked, *part.allowed, part.whyRefused};
        } else if (part.allowed) {
            out_.lines[line].refused.reset();  // since then it was allowed as asked
        }
    }

    [[nodiscard]] bool isAllDone() const {
        for (const model::Contract& contract : rows_.contracts) {
            const bool isOrder = contract.type == model::ContractKind::Order;
            if (contract.signedOn && !isOrder &&
                !(contract.acceptedOn && contract.waiverReceivedOn)) {
                return false;
            }
        }
        return figures_.job.items > 0 && figures_.job.seen == Percent::whole();
    }

    void setDraws() {
        std::vector<LineInPlace> lines;
        for (const LenderLineFigures& line : out_.lines) {
            lines.push_back(line.inPlace);
            out_.paidBefore += line.inPlace.paidBefore;
        }
        const Drawn drawn = drawnOf(lines, {holdback(), out_.limit, out_.isFinal});
        out_.total = drawn.total;
        out_.cutByLimit = drawn.cutByLimit;
        for (std::size_t k = 0; k < lines.size(); ++k) {
            out_.lines[k].draw = drawn.lines[k].draw;
            out_.lines[k].heldBack = drawn.lines[k].heldBack;
            out_.heldBack += drawn.lines[k].heldBack;
            if (out_.lines[k].draw == Money{}) {
                out_.lines[k].whyNot = whyNot(out_.lines[k]).text();
            }
        }
    }

    [[nodiscard]] model::Saying whyNot(const LenderLineFigures& line) const {
        if (line.inPlace.amount == Money{}) {
            return saying("it has no amount");
        }
        if (out_.byLines && line.items.empty()) {
            return saying("no item points at it");
        }
        if (line.inPlace.share == Percent{}) {
            return saying("nothing of it is lent");
        }
        if (line.inPlace.allowed == Percent{}) {
            return saying("nothing of it has been seen in place");
        }
        if (line.askedOpen > Money{}) {
            return saying("asked for already");
        }
        if (line.inPlace.paidBefore >= lentInPlace(line.inPlace, holdback())) {
            return saying("paid as far as it has been seen");
        }
        return saying("the draw limit is reached");
    }

    const model::JobRows& rows_;
    const JobFigures& figures_;
    Positions<model::LenderLine> lenderLines_;
    DrawsNow out_;
};

}  // namespace

DrawsNow drawsNowOf(const model::JobRows& rows, const JobFigures& figures) {
    return Drawer(rows, figures).work();
}

std::optional<Money> drawLimitOf(const model::Job& job) {
    if (job.drawLimit && job.workLoan) {
        return std::min(*job.drawLimit, *job.workLoan);
    }
    return job.drawLimit ? job.drawLimit : job.workLoan;
}

bool isOpen(const model::Draw& draw) {
    return !draw.fundedOn && (draw.askedOn || draw.inspectedOn);
}

}  // namespace ledgerboard::compute
