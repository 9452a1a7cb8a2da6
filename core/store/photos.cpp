#include "core/store/photos.h"

#include <algorithm>
#include <array>
#include <atomic>
#include <cerrno>
#include <cstring>
#include <fcntl.h>
#include <fstream>
#include <sodium.h>
#include <unistd.h>

#include "core/model/check.h"
#include "core/model/saying.h"

namespace ledgerboard::store {

namespace fs = std::filesystem;
using model::Result;

namespace {

using Hash = std::array<unsigned char, crypto_hash_sha256_BYTES>;

std::string hexOf(const Hash& hash) {
    constexpr std::string_view kDigits = "0123456789abcdef";
    std::string out;
    for (const unsigned char byte : hash) {
        out += kDigits[byte >> 4];
        out += kDigits[byte & 15];
    }
    return out;
}

model::Error cannot(const fs::path& path, const char* what) {
    return model::damaged(model::saying("%1 cannot be %2: %3; check the folder and the disk",
                                        path.string(), what, std::strerror(errno)));
}

// What was made or renamed in a folder is on disk once the folder itself is.
Result<void> syncFolder(const fs::path& folder) {
    const int file = ::open(folder.c_str(), O_RDONLY | O_DIRECTORY | O_CLOEXEC);
    if (file < 0) {
        return cannot(folder, "opened");
    }
    const bool synced = ::fsync(file) == 0;
    const auto failure = cannot(folder, "synchronised");
    ::close(file);
    return synced ? Result<void>() : Result<void>(failure);
}

// A new file with `bytes` in it, on disk.
Result<void> writeSynced(const fs::path& path, std::string_view bytes) {
    const int file = ::open(path.c_str(), O_WRONLY | O_CREAT | O_EXCL | O_CLOEXEC, 0666);
    if (file < 0) {
        return cannot(path, "written");
    }
    Result<void> done;
    for (std::size_t at = 0; at < bytes.size();) {
        const auto wrote = ::write(file, bytes.data() + at, bytes.size() - at);
        if (wrote < 0 && errno == EINTR) {
            continue;
        }
        if (wrote <= 0) {
            done = cannot(path, "written");
            break;
        }
        at += static_cast<std::size_t>(wrote);
    }
    if (done.ok() && ::fsync(file) != 0) {
        done = cannot(path, "synchronised");
    }
    if (::close(file) != 0 && done.ok()) {
        done = cannot(path, "written");
    }
    return done;
}

// A name nobody else is writing under.
fs::path asideOf(const fs::path& path) {
    static std::atomic<unsigned> count{0};
    return path.string() + ".part-" + std::to_string(::getpid()) + "-" + std::to_string(count++);
}

}  // namespace

std::string Photos::digestOf(std::string_view bytes) {
    model::require(sodium_init() >= 0, "libsodium is ready");
    Hash hash{};
    crypto_hash_sha256(hash.data(), reinterpret_cast<const unsigned char*>(bytes.data()),
                       bytes.size());
    return hexOf(hash);
}

bool Photos::isDigest(std::string_view text) {
    return text.size() == std::size_t{2} * crypto_hash_sha256_BYTES &&
           text.find_first_not_of("0123456789abcdef") == std::string_view::npos;
}

fs::path Photos::pathOf(std::string_view digest) const {
    model::require(isDigest(digest), "Photos::pathOf: a digest");
    return folder_ / digest.substr(0, 2) / digest;
}

Result<std::string> Photos::keep(std::string_view bytes) const {
    if (bytes.size() > kLargestPhoto) {
        return model::cannotBeMet(model::saying(
            "the picture is larger than %1 MB: save it smaller first", kLargestPhoto >> 20));
    }
    std::string digest = digestOf(bytes);
    if (check(digest) == PhotoState::Right) {
        return digest;
    }
    const fs::path path = pathOf(digest);
    std::error_code problem;
    fs::create_directories(path.parent_path(), problem);
    if (problem) {
        return model::damaged(
            model::saying("%1 cannot be made: %2", path.parent_path().string(), problem.message()));
    }
    const fs::path aside = asideOf(path);
    auto done = writeSynced(aside, bytes);
    if (done.ok()) {
        fs::rename(aside, path, problem);
        if (problem) {
            done = model::damaged(
                model::saying("%1 cannot be written: %2", path.string(), problem.message()));
        }
    }
    if (!done.ok()) {
        fs::remove(aside, problem);
        return done.error();
    }
    // Bottom up: the file's name, its folder's name, the name of the photo folder itself.
    const fs::path beside = folder_.has_parent_path() ? folder_.parent_path() : fs::path(".");
    for (const auto& folder : {path.parent_path(), folder_, beside}) {
        if (auto synced = syncFolder(folder); !synced.ok()) {
            return synced.error();
        }
    }
    return digest;
}

Result<std::string> Photos::read(std::string_view digest) const {
    if (!isDigest(digest)) {
        return model::cannotBeMet(model::saying("\"%1\" is not the digest of a photo",
                                                std::string(digest.substr(0, 80))));
    }
    const fs::path path = pathOf(digest);
    std::error_code problem;
    const auto size = fs::file_size(path, problem);
    if (problem) {
        return model::cannotBeMet(model::saying(
            "%1 is missing: copy it back from a backup of the photos", path.string()));
    }
    std::ifstream file(path, std::ios::binary);
    std::string bytes(size <= kLargestPhoto ? size : 0, '\0');
    file.read(bytes.data(), static_cast<std::streamsize>(bytes.size()));
    if (!file || bytes.size() != size || digestOf(bytes) != digest) {
        return model::damaged(
            model::saying("%1 is not the picture that was kept: its bytes differ from its digest; "
                          "copy it back from a backup of the photos",
                          path.string()));
    }
    return bytes;
}

PhotoState Photos::check(std::string_view digest) const {
    std::error_code problem;
    if (!isDigest(digest) || !fs::exists(pathOf(digest), problem)) {
        return PhotoState::Missing;
    }
    return read(digest).ok() ? PhotoState::Right : PhotoState::Differs;
}

}  // namespace ledgerboard::store
