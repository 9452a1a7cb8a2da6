// Which day is a dated statement for?
#pragma once

#include <string>

#include "core/model/date.h"
#include "core/model/result.h"

#include "desktop/cli/session.h"

namespace ledgerboard::cli {

// The day that `option` (--at, --on) names, else --as-of, else today. Errors: text that is no date,
// naming the option.
[[nodiscard]] inline model::Result<model::Date> dayOf(Session& session, const char* option,
                                                      const std::string& text) {
    if (text.empty()) {
        return session.today();
    }
    auto day = model::Date::parseLoose(text);
    if (!day.ok()) {
        return model::wrongUse(std::string(option) + ": " + day.error().message);
    }
    return day;
}

}  // namespace ledgerboard::cli
