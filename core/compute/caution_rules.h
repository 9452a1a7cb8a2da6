// Which rules of the cautions are there, and which of them does one item touch? The rows of
// cautions.def, and how their words are matched.
//
// Source: each rule names its own.
// Threads: any number may ask.
#pragma once

#include <cstdint>
#include <span>
#include <string_view>

#include "core/model/rows.h"

namespace ledgerboard::compute {

enum class CautionWhere : std::uint8_t { Item, WayOut, House, Crew, Notice };

enum class CautionRule : std::uint8_t {
#define RULE(key, about, alsoCalled, builtBefore, where, treatments, objects, trades, words, text, \
             source, consequence)                                                                  \
    key,
#include "core/compute/cautions.def"
};

// One row of the table, as cautions.def says.
struct CautionRow {
    CautionRule rule = CautionRule::Lead;
    std::string_view about;  // "lead paint": what it is called
    std::string_view alsoCalled;
    int builtBefore = 0;
    CautionWhere where = CautionWhere::Item;
    std::string_view treatments;
    std::string_view objects;
    std::string_view trades;
    std::string_view words;
    std::string_view text;
    std::string_view source;
    std::string_view consequence;
};

// All rows, in the order of the table.
[[nodiscard]] std::span<const CautionRow> cautionRows();
[[nodiscard]] const CautionRow& rowOf(CautionRule rule);

// The rule that is called `about`, by its name or another one. Null where none is.
[[nodiscard]] const CautionRow* cautionNamed(std::string_view about);

namespace caution_limit {
#define LIMIT(name, thousandths, unit, source) \
    inline constexpr model::Quantity k##name = model::Quantity::fromThousandths(thousandths);
#include "core/compute/cautions.def"
}  // namespace caution_limit

enum class CautionWords : std::uint8_t {
#define WORD_LIST(name, words) name,
#include "core/compute/cautions.def"
};

// Whether `text` says one of the words of a list of the table ("Outside" is Outdoors).
[[nodiscard]] bool saysOneOf(CautionWords list, std::string_view text);

// Why a rule is raised for an item: by what is done to it, else by its hazards or condition.
enum class RaisedBy : std::uint8_t { Nothing, Work, Words };

// Looks at year, treatment, object, trade, hazards and condition; not at the space, and not whether
// the item counts. `trade` is the item's own, else its crew's. A kept item raises nothing. For
// Crew, Notice, and a rule without objects, trades and words: Nothing.
[[nodiscard]] RaisedBy raisedBy(const CautionRow& row, const model::Job& job,
                                const model::Item& item, std::string_view trade);

}  // namespace ledgerboard::compute
