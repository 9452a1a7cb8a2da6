// Is a page well-formed? A small check of our own, so that the tests need no other program.
#pragma once

#include <string>
#include <string_view>
#include <vector>

namespace ledgerboard::report::test {

// Empty where every tag is closed in order, attributes are quoted and each named once in its tag,
// and no bare & or < stands anywhere; else what is wrong and near what.
[[nodiscard]] std::string wrongWith(std::string_view html);

// The text between tags, entities put back, runs of white space as one space.
[[nodiscard]] std::string textOf(std::string_view html);

// The start tags named `name`, as they stand: "<th scope=\"col\">".
[[nodiscard]] std::vector<std::string> tagsNamed(std::string_view html, std::string_view name);

}  // namespace ledgerboard::report::test
