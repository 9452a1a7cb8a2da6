#include "core/compute/taught.h"

#include <algorithm>
#include <map>
#include <set>
#include <tuple>

#include "core/compute/planned_value.h"
#include "core/compute/pricing.h"
#include "core/compute/progress.h"

namespace ledgerboard::compute {

namespace {

using model::Money;
using model::Quantity;

Money perUnit(Money money, Quantity quantity) {
    return model::roundedMoney(model::multiplyWide(money.minor(), 1000), quantity.thousandths());
}

Money scaled(Money money, Money by, Money of) {
    return model::roundedMoney(model::multiplyWide(money.minor(), by.minor()), of.minor());
}

// What one finished item tells.
struct Lesson {
    std::size_t house = 0;
    Quantity quantity;
    Money billed;
    bool isShared = false;
};

class Teacher {
  public:
    explicit Teacher(std::span<const TaughtHouse> houses)
        : houses_(houses), prices_(houses.front().rows->prices), book_(prices_) {}

    Taught teach() {
        for (std::size_t house = 0; house < houses_.size(); ++house) {
            readHouse(house);
        }
        for (const model::Price& price : prices_) {
            if (const auto found = lessons_.find(price.id); found != lessons_.end()) {
                out_.prices.push_back(priceOf(price, found->second));
            }
        }
        for (auto& [key, one] : notInBook_) {
            one.first.billedPerUnit = perUnit(one.second.billed, one.second.quantity);
            out_.notInBook.push_back(one.first);
        }
        for (const model::Crew& crew : houses_.front().rows->crews) {
            if (const auto found = crews_.find(crew.id); found != crews_.end()) {
                found->second.name = crew.name;
                out_.crews.push_back(found->second);
            }
        }
        return std::move(out_);
    }

  private:
    void readHouse(std::size_t house) {
        const model::JobRows& rows = *houses_[house].rows;
        const JobFigures& figures = *houses_[house].figures;
        const std::vector<bool> isShared = sharedBills(rows, figures);
        const Marks marks(rows);
        const WorkCalendar calendar(rows.job);
        for (std::size_t k = 0; k < rows.items.size(); ++k) {
            if (figures.scope.lines[k].counting != Counting::Counts) {
                continue;
            }
            ++out_.items;
            const LineFigures& line = figures.lines[k];
            if (line.shown != model::Percent::whole()) {
                continue;
            }
            ++out_.finished;
            timeCrew(rows.items[k], figures.scope.lines[k].crew, marks.of(k), calendar);
            if (line.billed <= Money{}) {
                ++out_.notBilled;
            } else if (line.toGo > Money{}) {
                ++out_.notAllBilled;
            } else {
                countCrew(figures.scope.lines[k].crew, line);
                takePrice(rows.items[k], {house, {}, line.billed, isShared[k]});
            }
        }
    }

    // Items on which a bill fell that names neither them nor a split: it was shared out.
    static std::vector<bool> sharedBills(const model::JobRows& rows, const JobFigures& figures) {
        std::vector<bool> out(figures.scope.lines.size(), false);
        for (const SpendRead& read : figures.spending) {
            const model::Spend& spend = rows.spends[read.spend];
            const bool isBill = read.effect.billed != Money{};
            if (isBill && spend.item.isNil() && spend.split.empty() && read.parts.size() > 1) {
                for (const LineAmount& part : read.parts) {
                    out[part.line] = true;
                }
            }
        }
        return out;
    }

    // An item without a quantity is one, where the book prices it by each.
    void takePrice(const model::Item& item, Lesson lesson) {
        const bool hasQuantity = item.quantity && *item.quantity > Quantity{};
        lesson.quantity = hasQuantity ? *item.quantity : Quantity::of(1);
        const auto* price =
            book_.find(item.object, item.treatment, hasQuantity ? item.unit : "each", nullptr);
        if (price == nullptr && !hasQuantity) {
            ++out_.withoutQuantity;
            return;
        }
        if (price != nullptr) {
            lessons_[price->id].push_back(lesson);
            return;
        }
        auto& [told, sum] = notInBook_[{folded(item.object), item.treatment, folded(item.unit)}];
        told.object = item.object;
        told.treatment = item.treatment;
        told.unit = item.unit;
        ++told.items;
        sum.quantity += lesson.quantity;
        sum.billed += lesson.billed;
    }

    static TaughtPrice priceOf(const model::Price& price, const std::vector<Lesson>& lessons) {
        TaughtPrice out;
        out.book = price;
        std::set<std::size_t> houses;
        Money bookLines;
        const Money material = price.material.value_or(Money{});
        const Money labour = price.labour.value_or(Money{});
        const auto waste = std::max(price.waste.value_or(model::Percent{}), model::Percent{});
        for (const Lesson& lesson : lessons) {
            const Money each = perUnit(lesson.billed, lesson.quantity);
            out.leastPerUnit = out.items == 0 ? each : std::min(out.leastPerUnit, each);
            out.mostPerUnit = std::max(out.mostPerUnit, each);
            ++out.items;
            out.sharedBills += lesson.isShared ? 1 : 0;
            houses.insert(lesson.house);
            out.quantity += lesson.quantity;
            out.billed += lesson.billed;
            bookLines += lineCost(lesson.quantity, labour, material, waste, price.pack);
        }
        out.houses = houses.size();
        out.bookPerUnit = perUnit(bookLines, out.quantity);
        out.billedPerUnit = perUnit(out.billed, out.quantity);
        propose(bookLines, out);
        return out;
    }

    static void propose(Money bookLines, TaughtPrice& out) {
        model::Price& proposed = out.proposed;
        proposed = out.book;
        proposed.id = {};
        if (bookLines > Money{}) {
            for (auto* part : {&proposed.material, &proposed.labour}) {
                if (*part) {
                    *part = scaled(**part, out.billed, bookLines);
                }
            }
        } else {
            proposed.labour = out.billedPerUnit;
        }
        if (proposed.low) {
            proposed.low = std::min(*proposed.low, out.leastPerUnit);
        }
        if (proposed.high) {
            proposed.high = std::max(*proposed.high, out.mostPerUnit);
        }
        out.isChanged = std::tie(proposed.material, proposed.labour, proposed.low, proposed.high) !=
                        std::tie(out.book.material, out.book.labour, out.book.low, out.book.high);
    }

    void countCrew(const model::Id<model::Kind::Crew>& id, const LineFigures& line) {
        if (id.isNil()) {
            return;
        }
        TaughtCrew& crew = crews_[id];
        crew.crew = id;
        ++crew.items;
        crew.over += line.billed > line.budgetNow ? 1 : 0;
        crew.budget += line.budgetNow;
        crew.billed += line.billed;
    }

    void timeCrew(const model::Item& item, const model::Id<model::Kind::Crew>& id,
                  std::span<const MarkRead> marks, const WorkCalendar& calendar) {
        std::optional<model::Date> begun = item.actualStartOn;
        std::optional<model::Date> finished = item.actualFinishOn;
        for (const MarkRead& mark : marks) {
            if (!begun && mark.percent > model::Percent{}) {
                begun = mark.on;
            }
            if (!finished && mark.percent == model::Percent::whole()) {
                finished = mark.on;
            }
        }
        if (id.isNil() || !begun || !finished || *finished < *begun || !item.daysLikely ||
            *item.daysLikely <= Quantity{}) {
            return;
        }
        TaughtCrew& crew = crews_[id];
        crew.crew = id;
        ++crew.timedItems;
        crew.actualDays += Quantity::of(calendar.workDays(*begun, *finished));
        crew.likelyDays += *item.daysLikely;
    }

    struct Sum {
        Quantity quantity;
        Money billed;
    };

    std::span<const TaughtHouse> houses_;
    const std::vector<model::Price>& prices_;
    PriceBook book_;
    std::map<model::Id<model::Kind::Price>, std::vector<Lesson>> lessons_;
    std::map<std::tuple<std::string, model::Treatment, std::string>, std::pair<NotInBook, Sum>>
        notInBook_;
    std::map<model::Id<model::Kind::Crew>, TaughtCrew> crews_;
    Taught out_;
};

}  // namespace

std::optional<std::int64_t> TaughtCrew::paceHundredths() const {
    if (likelyDays <= Quantity{}) {
        return std::nullopt;
    }
    return model::divideRounded(model::multiplyWide(actualDays.thousandths(), 100),
                                likelyDays.thousandths());
}

Taught taughtBy(std::span<const TaughtHouse> houses) {
    return houses.empty() ? Taught{} : Teacher(houses).teach();
}

}  // namespace ledgerboard::compute
