// What in the papers of a contract bears on paying it now: what bars a payment, a deposit beyond
// what is allowed, and who is paid ahead?
//
// Source: project decisions. What may be held or asked as a deposit is a matter of local law: the
// limits here are the owner's to set, none by default.
#pragma once

#include <optional>
#include <string>
#include <vector>

#include "core/compute/budget.h"
#include "core/model/rows.h"

namespace ledgerboard::compute {

// What bars a payment. `who` is the crew's name; `on` the day its insurance lapsed.
enum class Bar { InsuranceLapsed, WaiverAwaited, FinalWaiver };

struct BarOnPaying {
    Bar why = Bar::InsuranceLapsed;
    std::string who;
    std::optional<model::Date> on;
};

[[nodiscard]] std::vector<BarOnPaying> barsOn(const model::JobRows& rows,
                                              const model::Contract& contract, model::Date today);

// Why nothing may be paid on a contract on `today`, each a clause for the owner: the crew's
// insurance has lapsed; a lien waiver listed among the crew's papers has not come; the work was
// accepted and the final waiver has not come. Empty: nothing bars it. Nothing bars an order.
[[nodiscard]] std::vector<std::string> barredBy(const model::JobRows& rows,
                                                const model::Contract& contract, model::Date today);

// The part of the deposit beyond the job's deposit limit x `now`; 0 where no limit is set.
// Errors: OverflowError.
[[nodiscard]] model::Money depositBeyondLimit(const model::Job& job,
                                              const model::Contract& contract, model::Money now);

// Who is paid ahead of work seen, over all its contracts. As rows.crews; contracts without a crew
// by their own name, last. Those with nothing ahead are left out. Errors: OverflowError.
struct PaidAheadOf {
    model::Id<model::Kind::Crew> crew;
    std::string name;
    model::Money amount;
};

[[nodiscard]] std::vector<PaidAheadOf> paidAheadByCrew(const model::JobRows& rows,
                                                       const JobFigures& figures);

// Payments that are owed and barred, for a page.
struct BarredPayment {
    std::size_t contract = 0;  // in rows.contracts
    std::string name;
    model::Money amount;  // payable were it not barred
    std::vector<std::string> reasons;
};

// In the order of rows.contracts; those with nothing payable once cleared are left out.
[[nodiscard]] std::vector<BarredPayment> barredPayments(const model::JobRows& rows,
                                                        const JobFigures& figures);

}  // namespace ledgerboard::compute
