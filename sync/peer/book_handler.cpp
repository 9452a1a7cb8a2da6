#include "sync/peer/book_handler.h"

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
    const auto idAt = [&](const char* name) {
        const auto text = textAt(*object, name);
        auto id = text ? RawId::parse(*text) : Result<RawId>(RawId{});
        return id.ok() ? std::optional(id.value()) : std::nullopt;
    };
    const auto crew = idAt("crew");
    const auto job = idAt("job");
    if (grant.role == model::Role::Unset || !crew || !job ||
        (grant.role == model::Role::CrewLead) == crew->isNil() ||
        (grant.role == model::Role::Viewer) == job->isNil()) {
        return std::nullopt;
    }
    grant.crew = *crew;
    grant.job = *job;
    return grant;
}

}  // namespace

Result<std::unique_ptr<BookHandler>> BookHandler::make(const Parts& parts) {
    std::unique_ptr<BookHandler> handler(new BookHandler(parts));
    PeerSide::Parts inside;
    inside.book = &parts.book;
    inside.random = parts.random;
    inside.renewed = [&devices = parts.devices](const RawId& before, const RawId& now) {
        // Where it cannot be kept it holds until the peer is stopped; then the device is told once
        // more to take a new identity.
        static_cast<void>(devices.rename(before, now));
    };
    auto side = PeerSide::open(std::move(inside));
    if (!side.ok()) {
        return side.error();
    }
    handler->side_ = std::make_unique<PeerSide>(std::move(side).value());
    return handler;
}

HandlerReply BookHandler::answer(Call call, const Caller& caller, std::string_view body,
                                 model::Instant now) {
    const std::lock_guard<std::mutex> lock(mutex_);
    if (call == Call::Invite) {
        return invite(caller, body, now);
    }
    Reply reply = side_->answer(call, caller.device, body, now);
    return {httpStatusOf(reply.status), std::move(reply.body)};
}

HandlerReply BookHandler::invite(const Caller& caller, std::string_view body, model::Instant now) {
    const auto standing = standingOf(parts_.book, caller.device);
    if (!standing.ok()) {
        return problem(Status::Failed, "the peer could not do it: try again later", now);
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
    auto code = parts_.invitations.invite(*grant, now);
    if (!code.ok()) {
        return problem(Status::TooMuch, code.error().message, now);
    }
    return {200, nlohmann::json{{"code", code.value().plain()},
                                {"until", now.milliseconds() + kInvitationMs}}
                     .dump()};
}

Result<RawId> BookHandler::welcome(const RawId& device, const Grant& grant, model::Instant now) {
    const std::lock_guard<std::mutex> lock(mutex_);
    const auto standing = standingOf(parts_.book, device);
    if (!standing.ok()) {
        return standing.error();
    }
    if (standing.value().known) {
        return standing.value().person;
    }
    model::Person person;
    person.id = parts_.book.newId<Kind::Person>(now);
    person.name = roleName(grant.role);
    person.role = grant.role;
    person.crew = Id<Kind::Crew>(grant.crew);
    person.job = Id<Kind::Job>(grant.job);
    model::Device row;
    row.id = Id<Kind::Device>(device);
    row.person = person.id;
    row.name = "joined " + now.utcDate().toString();
    store::Action action("a device joins");
    action.add(person);
    action.add(row);
    if (auto done = parts_.book.commit(action, now); !done.ok()) {
        return done.error();
    }
    return person.id.raw();
}

}  // namespace ledgerboard::sync
