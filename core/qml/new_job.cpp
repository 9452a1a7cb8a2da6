#include "core/qml/new_job.h"

#include <QDir>
#include <QFileInfo>

#include "core/model/catalog.h"
#include "core/model/saying.h"
#include "core/qml/said.h"

namespace ledgerboard::qml {

using model::Result;

namespace {

constexpr int kFirstYear = 1600;

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

// The job as it begins; errors say how to mend the wish.
Result<model::Job> jobOf(const NewJob& wish, model::Instant now) {
    model::Job job;
    if (wish.name.isEmpty()) {
        return model::wrongUse("Give the house a name, such as its street and number.");
    }
    if (!wish.builtYear.isEmpty()) {
        bool isNumber = false;
        const int year = wish.builtYear.toInt(&isNumber);
        if (!isNumber || year < kFirstYear || year > now.utcDate().year()) {
            return model::wrongUse(
                "The year it was built has four digits, such as 1936; leave it empty where "
                "nobody knows.");
        }
        job.builtYear = year;
    }
    job.name = wish.name.toStdString();
    job.currency = "USD";
    job.workWeek = model::Weekdays::mondayToFriday();
    job.timeZone = wish.timeZone.toStdString();
    return job;
}

}  // namespace

Result<model::Id<model::Kind::Job>> addJob(store::Book& book, const NewJob& wish,
                                           model::Instant now) {
    auto job = jobOf(wish, now);
    if (!job.ok()) {
        return job.error();
    }
    const auto others = book.rows<model::Job>();
    if (!others.ok()) {
        return others.error();
    }
    for (const auto& other : others.value()) {
        if (model::folded(other.name) == model::folded(job.value().name)) {
            return model::cannotBeMet(
                "There is a job of that name in the book: give this one another.");
        }
    }
    job.value().id = book.newId<model::Kind::Job>(now);
    store::Action action("start " + job.value().name);
    action.add(job.value());
    std::int64_t order = 0;
    for (const auto& room : wish.rooms) {
        model::Space space;
        space.id = book.newId<model::Kind::Space>(now);
        space.job = job.value().id;
        space.name = room.toStdString();
        space.walkOrder = ++order;
        action.add(space);
    }
    if (auto done = book.commit(action, now); !done.ok()) {
        return done.error();
    }
    return job.value().id;
}

Result<MadeBook> makeBook(const QString& folder, const NewJob& wish, model::Instant now,
                          const model::FillRandom& random) {
    if (auto job = jobOf(wish, now); !job.ok()) {
        return job.error();
    }
    const std::string path = freePath(folder, wish.name).toStdString();
    auto book =
        store::Book::create(path, Said::told(model::saying("Owner")).toStdString(), now, random);
    if (!book.ok()) {
        return book.error();
    }
    auto id = addJob(book.value(), wish, now);
    return id.ok() ? Result<MadeBook>(MadeBook{path, id.value()}) : Result<MadeBook>(id.error());
}

}  // namespace ledgerboard::qml
