// Who is calling? What the book says of a device: whose it is, and what that person may see.
#pragma once

#include <set>

#include "core/model/words.h"
#include "core/store/book.h"

namespace ledgerboard::sync {

struct Standing {
    model::RawId device;
    model::RawId person;
    model::Role role = model::Role::Unset;
    model::RawId crew;  // of a crew lead
    model::RawId job;   // of a viewer
    bool known = false;
    bool revoked = false;
};

// Not known where the book has no such device, or its person has no role. Errors: of the book.
[[nodiscard]] model::Result<Standing> standingOf(store::Book& book, const model::RawId& device);

// Every device, earlier ones too, of the people who lead `crew`. Errors: of the book.
[[nodiscard]] model::Result<std::set<model::RawId>> devicesOfCrew(store::Book& book,
                                                                  const model::RawId& crew);

}  // namespace ledgerboard::sync
