#include "desktop/cli/command_words.h"

#include <CLI/CLI.hpp>
#include <vector>

#include "core/intake/files/bring_kinds.h"
#include "core/model/catalog.h"

#include "desktop/cli/work/work.h"

namespace ledgerboard::cli {

namespace {

struct SpokenOption {
    std::string name;  // "--book"
    std::string says;
    bool takesValue = false;
};

struct SpokenPlace {
    std::string name;  // "KIND"
    std::string says;
    std::string words;  // that may stand there, with spaces between; empty: anything
};

struct SpokenVerb {
    std::string name;
    std::string says;
    std::string example;
    std::vector<SpokenOption> options;
    std::vector<SpokenPlace> places;
};

std::string kindWords() {
    std::string words = "scope";
    for (const auto& info : model::kinds()) {
        words += " " + std::string(info.table);
    }
    return words;
}

// What may stand in a place of a verb, where that is a few words.
std::string wordsFor(const std::string& verb, const std::string& place) {
    if (verb == "bring" && place == "KIND") {
        std::string words = "photos job";
        for (const auto& kind : intake::bringKinds()) {
            words += " " + std::string(kind.word);
        }
        return words;
    }
    if (place == "KIND") {
        return kindWords();
    }
    if (verb == "give") {
        return place == "WHAT"     ? "week schedule draw bids change waiver job " + kindWords()
               : place == "FORMAT" ? "csv json xlsx html ics zip"
                                   : "";
    }
    if (verb == "work") {
        std::string names;
        for (const auto name : work::workNames()) {
            names += (names.empty() ? "" : " ") + std::string(name);
        }
        return names;
    }
    return place == "ROLE" ? "owner crew-lead viewer" : place == "SHELL" ? "bash zsh fish" : "";
}

std::vector<SpokenOption> optionsOf(const CLI::App& app) {
    std::vector<SpokenOption> options;
    for (const CLI::Option* option : app.get_options()) {
        if (!option->get_lnames().empty()) {
            options.push_back({"--" + option->get_lnames().front(), option->get_description(),
                               option->get_expected_max() > 0});
        }
    }
    return options;
}

std::vector<SpokenVerb> verbsOf(const CLI::App& app) {
    std::vector<SpokenVerb> verbs;
    for (const CLI::App* sub : app.get_subcommands([](const CLI::App*) { return true; })) {
        SpokenVerb verb{
            sub->get_name(), sub->get_description(), sub->get_footer(), optionsOf(*sub), {}};
        for (const CLI::Option* option : sub->get_options()) {
            if (option->get_lnames().empty() && option->get_snames().empty()) {
                const std::string place = option->get_name(true, false);
                verb.places.push_back(
                    {place, option->get_description(), wordsFor(verb.name, place)});
            }
        }
        verbs.push_back(std::move(verb));
    }
    return verbs;
}

std::string spaced(const std::vector<SpokenOption>& options, bool valuesAlone = false,
                   const char* between = " ") {
    std::string text;
    for (const auto& option : options) {
        if (option.takesValue || !valuesAlone) {
            text += (text.empty() ? "" : between) + option.name;
        }
    }
    return text;
}

std::string bashScript(const CLI::App& app) {
    const auto verbs = verbsOf(app);
    const auto globals = optionsOf(app);
    std::string names;
    std::string cases;
    for (const auto& verb : verbs) {
        names += (names.empty() ? "" : " ") + verb.name;
        std::string places;
        for (std::size_t k = 0; k < verb.places.size(); ++k) {
            if (!verb.places[k].words.empty()) {
                places += " " + std::to_string(k) + ") words=\"" + verb.places[k].words + "\" ;;";
            }
        }
        cases += "        " + verb.name + ")\n            options+=\" " + spaced(verb.options) +
                 "\"\n" + (places.empty() ? "" : "            case $at in" + places + " esac\n") +
                 "            ;;\n";
    }
    return "# Completion of ledgerboard for bash, made by 'ledgerboard completion bash'.\n"
           "_ledgerboard() {\n"
           "    local current=${COMP_WORDS[COMP_CWORD]} verb='' at=0 words='' word k\n"
           "    local options='" +
           spaced(globals) +
           "'\n"
           "    for ((k = 1; k < COMP_CWORD; ++k)); do\n"
           "        word=${COMP_WORDS[k]}\n"
           "        case $word in\n"
           "        " +
           spaced(globals, true, "|") +
           ") ((++k)) ;;\n"
           "        -*) ;;\n"
           "        *) if [[ -z $verb ]]; then verb=$word; else ((++at)); fi ;;\n"
           "        esac\n"
           "    done\n"
           "    case $verb in\n"
           "        '') words='" +
           names + "' ;;\n" + cases +
           "    esac\n"
           "    if [[ $current == -* ]]; then words=$options; fi\n"
           "    COMPREPLY=($(compgen -W \"$words\" -- \"$current\"))\n"
           "}\n"
           "complete -o default -F _ledgerboard ledgerboard\n";
}

// `text` within single quotes of zsh or fish; also without what _arguments takes for its own.
std::string quoted(const std::string& text, bool forArguments = false) {
    std::string out = "'";
    for (const char c : text) {
        if (c == '\'') {
            out += "'\\''";
        } else if (c == '\n') {
            out += ' ';
        } else if (forArguments && (c == '[' || c == ']' || c == ':' || c == '\\')) {
            out += c == '[' ? "(" : c == ']' ? ")" : c == ':' ? "," : "/";
        } else {
            out += c;
        }
    }
    return out + "'";
}

std::string zshOptions(const std::vector<SpokenOption>& options) {
    std::string text;
    for (const auto& option : options) {
        text += " \\\n            " + quoted(option.name + "[" + option.says + "]" +
                                             (option.takesValue ? ":value:_files" : ""));
    }
    return text;
}

// Descriptions stand in brackets and between colons there.
std::vector<SpokenOption> forZsh(std::vector<SpokenOption> options) {
    for (auto& option : options) {
        std::string plain = quoted(option.says, true);
        option.says = plain.substr(1, plain.size() - 2);
        for (std::size_t at = 0; (at = option.says.find("'\\''", at)) != std::string::npos;) {
            option.says.replace(at, 4, "’");
        }
    }
    return options;
}

std::string zshScript(const CLI::App& app) {
    std::string names;
    std::string cases;
    for (const auto& verb : verbsOf(app)) {
        names += "        " + quoted(verb.name + ":" + verb.says) + "\n";
        cases += "        " + verb.name + ")\n            _arguments";
        for (std::size_t k = 0; k < verb.places.size(); ++k) {
            const auto& place = verb.places[k];
            cases += " \\\n            " +
                     quoted(std::to_string(k + 1) + ":" + place.name + ":" +
                            (place.words.empty() ? "_files" : "(" + place.words + ")"));
        }
        cases += zshOptions(forZsh(verb.options)) + "\n            ;;\n";
    }
    return "#compdef ledgerboard\n"
           "# Completion of ledgerboard for zsh, made by 'ledgerboard completion zsh'.\n"
           "_ledgerboard() {\n"
           "    local state\n"
           "    local -a verbs\n"
           "    verbs=(\n" +
           names +
           "    )\n"
           "    _arguments -C" +
           zshOptions(forZsh(optionsOf(app))) +
           " \\\n            '1:verb:->verb' '*::rest:->rest'\n"
           "    case $state in\n"
           "    verb) _describe verb verbs ;;\n"
           "    rest)\n"
           "        case $words[1] in\n" +
           cases +
           "        esac\n"
           "        ;;\n"
           "    esac\n"
           "}\n"
           "_ledgerboard \"$@\"\n";
}

std::string fishOptions(const std::vector<SpokenOption>& options, const std::string& when) {
    std::string text;
    for (const auto& option : options) {
        text += "complete -c ledgerboard" + when + " -l " + option.name.substr(2) +
                (option.takesValue ? " -r" : "") + " -d " + quoted(option.says) + "\n";
    }
    return text;
}

std::string fishScript(const CLI::App& app) {
    std::string text =
        "# Completion of ledgerboard for fish, made by 'ledgerboard completion fish'.\n" +
        fishOptions(optionsOf(app), "");
    for (const auto& verb : verbsOf(app)) {
        const std::string when = " -n '__fish_seen_subcommand_from " + verb.name + "'";
        text += "complete -c ledgerboard -n __fish_use_subcommand -a " + verb.name + " -d " +
                quoted(verb.says) + "\n";
        for (const auto& place : verb.places) {
            if (!place.words.empty()) {
                text += "complete -c ledgerboard" + when + " -a " + quoted(place.words) + "\n";
            }
        }
        text += fishOptions(verb.options, when);
    }
    return text;
}

// Text of a manual page: a dash is a dash, and no line begins with a dot or an apostrophe.
std::string roff(const std::string& text) {
    std::string out;
    for (const char c : text) {
        if (c == '-') {
            out += "\\-";
        } else if (c == '\\') {
            out += "\\e";
        } else if ((c == '.' || c == '\'') && (out.empty() || out.back() == '\n')) {
            out += std::string("\\&") + c;
        } else {
            out += c;
        }
    }
    return out;
}

std::string roffOptions(const std::vector<SpokenOption>& options) {
    std::string text;
    for (const auto& option : options) {
        text += ".TP\n.B " + roff(option.name) + "\n" + roff(option.says) + "\n";
    }
    return text;
}

}  // namespace

model::Result<std::string> completionFor(const CLI::App& app, const std::string& shell) {
    if (shell == "bash") {
        return bashScript(app);
    }
    if (shell == "zsh") {
        return zshScript(app);
    }
    if (shell == "fish") {
        return fishScript(app);
    }
    return model::wrongUse("SHELL: \"" + shell + "\" is none of bash, zsh and fish");
}

std::string manualPage(const CLI::App& app) {
    std::string text =
        ".TH LEDGERBOARD 1 \"\" \"Ledgerboard\" \"User commands\"\n.SH NAME\n"
        "ledgerboard \\- the numbers of a house under renovation\n.SH SYNOPSIS\n"
        ".B ledgerboard\n.RI [ options ] \" verb \" [ arguments ]\n"
        ".SH DESCRIPTION\n" +
        roff(app.get_description()) + "\n.SH OPTIONS\n" + roffOptions(optionsOf(app)) +
        ".SH VERBS\n";
    for (const auto& verb : verbsOf(app)) {
        text += ".SS " + verb.name;
        for (const auto& place : verb.places) {
            text += " " + place.name;
        }
        text += "\n" + roff(verb.says) + ".\n";
        for (const auto& place : verb.places) {
            text += ".TP\n.I " + place.name + "\n" + roff(place.says) + "\n";
        }
        text += roffOptions(verb.options) + ".PP\n.nf\n" + roff(verb.example) + "\n.fi\n";
    }
    return text +
           ".SH FILES\n.TP\n.I ledgerboard.book\nThe book, in the folder it is run in, unless "
           "\\fB\\-\\-book\\fR or \\fBLEDGERBOARD_BOOK\\fR names another.\n.SH EXIT STATUS\n"
           "0 done; 1 can't be done as things are; 2 wrong use; 3 the book is damaged or can't be "
           "written.\n";
}

}  // namespace ledgerboard::cli
