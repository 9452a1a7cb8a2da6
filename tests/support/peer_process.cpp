#include "tests/support/peer_process.h"

#include <chrono>
#include <csignal>
#include <fcntl.h>
#include <fstream>
#include <sstream>
#include <sys/prctl.h>
#include <sys/wait.h>
#include <thread>
#include <unistd.h>

#include "core/model/check.h"

namespace ledgerboard::tests {

namespace {

std::string contentsOf(const std::string& path) {
    std::ifstream in(path, std::ios::binary);
    std::ostringstream out;
    out << in.rdbuf();
    return out.str();
}

// What stands in `text` from behind the last `mark` up to `end`.
std::string between(const std::string& text, const std::string& mark, const std::string& end) {
    const auto from = text.rfind(mark);
    if (from == std::string::npos) {
        return "";
    }
    const auto begin = from + mark.size();
    return text.substr(begin, text.find_first_of(end, begin) - begin);
}

}  // namespace

PeerProcess::PeerProcess(const std::vector<std::string>& more) : more_(more) {
    start();
}

PeerProcess::~PeerProcess() {
    stop();
}

void PeerProcess::start() {
    std::vector<std::string> words = {LEDGERBOARD_PEER, "--book", folder_.file("house.book"),
                                      "--port", std::to_string(port_)};
    words.insert(words.end(), more_.begin(), more_.end());
    std::vector<char*> arguments;
    for (auto& word : words) {
        arguments.push_back(word.data());
    }
    arguments.push_back(nullptr);
    const std::string out = folder_.file("out");
    const std::string log = folder_.file("log");
    std::error_code ignored;
    std::filesystem::remove(out, ignored);
    std::filesystem::remove(log, ignored);
    process_ = ::fork();
    if (process_ == 0) {
        ::prctl(PR_SET_PDEATHSIG, SIGKILL);  // a test that ends early leaves nothing running
        const int to = ::open(out.c_str(), O_WRONLY | O_CREAT | O_TRUNC, 0600);
        const int err = ::open(log.c_str(), O_WRONLY | O_CREAT | O_TRUNC | O_APPEND, 0600);
        ::dup2(to, STDOUT_FILENO);
        ::dup2(err, STDERR_FILENO);
        ::execv(arguments[0], arguments.data());
        ::_exit(127);
    }
    for (int k = 0; k < 6'000 && port_ == 0; ++k) {
        const std::string port = between(logged(), R"("address":"127.0.0.1:)", "\"");
        port_ = port.empty() ? std::uint16_t{0} : static_cast<std::uint16_t>(std::stoul(port));
        std::this_thread::sleep_for(std::chrono::milliseconds(10));
    }
    for (int k = 0; k < 6'000 && logged().find("started") == std::string::npos; ++k) {
        std::this_thread::sleep_for(std::chrono::milliseconds(10));
    }
    model::require(port_ != 0 && isRunning(), ("the peer starts: " + logged()).c_str());
}

int PeerProcess::stop() {
    if (process_ < 0) {
        return -1;
    }
    ::kill(process_, SIGTERM);
    int status = 0;
    ::waitpid(process_, &status, 0);
    process_ = -1;
    return WIFEXITED(status) ? WEXITSTATUS(status) : -1;
}

void PeerProcess::kill() {
    if (process_ >= 0) {
        ::kill(process_, SIGKILL);
        ::waitpid(process_, nullptr, 0);
        process_ = -1;
    }
}

bool PeerProcess::isRunning() const {
    return process_ > 0 && ::waitpid(process_, nullptr, WNOHANG) == 0;
}

long PeerProcess::statusLine(const std::string& name) const {
    const std::string text = contentsOf("/proc/" + std::to_string(process_) + "/status");
    const std::string value = between(text, "\n" + name + ":", "\n");
    return value.empty() ? -1 : std::stol(value);
}

long PeerProcess::mostMemoryKib() const {
    return statusLine("VmHWM");
}

long PeerProcess::threads() const {
    return statusLine("Threads");
}

std::string PeerProcess::printed() const {
    return contentsOf(folder_.file("out"));
}

std::string PeerProcess::logged() const {
    return contentsOf(folder_.file("log"));
}

sync::PairingCode PeerProcess::code() const {
    for (int k = 0; k < 6'000 && printed().find("Start the peer again") == std::string::npos; ++k) {
        std::this_thread::sleep_for(std::chrono::milliseconds(10));
    }
    auto code = sync::PairingCode::parse(between(printed(), "  code     ", "\n"));
    model::require(code.ok(), "the peer prints a code");
    return code.value();
}

}  // namespace ledgerboard::tests
