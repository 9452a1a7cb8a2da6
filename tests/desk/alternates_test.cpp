// Protects the alternates: chosen by real keys with a reason, a choice lands in the scope and the
// plan, limits are kept within, and undo takes each of it back; alternates and options are entered,
// changed and removed.
#include "tests/desk/desk_test.h"
#include "tests/desk/more_alternates.h"
#include "tests/unit/cli/command_line.h"

namespace ledgerboard::ui {
namespace {

class AlternatesTest : public DeskTest {
  protected:
    std::string book_;

    Hand& openAlternates() {
        if (book_.empty()) {
            book_ = demo();
            addAlternates(book_);
        }
        open(book_).key(Qt::Key_4, Qt::ControlModifier);
        return *hand_;
    }

    model::JobRows rows() { return jobIn(book_); }

    model::Alternate alternate(const std::string& question) {
        for (const auto& one : rows().alternates) {
            if (one.question == question) {
                return one;
            }
        }
        ADD_FAILURE() << "no alternate " << question;
        return {};
    }

    // Decides for the laundry in the hall closet.
    void decide(const QString& why) {
        hand_->key(Qt::Key_Right);
        hand_->key(Qt::Key_Return);
        hand_->type(why);
        hand_->key(Qt::Key_Return);
    }

    std::size_t itemsCalled(const std::string& part) {
        std::size_t count = 0;
        for (const auto& item : rows().items) {
            count += item.object.find(part) != std::string::npos ? 1 : 0;
        }
        return count;
    }
};

TEST_F(AlternatesTest, AChoiceLandsInScopeAndPlanAndIsUndone) {
    Hand& hand = openAlternates();
    EXPECT_EQ(hand.said("alternatesCount"), QStringList{"3 open"});
    decide("no stairs with the wash");
    EXPECT_FALSE(alternate("closet").chosen.isNil());
    EXPECT_EQ(alternate("closet").why, "no stairs with the wash");
    EXPECT_EQ(itemsCalled("stacked laundry"), 1u);
    EXPECT_EQ(hand.said("alternatesCount"), QStringList{"2 open, 1 decided"});
    EXPECT_TRUE(hand.all("whyEntry").empty()) << "the next decision has not begun";
    EXPECT_EQ(hand.focus(), "alternates");
    EXPECT_TRUE(hand.says("because no stairs with the wash"));
    hand.key(Qt::Key_5, Qt::ControlModifier);
    hand.type("stacked");
    EXPECT_TRUE(hand.said("scheduleItem").value(0).contains("stacked laundry")) << "in the plan";
    hand.key(Qt::Key_Escape);
    hand.key(Qt::Key_3, Qt::ControlModifier);
    hand.type("stacked");
    EXPECT_EQ(hand.said("cell8"), QStringList{"2,100.00"}) << "its cost as a lump sum";
    hand.key(Qt::Key_4, Qt::ControlModifier);
    hand.key(Qt::Key_Z, Qt::ControlModifier);
    EXPECT_TRUE(alternate("closet").chosen.isNil());
    EXPECT_EQ(itemsCalled("stacked laundry"), 0u);
    EXPECT_EQ(hand.said("alternatesCount"), QStringList{"3 open"});
}

TEST_F(AlternatesTest, WithoutAReasonNothingIsDecided) {
    Hand& hand = openAlternates();
    decide("");
    EXPECT_TRUE(hand.says("Say why"));
    EXPECT_TRUE(alternate("closet").chosen.isNil());
    hand.key(Qt::Key_Escape);
    EXPECT_TRUE(hand.all("whyEntry").empty());
    EXPECT_EQ(hand.focus(), "alternates");
}

TEST_F(AlternatesTest, AnOptionIsTakenByTheMouseAndCarried) {
    Hand& hand = openAlternates();
    hand.clickText("optionName", "half bath off the landing");
    hand.key(Qt::Key_C);
    bool isCarried = false;
    for (const auto& option : rows().options) {
        isCarried = isCarried || (option.name == "half bath off the landing" &&
                                  option.id == alternate("second bath").carried);
    }
    EXPECT_TRUE(isCarried);
    hand.key(Qt::Key_C);
    EXPECT_TRUE(hand.says("is the one that is carried"));
    hand.key(Qt::Key_Z, Qt::ControlModifier);
    EXPECT_TRUE(alternate("second bath").carried.isNil());
}

// Of 2,100 + 650 = 2,750 and 6,500 + 650 = 7,150, only the first is within 3,000.
TEST_F(AlternatesTest, TheBestSetKeepsWithinALimit) {
    Hand& hand = openAlternates();
    EXPECT_TRUE(hand.said("bestFigures").value(0).contains("costs 9,250"));
    hand.click("limitCash");
    hand.type("3000");
    hand.key(Qt::Key_Return);
    EXPECT_TRUE(hand.said("bestFigures").value(0).contains("costs 2,750"))
        << hand.said("bestFigures").value(0).toStdString();
    hand.keys(Qt::Key_Backspace, 4);
    hand.type("much");
    hand.key(Qt::Key_Return);
    EXPECT_FALSE(hand.said("limitTrouble").isEmpty());
    EXPECT_TRUE(hand.said("bestFigures").value(0).contains("costs 2,750")) << "as it stood";
    hand.keys(Qt::Key_Backspace, 4);
    hand.key(Qt::Key_Return);
    EXPECT_TRUE(hand.said("bestFigures").value(0).contains("costs 9,250"));
}

// The demo house has a baseline: what is decided after it is a change order of 2,100.
TEST_F(AlternatesTest, TheChangeOrderIsAskedFor) {
    Hand& hand = openAlternates();
    decide("no stairs with the wash");
    EXPECT_TRUE(hand.says("+2,100 of it is not in the budget"));
    const std::size_t before = rows().changes.size();
    hand.key(Qt::Key_E, Qt::ControlModifier);
    ASSERT_EQ(rows().changes.size(), before + 1);
    for (const auto& change : rows().changes) {
        if (change.why == "no stairs with the wash") {
            EXPECT_EQ(change.amount, model::Money::parse("2100").value());
            EXPECT_TRUE(change.askedOn.has_value());
            EXPECT_FALSE(change.signedOn.has_value());
        }
    }
    EXPECT_TRUE(hand.says("Its change order is asked for"));
    hand.key(Qt::Key_Z, Qt::ControlModifier);
    EXPECT_EQ(rows().changes.size(), before);
}

TEST_F(AlternatesTest, ThePictureAndItsTable) {
    Hand& hand = openAlternates();
    ASSERT_TRUE(hand.tabTo("frontier"));
    hand.key(Qt::Key_Home);
    EXPECT_TRUE(hand.said("plotWhen").value(0).startsWith("650: "));
    EXPECT_TRUE(hand.said("plotFigure").value(0).startsWith("earns 753"));
    hand.key(Qt::Key_End);
    EXPECT_TRUE(hand.said("plotWhen").value(0).startsWith("9,250: "));
    hand.key(Qt::Key_T);
    EXPECT_EQ(hand.said("setCost"), (QStringList{"650", "2,750", "7,150", "9,250"}));
    hand.key(Qt::Key_T);
    EXPECT_EQ(hand.focus(), "frontier");
}

TEST_F(AlternatesTest, AJobWithoutAlternatesSaysWhereTheyComeFrom) {
    book_ = folder_.file("new.book");
    ASSERT_EQ(cli::CommandLine(book_)({"start", "9 Birch Lane"}).status, 0);
    Hand& hand = openAlternates();
    EXPECT_EQ(hand.said("alternatesEmpty").size(), 1);
    hand.click("alternatesToWalk");
    EXPECT_EQ(hand.desk().page(), "walk");
}

TEST_F(AlternatesTest, AQuestionIsEnteredWithItsOptionsByKeysAlone) {
    Hand& hand = openAlternates();
    hand.key(Qt::Key_N, Qt::ControlModifier);
    EXPECT_EQ(hand.said("formTitle"), QStringList{"New alternate: what is to be decided?"});
    hand.type("kitchen");
    hand.key(Qt::Key_Return);
    hand.type("pantry door");
    hand.key(Qt::Key_Return);
    hand.type("2026-05-29");
    hand.key(Qt::Key_Return);
    hand.key(Qt::Key_Return, Qt::ControlModifier);
    const auto made = alternate("pantry door");
    EXPECT_EQ(made.decideBy, model::Date::fromYmd(2026, 5, 29).value());
    EXPECT_FALSE(made.space.isNil());
    // Its options follow, one after the other.
    EXPECT_EQ(hand.said("formTitle"), QStringList{"New option: pantry door"});
    hand.type("slide it");
    hand.key(Qt::Key_Return);
    hand.type("420");
    hand.key(Qt::Key_Return);
    hand.type("1");
    hand.key(Qt::Key_Return);
    hand.key(Qt::Key_Return, Qt::ControlModifier);
    EXPECT_EQ(hand.said("formTitle"), QStringList{"New option: pantry door"});
    hand.type("leave as is");
    hand.key(Qt::Key_Return);
    hand.key(Qt::Key_Return, Qt::ControlModifier);
    hand.key(Qt::Key_Escape);
    EXPECT_EQ(hand.focus(), "alternates");
    std::size_t options = 0;
    for (const auto& option : rows().options) {
        if (option.alternate == made.id) {
            ++options;
            EXPECT_TRUE(option.name == "slide it" || option.name == "leave as is") << option.name;
            EXPECT_EQ(option.cost.has_value(), option.name == "slide it");
        }
    }
    EXPECT_EQ(options, 2u);
    EXPECT_EQ(hand.said("alternatesCount"), QStringList{"4 open"});
    EXPECT_TRUE(hand.said("alternateName").contains("Kitchen: pantry door"));
    hand.key(Qt::Key_Z, Qt::ControlModifier);
    hand.key(Qt::Key_Z, Qt::ControlModifier);
    EXPECT_TRUE(
        hand.said("noOptions")
            .contains(
                "It has no option yet: add two or more; one may be to leave things as they are."));
    hand.key(Qt::Key_Z, Qt::ControlModifier);
    EXPECT_EQ(hand.said("alternatesCount"), QStringList{"3 open"});
}

TEST_F(AlternatesTest, WhatSaysNothingOrContradictsItselfIsRefused) {
    Hand& hand = openAlternates();
    const auto count = rows().alternates.size();
    const auto options = rows().options.size();
    hand.click("addAlternate");
    hand.type("kitchen");
    hand.key(Qt::Key_Return);
    hand.click("formKeep");
    EXPECT_TRUE(hand.desk().notKeptText().startsWith("Question: say what is to be decided"));
    hand.key(Qt::Key_Escape);
    EXPECT_EQ(rows().alternates.size(), count);
    hand.click("addOption");
    hand.key(Qt::Key_Down);
    hand.type("100");
    hand.key(Qt::Key_Return);
    hand.key(Qt::Key_Return, Qt::ControlModifier);
    EXPECT_TRUE(hand.desk().notKeptText().startsWith("Option: say what would be done"));
    hand.keys(Qt::Key_Up, 2);
    hand.type("shelves");
    hand.key(Qt::Key_Return);
    hand.keys(Qt::Key_Down, 2);
    hand.type("900");  // value low
    hand.key(Qt::Key_Return);
    hand.type("500");
    hand.key(Qt::Key_Return);
    hand.key(Qt::Key_Return, Qt::ControlModifier);
    EXPECT_EQ(hand.desk().notKeptText(), "Value low is more than Value: put one of them right");
    EXPECT_EQ(rows().options.size(), options);
}

// The option in hand is changed field by field; a value against the others is refused at once.
TEST_F(AlternatesTest, AnOptionAndItsQuestionAreChangedInPlace) {
    Hand& hand = openAlternates();
    hand.key(Qt::Key_Right);
    hand.key(Qt::Key_I, Qt::ControlModifier);
    hand.key(Qt::Key_Down);
    hand.type("2250");
    hand.key(Qt::Key_Return);
    const auto cost = [this] {
        for (const auto& option : rows().options) {
            if (option.name.find("hall") != std::string::npos) {
                return option.cost.value_or(model::Money{});
            }
        }
        return model::Money{};
    };
    EXPECT_EQ(cost(), model::Money::fromMinor(225'000))
        << hand.said("formTitle").join("").toStdString();
    hand.key(Qt::Key_Escape);
    hand.key(Qt::Key_Z, Qt::ControlModifier);
    EXPECT_EQ(cost(), model::Money::fromMinor(210'000));
    hand.key(Qt::Key_I, Qt::ControlModifier | Qt::ShiftModifier);
    hand.keys(Qt::Key_Down, 2);
    hand.type("2026-06-01");
    hand.key(Qt::Key_Return);
    EXPECT_EQ(alternate("closet").decideBy, model::Date::fromYmd(2026, 6, 1).value());
}

TEST_F(AlternatesTest, AnOptionAndAnAlternateAreRemovedAndBroughtBack) {
    Hand& hand = openAlternates();
    const auto before = rows();
    hand.key(Qt::Key_Right);
    hand.key(Qt::Key_Delete, Qt::ControlModifier);
    EXPECT_EQ(rows().options.size(), before.options.size() - 1);
    hand.key(Qt::Key_Z, Qt::ControlModifier);
    EXPECT_EQ(rows().options.size(), before.options.size());
    hand.click("dropAlternate");
    EXPECT_EQ(rows().alternates.size(), before.alternates.size() - 1);
    EXPECT_LE(rows().options.size(), before.options.size() - 2) << "with its options";
    EXPECT_EQ(hand.said("alternatesCount"), QStringList{"2 open"});
    hand.key(Qt::Key_Z, Qt::ControlModifier);
    EXPECT_EQ(rows().alternates.size(), before.alternates.size());
    EXPECT_EQ(rows().options.size(), before.options.size());
}

}  // namespace
}  // namespace ledgerboard::ui
