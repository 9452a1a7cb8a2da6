#include "core/report/plan_lines.h"

#include <algorithm>

#include "core/report/money_text.h"

namespace ledgerboard::report {

namespace {

using compute::PlanItem;
using model::Date;

constexpr std::size_t kNames = 26;  // columns for the names, their space included
constexpr int kWidestDay = 5;       // signs for a day
constexpr std::size_t kLeast = 24;  // columns for the days, below which nothing is drawn

struct Signs {
    const char* critical;
    const char* other;
    const char* spare;
};

class Drawing {
  public:
    Drawing(const compute::JobFigures& figures, const compute::Plan& plan, const model::Job& job,
            const TableStyle& style)
        : figures_(figures),
          plan_(plan),
          style_(style),
          calendar_(job),
          first_(calendar_.onOrAfter(plan.firstDay)),
          signs_(style.script == Script::Unicode ? Signs{"━", "─", "·"} : Signs{"=", "-", "."}) {
        const auto room = static_cast<int>(style.width - kNames);
        const int days = calendar_.workDays(first_, *plan.on);
        perColumn_ = std::max(1, (days + room - 1) / room);
        columns_ = (days + perColumn_ - 1) / perColumn_;
        signsPerColumn_ = std::clamp(room / columns_, 1, kWidestDay);
    }

    [[nodiscard]] std::string draw(const std::vector<std::size_t>& items) const {
        std::string out = dates();
        for (const std::size_t k : items) {
            if (plan_.items[k].hasDays) {
                out += line(plan_.items[k]) + "\n";
            }
        }
        return out + legend();
    }

  private:
    [[nodiscard]] int columnOf(Date day) const {
        return std::clamp((calendar_.workDays(first_, day) - 1) / perColumn_, 0, columns_ - 1);
    }

    // The first day of each column that has room beside the one before.
    [[nodiscard]] std::string dates() const {
        std::string text;
        for (int column = 0; column < columns_; ++column) {
            const Date day = calendar_.finishOf(first_, column * perColumn_ + 1);
            const std::string label = dayMonthText(day);
            const auto at =
                static_cast<std::size_t>(column) * static_cast<std::size_t>(signsPerColumn_);
            if (text.size() <= at && at + label.size() <= style_.width - kNames) {
                text.resize(at, ' ');
                text += label + "  ";
            }
        }
        text.erase(text.find_last_not_of(' ') + 1);
        return std::string(kNames, ' ') + text + "\n";
    }

    [[nodiscard]] std::string line(const PlanItem& item) const {
        const std::string name =
            clipped(shownText(figures_.scope.lines[item.line].name, style_.script), kNames - 1,
                    style_.script);
        std::string text = padded(name, kNames);
        const int from = columnOf(item.resumesOn ? *item.resumesOn : *item.startOn);
        const int to = columnOf(*item.finishOn);
        const int latest = columnOf(*item.latestFinishOn);
        for (int column = 0; column <= latest; ++column) {
            const char* sign = column < from     ? " "
                               : column > to     ? signs_.spare
                               : item.isCritical ? signs_.critical
                                                 : signs_.other;
            for (int k = 0; k < signsPerColumn_; ++k) {
                text += sign;
            }
        }
        return text;
    }

    [[nodiscard]] std::string legend() const {
        const std::string scale =
            countText(signsPerColumn_, "sign is ", "signs are ") +
            (perColumn_ == 1 ? "a working day" : std::to_string(perColumn_) + " working days");
        return scale + "; " + signs_.critical + " critical, " + signs_.other + " not, " +
               signs_.spare + " float.\n";
    }

    const compute::JobFigures& figures_;
    const compute::Plan& plan_;
    const TableStyle& style_;
    compute::WorkCalendar calendar_;
    Date first_;
    Signs signs_;
    int perColumn_ = 1;  // working days
    int columns_ = 0;
    int signsPerColumn_ = 1;
};

}  // namespace

std::string planLines(const compute::JobFigures& figures, const compute::Plan& plan,
                      const std::vector<std::size_t>& items, const model::Job& job,
                      const TableStyle& style) {
    const bool hasAny = std::any_of(items.begin(), items.end(),
                                    [&](std::size_t k) { return plan.items[k].hasDays; });
    if (!plan.on || !hasAny || style.width < kNames + kLeast) {
        return {};
    }
    return Drawing(figures, plan, job, style).draw(items);
}

}  // namespace ledgerboard::report
