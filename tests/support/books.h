// Where do tests keep the books under test? In files; in a program that links postgres_books.cpp,
// in a PostgreSQL database, a schema for each path. The same tests run on both.
#pragma once

#include <functional>
#include <string>

#include "core/store/book.h"

namespace ledgerboard::tests {

struct BookPlace {
    bool isFile = true;
    std::function<model::Result<store::Book>(const std::string& path, const std::string& owner,
                                             model::Instant now, model::FillRandom random)>
        create = store::Book::create;
    // Where only a backup stands at `path`, it is brought in first.
    std::function<model::Result<store::Book>(const std::string& path, model::FillRandom random)>
        open = store::Book::open;
};

inline BookPlace& bookPlace() {
    static BookPlace place;
    return place;
}

inline model::Result<store::Book> createBook(const std::string& path, const std::string& owner,
                                             model::Instant now, model::FillRandom random) {
    return bookPlace().create(path, owner, now, std::move(random));
}

inline model::Result<store::Book> openBook(const std::string& path, model::FillRandom random) {
    return bookPlace().open(path, std::move(random));
}

}  // namespace ledgerboard::tests
