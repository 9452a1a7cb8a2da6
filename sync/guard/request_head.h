// Is this the head of a request we answer? Read strictly, by ourselves: the HTTP library behind the
// guard gets to see only a head that we have written anew.
//
// Refused are therefore, whatever the library would make of them: other methods and paths than the
// known ones, a body without exactly one decimal Content-Length, Transfer-Encoding,
// Content-Encoding, Expect, folded lines, bare line feeds, names and values with odd characters.
// Every other header (Range, Accept-Encoding, REMOTE_ADDR, ...) is left out.
// Source: RFC 9112 for the grammar; stricter where said. No socket here, so that it can be fuzzed.
#pragma once

#include <map>
#include <span>
#include <string>
#include <string_view>

namespace ledgerboard::sync {

// One call that is answered. The views must outlive the rules.
struct Route {
    std::string_view method;  // GET or POST
    std::string_view path;
    std::size_t mostBodyBytes = 0;
};

struct HeadRules {
    std::span<const Route> routes;
    std::span<const std::string_view> keptHeaders;  // passed on: letters and digits alone
};

struct RequestHead {
    std::string method;
    std::string path;
    std::size_t bodyBytes = 0;
    bool close = false;                       // the caller wants no further request
    std::map<std::string, std::string> kept;  // by the name in the rules
};

// `status` 0: the head is good. Otherwise the HTTP status to refuse it with.
struct HeadVerdict {
    int status = 0;
    RequestHead head;
};

// `text` is everything up to and with the empty line, at most kMostHeadBytes.
// Statuses: 400 malformed, 404 and 405 no such call, 411 no plain length, 413 too long a body,
// 415 encoded, 417 expects an answer before its body, 431 too many lines, 505 another HTTP.
[[nodiscard]] HeadVerdict readHead(std::string_view text, const HeadRules& rules);

// The head as the library gets to see it.
[[nodiscard]] std::string writeHead(const RequestHead& head);

// "Payload Too Large" and so on for the statuses used here.
[[nodiscard]] std::string_view reasonOf(int status);

}  // namespace ledgerboard::sync
