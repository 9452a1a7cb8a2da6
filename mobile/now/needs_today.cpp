#include "mobile/now/needs_today.h"

#include <algorithm>
#include <set>

#include "core/compute/scope_lines.h"

namespace ledgerboard::phone {

namespace {

constexpr int kNearDays = 7;

class Lister {
  public:
    explicit Lister(const JobNow& now) : now_(now) {}

    std::vector<Need> list() {
        if (now_.isOwner) {
            punchSaidFixed();
        }
        deliveries();
        if (now_.isOwner) {
            decisions();
            changes();
        }
        cautions();
        items();
        if (now_.isOwner) {
            insurance();
        }
        return std::move(out_);
    }

  private:
    void punchSaidFixed() {
        Need need;
        need.kind = NeedKind::LookAtPunch;
        need.count = 0;
        std::set<std::string> names;
        for (const auto& read : now_.punch.all) {
            if (read.isOpen && read.lastSaid == model::Verdict::SaidFixed) {
                need.space = need.count == 0 ? now_.rows.punches[read.punch].space : need.space;
                ++need.count;
                names.insert(read.space);
            }
        }
        for (const auto& name : names) {
            need.why += (need.why.empty() || name.empty() ? "" : ", ") + name;
        }
        if (need.count > 0) {
            out_.push_back(std::move(need));
        }
    }

    void deliveries() {
        for (const auto& delivery : now_.rows.deliveries) {
            if (delivery.arrivedOn || !delivery.promisedOn || *delivery.promisedOn > now_.today) {
                continue;
            }
            const Found found = findItem(now_, delivery.item);
            if (found.item == nullptr) {
                continue;
            }
            Need need;
            need.kind = NeedKind::Delivery;
            need.on = delivery.promisedOn;
            place(need, found);
            out_.push_back(std::move(need));
        }
    }

    void decisions() {
        for (const auto& alternate : now_.rows.alternates) {
            if (!alternate.chosen.isNil() || !alternate.decideBy ||
                *alternate.decideBy > now_.today + kNearDays) {
                continue;
            }
            Need need;
            need.kind = NeedKind::Decide;
            need.what = alternate.question;
            need.on = alternate.decideBy;
            need.space = alternate.space;
            out_.push_back(std::move(need));
        }
    }

    void changes() {
        for (const auto& change : now_.rows.changes) {
            if (change.signedOn || change.refusedOn || !change.askedOn) {
                continue;
            }
            Need need;
            need.kind = NeedKind::AnswerChange;
            need.what = change.name;
            need.on = change.askedOn;
            need.money = compute::changeAmount(change);
            need.change = change.id;
            if (!change.items.empty()) {
                const Found found = findItem(now_, change.items.front());
                need.space = found.space == nullptr ? need.space : found.space->id;
            }
            out_.push_back(std::move(need));
        }
    }

    // Of work that is under way, or begins within a week.
    void cautions() {
        for (const auto& space : now_.spaces) {
            for (const auto& item : space.items) {
                const auto& start = now_.rows.items[item.row].plannedStartOn;
                const bool isNear = item.isStarted() || (start && *start <= now_.today + kNearDays);
                if (item.holdUps.empty() || item.isFinished() || !isNear || !item.isMine) {
                    continue;
                }
                Need need;
                need.kind = NeedKind::Caution;
                need.why = now_.cautions.all[item.holdUps.front()].about;
                need.on = start;
                place(need, {&item, &space});
                out_.push_back(std::move(need));
            }
        }
    }

    void items() {
        for (const auto& space : now_.spaces) {
            for (const auto& item : space.items) {
                const auto& row = now_.rows.items[item.row];
                Need need;
                if (now_.isOwner && row.readyToLook && !row.acceptedOn) {
                    need.kind = NeedKind::AcceptWork;
                } else if (!now_.isOwner && item.isMine && row.doNotCover && !item.isFinished()) {
                    need.kind = NeedKind::LeaveOpen;
                } else {
                    continue;
                }
                place(need, {&item, &space});
                out_.push_back(std::move(need));
            }
        }
    }

    // Of crews with work left.
    void insurance() {
        for (const auto& crew : now_.rows.crews) {
            if (!crew.insuredUntil || *crew.insuredUntil > now_.today || !hasWorkLeft(crew.id)) {
                continue;
            }
            Need need;
            need.kind = NeedKind::InsuranceEnds;
            need.what = crew.name;
            need.on = crew.insuredUntil;
            out_.push_back(std::move(need));
        }
    }

    [[nodiscard]] bool hasWorkLeft(const model::Id<model::Kind::Crew>& crew) const {
        return std::any_of(now_.spaces.begin(), now_.spaces.end(), [&](const SpaceNow& space) {
            return std::any_of(space.items.begin(), space.items.end(), [&](const ItemNow& item) {
                return now_.rows.items[item.row].crew == crew && !item.isFinished() && !item.isKept;
            });
        });
    }

    void place(Need& need, const Found& found) const {
        const auto& row = now_.rows.items[found.item->row];
        need.what = row.object;
        need.item = row.id;
        need.space = found.space->id;
    }

    const JobNow& now_;
    std::vector<Need> out_;
};

}  // namespace

std::vector<Need> needsToday(const JobNow& now) {
    return Lister(now).list();
}

}  // namespace ledgerboard::phone
