// In what words does the page Schedule say days, floats and what a move does? And which rows does
// it have?
//
// Threads: any, but for the words, which are the UI's.
#pragma once

#include <map>
#include <string>
#include <vector>

#include <QCoreApplication>
#include <QString>
#include <QStringList>

#include "core/report/theme.h"

#include "desktop/client/now/plan_move.h"
#include "desktop/client/now/scope_rows.h"

namespace ledgerboard::desk {

// A row of the page: a heading, or an item of the plan.
struct ScheduleLine {
    bool isHeading = false;
    std::string heading;    // "" for what belongs to no space or crew
    std::size_t count = 0;  // items under a heading
    std::size_t item = 0;   // in plan.items
};

struct ScheduleAsk {
    GroupBy by = GroupBy::Space;
    std::string filter;
    bool openOnly = false;  // without what is finished
};

// The groups of `rows` with those of their items that the plan has, by the day they start; options
// without items stand in the group of their space. Requires: plan and rows of `now`.
[[nodiscard]] std::vector<ScheduleLine> scheduleRowsOf(const JobNow& now, const compute::Plan& plan,
                                                       const ScopeRows& rows,
                                                       const ScheduleAsk& ask);

// The id of the item or option of a line.
[[nodiscard]] model::RawId lineId(const JobNow& now, std::size_t line);

// The chip of each space, in walking order.
[[nodiscard]] std::map<model::RawId, report::Chip> chipsOf(const std::vector<model::Space>& spaces);

// "Replace cabinets": what is done, without where.
[[nodiscard]] QString shortNameOf(const JobNow& now, std::size_t line);

// Why an item can't be moved, for whoever tried.
[[nodiscard]] QString whyText(Unmovable why, const QString& name);

class ScheduleWords {
    Q_DECLARE_TR_FUNCTIONS(ScheduleWords)

  public:
    ScheduleWords(const JobNow& now, const compute::Plan& plan)
        : now_(now), plan_(plan), calendar_(now.rows.job) {}

    // "3 working days late against Fri 29 May".
    [[nodiscard]] QString finishRest() const;
    // "66 items: 20 finished, 5 under way, 9 without float".
    [[nodiscard]] QString count() const;
    // What the plan could not count.
    [[nodiscard]] QStringList notes() const;

    // "On site Wed 3 Jun to Fri 5 Jun, 3 days".
    [[nodiscard]] QString state(const compute::PlanItem& one) const;
    [[nodiscard]] QStringList details(const compute::PlanItem& one) const;

    [[nodiscard]] static QStringList columns();
    [[nodiscard]] QStringList cells(const compute::PlanItem& one) const;

    // Requires: `plan` is the one that the move starts from.
    [[nodiscard]] QString moveText(std::size_t item, const PlanMove& move) const;
    [[nodiscard]] QString pushText(const PlanMove& move) const;

  private:
    [[nodiscard]] QString say(const std::optional<model::Date>& day) const;
    [[nodiscard]] QString name(std::size_t item) const;
    [[nodiscard]] QString slip(const compute::PlanItem& one) const;
    [[nodiscard]] QString hold(const compute::PlanItem& one) const;
    [[nodiscard]] QString shortHold(const compute::PlanItem& one) const;
    [[nodiscard]] QString planned(const compute::PlanItem& one) const;
    [[nodiscard]] QString goods(const compute::PlanItem& one) const;
    [[nodiscard]] QString lagText(const LagChange& change) const;

    const JobNow& now_;
    const compute::Plan& plan_;
    compute::WorkCalendar calendar_;
};

}  // namespace ledgerboard::desk
