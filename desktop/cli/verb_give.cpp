// give: a page or a list as a file for somebody else's program.
#include <nlohmann/json.hpp>

#include "core/report/week_html.h"
#include "core/report/week_json.h"
#include "core/report/week_page.h"

#include "desktop/cli/listing.h"
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
        if (format != "html" && format != "json") {
            return model::wrongUse("FORMAT: week is given as html or json");
        }
        const report::WeekPage page =
            report::weekPage(rows, today, weekPictures(session, rows, today));
        if (format == "html") {
            return report::weekHtml(page);
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

Result<std::string> bytesFor(Session& session, const GiveOptions& options) {
    if (model::folded(options.what) == "week") {
        return weekBytes(session, options.format);
    }
    if (model::folded(options.what) == "job" && options.format == "json") {
        return jobJson(session);
    }
    if (!model::kindNamed(options.what)) {
        return model::wrongUse("WHAT: \"" + options.what +
                               "\" is neither week nor a kind such as scope, spend or punch");
    }
    if (options.format != "csv" && options.format != "json") {
        return model::wrongUse("FORMAT: " + options.what + " is given as csv or json");
    }
    return model::guarded([&]() -> Result<std::string> {
        auto listing = listingOf(session, options.what);
        if (!listing.ok()) {
            return listing.error();
        }
        return options.format == "csv"
                   ? report::printCsv(listingTable(listing.value()))
                   : listingJson(listing.value())
                             .dump(2, ' ', false, nlohmann::json::error_handler_t::replace) +
                         "\n";
    });
}

}  // namespace

Done verbGive(Session& session, const GiveOptions& options) {
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
