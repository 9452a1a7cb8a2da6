#include "sync/wire/bounded_json.h"

namespace ledgerboard::sync {

namespace {

// How deep brackets nest, those within strings not counted.
bool isDeeper(std::string_view text, int most) {
    int depth = 0;
    bool inString = false;
    for (std::size_t k = 0; k < text.size(); ++k) {
        const char c = text[k];
        if (inString) {
            k += c == '\\' ? 1 : 0;
            inString = c != '"';
        } else if (c == '"') {
            inString = true;
        } else if (c == '[' || c == '{') {
            if (++depth > most) {
                return true;
            }
        } else if (c == ']' || c == '}') {
            --depth;
        }
    }
    return false;
}

}  // namespace

std::optional<nlohmann::json> readJson(std::string_view text, int mostDepth) {
    if (isDeeper(text, mostDepth)) {
        return std::nullopt;
    }
    auto parsed = nlohmann::json::parse(text, nullptr, /*allow_exceptions=*/false);
    if (parsed.is_discarded()) {
        return std::nullopt;
    }
    return parsed;
}

std::optional<std::string> textAt(const nlohmann::json& object, const char* name) {
    if (!object.is_object()) {
        return std::nullopt;
    }
    const auto found = object.find(name);
    if (found == object.end() || !found->is_string()) {
        return std::nullopt;
    }
    return found->get<std::string>();
}

}  // namespace ledgerboard::sync
