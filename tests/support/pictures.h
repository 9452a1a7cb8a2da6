// What do tests use for photos? JPEG pictures painted on the spot, in four plain corners, and a way
// to look at the corners of one.
#pragma once

#include <array>
#include <cstdint>
#include <memory>
#include <string>
#include <turbojpeg.h>
#include <vector>

namespace ledgerboard::tests {

// The corners of a picture, each one of "rgbw": red, green, blue, white. In order: top left, top
// right, bottom left, bottom right.
using Corners = std::string;

inline constexpr const char* kUpright = "rgbw";

// A JPEG with `corners`, each a quarter of it. `shade` (0 to 99) makes pictures that differ.
inline std::string paintedJpeg(int width, int height, const Corners& corners = kUpright,
                               int shade = 0) {
    const auto light = static_cast<std::uint8_t>(255 - shade);
    std::vector<std::uint8_t> pixels;
    for (int y = 0; y < height; ++y) {
        for (int x = 0; x < width; ++x) {
            const char c = corners[(y >= height / 2 ? 2 : 0) + (x >= width / 2 ? 1 : 0)];
            for (const char part : {'r', 'g', 'b'}) {
                pixels.push_back(c == part || c == 'w' ? light : 0);
            }
        }
    }
    const std::unique_ptr<void, int (*)(tjhandle)> press(tjInitCompress(), &tjDestroy);
    unsigned char* bytes = nullptr;
    unsigned long size = 0;
    tjCompress2(press.get(), pixels.data(), width, 0, height, TJPF_RGB, &bytes, &size, TJSAMP_444,
                90, 0);
    const std::unique_ptr<unsigned char, void (*)(unsigned char*)> owned(bytes, &tjFree);
    return std::string(reinterpret_cast<const char*>(bytes), size);
}

// `jpeg` with a camera's note of how it was held (1 to 8): an APP1 segment behind the first marker.
// Source: Exif 2.32 (CIPA DC-008), 4.5.4 and 4.6.2.
inline std::string withOrientation(const std::string& jpeg, int orientation) {
    std::string note("Exif\0\0MM\0*\0\0\0\x08\0\x01\x01\x12\0\x03\0\0\0\x01\0", 25);
    note += static_cast<char>(orientation);
    note += std::string(6, '\0');  // the rest of the value, and no further directory
    const auto length = note.size() + 2;
    std::string segment = "\xFF\xE1";
    segment += static_cast<char>(length >> 8);
    segment += static_cast<char>(length & 0xFF);
    return jpeg.substr(0, 2) + segment + note + jpeg.substr(2);
}

// `jpeg` with a camera's note of when it was taken ("2026:05:08 14:05:00") and, where `offset` is
// not empty ("-05:00"), how far its clock is from UTC; with `where` also a place of its own making.
// Source: Exif 2.32 (CIPA DC-008), 4.6.2 (directories), 4.6.3 (pointers), 4.6.5.2 (date and time).
inline std::string withCameraTime(const std::string& jpeg, const std::string& time,
                                  const std::string& offset = "", bool where = false) {
    const auto number = [](std::uint32_t value, int bytes) {
        std::string out;
        for (int shift = 8 * (bytes - 1); shift >= 0; shift -= 8) {
            out += static_cast<char>(value >> shift & 0xff);
        }
        return out;
    };
    const auto entry = [&](std::uint32_t tag, std::uint32_t type, std::uint32_t count,
                           std::uint32_t value) {
        return number(tag, 2) + number(type, 2) + number(count, 4) + number(value, 4);
    };
    constexpr std::uint32_t kAscii = 2;
    constexpr std::uint32_t kLong = 4;
    const std::uint32_t pointers = where ? 2 : 1;
    const std::uint32_t exifAt = 8 + 2 + 12 * pointers + 4;
    const std::uint32_t facts = offset.empty() ? 1 : 2;
    const std::uint32_t textAt = exifAt + 2 + 12 * facts + 4;
    const auto offsetAt = textAt + static_cast<std::uint32_t>(time.size()) + 1;
    const std::uint32_t gpsAt = offsetAt + (offset.empty() ? 0 : 7);
    std::string note = std::string("MM\0*", 4) + number(8, 4) + number(pointers, 2) +
                       entry(0x8769, kLong, 1, exifAt);
    note += where ? entry(0x8825, kLong, 1, gpsAt) : "";
    note += number(0, 4) + number(facts, 2) +
            entry(0x9003, kAscii, static_cast<std::uint32_t>(time.size()) + 1, textAt);
    note += offset.empty() ? "" : entry(0x9011, kAscii, 7, offsetAt);
    note += number(0, 4) + time + std::string(1, '\0');
    note += offset.empty() ? "" : offset + std::string(1, '\0');
    // North, as the one letter that fits beside its tag.
    note += where ? number(1, 2) + number(1, 2) + number(kAscii, 2) + number(2, 4) +
                        std::string("N\0\0\0", 4) + number(0, 4)
                  : "";
    const std::string segment = std::string("Exif\0\0", 6) + note;
    return jpeg.substr(0, 2) + "\xFF\xE1" +
           number(static_cast<std::uint32_t>(segment.size()) + 2, 2) + segment + jpeg.substr(2);
}

struct SeenPicture {
    int width = 0;
    int height = 0;
    Corners corners;  // "?" where a corner is none of the four colours
};

// What a JPEG shows; nothing (0 by 0) where it is none.
inline SeenPicture seen(const std::string& jpeg) {
    SeenPicture out;
    const std::unique_ptr<void, int (*)(tjhandle)> reader(tjInitDecompress(), &tjDestroy);
    const auto* bytes = reinterpret_cast<const unsigned char*>(jpeg.data());
    int sampling = 0;
    int colours = 0;
    if (tjDecompressHeader3(reader.get(), bytes, jpeg.size(), &out.width, &out.height, &sampling,
                            &colours) != 0) {
        return {};
    }
    std::vector<std::uint8_t> pixels(3 * static_cast<std::size_t>(out.width) *
                                     static_cast<std::size_t>(out.height));
    if (tjDecompress2(reader.get(), bytes, jpeg.size(), pixels.data(), out.width, 0, out.height,
                      TJPF_RGB, 0) != 0) {
        return {};
    }
    for (const int y : {out.height / 4, out.height * 3 / 4}) {
        for (const int x : {out.width / 4, out.width * 3 / 4}) {
            const auto* pixel = &pixels[3 * static_cast<std::size_t>(y * out.width + x)];
            std::array<bool, 3> lit{};
            bool plain = true;
            for (std::size_t k = 0; k < 3; ++k) {
                lit[k] = pixel[k] > 128;
                plain = plain && (pixel[k] < 40 || pixel[k] > 215);
            }
            const int count = lit[0] + lit[1] + lit[2];
            out.corners += !plain       ? '?'
                           : count == 3 ? 'w'
                           : lit[0]     ? 'r'
                           : lit[1]     ? 'g'
                           : lit[2]     ? 'b'
                                        : '?';
        }
    }
    return out;
}

}  // namespace ledgerboard::tests
