#include "core/intake/notes/lessons.h"

#include <algorithm>

#include "core/intake/notes/names.h"
#include "core/intake/notes/own_words.h"
#include "core/intake/notes/tables.h"
#include "core/intake/notes/tokens.h"

namespace ledgerboard::intake {

namespace {

using model::Treatment;

// A sentence with what is recognised in it.
class ReadAgain {
  public:
    ReadAgain(const std::string& sentence, std::span<const OwnWord> known)
        : speller_(tables().lexicon), own_(known) {
        cutTokens(sentence, 1, speller_, tables().lexicon, tokens_);
        spots_ = findSpots(tokens_);
        static_cast<void>(own_.apply(tokens_, spots_));
    }

    // The one phrase that names the object; empty where none or several do.
    [[nodiscard]] std::string phraseOfObject(const std::string& object) const {
        std::string phrase;
        for (const ObjectSpot& spot : spots_.objects) {
            if (own_.nameOf(tables().objects[spot.object].name) != object) {
                continue;
            }
            const std::string here = words(spot.span);
            if (!phrase.empty() && phraseKey(here) != phraseKey(phrase)) {
                return {};
            }
            phrase = here;
        }
        return phrase;
    }

    // The one phrase that judges that `treatment` is needed.
    [[nodiscard]] std::string phraseOfTreatment(Treatment treatment) const {
        std::string phrase;
        for (const ActSpot& spot : spots_.acts) {
            const ActRow& row = tables().acts[spot.row];
            const bool says =
                row.treatment == treatment || (row.fresh && treatment == Treatment::Add);
            if (!says) {
                continue;
            }
            if (!phrase.empty() || row.weight >= kOrder || spot.negated || !row.tail.empty()) {
                return {};
            }
            phrase = words(spot.span);
        }
        return phrase;
    }

    // The object's name as it stands in the sentence, where the tables see nothing there.
    [[nodiscard]] std::string phraseUnread(const std::string& object) const {
        const std::vector<std::string> wanted = stemsIn(object);
        for (std::size_t i = 0; i < tokens_.size() && !wanted.empty(); ++i) {
            std::size_t at = i;
            std::size_t next = 0;
            while (at < tokens_.size() && next < wanted.size() &&
                   tokens_[at].kind == TokenKind::Word &&
                   stemsIn(tokens_[at].text) == std::vector<std::string>{wanted[next]}) {
                ++at;
                ++next;
            }
            if (next < wanted.size()) {
                continue;
            }
            const bool read = std::any_of(
                spots_.objects.begin(), spots_.objects.end(), [&](const ObjectSpot& spot) {
                    return spot.span.begin < at && i < spot.span.end &&
                           own_.nameOf(tables().objects[spot.object].name) == object;
                });
            return read ? std::string() : words({i, at});
        }
        return {};
    }

  private:
    static constexpr int kOrder = 3;

    [[nodiscard]] std::string words(const Span& span) const {
        std::string joined;
        const char* last = nullptr;
        for (std::size_t i = span.begin; i < span.end; ++i) {
            if (tokens_[i].kind == TokenKind::Word && tokens_[i].text.data() != last) {
                joined += (joined.empty() ? "" : " ") + tokens_[i].plain;
            }
            last = tokens_[i].text.data();
        }
        return joined;
    }

    Speller speller_;
    OwnWords own_;
    std::vector<Token> tokens_;
    Spots spots_;
};

// "Sink" made a "vessel sink" is said more closely, not differently.
bool isCloser(const std::string& closer, const std::string& plain) {
    const std::vector<std::string> more = stemsIn(closer);
    const std::vector<std::string> less = stemsIn(plain);
    return std::all_of(less.begin(), less.end(), [&](const std::string& stem) {
        return std::find(more.begin(), more.end(), stem) != more.end();
    });
}

void add(std::vector<OwnWord>& lessons, OwnWord word, std::span<const OwnWord> known) {
    const std::string key = phraseKey(word.phrase);
    const bool there = std::any_of(known.begin(), known.end(), [&](const OwnWord& one) {
        return phraseKey(one.phrase) == key && one.object == word.object &&
               one.space == word.space && one.treatment == word.treatment &&
               one.nothing == word.nothing;
    });
    if (!key.empty() && !there) {
        lessons.push_back(std::move(word));
    }
}

}  // namespace

std::string phraseKey(std::string_view phrase) {
    std::string key;
    for (const std::string& stem : stemsIn(phrase)) {
        key += (key.empty() ? "" : " ") + stem;
    }
    return key;
}

std::vector<OwnWord> lessonsOf(const Correction& correction, std::span<const OwnWord> known) {
    std::vector<OwnWord> lessons;
    if (correction.sentence.empty()) {
        return lessons;
    }
    const ReadAgain read(correction.sentence, known);
    const auto& before = correction.before;
    const auto& after = correction.after;
    if (!before && after) {
        add(lessons, {.phrase = read.phraseUnread(after->object), .object = after->object}, known);
    } else if (before && !after) {
        const std::string phrase = read.phraseOfObject(before->object);
        if (phraseKey(phrase) != phraseKey(before->object)) {
            add(lessons, {.phrase = phrase, .nothing = true}, known);
        }
    } else if (before && after) {
        if (before->object != after->object && !after->object.empty()) {
            const std::string phrase = read.phraseOfObject(before->object);
            if (!isCloser(after->object, phrase) && !isCloser(after->object, before->object)) {
                add(lessons, {.phrase = phrase, .object = after->object}, known);
            }
        }
        if (before->treatment != after->treatment && after->treatment != Treatment::Unset) {
            add(lessons,
                {.phrase = read.phraseOfTreatment(before->treatment),
                 .treatment = after->treatment},
                known);
        }
        // "Bedroom 2" made the "nursery" is so in this house alone.
        const bool plain =
            spaceName(before->space) == plainWord(before->space) && isKnownSpace(before->space);
        if (correction.spaceRenamed && !plain && !after->space.empty() &&
            phraseKey(before->space) != phraseKey(after->space)) {
            add(lessons, {.phrase = plainWord(before->space), .space = after->space}, known);
        }
    }
    return lessons;
}

}  // namespace ledgerboard::intake
