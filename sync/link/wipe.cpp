#include "sync/link/wipe.h"

#include <algorithm>
#include <fcntl.h>
#include <filesystem>
#include <unistd.h>
#include <vector>

#include "core/model/saying.h"
#include "sync/link/known_peer.h"

namespace ledgerboard::sync {

namespace fs = std::filesystem;

namespace {

// Best effort: what cannot be written over is removed all the same.
void writeOver(const fs::path& path) {
    std::error_code problem;
    const auto size = fs::file_size(path, problem);
    const int file = problem ? -1 : ::open(path.c_str(), O_WRONLY | O_CLOEXEC | O_NOFOLLOW);
    if (file < 0) {
        return;
    }
    const std::vector<char> zeros(1 << 16);
    for (std::uintmax_t left = size; left > 0;) {
        const auto wrote =
            ::write(file, zeros.data(), std::min<std::uintmax_t>(left, zeros.size()));
        if (wrote <= 0) {
            break;
        }
        left -= static_cast<std::uintmax_t>(wrote);
    }
    ::fsync(file);
    ::close(file);
}

void wipeFile(const fs::path& path, std::string& left) {
    writeOver(path);
    std::error_code problem;
    fs::remove(path, problem);
    if (problem) {
        left = path.string();
    }
}

}  // namespace

model::Result<void> wipeCopy(const std::string& bookPath) {
    std::string left;
    const fs::path photos = bookPath + ".photos";
    std::error_code problem;
    for (fs::recursive_directory_iterator at(photos, problem), end; !problem && at != end;
         at.increment(problem)) {
        if (at->is_regular_file(problem)) {
            writeOver(at->path());
        }
    }
    fs::remove_all(photos, problem);
    if (problem) {
        left = photos.string();
    }
    // The peer's file last: as long as it is there, the next meeting says again what is to be done.
    for (const auto& path : {bookPath + "-wal", bookPath + "-shm", bookPath, keyFileOf(bookPath),
                             peerFileOf(bookPath)}) {
        wipeFile(path, left);
    }
    return left.empty() ? model::Result<void>()
                        : model::Result<void>(model::damaged(model::saying(
                              "%1 could not be removed: remove it, and all beside it", left)));
}

}  // namespace ledgerboard::sync
