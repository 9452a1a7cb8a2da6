#include "sync/peer/paired_devices.h"

#include <mutex>
#include <utility>

#include "sync/identity/pairing.h"
#include "sync/identity/private_file.h"
#include "sync/wire/bounded_json.h"

namespace ledgerboard::sync {

using model::Instant;
using model::RawId;
using model::Result;

namespace {

constexpr int kVersion = 1;

std::optional<RawId> idAt(const nlohmann::json& object, const char* name) {
    const auto bytes =
        fromHex<std::array<std::uint8_t, RawId::kBytes>>(textAt(object, name).value_or(""));
    return bytes ? std::optional(RawId(*bytes)) : std::nullopt;
}

// The instant of a member; nothing where it is absent or no count.
std::optional<Instant> instantAt(const nlohmann::json& object, const char* name) {
    const auto found = object.find(name);
    if (found == object.end() || !found->is_number_integer()) {
        return std::nullopt;
    }
    return Instant::fromMilliseconds(found->get<std::int64_t>());
}

}  // namespace

bool PairedDevices::read(const std::string& text) {
    const auto whole = readJson(text);
    if (!whole || !whole->is_object() || whole->value("version", nlohmann::json()) != kVersion ||
        !whole->value("devices", nlohmann::json()).is_array()) {
        return false;
    }
    for (const auto& object : (*whole)["devices"]) {
        const auto device = idAt(object, "device");
        const auto key = fromHex<PublicKey>(textAt(object, "key").value_or(""));
        const auto crew = idAt(object, "crew");
        const auto job = idAt(object, "job");
        const auto role = roleNamed(textAt(object, "role").value_or(""));
        if (!device || !key || !crew || !job || role == model::Role::Unset) {
            return false;
        }
        const auto joined = instantAt(object, "joined");
        const auto revoked = instantAt(object, "revoked");
        if (!joined || (object.contains("revoked") && !revoked)) {
            return false;  // better not to start than to let one in that was shut out
        }
        devices_[*device] = {
            {*key, {role, *crew, *job}, revoked.has_value()}, *joined, revoked.value_or(Instant())};
    }
    return true;
}

std::string PairedDevices::text() const {
    auto list = nlohmann::json::array();
    for (const auto& [device, entry] : devices_) {
        nlohmann::json object{{"device", device.hex()},
                              {"key", hexOf(entry.known.key)},
                              {"role", roleName(entry.known.grant.role)},
                              {"crew", entry.known.grant.crew.hex()},
                              {"job", entry.known.grant.job.hex()},
                              {"joined", entry.joined.milliseconds()}};
        if (entry.known.revoked) {
            object["revoked"] = entry.revoked.milliseconds();
        }
        list.push_back(std::move(object));
    }
    return nlohmann::json{{"version", kVersion}, {"devices", std::move(list)}}.dump(1) + "\n";
}

Result<std::unique_ptr<PairedDevices>> PairedDevices::open(std::string path) {
    std::unique_ptr<PairedDevices> devices(new PairedDevices(std::move(path)));
    auto text = readPrivate(devices->path_);
    if (!text.ok()) {
        return text.error();
    }
    if (text.value() && !devices->read(*text.value())) {
        return model::damaged(devices->path_ +
                              " is not a list of devices that this version reads: put it back "
                              "from a backup; without it every device joins anew");
    }
    return devices;
}

Result<std::optional<KnownDevice>> PairedDevices::find(const RawId& device) const {
    const std::shared_lock<std::shared_mutex> lock(mutex_);
    const auto found = devices_.find(device);
    return found == devices_.end() ? std::optional<KnownDevice>()
                                   : std::optional(found->second.known);
}

std::size_t PairedDevices::size() const {
    const std::shared_lock<std::shared_mutex> lock(mutex_);
    return devices_.size();
}

std::vector<std::pair<RawId, KnownDevice>> PairedDevices::all() const {
    const std::shared_lock<std::shared_mutex> lock(mutex_);
    std::vector<std::pair<RawId, KnownDevice>> list;
    for (const auto& [device, entry] : devices_) {
        list.emplace_back(device, entry.known);
    }
    return list;
}

Result<Refusal> PairedDevices::admit(const RawId& device, const PublicKey& key, const Grant& grant,
                                     Instant now) {
    const std::unique_lock<std::shared_mutex> lock(mutex_);
    if (const auto found = devices_.find(device); found != devices_.end()) {
        if (found->second.known.key != key) {
            return Refusal::DeviceTaken;
        }
        return found->second.known.revoked ? Refusal::Revoked : Refusal::None;
    }
    if (devices_.size() >= kMostDevices) {
        return Refusal::Crowded;
    }
    devices_[device] = {{key, grant, false}, now, {}};
    if (auto written = replacePrivate(path_, text()); !written.ok()) {
        devices_.erase(device);
        return written.error();
    }
    return Refusal::None;
}

Result<bool> PairedDevices::revoke(const RawId& device, Instant now) {
    const std::unique_lock<std::shared_mutex> lock(mutex_);
    const auto found = devices_.find(device);
    if (found == devices_.end() || found->second.known.revoked) {
        return false;
    }
    found->second.known.revoked = true;
    found->second.revoked = now;
    if (auto written = replacePrivate(path_, text()); !written.ok()) {
        return written.error();
    }
    return true;
}

}  // namespace ledgerboard::sync
