#include "core/intake/bank/bank_program.h"

#include <array>
#include <cerrno>
#include <csignal>
#include <fcntl.h>
#include <filesystem>
#include <poll.h>
#include <spawn.h>
#include <sys/wait.h>
#include <unistd.h>
#include <vector>

namespace ledgerboard::intake {

namespace {

namespace fs = std::filesystem;

constexpr std::size_t kMostPrinted = 256UL << 20;
constexpr std::size_t kMostComplained = 64UL << 10;
constexpr int kAskEveryMs = 100;  // whether to go on

// Both ends of a pipe, closed when done with.
struct Pipe {
    std::array<int, 2> ends{-1, -1};

    Pipe() = default;
    Pipe(const Pipe&) = delete;
    Pipe& operator=(const Pipe&) = delete;

    ~Pipe() {
        shut(0);
        shut(1);
    }

    bool open() { return ::pipe2(ends.data(), O_CLOEXEC) == 0; }

    void shut(std::size_t end) {
        if (ends.at(end) >= 0) {
            ::close(ends.at(end));
            ends.at(end) = -1;
        }
    }
};

// Takes what is there to read. False at the end, or beyond `most`.
bool take(int from, std::string& to, std::size_t most) {
    std::array<char, 65536> part{};
    const ssize_t got = ::read(from, part.data(), part.size());
    if (got < 0) {
        return errno == EINTR || errno == EAGAIN;
    }
    to.append(part.data(), static_cast<std::size_t>(got));
    return got > 0 && to.size() <= most;
}

// Reads both pipes to their ends, so that neither fills up and stops the program. False where it
// was to go on no more.
bool readBoth(Pipe& out, std::string& printed, Pipe& err, std::string& complained,
              const std::function<bool()>& goOn) {
    bool more = true;
    while (more) {
        std::array<pollfd, 2> waits{pollfd{out.ends[0], POLLIN, 0}, pollfd{err.ends[0], POLLIN, 0}};
        if (::poll(waits.data(), waits.size(), goOn ? kAskEveryMs : -1) < 0 && errno != EINTR) {
            return true;
        }
        if (goOn && !goOn()) {
            return false;
        }
        if (waits[0].revents != 0 && !take(out.ends[0], printed, kMostPrinted)) {
            out.shut(0);
        }
        if (waits[1].revents != 0 && !take(err.ends[0], complained, kMostComplained)) {
            err.shut(0);
        }
        more = out.ends[0] >= 0 || err.ends[0] >= 0;
    }
    return true;
}

// "ledgerboard-ofx: april.ofx: cut off\n" without what the person need not know.
std::string sentence(std::string text) {
    const std::string name = "ledgerboard-ofx: ";
    if (text.compare(0, name.size(), name) == 0) {
        text.erase(0, name.size());
    }
    while (!text.empty() && text.back() == '\n') {
        text.pop_back();
    }
    return text;
}

}  // namespace

std::string bankProgramBeside(const std::string& self) {
    const fs::path folder = fs::path(self).parent_path();
    const fs::path beside = folder / "ledgerboard-ofx";
    const fs::path inLib = folder.parent_path() / "lib" / "ledgerboard" / "ledgerboard-ofx";
    std::error_code ignored;
    return (!fs::exists(beside, ignored) && fs::exists(inLib, ignored) ? inLib : beside).string();
}

model::Result<std::string> readByBankProgram(const std::string& program, const std::string& file,
                                             const std::string& timeZone,
                                             const std::function<bool()>& goOn) {
    std::error_code problem;
    if (!fs::exists(program, problem)) {
        return model::cannotBeMet(
            file +
            ": bank downloads are read by a program of its own, ledgerboard-ofx, which is "
            "not installed here: install it, or bring the lines as CSV");
    }
    Pipe out;
    Pipe err;
    if (!out.open() || !err.open()) {
        return model::cannotBeMet(file + ": no more files can be opened: close some and try again");
    }
    posix_spawn_file_actions_t actions;
    ::posix_spawn_file_actions_init(&actions);
    ::posix_spawn_file_actions_adddup2(&actions, out.ends[1], STDOUT_FILENO);
    ::posix_spawn_file_actions_adddup2(&actions, err.ends[1], STDERR_FILENO);
    std::string name = program;
    std::string what = file;
    std::string zone = timeZone.empty() ? "UTC" : timeZone;
    std::array<char*, 4> arguments{name.data(), what.data(), zone.data(), nullptr};
    pid_t child = 0;
    const int failed =
        ::posix_spawn(&child, program.c_str(), &actions, nullptr, arguments.data(), environ);
    ::posix_spawn_file_actions_destroy(&actions);
    if (failed != 0) {
        return model::cannotBeMet(file + ": " + program + " could not be started (" +
                                  std::generic_category().message(failed) + ")");
    }
    out.shut(1);
    err.shut(1);
    std::string printed;
    std::string complained;
    const bool whole = readBoth(out, printed, err, complained, goOn);
    if (!whole) {
        ::kill(child, SIGTERM);
    }
    int status = 0;
    while (::waitpid(child, &status, 0) < 0 && errno == EINTR) {
    }
    if (!whole) {
        return model::cannotBeMet(file + ": stopped before it was read");
    }
    if (!WIFEXITED(status) || WEXITSTATUS(status) != 0) {
        const std::string why = sentence(complained);
        return model::cannotBeMet(
            why.empty() ? file + ": could not be read as a bank download: download it again" : why);
    }
    if (printed.size() > kMostPrinted) {
        return model::cannotBeMet(file + ": more lines than can be taken at once");
    }
    return printed;
}

}  // namespace ledgerboard::intake
