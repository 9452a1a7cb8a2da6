// How far is the item in hand, and what is to be said of it? By the way it is measured: a percent,
// a count, or the steps that are done.
//
// The rule, the figure beside it and the steps say one thing; kept, it is a mark of the day named.
// Threads: the UI's.
#pragma once

#include <memory>
#include <optional>

#include <QObject>
#include <QStringList>
#include <QVariantList>
#include <QtQml/qqmlregistration.h>

#include "core/compute/mark_wish.h"

#include "desktop/client/now/job_now.h"

namespace ledgerboard::desk {

// One of the steps of an item, with its weight.
struct MarkStep {
    Q_GADGET
    Q_PROPERTY(QString words MEMBER words)
    Q_PROPERTY(bool isDone MEMBER isDone)

  public:
    QString words;
    bool isDone = false;
};

class MarkForm : public QObject {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(bool isOpen READ isOpen NOTIFY changed)
    Q_PROPERTY(QString itemText READ itemText NOTIFY changed)
    Q_PROPERTY(QString methodText READ methodText NOTIFY changed)
    Q_PROPERTY(bool isSteps READ isSteps NOTIFY changed)
    Q_PROPERTY(QVariantList steps READ steps NOTIFY changed)
    Q_PROPERTY(int stops READ stops NOTIFY changed)
    Q_PROPERTY(int stop READ stop NOTIFY changed)
    Q_PROPERTY(QString figure READ figure WRITE setFigure NOTIFY changed)
    Q_PROPERTY(QString percentText READ percentText NOTIFY changed)
    Q_PROPERTY(double last READ last NOTIFY changed)
    Q_PROPERTY(QString lastText READ lastText NOTIFY changed)

  public:
    using QObject::QObject;

    // Takes an item, by its id; nothing where there is none, or it is kept as it is.
    Q_INVOKABLE void begin(const QString& id);
    Q_INVOKABLE void close();
    // The blade is pulled to one of the stops of the rule.
    Q_INVOKABLE void pull(int stop);
    // The step at a place is done, or no longer is.
    Q_INVOKABLE void turn(int step);
    // Writes the mark, of `day` ("" today's). False where it was refused, which Desk says why.
    Q_INVOKABLE bool keep(const QString& day, const QString& note);

    [[nodiscard]] bool isOpen() const { return item_.has_value(); }

    [[nodiscard]] QString itemText() const;
    // How it is measured, and what so can be said.
    [[nodiscard]] QString methodText() const;
    [[nodiscard]] bool isSteps() const;
    [[nodiscard]] QVariantList steps() const;
    [[nodiscard]] int stops() const;
    [[nodiscard]] int stop() const;

    // What was typed or pulled: a count, or a percent.
    [[nodiscard]] QString figure() const { return figure_; }

    void setFigure(const QString& figure);
    // What it comes to: "64 %"; empty where it cannot be read.
    [[nodiscard]] QString percentText() const;
    // The mark that stands, 0 to 1.
    [[nodiscard]] double last() const;
    [[nodiscard]] QString lastText() const;

  signals:
    void changed();

  private:
    [[nodiscard]] bool isCounted() const;
    // Errors (WrongUse): the figure cannot be read, naming it.
    [[nodiscard]] model::Result<compute::MarkWish> wish() const;
    // As the item's way of measuring reads it; empty where it cannot be.
    [[nodiscard]] std::optional<model::Percent> percent() const;
    [[nodiscard]] const model::Item& row() const;

    std::shared_ptr<const JobNow> now_;
    std::optional<std::size_t> item_;
    QString figure_;
    std::vector<bool> done_;  // of the item's steps
};

}  // namespace ledgerboard::desk
