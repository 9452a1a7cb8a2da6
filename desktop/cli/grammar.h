// What can be said on the command line? Every verb with its options, its help and an example.
//
// The same grammar parses what was said, prints the help, and makes the completions and the manual
// page (command_words.h).
#pragma once

#include <functional>
#include <string>

#include "desktop/cli/verbs.h"

namespace CLI {
class App;
}

namespace ledgerboard::cli {

// All that can be said on the command line, and the verb that was said.
struct Spoken {
    Globals globals;
    StartOptions start;
    ReadOptions read;
    BringOptions bring;
    BankOptions bank;
    ChooseOptions choose;
    EditOptions set;
    AddOptions add;
    ListOptions list;
    MarkOptions mark;
    AcknowledgeOptions acknowledge;
    BaselineOptions baseline;
    DrawOptions draw;
    WeekOptions week;
    GiveOptions give;
    PlanOptions plan;
    RestoreOptions restore;
    RiskOptions risk;
    InviteOptions invite;
    JoinOptions join;
    SyncOptions sync;
    std::string device;  // of revoke
    std::string record;  // of drop and history
    std::string file;    // of backup
    std::string name;    // of work
    std::string crew;    // of punch
    bool keepTaught = false;
    bool mend = false;
    std::function<Done(Session&)> verb;
};

// Requires: `app` is empty, and `spoken` outlives it.
void addGrammar(CLI::App& app, Spoken& spoken);

}  // namespace ledgerboard::cli
