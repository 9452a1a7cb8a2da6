// What stands on the papers an owner hands to others, as plain data: a scope of work to bid on, a
// crew's punch sheet, and blank forms for a change order and a lien waiver?
//
// forms_html.h and core/paper show these and compute nothing. None holds the owner's money: there
// is no field for it. The forms are blank, and say to check them with local law: what a change or a
// waiver must say differs from place to place.
// Source: common practice, no source.
// Threads: any number may ask.
#pragma once

#include <string>
#include <vector>

#include "core/compute/budget.h"
#include "core/compute/punch_list.h"
#include "core/model/rows.h"

namespace ledgerboard::report {

// "14 Quince Row", with its address where that says more.
[[nodiscard]] std::string houseText(const model::Job& job);

struct BidLine {
    std::string work;  // "replace window"
    std::string more;  // selection, instructions, what is there now, hazards; may be empty
    std::string size;  // "12 sqft"; may be empty
};

struct BidRoom {
    std::string name;
    std::vector<BidLine> lines;
};

struct BidScope {
    std::string crew;  // "" for everybody's work
    std::vector<BidRoom> rooms;
};

// Work that counts, room by room in walking order; with `crew` only what is that crew's. No rooms
// where there is none. Requires: rows and figures as of one day.
[[nodiscard]] BidScope bidScopeOf(const model::JobRows& rows, const compute::JobFigures& figures,
                                  model::Id<model::Kind::Crew> crew);

struct PunchLine {
    std::string what;
    std::string crew;  // who puts it right; may be empty
    std::string by;    // "Thursday (late)"; may be empty
};

struct PunchRoom {
    std::string name;
    std::vector<PunchLine> lines;
};

struct PunchSheet {
    std::string crew;  // "" for everybody's
    std::vector<PunchRoom> rooms;
    std::size_t open = 0;
};

// Open punch items in the order of `list`, a room begun anew where it changes; with `crew` only
// that crew's. Requires: list = punchListOf(rows, today).
[[nodiscard]] PunchSheet punchSheetOf(const model::JobRows& rows, const compute::PunchList& list,
                                      model::Id<model::Kind::Crew> crew, model::Date today);

// The same of what names no crew.
[[nodiscard]] PunchSheet punchSheetOfNobody(const model::JobRows& rows,
                                            const compute::PunchList& list, model::Date today);

// A piece of a blank form, read from the top: a heading and what it says, lines to write on, and
// names with room to write behind them. Each may be empty.
struct FormPart {
    std::string heading;
    std::string says;
    int blankLines = 0;
    std::vector<std::string> fields;
    bool isOnNewPage = false;
};

struct BlankForm {
    std::string title;
    std::string notice;  // to check with local law
    std::vector<FormPart> parts;
};

[[nodiscard]] BlankForm changeForm();

// Conditional, and unconditional on a page of its own.
[[nodiscard]] BlankForm waiverForm();

// What stands at the end of a scope to bid on: what the bidder fills in, and a word of care.
[[nodiscard]] FormPart bidderPart();

// Sentences for papers without a line.
[[nodiscard]] std::string nothingToBidOn(const BidScope& scope);
[[nodiscard]] std::string nothingToPutRight();

}  // namespace ledgerboard::report
