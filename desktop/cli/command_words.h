// How do shells and man know the command line? Completions for bash, zsh and fish, and a manual
// page, made from the grammar itself, so that they never say what the program does not know.
//
// Source: of bash its manual, "Programmable Completion"; of zsh "Completion System"; of fish
// "Writing your own completions"; of the page man-pages(7) and groff_man(7).
#pragma once

#include <string>

#include "core/model/result.h"

namespace CLI {
class App;
}

namespace ledgerboard::cli {

// The script for "bash", "zsh" or "fish". Errors (WrongUse): another shell.
[[nodiscard]] model::Result<std::string> completionFor(const CLI::App& app,
                                                       const std::string& shell);

// In the macros of man.
[[nodiscard]] std::string manualPage(const CLI::App& app);

}  // namespace ledgerboard::cli
