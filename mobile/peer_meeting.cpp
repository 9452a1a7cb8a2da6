#include "mobile/peer_meeting.h"

#include <QThread>

#include "mobile/said.h"

namespace ledgerboard::phone {

namespace {

constexpr const char* kPicture = "LEDGERBOARD:";

sync::LinkSurroundings linkSurroundings(const Surroundings& around) {
    return {around.now, around.random,
            [](int ms) { QThread::msleep(static_cast<unsigned long>(ms)); }};
}

}  // namespace

model::Result<sync::JoinAsk> joinAskOf(const QString& addressOrPicture, const QString& code,
                                       const std::string& bookPath, const Surroundings& around) {
    sync::JoinAsk ask{bookPath,
                      {},
                      sync::PairingCode::fresh(around.random),
                      std::nullopt,
                      "phone",
                      false,
                      linkSurroundings(around),
                      {}};
    const QString typed = addressOrPicture.trimmed();
    if (typed.startsWith(QLatin1String(kPicture))) {
        auto said = sync::parseInvitation(typed.toStdString());
        if (!said.ok()) {
            return said.error();
        }
        ask.place = said.value().place;
        ask.code = said.value().code;
        ask.certificate = said.value().certificate;
        return ask;
    }
    auto place = sync::parsePlace(typed.toStdString());
    if (!place.ok()) {
        return place.error();
    }
    auto parsed = sync::PairingCode::parse(code.toStdString());
    if (!parsed.ok()) {
        return parsed.error();
    }
    ask.place = place.value();
    ask.code = parsed.value();
    return ask;
}

MeetingOutcome holdMeeting(const MeetingAsk& ask) {
    MeetingOutcome outcome;
    outcome.bookPath = ask.bookPath;
    const auto fail = [&](const model::Error& error) {
        outcome.trouble = Said::trouble(error);
        return outcome;
    };
    if (ask.join) {
        auto joined = sync::joinBook(*ask.join);
        if (!joined.ok()) {
            return fail(joined.error());
        }
        outcome.joined = true;
    }
    auto peer = sync::knownPeerOf(ask.bookPath);
    if (!peer.ok()) {
        return fail(peer.error());
    }
    if (!peer.value()) {
        return outcome;
    }
    auto book = store::Book::open(ask.bookPath, ask.around.random);
    if (!book.ok()) {
        return fail(book.error());
    }
    sync::MeetAsk meet{&book.value(), store::Photos(ask.bookPath), *peer.value(),
                       linkSurroundings(ask.around)};
    auto report = sync::meetPeer(meet);
    if (!report.ok()) {
        return fail(report.error());
    }
    const sync::MeetReport& said = report.value();
    outcome.met = said.end == sync::MeetEnd::Met;
    outcome.revoked = said.end == sync::MeetEnd::Revoked;
    outcome.at = model::Instant::fromMilliseconds(ask.around.now().milliseconds() +
                                                  said.entries.clockOffsetMs);
    outcome.sent = said.entries.sent;
    outcome.received = said.entries.received;
    outcome.photosSent = said.photos.sent;
    outcome.photosReceived = said.photos.received;
    outcome.trouble = Said::trouble(said.message);
    return outcome;
}

}  // namespace ledgerboard::phone
