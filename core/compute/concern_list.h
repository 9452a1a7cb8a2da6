// How are concerns collected? Inside core/compute: one source file for money, one for time.
#pragma once

#include <string>
#include <utility>
#include <vector>

#include "core/compute/concerns.h"
#include "core/model/saying.h"

namespace ledgerboard::compute {

struct ConcernsInput {
    const model::JobRows& rows;
    const JobFigures& figures;
    const Plan& plan;
    model::Date today;
    const Outlook& outlook;
    ConcernLevels levels;
};

// Lines and the job over budget, contingency, contracts, changes, papers, insurance, scope that no
// change holds, cash. Added at the end of `out`.
void addMoneyConcerns(const ConcernsInput& in, std::vector<Concern>& out);

// Orders, items not marked, the finish, crews that did not come or are wanted twice. The same.
void addTimeConcerns(const ConcernsInput& in, std::vector<Concern>& out);

[[nodiscard]] inline model::Saying daysSaid(int count) {
    return count == 1 ? model::saying("%1 day", count) : model::saying("%1 days", count);
}

// A list being collected.
class ConcernList {
  public:
    explicit ConcernList(std::vector<Concern>& out) : out_(out) {}

    Concern& add(ConcernKind kind, Level level, model::Saying about, model::Saying rule,
                 Page page) {
        Concern concern;
        concern.kind = kind;
        concern.level = level;
        concern.about = std::move(about);
        concern.rule = std::move(rule);
        concern.page = page;
        out_.push_back(std::move(concern));
        return out_.back();
    }

    // The same about a record, by its name.
    template <class Row>
    Concern& addAbout(const Row& row, ConcernKind kind, Level level, std::string name,
                      model::Saying rule, Page page) {
        Concern& concern =
            add(kind, level, model::asWritten(std::move(name)), std::move(rule), page);
        concern.recordKind = Row::kKind;
        concern.record = row.id.raw();
        return concern;
    }

  private:
    std::vector<Concern>& out_;
};

}  // namespace ledgerboard::compute
