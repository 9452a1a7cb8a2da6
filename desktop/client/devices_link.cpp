#include "desktop/client/devices_link.h"

#include <algorithm>

#include <nlohmann/json.hpp>

#include "sync/identity/invitation.h"
#include "sync/link/join_book.h"
#include "sync/wire/bounded_json.h"

namespace ledgerboard::desk {

using model::RawId;
using model::Result;

namespace {

// A book of its own, and what a meeting needs of it.
struct Opened {
    std::unique_ptr<store::Book> book;
    sync::MeetAsk ask;
};

Result<std::unique_ptr<store::Book>> openOf(const PeerAsk& ask) {
    auto book = store::Book::open(ask.bookPath, ask.around.random);
    if (!book.ok()) {
        return book.error();
    }
    return std::make_unique<store::Book>(std::move(book).value());
}

Result<Opened> openedOf(const PeerAsk& ask) {
    auto known = sync::knownPeerOf(ask.bookPath);
    if (!known.ok()) {
        return known.error();
    }
    if (!known.value() || !known.value()->joined) {
        return model::cannotBeMet("this book has met no peer yet");
    }
    auto book = openOf(ask);
    if (!book.ok()) {
        return book.error();
    }
    Opened opened{
        std::move(book).value(),
        {nullptr, store::Photos(ask.bookPath), *known.value(), ask.around, {}, {}, 3, true, {}}};
    opened.ask.book = opened.book.get();
    return opened;
}

// The person of that role, crew and job, where there is one to be meant; else nil.
Result<RawId> personOf(store::Book& book, const Guest& guest) {
    auto people = book.rows<model::Person>();
    if (!people.ok()) {
        return people.error();
    }
    RawId found;
    for (const auto& person : people.value()) {
        const bool same = person.role == guest.role && person.crew.raw() == guest.crew &&
                          person.job.raw() == guest.job;
        const bool meant = guest.role == model::Role::Owner ? person.id == book.me() : true;
        if (same && meant && found.isNil()) {
            found = person.id.raw();
        }
    }
    return found;
}

}  // namespace

Result<DeviceLines> devicesOf(const PeerAsk& ask) {
    auto book = openOf(ask);
    if (!book.ok()) {
        return book.error();
    }
    auto devices = book.value()->rows<model::Device>();
    auto people = book.value()->rows<model::Person>();
    if (!devices.ok() || !people.ok()) {
        return devices.ok() ? people.error() : devices.error();
    }
    DeviceLines out;
    out.own = book.value()->thisDevice().raw();
    auto opened = openedOf(ask);
    if (opened.ok()) {
        auto link = sync::linkTo(opened.value().ask);
        if (link.ok()) {
            const auto answer = link.value().call(sync::Call::Roster, "{}");
            auto roster = answer.ok()
                              ? sync::readRosterAnswer(answer.body)
                              : Result<sync::RosterAnswer>(model::cannotBeMet(answer.message));
            if (roster.ok()) {
                out.lines = std::move(roster.value().lines);
                return out;
            }
            out.whyNotAsked = roster.error().message;
        } else {
            out.whyNotAsked = link.error().message;
        }
    } else {
        out.whyNotAsked = opened.error().message;
    }
    for (const auto& device : devices.value()) {
        out.lines.push_back(sync::rosterLine(device, people.value()));
    }
    return out;
}

Result<WayIn> inviteGuest(const PeerAsk& ask, const Guest& guest) {
    auto opened = openedOf(ask);
    if (!opened.ok()) {
        return opened.error();
    }
    // The peer must know the crew and the job before it lets anybody in for them.
    sync::MeetAsk& meeting = opened.value().ask;
    meeting.withPhotos = false;
    auto met = sync::meetPeer(meeting);
    if (!met.ok()) {
        return met.error();
    }
    if (met.value().end != sync::MeetEnd::Met) {
        return model::cannotBeMet(met.value().message);
    }
    auto person = personOf(*opened.value().book, guest);
    auto link = sync::linkTo(meeting);
    if (!person.ok() || !link.ok()) {
        return person.ok() ? link.error() : person.error();
    }
    nlohmann::json body{{"role", std::string(model::wordOf(guest.role))}, {"name", guest.name}};
    for (const auto& [name, id] : {std::pair("crew", guest.crew), std::pair("job", guest.job),
                                   std::pair("person", person.value())}) {
        if (!id.isNil()) {
            body[name] = id.hex();
        }
    }
    const auto answer = link.value().call(sync::Call::Invite, body.dump());
    if (!answer.ok()) {
        const auto said = sync::readRefused(answer.body);
        return model::cannotBeMet(said.ok() ? said.value().message : answer.message);
    }
    const auto said = sync::readJson(answer.body);
    auto code = sync::PairingCode::parse(said ? sync::textAt(*said, "code").value_or("") : "");
    if (!code.ok() || !said->contains("until") || !(*said)["until"].is_number_integer()) {
        return model::cannotBeMet("the peer's answer does not read: use programs of one version");
    }
    auto place = sync::parsePlace(sync::textAt(*said, "address").value_or(""));
    const sync::Place there = place.ok() ? place.value() : meeting.peer.place;
    return WayIn{sync::toText(there), code.value().toText(),
                 sync::pictureText({code.value(), meeting.peer.certificate, there}),
                 model::Instant::fromMilliseconds((*said)["until"].get<std::int64_t>())};
}

Result<bool> shutOut(const PeerAsk& ask, const RawId& device, model::Date today) {
    auto opened = openedOf(ask);
    if (!opened.ok()) {
        return opened.error();
    }
    store::Book& book = *opened.value().book;
    if (device == book.thisDevice().raw()) {
        return model::cannotBeMet(
            "that is this very device: shut it out from another owner's, so that one is left");
    }
    // It may have joined since this book last heard of it.
    opened.value().ask.withPhotos = false;
    if (auto before = sync::meetPeer(opened.value().ask); !before.ok()) {
        return before.error();
    }
    store::Action action("revoke a device");
    action.set(device, model::field::Device::revokedOn, model::valueOf(today));
    if (auto done = book.commit(action, ask.around.now()); !done.ok()) {
        return done.error();
    }
    auto met = sync::meetPeer(opened.value().ask);
    return met.ok() ? Result<bool>(met.value().end == sync::MeetEnd::Met)
                    : Result<bool>(met.error());
}

Result<sync::MeetReport> meetNow(const PeerAsk& ask) {
    auto opened = openedOf(ask);
    return opened.ok() ? sync::meetPeer(opened.value().ask)
                       : Result<sync::MeetReport>(opened.error());
}

Result<void> joinPeer(const PeerAsk& ask, const std::string& address, const std::string& code) {
    auto place = sync::parsePlace(address);
    auto parsed = sync::PairingCode::parse(code);
    if (!place.ok() || !parsed.ok()) {
        return place.ok() ? parsed.error() : place.error();
    }
    auto joined = sync::joinBook(
        {ask.bookPath, place.value(), parsed.value(), std::nullopt, "", false, ask.around, {}});
    return joined.ok() ? Result<void>() : Result<void>(joined.error());
}

}  // namespace ledgerboard::desk
