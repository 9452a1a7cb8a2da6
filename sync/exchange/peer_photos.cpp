// Photos: which are there, parts up, parts down. Bytes travel apart from entries and never hold
// them back.
#include <algorithm>
#include <cstdio>
#include <fcntl.h>
#include <filesystem>
#include <fstream>
#include <unistd.h>

#include "sync/exchange/peer_parts.h"
#include "sync/exchange/peer_side.h"

namespace ledgerboard::sync {

using model::RawId;
using model::Result;

namespace {

constexpr std::int64_t kWhole = -1;

std::filesystem::path partOf(const store::Photos& photos, const std::string& digest,
                             const RawId& device) {
    // Apart for each device, so that one cannot spoil what another sends.
    return photos.folder() / "arriving" / (digest + "-" + device.hex());
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

// Adds bytes at the end of a file, on disk before it returns.
bool append(const std::filesystem::path& path, std::string_view bytes) {
    std::error_code problem;
    std::filesystem::create_directories(path.parent_path(), problem);
    const int file = ::open(path.c_str(), O_WRONLY | O_CREAT | O_APPEND | O_CLOEXEC, 0600);
    if (file < 0) {
        return false;
    }
    bool good = true;
    while (good && !bytes.empty()) {
        const auto written = ::write(file, bytes.data(), bytes.size());
        good = written > 0;
        bytes.remove_prefix(good ? static_cast<std::size_t>(written) : 0);
    }
    good = ::fsync(file) == 0 && good;
    return ::close(file) == 0 && good;
}

std::string wholeFile(const std::filesystem::path& path) {
    std::ifstream file(path, std::ios::binary);
    return {std::istreambuf_iterator<char>(file), {}};
}

}  // namespace

// Which digests a device may speak of: an owner any that the book names, others what they wrote
// themselves.
static Result<std::set<std::string>> digestsOf(store::SyncBook& book, const Standing& standing) {
    auto rows = book.book().rows<model::Photo>();
    if (!rows.ok()) {
        return rows.error();
    }
    std::set<std::string> digests;
    for (const auto& photo : rows.value()) {
        if (standing.role == model::Role::Owner) {
            digests.insert(photo.digest);
            continue;
        }
        auto cells = book.cellsOf(photo.id.raw());
        if (!cells.ok()) {
            return cells.error();
        }
        for (const auto& one : cells.value()) {
            if (one.entry.field == model::field::Photo::digest &&
                one.entry.name.device == standing.device) {
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
        answer.held.push_back(
            known.value().contains(digest) ? heldBytes(photos_, digest, standing.device) : 0);
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
    const auto path = partOf(photos_, part.digest, standing.device);
    if (held != kWhole && part.offset == held) {
        if (!append(path, part.bytes)) {
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

Reply PeerSide::getPhoto(const Standing& standing, const GetPhotoAsk& ask, model::Instant now) {
    const Reply notThere = refuse(Status::NotThere, "there is no such photo for this device", now);
    std::string bytes;
    if (standing.role == model::Role::Owner && !ask.digest.empty()) {
        auto known = digestsOf(book_, standing);
        if (!known.ok()) {
            return failed(now);
        }
        auto read = photos_.read(ask.digest);
        if (!known.value().contains(ask.digest) || !read.ok()) {
            return notThere;
        }
        bytes = std::move(read).value();
    } else {
        if (ask.photo.isNil() || !parts_.copyOf || standing.role == model::Role::Owner) {
            return notThere;
        }
        auto view = viewOf(*parts_.book, standing);
        auto row = parts_.book->record(model::Kind::Photo, ask.photo);
        if (!view.ok() || !row.ok()) {
            return failed(now);
        }
        const auto shown = view.value().records.find(ask.photo);
        if (shown == view.value().records.end() || shown->second.kind != model::Kind::Photo ||
            !row.value()) {
            return notThere;
        }
        const auto* digest =
            std::get_if<std::string>(&row.value()->at(model::field::Photo::digest));
        auto read = digest != nullptr ? photos_.read(*digest)
                                      : Result<std::string>(model::cannotBeMet("no digest"));
        auto copy = read.ok() ? parts_.copyOf(read.value()) : read;
        if (!copy.ok()) {
            return notThere;
        }
        bytes = std::move(copy).value();
    }
    const auto from = std::min(static_cast<std::size_t>(ask.offset), bytes.size());
    return {Status::Ok,
            write(PhotoPart{store::Photos::digestOf(bytes), static_cast<std::int64_t>(bytes.size()),
                            static_cast<std::int64_t>(from), bytes.substr(from, kPhotoPartBytes)})};
}

}  // namespace ledgerboard::sync
