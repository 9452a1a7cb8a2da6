// What does a person change at one go? A list of edits that stand or fall together.
//
// An Action is plain data: Book::commit turns it into entries of the log.
#pragma once

#include <compare>
#include <cstdint>
#include <optional>
#include <string>
#include <utility>
#include <vector>

#include "core/model/catalog.h"
#include "core/model/rows.h"
#include "core/model/value.h"

namespace ledgerboard::store {

// One field of one record gets a value; an empty value clears it.
struct Edit {
    model::RawId record;
    model::FieldCode field = 0;
    model::Value value;
};

// How far the log had come when somebody looked at the book.
struct LogPosition {
    std::int64_t arrival = 0;
    friend auto operator<=>(const LogPosition&, const LogPosition&) = default;
};

class Action {
  public:
    // `what` is said in history and by undo: "set Kitchen/cabinets", "bring spend april.csv".
    explicit Action(std::string what) : what_(std::move(what)) {}

    // An action worked out from what the book held at `plannedOn` (Book::position()), such as "add
    // what is not there yet": refused where anything was written since.
    Action(std::string what, LogPosition plannedOn)
        : what_(std::move(what)), plannedOn_(plannedOn) {}

    // A later edit of the same field in the same action replaces the earlier one.
    void set(model::RawId record, model::FieldCode field, model::Value value) {
        edits_.push_back({record, field, std::move(value)});
    }

    // Every member of `row` that holds something. Requires: row.id is not nil.
    template <class Row>
    void add(const Row& row) {
        const auto fields = model::infoOf(Row::kKind).fields;
        std::size_t at = 0;
        model::visitFields(row, [&](const auto& member) {
            const model::Field& field = fields[at++];
            model::Value value = model::valueOf(member);
            if (!model::isEmpty(value)) {
                set(row.id.raw(), field.code, std::move(value));
            }
        });
    }

    // The record no longer counts; it stays in history and can be brought back.
    void drop(model::Kind kind, model::RawId record) {
        set(record, model::goneCode(kind), model::Value{std::int64_t{1}});
    }

    [[nodiscard]] const std::string& what() const { return what_; }

    [[nodiscard]] const std::vector<Edit>& edits() const { return edits_; }

    [[nodiscard]] bool empty() const { return edits_.empty(); }

    [[nodiscard]] std::optional<LogPosition> plannedOn() const { return plannedOn_; }

  private:
    std::string what_;
    std::optional<LogPosition> plannedOn_;
    std::vector<Edit> edits_;
};

}  // namespace ledgerboard::store
