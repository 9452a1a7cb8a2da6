#include "sync/identity/qr_picture.h"

#include <memory>

#include <qrencode.h>

namespace ledgerboard::sync {

namespace {

constexpr int kBorder = 4;  // ISO/IEC 18004, section 5.3.8: the quiet zone, in modules

}  // namespace

model::Result<std::vector<std::vector<bool>>> qrModules(const std::string& text) {
    const std::unique_ptr<QRcode, decltype(&QRcode_free)> code(
        QRcode_encodeString(text.c_str(), 0, QR_ECLEVEL_M, QR_MODE_8, 1), &QRcode_free);
    if (!code) {
        return model::cannotBeMet("the invitation is too long for a picture: type the code");
    }
    const auto width = static_cast<std::size_t>(code->width);
    std::vector<std::vector<bool>> modules(width, std::vector<bool>(width));
    for (std::size_t row = 0; row < width; ++row) {
        for (std::size_t column = 0; column < width; ++column) {
            modules[row][column] = (code->data[row * width + column] & 1) != 0;
        }
    }
    return modules;
}

std::string qrPicture(const std::vector<std::vector<bool>>& modules, bool colours) {
    const int width = static_cast<int>(modules.size());
    const auto isInk = [&](int row, int column) {
        const bool inside = row >= 0 && row < width && column >= 0 && column < width;
        const bool dark =
            inside && modules[static_cast<std::size_t>(row)][static_cast<std::size_t>(column)];
        return dark == colours;  // without colours the light modules are drawn
    };
    std::string out;
    for (int row = -kBorder; row < width + kBorder; row += 2) {
        out += colours ? "\x1b[30;107m" : "";
        for (int column = -kBorder; column < width + kBorder; ++column) {
            const bool upper = isInk(row, column);
            const bool lower = isInk(row + 1, column);
            out += upper ? (lower ? "█" : "▀") : (lower ? "▄" : " ");
        }
        out += colours ? "\x1b[0m\n" : "\n";
    }
    return out;
}

}  // namespace ledgerboard::sync
