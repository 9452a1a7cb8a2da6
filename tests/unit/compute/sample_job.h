// How do these tests make a job's rows? With small numbers for ids, dates and sums as text, and
// one call a row.
#pragma once

#include <array>
#include <cstdint>
#include <string_view>

#include "core/model/rows.h"

namespace ledgerboard::tests {

// The id whose last bytes are `number`, made at millisecond `clock`.
template <model::Kind K>
[[nodiscard]] model::Id<K> id(std::uint32_t number, std::uint32_t clock = 0) {
    std::array<std::uint8_t, model::RawId::kBytes> bytes{};
    for (std::size_t k = 0; k < 4; ++k) {
        bytes[2 + k] = static_cast<std::uint8_t>(clock >> (8 * (3 - k)));
        bytes[12 + k] = static_cast<std::uint8_t>(number >> (8 * (3 - k)));
    }
    return model::Id<K>(model::RawId(bytes));
}

// Requires: text that can be read; a test with a slip in it ends there.
[[nodiscard]] inline model::Date day(std::string_view text) {
    return model::Date::parse(text).value();
}

[[nodiscard]] inline model::Money money(std::string_view text) {
    return model::Money::parse(text).value();
}

[[nodiscard]] inline model::Quantity amountOf(std::string_view text) {
    return model::Quantity::parse(text).value();
}

[[nodiscard]] inline model::Percent percent(std::string_view text) {
    return model::Percent::parse(text).value();
}

// A job under way. Row numbers count from 1 in each list; the owner is person 1, a crew lead
// person 2.
struct SampleJob {
    model::JobRows rows;

    SampleJob() {
        rows.job.id = id<model::Kind::Job>(1);
        model::Person owner;
        owner.id = id<model::Kind::Person>(1);
        owner.role = model::Role::Owner;
        model::Person lead;
        lead.id = id<model::Kind::Person>(2);
        lead.role = model::Role::CrewLead;
        rows.people = {owner, lead};
    }

    template <class Row>
    Row& add(std::vector<Row>& list) {
        list.emplace_back();
        list.back().id = id<Row::kKind>(static_cast<std::uint32_t>(list.size()));
        return list.back();
    }

    // An item at a lump sum; repaired, judged, without dates.
    model::Item& item(std::string_view object, std::string_view lumpSum) {
        model::Item& item = add(rows.items);
        item.object = object;
        item.treatment = model::Treatment::Repair;
        item.lumpSum = money(lumpSum);
        return item;
    }

    model::Mark& mark(std::uint32_t item, std::string_view on, std::string_view shown,
                      std::uint32_t by = 1) {
        model::Mark& mark = add(rows.marks);
        mark.item = id<model::Kind::Item>(item);
        mark.markedOn = day(on);
        mark.percent = percent(shown);
        mark.by = id<model::Kind::Person>(by);
        return mark;
    }

    model::Spend& spend(model::SpendKind type, std::string_view on, std::string_view sum,
                        std::uint32_t item = 0) {
        model::Spend& spend = add(rows.spends);
        spend.type = type;
        spend.spentOn = day(on);
        spend.amount = money(sum);
        if (item != 0) {
            spend.item = id<model::Kind::Item>(item);
        }
        return spend;
    }

    model::Contract& contract(std::string_view name, std::string_view sum,
                              std::string_view signedOn) {
        model::Contract& contract = add(rows.contracts);
        contract.name = name;
        contract.type = model::ContractKind::Subcontract;
        contract.sum = money(sum);
        if (!signedOn.empty()) {
            contract.signedOn = day(signedOn);
        }
        return contract;
    }

    // Freezes what the items cost, as given, in the order of the items.
    void baseline(std::string_view on, std::initializer_list<std::string_view> budgets) {
        model::Baseline& baseline = add(rows.baselines);
        baseline.frozenOn = day(on);
        std::uint32_t number = 0;
        for (const std::string_view budget : budgets) {
            model::BaselineItem& frozen = add(rows.baseline_items);
            frozen.baseline = baseline.id;
            frozen.item = id<model::Kind::Item>(++number);
            frozen.budget = money(budget);
            frozen.plannedStartOn = rows.items[number - 1].plannedStartOn;
            frozen.plannedFinishOn = rows.items[number - 1].plannedFinishOn;
        }
    }

    model::Change& change(std::string_view name, std::string_view amount,
                          std::string_view signedOn) {
        model::Change& change = add(rows.changes);
        change.name = name;
        change.amount = money(amount);
        change.askedOn = signedOn.empty() ? day("2026-05-01") : day(signedOn);
        if (!signedOn.empty()) {
            change.signedOn = day(signedOn);
        }
        return change;
    }
};

}  // namespace ledgerboard::tests
