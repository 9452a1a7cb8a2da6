#include "desktop/cli/edit_words.h"

#include "core/intake/notes/lessons.h"
#include "core/model/rows.h"

namespace ledgerboard::cli {

using model::Kind;
using model::RawId;

namespace {

// The same words stand once: of two nobody could say which is meant.
Done refuseWordTwice(Session& session, RawId id, const std::string& phrase) {
    auto rows = session.book().value()->rows<model::OwnWord>();
    if (!rows.ok()) {
        return rows.error();
    }
    const std::string key = intake::phraseKey(phrase);
    for (const model::OwnWord& row : rows.value()) {
        if (row.id.raw() != id && intake::phraseKey(row.phrase) == key) {
            return model::wrongUse("\"" + row.phrase +
                                   "\" is one of your words already: drop it first with "
                                   "'ledgerboard drop " +
                                   row.id.raw().hex().substr(24) + "'");
        }
    }
    return {};
}

}  // namespace

Done refuseBadWord(Session& session, RawId id,
                   const std::vector<std::pair<model::FieldCode, model::Value>>& values) {
    auto record = session.book().value()->record(Kind::OwnWord, id);
    if (!record.ok()) {
        return record.error();
    }
    namespace w = model::field::OwnWord;
    const auto says = [&](model::FieldCode code) {
        bool is = record.value() && !model::isEmpty(record.value()->at(code)) &&
                  record.value()->at(code) != model::Value{false};
        for (const auto& [field, value] : values) {
            is = field == code ? !model::isEmpty(value) && value != model::Value{false} : is;
        }
        return is;
    };
    for (const auto& [field, value] : values) {
        const auto* phrase = std::get_if<std::string>(&value);
        if (field == w::phrase && phrase != nullptr && intake::phraseKey(*phrase).empty()) {
            return model::wrongUse("Said: \"" + *phrase +
                                   "\" has no word in it: numbers and signs are not heard");
        }
        if (field == w::phrase && phrase != nullptr) {
            if (auto good = refuseWordTwice(session, id, *phrase); !good.ok()) {
                return good.error();
            }
        }
    }
    if (!says(w::phrase)) {
        return model::wrongUse("Said: say which words you say on a walk, such as Said=credenza");
    }
    const int meanings = (says(w::object) ? 1 : 0) + (says(w::space) ? 1 : 0) +
                         (says(w::treatment) ? 1 : 0) + (says(w::nothing) ? 1 : 0);
    if (meanings != 1 && record.value()) {
        return model::wrongUse(
            "a word means one thing, and this one would mean " +
            std::string(meanings == 0 ? "none" : "two") +
            ": drop it with 'ledgerboard drop', and add it anew with what it means");
    }
    if (meanings != 1) {
        return model::wrongUse(
            "a word means one thing: give it one of Object, Space, Treatment or Nothing=yes");
    }
    return {};
}

std::string taughtText(const std::vector<std::string>& taught) {
    std::string text;
    for (const auto& one : taught) {
        text += "In walk notes " + one + " from now on.\n";
    }
    return text + (taught.empty() ? "" : "'ledgerboard list words' shows your own words.\n");
}

}  // namespace ledgerboard::cli
