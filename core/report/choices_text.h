// How are open alternates shown on a terminal? Dollars and days, a table for each, the best set and
// what it beats, and what waiting costs; never a score.
#pragma once

#include <functional>
#include <string>

#include "core/compute/choices.h"
#include "core/model/rows.h"
#include "core/report/plain_text.h"

namespace ledgerboard::report {

struct ChoicesView {
    const model::JobRows& rows;
    const compute::Choices& choices;
    const compute::ChoicesAsk& ask;
    model::Date today;
    // What a record is called in a command; for the commands that say what to enter.
    std::function<std::string(model::RawId)> nameOf;
    std::size_t width = 80;
    Script script = Script::Unicode;
    bool bold = false;
};

// The whole page, no line wider than width but for commands, each ended by a line break.
// Requires: width of 48 or more; choices of these rows.
[[nodiscard]] std::string choicesText(const ChoicesView& view);

// What may be chosen of each alternate by number, in the order shown: "1", "2", ... are understood
// by the verb. The label of an option in tables and lists: its name, or "(no name)".
[[nodiscard]] std::string optionLabel(const model::Option& option);

// "ledgerboard VERB ARGUMENTS" as it would be typed: what a shell would take apart is quoted.
[[nodiscard]] std::string commandText(const std::vector<std::string>& arguments);

}  // namespace ledgerboard::report
