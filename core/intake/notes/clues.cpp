#include "core/intake/notes/clues.h"

#include <algorithm>
#include <array>
#include <cstring>
#include <initializer_list>
#include <span>
#include <unordered_set>

#include "core/intake/notes/tables.h"
#include "core/model/words.h"

namespace ledgerboard::intake {

namespace {

constexpr std::uint64_t kSpread = 0x9E3779B97F4A7C15ULL;

// Spreads each of two numbers over all bits (Fibonacci hashing). What is made of it lives no longer
// than the program.
std::uint64_t folded(std::uint64_t key, std::uint64_t next) {
    key = (key ^ next) * kSpread;
    return key ^ (key >> 29U);
}

template <class Piece>
std::uint64_t pieceAt(const char* from) {
    Piece piece = 0;
    std::memcpy(&piece, from, sizeof piece);
    return piece;
}

// Eight bytes at a time; the last piece may overlap the one before it.
std::uint64_t keyOfWord(std::string_view word) {
    const std::size_t size = word.size();
    const char* at = word.data();
    if (size >= sizeof(std::uint64_t)) {
        const char* last = at + size - sizeof(std::uint64_t);
        std::uint64_t key = size;
        for (; at < last; at += sizeof(std::uint64_t)) {
            key = folded(key, pieceAt<std::uint64_t>(at));
        }
        return folded(key, pieceAt<std::uint64_t>(last));
    }
    if (size >= sizeof(std::uint32_t)) {
        const std::uint64_t last = pieceAt<std::uint32_t>(at + size - sizeof(std::uint32_t));
        return folded(size, pieceAt<std::uint32_t>(at) | last << 32U);
    }
    const auto byte = [&](std::size_t i) {
        return std::uint64_t{static_cast<unsigned char>(word[i])} << (8 * i);
    };
    return folded(size, size == 0   ? 0
                        : size == 1 ? byte(0)
                        : size == 2 ? byte(0) | byte(1)
                                    : byte(0) | byte(1) | byte(2));
}

constexpr std::size_t kReach = 9;  // words on either side

constexpr std::string_view kJoined = " && ";

}  // namespace

// Each word more multiplies the number of those before it, so that words in another order have
// another number, and words that are numbered already are put behind others in one step.
ClueWords::ClueWords(std::string_view words) : text_(words) {
    constexpr std::uint64_t kStep = 0xD1342543DE82EF95ULL;  // any odd number with its bits spread
    while (!words.empty()) {
        const std::size_t end = std::min(words.find(' '), words.size());
        key_ = key_ * kStep + keyOfWord(words.substr(0, end));
        step_ *= kStep;
        words.remove_prefix(std::min(end + 1, words.size()));
    }
}

std::uint64_t clueKey(std::string_view name) {
    const std::size_t at = name.find(kJoined);
    const std::uint64_t key = ClueWords(name.substr(0, at)).after(0);
    return at == std::string_view::npos
               ? key
               : folded(key, ClueWords(name.substr(at + kJoined.size())).after(0));
}

void Clues::add(std::string_view kind, std::string_view first, std::string_view second,
                std::string_view third) {
    const std::array<ClueWords, 4> words = {ClueWords(kind), ClueWords(first), ClueWords(second),
                                            ClueWords(third)};
    add({&words[0], &words[1], &words[2], &words[3]});
}

void Clues::nameLast(std::span<const ClueWords* const> parts) {
    std::string& name = names_.emplace_back();
    for (const ClueWords* part : parts) {
        if (!part->text().empty()) {
            name += name.empty() ? "" : " ";
            name += part->text();
        }
    }
}

void Clues::clear() {
    keys_.clear();
    names_.clear();
    said_.clear();
}

void Clues::addSaid(std::string_view kind, std::string_view sense) {
    said_.push_back(keys_.size());
    add(kind, sense);
}

void Clues::addSaidOf(std::string_view kind, std::string_view what) {
    const std::array<ClueWords, 2> words = {ClueWords(kind), ClueWords(what)};
    const std::uint64_t key = words[1].after(words[0].after(0));
    for (const std::size_t at : said_) {
        keys_.push_back(folded(key, keys_[at]));
        if (named_) {
            const std::string said = std::string(kJoined) + names_[at];
            nameLast(std::array{&words[0], &words[1]});
            names_.back() += said;
        }
    }
}

void Clues::settle() {
    said_.clear();
    std::sort(keys_.begin(), keys_.end());
    keys_.erase(std::unique(keys_.begin(), keys_.end()), keys_.end());
    std::unordered_set<std::string> met;
    std::erase_if(names_, [&](const std::string& name) { return !met.insert(name).second; });
}

void ClueReader::readWords(const Sentence& sentence) {
    words_.clear();
    for (const Token& token : sentence.tokens) {
        if (token.kind == TokenKind::Number) {
            words_.emplace_back("#");
        } else if (token.kind == TokenKind::Mark) {
            words_.emplace_back(&token.mark, 1);
        } else if (token.word != kUnknown) {
            words_.push_back(tables().lexicon.stem(token.word));
        } else {
            const auto [at, fresh] = stems_.try_emplace(token.plain);
            if (fresh) {
                at->second = speller_.stemsOf(token.plain).front();
            }
            words_.push_back(at->second);
        }
    }
}

bool ClueReader::onlyJoins(std::size_t begin, std::size_t end) const {
    static constexpr std::array<std::string_view, 10> kJoins = {"and", ",", "/",  "&",   "+",
                                                                "the", "a", "or", "its", "plus"};
    for (std::size_t i = begin; i < end; ++i) {
        if (std::find(kJoins.begin(), kJoins.end(), words_[i]) == kJoins.end()) {
            return false;
        }
    }
    return end > begin;
}

void ClueReader::addWords(const Zone& zone, Side side, Clues& clues) const {
    const bool left = side == Side::Before;
    const std::string_view kind = left ? "before" : "after";
    const std::size_t size = zone.end > zone.begin ? zone.end - zone.begin : 0;
    for (std::size_t k = 0; k < size && k < kReach; ++k) {
        const std::string_view word = words_[left ? zone.end - 1 - k : zone.begin + k];
        clues.add(kind, word);
        if (k == 0) {
            clues.add(left ? "right before" : "right after", word);
        }
    }
    if (size == 0) {
        clues.add(left ? "right before" : "right after", "nothing");
    }
}

void ClueReader::addActs(const Spots& spots, const Zone& zone, std::string_view kind,
                         Clues& clues) const {
    for (const ActSpot& act : spots.acts) {
        if (act.span.begin < zone.begin || act.span.end > zone.end) {
            continue;
        }
        const ActRow& row = tables().acts[act.row];
        const std::string weight = std::to_string(row.weight) + (act.negated ? "not" : "");
        clues.add(kind, row.fresh ? "fresh" : model::wordOf(row.treatment), weight);
    }
    for (const CueSpot& cue : spots.cues) {
        if (cue.span.begin >= zone.begin && cue.span.end <= zone.end) {
            clues.add(kind, "cue", cueName(cue.cue));
        }
    }
}

// What the words of the zone tell of the thing, nearest first.
void ClueReader::addSenses(const Zone& zone, std::string_view kind, bool fromEnd,
                           Clues& clues) const {
    constexpr std::size_t kNear = 4;
    const bool ofIt = !kind.starts_with("far") && !kind.starts_with("later");
    const auto add = [&](std::string_view sense) {
        ofIt ? clues.addSaid(kind, sense) : clues.add(kind, sense);
    };
    std::vector<SenseSpot> told;
    for (const SenseSpot& spot : senses_) {
        if (spot.begin < zone.begin || spot.end > zone.end) {
            continue;
        }
        add(spot.told());
        const std::size_t far = fromEnd ? zone.end - spot.end : spot.begin - zone.begin;
        if (far < kNear) {
            clues.add(kind, "near", spot.told());
        }
        told.push_back(spot);
    }
    for (std::size_t i = 0; i + 1 < told.size(); ++i) {
        clues.add(kind, told[i].told(), told[i + 1].told());
    }
    if (told.empty()) {
        add("-");
    }
    addSets(told, kind, clues);
}

// "Seal it", "those get painted": what is said of a thing by a word that stands for it; and what a
// clause opens with, as an order does.
void ClueReader::addMeant(const Zone& zone, std::string_view kind, Clues& clues) const {
    static constexpr std::array<std::string_view, 13> kFor = {
        "it",   "them", "that", "those", "thos", "this", "these",
        "thes", "they", "one",  "em",    "all",  "both"};
    constexpr std::size_t kNear = 3;
    const auto stands = [&](std::size_t at) {
        return at >= zone.begin && at < zone.end &&
               std::find(kFor.begin(), kFor.end(), words_[at]) != kFor.end();
    };
    const auto opens = [&](std::size_t at) {
        return at == 0 || words_[at - 1].size() == 1 || words_[at - 1] == "and" ||
               words_[at - 1] == "just" || words_[at - 1] == "so" || words_[at - 1] == "then";
    };
    for (const SenseSpot& spot : senses_) {
        if (spot.begin < zone.begin || spot.end > zone.end) {
            continue;
        }
        bool meant = false;
        for (std::size_t k = 1; k <= kNear; ++k) {
            meant = meant || (k < kNear && stands(spot.end + k - 1)) ||
                    (spot.begin >= k && stands(spot.begin - k));
        }
        if (meant) {
            clues.add(kind, "of it", spot.told());
        }
        if (opens(spot.begin)) {
            clues.add(kind, "of it", "first", spot.told());
        }
    }
}

// The kinds of work spoken of taken together, and which came last; where there is none, what the
// thing is said to be like.
void ClueReader::addSets(std::span<const SenseSpot> told, std::string_view kind, Clues& clues) {
    if (told.empty()) {
        clues.add(kind, "in all", "only");
        return;
    }
    static const std::vector<std::uint8_t> kWork =
        sensesNamed({"stay", "out", "in", "mend", "coat", "wash", "look"});
    static const std::vector<std::uint8_t> kState = sensesNamed(
        {"good", "dead", "rotten", "worn", "ugly", "dirty", "loose", "damaged", "odd", "lack"});
    // Those of the kinds that were told, in the order of the kinds: "out+!in+".
    const auto together = [&](const std::vector<std::uint8_t>& kinds) {
        std::string all;
        for (const std::uint8_t sense : kinds) {
            const auto spot = std::find_if(
                told.begin(), told.end(), [&](const SenseSpot& one) { return one.sense == sense; });
            if (spot != told.end()) {
                all += spot->denied ? "!" : "";
                all += senseName(sense);
                all += '+';
            }
        }
        return all;
    };
    const std::string work = together(kWork);
    const std::string state = together(kState);
    if (work.empty()) {
        clues.add(kind, "in all", "only", state);
        return;
    }
    const auto isWork = [](const SenseSpot& one) {
        return std::find(kWork.begin(), kWork.end(), one.sense) != kWork.end();
    };
    clues.add(kind, "in all", work);
    clues.add(kind, "in all", work, state);
    clues.add(kind, "in all", "last", std::find_if(told.rbegin(), told.rend(), isWork)->told());
    clues.add(kind, "in all", "first", std::find_if(told.begin(), told.end(), isWork)->told());
}

void ClueReader::addForm(const Sentence& sentence, Clues& clues) const {
    if (sentence.terse) {
        clues.add("terse");
    }
    if (sentence.heading) {
        clues.add("heading");
    }
    if (sentence.bullet) {
        clues.add("bullet");
    }
    if (sentence.tokens.back().mark == '?') {
        clues.add("question");
    }
    clues.add("opens", words_.front());
}

void ClueReader::addBefore(Clues& clues) const {
    for (const std::string_view sense : idle_) {
        clues.addSaid("earlier says", sense);
    }
}

// What is said next, before another thing is named, may be said of the last thing.
void ClueReader::addNext(std::span<Mention> before, std::size_t end) const {
    constexpr int kMostSince = 2;
    if (since_ > kMostSince) {
        return;
    }
    for (Mention& mention : before) {
        const bool last = &mention == &before.back();
        const std::string_view kind = !last ? "later says" : since_ > 0 ? "then says" : "next says";
        addSenses({0, end}, kind, false, mention.clues);
        addMeant({0, end}, kind, mention.clues);
        for (std::size_t i = 0; last && i < end && i < kReach; ++i) {
            mention.clues.add(since_ > 0 ? "then" : "next", words_[i]);
        }
    }
}

void ClueReader::read(const Sentence& sentence, const Spots& spots, std::vector<Mention>& mentions,
                      std::size_t first) {
    readWords(sentence);
    senses_ = sensesIn(words_);
    const std::size_t size = words_.size();
    const std::span<Mention> own = std::span(mentions).subspan(first);
    addNext(std::span(mentions).subspan(last_, first - last_),
            own.empty() ? size : own.front().begin);
    std::vector<Zone> things;
    things.reserve(own.size());
    for (const Mention& one : own) {
        std::size_t end = one.begin + 1;
        for (const ObjectSpot& object : spots.objects) {
            end = object.span.begin == one.begin ? object.span.end : end;
        }
        things.push_back({one.begin, std::min(end, size)});
    }
    for (std::size_t k = 0; k < own.size(); ++k) {
        Clues& clues = own[k].clues;
        // In a list, what is said of one is said of all.
        std::size_t low = k;
        while (low > 0 && onlyJoins(things[low - 1].end, things[low].begin)) {
            --low;
        }
        std::size_t high = k;
        while (high + 1 < things.size() && onlyJoins(things[high].end, things[high + 1].begin)) {
            ++high;
        }
        const Zone left = {low == 0 ? 0 : things[low - 1].end, things[low].begin};
        const Zone right = {things[high].end,
                            high + 1 < things.size() ? things[high + 1].begin : size};
        addWords(left, Side::Before, clues);
        addWords(right, Side::After, clues);
        addSenses(left, "before says", true, clues);
        addSenses(right, "after says", false, clues);
        addMeant(right, "after says", clues);
        addSenses({0, left.begin}, "far before says", true, clues);
        addSenses({right.end, size}, "far after says", false, clues);
        addActs(spots, left, "act before", clues);
        addActs(spots, right, "act after", clues);
        if (low != high) {
            clues.add("listed");
        }
        clues.add("own", words_[things[k].end - 1]);
        addForm(sentence, clues);
        if (k == 0) {
            addBefore(clues);
        }
        if (k + 1 == own.size()) {
            clues.add("last");
        }
    }
    if (own.empty() && !sentence.heading) {
        ++since_;
    } else {
        last_ = first;
        since_ = 0;
    }
    const std::size_t from = things.empty() ? 0 : things.back().end;
    idle_.clear();
    for (const SenseSpot& spot : senses_) {
        if (spot.begin >= from) {
            idle_.push_back(spot.told());
        }
    }
}

}  // namespace ledgerboard::intake
