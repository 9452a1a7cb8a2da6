// What does the phone get from outside? Everything that only main may touch: the clock, chance,
// and where things are kept. Tests hand in their own.
#pragma once

#include <functional>

#include <QString>
#include <QStringList>

#include "core/model/date.h"
#include "core/model/id.h"

namespace ledgerboard::phone {

struct Surroundings {
    std::function<model::Instant()> now;
    model::FillRandom random;
    QString settingsFile;        // last book, theme, language: of this device alone
    QString bookFolder;          // where new books go
    QStringList pictureFolders;  // where this device's camera puts its pictures
    QString timeZone;            // of this device, for a new job; may be empty
    bool usesSenses = false;     // camera and microphone, where there are any
    // How long after a change, or after the network came back, the peer is met: longer than undo is
    // offered, so that slips stay here.
    int meetSoonMs = 12'000;
};

}  // namespace ledgerboard::phone
