#include "mobile/picture_keeper.h"

#include <QCoreApplication>
#include <QDateTime>
#include <QFile>
#include <QTimeZone>

#include "core/intake/photos/exif.h"
#include "core/intake/photos/picture.h"
#include "core/store/photos.h"
#include "sync/exchange/device_photos.h"

#include "mobile/job_book.h"
#include "mobile/said.h"

namespace ledgerboard::phone {

using model::Result;

namespace {

model::Error cannotBeRead(const QString& path) {
    return Said::refusal(
        QCoreApplication::translate("PictureKeeper", "%1 cannot be read as a picture.").arg(path));
}

// When the camera says it was, by its own clock: in the zone it names, else in the house's. Now,
// where it says nothing, or a time that is still to come.
model::Instant takenAt(const std::string& bytes, const JobBook& book) {
    const auto note = intake::cameraNoteOf(bytes);
    if (!note.takenAt) {
        return book.instant();
    }
    QDateTime when =
        QDateTime::fromString(QString::fromStdString(note.takenAt->local), Qt::ISODate);
    if (note.takenAt->offsetMinutes) {
        when.setOffsetFromUtc(*note.takenAt->offsetMinutes * 60);
    } else {
        const QTimeZone zone(QByteArray::fromStdString(book.now()->rows.job.timeZone));
        when.setTimeZone(zone.isValid() ? zone : QTimeZone::systemTimeZone());
    }
    const auto taken = model::Instant::fromMilliseconds(when.toMSecsSinceEpoch());
    return when.isValid() && taken <= book.instant() ? taken : book.instant();
}

}  // namespace

Result<model::Id<model::Kind::Photo>> keepPicture(JobBook& book, const PictureWish& wish,
                                                  store::Action& action) {
    QFile file(wish.path);
    if (!file.open(QIODevice::ReadOnly) ||
        file.size() > static_cast<qint64>(store::kLargestPhoto)) {
        return cannotBeRead(wish.path);
    }
    const std::string bytes = file.readAll().toStdString();
    const auto size = intake::pictureSize(bytes);
    if (!size.ok()) {
        return size.error();
    }
    auto digest = store::Photos(book.book().path()).keep(bytes);
    if (!digest.ok()) {
        return digest.error();
    }
    model::Photo photo;
    photo.id = book.book().newId<model::Kind::Photo>(book.instant());
    photo.job = book.now()->rows.job.id;
    photo.space = wish.space;
    photo.item = wish.item;
    photo.punch = wish.punch;
    photo.digest = digest.value();
    photo.takenAt = takenAt(bytes, book);
    photo.stage = wish.stage;
    photo.purpose = wish.purpose;
    photo.pairsWith = wish.pairsWith;
    photo.caption = wish.caption;
    photo.width = size.value().width;
    photo.height = size.value().height;
    photo.bytes = static_cast<std::int64_t>(bytes.size());
    action.add(photo);
    return photo.id;
}

QUrl pictureUrl(const store::Photos& files, const model::Photo& photo) {
    const auto path = sync::fileOf(files, photo);
    return path.empty() ? QUrl() : QUrl::fromLocalFile(QString::fromStdString(path.string()));
}

model::Stage guessedStage(const SpaceNow& space) {
    if (space.isFinished()) {
        return model::Stage::After;
    }
    return space.toStart == space.counted ? model::Stage::Before : model::Stage::During;
}

}  // namespace ledgerboard::phone
