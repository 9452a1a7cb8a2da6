// Which book is open, how does the job in it stand, and how is something kept in it?
//
// One writer: every change goes through keep(), which returns once it is on disk; only then does a
// screen say so. Then the job is read anew in another thread, and changed() tells the screens.
// Threads: the UI's.
#pragma once

#include <functional>
#include <memory>
#include <optional>

#include <QObject>
#include <QThread>
#include <QTimer>
#include <QtQml/qqmlregistration.h>

#include "core/store/book.h"

#include "mobile/job_reader.h"
#include "mobile/surroundings.h"

class QJSEngine;
class QQmlEngine;

namespace ledgerboard::phone {

class JobBook : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_SINGLETON

    Q_PROPERTY(State state READ state NOTIFY changed)
    Q_PROPERTY(QString trouble READ trouble NOTIFY changed)
    Q_PROPERTY(bool isOwner READ isOwner NOTIFY changed)
    Q_PROPERTY(QString keptText READ keptText NOTIFY keptChanged)
    Q_PROPERTY(QString notKeptText READ notKeptText NOTIFY keptChanged)
    Q_PROPERTY(bool canUndo READ canUndo NOTIFY keptChanged)

  public:
    enum State {
        NoBook,    // nothing is open: begin a job or open one
        Opening,   // opened, the first reading is under way
        NoJob,     // a book without a job: one that joined and has not met its peer
        Open,      // there is a job to show
        InTrouble  // it cannot be opened or read: `trouble` says why and what to do
    };
    Q_ENUM(State)

    // The one of the program, made by main (or a test) before any screen.
    [[nodiscard]] static JobBook* here();
    static JobBook* create(QQmlEngine* engine, QJSEngine* script);

    explicit JobBook(Surroundings surroundings, QObject* parent = nullptr);
    ~JobBook() override;

    // Opens a book, given as a path or a file address.
    Q_INVOKABLE void open(const QString& path);
    // Opens the book that was open last, where there was one.
    void openLast();
    // A new book with a job in it, its rooms in walking order. Errors are told by notKeptText.
    Q_INVOKABLE bool beginJob(const QString& name, const QString& builtYear,
                              const QStringList& rooms);
    // The invented house of the demo, in its seventh week now; made in the folder for books unless
    // it is there.
    Q_INVOKABLE bool openDemo();
    Q_INVOKABLE void undo();
    Q_INVOKABLE void forgetKept();
    // Reads the job anew.
    Q_INVOKABLE void refresh();

    // Writes an action; true once it is on disk. `said` is what the screen then says of it: "Shower
    // tile: 60 %". A failure is told by notKeptText, and the book is as it was.
    bool keep(const store::Action& action, const QString& said);

    // Says what was kept by another way than keep(), and reads the job anew.
    void sayKept(const QString& said);
    // Nothing is open any more.
    void close();

    // Says why something was refused before it came to the book.
    void sayNotKept(const QString& why) { say({}, why, false); }

    [[nodiscard]] State state() const { return state_; }

    [[nodiscard]] QString trouble() const { return trouble_; }

    [[nodiscard]] bool isOwner() const { return reading_.now != nullptr && reading_.now->isOwner; }

    [[nodiscard]] QString keptText() const { return keptText_; }

    [[nodiscard]] QString notKeptText() const { return notKeptText_; }

    [[nodiscard]] bool canUndo() const { return canUndo_; }

    // Null unless state is Open.
    [[nodiscard]] const JobNow* now() const { return reading_.now.get(); }

    [[nodiscard]] const Waiting& waiting() const { return reading_.waiting; }

    // Requires: a book is open.
    [[nodiscard]] store::Book& book() { return *book_; }

    // Whether the job is being read.
    [[nodiscard]] bool isBusy() const { return isReading_; }

    // Who writes, and on which device; nil where the book has no record of them, as a crew lead's
    // has none of its device. Requires: a book is open.
    [[nodiscard]] model::Id<model::Kind::Person> by() const;
    [[nodiscard]] model::Id<model::Kind::Device> device() const;

    [[nodiscard]] bool hasBook() const { return book_.has_value(); }

    [[nodiscard]] const Surroundings& surroundings() const { return surroundings_; }

    // Now: by this device's clock, set right by the peer's as of the last meeting.
    [[nodiscard]] model::Instant instant() const {
        return model::Instant::fromMilliseconds(surroundings_.now().milliseconds() +
                                                reading_.clockOffsetMs);
    }

    [[nodiscard]] std::int64_t clockOffsetMs() const { return reading_.clockOffsetMs; }

  signals:
    // What is shown may have changed.
    void changed();
    void keptChanged();

  private:
    bool openPath(const std::string& path);
    void take(const Reading& reading);
    void say(const QString& kept, const QString& notKept, bool canUndo);
    void stopReader();

    static JobBook* here_;

    Surroundings surroundings_;
    std::optional<store::Book> book_;
    Reading reading_;
    State state_ = NoBook;
    QString trouble_;
    QString keptText_;
    QString notKeptText_;
    bool canUndo_ = false;
    QTimer undoOffer_;
    QThread readerThread_;
    JobReader* reader_ = nullptr;  // in readerThread_, deleted with it
    bool isReading_ = false;
    bool readAgain_ = false;
};

}  // namespace ledgerboard::phone
