// What is said about photos: which are there, and a part of one. A part is one line of JSON, a
// newline, and the bytes as they are.
#pragma once

#include <cstdint>
#include <string>
#include <string_view>
#include <vector>

#include "core/model/id.h"
#include "core/model/result.h"

namespace ledgerboard::sync {

struct PhotosAsk {
    std::vector<std::string> digests;
};

struct PhotosAnswer {
    // For each digest asked: how many bytes the peer holds of it, and -1 where it has it whole.
    std::vector<std::int64_t> held;
    // Of those, the places of which the peer has a small copy and not the whole. May be left out.
    std::vector<std::int64_t> previews{};
};

// A part going up, or coming down. Going up, `bytes` begin at `offset`.
struct PhotoPart {
    std::string digest;
    std::int64_t size = 0;  // of the whole
    std::int64_t offset = 0;
    std::string bytes;
    // Going up: `bytes` are no part of it but the whole of a small copy, shown until it has come.
    bool preview = false;
};

// A part asked for: by digest (owners), or by the photo's row, which gives the copy made for it.
struct GetPhotoAsk {
    std::string digest;
    model::RawId photo;
    std::int64_t offset = 0;
    bool preview = false;  // a small copy will do
};

[[nodiscard]] std::string write(const PhotosAsk& message);
[[nodiscard]] std::string write(const PhotosAnswer& message);
[[nodiscard]] std::string write(const PhotoPart& message);
[[nodiscard]] std::string write(const GetPhotoAsk& message);

[[nodiscard]] model::Result<PhotosAsk> readPhotosAsk(std::string_view body);
[[nodiscard]] model::Result<PhotosAnswer> readPhotosAnswer(std::string_view body);
[[nodiscard]] model::Result<PhotoPart> readPhotoPart(std::string_view body);
[[nodiscard]] model::Result<GetPhotoAsk> readGetPhotoAsk(std::string_view body);

}  // namespace ledgerboard::sync
