#include "core/report/week_html.h"

#include <algorithm>
#include <array>

#include "core/report/html_text.h"
#include "core/report/money_text.h"
#include "core/report/theme.h"
#include "core/report/week_css.h"
#include "core/report/week_svg.h"
#include "core/report/week_words.h"

namespace ledgerboard::report {

namespace {

using model::Money;

constexpr Script kPage = Script::Unicode;
// Letters of what people typed that the page has room for; the book's own pages have it all.
constexpr std::size_t kLongestName = 48;
constexpr std::size_t kLongestTrade = 26;
constexpr std::size_t kLongestRoom = 22;
constexpr std::size_t kLongestLine = 72;
constexpr std::size_t kLongestWords = 100;
// Lines of a part that are printed; more of them stay on the screen.
constexpr std::size_t kPrintedRooms = 15;
constexpr std::size_t kPrintedLines = 8;
constexpr std::size_t kPrintedToDos = 8;

std::string name(std::string_view text) {
    return htmlClipped(text, kLongestName);
}

std::string words(std::string_view text) {
    return htmlClipped(text, kLongestWords);
}

std::string small(const std::string& html) {
    return html.empty() ? "" : "<p class=\"small said\">" + html + "</p>\n";
}

std::string headed(const char* attributes, std::string_view heading, const std::string& body) {
    return std::string("<section") + attributes + ">\n<h2>" + htmlText(heading) + "</h2>\n" + body +
           "</section>\n";
}

std::string beyond(std::size_t place, std::size_t printed) {
    return place >= printed ? " class=\"beyond\"" : "";
}

std::string moreOnScreen(std::size_t count, std::size_t printed) {
    return count <= printed ? ""
                            : "<p class=\"small more\">and " + std::to_string(count - printed) +
                                  " more, on the screen</p>\n";
}

std::string header(const WeekPage& page) {
    return "<header>\n<p class=\"job\">" + name(page.job) + "</p>\n<h1>" +
           htmlText(titleText(page)) + "</h1>\n<p class=\"when\">" + htmlText(whenText(page)) +
           "</p>\n</header>\n";
}

std::string levelPart(const WeekPage& page) {
    if (!page.level) {
        return {};
    }
    const Level& level = *page.level;
    return "<section aria-label=\"Forecast against budget\">\n" + levelSvg(level) +
           "\n<p class=\"scale small\"><span>" + signedText(-level.end, kPage) +
           " less</span><span>" + htmlText(levelText(level, kPage)) + "; " +
           htmlText(levelScaleText(level, kPage)) + "</span><span>" + signedText(level.end, kPage) +
           " more</span></p>\n</section>\n";
}

std::string figuresPart(const WeekPage& page) {
    std::string out = "<dl class=\"figures\">\n";
    for (const auto& figure : headFigures(page, kPage)) {
        out += "<div><dt>" + htmlText(figure.name) + "</dt><dd class=\"figure\">" +
               htmlText(figure.figure) + "</dd><dd>";
        out += figure.strong.empty() ? "" : "<b>" + htmlText(figure.strong) + "</b>";
        out += htmlText(figure.rest) + "</dd></div>\n";
    }
    return out + "</dl>\n" + small(htmlText(buyerText(page)));
}

std::string curvePart(const WeekPage& page) {
    const std::string drawing = curveSvg(page);
    std::string body =
        drawing.empty()
            ? "<p class=\"none\">Nothing to draw yet: no item has planned dates, and nothing "
              "was marked or billed.</p>\n"
            : "<div class=\"curvebox\">" + drawing + "</div>\n";
    body += small(htmlText(progressText(page.progress, kPage)));
    body += small(htmlText(methodsText(page, kPage)));
    return headed(" class=\"curvepart\"", curveTitle(page), body);
}

std::string moversPart(const WeekPage& page) {
    if (!page.movers) {
        return headed("", "What moved it",
                      "<p class=\"none\">Nothing to compare with until a baseline is set.</p>\n" +
                          small(htmlText(askedText(page, kPage))));
    }
    std::string rows;
    auto row = [&rows](const std::string& what, const std::string& why, Money amount) {
        rows += "<tr><th scope=\"row\">" + what +
                (why.empty() ? "" : "<span class=\"small\">" + why + "</span>") +
                "</th><td class=\"n\">" + shortSignedText(amount, kPage) + "</td></tr>\n";
    };
    for (const auto& mover : page.movers->largest) {
        row(name(mover.what), words(mover.why), mover.amount);
    }
    if (const std::string others = othersText(*page.movers); !others.empty()) {
        row(htmlText(others), "", page.movers->others);
    }
    return headed("", "What moved it",
                  "<table class=\"moved\">\n<tbody>\n" + rows +
                      "</tbody>\n<tfoot>\n<tr><th scope=\"row\">" + htmlText(sinceText(page)) +
                      "</th><td class=\"n\">" + shortSignedText(page.movers->total, kPage) +
                      "</td></tr>\n</tfoot>\n</table>\n" + small(htmlText(askedText(page, kPage))));
}

std::string amountCells(const Amounts& amounts) {
    std::string cells;
    for (const Money money : {amounts.budgetNow, amounts.committed, amounts.billed, amounts.held,
                              amounts.paid, amounts.forecast}) {
        cells += "<td class=\"n\">" + shortText(money, kPage) + "</td>";
    }
    return cells;
}

std::string moneyPart(const WeekPage& page) {
    std::string rows = "<thead>\n<tr><th scope=\"col\">Trade</th>";
    for (const char* heading :
         {"Budget now", "Committed", "Billed", "Held", "Paid", "Forecast", "Over or early"}) {
        rows += std::string("<th scope=\"col\" class=\"n\">") + heading + "</th>";
    }
    rows += "</tr>\n</thead>\n<tbody>\n";
    for (const auto& trade : page.trades) {
        rows += "<tr><th scope=\"row\">" + htmlClipped(trade.trade, kLongestTrade) + "</th>" +
                amountCells(trade.amounts) + "<td class=\"n\">" +
                htmlText(standingText(trade, kPage)) + "</td></tr>\n";
    }
    const TradeMoney all{"All", page.total, Money{}};
    rows += "</tbody>\n<tfoot>\n<tr><th scope=\"row\">All</th>" + amountCells(page.total) +
            "<td class=\"n\">" + htmlText(standingText(all, kPage)) + "</td></tr>\n</tfoot>\n";
    return headed(" class=\"moneypart\"", "Money by trade",
                  "<div class=\"scroll\"><table class=\"money\">\n" + rows + "</table></div>\n" +
                      small(htmlText(contingencyText(page, kPage))));
}

std::string roomsPart(const WeekPage& page) {
    std::string rows =
        "<thead>\n<tr><th scope=\"col\">Room</th><th scope=\"col\" class=\"drawn\">Tape</th>"
        "<th scope=\"col\" class=\"n\">Done</th><th scope=\"col\" class=\"n\">Plan</th>"
        "<th scope=\"col\" class=\"n\">Over</th></tr>\n</thead>\n<tbody>\n";
    for (std::size_t k = 0; k < page.rooms.size(); ++k) {
        const RoomProgress& room = page.rooms[k];
        const Chip chip = chipFor(room.swatch, k);
        rows += "<tr" + beyond(k, kPrintedRooms) +
                "><th scope=\"row\"><span class=\"room\"><span class=\"chip\" style=\"background:" +
                chip.ground + ";color:" + chip.text + "\">" + htmlClipped(room.shortName, 4) +
                "</span><span>" + htmlClipped(room.name, kLongestRoom) + "</span></span></th><td>" +
                (room.items > 0 ? tapeSvg(room.done, room.planned) : "") + "</td><td class=\"n\">" +
                htmlText(roomDoneText(room, kPage)) + "</td><td class=\"n small\">" +
                htmlText(roomPlanText(room, kPage)) + "</td><td class=\"n\">" +
                shortSignedText(room.over, kPage) + "</td></tr>\n";
    }
    return headed("", "By room",
                  "<table class=\"rooms\">\n" + rows + "</tbody>\n</table>\n" +
                      moreOnScreen(page.rooms.size(), kPrintedRooms));
}

std::string nextPart(const WeekPage& page) {
    if (page.next.empty()) {
        return headed("", "Next 14 days",
                      "<p class=\"none\">Nothing is due in the next 14 days.</p>\n");
    }
    std::string lines;
    for (std::size_t k = 0; k < page.next.size(); ++k) {
        const NextEvent& event = page.next[k];
        lines += "<li" + beyond(k, kPrintedLines) + "><span class=\"day\">" +
                 htmlText(nextDayText(event, page.today)) + "</span><span class=\"what\">" +
                 htmlClipped(nextText(event), kLongestLine) + (event.isLate ? " <b>late</b>" : "") +
                 "</span>" +
                 (event.amount ? "<span class=\"n\">" + shortText(*event.amount, kPage) + "</span>"
                               : "") +
                 "</li>\n";
    }
    return headed("", "Next 14 days",
                  "<ul>\n" + lines + "</ul>\n" + moreOnScreen(page.next.size(), kPrintedLines));
}

std::string papersPart(const WeekPage& page) {
    if (page.papers.empty()) {
        return headed("", "Papers missing", "<p class=\"none\">None is missing.</p>\n");
    }
    std::string lines;
    for (std::size_t k = 0; k < page.papers.size(); ++k) {
        const MissingPaper& paper = page.papers[k];
        lines += "<li" + beyond(k, kPrintedLines) + "><span class=\"what\">" +
                 htmlClipped(paper.what, kLongestLine) + "</span><span class=\"n pencil\">" +
                 htmlText(paperText(paper, kPage)) + "</span></li>\n";
    }
    return headed("", "Papers missing (" + std::to_string(page.papers.size()) + ")",
                  "<ul>\n" + lines + "</ul>\n" + moreOnScreen(page.papers.size(), kPrintedLines));
}

std::string mondayPart(const WeekPage& page) {
    if (page.monday.empty()) {
        return headed(" class=\"mondaypart\"", "On Monday",
                      "<p class=\"none\">Nothing stands out.</p>\n");
    }
    std::string lines;
    for (std::size_t k = 0; k < page.monday.size(); ++k) {
        const ToDo& todo = page.monday[k];
        lines += "<li" + beyond(k, kPrintedToDos) + "><span class=\"what\"><span class=\"" +
                 (todo.isBarred     ? "barred"
                  : todo.isPressing ? "pressing"
                                    : "calm") +
                 "\">" + words(todo.what) + "</span>" +
                 (todo.because.empty()
                      ? ""
                      : "<span class=\"small because\">" + words(todo.because) + "</span>") +
                 "</span><span class=\"page\">" + htmlClipped(todo.page, kLongestRoom) +
                 "</span></li>\n";
    }
    return headed(" class=\"mondaypart\"", "On Monday",
                  "<ol>\n" + lines + "</ol>\n" + moreOnScreen(page.monday.size(), kPrintedToDos));
}

// Each of its lines on a new one.
std::string answerHtml(std::string_view text) {
    std::string html;
    while (!text.empty()) {
        const auto end = std::min(text.find('\n'), text.size());
        html += (html.empty() ? "" : "<br/>") + htmlText(text.substr(0, end));
        text.remove_prefix(std::min(end + 1, text.size()));
    }
    return html;
}

// On the screen alone: the printed sheet has the same facts in its parts.
std::string answersPart(const WeekPage& page) {
    if (page.answers.empty()) {
        return {};
    }
    std::string lines;
    for (const auto& answer : page.answers) {
        lines += "<li><span class=\"what\"><span class=\"pressing\">" + htmlText(answer.question) +
                 "</span> <span class=\"answer\">" + answerHtml(answer.answer) +
                 "</span></span></li>\n";
    }
    return headed(" class=\"answerspart\"", "Asked every week", "<ol>\n" + lines + "</ol>\n");
}

bool isPicture(std::string_view mediaType) {
    constexpr std::array<std::string_view, 3> kPictures = {"image/jpeg", "image/png", "image/webp"};
    for (const auto picture : kPictures) {
        if (picture == mediaType) {
            return true;
        }
    }
    return false;
}

std::string photosPart(const WeekPage& page) {
    std::string figures;
    for (const auto& photo : page.photos) {
        if (!isPicture(photo.mediaType) || photo.bytes.empty()) {
            continue;
        }
        std::string caption = words(photo.caption);
        if (photo.takenOn) {
            caption +=
                (caption.empty() ? "" : ", ") + htmlText(dateText(*photo.takenOn, page.today));
        }
        figures += "<figure><img alt=\"" + caption + "\" src=\"data:" + photo.mediaType +
                   ";base64," + base64(photo.bytes) + "\"/><figcaption>" + caption +
                   "</figcaption></figure>\n";
    }
    return figures.empty()
               ? ""
               : "<section class=\"photos\">\n<h2>Photos</h2>\n" + figures + "</section>\n";
}

std::string footer(const WeekPage& page) {
    std::string text = leftOutText(page);
    text += page.currency.empty() ? "" : " Amounts in whole " + page.currency + ".";
    text += showsBarred(page) ? " " + reminderText() : "";
    return "<footer>\n<p>" + htmlText(text) + "</p>\n</footer>\n";
}

std::string body(const WeekPage& page) {
    if (page.items == 0) {
        return "<p class=\"none\">" + htmlText(emptyJobText()) + "</p>\n";
    }
    return levelPart(page) + figuresPart(page) + "<div class=\"grid2\">\n" + curvePart(page) +
           moversPart(page) + "</div>\n<div class=\"grid2\">\n" + moneyPart(page) +
           roomsPart(page) + "</div>\n<div class=\"grid2 last\">\n<div class=\"stack\">\n" +
           nextPart(page) + papersPart(page) + "</div>\n" + mondayPart(page) + "</div>\n" +
           answersPart(page) + photosPart(page) + footer(page);
}

}  // namespace

std::string weekHtml(const WeekPage& page) {
    return "<!DOCTYPE html>\n<html lang=\"en\">\n<head>\n<meta charset=\"utf-8\"/>\n"
           "<meta name=\"viewport\" content=\"width=device-width, initial-scale=1\"/>\n<title>" +
           name(page.job) + ": " + htmlText(titleText(page)) + "</title>\n<style>\n" + weekCss() +
           "</style>\n</head>\n<body>\n<main>\n" + header(page) + body(page) +
           "</main>\n</body>\n</html>\n";
}

}  // namespace ledgerboard::report
