#include "core/store/book_photos.h"

#include "core/store/named_files.h"

namespace ledgerboard::store {

using model::Result;

namespace {

std::string sentenceOf(const NamedFile& named, const Photos& photos, PhotoState state) {
    const std::string which =
        std::string(model::infoOf(named.kind).name) + " " + named.id.toString() + ": ";
    if (!Photos::isDigest(named.digest)) {
        return which + "its digest is not of the form of one";
    }
    const std::string file = photos.pathOf(named.digest).string();
    return which + (state == PhotoState::Missing
                        ? "its file " + file + " is missing"
                        : "its file " + file + " is not the one that was kept");
}

}  // namespace

Result<PhotosChecked> checkPhotos(const Book& book, const Photos& photos) {
    auto kept = namedFiles(book, false);
    if (!kept.ok()) {
        return kept.error();
    }
    PhotosChecked report;
    for (const auto& named : kept.value()) {
        ++report.checked;
        const auto state = photos.check(named.digest);
        if (state != PhotoState::Right) {
            report.wrong.push_back(sentenceOf(named, photos, state));
        }
    }
    return report;
}

Result<PhotosCopied> copyPhotos(const Book& book, const std::vector<Photos>& sources,
                                const Photos& goal) {
    auto kept = namedFiles(book, true);
    if (!kept.ok()) {
        return kept.error();
    }
    PhotosCopied report;
    for (const auto& named : kept.value()) {
        bool done = false;
        for (const auto& source : sources) {
            auto bytes = source.read(named.digest);
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
        if (!done && !named.gone && !sources.empty()) {
            report.missing.push_back(
                sentenceOf(named, sources.front(), sources.front().check(named.digest)));
        }
    }
    return report;
}

}  // namespace ledgerboard::store
