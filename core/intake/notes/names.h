// How are spaces and objects brought to one name, whoever wrote them?
#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace ledgerboard::intake {

// "Master Bath" and "primary bathroom" give one name; an unknown space gives its words in lower
// case.
[[nodiscard]] std::string spaceName(std::string_view written);

// "worktop" gives "countertop"; an unknown object gives its stems.
[[nodiscard]] std::string objectName(std::string_view written);

// The same in a space: the floor of a porch is a porch floor.
[[nodiscard]] std::string objectName(std::string_view written, std::string_view space);

// Whether the spaces table can make sense of it.
[[nodiscard]] bool isKnownSpace(std::string_view written);

// Whether the objects table holds it.
[[nodiscard]] bool isKnownObject(std::string_view written);

// The stems of the words, in order.
[[nodiscard]] std::vector<std::string> stemsIn(std::string_view written);

}  // namespace ledgerboard::intake
