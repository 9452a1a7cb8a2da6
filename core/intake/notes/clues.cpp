#include "core/intake/notes/clues.h"

#include <algorithm>
#include <array>
#include <initializer_list>
#include <span>
#include <unordered_set>

#include "core/intake/notes/tables.h"
#include "core/model/words.h"

namespace ledgerboard::intake {

namespace {

constexpr std::size_t kReach = 9;  // words on either side

constexpr std::string_view kJoined = " && ";

// The words that clues of things begin with, and those that they tell with.
struct Words {
    const ClueWords before{"before"};
    const ClueWords after{"after"};
    const ClueWords rightBefore{"right before"};
    const ClueWords rightAfter{"right after"};
    const ClueWords beforeSays{"before says"};
    const ClueWords afterSays{"after says"};
    const ClueWords farBefore{"far before says"};
    const ClueWords farAfter{"far after says"};
    const ClueWords earlierSays{"earlier says"};
    const ClueWords laterSays{"later says"};
    const ClueWords nextSays{"next says"};
    const ClueWords thenSays{"then says"};
    const ClueWords actBefore{"act before"};
    const ClueWords actAfter{"act after"};
    const ClueWords next{"next"};
    const ClueWords then{"then"};
    const ClueWords own{"own"};
    const ClueWords opens{"opens"};
    const ClueWords near{"near"};
    const ClueWords ofIt{"of it"};
    const ClueWords first{"first"};
    const ClueWords inAll{"in all"};
    const ClueWords only{"only"};
    const ClueWords last{"last"};
    const ClueWords listed{"listed"};
    const ClueWords terse{"terse"};
    const ClueWords heading{"heading"};
    const ClueWords bullet{"bullet"};
    const ClueWords question{"question"};
};

const Words& words() {
    static const Words kWords;
    return kWords;
}

// A few words that are looked for by their numbers.
class WordSet {
  public:
    WordSet(std::initializer_list<std::string_view> words) {
        for (const std::string_view word : words) {
            keys_.push_back(ClueWords(word).key());
        }
    }

    [[nodiscard]] bool has(const ClueWords& word) const {
        return std::find(keys_.begin(), keys_.end(), word.key()) != keys_.end();
    }

  private:
    std::vector<std::uint64_t> keys_;
};

}  // namespace

std::uint64_t clueKey(std::string_view name) {
    const std::size_t joint = name.find('&');  // rarely there, and sooner found than kJoined
    const std::size_t at = joint == std::string_view::npos ? joint : name.find(kJoined);
    const std::uint64_t key = ClueWords(name.substr(0, at)).key();
    return at == std::string_view::npos
               ? key
               : keyOfBoth(key, ClueWords(name.substr(at + kJoined.size())).key());
}

void Clues::add(std::string_view kind, std::string_view first, std::string_view second,
                std::string_view third) {
    const std::array<ClueWords, 4> words = {ClueWords(kind), ClueWords(first), ClueWords(second),
                                            ClueWords(third)};
    add(&words[0], &words[1], &words[2], &words[3]);
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

void Clues::addSaid(const ClueWords& kind, const ClueWords& sense) {
    if (said_.empty()) {
        said_.reserve(kUsual / 4);
    }
    said_.push_back(keys_.size());
    add(&kind, &sense);
}

void Clues::addSaidOf(const ClueWords& kind, const ClueWords& what) {
    const std::uint64_t key = what.after(kind.key());
    for (const std::size_t at : said_) {
        keys_.push_back(keyOfBoth(key, keys_[at]));
        if (named_) {
            const std::string said = std::string(kJoined) + names_[at];
            nameLast(std::array{&kind, &what});
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
        words_.push_back(&stems_.of(token));
    }
}

bool ClueReader::onlyJoins(std::size_t begin, std::size_t end) const {
    static const WordSet kJoins({"and", ",", "/", "&", "+", "the", "a", "or", "its", "plus"});
    for (std::size_t i = begin; i < end; ++i) {
        if (!kJoins.has(*words_[i])) {
            return false;
        }
    }
    return end > begin;
}

void ClueReader::addWords(const Zone& zone, Side side, Clues& clues) const {
    static const ClueWords kNothing("nothing");
    const Words& to = words();
    const bool left = side == Side::Before;
    const ClueWords& kind = left ? to.before : to.after;
    const ClueWords& right = left ? to.rightBefore : to.rightAfter;
    const std::size_t size = zone.end > zone.begin ? zone.end - zone.begin : 0;
    for (std::size_t k = 0; k < size && k < kReach; ++k) {
        const ClueWords* word = words_[left ? zone.end - 1 - k : zone.begin + k];
        clues.add(&kind, word);
        if (k == 0) {
            clues.add(&right, word);
        }
    }
    if (size == 0) {
        clues.add(&right, &kNothing);
    }
}

void ClueReader::addActs(const Spots& spots, const Zone& zone, const ClueWords& kind,
                         Clues& clues) const {
    static const ClueWords kFresh("fresh");
    static const ClueWords kCue("cue");
    static const std::array<std::array<ClueWords, 2>, 4> kWeights = {
        {{ClueWords("0"), ClueWords("0not")},
         {ClueWords("1"), ClueWords("1not")},
         {ClueWords("2"), ClueWords("2not")},
         {ClueWords("3"), ClueWords("3not")}}};
    for (const ActSpot& act : spots.acts) {
        if (act.span.begin < zone.begin || act.span.end > zone.end) {
            continue;
        }
        const ActRow& row = tables().acts[act.row];
        clues.add(&kind, row.fresh ? &kFresh : &treatmentWords(row.treatment),
                  &kWeights.at(static_cast<std::size_t>(row.weight)).at(act.negated ? 1 : 0));
    }
    for (const CueSpot& cue : spots.cues) {
        if (cue.span.begin >= zone.begin && cue.span.end <= zone.end) {
            clues.add(&kind, &kCue, &cueWords(cue.cue));
        }
    }
}

// What the words of the zone tell of the thing, nearest first.
void ClueReader::addSenses(const Zone& zone, const ClueWords& kind, bool fromEnd, Clues& clues) {
    constexpr std::size_t kNear = 4;
    static const ClueWords kNothing("-");
    const Words& to = words();
    const bool ofIt = &kind != &to.farBefore && &kind != &to.farAfter && &kind != &to.laterSays;
    const auto add = [&](const ClueWords& sense) {
        ofIt ? clues.addSaid(kind, sense) : clues.add(&kind, &sense);
    };
    told_.clear();
    for (const SenseSpot& spot : senses_) {
        if (spot.begin < zone.begin || spot.end > zone.end) {
            continue;
        }
        add(spot.told());
        const std::size_t far = fromEnd ? zone.end - spot.end : spot.begin - zone.begin;
        if (far < kNear) {
            clues.add(&kind, &to.near, &spot.told());
        }
        told_.push_back(spot);
    }
    for (std::size_t i = 0; i + 1 < told_.size(); ++i) {
        clues.add(&kind, &told_[i].told(), &told_[i + 1].told());
    }
    if (told_.empty()) {
        add(kNothing);
    }
    addSets(kind, clues);
}

// "Seal it", "those get painted": what is said of a thing by a word that stands for it; and what a
// clause opens with, as an order does.
void ClueReader::addMeant(const Zone& zone, const ClueWords& kind, Clues& clues) const {
    static const WordSet kFor({"it", "them", "that", "those", "thos", "this", "these", "thes",
                               "they", "one", "em", "all", "both"});
    static const WordSet kOpens({"and", "just", "so", "then"});
    constexpr std::size_t kNear = 3;
    const Words& to = words();
    const auto stands = [&](std::size_t at) {
        return at >= zone.begin && at < zone.end && kFor.has(*words_[at]);
    };
    const auto opens = [&](std::size_t at) {
        return at == 0 || words_[at - 1]->text().size() == 1 || kOpens.has(*words_[at - 1]);
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
            clues.add(&kind, &to.ofIt, &spot.told());
        }
        if (opens(spot.begin)) {
            clues.add(&kind, &to.ofIt, &to.first, &spot.told());
        }
    }
}

// The kinds of work spoken of taken together, and which came last; where there is none, what the
// thing is said to be like.
void ClueReader::addSets(const ClueWords& kind, Clues& clues) const {
    const Words& to = words();
    if (told_.empty()) {
        clues.add(&kind, &to.inAll, &to.only);
        return;
    }
    static const std::vector<std::uint8_t> kWork =
        sensesNamed({"stay", "out", "in", "mend", "coat", "wash", "look"});
    static const std::vector<std::uint8_t> kState = sensesNamed(
        {"good", "dead", "rotten", "worn", "ugly", "dirty", "loose", "damaged", "odd", "lack"});
    std::array<const SenseSpot*, kMostSenses> firsts{};
    for (auto spot = told_.rbegin(); spot != told_.rend(); ++spot) {
        firsts.at(spot->sense) = &*spot;
    }
    // Those of the kinds that were told, in the order of the kinds: "out+!in+".
    const auto together = [&](const std::vector<std::uint8_t>& kinds) {
        std::string all;
        for (const std::uint8_t sense : kinds) {
            if (const SenseSpot* spot = firsts.at(sense); spot != nullptr) {
                all += spot->denied ? "!" : "";
                all += senseWords(sense).text();
                all += '+';
            }
        }
        return all;
    };
    const std::string workName = together(kWork);
    const std::string stateName = together(kState);
    const ClueWords work(workName);
    const ClueWords state(stateName);
    if (workName.empty()) {
        clues.add(&kind, &to.inAll, &to.only, &state);
        return;
    }
    const auto isWork = [](const SenseSpot& one) {
        return std::find(kWork.begin(), kWork.end(), one.sense) != kWork.end();
    };
    clues.add(&kind, &to.inAll, &work);
    clues.add(&kind, &to.inAll, &work, &state);
    clues.add(&kind, &to.inAll, &to.last,
              &std::find_if(told_.rbegin(), told_.rend(), isWork)->told());
    clues.add(&kind, &to.inAll, &to.first,
              &std::find_if(told_.begin(), told_.end(), isWork)->told());
}

void ClueReader::addForm(const Sentence& sentence, Clues& clues) const {
    const Words& to = words();
    if (sentence.terse) {
        clues.add(&to.terse);
    }
    if (sentence.heading) {
        clues.add(&to.heading);
    }
    if (sentence.bullet) {
        clues.add(&to.bullet);
    }
    if (sentence.tokens.back().mark == '?') {
        clues.add(&to.question);
    }
    clues.add(&to.opens, words_.front());
}

void ClueReader::addBefore(Clues& clues) const {
    for (const ClueWords* sense : idle_) {
        clues.addSaid(words().earlierSays, *sense);
    }
}

// What is said next, before another thing is named, may be said of the last thing.
void ClueReader::addNext(std::span<Mention> before, std::size_t end) {
    constexpr int kMostSince = 2;
    if (since_ > kMostSince) {
        return;
    }
    const Words& to = words();
    for (Mention& mention : before) {
        const bool last = &mention == &before.back();
        const ClueWords& kind = !last ? to.laterSays : since_ > 0 ? to.thenSays : to.nextSays;
        addSenses({0, end}, kind, false, mention.clues);
        addMeant({0, end}, kind, mention.clues);
        for (std::size_t i = 0; last && i < end && i < kReach; ++i) {
            mention.clues.add(since_ > 0 ? &to.then : &to.next, words_[i]);
        }
    }
}

void ClueReader::read(const Sentence& sentence, const Spots& spots, std::vector<Mention>& mentions,
                      std::size_t first) {
    readWords(sentence);
    senses_ = sensesIn(words_);
    const Words& to = words();
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
        addSenses(left, to.beforeSays, true, clues);
        addSenses(right, to.afterSays, false, clues);
        addMeant(right, to.afterSays, clues);
        addSenses({0, left.begin}, to.farBefore, true, clues);
        addSenses({right.end, size}, to.farAfter, false, clues);
        addActs(spots, left, to.actBefore, clues);
        addActs(spots, right, to.actAfter, clues);
        if (low != high) {
            clues.add(&to.listed);
        }
        clues.add(&to.own, words_[things[k].end - 1]);
        addForm(sentence, clues);
        if (k == 0) {
            addBefore(clues);
        }
        if (k + 1 == own.size()) {
            clues.add(&to.last);
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
            idle_.push_back(&spot.told());
        }
    }
}

}  // namespace ledgerboard::intake
