// Which record does a person mean, and what is a record called?
//
// A record is known by its name (a crew, a space, a contract ...), SPACE/OBJECT for scope items,
// the two letters of a space, a draw's number, a spend's bank id ("line" before it for the bank
// line), its whole id, or four or more hex digits from the start or end of its id. Case, spaces and
// hyphens do not matter. Where two records share a name, longer names tell them apart:
// SPACE/TREATMENT OBJECT, CREW/CONTRACT, QUESTION/OPTION, and in the end NAME [end of the id].
// Names go before ids. Threads: any number may ask; adding is one thread's work.
#pragma once

#include <string>
#include <string_view>
#include <unordered_map>
#include <utility>
#include <vector>

#include "core/model/id.h"
#include "core/model/result.h"
#include "core/model/rows.h"
#include "core/model/value.h"
#include "core/store/book.h"

namespace ledgerboard::intake {

// The rows that names are looked up in: everything of the job, every job, and what is the whole
// book's. A nil job: jobs, crews, prices, people and devices alone. Errors: as Book::jobRows.
[[nodiscard]] model::Result<model::JobRows> rowsForFinding(const store::Book& book,
                                                           model::Id<model::Kind::Job> job);

class Finder {
  public:
    // Over rowsForFinding(book, job), read once.
    [[nodiscard]] static model::Result<Finder> open(const store::Book& book,
                                                    model::Id<model::Kind::Job> job);

    explicit Finder(const model::JobRows& rows);

    // A record made in the same action, so that later rows can name it. Spaces, alternates and
    // crews go before what is named after them. Requires: row.id is new here.
    template <class Row>
    void add(const Row& row) {
        addForms(Row::kKind, row.id.raw(), formsOf(row));
    }

    // The record of `kind` that `text` means. Errors (CannotBeMet): none, with the nearest name and
    // how to add one; several, each listed with what tells it apart.
    [[nodiscard]] model::Result<model::RawId> find(model::Kind kind, std::string_view text) const;

    // The same among records of every kind.
    [[nodiscard]] model::Result<std::pair<model::Kind, model::RawId>> findAny(
        std::string_view text) const;

    // The shortest name that find() understands as this record; its id where it has no name or is
    // not known here.
    [[nodiscard]] std::string nameOf(model::RawId id) const;

    // None where the record is not known here.
    [[nodiscard]] model::Kind kindOf(model::RawId id) const;

    // Whether a record of `kind` is called `text` (ids do not count).
    [[nodiscard]] bool hasName(model::Kind kind, std::string_view text) const;

    // For parseValue and printValue. The Finder must outlive them.
    [[nodiscard]] model::FindRecord findRecord() const;
    [[nodiscard]] model::NameRecord nameRecord() const;

  private:
    // What a record is called. `names` from the shortest to the one that tells most; `others` are
    // understood and never shown.
    struct Forms {
        std::vector<std::string> names;
        std::vector<std::string> others;
    };

    struct Named {
        model::Kind kind = model::Kind::None;
        model::RawId id;
        std::vector<std::string> names;
    };

    using Places = std::vector<std::size_t>;  // in records_

    Finder() = default;

    template <class Row>
    [[nodiscard]] Forms formsOf(const Row& row) const;
    [[nodiscard]] Forms itemForms(const model::Item& item) const;
    [[nodiscard]] std::string nameWithin(model::RawId outer) const;
    void addForms(model::Kind kind, model::RawId id, Forms forms);
    void addAll(const model::JobRows& rows);
    // Records of `kind` (None: any) that `text` may mean.
    [[nodiscard]] Places meant(model::Kind kind, std::string_view text) const;
    [[nodiscard]] Places byId(model::Kind kind, std::string_view text) const;
    [[nodiscard]] bool isOneName(model::Kind kind, const std::string& name) const;
    [[nodiscard]] model::Error several(std::string_view text, const Places& places) const;
    [[nodiscard]] model::Error none(model::Kind kind, std::string_view text) const;

    std::vector<Named> records_;
    std::unordered_map<std::string, Places> byName_;  // folded names and others
    std::unordered_map<model::RawId, std::size_t, model::RawIdHash> byId_;
};

}  // namespace ledgerboard::intake
