// Who is calling? What the book says of a device: whose it is, and what that person may see.
#pragma once

#include <set>

#include "core/model/words.h"
#include "core/store/sync_book.h"

namespace ledgerboard::sync {

struct Standing {
    model::RawId paired;  // the name it was paired under, which does not change
    model::RawId device;  // the name it writes under now
    model::RawId person;
    // Every name that devices of this person ever had.
    std::set<model::RawId> names;
    model::Role role = model::Role::Unset;
    model::RawId crew;  // of a crew lead
    model::RawId job;   // of a viewer
    bool known = false;
    bool revoked = false;  // under any name it had

    [[nodiscard]] bool wrote(const store::Entry& entry) const {
        return names.contains(entry.name.device);
    }
};

// Of the device that was paired as `paired`. Not known where the book has no such device, or its
// person has no role. Errors: of the book.
[[nodiscard]] model::Result<Standing> standingOf(store::Book& book, const model::RawId& paired);

// What the peer remembers of names: how the device paired as `paired` is called now, under which
// name `device` was paired, and what it was called before.
[[nodiscard]] std::string calledOf(const model::RawId& paired);
[[nodiscard]] std::string pairedOf(const model::RawId& device);
[[nodiscard]] std::string formerOf(const model::RawId& device);

// The name under which the device that is or was called `device` was paired. Errors: of the book.
[[nodiscard]] model::Result<model::RawId> pairedNameOf(store::Book& book,
                                                       const model::RawId& device);

// `device` and the names it had before, by what the peer remembers. Errors: of the book.
[[nodiscard]] model::Result<std::set<model::RawId>> formerNames(store::Book& book,
                                                                const model::RawId& device);

// Every device, earlier ones too, of the people who lead `crew`. Errors: of the book.
[[nodiscard]] model::Result<std::set<model::RawId>> devicesOfCrew(store::Book& book,
                                                                  const model::RawId& crew);

}  // namespace ledgerboard::sync
