#include "core/paper/week_paper.h"

#include <algorithm>

#include "core/paper/pen.h"
#include "core/report/money_text.h"
#include "core/report/plain_text.h"
#include "core/report/theme.h"
#include "core/report/week_words.h"

namespace ledgerboard::paper {

namespace {

using model::Money;
using report::WeekPage;

constexpr report::Script kPage = report::Script::Unicode;
// Letters of what people typed that the sheet has room for, and lines of a part.
constexpr std::size_t kLongestName = 48;
constexpr std::size_t kLongestTrade = 26;
constexpr std::size_t kLongestRoom = 22;
constexpr std::size_t kLongestLine = 72;
constexpr std::size_t kLongestWords = 100;
constexpr std::size_t kMostRooms = 15;
constexpr std::size_t kMostLines = 8;

std::string cut(std::string_view text, std::size_t letters) {
    return report::clipped(report::shownText(text, kPage), letters, kPage);
}

Cell words(std::string text, bool isBold = false) {
    Cell cell;
    cell.text = std::move(text);
    cell.isBold = isBold;
    return cell;
}

// What is said in small letters; nothing for nothing.
void say(std::vector<Block>& to, const std::string& text) {
    if (!text.empty()) {
        to.push_back({Paragraph{text, true, false}});
    }
}

void sayHowManyMore(std::vector<Block>& to, std::size_t count, std::size_t most) {
    if (count > most) {
        say(to, "and " + std::to_string(count - most) + " more, on the screen");
    }
}

std::vector<Block> curvePart(const WeekPage& page) {
    std::vector<Block> part{{Heading{report::curveTitle(page)}}, {Curve{page.curve, page.today}}};
    say(part, report::progressText(page.progress, kPage));
    say(part, report::methodsText(page, kPage));
    return part;
}

std::vector<Block> moversPart(const WeekPage& page) {
    std::vector<Block> part{{Heading{"What moved it"}}};
    if (!page.movers) {
        say(part, "Nothing to compare with until a baseline is set.");
        say(part, report::askedText(page, kPage));
        return part;
    }
    Table table{{{"", Fit::Words, 1}, {"", Fit::Figure, 1}}, {}, false, true};
    const auto row = [&](const std::string& what, const std::string& why, Money amount) {
        Cell cell = words(cut(what, kLongestName));
        cell.under = cut(why, kLongestWords);
        table.rows.push_back({std::move(cell), words(report::shortSignedText(amount, kPage))});
    };
    for (const auto& mover : page.movers->largest) {
        row(mover.what, mover.why, mover.amount);
    }
    if (const std::string others = report::othersText(*page.movers); !others.empty()) {
        row(others, "", page.movers->others);
    }
    row(report::sinceText(page), "", page.movers->total);
    part.push_back({std::move(table)});
    say(part, report::askedText(page, kPage));
    return part;
}

std::vector<Cell> tradeRow(const std::string& name, const report::TradeMoney& trade) {
    std::vector<Cell> row{words(cut(name, kLongestTrade))};
    const auto& amounts = trade.amounts;
    for (const Money money : {amounts.budgetNow, amounts.committed, amounts.billed, amounts.held,
                              amounts.paid, amounts.forecast}) {
        row.push_back(words(report::shortText(money, kPage)));
    }
    row.push_back(words(report::standingText(trade, kPage)));
    return row;
}

Table moneyTable(const WeekPage& page) {
    Table table{{{"Trade", Fit::Words, 1},
                 {"Budget now", Fit::Figure, 1},
                 {"Committed", Fit::Figure, 1},
                 {"Billed", Fit::Figure, 1},
                 {"Held", Fit::Figure, 1},
                 {"Paid", Fit::Figure, 1},
                 {"Forecast", Fit::Figure, 1},
                 {"Over or early", Fit::Figure, 1}},
                {},
                true,
                true};
    for (const auto& trade : page.trades) {
        table.rows.push_back(tradeRow(trade.trade, trade));
    }
    table.rows.push_back(tradeRow("All", {"All", page.total, Money{}}));
    return table;
}

std::vector<Block> roomsPart(const WeekPage& page) {
    Table table{{{"Room", Fit::Words, 2.3},
                 {"Tape", Fit::Words, 1},
                 {"Done", Fit::Figure, 1},
                 {"Plan", Fit::Figure, 1},
                 {"Over", Fit::Figure, 1}},
                {},
                true,
                false};
    for (std::size_t k = 0; k < std::min(page.rooms.size(), kMostRooms); ++k) {
        const auto& room = page.rooms[k];
        const auto chip = report::chipFor(room.swatch, k);
        Cell name = words(cut(room.name, kLongestRoom));
        name.chip = Chip{cut(room.shortName, 4), chip.ground, chip.text};
        Cell tape;
        if (room.items > 0) {
            tape.tape = Tape{room.done, room.planned};
        }
        table.rows.push_back({std::move(name), std::move(tape),
                              words(report::roomDoneText(room, kPage)),
                              words(report::roomPlanText(room, kPage)),
                              words(report::shortSignedText(room.over, kPage))});
    }
    std::vector<Block> part{{Heading{"By room"}}, {std::move(table)}};
    sayHowManyMore(part, page.rooms.size(), kMostRooms);
    return part;
}

void addNext(std::vector<Block>& part, const WeekPage& page) {
    part.push_back({Heading{"Next 14 days"}});
    if (page.next.empty()) {
        say(part, "Nothing is due in the next 14 days.");
        return;
    }
    Table table{
        {{"", Fit::Words, 0.36}, {"", Fit::Words, 1}, {"", Fit::Figure, 1}}, {}, false, false};
    for (std::size_t k = 0; k < std::min(page.next.size(), kMostLines); ++k) {
        const auto& event = page.next[k];
        Cell day = words(report::nextDayText(event, page.today));
        day.tone = Tone::Pencil;
        table.rows.push_back(
            {std::move(day),
             words(cut(report::nextText(event), kLongestLine) + (event.isLate ? " (late)" : ""),
                   event.isLate),
             words(event.amount ? report::shortText(*event.amount, kPage) : "")});
    }
    part.push_back({std::move(table)});
    sayHowManyMore(part, page.next.size(), kMostLines);
}

void addPapers(std::vector<Block>& part, const WeekPage& page) {
    part.push_back({Heading{page.papers.empty()
                                ? std::string("Papers missing")
                                : "Papers missing (" + std::to_string(page.papers.size()) + ")"}});
    if (page.papers.empty()) {
        say(part, "None is missing.");
        return;
    }
    Table table{{{"", Fit::Words, 1}, {"", Fit::Figure, 1}}, {}, false, false};
    for (std::size_t k = 0; k < std::min(page.papers.size(), kMostLines); ++k) {
        const auto& paper = page.papers[k];
        table.rows.push_back(
            {words(cut(paper.what, kLongestLine)), words(report::paperText(paper, kPage))});
    }
    part.push_back({std::move(table)});
    sayHowManyMore(part, page.papers.size(), kMostLines);
}

void addMonday(std::vector<Block>& to, const WeekPage& page) {
    to.push_back({Heading{"On Monday"}});
    if (page.monday.empty()) {
        say(to, "Nothing stands out.");
        return;
    }
    Table table{{{"", Fit::Words, 4}, {"", Fit::Words, 1}}, {}, false, false};
    for (std::size_t k = 0; k < std::min(page.monday.size(), kMostLines); ++k) {
        const auto& todo = page.monday[k];
        Cell what = words(cut(todo.what, kLongestWords), todo.isPressing || todo.isBarred);
        what.under = cut(todo.because, kLongestWords);
        what.tone = todo.isBarred ? Tone::Brick : Tone::Ink;
        Cell where = words(cut(todo.page, kLongestRoom));
        where.tone = Tone::Pencil;
        table.rows.push_back({std::move(what), std::move(where)});
    }
    to.push_back({std::move(table)});
    sayHowManyMore(to, page.monday.size(), kMostLines);
}

void addPhotos(std::vector<Block>& to, const WeekPage& page) {
    Pictures pictures;
    pictures.tallest = 104;
    for (const auto& photo : page.photos) {
        std::string caption = cut(photo.caption, kLongestWords);
        if (photo.takenOn) {
            caption += (caption.empty() ? "" : ", ") + report::dateText(*photo.takenOn, page.today);
        }
        if (pixelsOf(photo.bytes)) {
            pictures.pictures.push_back({photo.bytes, caption});
        }
    }
    if (!pictures.pictures.empty()) {
        to.push_back({Heading{"Photos"}});
        to.push_back({std::move(pictures)});
    }
}

void addHead(std::vector<Block>& to, const WeekPage& page) {
    if (page.level) {
        to.push_back({LevelPicture{*page.level}});
        say(to, report::levelText(*page.level, kPage) + "; " +
                    report::levelScaleText(*page.level, kPage) + " (" +
                    report::signedText(-page.level->end, kPage) + ", " +
                    report::signedText(page.level->end, kPage) + ").");
    }
    to.push_back({Figures{report::headFigures(page, kPage)}});
    say(to, report::buyerText(page));
}

std::string footOf(const WeekPage& page) {
    std::string text = report::leftOutText(page);
    text += page.currency.empty() ? "" : " Amounts in whole " + page.currency + ".";
    return text + (report::showsBarred(page) ? " " + report::reminderText() : "");
}

}  // namespace

Paper weekPaper(const WeekPage& page) {
    const std::string job = cut(page.job, kLongestName);
    Paper paper{job + ": " + report::titleText(page),
                job + ", week to " + report::longDateText(page.today),
                page.today,
                true,
                {}};
    auto& blocks = paper.blocks;
    blocks.push_back({Title{report::titleText(page), job, report::whenText(page)}});
    if (page.items == 0) {
        blocks.push_back({Paragraph{report::emptyJobText(), false, false}});
        return paper;
    }
    addHead(blocks, page);
    blocks.push_back({Beside{curvePart(page), moversPart(page), 0.62}});
    blocks.push_back({Heading{"Money by trade"}});
    blocks.push_back({moneyTable(page)});
    say(blocks, report::contingencyText(page, kPage));
    std::vector<Block> soon;
    addNext(soon, page);
    addPapers(soon, page);
    blocks.push_back({Beside{roomsPart(page), std::move(soon), 0.5}});
    addMonday(blocks, page);
    addPhotos(blocks, page);
    say(blocks, footOf(page));
    return paper;
}

}  // namespace ledgerboard::paper
