#include "sync/guard/request_head.h"

#include <algorithm>
#include <charconv>
#include <optional>

#include "sync/wire/limits.h"

namespace ledgerboard::sync {

namespace {

constexpr std::string_view kLineEnd = "\r\n";
constexpr std::size_t kLongestKeptValue = 256;
constexpr std::size_t kMostLengthDigits = 9;

bool isAlphanumeric(char c) {
    return (c >= '0' && c <= '9') || (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z');
}

// A token of RFC 9110, section 5.6.2.
bool isToken(std::string_view text) {
    constexpr std::string_view kSigns = "!#$%&'*+-.^_`|~";
    return !text.empty() && std::all_of(text.begin(), text.end(), [&](char c) {
        return isAlphanumeric(c) || kSigns.find(c) != std::string_view::npos;
    });
}

// Printable ASCII, spaces and tabs: stricter than RFC 9110, which lets bytes above 127 pass.
bool isPlain(std::string_view text) {
    return std::all_of(text.begin(), text.end(),
                       [](char c) { return c == '\t' || (c >= ' ' && c <= '~'); });
}

bool sameName(std::string_view a, std::string_view b) {
    const auto lower = [](char c) {
        return c >= 'A' && c <= 'Z' ? static_cast<char>(c + ('a' - 'A')) : c;
    };
    return a.size() == b.size() && std::equal(a.begin(), a.end(), b.begin(),
                                              [&](char x, char y) { return lower(x) == lower(y); });
}

std::string_view trimmed(std::string_view text) {
    const auto first = text.find_first_not_of(" \t");
    if (first == std::string_view::npos) {
        return {};
    }
    return text.substr(first, text.find_last_not_of(" \t") - first + 1);
}

// Takes one line off the front of `text`; nothing where no line end is left.
std::optional<std::string_view> takeLine(std::string_view& text) {
    const auto end = text.find(kLineEnd);
    if (end == std::string_view::npos) {
        return std::nullopt;
    }
    const auto line = text.substr(0, end);
    text.remove_prefix(end + kLineEnd.size());
    return line;
}

// What the headers said that matters here.
struct Said {
    std::optional<std::size_t> length;
    bool host = false;
    bool coded = false;  // Transfer-Encoding
};

// Reads the request line. 0 where its form is good; whether the call is known is judged later.
int readRequestLine(std::string_view line, RequestHead& head) {
    const auto first = line.find(' ');
    const auto last = line.rfind(' ');
    if (first == std::string_view::npos || first == last || !isPlain(line)) {
        return 400;
    }
    const auto method = line.substr(0, first);
    const auto path = line.substr(first + 1, last - first - 1);
    const auto version = line.substr(last + 1);
    if (!isToken(method) || path.empty() || path.front() != '/' ||
        path.find(' ') != std::string_view::npos) {
        return 400;
    }
    if (version != "HTTP/1.1") {
        return version.substr(0, 5) == "HTTP/" ? 505 : 400;
    }
    head.method = method;
    head.path = path;
    return 0;
}

int readLength(std::string_view value, Said& said) {
    const bool digits =
        !value.empty() && value.find_first_not_of("0123456789") == std::string_view::npos;
    if (said.length || !digits) {
        return 400;  // two lengths, a sign, a list: any of them hides a second request
    }
    if (value.size() > kMostLengthDigits) {
        return 413;
    }
    std::size_t length = 0;
    std::from_chars(value.data(), value.data() + value.size(), length);
    said.length = length;
    return 0;
}

int keepHeader(std::string_view name, std::string_view value, const HeadRules& rules,
               RequestHead& head) {
    const auto kept = std::find_if(rules.keptHeaders.begin(), rules.keptHeaders.end(),
                                   [&](std::string_view each) { return sameName(each, name); });
    if (kept == rules.keptHeaders.end()) {
        return 0;
    }
    const bool good = value.size() <= kLongestKeptValue &&
                      std::all_of(value.begin(), value.end(), isAlphanumeric);
    return good && head.kept.emplace(*kept, value).second ? 0 : 400;
}

int readHeader(std::string_view line, const HeadRules& rules, Said& said, RequestHead& head) {
    const auto colon = line.find(':');
    if (colon == std::string_view::npos || !isToken(line.substr(0, colon)) || !isPlain(line)) {
        return 400;  // also a folded line, which begins with a space
    }
    const auto name = line.substr(0, colon);
    const auto value = trimmed(line.substr(colon + 1));
    if (sameName(name, "Content-Length")) {
        return readLength(value, said);
    }
    if (sameName(name, "Transfer-Encoding")) {
        said.coded = true;
    } else if (sameName(name, "Content-Encoding")) {
        return sameName(value, "identity") ? 0 : 415;
    } else if (sameName(name, "Expect")) {
        return 417;
    } else if (sameName(name, "Host")) {
        said.host = true;
    } else if (sameName(name, "Connection")) {
        head.close = head.close || sameName(value, "close");
    }
    return keepHeader(name, value, rules, head);
}

// Whether the call is known and its body may come.
int judge(const HeadRules& rules, const Said& said, RequestHead& head) {
    const auto samePath = [&](const Route& route) { return route.path == head.path; };
    if (std::none_of(rules.routes.begin(), rules.routes.end(), samePath)) {
        return 404;
    }
    const auto route = std::find_if(
        rules.routes.begin(), rules.routes.end(),
        [&](const Route& each) { return samePath(each) && each.method == head.method; });
    if (route == rules.routes.end()) {
        return 405;
    }
    if (!said.host) {
        return 400;
    }
    if (said.coded || (head.method == "POST" && !said.length)) {
        return 411;
    }
    head.bodyBytes = said.length.value_or(0);
    return head.bodyBytes > route->mostBodyBytes ? 413 : 0;
}

}  // namespace

HeadVerdict readHead(std::string_view text, const HeadRules& rules) {
    HeadVerdict out;
    auto line = takeLine(text);
    out.status = line ? readRequestLine(*line, out.head) : 400;
    Said said;
    std::size_t lines = 0;
    while (out.status == 0) {
        line = takeLine(text);
        if (!line) {
            out.status = 400;
        } else if (line->empty()) {
            break;
        } else if (++lines > kMostHeadLines) {
            out.status = 431;
        } else {
            out.status = readHeader(*line, rules, said, out.head);
        }
    }
    if (out.status == 0) {
        out.status = text.empty() ? judge(rules, said, out.head) : 400;
    }
    return out;
}

std::string writeHead(const RequestHead& head) {
    std::string out = head.method + " " + head.path + " HTTP/1.1\r\nHost: ledgerboard-peer\r\n";
    if (head.method == "POST") {
        out += "Content-Type: application/octet-stream\r\nContent-Length: " +
               std::to_string(head.bodyBytes) + "\r\n";
    }
    for (const auto& [name, value] : head.kept) {
        out += name + ": " + value + "\r\n";
    }
    return out + (head.close ? "Connection: close\r\n\r\n" : "\r\n");
}

std::string_view reasonOf(int status) {
    switch (status) {
        case 404:
            return "Not Found";
        case 405:
            return "Method Not Allowed";
        case 408:
            return "Request Timeout";
        case 411:
            return "Length Required";
        case 413:
            return "Payload Too Large";
        case 415:
            return "Unsupported Media Type";
        case 417:
            return "Expectation Failed";
        case 431:
            return "Request Header Fields Too Large";
        case 503:
            return "Service Unavailable";
        case 505:
            return "HTTP Version Not Supported";
        default:
            return "Bad Request";
    }
}

}  // namespace ledgerboard::sync
