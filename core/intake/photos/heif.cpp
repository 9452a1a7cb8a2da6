#include "core/intake/photos/heif.h"

#include <algorithm>
#include <libheif/heif.h>
#include <memory>

namespace ledgerboard::intake {

namespace {

using model::Result;

// Wider or higher than this is refused before anything is decoded.
constexpr int kWidest = 16'384;

using Image = std::unique_ptr<heif_image, void (*)(const heif_image*)>;

const std::uint8_t* bytesOf(std::string_view text) {
    return reinterpret_cast<const std::uint8_t*>(text.data());
}

// The file, open at its main picture. `bytes` must outlive it.
class Opened {
  public:
    explicit Opened(std::string_view bytes) : context_(heif_context_alloc(), &heif_context_free) {
        heif_context_set_maximum_image_size_limit(context_.get(), kWidest);
        heif_context_set_max_decoding_threads(context_.get(), 0);
        heif_image_handle* handle = nullptr;
        const bool read =
            heif_context_read_from_memory_without_copy(context_.get(), bytes.data(), bytes.size(),
                                                       nullptr)
                    .code == heif_error_Ok &&
            heif_context_get_primary_image_handle(context_.get(), &handle).code == heif_error_Ok;
        handle_.reset(read ? handle : nullptr);
    }

    [[nodiscard]] const heif_image_handle* main() const { return handle_.get(); }

  private:
    std::unique_ptr<heif_context, void (*)(heif_context*)> context_;
    std::unique_ptr<heif_image_handle, void (*)(const heif_image_handle*)> handle_{
        nullptr, &heif_image_handle_release};
};

Result<PictureSize> sizeOf(const Opened& opened) {
    if (opened.main() == nullptr) {
        return model::cannotBeMet(
            "the picture is damaged, cut short or of a kind that is not read "
            "here: save it as JPEG");
    }
    const PictureSize size{heif_image_handle_get_width(opened.main()),
                           heif_image_handle_get_height(opened.main())};
    if (size.width < 1 || size.height < 1) {
        return model::cannotBeMet("the picture is damaged or cut short");
    }
    if (std::int64_t{size.width} * size.height > kMostPixels) {
        return model::cannotBeMet("the picture is larger than a camera makes");
    }
    return size;
}

}  // namespace

bool isHeif(std::string_view bytes) {
    constexpr std::size_t kEnough = 64;  // the file says its kind at its very beginning
    const auto kind =
        heif_check_filetype(bytesOf(bytes), static_cast<int>(std::min(bytes.size(), kEnough)));
    return kind == heif_filetype_yes_supported || kind == heif_filetype_yes_unsupported;
}

Result<PictureSize> heifSize(std::string_view bytes) {
    return sizeOf(Opened(bytes));
}

Result<Pixels> heifPixels(std::string_view bytes) {
    const Opened opened(bytes);
    const auto size = sizeOf(opened);
    if (!size.ok()) {
        return size.error();
    }
    heif_image* decoded = nullptr;
    const auto error = heif_decode_image(opened.main(), &decoded, heif_colorspace_RGB,
                                         heif_chroma_interleaved_RGB, nullptr);
    const Image image(decoded, &heif_image_release);
    int stride = 0;
    const std::uint8_t* rows =
        image ? heif_image_get_plane_readonly(image.get(), heif_channel_interleaved, &stride)
              : nullptr;
    if (error.code != heif_error_Ok || rows == nullptr) {
        return model::cannotBeMet("the picture is damaged or cut short");
    }
    Pixels out{heif_image_get_width(image.get(), heif_channel_interleaved),
               heif_image_get_height(image.get(), heif_channel_interleaved),
               {}};
    const auto rowBytes = 3 * static_cast<std::ptrdiff_t>(out.width);
    out.rgb.reserve(static_cast<std::size_t>(rowBytes) * static_cast<std::size_t>(out.height));
    for (int y = 0; y < out.height; ++y) {
        const std::uint8_t* row = rows + static_cast<std::ptrdiff_t>(stride) * y;
        out.rgb.insert(out.rgb.end(), row, row + rowBytes);
    }
    return out;
}

std::string heifNote(std::string_view bytes) {
    const Opened opened(bytes);
    heif_item_id id = 0;
    if (opened.main() == nullptr ||
        heif_image_handle_get_list_of_metadata_block_IDs(opened.main(), "Exif", &id, 1) != 1) {
        return "";
    }
    std::string block(heif_image_handle_get_metadata_size(opened.main(), id), '\0');
    if (heif_image_handle_get_metadata(opened.main(), id, block.data()).code != heif_error_Ok ||
        block.size() < 4) {
        return "";
    }
    // ISO/IEC 23008-12, annex A: four bytes say how far behind them the TIFF header stands.
    std::size_t skip = 0;
    for (std::size_t k = 0; k < 4; ++k) {
        skip = skip << 8 | static_cast<std::uint8_t>(block[k]);
    }
    return skip < block.size() - 4 ? std::string("Exif\0\0", 6) + block.substr(4 + skip) : "";
}

}  // namespace ledgerboard::intake
