#include "mobile/new_job.h"

#include <QCoreApplication>
#include <QDir>
#include <QFileInfo>

#include "core/store/book.h"

namespace ledgerboard::phone {

using model::Result;

namespace {

constexpr int kFirstYear = 1600;

std::string words(const char* text) {
    return QCoreApplication::translate("NewJob", text).toStdString();
}

// A file name that is not taken, made of the letters and digits of the job's name.
QString freePath(const QString& folder, const QString& name) {
    QString stem;
    for (const QChar c : name) {
        stem += c.isLetterOrNumber() ? c.toLower() : QLatin1Char('-');
    }
    stem = stem.left(40);
    QString path = QDir(folder).filePath(stem + QStringLiteral(".book"));
    for (int k = 2; QFileInfo::exists(path); ++k) {
        path = QDir(folder).filePath(QStringLiteral("%1-%2.book").arg(stem).arg(k));
    }
    return path;
}

}  // namespace

Result<std::string> makeJob(const QString& folder, const NewJob& job, model::Instant now,
                            const model::FillRandom& random) {
    if (job.name.isEmpty()) {
        return model::wrongUse(
            words(QT_TRANSLATE_NOOP("NewJob",
                                    "Give the house a name, such as its street and "
                                    "number.")));
    }
    model::Job row;
    if (!job.builtYear.isEmpty()) {
        bool isNumber = false;
        const int year = job.builtYear.toInt(&isNumber);
        if (!isNumber || year < kFirstYear || year > now.utcDate().year()) {
            return model::wrongUse(words(QT_TRANSLATE_NOOP(
                "NewJob",
                "The year it was built has four digits, such as 1936; leave it empty "
                "where nobody knows.")));
        }
        row.builtYear = year;
    }
    const std::string path = freePath(folder, job.name).toStdString();
    auto book = store::Book::create(path, words(QT_TRANSLATE_NOOP("NewJob", "Owner")), now, random);
    if (!book.ok()) {
        return book.error();
    }
    row.id = book.value().newId<model::Kind::Job>(now);
    row.name = job.name.toStdString();
    row.currency = "USD";
    row.workWeek = model::Weekdays::mondayToFriday();
    row.timeZone = job.timeZone.toStdString();
    store::Action action("start " + row.name);
    action.add(row);
    std::int64_t order = 0;
    for (const auto& room : job.rooms) {
        model::Space space;
        space.id = book.value().newId<model::Kind::Space>(now);
        space.job = row.id;
        space.name = room.toStdString();
        space.walkOrder = ++order;
        action.add(space);
    }
    if (auto done = book.value().commit(action, now); !done.ok()) {
        return done.error();
    }
    return path;
}

}  // namespace ledgerboard::phone
