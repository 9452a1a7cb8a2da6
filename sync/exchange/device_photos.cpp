#include "sync/exchange/device_photos.h"

#include <algorithm>

#include "core/model/saying.h"
#include "core/store/named_files.h"
#include "sync/exchange/photo_files.h"
#include "sync/wire/exchange_limits.h"

namespace ledgerboard::sync {

namespace fs = std::filesystem;
using model::RawId;
using model::Result;
using store::Photos;

namespace {

constexpr std::int64_t kWhole = -1;
constexpr const char* kEpoch = "sync.epoch";
// Digests that the peer is known to have, one a line, behind the epoch of the peer that said so.
constexpr const char* kAtPeer = "at-peer";

bool isThere(const fs::path& path) {
    return sizeOf(path).has_value();
}

model::Error noDisk(const fs::path& path) {
    return model::damaged(
        model::saying("%1 cannot be written: check the folder and the disk", path.string()));
}

// Originals in the folder, by digest.
std::vector<std::string> originalsIn(const Photos& photos) {
    std::vector<std::string> found;
    std::error_code problem;
    for (fs::directory_iterator at(photos.folder(), problem), end; !problem && at != end;
         at.increment(problem)) {
        if (at->path().filename().string().size() != 2) {
            continue;
        }
        std::error_code inner;
        for (fs::directory_iterator file(at->path(), inner), last; !inner && file != last;
             file.increment(inner)) {
            if (const std::string name = file->path().filename().string(); Photos::isDigest(name)) {
                found.push_back(name);
            }
        }
    }
    std::sort(found.begin(), found.end());
    return found;
}

}  // namespace

fs::path fileOf(const Photos& photos, const model::Photo& photo) {
    const std::string id = photo.id.raw().hex();
    std::vector<fs::path> paths;
    if (Photos::isDigest(photo.digest)) {
        paths.push_back(photos.pathOf(photo.digest));
    }
    paths.push_back(photos.folder() / kCopies / id);
    paths.push_back(photos.folder() / kPreviews / id);
    for (const auto& path : paths) {
        if (isThere(path)) {
            return path;
        }
    }
    return {};
}

fs::path DevicePhotos::copyPath(const Wanted& wanted, bool preview) const {
    if (parts_.owner && !preview) {
        return parts_.photos.pathOf(wanted.digest);
    }
    return parts_.photos.folder() / (preview ? kPreviews : kCopies) / wanted.photo.hex();
}

void DevicePhotos::tell() {
    ++done_;
    if (parts_.progress) {
        parts_.progress(std::min(done_, all_), all_);
    }
}

// A refusal is an answer here: the next picture may fare better.
Result<Reply> DevicePhotos::call(Call call, const std::string& body) {
    auto reply = parts_.carry(call, body);
    if (!reply.ok()) {
        return reply;
    }
    said_ = reply.value().status;
    if (said_ == Status::Failed || said_ == Status::Revoked) {
        auto refused = readRefused(reply.value().body);
        return model::cannotBeMet(
            refused.ok()
                ? model::saying("the peer says: %1", model::Saying(refused.value().message))
                : model::saying("the peer says: no"));
    }
    return reply;
}

Result<std::set<std::string>> DevicePhotos::atPeer() {
    auto epoch = store::SyncBook(*parts_.book).recall(kEpoch);
    if (!epoch.ok()) {
        return epoch.error();
    }
    std::set<std::string> known;
    const auto* id = std::get_if<RawId>(&epoch.value());
    const std::string text = wholeFile(parts_.photos.folder() / kAtPeer);
    std::size_t at = text.find('\n');
    if (id == nullptr || at == std::string::npos || text.substr(0, at) != id->hex()) {
        return known;  // of another peer, or of this one before it was restored
    }
    while (++at < text.size()) {
        const auto end = std::min(text.find('\n', at), text.size());
        known.insert(text.substr(at, end - at));
        at = end;
    }
    return known;
}

// Only spares asking again: where it cannot be kept, the peer is asked.
void DevicePhotos::noteAtPeer(const std::set<std::string>& digests) {
    auto epoch = store::SyncBook(*parts_.book).recall(kEpoch);
    const auto* id = epoch.ok() ? std::get_if<RawId>(&epoch.value()) : nullptr;
    if (id == nullptr || digests.empty()) {
        return;
    }
    std::string text = id->hex() + "\n";
    for (const auto& digest : digests) {
        text += digest + "\n";
    }
    static_cast<void>(writeWhole(parts_.photos.folder() / kAtPeer, text));
}

// Originals that are here and not known to be there. On another role's device those too whose row
// was dropped before they were sent.
Result<std::vector<std::string>> DevicePhotos::toSend() {
    auto known = atPeer();
    auto rows = store::namedFiles(*parts_.book, false);
    if (!known.ok() || !rows.ok()) {
        return known.ok() ? rows.error() : known.error();
    }
    std::vector<std::string> send;
    std::set<std::string> named;
    for (const auto& row : rows.value()) {
        const bool fresh = Photos::isDigest(row.digest) && named.insert(row.digest).second;
        if (fresh && !known.value().contains(row.digest) &&
            isThere(parts_.photos.pathOf(row.digest))) {
            send.push_back(row.digest);
        }
    }
    if (!parts_.owner) {
        for (const auto& digest : originalsIn(parts_.photos)) {
            if (!named.contains(digest) && !known.value().contains(digest)) {
                send.push_back(digest);
            }
        }
    }
    return send;
}

Result<std::size_t> DevicePhotos::waitingHere() {
    auto send = toSend();
    return send.ok() ? Result<std::size_t>(send.value().size()) : Result<std::size_t>(send.error());
}

Result<std::map<std::string, DevicePhotos::Held>> DevicePhotos::askHeld(
    const std::vector<std::string>& digests) {
    std::map<std::string, Held> held;
    for (std::size_t from = 0; from < digests.size(); from += kMostDigests) {
        const auto count = std::min(kMostDigests, digests.size() - from);
        const auto begin = digests.begin() + static_cast<std::ptrdiff_t>(from);
        const PhotosAsk ask{{begin, begin + static_cast<std::ptrdiff_t>(count)}};
        auto reply = call(Call::PhotoHave, write(ask));
        if (!reply.ok()) {
            return reply.error();
        }
        auto answer = readPhotosAnswer(reply.value().body);
        if (!answer.ok() || answer.value().held.size() != count) {
            return model::cannotBeMet("the peer's answer about photos can't be read");
        }
        for (std::size_t k = 0; k < count; ++k) {
            held[ask.digests[k]].bytes = answer.value().held[k];
        }
        for (const auto place : answer.value().previews) {
            held[ask.digests[static_cast<std::size_t>(place)]].preview = true;
        }
    }
    return held;
}

Result<void> DevicePhotos::sendPreviews(const std::vector<std::string>& digests) {
    for (const auto& digest : digests) {
        auto original = parts_.photos.read(digest);
        auto small =
            original.ok() && parts_.previewOf ? parts_.previewOf(original.value()) : original;
        if (!parts_.previewOf || !small.ok() || small.value().size() > kPhotoPartBytes) {
            continue;  // the picture itself follows all the same
        }
        const auto size = static_cast<std::int64_t>(small.value().size());
        auto reply = call(Call::PhotoPart,
                          write(PhotoPart{digest, size, 0, std::move(small).value(), true}));
        if (!reply.ok()) {
            return reply.error();
        }
        meeting_.sentBytes += said_ == Status::Ok ? size : 0;
    }
    return {};
}

Result<void> DevicePhotos::sendOne(const std::string& digest, std::int64_t held) {
    auto original = parts_.photos.read(digest);
    if (!original.ok()) {
        meeting_.refused.push_back(original.error().message);
        return {};
    }
    const std::string& bytes = original.value();
    const auto size = static_cast<std::int64_t>(bytes.size());
    constexpr int kTries = 3;  // the peer forgets what did not match its digest
    for (int tried = 0; held != kWhole && tried < kTries;) {
        const auto from = static_cast<std::size_t>(std::clamp<std::int64_t>(held, 0, size));
        const PhotoPart part{digest, size, static_cast<std::int64_t>(from),
                             bytes.substr(from, kPhotoPartBytes), false};
        auto reply = call(Call::PhotoPart, write(part));
        if (!reply.ok()) {
            return reply.error();
        }
        auto answer = readPhotosAnswer(reply.value().body);
        if (said_ != Status::Ok || !answer.ok() || answer.value().held.size() != 1) {
            held = 0;
            ++tried;
            continue;
        }
        const std::int64_t now = answer.value().held.front();
        tried += now == held ? 1 : 0;
        meeting_.sentBytes += static_cast<std::int64_t>(part.bytes.size());
        held = now;
    }
    if (held == kWhole) {
        ++meeting_.sent;
    } else {
        meeting_.refused.push_back("the peer does not take the photo " + digest.substr(0, 8) +
                                   "...: its row has not come there, or was set aside");
    }
    return {};
}

Result<void> DevicePhotos::sendAll() {
    auto known = atPeer();
    auto send = toSend();
    if (!known.ok() || !send.ok()) {
        return known.ok() ? send.error() : known.error();
    }
    if (send.value().empty()) {
        return {};
    }
    auto held = askHeld(send.value());
    if (!held.ok()) {
        return held.error();
    }
    std::vector<std::string> unseen;
    for (const auto& [digest, there] : held.value()) {
        if (there.bytes == kWhole) {
            known.value().insert(digest);
        } else if (there.bytes == 0 && !there.preview) {
            unseen.push_back(digest);
        }
        all_ += there.bytes == kWhole ? 0 : 1;
    }
    noteAtPeer(known.value());
    if (auto small = sendPreviews(unseen); !small.ok()) {
        return small;
    }
    for (const auto& digest : send.value()) {
        if (held.value()[digest].bytes == kWhole) {
            continue;
        }
        const std::size_t before = meeting_.sent;
        if (auto done = sendOne(digest, held.value()[digest].bytes); !done.ok()) {
            return done;
        }
        if (meeting_.sent > before) {
            known.value().insert(digest);
            noteAtPeer(known.value());
        }
        tell();
    }
    return {};
}

Result<void> DevicePhotos::takePreview(const Wanted& wanted) {
    const auto path = copyPath(wanted, true);
    if (!wanted.picture || isThere(path)) {
        return {};
    }
    auto reply = call(Call::PhotoPart, write(GetPhotoAsk{wanted.digest, wanted.photo, 0, true}));
    if (!reply.ok()) {
        return reply.error();
    }
    if (said_ != Status::Ok) {
        return {};  // not come there yet
    }
    auto part = readPhotoPart(reply.value().body);
    if (!part.ok() || static_cast<std::int64_t>(part.value().bytes.size()) != part.value().size ||
        Photos::digestOf(part.value().bytes) != part.value().digest) {
        return {};
    }
    meeting_.receivedBytes += part.value().size;
    return writeWhole(path, part.value().bytes) ? Result<void>() : Result<void>(noDisk(path));
}

// What has come whole, checked before it gets its place.
Result<void> DevicePhotos::keepWhole(const Wanted& wanted, const fs::path& arriving) {
    const auto path = copyPath(wanted, false);
    if (!putInPlace(arriving, path)) {
        return noDisk(path);
    }
    ++meeting_.received;
    std::error_code ignored;
    if (parts_.owner) {
        fs::remove(copyPath(wanted, true), ignored);
    }
    return {};
}

// False where the peer has it not yet.
Result<bool> DevicePhotos::takeOne(const Wanted& wanted) {
    const auto arriving = parts_.photos.folder() / kArriving / (wanted.photo.hex() + "-down");
    std::string digest = wanted.digest;
    constexpr int kTries = 3;
    for (int tried = 0; tried < kTries;) {
        const std::int64_t from = sizeOf(arriving).value_or(0);
        auto reply =
            call(Call::PhotoPart, write(GetPhotoAsk{wanted.digest, wanted.photo, from, false}));
        if (!reply.ok()) {
            return reply.error();
        }
        if (said_ != Status::Ok) {
            return false;
        }
        auto part = readPhotoPart(reply.value().body);
        if (!part.ok() || (parts_.owner && part.value().digest != digest)) {
            return model::cannotBeMet("the peer's answer about a photo can't be read");
        }
        digest = part.value().digest;
        if (part.value().offset != from ||
            (part.value().bytes.empty() && from < part.value().size)) {
            ++tried;  // it is another copy by now: anew
            std::error_code ignored;
            fs::remove(arriving, ignored);
            continue;
        }
        if (!appendSynced(arriving, part.value().bytes)) {
            return noDisk(arriving);
        }
        meeting_.receivedBytes += static_cast<std::int64_t>(part.value().bytes.size());
        if (sizeOf(arriving).value_or(0) < part.value().size) {
            continue;
        }
        if (Photos::digestOf(wholeFile(arriving)) == digest) {
            auto kept = keepWhole(wanted, arriving);
            return kept.ok() ? Result<bool>(true) : Result<bool>(kept.error());
        }
        ++tried;
        std::error_code ignored;
        fs::remove(arriving, ignored);
    }
    return model::cannotBeMet(
        "a photo came three times with other bytes than its digest: try again");
}

// What this device may have: an owner's every file that the book names, another's every photo.
Result<std::vector<DevicePhotos::Wanted>> DevicePhotos::wantedHere() const {
    std::vector<Wanted> wanted;
    if (parts_.owner) {
        auto files = store::namedFiles(*parts_.book, false);
        if (!files.ok()) {
            return files.error();
        }
        for (auto& file : files.value()) {
            wanted.push_back({file.id, std::move(file.digest), file.kind == model::Kind::Photo});
        }
        return wanted;
    }
    auto rows = parts_.book->rows<model::Photo>();
    if (!rows.ok()) {
        return rows.error();
    }
    for (const auto& row : rows.value()) {
        wanted.push_back({row.id.raw(), row.digest, true});
    }
    return wanted;
}

Result<void> DevicePhotos::takeAll() {
    auto rows = wantedHere();
    if (!rows.ok()) {
        return rows.error();
    }
    std::vector<Wanted> wanted;
    std::set<std::string> digests;
    for (const auto& one : rows.value()) {
        const bool named = Photos::isDigest(one.digest);
        if (parts_.owner ? !named || !digests.insert(one.digest).second
                         : named && isThere(parts_.photos.pathOf(one.digest))) {
            continue;
        }
        if (!isThere(copyPath(one, false))) {
            wanted.push_back(one);
        }
    }
    all_ += wanted.size();
    for (const auto& one : wanted) {
        if (auto small = takePreview(one); !small.ok()) {
            return small;
        }
    }
    auto known = atPeer();
    if (!known.ok()) {
        return known.error();
    }
    for (const auto& one : wanted) {
        auto taken = takeOne(one);
        if (!taken.ok()) {
            return taken.error();
        }
        meeting_.waiting += taken.value() ? 0 : 1;
        if (taken.value() && parts_.owner) {
            known.value().insert(one.digest);
        }
        tell();
    }
    if (meeting_.received > 0) {
        noteAtPeer(known.value());
    }
    return {};
}

// On another role's device: copies of photos that it may not see any more, and what it took itself
// once the peer has it and no row here speaks of it.
Result<void> DevicePhotos::removeStrange() {
    auto rows = parts_.book->rows<model::Photo>();
    auto known = atPeer();
    if (!rows.ok() || !known.ok()) {
        return rows.ok() ? known.error() : rows.error();
    }
    std::set<std::string> ids;
    std::set<std::string> digests;
    for (const auto& row : rows.value()) {
        ids.insert(row.id.raw().hex());
        digests.insert(row.digest);
    }
    std::vector<fs::path> strange;
    for (const auto* folder : {kPreviews, kCopies, kArriving}) {
        std::error_code problem;
        for (fs::directory_iterator at(parts_.photos.folder() / folder, problem), end;
             !problem && at != end; at.increment(problem)) {
            if (!ids.contains(at->path().filename().string().substr(0, 32))) {
                strange.push_back(at->path());
            }
        }
    }
    for (const auto& digest : originalsIn(parts_.photos)) {
        if (!digests.contains(digest) && known.value().contains(digest)) {
            strange.push_back(parts_.photos.pathOf(digest));
        }
    }
    for (const auto& path : strange) {
        std::error_code ignored;
        meeting_.removed += fs::remove(path, ignored) ? 1 : 0;
    }
    return {};
}

Result<void> DevicePhotos::meet() {
    meeting_ = {};
    done_ = 0;
    all_ = 0;
    if (auto sent = sendAll(); !sent.ok()) {
        return sent;
    }
    if (auto taken = takeAll(); !taken.ok()) {
        return taken;
    }
    return parts_.owner ? Result<void>() : removeStrange();
}

}  // namespace ledgerboard::sync
