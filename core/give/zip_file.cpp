#include "core/give/zip_file.h"

#include <array>
#include <cstdio>
#include <fcntl.h>
#include <filesystem>
#include <system_error>
#include <unistd.h>
#include <zip.h>

namespace ledgerboard::give {

namespace {

using model::Result;

constexpr zip_int64_t kMostEntries = 500'000;
constexpr std::size_t kPart = 1U << 16;

std::string reasonOf(int code) {
    zip_error_t error;
    zip_error_init_with_code(&error, code);
    std::string text = zip_error_strerror(&error);
    zip_error_fini(&error);
    return text;
}

bool synchronise(const std::string& path) {
    const int file = ::open(path.c_str(), O_RDONLY | O_CLOEXEC);
    if (file < 0) {
        return false;
    }
    const bool done = ::fsync(file) == 0;
    ::close(file);
    return done;
}

}  // namespace

Result<ZipWriter> ZipWriter::open(const std::string& path, model::Instant now) {
    const std::string aside = path + ".part";
    int code = 0;
    zip* archive = zip_open(aside.c_str(), ZIP_CREATE | ZIP_TRUNCATE, &code);
    if (archive == nullptr) {
        return model::cannotBeMet(path + " cannot be written: " + reasonOf(code));
    }
    return ZipWriter(archive, path, aside, now);
}

ZipWriter::ZipWriter(ZipWriter&& other) noexcept
    : archive_(other.archive_),
      path_(std::move(other.path_)),
      aside_(std::move(other.aside_)),
      now_(other.now_),
      held_(std::move(other.held_)) {
    other.archive_ = nullptr;
}

ZipWriter::~ZipWriter() {
    if (archive_ != nullptr) {
        zip_discard(archive_);
    }
}

model::Error ZipWriter::cannot(const std::string& why) const {
    return model::cannotBeMet(path_ + " cannot be written: " + why);
}

Result<void> ZipWriter::finish(const std::string& name, zip_source* source, bool compress) {
    if (source == nullptr) {
        return cannot(zip_strerror(archive_));
    }
    const zip_int64_t at = zip_file_add(archive_, name.c_str(), source, ZIP_FL_ENC_UTF_8);
    if (at < 0) {
        zip_source_free(source);
        return cannot(zip_strerror(archive_));
    }
    const auto index = static_cast<zip_uint64_t>(at);
    const auto seconds = static_cast<time_t>(now_.milliseconds() / 1000);
    const bool done = zip_set_file_compression(archive_, index,
                                               compress ? ZIP_CM_DEFLATE : ZIP_CM_STORE, 0) == 0 &&
                      zip_file_set_mtime(archive_, index, seconds, 0) == 0;
    return done ? Result<void>() : Result<void>(cannot(zip_strerror(archive_)));
}

Result<void> ZipWriter::add(const std::string& name, std::string bytes) {
    held_.push_back(std::make_unique<std::string>(std::move(bytes)));
    const std::string& kept = *held_.back();
    return finish(name, zip_source_buffer(archive_, kept.data(), kept.size(), 0), true);
}

Result<void> ZipWriter::addFile(const std::string& name, const std::string& path) {
    return finish(name, zip_source_file(archive_, path.c_str(), 0, -1), false);
}

Result<void> ZipWriter::close() {
    if (zip_close(archive_) != 0) {
        const model::Error error = cannot(zip_strerror(archive_));
        zip_discard(archive_);
        archive_ = nullptr;
        return error;
    }
    archive_ = nullptr;
    std::error_code problem;
    if (!synchronise(aside_)) {
        std::filesystem::remove(aside_, problem);
        return cannot("the disk did not take it");
    }
    std::filesystem::rename(aside_, path_, problem);
    if (problem) {
        std::error_code ignored;
        std::filesystem::remove(aside_, ignored);
        return cannot(problem.message());
    }
    return {};
}

Result<ZipReader> ZipReader::open(const std::string& path) {
    int code = 0;
    zip* archive = zip_open(path.c_str(), ZIP_RDONLY, &code);
    if (archive == nullptr) {
        return model::cannotBeMet(code == ZIP_ER_NOENT
                                      ? path + ": there is no such file"
                                      : path + ": not a whole zip file (" + reasonOf(code) + ")");
    }
    ZipReader reader(archive, path);
    if (zip_get_num_entries(archive, 0) > kMostEntries) {
        return model::cannotBeMet(path + ": more than 500,000 files in it");
    }
    return reader;
}

ZipReader::~ZipReader() {
    if (archive_ != nullptr) {
        zip_discard(archive_);
    }
}

bool ZipReader::has(const std::string& name) const {
    return zip_name_locate(archive_, name.c_str(), ZIP_FL_ENC_UTF_8) >= 0;
}

Result<std::string> ZipReader::read(const std::string& name, std::size_t most) const {
    const auto wrong = [&](const std::string& why) {
        return model::cannotBeMet(path_ + ", " + name + ": " + why);
    };
    zip_file_t* file = zip_fopen(archive_, name.c_str(), ZIP_FL_ENC_UTF_8);
    if (file == nullptr) {
        return wrong(has(name) ? zip_strerror(archive_) : "is not in it");
    }
    std::string bytes;
    std::array<char, kPart> part{};
    zip_int64_t got = 1;
    while (got > 0 && bytes.size() <= most) {
        got = zip_fread(file, part.data(), part.size());
        if (got > 0) {
            bytes.append(part.data(), static_cast<std::size_t>(got));
        }
    }
    const std::string why = got < 0 ? zip_file_strerror(file) : "";
    const int closed = zip_fclose(file);
    if (got < 0 || closed != 0) {
        return wrong("is damaged" + (why.empty() ? why : " (" + why + ")"));
    }
    if (bytes.size() > most) {
        return wrong("is larger than " + std::to_string(most >> 20) + " MiB");
    }
    return bytes;
}

}  // namespace ledgerboard::give
