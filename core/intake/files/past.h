// What did a record hold before? Read from its history when first asked for, which is seldom.
#pragma once

#include <algorithm>
#include <optional>
#include <unordered_map>
#include <vector>

#include "core/intake/files/row_reader.h"
#include "core/store/book.h"

namespace ledgerboard::intake {

class Past {
  public:
    explicit Past(const store::Book& book) : book_(book) {}

    // Whether `record` holds or ever held every value of `values`. True where history can't be
    // read: ask error() before using the answers.
    bool everHeld(const store::Record& record, const FieldValues& values) {
        for (const auto& [code, value] : values) {
            if (record.at(code) != value && !held(record.id, code, value)) {
                return false;
            }
        }
        return true;
    }

    // The same of one value.
    bool held(model::RawId record, model::FieldCode code, const model::Value& value) {
        auto found = lines_.find(record);
        if (found == lines_.end()) {
            auto read = book_.history(record);
            if (!read.ok()) {
                error_ = read.error();
                return true;
            }
            found = lines_.emplace(record, std::move(read).value()).first;
        }
        return std::any_of(found->second.begin(), found->second.end(), [&](const auto& line) {
            return line.field == code && line.value == value;
        });
    }

    [[nodiscard]] const std::optional<model::Error>& error() const { return error_; }

  private:
    const store::Book& book_;
    std::unordered_map<model::RawId, std::vector<store::HistoryLine>, model::RawIdHash> lines_;
    std::optional<model::Error> error_;
};

}  // namespace ledgerboard::intake
