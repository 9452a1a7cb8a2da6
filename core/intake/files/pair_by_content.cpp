// Facts (spend, marks): which record did this row once make?
#include <algorithm>
#include <unordered_map>
#include <unordered_set>

#include "core/intake/files/pairing.h"
#include "core/intake/files/pairing_ways.h"
#include "core/intake/files/past.h"
#include "core/model/saying.h"
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

class ByContent {
  public:
    ByContent(const PairingInput& in, Problems& problems)
        : in_(in),
          problems_(problems),
          past_(in.book),
          pairings_(in.rows.size()),
          used_(in.existing.size(), false) {}

    model::Result<std::vector<Pairing>> run() {
        pairFacts();
        if (past_.error()) {
            return *past_.error();
        }
        return std::move(pairings_);
    }

  private:
    [[nodiscard]] std::string printed(FieldCode code, const Value& value) const {
        const std::string text =
            model::printValue(*model::fieldOf(code), value, in_.finder.nameRecord());
        return text.empty() ? "nothing" : text;
    }

    template <class Read>
    [[nodiscard]] std::string factsOf(Read&& read) const {
        std::string key;
        for (const auto* field : columnsOf(in_.kind)) {
            if (isFact(field->code)) {
                key += keyOf(read(field->code)) + "\n";
            }
        }
        return key;
    }

    void readExisting() {
        const FieldCode voids =
            in_.kind.kind == model::Kind::Spend ? f::Spend::voids : f::Mark::voids;
        for (std::size_t k = 0; k < in_.existing.size(); ++k) {
            if (const auto* id = std::get_if<model::RawId>(&in_.existing[k].at(voids))) {
                voided_.insert(*id);
            }
            byFacts_[factsOf([&](FieldCode code) { return in_.existing[k].at(code); })].push_back(
                k);
            if (in_.kind.kind == model::Kind::Spend) {
                const Value bankId = in_.existing[k].at(f::Spend::bankId);
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
        for (std::size_t at = 0; at < in_.rows.size(); ++at) {
            const Value bankId = valueIn(in_.rows[at].values, f::Spend::bankId);
            if (!in_.rows[at].unreadable.empty()) {
                continue;  // what it says is not known
            }
            if (model::isEmpty(bankId)) {
                open.push_back(at);
                continue;
            }
            const auto& text = std::get<std::string>(bankId);
            const auto [earlier, isNew] = lineOf.emplace(text, in_.rows[at].line);
            if (isNew) {
                pairByBankId(at, text);
            } else {
                problems_.add(
                    in_.rows[at].line, in_.headingOf(f::Spend::bankId),
                    model::saying("\"%1\" stands in line %2 too: take out one of the two rows",
                                  text, earlier->second)
                        .text());
            }
        }
        // The closest first, so that a row never takes the record another row made.
        for (const auto closeness : {Closeness::Equal, Closeness::SaysMore, Closeness::Once}) {
            std::erase_if(open, [&](std::size_t at) { return takeClosest(at, closeness); });
        }
        for (const auto at : open) {
            remarkLike(at);
            remarkCorrected(at);
        }
    }

    enum class Closeness {
        Equal,     // the record says what the row says and nothing else
        SaysMore,  // the record says all the row says
        Once,      // what differs, the record once said, or has not said yet
    };

    [[nodiscard]] std::string rowFacts(std::size_t at) const {
        return factsOf([&](FieldCode code) { return valueIn(in_.rows[at].values, code); });
    }

    bool isClose(const BroughtRow& row, const Record& record, Closeness closeness) {
        for (const auto* field : columnsOf(in_.kind)) {
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

    bool takeClosest(std::size_t at, Closeness closeness) {
        const auto found = byFacts_.find(rowFacts(at));
        if (found == byFacts_.end()) {
            return false;
        }
        for (const auto k : found->second) {
            if (!used_[k] && isClose(in_.rows[at], in_.existing[k], closeness)) {
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
        if (in_.existing[k].gone || voided_.contains(in_.existing[k].id)) {
            return;
        }
        for (const auto& [code, value] : in_.rows[at].values) {
            if (!isFact(code) && in_.existing[k].at(code) != value &&
                !past_.held(in_.existing[k].id, code, value)) {
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
            if (factsOf([&](FieldCode code) { return in_.existing[k].at(code); }) == facts) {
                take(at, k);
                return;
            }
        }
        const Record& other = in_.existing[found->second.back()];
        std::string differs;
        FieldCode column = f::Spend::amount;
        for (const auto code : {f::Spend::amount, f::Spend::spentOn, f::Spend::type}) {
            const Value said = valueIn(in_.rows[at].values, code);
            if (said != other.at(code)) {
                column = differs.empty() ? code : column;
                differs += (differs.empty() ? "" : "; ") + in_.headingOf(code) + " " +
                           printed(code, other.at(code)) + " there, " + printed(code, said) +
                           " here";
            }
        }
        problems_.add(in_.rows[at].line, in_.headingOf(column),
                      model::saying("the bank id \"%1\" is already in the book with other facts "
                                    "(%2), and spend is never edited: mend the row, or drop the "
                                    "one in the book and give this one another bank id",
                                    bankId, differs)
                          .text());
    }

    // A new row with the facts of a record that pairs with no row may be that record written anew.
    void remarkLike(std::size_t at) {
        const auto found = byFacts_.find(rowFacts(at));
        if (found == byFacts_.end() || model::isEmpty(valueIn(in_.rows[at].values, amountOf()))) {
            return;
        }
        for (const auto k : found->second) {
            if (!used_[k] && !in_.existing[k].gone && !voided_.contains(in_.existing[k].id)) {
                pairings_[at].remark = "has the same kind, date and amount as " +
                                       in_.finder.nameOf(in_.existing[k].id) +
                                       " in the book: drop one if they are one and the same";
                return;
            }
        }
    }

    // A new row that is like a record of the book but for the amount may be that record put right,
    // and then both would count.
    void remarkCorrected(std::size_t at) {
        const Value amount = valueIn(in_.rows[at].values, f::Spend::amount);
        if (in_.kind.kind != model::Kind::Spend || !pairings_[at].remark.empty() ||
            model::isEmpty(amount) ||
            model::isEmpty(valueIn(in_.rows[at].values, f::Spend::payee))) {
            return;
        }
        const auto isLike = [&](const Record& record) {
            const auto alike = {f::Spend::type, f::Spend::spentOn,  f::Spend::payee,
                                f::Spend::item, f::Spend::contract, f::Spend::crew};
            return std::all_of(alike.begin(), alike.end(), [&](FieldCode code) {
                return keyOf(valueIn(in_.rows[at].values, code)) == keyOf(record.at(code));
            });
        };
        for (std::size_t k = 0; k < in_.existing.size(); ++k) {
            if (!used_[k] && !in_.existing[k].gone && !voided_.contains(in_.existing[k].id) &&
                !model::isEmpty(in_.existing[k].at(f::Spend::amount)) && isLike(in_.existing[k])) {
                pairings_[at].remark =
                    "is like " + in_.finder.nameOf(in_.existing[k].id) +
                    " in the book but for the " + "amount (" +
                    printed(f::Spend::amount, in_.existing[k].at(f::Spend::amount)) + " there, " +
                    printed(f::Spend::amount, amount) +
                    " here): if it puts that one right, drop that one, or both count";
                return;
            }
        }
    }

    [[nodiscard]] FieldCode amountOf() const {
        return in_.kind.kind == model::Kind::Spend ? f::Spend::amount : FieldCode{0};
    }

    const PairingInput& in_;
    Problems& problems_;
    Past past_;
    std::vector<Pairing> pairings_;
    std::vector<bool> used_;  // records that a row is paired with
    std::unordered_set<model::RawId, model::RawIdHash> voided_;
    std::unordered_map<std::string, std::vector<std::size_t>> byFacts_;
    std::unordered_map<std::string, std::vector<std::size_t>> byBankId_;
};

}  // namespace

model::Result<std::vector<Pairing>> pairByContent(const PairingInput& in, Problems& problems) {
    return ByContent(in, problems).run();
}

}  // namespace ledgerboard::intake
