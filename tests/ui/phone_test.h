// What every test of the screens stands on: a house in a folder of its own, the phone in hand, and
// a failure wherever Qt or QML complained.
#pragma once

#include <gtest/gtest.h>
#include <memory>

#include <QColor>
#include <QDir>
#include <QImage>

#include "tests/support/fixed_chance.h"
#include "tests/ui/alder_street.h"
#include "tests/ui/thumb.h"

namespace ledgerboard::ui {

class PhoneTest : public testing::TestWithParam<QSize> {
  protected:
    ledgerboard::tests::TestFolder folder_{"phone"};
    AlderStreet house_ = buildAlderStreet(folder_.file("alder.book"));
    std::unique_ptr<Thumb> thumb_;

    void SetUp() override { Thumb::complaints().clear(); }

    // Has the phone's camera take `count` pictures.
    void takePictures(int count) {
        const QDir folder(QString::fromStdString(folder_.file("pictures")));
        QDir().mkpath(folder.path());
        for (int k = 0; k < count; ++k) {
            QImage picture(64, 48, QImage::Format_RGB32);
            picture.fill(QColor::fromHsv(40 * k, 90, 200));
            ASSERT_TRUE(picture.save(folder.filePath(QStringLiteral("%1.jpg").arg(k))));
        }
    }

    bool clockRuns_ = false;

    // Takes the phone in hand, with the house open where `path` names its book.
    Thumb& hold(const std::string& path, int textPercent = 100) {
        Held held;
        held.size = GetParam();
        held.now = noonOnFriday();
        held.clockRuns = clockRuns_;
        held.book = QString::fromStdString(path);
        held.pictures = QString::fromStdString(folder_.file("pictures"));
        held.textPercent = textPercent;
        thumb_ = std::make_unique<Thumb>(held);
        return *thumb_;
    }

    Thumb& hold() { return hold(house_.path); }

    void TearDown() override {
        thumb_.reset();
        EXPECT_TRUE(Thumb::complaints().isEmpty())
            << Thumb::complaints().join(QStringLiteral("\n")).toStdString();
    }
};

// Phones of three sizes and a tablet.
inline auto everySize() {
    return testing::Values(QSize(360, 780), QSize(390, 844), QSize(430, 932), QSize(820, 1180));
}

}  // namespace ledgerboard::ui
