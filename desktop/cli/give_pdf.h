// give ... pdf: which paper is it, and what is on it?
#pragma once

#include <string>

#include "desktop/cli/session.h"
#include "desktop/cli/verbs.h"

namespace ledgerboard::cli {

// week, draw, bids, punch, change and waiver.
[[nodiscard]] bool isGivenAsPdf(const std::string& what);

// --crew as a crew; nil where it wasn't said. Errors: no such crew, or several, naming --crew.
[[nodiscard]] model::Result<model::Id<model::Kind::Crew>> crewToGive(Session& session,
                                                                     const std::string& name);

// The bytes of the PDF. Requires: isGivenAsPdf(what), what folded. Errors: --paper is neither size;
// a draw without a loan, or nothing to ask for; those of reading the book.
[[nodiscard]] model::Result<std::string> pdfToGive(Session& session, const std::string& what,
                                                   const GiveOptions& options);

}  // namespace ledgerboard::cli
