// What core says is said in Spanish on a Spanish screen: every sentence that stands in its sources
// has a translation with the same places, and figures are filled in as they are written there.
//
// The sources are read here anew, by a search of this test's own, so that a sentence which
// core/qml/update-translations.sh overlooks is found as well.
#include "core/qml/said.h"

#include <gtest/gtest.h>
#include <set>

#include <QCoreApplication>
#include <QDir>
#include <QDirIterator>
#include <QFile>
#include <QLocale>
#include <QRegularExpression>
#include <QTranslator>

#include "core/compute/cautions.h"
#include "core/model/date.h"
#include "core/model/money.h"
#include "core/model/percent.h"
#include "core/model/saying.h"
#include "core/report/said_places.h"

namespace ledgerboard::ui {
namespace {

using model::saying;
using qml::Said;

// Every folder whose words reach a screen.
constexpr const char* kFolders[] = {
    "core", "sync/link", "sync/identity", "sync/exchange", "sync/wire", "desktop/client", "mobile",
};

// The literals at `at` and right after one another, as one text.
QString literalsAt(const QString& source, qsizetype at) {
    QString text;
    while (true) {
        while (at < source.size() && source[at].isSpace()) {
            ++at;
        }
        if (at >= source.size() || source[at] != QLatin1Char('"')) {
            return text;
        }
        for (++at; source[at] != QLatin1Char('"'); ++at) {
            if (source[at] == QLatin1Char('\\')) {
                ++at;
            }
            text += source[at];
        }
        ++at;
    }
}

std::set<QString> sentencesOfCore() {
    static const QRegularExpression kSaying(QStringLiteral("\\bsaying\\((?=\\s*\")"));
    std::set<QString> found;
    for (const char* folder : kFolders) {
        QDirIterator files(QStringLiteral(LEDGERBOARD_SOURCES "/") + QLatin1String(folder),
                           {QStringLiteral("*.cpp"), QStringLiteral("*.h")}, QDir::Files,
                           QDirIterator::Subdirectories);
        while (files.hasNext()) {
            QFile file(files.next());
            EXPECT_TRUE(file.open(QIODevice::ReadOnly)) << file.fileName().toStdString();
            const QString source = QString::fromUtf8(file.readAll());
            for (auto calls = kSaying.globalMatch(source); calls.hasNext();) {
                found.insert(literalsAt(source, calls.next().capturedEnd()));
            }
        }
    }
    return found;
}

std::set<QString> placesOf(const QString& sentence) {
    static const QRegularExpression kPlace(QStringLiteral("%[1-9]"));
    std::set<QString> places;
    for (auto all = kPlace.globalMatch(sentence); all.hasNext();) {
        places.insert(all.next().captured());
    }
    return places;
}

class SaidTest : public testing::Test {
  protected:
    QTranslator spanish_;

    void SetUp() override {
        ASSERT_TRUE(spanish_.load(QStringLiteral(":/i18n/shared_es")));
        QCoreApplication::installTranslator(&spanish_);
        QLocale::setDefault(QLocale(QLocale::Spanish, QLocale::UnitedStates));
    }

    void TearDown() override {
        QCoreApplication::removeTranslator(&spanish_);
        QLocale::setDefault(QLocale(QLocale::English, QLocale::UnitedStates));
    }
};

TEST_F(SaidTest, EverySentenceOfCoreHasItsSpanishWithTheSamePlaces) {
    static const QRegularExpression kLetter(QStringLiteral("[A-Za-z]"));
    const auto all = sentencesOfCore();
    EXPECT_GT(all.size(), 300U);  // the search finds them
    for (const auto& sentence : all) {
        QString plain = sentence;
        plain.remove(QRegularExpression(QStringLiteral("%[1-9]")));
        if (!plain.contains(kLetter)) {
            continue;  // "%1: %2"
        }
        const QString told = spanish_.translate("Core", sentence.toUtf8().constData());
        EXPECT_FALSE(told.isEmpty()) << sentence.toStdString();
        EXPECT_EQ(placesOf(told), placesOf(sentence)) << sentence.toStdString();
    }
}

TEST_F(SaidTest, EveryCautionIsToldInSpanish) {
    for (const auto& row : compute::cautionRows()) {
        for (const auto& words : {row.about, row.text, row.source, row.consequence}) {
            const QString told = spanish_.translate("Caution", std::string(words).c_str());
            EXPECT_FALSE(told.isEmpty()) << words;
        }
    }
}

// Those that are read out of walk notes have a table of their own: what it is about, and why.
TEST_F(SaidTest, EveryCautionOfWalkNotesIsToldInSpanish) {
    QFile table(QStringLiteral(LEDGERBOARD_SOURCES "/core/intake/tables/cautions.tsv"));
    ASSERT_TRUE(table.open(QIODevice::ReadOnly));
    int rows = 0;
    while (!table.atEnd()) {
        const QList<QByteArray> cells = table.readLine().trimmed().split('\t');
        if (cells.size() == 6 && !cells[0].startsWith('#')) {
            ++rows;
            EXPECT_FALSE(spanish_.translate("Caution", cells[1]).isEmpty()) << cells[1].data();
            EXPECT_FALSE(spanish_.translate("Caution", cells[5]).isEmpty()) << cells[5].data();
        }
    }
    EXPECT_GE(rows, 12);
}

// 15 May 2026 is a Friday: so says the calendar.
TEST_F(SaidTest, FiguresAreWrittenAsTheScreensWriteThem) {
    EXPECT_EQ(Said::told(saying("decide by %1", model::Date::parse("2026-05-15").value())),
              QStringLiteral("decidir a más tardar el vie 15 may"));
    EXPECT_EQ(
        Said::told(saying("Watch %1: paid %2 ahead of its work", "Teja",
                          report::wholePlace(model::Money::of(12500), report::Script::Unicode))),
        QStringLiteral("Vigile Teja: pagado 12,500 por delante de su trabajo"));
    EXPECT_EQ(Said::told(saying("%1 % shown", model::Percent::fromBasisPoints(3350))),
              QStringLiteral("33.5 % según las marcas"));
}

TEST_F(SaidTest, ASentenceWithinASentenceIsToldToo) {
    EXPECT_EQ(Said::told(saying("%1; next: %2", saying("left to pay"), saying("paid"))),
              QStringLiteral("por pagar; sigue: pagado"));
}

// What an owner wrote is theirs, whatever it looks like.
TEST_F(SaidTest, WordsOfTheBookStayAsTheyAre) {
    EXPECT_EQ(Said::told(model::asWritten("paid %2")), QStringLiteral("paid %2"));
    EXPECT_EQ(Said::told(saying("change signed: %1", "%1 paid")),
              QStringLiteral("cambio firmado: %1 paid"));
    EXPECT_EQ(Said::told("change signed: Paper"), QStringLiteral("cambio firmado: Paper"));
    EXPECT_EQ(Said::told("Order Insurance"), QStringLiteral("Pedir Insurance"));
    EXPECT_EQ(Said::told("the blue one, as Ana said"), QStringLiteral("the blue one, as Ana said"));
}

// A sentence that comes as its English is known again, whichever it is.
TEST_F(SaidTest, EverySentenceIsKnownAgainByItsEnglish) {
    static const QRegularExpression kPlace(QStringLiteral("%[1-9]"));
    static const QRegularExpression kLetter(QStringLiteral("[A-Za-z]"));
    static const QRegularExpression kSideBySide(QStringLiteral("%[1-9]%[1-9]"));
    for (QString sentence : sentencesOfCore()) {
        QString plain = sentence;
        plain.remove(kPlace);
        if (!plain.contains(kLetter) || sentence.contains(kSideBySide)) {
            continue;
        }
        QString told = spanish_.translate("Core", sentence.toUtf8().constData());
        EXPECT_EQ(Said::told(sentence.replace(kPlace, QStringLiteral("7")).toStdString()),
                  told.replace(kPlace, QStringLiteral("7")))
            << plain.toStdString();
    }
}

TEST_F(SaidTest, WhatStandsInAPlaceIsToldWhereItIsCores) {
    EXPECT_EQ(Said::told("change not signed after 7 days; asked 9 days ago"),
              QStringLiteral("cambio sin firmar después de 7 días; pedido hace 9 días"));
    EXPECT_EQ(Said::told("Tile crew, by Thursday: grout open at tub"),
              QStringLiteral("Tile crew, para el jueves: grout open at tub"));
    EXPECT_EQ(Said::told("Tile crew, due since Fri 15 May: grout open"),
              QStringLiteral("Tile crew, vencido desde el vie 15 may: grout open"));
    EXPECT_EQ(Said::told("built 1936; replace trim; 24 sq ft, more than the 20 sq ft outside that "
                         "are minor"),
              QStringLiteral("construida en 1936; cambiar trim; 24 pies², más que los 20 pies² "
                             "afuera que son trabajo menor"));
}

TEST_F(SaidTest, ARefusalIsInSpanishAndSaysSoWhereItIsNot) {
    const auto refused = model::Money::parse("lots");
    ASSERT_FALSE(refused.ok());
    EXPECT_EQ(Said::trouble(refused.error()),
              QStringLiteral("\"lots\" no es un número: escríbalo como 1250 o 1,250.50"));
    EXPECT_EQ(Said::trouble(model::inPlace(model::Saying("Quantity"), refused.error())),
              QStringLiteral("Cantidad: \"lots\" no es un número: escríbalo como 1250 o 1,250.50"));
    EXPECT_EQ(Said::trouble(model::cannotBeMet("no such words in any file")),
              QStringLiteral("en inglés: no such words in any file"));
    EXPECT_EQ(Said::trouble(Said::refusal(QStringLiteral("Ya está en español"))),
              QStringLiteral("Ya está en español"));
}

}  // namespace
}  // namespace ledgerboard::ui
