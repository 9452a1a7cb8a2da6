// What does the reader make of walk notes? The draft scope of work, as plain values.
//
// Every part names the sentence and the line it was read from and how sure the reader is, so that
// a person can check it against what was said.
//
// Units: cost and money facts are dollars and cents in model::Money; quantity is in thousandths of
// `unit`; days are working days, leadDays calendar days, in model::Quantity; sure is 0 to 100.
#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "core/model/money.h"
#include "core/model/quantity.h"

namespace ledgerboard::intake {

// Where a part was read, and how sure the reader is of it.
struct Source {
    std::string sentence;  // as written, white space folded
    int line = 0;          // 1 is the first line of the notes
    int sure = 0;          // 0 to 100
};

struct DraftSpace {
    std::string name;  // one name per space through the whole notes, in walking order
};

struct DraftItem {
    std::string space;
    std::string treatment;  // one word of the treatment vocabulary of the catalog
    std::string object;     // the object table's main name: "kitchen cabinets", "wood floor"
    std::string note;       // what else was said of it, or why it is kept
    std::optional<model::Quantity> quantity;
    std::string unit;  // of the unit table, empty where no quantity was said
    std::optional<model::Money> cost;
    std::optional<model::Quantity> days;
    std::optional<model::Quantity> leadDays;
    Source source;
};

struct DraftOption {
    std::string name;
    std::optional<model::Money> cost;
    std::optional<model::Quantity> days;
    std::string needs;  // the name of an option this one depends on, where said
};

struct DraftAlternate {
    std::string space;
    std::string question;
    std::string materialOf;  // the object of the item whose material is open; empty where more is
    std::vector<DraftOption> options;
    Source source;
};

// One reading of a fact; more than one where the notes conflict.
struct DraftFact {
    std::string name;  // purchase, resale, budget, area_sqft, bedrooms, baths, rooms, built, begin,
                       // duration_days, days_on_market, profit
    std::string value;  // money with two decimals, dates ISO 8601, counts as digits (baths "2.5")
    Source source;
};

struct DraftCaution {
    std::string about;
    std::string why;
    Source source;
};

struct Draft {
    std::vector<DraftSpace> spaces;
    std::vector<DraftItem> items;
    std::vector<DraftAlternate> alternates;
    std::vector<DraftFact> facts;
    std::vector<DraftCaution> cautions;
    int leftOut = 0;                    // items that were too unsure to be made
    std::vector<std::string> ownWords;  // the owner's words that were used, and what they mean
};

}  // namespace ledgerboard::intake
