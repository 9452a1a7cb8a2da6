#include "core/intake/files/row_writer.h"

#include <utility>

namespace ledgerboard::intake {

using model::FieldCode;
using model::Value;

std::string RowWriter::printed(FieldCode code, const Value& value) const {
    return model::printValue(*model::fieldOf(code), value, finder_.nameRecord());
}

std::string RowWriter::detailOf(const FieldValues& values, const store::Record* before) const {
    std::string out;
    for (const auto& [code, value] : values) {
        if (isTold_ && !isTold_(code)) {
            continue;
        }
        out += (out.empty() ? "" : "; ") + std::string(model::fieldOf(code)->heading) + " " +
               printed(code, value);
        if (before != nullptr) {
            const std::string was = printed(code, before->at(code));
            out += was.empty() ? ", was empty" : ", was " + was;
        }
    }
    return out;
}

BringLine& RowWriter::write(const BroughtRow& row, std::string name, const Pairing& pairing,
                            model::RawId newId) {
    BringLine line{row.line, BringOutcome::Unchanged, std::move(name), ""};
    if (!pairing.remark.empty()) {
        report_.remarks.push_back("line " + std::to_string(line.line) + ", " + line.name + ": " +
                                  pairing.remark);
    }
    if (pairing.as == PairedAs::New) {
        line.outcome = BringOutcome::Added;
        line.detail = detailOf(row.values, nullptr);
        if (const auto* field = model::jobFieldOf(report_.kind)) {
            action_.set(newId, field->code, Value{job_.raw()});
        }
        for (const auto& [code, value] : row.values) {
            action_.set(newId, code, value);
        }
        ++report_.added;
    } else if (pairing.as == PairedAs::Different) {
        const auto& record = existing_[*pairing.record];
        line.outcome = BringOutcome::Changed;
        line.detail = detailOf(pairing.changes, &record);
        for (const auto& [code, value] : pairing.changes) {
            action_.set(record.id, code, value);
        }
        ++report_.changed;
    } else {
        ++report_.unchanged;
    }
    report_.lines.push_back(std::move(line));
    return report_.lines.back();
}

}  // namespace ledgerboard::intake
