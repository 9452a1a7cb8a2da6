#include "core/report/crew_plan_text.h"

#include <algorithm>
#include <cstdlib>

#include <nlohmann/json.hpp>

#include "core/report/money_text.h"
#include "core/report/plan_lines.h"

namespace ledgerboard::report {

namespace {

using compute::CrewedDays;
using compute::JobCrewPlan;
using compute::StackedDays;
using model::Date;

std::string crewName(const model::JobRows& rows, const compute::ScopeLine& line) {
    for (const model::Crew& crew : rows.crews) {
        if (!line.crew.isNil() && crew.id == line.crew) {
            return crew.name;
        }
    }
    return "";
}

std::string namesOf(const compute::JobFigures& figures, const std::vector<std::size_t>& lines) {
    std::string names;
    for (const std::size_t line : lines) {
        names += (names.empty() ? "" : ", ") + figures.scope.lines[line].name;
    }
    return names;
}

// Working days by which crews make the job finish later. Requires: it has a finish.
int daysLater(const model::JobRows& rows, const JobCrewPlan& plan) {
    return compute::WorkCalendar(rows.job).workDays(*plan.plainOn + 1, *plan.on);
}

class Page {
  public:
    Page(const model::JobRows& rows, const compute::JobFigures& figures, const JobCrewPlan& plan,
         Date today, const TableStyle& style)
        : rows_(rows), figures_(figures), plan_(plan), today_(today), style_(style) {}

    std::string text() {
        say("Plan by crews, to the end of " + longDateText(today_) + ": " + rows_.job.name);
        out_ += "\n";
        if (!plan_.on) {
            say("Nothing is left that has days: 'ledgerboard set ITEM Days 3' enters them.");
            return out_;
        }
        sayFinish();
        out_ += "\n" + printTable(table(), style_);
        sayStacked();
        out_ += "\n";
        sayRest();
        return out_;
    }

  private:
    void say(const std::string& sentence) {
        for (const auto& line : wrapped(shownText(sentence, style_.script), style_.width)) {
            out_ += line + "\n";
        }
    }

    // A line of a list, wrapped under its own beginning.
    void sayEntry(const std::string& sentence) {
        bool isFirst = true;
        for (const auto& line : wrapped(shownText(sentence, style_.script), style_.width - 4)) {
            out_ += (isFirst ? "  " : "    ") + line + "\n";
            isFirst = false;
        }
    }

    void sayFinish() {
        const int later = daysLater(rows_, plan_);
        say("Will finish " + longDateText(*plan_.on) +
            " with no crew in more places than it can "
            "be: " +
            (later == 0 ? std::string("no later than")
                        : countText(later, "working day", "working days") + " later than") +
            " a plan that does not look at crews (" + dateText(*plan_.plainOn, today_) + ").");
        if (plan_.plan.isShortest()) {
            say("No plan with these crews can be shorter: this one is proven the shortest, " +
                daysText(plan_.plan.length) + " working days.");
        } else {
            say("No plan with these crews can be shorter than " + daysText(plan_.plan.lowerBound) +
                " working days (" + dateText(*plan_.noSoonerThanOn, today_) + "); this one takes " +
                daysText(plan_.plan.length) + ", the best of " +
                countText(plan_.plan.tries, "plan", "plans") +
                " tried. More of them ('--tries 50000') may find a shorter one.");
        }
    }

    [[nodiscard]] Table table() const {
        std::vector<const CrewedDays*> order;
        for (const CrewedDays& item : plan_.items) {
            if (item.hasDays) {
                order.push_back(&item);
            }
        }
        std::stable_sort(order.begin(), order.end(), [](const auto* one, const auto* other) {
            return one->startOn < other->startOn;
        });
        Table table{{{"Item", false},
                     {"Crew", false},
                     {"Start", false},
                     {"Finish", false},
                     {"Later by", true}},
                    {}};
        for (const CrewedDays* item : order) {
            const compute::ScopeLine& line = figures_.scope.lines[item->line];
            table.rows.push_back({line.name, crewName(rows_, line), dateText(item->startOn, today_),
                                  dateText(item->finishOn, today_),
                                  item->laterUnits > 0 ? daysText(item->laterUnits) : ""});
        }
        return table;
    }

    void sayStacked() {
        out_ += "\n";
        if (plan_.stacked.empty()) {
            say("No crew or space would be wanted twice at once without it either.");
            return;
        }
        say("Too much at once, were each item to start as soon as its links let it:");
        for (const StackedDays& stacked : plan_.stacked) {
            sayEntry(stackedText(rows_, figures_, stacked, today_));
        }
    }

    void sayRest() {
        std::string rest = "It rests on the links, days and marks that 'ledgerboard plan' tells of";
        const auto add = [&](std::size_t count, const char* one, const char* many,
                             const std::string& what) {
            if (count > 0) {
                rest += "; " + countText(static_cast<std::int64_t>(count), one, many) + what;
            }
        };
        add(plan_.crewsWithoutCapacity, "crew without a capacity", "crews without a capacity",
            ", taken as one place at a time ('ledgerboard set CREW Capacity 2')");
        add(plan_.withoutDays, "item without days", "items without days",
            ", left out ('ledgerboard set ITEM Days 3')");
        add(plan_.itemsWithoutCrew, "item without a crew", "items without a crew",
            ", waiting for nobody");
        rest += plan_.oneCrewSpaces == 0
                    ? "; no space with work left is marked as taking one crew at a time "
                      "('ledgerboard set SPACE \"One crew at a time\" yes')"
                    : "; " +
                          countText(static_cast<std::int64_t>(plan_.oneCrewSpaces), "space takes",
                                    "spaces take") +
                          " one crew at a time";
        say(rest + ".");
    }

    const model::JobRows& rows_;
    const compute::JobFigures& figures_;
    const JobCrewPlan& plan_;
    Date today_;
    TableStyle style_;
    std::string out_;
};

using Json = nlohmann::ordered_json;

Json dayOf(const std::optional<Date>& date) {
    return date ? Json(date->toString()) : Json(nullptr);
}

Json workDays(std::int64_t thousandths) {
    return static_cast<double>(thousandths) / compute::kWorkDay;
}

Json stackedJson(const model::JobRows& rows, const compute::JobFigures& figures,
                 const StackedDays& one) {
    Json names = Json::array();
    for (const std::size_t line : one.lines) {
        names.push_back(figures.scope.lines[line].name);
    }
    return {{"crew", one.crew ? Json(rows.crews[*one.crew].name) : Json(nullptr)},
            {"space", one.space ? Json(rows.spaces[*one.space].name) : Json(nullptr)},
            {"from", one.from.toString()},
            {"to", one.to.toString()},
            {"wanted", one.wanted},
            {"there", one.there},
            {"items", names}};
}

}  // namespace

std::string crewPlanText(const model::JobRows& rows, const compute::JobFigures& figures,
                         const JobCrewPlan& plan, Date today, const TableStyle& style) {
    return Page(rows, figures, plan, today, style).text();
}

std::string stackedText(const model::JobRows& rows, const compute::JobFigures& figures,
                        const StackedDays& stacked, Date today) {
    const std::string days = stacked.from == stacked.to ? dateText(stacked.from, today)
                                                        : dateText(stacked.from, today) + " to " +
                                                              dateText(stacked.to, today);
    const std::string who =
        stacked.crew ? rows.crews[*stacked.crew].name + " in " +
                           countText(stacked.wanted, "place", "places") +
                           " at once, and can be in " + std::to_string(stacked.there)
                     : rows.spaces[*stacked.space].name + " by " + std::to_string(stacked.wanted) +
                           " crews at once, and takes one";
    return who + ", " + days + ": " + namesOf(figures, stacked.lines);
}

std::string crewPlanJson(const model::JobRows& rows, const compute::JobFigures& figures,
                         const JobCrewPlan& plan, Date today, std::optional<std::size_t> kept) {
    Json out;
    out["job"] = rows.job.name;
    out["as_of"] = today.toString();
    out["will_finish_on"] = dayOf(plan.on);
    out["without_crews_on"] = dayOf(plan.plainOn);
    out["working_days_later"] = plan.on ? Json(daysLater(rows, plan)) : Json(nullptr);
    out["no_sooner_than_on"] = dayOf(plan.noSoonerThanOn);
    out["days"] = workDays(plan.plan.length);
    out["lower_bound"] = workDays(plan.plan.lowerBound);
    out["proven_shortest"] = plan.plan.isShortest();
    out["tries"] = plan.plan.tries;
    out["items"] = Json::array();
    for (const CrewedDays& item : plan.items) {
        const compute::ScopeLine& line = figures.scope.lines[item.line];
        const std::string crew = crewName(rows, line);
        out["items"].push_back({{"item", line.name},
                                {"crew", crew.empty() ? Json(nullptr) : Json(crew)},
                                {"has_days", item.hasDays},
                                {"start_on", item.startOn.toString()},
                                {"finish_on", item.finishOn.toString()},
                                {"without_crews_finish_on", item.plainFinishOn.toString()},
                                {"later_days", workDays(item.laterUnits)}});
    }
    out["stacked"] = Json::array();
    for (const StackedDays& one : plan.stacked) {
        out["stacked"].push_back(stackedJson(rows, figures, one));
    }
    out["without_days"] = plan.withoutDays;
    out["crews_without_capacity"] = plan.crewsWithoutCapacity;
    out["items_without_crew"] = plan.itemsWithoutCrew;
    out["one_crew_spaces"] = plan.oneCrewSpaces;
    out["kept"] = kept ? Json(*kept) : Json(nullptr);
    return out.dump(2) + "\n";
}

}  // namespace ledgerboard::report
