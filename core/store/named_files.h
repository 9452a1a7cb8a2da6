// Which files does a book name? The pictures of its photos and the sounds of its spoken notes: each
// stands under its digest in the folder of core/store/photos.h.
//
// Source: the catalog; a field of unit SHA-256 names a file, and a kind has one such field at most.
#pragma once

#include <string>
#include <vector>

#include "core/model/result.h"
#include "core/store/book.h"

namespace ledgerboard::store {

struct NamedFile {
    model::Kind kind = model::Kind::Photo;
    model::RawId id;  // of the record that names it
    std::string digest;
    bool gone = false;  // whether that record was dropped
};

// The digest that a record names; empty where it names none.
[[nodiscard]] std::string namedFile(const Record& record);

// Every file that the book names, in order of kind and id; by dropped records too where asked. What
// is named twice is listed twice. Errors: of the book.
[[nodiscard]] model::Result<std::vector<NamedFile>> namedFiles(const Book& book, bool withGone);

}  // namespace ledgerboard::store
