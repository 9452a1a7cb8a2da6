#include "core/intake/notes/tables.h"

#include <algorithm>
#include <array>
#include <charconv>
#include <unordered_map>
#include <utility>

#include "core/intake/notes/tokens.h"
#include "core/intake/tables/embedded.h"

namespace ledgerboard::intake {

namespace {

constexpr std::array<std::string_view, static_cast<std::size_t>(Cue::Count)> kCueNames = {
    "filler",  "correction", "negation", "hypothetical", "undecided", "decided", "soft",
    "chatter", "resume",     "enter",    "move",         "landmark",  "with",    "same",
    "pronoun", "split",      "because",  "absent",       "small",     "passive", "refused",
    "settled", "passing",    "stop",     "aside",        "either",    "open",    "material",
    "rooms",   "locus",      "here",     "nobody",       "turn",      "rest",    "stress",
    "seems",   "asks"};

constexpr std::array<std::string_view, 12> kNumberKinds = {"none",  "unit",     "teen",  "ten",
                                                           "times", "scale",    "money", "fraction",
                                                           "few",   "currency", "cents", "digit"};

template <std::size_t N>
std::size_t indexOf(const std::array<std::string_view, N>& names, std::string_view name) {
    std::size_t at = 0;
    while (at < N && names[at] != name) {
        ++at;
    }
    return at;
}

std::vector<std::string_view> split(std::string_view text, char by) {
    constexpr std::size_t kUsual = 8;  // as many as a row has columns
    std::vector<std::string_view> parts;
    parts.reserve(kUsual);
    while (true) {
        const std::size_t end = text.find(by);
        parts.push_back(text.substr(0, end));
        if (end == std::string_view::npos) {
            return parts;
        }
        text.remove_prefix(end + 1);
    }
}

std::int64_t numberIn(std::string_view text) {
    std::int64_t value = 0;
    std::from_chars(text.data(), text.data() + text.size(), value);
    return value;
}

class Loader {
  public:
    explicit Loader(Tables& into) : into_(into), speller_(into.lexicon) {}

    void run() {
        loadWords();
        rows("objects", 7, [&](const auto& cells) { loadObject(cells); });
        keepOwnThings();
        rows("treatments", 4, [&](const auto& cells) { loadAct(cells); });
        rows("spaces", 3, [&](const auto& cells) { loadSpace(cells); });
        rows("qualifiers", 2, [&](const auto& cells) { loadQualifier(cells); });
        rows("cues", 2, [&](const auto& cells) { loadCue(cells); });
        rows("kinds", 3, [&](const auto& cells) { loadKind(cells); });
        std::stable_sort(into_.kinds.begin(), into_.kinds.end(),
                         [](const KindRow& a, const KindRow& b) { return a.general < b.general; });
        rows("families", 2, [&](const auto& cells) { loadFamily(cells); });
        rows("sets", 2, [&](const auto& cells) { loadSet(cells); });
        rows("units", 3, [&](const auto& cells) { loadUnit(cells); });
        rows("numbers", 3, [&](const auto& cells) { loadNumber(cells); });
        rows("cautions", 6, [&](const auto& cells) { loadCaution(cells); });
        rows("facts", 2, [&](const auto& cells) { loadFact(cells); });
    }

  private:
    using Cells = std::vector<std::string_view>;

    template <class Use>
    void rows(std::string_view table, std::size_t least, Use use) {
        const std::string_view text = embeddedTable(table);
        int line = 0;
        for (std::string_view row : split(text, '\n')) {
            ++line;
            if (row.empty() || row.front() == '#') {
                continue;
            }
            Cells cells = split(row, '\t');
            if (cells.size() < least) {
                fault(std::string(table) + ".tsv:" + std::to_string(line) + ": " +
                      std::to_string(cells.size()) + " columns, at least " + std::to_string(least) +
                      " are needed");
                continue;
            }
            cells.resize(8);
            where_ = std::string(table) + ".tsv:" + std::to_string(line) + ": ";
            use(cells);
        }
    }

    void fault(std::string what) { into_.faults.push_back(std::move(what)); }

    void loadWords() {
        rows("words", 2, [&](const auto& cells) {
            into_.lexicon.addRespelling(std::string(cells[0]), std::string(cells[1]));
        });
    }

    // The ids of a table's phrase, made where they are new. Hyphens part words, as in the notes.
    std::vector<WordId> learn(std::string_view phrase) {
        tokens_.clear();
        cutTokens(phrase, 0, speller_, into_.lexicon, tokens_);
        std::vector<WordId> ids;
        ids.reserve(tokens_.size());
        const char* last = nullptr;
        for (const Token& token : tokens_) {
            if (token.kind == TokenKind::Number) {
                ids.push_back(into_.lexicon.learn("#" + std::to_string(token.value / 1000)));
            } else if (token.kind == TokenKind::Word && token.text.data() != last) {
                last = token.text.data();
                const std::vector<WordId>& word = learnWord(token.text);
                ids.insert(ids.end(), word.begin(), word.end());
            }
        }
        return ids;
    }

    const std::vector<WordId>& learnWord(std::string_view word) {
        const auto [at, fresh] = learned_.try_emplace(word);
        if (fresh) {
            for (const std::string& stem : speller_.stemsOf(word)) {
                at->second.push_back(into_.lexicon.learn(stem));
            }
        }
        return at->second;
    }

    void add(std::string_view phrase, Meaning meaning) {
        const std::vector<WordId> ids = learn(phrase);
        if (ids.empty()) {
            fault(where_ + "a phrase without words");
            return;
        }
        into_.phrases.add(ids, meaning);
    }

    void addAll(std::string_view phrases, From from, std::uint32_t row) {
        for (std::string_view phrase : split(phrases, ';')) {
            if (phrase.empty()) {
                continue;
            }
            if (from == From::Object || from == From::Space) {
                for (const std::string_view word : split(phrase, ' ')) {
                    into_.lexicon.abbreviations().addName(word);
                }
            }
            // "house!" means a heading alone, not a word in a sentence.
            const bool only = phrase.ends_with('!');
            // "oak~" names a material, and the object only where no other stands by it.
            const bool material = phrase.ends_with('~');
            phrase.remove_suffix(only || material ? 1 : 0);
            const int flag = only ? kHeadingOnly : material ? kMaterial : 0;
            add(phrase, Meaning{.from = from, .flag = static_cast<std::uint8_t>(flag), .row = row});
        }
    }

    // Rows without words: own_words.h gives them names.
    void keepOwnThings() {
        for (std::size_t i = 0; i < kMostOwnThings; ++i) {
            ObjectRow row;
            row.name = "own thing " + std::to_string(100 + i);
            row.trade = "carpentry";
            row.unit = "each";
            into_.objects.push_back(std::move(row));
        }
    }

    [[nodiscard]] Home homeNamed(std::string_view word) {
        static constexpr std::array<std::pair<std::string_view, Home>, 8> kHomes = {
            {{"", Home::Anywhere},
             {"room", Home::Room},
             {"stairs", Home::Stairs},
             {"outside", Home::Outside},
             {"house", Home::House},
             {"deck", Home::Deck},
             {"garage", Home::Garage},
             {"self", Home::Self}}};
        for (const auto& [name, home] : kHomes) {
            if (name == word) {
                return home;
            }
        }
        fault(where_ + "no such home: " + std::string(word));
        return Home::Anywhere;
    }

    void loadObject(const Cells& cells) {
        ObjectRow row;
        // "house!" is a name to write, not a word to look for.
        row.name = cells[0].substr(0, cells[0].find('!'));
        row.trade = cells[1];
        row.unit = cells[2];
        row.place = cells[3] == "in"    ? Place::Inside
                    : cells[3] == "out" ? Place::Outside
                                        : Place::Anywhere;
        row.home = homeNamed(cells[7]);
        row.freshAdds = cells[4] == "a";
        row.essential = cells[4] == "e";
        for (std::string_view hazard : split(cells[5], ',')) {
            if (!hazard.empty()) {
                row.hazards.emplace_back(hazard);
            }
        }
        for (std::string_view name : split(cells[6], ';')) {
            row.hasDoing = row.hasDoing || name.ends_with("ing");
            row.hasDone = row.hasDone || name.ends_with("ed");
        }
        row.hasDoing = row.hasDoing || cells[0].ends_with("ing");
        const auto index = static_cast<std::uint32_t>(into_.objects.size());
        into_.objects.push_back(std::move(row));
        addAll(cells[0], From::Object, index);
        addAll(cells[6], From::Object, index);
    }

    void loadAct(const Cells& cells) {
        ActRow row;
        row.phrase = cells[0];
        row.fresh = cells[1] == "fresh";
        const std::string_view word = row.fresh ? "replace" : cells[1];
        const auto words = model::wordsOf<model::Treatment>();
        for (std::size_t i = 1; i < words.size(); ++i) {
            if (words[i] == word) {
                row.treatment = static_cast<model::Treatment>(i);
            }
        }
        if (row.treatment == model::Treatment::Unset) {
            fault(where_ + "no such treatment");
            return;
        }
        row.side = cells[2] == "after"    ? Side::After
                   : cells[2] == "before" ? Side::Before
                   : cells[2] == "edge"   ? Side::Edge
                                          : Side::Any;
        row.weight = static_cast<int>(numberIn(cells[3]));
        if (!cells[4].empty()) {
            row.names = cells[4].ends_with('!');
            row.object = into_.objectNamed(cells[4].substr(0, cells[4].find('!')));
            if (row.object == kNone) {
                fault(where_ + "no such object: " + std::string(cells[4]));
            }
        }
        std::string_view head = cells[0];
        for (const std::string_view part : split(head, ' ')) {
            into_.lexicon.abbreviations().addName(part);
        }
        if (const std::size_t gap = head.find('~'); gap != std::string_view::npos) {
            row.tail = learn(head.substr(gap + 1));
            head = head.substr(0, gap);
        }
        pushAct(head, row);
        // "rip out" may part around its object: "rip the carpet out".
        const std::size_t gap = head.rfind(' ');
        const bool two = gap != std::string_view::npos && head.find(' ') == gap;
        if (two && row.tail.empty() && row.side == Side::After &&
            isParticle(head.substr(gap + 1))) {
            row.tail = learn(head.substr(gap + 1));
            pushAct(head.substr(0, gap), row);
        }
    }

    [[nodiscard]] static bool isParticle(std::string_view word) {
        return word == "up" || word == "out" || word == "down" || word == "off" || word == "away" ||
               word == "in" || word == "over" || word == "back";
    }

    void pushAct(std::string_view head, const ActRow& row) {
        const auto index = static_cast<std::uint32_t>(into_.acts.size());
        into_.acts.push_back(row);
        // Several rows with a gap may share a head.
        const From from = row.tail.empty() ? From::Act : From::GapHead;
        add(head, Meaning{.from = from, .row = index});
    }

    void loadSpace(const Cells& cells) {
        SpaceRow row;
        row.name = cells[0];
        static constexpr std::array<std::string_view, 5> kKinds = {"room", "out", "whole", "level",
                                                                   "group"};  // as SpaceKind
        const std::size_t comma = cells[1].find(';');
        const auto kind = std::ranges::find(kKinds, cells[1].substr(0, comma));
        row.building = comma != std::string_view::npos && cells[1].substr(comma) == ";building";
        if (kind == kKinds.end() || (comma != std::string_view::npos && !row.building)) {
            fault(where_ + "no such kind of space: " + std::string(cells[1]));
            return;
        }
        row.kind = static_cast<SpaceKind>(kind - kKinds.begin());
        const auto index = static_cast<std::uint32_t>(into_.spaces.size());
        into_.spaces.push_back(std::move(row));
        addAll(cells[0], From::Space, index);
        addAll(cells[2], From::Space, index);
        for (const std::string_view cell : {cells[0], cells[2]}) {
            for (std::string_view name : split(cell, ';')) {
                name.remove_suffix(name.ends_with('!') ? 1 : 0);
                if (!name.empty() && name.find_first_of(" -'") == std::string_view::npos) {
                    into_.spaceWords.push_back({std::string(name), index});
                }
            }
        }
    }

    void loadQualifier(const Cells& cells) {
        const auto index = static_cast<std::uint32_t>(into_.qualifiers.size());
        into_.qualifiers.emplace_back(cells[1]);
        addAll(cells[0], From::Qualifier, index);
    }

    void loadCue(const Cells& cells) {
        const std::size_t kind = indexOf(kCueNames, cells[0]);
        if (kind == kCueNames.size()) {
            fault(where_ + "no such kind of cue");
            return;
        }
        const Cue cue = static_cast<Cue>(kind);
        if (cue == Cue::Stress || cue == Cue::Seems) {
            bend(cells[1], cue == Cue::Stress ? kStresses : kSeems);
            return;
        }
        add(cells[1], Meaning{.from = From::Cue, .row = static_cast<std::uint32_t>(kind)});
    }

    void bend(std::string_view phrase, std::uint8_t how) {
        const std::vector<WordId> ids = learn(phrase);
        if (ids.size() != 1) {
            fault(where_ + "one word is needed");
            return;
        }
        if (into_.loose.size() <= ids.front()) {
            into_.loose.resize(ids.front() + 1);
        }
        into_.loose[ids.front()] = how;
    }

    void loadFamily(const Cells& cells) {
        for (std::string_view name : split(cells[1], ';')) {
            const std::uint32_t object = into_.objectNamed(name);
            if (object == kNone) {
                fault(where_ + "no such object: " + std::string(name));
                continue;
            }
            const bool lone = cells[0].ends_with('!');
            into_.objects[object].family = cells[0].substr(0, cells[0].size() - (lone ? 1 : 0));
            into_.objects[object].lone = lone;
        }
    }

    void loadSet(const Cells& cells) {
        const std::uint32_t set = into_.objectNamed(cells[0]);
        for (std::string_view name : split(cells[1], ';')) {
            const std::uint32_t member = into_.objectNamed(name);
            if (set == kNone || member == kNone || member == set) {
                fault(where_ + "not a set and another object: " + std::string(name));
                continue;
            }
            into_.objects[set].members.push_back(member);
        }
    }

    void loadKind(const Cells& cells) {
        KindRow row;
        row.general = into_.objectNamed(cells[0]);
        row.object = into_.objectNamed(cells[2]);
        if (cells[1].starts_with('^')) {
            row.whole = into_.objectNamed(cells[1].substr(1));
            if (row.general == kNone || row.object == kNone || row.whole == kNone) {
                fault(where_ + "no three objects");
                return;
            }
            into_.kinds.push_back(row);
            return;
        }
        row.place = cells[1].starts_with('@');
        row.lately = cells[1].starts_with('~');
        const auto ids = learn(cells[1].substr(row.place || row.lately ? 1 : 0));
        if (row.general == kNone || row.object == kNone || ids.size() != 1) {
            fault(where_ + "not two objects and a word");
            return;
        }
        row.word = ids.front();
        if (row.lately) {
            into_.lately.push_back(row.word);
        }
        into_.kinds.push_back(row);
    }

    void loadUnit(const Cells& cells) {
        UnitRow row;
        row.name = cells[0];
        row.measure = cells[1] == "area"     ? Measure::Area
                      : cells[1] == "length" ? Measure::Length
                      : cells[1] == "volume" ? Measure::Volume
                      : cells[1] == "time"   ? Measure::Time
                                             : Measure::Count;
        const auto index = static_cast<std::uint32_t>(into_.units.size());
        into_.units.push_back(row);
        for (std::string_view word : split(cells[2], ';')) {
            if (!word.empty() && word != "'" && word != "\"" && !learn(word).empty()) {
                add(word, Meaning{.from = From::Unit, .row = index});
            }
        }
    }

    void loadNumber(const Cells& cells) {
        const std::size_t kind = indexOf(kNumberKinds, cells[1]);
        const auto ids = learn(cells[0]);
        if (kind == kNumberKinds.size() || ids.size() != 1) {
            fault(where_ + "not a word and a kind of number");
            return;
        }
        if (into_.numbers.size() <= ids.front()) {
            into_.numbers.resize(ids.front() + 1);
        }
        into_.numbers[ids.front()] = {static_cast<NumberKind>(kind), numberIn(cells[2])};
    }

    void loadCaution(const Cells& cells) {
        CautionRow row;
        row.key = cells[0];
        row.about = cells[1];
        row.builtBefore = static_cast<int>(numberIn(cells[2]));
        row.why = cells[5];
        const auto words = model::wordsOf<model::Treatment>();
        for (std::string_view treatment : split(cells[3], ',')) {
            for (std::size_t i = 1; i < words.size(); ++i) {
                if (words[i] == treatment) {
                    row.treatments.push_back(static_cast<model::Treatment>(i));
                }
            }
        }
        const auto index = static_cast<std::uint32_t>(into_.cautions.size());
        into_.cautions.push_back(std::move(row));
        addAll(cells[4], From::Caution, index);
    }

    void loadFact(const Cells& cells) {
        const auto index = static_cast<std::uint32_t>(into_.facts.size());
        into_.facts.emplace_back(cells[0]);
        addAll(cells[1], From::Fact, index);
    }

    Tables& into_;
    Speller speller_;
    std::vector<Token> tokens_;                                          // of the phrase at hand
    std::unordered_map<std::string_view, std::vector<WordId>> learned_;  // by word of the tables
    std::string where_;
};

}  // namespace

std::uint32_t Tables::objectNamed(std::string_view name) const {
    for (std::size_t i = 0; i < objects.size(); ++i) {
        if (objects[i].name == name) {
            return static_cast<std::uint32_t>(i);
        }
    }
    return kNone;
}

std::string_view cueName(Cue cue) {
    return kCueNames[static_cast<std::size_t>(cue)];
}

std::span<const KindRow> Tables::kindsOf(std::uint32_t general) const {
    const auto first = std::lower_bound(
        kinds.begin(), kinds.end(), general,
        [](const KindRow& kind, std::uint32_t object) { return kind.general < object; });
    const auto last = std::find_if(first, kinds.end(),
                                   [&](const KindRow& kind) { return kind.general != general; });
    return {first, last};
}

Tables loadTables() {
    Tables loaded;
    Loader(loaded).run();
    for (int i = 0; i <= 12; ++i) {
        loaded.lexicon.learn("#" + std::to_string(i));
    }
    return loaded;
}

}  // namespace ledgerboard::intake
