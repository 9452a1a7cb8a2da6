#include "desktop/cli/paragraphs.h"

#include <algorithm>

#include "core/report/plain_text.h"

namespace ledgerboard::cli {

namespace {

std::size_t roomFor(Session& session, std::size_t indent) {
    constexpr std::size_t kLeast = 20;
    const std::size_t width = session.surroundings().width;
    return width > indent + kLeast ? width - indent : kLeast;
}

}  // namespace

std::string beside(Session& session, std::string_view lead, std::size_t indent,
                   std::string_view text) {
    const std::string shownLead = report::shownText(lead, session.script());
    const std::string shown = report::shownText(text, session.script());
    if (shown.empty()) {
        return shownLead + "\n";
    }
    const bool fits = report::columnsOf(shownLead) + 1 < indent;
    std::string out = fits ? report::padded(shownLead, indent) : shownLead + "\n";
    bool isFirst = fits;
    for (const std::string& line : report::wrapped(shown, roomFor(session, indent))) {
        out += (isFirst ? "" : std::string(indent, ' ')) + line + "\n";
        isFirst = false;
    }
    return out;
}

std::string paragraph(Session& session, std::string_view text, std::size_t indent) {
    std::string out;
    const std::string shown = report::shownText(text, session.script());
    for (const std::string& line : report::wrapped(shown, roomFor(session, indent))) {
        out += std::string(indent, ' ') + line + "\n";
    }
    return out;
}

}  // namespace ledgerboard::cli
