#include "core/report/forms_html.h"

#include <algorithm>

#include "core/report/html_text.h"
#include "core/report/money_text.h"

namespace ledgerboard::report {

namespace {

using model::Kind;

constexpr const char* kStyle = R"(
*{box-sizing:border-box}
body{margin:0 auto;max-width:960px;padding:24px 32px;color:#20262B;background:#FFFFFF;
 font:400 15px/1.4 Lato,"Gill Sans","Helvetica Neue",Arial,sans-serif}
h1,h2{font-family:"Roboto Slab",Rockwell,Georgia,serif;font-weight:400;margin:0}
h1{font-size:26px}
h2{font-size:17px;margin:22px 0 2px}
p{margin:4px 0}
.small{font-size:13px;color:#5B5F60}
table{width:100%;border-collapse:collapse;table-layout:fixed}
th,td{padding:6px 0 6px 12px;text-align:left;vertical-align:top;font-weight:400;
 border-top:1px solid #D8D0C2}
th:first-child,td:first-child{padding-left:0}
thead th{font-size:13px;color:#5B5F60;border-top:0}
tr{break-inside:avoid}
thead{display:table-header-group}
.n{text-align:right;white-space:nowrap}
.blank{border-bottom:1px solid #20262B;border-left:12px solid #FFFFFF}
.short{width:104px}.name{width:140px}.initials{width:148px}
.box{display:inline-block;width:14px;height:14px;border:1.5px solid #20262B;margin-right:8px;
 vertical-align:-2px}
.line{border-bottom:1px solid #20262B;height:34px;margin-top:2px}
.notice{border:1.5px solid #20262B;padding:8px 12px;margin:14px 0;font-weight:700}
.pair{display:grid;grid-template-columns:1fr 1fr;gap:4px 32px}
.page{break-before:page}
@media print{body{padding:0;max-width:none;font-size:12px}@page{margin:16mm}}
)";

std::string page(const model::JobRows& rows, const std::string& title, const std::string& under,
                 const std::string& body) {
    return "<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\"/>\n"
           "<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\"/>\n<title>" +
           htmlText(title + ", " + rows.job.name) + "</title>\n<style>" + kStyle +
           "</style>\n</head>\n<body>\n<h1>" + htmlText(title) + "</h1>\n<p>" +
           htmlText(rows.job.name) +
           (rows.job.address.empty() ? "" : ", " + htmlText(rows.job.address)) + "</p>\n" +
           (under.empty() ? "" : "<p class=\"small\">" + htmlText(under) + "</p>\n") + body +
           "</body>\n</html>\n";
}

// A name and room to write behind it.
std::string field(const std::string& name) {
    return "<div><p class=\"small\">" + htmlText(name) + "</p><div class=\"line\"></div></div>\n";
}

std::string fields(const std::vector<std::string>& names) {
    std::string out = "<div class=\"pair\">\n";
    for (const auto& name : names) {
        out += field(name);
    }
    return out + "</div>\n";
}

std::string checkWithLaw(const std::string& what) {
    return "<p class=\"notice\">A plain form. Check with local law, or somebody licensed in it, "
           "before anybody signs: what " +
           htmlText(what) + " must say differs from place to place.</p>\n";
}

std::string crewName(const model::JobRows& rows, model::Id<Kind::Crew> crew) {
    for (const auto& row : rows.crews) {
        if (row.id == crew && !crew.isNil()) {
            return row.name;
        }
    }
    return "";
}

std::string bidLine(const model::Item& item) {
    std::string what = std::string(model::wordOf(item.treatment)) + " " + item.object;
    std::string more;
    for (const auto& [name, text] : {std::pair{"", &item.selection},
                                     {"", &item.instructions},
                                     {"There now: ", &item.condition},
                                     {"Hazards: ", &item.hazards}}) {
        if (!text->empty()) {
            const bool isEnded = more.empty() || more.back() == '.';
            more += (more.empty() ? "" : isEnded ? " " : ". ") + std::string(name) + *text;
        }
    }
    const std::string size =
        item.quantity ? item.quantity->toString() + (item.unit.empty() ? "" : " " + item.unit) : "";
    return "<tr><td>" + htmlText(what) +
           (more.empty() ? "" : "<br/><span class=\"small\">" + htmlText(more) + "</span>") +
           "</td><td class=\"n\">" + htmlText(size) +
           "</td><td class=\"blank\"></td><td class=\"blank\"></td></tr>\n";
}

}  // namespace

std::string bidsHtml(const model::JobRows& rows, const compute::JobFigures& figures,
                     model::Id<Kind::Crew> crew, model::Date today) {
    std::string body;
    std::size_t count = 0;
    std::vector<model::Id<Kind::Space>> order;
    for (const auto& space : figures.spaces) {
        order.emplace_back(space.id);
    }
    for (const auto& space : order) {
        std::string lines;
        for (std::size_t k = 0; k < figures.scope.lines.size(); ++k) {
            const auto& scope = figures.scope.lines[k];
            if (scope.kind != compute::LineKind::Item || scope.space != space ||
                scope.counting != compute::Counting::Counts ||
                (!crew.isNil() && scope.crew != crew)) {
                continue;
            }
            const auto found =
                std::find_if(rows.items.begin(), rows.items.end(),
                             [&](const auto& item) { return item.id == scope.item; });
            if (found != rows.items.end()) {
                lines += bidLine(*found);
                ++count;
            }
        }
        if (lines.empty()) {
            continue;
        }
        std::string name = "No room";
        for (const auto& row : rows.spaces) {
            name = row.id == space ? row.name : name;
        }
        body += "<h2>" + htmlText(name) +
                "</h2>\n<table>\n<thead><tr><th scope=\"col\">Work</th><th scope=\"col\" class=\"n "
                "short\">"
                "Size</th><th scope=\"col\" class=\"short\">Price</th><th scope=\"col\" "
                "class=\"short\">Days</th></tr></thead>\n"
                "<tbody>\n" +
                lines + "</tbody>\n</table>\n";
    }
    if (count == 0) {
        body =
            "<p>There is no work to bid on" +
            (crew.isNil() ? std::string(" yet.") : " for " + htmlText(crewName(rows, crew)) + ".") +
            "</p>\n";
    } else {
        body +=
            fields({"Bidder", "Licence and insurance", "Price in all", "Can start on, days",
                    "Left out of this price", "Date, signature"}) +
            "<p class=\"small\">Measure on site before you bid: sizes are the owner's. Permits, "
            "local codes and licensed trades decide how the work is done.</p>\n";
    }
    const std::string whose = crewName(rows, crew);
    return page(rows, "Scope of work",
                "To bid on, as of " + today.toString() + (whose.empty() ? "" : ", " + whose), body);
}

std::string punchHtml(const model::JobRows& rows, const compute::PunchList& list,
                      model::Id<Kind::Crew> crew, model::Date today) {
    std::string body;
    std::string space;
    std::size_t count = 0;
    for (const auto& read : list.all) {
        const auto& punch = rows.punches[read.punch];
        if (!read.isOpen || (!crew.isNil() && punch.crew != crew)) {
            continue;
        }
        const std::string here = read.space.empty() ? "No room" : read.space;
        if (here != space || count == 0) {
            body += (count == 0 ? "" : "</tbody>\n</table>\n") + std::string("<h2>") +
                    htmlText(here) +
                    "</h2>\n<table>\n<thead><tr><th scope=\"col\">To put right</th><th "
                    "scope=\"col\" class=\"name\">Who</th><th scope=\"col\" "
                    "class=\"short\">By</th><th scope=\"col\" class=\"initials\">Fixed on, "
                    "initials</th></tr></thead>\n<tbody>\n";
            space = here;
        }
        body += "<tr><td><span class=\"box\"></span>" + htmlText(punch.what) + "</td><td>" +
                htmlText(read.crew) + "</td><td>" +
                (punch.dueOn ? htmlText(compute::dayWords(*punch.dueOn, today)) : "") +
                (read.isLate ? " (late)" : "") + "</td><td class=\"blank\"></td></tr>\n";
        ++count;
    }
    body += count == 0 ? "<p>Nothing is left to put right.</p>\n" : "</tbody>\n</table>\n";
    const std::string whose = crewName(rows, crew);
    return page(rows, "Punch list",
                (whose.empty() ? std::string() : whose + ", ") + "as of " + today.toString() +
                    (count == 0 ? ""
                                : ", " + countText(static_cast<std::int64_t>(count), "item open",
                                                   "items open")),
                body);
}

std::string changeFormHtml(const model::JobRows& rows) {
    return page(rows, "Change order", "",
                checkWithLaw("a change to a contract") +
                    fields({"Number", "Date", "Contract", "Crew or firm"}) +
                    "<h2>What is changed, and why</h2>\n<div class=\"line\"></div>\n<div "
                    "class=\"line\"></div>\n<div class=\"line\"></div>\n<div "
                    "class=\"line\"></div>\n" +
                    fields({"Added to the contract sum (or taken off)", "Days added (or taken off)",
                            "Contract sum before", "Contract sum with this change"}) +
                    "<p>Work on this change begins once both have signed it.</p>\n" +
                    fields({"Owner, signature and date", "Crew or firm, signature and date"}));
}

std::string waiverFormHtml(const model::JobRows& rows) {
    const auto form = [](const std::string& name, const std::string& says) {
        return "<h2>" + name + "</h2>\n<p>" + says + "</p>\n" +
               fields({"Claimant (crew or firm)", "Owner", "Amount", "Work up to this day",
                       "Not covered: retainage, changes not signed, other",
                       "Claimant, signature and date"});
    };
    return page(rows, "Lien waiver", "",
                checkWithLaw("a lien waiver") +
                    form("Conditional, on payment",
                         "Once the amount below has been paid, the claimant gives up the right to "
                         "a lien on this property for the work up to the day below. Until it is "
                         "paid this paper has no effect.") +
                    "<div class=\"page\"></div>\n" +
                    form("Unconditional, payment received",
                         "The claimant has received the amount below and gives up the right to a "
                         "lien on this property for the work up to the day below. Do not sign "
                         "before the money is there."));
}

}  // namespace ledgerboard::report
