// A whole book from one database into another, table by table: for a backup of a book that is no
// file, and to bring a file into another database.
#include <array>

#include "core/store/book_parts.h"

namespace ledgerboard::store {

namespace {

struct Table {
    std::string_view name;
    std::string_view columns;
    int count;
    int bytes;                // which column holds bytes rather than a value; -1 for none
    std::string_view rising;  // the key that the database gives out; empty for none
};

constexpr std::array<Table, 12> kTables = {{
    {"meta", "name, value", 2, -1, ""},
    {"writers", "writer, device", 2, -1, ""},
    {"entries", "arrival, writer, lane, number, clock, record, field, value, replaces", 9, 8, ""},
    {"cells", "record, field, arrival, clock, writer", 5, -1, ""},
    {"superseded", "record, arrival", 2, -1, ""},
    {"actions", "clock, what, role, target, first, undone", 6, -1, ""},
    {"forgotten", "writer, lane, number", 3, -1, ""},
    {"compacted", "writer, lane, number, digest", 4, -1, ""},
    {"asides", "place, device, lane, number, clock, record, field, value, replaces, at_ms, why", 11,
     8, "place"},
    {"sent", "device, record, field, arrival", 4, -1, ""},
    {"sending", "device, record, field, arrival", 4, -1, ""},
    {"stale", "record, field", 2, -1, ""},
}};

std::string places(int count) {
    std::string text = "?1";
    for (int k = 2; k <= count; ++k) {
        text += ", ?" + std::to_string(k);
    }
    return text;
}

void copyTable(Database& from, Database& to, const Table& table) {
    const std::string name(table.name);
    const std::string columns(table.columns);
    to.run("DELETE FROM " + name);
    auto select = from.prepare("SELECT " + columns + " FROM " + name);
    while (select.step()) {
        std::array<model::Value, 11> values;
        std::string bytes;
        auto insert = to.prepare("INSERT INTO " + name + "(" + columns + ") VALUES(" +
                                 places(table.count) + ")");
        for (int k = 0; k < table.count; ++k) {
            if (k == table.bytes) {
                bytes = select.blob(k);
                insert.bindBlob(k + 1, bytes);
            } else {
                auto& value = values[static_cast<std::size_t>(k)];
                value = select.value(k);
                insert.bind(k + 1, value);
            }
        }
        insert.run();
    }
    if (!table.rising.empty()) {
        to.backend().riseAbove(name, std::string(table.rising));
    }
}

}  // namespace

void copyBook(Database& from, Database& to) {
    for (const auto& table : kTables) {
        copyTable(from, to, table);
    }
    to.backend().mark();  // which may be a part of what was copied over
    // Of the rows no copy is needed: they are what the cells add up to.
    Log(to).rebuildRows();
}

}  // namespace ledgerboard::store
