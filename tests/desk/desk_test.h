// What every test of the desktop's pages stands on: the demo house in a folder of its own, hands on
// keys and mouse, and a failure wherever Qt or QML complained.
#pragma once

#include <filesystem>
#include <gtest/gtest.h>
#include <memory>

#include "core/qml/demo_house.h"

#include "tests/desk/hand.h"
#include "tests/support/fixed_chance.h"

// So that a failure can be read.
inline void PrintTo(const QString& text, std::ostream* out) {
    *out << '"' << text.toStdString() << '"';
}

namespace ledgerboard::ui {

// Friday 22 May 2026, noon in Chicago.
inline model::Instant noonOnThatFriday() {
    return model::Instant::parse("2026-05-22T17:00Z").value();
}

class DeskTest : public testing::Test {
  protected:
    ledgerboard::tests::TestFolder folder_{"desk"};
    std::unique_ptr<Hand> hand_;

    void SetUp() override { Hand::complaints().clear(); }

    // The demo house, made once a program and copied.
    std::string demo() {
        static ledgerboard::tests::TestFolder once("desk-demo");
        const std::string made = once.file("demo.book");
        if (!std::filesystem::exists(made)) {
            const auto done =
                qml::makeDemo(made, noonOnThatFriday(), ledgerboard::tests::fixedChance(9));
            EXPECT_TRUE(done.ok()) << (done.ok() ? "" : done.error().message);
        }
        const std::string copy = folder_.file("demo.book");
        std::filesystem::copy_file(made, copy, std::filesystem::copy_options::overwrite_existing);
        return copy;
    }

    // Lays a book on the desk; "" for none.
    Hand& lay(const std::string& book, Laid laid = {}) {
        if (laid.now == model::Instant{}) {
            laid.now = noonOnThatFriday();
        }
        laid.book = QString::fromStdString(book);
        hand_ = std::make_unique<Hand>(laid);
        return *hand_;
    }

    // And opens the folder of its first job.
    Hand& open(const std::string& book, Laid laid = {}) {
        lay(book, laid).key(Qt::Key_Return);
        return *hand_;
    }

    // The first job of `path` as a book opened anew holds it; nothing where there is none.
    static model::JobRows jobIn(const std::string& path) {
        auto book = store::Book::open(path, ledgerboard::tests::fixedChance(3));
        EXPECT_TRUE(book.ok());
        for (const auto& job : book.value().rows<model::Job>().value()) {
            return book.value().jobRows(job.id).value();
        }
        return {};
    }

    void TearDown() override {
        hand_.reset();
        EXPECT_TRUE(Hand::complaints().isEmpty())
            << Hand::complaints().join(QStringLiteral("\n")).toStdString();
    }
};

}  // namespace ledgerboard::ui
