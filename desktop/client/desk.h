// Which book lies on the desk, which job's folder is open and at which divider; how is something
// kept in it, undone and done again?
//
// One writer: every change goes through keep(), which returns once it is on disk; only then does a
// page say so. Then the job is read anew in another thread, and changed() tells the pages. What
// another program or a meeting with the peer writes into the book is seen within a second, and the
// pages follow by themselves.
// Threads: the UI's.
#pragma once

#include <memory>
#include <optional>

#include <QObject>
#include <QStringList>
#include <QThread>
#include <QThreadPool>
#include <QTimer>
#include <QVariantList>
#include <QtQml/qqmlregistration.h>

#include "core/report/week_page.h"
#include "core/store/book.h"

#include "desktop/client/book_reader.h"
#include "desktop/client/surroundings.h"

class QJSEngine;
class QQmlEngine;

namespace ledgerboard::desk {

// A divider of the folder: what stands on it and the key that opens there.
struct Divider {
    Q_GADGET
    Q_PROPERTY(QString key MEMBER key)
    Q_PROPERTY(QString name MEMBER name)
    Q_PROPERTY(QString shortcut MEMBER shortcut)

  public:
    QString key;
    QString name;
    QString shortcut;
};

class Desk : public QObject {
    Q_OBJECT
    QML_ELEMENT
    QML_SINGLETON

    Q_PROPERTY(State state READ state NOTIFY changed)
    Q_PROPERTY(QString troubleHead READ troubleHead NOTIFY changed)
    Q_PROPERTY(QString trouble READ trouble NOTIFY changed)
    Q_PROPERTY(bool isThere READ isThere NOTIFY changed)
    Q_PROPERTY(QString bookName READ bookName NOTIFY changed)
    Q_PROPERTY(QString jobName READ jobName NOTIFY changed)
    Q_PROPERTY(QString page READ page NOTIFY pageChanged)
    Q_PROPERTY(QVariantList dividers READ dividers NOTIFY wordsChanged)
    Q_PROPERTY(QString peerText READ peerText NOTIFY changed)
    Q_PROPERTY(QString asOfText READ asOfText NOTIFY changed)
    Q_PROPERTY(QString todayText READ todayText NOTIFY changed)
    Q_PROPERTY(bool isBusy READ isBusy NOTIFY busyChanged)
    Q_PROPERTY(QString keptText READ keptText NOTIFY keptChanged)
    Q_PROPERTY(QString notKeptText READ notKeptText NOTIFY keptChanged)
    Q_PROPERTY(QString undoText READ undoText NOTIFY keptChanged)

  public:
    enum State {
        NoBook,    // nothing is open: begin a job or open a book
        Opening,   // opened, the first reading is under way
        Open,      // there is a book to show
        InTrouble  // it cannot be opened or read: `trouble` says why and what to do
    };
    Q_ENUM(State)

    // The one of the program, made by main (or a test) before any page.
    [[nodiscard]] static Desk* here();
    static Desk* create(QQmlEngine* engine, QJSEngine* script);

    explicit Desk(Surroundings surroundings, QObject* parent = nullptr);
    ~Desk() override;

    // Opens a book, given as a path or a file address.
    Q_INVOKABLE void open(const QString& path);
    // Opens the book that was open last, where there was one; else nothing.
    Q_INVOKABLE void openLast();
    // The same book once more, after what was wrong with it was mended.
    Q_INVOKABLE void openAgain();
    // A new book in the folder for books, with a first job; or a job more in the book that is open.
    // True once it is on disk; errors are told by notKeptText.
    Q_INVOKABLE bool beginJob(const QString& name, const QString& builtYear);
    // The invented house of the demo, made in the folder for books unless it is there.
    Q_INVOKABLE void openDemo();
    Q_INVOKABLE void close();

    Q_INVOKABLE void openJob(const QString& id);
    // Back to the list of jobs.
    Q_INVOKABLE void leaveJob();
    // Opens the folder at a divider, by its key; "jobs" is the list of jobs.
    Q_INVOKABLE void turnTo(const QString& key);
    [[nodiscard]] Q_INVOKABLE bool hasPage(const QString& key) const;
    // Shows the job as of a day ("2026-05-22", "22 May 2026"); empty: today. False where the text
    // is no day; notKeptText then says why.
    Q_INVOKABLE bool lookAt(const QString& day);

    Q_INVOKABLE void undo();
    Q_INVOKABLE void redo();
    Q_INVOKABLE void forgetKept();
    // Reads the job anew.
    Q_INVOKABLE void refresh();

    // Writes an action; true once it is on disk. `said` is what the page then says of it. A failure
    // is told by notKeptText, and the book is as it was.
    bool keep(const store::Action& action, const QString& said);
    // Says what was kept by another way than keep(), and reads the job anew.
    void sayKept(const QString& said, const QString& what);

    // Says something that changed nothing in the book.
    void sayPlainly(const QString& said) { say(said, {}); }

    // Says why something was refused before it came to the book.
    void sayNotKept(const QString& why) { say({}, why); }

    [[nodiscard]] State state() const { return state_; }

    [[nodiscard]] QString troubleHead() const;

    [[nodiscard]] QString trouble() const { return trouble_; }

    // Whether there is a file at all where the book should be.
    [[nodiscard]] bool isThere() const;
    [[nodiscard]] QString bookName() const;
    [[nodiscard]] QString jobName() const;

    [[nodiscard]] QString page() const { return page_; }

    [[nodiscard]] QVariantList dividers() const;
    [[nodiscard]] QString peerText() const;
    [[nodiscard]] QString asOfText() const;
    // The day at the house that is looked at, as it is typed.
    [[nodiscard]] QString todayText() const;

    [[nodiscard]] bool isBusy() const { return isReading_ || weekUnderWay_; }

    [[nodiscard]] QString keptText() const { return keptText_; }

    [[nodiscard]] QString notKeptText() const { return notKeptText_; }

    // What Ctrl+Z would take back, as far as it was done here; else empty.
    [[nodiscard]] QString undoText() const;

    [[nodiscard]] const std::vector<JobName>& jobs() const { return reading_.jobs; }

    // The job whose folder is open, as it was read last; null where there is none.
    [[nodiscard]] std::shared_ptr<const JobNow> now() const { return reading_.now; }

    // Its weekly page; null until it has been worked out. Asking for it begins that.
    [[nodiscard]] std::shared_ptr<const report::WeekPage> week();

    // Where the week cannot be told: why.
    [[nodiscard]] QString weekTrouble() const { return weekTrouble_; }

    [[nodiscard]] bool hasBook() const { return book_.has_value(); }

    // Requires: a book is open.
    [[nodiscard]] store::Book& book() { return *book_; }

    [[nodiscard]] std::string bookPath() const { return path_; }

    [[nodiscard]] model::Id<model::Kind::Job> job() const { return job_; }

    // How far the log had come when the book was read last.
    [[nodiscard]] store::LogPosition position() const { return reading_.position; }

    [[nodiscard]] const std::optional<model::Date>& asOf() const { return asOf_; }

    [[nodiscard]] const Surroundings& surroundings() const { return surroundings_; }

    // This machine's clock, set right by the peer's as of the last meeting.
    [[nodiscard]] model::Instant instant() const;

    // Work that takes a while, one after the other.
    [[nodiscard]] QThreadPool& pool() { return pool_; }

  signals:
    // What is shown may have changed.
    void changed();
    void pageChanged();
    void weekChanged();
    void busyChanged();
    void keptChanged();
    void wordsChanged();

  private:
    bool openPath(const std::string& path);
    void take(const Reading& reading);
    void say(const QString& kept, const QString& notKept);
    void stopReader();
    void look();
    void workOutWeek();
    void fail(const QString& why);
    void rememberPlace();

    static Desk* here_;

    Surroundings surroundings_;
    std::string path_;  // of the book that is open or was tried
    std::optional<store::Book> book_;
    std::int64_t clockOffsetMs_ = 0;
    model::Id<model::Kind::Job> job_;
    std::optional<model::Date> asOf_;
    Reading reading_;
    State state_ = NoBook;
    QString trouble_;
    std::string english_;  // the same as core says it, by which kinds of trouble are told apart
    QString page_ = QStringLiteral("jobs");
    QString keptText_;
    QString notKeptText_;
    QStringList done_;    // words of what was done here and not undone, latest last
    QStringList undone_;  // of what was undone
    QTimer sayOffer_;
    QTimer outside_;  // looks for what others write
    QThread readerThread_;
    BookReader* reader_ = nullptr;  // in readerThread_, deleted with it
    bool isReading_ = false;
    bool readAgain_ = false;
    QThreadPool pool_;
    std::shared_ptr<const JobNow> weekOf_;  // what week_ was, or is being, worked out from
    std::shared_ptr<const report::WeekPage> week_;
    QString weekTrouble_;
    bool weekUnderWay_ = false;
};

}  // namespace ledgerboard::desk
