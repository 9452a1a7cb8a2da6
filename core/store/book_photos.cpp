#include "core/store/book_photos.h"

namespace ledgerboard::store {

using model::Result;

namespace {

// A photo with a picture: one whose digest was said.
struct Kept {
    model::RawId id;
    std::string digest;
    bool gone = false;
};

Result<std::vector<Kept>> keptIn(const Book& book) {
    auto records = book.records(model::Kind::Photo, model::Id<model::Kind::Job>(), true);
    if (!records.ok()) {
        return records.error();
    }
    std::vector<Kept> kept;
    for (const auto& record : records.value()) {
        const auto* digest = std::get_if<std::string>(&record.at(model::field::Photo::digest));
        if (digest != nullptr) {
            kept.push_back({record.id, *digest, record.gone});
        }
    }
    return kept;
}

std::string sentenceOf(const Kept& photo, const Photos& photos, PhotoState state) {
    const std::string which = "photo " + photo.id.toString() + ": ";
    if (!Photos::isDigest(photo.digest)) {
        return which + "its digest is not of the form of one";
    }
    const std::string file = photos.pathOf(photo.digest).string();
    return which + (state == PhotoState::Missing
                        ? "its file " + file + " is missing"
                        : "its file " + file + " is not the picture that was kept");
}

}  // namespace

Result<PhotosChecked> checkPhotos(const Book& book, const Photos& photos) {
    auto kept = keptIn(book);
    if (!kept.ok()) {
        return kept.error();
    }
    PhotosChecked report;
    for (const auto& photo : kept.value()) {
        if (photo.gone) {
            continue;
        }
        ++report.checked;
        const auto state = photos.check(photo.digest);
        if (state != PhotoState::Right) {
            report.wrong.push_back(sentenceOf(photo, photos, state));
        }
    }
    return report;
}

Result<PhotosCopied> copyPhotos(const Book& book, const std::vector<Photos>& sources,
                                const Photos& goal) {
    auto kept = keptIn(book);
    if (!kept.ok()) {
        return kept.error();
    }
    PhotosCopied report;
    for (const auto& photo : kept.value()) {
        bool done = false;
        for (const auto& source : sources) {
            auto bytes = source.read(photo.digest);
            if (!bytes.ok()) {
                continue;
            }
            if (auto copied = goal.keep(bytes.value()); !copied.ok()) {
                return copied.error();
            }
            done = true;
            break;
        }
        report.copied += done ? 1 : 0;
        if (!done && !photo.gone && !sources.empty()) {
            report.missing.push_back(
                sentenceOf(photo, sources.front(), sources.front().check(photo.digest)));
        }
    }
    return report;
}

}  // namespace ledgerboard::store
