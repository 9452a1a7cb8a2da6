// What does typing in a cell of the scope sheet write into the book?
//
// Values are read as the command line's `set` reads them. A space that is not there yet is made; a
// crew that is not there is refused, with the nearest name.
// Threads: the UI's.
#pragma once

#include <string>
#include <vector>

#include "core/model/result.h"
#include "core/store/action.h"
#include "core/store/book.h"

#include "desktop/client/now/job_now.h"

namespace ledgerboard::desk {

// What a cell holds, as it is typed: "1250.00", "Kitchen", "sq ft".
[[nodiscard]] std::string cellText(const JobNow& now, std::size_t item, model::FieldCode field);

// "Kitchen/cabinets": what an item is called in messages.
[[nodiscard]] std::string itemName(const JobNow& now, std::size_t item);

// Names that may stand in a cell and go with what was typed, the best first, eight at most; empty
// where any text may.
[[nodiscard]] std::vector<std::string> cellChoices(const JobNow& now, model::FieldCode field,
                                                   const std::string& typed);

// Puts `text` into a cell; empty clears it. Errors (WrongUse, CannotBeMet): what is wrong with it
// and how to write it.
[[nodiscard]] model::Result<store::Action> putCell(store::Book& book, const JobNow& now,
                                                   std::size_t item, model::FieldCode field,
                                                   const std::string& text, model::Instant at);

// The cell of the first item into the same cell of the others. Requires: items not empty.
[[nodiscard]] store::Action fillDown(const JobNow& now, const std::vector<std::size_t>& items,
                                     model::FieldCode field);

// A new item as one says it: "replace faucet", "Hall bath: replace faucet". Without a space named,
// it is in `space` (may be nil). A first word that is a treatment is one.
struct NewItem {
    store::Action action;
    model::Id<model::Kind::Item> id;
};

// Errors (WrongUse): nothing said.
[[nodiscard]] model::Result<NewItem> newItem(store::Book& book, const JobNow& now,
                                             const std::string& said,
                                             model::Id<model::Kind::Space> space,
                                             model::Instant at);

// Clears an item's own prices, so that the price book's counts.
[[nodiscard]] store::Action priceFromBook(const JobNow& now, const std::vector<std::size_t>& items);

}  // namespace ledgerboard::desk
