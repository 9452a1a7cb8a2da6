// What is wrong with a file, all of it, before anything of it is taken?
//
// Reading goes on after a wrong row so that one look mends the whole file.
#pragma once

#include <algorithm>
#include <cstdint>
#include <string>
#include <string_view>
#include <utility>
#include <vector>

#include "core/model/result.h"

namespace ledgerboard::intake {

// A word of the file as a message shows it: in quotes, cut to 60 bytes.
[[nodiscard]] inline std::string inQuotes(std::string_view text) {
    return "\"" + std::string(text.substr(0, 60)) + "\"";
}

// One thing wrong at one place. `line` 0: the file as a whole; `column` empty: the row as a whole.
struct Problem {
    std::int64_t line = 0;
    std::string column;
    std::string message;
};

class Problems {
  public:
    explicit Problems(std::string file) : file_(std::move(file)) {}

    void add(std::int64_t line, std::string column, std::string message) {
        list_.push_back({line, std::move(column), std::move(message)});
    }

    [[nodiscard]] bool none() const { return list_.empty(); }

    [[nodiscard]] const std::string& file() const { return file_; }

    [[nodiscard]] const std::vector<Problem>& list() const { return list_; }

    // "april.csv:3: column "Amount": ...", one line each in order of the file, under a line that
    // says how many there are and that nothing came in. Requires: not none().
    [[nodiscard]] model::Error asError() const {
        auto sorted = list_;
        std::stable_sort(sorted.begin(), sorted.end(),
                         [](const Problem& a, const Problem& b) { return a.line < b.line; });
        std::string text = file_ + ": nothing was brought in, " + std::to_string(sorted.size()) +
                           (sorted.size() == 1 ? " thing is" : " things are") + " to be mended";
        for (std::size_t k = 0; k < sorted.size() && k < kMostShown; ++k) {
            text += "\n" + lineOf(sorted[k]);
        }
        if (sorted.size() > kMostShown) {
            text += "\nand " + std::to_string(sorted.size() - kMostShown) + " more";
        }
        return model::cannotBeMet(std::move(text));
    }

  private:
    static constexpr std::size_t kMostShown = 1000;  // beyond that the column itself is wrong

    [[nodiscard]] std::string lineOf(const Problem& problem) const {
        std::string out = file_;
        if (problem.line > 0) {
            out += ":" + std::to_string(problem.line);
        }
        out += ": ";
        if (!problem.column.empty()) {
            out += "column \"" + problem.column + "\": ";
        }
        return out + problem.message;
    }

    std::string file_;
    std::vector<Problem> list_;
};

}  // namespace ledgerboard::intake
