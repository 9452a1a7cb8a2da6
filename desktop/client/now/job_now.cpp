#include "desktop/client/now/job_now.h"

#include <unordered_map>

#include "core/compute/as_of.h"
#include "core/compute/pricing.h"

namespace ledgerboard::desk {

namespace {

using Names = std::unordered_map<model::RawId, std::string, model::RawIdHash>;

template <class Row>
Names namesOf(const std::vector<Row>& rows) {
    Names names;
    for (const auto& row : rows) {
        names.emplace(row.id.raw(), row.name);
    }
    return names;
}

std::string nameIn(const Names& names, const model::RawId& id) {
    const auto found = names.find(id);
    return found == names.end() ? std::string() : found->second;
}

}  // namespace

std::shared_ptr<const JobNow> jobNowOf(model::JobRows rows, model::Date today) {
    auto now = std::make_shared<JobNow>(compute::asOf(std::move(rows), today));
    now->today = today;
    now->figures = compute::figuresOf(now->rows, today);
    const Names spaces = namesOf(now->rows.spaces);
    const Names crews = namesOf(now->rows.crews);
    now->haystacks.reserve(now->rows.items.size());
    for (std::size_t k = 0; k < now->rows.items.size(); ++k) {
        const model::Item& item = now->rows.items[k];
        now->haystacks.push_back(compute::folded(
            nameIn(spaces, item.space.raw()) + " " + std::string(model::wordOf(item.treatment)) +
            " " + item.object + " " + now->figures.scope.lines[k].trade + " " +
            nameIn(crews, item.crew.raw()) + " " + item.note + " " + item.selection));
    }
    return now;
}

std::string spaceName(const model::JobRows& rows, const model::Id<model::Kind::Space>& id) {
    for (const auto& space : rows.spaces) {
        if (space.id == id) {
            return space.name;
        }
    }
    return {};
}

std::string crewName(const model::JobRows& rows, const model::Id<model::Kind::Crew>& id) {
    for (const auto& crew : rows.crews) {
        if (crew.id == id) {
            return crew.name;
        }
    }
    return {};
}

}  // namespace ledgerboard::desk
