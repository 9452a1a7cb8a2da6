// How does what was spoken stand in a file? As Ogg Opus (RFC 7845), by libsndfile: one voice, some
// 4 kB for each second.
//
// Units: samples are signed, of 16 bits. Threads: each file one at a time.
#pragma once

#include <cstdint>
#include <memory>
#include <span>
#include <string>
#include <vector>

#include "core/model/result.h"

namespace ledgerboard::phone {

inline constexpr int kSoundRate = 16'000;  // samples a second of what is written

class SoundFile {
  public:
    // Errors (CannotBeMet): the file can't be made.
    [[nodiscard]] static model::Result<SoundFile> create(const std::string& path);

    // Samples follow what was added. Errors (CannotBeMet): the disk.
    [[nodiscard]] model::Result<void> add(std::span<const std::int16_t> samples);

    // How many were added; kSoundRate of them are a second.
    [[nodiscard]] std::int64_t samples() const { return samples_; }

  private:
    using Handle = std::unique_ptr<void, int (*)(void*)>;  // the file is whole once it is gone

    SoundFile(std::string path, Handle file) : path_(std::move(path)), file_(std::move(file)) {}

    std::string path_;
    Handle file_;
    std::int64_t samples_ = 0;
};

struct Sound {
    int rate = kSoundRate;  // a second
    int channels = 1;       // whose samples take turns
    std::vector<std::int16_t> samples;
};

// What a file of sound holds, of any kind that libsndfile knows.
// Errors (CannotBeMet): no such file, no sound, longer than two hours, or of more than
// two voices.
[[nodiscard]] model::Result<Sound> soundIn(const std::string& path);

}  // namespace ledgerboard::phone
