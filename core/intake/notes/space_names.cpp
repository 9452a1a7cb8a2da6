#include "core/intake/notes/space_names.h"

#include <algorithm>

#include "core/intake/notes/one_of.h"

namespace ledgerboard::intake {

bool contains(const std::vector<std::string>& keys, const std::string& key) {
    return std::find(keys.begin(), keys.end(), key) != keys.end();
}

bool isBedroom(const std::string& key) {
    const bool bath = key.ends_with(" bath");  // "bedroom 2 bath"
    return (key.find("bedroom") != std::string::npos && !bath) || key == "nursery" ||
           key == "box room";
}

bool isBath(const std::string& key) {
    return key.find("bath") != std::string::npos && key != "half bath";
}

bool isOutbuilding(const std::string& key) {
    return std::ranges::any_of(tables().spaces, [&](const SpaceRow& row) {
        return row.building && key.ends_with(row.name) &&
               (key.size() == row.name.size() || key[key.size() - row.name.size() - 1] == ' ');
    });
}

bool namesRoom(const std::string& word) {
    static const std::vector<std::string_view> kWords = {
        "my", "our", "his", "her", "their", "big", "good", "small", "little", "large", "best"};
    return isOneOf(word, kWords);
}

bool isSide(const std::string& name) {
    static const std::vector<std::string_view> kSides = {
        "front", "back", "left",      "right",     "middle",    "north",    "south",
        "east",  "west", "northeast", "northwest", "southeast", "southwest"};
    return isOneOf(name, kSides);
}

bool isColor(const std::string& name) {
    for (const std::string_view color :
         {"blue", "pink", "green", "yellow", "red", "purple", "white", "gray", "brown", "orange"}) {
        if (name == color) {
            return true;
        }
    }
    return false;
}

WordId placeWordOf(const std::string& head) {
    const WordId id = tables().id(head);
    if (id != kUnknown || head.empty()) {
        return id;
    }
    // The stems of "garage" and "laundry".
    const std::string stem = head.substr(0, head.size() - 1);
    return head.back() == 'e'   ? tables().id(stem)
           : head.back() == 'y' ? tables().id(stem + 'i')
                                : kUnknown;
}

std::string spoken(std::span<const Token> tokens, std::size_t begin, std::size_t end) {
    std::string text;
    for (std::size_t i = begin; i < end; ++i) {
        std::string word = tokens[i].plain;
        if (i + 1 == end && word.ends_with("'s")) {
            word.resize(word.size() - 2);  // "bathroom's pink"
        }
        const Lexicon& lexicon = tables().lexicon;
        const std::string* meaning = lexicon.respelling(word);
        // "LNGE", "ft": short for another word.
        const bool shortened = tokens[i].word != kUnknown && meaning == nullptr &&
                               lexicon.find(word) == kUnknown &&
                               !lexicon.abbreviations().fullWord(word).empty();
        if ((meaning != nullptr && *meaning != word) || word.size() > 24 || word == "ft" ||
            shortened) {
            return {};
        }
        if (!text.empty() && !tokens[i].glued) {
            text.push_back(' ');
        }
        text += word;
    }
    return text;
}

int smallNumber(std::span<const Token> tokens, std::size_t at) {
    if (at >= tokens.size()) {
        return 0;
    }
    if (tokens[at].kind == TokenKind::Number) {
        const std::int64_t value = tokens[at].value;
        return value % 1000 == 0 && value > 0 && value < 10'000 ? static_cast<int>(value / 1000)
                                                                : 0;
    }
    const NumberRow row = tables().number(tokens[at].word);
    return row.kind == NumberKind::Unit && row.value < 10'000 ? static_cast<int>(row.value / 1000)
                                                              : 0;
}

bool isOwnRoom(std::span<const Token> tokens, std::size_t at) {
    static const WordId kAnd = tables().id("and");
    static const WordId kThe = tables().id("the");
    static const WordId kRoom = tables().id("room");
    const auto parts = [&](std::size_t i) {
        return i >= tokens.size() || tokens[i].kind == TokenKind::Mark || tokens[i].word == kAnd;
    };
    if (at + 1 >= tokens.size() || tokens[at + 1].word != kRoom || !parts(at + 2) ||
        tokens[at].kind != TokenKind::Word ||
        tables().number(tokens[at].word).kind != NumberKind::None) {
        return false;
    }
    const std::size_t before = at > 0 && tokens[at - 1].word == kThe ? at - 1 : at;
    static const WordId kIs = tables().id("is");
    return before == 0 || parts(before - 1) || tokens[before - 1].word == kIs;
}

bool isWhatSomebodyDid(const Token& token) {
    std::string_view word = token.plain;
    word.remove_suffix(word.ends_with("'s") ? 2 : 0);
    const bool form = word.ends_with("ed") || word.ends_with("ing");
    return form && tables().id(word) != token.word;
}

bool isCalledRoom(std::span<const Token> tokens, std::size_t at) {
    static const WordId kCall = tables().id("call");
    static const WordId kThe = tables().id("the");
    static const WordId kRoom = tables().id("room");
    static const WordId kIt = tables().id("it");
    if (at < 2 || at + 1 >= tokens.size() || tokens[at - 1].word != kThe ||
        tokens[at + 1].word != kRoom || tokens[at].kind != TokenKind::Word) {
        return false;
    }
    return tokens[at - 2].word == kCall ||
           (at > 2 && tokens[at - 2].word == kIt && tokens[at - 3].word == kCall);
}

bool namesOwnRooms(std::span<const Token> tokens) {
    static const WordId kRoom = tables().id("room");
    int count = 0;
    for (std::size_t i = 0; i + 1 < tokens.size(); ++i) {
        count += tokens[i + 1].word == kRoom && isOwnRoom(tokens, i) ? 1 : 0;
    }
    return count > 1;
}

std::string headOf(const std::string& name) {
    std::string text = name;
    while (!text.empty() && (text.back() >= '0' && text.back() <= '9')) {
        text.pop_back();
        while (!text.empty() && text.back() == ' ') {
            text.pop_back();
        }
    }
    // A laundry room is told apart from all other rooms by what stands in it.
    if (text.ends_with("laundry room")) {
        return "laundry";
    }
    const std::size_t gap = text.rfind(' ');
    std::string head = gap == std::string::npos ? text : text.substr(gap + 1);
    if (head == "bathroom") {
        head = "bath";
    }
    return head == "hallway" ? "hall" : head;
}

}  // namespace ledgerboard::intake
