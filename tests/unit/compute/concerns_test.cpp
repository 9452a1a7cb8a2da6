// Protects what is raised as a concern, and just as much what is not: each level is tried on both
// sides. Levels: common practice, no source.
#include "core/compute/concerns.h"

#include <algorithm>
#include <gtest/gtest.h>

#include "tests/unit/compute/sample_job.h"

namespace {

using namespace ledgerboard::model;
using namespace ledgerboard::compute;
using namespace ledgerboard::tests;

const Date kToday = day("2026-05-22");

std::vector<Concern> concerns(const SampleJob& job) {
    const JobFigures figures = figuresOf(job.rows, kToday);
    return concernsOf(job.rows, figures, planOf(job.rows, figures, kToday), kToday);
}

// The only concern of a kind, or null.
const Concern* only(const std::vector<Concern>& all, ConcernKind kind) {
    const Concern* found = nullptr;
    for (const Concern& concern : all) {
        if (concern.kind == kind) {
            EXPECT_EQ(found, nullptr) << sayingFor(kind).text() << " raised twice";
            found = &concern;
        }
    }
    return found;
}

// "", "watch" or "act".
std::string raised(const SampleJob& job, ConcernKind kind) {
    const auto all = concerns(job);
    const Concern* concern = only(all, kind);
    return concern == nullptr ? "" : concern->level == Level::Act ? "act" : "watch";
}

TEST(Concerns, AQuietJobHasNone) {
    SampleJob job;
    job.item("tub", "1000");
    EXPECT_TRUE(concerns(job).empty());
}

TEST(Concerns, ALineOverByPercentOrMoney) {
    struct Case {
        const char* budget;
        const char* billed;
        const char* level;
    };

    for (const Case& one :
         {Case{"1000", "1049", ""}, Case{"1000", "1050", "watch"}, Case{"1000", "1099.99", "watch"},
          Case{"1000", "1100", "act"}, Case{"100000", "100249.99", ""},
          Case{"100000", "100250", "watch"}, Case{"100000", "100750", "act"}}) {
        SampleJob job;
        job.item("tub", one.budget);
        job.mark(1, "2026-05-20", "100");
        job.spend(SpendKind::Receipt, "2026-05-20", one.billed, 1).paperSeen = true;
        EXPECT_EQ(raised(job, ConcernKind::LineOver), one.level) << one.billed;
    }
}

TEST(Concerns, SayWhichRuleAndWhatIsAtStake) {
    SampleJob job;
    job.item("tub", "1000");
    job.mark(1, "2026-05-20", "100");
    job.spend(SpendKind::Receipt, "2026-05-20", "1200", 1).paperSeen = true;
    const auto all = concerns(job);
    const Concern* concern = only(all, ConcernKind::LineOver);
    ASSERT_NE(concern, nullptr);
    EXPECT_EQ(concern->about.text(), "tub");
    EXPECT_EQ(concern->rule.text(), "forecast over budget now by 10 % or 750");
    EXPECT_EQ(concern->money, money("200"));
    EXPECT_EQ(concern->page, Page::ScopeOfWork);
    EXPECT_EQ(concern->recordKind, Kind::Item);
    EXPECT_EQ(concern->record, job.rows.items[0].id.raw());
}

TEST(Concerns, LevelsCanBeChangedByName) {
    SampleJob job;
    job.item("tub", "1000");
    job.mark(1, "2026-05-20", "100");
    job.spend(SpendKind::Receipt, "2026-05-20", "1200", 1).paperSeen = true;
    job.rows.job.concernLevels = {{"Line over act percent", money("30")}, {"mood", money("3")}};
    EXPECT_EQ(raised(job, ConcernKind::LineOver), "watch");
    EXPECT_EQ(unknownLevelNames(job.rows.job), std::vector<std::string>{"mood"});
    EXPECT_EQ(concernLevelsOf(job.rows.job).lineOverActPercent, percent("30"));
    EXPECT_EQ(concernLevelNames().size(), 19U);
    // Below 0 changes nothing.
    job.rows.job.concernLevels = {{"order days", money("-1")}};
    EXPECT_EQ(concernLevelsOf(job.rows.job).orderDays, 7);
}

TEST(Concerns, EachNamedLevelSetsOneOfItsOwn) {
    // Every name changes the levels, and no two names change the same one.
    const ConcernLevels usual;
    for (const std::string_view name : concernLevelNames()) {
        Job job;
        job.concernLevels = {{std::string(name), money("77")}};
        const ConcernLevels own = concernLevelsOf(job);
        int changed = 0;
        changed += own.lineOverWatchPercent != usual.lineOverWatchPercent;
        changed += own.lineOverWatchMoney != usual.lineOverWatchMoney;
        changed += own.lineOverActPercent != usual.lineOverActPercent;
        changed += own.lineOverActMoney != usual.lineOverActMoney;
        changed += own.contingencyActPoints != usual.contingencyActPoints;
        changed += own.paidAheadActPoints != usual.paidAheadActPoints;
        changed += own.paidAheadActMoney != usual.paidAheadActMoney;
        changed += own.unsignedChangeDays != usual.unsignedChangeDays;
        changed += own.orderDays != usual.orderDays;
        changed += own.orderCheckDays != usual.orderCheckDays;
        changed += own.paperDays != usual.paperDays;
        changed += own.insuranceDays != usual.insuranceDays;
        changed += own.notMarkedWatchDays != usual.notMarkedWatchDays;
        changed += own.notMarkedActDays != usual.notMarkedActDays;
        changed += own.finishWatchDays != usual.finishWatchDays;
        changed += own.finishActDays != usual.finishActDays;
        changed += own.termEndDays != usual.termEndDays;
        changed += own.noShowActDays != usual.noShowActDays;
        changed += own.cashDays != usual.cashDays;
        EXPECT_EQ(changed, 1) << name;
    }
}

TEST(Concerns, TheWholeJobOverItsFirstBudget) {
    SampleJob job;
    job.item("tub", "1000");
    job.rows.job.contingency = percent("10");
    Change& change = job.change("more", "100", "2026-05-10");
    change.items = {id<Kind::Item>(1)};
    EXPECT_EQ(raised(job, ConcernKind::JobOver), "watch");
    job.rows.changes[0].amount = money("100.01");
    EXPECT_EQ(raised(job, ConcernKind::JobOver), "act");
    job.rows.changes[0].signedOn.reset();
    EXPECT_EQ(raised(job, ConcernKind::JobOver), "");
}

TEST(Concerns, ContingencyUsedFasterThanWorkIsDone) {
    SampleJob job;
    job.item("tub", "1000");
    job.rows.job.contingency = percent("10");
    Change& change = job.change("rot", "50", "2026-05-10");  // half of the contingency
    change.items = {id<Kind::Item>(1)};
    change.paidFrom = PaidFrom::Contingency;
    job.mark(1, "2026-05-20", "50");
    EXPECT_EQ(raised(job, ConcernKind::ContingencyRunsDown), "");
    job.mark(1, "2026-05-21", "30");
    EXPECT_EQ(raised(job, ConcernKind::ContingencyRunsDown), "watch");
    job.mark(1, "2026-05-22", "29.99");
    EXPECT_EQ(raised(job, ConcernKind::ContingencyRunsDown), "act");
}

TEST(Concerns, PaidAheadByPointsOrMoney) {
    SampleJob job;
    job.contract("Tile", "5000", "2026-05-01");
    job.item("floor", "5000").contract = id<Kind::Contract>(1);
    job.mark(1, "2026-05-20", "50");
    Spend& payment = job.spend(SpendKind::Payment, "2026-05-20", "2500");
    payment.contract = id<Kind::Contract>(1);
    EXPECT_EQ(raised(job, ConcernKind::PaidAhead), "");
    job.rows.spends[0].amount = money("3000");  // 10 points exactly
    EXPECT_EQ(raised(job, ConcernKind::PaidAhead), "watch");
    job.rows.spends[0].amount = money("3001");  // 10.02
    EXPECT_EQ(raised(job, ConcernKind::PaidAhead), "act");
}

TEST(Concerns, BilledBeyondItsContract) {
    SampleJob job;
    job.contract("Tile", "5000", "2026-05-01");
    Spend& bill = job.spend(SpendKind::Invoice, "2026-05-20", "5000");
    bill.contract = id<Kind::Contract>(1);
    bill.paperSeen = true;
    EXPECT_EQ(raised(job, ConcernKind::BeyondContract), "");
    job.rows.spends[0].amount = money("5000.01");
    EXPECT_EQ(raised(job, ConcernKind::BeyondContract), "act");
    job.change("more", "1", "2026-05-10").contract = id<Kind::Contract>(1);
    EXPECT_EQ(raised(job, ConcernKind::BeyondContract), "");
}

TEST(Concerns, AnUnsignedChangeThatWaitsOrIsBegun) {
    SampleJob job;
    job.item("trim", "1000");
    job.mark(1, "2026-05-18", "20");
    Change& change = job.change("rotten boards", "860", "");
    change.items = {id<Kind::Item>(1)};
    change.askedOn = day("2026-05-20");
    EXPECT_EQ(raised(job, ConcernKind::UnsignedChange), "");
    job.rows.changes[0].askedOn = day("2026-05-19");
    EXPECT_EQ(raised(job, ConcernKind::UnsignedChange), "watch");
    job.rows.changes[0].askedOn = day("2026-05-22");
    job.mark(1, "2026-05-22", "30");
    EXPECT_EQ(raised(job, ConcernKind::UnsignedChange), "");  // nothing after it was asked for
    job.rows.changes[0].askedOn = day("2026-05-21");
    EXPECT_EQ(raised(job, ConcernKind::UnsignedChange), "act");
    job.rows.changes[0].refusedOn = day("2026-05-22");
    EXPECT_EQ(raised(job, ConcernKind::UnsignedChange), "");
}

TEST(Concerns, AnOrderThatIsNearOrLate) {
    SampleJob job;
    Item& item = job.item("windows", "3000");
    item.leadDays = 30;
    // 1 July - 30 - 3 = 29 May, seven days from today.
    item.plannedStartOn = day("2026-07-02");
    EXPECT_EQ(raised(job, ConcernKind::Order), "");
    item.plannedStartOn = day("2026-07-01");
    EXPECT_EQ(raised(job, ConcernKind::Order), "watch");
    item.plannedStartOn = day("2026-06-23");
    EXPECT_EQ(raised(job, ConcernKind::Order), "act");
    EXPECT_EQ(only(concerns(job), ConcernKind::Order)->days, 1);
    Delivery& delivery = job.add(job.rows.deliveries);
    delivery.item = id<Kind::Item>(1);
    delivery.orderedOn = day("2026-05-20");
    delivery.promisedOn = day("2026-06-23");
    EXPECT_EQ(raised(job, ConcernKind::Order), "");
    EXPECT_EQ(raised(job, ConcernKind::ArrivesLate), "");
    delivery.promisedOn = day("2026-06-24");
    EXPECT_EQ(raised(job, ConcernKind::ArrivesLate), "act");
}

TEST(Concerns, PapersNotSeenAndSpendsWithoutAmount) {
    SampleJob job;
    job.spend(SpendKind::Receipt, "2026-05-20", "66.40");
    EXPECT_EQ(raised(job, ConcernKind::PaperNotSeen), "");
    job.spend(SpendKind::Receipt, "2026-05-19", "10");
    job.spend(SpendKind::Fee, "2026-05-10", "5").photo = id<Kind::Photo>(1);
    job.spend(SpendKind::Payment, "2026-05-10", "5");  // a payment has no paper of its own
    EXPECT_EQ(raised(job, ConcernKind::PaperNotSeen), "watch");
    EXPECT_EQ(only(concerns(job), ConcernKind::PaperNotSeen)->money, money("10"));
    EXPECT_EQ(raised(job, ConcernKind::Unfinished), "");
    job.spend(SpendKind::Receipt, "2026-05-21", "1").amount.reset();
    EXPECT_EQ(raised(job, ConcernKind::Unfinished), "watch");
}

TEST(Concerns, TheFinalWaiverOfAnAcceptedContract) {
    SampleJob job;
    Contract& contract = job.contract("Roof", "1000", "2026-05-01");
    contract.acceptedOn = day("2026-05-20");
    EXPECT_EQ(raised(job, ConcernKind::WaiverMissing), "");
    contract.acceptedOn = day("2026-05-19");
    EXPECT_EQ(raised(job, ConcernKind::WaiverMissing), "watch");
    Spend& bill = job.spend(SpendKind::Invoice, "2026-05-15", "500");
    bill.contract = id<Kind::Contract>(1);
    bill.paperSeen = true;
    bill.dueOn = day("2026-05-22");
    EXPECT_EQ(raised(job, ConcernKind::WaiverMissing), "act");
    contract.waiverReceivedOn = day("2026-05-21");
    EXPECT_EQ(raised(job, ConcernKind::WaiverMissing), "");
}

TEST(Concerns, InsuranceOfACrewWithWorkLeft) {
    SampleJob job;
    Crew& crew = job.add(job.rows.crews);
    crew.name = "Paint crew";
    job.item("walls", "1000").crew = crew.id;
    EXPECT_EQ(raised(job, ConcernKind::Insurance), "");  // nobody said until when
    crew.insuredUntil = day("2026-06-06");
    EXPECT_EQ(raised(job, ConcernKind::Insurance), "");
    crew.insuredUntil = day("2026-06-05");
    EXPECT_EQ(raised(job, ConcernKind::Insurance), "watch");
    crew.insuredUntil = day("2026-05-22");
    EXPECT_EQ(raised(job, ConcernKind::Insurance), "watch");
    crew.insuredUntil = day("2026-05-21");
    EXPECT_EQ(raised(job, ConcernKind::Insurance), "act");
    Paper& paper = job.add(job.rows.papers);
    paper.type = PaperKind::Insurance;
    paper.crew = crew.id;
    paper.receivedOn = day("2026-05-20");
    paper.validUntil = day("2027-01-01");
    EXPECT_EQ(raised(job, ConcernKind::Insurance), "");
    job.rows.papers.clear();
    job.mark(1, "2026-05-22", "100");
    EXPECT_EQ(raised(job, ConcernKind::Insurance), "");
}

TEST(Concerns, WorkThatNobodyHasMarked) {
    SampleJob job;
    Item& item = job.item("walls", "1000");
    item.plannedStartOn = day("2026-05-16");
    item.plannedFinishOn = day("2026-05-29");
    EXPECT_EQ(raised(job, ConcernKind::NotMarked), "");
    item.plannedStartOn = day("2026-05-15");
    EXPECT_EQ(raised(job, ConcernKind::NotMarked), "watch");
    item.plannedStartOn = day("2026-05-12");
    EXPECT_EQ(raised(job, ConcernKind::NotMarked), "act");
    job.mark(1, "2026-05-20", "10");
    EXPECT_EQ(raised(job, ConcernKind::NotMarked), "");
    job.rows.marks[0].markedOn = day("2026-05-10");
    EXPECT_EQ(raised(job, ConcernKind::NotMarked), "act");
    job.rows.marks[0].percent = percent("100");
    EXPECT_EQ(raised(job, ConcernKind::NotMarked), "");
}

TEST(Concerns, ScopeAddedAfterTheBaseline) {
    SampleJob job;
    job.item("tub", "1000");
    job.baseline("2026-05-01", {"1000"});
    job.item("extra closet", "400");
    EXPECT_EQ(raised(job, ConcernKind::OutsideBaseline), "watch");
    job.change("closet", "400", "2026-05-10").items = {id<Kind::Item>(2)};
    EXPECT_EQ(raised(job, ConcernKind::OutsideBaseline), "");
}

TEST(Concerns, ScopePricedAfterTheBaseline) {
    SampleJob job;
    job.item("sump pump", "400");
    job.baseline("2026-05-04", {"0"});
    EXPECT_EQ(raised(job, ConcernKind::OutsideBaseline), "watch");
    job.rows.items[0].lumpSum.reset();
    EXPECT_EQ(raised(job, ConcernKind::OutsideBaseline), "");
    EXPECT_EQ(figuresOf(job.rows, day("2026-05-22")).unpriced, 1U);
}

TEST(Concerns, ActComesFirstThenTheLargestSum) {
    SampleJob job;
    for (const auto* billed : {"1060", "1200", "1090", "1500"}) {
        job.item(billed, "1000");
        const auto number = static_cast<std::uint32_t>(job.rows.items.size());
        job.mark(number, "2026-05-22", "100");
        job.spend(SpendKind::Receipt, "2026-05-22", billed, number).paperSeen = true;
    }
    std::vector<std::string> order;
    for (const Concern& concern : concerns(job)) {
        if (concern.kind == ConcernKind::LineOver) {
            order.push_back(concern.about.text());
        }
    }
    EXPECT_EQ(order, (std::vector<std::string>{"1500", "1200", "1090", "1060"}));
}

TEST(MissingPapers, AreListedByName) {
    SampleJob job;
    job.add(job.rows.crews).name = "Roof crew";
    Spend& receipt = job.spend(SpendKind::Receipt, "2026-05-14", "143.85");
    receipt.payee = "Hardware store";
    job.spend(SpendKind::Invoice, "2026-05-21", "10").crew = id<Kind::Crew>(1);
    job.spend(SpendKind::Receipt, "2026-05-21", "1").amount.reset();
    Contract& contract = job.contract("Roof", "1000", "2026-05-01");
    contract.crew = id<Kind::Crew>(1);
    Paper& permit = job.add(job.rows.papers);
    permit.type = PaperKind::Permit;
    permit.forWhat = "electrical";
    const auto missing = missingPapersOf(job.rows, kToday);
    ASSERT_EQ(missing.size(), 5U);
    EXPECT_EQ(missing[0].name.text(), "Receipt, Hardware store, 2026-05-14");
    EXPECT_EQ(missing[0].amount, money("143.85"));
    EXPECT_EQ(missing[0].days, 8);
    EXPECT_EQ(missing[1].name.text(), "Invoice, Roof crew, 2026-05-21");
    EXPECT_EQ(missing[2].kind, MissingPaper::Kind::Amount);
    EXPECT_EQ(missing[3].name.text(), "Insurance, Roof crew");
    EXPECT_EQ(missing[4].name.text(), "Permit, electrical");
}

// What is looked ahead to, tried on both sides of each level.
std::string raisedBy(const SampleJob& job, const Outlook& outlook, ConcernKind kind,
                     std::optional<Date> finishOn = {}) {
    const JobFigures figures = figuresOf(job.rows, kToday);
    Plan plan = planOf(job.rows, figures, kToday);
    plan.on = finishOn;
    const auto all = concernsOf(job.rows, figures, plan, kToday, outlook);
    const Concern* concern = only(all, kind);
    return concern == nullptr ? "" : concern->level == Level::Act ? "act" : "watch";
}

TEST(Concerns, AFinishThatSlipsOrNearsTheTermEnd) {
    SampleJob job;
    job.item("tub", "1000");
    Outlook outlook;
    outlook.plannedFinishOn = day("2026-06-05");  // a Friday
    const auto at = [&](const char* finish) {
        return raisedBy(job, outlook, ConcernKind::FinishSlips, day(finish));
    };
    EXPECT_EQ(at("2026-06-05"), "");
    EXPECT_EQ(at("2026-06-09"), "");       // two working days
    EXPECT_EQ(at("2026-06-10"), "watch");  // three
    EXPECT_EQ(at("2026-06-15"), "watch");  // six
    EXPECT_EQ(at("2026-06-16"), "act");    // seven
    job.rows.job.termEndOn = day("2026-06-19");
    EXPECT_EQ(at("2026-06-05"), "");     // 14 days are left
    EXPECT_EQ(at("2026-06-06"), "act");  // 13
    job.mark(1, "2026-05-20", "100");
    EXPECT_EQ(at("2026-06-06"), "");  // it is finished
    job.item("vanity", "500");
    EXPECT_EQ(at("2026-06-06"), "act");
    EXPECT_EQ(raisedBy(job, outlook, ConcernKind::FinishSlips), "");  // the plan tells no day
}

TEST(Concerns, ACrewThatDidNotCome) {
    SampleJob job;
    job.add(job.rows.crews).name = "Tile crew";
    Outlook outlook;
    EXPECT_EQ(raisedBy(job, outlook, ConcernKind::NoShow), "");
    outlook.notThere = {{0, {day("2026-05-18"), day("2026-05-20")}, 1}};
    EXPECT_EQ(raisedBy(job, outlook, ConcernKind::NoShow), "watch");
    outlook.notThere[0].inARow = 2;
    EXPECT_EQ(raisedBy(job, outlook, ConcernKind::NoShow), "act");
}

TEST(Concerns, CashUnderTwoWeeksOfBillsOrUnderZero) {
    const SampleJob job;
    Outlook outlook;
    outlook.billsAhead = money("5000");
    EXPECT_EQ(raisedBy(job, outlook, ConcernKind::CashLow), "");  // cash is not known
    outlook.lowestCash = money("5000");
    EXPECT_EQ(raisedBy(job, outlook, ConcernKind::CashLow), "");
    outlook.lowestCash = money("4999.99");
    EXPECT_EQ(raisedBy(job, outlook, ConcernKind::CashLow), "watch");
    outlook.lowestCash = money("0");
    EXPECT_EQ(raisedBy(job, outlook, ConcernKind::CashLow), "watch");
    outlook.lowestCash = money("-0.01");
    EXPECT_EQ(raisedBy(job, outlook, ConcernKind::CashLow), "act");
}

TEST(Concerns, ACrewWantedInTwoPlacesWithinTwoWeeks) {
    SampleJob job;
    job.add(job.rows.crews).name = "Tile crew";
    job.add(job.rows.spaces).name = "Hall bath";
    Outlook outlook;
    // 14 days from today is 5 June.
    outlook.stacked = {{0, {}, day("2026-06-05"), day("2026-06-08"), 2, 1, {}}};
    EXPECT_EQ(raisedBy(job, outlook, ConcernKind::Stacked), "watch");
    outlook.stacked[0].from = day("2026-06-06");
    EXPECT_EQ(raisedBy(job, outlook, ConcernKind::Stacked), "");
    outlook.stacked = {{{}, 0, day("2026-05-25"), day("2026-05-26"), 3, 1, {}}};
    const JobFigures figures = figuresOf(job.rows, kToday);
    const auto all = concernsOf(job.rows, figures, Plan{}, kToday, outlook);
    const Concern* concern = only(all, ConcernKind::Stacked);
    ASSERT_NE(concern, nullptr);
    EXPECT_EQ(concern->about.text(), "Hall bath");
    EXPECT_EQ(concern->rule.text(), "the plan has 3 crews in it at once and it takes one");
    EXPECT_EQ(concern->days, 2);
}

TEST(Concerns, AnOrderSaysWhichDaysAreInIt) {
    SampleJob job;
    job.item("cabinets", "7000").orderOn = day("2026-05-29");
    EXPECT_EQ(only(concerns(job), ConcernKind::Order)->rule.text(),
              "to be ordered within 7 days, 3 days to look it over in it");
    job.rows.job.concernLevels = {{"order check days", Money{}}};
    EXPECT_EQ(only(concerns(job), ConcernKind::Order)->rule.text(), "to be ordered within 7 days");
}

}  // namespace
