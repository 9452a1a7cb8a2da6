// One meeting with the peer, or joining it, apart from any screen.
//
// Threads: one at a time for each book; blocks while the network answers.
#pragma once

#include <optional>
#include <string>

#include <QMetaType>
#include <QString>

#include "sync/link/join_book.h"
#include "sync/link/meet.h"

#include "mobile/surroundings.h"

namespace ledgerboard::phone {

struct MeetingAsk {
    std::string bookPath;
    Surroundings around;
    std::optional<sync::JoinAsk> join;  // done before the meeting
};

struct MeetingOutcome {
    std::string bookPath;
    bool joined = false;
    bool met = false;
    bool revoked = false;  // the copy is to be wiped, which needs it closed
    model::Instant at;     // of a meeting, by the peer's clock
    std::size_t sent = 0;
    std::size_t received = 0;
    std::size_t photosSent = 0;
    std::size_t photosReceived = 0;
    QString trouble;  // why it did not come to a meeting
};

[[nodiscard]] MeetingOutcome holdMeeting(const MeetingAsk& ask);

// What was typed or read: an address and a code, or all that a picture says. Errors (WrongUse):
// neither.
[[nodiscard]] model::Result<sync::JoinAsk> joinAskOf(const QString& addressOrPicture,
                                                     const QString& code,
                                                     const std::string& bookPath,
                                                     const Surroundings& around);

}  // namespace ledgerboard::phone

Q_DECLARE_METATYPE(ledgerboard::phone::MeetingOutcome)
