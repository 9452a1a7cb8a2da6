#include "sync/peer/book_handler.h"

#include <algorithm>

#include "core/intake/photos/preview.h"
#include "sync/exchange/standing.h"
#include "sync/identity/pairing.h"
#include "sync/wire/bounded_json.h"
#include "sync/wire/http_status.h"

namespace ledgerboard::sync {

using model::Id;
using model::Kind;
using model::RawId;
using model::Result;

namespace {

HandlerReply problem(Status status, const std::string& message, model::Instant now) {
    return {httpStatusOf(status), write(Refused{message, now})};
}

// What an invitation gives, as an owner asks for it; nothing where it does not read.
std::optional<Grant> readGrant(std::string_view body) {
    const auto object = readJson(body, 1);
    if (!object) {
        return std::nullopt;
    }
    Grant grant;
    grant.role = roleNamed(textAt(*object, "role").value_or(""));
    grant.name = textAt(*object, "name").value_or("");
    const auto idAt = [&](const char* name) {
        const auto text = textAt(*object, name);
        auto id = text ? RawId::parse(*text) : Result<RawId>(RawId{});
        return id.ok() ? std::optional(id.value()) : std::nullopt;
    };
    const auto crew = idAt("crew");
    const auto job = idAt("job");
    const auto person = idAt("person");
    if (grant.role == model::Role::Unset || !crew || !job || !person || !isName(grant.name) ||
        (grant.role == model::Role::CrewLead) == crew->isNil() ||
        (grant.role == model::Role::Viewer) == job->isNil()) {
        return std::nullopt;
    }
    grant.crew = *crew;
    grant.job = *job;
    grant.person = *person;
    return grant;
}

// Whether `person` is in the book with what is granted, so that the invitation gives nothing else.
Result<bool> isHeldBy(const store::Book& book, const Grant& grant) {
    auto people = book.rows<model::Person>();
    if (!people.ok()) {
        return people.error();
    }
    return std::any_of(people.value().begin(), people.value().end(), [&](const auto& person) {
        return person.id.raw() == grant.person && person.role == grant.role &&
               person.crew.raw() == grant.crew && person.job.raw() == grant.job;
    });
}

}  // namespace

Result<std::unique_ptr<BookHandler>> BookHandler::make(const Parts& parts) {
    store::SyncBook(parts.book).waitAtMost(parts.waitMs);
    std::unique_ptr<BookHandler> handler(new BookHandler(parts));
    PeerSide::Parts inside;
    inside.book = &parts.book;
    inside.random = parts.random;
    inside.copyOf = intake::copyOf;
    inside.previewOf = intake::previewOf;
    auto side = PeerSide::open(std::move(inside));
    if (!side.ok()) {
        return side.error();
    }
    handler->side_ = std::make_unique<PeerSide>(std::move(side).value());
    return handler;
}

HandlerReply BookHandler::couldNot(model::Instant now) const {
    if (!store::SyncBook(parts_.book).mayPass()) {
        return problem(Status::Failed, "the peer could not do it: try again later", now);
    }
    return {statusOf(Refusal::Unready), nlohmann::json{{"code", nameOf(Refusal::Unready)},
                                                       {"message", textOf(Refusal::Unready)},
                                                       {"time", now.milliseconds()}}
                                            .dump()};
}

HandlerReply BookHandler::answer(Call call, const Caller& caller, std::string_view body,
                                 model::Instant now) {
    const std::lock_guard<std::mutex> lock(mutex_);
    if (call == Call::Invite) {
        return invite(caller, body, now);
    }
    const auto known = parts_.devices.find(caller.device);
    if (!known.ok()) {
        return couldNot(now);
    }
    if (known.value() && known.value()->revoked) {
        // Shut out for good, even where an owner took that back in the book since.
        const auto standing = standingOf(parts_.book, caller.device);
        if (!standing.ok()) {
            return couldNot(now);
        }
        if (!standing.value().revoked) {
            return problem(Status::Revoked, "this device was shut out", now);
        }
    }
    Reply reply = side_->answer(call, caller.device, body, now);
    if (reply.status == Status::Ok && shutsOut(call, body)) {
        if (auto heeded = heedRevocations(now); !heeded.ok()) {
            return couldNot(now);
        }
    }
    if (reply.status == Status::Failed) {
        return couldNot(now);
    }
    return {httpStatusOf(reply.status), std::move(reply.body)};
}

HandlerReply BookHandler::invite(const Caller& caller, std::string_view body, model::Instant now) {
    const auto standing = standingOf(parts_.book, caller.device);
    if (!standing.ok()) {
        return couldNot(now);
    }
    if (standing.value().revoked) {
        return problem(Status::Revoked, "this device was shut out", now);
    }
    if (!standing.value().known || standing.value().role != model::Role::Owner) {
        return problem(Status::NotAllowed, "only an owner invites", now);
    }
    const auto grant = readGrant(body);
    if (!grant) {
        return problem(Status::Malformed,
                       "an invitation is for an owner, a crew lead of a crew, or a viewer of a job",
                       now);
    }
    if (!grant->person.isNil()) {
        const auto held = isHeldBy(parts_.book, *grant);
        if (!held.ok()) {
            return couldNot(now);
        }
        if (!held.value()) {
            return problem(Status::NotThere,
                           "the peer does not know that person in that role: sync first", now);
        }
    }
    auto code = parts_.invitations.invite(*grant, now);
    if (!code.ok()) {
        return problem(Status::TooMuch, code.error().message, now);
    }
    return {200, nlohmann::json{{"code", code.value().plain()},
                                {"until", now.milliseconds() + kInvitationMs},
                                {"address", toText(place_)}}
                     .dump()};
}

// Rarely true, so that the devices are not read at each push: the field's number stands in it.
bool BookHandler::shutsOut(Call call, std::string_view body) const {
    return call == Call::Push &&
           body.find(std::to_string(model::field::Device::revokedOn)) != std::string_view::npos;
}

Result<void> BookHandler::heedRevocations(model::Instant now) {
    auto devices = parts_.book.rows<model::Device>();
    if (!devices.ok()) {
        return devices.error();
    }
    for (const auto& device : devices.value()) {
        if (device.revokedOn) {
            auto paired = pairedNameOf(parts_.book, device.id.raw());
            if (!paired.ok()) {
                return paired.error();
            }
            if (auto done = parts_.devices.revoke(paired.value(), now); !done.ok()) {
                return done.error();
            }
        }
    }
    return {};
}

Result<RawId> BookHandler::personFor(const Newcomer& newcomer, store::Action& action,
                                     model::Instant now) {
    const Grant& grant = newcomer.grant;
    if (!grant.person.isNil() && newcomer.self.person.isNil()) {
        return grant.person;
    }
    auto people = parts_.book.rows<model::Person>();
    if (!people.ok()) {
        return people.error();
    }
    std::vector<RawId> owners;
    for (const auto& person : people.value()) {
        if (person.role == model::Role::Owner) {
            owners.push_back(person.id.raw());
        }
    }
    if (!newcomer.self.person.isNil()) {
        if (std::find(owners.begin(), owners.end(), newcomer.self.person) == owners.end()) {
            // The name comes with the book it brings.
            action.set(newcomer.self.person, model::field::Person::role,
                       model::valueOf(model::Role::Owner));
        }
        return newcomer.self.person;
    }
    if (grant.role == model::Role::Owner && grant.name.empty() && owners.size() == 1) {
        return owners.front();
    }
    model::Person person;
    person.id = parts_.book.newId<Kind::Person>(now);
    person.name = grant.name.empty() ? roleName(grant.role) : grant.name;
    person.role = grant.role;
    person.crew = Id<Kind::Crew>(grant.crew);
    person.job = Id<Kind::Job>(grant.job);
    action.add(person);
    return person.id.raw();
}

Result<RawId> BookHandler::welcome(const Newcomer& newcomer, model::Instant now) {
    const std::lock_guard<std::mutex> lock(mutex_);
    Result<RawId> person = RawId{};
    const auto done = store::SyncBook(parts_.book).whole([&] {
        person = welcomeWithin(newcomer, now);
        return person.ok();
    });
    return done.ok() ? person : Result<RawId>(done.error());
}

Result<RawId> BookHandler::welcomeWithin(const Newcomer& newcomer, model::Instant now) {
    const auto standing = standingOf(parts_.book, newcomer.device);
    if (!standing.ok()) {
        return standing.error();
    }
    if (standing.value().known) {
        return standing.value().person;
    }
    store::Action action("a device joins");
    auto person = personFor(newcomer, action, now);
    if (!person.ok()) {
        return person;
    }
    action.set(newcomer.device, model::field::Device::person, person.value());
    if (!newcomer.self.called.empty() || newcomer.self.person.isNil()) {
        action.set(newcomer.device, model::field::Device::name,
                   newcomer.self.called.empty() ? "joined " + now.utcDate().toString()
                                                : newcomer.self.called);
    }
    if (auto done = parts_.book.commit(action, now); !done.ok()) {
        return done.error();
    }
    return person;
}

}  // namespace ledgerboard::sync
