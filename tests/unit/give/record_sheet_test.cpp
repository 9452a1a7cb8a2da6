// Protects which columns a sheet of records has, in which form, and what is added up.
#include "core/give/record_sheet.h"

#include <algorithm>
#include <gtest/gtest.h>

#include "tests/unit/compute/sample_job.h"

namespace {

using namespace ledgerboard;
using namespace ledgerboard::tests;
using give::Cell;
using give::Form;
using give::Sheet;

const give::SheetColumn* column(const Sheet& sheet, std::string_view heading) {
    const auto found = std::find_if(sheet.columns.begin(), sheet.columns.end(),
                                    [&](const auto& one) { return one.heading == heading; });
    return found == sheet.columns.end() ? nullptr : &*found;
}

Cell cell(const Sheet& sheet, std::string_view heading, std::size_t row = 0) {
    const auto* found = column(sheet, heading);
    return found == nullptr
               ? Cell(std::string("no such column"))
               : sheet.rows.at(row).at(static_cast<std::size_t>(found - sheet.columns.data()));
}

std::string nameOf(const model::RawId& /*id*/) {
    return "named";
}

TEST(RecordSheet, FieldsInTheirOwnForms) {
    SampleJob job;
    model::Spend& spend = job.spend(model::SpendKind::Receipt, "2026-05-14", "143.85");
    spend.payee = "=1+1";
    const Sheet sheet = give::recordSheet(model::Kind::Spend, {store::recordOf(spend)}, {}, nameOf,
                                          "14 Quince Row");
    EXPECT_EQ(column(sheet, "Job"), nullptr);
    EXPECT_EQ(cell(sheet, "Amount"), Cell(money("143.85")));
    EXPECT_TRUE(column(sheet, "Amount")->isTotalled);
    EXPECT_EQ(cell(sheet, "Date"), Cell(day("2026-05-14")));
    EXPECT_EQ(cell(sheet, "Payee"), Cell(std::string("=1+1")));  // a text, never a formula
}

TEST(RecordSheet, ScopeHasItsFiguresAndWhatIsPerUnitDoesNotAddUp) {
    SampleJob job;
    job.item("tile", "1000");
    job.item("tub", "500");
    job.mark(1, "2026-05-20", "40");
    job.spend(model::SpendKind::Receipt, "2026-05-20", "1200", 1);
    const auto figures = compute::figuresOf(job.rows, day("2026-05-22"));
    std::map<model::RawId, compute::LineFigures> lines = {
        {job.rows.items[0].id.raw(), figures.lines[0]}};
    const Sheet sheet = give::recordSheet(
        model::Kind::Item, {store::recordOf(job.rows.items[0]), store::recordOf(job.rows.items[1])},
        lines, nameOf, "");
    EXPECT_EQ(cell(sheet, "Budget now"), Cell(money("1000")));
    EXPECT_EQ(cell(sheet, "Earned"), Cell(money("400")));
    EXPECT_EQ(cell(sheet, "Billed"), Cell(money("1200")));
    EXPECT_EQ(cell(sheet, "Budget now", 1), Cell());  // no figures were given for it
    EXPECT_FALSE(column(sheet, "Labour per unit")->isTotalled);
    const auto* over = column(sheet, "Over");
    const auto at = [&](const char* heading) {
        return give::columnLetters(
            static_cast<std::size_t>(column(sheet, heading) - sheet.columns.data()));
    };
    EXPECT_EQ(over->formula, "=" + at("Forecast") + "#-" + at("Budget now") + "#");
}

}  // namespace
