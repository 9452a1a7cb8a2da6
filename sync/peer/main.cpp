// The programs `ledgerboard-peer` and `ledgerboard-peer-shared`: the one place that reads the clock
// and chance, and hears the signals to stop.
#include <arpa/inet.h>
#include <atomic>
#include <cerrno>
#include <csignal>
#include <exception>
#include <filesystem>
#include <ifaddrs.h>
#include <iostream>
#include <malloc.h>
#include <net/if.h>
#include <pthread.h>
#include <string>
#include <sys/stat.h>
#include <system_error>
#include <thread>
#include <unistd.h>

#include "core/model/machine.h"
#include "sync/peer/peer_program.h"

namespace {

using namespace ledgerboard;

// The first IPv4 address of this computer that is not its own loopback; may be empty.
std::string ownAddress() {
    ifaddrs* list = nullptr;
    if (::getifaddrs(&list) != 0) {
        return "";
    }
    std::string out;
    for (const ifaddrs* each = list; each != nullptr && out.empty(); each = each->ifa_next) {
        const bool up = (each->ifa_flags & IFF_UP) != 0 && (each->ifa_flags & IFF_LOOPBACK) == 0;
        if (each->ifa_addr != nullptr && each->ifa_addr->sa_family == AF_INET && up) {
            char text[INET_ADDRSTRLEN] = {};
            ::inet_ntop(AF_INET, &reinterpret_cast<sockaddr_in*>(each->ifa_addr)->sin_addr, text,
                        sizeof text);
            out = text;
        }
    }
    ::freeifaddrs(list);
    return out;
}

// This program goes on as the one that stands beside it, or where it was installed. Returns why it
// does not.
std::string becomeShared(char** argv) {
    std::error_code problem;
    const auto folder = std::filesystem::read_symlink("/proc/self/exe", problem).parent_path();
    const std::string name = "ledgerboard-peer-shared";
    const std::string beside = (folder / name).string();
    ::execv(beside.c_str(), argv);
    ::execv((folder.parent_path() / "lib/ledgerboard" / name).c_str(), argv);
    return "a book in a database is served by the program " + name + ", which cannot be started (" +
           std::generic_category().message(errno) + "): put it beside this one, as " + beside;
}

}  // namespace

int main(int argc, char** argv) {
    // Calls are answered one after another, so threads need no heaps of their own, each of which
    // would keep what the largest message took.
    ::mallopt(M_ARENA_MAX, 1);
    // Blocked in every thread, and waited for by one: nothing is interrupted in the middle.
    sigset_t stopping;
    sigemptyset(&stopping);
    sigaddset(&stopping, SIGTERM);
    sigaddset(&stopping, SIGINT);
    sigaddset(&stopping, SIGUSR1);  // of our own making: the waiting is over
    ::pthread_sigmask(SIG_BLOCK, &stopping, nullptr);
    std::signal(SIGPIPE, SIG_IGN);
    ::umask(0077);  // the book and its photos are nobody else's either

    std::atomic<bool> over{false};
    std::thread waiting;
    const auto endWaiting = [&over, &waiting] {
        over = true;
        if (waiting.joinable()) {
            ::pthread_kill(waiting.native_handle(), SIGUSR1);
            waiting.join();
        }
    };
    sync::PeerSurroundings around{
        model::clockNow,
        model::fillRandom,
        std::cout,
        std::cerr,
        ::isatty(STDOUT_FILENO) != 0,
        ownAddress(),
        [&](const std::function<void()>& stop) {
            if (!stop) {
                endWaiting();
                return;
            }
            waiting = std::thread([&stopping, &over, stop] {
                int signal = SIGUSR1;
                while (signal == SIGUSR1 && !over) {
                    ::sigwait(&stopping, &signal);
                }
                if (!over) {
                    stop();
                }
            });
        },
        sync::openShared(),
        [argv] { return becomeShared(argv); },
    };
    int status = 1;
    try {
        status = sync::runPeer({argv + 1, argv + argc}, around);
    } catch (const std::exception& error) {
        std::cerr << "ledgerboard-peer: stopped by something unforeseen (" << error.what() << ")\n";
    }
    endWaiting();
    return status;
}
