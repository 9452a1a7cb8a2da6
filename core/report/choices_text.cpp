#include "core/report/choices_text.h"

#include <algorithm>

#include "core/report/money_text.h"
#include "core/report/table.h"

namespace ledgerboard::report {

namespace {

using compute::AlternateChoice;
using compute::Choices;
using compute::OptionChoice;
using compute::SetChoice;
using model::Money;

constexpr std::size_t kMostFrontierRows = 12;
constexpr std::size_t kLongestName = 60;

// "+7 days", "−2 days", "0 days".
std::string daysText(int days, Script script) {
    const std::string sign = days < 0 ? shownText("\xE2\x88\x92", script) : days > 0 ? "+" : "";
    return sign + countText(std::abs(days), "day", "days");
}

class Page {
  public:
    explicit Page(const ChoicesView& view)
        : view_(view), choices_(view.choices), width_(std::min<std::size_t>(view.width, 100)) {}

    std::string print() {
        head();
        for (const AlternateChoice& alternate : choices_.alternates) {
            printAlternate(alternate);
        }
        printBest();
        printFrontier();
        printGrounds();
        return std::move(text_);
    }

  private:
    void line(const std::string& text) { text_ += text + "\n"; }

    void blank() { text_ += "\n"; }

    void heading(const std::string& text) {
        blank();
        for (const std::string& part : wrapped(shownText(text, view_.script), width_)) {
            line(view_.bold ? "\033[1m" + part + "\033[0m" : part);
        }
    }

    void paragraph(const std::string& text, const std::string& lead = "") {
        std::string start = lead;
        for (const auto& part : wrapped(shownText(text, view_.script), width_ - columnsOf(lead))) {
            line(start + part);
            start = std::string(columnsOf(lead), ' ');
        }
    }

    // Commands are never wrapped: they are there to be copied.
    void command(const std::vector<std::string>& arguments) {
        line("  " + shownText(commandText(arguments), view_.script));
    }

    void table(const Table& rows) { text_ += printTable(rows, {width_, view_.script, view_.bold}); }

    [[nodiscard]] std::string whole(Money money) const { return wholeText(money, view_.script); }

    [[nodiscard]] std::string date(model::Date day) const { return dateText(day, view_.today); }

    [[nodiscard]] const model::Option& rowOf(const OptionChoice& option) const {
        return view_.rows.options[option.option];
    }

    [[nodiscard]] std::string nameOf(const OptionChoice& option) const {
        return clipped(shownText(optionLabel(rowOf(option)), view_.script), kLongestName,
                       view_.script);
    }

    [[nodiscard]] std::string quoted(const OptionChoice& option) const {
        return "\"" + nameOf(option) + "\"";
    }

    void head() {
        paragraph(view_.rows.job.name + ": " +
                  countText(static_cast<std::int64_t>(choices_.alternates.size()), "open alternate",
                            "open alternates") +
                  ", as of " + longDateText(view_.today));
        paragraph(
            "Each option by itself, against having nothing for its alternate. Net is what it "
            "adds to the sale, less selling, its cost, and what the days cost; \"even at\" is "
            "what it must add for a net of 0.");
    }

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
                 known ? whole(option.cost) : none, daysText(option.finishDays, view_.script),
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
        } else if (!option.whyNotOffered.empty()) {
            paragraph(quoted(option) + " is in no set: " + option.whyNotOffered + ".");
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
        if (waiting.isEntered || !waiting.item) {
            return "as entered";
        }
        const model::Item& item = view_.rows.items[*waiting.item];
        std::string text = item.object;
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

    // What a set does, as the rest of a sentence: "costs 2,100, ends the work on Thu 4 Jun, ...".
    [[nodiscard]] std::string figuresOf(const SetChoice& set) const {
        std::string text = "costs " + whole(set.cost);
        if (set.finishOn) {
            text += ", ends the work on " + date(*set.finishOn);
        }
        text += " and has an expected net of " + whole(set.net);
        if (set.netAtChance) {
            text += ", with a chance of " + chanceText() + " at least " + whole(*set.netAtChance);
        }
        return text;
    }

    [[nodiscard]] std::string chanceText() const { return view_.ask.chance->toString() + " %"; }

    void listSet(const SetChoice& set) {
        for (std::size_t k = 0; k < set.options.size(); ++k) {
            if (!set.options[k]) {
                continue;
            }
            const AlternateChoice& alternate = choices_.alternates[k];
            paragraph(alternate.name + ": " + nameOf(alternate.options[*set.options[k]]), "  ");
        }
    }

    [[nodiscard]] bool anythingOffered() const {
        return choices_.best &&
               std::any_of(choices_.best->options.begin(), choices_.best->options.end(),
                           [](const auto& option) { return option.has_value(); });
    }

    void printBest() {
        heading("Best together" + limitsText());
        if (!choices_.best) {
            paragraph("There is none: " + choices_.whyNone + ".");
            return;
        }
        if (!anythingOffered()) {
            paragraph("No option can be chosen yet: see above what each lacks.");
            return;
        }
        listSet(*choices_.best);
        paragraph("It " + figuresOf(*choices_.best) + ". " + againstNow(*choices_.best));
        if (!choices_.proven) {
            paragraph(
                "The search was stopped before it was sure: a better set may exist. Decide "
                "some alternates first.");
        }
        printWhy();
        if (choices_.bestAtChance && choices_.bestAtChance->options != choices_.best->options) {
            heading("Best at a chance of " + chanceText() + limitsText());
            listSet(*choices_.bestAtChance);
            paragraph("It " + figuresOf(*choices_.bestAtChance) + ".");
        } else if (choices_.bestAtChance) {
            paragraph("At a chance of " + chanceText() + " the same set is best.");
        }
    }

    [[nodiscard]] std::string limitsText() const {
        std::string text;
        if (view_.ask.cash) {
            text += " for " + whole(*view_.ask.cash) + " at most";
        }
        if (view_.ask.finishOn) {
            text +=
                (text.empty() ? " " : ", ") + std::string("ending by ") + date(*view_.ask.finishOn);
        }
        return text;
    }

    [[nodiscard]] std::string againstNow(const SetChoice& best) const {
        if (best.options == choices_.now.options) {
            return "That is what is carried now.";
        }
        if (std::none_of(choices_.now.options.begin(), choices_.now.options.end(),
                         [](const auto& option) { return option.has_value(); })) {
            return "Nothing is carried now: of these alternates nothing counts yet.";
        }
        const Money more = best.net - choices_.now.net;
        return "What is carried now " + figuresOf(choices_.now) + ": " +
               (more == Money{}  ? "the same"
                : more > Money{} ? whole(more) + " less than the best"
                                 : whole(Money{} - more) +
                                       " more, but it has no price, does not go together or is "
                                       "beyond the limits") +
               ".";
    }

    void printWhy() {
        for (const AlternateChoice& alternate : choices_.alternates) {
            if (!alternate.best) {
                continue;
            }
            if (!alternate.worth) {
                paragraph(alternate.name + ": no other option of it fits.", "  ");
                continue;
            }
            const std::string other = quoted(alternate.options[*alternate.otherwise]);
            paragraph(alternate.name + ": with " + other +
                          (*alternate.worth == Money{}
                               ? " it earns as much; the cheaper, then the sooner, then the first "
                                 "listed was taken."
                               : " instead, the best that can be had earns " +
                                     whole(*alternate.worth) + " less."),
                      "  ");
        }
    }

    void printFrontier() {
        if (!anythingOffered() || choices_.frontier.size() < 2) {
            return;
        }
        heading("Sets that no other beats in cost, days and net");
        Table rows{
            {{"Cost", true}, {"Finish", true}, {"Net", true}, {"", false}, {"Options", false}}, {}};
        if (view_.ask.chance) {
            rows.columns[2].heading = "Net at " + chanceText();
        }
        for (std::size_t k = 0; k < std::min(choices_.frontier.size(), kMostFrontierRows); ++k) {
            const SetChoice& set = choices_.frontier[k];
            rows.rows.push_back(
                {whole(set.cost),
                 set.finishOn ? date(*set.finishOn) : daysText(set.finishDays, view_.script),
                 whole(set.netAtChance.value_or(set.net)), markOf(set), optionsOf(set)});
        }
        table(rows);
        if (choices_.frontier.size() > kMostFrontierRows) {
            paragraph("And " + std::to_string(choices_.frontier.size() - kMostFrontierRows) +
                      " more that cost more; --json lists all.");
        }
        if (choices_.frontierCut) {
            paragraph(
                "The list was cut, for there are too many: sets that are missing may beat "
                "some that are here.");
        }
    }

    [[nodiscard]] std::string markOf(const SetChoice& set) const {
        const auto& best = choices_.bestAtChance ? choices_.bestAtChance : choices_.best;
        const bool isBest = best && set.options == best->options;
        const bool isNow = set.options == choices_.now.options;
        return isBest && isNow ? "best, carried" : isBest ? "best" : isNow ? "carried" : "";
    }

    [[nodiscard]] std::string optionsOf(const SetChoice& set) const {
        std::string text;
        for (std::size_t k = 0; k < set.options.size(); ++k) {
            if (set.options[k]) {
                text += (text.empty() ? "" : "; ") +
                        nameOf(choices_.alternates[k].options[*set.options[k]]);
            }
        }
        return text;
    }

    void printGrounds() {
        heading("What this rests on");
        std::string text;
        if (choices_.resale) {
            text = "The resale of " + whole(*choices_.resale) +
                   " is taken as the house with none "
                   "of these options";
            if (choices_.decidedValue != Money{}) {
                text += "; those decided on add " + whole(choices_.decidedValue);
            }
            text += choices_.ceiling ? "; together no more than the street's ceiling of " +
                                           whole(*choices_.ceiling) + ". "
                                     : ". ";
        }
        text += "Selling takes " +
                tenthsText(model::Percent::whole() - choices_.keptShare, view_.script) +
                " of what is added; a day costs " + centsText(choices_.dayCosts, view_.script) +
                ".";
        paragraph(text);
        paragraph(
            "Net is the part of the profit that these options decide; 'ledgerboard deal' "
            "tells the rest. Before income tax.");
        paragraph(finishText());
        if (view_.ask.chance) {
            paragraph("At a chance of " + chanceText() +
                      ": values spread as three-point estimates, "
                      "(high - low) / 6 each, independent of each other, their sum near enough "
                      "normal. The house's own resale is taken as it is.");
        }
        std::string left;
        for (const auto& input : choices_.leftOut) {
            left += (left.empty() ? "" : ", ") + std::string(input.heading);
        }
        if (!left.empty()) {
            paragraph("Counted as nothing, for it was not entered: " + left + ".");
        }
    }

    [[nodiscard]] std::string finishText() const {
        if (!choices_.finishWithout) {
            return "Nothing tells when the work ends; days are the options' own, as if the finish "
                   "waited for them.";
        }
        const std::string on = date(*choices_.finishWithout);
        if (choices_.hasPlan) {
            return "Days are those by which the finish of the plan moves, from " + on +
                   " with none of the options. Beside each other they may move it less than their "
                   "sum: the finish of the best set is planned as a whole, the others are summed.";
        }
        return "There is no plan to ask, so days are the options' own, as if the finish, " + on +
               " with none of them, waited for each.";
    }

    const ChoicesView& view_;
    const Choices& choices_;
    std::size_t width_;
    std::string text_;
};

}  // namespace

std::string optionLabel(const model::Option& option) {
    return option.name.empty() ? "(no name)" : option.name;
}

std::string commandText(const std::vector<std::string>& arguments) {
    std::string text = "ledgerboard";
    for (const std::string& argument : arguments) {
        const bool isPlain =
            !argument.empty() && std::all_of(argument.begin(), argument.end(), [](char letter) {
                return (letter >= 'a' && letter <= 'z') || (letter >= 'A' && letter <= 'Z') ||
                       (letter >= '0' && letter <= '9') ||
                       std::string_view("-_./=,:+%").find(letter) != std::string_view::npos;
            });
        if (isPlain) {
            text += " " + argument;
            continue;
        }
        text += " \"";
        for (const char letter : argument) {
            if (std::string_view("\"\\$`").find(letter) != std::string_view::npos) {
                text += '\\';
            }
            text += letter;
        }
        text += "\"";
    }
    return text;
}

std::string choicesText(const ChoicesView& view) {
    return Page(view).print();
}

}  // namespace ledgerboard::report
