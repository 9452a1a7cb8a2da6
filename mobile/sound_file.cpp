#include "mobile/sound_file.h"

#include <sndfile.h>

namespace ledgerboard::phone {

using model::Result;

namespace {

constexpr std::int64_t kLongest = 2 * 3'600;  // seconds

model::Error refused(const std::string& path, const char* why) {
    return model::cannotBeMet(path + ": " + why);
}

}  // namespace

Result<SoundFile> SoundFile::create(const std::string& path) {
    SF_INFO info{};
    info.samplerate = kSoundRate;
    info.channels = 1;
    info.format = SF_FORMAT_OGG | SF_FORMAT_OPUS;
    SNDFILE* file = sf_open(path.c_str(), SFM_WRITE, &info);
    if (file == nullptr) {
        return refused(path, sf_strerror(nullptr));
    }
    return SoundFile(
        path, Handle(file, [](void* open) { return sf_close(static_cast<SNDFILE*>(open)); }));
}

Result<void> SoundFile::add(std::span<const std::int16_t> samples) {
    auto* file = static_cast<SNDFILE*>(file_.get());
    const auto count = static_cast<sf_count_t>(samples.size());
    if (sf_write_short(file, samples.data(), count) != count) {
        return refused(path_, sf_strerror(file));
    }
    samples_ += count;
    return {};
}

Result<Sound> soundIn(const std::string& path) {
    SF_INFO info{};
    const std::unique_ptr<SNDFILE, int (*)(SNDFILE*)> file(sf_open(path.c_str(), SFM_READ, &info),
                                                           sf_close);
    if (!file) {
        return refused(path, sf_strerror(nullptr));
    }
    if (info.channels > 2) {
        return refused(path, "has more than two voices");
    }
    Sound sound{info.samplerate, info.channels, {}};
    const std::int64_t most = kLongest * info.samplerate * info.channels;
    // Asked for bit by bit: what the head says of the length may be wrong.
    std::vector<std::int16_t> part(static_cast<std::size_t>(info.samplerate * info.channels));
    while (true) {
        const auto got =
            sf_read_short(file.get(), part.data(), static_cast<sf_count_t>(part.size()));
        if (got <= 0) {
            break;
        }
        sound.samples.insert(sound.samples.end(), part.begin(), part.begin() + got);
        if (static_cast<std::int64_t>(sound.samples.size()) > most) {
            return refused(path, "is longer than two hours");
        }
    }
    return sound;
}

}  // namespace ledgerboard::phone
