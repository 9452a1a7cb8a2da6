// Protects that everything can be reached: each control of each screen is at least 48 pixels high
// and wide (the belt's tools 56) and has a name for who listens, at 100 and at 200 % of the type.
#include "tests/ui/phone_test.h"

namespace ledgerboard::ui {
namespace {

class ReachTest : public PhoneTest {
  protected:
    // Every control on screen, by what it inherits.
    void expectReach(const char* screen) {
        const auto buttons = thumb_->controls();
        EXPECT_FALSE(buttons.empty()) << screen;
        for (QQuickItem* button : buttons) {
            const QString name = button->property("text").toString();
            const QString who = QLatin1String(screen) + QLatin1String(": ") + button->objectName() +
                                QLatin1String(" \"") + name + QLatin1Char('"');
            const double least = button->objectName().startsWith("tool-") ? 56 : 48;
            EXPECT_GE(button->height(), least) << who.toStdString();
            EXPECT_GE(button->width(), 48) << who.toStdString();
            EXPECT_FALSE(name.trimmed().isEmpty()) << who.toStdString();
        }
    }

    void expectReachEverywhere(int textPercent) {
        Thumb& thumb = hold(house_.path, textPercent);
        expectReach("space");
        thumb.tapText("item", "cabinets");
        expectReach("mark");
        thumb.tap("back");
        thumb.tap("tool-mark");
        expectReach("mark list");
        thumb.tap("back");
        for (const char* tool : {"tool-photo", "tool-punch", "tool-receipt"}) {
            thumb.tap(tool);
            expectReach(tool);
            thumb.tap("back");
        }
        thumb.tap("wholeHouse");
        expectReach("house");
        thumb.scrollTo("preferences");
        thumb.tap("preferences");
        expectReach("preferences");
    }
};

TEST_P(ReachTest, AtOrdinaryType) {
    expectReachEverywhere(100);
}

TEST_P(ReachTest, AtTwiceTheType) {
    expectReachEverywhere(200);
}

TEST_P(ReachTest, BeginningAJob) {
    Thumb& thumb = hold("");
    expectReach("start");
    thumb.tap("begin");
    expectReach("begin");
}

INSTANTIATE_TEST_SUITE_P(Sizes, ReachTest, everySize());

}  // namespace
}  // namespace ledgerboard::ui
