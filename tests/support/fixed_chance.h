// What do tests use in place of chance and of the clock? Bytes from a seeded generator, and
// instants that step on by themselves, so that every run is the same run.
#pragma once

#include <cstdint>
#include <cstdlib>
#include <filesystem>
#include <memory>
#include <random>
#include <string>
#include <string_view>
#include <unistd.h>

#include "core/model/date.h"
#include "core/model/id.h"

namespace ledgerboard::tests {

// Repeatable bytes. Two fillers with the same seed give the same ids.
inline model::FillRandom fixedChance(std::uint64_t seed) {
    auto engine = std::make_shared<std::mt19937_64>(seed);
    return [engine](std::uint8_t* bytes, std::size_t count) {
        for (std::size_t k = 0; k < count; ++k) {
            bytes[k] = static_cast<std::uint8_t>((*engine)());
        }
    };
}

// 2026-04-06T12:00:00Z and, at each call, one second later.
class SteppingClock {
  public:
    model::Instant operator()() {
        milliseconds_ += 1000;
        return model::Instant::fromMilliseconds(milliseconds_);
    }

  private:
    std::int64_t milliseconds_ = 1'775'476'800'000;
};

// Files of a test are thrown away, so they need not be on a disk that waits.
inline void preferMemory() {
    std::error_code problem;
    if (std::filesystem::is_directory("/dev/shm", problem)) {
        ::setenv("TMPDIR", "/dev/shm", 0);
    }
}

// Whether the long counts are asked for: LEDGERBOARD_LONG=1.
inline bool isLong() {
    const char* wanted = std::getenv("LEDGERBOARD_LONG");
    return wanted != nullptr && std::string_view(wanted) == "1";
}

// A folder of the test's own, emptied before and removed after.
class TestFolder {
  public:
    explicit TestFolder(const std::string& name)
        : path_(std::filesystem::temp_directory_path() /
                ("ledgerboard-" + name + "-" + std::to_string(::getpid()) + "-" +
                 std::to_string(next()))) {
        std::filesystem::remove_all(path_);
        std::filesystem::create_directories(path_);
    }

    TestFolder(const TestFolder&) = delete;
    TestFolder& operator=(const TestFolder&) = delete;

    ~TestFolder() {
        std::error_code ignored;
        std::filesystem::remove_all(path_, ignored);
    }

    [[nodiscard]] std::string file(const std::string& name) const {
        return (path_ / name).string();
    }

    [[nodiscard]] const std::filesystem::path& path() const { return path_; }

  private:
    // Tests run side by side, so the process tells their folders apart, and this one's own count.
    static int next() {
        static int count = 0;
        return count++;
    }

    std::filesystem::path path_;
};

}  // namespace ledgerboard::tests
