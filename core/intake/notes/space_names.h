// What does the name of a space tell of its sort?
#pragma once

#include <span>
#include <string>
#include <vector>

#include "core/intake/notes/tables.h"
#include "core/intake/notes/tokens.h"

namespace ledgerboard::intake {

[[nodiscard]] bool contains(const std::vector<std::string>& keys, const std::string& key);

// Whether "the bedrooms" may mean it; likewise "the baths", half baths apart.
[[nodiscard]] bool isBedroom(const std::string& key);
// A plain word that makes a room's name where nothing else is said: "our room", "the big room".
[[nodiscard]] bool namesRoom(const std::string& word);
[[nodiscard]] bool isBath(const std::string& key);
// A building beside the house, with a roof and walls of its own.
[[nodiscard]] bool isOutbuilding(const std::string& key);

// "front", "left", "north": on which side of the house.
[[nodiscard]] bool isSide(const std::string& name);
// "blue", "pink": what tells one bedroom from another.
[[nodiscard]] bool isColor(const std::string& name);

// The id of the word a space's name ends in, as the tables hold it: its stem.
[[nodiscard]] WordId placeWordOf(const std::string& head);
// What the speaker wrote from token `begin` to `end`, where every word of it is whole; else empty.
[[nodiscard]] std::string spoken(std::span<const Token> tokens, std::size_t begin, std::size_t end);

// 1 to 9 said or written at `at`, as in "bedroom two"; 0 if none.
[[nodiscard]] int smallNumber(std::span<const Token> tokens, std::size_t at);

// "the oak room, the bay room and the pine room": whether a name of the speaker's own that ends in
// "room" stands by itself at `at`; and whether there are several.
[[nodiscard]] bool isOwnRoom(std::span<const Token> tokens, std::size_t at);
[[nodiscard]] bool namesOwnRooms(std::span<const Token> tokens);
// "I'm going to call it the moon room": the same after "call it".
[[nodiscard]] bool isCalledRoom(std::span<const Token> tokens, std::size_t at);

// "I crawled under", "we were shopping": what somebody did, and no crawl space or shop.
[[nodiscard]] bool isWhatSomebodyDid(const Token& token);

// The last word of a space's name: what it is, without which of them.
[[nodiscard]] std::string headOf(const std::string& name);

}  // namespace ledgerboard::intake
