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
    // The program that knows OFX, which reads a bank's download.
    QString bankProgram;
    // The peer on this machine: its program, the address it listens on and the port.
    QString peerProgram = QStringLiteral("ledgerboard-peer");
    QString peerAddress = QStringLiteral("0.0.0.0");
    int peerPort = 7440;
};

}  // namespace ledgerboard::desk
