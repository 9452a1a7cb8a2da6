// invite, devices, revoke: who else has a device.
#include <algorithm>

#include <nlohmann/json.hpp>

#include "sync/identity/invitation.h"
#include "sync/identity/qr_picture.h"
#include "sync/wire/bounded_json.h"

#include "desktop/cli/meeting.h"
#include "desktop/cli/verbs.h"

namespace ledgerboard::cli {

namespace {

using model::Kind;
using model::RawId;
using model::Result;
using nlohmann::json;

// Who is invited, and as what.
struct Guest {
    model::Role role = model::Role::Unset;
    RawId crew, job, person;
    std::string name;  // of a new person, or of that one
    std::string of;    // the crew or the job by name
};

Result<model::Role> roleOf(const std::string& word) {
    const std::string folded = model::folded(word);
    for (const auto role : {model::Role::Owner, model::Role::CrewLead, model::Role::Viewer}) {
        if (folded == model::folded(model::wordOf(role))) {
            return role;
        }
    }
    return model::wrongUse("ROLE: \"" + word + "\" is none of owner, crew-lead, viewer");
}

// The person of that role, crew and job who is meant: by name, else the only one there is.
Result<void> findPerson(Session& session, Guest& guest, const std::string& named) {
    auto book = session.book();
    auto people = book.ok() ? book.value()->rows<model::Person>()
                            : Result<std::vector<model::Person>>(book.error());
    if (!people.ok()) {
        return people.error();
    }
    std::vector<model::Person> fit;
    for (const auto& person : people.value()) {
        const bool same = person.role == guest.role && person.crew.raw() == guest.crew &&
                          person.job.raw() == guest.job;
        const bool meant =
            guest.role == model::Role::Owner && named.empty()
                ? person.id == book.value()->me()
                : named.empty() || model::folded(person.name) == model::folded(named);
        if (same && meant) {
            fit.push_back(person);
        }
    }
    if (fit.size() > 1) {
        std::string names;
        for (const auto& person : fit) {
            names += "\n  --name \"" + person.name + "\"";
        }
        return model::cannotBeMet("several people are that already; say which, or a new name:" +
                                  names);
    }
    if (fit.size() == 1) {
        guest.person = fit.front().id.raw();
        guest.name = fit.front().name;
    }
    return {};
}

// Whether role and WHOM go together, before anything is looked up.
Result<model::Role> checkedRole(const InviteOptions& options) {
    auto role = roleOf(options.role);
    if (!role.ok()) {
        return role;
    }
    if (role.value() == model::Role::Owner && !options.whom.empty()) {
        return model::wrongUse(
            "an owner sees everything, so WHOM is left out; whose device it is goes behind --name");
    }
    if (role.value() != model::Role::Owner && options.whom.empty()) {
        return model::wrongUse(role.value() == model::Role::CrewLead
                                   ? "WHOM: say which crew, as in 'ledgerboard invite crew-lead "
                                     "\"Tile crew\"'"
                                   : "WHOM: say which job, as in 'ledgerboard invite viewer \"14 "
                                     "Quince Row\"'");
    }
    return role;
}

Result<Guest> guestOf(Session& session, model::Role role, const InviteOptions& options) {
    Guest guest;
    guest.role = role;
    guest.name = options.name;
    if (role != model::Role::Owner) {
        auto finder = session.finder();
        if (!finder.ok()) {
            return finder.error();
        }
        const bool lead = role == model::Role::CrewLead;
        auto found = finder.value()->find(lead ? Kind::Crew : Kind::Job, options.whom);
        if (!found.ok()) {
            return found.error();
        }
        (lead ? guest.crew : guest.job) = found.value();
        guest.of = finder.value()->nameOf(found.value());
    }
    if (auto person = findPerson(session, guest, options.name); !person.ok()) {
        return person.error();
    }
    if (guest.name.empty()) {
        guest.name = (role == model::Role::CrewLead ? "Lead of " : "Viewer of ") + guest.of;
    }
    return guest;
}

std::string asWhat(const Guest& guest) {
    switch (guest.role) {
        case model::Role::CrewLead:
            return "as the lead of " + guest.of;
        case model::Role::Viewer:
            return "as a viewer of " + guest.of;
        default:
            return "as an owner";
    }
}

// What the peer answers to an invitation asked for.
struct Invited {
    sync::PairingCode code;
    sync::Place place;
    model::Instant until;
};

Result<Invited> readInvited(const std::string& body, const sync::Place& known) {
    const auto said = sync::readJson(body);
    auto code = sync::PairingCode::parse(said ? sync::textAt(*said, "code").value_or("") : "");
    if (!code.ok() || !said->contains("until") || !(*said)["until"].is_number_integer()) {
        return model::cannotBeMet("the peer's answer does not read: use programs of one version");
    }
    auto place = sync::parsePlace(sync::textAt(*said, "address").value_or(""));
    return Invited{code.value(), place.ok() ? place.value() : known,
                   model::Instant::fromMilliseconds((*said)["until"].get<std::int64_t>())};
}

void printInvitation(Session& session, const Guest& guest, const Invited& invited,
                     const std::string& picture) {
    const std::string address = sync::toText(invited.place);
    std::string text = guest.name + "'s device can join " + asWhat(guest) +
                       " within ten minutes, by this picture\n\n";
    auto modules = sync::qrModules(picture);
    const bool drawn = modules.ok() && session.script() == report::Script::Unicode;
    text = drawn ? text + sync::qrPicture(modules.value(), session.surroundings().isTerminal) +
                       "\nor by these two, typed\n\n"
                 : guest.name + "'s device can join " + asWhat(guest) +
                       " within ten minutes, by these two\n\n";
    text += "  address  " + address + "\n  code     " + invited.code.toText() +
            "\n\nOn a computer that is\n  ledgerboard --book NEW.book join " + address + " " +
            invited.code.toText() + "\n\nShow it to nobody else.\n";
    session.print(text);
}

// The peer's list of devices, or what the book says of them where it is not reached.
struct Listed {
    std::vector<sync::RosterAnswer::Line> lines;
    std::string withoutPeer;  // why the peer was not asked
};

Result<Listed> linesOfBook(Session& session, std::string why) {
    auto book = session.book();
    if (!book.ok()) {
        return book.error();
    }
    auto devices = book.value()->rows<model::Device>();
    auto people = book.value()->rows<model::Person>();
    if (!devices.ok() || !people.ok()) {
        return devices.ok() ? people.error() : devices.error();
    }
    Listed listed;
    listed.withoutPeer = std::move(why);
    for (const auto& device : devices.value()) {
        listed.lines.push_back(sync::rosterLine(device, people.value()));
    }
    return listed;
}

Result<Listed> listDevices(Session& session) {
    auto ask = meetAskOf(session);
    if (!ask.ok()) {
        return linesOfBook(session, ask.error().message);
    }
    auto link = sync::linkTo(ask.value());
    if (!link.ok()) {
        return linesOfBook(session, link.error().message);
    }
    const auto answer = link.value().call(sync::Call::Roster, "{}");
    if (!answer.ok()) {
        return linesOfBook(session, answer.message);
    }
    auto roster = sync::readRosterAnswer(answer.body);
    if (!roster.ok()) {
        return linesOfBook(session, "the peer's answer does not read: use programs of one version");
    }
    return Listed{std::move(roster.value().lines), ""};
}

std::string heardText(const sync::RosterAnswer::Line& line) {
    const std::string text = line.heard.toString();
    return line.heard.milliseconds() == 0 ? "never" : text.substr(0, 10) + " " + text.substr(11, 5);
}

}  // namespace

Done verbInvite(Session& session, const InviteOptions& options) {
    if (auto good = session.refusePast("invite", false); !good.ok()) {
        return good;
    }
    auto role = checkedRole(options);
    if (!role.ok()) {
        return role.error();
    }
    auto ask = meetAskOf(session);
    if (!ask.ok()) {
        return ask.error();
    }
    // The peer must know the crew and the job before it lets anybody in for them, and this book the
    // people who joined.
    ask.value().withPhotos = false;
    auto met = sync::meetPeer(ask.value());
    if (!met.ok()) {
        return met.error();
    }
    if (met.value().end != sync::MeetEnd::Met) {
        return model::cannotBeMet(met.value().message +
                                  "\nThe peer opens invitations, so it must be in reach.");
    }
    auto guest = guestOf(session, role.value(), options);
    if (!guest.ok()) {
        return guest.error();
    }
    auto link = sync::linkTo(ask.value());
    if (!link.ok()) {
        return link.error();
    }
    const Guest& who = guest.value();
    json body{{"role", std::string(model::wordOf(who.role))}, {"name", who.name}};
    for (const auto& [name, id] : {std::pair("crew", who.crew), std::pair("job", who.job),
                                   std::pair("person", who.person)}) {
        if (!id.isNil()) {
            body[name] = id.hex();
        }
    }
    const auto answer = link.value().call(sync::Call::Invite, body.dump());
    if (!answer.ok()) {
        const auto said = sync::readRefused(answer.body);
        return model::cannotBeMet(said.ok() ? "the peer says: " + said.value().message
                                            : answer.message);
    }
    auto invited = readInvited(answer.body, ask.value().peer.place);
    if (!invited.ok()) {
        return invited.error();
    }
    const std::string picture = sync::pictureText(
        {invited.value().code, ask.value().peer.certificate, invited.value().place});
    if (session.json()) {
        session.printJson({{"role", std::string(model::wordOf(who.role))},
                           {"person", who.name},
                           {"address", sync::toText(invited.value().place)},
                           {"code", invited.value().code.toText()},
                           {"picture", picture},
                           {"until", invited.value().until.toString()}});
    } else {
        printInvitation(session, who, invited.value(), picture);
    }
    return {};
}

Done verbDevices(Session& session) {
    if (auto good = session.refusePast("devices", false); !good.ok()) {
        return good;
    }
    auto listed = listDevices(session);
    auto book = session.book();
    if (!listed.ok() || !book.ok()) {
        return listed.ok() ? book.error() : listed.error();
    }
    const RawId own = book.value()->thisDevice().raw();
    const bool asked = listed.value().withoutPeer.empty();
    report::Table table{{{"Device"}, {"Person"}, {"Role"}, {"Last heard (UTC)"}, {"Id"}}, {}};
    json all = json::array();
    for (const auto& line : listed.value().lines) {
        const std::string mark = line.device == own ? " (this one)" : "";
        table.rows.push_back({line.name + mark, line.person, line.revoked ? "shut out" : line.role,
                              asked ? heardText(line) : "", line.device.hex().substr(24)});
        json one{{"device", line.device.toString()},
                 {"name", line.name},
                 {"person", line.person},
                 {"role", line.role},
                 {"revoked", line.revoked},
                 {"this", line.device == own},
                 {"heard", nullptr}};
        if (asked && line.heard.milliseconds() != 0) {
            one["heard"] = line.heard.toString();
        }
        all.push_back(std::move(one));
    }
    if (session.json()) {
        session.printJson({{"devices", std::move(all)},
                           {"asked_peer", asked},
                           {"why_not", listed.value().withoutPeer}});
        return {};
    }
    session.printTable(table);
    if (!asked) {
        session.print(
            "\nThis is what the book knows; when each was last heard, the peer would say, "
            "but\n" +
            listed.value().withoutPeer + "\n");
    }
    return {};
}

Done verbRevoke(Session& session, const std::string& device) {
    if (auto good = session.refusePast("revoke", false); !good.ok()) {
        return good;
    }
    auto ask = meetAskOf(session);
    if (!ask.ok()) {
        return ask.error();
    }
    if (ask.value().peer.role != model::Role::Owner) {
        return model::cannotBeMet("only an owner shuts a device out");
    }
    // It may have joined since this book last heard of it.
    ask.value().withPhotos = false;
    if (auto before = sync::meetPeer(ask.value()); !before.ok()) {
        return before.error();
    }
    auto finder = session.finder();
    if (!finder.ok()) {
        return finder.error();
    }
    auto found = finder.value()->find(Kind::Device, device);
    if (!found.ok()) {
        return model::Error{found.error().code,
                            found.error().message + "; 'ledgerboard devices' lists them"};
    }
    store::Book& book = *ask.value().book;
    if (found.value() == book.thisDevice().raw()) {
        return model::cannotBeMet(
            "that is this very device: shut it out from another owner's, so that one is left");
    }
    const std::string name = finder.value()->nameOf(found.value());
    auto today = session.today();
    if (!today.ok()) {
        return today.error();
    }
    store::Action action("revoke " + name);
    action.set(found.value(), model::field::Device::revokedOn, model::valueOf(today.value()));
    if (auto done = book.commit(action, session.now()); !done.ok()) {
        return done;
    }
    auto met = sync::meetPeer(ask.value());
    session.forgetRows();
    if (!met.ok()) {
        return met.error();
    }
    const bool told = met.value().end == sync::MeetEnd::Met;
    if (session.json()) {
        session.printJson({{"device", found.value().toString()},
                           {"name", name},
                           {"peer_told", told},
                           {"why_not", told ? "" : met.value().message}});
    } else {
        session.print(told
                          ? name +
                                " is shut out: the peer refuses it from now on, and its copy is "
                                "wiped when it next calls.\n"
                          : name + " is NOT shut out yet: " + met.value().message +
                                "\nIt is kept here; the next 'ledgerboard sync' tells the peer.\n");
    }
    return {};
}

}  // namespace ledgerboard::cli
