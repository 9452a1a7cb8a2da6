// Three open alternates for the demo house: where the laundry goes, a second bath, the fence.
#pragma once

#include <gtest/gtest.h>
#include <string>

#include "tests/unit/cli/command_line.h"

namespace ledgerboard::ui {

inline void addAlternates(const std::string& book) {
    cli::CommandLine line(book, 8);
    const std::string bath = "Alternate=second bath";
    const std::vector<std::vector<std::string>> commands = {
        {"add", "alternate", "Question=closet", "Space=Basement", "Decide by=2026-05-26"},
        {"add", "option", "Alternate=closet", "Option=leave the laundry in the basement"},
        {"add", "option", "Alternate=closet", "Option=a stacked laundry in the hall closet",
         "Cost=2100", "Days=3", "Value=4500", "Value low=2000", "Value high=7000"},
        {"set", "closet", "Carried", "leave the laundry in the basement"},
        {"add", "alternate", "Question=second bath", "Space=Small bedroom"},
        {"add", "option", bath, "Option=half bath off the landing", "Cost=6500", "Days=6",
         "Value=11000"},
        {"add", "option", bath, "Option=full bath", "Cost=11800", "Days=11", "Value=17500",
         "Value low=12000", "Value high=21000"},
        {"add", "option", bath, "Option=leave as is"},
        {"add", "alternate", "Question=fence", "Space=Outside"},
        {"add", "option", "Alternate=fence", "Option=new cedar fence", "Cost=3400", "Days=3"},
        {"add", "option", "Alternate=fence", "Option=mend the old one", "Cost=650", "Days=1",
         "Value=1500"}};
    for (const auto& command : commands) {
        const cli::Answer answer = line(command);
        EXPECT_EQ(answer.status, 0) << answer.err;
    }
}

}  // namespace ledgerboard::ui
