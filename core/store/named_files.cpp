#include "core/store/named_files.h"

#include <algorithm>

namespace ledgerboard::store {

namespace {

bool namesFile(const model::Field& field) {
    return field.unit == "SHA-256";
}

}  // namespace

std::string namedFile(const Record& record) {
    std::string digest;
    const auto fields = model::infoOf(record.kind).fields;
    const auto found = std::find_if(fields.begin(), fields.end(), namesFile);
    if (found != fields.end()) {
        model::readMember(record.at(found->code), digest);
    }
    return digest;
}

model::Result<std::vector<NamedFile>> namedFiles(const Book& book, bool withGone) {
    std::vector<NamedFile> files;
    for (const auto& info : model::kinds()) {
        if (std::none_of(info.fields.begin(), info.fields.end(), namesFile)) {
            continue;
        }
        auto records = book.records(info.kind, model::Id<model::Kind::Job>(), withGone);
        if (!records.ok()) {
            return records.error();
        }
        for (const auto& record : records.value()) {
            if (std::string digest = namedFile(record); !digest.empty()) {
                files.push_back({info.kind, record.id, std::move(digest), record.gone});
            }
        }
    }
    return files;
}

}  // namespace ledgerboard::store
