// Paints the pictures of the demo house into a folder and writes photos.csv beside them.
//
//   draw-demo-photos FOLDER
//
// The same pictures, byte for byte, each time with the same JPEG library. Exit status: 0 done, 1 a
// file could not be written, 2 used wrongly.
//
// Threads: one a processor; each takes the next picture not begun.
#include <algorithm>
#include <atomic>
#include <filesystem>
#include <fstream>
#include <iostream>
#include <string>
#include <thread>
#include <vector>

#include "demo-data/photos/picture.h"
#include "demo-data/photos/shots.h"

namespace {

using ledgerboard::photos::Shot;

// What went wrong, one entry a picture, empty where all went well.
std::vector<std::string> paintAll(const std::vector<Shot>& shots,
                                  const std::filesystem::path& folder) {
    std::vector<std::string> wrong(shots.size());
    std::atomic<std::size_t> next{0};
    std::vector<std::thread> hands;
    const unsigned count = std::max(1U, std::thread::hardware_concurrency());
    for (unsigned k = 0; k < count; ++k) {
        hands.emplace_back([&] {
            for (std::size_t at = next++; at < shots.size(); at = next++) {
                const auto pixels = ledgerboard::photos::paint(shots[at].scene());
                wrong[at] = ledgerboard::photos::writeJpeg(
                    pixels, (folder / shots[at].fileName()).string());
            }
        });
    }
    for (std::thread& hand : hands) {
        hand.join();
    }
    return wrong;
}

bool writeList(const std::vector<Shot>& shots, const std::filesystem::path& path) {
    std::ofstream out(path);
    out << "File,Space,Item,Stage,Taken at,Spot,Caption,For the lender\n";
    for (const Shot& shot : shots) {
        out << shot.fileName() << ',' << shot.space << ',' << shot.item << ',' << shot.stage << ','
            << shot.takenAt << ',' << shot.spot << ",\"" << shot.caption << "\","
            << (shot.forLender ? "yes" : "no") << '\n';
    }
    out.flush();
    return out.good();
}

}  // namespace

int main(int argc, char** argv) {
    if (argc != 2) {
        std::cerr << "draw-demo-photos needs one folder to paint into: draw-demo-photos photos\n";
        return 2;
    }
    const std::filesystem::path folder = argv[1];
    std::error_code error;
    std::filesystem::create_directories(folder, error);
    if (error) {
        std::cerr << folder.string() << ": could not be made (" << error.message()
                  << "); name a folder you may write in\n";
        return 1;
    }
    const std::vector<Shot> shots = ledgerboard::photos::allShots();
    for (const std::string& wrong : paintAll(shots, folder)) {
        if (!wrong.empty()) {
            std::cerr << wrong << '\n';
            return 1;
        }
    }
    if (!writeList(shots, folder / "photos.csv")) {
        std::cerr << (folder / "photos.csv").string() << ": could not be written\n";
        return 1;
    }
    std::cout << shots.size() << " pictures and photos.csv in " << folder.string() << '\n';
    return 0;
}
