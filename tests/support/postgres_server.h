// How do tests get a PostgreSQL server? Debian's own programs, in a folder of the test's, on a
// socket there; made once a program, ended with it. Not as root, which the server refuses to be.
#pragma once

#include <memory>
#include <string>
#include <sys/types.h>
#include <vector>

#include "tests/support/fixed_chance.h"

namespace ledgerboard::tests {

class PostgresServer {
  public:
    // Makes the cluster and starts it. Requires: Debian's package postgresql is here, and starts.
    PostgresServer();
    PostgresServer(const PostgresServer&) = delete;
    PostgresServer& operator=(const PostgresServer&) = delete;
    ~PostgresServer();

    // Starts it again in the same folder; returns when it lets callers in.
    void start();
    // As when its machine's power is switched off, but for the disk.
    void kill();
    // Ends callers' connections and stops.
    void stop();

    // postgresql://..., with the password unless another is said.
    [[nodiscard]] std::string address(const std::string& database = "postgres",
                                      const std::string& password = kPassword) const;
    // What a program of its own says, such as psql or pg_dump, run as its user.
    std::string run(const std::string& program, const std::vector<std::string>& words) const;

    // The book's tables as pg_dump writes them, and back into a database.
    [[nodiscard]] std::string dump() const {
        return run("pg_dump", {"-n", "ledgerboard", address()});
    }

    void restore(const std::string& dump, const std::string& database = "postgres") const;

    // An SQL command, in a database.
    std::string sql(const std::string& command, const std::string& database = "postgres") const {
        return run("psql", {"-X", "-A", "-t", "-q", "-c", command, address(database)});
    }

    static constexpr const char* kPassword = "Tr4verse-Plinth-88";

  private:
    // In memory where there is some: a process that is killed loses nothing of that, and what a
    // power cut would take is for the server's own tests.
    TestFolder folder_{(preferMemory(), "pg")};
    pid_t process_ = -1;
};

// The one that all tests of this program share.
[[nodiscard]] PostgresServer& sharedPostgres();

}  // namespace ledgerboard::tests
