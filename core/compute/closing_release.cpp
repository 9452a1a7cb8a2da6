// What releases a crew's retainage, and what goes into the folder of the house.
#include <algorithm>
#include <unordered_map>
#include <unordered_set>

#include "core/compute/budget_parts.h"
#include "core/compute/closing_parts.h"
#include "core/compute/positions.h"
#include "core/compute/pricing.h"
#include "core/model/saying.h"

namespace ledgerboard::compute {

namespace {

using model::Money;
using model::Saying;
using model::saying;
using ItemIds = std::unordered_set<model::Id<model::Kind::Item>>;

constexpr std::size_t kAcceptedStep = 4;  // in the release order

class Releaser {
  public:
    Releaser(const model::JobRows& rows, const JobFigures& figures, const PunchList& punch)
        : rows_(rows),
          figures_(figures),
          punch_(punch),
          itemsOf_(itemsOfContracts(rows, figures.scope)),
          inspections_(inspectionsOf(rows)) {
        for (const auto& items : itemsOf_) {
            ItemIds& ids = idsOf_.emplace_back();
            for (const std::size_t item : items) {
                ids.insert(rows.items[item].id);
            }
        }
    }

    std::vector<Release> release() {
        std::vector<Release> out;
        for (std::size_t k = 0; k < rows_.contracts.size(); ++k) {
            const model::Contract& contract = rows_.contracts[k];
            if (contract.type == model::ContractKind::Order || !contract.signedOn) {
                continue;
            }
            Release one = releaseOf(k);
            const bool isClosed = contract.acceptedOn && one.held == Money{} &&
                                  one.leftToPay == Money{} && contract.waiverReceivedOn;
            if (!isClosed) {
                out.push_back(std::move(one));
            }
        }
        return out;
    }

  private:
    [[nodiscard]] Release releaseOf(std::size_t k) const {
        const ContractFigures& figures = figures_.contracts[k];
        Release out;
        out.contract = k;
        out.name = rows_.contracts[k].name;
        out.held = figures.held;
        out.leftToPay = std::max(Money{}, due(k) - figures.paid);
        leftToDo(k, out);
        addSteps(k, out);
        // Whoever accepted the work has answered for what the book cannot know of it.
        const std::size_t answered = rows_.contracts[k].acceptedOn ? kAcceptedStep : 0;
        for (std::size_t step = 0; step < out.steps.size() && !out.next; ++step) {
            if (!out.steps[step].done.value_or(step < answered)) {
                out.next = step;
            }
        }
        return out;
    }

    // Contract now less what is charged back to its crew. A crew with several contracts is charged
    // under the first of them.
    [[nodiscard]] Money due(std::size_t k) const {
        Money due = figures_.contracts[k].now;
        for (const ChargeBack& charge : punch_.chargeBacks) {
            if (charge.crew == rows_.contracts[k].crew && isFirstOfCrew(k)) {
                due -= charge.amount;
            }
        }
        return due;
    }

    [[nodiscard]] bool isFirstOfCrew(std::size_t k) const {
        for (std::size_t other = 0; other < k; ++other) {
            const model::Contract& contract = rows_.contracts[other];
            if (contract.crew == rows_.contracts[k].crew && contract.signedOn &&
                contract.type != model::ContractKind::Order) {
                return false;
            }
        }
        return true;
    }

    // A punch item is a contract's where its item is under it; one that names no such item, where
    // its crew's first contract it is.
    [[nodiscard]] bool isPunchOf(std::size_t k, const PunchRead& read) const {
        const model::Punch& punch = rows_.punches[read.punch];
        if (punch.crew.isNil() || punch.crew != rows_.contracts[k].crew) {
            return punch.crew.isNil() && idsOf_[k].contains(punch.item);
        }
        for (std::size_t other = 0; other < rows_.contracts.size(); ++other) {
            if (rows_.contracts[other].crew == punch.crew && idsOf_[other].contains(punch.item)) {
                return other == k;
            }
        }
        return isFirstOfCrew(k);
    }

    void leftToDo(std::size_t k, Release& out) const {
        const ContractFigures& figures = figures_.contracts[k];
        out.leftToDo = std::max(Money{}, figures.now - model::share(figures.shown, figures.now));
        for (const PunchRead& read : punch_.all) {
            if (read.isOpen && isPunchOf(k, read)) {
                out.leftToDo += read.cost.value_or(Money{});
                out.punchWithoutCost += read.cost ? 0 : 1;
            }
        }
        out.holdLow = model::roundedMoney(model::multiplyWide(out.leftToDo.minor(), 3), 2);
        out.holdHigh = out.leftToDo + out.leftToDo;
    }

    void addSteps(std::size_t k, Release& out) const {
        out.steps = {
            finished(k),
            punchLookedAt(k),
            inspected(k),
            {saying("its debris gone"), std::nullopt, saying("have you seen the place swept?")},
            accepted(k),
            billed(k),
            waiver(k),
            paid(k),
            {saying("its final waiver, unconditional"), std::nullopt,
             saying("only after the money has cleared; from its suppliers too")},
            warranty(k)};
    }

    [[nodiscard]] ReleaseStep finished(std::size_t k) const {
        std::size_t done = 0;
        for (const std::size_t item : itemsOf_[k]) {
            done += figures_.lines[item].shown == model::Percent::whole() ? 1 : 0;
        }
        const std::size_t all = itemsOf_[k].size();
        if (all == 0) {
            return {saying("its work finished"), std::nullopt,
                    saying("no scope item is under it: is it done?")};
        }
        return {saying("its work finished"), done == all,
                all == 1 ? saying("%1 of %2 item finished", done, all)
                         : saying("%1 of %2 items finished", done, all)};
    }

    [[nodiscard]] ReleaseStep punchLookedAt(std::size_t k) const {
        std::size_t open = 0;
        for (const PunchRead& read : punch_.all) {
            open += read.isOpen && isPunchOf(k, read) ? 1 : 0;
        }
        return {saying("its punch items looked at"), open == 0,
                open == 0   ? saying("none is open")
                : open == 1 ? saying("%1 is open", open)
                            : saying("%1 are open", open)};
    }

    [[nodiscard]] ReleaseStep inspected(std::size_t k) const {
        std::size_t linked = 0;
        std::string waiting;
        for (const InspectionRead& read : inspections_) {
            const model::Inspection& last = rows_.inspections[read.last];
            const bool isOf =
                std::any_of(last.holdsUp.begin(), last.holdsUp.end(),
                            [&](const auto& item) { return idsOf_[k].contains(item); });
            if (isOf) {
                ++linked;
                if (!read.passed) {
                    waiting += (waiting.empty() ? "" : ", ") + last.what;
                }
            }
        }
        if (linked == 0) {
            return {saying("its final inspections passed"), std::nullopt,
                    saying("none is entered for it: did it need one?")};
        }
        return {saying("its final inspections passed"), waiting.empty(),
                waiting.empty() ? saying("%1 passed", linked) : saying("%1 not passed", waiting)};
    }

    [[nodiscard]] ReleaseStep accepted(std::size_t k) const {
        const auto& on = rows_.contracts[k].acceptedOn;
        return {saying("its work accepted"), on.has_value(),
                on ? saying("accepted %1", *on) : Saying()};
    }

    [[nodiscard]] ReleaseStep billed(std::size_t k) const {
        const Money due = this->due(k);
        const Money billed = figures_.contracts[k].billed;
        const bool isCharged = due != figures_.contracts[k].now;
        const Saying says = isCharged ? saying("billed, charge-backs taken off") : saying("billed");
        return {saying("its last bill agreed"), billed == due,
                billed > due ? saying("%1: more than was agreed", says) : says, billed, due};
    }

    [[nodiscard]] ReleaseStep waiver(std::size_t k) const {
        const auto& on = rows_.contracts[k].waiverReceivedOn;
        return {saying("its final waiver, conditional"), on.has_value(),
                on ? saying("came %1", *on) : saying("not in")};
    }

    [[nodiscard]] ReleaseStep paid(std::size_t k) const {
        const Money paid = figures_.contracts[k].paid;
        return {saying("the last payment, retainage with it"), paid >= due(k), saying("paid"), paid,
                due(k)};
    }

    [[nodiscard]] ReleaseStep warranty(std::size_t k) const {
        for (const model::Paper& paper : rows_.papers) {
            if (paper.type == model::PaperKind::Warranty && paper.receivedOn &&
                !paper.crew.isNil() && paper.crew == rows_.contracts[k].crew) {
                return {saying("warranty papers"), true, saying("came %1", *paper.receivedOn)};
            }
        }
        return {saying("warranty papers"), std::nullopt, saying("none is entered: is there one?")};
    }

    const model::JobRows& rows_;
    const JobFigures& figures_;
    const PunchList& punch_;
    std::vector<std::vector<std::size_t>> itemsOf_;
    std::vector<InspectionRead> inspections_;
    std::vector<ItemIds> idsOf_;  // of each contract's items
};

bool hasRule(const Cautions& cautions, CautionRule rule) {
    return std::any_of(cautions.all.begin(), cautions.all.end(), [&](const CautionRead& caution) {
        return caution.row != nullptr && caution.row->rule == rule && !caution.item.isNil();
    });
}

std::size_t received(const model::JobRows& rows, model::PaperKind kind) {
    return static_cast<std::size_t>(
        std::count_if(rows.papers.begin(), rows.papers.end(), [&](const model::Paper& paper) {
            return paper.type == kind && paper.receivedOn.has_value();
        }));
}

FinalPaper counted(Saying what, std::size_t count, const Saying& one, const Saying& several) {
    if (count == 0) {
        return {std::move(what), std::nullopt, saying("the book has none")};
    }
    return {std::move(what), true, count == 1 ? one : several};
}

}  // namespace

std::vector<InspectionRead> inspectionsOf(const model::JobRows& rows) {
    std::vector<InspectionRead> out;
    std::unordered_map<std::string, std::size_t> byName;
    const auto rank = [&](std::size_t k) {
        const model::Inspection& one = rows.inspections[k];
        // What is not held yet comes after everything that is.
        return std::make_pair(one.heldOn ? one.heldOn->days() : INT32_MAX, one.id);
    };
    for (std::size_t k = 0; k < rows.inspections.size(); ++k) {
        const auto [found, isNew] = byName.emplace(folded(rows.inspections[k].what), out.size());
        if (isNew) {
            out.push_back({k, false});
        } else if (rank(out[found->second].last) < rank(k)) {
            out[found->second].last = k;
        }
    }
    for (InspectionRead& read : out) {
        const model::Inspection& last = rows.inspections[read.last];
        read.passed = last.heldOn && last.outcome == model::Outcome::Passed;
    }
    return out;
}

std::vector<Release> releasesOf(const model::JobRows& rows, const JobFigures& figures,
                                const PunchList& punch) {
    return Releaser(rows, figures, punch).release();
}

std::vector<FinalPaper> finalPapersOf(const model::JobRows& rows, const Cautions& cautions) {
    std::vector<FinalPaper> out;
    const std::size_t permits = received(rows, model::PaperKind::Permit);
    out.push_back(
        {saying("every permit closed, with its final card"), std::nullopt,
         permits == 1
             ? saying("%1 permit is in the book; the office says which are closed", permits)
             : saying("%1 permits are in the book; the office says which are closed", permits)});
    out.push_back({saying("leave to occupy, where the town gives one"), std::nullopt,
                   saying("towns differ: ask the building office")});
    if (hasRule(cautions, CautionRule::Lead)) {
        out.push_back({saying("lead-work records from the certified firm"), std::nullopt,
                       saying("kept three years (from memory)")});
    }
    if (hasRule(cautions, CautionRule::Asbestos)) {
        const std::size_t letters = received(rows, model::PaperKind::Clearance);
        out.push_back(counted(saying("clearance letters after removal"), letters,
                              saying("%1 is in", letters), saying("%1 are in", letters)));
    }
    const std::size_t warranties = received(rows, model::PaperKind::Warranty);
    out.push_back(counted(saying("warranties"), warranties, saying("%1 is in", warranties),
                          saying("%1 are in", warranties)));
    out.push_back({saying("manuals of what was put in"), std::nullopt, {}});
    const auto selections = static_cast<std::size_t>(
        std::count_if(rows.items.begin(), rows.items.end(),
                      [](const model::Item& item) { return !item.selection.empty(); }));
    out.push_back(counted(saying("paint colours, tile lots, models"), selections,
                          saying("%1 item has its selection entered", selections),
                          saying("%1 items have their selection entered", selections)));
    out.push_back({saying("the survey"), std::nullopt, {}});
    out.push_back({saying("keys, openers and codes"), std::nullopt, {}});
    out.push_back({saying("utilities handed over, meters read"), std::nullopt, {}});
    const auto pairs = static_cast<std::size_t>(
        std::count_if(rows.photos.begin(), rows.photos.end(), [](const model::Photo& photo) {
            return photo.stage == model::Stage::After && !photo.pairsWith.isNil();
        }));
    out.push_back(counted(saying("before and after from the same spots"), pairs,
                          saying("%1 pair", pairs), saying("%1 pairs", pairs)));
    out.push_back({saying("the list of work, for what buyers are told"), std::nullopt,
                   saying("'ledgerboard give scope csv FILE' writes one")});
    return out;
}

}  // namespace ledgerboard::compute
