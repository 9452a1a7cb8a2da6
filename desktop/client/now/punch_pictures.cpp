#include "desktop/client/now/punch_pictures.h"

#include <algorithm>

namespace ledgerboard::desk {

namespace {

using model::Photo;
using model::Stage;

bool isSite(const Photo& photo) {
    return !photo.digest.empty() && photo.purpose != model::Purpose::Receipt &&
           photo.purpose != model::Purpose::Paper;
}

bool isLater(const Photo& a, const Photo& b) {
    return a.takenAt > b.takenAt;
}

// The earliest or latest of those that fit; null where none does.
template <class Fits>
const Photo* pick(const model::JobRows& rows, bool latest, const Fits& fits) {
    const Photo* found = nullptr;
    for (const Photo& photo : rows.photos) {
        if (isSite(photo) && fits(photo) &&
            (found == nullptr || (latest ? isLater(photo, *found) : isLater(*found, photo)))) {
            found = &photo;
        }
    }
    return found;
}

bool isShownByLook(const model::JobRows& rows, const model::Punch& punch, const Photo& photo) {
    return std::any_of(rows.looks.begin(), rows.looks.end(), [&](const model::Look& look) {
        return look.punch == punch.id && look.photo == photo.id;
    });
}

}  // namespace

PunchPictures punchPicturesOf(const model::JobRows& rows, const model::Punch& punch) {
    PunchPictures out;
    const auto isOfIt = [&](const Photo& photo) {
        return photo.punch == punch.id || isShownByLook(rows, punch, photo);
    };
    const auto isAfter = [&](const Photo& photo) {
        return isOfIt(photo) && (photo.stage == Stage::After || isShownByLook(rows, punch, photo));
    };
    out.after = pick(rows, true, isAfter);
    out.before =
        pick(rows, false, [&](const Photo& photo) { return isOfIt(photo) && !isAfter(photo); });
    if (out.before != nullptr || out.after != nullptr || punch.space.isNil()) {
        return out;
    }
    const auto isHere = [&](const Photo& photo) { return photo.space == punch.space; };
    out.after = pick(rows, true, [&](const Photo& photo) {
        return isHere(photo) && photo.stage == Stage::After;
    });
    if (out.after != nullptr) {
        out.before =
            pick(rows, true, [&](const Photo& photo) { return photo.id == out.after->pairsWith; });
    }
    if (out.before == nullptr) {
        out.before = pick(rows, true, [&](const Photo& photo) {
            return isHere(photo) && photo.stage == Stage::Before;
        });
    }
    out.ofSpace = out.before != nullptr || out.after != nullptr;
    return out;
}

}  // namespace ledgerboard::desk
