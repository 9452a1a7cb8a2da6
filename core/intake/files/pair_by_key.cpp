// Rows with a key: which record has it?
#include <algorithm>
#include <unordered_map>
#include <unordered_set>

#include "core/intake/files/pairing.h"
#include "core/intake/files/pairing_ways.h"
#include "core/intake/files/past.h"
#include "core/model/saying.h"

namespace ledgerboard::intake {

namespace {

using model::FieldCode;
using model::Value;
using store::Record;

class ByKey {
  public:
    ByKey(const PairingInput& in, Problems& problems)
        : in_(in),
          problems_(problems),
          past_(in.book),
          pairings_(in.rows.size()),
          used_(in.existing.size(), false) {
        for (const auto& column : in.columns) {
            if (column.field != nullptr) {
                brought_.insert(column.field->code);
            }
        }
    }

    model::Result<std::vector<Pairing>> run() {
        pairKeys();
        if (past_.error()) {
            return *past_.error();
        }
        return std::move(pairings_);
    }

  private:
    // The part of the key that every row fills; by it records are looked up.
    template <class Read>
    [[nodiscard]] std::string neededKey(Read&& read) const {
        std::string key;
        for (const auto code : in_.kind.key) {
            if (std::find(in_.kind.needed.begin(), in_.kind.needed.end(), code) !=
                in_.kind.needed.end()) {
                key += keyOf(read(code)) + "\n";
            }
        }
        return key;
    }

    [[nodiscard]] std::string wholeKey(const BroughtRow& row) const {
        std::string key;
        for (const auto code : in_.kind.key) {
            key += keyOf(valueIn(row.values, code)) + "\n";
        }
        return key;
    }

    // What the row says of its key is what the record says. A column that the file does not have
    // leaves its part of the key open; an empty cell of one that it has says that there is none.
    // With `fillIn`, a record that has none yet may take the row's.
    [[nodiscard]] bool sameKey(const BroughtRow& row, const Record& record, bool fillIn) const {
        return std::all_of(in_.kind.key.begin(), in_.kind.key.end(), [&](FieldCode code) {
            return !brought_.contains(code) ||
                   keyOf(valueIn(row.values, code)) == keyOf(record.at(code)) ||
                   (fillIn && model::isEmpty(record.at(code)));
        });
    }

    [[nodiscard]] bool keyFilled(const BroughtRow& row) const {
        return std::all_of(in_.kind.needed.begin(), in_.kind.needed.end(),
                           [&](FieldCode code) { return row.values.contains(code); });
    }

    [[nodiscard]] std::string keyWords() const {
        std::string out;
        for (const auto code : in_.kind.key) {
            out += (out.empty() ? "\"" : ", \"") + in_.headingOf(code) + "\"";
        }
        return out;
    }

    void pairKeys() {
        std::unordered_map<std::string, std::vector<std::size_t>> byKey;
        for (std::size_t k = 0; k < in_.existing.size(); ++k) {
            byKey[neededKey([&](FieldCode code) { return in_.existing[k].at(code); })].push_back(k);
        }
        std::unordered_map<std::string, std::int64_t> lineOf;
        std::vector<std::size_t> open;
        for (std::size_t at = 0; at < in_.rows.size(); ++at) {
            const auto& row = in_.rows[at];
            if (!keyFilled(row)) {
                continue;  // already a problem
            }
            const auto [earlier, isNew] = lineOf.emplace(wholeKey(row), row.line);
            if (!isNew) {
                problems_.add(row.line, in_.headingOf(in_.kind.needed.back()),
                              model::saying("says again what line %1 says (%2 are the same): make "
                                            "one row of the two, or tell them apart there",
                                            earlier->second, keyWords())
                                  .text());
                continue;
            }
            open.push_back(at);
        }
        // Equal keys first, so that no row fills in the record that another row names.
        for (const bool fillIn : {false, true}) {
            if (fillIn && !in_.kind.keyFillsIn) {
                break;
            }
            std::erase_if(open, [&](std::size_t at) {
                const auto found = byKey.find(
                    neededKey([&](FieldCode code) { return valueIn(in_.rows[at].values, code); }));
                return found == byKey.end() || settle(at, found->second, fillIn);
            });
        }
    }

    // Of several records with one key (a price of last year and one that a house taught), the one
    // that already says all of the row, if there is one.
    void narrowToEqual(const BroughtRow& row, std::vector<std::size_t>& alive) const {
        std::vector<std::size_t> equal;
        for (const auto k : alive) {
            const FieldValues values = toWrite(row, in_.existing[k]);
            if (std::all_of(values.begin(), values.end(), [&](const auto& pair) {
                    return in_.existing[k].at(pair.first) == pair.second;
                })) {
                equal.push_back(k);
            }
        }
        if (equal.size() == 1) {
            alive = equal;
        }
    }

    // True where the row is settled.
    bool settle(std::size_t at, const std::vector<std::size_t>& candidates, bool fillIn) {
        const auto& row = in_.rows[at];
        std::vector<std::size_t> alive;
        std::optional<std::size_t> dropped;
        for (const auto k : candidates) {
            if (!sameKey(row, in_.existing[k], fillIn) || used_[k]) {
                continue;
            }
            if (!in_.existing[k].gone) {
                alive.push_back(k);
            } else if (!dropped && past_.everHeld(in_.existing[k], toWrite(row, in_.existing[k]))) {
                dropped = k;
            }
        }
        if (alive.size() > 1) {
            narrowToEqual(row, alive);
        }
        if (alive.size() > 1 && fillIn) {
            return false;  // which of them it would be is not known: it is one of its own
        }
        if (alive.size() > 1) {
            std::string names;
            for (const auto k : alive) {
                names += (names.empty() ? "" : ", ") + in_.finder.nameOf(in_.existing[k].id);
            }
            problems_.add(
                row.line, "",
                model::saying(
                    "may mean %1 records (%2): tell them apart in the book first, or drop one",
                    alive.size(), names)
                    .text());
            return true;
        }
        if (alive.empty() && dropped) {
            pairings_[at] = {PairedAs::Same,
                             *dropped,
                             {},
                             "was dropped from the book and stays so; 'ledgerboard set " +
                                 in_.existing[*dropped].id.hex().substr(24) +
                                 " Dropped no' brings it back"};
            return true;
        }
        if (alive.empty()) {
            return false;
        }
        used_[alive.front()] = true;
        pairings_[at] = {PairedAs::Same, alive.front(), {}, ""};
        for (const auto& [code, value] : toWrite(row, in_.existing[alive.front()])) {
            if (in_.existing[alive.front()].at(code) != value) {
                pairings_[at].changes.emplace(code, value);
                pairings_[at].as = PairedAs::Different;
            }
        }
        return true;
    }

    // A key that differs only in how it is written is left as the book has it.
    [[nodiscard]] FieldValues toWrite(const BroughtRow& row, const Record& record) const {
        FieldValues values = row.values;
        for (const auto code : in_.kind.key) {
            if (!model::isEmpty(record.at(code))) {
                values.erase(code);
            }
        }
        return values;
    }

    const PairingInput& in_;
    Problems& problems_;
    Past past_;
    std::vector<Pairing> pairings_;
    std::vector<bool> used_;                 // records that a row is paired with
    std::unordered_set<FieldCode> brought_;  // what the file has columns for
};

}  // namespace

model::Result<std::vector<Pairing>> pairByKey(const PairingInput& in, Problems& problems) {
    return ByKey(in, problems).run();
}

}  // namespace ledgerboard::intake
