#include "core/compute/caution_sizes.h"

#include <algorithm>
#include <array>

#include "core/compute/caution_rules.h"
#include "core/compute/positions.h"
#include "core/compute/pricing.h"
#include "core/model/saying.h"

namespace ledgerboard::compute {

namespace {

using model::Date;
using model::Item;
using model::Quantity;
using model::Saying;
using model::saying;
using model::Wide;

// Amounts are kept exactly in parts: 1,440,000,000 of a thousandth of a sq ft (or of a foot, or of
// a cubic foot), so that a square inch is whole too.
constexpr std::int64_t kParts = 1'440'000'000;

struct Unit {
    std::string_view name;
    std::int64_t parts = 0;
};

constexpr std::array kAreas = {Unit{"sq ft", kParts}, Unit{"square feet", kParts},
                               Unit{"square foot", kParts}, Unit{"sf", kParts},
                               Unit{"sq in", kParts / 144}, Unit{"sq yd", kParts * 9},
                               Unit{"square", kParts * 100},
                               // 10.76391 sq ft, rounded down less than a millionth
                               Unit{"sq m", 15'500'031'000}};
constexpr std::array kLengths = {Unit{"lin ft", kParts}, Unit{"ft", kParts},
                                 Unit{"feet", kParts},   Unit{"linear feet", kParts},
                                 Unit{"lf", kParts},     Unit{"yd", kParts * 3}};
constexpr std::array kVolumes = {Unit{"cu ft", kParts}, Unit{"cubic feet", kParts},
                                 Unit{"cu yd", kParts * 27}};

template <std::size_t N>
std::optional<Wide> partsOf(const Item& item, const std::array<Unit, N>& units) {
    for (const Unit& unit : units) {
        if (item.quantity && sameUnit(item.unit, unit.name)) {
            return Wide{item.quantity->thousandths()} * unit.parts;
        }
    }
    return std::nullopt;
}

Wide partsOf(Quantity limit) {
    return Wide{limit.thousandths()} * kParts;
}

// To a thousandth, rounded up: what is beyond a limit never reads as the limit.
std::string printed(Wide parts) {
    const Wide thousandths = (parts + kParts - 1) / kParts;
    return Quantity::fromThousandths(model::divideRounded(thousandths, 1)).toString();
}

struct PaintWork {
    std::size_t item = 0;
    std::size_t room = 0;
    bool isOutside = false;
    Saying neverMinor;  // why, where it never is
    std::optional<Wide> area;
    std::optional<Date> first;
    std::optional<Date> last;
};

Saying neverMinor(const Item& item) {
    if (item.treatment == model::Treatment::Replace &&
        saysOneOf(CautionWords::NeverMinorReplaced, item.object)) {
        return saying("replacing windows is never minor");
    }
    if (item.treatment == model::Treatment::Remove &&
        saysOneOf(CautionWords::NeverMinorRemoved, item.object)) {
        return saying("tearing out painted surfaces is never minor");
    }
    return {};
}

// Outdoors is one place, and what names no space is another.
std::vector<PaintWork> paintWorkOf(const model::JobRows& rows, const std::vector<bool>& disturbs) {
    const Positions<model::Space> spaces(rows.spaces);
    const std::size_t outdoors = rows.spaces.size();
    std::vector<PaintWork> out;
    for (std::size_t k = 0; k < rows.items.size(); ++k) {
        if (!disturbs[k]) {
            continue;
        }
        const Item& item = rows.items[k];
        const auto space = spaces.of(item.space);
        PaintWork work;
        work.item = k;
        work.isOutside = space && saysOneOf(CautionWords::Outdoors, rows.spaces[*space].name);
        work.room = work.isOutside ? outdoors : space.value_or(outdoors + 1);
        work.neverMinor = neverMinor(item);
        work.area = partsOf(item, kAreas);
        work.first = item.actualStartOn ? item.actualStartOn : item.plannedStartOn;
        work.last = item.actualFinishOn ? item.actualFinishOn : item.plannedFinishOn;
        if (!work.first || !work.last || *work.last < *work.first) {
            work.first.reset();
            work.last.reset();
        }
        out.push_back(work);
    }
    return out;
}

bool meets(const PaintWork& work, Date windowBegins) {
    const int days = static_cast<int>(caution_limit::kLeadDays.thousandths() / 1000);
    return !work.first || (*work.first <= windowBegins + (days - 1) && *work.last >= windowBegins);
}

// The work of a room within some 30 days: one job.
struct Together {
    Wide area = 0;
    bool hasOther = false;  // what isn't minor whatever its neighbours are

    void add(const PaintWork& work) {
        area += work.area.value_or(0);
        hasOther = hasOther || !work.neverMinor.isEmpty() || !work.area;
    }
};

// The most that any 30 days with `work` in them hold. Between the days on which some work enters or
// leaves the 30 days nothing changes, so those are all that need looking at.
Together mostAround(const PaintWork& work, const std::vector<PaintWork>& all) {
    const int days = static_cast<int>(caution_limit::kLeadDays.thousandths() / 1000);
    std::vector<Date> begins;
    for (const PaintWork& other : all) {
        if (other.first && other.room == work.room) {
            begins.push_back(*other.last);
            begins.push_back(*other.first - (days - 1));
        }
    }
    if (begins.empty()) {
        begins.emplace_back();
    }
    Together most;
    for (const Date begin : begins) {
        if (!meets(work, begin)) {
            continue;
        }
        Together here;
        for (const PaintWork& other : all) {
            if (other.room == work.room && meets(other, begin)) {
                here.add(other);
            }
        }
        most.area = std::max(most.area, here.area);
        most.hasOther = most.hasOther || here.hasOther;
    }
    return most;
}

LeadSize sizeOf(const PaintWork& work, const std::vector<PaintWork>& all) {
    if (!work.neverMinor.isEmpty()) {
        return {false, work.neverMinor};
    }
    if (!work.area) {
        return {false, saying("how much paint it disturbs isn't entered as an area")};
    }
    const Quantity limit =
        work.isOutside ? caution_limit::kLeadOutside : caution_limit::kLeadInside;
    const Saying most = work.isOutside ? saying("%1 sq ft outside", limit.toString())
                                       : saying("%1 sq ft a room", limit.toString());
    const std::string own = printed(*work.area);
    if (*work.area > partsOf(limit)) {
        return {false, saying("%1 sq ft, more than the %2 that are minor", own, most)};
    }
    const Together around = mostAround(work, all);
    if (around.hasOther) {
        return {
            false,
            work.isOutside
                ? saying("%1 sq ft; other work outside within 30 days isn't minor", own)
                : saying("%1 sq ft; other work in the same room within 30 days isn't minor", own)};
    }
    if (around.area > partsOf(limit)) {
        const std::string both = printed(around.area);
        return {false,
                work.isOutside
                    ? saying("%1 sq ft, with other work outside within 30 days %2, more than the "
                             "%3 that are minor",
                             own, both, most)
                    : saying("%1 sq ft, with other work in the same room within 30 days %2, more "
                             "than the %3 that are minor",
                             own, both, most)};
    }
    return {true, saying("%1 sq ft, within the %2 that are minor", own, most)};
}

}  // namespace

std::vector<std::optional<LeadSize>> leadSizesOf(const model::JobRows& rows,
                                                 const std::vector<bool>& disturbsPaint) {
    const std::vector<PaintWork> all = paintWorkOf(rows, disturbsPaint);
    std::vector<std::optional<LeadSize>> out(rows.items.size());
    for (const PaintWork& work : all) {
        out[work.item] = sizeOf(work, all);
    }
    return out;
}

Saying asbestosNotice(const model::JobRows& rows, const std::vector<bool>& mayHold) {
    Wide pipe = 0;
    Wide area = 0;
    Wide volume = 0;
    for (std::size_t k = 0; k < rows.items.size(); ++k) {
        if (!mayHold[k]) {
            continue;
        }
        const Item& item = rows.items[k];
        area += partsOf(item, kAreas).value_or(0);
        volume += partsOf(item, kVolumes).value_or(0);
        pipe += saysOneOf(CautionWords::Pipes, item.object) ? partsOf(item, kLengths).value_or(0)
                                                            : Wide{0};
    }
    Saying out;
    const auto reaches = [&out](Wide amount, Quantity limit, const Saying& what) {
        if (amount >= partsOf(limit)) {
            const Saying one =
                saying("%1 may hold it, and notice begins at %2", what, limit.toString());
            out = out.isEmpty() ? one : saying("%1; %2", out, one);
        }
    };
    reaches(pipe, caution_limit::kAsbestosPipe, saying("%1 lin ft of pipe", printed(pipe)));
    reaches(area, caution_limit::kAsbestosArea, saying("%1 sq ft", printed(area)));
    reaches(volume, caution_limit::kAsbestosVolume, saying("%1 cu ft", printed(volume)));
    return out;
}

}  // namespace ledgerboard::compute
