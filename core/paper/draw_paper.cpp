#include "core/paper/draw_paper.h"

#include <algorithm>

#include "core/report/forms.h"
#include "core/report/money_text.h"

namespace ledgerboard::paper {

namespace {

using model::Money;
using report::DrawRequest;
using report::RequestLine;

constexpr report::Script kPage = report::Script::Unicode;

Cell words(std::string text) {
    Cell cell;
    cell.text = std::move(text);
    return cell;
}

std::string money(Money amount) {
    return report::centsText(amount, kPage);
}

std::string percent(model::Percent share) {
    return share.toString() + " %";
}

Table linesTable(const DrawRequest& request) {
    Table table{{{"Lender's line", Fit::Words, 1},
                 {"Amount", Fit::Figure, 1},
                 {"Lent", Fit::Figure, 1},
                 {request.isAsked ? "Asked for" : "Seen in place", Fit::Figure, 1},
                 {"Held back", Fit::Figure, 1},
                 {"Paid or asked before", Fit::Figure, 1},
                 {"This draw", Fit::Figure, 1}},
                {},
                true,
                true};
    Money amount;
    for (const auto& requested : request.lines) {
        const auto& line = requested.figures;
        amount += line.inPlace.amount;
        table.rows.push_back(
            {words(line.name), words(money(line.inPlace.amount)),
             words(percent(line.inPlace.share)),
             words(requested.isAsked ? percent(line.inPlace.allowed) : "not asked"),
             words(money(line.heldBack)), words(money(line.inPlace.paidBefore)),
             words(money(line.draw))});
    }
    table.rows.push_back({words("All"), words(money(amount)), words(""), words(""),
                          words(money(request.now.heldBack)), words(money(request.now.paidBefore)),
                          words(money(request.now.total))});
    return table;
}

std::string sumOf(const DrawRequest& request) {
    const auto& now = request.now;
    std::string text = "This draw: " + money(now.total) + ", less the fee of the visit of " +
                       money(now.fee) + ": " + money(now.total - std::min(now.fee, now.total)) +
                       ".";
    text += now.isFinal ? " It is the final draw: it releases what was held back." : "";
    if (now.limit) {
        text += " Limit of all draws: " + money(*now.limit) + ".";
    }
    if (now.cutByLimit > Money{}) {
        text += " The limit cuts " + money(now.cutByLimit) + " from this draw.";
    }
    return text;
}

std::string refusedBefore(const compute::LenderLineFigures& line) {
    const auto& before = *line.refused;
    return "Asked before: " + percent(before.asked) + ", allowed " + percent(before.allowed) +
           (before.number ? " in draw " + std::to_string(*before.number) : "") +
           (before.why.empty() ? "" : ": " + before.why) + ".";
}

void addLine(std::vector<Block>& to, const RequestLine& line,
             const std::vector<Picture>& pictures) {
    to.push_back({Heading{line.figures.name + ", " + money(line.figures.draw)}});
    if (!line.work.empty()) {
        Table table{{{"Work on this line", Fit::Words, 1}, {"Seen in place", Fit::Figure, 1}},
                    {},
                    true,
                    false};
        for (const auto& work : line.work) {
            table.rows.push_back({words(work.what), words(percent(work.seen))});
        }
        to.push_back({std::move(table)});
    }
    if (line.figures.refused) {
        to.push_back({Paragraph{refusedBefore(line.figures), true, false}});
    }
    if (pictures.empty()) {
        to.push_back({Paragraph{"No picture of this line is marked for the lender.", true, false}});
    } else {
        Pictures shown;
        shown.pictures = pictures;
        shown.tallest = 150;
        to.push_back({std::move(shown)});
    }
}

}  // namespace

RequestPictures requestPictures(const DrawRequest& request, const report::PictureSource& source) {
    RequestPictures pictures;
    for (const auto& line : request.lines) {
        auto& shown = pictures.emplace_back();
        for (const auto& photo : line.photos) {
            if (auto picture = report::pagePicture(photo.photo, source)) {
                const auto& day = picture->takenOn;
                shown.push_back({std::move(picture->bytes),
                                 photo.shows + (day ? ", " + report::dayMonthText(*day) + " " +
                                                          std::to_string(day->year())
                                                    : "")});
            }
        }
    }
    return pictures;
}

Paper drawPaper(const model::Job& job, const DrawRequest& request,
                const RequestPictures& pictures) {
    const std::string title = "Draw request " + std::to_string(request.number);
    const std::string house = report::houseText(job);
    Paper paper{title + ", " + job.name, title + ", " + house, request.day, false, {}};
    auto& blocks = paper.blocks;
    blocks.push_back(
        {Title{title, house,
               (request.isAsked ? "Asked for on " : "As of ") + report::longDateText(request.day) +
                   (job.currency.empty() ? "" : ", amounts in " + job.currency)}});
    blocks.push_back({linesTable(request)});
    blocks.push_back({Paragraph{sumOf(request), false, false}});
    blocks.push_back(
        {Paragraph{"Seen in place is what the owner saw on the house. Lien waivers, permits and "
                   "receipts go with this request where the lender or local law ask for them.",
                   true, false}});
    blocks.push_back({Fields{{"Owner, signature and date", "Lender, received on"}}});
    for (std::size_t k = 0; k < request.lines.size(); ++k) {
        if (request.lines[k].figures.draw > Money{}) {
            addLine(blocks, request.lines[k], pictures[k]);
        }
    }
    return paper;
}

}  // namespace ledgerboard::paper
