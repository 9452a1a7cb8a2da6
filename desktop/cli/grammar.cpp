#include "desktop/cli/grammar.h"

#include <CLI/CLI.hpp>

#include "core/intake/files/bring_kinds.h"

#include "desktop/cli/command_words.h"

namespace ledgerboard::cli {

namespace {

constexpr const char* kAbout =
    "Ledgerboard: the numbers of a house under renovation, from walk notes to the sale.";

constexpr const char* kBegin =
    "To begin:\n"
    "  ledgerboard start \"14 Quince Row\" --built 1936 --budget 105000\n"
    "  ledgerboard read walk-notes.txt --keep\n"
    "  ledgerboard list scope\n"
    "  ledgerboard week\n"
    "'ledgerboard VERB --help' tells more of each, with an example.";

std::string kindList() {
    std::string list;
    for (const auto& info : model::kinds()) {
        list += (list.empty() ? "" : ", ") + std::string(info.title);
    }
    return list;
}

CLI::App* addVerb(CLI::App& app, Spoken& spoken, const char* name, const char* says,
                  const std::string& example, std::function<Done(Session&)> verb) {
    CLI::App* sub = app.add_subcommand(name, says);
    sub->group("Verbs");
    sub->fallthrough();
    sub->footer("Example:\n  " + example);
    sub->callback([&spoken, verb = std::move(verb)] { spoken.verb = verb; });
    return sub;
}

void addBeginning(CLI::App& app, Spoken& s) {
    CLI::App* start = addVerb(app, s, "start", "A new job; makes the book where there is none",
                              "ledgerboard start \"14 Quince Row\" --built 1936 --budget 105000",
                              [&s](Session& session) { return verbStart(session, s.start); });
    start->add_option("NAME", s.start.name, "What you call the house")->required();
    start->add_option("--built", s.start.built, "Year it was built");
    start->add_option("--area", s.start.area, "Living area in sq ft");
    start->add_option("--purchase", s.start.purchase, "What it cost");
    start->add_option("--resale", s.start.resale, "What it will likely sell for");
    start->add_option("--budget", s.start.budget, "Your ceiling for the work");
    start->add_option("--begin", s.start.begin, "Day work begins, such as 2026-04-06");
    start->add_option("--finish", s.start.finish, "Day it is to be finished");
    start->add_option("--owner", s.start.owner, "Your name, for a new book");

    CLI::App* read = addVerb(app, s, "read", "Walk notes to a draft scope of work",
                             "ledgerboard read walk-notes.txt --keep",
                             [&s](Session& session) { return verbRead(session, s.read); });
    read->add_option("FILE", s.read.file, "Plain text; - for standard input")->required();
    read->add_flag("--keep", s.read.keep, "Put the draft into the job");
    read->add_flag("--explain", s.read.explain, "What each stage made of each sentence");
    read->add_flag("--unsure", s.read.unsure, "Also what is too unsure to be made an item");

    std::string kinds;
    for (const auto& kind : intake::bringKinds()) {
        kinds += (kinds.empty() ? "" : ", ") + std::string(kind.word);
    }
    CLI::App* bring = addVerb(app, s, "bring", "Rows from a CSV file, a bank's download, photos",
                              "ledgerboard bring spend april.csv --match \"Paid to=Payee\" --try\n"
                              "  ledgerboard bring spend april.ofx\n"
                              "  ledgerboard bring photos site-visit-may-8",
                              [&s](Session& session) { return verbBring(session, s.bring); });
    bring->add_option("KIND", s.bring.kind, "One of: " + kinds + ", photos, job")->required();
    bring
        ->add_option(
            "FILE", s.bring.file,
            "CSV with a row of headings; for job a zip that 'give job zip' made; for spend also a "
            "bank's download (OFX, QFX); for photos a "
            "JPEG or HEIC picture or a folder of them, if "
            "need be with a photos.csv that lists them (File, Space, Item, Stage, Taken at, Spot, "
            "Caption, For the lender)")
        ->required();
    bring->add_option("--match", s.bring.match,
                      "Where headings differ: theirs=ours,... ('-' leaves a column out)");
    bring->add_flag("--try", s.bring.tryOnly, "Show what would come in; write nothing");

    CLI::App* bank =
        addVerb(app, s, "bank", "What lines of the bank wait for a decision; or say what one is",
                "ledgerboard bank\n  ledgerboard bank 3f9a --for kitchen/cabinets\n"
                "  ledgerboard bank 3f9a --not-ours",
                [&s](Session& session) { return verbBank(session, s.bank); });
    bank->add_option("LINE", s.bank.line, "Its id as 'bank' lists it, or the bank's own");
    bank->add_flag("--yes", s.bank.yes, "The guess is right");
    bank->add_option("--for", s.bank.target,
                     "What it is for: an item, a contract, a crew, an invoice it pays, a row of "
                     "spend it is the payment of, a draw; or 'job'");
    bank->add_flag("--not-ours", s.bank.notOurs, "It has nothing to do with the house");
    bank->add_flag("--once", s.bank.once, "Only this line: make no rule of it");
}

void addEditing(CLI::App& app, Spoken& s) {
    const char* recordHelp =
        "SPACE/OBJECT, a name, 'job', or four or more digits from either end of an id";
    CLI::App* set = addVerb(app, s, "set", "Give one field of one record a value",
                            "ledgerboard set kitchen/cabinets \"Lead days\" 35",
                            [&s](Session& session) { return verbSet(session, s.set); });
    set->add_option("RECORD", s.set.record, recordHelp)->required();
    set->add_option("FIELD", s.set.field, "Its heading, such as \"Lump sum\"")->required();
    set->add_option("VALUE", s.set.value, "\"\" clears it")->required();

    CLI::App* add =
        addVerb(app, s, "add", "A new record", "ledgerboard add crew Name=\"Tile crew\" Trade=tile",
                [&s](Session& session) { return verbAdd(session, s.add); });
    add->add_option("KIND", s.add.kind, "One of: " + kindList())->required();
    add->add_option("FIELD=VALUE", s.add.fields, "As many as are known")->required();

    CLI::App* drop = addVerb(app, s, "drop", "A record no longer counts; it stays in history",
                             "ledgerboard drop kitchen/pantry",
                             [&s](Session& session) { return verbDrop(session, s.record); });
    drop->add_option("RECORD", s.record, recordHelp)->required();

    CLI::App* settle = addVerb(app, s, "settle", "Say which value is right where two devices clash",
                               "ledgerboard settle kitchen/cabinets Quantity 12",
                               [&s](Session& session) { return verbSettle(session, s.set); });
    settle->add_option("RECORD", s.set.record, recordHelp)->required();
    settle->add_option("FIELD", s.set.field, "Its heading, as 'clashes' lists it")->required();
    settle->add_option("VALUE", s.set.value, "The right one, of those or another")->required();

    addVerb(app, s, "undo", "Take back the last thing done", "ledgerboard undo",
            [](Session& session) { return verbUndo(session); });
    addVerb(app, s, "redo", "Do again what was taken back", "ledgerboard redo",
            [](Session& session) { return verbRedo(session); });
}

void addLooking(CLI::App& app, Spoken& s) {
    CLI::App* list =
        addVerb(app, s, "list", "The rows of a kind", "ledgerboard list scope --as-of 2026-05-08",
                [&s](Session& session) { return verbList(session, s.list); });
    list->add_option("KIND", s.list.kind, "One of: " + kindList() + "; or scope, spend, punch, ...")
        ->required();
    list->add_flag("--csv", s.list.csv, "As CSV, every field");
    list->add_flag("--all", s.list.all, "Every field in the table");

    addVerb(app, s, "clashes", "What two devices changed without knowing of each other",
            "ledgerboard clashes", [](Session& session) { return verbClashes(session); });
    addVerb(app, s, "aside", "What devices sent that is not theirs to write", "ledgerboard aside",
            [](Session& session) { return verbAside(session); });

    CLI::App* history = addVerb(app, s, "history", "Who changed what, when, on which device",
                                "ledgerboard history kitchen/cabinets",
                                [&s](Session& session) { return verbHistory(session, s.record); });
    history->add_option("RECORD", s.record, "As for set")->required();

    CLI::App* week =
        addVerb(app, s, "week", "The weekly review", "ledgerboard week --as-of 2026-05-15 --keep",
                [&s](Session& session) { return verbWeek(session, s.week); });
    week->add_flag("--keep", s.week.keep, "Keep it, for the next review to stand beside");

    CLI::App* cautions =
        addVerb(app, s, "cautions", "Hazards and duties by item, with their sources",
                "ledgerboard cautions kitchen/range",
                [&s](Session& session) { return verbCautions(session, s.record); });
    cautions->add_option("ITEM", s.record, "Of this item alone; of all where not said");

    CLI::App* choose = addVerb(
        app, s, "choose", "Open alternates compared, the best set of options; or decide one",
        "ledgerboard choose --cash 12000 --finish 2026-05-29 --chance 80\n"
        "  ledgerboard choose \"second bath\" \"half bath\" --why \"buyers ask for it\"",
        [&s](Session& session) { return verbChoose(session, s.choose); });
    choose->add_option("ALTERNATE", s.choose.alternate, "To decide it: its question, or its id");
    choose->add_option("OPTION", s.choose.option, "Its number in the table, or words of its name");
    choose->add_option("--why", s.choose.why, "Why it was decided so; kept beside the decision");
    choose->add_option("--cash", s.choose.cash, "Most that the options together may cost");
    choose->add_option("--finish", s.choose.finish, "Day the work must be finished by");
    choose->add_option("--chance", s.choose.chance,
                       "Also the set that earns most with this chance, such as 80");

    addVerb(app, s, "deal", "Profit, margin, return on cash, break-even resale, what a day costs",
            "ledgerboard deal --as-of 2026-05-15",
            [](Session& session) { return verbDeal(session); });
    addVerb(app, s, "cash", "The day-by-day cash line: lowest day, bills ahead, when to ask",
            "ledgerboard cash --as-of 2026-05-15",
            [](Session& session) { return verbCash(session); });
    CLI::App* draw = addVerb(app, s, "draw", "What can be requested from the lender now",
                             "ledgerboard draw\n  ledgerboard draw --ask --at 2026-05-20",
                             [&s](Session& session) { return verbDraw(session, s.draw); });
    draw->add_flag("--ask", s.draw.ask, "Record that it is asked for, line by line");
    draw->add_option("--at", s.draw.at, "Day it is asked for; today where not said");

    CLI::App* plan =
        addVerb(app, s, "plan", "When each item is on site, its float, what to order by when",
                "ledgerboard plan --as-of 2026-05-15\n  ledgerboard plan --link\n  ledgerboard "
                "plan --keep\n  ledgerboard plan --crews --keep",
                [&s](Session& session) { return verbPlan(session, s.plan); });
    plan->add_flag("--keep", s.plan.keep,
                   "Write these dates as the planned start and finish of unfinished items");
    plan->add_flag("--link", s.plan.link,
                   "Link items that have no links yet in the usual order of the trades");
    plan->add_flag("--crews", s.plan.crews.isWanted,
                   "The plan in which no crew is in more places at once than it can be");
    plan->add_option("--tries", s.plan.crews.tries,
                     "With --crews: plans to make, 5000 unless said");
    plan->add_option("--seconds", s.plan.crews.seconds, "With --crews: how long to look instead");
    plan->add_option("--seed", s.plan.crews.seed,
                     "With --crews: another one may find another plan; 1 unless said");

    CLI::App* risk =
        addVerb(app, s, "risk", "How sure cost, finish and earnings are, and what drives them",
                "ledgerboard risk --as-of 2026-05-15 --trials 20000",
                [&s](Session& session) { return verbRisk(session, s.risk); });
    risk->add_option("--trials", s.risk.trials, "1 to 1000000; 10000 where not said");
    risk->add_option("--seed", s.risk.seed, "A whole number: one seed, one result; 1 if not said");

    CLI::App* give =
        addVerb(app, s, "give", "A page or a list as a file",
                "ledgerboard give week pdf week.pdf\n  ledgerboard give scope xlsx scope.xlsx\n  "
                "ledgerboard give schedule ics tile.ics --crew \"Tile crew\"\n  "
                "ledgerboard give job zip quince-row.zip",
                [&s](Session& session) { return verbGive(session, s.give); });
    give->add_option("WHAT", s.give.what,
                     "week, schedule, draw, bids (scope without prices), punch, change and waiver "
                     "(blank forms), job, or a kind such as scope")
        ->required();
    give->add_option("FORMAT", s.give.format, "csv, json, xlsx, html, pdf, ics or zip, as fits")
        ->required();
    give->add_option("FILE", s.give.file, "Where to write it")->required();
    give->add_option("--crew", s.give.crew,
                     "With schedule, bids and punch: only what this crew is to know");
    give->add_option("--paper", s.give.paper, "With pdf: letter (if not said) or a4");
}

void addClosing(CLI::App& app, Spoken& s) {
    CLI::App* punch = addVerb(app, s, "punch", "What is left to put right, by space and by crew",
                              "ledgerboard punch --crew \"Tile crew\"",
                              [&s](Session& session) { return verbPunch(session, s.crew); });
    punch->add_option("--crew", s.crew, "Of this crew alone");

    addVerb(app, s, "close", "What still stands between this job and finished",
            "ledgerboard close --as-of 2026-05-29",
            [](Session& session) { return verbClose(session); });

    CLI::App* taught =
        addVerb(app, s, "taught", "What finished work says about the price book and the crews",
                "ledgerboard taught --keep",
                [&s](Session& session) { return verbTaught(session, s.keepTaught); });
    taught->add_flag("--keep", s.keepTaught, "Write the corrections into the price book");
}

void addDoing(CLI::App& app, Spoken& s) {
    CLI::App* mark = addVerb(app, s, "mark", "How far an item is",
                             "ledgerboard mark kitchen/cabinets 50 --at 2026-05-08",
                             [&s](Session& session) { return verbMark(session, s.mark); });
    mark->add_option("ITEM", s.mark.item, "SPACE/OBJECT, or part of its id")->required();
    mark->add_option("PERCENT", s.mark.percent, "0 to 100");
    mark->add_option("--count", s.mark.count, "Units done in all, where it is counted");
    mark->add_option("--step", s.mark.steps, "A step done, where it has steps; may be repeated");
    mark->add_option("--at", s.mark.at, "Day it was seen; today where not said");
    mark->add_option("--note", s.mark.note, "What was seen");

    CLI::App* acknowledge = addVerb(
        app, s, "acknowledge", "That a caution has been taken note of, or tested",
        "ledgerboard acknowledge \"kitchen/vinyl floor\" asbestos --result \"none found, "
        "three samples\"\n  ledgerboard acknowledge \"lead paint\" --all --result \"treated "
        "as lead; certified firm\"",
        [&s](Session& session) { return verbAcknowledge(session, s.acknowledge); });
    acknowledge
        ->add_option("CAUTION", s.acknowledge.caution,
                     "SPACE/OBJECT, 'house', or the end of a caution's id; with --all what it is "
                     "about")
        ->required();
    acknowledge->add_option("ABOUT", s.acknowledge.about,
                            "Which of its cautions, such as gas; needed where it has several");
    acknowledge->add_option("--result", s.acknowledge.result, "What a test or survey found");
    acknowledge->add_option("--at", s.acknowledge.at, "Its day; today where not said");
    acknowledge->add_flag("--all", s.acknowledge.all, "On every item where it is open");

    CLI::App* baseline = addVerb(
        app, s, "baseline", "Freeze today's budget and plan as what progress is measured against",
        "ledgerboard baseline --on 2026-04-06",
        [&s](Session& session) { return verbBaseline(session, s.baseline); });
    baseline->add_option("--on", s.baseline.on, "Its day; today where not said");
}

void addKeeping(CLI::App& app, Spoken& s) {
    CLI::App* verify = addVerb(
        app, s, "verify", "Read the whole book and its photos and check that all holds",
        "ledgerboard verify", [&s](Session& session) { return verbVerify(session, s.mend); });
    verify->add_flag("--mend", s.mend, "Repair what can be rebuilt from the log");

    CLI::App* backup =
        addVerb(app, s, "backup", "A copy of the whole book and its photos, made while in use",
                "ledgerboard backup quince-row-may.book",
                [&s](Session& session) { return verbBackup(session, s.file); });
    backup
        ->add_option("FILE", s.file, "Where to; nothing may be there yet. Photos go to FILE.photos")
        ->required();

    CLI::App* restore = addVerb(app, s, "restore", "A backup back into use, checked first",
                                "ledgerboard restore quince-row-may.book --replace",
                                [&s](Session& session) { return verbRestore(session, s.restore); });
    restore->add_option("FILE", s.restore.file, "The backup")->required();
    restore->add_flag("--replace", s.restore.replace, "Set the book that is there aside");

    CLI::App* work = addVerb(app, s, "work", "The arithmetic alone: JSON in, JSON out, no book",
                             "echo '{\"bac\":4000,\"pv\":3000,\"ev\":2500,\"ac\":2800}' | "
                             "ledgerboard work earned-value",
                             [&s](Session& session) { return verbWork(session, s.name); });
    work->add_option("NAME", s.name, "What to work out");
}

void addMeeting(CLI::App& app, Spoken& s) {
    CLI::App* invite = addVerb(
        app, s, "invite", "Let another device in: prints a code and a picture to join by",
        "ledgerboard invite owner\n  ledgerboard invite crew-lead \"Tile crew\" --name Robin\n"
        "  ledgerboard invite viewer \"14 Quince Row\" --name \"the lender's inspector\"",
        [&s](Session& session) { return verbInvite(session, s.invite); });
    invite->add_option("ROLE", s.invite.role, "owner, crew-lead or viewer")->required();
    invite->add_option("WHOM", s.invite.whom, "Of a crew-lead the crew, of a viewer the job");
    invite->add_option("--name", s.invite.name,
                       "Whose device it will be; of an owner you yourself where not said");

    CLI::App* join =
        addVerb(app, s, "join", "Take an invitation, and meet the peer for the first time",
                "ledgerboard --book phone.book join 192.0.2.7:7440 "
                "7K3Q0-12345-6789A-BCDEF-GHJKS --called \"Robin's phone\"",
                [&s](Session& session) { return verbJoin(session, s.join); });
    join->add_option("ADDRESS", s.join.address,
                     "Where the peer is, as the invitation says; or all that its picture says")
        ->required();
    join->add_option("CODE", s.join.code, "25 characters; case, spaces and hyphens do not matter");
    join->add_option("--called", s.join.called, "What this device is called");
    join->add_flag("--again", s.join.again, "Another peer, or one set up anew, in place of this");

    CLI::App* sync =
        addVerb(app, s, "sync", "Meet the peer once: changes, then photos, both ways",
                "ledgerboard sync", [&s](Session& session) { return verbSync(session, s.sync); });
    sync->add_option("--address", s.sync.address,
                     "Where the peer is from now on, if it moved: HOST:PORT");
    sync->add_flag("--no-photos", s.sync.noPhotos, "Changes alone; photos wait for the next time");

    addVerb(app, s, "devices", "Who has a device, and when it was last heard of",
            "ledgerboard devices", [](Session& session) { return verbDevices(session); });
    CLI::App* revoke = addVerb(
        app, s, "revoke", "Shut a device out, as when it was lost: its copy is wiped when it calls",
        "ledgerboard revoke \"Robin's phone\"",
        [&s](Session& session) { return verbRevoke(session, s.device); });
    revoke->add_option("DEVICE", s.device, "Its name, or four or more digits of its id")
        ->required();
}

void addGlobals(CLI::App& app, Globals& globals) {
    app.add_option("--book", globals.book, "The book's file (also $LEDGERBOARD_BOOK)");
    app.add_option("--job", globals.job, "Which job, where the book has several");
    app.add_option("--as-of", globals.asOf, "Rows dated on or before this day, as known now");
    app.add_option("--known-at", globals.knownAt, "What the book knew at this instant");
    app.add_flag("--json", globals.json, "One JSON document on standard output");
}

// What makes the command line easier to type and to look up; they need no book.
void addShell(CLI::App& app, Spoken& s) {
    CLI::App* completion =
        addVerb(app, s, "completion", "What a shell needs to complete verbs and options",
                "ledgerboard completion bash > /etc/bash_completion.d/ledgerboard",
                [&app, &s](Session& session) -> Done {
                    auto script = completionFor(app, s.name);
                    if (!script.ok()) {
                        return script.error();
                    }
                    session.print(script.value());
                    return {};
                });
    completion->add_option("SHELL", s.name, "bash, zsh or fish")->required();
    addVerb(app, s, "manual-page", "This help as a page for man",
            "ledgerboard manual-page > ledgerboard.1", [&app](Session& session) -> Done {
                session.print(manualPage(app));
                return {};
            });
}

// A switch is said or not: "--keep=3" is a slip.
void refuseValuesOfSwitches(CLI::App& app) {
    const auto refuse = [](CLI::App& one) {
        for (CLI::Option* option : one.get_options()) {
            if (option->get_expected_max() == 0) {
                option->disable_flag_override();
            }
        }
    };
    refuse(app);
    for (CLI::App* sub : app.get_subcommands([](const CLI::App*) { return true; })) {
        refuse(*sub);
    }
}

}  // namespace

void addGrammar(CLI::App& app, Spoken& spoken) {
    app.description(kAbout);
    app.footer(kBegin);
    app.require_subcommand(1);
    app.get_formatter()->label("SUBCOMMAND", "VERB");
    app.set_help_flag("-h,--help", "Print this and leave");
    app.set_version_flag("--version", "ledgerboard " LEDGERBOARD_VERSION,
                         "Print which version this is and leave");
    addGlobals(app, spoken.globals);
    addBeginning(app, spoken);
    addDoing(app, spoken);
    addLooking(app, spoken);
    addClosing(app, spoken);
    addEditing(app, spoken);
    addKeeping(app, spoken);
    addMeeting(app, spoken);
    addShell(app, spoken);
    refuseValuesOfSwitches(app);
}

}  // namespace ledgerboard::cli
