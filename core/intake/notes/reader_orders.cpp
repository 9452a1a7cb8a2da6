// Which figures belong to an item, and which orders are no order about the thing they stand by.
#include <algorithm>
#include <array>

#include "core/intake/notes/reader.h"

namespace ledgerboard::intake {

using model::Treatment;

// "New cabinets, 18 feet, new tops, 40 square feet": a measure belongs to what it follows.
bool Reader::ofAnother(const Sentence& sentence, const Spots& spots, const Amount& amount,
                       const Said& said) {
    if (amount.kind != AmountKind::Measured) {
        return false;
    }
    return std::any_of(spots.objects.begin(), spots.objects.end(), [&](const ObjectSpot& object) {
        const bool follows = object.span.end <= amount.begin && amount.begin <= object.span.end + 2;
        const bool marks =
            std::all_of(sentence.tokens.begin() +
                            static_cast<std::ptrdiff_t>(std::min(object.span.end, amount.begin)),
                        sentence.tokens.begin() + static_cast<std::ptrdiff_t>(amount.begin),
                        [](const Token& token) { return token.kind == TokenKind::Mark; });
        return follows && marks && object.span.begin != said.at;
    });
}

// A span of time is a wait where the sentence speaks of ordering; else it is how long the work
// takes.
void Reader::addTime(const Sentence& sentence, const Amount& amount, DraftItem& item) {
    static const std::vector<WordId> kWaits = [] {
        std::vector<WordId> ids;
        for (const std::string_view word :
             {"order", "lead", "shop", "deliveri", "deliv", "measur", "templat", "maker",
              "supplier", "notic", "wait", "ship", "arriv", "backord", "custom", "mill", "yard"}) {
            ids.push_back(tables().id(word));
        }
        return ids;
    }();
    static const WordId kOut = tables().id("out");
    const bool out = amount.end < sentence.tokens.size() && kOut != kUnknown &&
                     sentence.tokens[amount.end].word == kOut;  // "six weeks out"
    const bool waits =
        out || std::any_of(sentence.tokens.begin(), sentence.tokens.end(), [&](const Token& token) {
            return token.word != kUnknown &&
                   std::find(kWaits.begin(), kWaits.end(), token.word) != kWaits.end();
        });
    const std::string& unit = tables().units[amount.unit].name;
    const bool week = unit == "week";
    const bool month = unit == "month";
    if (!week && !month && unit != "day") {
        return;
    }
    if (waits && !item.leadDays) {
        item.leadDays = model::Quantity::fromThousandths(amount.value * (week    ? 7
                                                                         : month ? 30
                                                                                 : 1));
    } else if (!waits && !item.days) {
        item.days = model::Quantity::fromThousandths(amount.value * (week ? 5 : month ? 21 : 1));
    }
}

namespace {

// "BR1: carpet": the figure is part of the room's name.
bool ofSpaceName(const Spots& spots, const Amount& amount) {
    return std::any_of(spots.spaces.begin(), spots.spaces.end(), [&](const SpaceSpot& space) {
        return space.span.overlaps({amount.begin, amount.end});
    });
}

// "Countertop 30 sq ft, sink new": no sink is bought by the foot.
bool isAreaOfCounted(const Amount& amount, std::uint32_t object) {
    return amount.kind == AmountKind::Measured &&
           tables().units[amount.unit].measure == Measure::Area &&
           tables().objects[object].unit == "each";
}

}  // namespace

// The figures nearest the object become its quantity, cost, days and lead time.
void Reader::addAmounts(const Sentence& sentence, const Spots& spots, const Said& said,
                        Found& found) {
    for (const Amount& amount : spots.amounts) {
        const std::size_t begin = std::min(amount.begin, said.at);
        const std::size_t end = std::max(amount.end, said.at);
        constexpr double kFar = 5.0;
        const bool nearest =
            std::none_of(spots.objects.begin(), spots.objects.end(), [&](const ObjectSpot& other) {
                return !other.landmark && other.span.begin > begin && other.span.end < end &&
                       other.span.begin != said.at;
            });
        if ((!nearest && said.spot != kNone) || ofSpaceName(spots, amount) ||
            isAreaOfCounted(amount, said.object) || ofAnother(sentence, spots, amount, said) ||
            partedBy(sentence, spots, begin, end, kFar) >= kFar) {
            continue;
        }
        DraftItem& item = found.item;
        const model::Quantity figure = model::Quantity::fromThousandths(amount.value);
        if (amount.kind == AmountKind::Money && amount.perUnit && item.quantity && !item.cost) {
            item.cost = model::times(*item.quantity, model::Money::fromMinor(amount.value / 10));
        } else if (amount.kind == AmountKind::Money && !item.cost) {
            item.cost = model::Money::fromMinor(amount.value / 10);
        } else if (amount.kind == AmountKind::Measured && !item.quantity) {
            item.quantity = figure;
            item.unit = tables().units[amount.unit].name;
        } else if (amount.kind == AmountKind::Plain && !item.quantity && said.spot != kNone &&
                   !spots.objects[said.spot].material && amount.end <= said.at &&
                   amount.end + 4 >= said.at && amount.value >= 1000 && amount.value <= 500'000) {
            item.quantity = figure;
            item.unit = "each";
        } else if (amount.kind == AmountKind::Time) {
            addTime(sentence, amount, item);
        }
    }
}

// "The flashing is loose, so repair the roof": the order answers the condition.
bool Reader::answered(const Sentence& sentence, const Spots& spots, const Linked& linked,
                      const Said& said) const {
    static const WordId kSo = tables().id("so");
    const ActSpot& act = spots.acts[said.act];
    if (tables().acts[act.row].weight > 1) {
        return false;
    }
    return std::any_of(linked.said.begin(), linked.said.end(), [&](const Said& other) {
        const ActSpot& order = spots.acts[other.act];
        if (tables().acts[order.row].weight < 3 || order.span.begin < act.span.end) {
            return false;
        }
        for (std::size_t i = act.span.end; i < order.span.begin; ++i) {
            if (sentence.tokens[i].word == kSo && kSo != kUnknown) {
                return true;
            }
        }
        return false;
    });
}

// "Curtain rod off, fill and paint": what is taken out leaves a hole, and that is filled.
bool Reader::ofHole(const Spots& spots, const Linked& linked, const Said& said) const {
    static constexpr std::array<std::string_view, 5> kFills = {"patch", "fill", "and patch",
                                                               "and paint", "touch up"};
    const ActSpot& act = spots.acts[said.act];
    const std::string_view phrase = tables().acts[act.row].phrase;
    const bool fills =
        phrase == "paint" || std::any_of(kFills.begin(), kFills.end(), [&](std::string_view start) {
            return phrase.starts_with(start);
        });
    const bool itsOwn = said.spot != kNone && spots.objects[said.spot].span.begin >= act.span.begin;
    // "Wallpaper off and paint": of the walls.
    static const std::uint32_t kWallpaper = tables().objectNamed("wallpaper");
    if (!fills || itsOwn || said.object == kWallpaper || phrase.ends_with(" it") ||
        phrase.ends_with(" them")) {
        return false;
    }
    const bool here = std::any_of(linked.said.begin(), linked.said.end(), [&](const Said& other) {
        const ActSpot& out = spots.acts[other.act];
        const ActRow& row = tables().acts[out.row];
        return other.object == said.object && out.span.begin < act.span.begin && !out.negated &&
               row.treatment == Treatment::Remove && row.weight > 1;
    });
    const auto last = std::find_if(found_.rbegin(), found_.rend(),
                                   [&](const Found& found) { return found.object == said.object; });
    const bool before = said.fromBefore && last != found_.rend() && last->weight > 1 &&
                        !last->fresh && last->treatment == Treatment::Remove;
    return here || before;
}

}  // namespace ledgerboard::intake
