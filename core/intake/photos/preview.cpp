#include "core/intake/photos/preview.h"

#include <algorithm>
#include <cmath>
#include <cstdint>
#include <memory>
#include <turbojpeg.h>
#include <vector>

#include "core/intake/photos/exif.h"
#include "core/intake/photos/heif.h"
#include "core/intake/photos/picture.h"

namespace ledgerboard::intake {

namespace {

using model::Result;

// The smallest eighths at which the decoder still gives at least `wanted` of `whole` pixels.
tjscalingfactor scaleFor(int whole, int wanted) {
    tjscalingfactor best{1, 1};
    int count = 0;
    const tjscalingfactor* factors = tjGetScalingFactors(&count);
    for (int k = 0; factors != nullptr && k < count; ++k) {
        const int scaled = TJSCALED(whole, factors[k]);
        if (scaled >= wanted && scaled < TJSCALED(whole, best)) {
            best = factors[k];
        }
    }
    return best;
}

Result<Pixels> jpegPixels(std::string_view bytes, PictureSize size, bool onItsSide, int mostWidth) {
    const int across = onItsSide ? size.height : size.width;
    const tjscalingfactor scale = scaleFor(across, std::min(across, mostWidth));
    Pixels out{TJSCALED(size.width, scale), TJSCALED(size.height, scale), {}};
    if (std::int64_t{out.width} * out.height > kMostPixels) {
        return model::cannotBeMet("the picture is larger than a camera makes");
    }
    out.rgb.resize(3 * static_cast<std::size_t>(out.width) * static_cast<std::size_t>(out.height));
    const std::unique_ptr<void, int (*)(tjhandle)> reader(tjInitDecompress(), &tjDestroy);
    if (!reader || tjDecompress2(reader.get(), reinterpret_cast<const unsigned char*>(bytes.data()),
                                 bytes.size(), out.rgb.data(), out.width, 0, out.height, TJPF_RGB,
                                 TJFLAG_ACCURATEDCT | TJFLAG_LIMITSCANS) != 0) {
        return model::cannotBeMet("the picture is damaged or cut short");
    }
    return out;
}

// The picture as it was seen: `orientation` says where its stored rows and columns belong.
Pixels turned(const Pixels& in, int orientation) {
    if (orientation == 1) {
        return in;
    }
    const bool onItsSide = orientation >= 5;
    const bool mirrored =
        orientation == 2 || orientation == 3 || orientation == 7 || orientation == 8;
    const bool upsideDown =
        orientation == 3 || orientation == 4 || orientation == 6 || orientation == 7;
    Pixels out{onItsSide ? in.height : in.width, onItsSide ? in.width : in.height, {}};
    out.rgb.reserve(in.rgb.size());
    for (int y = 0; y < out.height; ++y) {
        for (int x = 0; x < out.width; ++x) {
            const int column = onItsSide ? y : x;
            const int row = onItsSide ? x : y;
            const std::uint8_t* pixel = in.at(mirrored ? in.width - 1 - column : column,
                                              upsideDown ? in.height - 1 - row : row);
            out.rgb.insert(out.rgb.end(), pixel, pixel + 3);
        }
    }
    return out;
}

// Made narrower by averaging what falls on each new pixel, and given with rows and columns
// exchanged, so that doing it twice makes a picture narrower and lower. Requires: 1 <= width <=
// in.width.
Pixels shrunkOnItsSide(const Pixels& in, int width) {
    Pixels out{in.height, width, {}};
    out.rgb.resize(3 * static_cast<std::size_t>(in.height) * static_cast<std::size_t>(width));
    const double step = static_cast<double>(in.width) / width;
    auto* pixel = out.rgb.data();
    for (int x = 0; x < width; ++x) {
        const double from = x * step;
        const double to = std::min(from + step, static_cast<double>(in.width));
        for (int y = 0; y < in.height; ++y) {
            double sum[3] = {0, 0, 0};
            for (int at = static_cast<int>(from); at < in.width && at < to; ++at) {
                const double share = std::min(to, at + 1.0) - std::max(from, double(at));
                for (int k = 0; k < 3; ++k) {
                    sum[k] += share * in.at(at, y)[k];
                }
            }
            for (const double value : sum) {
                *pixel++ =
                    static_cast<std::uint8_t>(std::clamp(value / (to - from) + 0.5, 0.0, 255.0));
            }
        }
    }
    return out;
}

Result<std::string> encoded(const Pixels& in, int quality) {
    const std::unique_ptr<void, int (*)(tjhandle)> press(tjInitCompress(), &tjDestroy);
    unsigned char* bytes = nullptr;
    unsigned long size = 0;
    const bool done =
        press && tjCompress2(press.get(), in.rgb.data(), in.width, 0, in.height, TJPF_RGB, &bytes,
                             &size, TJSAMP_420, quality, TJFLAG_ACCURATEDCT) == 0;
    const std::unique_ptr<unsigned char, void (*)(unsigned char*)> owned(bytes, &tjFree);
    if (!done) {
        return model::cannotBeMet("the JPEG library could not make a smaller copy");
    }
    return std::string(reinterpret_cast<const char*>(bytes), size);
}

// The picture as it is seen, at least `mostWidth` wide where it is that wide, and how large the
// whole of it is: the decoded one's sizes are rounded already.
struct Seen {
    Pixels picture;
    PictureSize whole;
};

Result<Seen> seen(std::string_view bytes, int mostWidth) {
    if (isHeif(bytes)) {
        auto pixels = heifPixels(bytes);
        if (!pixels.ok()) {
            return pixels.error();
        }
        const PictureSize whole{pixels.value().width, pixels.value().height};
        return Seen{std::move(pixels).value(), whole};
    }
    const auto size = pictureSize(bytes);
    if (!size.ok()) {
        return size.error();
    }
    const int orientation = cameraNoteOf(bytes).orientation;
    const bool onItsSide = orientation >= 5;
    const auto pixels = jpegPixels(bytes, size.value(), onItsSide, mostWidth);
    if (!pixels.ok()) {
        return pixels.error();
    }
    const auto [width, height] = size.value();
    return Seen{turned(pixels.value(), orientation),
                onItsSide ? PictureSize{height, width} : PictureSize{width, height}};
}

Result<std::string> madeAnew(std::string_view bytes, int mostWidth, int quality) {
    auto found = seen(bytes, mostWidth);
    if (!found.ok()) {
        return found.error();
    }
    Pixels& picture = found.value().picture;
    if (picture.width > mostWidth) {
        const PictureSize whole = found.value().whole;
        const auto height = static_cast<int>(
            std::lround(static_cast<double>(whole.height) * mostWidth / whole.width));
        picture = shrunkOnItsSide(shrunkOnItsSide(picture, mostWidth),
                                  std::clamp(height, 1, picture.height));
    }
    return encoded(picture, quality);
}

}  // namespace

Result<std::string> previewOf(std::string_view bytes) {
    return madeAnew(bytes, kPreviewWidth, kPreviewQuality);
}

Result<std::string> copyOf(std::string_view bytes) {
    return madeAnew(bytes, kCopyWidth, kCopyQuality);
}

}  // namespace ledgerboard::intake
