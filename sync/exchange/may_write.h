// May this device write that? What an entry of a device is judged by before it is taken.
//
// The catalog says which fields a crew lead writes at all; which records, is said here: progress on
// own items, looks at own punch items that say fixed, own presence, own site photos, deliveries and
// cautions of own items, cautions of them that nobody wrote down yet, changes asked for in the own
// name. Source: docs/sync.md, "Who may write
// what".
#pragma once

#include <map>
#include <optional>
#include <string>

#include "sync/exchange/view.h"

namespace ledgerboard::sync {

class WriteJudge {
  public:
    // Requires: all outlive it. `view` is of the caller's standing; empty for an owner.
    WriteJudge(store::SyncBook& book, const Standing& standing, const View& view)
        : book_(book), standing_(standing), view_(view) {}

    // Why `entry` is to be set aside, in words that tell nothing of what is hidden; empty where it
    // may be taken. Entries are judged in order: what was accepted counts for those after it.
    // Errors: of the book.
    [[nodiscard]] model::Result<std::optional<std::string>> refusal(const store::Entry& entry);

  private:
    // What a record is known to hold, by the book and by what was accepted here.
    struct Held {
        model::Value value;
        model::RawId author;
    };

    using Cells = std::map<model::FieldCode, Held>;

    [[nodiscard]] bool leadMay(const store::Entry& entry, const model::Field* field);
    [[nodiscard]] bool ownFact(const store::Entry& entry, model::FieldCode belongsTo,
                               const std::set<model::RawId>& allowed);
    [[nodiscard]] bool mayPhoto(const store::Entry& entry);
    [[nodiscard]] bool mayAsk(const store::Entry& entry, bool gone);
    [[nodiscard]] bool isOwnPhoto(const model::RawId& photo);
    [[nodiscard]] bool mayDelivery(const store::Entry& entry);
    [[nodiscard]] bool mayCaution(const store::Entry& entry, bool gone);
    [[nodiscard]] bool mayVoid(const store::Entry& entry);
    [[nodiscard]] bool isOwnRecord(const model::RawId& record);
    [[nodiscard]] model::RawId refIn(const model::RawId& record, model::FieldCode field);
    Cells& cells(const model::RawId& record);

    store::SyncBook& book_;
    const Standing& standing_;
    const View& view_;
    std::map<model::RawId, Cells> known_;
    std::optional<model::Error> problem_;
};

}  // namespace ledgerboard::sync
