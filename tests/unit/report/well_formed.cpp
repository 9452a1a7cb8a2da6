#include "tests/unit/report/well_formed.h"

#include <array>
#include <set>

namespace ledgerboard::report::test {

namespace {

constexpr std::array<std::pair<std::string_view, char>, 5> kEntities = {
    {{"&amp;", '&'}, {"&lt;", '<'}, {"&gt;", '>'}, {"&quot;", '"'}, {"&#39;", '\''}}};

std::size_t entityAt(std::string_view text, char* meant) {
    for (const auto& [entity, letter] : kEntities) {
        if (text.substr(0, entity.size()) == entity) {
            *meant = letter;
            return entity.size();
        }
    }
    return 0;
}

std::string wrongText(std::string_view text) {
    for (std::size_t at = text.find('&'); at != std::string_view::npos;
         at = text.find('&', at + 1)) {
        char meant = 0;
        if (entityAt(text.substr(at), &meant) == 0) {
            return "a bare & near " + std::string(text.substr(at, 30));
        }
    }
    return {};
}

// `inside`: a start tag between its brackets.
std::string wrongTag(std::string_view inside) {
    std::set<std::string> seen;
    std::size_t at = inside.find_first_of(" /");
    while (at != std::string_view::npos && at < inside.size()) {
        at = inside.find_first_not_of(" /", at);
        if (at == std::string_view::npos) {
            break;
        }
        const auto equals = inside.find('=', at);
        if (equals == std::string_view::npos || equals + 1 >= inside.size() ||
            inside[equals + 1] != '"') {
            return "an attribute without quotes near " + std::string(inside.substr(at, 30));
        }
        const auto close = inside.find('"', equals + 2);
        if (close == std::string_view::npos) {
            return "an attribute left open near " + std::string(inside.substr(at, 30));
        }
        if (!seen.insert(std::string(inside.substr(at, equals - at))).second) {
            return "an attribute named twice in " + std::string(inside.substr(0, 40));
        }
        const auto value = inside.substr(equals + 2, close - equals - 2);
        if (value.find('<') != std::string_view::npos) {
            return "a bare < in " + std::string(inside.substr(0, 40));
        }
        if (auto wrong = wrongText(value); !wrong.empty()) {
            return wrong;
        }
        at = close + 1;
    }
    return {};
}

}  // namespace

std::string wrongWith(std::string_view html) {
    std::vector<std::string> open;
    constexpr std::string_view kDoctype = "<!DOCTYPE html>";
    if (html.substr(0, kDoctype.size()) != kDoctype) {
        return "no doctype";
    }
    html.remove_prefix(kDoctype.size());
    while (!html.empty()) {
        const auto less = html.find('<');
        if (auto wrong = wrongText(html.substr(0, less)); !wrong.empty()) {
            return wrong;
        }
        if (less == std::string_view::npos) {
            break;
        }
        const auto greater = html.find('>', less);
        if (greater == std::string_view::npos) {
            return "a tag left open";
        }
        const auto inside = html.substr(less + 1, greater - less - 1);
        html.remove_prefix(greater + 1);
        const std::string name(inside.substr(0, inside.find_first_of(" /", 1)));
        if (inside.front() == '/') {
            if (open.empty() || "/" + open.back() != name) {
                return name + " closes nothing, or " + (open.empty() ? "" : open.back());
            }
            open.pop_back();
            continue;
        }
        if (auto wrong = wrongTag(inside); !wrong.empty()) {
            return wrong;
        }
        if (inside.back() != '/') {
            open.push_back(name);
        }
        if (name == "style") {
            html.remove_prefix(html.find("</style>"));
        }
    }
    return open.empty() ? "" : open.back() + " is never closed";
}

std::string textOf(std::string_view html) {
    std::string out;
    bool isTag = false;
    bool isStyle = false;
    for (std::size_t at = 0; at < html.size(); ++at) {
        const char c = html[at];
        if (c == '<') {
            isTag = true;
            isStyle =
                html.substr(at, 6) == "<style" || (isStyle && html.substr(at, 8) != "</style>");
        } else if (c == '>') {
            isTag = false;
        } else if (!isTag && !isStyle) {
            char letter = c;
            if (c == '&') {
                const std::size_t length = entityAt(html.substr(at), &letter);
                at += length > 0 ? length - 1 : 0;
            }
            if (letter == '\n' || letter == ' ') {
                if (!out.empty() && out.back() != ' ') {
                    out += ' ';
                }
            } else {
                out += letter;
            }
            continue;
        }
        // Bold is within a sentence; every other tag parts what stands on either side.
        const bool isBold =
            html.substr(at < 3 ? 0 : at - 3, 4).find("/b>") != std::string_view::npos;
        if (c == '>' && !isBold && !out.empty() && out.back() != ' ') {
            out += ' ';
        }
    }
    return out;
}

std::vector<std::string> tagsNamed(std::string_view html, std::string_view name) {
    std::vector<std::string> tags;
    const std::string start = "<" + std::string(name);
    for (std::size_t at = html.find(start); at != std::string_view::npos;
         at = html.find(start, at + 1)) {
        const char after = html[at + start.size()];
        if (after == ' ' || after == '>' || after == '/') {
            tags.emplace_back(html.substr(at, html.find('>', at) - at + 1));
        }
    }
    return tags;
}

}  // namespace ledgerboard::report::test
