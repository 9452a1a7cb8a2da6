// What do the walk notes say, item by item, and which of it is to come into the job?
//
// Read while they are typed, in the background. Each row of the draft is tied to the sentence it
// was read from. A row is corrected or dropped here; nothing comes into the book before keep(). The
// notes stay on this machine until they are wiped, so that another page can be looked at meanwhile.
// Threads: the UI's.
#pragma once

#include <QColor>
#include <QStringList>
#include <QTimer>
#include <QtQml/qqmlregistration.h>

#include "core/intake/notes/draft.h"
#include "core/model/rows.h"

#include "desktop/client/row_model.h"

namespace ledgerboard::desk {

// A row of the draft.
struct WalkRow {
    Q_GADGET
    Q_PROPERTY(bool isHeading MEMBER isHeading)
    Q_PROPERTY(bool isItem MEMBER isItem)
    Q_PROPERTY(QString what MEMBER what)
    Q_PROPERTY(QString figures MEMBER figures)
    Q_PROPERTY(QString note MEMBER note)
    Q_PROPERTY(QString sure MEMBER sure)
    Q_PROPERTY(bool isUnsure MEMBER isUnsure)
    Q_PROPERTY(bool isDropped MEMBER isDropped)
    Q_PROPERTY(bool isHazard MEMBER isHazard)

  public:
    bool isHeading = false;
    bool isItem = false;
    QString what;
    QString figures;
    QString note;
    QString sure;
    bool isUnsure = false;
    bool isDropped = false;
    bool isHazard = false;
};

class WalkDesk : public RowModel {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(QString notes READ notes WRITE setNotes NOTIFY notesChanged)
    Q_PROPERTY(int count READ count NOTIFY shown)
    Q_PROPERTY(int place READ place WRITE setPlace NOTIFY moved)
    Q_PROPERTY(int from READ from NOTIFY moved)
    Q_PROPERTY(int to READ to NOTIFY moved)
    Q_PROPERTY(bool isReading READ isReading NOTIFY shown)
    Q_PROPERTY(QString refused READ refused NOTIFY shown)
    Q_PROPERTY(QString sumText READ sumText NOTIFY shown)
    Q_PROPERTY(bool canKeep READ canKeep NOTIFY shown)
    Q_PROPERTY(QStringList ownWords READ ownWords NOTIFY ownWordsChanged)

  public:
    explicit WalkDesk(QObject* parent = nullptr);

    Q_INVOKABLE void move(int down);
    // Drops the row in hand, or takes it back in.
    Q_INVOKABLE void flip();
    // The row read from the sentence at a place in the notes is in hand.
    Q_INVOKABLE void goToText(int position);
    // The parts of the item in hand, to be corrected: space, treatment, object, quantity, unit,
    // cost. Empty where no item is.
    [[nodiscard]] Q_INVOKABLE QStringList parts() const;
    // False where a part cannot be read, which Desk says why.
    Q_INVOKABLE bool correct(const QStringList& parts);
    // The rows that were not dropped come into the job, as one action.
    Q_INVOKABLE void keep();
    // Reads a file of notes, given as a path or file address.
    Q_INVOKABLE void open(const QString& where);
    Q_INVOKABLE void wipe();
    // Drops one of the owner's words, by its place in the list; what is read is read anew.
    Q_INVOKABLE void forget(int at);

    [[nodiscard]] QString notes() const { return notes_; }

    void setNotes(const QString& notes);

    [[nodiscard]] int count() const override { return static_cast<int>(rows_.size()); }

    [[nodiscard]] int place() const { return place_; }

    void setPlace(int place);

    // Where in the notes the sentence of the row in hand begins and ends; both 0 where it is not
    // found.
    [[nodiscard]] int from() const { return from_; }

    [[nodiscard]] int to() const { return to_; }

    [[nodiscard]] bool isReading() const { return isReading_; }

    [[nodiscard]] QString refused() const { return refused_; }

    [[nodiscard]] QString sumText() const;
    [[nodiscard]] bool canKeep() const;

    // The owner's own words as the book knows them: "“credenza” means sideboard".
    [[nodiscard]] QStringList ownWords() const;

  signals:
    void ownWordsChanged();
    void notesChanged();
    void shown();
    void moved();

  protected:
    [[nodiscard]] QVariant drawnAt(int place) const override;

  private:
    enum class Part { Heading, Item, Alternate, Fact, Caution };

    // A row and the part of the draft it stands for.
    struct Row {
        Part part = Part::Heading;
        std::size_t at = 0;
        QString heading;
        bool dropped = false;
    };

    struct Range {
        int from = 0;
        int to = 0;
    };

    void readSoon();
    void read();
    void learnWords();
    [[nodiscard]] std::vector<std::optional<intake::DraftItem>> wantedItems() const;
    void arrange();
    void findSentence();
    [[nodiscard]] const intake::Source* sourceOf(const Row& row) const;
    [[nodiscard]] Range rangeOf(const intake::Source& source) const;
    [[nodiscard]] WalkRow shownRow(const Row& row) const;
    [[nodiscard]] bool isRow(int place) const;

    QString notes_;
    intake::Draft draft_;
    std::vector<intake::DraftItem> asRead_;  // the items of the draft before they were corrected
    std::vector<model::OwnWord> ownWords_;
    std::vector<Row> rows_;
    int place_ = -1;
    int from_ = 0;
    int to_ = 0;
    bool isReading_ = false;
    int asked_ = 0;  // how often reading was asked for: an older answer is not taken
    QString refused_;
    QTimer soon_;
};

}  // namespace ledgerboard::desk
