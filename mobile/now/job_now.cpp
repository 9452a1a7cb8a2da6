#include "mobile/now/job_now.h"

#include <algorithm>
#include <numeric>
#include <tuple>

#include "core/compute/as_of.h"
#include "core/compute/planned_value.h"
#include "core/report/plain_text.h"
#include "core/report/theme.h"

namespace ledgerboard::phone {

namespace {

using compute::Counting;
using model::Money;
using model::Percent;

// Two letters of a name: the first of two words, else the first two of the one.
std::string lettersOf(const std::string& name) {
    using report::frontOf;
    const std::string shown = report::shownText(name, report::Script::Unicode);
    const auto gap = shown.find(' ');
    std::string letters(frontOf(shown, gap == std::string::npos ? 2 : 1));
    if (gap != std::string::npos && gap + 1 < shown.size()) {
        letters += frontOf(std::string_view(shown).substr(gap + 1), 1);
    }
    for (char& c : letters) {
        c = c >= 'a' && c <= 'z' ? static_cast<char>(c - 'a' + 'A') : c;
    }
    return letters;
}

class Maker {
  public:
    explicit Maker(JobNow& now)
        : now_(now),
          scope_(compute::scopeLinesOf(now.rows)),
          counting_(compute::countingOf(now.rows)),
          marks_(now.rows),
          calendar_(now.rows.job) {}

    void make() {
        makeSpaces();
        for (std::size_t k = 0; k < now_.rows.items.size(); ++k) {
            addItem(k);
        }
        for (const auto& read : now_.punch.all) {
            if (read.isOpen) {
                ++spaceOf(now_.rows.punches[read.punch].space).punchOpen;
            }
        }
        // What belongs to no space is shown only where there is any.
        if (now_.spaces.back().items.empty() && now_.spaces.back().punchOpen == 0) {
            now_.spaces.pop_back();
        }
        for (auto& space : now_.spaces) {
            sumUp(space);
        }
    }

  private:
    void makeSpaces() {
        std::vector<std::size_t> order(now_.rows.spaces.size());
        std::iota(order.begin(), order.end(), 0u);
        std::stable_sort(order.begin(), order.end(), [this](std::size_t a, std::size_t b) {
            return now_.rows.spaces[a].walkOrder.value_or(INT64_MAX) <
                   now_.rows.spaces[b].walkOrder.value_or(INT64_MAX);
        });
        for (const std::size_t k : order) {
            const model::Space& row = now_.rows.spaces[k];
            SpaceNow space;
            space.id = row.id;
            space.name = row.name;
            space.shortName = row.shortName.empty() ? lettersOf(row.name) : row.shortName;
            const auto chip = report::chipFor(row.swatch, now_.spaces.size());
            space.ground = chip.ground;
            space.ink = chip.text;
            now_.spaces.push_back(std::move(space));
        }
        SpaceNow none;
        const auto chip = report::chipFor("", now_.spaces.size());
        none.ground = chip.ground;
        none.ink = chip.text;
        now_.spaces.push_back(std::move(none));
    }

    SpaceNow& spaceOf(const model::Id<model::Kind::Space>& id) {
        for (auto& space : now_.spaces) {
            if (space.id == id && !id.isNil()) {
                return space;
            }
        }
        return now_.spaces.back();
    }

    void addItem(std::size_t k) {
        if (counting_[k] == Counting::NotCarried) {
            return;
        }
        const model::Item& row = now_.rows.items[k];
        ItemNow item;
        item.row = k;
        item.isKept = counting_[k] == Counting::Kept;
        item.isMine = now_.isOwner || !row.crew.isNil();
        item.shown = marks_.shown(k);
        item.plan = planOf(k);
        if (const auto read = marks_.of(k); !read.empty()) {
            item.markedOn = read.back().on;
        }
        for (std::size_t c = 0; c < now_.cautions.all.size(); ++c) {
            if (now_.cautions.all[c].item == row.id && now_.cautions.all[c].holdsUp()) {
                item.holdUps.push_back(c);
            }
        }
        spaceOf(row.space).items.push_back(std::move(item));
    }

    // The core's planned value of a budget of 100.00 that no change touches: basis points.
    [[nodiscard]] std::optional<Percent> planOf(std::size_t k) const {
        compute::ScopeLine line = scope_.lines[k];
        line.baseline = Money::of(100);
        line.changes.clear();
        const auto planned =
            compute::PlannedLine::make(line, compute::measureOf(now_.rows.items[k]), calendar_);
        if (!planned) {
            return std::nullopt;
        }
        return Percent::fromBasisPoints(planned->plannedBy(now_.today, calendar_).minor());
    }

    void sumUp(SpaceNow& space) {
        auto placeOf = [this](const ItemNow& item) {
            const auto& row = now_.rows.items[item.row];
            const int part = item.isKept ? 2 : item.isFinished() ? 1 : 0;
            const auto& start = scope_.lines[item.row].startOn;
            const auto& day = start ? start : row.plannedStartOn;
            return std::tuple(part, item.isMine ? 0 : 1,
                              part == 0 && day ? day->days() : INT32_MAX);
        };
        std::stable_sort(
            space.items.begin(), space.items.end(),
            [&](const ItemNow& a, const ItemNow& b) { return placeOf(a) < placeOf(b); });
        compute::WeightedPercent shown;
        compute::WeightedPercent plan;
        bool isPlanned = false;
        for (const auto& item : space.items) {
            if (item.isKept || !item.isMine) {
                continue;
            }
            ++space.counted;
            space.finished += item.isFinished() ? 1 : 0;
            space.toStart += item.isStarted() ? 0 : 1;
            // A crew lead's weight is days, in thousandths.
            const auto days = now_.rows.items[item.row].daysLikely.value_or(model::Quantity{});
            const Money weight = now_.isOwner ? scope_.lines[item.row].budgetNow()
                                              : Money::fromMinor(days.thousandths());
            shown.add(weight, item.shown);
            plan.add(weight, item.plan.value_or(Percent{}));
            isPlanned = isPlanned || item.plan.has_value();
        }
        // Whole means finished, also where what is left weighs nothing.
        const Percent most = Percent::fromBasisPoints(9'999);
        space.shown = space.isFinished() ? Percent::whole() : std::min(shown.value(), most);
        if (isPlanned) {
            space.plan = plan.value();
        }
    }

    JobNow& now_;
    compute::ScopeLines scope_;
    std::vector<Counting> counting_;
    compute::Marks marks_;
    compute::WorkCalendar calendar_;
};

// Hairlines at 2 % of budget, ends at the contingency left, or twice the hairlines where that is
// less.
std::optional<LevelNow> levelOf(const compute::JobFigures& figures) {
    const Money budget = figures.job.budgetNow;
    if (budget <= Money{}) {
        return std::nullopt;
    }
    LevelNow level;
    level.over = figures.job.forecast - budget;
    const auto hair = static_cast<double>(model::share(Percent::of(2), budget).minor());
    const double end = std::max(static_cast<double>(figures.contingency.left.minor()), 2 * hair);
    level.hair = hair / end;
    level.lean = std::clamp(static_cast<double>(level.over.minor()) / end, -1.0, 1.0);
    return level;
}

}  // namespace

std::shared_ptr<const JobNow> jobNowOf(model::JobRows rows, model::Date today, bool isOwner) {
    auto now = std::make_shared<JobNow>(compute::asOf(std::move(rows), today));
    now->today = today;
    now->isOwner = isOwner;
    now->cautions = compute::cautionsOf(now->rows, today);
    now->punch = compute::punchListOf(now->rows, today);
    if (isOwner) {
        now->figures = compute::figuresOf(now->rows, today);
        now->level = levelOf(*now->figures);
    }
    Maker(*now).make();
    return now;
}

Found findItem(const JobNow& now, model::Id<model::Kind::Item> id) {
    for (const auto& space : now.spaces) {
        for (const auto& item : space.items) {
            if (now.rows.items[item.row].id == id) {
                return {&item, &space};
            }
        }
    }
    return {};
}

}  // namespace ledgerboard::phone
