#include "tests/unit/report/pages.h"

#include <limits>

namespace ledgerboard::report::test {

namespace {

using compute::WaitKind;
using model::Date;
using model::Money;
using model::Percent;

Date day(int month, int dayOfMonth) {
    return Date::fromYmd(2026, month, dayOfMonth).value();
}

// Planned, earned and spent at the end of each week from 3 April, in dollars; hand-drawn.
std::vector<CurvePoint> eightWeeks() {
    const std::vector<std::int64_t> planned = {1'500,  9'800,  24'000,  43'000, 62'500,
                                               81'000, 95'900, 107'500, 121'180};
    const std::vector<std::int64_t> earned = {900, 7'600, 20'500, 38'800, 58'000, 76'200, 91'420};
    const std::vector<std::int64_t> spent = {5'200, 13'900, 27'800, 42'500, 60'100, 79'400, 94'860};
    std::vector<CurvePoint> curve;
    for (std::size_t week = 0; week < planned.size(); ++week) {
        CurvePoint point{day(4, 3) + static_cast<int>(week) * 7, Money::of(planned[week]), {}, {}};
        if (week < earned.size()) {
            point.earned = Money::of(earned[week]);
            point.spent = Money::of(spent[week]);
        }
        curve.push_back(point);
    }
    return curve;
}

Amounts amounts(std::int64_t budgetNow, std::int64_t committed, std::int64_t billed,
                std::int64_t held, std::int64_t paid, std::int64_t forecast) {
    return {Money::of(budgetNow), Money::of(committed), Money::of(billed),
            Money::of(held),      Money::of(paid),      Money::of(forecast)};
}

std::vector<TradeMoney> trades() {
    return {
        {"Tear-out", amounts(6'400, 6'400, 6'400, 640, 5'760, 6'400), Money{}},
        {"Carpentry", amounts(24'180, 21'000, 22'300, 1'410, 20'890, 25'460), Money{}},
        {"Plumbing", amounts(15'200, 15'200, 11'400, 1'140, 10'260, 15'200), Money{}},
        {"Electrical", amounts(17'900, 17'900, 14'100, 1'410, 12'690, 17'600), Money::of(860)},
        {"Heating and cooling", amounts(13'500, 13'500, 13'500, 1'350, 12'150, 13'500), Money{}},
        {"Tile", amounts(12'600, 12'600, 9'870, 987, 8'883, 13'380), Money{}},
        {"Paint", amounts(10'900, 9'500, 4'100, 277, 3'823, 10'900), Money{}},
        {"Floors", amounts(11'300, 6'130, 9'200, 0, 9'200, 10'880), Money{}},
        {"Yard", amounts(9'200, 0, 3'990, 0, 3'990, 10'000), Money{}}};
}

std::vector<RoomProgress> rooms() {
    return {{"Kitchen", "KI", "", Percent::of(72), Percent::of(79), Money::of(410), 9},
            {"Hall bath", "HB", "", Percent::of(41), Percent::of(61), Money::of(1'280), 8},
            {"Front bedroom", "B1", "", Percent::of(88), Percent::of(86), Money::of(-60), 4},
            {"Dining room", "DI", "", Percent::whole(), Percent::whole(), Money{}, 3},
            {"Back yard", "YD", "", Percent::of(10), Percent::of(11), Money::of(510), 5}};
}

}  // namespace

WeekPage fullPage() {
    WeekPage page;
    page.job = "14 Alder Street";
    page.jobId = "01900000-0000-7000-8000-000000000001";
    page.currency = "USD";
    page.today = day(5, 15);
    page.week = 6;
    page.weeks = 8;
    page.since = {Against::Review, day(5, 8)};
    page.items = 29;
    page.undated = 2;
    page.cost = {Money::of(123'320), Money::of(121'180), Money::of(122'080), Money::of(900)};
    page.finish = {day(6, 2), day(5, 29), 2, day(5, 29), 0};
    page.earn = {Money::of(50'100), Percent::of(15), Money::of(51'300), Money::of(68), "", {}};
    page.level = Level{Money::of(2'140), Money::fromMinor(242'360), Money::of(3'350), true};
    page.progress = {Percent::of(75), Percent::of(79), Percent::of(78), Percent::of(72)};
    page.curve = eightWeeks();
    page.movers =
        Movers{{{"Porch/joists", "change signed Wed 13 May, from contingency", Money::of(1'180)},
                {"Hall bath/wall tile", "tile crew earns 0.86 a dollar", Money::of(780)},
                {"Front bedroom/storm windows", "two fewer", Money::of(-420)},
                {"Kitchen/light fixtures", "bought under the allowance", Money::of(-190)}},
               Money::of(-110),
               7,
               Money::of(1'240)};
    page.outside = {1, Money::of(1'350), Money::of(610)};
    page.contingency = Contingency{Money::of(9'100), Money::of(3'350)};
    page.trades = trades();
    page.total = amounts(121'180, 102'230, 94'860, 7'214, 87'646, 123'320);
    page.rooms = rooms();
    page.next = {{WaitKind::Order, day(5, 12), true, "Hall bath/shower door", {}},
                 {WaitKind::Inspection, day(5, 18), false, "rough plumbing", {}},
                 {WaitKind::Decision, day(5, 20), false, "Keep or remove the pantry wall?", {}},
                 {WaitKind::Payment, day(5, 22), false, "Tile crew", Money::of(2'410)},
                 {WaitKind::Delivery, day(5, 27), false, "Back yard/fence", {}},
                 {WaitKind::Inspection, {}, false, "final electrical", {}}};
    page.papers = {{"Insurance, Yard crew", {}, 1},
                   {"Receipt, Corner hardware, 2026-05-03", Money::fromMinor(21'460), 12},
                   {"Lien waiver, Tear-out crew", Money::of(640), {}}};
    page.monday = {
        {"Pay the Yard crew nothing until its insurance is renewed",
         "paid 60 %, seen 45 %: 690 ahead of its work", "Contracts and orders", true, true},
        {"Order Hall bath/shower door", "order-by was 3 days ago", "Schedule", true, false},
        {"Sign or refuse the attic insulation", "1,350, asked 9 days ago", "Contracts and orders",
         false, false},
        {"Test the old sheet floor before it is touched",
         "may hold asbestos; local codes and licensed practice decide", "Scope of work", false,
         true}};
    return page;
}

WeekPage emptyPage() {
    WeekPage page;
    page.job = "New house";
    page.today = day(5, 15);
    page.earn.whatIsMissing = "enter the expected resale value to see it";
    return page;
}

WeekPage oneItemPage() {
    WeekPage page = emptyPage();
    page.items = 1;
    page.undated = 1;
    page.unpriced = 1;
    page.trades = {{"No trade given", {}, {}}};
    page.rooms = {{"Kitchen", "KI", "#123456", Percent{}, {}, {}, 1}};
    return page;
}

WeekPage hostilePage() {
    WeekPage page = fullPage();
    const std::string script = "<script>alert(\"x\")</script> & 'Peña'\x1b[31m\n";
    std::string endless;
    for (int k = 0; k < 400; ++k) {
        endless += "añejo";
    }
    const Money huge = Money::fromMinor(1'000'000'000'000'000);  // the most a field takes
    page.job = script + endless;
    page.cost.forecast = huge;
    page.cost.forecastBefore = -huge;
    page.cost.overBefore = -huge;
    page.earn.profit = -huge;
    page.earn.ofResale = Percent::of(-999);
    page.level = Level{huge - page.cost.budget, Money::of(1), Money::of(2), false};
    page.movers->largest[0] = {script, endless, huge};
    page.movers->largest[1].what = endless;
    page.movers->total = -huge;
    page.trades[0] = {endless, {huge, huge, huge, huge, huge, huge}, huge};
    page.trades[1].trade = script;
    page.total = {huge, huge, huge, huge, huge, -huge};
    page.rooms[0] = {endless, "<b>", "red;}</style>", Percent::of(900), Percent::of(-5), -huge, 1};
    page.rooms[1].name = script;
    page.next[0].what = script + endless;
    page.next[0].amount = -huge;
    page.papers[0] = {endless, huge, 100'000};
    page.monday[0] = {script, endless, script, true, true};
    page.curve[3].spent = huge;
    page.curve[4].earned = -huge;
    page.photos = {{script, day(5, 1), "text/html", "<script>"},
                   {script, day(5, 1), "image/png", std::string("\x89PNG\0<", 6)}};
    return page;
}

}  // namespace ledgerboard::report::test
