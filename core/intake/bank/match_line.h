// What is a line of the bank's for? The best guess, how sure it is and why, in words.
//
// In this order, the surest first; the figures are how sure, out of 100:
//   a row of spend with the same sum, up to 3 days after the line or 10 before, and no bank id yet:
//     97 with the payee's name (90 among several), 82 without a name where it is the only one
//     (60 among several), 55 where the names differ
//   an open invoice of that sum: 95 with the name of payee or crew, else 65 (45 among several)
//   a payee rule whose words the line holds: 92; of several the one with most words
//   money in, and a draw that was asked for and not funded: 95 where the sum is the draw's, else 55
//   a crew's name or its lead's: 85 under its only contract, 75 without one, 60 among several
//   the same payee before: 85 where three or more rows were filed alike, 70 where all were, else 50
//   money in from a payee who was paid before: a refund, 65
// What is kSureEnough or more is filed without asking; the owner can undo it.
// Source: project decision; the figures order the guesses and are not measured chances.
// Units: money in the job's currency. Threads: any number may ask one BankMatcher.
#pragma once

#include <set>
#include <string>
#include <vector>

#include "core/model/rows.h"

namespace ledgerboard::intake {

constexpr int kSureEnough = 80;

enum class LineIs {
    Unknown,   // nothing in the book says
    Filed,     // the payment of a row of spend that is there: `spend`
    NewSpend,  // a row of spend that is not there yet: `fresh`
    Draw,      // money from the lender: `draw`
    NotOurs,   // nothing to do with the job
};

struct LineMatch {
    LineIs is = LineIs::Unknown;
    int sure = 0;
    std::string reason;
    model::Id<model::Kind::Spend> spend;
    model::Id<model::Kind::Draw> draw;
    model::Spend fresh;  // whole but for its id

    [[nodiscard]] bool isSureEnough() const { return is != LineIs::Unknown && sure >= kSureEnough; }
};

class BankMatcher {
  public:
    // Requires: `rows` outlives it and holds no voided rows (compute::withoutVoided).
    explicit BankMatcher(const model::JobRows& rows);

    [[nodiscard]] LineMatch match(const model::BankLine& line) const;

    // A new row of spend for `line`, filed under what the owner names: an item, a contract, a crew,
    // or an invoice that it pays; anything else is NotFor. Fills type, day, sum, payee, bank id.
    [[nodiscard]] model::Spend spendFor(const model::BankLine& line) const;

    // What `match` found is taken: another line can't be the same.
    void take(const LineMatch& match);

    // Of an invoice, less what is held back and what payments have paid of it.
    [[nodiscard]] model::Money unpaidOf(const model::Spend& invoice) const;

  private:
    [[nodiscard]] LineMatch sameSpend(const model::BankLine& line) const;
    [[nodiscard]] LineMatch paysInvoice(const model::BankLine& line) const;
    [[nodiscard]] LineMatch byRule(const model::BankLine& line) const;
    [[nodiscard]] LineMatch fundsDraw(const model::BankLine& line) const;
    [[nodiscard]] LineMatch byCrew(const model::BankLine& line) const;
    [[nodiscard]] LineMatch asBefore(const model::BankLine& line) const;
    [[nodiscard]] LineMatch refund(const model::BankLine& line) const;
    [[nodiscard]] std::string crewName(model::Id<model::Kind::Crew> crew) const;

    const model::JobRows& rows_;
    std::set<model::RawId> taken_;  // rows of spend and draws
};

// All that the bank writes of a line.
[[nodiscard]] std::string writtenOn(const model::BankLine& line);

// The job's crew that an item, contract or row of spend belongs to is filled in where not said.
void fileUnder(model::Spend& spend, const model::JobRows& rows);

}  // namespace ledgerboard::intake
