// Protects: everything the book knows to be left is told, nothing it cannot know is told as done,
// and a crew's retainage follows the release order. How: a small job that is brought to its end
// step by step; sums worked by hand beside each check.
#include "core/compute/closing.h"

#include <algorithm>
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "core/compute/as_of.h"

#include "tests/unit/compute/sample_job.h"

namespace ledgerboard::compute {
namespace {

using model::Kind;
using model::SpendKind;
using testing::ElementsAre;
using testing::HasSubstr;
using testing::IsEmpty;
using tests::day;
using tests::id;
using tests::money;
using tests::percent;
using tests::SampleJob;

const model::Date kToday = day("2026-05-22");

class ClosingTest : public testing::Test {
  protected:
    SampleJob job_;

    void SetUp() override { job_.rows.job.builtYear = 2005; }

    [[nodiscard]] Closing read() const {
        const model::JobRows rows = asOf(job_.rows, kToday);
        return closingOf(rows, figuresOf(rows, kToday), kToday);
    }

    // What stands between, of one part.
    [[nodiscard]] std::vector<std::string> standing(ClosingPart part) const {
        std::vector<std::string> out;
        for (const auto& one : read().stands) {
            if (one.part == part) {
                out.push_back(one.what.text() + ": " + one.why.text());
            }
        }
        return out;
    }

    // A subcontract of 1,000 with 10 % retainage over item 1, "shelves", worth 1,000.
    void shelvesUnderContract() {
        model::Crew& crew = job_.add(job_.rows.crews);
        crew.name = "Shelf crew";
        crew.licence = "L-1";
        crew.insuredUntil = day("2026-12-31");
        job_.item("shelves", "1000").contract = id<Kind::Contract>(1);
        model::Contract& contract = job_.contract("Shelves", "1000", "2026-04-01");
        contract.crew = crew.id;
        contract.retainage = percent("10");
        contract.insuranceSeen = true;
    }

    void bill(const char* amount, const char* held, const char* paid) {
        model::Spend& invoice = job_.spend(SpendKind::Invoice, "2026-05-10", amount, 1);
        invoice.contract = id<Kind::Contract>(1);
        invoice.held = money(held);
        invoice.paperSeen = true;
        job_.spend(SpendKind::Payment, "2026-05-11", paid, 1).contract = id<Kind::Contract>(1);
    }

    [[nodiscard]] static ReleaseStep step(const Release& release, const char* what) {
        const auto found =
            std::find_if(release.steps.begin(), release.steps.end(), [&](const ReleaseStep& one) {
                return one.what.text().find(what) != std::string::npos;
            });
        EXPECT_NE(found, release.steps.end()) << what;
        return found == release.steps.end() ? ReleaseStep{} : *found;
    }
};

TEST_F(ClosingTest, WithoutScopeNothingIsFinished) {
    EXPECT_EQ(read().items, 0U);
    EXPECT_FALSE(read().isFinished());
}

TEST_F(ClosingTest, ItemsDecisionsChangesReceiptsAndPapers) {
    job_.item("shelves", "300");
    job_.item("bench", "200");
    job_.item("hook", "10").treatment = model::Treatment::Keep;
    job_.mark(1, "2026-05-20", "100");
    job_.mark(2, "2026-05-20", "40");
    model::Alternate& alternate = job_.add(job_.rows.alternates);
    alternate.question = "open the wall?";
    job_.change("trim", "860", "");
    job_.change("signed one", "5", "2026-05-02");
    job_.spend(SpendKind::Receipt, "2026-05-21", "1").amount.reset();
    model::Paper& paper = job_.add(job_.rows.papers);
    paper.type = model::PaperKind::Permit;
    paper.forWhat = "wiring";
    const Closing closing = read();
    EXPECT_EQ(closing.items, 2U);
    EXPECT_EQ(closing.finished, 1U);
    EXPECT_THAT(standing(ClosingPart::Items), ElementsAre("bench: 40 % shown"));
    EXPECT_THAT(standing(ClosingPart::Decisions),
                ElementsAre("open the wall?: nobody has decided"));
    EXPECT_THAT(standing(ClosingPart::Changes), ElementsAre("trim: asked Fri 1 May, not signed"));
    EXPECT_THAT(standing(ClosingPart::Receipts).at(0), HasSubstr("Receipt"));
    EXPECT_THAT(standing(ClosingPart::Papers), ElementsAre("Permit, wiring: not seen yet"));
    EXPECT_FALSE(closing.isFinished());
}

TEST_F(ClosingTest, OpenCautionsStandBetween) {
    job_.item("gas range", "300");
    job_.mark(1, "2026-05-20", "100");
    EXPECT_THAT(standing(ClosingPart::Cautions),
                ElementsAre("gas range: gas, begun in spite of it"));
    model::Caution& kept = job_.add(job_.rows.cautions);
    kept.item = id<Kind::Item>(1);
    kept.about = "gas";
    kept.acknowledgedOn = day("2026-05-01");
    EXPECT_THAT(standing(ClosingPart::Cautions), IsEmpty());
}

// Rows of one name are one inspection; it stands until the last of them has passed.
TEST_F(ClosingTest, AnInspectionStandsUntilItsLastRowPassed) {
    job_.item("shelves", "300");
    const auto inspection = [this](const char* what, const char* held, model::Outcome outcome) {
        model::Inspection& one = job_.add(job_.rows.inspections);
        one.what = what;
        if (*held != '\0') {
            one.heldOn = day(held);
        }
        one.outcome = outcome;
    };
    inspection("Rough wiring", "2026-05-01", model::Outcome::Corrections);
    EXPECT_THAT(standing(ClosingPart::Inspections),
                ElementsAre("Rough wiring: corrections Fri 1 May"));
    inspection("rough wiring", "2026-05-08", model::Outcome::Passed);
    EXPECT_THAT(standing(ClosingPart::Inspections), IsEmpty());
    inspection("Final", "", model::Outcome::Unset);
    inspection("Gas", "2026-05-09", model::Outcome::Unset);
    EXPECT_THAT(standing(ClosingPart::Inspections),
                ElementsAre("Final: not held yet", "Gas: held Sat 9 May, no outcome entered"));
    inspection("Rough wiring", "", model::Outcome::Unset);  // asked for once more
    EXPECT_EQ(standing(ClosingPart::Inspections).size(), 3U);
}

// Billed 900 of 1,000, 90 held, 810 paid: 190 are left to pay. At 90 % shown 100 of work is left,
// and a punch item of 60: 160, of which 1.5 times is 240 and twice 320 (common practice, no
// source).
TEST_F(ClosingTest, WhatToKeepBack) {
    shelvesUnderContract();
    job_.mark(1, "2026-05-20", "90");
    bill("900", "90", "810");
    model::Punch& punch = job_.add(job_.rows.punches);
    punch.what = "shelf loose";
    punch.crew = id<Kind::Crew>(1);
    punch.cost = money("60");
    ASSERT_EQ(read().releases.size(), 1U);
    const Release release = read().releases[0];
    EXPECT_EQ(release.held, money("90"));
    EXPECT_EQ(release.leftToPay, money("190"));
    EXPECT_EQ(release.leftToDo, money("160"));
    EXPECT_EQ(release.holdLow, money("240"));
    EXPECT_EQ(release.holdHigh, money("320"));
    EXPECT_EQ(step(release, "work finished").done, std::optional(false));
    EXPECT_EQ(step(release, "punch").done, std::optional(false));
    EXPECT_EQ(release.steps.at(release.next.value()).what.text(), "its work finished");
    EXPECT_EQ(standing(ClosingPart::Retainage).size(), 1U);
}

// The order, step by step, until the contract is closed.
TEST_F(ClosingTest, TheReleaseOrder) {
    shelvesUnderContract();
    job_.mark(1, "2026-05-20", "100");
    bill("1000", "100", "900");
    const auto next = [this] {
        const Release release = read().releases.at(0);
        return release.steps.at(release.next.value()).what.text();
    };
    // None is entered, so whether one was needed is asked rather than told.
    EXPECT_EQ(next(), "its final inspections passed");
    EXPECT_EQ(step(read().releases[0], "inspections").done, std::nullopt);
    model::Inspection& inspection = job_.add(job_.rows.inspections);
    inspection.what = "Final";
    inspection.heldOn = day("2026-05-21");
    inspection.outcome = model::Outcome::Passed;
    inspection.holdsUp = {id<Kind::Item>(1)};
    EXPECT_EQ(next(), "its debris gone");  // the book cannot know
    const Release release = read().releases[0];
    EXPECT_EQ(step(release, "debris").done, std::nullopt);
    EXPECT_EQ(step(release, "accepted").done, std::optional(false));
    EXPECT_EQ(step(release, "last bill").done, std::optional(true));
    EXPECT_EQ(step(release, "waiver, conditional").done, std::optional(false));
    EXPECT_EQ(step(release, "last payment").done, std::optional(false));
    EXPECT_EQ(step(release, "unconditional").done, std::nullopt);
    // Once accepted, nobody is asked about the debris again.
    job_.rows.contracts[0].acceptedOn = day("2026-05-21");
    EXPECT_EQ(next(), "its final waiver, conditional");
    job_.rows.contracts[0].waiverReceivedOn = day("2026-05-21");
    job_.spend(SpendKind::Payment, "2026-05-22", "100", 1).contract = id<Kind::Contract>(1);
    EXPECT_THAT(read().releases, IsEmpty());
    EXPECT_TRUE(read().isFinished()) << read().stands.at(0).what.text();
}

// A bill of 1,000 less 180 charged back: 820 is what the last bill must come to.
TEST_F(ClosingTest, ChargeBacksComeOffTheLastBill) {
    shelvesUnderContract();
    job_.mark(1, "2026-05-20", "100");
    bill("1000", "0", "820");
    model::Punch& punch = job_.add(job_.rows.punches);
    punch.what = "chip in the tub";
    punch.chargeBackTo = id<Kind::Crew>(1);
    punch.chargeBack = money("180");
    const Release release = read().releases.at(0);
    EXPECT_EQ(release.leftToPay, money("0"));
    const ReleaseStep last = step(release, "last bill");
    EXPECT_EQ(last.done, std::optional(false));
    EXPECT_EQ(last.of, std::optional(money("820")));
    EXPECT_THAT(last.says.text(), HasSubstr("more than was agreed"));
}

TEST_F(ClosingTest, OrdersAndUnsignedContractsAreNotReleased) {
    job_.contract("Cabinets", "500", "2026-04-01").type = model::ContractKind::Order;
    job_.contract("Never signed", "500", "");
    EXPECT_THAT(read().releases, IsEmpty());
}

// 1,000 held back on the first draw, 500 on the second: 1,500 wait for the final draw, which holds
// nothing back and so has paid them out.
TEST_F(ClosingTest, TheFinalDrawBringsWhatTheLenderHeld) {
    job_.item("shelves", "300");
    const auto draw = [this](const char* funded, const char* held) {
        model::Draw& one = job_.add(job_.rows.draws);
        one.number = static_cast<std::int64_t>(job_.rows.draws.size());
        one.askedOn = day("2026-05-01");
        if (*funded != '\0') {
            one.fundedOn = day(funded);
            one.holdback = money(held);
        }
    };
    draw("2026-05-05", "1000");
    draw("2026-05-12", "500");
    ASSERT_EQ(standing(ClosingPart::FinalDraw).size(), 1U);
    for (const auto& one : read().stands) {
        if (one.part == ClosingPart::FinalDraw) {
            EXPECT_EQ(one.money, std::optional(money("1500")));
        }
    }
    draw("", "");
    EXPECT_EQ(standing(ClosingPart::FinalDraw).size(), 2U);
    job_.rows.draws[2].fundedOn = day("2026-05-20");
    EXPECT_THAT(standing(ClosingPart::FinalDraw), IsEmpty());
}

TEST_F(ClosingTest, TheFolderAsksForWhatTheBookCannotKnow) {
    job_.item("walls", "300").treatment = model::Treatment::Refinish;
    const auto paper = [this](const char* what) -> FinalPaper {
        for (const FinalPaper& one : read().papers) {
            if (one.what.text().find(what) != std::string::npos) {
                return one;
            }
        }
        return {model::Saying("none"), std::nullopt, model::Saying("none")};
    };
    EXPECT_EQ(paper("keys").known, std::nullopt);
    EXPECT_EQ(paper("every permit").known, std::nullopt);
    EXPECT_EQ(paper("warranties").known, std::nullopt);
    EXPECT_EQ(paper("lead-work records").what.text(), "none");  // built 2005
    job_.rows.job.builtYear = 1936;
    EXPECT_EQ(paper("lead-work records").known, std::nullopt);
    EXPECT_NE(paper("lead-work records").what.text(), "none");
    model::Paper& warranty = job_.add(job_.rows.papers);
    warranty.type = model::PaperKind::Warranty;
    EXPECT_EQ(paper("warranties").known, std::nullopt);
    warranty.receivedOn = day("2026-05-20");
    EXPECT_EQ(paper("warranties").known, std::optional(true));
    job_.rows.items[0].selection = "Warm white";
    EXPECT_THAT(paper("paint colours").says.text(), HasSubstr("1 item has"));
}

}  // namespace
}  // namespace ledgerboard::compute
