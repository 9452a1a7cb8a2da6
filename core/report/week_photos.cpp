#include "core/report/week_photos.h"

#include <algorithm>
#include <map>
#include <tuple>

namespace ledgerboard::report {

using model::Date;
using model::Photo;

namespace {

bool isShown(const Photo& photo, Date today) {
    const bool site =
        photo.purpose == model::Purpose::Site || photo.purpose == model::Purpose::Unset;
    return site && !photo.digest.empty() && (!photo.takenAt || photo.takenAt->utcDate() <= today);
}

// Less is better.
auto rankOf(const Photo& photo, Date today) {
    const bool isNew = photo.takenAt && photo.takenAt->utcDate() > today - kNewDays;
    int stage = 3;
    switch (photo.stage) {
        case model::Stage::After:
            stage = 0;
            break;
        case model::Stage::During:
            stage = 1;
            break;
        case model::Stage::Before:
            stage = 2;
            break;
        case model::Stage::Unset:
            break;
    }
    const std::int64_t age = photo.takenAt ? -photo.takenAt->milliseconds() : 0;
    return std::tuple(!isNew, stage, !photo.takenAt, age);
}

}  // namespace

std::vector<const Photo*> weekPhotos(const model::JobRows& rows, Date today) {
    std::vector<const Photo*> photos;
    for (const auto& photo : rows.photos) {
        if (isShown(photo, today)) {
            photos.push_back(&photo);
        }
    }
    std::sort(photos.begin(), photos.end(), [&](const Photo* a, const Photo* b) {
        const auto rankA = rankOf(*a, today);
        const auto rankB = rankOf(*b, today);
        return rankA != rankB ? rankA < rankB : b->id < a->id;
    });
    // How many of its space come before each: the first of every space, then the second of each.
    std::map<model::Id<model::Kind::Space>, int> seen;
    std::map<const Photo*, int> round;
    for (const auto* photo : photos) {
        round[photo] = seen[photo->space]++;
    }
    std::stable_sort(photos.begin(), photos.end(),
                     [&](const Photo* a, const Photo* b) { return round.at(a) < round.at(b); });
    return photos;
}

}  // namespace ledgerboard::report
