#include "core/compute/as_of.h"

#include <algorithm>
#include <optional>
#include <unordered_set>
#include <utility>
#include <vector>

namespace ledgerboard::compute {

namespace {

using model::Date;
using MaybeDate = std::optional<Date>;

template <class Row>
void removeVoided(std::vector<Row>& rows) {
    std::unordered_set<decltype(Row::id)> voided;
    for (const Row& row : rows) {
        if (!row.voids.isNil() && row.voids != row.id) {
            voided.insert(row.voids);
        }
    }
    std::erase_if(rows, [&](const Row& row) { return voided.contains(row.id); });
}

// Whether the earliest of the dates entered comes after `day`; false where none is entered.
bool allAfter(Date day, std::initializer_list<MaybeDate> dates) {
    MaybeDate earliest;
    for (const MaybeDate& date : dates) {
        if (date && (!earliest || *date < *earliest)) {
            earliest = date;
        }
    }
    return earliest && *earliest > day;
}

// Empties a date after `day`; says whether it did.
bool notYet(MaybeDate& date, Date day) {
    if (date && *date > day) {
        date.reset();
        return true;
    }
    return false;
}

template <class Row>
void keepUntil(std::vector<Row>& rows, Date day, MaybeDate Row::*date) {
    std::erase_if(rows, [&](const Row& row) { return row.*date && *(row.*date) > day; });
}

// Removes the rows whose `reference` names none of `kept`. A nil reference stays.
template <class Row, class Kept, class Reference>
void keepWith(std::vector<Row>& rows, const std::vector<Kept>& kept, Reference Row::*reference) {
    std::unordered_set<Reference> ids;
    for (const Kept& row : kept) {
        ids.insert(row.id);
    }
    std::erase_if(rows, [&](const Row& row) {
        return !(row.*reference).isNil() && !ids.contains(row.*reference);
    });
}

void limitWork(model::JobRows& rows, Date day) {
    for (model::Item& item : rows.items) {
        notYet(item.actualStartOn, day);
        notYet(item.actualFinishOn, day);
        notYet(item.acceptedOn, day);
    }
    for (model::Unknown& unknown : rows.unknowns) {
        notYet(unknown.cameTrueOn, day);
    }
    for (model::Caution& caution : rows.cautions) {
        if (notYet(caution.acknowledgedOn, day)) {
            caution.acknowledgedBy = {};
            caution.testResult.clear();
        }
    }
    keepUntil(rows.marks, day, &model::Mark::markedOn);
    std::erase_if(rows.photos, [&](const model::Photo& photo) {
        return photo.takenAt && photo.takenAt->utcDate() > day;
    });
    keepUntil(rows.punches, day, &model::Punch::foundOn);
    keepUntil(rows.looks, day, &model::Look::lookedOn);
    keepWith(rows.looks, rows.punches, &model::Look::punch);
    keepUntil(rows.visits, day, &model::Visit::visitedOn);
    keepUntil(rows.presences, day, &model::Presence::presentOn);
    std::erase_if(rows.inspections, [&](const model::Inspection& inspection) {
        return allAfter(day, {inspection.askedOn, inspection.heldOn});
    });
    for (model::Inspection& inspection : rows.inspections) {
        if (notYet(inspection.heldOn, day)) {
            inspection.outcome = model::Outcome::Unset;
            inspection.corrections.clear();
        }
    }
    for (model::Note& note : rows.notes) {
        notYet(note.typedOn, day);
    }
}

void limitPromises(model::JobRows& rows, Date day) {
    for (model::Contract& contract : rows.contracts) {
        notYet(contract.signedOn, day);
        notYet(contract.acceptedOn, day);
        notYet(contract.waiverReceivedOn, day);
    }
    std::erase_if(rows.changes, [&](const model::Change& change) {
        return allAfter(day, {change.askedOn, change.signedOn, change.refusedOn});
    });
    for (model::Change& change : rows.changes) {
        notYet(change.signedOn, day);
        notYet(change.refusedOn, day);
    }
    std::erase_if(rows.deliveries, [&](const model::Delivery& delivery) {
        return allAfter(day, {delivery.orderedOn, delivery.arrivedOn});
    });
    for (model::Delivery& delivery : rows.deliveries) {
        if (notYet(delivery.arrivedOn, day)) {
            delivery.wrongOrMissing.clear();
        }
        notYet(delivery.lookedAtOn, day);
    }
    for (model::Paper& paper : rows.papers) {
        notYet(paper.receivedOn, day);
    }
    for (model::Bid& bid : rows.bids) {
        notYet(bid.chosenOn, day);
    }
    for (model::Offer& offer : rows.offers) {
        notYet(offer.signedOn, day);
    }
    for (model::Device& device : rows.devices) {
        notYet(device.revokedOn, day);
    }
    keepUntil(rows.sales, day, &model::Sale::soldOn);
    keepUntil(rows.prices, day, &model::Price::asOf);
}

void limitMoney(model::JobRows& rows, Date day) {
    keepUntil(rows.spends, day, &model::Spend::spentOn);
    keepUntil(rows.bank_lines, day, &model::BankLine::postedOn);
    std::erase_if(rows.draws, [&](const model::Draw& draw) {
        return allAfter(day, {draw.askedOn, draw.inspectedOn, draw.fundedOn});
    });
    std::unordered_set<model::Id<model::Kind::Draw>> notInspected;
    for (model::Draw& draw : rows.draws) {
        if (notYet(draw.inspectedOn, day)) {
            notInspected.insert(draw.id);
        }
        if (notYet(draw.fundedOn, day)) {
            draw.amount.reset();
            draw.holdback.reset();
            draw.fee.reset();
        }
    }
    keepWith(rows.draw_lines, rows.draws, &model::DrawLine::draw);
    for (model::DrawLine& line : rows.draw_lines) {
        if (notInspected.contains(line.draw)) {
            line.allowed.reset();
            line.whyRefused.clear();
        }
    }
    keepUntil(rows.reviews, day, &model::Review::reviewedOn);
    keepUntil(rows.baselines, day, &model::Baseline::frozenOn);
    keepWith(rows.baseline_items, rows.baselines, &model::BaselineItem::baseline);
}

}  // namespace

model::JobRows withoutVoided(model::JobRows rows) {
    removeVoided(rows.marks);
    removeVoided(rows.spends);
    return rows;
}

model::JobRows asOf(model::JobRows rows, Date day) {
    rows = withoutVoided(std::move(rows));
    limitWork(rows, day);
    limitPromises(rows, day);
    limitMoney(rows, day);
    return rows;
}

}  // namespace ledgerboard::compute
