#include "core/intake/notes/told_acts.h"

#include <algorithm>
#include <string>

#include "core/intake/notes/one_of.h"
#include "core/intake/notes/spotted_words.h"

namespace ledgerboard::intake {

namespace {

using model::Treatment;

std::uint32_t rowNamed(std::string_view phrase) {
    const auto& acts = tables().acts;
    const auto at = std::find_if(acts.begin(), acts.end(),
                                 [&](const ActRow& act) { return act.phrase == phrase; });
    return at == acts.end() ? kNone : static_cast<std::uint32_t>(at - acts.begin());
}

class Teller : SpottedWords {
  public:
    using SpottedWords::SpottedWords;

    void run() {
        std::erase_if(spots_.acts, [&](const ActSpot& act) { return fillsIn(act); });
        std::erase_if(spots_.acts, [&](const ActSpot& act) { return putsWhatIsThere(act); });
        partTails();
        dropNoNeed();
        dropCalls();
        layDown();
        readIsNew();
        std::erase_if(spots_.acts, [&](ActSpot& act) { return isOfOthers(act); });
        std::erase_if(spots_.acts, [&](const ActSpot& act) { return wantsSomebody(act); });
    }

  private:
    [[nodiscard]] std::string_view text(std::size_t at) const {
        return at < sentence_.tokens.size() ? std::string_view(sentence_.tokens[at].plain)
                                            : std::string_view();
    }

    [[nodiscard]] bool textIn(std::size_t at, const std::vector<std::string_view>& list) const {
        return isOneOf(text(at), list);
    }

    [[nodiscard]] bool isWord(std::size_t at) const {
        return at < sentence_.tokens.size() && sentence_.tokens[at].kind == TokenKind::Word;
    }

    // "sort of a mushroom"
    [[nodiscard]] bool fillsIn(const ActSpot& act) const {
        return std::any_of(spots_.cues.begin(), spots_.cues.end(), [&](const CueSpot& cue) {
            return cue.cue == Cue::Filler && cue.span.begin <= act.span.begin &&
                   act.span.end <= cue.span.end;
        });
    }

    // "I'd put the washer over there": it is there already.
    [[nodiscard]] bool putsWhatIsThere(const ActSpot& act) const {
        static const std::vector<std::string_view> kThere = {
            "the", "that", "this", "it", "them", "my", "those", "these", "back", "up"};
        const std::string& phrase = row(act).phrase;
        const bool puts =
            row(act).fresh && (phrase.ends_with(" put") || phrase.ends_with(" putting"));
        return puts && textIn(act.span.end, kThere);
    }

    // "pull it and put plank down": the second takes the word, the first is said by itself.
    void partTails() {
        for (ActSpot& act : spots_.acts) {
            const bool shared =
                act.tail.end > act.tail.begin &&
                std::any_of(spots_.acts.begin(), spots_.acts.end(), [&](const ActSpot& other) {
                    return other.span.begin >= act.span.end && other.span.begin < act.tail.begin &&
                           other.tail.begin == act.tail.begin && other.tail.end > other.tail.begin;
                });
            const std::string& phrase = row(act).phrase;
            const std::uint32_t head =
                shared ? rowNamed(phrase.substr(0, phrase.find(" ~"))) : kNone;
            if (head != kNone) {
                act.row = head;
                act.tail = {};
            }
        }
    }

    // "no need for board": neither wanted nor missing.
    void dropNoNeed() {
        constexpr std::size_t kFar = 5;
        for (std::size_t i = 0; i + 2 < sentence_.tokens.size(); ++i) {
            if (!word(i, "no") || !word(i + 1, "need") || text(i + 2) != "for") {
                continue;
            }
            const auto reached = [&](const Span& span) {
                if (span.begin < i || span.begin > i + kFar) {
                    return false;
                }
                return partedBy(sentence_, spots_, i + 2, span.begin) < 1.0;
            };
            std::erase_if(spots_.acts, [&](const ActSpot& act) { return reached(act.span); });
            for (ObjectSpot& object : spots_.objects) {
                object.landmark = object.landmark || reached(object.span);
            }
        }
    }

    // "vinyl plank goes down in this one": a floor is laid.
    void layDown() {
        static const std::uint32_t kLaid = rowNamed("implied by the list");
        static const std::vector<std::string_view> kAfter = {
            "in", "through", "here", "there", "and", "so", "over", "everywhere"};
        const std::size_t most = spots_.objects.size();
        for (std::size_t i = 0; i < most && kLaid != kNone; ++i) {
            const ObjectSpot& object = spots_.objects[i];
            const std::size_t at = object.span.end;
            const bool goes = text(at) == "goes" || text(at) == "go" || text(at) == "going";
            const bool closes = at + 2 >= sentence_.tokens.size() || cueIsMark(at + 2, ".,;:!?-") ||
                                textIn(at + 2, kAfter);
            if (tables().objects[object.object].family == "floor" && !object.landmark && goes &&
                text(at + 1) == "down" && closes) {
                spots_.acts.push_back(ActSpot{.span = {at, at + 2}, .tail = {}, .row = kLaid});
            }
        }
        std::stable_sort(
            spots_.acts.begin(), spots_.acts.end(),
            [](const ActSpot& a, const ActSpot& b) { return a.span.begin < b.span.begin; });
    }

    // "All right, new tile": said to begin with, of nothing.
    void dropCalls() {
        std::erase_if(spots_.acts, [&](const ActSpot& act) {
            const std::size_t end = act.span.end;
            const bool call = text(0) == "all" || text(0) == "fine" || text(0) == "good";
            return act.span.begin == 0 && call && row(act).treatment == Treatment::Keep &&
                   end + 1 < sentence_.tokens.size() && cueIsMark(end, ",");
        });
    }

    // "The carpet's new": it is, and no new one is wanted. "The kitchen's new cabinets" is another
    // matter.
    void readIsNew() {
        static const std::uint32_t kIsNew = rowNamed("is new");
        static const std::vector<std::string_view> kAfter = {
            "on",   "in",  "and",  "so",   "but",  "too",   "as",     "since", "already", "this",
            "last", "now", "from", "from", "here", "there", "enough", "i",     "they",    "we"};
        for (ActSpot& act : spots_.acts) {
            if (row(act).phrase != "new" || act.span.begin == 0 || kIsNew == kNone) {
                continue;
            }
            const std::size_t end = act.span.end;
            const bool is = std::any_of(spots_.objects.begin(), spots_.objects.end(),
                                        [&](const ObjectSpot& object) {
                                            return object.span.end == act.span.begin &&
                                                   text(act.span.begin - 1).ends_with("'s");
                                        });
            const bool closes =
                end >= sentence_.tokens.size() || cueIsMark(end, ".,;:!?-") || textIn(end, kAfter);
            if (is && closes) {
                act.row = kIsNew;
            }
        }
    }

    // Whether the form at `at` tells of the past: "painted", "put", "built".
    [[nodiscard]] bool tellsPast(std::size_t at) const {
        static const std::vector<std::string_view> kForms = {
            "put",  "built", "laid", "hung",  "cut",   "tore", "took",    "stuck", "ripped",
            "dug",  "threw", "ran",  "sunk",  "made",  "did",  "redid",   "swept", "rebuilt",
            "blew", "set",   "went", "swept", "glued", "tied", "knocked", "left",  "drove"};
        const std::string_view word = text(at);
        return (word.ends_with("ed") && word.size() > 4) || textIn(at, kForms);
    }

    // Whether the words before token `at` are others and what they have: "they've", "somebody's",
    // "the last people have".
    [[nodiscard]] bool saidOfOthers(std::size_t at) const {
        static const std::vector<std::string_view> kOthers = {
            "they",    "they've",  "they'd",   "somebody", "somebody's", "someone", "someone's",
            "he",      "he's",     "he'd",     "she",      "she's",      "she'd",   "people",
            "who",     "whoever",  "who's",    "seller",   "sellers",    "owner",   "owners",
            "tenant",  "tenants",  "cousin",   "uncle",    "aunt",       "brother", "father",
            "husband", "wife",     "nephew",   "grandad",  "soul",       "genius",  "comedian",
            "joker",   "previous", "landlord", "flipper",  "bloke",      "guy",     "fellow",
            "man",     "lot",      "neighbor", "son",      "daughter",   "dad",     "mother"};
        static const std::vector<std::string_view> kBetween = {
            "have", "had",  "has",  "already", "just",      "all",     "then",    "only",
            "even", "also", "once", "never",   "obviously", "clearly", "recently"};
        constexpr std::size_t kFar = 3;
        std::size_t i = at;
        for (std::size_t k = 0; k < kFar && i > 0 && textIn(i - 1, kBetween); ++k) {
            --i;
        }
        return i > 0 && isWord(i - 1) && textIn(i - 1, kOthers);
    }

    // "I moved the bed away", "we waxed it on our knees": what the speaker did.
    [[nodiscard]] bool speakerDid(std::size_t at) const {
        static const std::vector<std::string_view> kSpeaker = {"i", "we", "i've", "we've"};
        static const std::vector<std::string_view> kThings = {
            "the", "it", "them", "this", "that", "these", "those", "my", "our", "a", "over", "out"};
        return at > 0 && text(at).ends_with("ed") && text(at) != "need" &&
               textIn(at - 1, kSpeaker) && textIn(at + 1, kThings);
    }

    // "Dell painted the walls": a name, the deed and the thing.
    [[nodiscard]] bool namedDid(std::size_t at) const {
        static const std::vector<std::string_view> kThings = {
            "the", "it", "them", "this", "that", "these", "those", "my", "our", "all", "both"};
        const std::size_t next = at + 1;
        if (at == 0 || !isWord(at - 1) || !textIn(next, kThings)) {
            return false;
        }
        const Token& name = sentence_.tokens[at - 1];
        return name.capital && name.word == kUnknown;
    }

    // Whether the sentence says when it was done, or how well.
    [[nodiscard]] bool saysWhenOrHowWell(std::size_t from) const {
        static const std::vector<std::string_view> kSays = {
            "ago",    "spring", "summer", "fall", "autumn", "winter", "last",    "recently",
            "lately", "well",   "nicely", "new",  "just",   "right",  "properly"};
        for (std::size_t i = from; i < sentence_.tokens.size(); ++i) {
            if (textIn(i, kSays)) {
                return true;
            }
        }
        return std::any_of(spots_.amounts.begin(), spots_.amounts.end(), [&](const Amount& amount) {
            const std::int64_t year = amount.value / 1000;
            return amount.kind == AmountKind::Plain && year >= 1990 && year <= 2060 &&
                   amount.begin > from;
        });
    }

    // Whether the treatment is what others did. Where it is said when, what they did is kept.
    bool isOfOthers(ActSpot& act) const {
        static const std::uint32_t kKept = rowNamed("implied by what was done");
        const Treatment treatment = row(act).treatment;
        const std::size_t at = act.span.begin;
        const bool work = row(act).fresh || treatment == Treatment::Refinish ||
                          treatment == Treatment::Replace || treatment == Treatment::Remove ||
                          treatment == Treatment::Repair || treatment == Treatment::Add ||
                          treatment == Treatment::Clean;
        if (speakerDid(at)) {
            return true;
        }
        if (!work || !tellsPast(at) || (!saidOfOthers(at) && !namedDid(at))) {
            return false;
        }
        const bool kept =
            treatment != Treatment::Remove && kKept != kNone && saysWhenOrHowWell(act.span.end);
        if (kept) {
            act.row = kKept;
        }
        return !kept;
    }

    // "I want somebody to have a look", "I'd like the roofer to patch it": who is to come is no
    // thing wanted.
    [[nodiscard]] bool wantsSomebody(const ActSpot& act) const {
        static const std::vector<std::string_view> kPeople = {
            "somebody", "someone", "him",       "her",     "you",         "them",
            "man",      "fellow",  "guy",       "bloke",   "person",      "plumber",
            "roofer",   "mason",   "engineer",  "company", "electrician", "sparky",
            "people",   "lad",     "carpenter", "painter", "inspector",   "anybody"};
        static const std::vector<std::string_view> kWants = {"want", "like", "need", "have",
                                                             "love"};
        constexpr std::size_t kFar = 6;
        if (!row(act).fresh || !textIn(act.span.end - 1, kWants)) {
            return false;
        }
        bool somebody = false;
        for (std::size_t i = act.span.end; i < act.span.end + kFar && isWord(i); ++i) {
            if (somebody && text(i) == "to") {
                return true;
            }
            somebody = somebody || textIn(i, kPeople);
        }
        return false;
    }
};

}  // namespace

void dropToldActs(const Sentence& sentence, Spots& spots) {
    Teller(sentence, spots).run();
}

}  // namespace ledgerboard::intake
