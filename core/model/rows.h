// What does a record look like to the code that computes with it? One plain struct per kind, and
// all the rows of one job together; both made from catalog.def.
//
// Members are empty (nullopt, "", nil id, false, empty list) where nothing was entered.
#pragma once

#include <concepts>
#include <cstdint>
#include <optional>
#include <string>
#include <type_traits>
#include <vector>

#include "core/model/catalog.h"
#include "core/model/date.h"
#include "core/model/id.h"
#include "core/model/lists.h"
#include "core/model/money.h"
#include "core/model/percent.h"
#include "core/model/quantity.h"
#include "core/model/words.h"

namespace ledgerboard::model {

// The C++ type of each catalog type.
namespace member {
using Text = std::string;
using Flag = bool;
using Count = std::optional<std::int64_t>;
using Money = std::optional<model::Money>;
using Quantity = std::optional<model::Quantity>;
using SignedMoney = Money;
using SignedQuantity = Quantity;
using Percent = std::optional<model::Percent>;
using Date = std::optional<model::Date>;
using Instant = std::optional<model::Instant>;
using Weekdays = std::optional<model::Weekdays>;
using Amounts = std::vector<NamedAmount>;
using Steps = std::vector<NamedShare>;
using ItemAmounts = std::vector<ItemAmount>;
using Dates = std::vector<model::Date>;
}  // namespace member

#define KIND(kind, number, plural, title, aliases) \
    struct kind {                                  \
        static constexpr Kind kKind = Kind::kind;  \
        Id<Kind::kind> id;
#define FIELD(kind, number, member_, type, unit, reads, writes, merge, heading, says) \
    member::type member_{};
#define WORDS(kind, number, member_, type, reads, writes, merge, heading, says) type member_{};
#define REF(kind, number, member_, meant, reads, writes, merge, heading, says) \
    Id<Kind::meant> member_{};
#define REFS(kind, number, member_, meant, reads, writes, merge, heading, says) \
    std::vector<Id<Kind::meant>> member_{};
#define END(kind) \
    }             \
    ;
#include "core/model/catalog.def"

// Calls visit(member) for every field of `row`, in catalog order (the id is not one of them).
#define KIND(kind, number, plural, title, aliases)        \
    template <class Row, class Take>                      \
    requires std::same_as<std::remove_const_t<Row>, kind> \
    void visitFields(Row& row, Take&& visit) {
#define FIELD(kind, number, member_, type, unit, reads, writes, merge, heading, says) \
    visit(row.member_);
#define WORDS(kind, number, member_, type, reads, writes, merge, heading, says) visit(row.member_);
#define REF(kind, number, member_, meant, reads, writes, merge, heading, says) visit(row.member_);
#define REFS(kind, number, member_, meant, reads, writes, merge, heading, says) visit(row.member_);
#define END(kind) }
#include "core/model/catalog.def"

// All rows of one job, and the rows of the whole book that it leans on (crews, prices, people,
// devices). Dropped records are left out; each list is in order of id, so of making.
struct JobRows {
    Job job;
#define KIND(kind, number, plural, title, aliases) std::vector<kind> plural;
#include "core/model/catalog.def"
};

// Calls visit(list) for every list of `rows`.
template <class Rows, class Take>
requires std::same_as<std::remove_const_t<Rows>, JobRows>

void visitLists(Rows& rows, Take&& visit) {
#define KIND(kind, number, plural, title, aliases) visit(rows.plural);
#include "core/model/catalog.def"
}

}  // namespace ledgerboard::model
