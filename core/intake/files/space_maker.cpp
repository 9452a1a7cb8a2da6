#include "core/intake/files/space_maker.h"

#include <algorithm>
#include <array>

#include "core/model/catalog.h"

namespace ledgerboard::intake {

namespace {

constexpr std::array<std::string_view, 16> kChips = {
    "#7A8B8C", "#B59A7C", "#6F7F95", "#A88A91", "#8C9A76", "#C2A66B", "#5F8A87", "#9A7F6A",
    "#7D7596", "#B4A48F", "#4F7289", "#A3785F", "#8B8F5A", "#936F7E", "#6B8F74", "#8E8678"};

bool isLetter(char c) {
    return (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9');
}

// The letters and digits of each word, in lower case.
std::vector<std::string> wordsOf(std::string_view name) {
    std::vector<std::string> words;
    bool inside = false;
    for (const char c : name) {
        const char low = static_cast<char>(c >= 'A' && c <= 'Z' ? c - 'A' + 'a' : c);
        if (!isLetter(low)) {
            inside = false;
            continue;
        }
        if (!inside) {
            words.emplace_back();
        }
        inside = true;
        words.back() += low;
    }
    return words;
}

}  // namespace

SpaceMaker::SpaceMaker(const std::vector<model::Space>& existing) : count_(existing.size()) {
    for (const auto& space : existing) {
        taken_.insert(model::folded(space.shortName));
        lastOrder_ = std::max(lastOrder_, space.walkOrder.value_or(0));
    }
}

std::string SpaceMaker::lettersFor(std::string_view name) {
    std::vector<std::string> tries;
    const auto words = wordsOf(name);
    std::string all;
    for (const auto& word : words) {
        all += word;
    }
    for (std::size_t k = 1; k < words.size(); ++k) {
        tries.push_back({words[0][0], words[k][0]});
    }
    for (std::size_t k = 1; k < all.size(); ++k) {
        tries.push_back({all[0], all[k]});
    }
    constexpr std::string_view kLetters = "abcdefghijklmnopqrstuvwxyz";
    const std::string firsts = (all.empty() ? "" : all.substr(0, 1)) + std::string(kLetters);
    for (const char first : firsts) {
        for (const char second : std::string("23456789") + std::string(kLetters)) {
            tries.push_back({first, second});
        }
    }
    for (auto& letters : tries) {
        if (taken_.insert(letters).second) {
            letters[0] = static_cast<char>(
                isLetter(letters[0]) && letters[0] >= 'a' ? letters[0] - 'a' + 'A' : letters[0]);
            return letters;
        }
    }
    return "";  // more spaces than pairs: it goes without
}

model::Space SpaceMaker::make(model::Id<model::Kind::Space> id, model::Id<model::Kind::Job> job,
                              const std::string& name) {
    model::Space space;
    space.id = id;
    space.job = job;
    space.name = name;
    space.shortName = lettersFor(name);
    space.walkOrder = ++lastOrder_;
    space.swatch = kChips[count_++ % kChips.size()];
    return space;
}

}  // namespace ledgerboard::intake
