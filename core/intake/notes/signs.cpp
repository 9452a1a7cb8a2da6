#include "core/intake/notes/signs.h"

#include <algorithm>
#include <array>
#include <initializer_list>
#include <optional>
#include <unordered_map>

namespace ledgerboard::intake {

namespace {

constexpr std::array<std::string_view, static_cast<std::size_t>(SignKind::Count)> kKinds = {
    "every", "phrase", "object", "trade", "weight", "gap", "parted",   "length", "strange",
    "cue",   "lead",   "follow", "words", "since",  "is",  "mentions", "also"};

constexpr std::array<std::string_view, static_cast<std::size_t>(SignFlag::Count)> kFlags = {
    "negated",  "passive",     "names",        "before",        "assumed",   "material",
    "with",     "object left", "object first", "own place",     "turned",    "quantity",
    "cost",     "terse",       "heading",      "bullet",        "alone",     "opens line",
    "question", "corrected",   "was",          "might",         "will",      "and",
    "we",       "others",      "if",           "first",         "last",      "past",
    "doing",    "year",        "after in",     "under heading", "elsewhere", "unplaced",
    "outdoors", "whole house", "open",         "kept",          "copied",    "choice",
    "place"};

// The step that a figure falls into: how many of `edges` it reaches.
template <std::size_t N>
std::uint32_t stepOf(double figure, const std::array<double, N>& edges) {
    return static_cast<std::uint32_t>(
        std::count_if(edges.begin(), edges.end(), [&](double edge) { return figure >= edge; }));
}

std::uint32_t most(std::size_t count, std::uint32_t limit) {
    return std::min(static_cast<std::uint32_t>(std::min<std::size_t>(count, 1000)), limit);
}

// What may stand beside an object. The figures stand in leanings.tsv.
enum class Beside : std::uint8_t {
    Edge = 0,  // a mark, or where the sentence begins or ends
    The = 1,
    One = 2,  // "a"
    That = 3,
    Whose = 4,  // "their"
    Figure = 5,
    In = 6,  // any preposition
    And = 7,
    Is = 8,
    Strange = 9,  // no table knows it
    Phrase = 10,
    Object = 11,
    Other = 12
};

// English's small words by what they do.
const std::unordered_map<std::string_view, Beside>& smallWords() {
    static const std::unordered_map<std::string_view, Beside> kWords = [] {
        std::unordered_map<std::string_view, Beside> words;
        const auto put = [&](Beside beside, std::initializer_list<std::string_view> all) {
            for (const std::string_view word : all) {
                words[word] = beside;
            }
        };
        put(Beside::The, {"the"});
        put(Beside::One, {"a", "an", "one"});
        put(Beside::That, {"that", "this", "those", "these"});
        put(Beside::Whose, {"my", "her", "his", "their", "your", "our"});
        put(Beside::Figure, {"all", "both", "two", "three", "four", "every", "each"});
        put(Beside::In, {"in",     "on",    "at",   "by",      "of",   "under", "over",
                         "behind", "near",  "to",   "from",    "with", "for",   "around",
                         "above",  "below", "into", "through", "off",  "where", "like"});
        put(Beside::And, {"and", "or", "plus"});
        put(Beside::Is,
            {"is", "are", "was", "were", "has", "have", "looks", "need", "needs", "get", "gets"});
        return words;
    }();
    return kWords;
}

// What a small word before the phrase tells of who does it, and whether.
std::optional<SignFlag> flagOf(std::string_view word) {
    static const std::unordered_map<std::string_view, SignFlag> kWords = [] {
        std::unordered_map<std::string_view, SignFlag> words;
        const auto put = [&](SignFlag flag, std::initializer_list<std::string_view> all) {
            for (const std::string_view one : all) {
                words[one] = flag;
            }
        };
        put(SignFlag::Was, {"was", "were", "had", "been", "did", "used"});
        put(SignFlag::Might, {"would", "could", "might", "should", "may", "maybe"});
        put(SignFlag::Will,
            {"will", "going", "need", "needs", "want", "wants", "gonna", "let's", "gets"});
        put(SignFlag::We, {"we", "i", "you", "we'll", "i'll", "i'm", "we're", "i'd", "we'd"});
        put(SignFlag::Others,
            {"they", "he", "she", "somebody", "someone", "who", "they've", "they'd", "he'd"});
        put(SignFlag::If, {"if", "when", "until", "unless", "before", "once"});
        return words;
    }();
    const auto at = kWords.find(word);
    return at == kWords.end() ? std::nullopt : std::optional<SignFlag>(at->second);
}

class SignReader {
  public:
    SignReader(const Sentence& sentence, const Spots& spots, const Said& said)
        : sentence_(sentence),
          spots_(spots),
          said_(said),
          act_(spots.acts[said.act]),
          object_(said.spot == kNone ? nullptr : &spots.objects[said.spot]) {}

    std::vector<Sign> read() {
        constexpr std::size_t kUsual = 32;
        signs_.reserve(kUsual);
        add(SignKind::Every, 0);
        add(SignKind::Act, act_.row);
        add(SignKind::Object, said_.object);
        add(SignKind::Trade, said_.object);
        add(SignKind::Weight, static_cast<std::uint32_t>(tables().acts[act_.row].weight));
        static constexpr std::array<double, 5> kLengths = {5, 9, 15, 24, 40};
        add(SignKind::Length, stepOf(static_cast<double>(sentence_.tokens.size()), kLengths));
        readGap();
        readCues();
        readPhrase();
        readForm();
        readBeside();
        return std::move(signs_);
    }

  private:
    void add(SignKind kind, std::uint32_t value) {
        const Sign sign{kind, value};
        if (std::find(signs_.begin(), signs_.end(), sign) == signs_.end()) {
            signs_.push_back(sign);
        }
    }

    void flag(SignFlag one, bool is) {
        if (is) {
            add(SignKind::Is, static_cast<std::uint32_t>(one));
        }
    }

    void readGap() {
        if (object_ == nullptr) {
            return;
        }
        const bool left = object_->span.end <= act_.span.begin;
        const std::size_t begin = left ? object_->span.end : act_.span.end;
        const std::size_t end = left ? act_.span.begin : object_->span.begin;
        static constexpr std::array<double, 4> kGaps = {1, 2, 4, 8};
        static constexpr std::array<double, 3> kParts = {1.0, 2.5, 5.0};
        add(SignKind::Gap, end <= begin ? 0 : stepOf(static_cast<double>(end - begin), kGaps));
        add(SignKind::Parted,
            end <= begin ? 0 : stepOf(partedBy(sentence_, spots_, begin, end), kParts));
        flag(SignFlag::ObjectLeft, left);
        flag(SignFlag::ObjectFirst, object_->span.begin == 0);
        flag(SignFlag::Material, object_->material);
        flag(SignFlag::With, object_->with);
        flag(SignFlag::OwnPlace, !object_->place.empty());
        // A word that no table knows, right beside the object, may make it another thing.
        std::size_t strange = 0;
        for (std::size_t i = begin; i < end; ++i) {
            strange += isStrange(i) ? 1 : 0;
        }
        add(SignKind::Strange, most(strange, 2));
        const std::size_t first = object_->span.begin;
        add(SignKind::Strange, 10 + (first > 0 && isStrange(first - 1) ? 1U : 0U));
        add(SignKind::Strange, 20 + (isStrange(object_->span.end) ? 1U : 0U));
    }

    [[nodiscard]] bool isStrange(std::size_t at) const {
        return at < sentence_.tokens.size() && sentence_.tokens[at].kind == TokenKind::Word &&
               sentence_.tokens[at].word == kUnknown;
    }

    // What parts the phrase from a cue parts it from all cues beyond.
    void readCues() {
        std::size_t from = 0;
        for (auto cue = spots_.cues.rbegin(); cue != spots_.cues.rend(); ++cue) {
            const std::size_t end = cue->span.end;
            if (end > from && end < act_.span.begin && isParted(end, act_.span.begin)) {
                from = end;
            }
        }
        for (const CueSpot& cue : spots_.cues) {
            const std::size_t begin = cue.span.begin;
            if (begin > act_.span.end && isParted(act_.span.end, begin)) {
                break;
            }
            if (cue.span.end > from) {
                add(SignKind::Cue, static_cast<std::uint32_t>(cue.cue));
            }
        }
    }

    [[nodiscard]] bool isParted(std::size_t begin, std::size_t end) const {
        return partedBy(sentence_, spots_, begin, end, kSameClause) >= kSameClause;
    }

    void readPhrase() {
        flag(SignFlag::Negated, act_.negated);
        flag(SignFlag::Passive, act_.passive);
        flag(SignFlag::Names, act_.names);
        flag(SignFlag::Before, said_.fromBefore);
        flag(SignFlag::Assumed, said_.assumed);
        constexpr std::size_t kFar = 4;
        for (std::size_t i = act_.span.begin; i-- > 0 && i + kFar >= act_.span.begin;) {
            const Token& token = sentence_.tokens[i];
            if (token.kind == TokenKind::Mark) {
                break;
            }
            const std::string& word = token.plain;
            if (const std::optional<SignFlag> told = flagOf(word)) {
                flag(*told, true);
            }
            flag(SignFlag::And, word == "and" && i + 1 == act_.span.begin);
        }
    }

    [[nodiscard]] Beside classOf(std::size_t at) const {
        if (at >= sentence_.tokens.size()) {
            return Beside::Edge;
        }
        const Token& token = sentence_.tokens[at];
        if (token.kind == TokenKind::Mark) {
            return Beside::Edge;
        }
        if (token.kind == TokenKind::Number) {
            return Beside::Figure;
        }
        if (const auto word = smallWords().find(token.plain); word != smallWords().end()) {
            return word->second;
        }
        if (act_.span.holds(at) || act_.tail.holds(at)) {
            return Beside::Phrase;
        }
        if (isStrange(at)) {
            return Beside::Strange;
        }
        const bool object =
            std::any_of(spots_.objects.begin(), spots_.objects.end(),
                        [&](const ObjectSpot& other) { return other.span.holds(at); });
        return object ? Beside::Object : Beside::Other;
    }

    void readBeside() {
        add(SignKind::Words, 10 + most(act_.span.end - act_.span.begin, 4));
        flag(SignFlag::First, act_.span.begin == 0);
        flag(SignFlag::Last, act_.span.end + 1 >= sentence_.tokens.size());
        const std::string_view last = sentence_.tokens[act_.span.end - 1].text;
        flag(SignFlag::Past, last.ends_with("ed"));
        flag(SignFlag::Doing, last.ends_with("ing"));
        flag(SignFlag::Year,
             std::any_of(spots_.amounts.begin(), spots_.amounts.end(), [](const Amount& amount) {
                 const std::int64_t year = amount.value / 1000;
                 return amount.kind == AmountKind::Plain && year >= 1850 && year <= 2060;
             }));
        if (object_ == nullptr) {
            return;
        }
        add(SignKind::Words, most(object_->span.end - object_->span.begin, 3));
        const std::size_t first = object_->span.begin;
        add(SignKind::Lead,
            static_cast<std::uint32_t>(first == 0 ? Beside::Edge : classOf(first - 1)));
        add(SignKind::Follow, static_cast<std::uint32_t>(classOf(object_->span.end)));
        std::size_t at = first;
        while (at > 0 && classOf(at - 1) >= Beside::The && classOf(at - 1) <= Beside::Whose) {
            --at;
        }
        flag(SignFlag::AfterIn, at > 0 && classOf(at - 1) == Beside::In);
    }

    void readForm() {
        flag(SignFlag::Terse, sentence_.terse);
        flag(SignFlag::Heading, sentence_.heading);
        flag(SignFlag::Bullet, sentence_.bullet);
        flag(SignFlag::Alone, sentence_.alone);
        flag(SignFlag::OpensLine, sentence_.opensLine);
        flag(SignFlag::Corrected, !sentence_.whole.empty());
        const Token& last = sentence_.tokens.back();
        flag(SignFlag::Question, last.kind == TokenKind::Mark && last.mark == '?');
    }

    static constexpr double kSameClause = 3.4;

    const Sentence& sentence_;
    const Spots& spots_;
    const Said& said_;
    const ActSpot& act_;
    const ObjectSpot* object_;
    std::vector<Sign> signs_;
};

}  // namespace

const ClueWords& kindWords(SignKind kind) {
    static const std::vector<ClueWords> kWords(kKinds.begin(), kKinds.end());
    return kWords[static_cast<std::size_t>(kind)];
}

const ClueWords& valueWords(const Sign& sign) {
    static const std::vector<ClueWords> kIs(kFlags.begin(), kFlags.end());
    static const std::vector<ClueWords> kPhrases = [] {
        std::vector<ClueWords> phrases;
        for (const ActRow& act : tables().acts) {
            phrases.emplace_back(act.phrase);
        }
        return phrases;
    }();
    switch (sign.kind) {
        case SignKind::Act:
            return kPhrases[sign.value];
        case SignKind::Object:
            return thingWords(sign.value).name;
        case SignKind::Trade:
            return thingWords(sign.value).trade;
        case SignKind::Cue:
            return cueWords(static_cast<Cue>(sign.value));
        case SignKind::Is:
            return kIs[sign.value];
        case SignKind::Also:
            return treatmentWords(static_cast<model::Treatment>(sign.value));
        default:
            return figureWords(sign.value);
    }
}

std::vector<Sign> signsOf(const Sentence& sentence, const Spots& spots, const Said& said) {
    return SignReader(sentence, spots, said).read();
}

}  // namespace ledgerboard::intake
