#include "tests/fuzz/targets.h"

#include "core/intake/files/after_column.h"
#include "core/intake/files/csv.h"
#include "core/intake/notes/read_notes.h"
#include "core/intake/photos/exif.h"
#include "core/intake/photos/picture.h"
#include "core/intake/photos/preview.h"
#include "core/model/check.h"
#include "sync/exchange/peer_side.h"
#include "sync/guard/request_head.h"
#include "sync/identity/invitation.h"
#include "sync/identity/pairing.h"
#include "sync/wire/bounded_json.h"
#include "sync/wire/messages.h"
#include "sync/wire/photo_messages.h"

#include "tests/support/heif_pictures.h"
#include "tests/support/pictures.h"
#include "tests/support/star.h"

namespace ledgerboard::fuzz {

namespace {

using model::require;

void head(std::string_view bytes) {
    static constexpr std::array<sync::Route, 2> kRoutes = {
        {{"GET", "/1/time", 0}, {"POST", "/1/push", 1000}}};
    static constexpr std::array<std::string_view, 1> kKept = {"Ledgerboard-Nonce"};
    const sync::HeadRules rules{kRoutes, kKept};
    const auto verdict = sync::readHead(bytes, rules);
    if (verdict.status == 0) {
        const auto again = sync::readHead(sync::writeHead(verdict.head), rules);
        require(again.status == 0, "a head that was let through is let through again");
    }
}

// What was read, written, and read again is the same.
template <class Message, class Read>
void twice(std::string_view bytes, Read read) {
    const model::Result<Message> first = read(bytes);
    if (first.ok()) {
        const std::string said = sync::write(first.value());
        const auto second = read(said);
        require(second.ok() && sync::write(second.value()) == said,
                "a message means the same when it is written again");
    }
}

void messages(std::string_view bytes) {
    twice<sync::HelloAsk>(bytes, sync::readHelloAsk);
    twice<sync::HelloAnswer>(bytes, sync::readHelloAnswer);
    twice<sync::PushAsk>(bytes, sync::readPushAsk);
    twice<sync::PushAnswer>(bytes, sync::readPushAnswer);
    twice<sync::PullAsk>(bytes, sync::readPullAsk);
    twice<sync::PullAnswer>(bytes, sync::readPullAnswer);
    twice<sync::RosterAnswer>(bytes, sync::readRosterAnswer);
    twice<sync::Refused>(bytes, sync::readRefused);
}

void photoMessages(std::string_view bytes) {
    static_cast<void>(sync::readPhotosAsk(bytes));
    static_cast<void>(sync::readPhotoPart(bytes));
    static_cast<void>(sync::readGetPhotoAsk(bytes));
}

void invitation(std::string_view bytes) {
    if (const auto read = sync::parseInvitation(bytes); read.ok()) {
        require(sync::parseInvitation(sync::pictureText(read.value())).ok(), "read again");
    }
    if (const auto code = sync::PairingCode::parse(bytes); code.ok()) {
        require(sync::PairingCode::parse(code.value().toText()).value() == code.value(),
                "the same");
    }
    static_cast<void>(sync::parsePlace(bytes));
    static_cast<void>(sync::readJson(bytes));
}

// Whole calls of a device of each role, with these bytes as body and as cursor.
void calls(std::string_view bytes) {
    static tests::Star star("fuzz");
    static const tests::Phone owner = star.join(model::Role::Owner);
    static const model::RawId crew = star.peerBook->newId(star.now());
    static const tests::Phone lead = [] {
        store::Action action("crew");
        action.set(crew, model::field::Crew::name, std::string("Tilers"));
        require(star.peerBook->commit(action, star.now()).ok(), "a crew");
        return star.join(model::Role::CrewLead, crew);
    }();
    for (const auto* phone : {&owner, &lead}) {
        for (const auto call : {sync::Call::Hello, sync::Call::Push, sync::Call::Pull,
                                sync::Call::PhotoHave, sync::Call::PhotoPart, sync::Call::Roster}) {
            const auto reply = star.peer->answer(call, phone->key, bytes, star.now());
            require(reply.status != sync::Status::Failed, "no body makes the peer fail");
        }
        if (bytes.size() <= sync::kMostCursorBytes) {
            const auto pull = sync::write(sync::PullAsk{std::string(bytes)});
            const auto reply = star.peer->answer(sync::Call::Pull, phone->key, pull, star.now());
            require(reply.status != sync::Status::Failed, "no cursor makes the peer fail");
        }
    }
}

void csv(std::string_view bytes) {
    static_cast<void>(intake::readCsv(bytes, "rows.csv"));
    if (const auto after = intake::parseAfter(bytes); after.ok()) {
        for (const auto& entry : after.value()) {
            require(intake::parseAfter(intake::printAfter(entry)).ok(), "read again");
        }
    }
}

void notes(std::string_view bytes) {
    static_cast<void>(intake::readNotes(bytes));
}

void pictures(std::string_view bytes) {
    static_cast<void>(intake::cameraNoteOf(bytes));
    static_cast<void>(intake::pictureSize(bytes));
    static_cast<void>(intake::previewOf(bytes));
}

std::vector<std::string> sentMessages() {
    store::Entry entry;
    entry.name = {model::RawId({1, 2, 3}), store::Lane::Shared, 7};
    entry.clock = model::HybridClock::fromRaw(116'000'000'000'000'000);
    entry.record = model::RawId({9, 9});
    entry.field = model::field::Space::name;
    entry.value = std::string("Bath \"up\" \xc3\xa9");
    entry.replaces = {{model::RawId({4}), store::Lane::Shared, 1}};
    sync::PullAnswer pull;
    pull.cursor = "l." + model::RawId({5}).hex() + ".12.3";
    pull.entries = {entry};
    pull.drops = {{entry.record, entry.field}};
    pull.asides = {{1, entry, model::Instant::fromMilliseconds(5), "not yours"}};
    sync::HelloAnswer hello;
    hello.role = "owner";
    hello.others = {{model::RawId({6}), {1, 2}}};
    return {sync::write(sync::PushAsk{{entry, entry}}),
            sync::write(pull),
            sync::write(hello),
            sync::write(sync::HelloAsk{}),
            sync::write(sync::PullAsk{pull.cursor}),
            sync::write(sync::PushAnswer{{3, 4}, {{store::Lane::Shared, 4, "why"}}}),
            sync::write(sync::Refused{"no", model::Instant::fromMilliseconds(5)}),
            pull.cursor,
            "v." + model::RawId({5}).hex() + ".12"};
}

}  // namespace

std::vector<Target> targets() {
    const std::string post =
        "POST /1/push HTTP/1.1\r\nHost: x\r\nContent-Length: 17\r\nLedgerboard-Nonce: 0aF9\r\n\r\n";
    const std::string digest(64, 'a');
    const std::string part =
        sync::write(sync::PhotoPart{digest, 40, 10, std::string("bytes of a photo\n\0", 18)});
    const std::string code = sync::PairingCode::fresh(tests::fixedChance(5)).toText();
    const sync::Invitation invited{
        sync::PairingCode::fresh(tests::fixedChance(5)), {}, {"192.168.1.20", 7443}};
    const std::string picture =
        tests::withCameraTime(tests::paintedJpeg(16, 16), "2026:05:08 14:05:00", "-05:00", true);
    return {
        {"head", head, {post, "GET /1/time HTTP/1.1\r\nHost: x\r\n\r\n"}, 4},
        {"messages", messages, sentMessages(), 2},
        {"photo messages", photoMessages, {part, R"({"digests":[")" + digest + R"("]})"}, 4},
        {"invitation", invitation, {code, sync::pictureText(invited), "peer.local:7443"}, 4},
        {"calls", calls, sentMessages(), 1},
        {"csv",
         csv,
         {"Space;Object;Amount\nBath;\"tile, small\";1,200.50\n", "a,b\r\n\"x\"\"y\",\r\n",
          "Kitchen/cabinets SS+2, FF"},
         4},
        {"notes",
         notes,
         {"Kitchen. Replace the cabinets, 14 ft of counter, about 6,400.\nBath: keep the tub.",
          "hall bath 5x8 retile, check the subfloor? either vinyl or tile"},
         1},
        {"pictures",
         pictures,
         {picture, tests::withOrientation(tests::paintedJpeg(9, 7), 6),
          tests::paintedHeif(64, 48, "2026:05:08 14:05:00")},
         1},
    };
}

}  // namespace ledgerboard::fuzz
