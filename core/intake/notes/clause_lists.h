// Does a bare list of things follow a treatment, and say what it is done to?
#pragma once

#include <vector>

#include "core/intake/notes/clause_events.h"
#include "core/intake/notes/clause_rules.h"

namespace ledgerboard::intake {

// `events` are those of the sentence, `next` is the treatment's own; `act` its index in the spots.

// "Paint everything, walls, ceilings and trim."
[[nodiscard]] bool listsAll(const ClauseRules& rules, const std::vector<ClauseEvent>& events,
                            std::size_t next, std::size_t act);

// "Paint, walls and ceiling both.": an order by itself, and then what of. `from` is where the
// sentence begins.
[[nodiscard]] bool listsOwn(const ClauseRules& rules, const std::vector<ClauseEvent>& events,
                            std::size_t next, std::size_t from, std::size_t act);

// "Refinish floors, paint, new chandelier": an entry of a list that is an order by itself speaks of
// what it is mostly done to, and not of the `things` of the order `before` it; but "scrape the
// trim, paint" does.
[[nodiscard]] bool beginsAnew(const ClauseRules& rules, std::size_t before, std::size_t act,
                              const std::vector<std::size_t>& things);

// "Everything in it is to be replaced, tub, sink and toilet."
[[nodiscard]] bool sumsUp(const ClauseRules& rules, const std::vector<ClauseEvent>& events,
                          std::size_t next, std::size_t act);

}  // namespace ledgerboard::intake
