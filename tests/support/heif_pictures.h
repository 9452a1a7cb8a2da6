// What do tests use for a telephone's HEIC? Pictures painted in four plain corners, as those of
// pictures.h, coded by libheif with its HEVC coder.
#pragma once

#include <cstdint>
#include <libheif/heif.h>
#include <memory>
#include <stdexcept>
#include <string>

#include "tests/support/pictures.h"

namespace ledgerboard::tests {

inline void need(const heif_error& error) {
    if (error.code != heif_error_Ok) {
        throw std::runtime_error(error.message);
    }
}

// A HEIC with `corners`; where `time` is not empty, with the note of withCameraTime().
inline std::string paintedHeif(int width, int height, const std::string& time = "",
                               const std::string& offset = "", bool where = false) {
    using Context = std::unique_ptr<heif_context, void (*)(heif_context*)>;
    const Context context(heif_context_alloc(), &heif_context_free);
    heif_image* image = nullptr;
    need(
        heif_image_create(width, height, heif_colorspace_RGB, heif_chroma_interleaved_RGB, &image));
    const std::unique_ptr<heif_image, void (*)(const heif_image*)> owned(image,
                                                                         &heif_image_release);
    need(heif_image_add_plane(image, heif_channel_interleaved, width, height, 8));
    int stride = 0;
    std::uint8_t* rows = heif_image_get_plane(image, heif_channel_interleaved, &stride);
    const std::string corners = kUpright;
    for (int y = 0; y < height; ++y) {
        for (int x = 0; x < width; ++x) {
            const char c = corners[(y >= height / 2 ? 2u : 0u) + (x >= width / 2 ? 1u : 0u)];
            for (int k = 0; k < 3; ++k) {
                rows[stride * y + 3 * x + k] = c == "rgb"[k] || c == 'w' ? 255 : 0;
            }
        }
    }
    heif_encoder* coder = nullptr;
    need(heif_context_get_encoder_for_format(context.get(), heif_compression_HEVC, &coder));
    const std::unique_ptr<heif_encoder, void (*)(heif_encoder*)> held(coder, &heif_encoder_release);
    need(heif_encoder_set_lossy_quality(coder, 90));
    heif_image_handle* handle = nullptr;
    need(heif_context_encode_image(context.get(), image, coder, nullptr, &handle));
    const std::unique_ptr<heif_image_handle, void (*)(const heif_image_handle*)> kept(
        handle, &heif_image_handle_release);
    if (!time.empty()) {
        // The note as it stands in a JPEG, from its TIFF header on.
        const std::string jpeg = withCameraTime(paintedJpeg(8, 8), time, offset, where);
        const auto from = jpeg.find(std::string("Exif\0\0", 6)) + 6;
        const std::string note = jpeg.substr(from, jpeg.find("\xFF\xDB", from) - from);
        need(heif_context_add_exif_metadata(context.get(), handle, note.data(),
                                            static_cast<int>(note.size())));
    }
    std::string bytes;
    heif_writer writer{1, [](heif_context*, const void* data, std::size_t size, void* into) {
                           static_cast<std::string*>(into)->append(static_cast<const char*>(data),
                                                                   size);
                           return heif_error{heif_error_Ok, heif_suberror_Unspecified, "written"};
                       }};
    need(heif_context_write(context.get(), &writer, &bytes));
    return bytes;
}

}  // namespace ledgerboard::tests
