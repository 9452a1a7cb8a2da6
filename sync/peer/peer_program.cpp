#include "sync/peer/peer_program.h"

#include <CLI/CLI.hpp>
#include <filesystem>
#include <optional>

#include "core/store/without_passwords.h"
#include "sync/identity/certificate.h"
#include "sync/identity/invitation.h"
#include "sync/identity/qr_picture.h"
#include "sync/peer/book_handler.h"
#include "sync/peer/stores.h"

namespace ledgerboard::sync {

namespace {

constexpr int kDone = 0;
constexpr int kCannotBeMet = 1;
constexpr int kWrongUse = 2;
constexpr int kDamaged = 3;
constexpr std::uint16_t kPort = 7440;

constexpr const char* kAbout =
    "The peer: devices meet through it, and it keeps a whole copy of the book.\n"
    "At its first start it makes its certificate and invites the first owner.";

constexpr const char* kExample =
    "Example:\n"
    "  ledgerboard-peer --book /srv/ledgerboard/house.book --address 0.0.0.0 --reach 192.0.2.7\n"
    "Beside the book it keeps, for its own eyes only, house.book.tls (its certificate and key) "
    "and\n"
    "house.book.devices (who joined). Back both up with the book: without the first every device\n"
    "joins anew. SIGTERM stops it cleanly.\n"
    "Several peers of one book, behind a balancer that passes TLS through, share a PostgreSQL\n"
    "database and a folder with the key and the photos:\n"
    "  ledgerboard-peer --store postgresql://peer@192.0.2.9/house --book /mnt/house/house \\\n"
    "      --address 0.0.0.0 --reach 192.0.2.7";

struct Options {
    StorePlace place;
    std::string key;
    std::string photos;
    std::string address = "127.0.0.1";
    std::uint16_t port = kPort;
    std::string reach;
    bool inviteOwner = false;
    bool restored = false;
    ConnectionLimits connections;
};

void addOptions(CLI::App& app, Options& options) {
    app.add_option("--book", options.place.book,
                   "The book's file; with --store, the name that key and photos stand beside")
        ->required();
    auto* store = app.add_option(
        "--store", options.place.address,
        "postgresql://USER@HOST/DATABASE that keeps the book, for several peers; the password in "
        "the file that PGPASSFILE names");
    app.add_option("--bring", options.place.bring,
                   "A peer's book file that is brought into the empty database first")
        ->needs(store);
    app.add_option("--key", options.key, "File of its certificate and key; BOOK.tls where not said")
        ->needs(store);
    app.add_option("--photos", options.photos, "Folder of its photos; BOOK.photos where not said");
    app.add_option("--address", options.address,
                   "Address of this computer to listen on; 0.0.0.0 or :: for all of them")
        ->capture_default_str();
    app.add_option("--port", options.port, "Port; 0 takes a free one")->capture_default_str();
    app.add_option("--reach", options.reach,
                   "Name or address under which devices reach it, for the invitation");
    app.add_flag("--restored", options.restored,
                 "The book was restored from a backup: devices send again what it lacks");
    app.add_flag("--invite-owner", options.inviteOwner,
                 "Invite an owner even where devices joined before, as when all were lost");
    app.add_option("--connections", options.connections.all, "Most connections in all")
        ->check(CLI::Range(1, 10'000))
        ->capture_default_str();
    app.add_option("--connections-per-address", options.connections.perAddress,
                   "Most from one address before their devices are known")
        ->check(CLI::Range(1, 10'000))
        ->capture_default_str();
    app.add_option("--connections-per-device", options.connections.perDevice, "Most of one device")
        ->check(CLI::Range(1, 1'000))
        ->capture_default_str();
    app.footer(kExample);
}

int statusOf(const model::Error& error) {
    switch (error.code) {
        case model::ErrorCode::CannotBeMet:
            return kCannotBeMet;
        case model::ErrorCode::WrongUse:
            return kWrongUse;
        case model::ErrorCode::Damaged:
            return kDamaged;
    }
    return kCannotBeMet;
}

int fail(PeerSurroundings& around, const model::Error& error) {
    around.log << "ledgerboard-peer: " << error.message << "\n";
    return statusOf(error);
}

// Where devices are told to find the peer.
std::string reachOf(const Options& options, const PeerSurroundings& around) {
    if (!options.reach.empty()) {
        return options.reach;
    }
    const bool all = options.address == "0.0.0.0" || options.address == "::";
    return all && !around.ownAddress.empty() ? around.ownAddress : options.address;
}

model::Result<void> inviteOwner(InvitationList& invitations, const Certificate& certificate,
                                const Place& place, PeerSurroundings& around) {
    auto code = invitations.invite({model::Role::Owner, {}, {}}, around.now());
    if (!code.ok()) {
        return code.error();
    }
    const Invitation invitation{code.value(), certificate.digest, place};
    auto modules = qrModules(pictureText(invitation));
    around.out << "An owner's device can join within ten minutes, by this picture\n\n";
    if (modules.ok()) {
        around.out << qrPicture(modules.value(), around.outIsTerminal) << "\n";
    }
    around.out << "or by these two, typed\n\n  address  " << toText(place) << "\n  code     "
               << code.value().toText() << "\n\n"
               << "Show it to nobody else. Start the peer again for a new one.\n"
               << std::flush;
    return {};
}

// Photos elsewhere than beside the book: what stands beside it is then a link, which every program
// follows. Errors: there are photos beside it already, or no link can be made.
model::Result<void> photosAt(const Options& options) {
    namespace fs = std::filesystem;
    const fs::path beside = options.place.book + ".photos";
    std::error_code problem;
    if (options.photos.empty() || fs::equivalent(options.photos, beside, problem)) {
        return {};
    }
    if (fs::exists(fs::symlink_status(beside, problem))) {
        return model::cannotBeMet("--photos: " + beside.string() +
                                  " is there already: move what is in it to " + options.photos +
                                  " and remove it, then start again");
    }
    fs::create_directories(options.photos, problem);
    fs::create_directory_symlink(fs::absolute(options.photos), beside, problem);
    return problem ? model::Result<void>(model::cannotBeMet("--photos: " + options.photos + ": " +
                                                            problem.message()))
                   : model::Result<void>();
}

void logPlain(EventLog& log, const char* what, const std::string& address, model::Instant at) {
    Event event;
    event.what = what;
    event.address = address;
    log.write(event, at);
}

// Whether an owner is to be invited: nobody joined yet, or it was asked for.
model::Result<bool> wantsOwner(const Options& options, const Stores& stores) {
    auto count = stores.devices->count();
    return count.ok() ? model::Result<bool>(count.value() == 0 || options.inviteOwner)
                      : model::Result<bool>(count.error());
}

// Before it serves: what the book says is heeded, and begun anew where it was restored.
model::Result<void> prepare(const Options& options, BookHandler& handler, model::Instant now) {
    if (options.restored) {
        if (auto begun = handler.beginEpoch(now); !begun.ok()) {
            return begun;
        }
    }
    return handler.heedRevocations(now);
}

int serve(const Options& options, PeerSurroundings& around) {
    const std::string key = options.key.empty() ? options.place.book + ".tls" : options.key;
    auto certificate = certificateKeptAt(key, around.now(), around.random);
    if (!certificate.ok()) {
        return fail(around, certificate.error());
    }
    const OpenStores open = options.place.address.empty() ? openFiles : around.openShared;
    auto opened = open(options.place, certificate.value().digest, around.now(), around.random);
    if (!opened.ok()) {
        return fail(around, opened.error());
    }
    Stores stores = std::move(opened).value();
    EventLog log(around.log);
    auto handler =
        BookHandler::make({*stores.book, *stores.devices, *stores.invitations, around.random});
    if (!handler.ok()) {
        return fail(around, handler.error());
    }
    if (auto ready = prepare(options, *handler.value(), around.now()); !ready.ok()) {
        return fail(around, ready.error());
    }
    PeerParts parts{certificate.value(), *stores.devices,
                    *stores.invitations, *stores.nonces,
                    *handler.value(),    log,
                    around.now,          {}};
    parts.limits.connections = options.connections;
    auto server = PeerServer::make(parts);
    if (!server.ok()) {
        return fail(around, server.error());
    }
    const auto port = server.value()->open(options.address, options.port);
    if (!port.ok()) {
        return fail(around, port.error());
    }
    const Place place{reachOf(options, around), port.value()};
    handler.value()->reachedAt(place);
    const std::string listening = toText(Place{options.address, port.value()});
    logPlain(log, "started", listening, around.now());
    auto wants = wantsOwner(options, stores);
    auto invited = wants.ok() && wants.value()
                       ? inviteOwner(*stores.invitations, certificate.value(), place, around)
                       : model::Result<void>();
    if (!wants.ok() || !invited.ok()) {
        return fail(around, wants.ok() ? invited.error() : wants.error());
    }
    PeerServer& running = *server.value();
    around.serving([&running] { running.stop(); });
    running.run();
    around.serving({});
    logPlain(log, "stopped", listening, around.now());
    return kDone;
}

}  // namespace

int runPeer(const std::vector<std::string>& arguments, PeerSurroundings& around) {
    Options options;
    CLI::App app(kAbout, "ledgerboard-peer");
    addOptions(app, options);
    try {
        std::vector<std::string> reversed(arguments.rbegin(), arguments.rend());
        app.parse(reversed);
    } catch (const CLI::CallForHelp&) {
        around.out << app.help();
        return kDone;
    } catch (const CLI::ParseError& error) {
        around.log << "ledgerboard-peer: " << store::withoutPasswords(error.what())
                   << "\n'ledgerboard-peer --help' shows how it is written.\n";
        return kWrongUse;
    }
    if (!options.place.address.empty() && !around.openShared) {
        return fail(around, model::cannotBeMet("--store: " + around.becomeShared()));
    }
    if (auto photos = photosAt(options); !photos.ok()) {
        return fail(around, photos.error());
    }
    return serve(options, around);
}

}  // namespace ledgerboard::sync
