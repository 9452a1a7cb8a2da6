#include <algorithm>
#include <map>

#include "core/compute/job_risk_parts.h"

namespace ledgerboard::compute {

namespace {

class Turns {
  public:
    Turns(const model::JobRows& rows, const JobNetwork& network)
        : rows_(rows), network_(network), times_(network.network().times()) {}

    std::vector<Precedence> find() {
        std::map<model::RawId, std::vector<std::size_t>> byCrew;
        std::map<model::RawId, std::vector<std::size_t>> bySpace;
        for (std::size_t k = 0; k < network_.activities.size(); ++k) {
            const JobActivity& activity = network_.activities[k];
            if (activity.left == 0) {
                continue;
            }
            if (!activity.crew.isNil()) {
                byCrew[activity.crew.raw()].push_back(k);
            }
            if (takesOneCrew(activity.space)) {
                bySpace[activity.space.raw()].push_back(k);
            }
        }
        for (auto& [crew, activities] : byCrew) {
            queue(activities, placesOf(crew));
        }
        for (auto& [space, activities] : bySpace) {
            queue(activities, 1);
        }
        return closesARing() ? std::vector<Precedence>{} : std::move(out_);
    }

  private:
    [[nodiscard]] bool takesOneCrew(const model::Id<model::Kind::Space>& id) const {
        return std::any_of(rows_.spaces.begin(), rows_.spaces.end(),
                           [&](const model::Space& space) {
                               return !id.isNil() && space.id == id && space.oneCrewAtATime;
                           });
    }

    [[nodiscard]] std::size_t placesOf(const model::RawId& id) const {
        for (const model::Crew& crew : rows_.crews) {
            if (crew.id.raw() == id && crew.capacity && *crew.capacity > 1) {
                return static_cast<std::size_t>(*crew.capacity);
            }
        }
        return 1;
    }

    // In the order of the plan, each after the one that leaves its place free, where the plan has
    // that one over before it begins.
    void queue(std::vector<std::size_t>& activities, std::size_t places) {
        std::stable_sort(activities.begin(), activities.end(), [&](std::size_t a, std::size_t b) {
            return times_.activities[a].es < times_.activities[b].es;
        });
        for (std::size_t k = places; k < activities.size(); ++k) {
            const std::size_t from = activities[k - places];
            const std::size_t to = activities[k];
            if (times_.activities[from].ef <= times_.activities[to].es) {
                out_.push_back({from, to, model::LinkKind::FinishToStart, 0});
            }
        }
    }

    // Links with a lag below 0 may run against the order of starts.
    [[nodiscard]] bool closesARing() const {
        std::vector<Precedence> all = network_.precedences;
        all.insert(all.end(), out_.begin(), out_.end());
        return !findLoop(network_.activities.size(), all).empty();
    }

    const model::JobRows& rows_;
    const JobNetwork& network_;
    NetworkTimes times_;
    std::vector<Precedence> out_;
};

}  // namespace

std::vector<Precedence> turnsOf(const model::JobRows& rows, const JobNetwork& network) {
    return Turns(rows, network).find();
}

}  // namespace ledgerboard::compute
