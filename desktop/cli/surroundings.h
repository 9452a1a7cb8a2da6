// What does the command line get from outside? Everything that only main may touch: the clock,
// chance, the streams, the terminal. Tests hand in their own.
#pragma once

#include <cstddef>
#include <functional>
#include <istream>
#include <ostream>
#include <string>

#include "core/model/date.h"
#include "core/model/id.h"
#include "core/model/result.h"

namespace ledgerboard::cli {

struct Surroundings {
    std::function<model::Instant()> now;
    // The day it is at an instant in a time zone ("America/Chicago"); empty zone: this computer's.
    // Errors (CannotBeMet): a zone that this computer does not know.
    std::function<model::Result<model::Date>(model::Instant, const std::string& zone)> dayIn;
    std::string timeZone;  // of this computer, for a new job; may be empty
    model::FillRandom random;
    std::istream& in;
    std::ostream& out;
    std::ostream& err;
    std::string book;         // where --book is not given
    std::size_t width = 80;   // columns of the terminal
    bool isTerminal = false;  // whether out is one
    bool unicode = true;      // whether it can show more than ASCII
    // Waits before a call is tried again; where there is none it is tried at once.
    std::function<void(int ms)> wait = {};
    // The instant at which clocks in a time zone (as in dayIn) show `local`, "2026-05-08T14:05:00";
    // where there is none, clocks are taken to show UTC. Errors (CannotBeMet): as dayIn.
    std::function<model::Result<model::Instant>(const std::string& local, const std::string& zone)>
        instantIn = {};
    // What the program that knows OFX prints of a bank's download, its days those of a time zone
    // (core/intake/bank/bank_program.h).
    std::function<model::Result<std::string>(const std::string& file, const std::string& zone)>
        readDownload = {};
};

}  // namespace ledgerboard::cli
