// Photos, and for owners the sounds of spoken notes: which are there, parts up, parts down. Bytes
// travel apart from entries and never hold them back.
#include <algorithm>
#include <filesystem>

#include "core/store/named_files.h"
#include "sync/exchange/peer_parts.h"
#include "sync/exchange/peer_side.h"
#include "sync/exchange/photo_files.h"

namespace ledgerboard::sync {

using model::RawId;
using model::Result;

namespace {

constexpr std::int64_t kWhole = -1;

std::filesystem::path partOf(const store::Photos& photos, const std::string& digest,
                             const RawId& device) {
    // Apart for each device, so that one cannot spoil what another sends.
    return photos.folder() / kArriving / (digest + "-" + device.hex());
}

std::int64_t heldBytes(const store::Photos& photos, const std::string& digest,
                       const RawId& device) {
    std::error_code problem;
    if (std::filesystem::exists(photos.pathOf(digest), problem)) {
        return kWhole;
    }
    const auto size = std::filesystem::file_size(partOf(photos, digest, device), problem);
    return problem ? 0 : static_cast<std::int64_t>(size);
}

}  // namespace

// Which digests a device may speak of: an owner any that the book names, others those of photos
// that they took themselves.
static Result<std::set<std::string>> digestsOf(store::SyncBook& book, const Standing& standing) {
    std::set<std::string> digests;
    if (standing.role == model::Role::Owner) {
        auto files = store::namedFiles(book.book(), false);
        if (!files.ok()) {
            return files.error();
        }
        for (const auto& file : files.value()) {
            digests.insert(file.digest);
        }
        return digests;
    }
    auto rows = book.book().rows<model::Photo>();
    if (!rows.ok()) {
        return rows.error();
    }
    for (const auto& photo : rows.value()) {
        auto cells = book.cellsOf(photo.id.raw());
        if (!cells.ok()) {
            return cells.error();
        }
        for (const auto& one : cells.value()) {
            if (one.entry.field == model::field::Photo::digest && standing.wrote(one.entry)) {
                digests.insert(photo.digest);
            }
        }
    }
    return digests;
}

Reply PeerSide::photoHave(const Standing& standing, std::string_view body, model::Instant now) {
    auto ask = readPhotosAsk(body);
    if (!ask.ok()) {
        return refuse(Status::Malformed, ask.error().message, now);
    }
    auto known = digestsOf(book_, standing);
    if (!known.ok()) {
        return failed(now);
    }
    PhotosAnswer answer;
    for (const auto& digest : ask.value().digests) {
        // Of what it may not speak of it is told nothing, as of what nobody has.
        const bool may = known.value().contains(digest);
        answer.held.push_back(may ? heldBytes(photos_, digest, standing.device) : 0);
        if (may && answer.held.back() != kWhole && sizeOf(photos_.folder() / kPreviews / digest)) {
            answer.previews.push_back(static_cast<std::int64_t>(answer.held.size()) - 1);
        }
    }
    return {Status::Ok, write(answer)};
}

Reply PeerSide::photoPart(const Standing& standing, std::string_view body, model::Instant now) {
    if (auto part = readPhotoPart(body); part.ok()) {
        return putPhoto(standing, part.value(), now);
    }
    auto ask = readGetPhotoAsk(body);
    return ask.ok() ? getPhoto(standing, ask.value(), now)
                    : refuse(Status::Malformed, ask.error().message, now);
}

Reply PeerSide::putPhoto(const Standing& standing, const PhotoPart& part, model::Instant now) {
    auto known = digestsOf(book_, standing);
    if (!known.ok()) {
        return failed(now);
    }
    if (!known.value().contains(part.digest)) {
        return refuse(Status::NotThere, "send the photo's row first", now);
    }
    std::int64_t held = heldBytes(photos_, part.digest, standing.device);
    if (part.preview) {
        if (held != kWhole && !keepPreview(part)) {
            return refuse(Status::Malformed, "the preview is no picture", now);
        }
        return {Status::Ok, write(PhotosAnswer{{held}})};
    }
    const auto path = partOf(photos_, part.digest, standing.device);
    if (held != kWhole && part.offset == held) {
        if (!appendSynced(path, part.bytes)) {
            return failed(now);
        }
        held += static_cast<std::int64_t>(part.bytes.size());
        if (held == part.size) {
            const std::string bytes = wholeFile(path);
            std::error_code ignored;
            std::filesystem::remove(path, ignored);
            if (store::Photos::digestOf(bytes) != part.digest) {
                return refuse(Status::Malformed, "the photo's bytes differ from its digest", now);
            }
            if (!photos_.keep(bytes).ok()) {
                return failed(now);
            }
            held = kWhole;
        }
    }
    // Where the offset was another one, the device goes on from what is held.
    return {Status::Ok, write(PhotosAnswer{{held}})};
}

// What arrives is encoded anew before it is kept: it may be no picture, or carry a place.
bool PeerSide::keepPreview(const PhotoPart& part) {
    const auto& make = parts_.previewOf ? parts_.previewOf : parts_.copyOf;
    const auto path = photos_.folder() / kPreviews / part.digest;
    if (!make || sizeOf(path)) {  // or it has come already
        return true;
    }
    auto small = make(part.bytes);
    return small.ok() && writeWhole(path, small.value());
}

// The copy of a photo that is given away, made once and kept. Errors: there is no such photo, or it
// has not come yet.
Result<std::string> PeerSide::copyFor(const std::string& digest, bool preview) {
    const auto& make = preview && parts_.previewOf ? parts_.previewOf : parts_.copyOf;
    if (!make || !store::Photos::isDigest(digest)) {
        return model::cannotBeMet("there is no copy");
    }
    const auto path = photos_.folder() / (preview ? kPreviews : kCopies) / digest;
    if (sizeOf(path)) {
        return wholeFile(path);
    }
    auto original = photos_.read(digest);
    if (!original.ok()) {
        return original;
    }
    auto copy = make(original.value());
    if (copy.ok()) {
        // Where it cannot be kept it is made again next time.
        static_cast<void>(writeWhole(path, copy.value()));
    }
    return copy;
}

Reply PeerSide::getPhoto(const Standing& standing, const GetPhotoAsk& ask, model::Instant now) {
    Reply notThere = refuse(Status::NotThere, "there is no such photo for this device", now);
    Result<std::string> bytes = model::cannotBeMet("none");
    if (standing.role == model::Role::Owner) {
        auto known = digestsOf(book_, standing);
        if (!known.ok()) {
            return failed(now);
        }
        if (ask.digest.empty() || !known.value().contains(ask.digest)) {
            return notThere;
        }
        bytes = ask.preview ? copyFor(ask.digest, true) : photos_.read(ask.digest);
    } else {
        auto view = viewOf(*parts_.book, standing);
        auto row = parts_.book->record(model::Kind::Photo, ask.photo);
        if (!view.ok() || !row.ok()) {
            return failed(now);
        }
        const auto shown = view.value().records.find(ask.photo);
        if (ask.photo.isNil() || shown == view.value().records.end() ||
            shown->second.kind != model::Kind::Photo || !row.value()) {
            return notThere;
        }
        const auto* digest =
            std::get_if<std::string>(&row.value()->at(model::field::Photo::digest));
        if (digest != nullptr) {
            bytes = copyFor(*digest, ask.preview);
        }
    }
    if (!bytes.ok()) {
        return notThere;
    }
    const std::string& whole = bytes.value();
    const auto from = std::min(static_cast<std::size_t>(ask.offset), whole.size());
    return {Status::Ok,
            write(PhotoPart{store::Photos::digestOf(whole), static_cast<std::int64_t>(whole.size()),
                            static_cast<std::int64_t>(from), whole.substr(from, kPhotoPartBytes),
                            false})};
}

}  // namespace ledgerboard::sync
