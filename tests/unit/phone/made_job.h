// A small made-up job for the tests of the phone: rows as a book would hand them out.
#pragma once

#include <string>

#include "core/model/rows.h"

namespace ledgerboard::phone::tests {

template <model::Kind K>
model::Id<K> idOf(std::uint8_t number) {
    std::array<std::uint8_t, model::RawId::kBytes> bytes{};
    bytes[0] = static_cast<std::uint8_t>(K);
    bytes[15] = number;
    return model::Id<K>(model::RawId(bytes));
}

inline model::Date day(int month, int dayOfMonth) {
    return model::Date::fromYmd(2026, month, dayOfMonth).value();
}

struct MadeJob {
    model::JobRows rows;

    MadeJob() {
        rows.job.id = idOf<model::Kind::Job>(1);
        rows.job.name = "14 Alder Street";
    }

    model::Space& space(const std::string& name, std::int64_t order) {
        auto& row = rows.spaces.emplace_back();
        row.id = idOf<model::Kind::Space>(static_cast<std::uint8_t>(rows.spaces.size()));
        row.name = name;
        row.walkOrder = order;
        return row;
    }

    model::Item& item(const std::string& object, model::Id<model::Kind::Space> space,
                      std::int64_t dollars) {
        auto& row = rows.items.emplace_back();
        row.id = idOf<model::Kind::Item>(static_cast<std::uint8_t>(rows.items.size()));
        row.job = rows.job.id;
        row.space = space;
        row.treatment = model::Treatment::Replace;
        row.object = object;
        row.lumpSum = model::Money::of(dollars);
        return row;
    }

    void mark(model::Id<model::Kind::Item> item, int percent, model::Date on) {
        auto& row = rows.marks.emplace_back();
        row.id = idOf<model::Kind::Mark>(static_cast<std::uint8_t>(rows.marks.size()));
        row.item = item;
        row.percent = model::Percent::of(percent);
        row.markedOn = on;
    }
};

}  // namespace ledgerboard::phone::tests
