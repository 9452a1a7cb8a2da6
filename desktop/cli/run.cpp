#include "desktop/cli/run.h"

#include <CLI/CLI.hpp>
#include <algorithm>

#include "core/intake/files/nearest.h"

#include "desktop/cli/grammar.h"
#include "desktop/cli/work/work.h"

namespace ledgerboard::cli {

namespace {

int statusOf(const model::Error& error) {
    switch (error.code) {
        case model::ErrorCode::CannotBeMet:
            return kCannotBeMet;
        case model::ErrorCode::WrongUse:
            return kWrongUse;
        case model::ErrorCode::Damaged:
            return kDamaged;
    }
    return kCannotBeMet;
}

// "did you mean": for a verb that is none.
std::string suggestion(const CLI::App& app, const std::vector<std::string>& arguments) {
    std::vector<std::string> verbs;
    for (const auto* sub : app.get_subcommands([](const CLI::App*) { return true; })) {
        verbs.push_back(sub->get_name());
    }
    for (std::size_t k = 0; k < arguments.size(); ++k) {
        const std::string& argument = arguments[k];
        if (argument.rfind("--", 0) == 0) {
            k += argument != "--json" && argument.find('=') == std::string::npos ? 1 : 0;
            continue;
        }
        if (std::find(verbs.begin(), verbs.end(), argument) != verbs.end()) {
            return "";
        }
        const std::string near = intake::nearestName(argument, verbs);
        return "there is no verb \"" + argument + "\"" +
               (near.empty() ? ";" : ": did you mean '" + near + "'?") +
               " 'ledgerboard --help' lists them all";
    }
    return "";
}

// `work NAME --help` tells of the name; `work --help` of all of them.
bool toldOfWork(const std::vector<std::string>& arguments, Surroundings& surroundings) {
    // The verb is what comes first but for options and their values.
    auto work = arguments.begin();
    while (work != arguments.end() && work->rfind("--", 0) == 0) {
        const bool takesNext = *work != "--json" && work->find('=') == std::string::npos;
        work += takesNext && work + 1 != arguments.end() ? 2 : 1;
    }
    if (work == arguments.end() || *work != "work") {
        return false;
    }
    std::string name;
    bool help = work + 1 == arguments.end();
    for (auto at = work + 1; at != arguments.end(); ++at) {
        if (*at == "--help" || *at == "-h") {
            help = true;
        } else if (name.empty() && at->rfind("--", 0) != 0) {
            name = *at;
        }
    }
    if (help) {
        surroundings.out << work::workHelp(name);
    }
    return help;
}

// What the parser says, in words of ours where its own do not tell what to do.
std::string parserText(const CLI::ParseError& error, const std::vector<std::string>& arguments) {
    std::string text = error.what();
    const auto at = text.find(" was given a disallowed flag override");
    if (at != std::string::npos) {
        return "--" + text.substr(0, at) + " is said or left out; it takes no value";
    }
    if (dynamic_cast<const CLI::RequiredError*>(&error) != nullptr &&
        text.find("subcommand") != std::string::npos) {
        return "say a VERB, such as 'ledgerboard week'";
    }
    if (dynamic_cast<const CLI::ExtrasError*>(&error) == nullptr) {
        return text;
    }
    // The first that the parser could not place, in the order they were said.
    const std::string extras = " " + text.substr(text.find(": ") + 2) + " ";
    for (const bool option : {true, false}) {
        for (const std::string& argument : arguments) {
            if (argument.starts_with("-") == option &&
                extras.find(" " + argument + " ") != std::string::npos) {
                return option ? "there is no option \"" + argument + "\" here"
                              : "\"" + argument +
                                    "\" is one word too many: words that belong "
                                    "together stand in quotes";
            }
        }
    }
    return text;
}

// `help VERB` means `VERB --help`, and `help` alone means `--help`.
std::vector<std::string> withoutHelpVerb(std::vector<std::string> arguments) {
    if (!arguments.empty() && arguments.front() == "help") {
        arguments.erase(arguments.begin());
        arguments.emplace_back("--help");
    }
    return arguments;
}

}  // namespace

int run(const std::vector<std::string>& said, Surroundings& surroundings) {
    const std::vector<std::string> arguments = withoutHelpVerb(said);
    Spoken spoken;
    CLI::App app("", "ledgerboard");
    addGrammar(app, spoken);
    if (arguments.empty()) {
        surroundings.out << app.help();
        return kDone;
    }
    if (toldOfWork(arguments, surroundings)) {
        return kDone;
    }
    try {
        std::vector<std::string> reversed(arguments.rbegin(), arguments.rend());
        app.parse(reversed);
    } catch (const CLI::CallForHelp&) {
        surroundings.out << app.help();  // of the verb, where one was said
        return kDone;
    } catch (const CLI::CallForVersion& version) {
        surroundings.out << version.what() << "\n";
        return kDone;
    } catch (const CLI::ParseError& error) {
        const std::string near = suggestion(app, arguments);
        surroundings.err << "ledgerboard: " << (near.empty() ? parserText(error, arguments) : near)
                         << "\n";
        if (near.empty()) {
            const auto subs = app.get_subcommands();
            surroundings.err << "'ledgerboard "
                             << (subs.empty() ? "" : subs.front()->get_name() + " ")
                             << "--help' shows how it is written.\n";
        }
        return kWrongUse;
    }
    Session session(spoken.globals, surroundings);
    const Done done = spoken.verb(session);
    if (!done.ok()) {
        surroundings.err << "ledgerboard: " << done.error().message << "\n";
        return statusOf(done.error());
    }
    surroundings.out.flush();
    if (!surroundings.out) {
        surroundings.err << "ledgerboard: standard output cannot be written\n";
        return kCannotBeMet;
    }
    return kDone;
}

}  // namespace ledgerboard::cli
