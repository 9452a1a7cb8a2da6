#include "sync/exchange/photo_files.h"

#include <cerrno>
#include <fcntl.h>
#include <fstream>
#include <unistd.h>

namespace ledgerboard::sync {

namespace fs = std::filesystem;

namespace {

bool writeSynced(const fs::path& path, std::string_view bytes, int how) {
    std::error_code problem;
    fs::create_directories(path.parent_path(), problem);
    const int file = ::open(path.c_str(), O_WRONLY | O_CREAT | O_CLOEXEC | how, 0600);
    if (file < 0) {
        return false;
    }
    bool good = true;
    while (good && !bytes.empty()) {
        const auto written = ::write(file, bytes.data(), bytes.size());
        if (written < 0 && errno == EINTR) {
            continue;
        }
        good = written > 0;
        bytes.remove_prefix(good ? static_cast<std::size_t>(written) : 0);
    }
    good = ::fsync(file) == 0 && good;
    return ::close(file) == 0 && good;
}

bool syncFolder(const fs::path& folder) {
    const int file = ::open(folder.c_str(), O_RDONLY | O_DIRECTORY | O_CLOEXEC);
    const bool good = file >= 0 && ::fsync(file) == 0;
    if (file >= 0) {
        ::close(file);
    }
    return good;
}

}  // namespace

bool appendSynced(const fs::path& path, std::string_view bytes) {
    return writeSynced(path, bytes, O_APPEND);
}

bool writeWhole(const fs::path& path, std::string_view bytes) {
    const fs::path aside = path.string() + ".part";
    return writeSynced(aside, bytes, O_TRUNC) && putInPlace(aside, path);
}

std::string wholeFile(const fs::path& path) {
    std::ifstream file(path, std::ios::binary);
    return {std::istreambuf_iterator<char>(file), {}};
}

std::optional<std::int64_t> sizeOf(const fs::path& path) {
    std::error_code problem;
    const auto size = fs::file_size(path, problem);
    return problem ? std::nullopt : std::optional(static_cast<std::int64_t>(size));
}

bool putInPlace(const fs::path& from, const fs::path& to) {
    std::error_code problem;
    fs::create_directories(to.parent_path(), problem);
    fs::rename(from, to, problem);
    return !problem && syncFolder(to.parent_path());
}

}  // namespace ledgerboard::sync
