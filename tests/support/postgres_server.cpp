#include "tests/support/postgres_server.h"

#include <csignal>
#include <cstdio>
#include <fcntl.h>
#include <fstream>
#include <pwd.h>
#include <sstream>
#include <sys/prctl.h>
#include <sys/wait.h>
#include <thread>
#include <unistd.h>
#include <vector>

#include "core/model/check.h"

namespace ledgerboard::tests {

namespace {

// The folder of the newest version that Debian's packages put there.
std::string programsFolder() {
    std::string newest;
    std::error_code problem;
    for (const auto& each : std::filesystem::directory_iterator("/usr/lib/postgresql", problem)) {
        newest = std::max(newest, each.path().string());
    }
    model::require(!newest.empty(), "Debian's package postgresql is needed: run scripts/set-up");
    return newest + "/bin/";
}

std::string pathOf(const std::string& program) {
    const std::string beside = programsFolder() + program;
    return std::filesystem::exists(beside) ? beside : "/usr/bin/" + program;
}

// Whom the server runs as, where the tests are root's.
const passwd* serversUser() {
    if (::geteuid() != 0) {
        return nullptr;
    }
    const passwd* user = ::getpwnam("postgres");
    return user != nullptr ? user : ::getpwnam("nobody");
}

// Starts a program as the server's user, both outputs going to the file `to`.
pid_t startProgram(const std::string& program, const std::vector<std::string>& words,
                   const std::string& to) {
    const std::string path = pathOf(program);
    const passwd* user = serversUser();
    const pid_t child = ::fork();
    if (child != 0) {
        return child;
    }
    const int out = ::open(to.c_str(), O_WRONLY | O_CREAT | O_TRUNC, 0666);
    ::dup2(out, STDOUT_FILENO);
    ::dup2(out, STDERR_FILENO);
    if (user != nullptr && (::setgid(user->pw_gid) != 0 || ::setuid(user->pw_uid) != 0)) {
        ::_exit(126);
    }
    ::prctl(PR_SET_PDEATHSIG, SIGQUIT);  // a test that ends early leaves nothing running
    ::setenv("LC_ALL", "C", 1);
    if (::chdir("/") != 0) {
        ::_exit(126);
    }
    std::vector<char*> arguments = {const_cast<char*>(path.c_str())};
    for (const auto& word : words) {
        arguments.push_back(const_cast<char*>(word.c_str()));
    }
    arguments.push_back(nullptr);
    ::execv(path.c_str(), arguments.data());
    ::_exit(127);
}

std::string contentsOf(const std::string& path) {
    std::ifstream in(path, std::ios::binary);
    std::ostringstream out;
    out << in.rdbuf();
    return out.str();
}

}  // namespace

PostgresServer::PostgresServer() {
    if (const passwd* user = serversUser()) {
        model::require(::chown(folder_.path().c_str(), user->pw_uid, user->pw_gid) == 0,
                       "the server's user gets its folder");
    }
    std::filesystem::permissions(folder_.path(), std::filesystem::perms::all);
    const std::string password = folder_.file("password");
    std::ofstream(password) << kPassword << "\n";
    const std::string said =
        run("initdb", {"-D", folder_.file("data"), "-U", "ledgerboard", "-A", "scram-sha-256",
                       "--pwfile", password, "-E", "UTF8", "--locale=C", "--no-sync"});
    model::require(std::filesystem::exists(folder_.file("data")), said.c_str());
    start();
}

PostgresServer::~PostgresServer() {
    kill();
}

void PostgresServer::start() {
    process_ = startProgram(
        "postgres",
        {"-D", folder_.file("data"), "-k", folder_.path().string(), "-c", "listen_addresses=", "-c",
         "shared_buffers=16MB", "-c", "max_connections=60", "-c", "max_wal_size=128MB"},
        folder_.file("log"));
    for (int k = 0; k < 600; ++k) {
        if (run("pg_isready", {"-q", "-h", folder_.path().string(), "-t", "1"}).empty() &&
            sql("SELECT 'in'") == "in\n") {
            return;
        }
        std::this_thread::sleep_for(std::chrono::milliseconds(20));
    }
    model::require(false, ("the server starts: " + contentsOf(folder_.file("log"))).c_str());
}

void PostgresServer::kill() {
    if (process_ > 0) {
        // It and all its processes at once: nothing is written on the way out.
        const std::string number = std::to_string(process_);
        std::istringstream children(
            contentsOf("/proc/" + number + "/task/" + number + "/children"));
        ::kill(process_, SIGKILL);
        for (pid_t child = 0; children >> child;) {
            ::kill(child, SIGKILL);
        }
        ::waitpid(process_, nullptr, 0);
        process_ = -1;
    }
}

void PostgresServer::stop() {
    if (process_ > 0) {
        ::kill(process_, SIGINT);  // fast shutdown
        ::waitpid(process_, nullptr, 0);
        process_ = -1;
    }
}

std::string PostgresServer::address(const std::string& database,
                                    const std::string& password) const {
    return "postgresql://ledgerboard:" + password + "@/" + database +
           "?host=" + folder_.path().string();
}

std::string PostgresServer::run(const std::string& program,
                                const std::vector<std::string>& words) const {
    static int count = 0;
    const std::string to =
        folder_.file("said-" + std::to_string(::getpid()) + "-" + std::to_string(++count));
    const pid_t child = startProgram(program, words, to);
    ::waitpid(child, nullptr, 0);
    std::string said = contentsOf(to);
    std::error_code ignored;
    std::filesystem::remove(to, ignored);
    return said;
}

void PostgresServer::restore(const std::string& dump, const std::string& database) const {
    const std::string script = folder_.file("dump.sql");
    std::ofstream(script) << dump;
    std::filesystem::permissions(script, std::filesystem::perms::all);
    run("psql", {"-X", "-q", "-f", script, address(database)});
}

PostgresServer& sharedPostgres() {
    // Ended by the program's end, with it or by its going away.
    static PostgresServer server;
    return server;
}

}  // namespace ledgerboard::tests
