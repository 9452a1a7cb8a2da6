#include "core/intake/notes/arrows.h"

#include <algorithm>

#include "core/intake/notes/link_rules.h"
#include "core/intake/notes/one_of.h"
#include "core/intake/notes/spotted_words.h"

namespace ledgerboard::intake {

namespace {

using model::Treatment;

class Arrows : SpottedWords {
  public:
    Arrows(const Sentence& sentence, Spots& spots) : SpottedWords(sentence, spots) {}

    // "carpet > plank" replaces one by the other, "windows -> vinyl" with a material.
    void readPairs() {
        static const std::uint32_t kNew = actNamed("new");
        static const std::uint32_t kInstead = actNamed("replace");
        static const std::uint32_t kReplaced = actNamed("be replaced");
        auto& objects = spots_.objects;
        for (std::size_t i = 1; i < objects.size(); ++i) {
            const std::size_t begin = objects[i - 1].span.end;
            const std::size_t end = objects[i].span.begin;
            std::size_t arrow = end;
            bool broken = false;
            for (std::size_t k = begin; k < end; ++k) {
                arrow = cueIsMark(k, ">") ? k : arrow;
                broken = broken || cueIsMark(k, ";.");
            }
            if (arrow == end || broken || end > arrow + 2 || actBetween(arrow, end)) {
                continue;
            }
            // "box light > 6 can lights": there was one, of another sort.
            const bool adds = tables().objects[objects[i].object].freshAdds;
            if (insert(arrow, objects[i].material ? kReplaced : adds ? kInstead : kNew)) {
                if (objects[i].material) {
                    objects[i].landmark = true;
                } else {
                    dropOld(entryBegin(arrow), arrow);
                }
                dropReasons(entryBegin(arrow), arrow);
            }
        }
    }

    void readPrices() {
        static const std::uint32_t kReplaced = actNamed("be replaced");
        static const std::uint32_t kAdded = actNamed("be added");
        static const std::uint32_t kPainted = actNamed("be painted");
        for (std::size_t arrow = 1; arrow + 1 < sentence_.tokens.size(); ++arrow) {
            if (!cueIsMark(arrow, ">")) {
                continue;
            }
            const std::size_t begin = entryBegin(arrow);
            const ObjectSpot* subject = subjectOf(begin, arrow);
            if (subject == nullptr || actAt(arrow)) {
                continue;
            }
            if (orderFollows(arrow)) {
                dropReasons(begin, arrow);
                keepOnly(subject, begin, arrow);
                dropHardware(arrow);
            } else if (priceFollows(arrow)) {
                const bool gone = isGone(begin, arrow) || noneBehind(arrow);
                dropReasons(begin, arrow);
                keepOnly(subject, begin, arrow);
                insert(arrow, gone ? kAdded : kReplaced);
            } else if (stuffFollows(arrow)) {
                const bool paints = isColor(arrow + 1) && isPainted(*subject);
                dropReasons(begin, arrow);
                insert(arrow, paints ? kPainted : kReplaced);
            }
        }
    }

  private:
    [[nodiscard]] static std::uint32_t actNamed(std::string_view phrase) {
        const auto& acts = tables().acts;
        const auto row = std::find_if(acts.begin(), acts.end(),
                                      [&](const ActRow& act) { return act.phrase == phrase; });
        return row == acts.end() ? kNone : static_cast<std::uint32_t>(row - acts.begin());
    }

    // Puts a treatment where the arrow stands. False where the tables have no such row.
    bool insert(std::size_t arrow, std::uint32_t row) {
        if (row == kNone) {
            return false;
        }
        ActSpot act;
        act.span = {arrow, arrow + 1};
        act.row = row;
        const auto at = std::find_if(spots_.acts.begin(), spots_.acts.end(),
                                     [&](const ActSpot& one) { return one.span.begin >= arrow; });
        spots_.acts.insert(at, act);
        return true;
    }

    [[nodiscard]] bool actBetween(std::size_t begin, std::size_t end) const {
        return std::any_of(spots_.acts.begin(), spots_.acts.end(), [&](const ActSpot& act) {
            return act.span.begin >= begin && act.span.end <= end && row(act).weight > 1;
        });
    }

    [[nodiscard]] bool actAt(std::size_t at) const {
        return std::any_of(spots_.acts.begin(), spots_.acts.end(),
                           [&](const ActSpot& act) { return act.span.holds(at); });
    }

    // Where the entry begins that the arrow belongs to.
    [[nodiscard]] std::size_t entryBegin(std::size_t arrow) const {
        std::size_t begin = arrow;
        while (begin > 0 && !cueIsMark(begin - 1, ";.!?>:") &&
               !(cueIsMark(begin - 1, "/") && !sentence_.tokens[begin - 1].glued)) {
            --begin;
        }
        return begin;
    }

    // What the arrow speaks of: the first thing of its part of the entry; of "slider, track chewed
    // up > 1650" the slider, as nothing is said of it by itself.
    [[nodiscard]] const ObjectSpot* subjectOf(std::size_t begin, std::size_t arrow) const {
        const ObjectSpot* subject = nullptr;
        for (const ObjectSpot& object : spots_.objects) {
            if (object.span.begin < begin || object.span.end > arrow || object.landmark ||
                object.material) {
                continue;
            }
            bool comma = false;
            for (std::size_t i = subject == nullptr ? arrow : subject->span.end;
                 i < object.span.begin; ++i) {
                comma = comma || cueIsMark(i, ",");
            }
            const bool said =
                subject != nullptr && comma && actWithin(subject->span.end, object.span.begin);
            if (subject == nullptr || said) {
                subject = &object;
            }
        }
        return subject;
    }

    [[nodiscard]] bool actWithin(std::size_t begin, std::size_t end) const {
        return std::any_of(spots_.acts.begin(), spots_.acts.end(), [&](const ActSpot& act) {
            return act.span.begin >= begin && act.span.end <= end && row(act).weight > 0;
        });
    }

    // The other things of the subject's part only say what is wrong with it.
    void keepOnly(const ObjectSpot* subject, std::size_t begin, std::size_t arrow) {
        const std::size_t from = subject->span.end;
        for (ObjectSpot& object : spots_.objects) {
            object.landmark = object.landmark || (object.span.begin >= std::max(begin, from) &&
                                                  object.span.end <= arrow);
        }
    }

    // "floor vinyl, torn > plank": all of it is the old thing, back to where something else is
    // said.
    void dropOld(std::size_t begin, std::size_t arrow) {
        std::size_t from = begin;
        for (const ActSpot& act : spots_.acts) {
            const bool said = row(act).weight > 2 || row(act).treatment == Treatment::Keep;
            if (said && act.span.begin >= begin && act.span.end <= arrow) {
                from = act.span.end;
            }
        }
        for (ObjectSpot& object : spots_.objects) {
            object.landmark =
                object.landmark || (object.span.begin >= from && object.span.end <= arrow);
        }
    }

    [[nodiscard]] bool orderFollows(std::size_t arrow) const {
        constexpr std::size_t kNear = 3;
        return std::any_of(spots_.acts.begin(), spots_.acts.end(), [&](const ActSpot& act) {
            return act.span.begin > arrow && act.span.begin <= arrow + kNear && row(act).weight > 1;
        });
    }

    // "> 420", "> $310", "> 7 @ 32", "> wood 5 @ 48", "> elec 50 gal 1350".
    [[nodiscard]] bool priceFollows(std::size_t arrow) const {
        constexpr std::size_t kWords = 3;
        std::size_t words = 0;
        for (std::size_t i = arrow + 1; i < sentence_.tokens.size() && words <= kWords; ++i) {
            const bool figure = std::any_of(
                spots_.amounts.begin(), spots_.amounts.end(),
                [&](const Amount& amount) { return amount.begin <= i && i < amount.end; });
            if (figure || sentence_.tokens[i].kind == TokenKind::Number) {
                return true;
            }
            if (sentence_.tokens[i].kind == TokenKind::Mark && !cueIsMark(i, "$~")) {
                return false;
            }
            words += sentence_.tokens[i].kind == TokenKind::Word ? 1 : 0;
        }
        return false;
    }

    // "> white", "> oak, 12": nothing but a colour or a material.
    [[nodiscard]] bool stuffFollows(std::size_t arrow) const {
        std::size_t end = arrow + 1;
        while (end < sentence_.tokens.size() && end <= arrow + 2 &&
               (isColor(end) || spots_.endOf(Cue::Material, end) > end)) {
            ++end;
        }
        return end > arrow + 1 &&
               (end >= sentence_.tokens.size() || sentence_.tokens[end].kind == TokenKind::Mark);
    }

    [[nodiscard]] bool isColor(std::size_t at) const {
        static const std::vector<std::string_view> kColors = {
            "white", "black", "gray",  "grey",  "navy", "blue", "green", "beige",
            "cream", "tan",   "brown", "taupe", "red",  "dark", "light", "yellow"};
        return at < sentence_.tokens.size() && isOneOf(sentence_.tokens[at].plain, kColors);
    }

    // Knobs and covers of another colour are bought, not painted.
    [[nodiscard]] static bool isPainted(const ObjectSpot& object) {
        const ObjectRow& row = tables().objects[object.object];
        return canBeRefinished(row) && row.name.find("hardware") == std::string::npos &&
               row.trade != "plumbing";
    }

    [[nodiscard]] bool isGone(std::size_t begin, std::size_t arrow) const {
        for (std::size_t i = begin; i < arrow; ++i) {
            if (word(i, "gone") || word(i, "missing") || spots_.endOf(Cue::Absent, i) > i) {
                return true;
            }
        }
        return false;
    }

    // "pulls > 44 @ 5.5 (none on now)"
    [[nodiscard]] bool noneBehind(std::size_t arrow) const {
        for (std::size_t i = arrow; i < sentence_.tokens.size() && !cueIsMark(i, ";."); ++i) {
            if (cueIsMark(i, "(") && word(i + 1, "none")) {
                return true;
            }
        }
        return false;
    }

    // "gate sags > fix hinge": with what it is mended.
    void dropHardware(std::size_t arrow) {
        for (ObjectSpot& object : spots_.objects) {
            const std::string& name = tables().objects[object.object].name;
            const bool hardware = name.ends_with("hardware") || name == "door closer";
            object.landmark = object.landmark || (hardware && object.span.begin > arrow &&
                                                  object.span.begin <= arrow + 4);
        }
    }

    void dropReasons(std::size_t begin, std::size_t arrow) {
        std::erase_if(spots_.acts, [&](const ActSpot& act) {
            const Treatment treatment = row(act).treatment;
            const bool reason = row(act).weight <= 2 || treatment == Treatment::Inspect;
            return act.span.begin >= begin && act.span.end <= arrow && reason;
        });
    }
};

}  // namespace

void readArrows(const Sentence& sentence, Spots& spots) {
    Arrows(sentence, spots).readPairs();
}

void readPricedArrows(const Sentence& sentence, Spots& spots) {
    Arrows(sentence, spots).readPrices();
}

}  // namespace ledgerboard::intake
