#include "sync/exchange/view.h"

#include <algorithm>
#include <array>

namespace ledgerboard::sync {

using model::FieldCode;
using model::Kind;
using model::RawId;
using model::Result;
namespace field = model::field;

namespace {

// What a crew sees of another crew's item.
constexpr std::array<FieldCode, 8> kNeighbourFields = {field::Item::job,
                                                       field::Item::space,
                                                       field::Item::treatment,
                                                       field::Item::object,
                                                       field::Item::trade,
                                                       field::Item::plannedStartOn,
                                                       field::Item::plannedFinishOn,
                                                       field::Item::actualFinishOn};

// Free text that owners and crews both write: an owner's stays with owners. (What is wrong with a
// delivery and the result of a test are not among them: the crew's work and health hang on them.)
constexpr std::array<FieldCode, 3> kFreeText = {field::Mark::note, field::Look::note,
                                                field::Photo::caption};

bool isOneOf(std::span<const FieldCode> codes, FieldCode code) {
    return std::find(codes.begin(), codes.end(), code) != codes.end();
}

bool showsCell(const Standing& standing, const View& view, const ShownRecord& record,
               const store::Entry& entry) {
    const model::Field* known = model::fieldOf(entry.field);
    if (entry.field == model::goneCode(record.kind)) {
        return !record.neighbour;
    }
    if (known == nullptr || known->kind != record.kind) {
        return false;  // of a newer catalog
    }
    if (record.neighbour) {
        return isOneOf(kNeighbourFields, entry.field) && mayRead(standing.role, *known);
    }
    if (standing.wrote(entry) && known->writes == model::Writes::Lead) {
        return true;  // its own words may come back to it; not what it wrote while an owner's
    }
    return mayRead(standing.role, *known) &&
           (!isOneOf(kFreeText, entry.field) || view.crewDevices.contains(entry.name.device));
}

}  // namespace

bool mayRead(model::Role role, const model::Field& known) {
    switch (known.reads) {
        case model::Reads::All:
            return role != model::Role::Unset;
        case model::Reads::Lead:
            return role == model::Role::Owner || role == model::Role::CrewLead;
        case model::Reads::Viewer:
            return role == model::Role::Owner || role == model::Role::Viewer;
        case model::Reads::Owner:
            break;
    }
    return role == model::Role::Owner;
}

Result<View> viewOf(store::Book& book, const Standing& standing) {
    return standing.role == model::Role::CrewLead ? leadView(book, standing)
                                                  : viewerView(book, standing);
}

Result<ViewCells> cellsOf(store::SyncBook& book, const Standing& standing, const View& view) {
    ViewCells cells;
    for (const auto& [id, record] : view.records) {
        auto held = book.cellsOf(id);
        if (!held.ok()) {
            return held.error();
        }
        for (const auto& one : held.value()) {
            if (showsCell(standing, view, record, one.entry)) {
                cells[{id, one.entry.field}] = {one.arrival, std::nullopt};
            }
        }
    }
    for (const auto& [item, finished] : view.finished) {
        auto source = book.cellsOf(finished.by.record);
        if (!source.ok()) {
            return source.error();
        }
        for (const auto& one : source.value()) {
            if (one.entry.field == finished.by.field) {
                cells[{item, field::Item::actualFinishOn}] = {one.arrival, finished.on};
            }
        }
    }
    return cells;
}

}  // namespace ledgerboard::sync
