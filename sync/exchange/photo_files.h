// How do bytes of photos stand on disk while they arrive? Appended to a file of their own, on disk
// before anything says so; given their place once they are whole.
//
// Beside the originals (core/store/photos.h) a photo folder has arriving/ for what is under way,
// previews/ for small copies and copies/ for what other roles get or have, each file named by whom
// it is of. Threads: one at a time for each file.
#pragma once

#include <cstdint>
#include <filesystem>
#include <optional>
#include <string>
#include <string_view>

namespace ledgerboard::sync {

inline constexpr const char* kArriving = "arriving";
inline constexpr const char* kPreviews = "previews";
inline constexpr const char* kCopies = "copies";

// Adds bytes at the end of a file, made where there is none; on disk before it returns. False: the
// disk.
[[nodiscard]] bool appendSynced(const std::filesystem::path& path, std::string_view bytes);

// The file, made whole or not at all. False: the disk.
[[nodiscard]] bool writeWhole(const std::filesystem::path& path, std::string_view bytes);

// The bytes of a file; empty where there is none or it can't be read.
[[nodiscard]] std::string wholeFile(const std::filesystem::path& path);

// How many bytes a file has; nothing where there is none.
[[nodiscard]] std::optional<std::int64_t> sizeOf(const std::filesystem::path& path);

// Gives the file at `from` the name `to`, on disk before it returns. False: the disk.
[[nodiscard]] bool putInPlace(const std::filesystem::path& from, const std::filesystem::path& to);

}  // namespace ledgerboard::sync
