// What did the job look like on a day, as known now? The rows dated on or before it.
//
// A day ends at the job's own midnight; dates are days already, so only a photo's instant needs a
// zone, and its UTC day stands in for it.
// Source: project decision.
//
// Which date decides, by kind. A row with none of its dates entered is kept: nothing says that it
// was not there yet.
//   mark marked; spend spent; bank line posted; photo taken; punch item found; look looked; visit
//   visited; presence present; review reviewed; baseline frozen (its items with it); price "as of";
//   nearby sale sold change        asked, or the earliest of signed and refused; later signed,
//   refused: not yet draw          asked, or the earliest of inspected and funded; later inspected:
//   its lines'
//                 allowed percents not yet; later funded: amount, holdback and fee not yet
//   delivery      ordered; later arrived, looked at: not yet
//   inspection    asked, or held; later held: outcome and corrections not yet
//   contract, offer   always there; later signed, accepted, waiver received: not yet
//   item, caution, unknown, paper, device, bid, note   always there; later actual start and finish,
//                 accepted, acknowledged, came true, received, revoked, chosen, typed: not yet
//   everything else is undated and kept as it stands now
// Dates that look ahead (planned, order on, decide by, due, promised, valid until) always stay.
#pragma once

#include "core/model/date.h"
#include "core/model/rows.h"

namespace ledgerboard::compute {

// `rows` without voided rows. A row is voided where any other row of its kind names it in `voids`,
// whether or not that one has itself been replaced since: of a correction of a correction only the
// last counts. Voiding is as known now, so it is settled before any date is looked at.
[[nodiscard]] model::JobRows withoutVoided(model::JobRows rows);

// `rows` as of the end of `day`, without voided rows. Lists keep their order.
[[nodiscard]] model::JobRows asOf(model::JobRows rows, model::Date day);

}  // namespace ledgerboard::compute
