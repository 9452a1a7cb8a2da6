#include "core/intake/files/pairing.h"

#include <algorithm>
#include <unordered_map>
#include <unordered_set>

#include "core/model/value.h"

namespace ledgerboard::intake {

namespace {

namespace f = model::field;
using model::FieldCode;
using model::Value;
using store::Record;

bool isFact(FieldCode code) {
    return model::fieldOf(code)->merge == model::Merge::Kept;
}

// What a record once held, read when first asked for.
class Past {
  public:
    explicit Past(const store::Book& book) : book_(book) {}

    // Whether `record` holds or ever held every value of `values`. Errors go to error().
    bool everHeld(const Record& record, const FieldValues& values) {
        for (const auto& [code, value] : values) {
            if (record.at(code) != value && !held(record.id, code, value)) {
                return false;
            }
        }
        return true;
    }

    bool held(model::RawId record, FieldCode code, const Value& value) {
        auto found = lines_.find(record);
        if (found == lines_.end()) {
            auto read = book_.history(record);
            if (!read.ok()) {
                error_ = read.error();
                return true;
            }
            found = lines_.emplace(record, std::move(read).value()).first;
        }
        return std::any_of(found->second.begin(), found->second.end(), [&](const auto& line) {
            return line.field == code && line.value == value;
        });
    }

    [[nodiscard]] const std::optional<model::Error>& error() const { return error_; }

  private:
    const store::Book& book_;
    std::unordered_map<model::RawId, std::vector<store::HistoryLine>, model::RawIdHash> lines_;
    std::optional<model::Error> error_;
};

// What pairing by key and by content share.
class Pairer {
  public:
    Pairer(const BringKind& kind, const std::vector<BroughtRow>& rows,
           const std::vector<Record>& existing, const store::Book& book, const Finder& finder,
           const HeadingOf& headingOf, Problems& problems)
        : kind_(kind),
          rows_(rows),
          existing_(existing),
          finder_(finder),
          headingOf_(headingOf),
          problems_(problems),
          past_(book),
          pairings_(rows.size()),
          used_(existing.size(), false) {}

    model::Result<std::vector<Pairing>> run() {
        if (kind_.key.empty()) {
            pairFacts();
        } else {
            pairKeys();
        }
        if (past_.error()) {
            return *past_.error();
        }
        return std::move(pairings_);
    }

  private:
    [[nodiscard]] std::string printed(FieldCode code, const Value& value) const {
        const std::string text =
            model::printValue(*model::fieldOf(code), value, finder_.nameRecord());
        return text.empty() ? "nothing" : text;
    }

    // ---- by key ----

    // The part of the key that every row fills; by it records are looked up.
    template <class Read>
    [[nodiscard]] std::string neededKey(Read&& read) const {
        std::string key;
        for (const auto code : kind_.key) {
            if (std::find(kind_.needed.begin(), kind_.needed.end(), code) != kind_.needed.end()) {
                key += keyOf(read(code)) + "\n";
            }
        }
        return key;
    }

    [[nodiscard]] std::string wholeKey(const BroughtRow& row) const {
        std::string key;
        for (const auto code : kind_.key) {
            key += keyOf(valueIn(row.values, code)) + "\n";
        }
        return key;
    }

    // What the row says of its key is what the record says.
    [[nodiscard]] bool sameKey(const BroughtRow& row, const Record& record) const {
        return std::all_of(kind_.key.begin(), kind_.key.end(), [&](FieldCode code) {
            const auto found = row.values.find(code);
            return found == row.values.end() || keyOf(found->second) == keyOf(record.at(code));
        });
    }

    [[nodiscard]] bool keyFilled(const BroughtRow& row) const {
        return std::all_of(kind_.needed.begin(), kind_.needed.end(),
                           [&](FieldCode code) { return row.values.contains(code); });
    }

    [[nodiscard]] std::string keyWords() const {
        std::string out;
        for (const auto code : kind_.key) {
            out += (out.empty() ? "\"" : ", \"") + headingOf_(code) + "\"";
        }
        return out;
    }

    void pairKeys() {
        std::unordered_map<std::string, std::vector<std::size_t>> byKey;
        for (std::size_t k = 0; k < existing_.size(); ++k) {
            byKey[neededKey([&](FieldCode code) { return existing_[k].at(code); })].push_back(k);
        }
        std::unordered_map<std::string, std::int64_t> lineOf;
        for (std::size_t at = 0; at < rows_.size(); ++at) {
            const auto& row = rows_[at];
            if (!keyFilled(row)) {
                continue;  // already a problem
            }
            const auto [earlier, isNew] = lineOf.emplace(wholeKey(row), row.line);
            if (!isNew) {
                problems_.add(row.line, headingOf_(kind_.needed.back()),
                              "says again what line " + std::to_string(earlier->second) +
                                  " says (" + keyWords() +
                                  " are the same): make one row of the two, or tell them apart "
                                  "there");
                continue;
            }
            const auto found =
                byKey.find(neededKey([&](FieldCode code) { return valueIn(row.values, code); }));
            if (found != byKey.end()) {
                pairByKey(at, found->second);
            }
        }
    }

    void pairByKey(std::size_t at, const std::vector<std::size_t>& candidates) {
        const auto& row = rows_[at];
        std::vector<std::size_t> alive;
        for (const auto k : candidates) {
            if (!sameKey(row, existing_[k]) || used_[k]) {
                continue;
            }
            if (!existing_[k].gone) {
                alive.push_back(k);
            } else if (alive.empty() && pairings_[at].as == PairedAs::New &&
                       past_.everHeld(existing_[k], withoutKey(row))) {
                pairings_[at] = {PairedAs::Same, k, {}, "was dropped from the book and stays so"};
            }
        }
        if (alive.size() > 1) {
            std::string names;
            for (const auto k : alive) {
                names += (names.empty() ? "" : ", ") + finder_.nameOf(existing_[k].id);
            }
            problems_.add(row.line, "",
                          "may mean " + std::to_string(alive.size()) + " records (" + names +
                              "): tell them apart in the book first, or drop one");
            return;
        }
        if (alive.empty()) {
            return;
        }
        used_[alive.front()] = true;
        pairings_[at] = {PairedAs::Same, alive.front(), {}, ""};
        for (const auto& [code, value] : withoutKey(row)) {
            if (existing_[alive.front()].at(code) != value) {
                pairings_[at].changes.emplace(code, value);
                pairings_[at].as = PairedAs::Different;
            }
        }
    }

    // A key that differs only in how it is written is left as the book has it.
    [[nodiscard]] FieldValues withoutKey(const BroughtRow& row) const {
        FieldValues values = row.values;
        for (const auto code : kind_.key) {
            values.erase(code);
        }
        return values;
    }

    // ---- by content ----

    template <class Read>
    [[nodiscard]] std::string factsOf(Read&& read) const {
        std::string key;
        for (const auto* field : columnsOf(kind_)) {
            if (isFact(field->code)) {
                key += keyOf(read(field->code)) + "\n";
            }
        }
        return key;
    }

    void readExisting() {
        const FieldCode voids = kind_.kind == model::Kind::Spend ? f::Spend::voids : f::Mark::voids;
        for (std::size_t k = 0; k < existing_.size(); ++k) {
            if (const auto* id = std::get_if<model::RawId>(&existing_[k].at(voids))) {
                voided_.insert(*id);
            }
            byFacts_[factsOf([&](FieldCode code) { return existing_[k].at(code); })].push_back(k);
            if (kind_.kind == model::Kind::Spend) {
                const Value bankId = existing_[k].at(f::Spend::bankId);
                if (!model::isEmpty(bankId)) {
                    byBankId_[std::get<std::string>(bankId)].push_back(k);
                }
            }
        }
    }

    void pairFacts() {
        readExisting();
        std::unordered_map<std::string, std::int64_t> lineOf;
        std::vector<std::size_t> open;
        for (std::size_t at = 0; at < rows_.size(); ++at) {
            const Value bankId = valueIn(rows_[at].values, f::Spend::bankId);
            if (model::isEmpty(bankId)) {
                open.push_back(at);
                continue;
            }
            const auto& text = std::get<std::string>(bankId);
            const auto [earlier, isNew] = lineOf.emplace(text, rows_[at].line);
            if (isNew) {
                pairByBankId(at, text);
            } else {
                problems_.add(rows_[at].line, headingOf_(f::Spend::bankId),
                              "\"" + text + "\" stands in line " + std::to_string(earlier->second) +
                                  " too: take out one of the two rows");
            }
        }
        // The closest first, so that a row never takes the record another row made.
        for (const auto closeness : {Closeness::Equal, Closeness::SaysMore, Closeness::Once}) {
            std::erase_if(open, [&](std::size_t at) { return pairByContent(at, closeness); });
        }
        for (const auto at : open) {
            remarkLike(at);
        }
    }

    enum class Closeness {
        Equal,     // the record says what the row says and nothing else
        SaysMore,  // the record says all the row says
        Once,      // what differs, the record once said, or has not said yet
    };

    [[nodiscard]] std::string rowFacts(std::size_t at) const {
        return factsOf([&](FieldCode code) { return valueIn(rows_[at].values, code); });
    }

    bool isClose(const BroughtRow& row, const Record& record, Closeness closeness) {
        for (const auto* field : columnsOf(kind_)) {
            const Value said = valueIn(row.values, field->code);
            const Value& has = record.at(field->code);
            if (said == has) {
                continue;
            }
            if (closeness == Closeness::Equal ||
                (closeness == Closeness::SaysMore && !model::isEmpty(said))) {
                return false;
            }
            if (closeness == Closeness::Once && !model::isEmpty(said) && !model::isEmpty(has) &&
                !past_.held(record.id, field->code, said)) {
                return false;
            }
        }
        return true;
    }

    bool pairByContent(std::size_t at, Closeness closeness) {
        const auto found = byFacts_.find(rowFacts(at));
        if (found == byFacts_.end()) {
            return false;
        }
        for (const auto k : found->second) {
            if (!used_[k] && isClose(rows_[at], existing_[k], closeness)) {
                take(at, k);
                return true;
            }
        }
        return false;
    }

    // The row is this record. Filing the record lacks is filled in; what the owner changed since
    // stays changed.
    void take(std::size_t at, std::size_t k) {
        used_[k] = true;
        pairings_[at] = {PairedAs::Same, k, {}, ""};
        if (existing_[k].gone || voided_.contains(existing_[k].id)) {
            return;
        }
        for (const auto& [code, value] : rows_[at].values) {
            if (!isFact(code) && existing_[k].at(code) != value &&
                !past_.held(existing_[k].id, code, value)) {
                pairings_[at].changes.emplace(code, value);
                pairings_[at].as = PairedAs::Different;
            }
        }
    }

    void pairByBankId(std::size_t at, const std::string& bankId) {
        const auto found = byBankId_.find(bankId);
        if (found == byBankId_.end()) {
            remarkLike(at);
            return;
        }
        const std::string facts = rowFacts(at);
        for (const auto k : found->second) {
            if (factsOf([&](FieldCode code) { return existing_[k].at(code); }) == facts) {
                take(at, k);
                return;
            }
        }
        const Record& other = existing_[found->second.back()];
        std::string differs;
        FieldCode column = f::Spend::amount;
        for (const auto code : {f::Spend::amount, f::Spend::spentOn, f::Spend::type}) {
            const Value said = valueIn(rows_[at].values, code);
            if (said != other.at(code)) {
                column = differs.empty() ? code : column;
                differs += (differs.empty() ? "" : "; ") + headingOf_(code) + " " +
                           printed(code, other.at(code)) + " there, " + printed(code, said) +
                           " here";
            }
        }
        problems_.add(rows_[at].line, headingOf_(column),
                      "the bank id \"" + bankId + "\" is already in the book with other facts (" +
                          differs +
                          "), and spend is never edited: mend the row, or drop the one in the "
                          "book and give this one another bank id");
    }

    // A new row with the facts of a record that pairs with no row may be that record written anew.
    void remarkLike(std::size_t at) {
        const auto found = byFacts_.find(rowFacts(at));
        if (found == byFacts_.end() || model::isEmpty(valueIn(rows_[at].values, amountOf()))) {
            return;
        }
        for (const auto k : found->second) {
            if (!used_[k] && !existing_[k].gone && !voided_.contains(existing_[k].id)) {
                pairings_[at].remark = "has the same kind, date and amount as " +
                                       finder_.nameOf(existing_[k].id) +
                                       " in the book: drop one if they are one and the same";
                return;
            }
        }
    }

    [[nodiscard]] FieldCode amountOf() const {
        return kind_.kind == model::Kind::Spend ? f::Spend::amount : FieldCode{0};
    }

    const BringKind& kind_;
    const std::vector<BroughtRow>& rows_;
    const std::vector<Record>& existing_;
    const Finder& finder_;
    const HeadingOf& headingOf_;
    Problems& problems_;
    Past past_;
    std::vector<Pairing> pairings_;
    std::vector<bool> used_;
    std::unordered_set<model::RawId, model::RawIdHash> voided_;
    std::unordered_map<std::string, std::vector<std::size_t>> byFacts_;
    std::unordered_map<std::string, std::vector<std::size_t>> byBankId_;
};

}  // namespace

std::string keyOf(const Value& value) {
    if (const auto* text = std::get_if<std::string>(&value)) {
        return model::folded(*text);
    }
    if (const auto* units = std::get_if<std::int64_t>(&value)) {
        return std::to_string(*units);
    }
    if (const auto* id = std::get_if<model::RawId>(&value)) {
        return id->hex();
    }
    return "";
}

Value valueIn(const FieldValues& values, FieldCode code) {
    const auto found = values.find(code);
    return found == values.end() ? Value{} : found->second;
}

model::Result<std::vector<Pairing>> pairRows(const BringKind& kind,
                                             const std::vector<BroughtRow>& rows,
                                             const std::vector<Record>& existing,
                                             const store::Book& book, const Finder& finder,
                                             const HeadingOf& headingOf, Problems& problems) {
    return Pairer(kind, rows, existing, book, finder, headingOf, problems).run();
}

}  // namespace ledgerboard::intake
