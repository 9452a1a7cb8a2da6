// Protects the HTML page: one file that needs nothing else, well-formed whatever people typed,
// readable without colour or sight, and holding the parts in the order they are read.
#include "core/report/week_html.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include "tests/unit/report/pages.h"
#include "tests/unit/report/well_formed.h"

namespace ledgerboard::report {

namespace {

using test::tagsNamed;
using test::textOf;
using test::wrongWith;
using ::testing::HasSubstr;
using ::testing::Not;

TEST(WellFormed, FindsWhatIsWrong) {
    // The check itself: it must be able to fail.
    const std::string head = "<!DOCTYPE html>";
    EXPECT_EQ(wrongWith(head + "<p>a &amp; b<br/></p>"), "");
    EXPECT_NE(wrongWith(head + "<p><b></p></b>"), "");
    EXPECT_NE(wrongWith(head + "<p>"), "");
    EXPECT_NE(wrongWith(head + "a & b"), "");
    EXPECT_NE(wrongWith(head + "<p a=1></p>"), "");
    EXPECT_NE(wrongWith(head + "<p a=\"1\" a=\"2\"></p>"), "");
    EXPECT_NE(wrongWith("<p></p>"), "");
}

TEST(WeekHtml, IsWellFormedWhateverTheJob) {
    for (const auto& page :
         {test::fullPage(), test::emptyPage(), test::oneItemPage(), test::hostilePage()}) {
        EXPECT_EQ(wrongWith(weekHtml(page)), "") << page.job;
    }
}

TEST(WeekHtml, NeedsNothingElse) {
    const std::string html = weekHtml(test::hostilePage());
    for (const char* outside :
         {"http:", "https:", "<script", "<link", "@import", "url(", "file:"}) {
        EXPECT_THAT(html, Not(HasSubstr(outside)));
    }
}

TEST(WeekHtml, ShowsWhatPeopleTypedAsText) {
    const std::string html = weekHtml(test::hostilePage());
    EXPECT_THAT(html, HasSubstr("&lt;script&gt;alert(&quot;x&quot;)"));
    EXPECT_THAT(html, Not(HasSubstr("red;}")));  // a swatch that is no colour is not used
    EXPECT_THAT(html, Not(HasSubstr("text/html")));
    EXPECT_EQ(html.find('\x1b'), std::string::npos);
}

TEST(WeekHtml, NeverShowsWhatIsNotANumber) {
    for (const auto& page :
         {test::fullPage(), test::emptyPage(), test::oneItemPage(), test::hostilePage()}) {
        const std::string html = weekHtml(page);
        EXPECT_THAT(html, Not(HasSubstr("NaN")));
        EXPECT_THAT(html, Not(HasSubstr("nan")));
        EXPECT_THAT(html, Not(HasSubstr("\"inf")));
    }
}

TEST(WeekHtml, HoldsItsPartsInTheOrderTheyAreRead) {
    const std::string text = textOf(weekHtml(test::fullPage()));
    std::size_t at = 0;
    for (const char* part : {"14 Alder Street This week, to Friday 15 May 2026",
                             "Week 6 of 8. Last review Fri 8 May.",
                             "Will cost 123,320 2,140 over budget, was 900 over",
                             "Will finish Tue 2 Jun 2 working days late, was on time",
                             "Will earn 50,100 15.0 % of resale, was 51,300; a day costs 68",
                             "Planned, earned, spent",
                             "planned 121,180",
                             "What moved it",
                             "Porch/joists change signed Wed 13 May, from",
                             "+1,180",
                             "All others (7) −110",
                             "Since Fri 8 May +1,240",
                             "If the unsigned change is signed: +1,350. Unknowns expected: +610.",
                             "Money by trade",
                             "Electrical 17,900 17,900 14,100 1,410 12,690 17,600 early 860",
                             "All 121,180 102,230 94,860 7,214 87,646 123,320 over 2,140",
                             "Contingency left 3,350 of 9,100, against unknowns of 610.",
                             "By room",
                             "HB Hall bath 41 % 61 % +1,280",
                             "DI Dining room done 100 % 0",
                             "Next 14 days",
                             "Tue 12 May Order Hall bath/shower door late",
                             "Papers missing (3)",
                             "Receipt, Corner hardware, 2026-05-03 214.60, 12 days",
                             "On Monday",
                             "Order Hall bath/shower door order-by was 3 days ago Schedule",
                             "2 of 29 items have no planned dates"}) {
        const auto found = text.find(part, at);
        EXPECT_NE(found, std::string::npos) << part << "\nafter\n" << text.substr(at, 200);
        at = found == std::string::npos ? at : found;
    }
}

TEST(WeekHtml, NamesNothingItDoesNotHave) {
    const std::string text = textOf(weekHtml(test::fullPage()));
    EXPECT_THAT(text, Not(HasSubstr("Cash")));
    EXPECT_THAT(text, Not(HasSubstr("between")));
    EXPECT_THAT(text, Not(HasSubstr("Photos")));  // none were given
    EXPECT_THAT(textOf(weekHtml(test::oneItemPage())), Not(HasSubstr("Contingency")));
}

TEST(WeekHtml, CanBeReadWithoutSightOrColour) {
    const std::string html = weekHtml(test::fullPage());
    for (const auto& cell : tagsNamed(html, "th")) {
        EXPECT_THAT(cell, HasSubstr("scope=\"")) << cell;
    }
    // Drawings within drawings place their parts; the outer one carries the label.
    std::size_t labelled = 0;
    for (const auto& drawing : tagsNamed(html, "svg")) {
        labelled += drawing.find("role=\"img\"") != std::string::npos &&
                            drawing.find("aria-label=\"") != std::string::npos
                        ? 1
                        : 0;
    }
    EXPECT_EQ(labelled, 1U + 1U + test::fullPage().rooms.size());  // level, curve, tapes
    EXPECT_EQ(tagsNamed(html, "h1").size(), 1U);
    EXPECT_THAT(html, HasSubstr("<html lang=\"en\">"));
    for (const auto& picture : tagsNamed(weekHtml(test::hostilePage()), "img")) {
        EXPECT_THAT(picture, HasSubstr("alt=\"")) << picture;
    }
}

TEST(WeekHtml, CarriesPicturesWithinItself) {
    auto page = test::fullPage();
    page.photos = {{"Kitchen, north wall", page.today, "image/jpeg", "foobar"},
                   {"not a picture", {}, "image/svg+xml", "<svg/>"}};
    const std::string html = weekHtml(page);
    EXPECT_EQ(tagsNamed(html, "img").size(), 1U);
    EXPECT_THAT(html, HasSubstr("src=\"data:image/jpeg;base64,Zm9vYmFy\""));
    EXPECT_THAT(textOf(html), HasSubstr("Kitchen, north wall, Fri 15 May"));
}

TEST(WeekHtml, CutsLongPartsOnPaperAndSaysSo) {
    auto page = test::fullPage();
    for (int k = 0; k < 30; ++k) {
        page.rooms.push_back(page.rooms[0]);
        page.papers.push_back(page.papers[0]);
    }
    const std::string html = weekHtml(page);
    EXPECT_THAT(html, HasSubstr("and 20 more, on the screen"));  // 35 rooms, 15 printed
    EXPECT_THAT(html, HasSubstr("and 25 more, on the screen"));  // 33 papers, 8 printed
    EXPECT_THAT(html, HasSubstr("Papers missing (33)"));
}

TEST(WeekHtml, SaysWhatToDoWithAnEmptyJob) {
    const std::string text = textOf(weekHtml(test::emptyPage()));
    EXPECT_THAT(text, HasSubstr("Nothing is in the scope of work yet."));
    EXPECT_THAT(text, HasSubstr("ledgerboard read FILE --keep"));
    EXPECT_THAT(text, Not(HasSubstr("Will cost")));
}

TEST(WeekHtml, RemindsOfTheLimitsOfItsCautions) {
    EXPECT_THAT(textOf(weekHtml(test::fullPage())), HasSubstr("Reminders only"));
    EXPECT_THAT(textOf(weekHtml(test::oneItemPage())), Not(HasSubstr("Reminders only")));
}

}  // namespace

}  // namespace ledgerboard::report
