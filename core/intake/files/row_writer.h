// How does a row, once paired, get into the action and the report?
//
// A row that no record says yet makes one; a row that differs changes its record; any other is
// counted as unchanged. What is remarked on it goes to the report with its line.
#pragma once

#include <functional>
#include <string>
#include <vector>

#include "core/intake/files/bring.h"
#include "core/intake/files/find.h"
#include "core/intake/files/pairing.h"
#include "core/store/action.h"

namespace ledgerboard::intake {

class RowWriter {
  public:
    // All but `job` must outlive it. The job is written to a record of a kind that belongs to one.
    RowWriter(const Finder& finder, const std::vector<store::Record>& existing,
              model::Id<model::Kind::Job> job, store::Action& action, BringReport& report)
        : finder_(finder), existing_(existing), job_(job), action_(action), report_(report) {}

    // Only fields for which `isTold` is true are named in the report; all, where it is not set.
    void tellOnly(std::function<bool(model::FieldCode)> isTold) { isTold_ = std::move(isTold); }

    // `name` is what the report calls the row, `newId` the record it makes where it is new. What
    // comes out is its line of the report, good until the next.
    BringLine& write(const BroughtRow& row, std::string name, const Pairing& pairing,
                     model::RawId newId);

    [[nodiscard]] std::string printed(model::FieldCode code, const model::Value& value) const;

  private:
    // "Quantity 10, Unit sq ft", or with `before` "Quantity 10, was 8".
    [[nodiscard]] std::string detailOf(const FieldValues& values,
                                       const store::Record* before) const;

    const Finder& finder_;
    const std::vector<store::Record>& existing_;
    model::Id<model::Kind::Job> job_;
    store::Action& action_;
    BringReport& report_;
    std::function<bool(model::FieldCode)> isTold_;
};

}  // namespace ledgerboard::intake
