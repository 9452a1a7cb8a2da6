#include "desktop/client/desk.h"

#include <filesystem>

#include <QDir>
#include <QFileInfo>
#include <QJSEngine>
#include <QSettings>
#include <QUrl>

#include "core/intake/keep/keep_words.h"
#include "core/model/overflow.h"
#include "core/qml/demo_house.h"
#include "core/qml/id_text.h"
#include "core/qml/new_job.h"
#include "sync/exchange/device_side.h"

#include "desktop/client/background.h"
#include "desktop/client/said.h"
#include "desktop/client/week_pictures.h"

namespace ledgerboard::desk {

using qml::idFrom;
using qml::idText;

namespace {

constexpr const char* kLastBook = "book";
constexpr const char* kLastJob = "job";
constexpr const char* kLastPage = "page";
constexpr const char* kAsOf = "as_of";
constexpr int kSayMs = 10'000;
constexpr int kLookMs = 1'000;

// The pages that there are, in the order of the dividers, each with its own key: a page that comes
// between others takes nobody's. From Ctrl+1: week, walk, scope, alternates, schedule, contracts,
// spend, draws, deal; from Alt+1: punch, closing, prices, devices.
struct Page {
    const char* key;
    const char* name;
    const char* shortcut;
};

constexpr Page kPages[] = {
    {"week", QT_TRANSLATE_NOOP("ledgerboard::desk::Desk", "This week"), "Ctrl+1"},
    {"walk", QT_TRANSLATE_NOOP("ledgerboard::desk::Desk", "Walk"), "Ctrl+2"},
    {"scope", QT_TRANSLATE_NOOP("ledgerboard::desk::Desk", "Scope of work"), "Ctrl+3"},
    {"alternates", QT_TRANSLATE_NOOP("ledgerboard::desk::Desk", "Alternates"), "Ctrl+4"},
    {"schedule", QT_TRANSLATE_NOOP("ledgerboard::desk::Desk", "Schedule"), "Ctrl+5"},
    {"contracts", QT_TRANSLATE_NOOP("ledgerboard::desk::Desk", "Contracts and orders"), "Ctrl+6"},
    {"spend", QT_TRANSLATE_NOOP("ledgerboard::desk::Desk", "Spend"), "Ctrl+7"},
    {"draws", QT_TRANSLATE_NOOP("ledgerboard::desk::Desk", "Draws"), "Ctrl+8"},
    {"deal", QT_TRANSLATE_NOOP("ledgerboard::desk::Desk", "Deal"), "Ctrl+9"},
    {"punch", QT_TRANSLATE_NOOP("ledgerboard::desk::Desk", "Punch list"), "Alt+1"},
    {"closing", QT_TRANSLATE_NOOP("ledgerboard::desk::Desk", "Closing"), "Alt+2"},
    {"prices", QT_TRANSLATE_NOOP("ledgerboard::desk::Desk", "Price book"), "Alt+3"},
    {"devices", QT_TRANSLATE_NOOP("ledgerboard::desk::Desk", "Devices"), "Alt+4"}};

// What was opened is no book at all.
bool isForeign(const std::string& message) {
    return message.find("--book") != std::string::npos;
}

// Where the book's own words speak of the command line, those of the pages.
QString whyNot(const std::string& path, const model::Error& error) {
    const QString name = QString::fromStdString(path);
    if (!QFileInfo::exists(name)) {
        return Desk::tr(
                   "Nothing is at %1. It may have been moved or renamed: open it where it is "
                   "now.")
            .arg(name);
    }
    if (isForeign(error.message)) {
        return Desk::tr("%1 is a file of another kind. A book's file mostly ends in “.book”.")
            .arg(name);
    }
    return Said::trouble(error);
}

}  // namespace

Desk* Desk::here_ = nullptr;

Desk* Desk::here() {
    return here_;
}

Desk* Desk::create(QQmlEngine*, QJSEngine*) {
    // The program's own, which the engine must not delete.
    QJSEngine::setObjectOwnership(here_, QJSEngine::CppOwnership);
    return here_;
}

Desk::Desk(Surroundings surroundings, QObject* parent)
    : QObject(parent), surroundings_(std::move(surroundings)) {
    here_ = this;
    qRegisterMetaType<Reading>();
    pool_.setMaxThreadCount(1);
    sayOffer_.setSingleShot(true);
    sayOffer_.setInterval(kSayMs);
    connect(&sayOffer_, &QTimer::timeout, this, &Desk::forgetKept);
    outside_.setInterval(kLookMs);
    connect(&outside_, &QTimer::timeout, this, &Desk::look);
}

Desk::~Desk() {
    stopReader();
    pool_.clear();
    pool_.waitForDone();
    here_ = nullptr;
}

void Desk::stopReader() {
    outside_.stop();
    readerThread_.quit();
    readerThread_.wait();
    reader_ = nullptr;
    isReading_ = readAgain_ = false;
}

void Desk::open(const QString& path) {
    const QUrl address(path);
    openPath((address.isLocalFile() ? address.toLocalFile() : path).toStdString());
}

void Desk::openLast() {
    const QSettings settings(surroundings_.settingsFile, QSettings::IniFormat);
    const QString path = settings.value(QLatin1String(kLastBook)).toString();
    // A book that was moved away is no trouble: another can be opened or begun.
    if (path.isEmpty() || !QFileInfo::exists(path)) {
        return;
    }
    const QString job = settings.value(QLatin1String(kLastJob)).toString();
    const QString page = settings.value(QLatin1String(kLastPage)).toString();
    const auto asOf =
        model::Date::parse(settings.value(QLatin1String(kAsOf)).toString().toStdString());
    if (openPath(path.toStdString()) && !job.isEmpty()) {
        job_ = idFrom<model::Kind::Job>(job);
        page_ = hasPage(page) ? page : QStringLiteral("week");
        if (asOf.ok()) {
            asOf_ = asOf.value();
        }
        emit pageChanged();
        refresh();
    }
}

void Desk::openAgain() {
    openPath(std::string(path_));
}

bool Desk::openPath(const std::string& path) {
    stopReader();
    reading_ = {};
    weekOf_.reset();
    week_.reset();
    book_.reset();
    job_ = {};
    asOf_.reset();
    done_.clear();
    undone_.clear();
    page_ = QStringLiteral("jobs");
    path_ = path;
    english_.clear();
    auto opened = store::Book::open(path, surroundings_.random);
    if (!opened.ok()) {
        english_ = opened.error().message;
        fail(whyNot(path, opened.error()));
        emit pageChanged();
        return false;
    }
    book_.emplace(std::move(opened).value());
    const auto offset = sync::DeviceSide(*book_, {}).clockOffsetMs();
    clockOffsetMs_ = offset.ok() ? offset.value() : 0;
    state_ = Opening;
    trouble_.clear();
    reader_ = new BookReader(path, surroundings_);
    reader_->moveToThread(&readerThread_);
    connect(&readerThread_, &QThread::finished, reader_, &QObject::deleteLater);
    connect(reader_, &BookReader::done, this, &Desk::take);
    readerThread_.start();
    outside_.start();
    rememberPlace();
    emit pageChanged();
    emit changed();
    refresh();
    return true;
}

void Desk::fail(const QString& why) {
    state_ = InTrouble;
    trouble_ = why;
    emit changed();
}

void Desk::rememberPlace() {
    QSettings settings(surroundings_.settingsFile, QSettings::IniFormat);
    settings.setValue(QLatin1String(kLastBook),
                      QFileInfo(QString::fromStdString(path_)).absoluteFilePath());
    settings.setValue(QLatin1String(kLastJob), idText(job_));
    settings.setValue(QLatin1String(kLastPage), page_);
    settings.setValue(QLatin1String(kAsOf), asOf_ ? Said::text(asOf_->toString()) : QString());
}

void Desk::close() {
    stopReader();
    reading_ = {};
    book_.reset();
    week_.reset();
    weekOf_.reset();
    job_ = {};
    asOf_.reset();
    state_ = NoBook;
    trouble_.clear();
    page_ = QStringLiteral("jobs");
    QSettings(surroundings_.settingsFile, QSettings::IniFormat).remove(QLatin1String(kLastBook));
    emit pageChanged();
    emit changed();
}

void Desk::refresh() {
    if (reader_ == nullptr) {
        return;
    }
    if (isReading_) {
        readAgain_ = true;
        return;
    }
    isReading_ = true;
    const ReadAsk ask{job_, asOf_};
    QMetaObject::invokeMethod(
        reader_, [reader = reader_, ask] { reader->read(ask); }, Qt::QueuedConnection);
    emit busyChanged();
}

void Desk::take(const Reading& reading) {
    if (sender() != reader_) {
        return;  // of a book that was closed since
    }
    isReading_ = false;
    if (!reading.trouble.isEmpty()) {
        fail(reading.trouble);
    } else {
        reading_ = reading;
        state_ = Open;
        trouble_.clear();
        if (!job_.isNil() && reading_.now == nullptr && !readAgain_) {
            job_ = {};  // a job that another dropped
            page_ = QStringLiteral("jobs");
            emit pageChanged();
        }
        emit changed();
    }
    emit busyChanged();
    if (readAgain_) {
        readAgain_ = false;
        refresh();
    }
}

// Whether somebody else wrote, or the day is another one at the house.
void Desk::look() {
    if (!book_ || isReading_ || state_ == Opening) {
        return;
    }
    const bool otherDay =
        reading_.now != nullptr && !asOf_ &&
        dayAt(surroundings_.now(), reading_.now->rows.job.timeZone) != reading_.now->today;
    if (book_->position() != reading_.position || otherDay) {
        refresh();
    }
}

bool Desk::keep(const store::Action& action, const QString& said) {
    if (!book_) {
        return false;
    }
    store::Action whole = action;
    auto taught = intake::addLessonsOfEdits(whole, *book_, instant());
    auto done = taught.ok() ? book_->commit(whole, instant()) : taught.error();
    if (!done.ok()) {
        say({}, Said::trouble(done.error()));
        return false;
    }
    QStringList all{said};
    if (!taught.value().empty()) {
        all << tr("%n word(s) learned", nullptr, static_cast<int>(taught.value().size()));
    }
    all.removeAll(QString());
    sayKept(all.join(QStringLiteral(", ")), Said::text(action.what()));
    return true;
}

void Desk::sayKept(const QString& said, const QString& what) {
    done_ << what;
    undone_.clear();
    say(said, {});
    refresh();
}

bool Desk::beginJob(const QString& name, const QString& builtYear) {
    const qml::NewJob wish{name.trimmed(), builtYear.trimmed(), surroundings_.timeZone, {}};
    if (book_) {
        auto id = qml::addJob(*book_, wish, instant());
        if (!id.ok()) {
            say({}, Said::trouble(id.error()));
            return false;
        }
        sayKept(tr("Begun: %1").arg(wish.name), Said::text("start " + wish.name.toStdString()));
        openJob(idText(id.value()));
        return true;
    }
    QDir().mkpath(surroundings_.bookFolder);
    auto made =
        qml::makeBook(surroundings_.bookFolder, wish, surroundings_.now(), surroundings_.random);
    if (!made.ok()) {
        say({}, Said::trouble(made.error()));
        return false;
    }
    say({}, {});
    if (openPath(made.value().path)) {
        openJob(idText(made.value().job));
    }
    return true;
}

void Desk::openDemo() {
    QDir().mkpath(surroundings_.bookFolder);
    const QString path = QDir(surroundings_.bookFolder).filePath(tr("demo house.book"));
    if (!QFileInfo::exists(path)) {
        auto made = qml::makeDemo(path.toStdString(), surroundings_.now(), surroundings_.random);
        if (!made.ok()) {
            say({}, Said::trouble(made.error()));
            return;
        }
    }
    if (openPath(path.toStdString())) {
        (void)lookAt(QLatin1String(qml::kDemoDay));
    }
}

void Desk::openJob(const QString& id) {
    job_ = idFrom<model::Kind::Job>(id);
    page_ = QStringLiteral("week");
    reading_.now.reset();
    week_.reset();
    weekOf_.reset();
    rememberPlace();
    emit pageChanged();
    emit changed();
    refresh();
}

void Desk::leaveJob() {
    job_ = {};
    page_ = QStringLiteral("jobs");
    reading_.now.reset();
    week_.reset();
    weekOf_.reset();
    rememberPlace();
    emit pageChanged();
    emit changed();
    refresh();
}

bool Desk::hasPage(const QString& key) const {
    for (const auto& page : kPages) {
        if (key == QLatin1String(page.key)) {
            return true;
        }
    }
    return false;
}

void Desk::turnTo(const QString& key) {
    if (key == QLatin1String("jobs")) {
        leaveJob();
        return;
    }
    if (!hasPage(key) || job_.isNil() || key == page_) {
        return;
    }
    page_ = key;
    rememberPlace();
    emit pageChanged();
}

bool Desk::lookAt(const QString& day) {
    std::optional<model::Date> wanted;
    if (!day.trimmed().isEmpty()) {
        auto date = model::Date::parseLoose(day.trimmed().toStdString());
        if (!date.ok()) {
            say({}, Said::trouble(date.error()));
            return false;
        }
        wanted = date.value();
    }
    asOf_ = wanted;
    rememberPlace();
    emit changed();
    refresh();
    return true;
}

void Desk::undo() {
    if (!book_) {
        return;
    }
    auto report = book_->undo(instant());
    if (!report.ok()) {
        say({}, Said::trouble(report.error()));
        return;
    }
    if (!done_.isEmpty()) {
        done_.removeLast();
    }
    const QString what = Said::text(report.value().what);
    undone_ << what;
    say(tr("Undone: %1").arg(what), {});
    refresh();
}

void Desk::redo() {
    if (!book_) {
        return;
    }
    auto report = book_->redo(instant());
    if (!report.ok()) {
        say({}, Said::trouble(report.error()));
        return;
    }
    if (!undone_.isEmpty()) {
        undone_.removeLast();
    }
    const QString what = Said::text(report.value().what);
    done_ << what;
    say(tr("Done again: %1").arg(what), {});
    refresh();
}

void Desk::forgetKept() {
    say({}, {});
}

void Desk::say(const QString& kept, const QString& notKept) {
    keptText_ = kept;
    notKeptText_ = notKept;
    if (kept.isEmpty()) {
        sayOffer_.stop();  // why something was refused stays until it is read
    } else {
        sayOffer_.start();
    }
    emit keptChanged();
}

QString Desk::undoText() const {
    return done_.isEmpty() ? QString() : done_.last();
}

model::Instant Desk::instant() const {
    return model::Instant::fromMilliseconds(surroundings_.now().milliseconds() + clockOffsetMs_);
}

QString Desk::bookName() const {
    return path_.empty() ? QString() : QFileInfo(QString::fromStdString(path_)).completeBaseName();
}

bool Desk::isThere() const {
    return QFileInfo::exists(QString::fromStdString(path_));
}

QString Desk::jobName() const {
    for (const auto& job : reading_.jobs) {
        if (job.id == job_) {
            return Said::text(job.name);
        }
    }
    return {};
}

// What is the matter, in a few words; `trouble` says the rest.
QString Desk::troubleHead() const {
    if (state_ != InTrouble) {
        return {};
    }
    const QFileInfo file(QString::fromStdString(path_));
    if (!file.exists()) {
        return tr("There is no book here");
    }
    const auto speaksOf = [this](const char* words) {
        return english_.find(words) != std::string::npos;
    };
    if (speaksOf("newer Ledgerboard")) {
        return tr("This book was written by a newer program");
    }
    if (speaksOf("read-only")) {
        return tr("This book can only be read");
    }
    return isForeign(english_) ? tr("This is no book") : tr("This book is damaged");
}

QVariantList Desk::dividers() const {
    QVariantList list;
    for (const auto& page : kPages) {
        Divider divider;
        divider.key = QLatin1String(page.key);
        divider.name = tr(page.name);
        divider.shortcut = QLatin1String(page.shortcut);
        list << QVariant::fromValue(divider);
    }
    return list;
}

QString Desk::peerText() const {
    const WithPeer& peer = reading_.peer;
    if (state_ != Open) {
        return {};
    }
    if (!peer.hasPeer) {
        return tr("Kept on this computer; it has met no peer.");
    }
    const QString who = tr("%n other device(s).", nullptr, static_cast<int>(peer.devices));
    return who + QLatin1Char(' ') +
           (peer.waiting == 0
                ? tr("The peer has all that was written here.")
                : tr("%n change(s) wait for the peer.", nullptr, static_cast<int>(peer.waiting)));
}

QString Desk::todayText() const {
    return reading_.now == nullptr ? QString() : Said::text(reading_.now->today.toString());
}

QString Desk::asOfText() const {
    return asOf_ ? Said::longDay(*asOf_) : QString();
}

std::shared_ptr<const report::WeekPage> Desk::week() {
    if (reading_.now != nullptr && reading_.now != weekOf_ && !weekUnderWay_) {
        workOutWeek();
    }
    return week_;
}

void Desk::workOutWeek() {
    weekOf_ = reading_.now;
    weekUnderWay_ = true;
    emit busyChanged();

    struct Worked {
        std::shared_ptr<const report::WeekPage> page;
        QString trouble;
    };

    inBackground(
        pool_, this,
        [now = reading_.now, path = path_] {
            auto page = model::guarded([&]() -> model::Result<report::WeekPage> {
                return report::weekPage(
                    now->rows, now->today,
                    report::weekPictures(now->rows, now->today,
                                         pictureSource(path, now->rows.job.timeZone)));
            });
            return page.ok()
                       ? Worked{std::make_shared<const report::WeekPage>(std::move(page).value()),
                                {}}
                       : Worked{nullptr, Said::trouble(page.error())};
        },
        [this, now = reading_.now](Worked worked) {
            weekUnderWay_ = false;
            if (now == weekOf_) {
                week_ = std::move(worked.page);
                weekTrouble_ = worked.trouble;
            }
            emit weekChanged();
            emit busyChanged();
        });
}

}  // namespace ledgerboard::desk
