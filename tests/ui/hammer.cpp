// Marks one item over and over with real touches, and prints a line for each mark that the screen
// has said is kept. To be killed in the middle (kill_test.cpp).
//
// Usage: phone-hammer BOOK SEED
#include <cstdio>
#include <cstdlib>

#include <QGuiApplication>

#include "tests/ui/alder_street.h"
#include "tests/ui/thumb.h"

int main(int argc, char** argv) {
    qputenv("QT_QPA_PLATFORM", "offscreen");
    qputenv("QT_QUICK_BACKEND", "software");
    QGuiApplication app(argc, argv);
    if (argc != 3) {
        std::fputs("Usage: phone-hammer BOOK SEED\n", stderr);
        return 2;
    }
    ledgerboard::ui::Held held;
    held.now = ledgerboard::ui::noonOnFriday();
    held.book = QString::fromLocal8Bit(argv[1]);
    held.chance = static_cast<unsigned>(std::atoi(argv[2]));
    ledgerboard::ui::Thumb thumb(held);
    std::puts("ready");
    std::fflush(stdout);
    for (int k = 0; ledgerboard::ui::Thumb::complaints().isEmpty(); ++k) {
        thumb.tapText("item", "cabinets");
        thumb.tap(k % 2 == 0 ? "more" : "less");
        thumb.tap("keep");
        if (thumb.says("Cabinets: ")) {
            std::puts("kept");
            std::fflush(stdout);
        }
        thumb.book().forgetKept();
    }
    return 1;
}
