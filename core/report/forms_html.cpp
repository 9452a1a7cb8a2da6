#include "core/report/forms_html.h"

#include "core/report/forms.h"
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
           htmlText(houseText(rows.job)) + "</p>\n" +
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

std::string noticeHtml(const std::string& text) {
    return "<p class=\"notice\">" + htmlText(text) + "</p>\n";
}

// A table's head: each column's name and class.
std::string tableHead(const std::vector<std::pair<const char*, const char*>>& columns) {
    std::string out = "<table>\n<thead><tr>";
    for (const auto& [name, looks] : columns) {
        out += "<th scope=\"col\"" +
               (*looks == '\0' ? "" : " class=\"" + std::string(looks) + "\"") + ">" + name +
               "</th>";
    }
    return out + "</tr></thead>\n<tbody>\n";
}

std::string bidLineHtml(const BidLine& line) {
    return "<tr><td>" + htmlText(line.work) +
           (line.more.empty() ? ""
                              : "<br/><span class=\"small\">" + htmlText(line.more) + "</span>") +
           "</td><td class=\"n\">" + htmlText(line.size) +
           "</td><td class=\"blank\"></td><td class=\"blank\"></td></tr>\n";
}

std::string formHtml(const model::JobRows& rows, const BlankForm& form) {
    std::string body = noticeHtml(form.notice);
    for (const auto& part : form.parts) {
        body += part.isOnNewPage ? "<div class=\"page\"></div>\n" : "";
        body += part.heading.empty() ? "" : "<h2>" + htmlText(part.heading) + "</h2>\n";
        body += part.says.empty() ? "" : "<p>" + htmlText(part.says) + "</p>\n";
        for (int k = 0; k < part.blankLines; ++k) {
            body += "<div class=\"line\"></div>\n";
        }
        body += part.fields.empty() ? "" : fields(part.fields);
    }
    return page(rows, form.title, "", body);
}

}  // namespace

std::string bidsHtml(const model::JobRows& rows, const compute::JobFigures& figures,
                     model::Id<Kind::Crew> crew, model::Date today) {
    const BidScope scope = bidScopeOf(rows, figures, crew);
    std::string body;
    for (const auto& room : scope.rooms) {
        body +=
            "<h2>" + htmlText(room.name) + "</h2>\n" +
            tableHead({{"Work", ""}, {"Size", "n short"}, {"Price", "short"}, {"Days", "short"}});
        for (const auto& line : room.lines) {
            body += bidLineHtml(line);
        }
        body += "</tbody>\n</table>\n";
    }
    if (scope.rooms.empty()) {
        body = "<p>" + htmlText(nothingToBidOn(scope)) + "</p>\n";
    } else {
        const FormPart end = bidderPart();
        body += fields(end.fields) + "<p class=\"small\">" + htmlText(end.says) + "</p>\n";
    }
    return page(
        rows, "Scope of work",
        "To bid on, as of " + today.toString() + (scope.crew.empty() ? "" : ", " + scope.crew),
        body);
}

std::string punchHtml(const model::JobRows& rows, const compute::PunchList& list,
                      model::Id<Kind::Crew> crew, model::Date today) {
    const PunchSheet sheet = punchSheetOf(rows, list, crew, today);
    std::string body;
    for (const auto& room : sheet.rooms) {
        body += "<h2>" + htmlText(room.name) + "</h2>\n" +
                tableHead({{"To put right", ""},
                           {"Who", "name"},
                           {"By", "short"},
                           {"Fixed on, initials", "initials"}});
        for (const auto& line : room.lines) {
            body += "<tr><td><span class=\"box\"></span>" + htmlText(line.what) + "</td><td>" +
                    htmlText(line.crew) + "</td><td>" + htmlText(line.by) +
                    "</td><td class=\"blank\"></td></tr>\n";
        }
        body += "</tbody>\n</table>\n";
    }
    if (sheet.open == 0) {
        body = "<p>" + htmlText(nothingToPutRight()) + "</p>\n";
    }
    return page(rows, "Punch list",
                (sheet.crew.empty() ? std::string() : sheet.crew + ", ") + "as of " +
                    today.toString() +
                    (sheet.open == 0 ? ""
                                     : ", " + countText(static_cast<std::int64_t>(sheet.open),
                                                        "item open", "items open")),
                body);
}

std::string changeFormHtml(const model::JobRows& rows) {
    return formHtml(rows, changeForm());
}

std::string waiverFormHtml(const model::JobRows& rows) {
    return formHtml(rows, waiverForm());
}

}  // namespace ledgerboard::report
