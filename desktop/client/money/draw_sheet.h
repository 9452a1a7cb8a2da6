// What can be asked of the lender now, line by line; which draws were asked, visited and funded;
// which pictures go with the request?
//
// Figures are those of compute/lender_draws.h, as the command line's. Threads: the UI's.
#pragma once

#include "core/compute/lender_draws.h"

#include "desktop/client/money/record_sheet.h"

namespace ledgerboard::desk {

// The lender's schedule of values, with what can be drawn on each line now.
class LenderSheet : public RecordSheet {
    Q_OBJECT
    QML_ELEMENT

  public:
    explicit LenderSheet(QObject* parent = nullptr);

  protected:
    [[nodiscard]] std::vector<RecordLine> linesOf() override;
    [[nodiscard]] QStringList detailsOf(const model::RawId& id) const override;

  private:
    compute::DrawsNow draws_;
};

// The draws so far; one not funded yet stands first.
class DrawSheet : public RecordSheet {
    Q_OBJECT
    QML_ELEMENT

  public:
    explicit DrawSheet(QObject* parent = nullptr);

    [[nodiscard]] QString itemText() const override;

  protected:
    [[nodiscard]] std::vector<RecordLine> linesOf() override;
    [[nodiscard]] QString groupName(int group) const override;
    [[nodiscard]] QStringList detailsOf(const model::RawId& id) const override;
};

// What was asked for on each line of a draw, and what the inspector allowed of it; draws not funded
// yet stand first.
class VisitSheet : public RecordSheet {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(bool canAllow READ canAllow NOTIFY detailChanged)

  public:
    explicit VisitSheet(QObject* parent = nullptr);

    // Every line of the draw in hand that does not say yet is allowed as it was asked.
    Q_INVOKABLE void allowAsAsked();

    // Whether a line of the draw in hand does not say yet what was allowed.
    [[nodiscard]] bool canAllow() const { return !unsaid().empty(); }

    [[nodiscard]] QString itemText() const override;

  protected:
    [[nodiscard]] std::vector<RecordLine> linesOf() override;
    [[nodiscard]] QString groupName(int group) const override;
    [[nodiscard]] QStringList detailsOf(const model::RawId& id) const override;

  private:
    [[nodiscard]] const model::DrawLine* lineOf(const model::RawId& id) const;
    [[nodiscard]] std::vector<const model::DrawLine*> unsaid() const;
    [[nodiscard]] QString nameOf(const model::Draw& draw) const;

    QStringList draws_;  // names of the groups, in their order
};

// Pictures of the site; those for the lender go with the request.
class PhotoSheet : public RecordSheet {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(QString picture READ picture NOTIFY detailChanged)

  public:
    explicit PhotoSheet(QObject* parent = nullptr);

    // The picture in hand is for the lender, or no longer is.
    Q_INVOKABLE void turnChosen();

    [[nodiscard]] QString itemText() const override;
    // As a data address; empty where it cannot be shown.
    [[nodiscard]] QString picture() const;

  protected:
    [[nodiscard]] std::vector<RecordLine> linesOf() override;
    [[nodiscard]] QString groupName(int group) const override;
    [[nodiscard]] QStringList detailsOf(const model::RawId& id) const override;

  private:
    [[nodiscard]] const model::Photo* photoOf(const model::RawId& id) const;
};

}  // namespace ledgerboard::desk
