// What does the desktop client get from outside? Everything that only main may touch: the clock,
// chance, and where things are kept. Tests hand in their own.
#pragma once

#include <functional>

#include <QString>

#include "core/model/date.h"
#include "core/model/id.h"

namespace ledgerboard::desk {

struct Surroundings {
    std::function<model::Instant()> now;
    model::FillRandom random;
    QString settingsFile;  // last book, theme, language: of this machine alone
    QString bookFolder;    // where new books go
    QString timeZone;      // of this machine, for a new job; may be empty
};

}  // namespace ledgerboard::desk
