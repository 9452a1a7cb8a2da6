#include "core/intake/files/row_check.h"

#include <algorithm>
#include <array>
#include <optional>

#include "core/compute/progress.h"
#include "core/intake/files/marks_in_spite.h"
#include "core/model/overflow.h"
#include "core/model/saying.h"
#include "core/model/value.h"

namespace ledgerboard::intake {

namespace {

namespace f = model::field;
using model::FieldCode;
using model::Kind;
using model::Money;

// Two fields of which the first is never the greater.
struct Ordered {
    FieldCode low;
    FieldCode high;
};

constexpr std::array kOrdered = {
    Ordered{f::Item::costLow, f::Item::costHigh},
    Ordered{f::Item::daysLow, f::Item::daysLikely},
    Ordered{f::Item::daysLikely, f::Item::daysHigh},
    Ordered{f::Item::daysLow, f::Item::daysHigh},
    Ordered{f::Item::plannedStartOn, f::Item::plannedFinishOn},
    Ordered{f::Item::actualStartOn, f::Item::actualFinishOn},
    Ordered{f::Price::low, f::Price::high},
    Ordered{f::Contract::deposit, f::Contract::sum},
    Ordered{f::Contract::startOn, f::Contract::finishOn},
    Ordered{f::Change::askedOn, f::Change::signedOn},
    Ordered{f::Change::askedOn, f::Change::refusedOn},
    Ordered{f::Spend::tax, f::Spend::amount},
    Ordered{f::Spend::held, f::Spend::amount},
    Ordered{f::Spend::spentOn, f::Spend::dueOn},
    Ordered{f::Draw::askedOn, f::Draw::inspectedOn},
    Ordered{f::Draw::inspectedOn, f::Draw::fundedOn},
    Ordered{f::Draw::askedOn, f::Draw::fundedOn},
    Ordered{f::Punch::foundOn, f::Punch::dueOn},
};

// What a kept item does not have.
constexpr std::array kNotOnKept = {f::Item::unitCostMaterial,
                                   f::Item::unitCostLabour,
                                   f::Item::lumpSum,
                                   f::Item::costLow,
                                   f::Item::costHigh,
                                   f::Item::crew,
                                   f::Item::contract,
                                   f::Item::daysLow,
                                   f::Item::daysLikely,
                                   f::Item::daysHigh,
                                   f::Item::leadDays,
                                   f::Item::estimateToFinish,
                                   f::Item::quote};

class Check {
  public:
    Check(Kind kind, const BroughtRow& row, const RowSurroundings& around,
          const HeadingOf& headingOf, Problems& problems)
        : kind_(kind),
          row_(row),
          record_(row.values),
          around_(around),
          headingOf_(headingOf),
          problems_(problems) {}

    void run() {
        for (const auto& pair : kOrdered) {
            if (model::kindOf(pair.low) == kind_) {
                ordered(pair);
            }
        }
        switch (kind_) {
            case Kind::Item:
                return item();
            case Kind::Contract:
                return contract();
            case Kind::Change:
                return change();
            case Kind::Spend:
                return spend();
            case Kind::Mark:
                return mark();
            case Kind::Punch:
                return punch();
            default:
                return;
        }
    }

  private:
    [[nodiscard]] bool has(FieldCode code) const { return record_.contains(code); }

    // Nothing was said; not even something that could not be read.
    [[nodiscard]] bool lacks(FieldCode code) const {
        return !has(code) && std::find(row_.unreadable.begin(), row_.unreadable.end(), code) ==
                                 row_.unreadable.end();
    }

    [[nodiscard]] std::optional<std::int64_t> units(FieldCode code) const {
        const auto found = record_.find(code);
        const auto* value =
            found == record_.end() ? nullptr : std::get_if<std::int64_t>(&found->second);
        return value != nullptr ? std::optional<std::int64_t>(*value) : std::nullopt;
    }

    [[nodiscard]] std::string text(FieldCode code) const {
        const auto found = record_.find(code);
        const auto* value =
            found == record_.end() ? nullptr : std::get_if<std::string>(&found->second);
        return value != nullptr ? *value : std::string();
    }

    [[nodiscard]] model::RawId id(FieldCode code) const {
        const auto found = record_.find(code);
        const auto* value =
            found == record_.end() ? nullptr : std::get_if<model::RawId>(&found->second);
        return value != nullptr ? *value : model::RawId();
    }

    [[nodiscard]] std::string printed(FieldCode code) const {
        return model::printValue(*model::fieldOf(code), record_.at(code),
                                 around_.finder.nameRecord());
    }

    void problem(FieldCode code, const model::Saying& what) {
        problems_.add(row_.line, headingOf_(code), what.text());
    }

    void ordered(const Ordered& pair) {
        const auto low = units(pair.low);
        const auto high = units(pair.high);
        if (low && high && *low > *high) {
            const bool days = model::fieldOf(pair.low)->type == model::FieldType::Date;
            const model::Saying than = model::Saying(headingOf_(pair.low));
            problem(pair.high,
                    days ? model::saying("%1 is before \"%2\" (%3): mend one of the two",
                                         printed(pair.high), than, printed(pair.low))
                         : model::saying("%1 is less than \"%2\" (%3): mend one of the two",
                                         printed(pair.high), than, printed(pair.low)));
        }
    }

    // Shares must add up to 100, or one of them was mistyped.
    void wholeShares(FieldCode code) {
        if (!has(code)) {
            return;
        }
        std::vector<model::NamedShare> steps;
        model::readMember(record_.at(code), steps);
        model::Percent sum;
        for (const auto& step : steps) {
            sum = sum + step.percent;
            if (step.percent <= model::Percent()) {
                problem(code, model::saying("\"%1\" has a share of %2: each share is above 0",
                                            step.name, step.percent.toString()));
                return;
            }
        }
        if (sum != model::Percent::whole()) {
            problem(code, model::saying("its shares add up to %1, not to 100", sum.toString()));
        }
    }

    void wholeSplit(FieldCode code, FieldCode amountCode) {
        const auto amount = units(amountCode);
        if (!has(code) || !amount) {
            return;
        }
        std::vector<model::ItemAmount> parts;
        model::readMember(record_.at(code), parts);
        Money sum;
        for (const auto& part : parts) {
            sum += part.amount;
        }
        if (sum != Money::fromMinor(*amount)) {
            problem(code,
                    model::saying("its parts add up to %1, not to \"%2\" (%3)", sum.toString(),
                                  headingOf_(amountCode), printed(amountCode)));
        }
    }

    void item() {
        wholeShares(f::Item::steps);
        if (text(f::Item::treatment) == model::wordOf(model::Treatment::Keep)) {
            for (const auto code : kNotOnKept) {
                if (has(code)) {
                    problem(code,
                            model::saying("what is kept has no cost, days or crew: leave the cell "
                                          "empty, or write another treatment than keep"));
                }
            }
        }
        const std::string measure = text(f::Item::measure);
        if (measure == model::wordOf(model::Measure::WeightedSteps) && lacks(f::Item::steps)) {
            problem(f::Item::steps,
                    model::saying("is empty, and the item is measured by weighted steps: write "
                                  "them like prep 20; set 60; grout 20"));
        }
        if (measure == model::wordOf(model::Measure::CountedUnits) && lacks(f::Item::quantity)) {
            problem(
                f::Item::quantity,
                model::saying(
                    "is empty, and the item is measured by counted units: say how many there are"));
        }
    }

    void contract() { wholeShares(f::Contract::paymentSteps); }

    void change() {
        wholeSplit(f::Change::split, f::Change::amount);
        if (has(f::Change::signedOn) && has(f::Change::refusedOn)) {
            problem(
                f::Change::refusedOn,
                model::saying("a change is either signed or refused: leave one of the two empty"));
        }
    }

    void spend() {
        wholeSplit(f::Spend::split, f::Spend::amount);
        const std::string type = text(f::Spend::type);
        if (!type.empty() && lacks(f::Spend::amount) &&
            type != model::wordOf(model::SpendKind::Receipt)) {
            problem(f::Spend::amount,
                    model::saying(
                        "is empty: say how much; only a receipt may come in without an amount"));
        }
        if (has(f::Spend::item) && has(f::Spend::split)) {
            problem(f::Spend::split, model::saying("a spend is for one item or split over several: "
                                                   "leave one of \"Item\" and \"Split\" empty"));
        }
        if (has(f::Spend::held) && !type.empty() &&
            type != model::wordOf(model::SpendKind::Invoice)) {
            problem(f::Spend::held,
                    model::saying("retainage is held from invoices, and this is a %1: leave the "
                                  "cell empty, or write the kind invoice",
                                  type));
        }
        if (has(f::Spend::pays) && !type.empty()) {
            pays(type);
        }
    }

    void pays(const std::string& type) {
        if (type != model::wordOf(model::SpendKind::Payment)) {
            problem(f::Spend::pays,
                    model::saying("only a payment pays an invoice, and this is a %1: leave the "
                                  "cell empty, or write the kind payment",
                                  type));
        }
        const auto paid = around_.spendKinds.find(id(f::Spend::pays));
        if (paid != around_.spendKinds.end() &&
            paid->second != model::wordOf(model::SpendKind::Invoice)) {
            problem(f::Spend::pays,
                    model::saying("\"%1\" is a %2, and only invoices are paid: name the invoice",
                                  printed(f::Spend::pays), paid->second));
        }
    }

    void mark() {
        const auto item = around_.items.find(id(f::Mark::item));
        if (item == around_.items.end() || !row_.unreadable.empty()) {
            return;  // a problem of its own cell
        }
        const auto mark = rowFrom<model::Mark>(record_);
        const auto checked =
            compute::checkMark(*item->second, mark, around_.finder.nameOf(item->first));
        if (!checked.ok()) {
            problem(mark.count               ? f::Mark::count
                    : mark.stepsDone.empty() ? f::Mark::percent
                                             : f::Mark::stepsDone,
                    model::Saying(checked.error().message));
        }
    }

    void punch() {
        if (has(f::Punch::chargeBack) && lacks(f::Punch::chargeBackTo)) {
            problem(
                f::Punch::chargeBackTo,
                model::saying(
                    "is empty, and there is an amount to charge back: name the crew that pays"));
        }
    }

    Kind kind_;
    const BroughtRow& row_;
    const FieldValues& record_;
    const RowSurroundings& around_;
    const HeadingOf& headingOf_;
    Problems& problems_;
};

}  // namespace

void checkRecord(Kind kind, const BroughtRow& row, const RowSurroundings& around,
                 const HeadingOf& headingOf, Problems& problems) {
    Check(kind, row, around, headingOf, problems).run();
}

}  // namespace ledgerboard::intake
