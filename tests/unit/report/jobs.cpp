#include "tests/unit/report/jobs.h"

#include "core/compute/cautions.h"

namespace ledgerboard::report::test {

namespace {

using model::Date;
using model::Money;
using model::Percent;
using model::Quantity;

template <class Id>
Id id(std::uint8_t number) {
    std::array<std::uint8_t, model::RawId::kBytes> bytes{};
    bytes[0] = 1;
    bytes[model::RawId::kBytes - 1] = number;
    return Id(model::RawId(bytes));
}

model::Item item(std::uint8_t number, std::uint8_t space, const char* object, const char* trade,
                 std::int64_t dollars) {
    model::Item row;
    row.id = id<decltype(row.id)>(number);
    row.job = id<decltype(row.job)>(1);
    row.space = id<decltype(row.space)>(space);
    row.treatment = model::Treatment::Replace;
    row.object = object;
    row.trade = trade;
    row.lumpSum = Money::of(dollars);
    return row;
}

void addRooms(model::JobRows& rows) {
    model::Space kitchen;
    kitchen.id = id<decltype(kitchen.id)>(10);
    kitchen.name = "Kitchen";
    kitchen.walkOrder = 1;
    kitchen.swatch = "#8A5545";
    model::Space bath;
    bath.id = id<decltype(bath.id)>(11);
    bath.name = "hall bath";
    bath.walkOrder = 2;
    rows.spaces = {kitchen, bath};
}

void addItems(model::JobRows& rows) {
    rows.items = {item(20, 10, "cabinets", "Carpentry", 4'000), item(21, 11, "tile", "Tile", 2'000),
                  item(22, 11, "fan", "Electrical", 300)};
    rows.items[0].plannedStartOn = may(4);
    rows.items[0].plannedFinishOn = may(8);
    rows.items[0].daysLikely = Quantity::of(5);
    rows.items[1].plannedStartOn = may(11);
    rows.items[1].plannedFinishOn = may(22);
    rows.items[1].daysLikely = Quantity::of(10);

    model::Baseline baseline;
    baseline.id = id<decltype(baseline.id)>(30);
    baseline.frozenOn = may(1);
    baseline.contingency = Money::of(630);
    baseline.finishOn = may(22);
    rows.baselines = {baseline};
    std::uint8_t number = 31;
    for (const auto& row : rows.items) {
        model::BaselineItem frozen;
        frozen.id = id<decltype(frozen.id)>(number++);
        frozen.baseline = baseline.id;
        frozen.item = row.id;
        frozen.budget = row.lumpSum;
        frozen.plannedStartOn = row.plannedStartOn;
        frozen.plannedFinishOn = row.plannedFinishOn;
        rows.baseline_items.push_back(frozen);
    }
}

void addMarks(model::JobRows& rows) {
    auto mark = [&rows](std::uint8_t number, std::size_t of, std::int64_t percent, Date on) {
        model::Mark row;
        row.id = id<decltype(row.id)>(number);
        row.item = rows.items[of].id;
        row.percent = Percent::of(percent);
        row.markedOn = on;
        rows.marks.push_back(row);
    };
    mark(40, 0, 100, may(8));
    mark(41, 1, 50, may(15));
}

void addMoney(model::JobRows& rows) {
    model::Spend invoice;
    invoice.id = id<decltype(invoice.id)>(50);
    invoice.type = model::SpendKind::Invoice;
    invoice.spentOn = may(8);
    invoice.amount = Money::of(4'300);
    invoice.item = rows.items[0].id;
    invoice.payee = "Cabinet crew";
    invoice.dueOn = may(20);
    invoice.paperSeen = true;
    model::Spend receipt;
    receipt.id = id<decltype(receipt.id)>(51);
    receipt.type = model::SpendKind::Receipt;
    receipt.spentOn = may(13);
    receipt.amount = Money::of(900);
    receipt.item = rows.items[1].id;
    receipt.payee = "Corner hardware";
    rows.spends = {invoice, receipt};

    model::Change niche;
    niche.id = id<decltype(niche.id)>(60);
    niche.name = "shower niche";
    niche.amount = Money::of(250);
    niche.items = {rows.items[1].id};
    niche.askedOn = may(12);
    rows.changes = {niche};
}

// Somebody has taken note of every hazard of the work, so that they stand in no test's way.
void acknowledgeAll(model::JobRows& rows) {
    std::uint8_t number = 70;
    const auto cautions = compute::cautionsOf(rows, may(1));
    for (const auto& caution : cautions.all) {
        model::Caution kept = compute::keptCaution(caution, rows.job.id);
        kept.id = id<decltype(kept.id)>(number++);
        kept.acknowledgedOn = may(1);
        rows.cautions.push_back(kept);
    }
}

}  // namespace

Date may(int dayOfMonth) {
    return Date::fromYmd(2026, 5, dayOfMonth).value();
}

model::JobRows smallJob() {
    model::JobRows rows;
    rows.job.id = id<decltype(rows.job.id)>(1);
    rows.job.name = "Small house";
    rows.job.currency = "USD";
    rows.job.beginOn = may(4);
    rows.job.targetFinishOn = may(29);
    rows.job.contingency = Percent::of(10);
    addRooms(rows);
    addItems(rows);
    addMarks(rows);
    addMoney(rows);
    acknowledgeAll(rows);
    return rows;
}

}  // namespace ledgerboard::report::test
