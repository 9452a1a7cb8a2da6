// How is a draft read from walk notes shown, for people and as JSON?
#pragma once

#include <cstddef>
#include <string>

#include <nlohmann/json_fwd.hpp>

#include "core/intake/notes/read_notes.h"
#include "core/report/plain_text.h"

namespace ledgerboard::cli {

// By space in walking order: items with treatment, object, figures and how sure the reader is, and
// below each the line and sentence it came from; then alternates, facts, cautions.
[[nodiscard]] std::string draftText(const intake::Draft& draft, std::size_t width,
                                    report::Script script);

// {"spaces", "items", "alternates", "facts", "cautions"} in one document.
[[nodiscard]] nlohmann::json draftJson(const intake::Draft& draft);

// What each stage made of each sentence.
[[nodiscard]] std::string explainedText(const intake::Reading& reading);
[[nodiscard]] nlohmann::json explainedJson(const intake::Reading& reading);

}  // namespace ledgerboard::cli
