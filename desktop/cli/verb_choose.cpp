// choose: the open alternates compared, the best set, and the decision itself.
#include <algorithm>

#include <nlohmann/json.hpp>

#include "core/compute/budget.h"
#include "core/compute/choices.h"
#include "core/compute/choices_plan.h"
#include "core/compute/deal.h"
#include "core/compute/decision.h"
#include "core/compute/plan.h"
#include "core/compute/pricing.h"
#include "core/model/saying.h"
#include "core/report/choices_text.h"
#include "core/report/deal_figures.h"
#include "core/report/money_text.h"

#include "desktop/cli/choices_json.h"
#include "desktop/cli/verbs.h"

namespace ledgerboard::cli {

namespace {

using model::Kind;
using model::Money;
using model::Result;
using nlohmann::json;

constexpr const char* kNoAlternates =
    "There are no alternates. An alternate is an open decision with two or more options; one of\n"
    "them may be to leave things as they are:\n"
    "  ledgerboard add alternate Question=\"second bath\"\n"
    "  ledgerboard add option Alternate=\"second bath\" Option=\"half bath\" Cost=6500 Days=6 "
    "Value=11000\n"
    "  ledgerboard add option Alternate=\"second bath\" Option=\"leave as is\"\n";

Result<compute::ChoicesAsk> askOf(const ChooseOptions& options) {
    compute::ChoicesAsk ask;
    if (!options.cash.empty()) {
        auto cash = Money::parse(options.cash);
        if (!cash.ok()) {
            return model::wrongUse("--cash: " + cash.error().message);
        }
        if (cash.value() < Money{}) {
            return model::wrongUse("--cash: it can't be below 0");
        }
        ask.cash = cash.value();
    }
    if (!options.finish.empty()) {
        auto finish = model::Date::parseLoose(options.finish);
        if (!finish.ok()) {
            return model::wrongUse("--finish: " + finish.error().message);
        }
        ask.finishOn = finish.value();
    }
    if (!options.chance.empty()) {
        auto chance = model::Percent::parse(options.chance);
        if (!chance.ok()) {
            return model::wrongUse("--chance: " + chance.error().message);
        }
        if (chance.value() <= model::Percent{} || chance.value() >= model::Percent::whole()) {
            return model::wrongUse("--chance: it must be between 0 and 100, such as 80");
        }
        ask.chance = chance.value();
    }
    return ask;
}

Done compare(Session& session, const ChooseOptions& options) {
    auto ask = askOf(options);
    if (!ask.ok()) {
        return ask.error();
    }
    auto job = session.jobOnDay();
    if (!job.ok()) {
        return job.error();
    }
    const model::JobRows& rows = job.value().rows;
    const model::Date today = job.value().today;
    auto finder = session.finder();
    if (!finder.ok()) {
        return finder.error();
    }
    return model::guarded([&]() -> Done {
        const auto figures = compute::figuresOf(rows, today);
        const auto plan = compute::planOf(rows, figures, today);
        auto deal = compute::deal(rows.job, report::dealFiguresOf(rows, figures, plan, today));
        if (!deal.ok()) {
            return deal.error();
        }
        auto choices = compute::choicesOf(rows, figures, deal.value(), today, ask.value(),
                                          compute::planJobAsOf(today));
        if (!choices.ok()) {
            return choices.error();
        }
        if (session.json()) {
            session.printJson(choicesJson(rows, choices.value(), today));
            return {};
        }
        if (choices.value().alternates.empty()) {
            session.print(rows.alternates.empty()
                              ? std::string(kNoAlternates)
                              : "Every alternate is decided: 'ledgerboard list alternates' shows "
                                "them.\n");
            return {};
        }
        session.print(report::choicesText(
            {rows, choices.value(), ask.value(), today,
             [&](model::RawId id) { return finder.value()->nameOf(id); },
             session.surroundings().width, session.script(),
             session.surroundings().isTerminal && session.surroundings().unicode}));
        return {};
    });
}

// Whether every word of `part` begins a word of `name`, in any order.
bool isPartOf(const std::string& part, const std::string& name) {
    const std::string words = " " + compute::folded(name);
    std::string asked = compute::folded(part) + " ";
    while (!asked.empty()) {
        const auto space = asked.find(' ');
        if (words.find(" " + asked.substr(0, space)) == std::string::npos) {
            return false;
        }
        asked.erase(0, space + 1);
    }
    return !compute::folded(part).empty();
}

// The options of an alternate in the order in which `choose` shows and numbers them.
std::vector<std::size_t> optionsOf(const model::JobRows& rows, const model::Alternate& alternate) {
    std::vector<std::size_t> out;
    for (std::size_t k = 0; k < rows.options.size(); ++k) {
        if (rows.options[k].alternate == alternate.id) {
            out.push_back(k);
        }
    }
    std::stable_partition(out.begin(), out.end(),
                          [&](std::size_t k) { return rows.options[k].id == alternate.carried; });
    return out;
}

std::string listOf(const model::JobRows& rows, const std::vector<std::size_t>& options) {
    std::string text;
    for (std::size_t k = 0; k < options.size(); ++k) {
        text +=
            "\n  " + std::to_string(k + 1) + "  " + report::optionLabel(rows.options[options[k]]);
    }
    return text;
}

// By its number in the table, its name, words of its name, or its id.
Result<std::size_t> optionMeant(const intake::Finder& finder, const model::JobRows& rows,
                                const model::Alternate& alternate, const std::string& text) {
    const std::vector<std::size_t> options = optionsOf(rows, alternate);
    const std::string name = finder.nameOf(alternate.id.raw());
    if (options.empty()) {
        return model::cannotBeMet(name + " has no options: add one with 'ledgerboard add option'");
    }
    if (text.empty()) {
        return model::wrongUse("say which OPTION of " + name +
                               " you choose:" + listOf(rows, options));
    }
    for (std::size_t k = 0; k < options.size(); ++k) {
        if (text == std::to_string(k + 1)) {
            return options[k];
        }
    }
    std::vector<std::size_t> named;
    std::vector<std::size_t> partly;
    for (const std::size_t k : options) {
        if (compute::folded(rows.options[k].name) == compute::folded(text)) {
            named.push_back(k);
        }
        if (isPartOf(text, rows.options[k].name)) {
            partly.push_back(k);
        }
    }
    for (const auto* found : {&named, &partly}) {
        if (found->size() == 1) {
            return found->front();
        }
    }
    if (auto found = finder.find(Kind::Option, text); found.ok()) {
        for (const std::size_t k : options) {
            if (rows.options[k].id.raw() == found.value()) {
                return k;
            }
        }
    }
    return model::cannotBeMet((partly.size() > 1 ? "several options of " : "no option of ") + name +
                              " " + (partly.size() > 1 ? "are" : "is") + " \"" + text +
                              "\"; it has:" + listOf(rows, options));
}

// What was decided, for the lines printed afterwards.
struct Decided {
    std::size_t alternate = 0;
    std::size_t option = 0;
    std::optional<model::Item> made;
    compute::Difference difference;
};

// The change order that carries the difference, as a command.
std::string changeCommand(const intake::Finder& finder, const model::JobRows& rows,
                          const Decided& decided, const std::string& why, model::Date today) {
    std::string items;
    for (const auto& item : decided.difference.items) {
        items += (items.empty() ? "" : "; ") + finder.nameOf(item.raw());
    }
    std::vector<std::string> words = {
        "add", "change", "Change=" + report::optionLabel(rows.options[decided.option]),
        "Why=" + why, "Amount=" + decided.difference.amount.toString()};
    if (!items.empty()) {
        words.push_back("Items=" + items);
    }
    words.push_back("Asked=" + today.toString());
    return report::commandText(words);
}

std::string needsText(const model::JobRows& rows, const Decided& decided) {
    std::string text;
    for (const auto& need : rows.options[decided.option].needs) {
        for (const model::Option& other : rows.options) {
            for (const model::Alternate& alternate : rows.alternates) {
                if (other.id == need && other.alternate == alternate.id &&
                    alternate.chosen != need) {
                    text += "It needs \"" + report::optionLabel(other) + "\" of " +
                            alternate.question + ", which is not decided yet.\n";
                }
            }
        }
    }
    return text;
}

void tell(Session& session, const model::JobRows& rows, const Decided& decided,
          const std::string& why, const std::string& was, model::Date today) {
    const intake::Finder& finder = *session.finder().value();
    const model::Alternate& alternate = rows.alternates[decided.alternate];
    const bool hasChange = decided.difference.baselineOn && decided.difference.amount != Money{};
    const std::string command =
        hasChange ? changeCommand(finder, rows, decided, why, today) : std::string();
    if (session.json()) {
        session.printJson(
            {{"alternate", alternate.id.raw().toString()},
             {"chosen", alternate.chosen.raw().toString()},
             {"why", why},
             {"item", decided.made ? json(decided.made->id.raw().toString()) : json(nullptr)},
             {"change_amount",
              hasChange ? json(decided.difference.amount.toString()) : json(nullptr)},
             {"change_command", hasChange ? json(command) : json(nullptr)}});
        return;
    }
    std::string text = finder.nameOf(alternate.id.raw()) + ": " +
                       report::optionLabel(rows.options[decided.option]) + ", because " + why +
                       (was.empty() ? "" : " (was: " + was + ")") + ".\n";
    if (decided.made) {
        text += "It is now a scope item, " + finder.nameOf(decided.made->id.raw()) +
                ": give it a treatment, a crew and dates.\n";
    }
    text += needsText(rows, decided);
    if (hasChange) {
        text += "The baseline of " + decided.difference.baselineOn->toString() +
                " stays as it was frozen, so the difference of " +
                report::centsText(decided.difference.amount, session.script()) +
                " is a change order.\nIt counts in the budget once it is signed:\n  " + command +
                "\n";
    }
    session.print(text + "'ledgerboard undo' takes the decision back.\n");
}

Done refuseLimits(const ChooseOptions& options) {
    if (!options.cash.empty() || !options.finish.empty() || !options.chance.empty()) {
        return model::wrongUse(
            "--cash, --finish and --chance compare; leave them out when you name what is decided");
    }
    if (options.why.empty() && !options.option.empty()) {
        return model::wrongUse(
            "say why with --why \"...\": it is kept beside the decision, for when you ask yourself "
            "later");
    }
    return {};
}

Done decide(Session& session, const ChooseOptions& options) {
    if (auto good = session.refusePast("choosing an option", false); !good.ok()) {
        return good.error();
    }
    if (auto good = refuseLimits(options); !good.ok()) {
        return good.error();
    }
    auto finder = session.finder();
    if (!finder.ok()) {
        return finder.error();
    }
    store::Book& book = *session.book().value();
    const store::LogPosition readAt = book.position();
    auto read = session.rows();
    if (!read.ok()) {
        return read.error();
    }
    auto today = session.today();
    if (!today.ok()) {
        return today.error();
    }
    auto found = finder.value()->find(Kind::Alternate, options.alternate);
    if (!found.ok()) {
        return found.error();
    }
    model::JobRows rows = std::move(read).value();
    Decided decided;
    while (rows.alternates.at(decided.alternate).id.raw() != found.value()) {
        ++decided.alternate;
    }
    model::Alternate& alternate = rows.alternates[decided.alternate];
    auto option = optionMeant(*finder.value(), rows, alternate, options.option);
    if (!option.ok()) {
        return option.error();
    }
    decided.option = option.value();
    const model::Option& chosen = rows.options[decided.option];
    if (const auto why = compute::whyNotBesideDecided(rows, chosen); !why.isEmpty()) {
        return model::cannotBeMet(
            model::saying("\"%1\" can't be chosen: %2. Decide that one anew first",
                          report::optionLabel(chosen), why));
    }
    return model::guarded([&]() -> Done {
        const std::string was =
            alternate.chosen.isNil() ? "" : finder.value()->nameOf(alternate.chosen.raw());
        store::Action action("choose " + report::optionLabel(chosen), readAt);
        action.set(alternate.id.raw(), model::field::Alternate::chosen, model::valueOf(chosen.id));
        action.set(alternate.id.raw(), model::field::Alternate::why, model::valueOf(options.why));
        alternate.chosen = chosen.id;
        decided.made = compute::itemMadeBy(rows, decided.alternate, decided.option);
        if (decided.made) {
            decided.made->id = book.newId<Kind::Item>(session.now());
            action.add(*decided.made);
            rows.items.push_back(*decided.made);
        }
        decided.difference = compute::differenceOf(rows, decided.alternate);
        if (auto done = book.commit(action, session.now()); !done.ok()) {
            return done.error();
        }
        session.forgetRows();
        tell(session, rows, decided, options.why, was, today.value());
        return {};
    });
}

}  // namespace

Done verbChoose(Session& session, const ChooseOptions& options) {
    if (options.alternate.empty()) {
        if (!options.why.empty()) {
            return model::wrongUse("--why goes with what is decided: choose ALTERNATE OPTION");
        }
        return compare(session, options);
    }
    return decide(session, options);
}

}  // namespace ledgerboard::cli
