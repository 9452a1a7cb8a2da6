#include "core/report/week_terminal.h"

#include <algorithm>

#include "core/report/letter_art.h"
#include "core/report/money_text.h"
#include "core/report/table.h"
#include "core/report/week_words.h"

namespace ledgerboard::report {

namespace {

using model::Money;

constexpr std::size_t kNarrowest = 48;
constexpr std::size_t kWidest = 100;
constexpr std::size_t kChartRows = 11;
// Letters of what people typed that the page has room for; `list` shows all of it.
constexpr std::size_t kLongestTrade = 32;
constexpr std::size_t kLongestWords = 200;
constexpr std::size_t kIndent = 2;
constexpr std::size_t kSwatch = 3;  // two letters and a space

// Lines, one under the other, none wider than the terminal.
class Sheet {
  public:
    explicit Sheet(const Style& style)
        : script_(style.script),
          width_(std::clamp(style.width, kNarrowest, kWidest)),
          bold_(style.bold) {}

    [[nodiscard]] Script script() const { return script_; }

    [[nodiscard]] std::size_t width() const { return width_; }

    [[nodiscard]] bool bold() const { return bold_; }

    [[nodiscard]] std::string shown(std::string_view text) const {
        return shownText(text, script_);
    }

    void blank() { text_ += "\n"; }

    // A line that fits as it is.
    void line(const std::string& text) { text_ += text + "\n"; }

    void strong(const std::string& text) {
        text_ += bold_ ? "\x1b[1m" + text + "\x1b[0m\n" : text + "\n";
    }

    void heading(const std::string& text) {
        blank();
        strong(clipped(shown(text), width_, script_));
        std::string rule;
        for (std::size_t k = 0; k < width_; ++k) {
            rule += script_ == Script::Unicode ? "─" : "-";
        }
        line(rule);
    }

    // `text` in as many lines as it takes, all but the first indented by `hang`, the first led in
    // by `lead` (which is as wide as the indent).
    void paragraph(std::string_view text, const std::string& lead = "", bool isStrong = false) {
        const std::size_t hang = columnsOf(lead);
        std::string start = lead;
        for (const auto& part :
             wrapped(clipped(shown(text), kLongestWords, script_), width_ - hang)) {
            isStrong ? strong(start + part) : line(start + part);
            start = std::string(hang, ' ');
        }
    }

    // The same however long it is, each of its lines on a new one.
    void words(std::string_view text, const std::string& indent) {
        while (!text.empty()) {
            const auto end = std::min(text.find('\n'), text.size());
            for (const auto& part :
                 wrapped(shown(text.substr(0, end)), width_ - columnsOf(indent))) {
                line(indent + part);
            }
            text.remove_prefix(std::min(end + 1, text.size()));
        }
    }

    // `text` at the left, in as many lines as it takes, `figure` at the right of the last.
    void entry(std::string_view text, const std::string& figure, const std::string& lead = "",
               bool isStrong = false) {
        const std::size_t hang = columnsOf(lead);
        const std::size_t room = width_ - hang - columnsOf(figure) - (figure.empty() ? 0 : 2);
        const auto parts =
            wrapped(clipped(shown(text), kLongestWords, script_), std::max<std::size_t>(room, 8));
        std::string start = lead;
        for (std::size_t k = 0; k < parts.size(); ++k) {
            std::string full = start + parts[k];
            if (k + 1 == parts.size() && !figure.empty()) {
                full = padded(full, width_ - columnsOf(figure)) + figure;
            }
            isStrong ? strong(full) : line(full);
            start = std::string(hang, ' ');
        }
    }

    void append(const std::string& lines) { text_ += lines; }

    [[nodiscard]] std::string take() { return std::move(text_); }

  private:
    Script script_;
    std::size_t width_;
    bool bold_;
    std::string text_;
};

void printHead(const WeekPage& page, Sheet& sheet) {
    sheet.strong(clipped(sheet.shown(page.job), sheet.width(), sheet.script()));
    sheet.paragraph(titleText(page));
    sheet.paragraph(whenText(page));
}

void printFigures(const WeekPage& page, Sheet& sheet) {
    sheet.blank();
    const auto figures = headFigures(page, sheet.script());
    std::size_t widest = 0;
    for (const auto& figure : figures) {
        widest = std::max(widest, columnsOf(figure.figure));
    }
    for (const auto& figure : figures) {
        sheet.paragraph(figure.strong + figure.rest,
                        padded(figure.name, 13) + padded(figure.figure, widest + 2));
    }
    if (const std::string buyer = buyerText(page); !buyer.empty()) {
        sheet.paragraph(buyer);
    }
}

void printLevel(const WeekPage& page, Sheet& sheet) {
    if (!page.level) {
        return;
    }
    sheet.blank();
    for (const auto& line : levelLines(*page.level, sheet.width(), sheet.script())) {
        sheet.line(line);
    }
    const std::string less = signedText(-page.level->end, sheet.script()) + " less";
    const std::string more = signedText(page.level->end, sheet.script()) + " more";
    sheet.line(padded(less, sheet.width() - columnsOf(more)) + more);
    sheet.paragraph(levelText(*page.level, sheet.script()) + "; " +
                    levelScaleText(*page.level, sheet.script()) + ".");
}

void printCurve(const WeekPage& page, Sheet& sheet) {
    sheet.heading(curveTitle(page));
    const auto lines = curveLines(page, sheet.width(), kChartRows, sheet.script());
    if (lines.empty()) {
        sheet.paragraph(
            "Nothing to draw yet: no item has planned dates, and nothing was marked or billed.");
    }
    for (const auto& line : lines) {
        sheet.line(line);
    }
    const CurveLetters letters = curveLetters(sheet.script());
    std::string legend;
    auto say = [&](const std::string& letter, const char* name,
                   std::optional<Money> CurvePoint::*figure, const char* when) {
        std::optional<Money> last;
        for (const auto& point : page.curve) {
            last = point.*figure ? point.*figure : last;
        }
        if (last) {
            legend += (legend.empty() ? "" : "; ") + letter + " " + name + " " +
                      wholeText(*last, sheet.script()) + when;
        }
    };
    if (!lines.empty()) {
        say(letters.planned, "planned", &CurvePoint::planned, " in all");
        say(letters.earned, "earned", &CurvePoint::earned, "");
        say(letters.spent, "spent", &CurvePoint::spent, " so far");
        sheet.paragraph(legend);
    }
    sheet.paragraph(progressText(page.progress, sheet.script()));
    sheet.words(methodsText(page, sheet.script()), "");
}

void printMovers(const WeekPage& page, Sheet& sheet) {
    sheet.heading("What moved it");
    const std::string asked = askedText(page, sheet.script());
    if (!page.movers) {
        sheet.paragraph("Nothing to compare with until a baseline is set.");
    } else {
        for (const auto& mover : page.movers->largest) {
            sheet.entry(mover.what, shortSignedText(mover.amount, sheet.script()));
            if (!mover.why.empty()) {
                sheet.paragraph(mover.why, std::string(kIndent, ' '));
            }
        }
        if (const std::string others = othersText(*page.movers); !others.empty()) {
            sheet.entry(others, shortSignedText(page.movers->others, sheet.script()));
        }
        sheet.entry(sinceText(page), shortSignedText(page.movers->total, sheet.script()), "", true);
    }
    if (!asked.empty()) {
        sheet.paragraph(asked);
    }
}

void printMoney(const WeekPage& page, Sheet& sheet) {
    sheet.heading("Money by trade");
    Table table;
    table.columns = {{"Trade", false},   {"Budget now", true},   {"Committed", true},
                     {"Billed", true},   {"Held", true},         {"Paid", true},
                     {"Forecast", true}, {"Over or early", true}};
    auto row = [&](const TradeMoney& trade) {
        std::vector<std::string> cells = {
            clipped(sheet.shown(trade.trade), kLongestTrade, sheet.script())};
        for (const Money money :
             {trade.amounts.budgetNow, trade.amounts.committed, trade.amounts.billed,
              trade.amounts.held, trade.amounts.paid, trade.amounts.forecast}) {
            cells.push_back(shortText(money, sheet.script()));
        }
        cells.push_back(standingText(trade, sheet.script()));
        table.rows.push_back(std::move(cells));
    };
    for (const auto& trade : page.trades) {
        row(trade);
    }
    row({"All", page.total, Money{}});
    table.endsWithTotal = true;
    sheet.append(printTable(table, {sheet.width(), sheet.script(), sheet.bold()}));
    if (const std::string contingency = contingencyText(page, sheet.script());
        !contingency.empty()) {
        sheet.paragraph(contingency);
    }
}

// Swatch, name, tape and figures of a room; the tape takes what is left of the line, within reason.
struct RoomColumns {
    std::size_t name = 0;
    std::size_t tape = 0;  // 0 where there is no room for one
};

RoomColumns roomColumns(const WeekPage& page, const Sheet& sheet, std::size_t figures) {
    constexpr std::size_t kNameLeast = 12;
    constexpr std::size_t kTapeLeast = 8;
    constexpr std::size_t kTapeMost = 32;
    std::size_t widest = 4;  // "Room"
    for (const auto& room : page.rooms) {
        widest = std::max(widest, columnsOf(sheet.shown(room.name)));
    }
    const std::size_t taken = std::min(kSwatch + figures + 1, sheet.width() - kNameLeast);
    const std::size_t left = sheet.width() - taken;
    RoomColumns columns{std::min(widest, left), 0};
    if (left >= kNameLeast + 1 + kTapeLeast) {
        columns.name = std::min(widest, left - 1 - kTapeLeast);
        columns.tape = std::min(kTapeMost, left - 1 - columns.name);
    }
    return columns;
}

void printRooms(const WeekPage& page, Sheet& sheet) {
    sheet.heading("By room");
    std::vector<std::string> figures = {"  Done    Plan      Over"};
    std::size_t widest = figures.front().size();
    for (const auto& room : page.rooms) {
        figures.push_back(paddedLeft(roomDoneText(room, sheet.script()), 6) + "  " +
                          paddedLeft(roomPlanText(room, sheet.script()), 6) + "  " +
                          paddedLeft(shortSignedText(room.over, sheet.script()), 8));
        widest = std::max(widest, columnsOf(figures.back()));
    }
    const RoomColumns columns = roomColumns(page, sheet, widest);
    auto line = [&](std::string_view chip, std::string_view name, const std::string& tape,
                    const std::string& figure) {
        std::string text =
            padded(clipped(sheet.shown(chip), 2, sheet.script()), kSwatch) +
            padded(clipped(sheet.shown(name), columns.name, sheet.script()), columns.name);
        text += columns.tape > 0 ? " " + padded(tape, columns.tape) : "";
        sheet.line(clipped(text + " " + figure, sheet.width(), sheet.script()));
    };
    line("", "Room", "", figures.front());
    for (std::size_t k = 0; k < page.rooms.size(); ++k) {
        const RoomProgress& room = page.rooms[k];
        line(room.shortName, room.name,
             columns.tape > 0 && room.items > 0
                 ? tapeLine(room.done, room.planned, columns.tape, sheet.script())
                 : "",
             figures[k + 1]);
    }
}

void printLists(const WeekPage& page, Sheet& sheet) {
    sheet.heading("Next 14 days");
    for (const auto& event : page.next) {
        const std::string day = padded(nextDayText(event, page.today), 12);
        sheet.entry(nextText(event) + (event.isLate ? " (late)" : ""),
                    event.amount ? shortText(*event.amount, sheet.script()) : "", day);
    }
    if (page.next.empty()) {
        sheet.paragraph("Nothing is due in the next 14 days.");
    }
    sheet.heading(page.papers.empty()
                      ? "Papers missing"
                      : "Papers missing (" + std::to_string(page.papers.size()) + ")");
    for (const auto& paper : page.papers) {
        sheet.entry(paper.what, paperText(paper, sheet.script()));
    }
    if (page.papers.empty()) {
        sheet.paragraph("None is missing.");
    }
    sheet.heading("On Monday");
    for (const auto& todo : page.monday) {
        sheet.entry(todo.what, clipped(sheet.shown(todo.page), 24, sheet.script()), "",
                    todo.isPressing || todo.isBarred);
        if (!todo.because.empty()) {
            sheet.paragraph(todo.because, std::string(kIndent, ' '));
        }
    }
    if (page.monday.empty()) {
        sheet.paragraph("Nothing stands out.");
    }
}

void printAnswers(const WeekPage& page, Sheet& sheet) {
    if (page.answers.empty()) {
        return;
    }
    sheet.heading("Asked every week");
    int number = 0;
    for (const auto& answer : page.answers) {
        const std::string lead = padded(std::to_string(++number) + ".", 4);
        sheet.paragraph(answer.question, lead, true);
        sheet.words(answer.answer, std::string(lead.size(), ' '));
    }
}

void printFoot(const WeekPage& page, Sheet& sheet) {
    if (const std::string leftOut = leftOutText(page); !leftOut.empty()) {
        sheet.blank();
        sheet.paragraph(leftOut);
    }
    if (showsBarred(page)) {
        sheet.blank();
        sheet.paragraph(reminderText());
    }
}

}  // namespace

std::string weekText(const WeekPage& page, const Style& style) {
    Sheet sheet(style);
    printHead(page, sheet);
    if (page.items == 0) {
        sheet.blank();
        sheet.paragraph(emptyJobText());
        return sheet.take();
    }
    printFigures(page, sheet);
    printLevel(page, sheet);
    printCurve(page, sheet);
    printMovers(page, sheet);
    printMoney(page, sheet);
    printRooms(page, sheet);
    printLists(page, sheet);
    printAnswers(page, sheet);
    printFoot(page, sheet);
    return sheet.take();
}

}  // namespace ledgerboard::report
