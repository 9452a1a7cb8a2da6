#include "desktop/client/money/bank_desk.h"

#include <utility>

#include <QDir>
#include <QFile>
#include <QFileInfo>
#include <QUrl>

#include "core/intake/bank/bank_program.h"

#include "desktop/client/background.h"
#include "desktop/client/desk.h"
#include "desktop/client/money/bank_words.h"
#include "desktop/client/said.h"

namespace ledgerboard::desk {

using intake::LineOutcome;

namespace {

constexpr int kTellMs = 100;

// "~/may.ofx" and what a file dialog gives, as a path; a name alone is looked for at home.
QString pathOf(const QString& where) {
    const QUrl address(where);
    QString path = address.isLocalFile() ? address.toLocalFile() : where.trimmed();
    if (path == QLatin1String("~") || path.startsWith(QLatin1String("~/"))) {
        path = QDir::homePath() + path.mid(1);
    }
    return path.isEmpty() ? path : QDir::cleanPath(QDir::home().absoluteFilePath(path));
}

// Why the file at `path` is not even begun with; empty where it looks like a download.
QString whyNotRead(const QString& path) {
    const QFileInfo info(path);
    if (!info.exists()) {
        return BankDesk::tr("Nothing is at %1: choose the file as it was downloaded.").arg(path);
    }
    if (info.isDir()) {
        return BankDesk::tr("%1 is a folder: choose a file in it.").arg(path);
    }
    QFile file(path);
    if (!file.open(QIODevice::ReadOnly)) {
        return BankDesk::tr("%1 cannot be read: %2.").arg(path, file.errorString());
    }
    const QByteArray beginning = file.read(intake::kBeginning);
    if (!intake::isBankDownload(
            {beginning.constData(), static_cast<std::size_t>(beginning.size())})) {
        return BankDesk::tr(
                   "%1 is no bank's download. Banks offer one as OFX, QFX or “for an "
                   "accounting program”; its file mostly ends in .ofx or .qfx.")
            .arg(path);
    }
    return {};
}

std::size_t countOf(const intake::BankReport& report, LineOutcome outcome) {
    std::size_t found = 0;
    for (const auto& line : report.lines) {
        found += line.outcome == outcome ? 1 : 0;
    }
    return found;
}

}  // namespace

BankDesk::BankDesk(QObject* parent) : QObject(parent) {
    telling_.setInterval(kTellMs);
    connect(&telling_, &QTimer::timeout, this, &BankDesk::progressed);
}

BankDesk::~BankDesk() {
    if (course_ != nullptr) {
        course_->stopped = true;
    }
}

void BankDesk::open() {
    Desk& desk = *Desk::here();
    if (isOpen_ || !desk.hasBook() || desk.now() == nullptr) {
        return;
    }
    isOpen_ = true;
    file_.clear();
    refused_.clear();
    tried_ = {};
    arrange();
    emit changed();
}

// All that the thread needs, so that it touches nothing of the page.
BankDesk::Task BankDesk::begin() {
    Desk& desk = *Desk::here();
    course_ = std::make_shared<Course>();
    isWorking_ = true;
    refused_.clear();
    telling_.start();
    emit changed();
    emit progressed();
    return {course_,    file_.toStdString(),           desk.bookPath(), desk.surroundings(),
            desk.job(), desk.now()->rows.job.timeZone, desk.instant()};
}

// Matches what was read; `tryOnly`: and writes nothing.
void BankDesk::match(const Task& task, Tried& tried, bool tryOnly) {
    auto book = store::Book::open(task.bookPath, task.around.random);
    if (!book.ok()) {
        tried.refused = Said::trouble(book.error());
        return;
    }
    auto report = intake::bringBank(book.value(), task.job, tried.statement, task.name, tryOnly,
                                    task.at, [&task](std::size_t done, std::size_t all) {
                                        task.course->done = done;
                                        task.course->all = all;
                                        return !task.course->stopped;
                                    });
    if (report.ok()) {
        tried.report = std::move(report).value();
    } else {
        tried.refused = Said::trouble(report.error());
    }
}

BankDesk::Tried BankDesk::read(const Task& task, const QString& path) {
    Tried tried;
    tried.refused = whyNotRead(path);
    if (!tried.refused.isEmpty()) {
        return tried;
    }
    auto printed =
        intake::readByBankProgram(task.around.bankProgram.toStdString(), path.toStdString(),
                                  task.timeZone, [&task] { return !task.course->stopped; });
    auto statement = printed.ok() ? intake::parseStatement(printed.value(), task.name)
                                  : model::Result<intake::Statement>(printed.error());
    if (!statement.ok()) {
        tried.refused = Said::trouble(statement.error());
        return tried;
    }
    tried.statement = std::move(statement).value();
    match(task, tried, true);
    return tried;
}

void BankDesk::tryFile(const QString& where) {
    const QString path = pathOf(where);
    open();
    if (!isOpen_ || isWorking_ || Desk::here()->now() == nullptr) {
        return;
    }
    tried_ = {};
    arrange();
    if (path.isEmpty()) {
        refused_ = tr("Name the file, or choose it.");
        emit changed();
        return;
    }
    file_ = QFileInfo(path).fileName();
    const Task task = begin();
    inBackground(
        Desk::here()->pool(), this, [task, path] { return read(task, path); },
        [this, course = task.course](Tried tried) {
            if (course == course_) {
                take(std::move(tried));
            }
        });
}

void BankDesk::take(Tried tried) {
    telling_.stop();
    isWorking_ = false;
    course_.reset();
    refused_ = tried.refused;
    tried_ = std::move(tried);
    arrange();
    emit changed();
}

void BankDesk::bring() {
    if (!isOpen_ || isWorking_ || fresh() == 0 || Desk::here()->now() == nullptr) {
        return;
    }
    const Task task = begin();
    inBackground(
        Desk::here()->pool(), this,
        [task, tried = tried_]() mutable {
            match(task, tried, false);
            return tried;
        },
        [this, course = task.course, file = file_](Tried tried) {
            const bool isMine = course == course_;
            if (isMine && !tried.report.written) {
                take(std::move(tried));
            }
            // Also where it was stopped too late: it is in the book, and that is said.
            if (tried.report.written) {
                Desk::here()->sayKept(tr("%1: %2 filed, %3 waiting for a decision")
                                          .arg(file)
                                          .arg(countOf(tried.report, LineOutcome::Filed))
                                          .arg(countOf(tried.report, LineOutcome::Waiting)),
                                      QStringLiteral("bring spend ") + file);
                if (isMine || !isWorking_) {
                    close();
                }
                emit brought();
            }
        });
}

void BankDesk::stop() {
    if (course_ == nullptr) {
        return;
    }
    course_->stopped = true;
    course_.reset();
    telling_.stop();
    isWorking_ = false;
    refused_ = tr("Stopped: nothing of it came in.");
    tried_ = {};
    arrange();
    emit changed();
}

void BankDesk::close() {
    stop();
    isOpen_ = false;
    emit changed();
}

int BankDesk::fresh() const {
    return static_cast<int>(countOf(tried_.report, LineOutcome::Filed) +
                            countOf(tried_.report, LineOutcome::Waiting));
}

QString BankDesk::title() const {
    if (isWorking_) {
        return tr("Reading %1…").arg(file_);
    }
    if (!refused_.isEmpty() || file_.isEmpty()) {
        return tr("A bank's download");
    }
    return tr("%1: %n line(s) of the bank", nullptr, static_cast<int>(tried_.report.lines.size()))
        .arg(file_);
}

QString BankDesk::progressText() const {
    if (course_ == nullptr) {
        return {};
    }
    const std::size_t all = course_->all;
    return all == 0 ? tr("The file is being read.")
                    : tr("What is it for? Line %1 of %2.").arg(course_->done + 1).arg(all);
}

QString BankDesk::sumText() const {
    if (tried_.report.lines.empty()) {
        return file_.isEmpty() || isWorking_ || !refused_.isEmpty()
                   ? QString()
                   : tr("There is no line in it: choose other days at the bank.");
    }
    if (fresh() == 0) {
        return tr("All of it is in the book already.");
    }
    return tr(
        "Nothing is in the book yet. What is sure enough would be filed; what waits counts "
        "nowhere until you say what it is for. Ctrl+Z takes all of it back.");
}

void BankDesk::arrange() {
    lines_.clear();
    const auto now = Desk::here()->now();
    if (now == nullptr) {
        return;
    }
    const auto put = [&](LineOutcome outcome, QString heading) {
        for (const auto& brought : tried_.report.lines) {
            if (brought.outcome != outcome) {
                continue;
            }
            DownloadLine line;
            line.heading = std::exchange(heading, {});
            if (brought.line.postedOn) {
                line.day = Said::day(*brought.line.postedOn, now->today);
            }
            line.amount = Said::cents(brought.line.amount.value_or(model::Money{}));
            line.written = BankWords::written(brought.line);
            if (outcome != LineOutcome::Known) {
                line.taken = BankWords::taken(now, brought.match);
                line.why = Said::text(brought.match.reason);
                if (line.taken.isEmpty()) {
                    line.taken = tr("not known");
                    line.why = tr("nothing in the book says what it is for");
                } else {
                    line.sure = tr("sure by %1").arg(brought.match.sure);
                }
            }
            lines_ << QVariant::fromValue(line);
        }
    };
    put(LineOutcome::Filed,
        tr("Would be filed at once: %1").arg(countOf(tried_.report, LineOutcome::Filed)));
    put(LineOutcome::Waiting,
        tr("Would wait for you: %1").arg(countOf(tried_.report, LineOutcome::Waiting)));
    put(LineOutcome::Known,
        tr("In the book already: %1").arg(countOf(tried_.report, LineOutcome::Known)));
}

}  // namespace ledgerboard::desk
