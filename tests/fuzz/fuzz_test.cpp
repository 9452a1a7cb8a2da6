// Protects: whatever bytes come from outside, each reader ends and keeps its promises (targets.h).
// How: good examples, bent at random from a fixed seed, a few thousand times each;
// LEDGERBOARD_LONG=1 a hundred times as many. Under the preset asan the same run finds what is read
// or written out of bounds. LEDGERBOARD_SEED takes another seed.
#include <array>
#include <cstdlib>
#include <gtest/gtest.h>
#include <random>

#include "tests/fuzz/targets.h"
#include "tests/support/fixed_chance.h"

namespace ledgerboard::fuzz {
namespace {

class Bender {
  public:
    explicit Bender(std::uint64_t seed) : chance_(seed) {}

    std::string bent(const std::vector<std::string>& examples) {
        std::string bytes = examples[below(examples.size())];
        const std::size_t times = 1 + below(5);
        for (std::size_t k = 0; k < times; ++k) {
            bend(bytes, examples[below(examples.size())]);
        }
        return bytes;
    }

  private:
    std::size_t below(std::size_t count) { return count == 0 ? 0 : chance_() % count; }

    void bend(std::string& bytes, const std::string& other) {
        static const std::array<std::string, 14> kTelling = {"\r\n",
                                                             "\n",
                                                             ",",
                                                             "\"",
                                                             std::string(1, '\0'),
                                                             "{",
                                                             "[",
                                                             "]",
                                                             "-1",
                                                             "\xff\xd9",
                                                             "\xed\xa0\x80",
                                                             "9223372036854775808",
                                                             "1e999",
                                                             std::string(70, '[')};
        const std::size_t at = below(bytes.size() + 1);
        switch (below(7)) {
            case 0:
                bytes.insert(at, kTelling[below(kTelling.size())]);
                break;
            case 1:
                bytes.erase(at, 1 + below(12));
                break;
            case 2:
                bytes.insert(at, bytes.substr(at, below(60)));
                break;
            case 3:
                bytes.resize(at);  // cut short
                break;
            case 4:
                bytes.insert(at, other.substr(below(other.size() + 1), below(60)));
                break;
            case 5:
                if (at < bytes.size()) {
                    bytes[at] = static_cast<char>(bytes[at] ^ (1 << below(8)));
                }
                break;
            default:
                if (at < bytes.size()) {
                    bytes[at] = static_cast<char>(chance_());
                }
        }
    }

    std::mt19937_64 chance_;
};

TEST(Fuzz, EveryReaderEndsAndKeepsItsPromises) {
    tests::preferMemory();
    const char* said = std::getenv("LEDGERBOARD_SEED");
    const std::uint64_t seed = said != nullptr ? std::strtoull(said, nullptr, 10) : 20'260'406;
    const int tries = tests::isLong() ? 50'000 : 500;
    for (const auto& target : targets()) {
        SCOPED_TRACE(target.name);
        for (const auto& example : target.examples) {
            target.read(example);
        }
        Bender bender(seed);
        for (int k = 0; k < tries * target.share; ++k) {
            target.read(bender.bent(target.examples));
        }
    }
}

}  // namespace
}  // namespace ledgerboard::fuzz
