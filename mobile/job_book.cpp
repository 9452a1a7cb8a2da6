#include "mobile/job_book.h"

#include <QDir>
#include <QFileInfo>
#include <QJSEngine>
#include <QSettings>
#include <QUrl>

#include "core/intake/keep/keep_words.h"
#include "core/qml/demo_house.h"
#include "core/qml/new_job.h"

#include "mobile/said.h"

namespace ledgerboard::phone {

namespace {

constexpr const char* kLastBook = "book";
constexpr int kUndoOfferMs = 10'000;

}  // namespace

JobBook* JobBook::here_ = nullptr;

JobBook* JobBook::here() {
    return here_;
}

JobBook* JobBook::create(QQmlEngine*, QJSEngine*) {
    // The program's own, which the engine must not delete.
    QJSEngine::setObjectOwnership(here_, QJSEngine::CppOwnership);
    return here_;
}

JobBook::JobBook(Surroundings surroundings, QObject* parent)
    : QObject(parent), surroundings_(std::move(surroundings)) {
    here_ = this;
    qRegisterMetaType<Reading>();
    undoOffer_.setSingleShot(true);
    undoOffer_.setInterval(kUndoOfferMs);
    connect(&undoOffer_, &QTimer::timeout, this, &JobBook::forgetKept);
}

JobBook::~JobBook() {
    stopReader();
    here_ = nullptr;
}

void JobBook::stopReader() {
    readerThread_.quit();
    readerThread_.wait();
    reader_ = nullptr;
    isReading_ = readAgain_ = false;
}

void JobBook::open(const QString& path) {
    const QUrl address(path);
    openPath((address.isLocalFile() ? address.toLocalFile() : path).toStdString());
}

void JobBook::openLast() {
    const QSettings settings(surroundings_.settingsFile, QSettings::IniFormat);
    const QString path = settings.value(QLatin1String(kLastBook)).toString();
    // A book that was moved away is no trouble: another can be opened or begun.
    if (!path.isEmpty() && QFileInfo::exists(path)) {
        open(path);
    }
}

bool JobBook::openPath(const std::string& path) {
    stopReader();
    reading_ = {};
    book_.reset();
    auto opened = store::Book::open(path, surroundings_.random);
    if (!opened.ok()) {
        state_ = InTrouble;
        trouble_ = Said::trouble(opened.error());
        emit changed();
        return false;
    }
    book_.emplace(std::move(opened).value());
    state_ = Opening;
    trouble_.clear();
    QSettings(surroundings_.settingsFile, QSettings::IniFormat)
        .setValue(QLatin1String(kLastBook),
                  QFileInfo(QString::fromStdString(path)).absoluteFilePath());
    reader_ = new JobReader(path, surroundings_);
    reader_->moveToThread(&readerThread_);
    connect(&readerThread_, &QThread::finished, reader_, &QObject::deleteLater);
    connect(reader_, &JobReader::done, this, &JobBook::take);
    readerThread_.start();
    emit changed();
    refresh();
    return true;
}

void JobBook::refresh() {
    if (reader_ == nullptr) {
        return;
    }
    if (isReading_) {
        readAgain_ = true;
        return;
    }
    isReading_ = true;
    QMetaObject::invokeMethod(reader_, &JobReader::read, Qt::QueuedConnection);
}

void JobBook::take(const Reading& reading) {
    if (sender() != reader_) {
        return;  // of a book that was closed since
    }
    isReading_ = false;
    trouble_ = reading.trouble;
    if (trouble_.isEmpty()) {
        reading_ = reading;
        state_ = reading_.now == nullptr ? NoJob : Open;
    } else {
        state_ = InTrouble;
    }
    emit changed();
    if (readAgain_) {
        readAgain_ = false;
        refresh();
    }
}

bool JobBook::keep(const store::Action& action, const QString& said) {
    if (!book_) {
        return false;
    }
    store::Action whole = action;
    if (isOwner()) {
        if (auto taught = intake::addLessonsOfEdits(whole, *book_, instant()); !taught.ok()) {
            say({}, Said::trouble(taught.error()), false);
            return false;
        }
    }
    auto done = book_->commit(whole, instant());
    if (!done.ok()) {
        say({}, Said::trouble(done.error()), false);
        return false;
    }
    say(said, {}, true);
    refresh();
    return true;
}

void JobBook::sayKept(const QString& said) {
    say(said, {}, true);
    refresh();
}

void JobBook::close() {
    stopReader();
    reading_ = {};
    book_.reset();
    state_ = NoBook;
    trouble_.clear();
    emit changed();
}

bool JobBook::beginJob(const QString& name, const QString& builtYear, const QStringList& rooms) {
    const qml::NewJob wish{name.trimmed(), builtYear.trimmed(), surroundings_.timeZone, rooms};
    QDir().mkpath(surroundings_.bookFolder);
    auto made = qml::makeBook(surroundings_.bookFolder, wish, instant(), surroundings_.random);
    if (!made.ok()) {
        say({}, Said::trouble(made.error()), false);
        return false;
    }
    say({}, {}, false);
    return openPath(made.value().path);
}

bool JobBook::openDemo() {
    QDir().mkpath(surroundings_.bookFolder);
    const std::string path =
        QDir(surroundings_.bookFolder).filePath(tr("demo house.book")).toStdString();
    if (!QFileInfo::exists(QString::fromStdString(path))) {
        auto made = qml::makeDemo(path, instant(), surroundings_.random,
                                  qml::demoWeeksUntil(instant().utcDate()));
        if (!made.ok()) {
            say({}, Said::trouble(made.error()), false);
            return false;
        }
    }
    say({}, {}, false);
    return openPath(path);
}

model::Id<model::Kind::Person> JobBook::by() const {
    return book_->meAsKept();
}

model::Id<model::Kind::Device> JobBook::device() const {
    return book_->thisDeviceAsKept();
}

void JobBook::undo() {
    if (!book_ || !canUndo_) {
        return;
    }
    auto undone = book_->undo(instant());
    if (!undone.ok()) {
        say({}, Said::trouble(undone.error()), false);
        return;
    }
    say(tr("Undone: %1").arg(keptText_), {}, false);
    undoOffer_.start();
    refresh();
}

void JobBook::forgetKept() {
    say({}, {}, false);
}

void JobBook::say(const QString& kept, const QString& notKept, bool canUndo) {
    keptText_ = kept;
    notKeptText_ = notKept;
    canUndo_ = canUndo;
    if (canUndo_) {
        undoOffer_.start();
    } else {
        undoOffer_.stop();
    }
    emit keptChanged();
}

}  // namespace ledgerboard::phone
