// join, sync: this device meets its peer.
#include <filesystem>

#include <nlohmann/json.hpp>

#include "core/store/sync_book.h"
#include "sync/link/join_book.h"
#include "sync/link/wipe.h"

#include "desktop/cli/meeting.h"
#include "desktop/cli/sync_text.h"
#include "desktop/cli/verbs.h"

namespace ledgerboard::cli {

namespace {

// A line that is written over as the meeting goes on; on a terminal alone.
std::function<void(const sync::MeetProgress&)> progressOn(Session& session) {
    if (!session.surroundings().isTerminal || session.json()) {
        return {};
    }
    return [&err = session.surroundings().err](const sync::MeetProgress& progress) {
        err << "\r\x1b[K";
        switch (progress.at) {
            case sync::MeetProgress::At::Calling:
                err << "Calling the peer ...";
                break;
            case sync::MeetProgress::At::Entries:
                err << "Changes ...";
                break;
            case sync::MeetProgress::At::Photos:
                err << "Photos: " << progress.done << " of " << progress.all;
                break;
        }
        err << std::flush;
    };
}

void clearProgress(Session& session) {
    if (session.surroundings().isTerminal && !session.json()) {
        session.surroundings().err << "\r\x1b[K" << std::flush;
    }
}

// The copy goes, and the person is told where it went.
Done wipe(Session& session) {
    const std::string path = session.bookPath();
    session.closeBook();
    if (auto wiped = sync::wipeCopy(path); !wiped.ok()) {
        return wiped;
    }
    return model::cannotBeMet("an owner shut this device out. Its copy, " + path +
                              " and its photos, is gone; what the peer had already is not lost. To "
                              "come back, ask an owner for an invitation");
}

Done tell(Session& session, const sync::MeetReport& report, const sync::Place& place) {
    if (session.json()) {
        session.printJson(meetingJson(report, place));
    }
    if (report.end == sync::MeetEnd::Revoked) {
        return wipe(session);
    }
    if (report.end != sync::MeetEnd::Met) {
        return model::cannotBeMet(noMeetingText(report));
    }
    if (!session.json()) {
        auto book = session.book();
        auto clashes = book.ok() ? store::SyncBook(*book.value()).clashes()
                                 : model::Result<std::vector<store::Clash>>(book.error());
        session.print(
            meetingText(report, place, clashes.ok() ? clashes.value().size() : std::size_t{0}));
    }
    return {};
}

Done meetAndTell(Session& session, bool withPhotos) {
    auto ask = meetAskOf(session);
    if (!ask.ok()) {
        return ask.error();
    }
    ask.value().withPhotos = withPhotos;
    ask.value().progress = progressOn(session);
    auto report = sync::meetPeer(ask.value());
    clearProgress(session);
    session.forgetRows();
    if (!report.ok()) {
        return report.error();
    }
    return tell(session, report.value(), ask.value().peer.place);
}

// What was typed: an address and a code, or all that a picture says.
model::Result<sync::JoinAsk> joinAskOf(Session& session, const JoinOptions& options) {
    constexpr std::string_view kPicture = "LEDGERBOARD:";
    const bool picture = options.code.empty() && options.address.rfind(kPicture, 0) == 0;
    if (picture) {
        auto said = sync::parseInvitation(options.address);
        if (!said.ok()) {
            return said.error();
        }
        return sync::JoinAsk{session.bookPath(),
                             said.value().place,
                             said.value().code,
                             said.value().certificate,
                             options.called,
                             options.again,
                             linkSurroundings(session),
                             {}};
    }
    if (options.code.empty()) {
        return model::wrongUse(
            "CODE: the invitation has an address and a code, and join takes both");
    }
    auto place = sync::parsePlace(options.address);
    auto code = sync::PairingCode::parse(options.code);
    if (!place.ok() || !code.ok()) {
        return place.ok() ? code.error() : place.error();
    }
    return sync::JoinAsk{session.bookPath(),
                         place.value(),
                         code.value(),
                         std::nullopt,
                         options.called,
                         options.again,
                         linkSurroundings(session),
                         {}};
}

std::string roleText(model::Role role) {
    switch (role) {
        case model::Role::Owner:
            return "an owner's device";
        case model::Role::CrewLead:
            return "a crew lead's device";
        case model::Role::Viewer:
            return "a viewer's device";
        case model::Role::Unset:
            break;
    }
    return "a device";
}

}  // namespace

sync::LinkSurroundings linkSurroundings(Session& session) {
    const Surroundings& around = session.surroundings();
    return {around.now, around.random, around.wait ? around.wait : [](int) {}};
}

model::Result<sync::KnownPeer> peerOf(Session& session) {
    auto known = sync::knownPeerOf(session.bookPath());
    if (!known.ok()) {
        return known.error();
    }
    if (!known.value() || !known.value()->joined) {
        return model::cannotBeMet(
            session.bookPath() +
            " meets no peer yet: start one with 'ledgerboard-peer --book FILE', which prints an "
            "invitation, and take it with 'ledgerboard join ADDRESS CODE'");
    }
    return *known.value();
}

model::Result<sync::MeetAsk> meetAskOf(Session& session) {
    auto peer = peerOf(session);
    if (!peer.ok()) {
        return peer.error();
    }
    auto book = session.book();
    if (!book.ok()) {
        return book.error();
    }
    return sync::MeetAsk{book.value(),
                         store::Photos(book.value()->path()),
                         peer.value(),
                         linkSurroundings(session),
                         {},
                         {},
                         3,
                         true,
                         {}};
}

Done verbSync(Session& session, const SyncOptions& options) {
    if (auto good = session.refusePast("sync", false); !good.ok()) {
        return good;
    }
    if (!options.address.empty()) {
        auto peer = peerOf(session);
        auto place = sync::parsePlace(options.address);
        if (!peer.ok() || !place.ok()) {
            return peer.ok() ? model::wrongUse("--address: " + place.error().message)
                             : peer.error();
        }
        // Whoever answers there must hold the same certificate, so a slip does no harm.
        peer.value().place = place.value();
        if (auto kept = sync::keepKnownPeer(session.bookPath(), peer.value()); !kept.ok()) {
            return kept;
        }
    }
    return meetAndTell(session, !options.noPhotos);
}

Done verbJoin(Session& session, const JoinOptions& options) {
    if (auto good = session.refusePast("join", false); !good.ok()) {
        return good;
    }
    auto ask = joinAskOf(session, options);
    if (!ask.ok()) {
        return ask.error();
    }
    auto joined = sync::joinBook(ask.value());
    if (!joined.ok()) {
        return joined.error();
    }
    session.closeBook();
    if (!session.json()) {
        session.print("Joined the peer at " + sync::toText(ask.value().place) + " as " +
                      roleText(joined.value().grant.role) + ".\n" +
                      (joined.value().madeBook ? "Its book is " + session.bookPath() + ".\n" : ""));
    }
    return meetAndTell(session, true);
}

}  // namespace ledgerboard::cli
