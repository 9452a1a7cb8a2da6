#include "core/report/choices_text.h"

#include "core/report/choices_sheet.h"

namespace ledgerboard::report {

namespace {

using compute::AlternateChoice;
using compute::OptionChoice;
using compute::SetChoice;
using model::Money;

constexpr std::size_t kMostFrontierRows = 12;

class Page : public ChoicesSheet {
  public:
    using ChoicesSheet::ChoicesSheet;

    std::string print() {
        head();
        std::string text = take() + choicesAlternatesText(view_);
        printBest();
        printFrontier();
        printGrounds();
        return text + take();
    }

  private:
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
            paragraph("There is none: " + choices_.whyNone.text() + ".");
            return;
        }
        if (!anythingOffered()) {
            paragraph("No option can be chosen yet: see above what each lacks.");
            return;
        }
        listSet(*choices_.best);
        paragraph("It " + figuresOf(*choices_.best) + ". " + againstNow(*choices_.best));
        sayWhatTheSumMissed(*choices_.best);
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

    // Days are summed to find the set; planned together they may come to less, or to more.
    void sayWhatTheSumMissed(const SetChoice& set) {
        if (!choices_.hasPlan || !set.finishOn) {
            return;
        }
        const int planned = *set.finishOn - *choices_.finishWithout;
        const int apart = std::abs(set.finishDays - planned);
        if (apart == 0) {
            return;
        }
        const bool isLess = planned < set.finishDays;
        paragraph("Planned together, its options move the finish " +
                  countText(apart, "day", "days") + (isLess ? " less" : " more") +
                  " than one by one: the net is " +
                  whole(model::times(model::Quantity::of(apart), choices_.dayCosts)) +
                  (isLess ? " more" : " less") + " than that.");
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
                {whole(set.cost), set.finishOn ? date(*set.finishOn) : daysText(set.finishDays),
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
            std::string text = "Days are those by which the finish of the plan moves, from " + on +
                               " with none of the options; those of several are summed.";
            if (hasDaysWithoutItems()) {
                text +=
                    " An option without items stands in the plan by its days alone: nothing "
                    "waits for it, and it waits for nothing.";
            }
            return text;
        }
        return "There is no plan to ask, so days are the options' own, as if the finish, " + on +
               " with none of them, waited for each.";
    }

    [[nodiscard]] bool hasDaysWithoutItems() const {
        for (const AlternateChoice& alternate : choices_.alternates) {
            for (const OptionChoice& option : alternate.options) {
                if (option.items == 0 &&
                    rowOf(option).days.value_or(model::Quantity{}) > model::Quantity{}) {
                    return true;
                }
            }
        }
        return false;
    }
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
