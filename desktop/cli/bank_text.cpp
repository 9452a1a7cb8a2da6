#include "desktop/cli/bank_text.h"

#include <nlohmann/json.hpp>

namespace ledgerboard::cli {

namespace {

using intake::LineIs;
using nlohmann::json;

constexpr const char* kWays[] = {"unknown", "filed", "new_spend", "draw", "not_ours"};

std::string spendText(const model::Spend& spend, const intake::Finder& finder) {
    std::string text;
    for (const auto& id : {spend.item.raw(), spend.contract.raw(), spend.crew.raw()}) {
        if (text.empty() && !id.isNil()) {
            text = finder.nameOf(id);
        }
    }
    text = text.empty() ? "the whole job" : text;
    return std::string(model::wordOf(spend.type)) + " for " + text;
}

}  // namespace

std::string matchText(const intake::LineMatch& match, const intake::Finder& finder) {
    switch (match.is) {
        case LineIs::Unknown:
            return "";
        case LineIs::Filed:
            return "a row that is there";
        case LineIs::NewSpend:
            return spendText(match.fresh, finder);
        case LineIs::Draw:
            return "draw " + finder.nameOf(match.draw.raw());
        case LineIs::NotOurs:
            return "not ours";
    }
    return "";
}

json lineJson(const model::BankLine& line, const intake::LineMatch& match,
              const intake::Finder& finder) {
    return {{"id", line.id.raw().toString()},
            {"account", line.account},
            {"bank_id", line.bankId},
            {"date", line.postedOn ? json(line.postedOn->toString()) : json(nullptr)},
            {"amount", line.amount ? json(line.amount->toString()) : json(nullptr)},
            {"payee", line.payee},
            {"memo", line.memo},
            {"match", kWays[static_cast<std::size_t>(match.is)]},
            {"for", matchText(match, finder)},
            {"sure", match.sure},
            {"why", match.reason}};
}

}  // namespace ledgerboard::cli
