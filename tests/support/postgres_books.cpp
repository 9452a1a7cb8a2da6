// Where this is linked, tests keep their books in PostgreSQL: see books.h.
#include "tests/support/postgres_books.h"

#include <filesystem>

#include "core/store/postgres/postgres_backend.h"

#include "tests/support/books.h"
#include "tests/support/postgres_server.h"

namespace ledgerboard::tests {

// The same for the same path, in every process.
std::string schemaOf(const std::string& path) {
    std::uint64_t hash = 1469598103934665603ULL;
    for (const char c : path) {
        hash = (hash ^ static_cast<unsigned char>(c)) * 1099511628211ULL;
    }
    return "t" + std::to_string(hash);
}

model::Result<std::unique_ptr<store::Backend>> postgresBackend(const std::string& path) {
    auto address = store::PostgresAddress::parse(sharedPostgres().address());
    return address.ok() ? store::PostgresBackend::open(address.value(), schemaOf(path))
                        : model::Result<std::unique_ptr<store::Backend>>(address.error());
}

namespace {

model::Result<store::Book> create(const std::string& path, const std::string& owner,
                                  model::Instant now, model::FillRandom random) {
    auto backend = postgresBackend(path);
    return backend.ok() ? store::Book::createIn(std::move(backend).value(), path, owner, now,
                                                std::move(random))
                        : model::Result<store::Book>(backend.error());
}

model::Result<store::Book> open(const std::string& path, model::FillRandom random) {
    auto backend = postgresBackend(path);
    if (!backend.ok()) {
        return backend.error();
    }
    if (std::filesystem::is_regular_file(path)) {
        auto file = store::Book::open(path, random);
        if (!file.ok()) {
            return file.error();
        }
        auto made =
            store::Book::createCopyIn(std::move(backend).value(), path, file.value(), random);
        std::filesystem::remove(path);  // it is in the database from here on
        return made;
    }
    return store::Book::openIn(std::move(backend).value(), path, {}, std::move(random));
}

[[maybe_unused]] const bool kInPostgres = [] {
    bookPlace() = {false, create, open};
    return true;
}();

}  // namespace

}  // namespace ledgerboard::tests
