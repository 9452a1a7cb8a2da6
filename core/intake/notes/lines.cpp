#include "core/intake/notes/lines.h"

#include <algorithm>
#include <array>
#include <set>
#include <string>

#include "core/intake/notes/characters.h"
#include "core/intake/notes/line_leads.h"
#include "core/intake/notes/one_of.h"
#include "core/intake/notes/tokens.h"

namespace ledgerboard::intake {

namespace {

// A line at least this long that breaks off without a full stop goes on in the next one.
constexpr std::size_t kWrappedFrom = 48;
constexpr std::size_t kNeverWrapped = 130;

bool onlyOf(std::string_view text, std::string_view allowed) {
    return text.find_first_not_of(allowed) == std::string_view::npos;
}

// The box before a line of a list of them: ' ' is open, 'x' ticked, 0 where there is none.
char takeBox(std::string_view& text) {
    static constexpr std::array<std::pair<std::string_view, char>, 10> kBoxes = {
        {{"- [ ]", ' '},
         {"- [x]", 'x'},
         {"- [X]", 'x'},
         {"[ ]", ' '},
         {"[]", ' '},
         {"[x]", 'x'},
         {"[X]", 'x'},
         {"\xE2\x98\x90", ' '},
         {"\xE2\x98\x91", 'x'},
         {"\xE2\x9C\x93", 'x'}}};
    const char first = text.empty() ? '\0' : text.front();
    if (first != '-' && first != '[' && first != '\xE2') {
        return '\0';
    }
    for (const auto& [box, state] : kBoxes) {
        if (text.starts_with(box) && text.size() > box.size()) {
            text = trimmed(text.substr(box.size()));
            return state;
        }
    }
    return '\0';
}

bool takeBullet(std::string_view& text) {
    for (const std::string_view bullet : {"- ", "* ", "+ ", "\xE2\x80\xA2 ", "\xE2\x80\xA2",
                                          "\xE2\x80\x93 ", "\xE2\x80\x94 ", "> "}) {
        if (text.starts_with(bullet)) {
            text = trimmed(text.substr(bullet.size()));
            return true;
        }
    }
    std::size_t digits = 0;
    while (digits < text.size() && isDigit(text[digits])) {
        ++digits;
    }
    const bool numbered = digits > 0 && digits < 3 && digits + 1 < text.size() &&
                          (text[digits] == '.' || text[digits] == ')') && text[digits + 1] == ' ';
    if (numbered) {
        text = trimmed(text.substr(digits + 1));
    }
    return numbered;
}

// "--KITCHEN--", "[Kitchen]": a heading in a frame.
bool takeFrame(std::string_view& text) {
    constexpr std::string_view kOpen = "-~=_[<*";
    constexpr std::string_view kClose = "-~=_]>*";
    constexpr std::size_t kLongest = 48;
    const std::size_t kind = kOpen.find(text.front());
    if (text.size() < 5 || text.size() > kLongest || kind == std::string_view::npos ||
        text.back() != kClose[kind]) {
        return false;
    }
    const std::size_t begin = text.find_first_not_of(text.front());
    const std::size_t end = text.find_last_not_of(text.back());
    if (begin == std::string_view::npos || end < begin) {
        return false;
    }
    text = trimmed(text.substr(begin, end - begin + 1));
    return true;
}

bool takeHeadingMarks(std::string_view& text) {
    bool marked = takeFrame(text);
    while (text.starts_with('#') || text.starts_with("**") || text.starts_with("==")) {
        text = trimmed(text.substr(text.find_first_not_of("#*=") == std::string_view::npos
                                       ? text.size()
                                       : text.find_first_not_of("#*=")));
        marked = true;
    }
    while (marked && (text.ends_with('*') || text.ends_with('#') || text.ends_with('='))) {
        text = trimmed(text.substr(0, text.size() - 1));
    }
    return marked;
}

// "4. The kitchen cabinets stay. …": a paragraph of a letter that counts them.
bool isNumberedParagraph(std::string_view text) {
    constexpr std::size_t kLong = 60;
    if (text.size() < kLong || text.front() < '0' || text.front() > '9') {
        return false;
    }
    const std::size_t stop = text.find(". ", 4);
    return stop != std::string_view::npos && stop + 2 < text.size();
}

struct RawLine {
    std::string_view text;
    int number = 0;
    int indent = 0;
    bool stamped = false;
    bool afterBlank = false;
};

std::vector<RawLine> rawLines(std::string_view notes, bool& anyStamp) {
    std::vector<RawLine> lines;
    bool blank = false;
    bool stamp = false;
    int number = 0;
    while (!notes.empty()) {
        const std::size_t end = std::min(notes.find('\n'), notes.size());
        const std::string_view whole = notes.substr(0, end);
        notes.remove_prefix(std::min(end + 1, notes.size()));
        ++number;
        std::string_view text = trimmed(whole);
        const auto indent = static_cast<int>(
            std::min<std::size_t>(whole.find_first_not_of(" \t") == std::string_view::npos
                                      ? 0
                                      : whole.find_first_not_of(" \t"),
                                  200));
        if (text.empty()) {
            blank = true;
            continue;
        }
        const bool cueTime = text.find("-->") != std::string_view::npos && clockLength(text) > 0;
        const std::string_view nextLine = trimmed(notes.substr(0, notes.find('\n')));
        const bool cueNumber =
            onlyOf(text, "0123456789") && nextLine.find("-->") != std::string_view::npos;
        if (cueTime || cueNumber || text == "WEBVTT") {
            stamp = anyStamp = true;
            continue;
        }
        const bool stamped = takeStamp(text);
        anyStamp = anyStamp || stamped;
        if (text.empty()) {
            stamp = true;
            continue;
        }
        lines.push_back(RawLine{.text = text,
                                .number = number,
                                .indent = indent,
                                .stamped = stamped || stamp,
                                .afterBlank = blank});
        blank = false;
        stamp = false;
    }
    return lines;
}

std::set<std::string_view> speakersIn(const std::vector<RawLine>& lines) {
    std::vector<std::string_view> texts;
    texts.reserve(lines.size());
    for (const RawLine& line : lines) {
        texts.push_back(line.text);
    }
    return speakersOf(texts);
}

bool endsSentence(std::string_view text) {
    while (!text.empty() && (text.back() == '"' || text.back() == ')' || text.back() == '\'')) {
        text.remove_suffix(1);
    }
    return !text.empty() &&
           (text.back() == '.' || text.back() == '?' || text.back() == '!' || text.back() == ':');
}

// Whether a line of that length is broken off where the next line's first word no longer fitted.
bool isFullAt(std::size_t length, std::string_view next, std::size_t width) {
    const std::size_t word = std::min(next.find(' '), next.size());
    return width > 0 && length >= kWrappedFrom && length + 1 + word + 2 >= width;
}

// Whether the lines really break off at `width`. On a wrapped page many do so in the middle of a
// sentence, and the next goes on small; lines that end where an entry ends are only now and then
// as long.
bool isWrapped(const std::vector<RawLine>& lines, std::size_t width) {
    std::size_t broken = 0;
    std::size_t small = 0;
    for (std::size_t i = 0; i + 1 < lines.size(); ++i) {
        const RawLine& next = lines[i + 1];
        if (next.afterBlank || endsSentence(lines[i].text) ||
            !isFullAt(lines[i].text.size(), next.text, width)) {
            continue;
        }
        // A bullet goes on with nothing.
        std::string_view rest = next.text;
        if (takeBox(rest) != '\0' || takeBullet(rest)) {
            continue;
        }
        ++broken;
        small += rest.front() >= 'a' && rest.front() <= 'z' ? 1 : 0;
    }
    return broken * 12 >= lines.size() && small * 3 >= broken * 2;
}

// Whether more lines are longer than any page is wide than a slip would explain: nothing breaks
// lines off there but the speaker.
bool isUnwrapped(const std::vector<RawLine>& lines) {
    const auto longer =
        static_cast<std::size_t>(std::count_if(lines.begin(), lines.end(), [](const RawLine& line) {
            return line.text.size() >= kNeverWrapped;
        }));
    return longer * 10 > lines.size();
}

// The width at which the writer's lines break off; 0 where the page has none. Lines crowd just
// below it: a single longer one, edited afterwards, does not count.
std::size_t wrapWidth(const std::vector<RawLine>& lines) {
    constexpr std::size_t kCrowd = 10;  // a word's length
    std::array<std::size_t, kNeverWrapped> atLength{};
    if (isUnwrapped(lines)) {
        return 0;
    }
    for (const RawLine& line : lines) {
        if (line.text.size() < kNeverWrapped) {
            ++atLength[line.text.size()];
        }
    }
    const std::size_t enough = 2 + lines.size() / 25;
    for (std::size_t width = kNeverWrapped - 1; width >= kWrappedFrom; --width) {
        std::size_t crowd = 0;
        for (std::size_t back = 0; back <= kCrowd; ++back) {
            crowd += atLength[width - back];
        }
        if (atLength[width] > 0 && crowd >= enough) {
            return isWrapped(lines, width) ? width : 0;
        }
    }
    return 0;
}

// Whether each stamped line is a whole remark, with sentences of its own, rather than a slice of
// running speech: then no sentence goes on from one to the next.
bool isWholeRemarks(const std::vector<RawLine>& lines) {
    constexpr std::size_t kRemark = 100;
    std::size_t length = 0;
    std::size_t stamped = 0;
    std::size_t marked = 0;
    for (const RawLine& line : lines) {
        if (line.stamped) {
            ++stamped;
            length += line.text.size();
            marked += line.text.find(". ") != std::string_view::npos ? 1 : 0;
        }
    }
    return stamped > 1 && ((length >= kRemark * stamped && marked * 2 >= stamped) || marked == 0);
}

// "… we tear up the": more must come.
bool dangles(std::string_view text) {
    constexpr std::array<std::string_view, 26> kLeads = {
        "the",  "a",   "an",  "and",  "or",    "of",   "to",   "in",     "on",
        "with", "for", "is",  "are",  "but",   "that", "this", "at",     "by",
        "from", "my",  "our", "need", "needs", "new",  "so",   "because"};
    const std::size_t begin = text.find_last_of(' ');
    const std::string last =
        plainWord(text.substr(begin == std::string_view::npos ? 0 : begin + 1));
    return isOneOf(last, kLeads);
}

// Whether the lines are speech written down as it came, and broken off anywhere: most begin small,
// few end a sentence.
bool isBreathless(const std::vector<RawLine>& lines) {
    constexpr std::size_t kLabel = 24;
    std::size_t small = 0;
    std::size_t ended = 0;
    for (const RawLine& line : lines) {
        const char first = line.text.front();
        const std::size_t label = line.text.substr(0, kLabel).find_first_of(":-");
        small += first >= 'a' && first <= 'z' && label == std::string_view::npos &&
                         line.text.size() >= 30
                     ? 1
                     : 0;
        ended += endsSentence(line.text) ? 1 : 0;
    }
    return lines.size() > 3 && small * 10 >= lines.size() * 7 && ended * 10 <= lines.size() * 3 &&
           !isUnwrapped(lines);
}

// "BR2 - carpet", "EXT: …", "LR/DR paint": a line that opens with a label in capitals.
bool isLabelled(std::string_view text) {
    std::size_t end = 0;
    std::size_t letters = 0;
    while (end < text.size() && text[end] != ' ' && text[end] != ':' && text[end] != '-') {
        const char c = text[end];
        if (c >= 'a' && c <= 'z') {
            return false;
        }
        letters += c >= 'A' && c <= 'Z' ? 1 : 0;
        ++end;
    }
    return letters >= 2;
}

// "b1 - cpt new", "Front bed: sand": a line that opens with up to three words and a mark.
bool opensWithLabel(std::string_view text) {
    constexpr std::size_t kLongest = 26;
    constexpr std::size_t kMostGaps = 2;
    const char first = text.empty() ? '\0' : text.front();
    if (!isLetter(first)) {
        return false;
    }
    std::size_t gaps = 0;
    for (std::size_t i = 1; i + 1 < text.size() && i < kLongest && gaps <= kMostGaps; ++i) {
        const bool spaced = text[i + 1] == ' ';
        if ((text[i] == ':' || (text[i] == '-' && text[i - 1] == ' ')) && spaced) {
            return true;
        }
        if (text[i] == '.' || text[i] == ',' || text[i] == ';' || text[i] == '(') {
            return false;
        }
        gaps += text[i] == ' ' && text[i + 1] != '-' ? 1 : 0;
    }
    return false;
}

// A line goes on in the next where its first word would not have fitted.
bool isFull(std::size_t length, std::string_view next, std::size_t width) {
    return isFullAt(length, next, width) && !isLabelled(next) && !opensWithLabel(next) &&
           next.substr(0, 24).find(':') == std::string_view::npos;
}

// Whether most lines open with a label: then a line is an entry, and never the rest of another.
bool isMostlyLabelled(const std::vector<RawLine>& lines) {
    const auto labelled = std::count_if(lines.begin(), lines.end(),
                                        [](const RawLine& line) { return isLabelled(line.text); });
    return static_cast<std::size_t>(labelled) * 3 >= lines.size();
}

// Whether most lines open with a label of any letters.
bool isMostlyMarked(const std::vector<RawLine>& lines) {
    constexpr std::size_t kFew = 5;
    const auto marked = static_cast<std::size_t>(std::count_if(
        lines.begin(), lines.end(), [](const RawLine& line) { return opensWithLabel(line.text); }));
    return marked >= kFew && marked * 2 >= lines.size();
}

// Whether the writer begins what is new with a capital letter: then a line that begins small goes
// on with the one before it. Headings say nothing of that.
bool capitalizes(const std::vector<RawLine>& lines) {
    constexpr std::size_t kHeading = 20;
    std::size_t opening = 0;
    std::size_t capital = 0;
    bool fresh = true;
    for (const RawLine& line : lines) {
        const char first = line.text.front();
        const bool letter = (first >= 'a' && first <= 'z') || (first >= 'A' && first <= 'Z');
        if (letter && (fresh || line.afterBlank) && line.text.size() > kHeading) {
            ++opening;
            capital += first <= 'Z' ? 1 : 0;
        }
        fresh = endsSentence(line.text);
    }
    return opening > 4 && capital * 10 >= opening * 9;
}

// "… and has to come | down.": the rest of a line that was broken off.
bool isRest(const std::string_view before, const RawLine& line) {
    constexpr std::size_t kProse = 45;
    return before.size() >= kProse && !line.afterBlank && line.text.front() >= 'a' &&
           line.text.front() <= 'z' && line.text.substr(0, 24).find(':') == std::string_view::npos;
}

// Takes the bullet or the box off the front, also in "-kitchen- cabs stay".
void takeListMark(std::string_view& text, NoteLine& made) {
    constexpr std::size_t kLabel = 20;
    if (text.size() > 2 && isLetter(text[1]) && text[0] == '-' && text.find("- ") < kLabel) {
        text.remove_prefix(1);
    }
    const char box = takeBox(text);
    made.ticked = box == 'x';
    made.bullet = box != '\0' || takeBullet(text);
}

// Where all boxes are ticked, the tick is but a mark.
bool hasOpenBox(const std::vector<RawLine>& lines) {
    return std::any_of(lines.begin(), lines.end(), [](const RawLine& line) {
        std::string_view text = line.text;
        return takeBox(text) == ' ';
    });
}

}  // namespace

std::vector<NoteLine> noteLines(std::string_view notes) {
    bool anyStamp = false;
    const std::vector<RawLine> raw = rawLines(notes, anyStamp);
    const std::set<std::string_view> speakers = speakersIn(raw);
    const std::size_t width = wrapWidth(raw);
    const bool breathless = isBreathless(raw);
    const bool remarks = isWholeRemarks(raw);
    std::vector<NoteLine> lines;
    const bool labels = speakers.empty() && isMostlyLabelled(raw);
    const bool marks = !labels && speakers.empty() && !anyStamp && isMostlyMarked(raw);
    const bool capitals = capitalizes(raw) && !isMostlyLabelled(raw);
    std::string_view previous;
    bool previousEnds = true;
    const bool openBoxes = hasOpenBox(raw);
    for (const RawLine& line : raw) {
        std::string_view text = line.text;
        if (onlyOf(text, "-=_*~ ")) {
            if (!lines.empty() && text.size() > 2 && lines.back().text.size() < 40) {
                lines.back().heading = true;
            }
            previousEnds = true;
            continue;
        }
        NoteLine made;
        made.number = line.number;
        made.indent = line.indent;
        if (const LeadingName lead = leadingName(text); speakers.contains(lead.name)) {
            text = trimmed(text.substr(lead.length));
            made.spoken = true;
            takeStamp(text);
        }
        made.heading = takeFrame(text);
        const bool paragraph = line.afterBlank && isNumberedParagraph(text);
        if (!made.heading) {
            takeListMark(text, made);
            made.bullet = made.bullet && !paragraph;
            made.ticked = made.ticked && openBoxes;
        }
        made.heading = takeHeadingMarks(text) || made.heading;
        made.labelled = labels && !made.bullet && !made.heading && isLabelled(text);
        made.marked = marks && !made.bullet && !made.heading && opensWithLabel(text);
        made.unlabelled = labels && !made.labelled && line.afterBlank && !made.heading;
        made.afterBlank = line.afterBlank;
        made.text = text;
        if (text.empty()) {
            continue;
        }
        // "kitchen", and a long line below it: no line of one text is cut so short.
        constexpr std::size_t kShort = 32;
        const bool titled = !lines.empty() && lines.back().afterBlank && previous.size() < kShort &&
                            text.size() > 2 * previous.size() && text.size() > kShort;
        const bool flows = anyStamp
                               ? !previousEnds && (!(remarks && line.stamped) || dangles(previous))
                               : !line.afterBlank && !previousEnds && !titled &&
                                     (breathless || (capitals && isRest(previous, line)) ||
                                      isFull(previous.size(), line.text, width));
        made.opens = !flows || made.bullet || made.spoken || made.heading ||
                     (!lines.empty() && lines.back().heading);
        previous = line.text;
        previousEnds = endsSentence(text);
        lines.push_back(made);
    }
    if (!lines.empty()) {
        lines.front().opens = true;
    }
    return lines;
}

}  // namespace ledgerboard::intake
