// What does the page This week show? The figures of report::weekPage, as `week` prints them, in the
// words of the pages.
//
// Threads: the UI's; the page itself is worked out by Desk in the background.
#pragma once

#include <QObject>
#include <QVariantList>
#include <QtQml/qqmlregistration.h>

#include "core/qml/look_plot.h"
#include "core/report/week_page.h"

namespace ledgerboard::desk {

class WeekView : public QObject {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(bool isReady READ isReady NOTIFY changed)
    Q_PROPERTY(bool isEmpty READ isEmpty NOTIFY changed)
    Q_PROPERTY(QString trouble READ trouble NOTIFY changed)
    Q_PROPERTY(QString title READ title NOTIFY changed)
    Q_PROPERTY(QString when READ when NOTIFY changed)
    Q_PROPERTY(bool hasLevel READ hasLevel NOTIFY changed)
    Q_PROPERTY(double lean READ lean NOTIFY changed)
    Q_PROPERTY(double hair READ hair NOTIFY changed)
    Q_PROPERTY(QString levelText READ levelText NOTIFY changed)
    Q_PROPERTY(QString levelScale READ levelScale NOTIFY changed)
    Q_PROPERTY(QString levelLow READ levelLow NOTIFY changed)
    Q_PROPERTY(QString levelHigh READ levelHigh NOTIFY changed)
    Q_PROPERTY(QVariantList head READ head NOTIFY changed)
    Q_PROPERTY(QString buyerText READ buyerText NOTIFY changed)
    Q_PROPERTY(ledgerboard::qml::Plot* plot READ plot CONSTANT)
    Q_PROPERTY(QString progressText READ progressText NOTIFY changed)
    Q_PROPERTY(QString methodsText READ methodsText NOTIFY changed)
    Q_PROPERTY(bool hasMovers READ hasMovers NOTIFY changed)
    Q_PROPERTY(QVariantList movers READ movers NOTIFY changed)
    Q_PROPERTY(QString askedText READ askedText NOTIFY changed)
    Q_PROPERTY(QString contingencyText READ contingencyText NOTIFY changed)
    Q_PROPERTY(QVariantList trades READ trades NOTIFY changed)
    Q_PROPERTY(QVariantList rooms READ rooms NOTIFY changed)
    Q_PROPERTY(QVariantList next READ next NOTIFY changed)
    Q_PROPERTY(QVariantList papers READ papers NOTIFY changed)
    Q_PROPERTY(QVariantList monday READ monday NOTIFY changed)
    Q_PROPERTY(QVariantList answers READ answers NOTIFY changed)
    Q_PROPERTY(QVariantList photos READ photos NOTIFY changed)
    Q_PROPERTY(QString leftOutText READ leftOutText NOTIFY changed)
    Q_PROPERTY(QString reminder READ reminder NOTIFY changed)

  public:
    explicit WeekView(QObject* parent = nullptr);

    // Keeps this week's figures as the review of its day, for the next week to stand beside.
    Q_INVOKABLE void keepReview();
    // Writes the page as a PDF to a path or file address, one sheet, two sides; true once it is
    // there. What came of it is said by Desk.
    Q_INVOKABLE bool print(const QString& where);
    // A name for that file, beside the book.
    [[nodiscard]] Q_INVOKABLE QString printName() const;

    [[nodiscard]] bool isReady() const { return page_ != nullptr; }

    [[nodiscard]] bool isEmpty() const { return page_ != nullptr && page_->items == 0; }

    [[nodiscard]] QString trouble() const;
    [[nodiscard]] QString title() const;
    [[nodiscard]] QString when() const;

    [[nodiscard]] bool hasLevel() const { return page_ != nullptr && page_->level.has_value(); }

    [[nodiscard]] double lean() const;
    [[nodiscard]] double hair() const;
    [[nodiscard]] QString levelText() const;
    [[nodiscard]] QString levelScale() const;
    [[nodiscard]] QString levelLow() const;
    [[nodiscard]] QString levelHigh() const;
    [[nodiscard]] QVariantList head() const;
    [[nodiscard]] QString buyerText() const;

    [[nodiscard]] qml::Plot* plot() { return &plot_; }

    [[nodiscard]] QString progressText() const;
    [[nodiscard]] QString methodsText() const;

    [[nodiscard]] bool hasMovers() const { return page_ != nullptr && page_->movers.has_value(); }

    [[nodiscard]] QVariantList movers() const;
    [[nodiscard]] QString askedText() const;
    [[nodiscard]] QString contingencyText() const;
    [[nodiscard]] QVariantList trades() const;
    [[nodiscard]] QVariantList rooms() const;
    [[nodiscard]] QVariantList next() const;
    [[nodiscard]] QVariantList papers() const;
    [[nodiscard]] QVariantList monday() const;
    [[nodiscard]] QVariantList answers() const;
    [[nodiscard]] QVariantList photos() const;
    [[nodiscard]] QString leftOutText() const;
    [[nodiscard]] QString reminder() const;

  signals:
    void changed();

  private:
    void follow();

    std::shared_ptr<const report::WeekPage> page_;
    qml::Plot plot_;
};

}  // namespace ledgerboard::desk
