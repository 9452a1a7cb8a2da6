// Protects: papers for others hold what they are for and none of the owner's money, whatever was
// entered; they are well formed; a crew's paper holds that crew's alone. How: a small job by hand
// with amounts that nothing else could print.
#include "core/report/forms_html.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace ledgerboard::report {
namespace {

using model::Id;
using model::Kind;
using testing::AllOf;
using testing::HasSubstr;
using testing::Not;

template <Kind K>
Id<K> idOf(std::uint8_t number) {
    std::array<std::uint8_t, 16> bytes{};
    bytes[15] = number;
    return Id<K>(model::RawId(bytes));
}

class FormsHtmlTest : public testing::Test {
  protected:
    void SetUp() override {
        rows_.job.id = idOf<Kind::Job>(1);
        rows_.job.name = "14 <Quince> Row";
        rows_.job.budget = model::Money::of(777'111);
        model::Space kitchen;
        kitchen.id = idOf<Kind::Space>(2);
        kitchen.name = "Kitchen";
        rows_.spaces = {kitchen};
        rows_.crews = {crew(3, "Tile crew"), crew(4, "Paint crew")};
        rows_.items = {item(5, 3, model::Treatment::Replace, "backsplash"),
                       item(6, 4, model::Treatment::Refinish, "walls"),
                       item(7, 4, model::Treatment::Keep, "windows")};
        model::Punch punch;
        punch.id = idOf<Kind::Punch>(8);
        punch.space = kitchen.id;
        punch.crew = idOf<Kind::Crew>(3);
        punch.what = "grout open at the range";
        punch.cost = model::Money::of(777'222);
        punch.dueOn = day_ - 1;
        rows_.punches = {punch};
    }

    static model::Crew crew(std::uint8_t number, const std::string& name) {
        model::Crew row;
        row.id = idOf<Kind::Crew>(number);
        row.name = name;
        return row;
    }

    static model::Item item(std::uint8_t number, std::uint8_t crew, model::Treatment treatment,
                            const std::string& object) {
        model::Item row;
        row.id = idOf<Kind::Item>(number);
        row.space = idOf<Kind::Space>(2);
        row.crew = idOf<Kind::Crew>(crew);
        row.treatment = treatment;
        row.object = object;
        row.quantity = model::Quantity::of(30);
        row.unit = "sq ft";
        row.lumpSum = model::Money::of(777'333);
        row.costHigh = model::Money::of(777'444);
        row.quote = model::Money::of(777'555);
        row.note = "the owner's own words";
        row.instructions = "white, glazed";
        return row;
    }

    std::string bids(std::uint8_t crew = 0) {
        return bidsHtml(rows_, compute::figuresOf(rows_, day_),
                        crew == 0 ? Id<Kind::Crew>() : idOf<Kind::Crew>(crew), day_);
    }

    std::string punchSheet(std::uint8_t crew = 0) {
        return punchHtml(rows_, compute::punchListOf(rows_, day_),
                         crew == 0 ? Id<Kind::Crew>() : idOf<Kind::Crew>(crew), day_);
    }

    model::JobRows rows_;
    model::Date day_ = model::Date::fromYmd(2026, 5, 22).value();
};

TEST_F(FormsHtmlTest, TheScopeToBidOnHasSizesAndNoMoney) {
    const std::string page = bids();
    EXPECT_THAT(page, AllOf(HasSubstr("14 &lt;Quince&gt; Row"), HasSubstr("<h2>Kitchen</h2>"),
                            HasSubstr("replace backsplash"), HasSubstr("30 sq ft"),
                            HasSubstr("white, glazed"), HasSubstr("refinish walls")));
    EXPECT_THAT(
        page, AllOf(Not(HasSubstr("777")), Not(HasSubstr("own words")), Not(HasSubstr("windows"))));
}

TEST_F(FormsHtmlTest, ACrewsScopeIsThatCrewsAlone) {
    EXPECT_THAT(bids(3), AllOf(HasSubstr("Tile crew"), HasSubstr("backsplash"),
                               Not(HasSubstr("walls")), Not(HasSubstr("Paint crew"))));
    rows_.items.clear();
    EXPECT_THAT(bids(3), HasSubstr("There is no work to bid on for Tile crew."));
}

TEST_F(FormsHtmlTest, ThePunchSheetHasBoxesAndNoMoney) {
    EXPECT_THAT(punchSheet(), AllOf(HasSubstr("grout open at the range"), HasSubstr("(late)"),
                                    HasSubstr("1 item open"), Not(HasSubstr("777"))));
    EXPECT_THAT(punchSheet(4), HasSubstr("Nothing is left to put right."));
}

TEST_F(FormsHtmlTest, FormsAreBlankAndSendPeopleToTheLaw) {
    for (const std::string& page : {changeFormHtml(rows_), waiverFormHtml(rows_)}) {
        EXPECT_THAT(page, AllOf(HasSubstr("Check with local law"), HasSubstr("Quince"),
                                Not(HasSubstr("777")), Not(HasSubstr("crew</td>"))));
    }
}

}  // namespace
}  // namespace ledgerboard::report
