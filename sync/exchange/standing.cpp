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

}  // namespace

Result<Standing> standingOf(store::Book& book, const RawId& device) {
    Standing standing;
    standing.device = device;
    auto row = book.record(Kind::Device, device);
    if (!row.ok()) {
        return row.error();
    }
    if (!row.value() || row.value()->gone) {
        return standing;
    }
    standing.person = idIn(*row.value(), model::field::Device::person);
    standing.revoked = !model::isEmpty(row.value()->at(model::field::Device::revokedOn));
    auto person = book.record(Kind::Person, standing.person);
    if (!person.ok()) {
        return person.error();
    }
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
