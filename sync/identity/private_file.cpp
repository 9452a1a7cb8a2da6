#include "sync/identity/private_file.h"

#include <atomic>
#include <cerrno>
#include <cstring>
#include <fcntl.h>
#include <filesystem>
#include <sys/stat.h>
#include <unistd.h>

#include "core/model/saying.h"

namespace ledgerboard::sync {

using model::Result;

namespace {

model::Error cannot(const std::string& path, const char* what) {
    return model::damaged(model::saying("%1 cannot be %2: %3; check the folder and the disk", path,
                                        what, std::strerror(errno)));
}

// Closes at the end of its life.
class Descriptor {
  public:
    explicit Descriptor(int value) : value_(value) {}

    Descriptor(const Descriptor&) = delete;
    Descriptor& operator=(const Descriptor&) = delete;

    ~Descriptor() {
        if (value_ >= 0) {
            ::close(value_);
        }
    }

    [[nodiscard]] int get() const { return value_; }

  private:
    int value_;
};

Result<void> syncFolderOf(const std::string& path) {
    const auto parent = std::filesystem::path(path).parent_path();
    const std::string folder = parent.empty() ? "." : parent.string();
    const Descriptor file(::open(folder.c_str(), O_RDONLY | O_DIRECTORY | O_CLOEXEC));
    if (file.get() < 0 || ::fsync(file.get()) != 0) {
        return cannot(folder, "synchronised");
    }
    return {};
}

// A new file of a name nobody else uses, with `text` in it, on disk. Its name comes back.
Result<std::string> writeAside(const std::string& path, std::string_view text) {
    static std::atomic<unsigned> count{0};
    std::string aside =
        path + ".part-" + std::to_string(::getpid()) + "-" + std::to_string(count++);
    const Descriptor file(
        ::open(aside.c_str(), O_WRONLY | O_CREAT | O_TRUNC | O_NOFOLLOW | O_CLOEXEC, 0600));
    // A left-over of the same name may have been made more open.
    bool good = file.get() >= 0 && ::fchmod(file.get(), 0600) == 0;
    for (std::size_t at = 0; good && at < text.size();) {
        const auto wrote = ::write(file.get(), text.data() + at, text.size() - at);
        good = wrote > 0 || (wrote < 0 && errno == EINTR);
        at += wrote > 0 ? static_cast<std::size_t>(wrote) : 0;
    }
    if (!good || ::fsync(file.get()) != 0) {
        auto error = cannot(path, "written");
        ::unlink(aside.c_str());
        return error;
    }
    return aside;
}

}  // namespace

Result<std::optional<std::string>> readPrivate(const std::string& path) {
    const Descriptor file(::open(path.c_str(), O_RDONLY | O_NOFOLLOW | O_CLOEXEC));
    if (file.get() < 0) {
        if (errno == ENOENT) {
            return std::optional<std::string>();
        }
        return cannot(path, "read");
    }

    struct stat is {};

    if (::fstat(file.get(), &is) != 0) {
        return cannot(path, "read");
    }
    if (!S_ISREG(is.st_mode) || is.st_size > static_cast<off_t>(kLargestPrivateFile)) {
        return model::damaged(
            model::saying("%1 is not the file that was written there: remove it", path));
    }
    if ((is.st_mode & 0077) != 0) {
        return model::cannotBeMet(
            model::saying("%1 holds a secret and others can reach it: chmod 600 %2, and where "
                          "others have used this computer, remove the file and join anew",
                          path, path));
    }
    std::string text(static_cast<std::size_t>(is.st_size), '\0');
    for (std::size_t at = 0; at < text.size();) {
        const auto got = ::read(file.get(), text.data() + at, text.size() - at);
        if (got < 0 && errno == EINTR) {
            continue;
        }
        if (got <= 0) {
            return cannot(path, "read");
        }
        at += static_cast<std::size_t>(got);
    }
    return std::optional<std::string>(std::move(text));
}

Result<bool> makePrivate(const std::string& path, std::string_view text) {
    auto aside = writeAside(path, text);
    if (!aside.ok()) {
        return aside.error();
    }
    // By a link, which unlike a rename never replaces what another process made meanwhile.
    const bool made = ::link(aside.value().c_str(), path.c_str()) == 0;
    const bool there = !made && errno == EEXIST;
    const auto failure = cannot(path, "made");
    ::unlink(aside.value().c_str());
    if (!made && !there) {
        return failure;
    }
    if (auto synced = syncFolderOf(path); !synced.ok()) {
        return synced.error();
    }
    return made;
}

Result<void> replacePrivate(const std::string& path, std::string_view text) {
    auto aside = writeAside(path, text);
    if (!aside.ok()) {
        return aside.error();
    }
    if (::rename(aside.value().c_str(), path.c_str()) != 0) {
        auto failure = cannot(path, "replaced");
        ::unlink(aside.value().c_str());
        return failure;
    }
    return syncFolderOf(path);
}

}  // namespace ledgerboard::sync
