// A database of the test's own in the shared server: a schema named after a path.
#pragma once

#include <memory>
#include <string>

#include "core/model/result.h"
#include "core/store/backend.h"

namespace ledgerboard::tests {

[[nodiscard]] std::string schemaOf(const std::string& path);
[[nodiscard]] model::Result<std::unique_ptr<store::Backend>> postgresBackend(
    const std::string& path);

}  // namespace ledgerboard::tests
