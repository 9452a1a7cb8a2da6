#include "core/intake/bank/statement.h"

#include <algorithm>

#include <nlohmann/json.hpp>

#include "core/model/saying.h"

namespace ledgerboard::intake {

namespace {

using model::Result;
using nlohmann::json;

constexpr std::size_t kLongestText = 400;

std::string textOf(const json& line, const char* name) {
    const auto found = line.find(name);
    return found != line.end() && found->is_string()
               ? found->get<std::string>().substr(0, kLongestText)
               : std::string();
}

Result<StatementLine> lineOf(const json& read, const std::string& place) {
    if (!read.is_object()) {
        return model::cannotBeMet(model::saying("%1can't be read", place));
    }
    StatementLine line;
    line.account = textOf(read, "account");
    line.bankId = textOf(read, "bank_id");
    line.payee = textOf(read, "payee");
    line.memo = textOf(read, "memo");
    if (line.bankId.empty()) {
        return model::cannotBeMet(
            model::saying("%1has no id of the bank (FITID): without one it could come in twice. "
                          "Ask the bank for another download, or bring it as CSV",
                          place));
    }
    const auto date = model::Date::parse(textOf(read, "date"));
    if (!date.ok()) {
        return model::cannotBeMet(
            model::saying("%1date (DTPOSTED): %2", place, model::Saying(date.error().message)));
    }
    const auto amount = model::Money::parse(textOf(read, "amount"));
    if (!amount.ok()) {
        return model::cannotBeMet(
            model::saying("%1amount (TRNAMT): %2", place, model::Saying(amount.error().message)));
    }
    line.postedOn = date.value();
    line.amount = amount.value();
    return line;
}

}  // namespace

bool isBankDownload(std::string_view bytes) {
    std::string head(bytes.substr(0, kBeginning));
    std::transform(head.begin(), head.end(), head.begin(), [](unsigned char c) {
        return static_cast<char>(c >= 'a' && c <= 'z' ? c - 'a' + 'A' : c);
    });
    return head.find("OFXHEADER") != std::string::npos || head.find("<OFX>") != std::string::npos;
}

Result<Statement> parseStatement(std::string_view printed, const std::string& file) {
    const json document = json::parse(printed, nullptr, false);
    if (!document.is_object() || !document.contains("lines") || !document["lines"].is_array()) {
        return model::cannotBeMet(
            model::saying("%1: ledgerboard-ofx printed nothing that can be read", file));
    }
    Statement statement;
    statement.currency = textOf(document, "currency");
    std::size_t number = 0;
    for (const auto& read : document["lines"]) {
        auto line = lineOf(read, file + ", bank line " + std::to_string(++number) + ": ");
        if (!line.ok()) {
            return line.error();
        }
        statement.lines.push_back(std::move(line).value());
    }
    return statement;
}

}  // namespace ledgerboard::intake
