#include "mobile/site_photos.h"

#include "core/qml/id_text.h"
#include "core/store/photos.h"

#include "mobile/job_book.h"
#include "mobile/picture_keeper.h"
#include "mobile/said.h"

namespace ledgerboard::phone {

using qml::idFrom;
using qml::idText;

namespace {

QString stageWord(model::Stage stage) {
    switch (stage) {
        case model::Stage::Before:
            return SitePhotos::tr("before");
        case model::Stage::After:
            return SitePhotos::tr("after");
        case model::Stage::During:
        case model::Stage::Unset:
            break;
    }
    return SitePhotos::tr("during");
}

model::Stage stageAt(int place) {
    return place == 0   ? model::Stage::Before
           : place == 2 ? model::Stage::After
                        : model::Stage::During;
}

}  // namespace

void SitePhotos::fill() {
    JobBook& book = *JobBook::here();
    QList<PhotoRow> rows;
    before_.clear();
    beforeId_.clear();
    if (const JobNow* now = book.now()) {
        for (const auto& space : now->spaces) {
            if (idText(space.id) == spaceId()) {
                const auto stage = guessedStage(space);
                guess_ = stage == model::Stage::Before ? 0 : stage == model::Stage::After ? 2 : 1;
            }
        }
        const store::Photos files(book.book().path());
        for (const auto& photo : now->rows.photos) {
            const bool isSite =
                photo.purpose == model::Purpose::Site || photo.purpose == model::Purpose::Unset;
            if (!isSite || idText(photo.space) != spaceId() || !photo.punch.isNil()) {
                continue;
            }
            PhotoRow row;
            row.id = idText(photo.id);
            row.url = pictureUrl(files, photo);
            row.words = stageWord(photo.stage);
            if (photo.takenAt) {
                row.words += QStringLiteral(", ") +
                             Said::near(dayAt(*photo.takenAt, Said::text(now->rows.job.timeZone)),
                                        now->today);
            }
            if (photo.stage == model::Stage::Before && beforeId_.isEmpty()) {
                before_ = row.url;
                beforeId_ = row.id;
            }
            rows << row;
        }
    }
    show(rows);
    emit guessChanged();
}

bool SitePhotos::keepPicture(const QString& path, int stage) {
    JobBook& book = *JobBook::here();
    if (book.now() == nullptr) {
        return false;
    }
    PictureWish wish;
    wish.path = path;
    wish.stage = stageAt(stage);
    wish.space = idFrom<model::Kind::Space>(spaceId());
    if (wish.stage == model::Stage::After) {
        wish.pairsWith = idFrom<model::Kind::Photo>(beforeId_);
    }
    store::Action action("photo");
    auto kept = phone::keepPicture(book, wish, action);
    if (!kept.ok()) {
        book.sayNotKept(Said::trouble(kept.error()));
        return false;
    }
    return book.keep(action, tr("Photo kept, %1").arg(stageWord(wish.stage)));
}

}  // namespace ledgerboard::phone
