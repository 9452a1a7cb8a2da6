#include "sync/exchange/standing.h"

namespace ledgerboard::sync {

using model::Kind;
using model::RawId;
using model::Result;

namespace {

RawId idIn(const store::Record& record, model::FieldCode field) {
    const auto* id = std::get_if<RawId>(&record.at(field));
    return id != nullptr ? *id : RawId{};
}

Result<RawId> idRecalled(store::SyncBook& book, const std::string& name) {
    auto value = book.recall(name);
    if (!value.ok()) {
        return value.error();
    }
    const auto* id = std::get_if<RawId>(&value.value());
    return id != nullptr ? *id : RawId{};
}

Result<std::set<RawId>> devicesOfPerson(store::Book& book, const RawId& person) {
    auto rows = book.records(Kind::Device, {}, true);
    if (!rows.ok()) {
        return rows.error();
    }
    std::set<RawId> devices;
    for (const auto& row : rows.value()) {
        if (idIn(row, model::field::Device::person) == person) {
            devices.insert(row.id);
        }
    }
    return devices;
}

// Shut out under one name, a device is shut out under all.
Result<bool> isRevoked(store::Book& book, const std::set<RawId>& names) {
    for (const auto& name : names) {
        auto row = book.record(Kind::Device, name);
        if (!row.ok()) {
            return row.error();
        }
        if (row.value() && !model::isEmpty(row.value()->at(model::field::Device::revokedOn))) {
            return true;
        }
    }
    return false;
}

}  // namespace

std::string calledOf(const RawId& paired) {
    return "peer.called." + paired.hex();
}

std::string pairedOf(const RawId& device) {
    return "peer.paired." + device.hex();
}

std::string formerOf(const RawId& device) {
    return "peer.former." + device.hex();
}

Result<RawId> pairedNameOf(store::Book& book, const RawId& device) {
    store::SyncBook sync(book);
    auto paired = idRecalled(sync, pairedOf(device));
    return paired.ok() && paired.value().isNil() ? Result<RawId>(device) : paired;
}

Result<std::set<RawId>> formerNames(store::Book& book, const RawId& device) {
    store::SyncBook sync(book);
    std::set<RawId> names;
    for (RawId name = device; !name.isNil() && names.insert(name).second;) {
        auto former = idRecalled(sync, formerOf(name));
        if (!former.ok()) {
            return former.error();
        }
        name = former.value();
    }
    return names;
}

Result<Standing> standingOf(store::Book& book, const RawId& paired) {
    Standing standing;
    store::SyncBook sync(book);
    auto called = idRecalled(sync, calledOf(paired));
    if (!called.ok()) {
        return called.error();
    }
    standing.paired = paired;
    standing.device = called.value().isNil() ? paired : called.value();
    auto former = formerNames(book, standing.device);
    auto revoked = former.ok() ? isRevoked(book, former.value()) : Result<bool>(former.error());
    if (!revoked.ok()) {
        return revoked.error();
    }
    standing.revoked = revoked.value();
    auto row = book.record(Kind::Device, standing.device);
    if (!row.ok()) {
        return row.error();
    }
    if (!row.value() || row.value()->gone) {
        return standing;
    }
    standing.person = idIn(*row.value(), model::field::Device::person);
    auto person = book.record(Kind::Person, standing.person);
    auto names = devicesOfPerson(book, standing.person);
    if (!person.ok() || !names.ok()) {
        return person.ok() ? names.error() : person.error();
    }
    standing.names = std::move(names).value();
    if (!person.value() || person.value()->gone) {
        return standing;
    }
    model::readMember(person.value()->at(model::field::Person::role), standing.role);
    standing.crew = idIn(*person.value(), model::field::Person::crew);
    standing.job = idIn(*person.value(), model::field::Person::job);
    standing.known = standing.role != model::Role::Unset;
    return standing;
}

Result<std::set<RawId>> devicesOfCrew(store::Book& book, const RawId& crew) {
    auto people = book.rows<model::Person>();
    auto devices = book.rows<model::Device>();
    if (!people.ok() || !devices.ok()) {
        return people.ok() ? devices.error() : people.error();
    }
    std::set<RawId> leads;
    for (const auto& person : people.value()) {
        if (person.role == model::Role::CrewLead && person.crew.raw() == crew && !crew.isNil()) {
            leads.insert(person.id.raw());
        }
    }
    std::set<RawId> found;
    for (const auto& device : devices.value()) {
        if (leads.contains(device.person.raw())) {
            found.insert(device.id.raw());
        }
    }
    return found;
}

}  // namespace ledgerboard::sync
