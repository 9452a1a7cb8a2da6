// Which devices joined this peer? A small private file beside the book: id, key, what was granted,
// when it joined, when it was shut out.
//
// JSON, one object with a version and a list; written anew at each change, whole or not at all.
// Threads: any number.
#pragma once

#include <map>
#include <memory>
#include <optional>
#include <shared_mutex>
#include <string>
#include <utility>
#include <vector>

#include "core/model/date.h"
#include "core/model/result.h"
#include "sync/peer/device_list.h"

namespace ledgerboard::sync {

class PairedDevices final : public DeviceList {
  public:
    // Nothing is written until a device joins. Errors: the file can be read by others
    // (CannotBeMet), is damaged or newer (Damaged).
    [[nodiscard]] static model::Result<std::unique_ptr<PairedDevices>> open(std::string path);

    [[nodiscard]] model::Result<std::optional<KnownDevice>> find(
        const model::RawId& device) const override;

    [[nodiscard]] model::Result<std::size_t> count() const override { return size(); }

    [[nodiscard]] std::size_t size() const;
    // Every device, in order of id.
    [[nodiscard]] std::vector<std::pair<model::RawId, KnownDevice>> all() const;

    [[nodiscard]] model::Result<Refusal> admit(const model::RawId& device, const PublicKey& key,
                                               const Grant& grant, model::Instant now) override;
    // Where the disk fails the device is shut out all the same until the peer is stopped.
    [[nodiscard]] model::Result<bool> revoke(const model::RawId& device,
                                             model::Instant now) override;

  private:
    struct Entry {
        KnownDevice known;
        model::Instant joined;
        model::Instant revoked;  // where known.revoked
    };

    explicit PairedDevices(std::string path) : path_(std::move(path)) {}

    [[nodiscard]] bool read(const std::string& text);
    [[nodiscard]] std::string text() const;

    const std::string path_;
    mutable std::shared_mutex mutex_;
    std::map<model::RawId, Entry> devices_;
};

}  // namespace ledgerboard::sync
