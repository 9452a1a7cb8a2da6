#include "core/store/without_passwords.h"

#include <algorithm>
#include <string_view>

namespace ledgerboard::store {

std::string withoutPasswords(const std::string& text) {
    std::string out;
    for (std::size_t at = 0; at < text.size();) {
        const auto found = text.find("://", at);
        if (found == std::string::npos) {
            return out + text.substr(at);
        }
        const auto from = found + 3;
        const auto end = std::min(text.find_first_of(" \t\n\"'", from), text.size());
        std::string address = text.substr(from, end - from);
        const auto sign = address.rfind('@');
        const auto colon = address.find(':');
        if (sign != std::string::npos && colon < sign) {
            address.replace(colon + 1, sign - colon - 1, "...");
        }
        const auto query = address.find("password=");
        if (query != std::string::npos) {
            const auto begin = query + std::string_view("password=").size();
            address.replace(begin, std::min(address.find('&', begin), address.size()) - begin,
                            "...");
        }
        out += text.substr(at, from - at) + address;
        at = end;
    }
    return out;
}

}  // namespace ledgerboard::store
