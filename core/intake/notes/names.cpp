#include "core/intake/notes/names.h"

#include "core/intake/notes/space_names.h"
#include "core/intake/notes/spaces.h"
#include "core/intake/notes/tables.h"
#include "core/intake/notes/tokens.h"

namespace ledgerboard::intake {

std::string spaceName(std::string_view written) {
    Speller speller(tables().lexicon);
    std::vector<Token> tokens;
    cutTokens(written, 0, speller, tables().lexicon, tokens);
    const std::vector<SpaceSpot> spots = spacesIn(tokens);
    return spots.empty() ? plainWord(written) : spots.front().key;
}

std::string objectName(std::string_view written) {
    Speller speller(tables().lexicon);
    std::vector<Token> tokens;
    cutTokens(written, 0, speller, tables().lexicon, tokens);
    // The longest phrase that ends where the words end: the head of a compound comes last.
    for (std::size_t begin = 0; begin < tokens.size(); ++begin) {
        std::uint32_t node = 0;
        for (std::size_t i = begin; i < tokens.size(); ++i) {
            const bool hyphen = tokens[i].kind == TokenKind::Mark;
            if (hyphen && i > begin) {
                continue;
            }
            node = tokens[i].word == kUnknown ? 0 : tables().phrases.step(node, tokens[i].word);
            if (node == 0) {
                break;
            }
        }
        for (const Meaning& meaning : tables().phrases.at(node)) {
            if (node != 0 && meaning.from == From::Object) {
                return tables().objects[meaning.row].name;
            }
        }
    }
    std::string stems;
    for (const std::string& stem : stemsIn(written)) {
        stems += (stems.empty() ? "" : " ") + stem;
    }
    return stems;
}

std::string objectName(std::string_view written, std::string_view space) {
    std::string name = objectName(written);
    const std::uint32_t object = tables().objectNamed(name);
    const WordId place = placeWordOf(headOf(spaceName(space)));
    for (const KindRow& kind : tables().kinds) {
        if (kind.place && place != kUnknown && kind.general == object && kind.word == place) {
            return tables().objects[kind.object].name;
        }
    }
    return name;
}

bool isKnownSpace(std::string_view written) {
    Speller speller(tables().lexicon);
    std::vector<Token> tokens;
    cutTokens(written, 0, speller, tables().lexicon, tokens);
    return !spacesIn(tokens).empty();
}

bool isKnownObject(std::string_view written) {
    return tables().objectNamed(objectName(written)) != kNone;
}

std::vector<std::string> stemsIn(std::string_view written) {
    Speller speller(tables().lexicon);
    std::vector<Token> tokens;
    cutTokens(written, 0, speller, tables().lexicon, tokens);
    std::vector<std::string> stems;
    for (const Token& token : tokens) {
        if (token.kind == TokenKind::Word) {
            for (std::string& stem : speller.stemsOf(token.text)) {
                stems.push_back(std::move(stem));
            }
        }
    }
    return stems;
}

}  // namespace ledgerboard::intake
