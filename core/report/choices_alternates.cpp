// Each open alternate by itself.
#include "core/report/choices_sheet.h"

namespace ledgerboard::report {

namespace {

using compute::AlternateChoice;
using compute::OptionChoice;
using model::Money;

class Alternates : public ChoicesSheet {
  public:
    using ChoicesSheet::ChoicesSheet;

    std::string print() {
        for (const AlternateChoice& alternate : choices_.alternates) {
            printAlternate(alternate);
        }
        return take();
    }

  private:
    void printAlternate(const AlternateChoice& alternate) {
        heading(alternate.name);
        if (alternate.options.empty()) {
            paragraph("It has no options yet. Leaving things as they are is one:");
            command(
                {"add", "option",
                 "Alternate=" + view_.nameOf(view_.rows.alternates[alternate.alternate].id.raw()),
                 "Option=leave as is"});
            return;
        }
        printOptions(alternate);
        for (const OptionChoice& option : alternate.options) {
            printNotes(option);
        }
        if (alternate.options.size() == 1) {
            paragraph("It has one option only: nothing to choose from until there is another.");
        }
        printWaiting(alternate);
    }

    void printOptions(const AlternateChoice& alternate) {
        Table rows{{{"", true},
                    {"Option", false},
                    {"Cost", true},
                    {"Finish", true},
                    {"Adds", true},
                    {"Net low", true},
                    {"Net", true},
                    {"Net high", true},
                    {"Even at", true}},
                   {}};
        for (std::size_t k = 0; k < alternate.options.size(); ++k) {
            const OptionChoice& option = alternate.options[k];
            const bool known = option.isPriced;
            const std::string none = shownText("\xE2\x80\x93", view_.script);
            rows.rows.push_back(
                {std::to_string(k + 1), nameOf(option) + (option.isCarried ? " (carried)" : ""),
                 known ? whole(option.cost) : none, daysText(option.finishDays),
                 option.hasValue ? whole(option.valueLikely) : (option.leavesAsIs ? "0" : none),
                 known ? whole(option.netLow) : none, known ? whole(option.netLikely) : none,
                 known ? whole(option.netHigh) : none,
                 known ? whole(option.breakEvenValue) : none});
        }
        table(rows);
    }

    void printNotes(const OptionChoice& option) {
        const std::string record = view_.nameOf(rowOf(option).id.raw());
        if (!option.isPriced && option.items == 0) {
            paragraph(quoted(option) + " has no cost yet, so it is in no set. Enter it:");
            command({"set", record, "Cost", "AMOUNT"});
        } else if (!option.whyNotOffered.isEmpty()) {
            paragraph(quoted(option) + " is in no set: " + option.whyNotOffered.text() + ".");
        }
        if (!option.hasValue && !option.leavesAsIs) {
            paragraph(quoted(option) +
                      ": nobody said what it adds to the sale, so it adds nothing here. Enter it:");
            command({"set", record, "Value", "AMOUNT"});
        }
        if (option.cutByCeiling > Money{}) {
            paragraph("The ceiling of the street cuts " + whole(option.cutByCeiling) +
                      " off what " + quoted(option) + " adds.");
        }
    }

    void printWaiting(const AlternateChoice& alternate) {
        const compute::Waiting& waiting = alternate.waiting;
        const std::string becomes =
            alternate.carried
                ? "it becomes " + quoted(alternate.options[*alternate.carried]) + ", as carried."
                : "nothing is done: no option is carried, and none counts in budget and plan.";
        if (!waiting.decideBy) {
            paragraph(
                "No day to decide by is known: none is entered, and no item of it has "
                "planned dates. If you decide nothing, " +
                becomes);
            return;
        }
        std::string text = "Decide by " + date(*waiting.decideBy) + " (" + whyThen(waiting) + ").";
        if (waiting.isLate) {
            text +=
                " That was " + countText(view_.today - *waiting.decideBy, "day", "days") + " ago.";
        }
        paragraph(text + " If you decide nothing by then, " + becomes);
        paragraph(waitingText(waiting));
    }

    [[nodiscard]] std::string whyThen(const compute::Waiting& waiting) const {
        if (waiting.isEntered || !waiting.option) {
            return "as entered";
        }
        std::string text = waiting.item ? view_.rows.items[*waiting.item].object
                                        : optionLabel(view_.rows.options[*waiting.option]);
        if (waiting.itemStartsOn) {
            text += " starts " + date(*waiting.itemStartsOn);
        }
        if (waiting.leadDays > 0) {
            text += (waiting.itemStartsOn ? ", " : " ") +
                    std::string("ordered and looked over in ") +
                    countText(waiting.leadDays, "day", "days");
        }
        return text;
    }

    [[nodiscard]] std::string waitingText(const compute::Waiting& waiting) const {
        const std::string price = centsText(choices_.dayCosts, view_.script);
        const std::string after =
            waiting.isLate ? "Each day of waiting now " : "Each day after that ";
        if (waiting.perDay) {
            return after + "costs " + price + ": " + tightest(waiting) +
                   " is on the critical path.";
        }
        if (waiting.floatThousandths) {
            return "With " + tightest(waiting) + " it can wait " +
                   countText(*waiting.floatThousandths / 1000, "working day", "working days") +
                   " beyond that before the finish moves; from then a day costs " + price + ".";
        }
        return after + "costs up to " + price +
               ", if it holds up the finish: no plan tells whether it does.";
    }

    [[nodiscard]] std::string tightest(const compute::Waiting& waiting) const {
        return "\"" + optionLabel(view_.rows.options[*waiting.tightestOption]) + "\"";
    }
};

}  // namespace

std::string choicesAlternatesText(const ChoicesView& view) {
    return Alternates(view).print();
}

}  // namespace ledgerboard::report
