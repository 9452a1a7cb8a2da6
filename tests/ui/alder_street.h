// A small invented house for the tests of the screens, as a book in a folder: 14 Alder Street,
// built 1990 (so that no caution stands before old paint), four spaces, on Friday 15 May 2026.
#pragma once

#include <string>

#include "core/store/book.h"

namespace ledgerboard::ui {

// Friday 15 May 2026, noon in Chicago.
[[nodiscard]] model::Instant noonOnFriday();

struct AlderStreet {
    std::string path;
    model::Id<model::Kind::Job> job;
    model::Id<model::Kind::Crew> tileCrew;
};

// `items` more in the kitchen beside its own two.
[[nodiscard]] AlderStreet buildAlderStreet(const std::string& path, int items = 0);

// The same house as a crew lead's phone holds it: own items without money, no role.
[[nodiscard]] AlderStreet buildLeadsCopy(const std::string& path);

// The marks of the item of this name, as a book opened anew holds them, oldest first.
[[nodiscard]] std::vector<model::Mark> marksOf(const AlderStreet& house, const std::string& object);
[[nodiscard]] model::JobRows rowsOf(const AlderStreet& house);

}  // namespace ledgerboard::ui
