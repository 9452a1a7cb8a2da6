// What is still to be put right, where and by whom; and how does a look at it accept it or send it
// back?
//
// Rows are compute::punchListOf's, in its order, as `punch` prints them. A look is kept: when, who
// and what was said. The sheet for crew leads is core/paper's, as `give punch pdf` writes it.
// Threads: the UI's; pictures are made small in the background.
#pragma once

#include "core/compute/punch_list.h"

#include "desktop/client/money/record_sheet.h"

namespace ledgerboard::desk {

class PunchSheet : public RecordSheet {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(bool byCrew READ byCrew NOTIFY asked)
    Q_PROPERTY(bool openOnly READ openOnly NOTIFY asked)
    Q_PROPERTY(QString groupText READ groupText NOTIFY asked)
    Q_PROPERTY(QString sumText READ sumText NOTIFY shown)
    Q_PROPERTY(QString crewText READ crewText NOTIFY detailChanged)
    Q_PROPERTY(QString spaceText READ spaceText NOTIFY detailChanged)
    Q_PROPERTY(QString beforePicture READ beforePicture NOTIFY picturesChanged)
    Q_PROPERTY(QString beforeText READ beforeText NOTIFY picturesChanged)
    Q_PROPERTY(QString afterPicture READ afterPicture NOTIFY picturesChanged)
    Q_PROPERTY(QString afterText READ afterText NOTIFY picturesChanged)

  public:
    explicit PunchSheet(QObject* parent = nullptr);

    Q_INVOKABLE void nextGroup();
    Q_INVOKABLE void turnOpen();
    // A look at what is in hand: it is right, or it goes back with what is wrong. False where it
    // was refused, which Desk says why.
    Q_INVOKABLE bool accept();
    Q_INVOKABLE bool sendBack(const QString& note);
    // The sheets to hand to crew leads as a PDF: by crew, that of the crew in hand; else one for
    // each. False where it could not be written, which Desk says why.
    Q_INVOKABLE bool print(const QUrl& file);
    [[nodiscard]] Q_INVOKABLE QString printName() const;

    [[nodiscard]] bool byCrew() const { return byCrew_; }

    [[nodiscard]] bool openOnly() const { return openOnly_; }

    [[nodiscard]] QString groupText() const;
    // "26 to put right, 2 late; 320 of cost, 24 without a cost".
    [[nodiscard]] QString sumText() const;
    [[nodiscard]] QString itemText() const override;
    // Names of the crew and the space in hand, for a new one beside it.
    [[nodiscard]] QString crewText() const;
    [[nodiscard]] QString spaceText() const;

    [[nodiscard]] QString beforePicture() const { return before_.source; }

    [[nodiscard]] QString beforeText() const { return before_.text; }

    [[nodiscard]] QString afterPicture() const { return after_.source; }

    [[nodiscard]] QString afterText() const { return after_.text; }

  signals:
    void asked();
    void picturesChanged();

  protected:
    [[nodiscard]] std::vector<RecordLine> linesOf() override;
    [[nodiscard]] QString groupName(int group) const override;
    [[nodiscard]] QStringList detailsOf(const model::RawId& id) const override;

  private:
    struct Shown {
        QString source;  // "" where there is none
        QString text;
    };

    bool look(model::Verdict said, const QString& note);
    void showPictures();
    [[nodiscard]] const compute::PunchRead* readOf(const model::RawId& id) const;
    [[nodiscard]] QString stateText(const compute::PunchRead& read) const;

    compute::PunchList list_;
    std::vector<std::string> groups_;
    bool byCrew_ = false;
    bool openOnly_ = true;
    model::RawId pictured_;  // whose pictures are shown or being made
    std::shared_ptr<const JobNow> picturedOf_;
    Shown before_;
    Shown after_;
};

}  // namespace ledgerboard::desk
