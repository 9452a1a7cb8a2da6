// work draws: what may be drawn from the lender on work in place.
#include <vector>

#include "core/compute/draws.h"

#include "desktop/cli/work/calculation.h"
#include "desktop/cli/work/fields.h"

namespace ledgerboard::work {

namespace {

using nlohmann::json;

constexpr std::string_view kTakes =
    "  lines              a list of {\"amount\", \"allowed_percent\", \"share_percent\",\n"
    "                     \"paid_before\"}; the share is 100 and paid before 0 where\n"
    "                     left out\n"
    "  holdback_percent   kept from each draw until the final one; 0 where left out\n"
    "  limit              most that can be drawn in all (may be left out)\n"
    "  final              true: the final draw, which releases what was held\n";

constexpr std::string_view kGives =
    "  lines     draw, held_back of each; draw = amount x allowed x share x\n"
    "            (1 - holdback) - paid before, never below 0\n"
    "  draw      in all\n"
    "  held_back what the lender keeps in all, this draw with it\n"
    "  cut_by_limit   what the limit takes off, from all lines alike\n";

model::Result<std::vector<compute::PlainLine>> readLines(Fields& fields) {
    const json* list = fields.list("lines");
    std::vector<compute::PlainLine> lines;
    if (list == nullptr) {
        return lines;
    }
    for (const json& entry : *list) {
        Fields one(entry, "line " + std::to_string(lines.size() + 1) + " in lines: ");
        compute::PlainLine line;
        line.amount = one.number("amount", kMoneyRange);
        line.allowedPercent = one.number("allowed_percent", kPercentRange);
        line.sharePercent = one.numberIfGiven("share_percent", kPercentRange).value_or(100);
        line.paidBefore = one.numberIfGiven("paid_before", kMoneyRange).value_or(0);
        if (auto fine = one.done(); !fine.ok()) {
            return fine.error();
        }
        lines.push_back(line);
    }
    return lines;
}

model::Result<json> run(const json& input) {
    Fields fields(input);
    auto lines = readLines(fields);
    if (!lines.ok()) {
        return lines.error();
    }
    const double holdback = fields.numberIfGiven("holdback_percent", kPercentRange).value_or(0);
    const auto limit = fields.numberIfGiven("limit", kMoneyRange);
    const bool isFinal = fields.flag("final");
    if (auto fine = fields.done(); !fine.ok()) {
        return fine.error();
    }
    const compute::PlainDrawn drawn = compute::drawnOf(lines.value(), holdback, limit, isFinal);
    json rows = json::array();
    double held = 0;
    for (std::size_t k = 0; k < drawn.draws.size(); ++k) {
        rows.push_back(
            {{"draw", printed(drawn.draws[k])}, {"held_back", printed(drawn.heldBack[k])}});
        held += drawn.heldBack[k];
    }
    return json{{"lines", std::move(rows)},
                {"draw", printed(drawn.total)},
                {"held_back", printed(held)},
                {"cut_by_limit", printed(drawn.cutByLimit)}};
}

}  // namespace

Calculation drawsCalculation() {
    return {"draws",
            "what may be drawn from the lender on work in place",
            kTakes,
            kGives,
            R"({"lines":[{"amount":100000,"allowed_percent":65,"share_percent":100,)"
            R"("paid_before":36000}],"holdback_percent":10})",
            run};
}

}  // namespace ledgerboard::work
