// How does a picture of this device come into the book? Its bytes are kept untouched beside the
// book first, then a row that names them, so that no row ever names a file that is not there.
#pragma once

#include <QString>
#include <QUrl>

#include "core/model/result.h"
#include "core/model/rows.h"
#include "core/store/action.h"
#include "core/store/photos.h"

#include "mobile/now/job_now.h"

namespace ledgerboard::phone {

class JobBook;

struct PictureWish {
    QString path;
    model::Purpose purpose = model::Purpose::Site;
    model::Stage stage = model::Stage::Unset;
    model::Id<model::Kind::Space> space;
    model::Id<model::Kind::Item> item;
    model::Id<model::Kind::Punch> punch;
    model::Id<model::Kind::Photo> pairsWith;
    std::string caption;
};

// Keeps the bytes and adds the photo's row to `action`. Errors: the file can't be read, is no JPEG
// picture, or is too large; (Damaged) the disk. Requires: a book with a job is open.
[[nodiscard]] model::Result<model::Id<model::Kind::Photo>> keepPicture(JobBook& book,
                                                                       const PictureWish& wish,
                                                                       store::Action& action);

// The file that shows a photo on this device; empty where none has come yet.
[[nodiscard]] QUrl pictureUrl(const store::Photos& files, const model::Photo& photo);

// Before where nothing of the space is begun, after where all of it is finished, else during.
[[nodiscard]] model::Stage guessedStage(const SpaceNow& space);

}  // namespace ledgerboard::phone
