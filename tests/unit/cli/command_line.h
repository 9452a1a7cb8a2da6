// A command line as a person would type it, run within the test: streams, clock and chance are the
// test's own.
#pragma once

#include <sstream>
#include <string>
#include <vector>

#include "core/intake/bank/bank_program.h"

#include "desktop/cli/run.h"
#include "tests/support/fixed_chance.h"

namespace ledgerboard::cli {

struct Answer {
    int status = 0;
    std::string out;
    std::string err;
};

class CommandLine {
  public:
    explicit CommandLine(std::string book, std::uint64_t seed = 4)
        : book_(std::move(book)), chance_(tests::fixedChance(seed)) {}

    // Bank downloads are read by this program, as by the real command line.
    void readsDownloadsBy(std::string program) { bankProgram_ = std::move(program); }

    Answer operator()(const std::vector<std::string>& arguments, const std::string& in = "") {
        std::istringstream input(in);
        std::ostringstream out;
        std::ostringstream err;
        Surroundings surroundings{
            [this] { return clock_(); },
            [](model::Instant instant, const std::string& zone) -> model::Result<model::Date> {
                if (zone == "Nowhere/Atall") {
                    return model::cannotBeMet("Time zone: there is no zone \"" + zone + "\"");
                }
                return instant.utcDate();
            },
            "America/Chicago",
            chance_,
            input,
            out,
            err,
            book_,
            80,
            false,
            true};
        if (!bankProgram_.empty()) {
            surroundings.readDownload = [this](const std::string& file, const std::string& zone) {
                return intake::readByBankProgram(bankProgram_, file, zone);
            };
        }
        Answer answer;
        answer.status = run(arguments, surroundings);
        answer.out = out.str();
        answer.err = err.str();
        return answer;
    }

  private:
    std::string book_;
    std::string bankProgram_;
    tests::SteppingClock clock_;
    model::FillRandom chance_;
};

}  // namespace ledgerboard::cli
