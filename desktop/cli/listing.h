// What are the rows of one kind, as asked for? Shared by list and give.
#pragma once

#include <map>
#include <set>
#include <string>
#include <vector>

#include <nlohmann/json_fwd.hpp>

#include "core/compute/budget.h"
#include "core/report/table.h"
#include "core/store/book.h"

#include "desktop/cli/session.h"

namespace ledgerboard::cli {

struct Listing {
    model::Kind kind = model::Kind::None;
    std::vector<store::Record> records;
    std::map<model::RawId, compute::LineFigures> lines;  // of scope items
    std::set<model::RawId> unpriced;                     // scope items that nothing prices
    model::NameRecord name;
    std::string job;  // its name; empty where the rows are of the whole book
};

// As of and known at what the session was asked for. Errors: an unknown kind; as Session::rows.
[[nodiscard]] model::Result<Listing> listingOf(Session& session, const std::string& kindName);

// {"items": [...]}: every field that holds something.
[[nodiscard]] nlohmann::json listingJson(const Listing& listing);

// Every field but the job, a column each, as `bring` reads them back.
[[nodiscard]] report::Table listingTable(const Listing& listing);

}  // namespace ledgerboard::cli
