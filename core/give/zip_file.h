// How is a zip written and read? Inside core/give: libzip, closed up in two small classes.
//
// Threads: each object one thread's.
#pragma once

#include <cstdint>
#include <memory>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "core/model/date.h"
#include "core/model/result.h"

struct zip;
struct zip_source;

namespace ledgerboard::give {

// Nothing is at the path until close() returns without an error.
class ZipWriter {
  public:
    // Every entry is dated `now`. Errors: as close.
    [[nodiscard]] static model::Result<ZipWriter> open(const std::string& path, model::Instant now);
    ZipWriter(ZipWriter&&) noexcept;
    ZipWriter& operator=(ZipWriter&&) = delete;
    ~ZipWriter();

    // Keeps `bytes` until close. Errors: memory.
    [[nodiscard]] model::Result<void> add(const std::string& name, std::string bytes);
    // A file of the disk, read at close, kept as it is (pictures do not get smaller).
    [[nodiscard]] model::Result<void> addFile(const std::string& name, const std::string& path);
    // Writes it all, synchronises it and puts it in place. Errors (CannotBeMet): the disk.
    [[nodiscard]] model::Result<void> close();

  private:
    ZipWriter(zip* archive, std::string path, std::string aside, model::Instant now)
        : archive_(archive), path_(std::move(path)), aside_(std::move(aside)), now_(now) {}

    [[nodiscard]] model::Error cannot(const std::string& why) const;
    [[nodiscard]] model::Result<void> finish(const std::string& name, zip_source* source,
                                             bool compress);

    zip* archive_;
    std::string path_;
    std::string aside_;
    model::Instant now_;
    std::vector<std::unique_ptr<std::string>> held_;
};

class ZipReader {
  public:
    // Errors (CannotBeMet): missing, no zip, damaged, more than 500,000 entries.
    [[nodiscard]] static model::Result<ZipReader> open(const std::string& path);

    ZipReader(ZipReader&& other) noexcept
        : archive_(other.archive_), path_(std::move(other.path_)) {
        other.archive_ = nullptr;
    }

    ZipReader& operator=(ZipReader&&) = delete;
    ~ZipReader();

    [[nodiscard]] bool has(const std::string& name) const;
    // The bytes of an entry, checked against its checksum. Errors (CannotBeMet): not there, more
    // than `most` bytes (whatever it claims), damaged, encrypted.
    [[nodiscard]] model::Result<std::string> read(const std::string& name, std::size_t most) const;

  private:
    ZipReader(zip* archive, std::string path) : archive_(archive), path_(std::move(path)) {}

    zip* archive_;
    std::string path_;
};

}  // namespace ledgerboard::give
