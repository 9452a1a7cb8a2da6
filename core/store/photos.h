// Where are the pictures? Files in a folder beside the book, each named by the digest of its bytes:
// <book>.photos/<first two hex digits>/<SHA-256, 64 hex digits>.
//
// A picture is on disk before keep() returns: written aside, synchronised, renamed, and its folders
// synchronised. So a row that names a digest, written after it, never names a file that a power cut
// took. What is there under its digest is never changed.
// Source: project decision; SHA-256 as in FIPS 180-4, by libsodium.
// Threads: any number, in any number of processes.
#pragma once

#include <filesystem>
#include <string>
#include <string_view>

#include "core/model/result.h"

namespace ledgerboard::store {

// Larger files are no photos, and would be read into memory whole.
inline constexpr std::size_t kLargestPhoto = 64u << 20;  // bytes

enum class PhotoState {
    Right,    // there, and its bytes have the digest
    Missing,  // not there
    Differs,  // there, and its bytes have another digest or can't be read
};

class Photos {
  public:
    // The photos of the book at `bookPath`. Nothing is made until something is kept.
    explicit Photos(const std::string& bookPath) : folder_(bookPath + ".photos") {}

    // 64 lower-case hex digits: the SHA-256 digest of `bytes`.
    [[nodiscard]] static std::string digestOf(std::string_view bytes);
    // Whether `text` has the form of a digest. What has not never becomes part of a path.
    [[nodiscard]] static bool isDigest(std::string_view text);

    // Keeps `bytes` and returns their digest. The same bytes twice are one file; a file that
    // differs from its digest is put right. Errors: larger than kLargestPhoto; (Damaged) the disk.
    [[nodiscard]] model::Result<std::string> keep(std::string_view bytes) const;

    // The bytes with this digest, checked. Errors: no digest, missing, differing.
    [[nodiscard]] model::Result<std::string> read(std::string_view digest) const;

    // Whether the file of `digest` is there and right; Missing where it is no digest.
    [[nodiscard]] PhotoState check(std::string_view digest) const;

    [[nodiscard]] const std::filesystem::path& folder() const { return folder_; }

    // Where the file of `digest` is or would be. Requires: isDigest(digest).
    [[nodiscard]] std::filesystem::path pathOf(std::string_view digest) const;

  private:
    std::filesystem::path folder_;
};

}  // namespace ledgerboard::store
