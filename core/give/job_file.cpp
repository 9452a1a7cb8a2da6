#include "core/give/job_file.h"

#include <algorithm>
#include <array>
#include <filesystem>
#include <fstream>
#include <map>
#include <optional>
#include <set>

#include "core/give/job_document.h"
#include "core/give/zip_file.h"
#include "core/report/table.h"
#include "core/store/named_files.h"
#include "core/store/photos.h"

namespace ledgerboard::give {

namespace {

using model::Kind;
using model::RawId;
using model::Result;

constexpr const char* kDocument = "job.json";
constexpr std::size_t kLargestDocument = 256UL << 20;

constexpr const char* kReadMe =
    "A whole job given by Ledgerboard.\n\n"
    "job.json   every record of the job as it stood, with its id; made to be read back\n"
    "csv/       the same for people and spreadsheets, one file a kind\n"
    "photos/    the pictures as they were taken, each named by the SHA-256 of its bytes\n"
    "sounds/    spoken notes, named likewise\n\n"
    "To bring it into a book:  ledgerboard bring job FILE.zip\n"
    "The form of job.json is told in docs/job-file.md of the program's sources.\n";

// How a file ends: as what it is, so that other programs open it. `at` is where its beginning says
// so. ISO/IEC 14496-12 (heic, m4a), RFC 3533 (ogg), RIFF (wav).
struct Ending {
    const char* folder;
    std::size_t at;
    std::string_view mark;
    const char* ending;
};

constexpr std::array kEndings = {
    Ending{"photos/", 4, "ftyp", ".heic"}, Ending{"photos/", 0, "", ".jpg"},
    Ending{"sounds/", 0, "OggS", ".ogg"},  Ending{"sounds/", 4, "ftyp", ".m4a"},
    Ending{"sounds/", 0, "RIFF", ".wav"},  Ending{"sounds/", 0, "", ".bin"}};

std::string_view folderOf(Kind kind) {
    return kind == Kind::Photo ? "photos/" : "sounds/";
}

// What the file of a record of this kind is called in a zip.
std::string nameInZip(Kind kind, const std::string& digest, const std::filesystem::path& file) {
    std::array<char, 8> bytes{};
    std::ifstream(file, std::ios::binary).read(bytes.data(), bytes.size());
    const std::string_view beginning(bytes.data(), bytes.size());
    const auto ending = std::find_if(kEndings.begin(), kEndings.end(), [&](const Ending& one) {
        return folderOf(kind) == one.folder &&
               beginning.substr(one.at, one.mark.size()) == one.mark;
    });
    return ending->folder + digest + ending->ending;
}

// The same, of a zip at hand; nothing where the file is not in it.
std::optional<std::string> nameIn(const ZipReader& zip, Kind kind, const std::string& digest) {
    for (const auto& one : kEndings) {
        const std::string name = one.folder + digest + one.ending;
        if (folderOf(kind) == one.folder && zip.has(name)) {
            return name;
        }
    }
    return std::nullopt;
}

// What a record of this job is called in CSV: a name of its own, else its id.
std::map<RawId, std::string> namesOf(const std::vector<store::Record>& records) {
    std::map<RawId, std::string> names;
    for (const auto& record : records) {
        for (const auto& field : model::infoOf(record.kind).fields) {
            if (field.name == "name" || field.name == "object" || field.name == "question") {
                std::string name;
                model::readMember(record.at(field.code), name);
                if (!name.empty()) {
                    names[record.id] = name;
                }
            }
        }
    }
    return names;
}

std::string csvOf(Kind kind, const std::vector<store::Record>& records,
                  const model::NameRecord& name) {
    report::Table table;
    table.columns.push_back({"Id", false});
    for (const auto& field : model::infoOf(kind).fields) {
        table.columns.push_back({std::string(field.heading), false});
    }
    for (const auto& record : records) {
        if (record.kind != kind) {
            continue;
        }
        std::vector<std::string> cells{record.id.toString()};
        for (const auto& field : model::infoOf(kind).fields) {
            cells.push_back(model::printValue(field, record.at(field.code), name));
        }
        table.rows.push_back(std::move(cells));
    }
    return report::printCsv(table);
}

Result<void> addTables(ZipWriter& zip, const std::vector<store::Record>& records) {
    const auto names = namesOf(records);
    const model::NameRecord name = [&](RawId id) {
        const auto found = names.find(id);
        return found == names.end() ? id.toString() : found->second;
    };
    for (const auto& info : model::kinds()) {
        const bool any = std::any_of(records.begin(), records.end(),
                                     [&](const auto& record) { return record.kind == info.kind; });
        if (!any) {
            continue;
        }
        auto added =
            zip.add("csv/" + std::string(info.table) + ".csv", csvOf(info.kind, records, name));
        if (!added.ok()) {
            return added.error();
        }
    }
    return {};
}

Result<void> addFiles(ZipWriter& zip, const store::Photos& photos,
                      const std::vector<store::Record>& records, GivenJob& given) {
    std::set<std::string> names;
    for (const auto& record : records) {
        const std::string digest = store::namedFile(record);
        if (!store::Photos::isDigest(digest)) {
            continue;
        }
        const auto path = photos.pathOf(digest);
        const std::string name = nameInZip(record.kind, digest, path);
        if (!names.insert(name).second) {
            continue;
        }
        if (photos.check(digest) != store::PhotoState::Right) {
            given.missing.push_back(
                std::string(record.kind == Kind::Photo ? "photo " : "sound of ") +
                record.id.toString() + " is not on this device, so it is not in the file");
            continue;
        }
        auto added = zip.addFile(name, path.string());
        if (!added.ok()) {
            return added.error();
        }
        ++given.photos;
    }
    return {};
}

// Records that the book has not, and how those that it has compare.
Result<std::vector<const store::Record*>> newOnes(const store::Book& book, const ReadJob& read,
                                                  BroughtJob& brought) {
    std::vector<const store::Record*> fresh;
    for (const auto& record : read.records) {
        auto known = book.record(record.kind, record.id);
        if (!known.ok()) {
            return known.error();
        }
        if (!known.value()) {
            fresh.push_back(&record);
            continue;
        }
        const auto fields = model::infoOf(record.kind).fields;
        bool same = !known.value()->gone;
        for (std::size_t k = 0; k < fields.size(); ++k) {
            same = same && (meansDevice(fields[k]) || known.value()->values[k] == record.values[k]);
        }
        ++(same ? brought.same : brought.differ);
    }
    return fresh;
}

// Keeps the pictures and sounds of these records. With `tryOnly` they are only looked at.
Result<void> keepFiles(const ZipReader& zip, const store::Photos& photos,
                       const std::vector<const store::Record*>& records, bool tryOnly,
                       BroughtJob& brought) {
    std::set<std::string> done;
    for (const auto* record : records) {
        const std::string digest = store::namedFile(*record);
        if (digest.empty() || !done.insert(digest).second) {
            continue;
        }
        const auto name =
            store::Photos::isDigest(digest) ? nameIn(zip, record->kind, digest) : std::nullopt;
        if (!name) {
            brought.remarks.push_back(std::string(record->kind == Kind::Photo
                                                      ? "the picture of photo "
                                                      : "the sound of note ") +
                                      record->id.toString() + " is not in the file");
            continue;
        }
        auto bytes = zip.read(*name, store::kLargestPhoto);
        if (!bytes.ok()) {
            return bytes.error();
        }
        if (store::Photos::digestOf(bytes.value()) != digest) {
            return model::cannotBeMet(*name +
                                      ": its bytes are not those of its name; ask for the file "
                                      "again");
        }
        if (!tryOnly) {
            auto kept = photos.keep(bytes.value());
            if (!kept.ok()) {
                return kept.error();
            }
        }
        ++brought.photos;
    }
    return {};
}

}  // namespace

Result<GivenJob> giveJobFile(const store::Book& book, model::Id<Kind::Job> job,
                             const std::string& path, model::Instant now) {
    auto document = jobDocument(book, job, now);
    if (!document.ok()) {
        return document.error();
    }
    auto read = readJobDocument(document.value(), path);  // what goes out comes in again
    if (!read.ok()) {
        return read.error();
    }
    auto opened = ZipWriter::open(path, now);
    if (!opened.ok()) {
        return opened.error();
    }
    ZipWriter& zip = opened.value();
    GivenJob given;
    given.records = read.value().records.size();
    if (auto added = zip.add(kDocument, document.value()); !added.ok()) {
        return added.error();
    }
    if (auto added = zip.add("README.txt", kReadMe); !added.ok()) {
        return added.error();
    }
    const auto& records = read.value().records;
    if (auto added = addTables(zip, records); !added.ok()) {
        return added.error();
    }
    if (auto added = addFiles(zip, store::Photos(book.path()), records, given); !added.ok()) {
        return added.error();
    }
    if (auto closed = zip.close(); !closed.ok()) {
        return closed.error();
    }
    return given;
}

Result<BroughtJob> bringJobFile(store::Book& book, const std::string& path, bool tryOnly,
                                model::Instant now) {
    auto zip = ZipReader::open(path);
    if (!zip.ok()) {
        return zip.error();
    }
    auto text = zip.value().read(kDocument, kLargestDocument);
    if (!text.ok()) {
        return text.error();
    }
    auto read = readJobDocument(text.value(), path + ", " + kDocument);
    if (!read.ok()) {
        return read.error();
    }
    const auto position = book.position();
    BroughtJob brought;
    brought.name = read.value().name;
    auto fresh = newOnes(book, read.value(), brought);
    if (!fresh.ok()) {
        return fresh.error();
    }
    auto kept = keepFiles(zip.value(), store::Photos(book.path()), fresh.value(), tryOnly, brought);
    if (!kept.ok()) {
        return kept.error();
    }
    store::Action action("bring job " + brought.name, position);
    for (const auto* record : fresh.value()) {
        const auto fields = model::infoOf(record->kind).fields;
        for (std::size_t k = 0; k < fields.size(); ++k) {
            if (!model::isEmpty(record->values[k])) {
                action.set(record->id, fields[k].code, record->values[k]);
            }
        }
    }
    brought.added = fresh.value().size();
    for (const auto& name : read.value().unknown) {
        brought.remarks.push_back(name + " is of a newer version and was left out");
    }
    if (!tryOnly && !action.empty()) {
        if (auto done = book.commit(action, now); !done.ok()) {
            return model::Error{done.error().code, path + ": " + done.error().message};
        }
    }
    return brought;
}

}  // namespace ledgerboard::give
