#include "core/report/forms.h"

#include <utility>

namespace ledgerboard::report {

namespace {

using model::Id;
using model::Kind;

template <class Row, Kind K>
const Row* rowWith(const std::vector<Row>& rows, Id<K> id) {
    for (const auto& row : rows) {
        if (!id.isNil() && row.id == id) {
            return &row;
        }
    }
    return nullptr;
}

std::string crewName(const model::JobRows& rows, Id<Kind::Crew> crew) {
    const auto* row = rowWith(rows.crews, crew);
    return row == nullptr ? "" : row->name;
}

BidLine bidLineOf(const model::Item& item) {
    BidLine line;
    line.work = std::string(model::wordOf(item.treatment)) + " " + item.object;
    for (const auto& [name, text] : {std::pair{"", &item.selection},
                                     {"", &item.instructions},
                                     {"There now: ", &item.condition},
                                     {"Hazards: ", &item.hazards}}) {
        if (!text->empty()) {
            const bool isEnded = line.more.empty() || line.more.back() == '.';
            line.more += (line.more.empty() ? ""
                          : isEnded         ? " "
                                            : ". ") +
                         std::string(name) + *text;
        }
    }
    if (item.quantity) {
        line.size = item.quantity->toString() + (item.unit.empty() ? "" : " " + item.unit);
    }
    return line;
}

template <class IsOn>
PunchSheet sheetOf(const model::JobRows& rows, const compute::PunchList& list, std::string crew,
                   model::Date today, const IsOn& isOn) {
    PunchSheet sheet{std::move(crew), {}, 0};
    for (const auto& read : list.all) {
        const auto& punch = rows.punches[read.punch];
        if (!read.isOpen || !isOn(punch)) {
            continue;
        }
        const std::string here = read.space.empty() ? "No room" : read.space;
        if (sheet.rooms.empty() || sheet.rooms.back().name != here) {
            sheet.rooms.push_back({here, {}});
        }
        sheet.rooms.back().lines.push_back(
            {punch.what, read.crew,
             (punch.dueOn ? compute::dayWords(*punch.dueOn, today) : std::string()) +
                 (read.isLate ? " (late)" : "")});
        ++sheet.open;
    }
    return sheet;
}

std::string checkWithLaw(const std::string& what) {
    return "A plain form. Check with local law, or somebody licensed in it, before anybody signs: "
           "what " +
           what + " must say differs from place to place.";
}

}  // namespace

std::string houseText(const model::Job& job) {
    const bool saysMore = !job.address.empty() && job.address != job.name;
    return job.name + (saysMore ? ", " + job.address : "");
}

BidScope bidScopeOf(const model::JobRows& rows, const compute::JobFigures& figures,
                    Id<Kind::Crew> crew) {
    BidScope scope{crewName(rows, crew), {}};
    for (const auto& space : figures.spaces) {
        const Id<Kind::Space> here(space.id);
        const auto* row = rowWith(rows.spaces, here);
        BidRoom room{row == nullptr ? "No room" : row->name, {}};
        for (const auto& line : figures.scope.lines) {
            if (line.kind != compute::LineKind::Item || line.space != here ||
                line.counting != compute::Counting::Counts ||
                (!crew.isNil() && line.crew != crew)) {
                continue;
            }
            if (const auto* item = rowWith(rows.items, line.item)) {
                room.lines.push_back(bidLineOf(*item));
            }
        }
        if (!room.lines.empty()) {
            scope.rooms.push_back(std::move(room));
        }
    }
    return scope;
}

PunchSheet punchSheetOf(const model::JobRows& rows, const compute::PunchList& list,
                        Id<Kind::Crew> crew, model::Date today) {
    return sheetOf(rows, list, crewName(rows, crew), today,
                   [&](const model::Punch& punch) { return crew.isNil() || punch.crew == crew; });
}

PunchSheet punchSheetOfNobody(const model::JobRows& rows, const compute::PunchList& list,
                              model::Date today) {
    return sheetOf(rows, list, "", today,
                   [](const model::Punch& punch) { return punch.crew.isNil(); });
}

BlankForm changeForm() {
    FormPart both;
    both.says = "Work on this change begins once both have signed it.";
    both.fields = {"Owner, signature and date", "Crew or firm, signature and date"};
    return {"Change order",
            checkWithLaw("a change to a contract"),
            {{"", "", 0, {"Number", "Date", "Contract", "Crew or firm"}, false},
             {"What is changed, and why",
              "",
              4,
              {"Added to the contract sum (or taken off)", "Days added (or taken off)",
               "Contract sum before", "Contract sum with this change"},
              false},
             both}};
}

BlankForm waiverForm() {
    const auto part = [](const char* name, const char* says, bool isOnNewPage) {
        return FormPart{
            name,
            says,
            0,
            {"Claimant (crew or firm)", "Owner", "Amount", "Work up to this day",
             "Not covered: retainage, changes not signed, other", "Claimant, signature and date"},
            isOnNewPage};
    };
    return {"Lien waiver",
            checkWithLaw("a lien waiver"),
            {part("Conditional, on payment",
                  "Once the amount below has been paid, the claimant gives up the right to a lien "
                  "on this property for the work up to the day below. Until it is paid this paper "
                  "has no effect.",
                  false),
             part("Unconditional, payment received",
                  "The claimant has received the amount below and gives up the right to a lien on "
                  "this property for the work up to the day below. Do not sign before the money is "
                  "there.",
                  true)}};
}

FormPart bidderPart() {
    FormPart part;
    part.fields = {"Bidder",
                   "Licence and insurance",
                   "Price in all",
                   "Can start on, days",
                   "Left out of this price",
                   "Date, signature"};
    part.says =
        "Measure on site before you bid: sizes are the owner's. Permits, local codes and licensed "
        "trades decide how the work is done.";
    return part;
}

std::string nothingToBidOn(const BidScope& scope) {
    return "There is no work to bid on" +
           (scope.crew.empty() ? std::string(" yet.") : " for " + scope.crew + ".");
}

std::string nothingToPutRight() {
    return "Nothing is left to put right.";
}

}  // namespace ledgerboard::report
