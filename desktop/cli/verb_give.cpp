// give: a page or a list as a file for somebody else's program.
#include <nlohmann/json.hpp>

#include "core/compute/schedule_days.h"
#include "core/give/job_file.h"
#include "core/give/page_sheets.h"
#include "core/give/record_sheet.h"
#include "core/give/schedule_ics.h"
#include "core/report/forms_html.h"
#include "core/report/week_html.h"
#include "core/report/week_json.h"
#include "core/report/week_page.h"

#include "desktop/cli/give_pdf.h"
#include "desktop/cli/listing.h"
#include "desktop/cli/money_view.h"
#include "desktop/cli/verbs.h"
#include "desktop/cli/week_pictures.h"

namespace ledgerboard::cli {

namespace {

using model::Result;

Result<std::string> weekBytes(Session& session, const std::string& format) {
    auto job = session.jobOnDay();
    if (!job.ok()) {
        return job.error();
    }
    const model::JobRows& rows = job.value().rows;
    const model::Date today = job.value().today;
    return model::guarded([&]() -> Result<std::string> {
        if (format != "html" && format != "json" && format != "xlsx") {
            return model::wrongUse("FORMAT: week is given as html, json, pdf or xlsx");
        }
        const report::WeekPage page = report::weekPage(
            rows, today,
            report::weekPictures(rows, today, pictureSource(session, rows.job.timeZone)));
        if (format == "html") {
            return report::weekHtml(page);
        }
        if (format == "xlsx") {
            return give::workbookBytes(give::weekSheets(page));
        }
        return report::weekJson(page);
    });
}

Result<std::string> jobJson(Session& session) {
    nlohmann::json document;
    for (const auto& info : model::kinds()) {
        auto listing = listingOf(session, std::string(info.name));
        if (!listing.ok()) {
            return listing.error();
        }
        if (!listing.value().records.empty()) {
            document.update(listingJson(listing.value()));
        }
    }
    return document.dump(2, ' ', false, nlohmann::json::error_handler_t::replace) + "\n";
}

}  // namespace

Result<model::Id<model::Kind::Crew>> crewToGive(Session& session, const std::string& name) {
    if (name.empty()) {
        return model::Id<model::Kind::Crew>();
    }
    auto finder = session.finder();
    if (!finder.ok()) {
        return finder.error();
    }
    auto found = finder.value()->find(model::Kind::Crew, name);
    if (!found.ok()) {
        return model::Error{found.error().code, "--crew: " + found.error().message};
    }
    return model::Id<model::Kind::Crew>(found.value());
}

namespace {

// A paper for others: "bids", "punch", "change" or "waiver".
Result<std::string> paperBytes(Session& session, const std::string& what,
                               const std::string& crewName) {
    auto job = session.jobOnDay();
    auto crew = crewToGive(session, crewName);
    if (!job.ok() || !crew.ok()) {
        return job.ok() ? crew.error() : job.error();
    }
    const auto& [rows, today] = job.value();
    return model::guarded([&, &rows = rows, &today = today]() -> Result<std::string> {
        if (what == "bids") {
            return report::bidsHtml(rows, compute::figuresOf(rows, today), crew.value(), today);
        }
        if (what == "punch") {
            return report::punchHtml(rows, compute::punchListOf(rows, today), crew.value(), today);
        }
        return what == "change" ? report::changeFormHtml(rows) : report::waiverFormHtml(rows);
    });
}

Result<std::string> scheduleBytes(Session& session, const std::string& crewName) {
    auto job = session.jobOnDay();
    if (!job.ok()) {
        return job.error();
    }
    const model::JobRows& rows = job.value().rows;
    auto found = crewToGive(session, crewName);
    if (!found.ok()) {
        return found.error();
    }
    const auto crew = found.value();
    give::CalendarName called{rows.job.id.raw().toString(), rows.job.name, rows.job.name};
    if (!crew.isNil()) {
        called.id += "-" + crew.raw().toString();
        called.name += ", " + session.finder().value()->nameOf(crew.raw());
    }
    return model::guarded([&]() -> Result<std::string> {
        const auto figures = compute::figuresOf(rows, job.value().today);
        const auto plan = compute::planOf(rows, figures, job.value().today);
        const auto schedule = compute::scheduleDaysOf(rows, figures, plan, crew);
        if (schedule.days.empty()) {
            return model::cannotBeMet(
                "there is nothing with a day to put into a calendar: 'ledgerboard plan' says what "
                "is missing");
        }
        return give::scheduleIcs(schedule, called, session.now());
    });
}

Result<std::string> drawBytes(Session& session) {
    return model::guarded([&]() -> Result<std::string> {
        auto view = moneyView(session);
        if (!view.ok()) {
            return view.error();
        }
        const auto& now = view.value().plan.drawsNow;
        if (now.lines.empty()) {
            return model::cannotBeMet(
                "there is no loan for the work to draw on: 'ledgerboard draw' says how to enter "
                "it");
        }
        return give::workbookBytes(
            give::drawSheets(now, view.value().rows.job.name, view.value().today));
    });
}

Result<std::string> kindBytes(Session& session, const GiveOptions& options) {
    if (!model::kindNamed(options.what)) {
        return model::wrongUse("WHAT: \"" + options.what +
                               "\" is neither week, schedule, draw, bids, punch, change, waiver, "
                               "job nor a kind such as scope or spend");
    }
    if (options.format != "csv" && options.format != "json" && options.format != "xlsx") {
        const std::string what = model::folded(options.what);
        const std::string more = what == "punch" || what == "change" ? ", html, pdf"
                                 : isGivenAsPdf(what)                ? ", pdf"
                                                                     : "";
        return model::wrongUse("FORMAT: " + options.what + " is given as csv, json" + more +
                               " or xlsx");
    }
    return model::guarded([&]() -> Result<std::string> {
        auto read = listingOf(session, options.what);
        if (!read.ok()) {
            return read.error();
        }
        const Listing& listing = read.value();
        if (options.format == "csv") {
            return report::printCsv(listingTable(listing));
        }
        if (options.format == "xlsx") {
            return give::workbookBytes({give::recordSheet(
                listing.kind, listing.records, listing.lines, listing.name, listing.job)});
        }
        return listingJson(listing).dump(2, ' ', false, nlohmann::json::error_handler_t::replace) +
               "\n";
    });
}

// The one format of a page, refused where another was asked for; `formats` names all it has.
Result<void> needFormat(const GiveOptions& options, std::string_view format,
                        std::string_view formats) {
    if (options.format != format) {
        return model::wrongUse("FORMAT: " + options.what + " is given as " + std::string(formats));
    }
    return {};
}

// --crew and --paper, where they go with what is given.
Result<void> checkOptions(const GiveOptions& options, const std::string& what) {
    const bool isPage = options.format == "html" || options.format == "pdf";
    const bool forCrew = what == "schedule" || what == "bids" || (what == "punch" && isPage);
    if (!options.crew.empty() && !forCrew) {
        return model::wrongUse("--crew goes with schedule, and with bids and punch as html or pdf");
    }
    if (!options.paper.empty() && options.format != "pdf") {
        return model::wrongUse("--paper goes with pdf");
    }
    return {};
}

Result<std::string> bytesFor(Session& session, const GiveOptions& options) {
    const std::string what = model::folded(options.what);
    if (auto good = checkOptions(options, what); !good.ok()) {
        return good.error();
    }
    if (options.format == "pdf" && isGivenAsPdf(what)) {
        return pdfToGive(session, what, options);
    }
    if (what == "week") {
        return weekBytes(session, options.format);
    }
    if (what == "schedule") {
        auto good = needFormat(options, "ics", "ics");
        return good.ok() ? scheduleBytes(session, options.crew) : Result<std::string>(good.error());
    }
    if (what == "bids" || what == "waiver" || (what == "change" && options.format == "html")) {
        auto good = needFormat(options, "html", "html or pdf");
        return good.ok() ? paperBytes(session, what, options.crew)
                         : Result<std::string>(good.error());
    }
    if (what == "punch" && options.format == "html") {
        return paperBytes(session, what, options.crew);
    }
    // The draws asked for so far are a kind and come as csv and json.
    if (what == "draw" && options.format == "xlsx") {
        return drawBytes(session);
    }
    if (what == "job" && options.format == "json") {
        return jobJson(session);
    }
    return kindBytes(session, options);
}

// A whole job with its photos, which is written as it is made.
Done giveJob(Session& session, const std::string& path) {
    auto job = session.job();
    if (!job.ok()) {
        return job.error();
    }
    if (!session.globals().asOf.empty()) {
        return model::wrongUse("--as-of: a whole job is given as it is; --known-at goes with it");
    }
    if (auto good = refuseBook(path); !good.ok()) {
        return good.error();
    }
    auto book = session.bookToRead();
    if (!book.ok()) {
        return book.error();
    }
    auto given = give::giveJobFile(*book.value(), job.value(), path, session.now());
    if (!given.ok()) {
        return given.error();
    }
    const auto& done = given.value();
    if (session.json()) {
        session.printJson({{"file", path},
                           {"records", done.records},
                           {"photos", done.photos},
                           {"missing", done.missing}});
        return {};
    }
    for (const auto& sentence : done.missing) {
        session.print("without  " + sentence + "\n");
    }
    session.print("Wrote " + path + ": " + std::to_string(done.records) + " records, " +
                  std::to_string(done.photos) + " photos.\n");
    return {};
}

}  // namespace

Done verbGive(Session& session, const GiveOptions& options) {
    if (model::folded(options.what) == "job" && options.format == "zip") {
        auto good = checkOptions(options, "job");
        return good.ok() ? giveJob(session, options.file) : good;
    }
    auto bytes = bytesFor(session, options);
    if (!bytes.ok()) {
        return bytes.error();
    }
    if (auto written = writeFile(options.file, bytes.value()); !written.ok()) {
        return written.error();
    }
    if (session.json()) {
        session.printJson({{"file", options.file}, {"bytes", bytes.value().size()}});
    } else {
        session.print("Wrote " + options.file + ".\n");
    }
    return {};
}

}  // namespace ledgerboard::cli
