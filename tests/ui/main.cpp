// Tests of screens and pages need a Qt program around them, without a display.
#include <gtest/gtest.h>

#include <QGuiApplication>

#include "tests/support/fixed_chance.h"

int main(int argc, char** argv) {
    ledgerboard::tests::preferMemory();
    qputenv("QT_QPA_PLATFORM", "offscreen");
    qputenv("QT_QUICK_BACKEND", "software");
    QGuiApplication app(argc, argv);
    testing::InitGoogleTest(&argc, argv);
    return RUN_ALL_TESTS();
}
