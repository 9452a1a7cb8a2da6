#include "core/intake/photos/bring_photos.h"

#include <algorithm>
#include <filesystem>
#include <optional>

#include "core/intake/files/csv.h"
#include "core/intake/files/find.h"
#include "core/intake/files/headings.h"
#include "core/intake/files/pairing.h"
#include "core/intake/files/problems.h"
#include "core/intake/files/row_reader.h"
#include "core/intake/files/row_writer.h"
#include "core/intake/photos/picture_list.h"
#include "core/model/overflow.h"
#include "core/model/saying.h"
#include "core/store/action.h"
#include "core/store/photos.h"

namespace ledgerboard::intake {

namespace fs = std::filesystem;
namespace f = model::field;
using model::FieldCode;
using model::Kind;
using model::Result;
using model::Value;

namespace {

// What the list's columns may be, beside that of the files.
const BringKind& listKind() {
    static const BringKind kKind = {
        .word = "photos",
        .kind = Kind::Photo,
        .leftOut = {f::Photo::digest, f::Photo::purpose, f::Photo::pairsWith, f::Photo::width,
                    f::Photo::height, f::Photo::bytes},
        .needed = {f::Photo::space, f::Photo::stage}};
    return kKind;
}

// The same without a list: all that is known is what the camera says.
const BringKind& unlistedKind() {
    static const BringKind kKind = {.word = "photos", .kind = Kind::Photo};
    return kKind;
}

// By what a photo is known again.
const BringKind& pictureKind() {
    static const BringKind kKind = {.word = "photos",
                                    .kind = Kind::Photo,
                                    .needed = {f::Photo::digest},
                                    .key = {f::Photo::digest}};
    return kKind;
}

// One folder on its way into the book.
class BringingPhotos {
  public:
    BringingPhotos(store::Book& book, model::Id<Kind::Job> job, const fs::path& folder,
                   const BringOptions& options, model::Instant now)
        : book_(book),
          job_(job),
          folder_(folder),
          options_(options),
          now_(now),
          problems_(kPictureList),
          action_("bring photos " + folder.string(), book.position()) {
        report_.file = kPictureList;
        report_.kind = Kind::Photo;
    }

    Result<BringReport> run() {
        for (auto step :
             {&BringingPhotos::readList, &BringingPhotos::readBook, &BringingPhotos::pair}) {
            if (auto done = (this->*step)(); !done.ok()) {
                return done.error();
            }
        }
        for (std::size_t at = 0; at < rows_.size(); ++at) {
            writer_->write(rows_[at], pictures_[at].file, pairings_[at], book_.newId(now_));
        }
        return finish();
    }

  private:
    // Pictures without a list, as one that names them and nothing else.
    Result<void> listPictures(const std::vector<std::string>& names) {
        if (!options_.match.empty()) {
            return model::wrongUse("--match names columns of a photos.csv, and there is none");
        }
        listed_ = false;
        problems_ = Problems(folder_.string());
        for (const auto& name : names) {
            table_.rows.push_back({static_cast<std::int64_t>(table_.rows.size()) + 1, {}});
            files_.push_back(name);
        }
        return {};
    }

    Result<void> readList() {
        std::error_code problem;
        if (fs::is_regular_file(folder_, problem)) {
            const std::string name = folder_.filename().string();
            folder_ = folder_.has_parent_path() ? folder_.parent_path() : fs::path(".");
            return listPictures({name});
        }
        const fs::path list = folder_ / kPictureList;
        if (!fs::is_directory(folder_, problem)) {
            return model::cannotBeMet(model::saying(
                "%1: there is no such folder or picture: check its name", folder_.string()));
        }
        if (!fs::exists(list, problem)) {
            const auto names = notListed(folder_, {});
            return names.empty()
                       ? Result<void>(model::cannotBeMet(model::saying(
                             "%1 has no pictures in JPEG and no photos.csv", folder_.string())))
                       : listPictures(names);
        }
        auto matches = parseMatches(options_.match);
        if (!matches.ok()) {
            return matches.error();
        }
        auto bytes = readWholeFile(list.string());
        if (!bytes.ok()) {
            return bytes.error();
        }
        auto table = readCsv(bytes.value(), kPictureList);
        if (!table.ok()) {
            return table.error();
        }
        table_ = std::move(table).value();
        files_ = takeFileColumn(table_, matches.value(), problems_);
        columns_ = matchHeadings(listKind(), table_, matches.value(), problems_);
        return problems_.none() ? Result<void>{} : problems_.asError();
    }

    Result<void> readBook() {
        auto rows = rowsForFinding(book_, job_);
        if (!rows.ok()) {
            return rows.error();
        }
        finder_.emplace(rows.value());
        writer_.emplace(*finder_, existing_, job_, action_, report_);
        writer_->tellOnly([this](FieldCode code) {  // what the list says of a picture
            return std::any_of(columns_.begin(), columns_.end(), [&](const Column& column) {
                return column.field == model::fieldOf(code);
            });
        });
        auto existing = book_.records(Kind::Photo, job_, true);
        if (!existing.ok()) {
            return existing.error();
        }
        existing_ = std::move(existing).value();
        const DateRange range = datesAround(rows.value().job.beginOn, now_.utcDate());
        rows_ = readRows(listed_ ? listKind() : unlistedKind(), table_, columns_, *finder_, range,
                         problems_);
        pictures_ = lookAtPictures(folder_, table_, files_, problems_);
        for (std::size_t at = 0; at < rows_.size(); ++at) {
            addTime(rows_[at], pictures_[at]);
            checkDay(rows_[at], range);
            addPicture(rows_[at], pictures_[at]);
        }
        return {};
    }

    // When it was taken: what the list says, else the camera.
    void addTime(BroughtRow& row, const ListedPicture& picture) {
        const bool unreadable = std::find(row.unreadable.begin(), row.unreadable.end(),
                                          f::Photo::takenAt) != row.unreadable.end();
        if (picture.path.empty() || unreadable ||
            !model::isEmpty(valueIn(row.values, f::Photo::takenAt))) {
            return;
        }
        const auto& said = picture.note.takenAt;
        if (!said) {
            problems_.add(
                row.line, headingFor(f::Photo::takenAt),
                model::saying("\"%1\" does not say when it was taken: write it into a photos.csv "
                              "beside it, under File, Space, Stage and Taken at",
                              picture.file)
                    .text());
            return;
        }
        auto instant = model::Instant::parse(said->local + "Z");
        if (instant.ok() && said->offsetMinutes) {
            instant = model::Instant::fromMilliseconds(instant.value().milliseconds() -
                                                       std::int64_t{60'000} * *said->offsetMinutes);
        } else if (instant.ok() && options_.atHouse) {
            instant = options_.atHouse(said->local);
        }
        if (!instant.ok()) {
            problems_.add(row.line, headingFor(f::Photo::takenAt), instant.error().message);
            return;
        }
        row.values[f::Photo::takenAt] = model::valueOf(instant.value());
    }

    void checkDay(const BroughtRow& row, const DateRange& range) {
        const Value value = valueIn(row.values, f::Photo::takenAt);
        if (const auto* milliseconds = std::get_if<std::int64_t>(&value)) {
            const auto day = model::Instant::fromMilliseconds(*milliseconds).utcDate();
            if (day < range.from || day > range.to) {
                problems_.add(
                    row.line, headingFor(f::Photo::takenAt),
                    model::saying("%1 is %2: check the year", day.toString(), range.about).text());
            }
        }
    }

    // What the picture itself says.
    static void addPicture(BroughtRow& row, const ListedPicture& picture) {
        if (picture.path.empty()) {
            return;
        }
        row.values[f::Photo::digest] = model::valueOf(picture.digest);
        row.values[f::Photo::width] = model::valueOf(std::int64_t{picture.size.width});
        row.values[f::Photo::height] = model::valueOf(std::int64_t{picture.size.height});
        row.values[f::Photo::bytes] = model::valueOf(picture.bytes);
        row.values[f::Photo::purpose] = model::valueOf(model::Purpose::Site);
    }

    Result<void> pair() {
        std::vector<Column> columns = columns_;
        columns.push_back({columns.size(), kFileHeading, model::fieldOf(f::Photo::digest)});
        const HeadingOf headingOf = [this](FieldCode code) { return headingFor(code); };
        auto paired = pairRows(
            {pictureKind(), rows_, columns, existing_, book_, *finder_, headingOf}, problems_);
        if (!paired.ok()) {
            return paired.error();
        }
        pairings_ = std::move(paired).value();
        for (std::size_t at = 0; at < rows_.size(); ++at) {
            if (pairings_[at].as == PairedAs::Different) {
                keepFacts(at);
            }
        }
        return problems_.none() ? Result<void>{} : problems_.asError();
    }

    // A fact of a photo stands as it was first said; and a photo that was filed as a receipt or a
    // paper since stays one.
    void keepFacts(std::size_t at) {
        auto& pairing = pairings_[at];
        const auto& record = existing_[*pairing.record];
        for (const auto& [code, value] : pairing.changes) {
            const bool isKept = model::fieldOf(code)->merge == model::Merge::Kept;
            if (isKept && !model::isEmpty(record.at(code))) {
                problems_.add(rows_[at].line, headingFor(code),
                              model::saying("is %1, but the book has this picture with %2, which "
                                            "is not edited: drop the photo and bring it anew",
                                            printed(code, value), printed(code, record.at(code)))
                                  .text());
            }
        }
        if (!model::isEmpty(record.at(f::Photo::purpose))) {
            pairing.changes.erase(f::Photo::purpose);
        }
        if (pairing.changes.empty()) {
            pairing.as = PairedAs::Same;
        }
    }

    [[nodiscard]] std::string headingFor(FieldCode code) const {
        for (const auto& column : columns_) {
            if (column.field != nullptr && column.field->code == code) {
                return column.heading;
            }
        }
        return code == f::Photo::digest ? kFileHeading : std::string(model::fieldOf(code)->heading);
    }

    [[nodiscard]] std::string printed(FieldCode code, const Value& value) const {
        return writer_->printed(code, value);
    }

    // Read a second time, so that no more than one picture is in memory.
    Result<void> keepFiles() {
        const store::Photos photos(book_.path());
        for (std::size_t at = 0; at < pictures_.size(); ++at) {
            const auto& picture = pictures_[at];
            if (photos.check(picture.digest) == store::PhotoState::Right) {
                continue;
            }
            auto bytes = readWholeFile(picture.path.string());
            if (!bytes.ok()) {
                return bytes.error();
            }
            if (store::Photos::digestOf(bytes.value()) != picture.digest) {
                return model::cannotBeMet(model::saying(
                    "%1 was changed while it was brought: bring it again", picture.path.string()));
            }
            if (auto kept = photos.keep(bytes.value()); !kept.ok()) {
                return kept.error();
            }
            if (pairings_[at].as != PairedAs::New) {
                report_.remarks.push_back("line " + std::to_string(picture.line) + ", " +
                                          picture.file +
                                          ": its file was missing or damaged and is back");
            }
        }
        return {};
    }

    Result<BringReport> finish() {
        if (rows_.empty() && listed_) {
            report_.remarks.push_back(report_.file + " has headings and no rows");
        }
        const auto left = listed_ ? notListed(folder_, pictures_) : std::vector<std::string>();
        if (!left.empty()) {
            report_.remarks.push_back(
                "not in photos.csv, so not brought: " + std::to_string(left.size()) +
                (left.size() == 1 ? " picture, " : " pictures, the first ") + left.front());
        }
        remarkOnCameras();
        if (options_.tryOnly) {
            return std::move(report_);
        }
        if (auto kept = keepFiles(); !kept.ok()) {
            return kept.error();
        }
        if (!action_.empty()) {
            if (auto done = book_.commit(action_, now_); !done.ok()) {
                return done.error();
            }
            report_.written = true;
        }
        return std::move(report_);
    }

    void remarkOnCameras() {
        const auto where = std::count_if(pictures_.begin(), pictures_.end(),
                                         [](const auto& one) { return one.note.saysWhere; });
        if (where > 0) {
            report_.remarks.push_back(
                std::to_string(where) + (where == 1 ? " picture says" : " pictures say") +
                " where it was taken: that stays in the original alone; crews and lenders get "
                "copies without it");
        }
        if (!listed_ && report_.added > 0) {
            report_.remarks.push_back(
                "without a photos.csv: file them by room and stage with "
                "'ledgerboard set PHOTO Space ...'");
        }
    }

    store::Book& book_;
    model::Id<Kind::Job> job_;
    fs::path folder_;
    bool listed_ = true;  // by a photos.csv
    const BringOptions& options_;
    model::Instant now_;
    Problems problems_;
    store::Action action_;
    BringReport report_;
    CsvTable table_;  // without the column of files
    std::vector<std::string> files_;
    std::vector<Column> columns_;
    std::optional<Finder> finder_;
    std::optional<RowWriter> writer_;
    std::vector<store::Record> existing_;
    std::vector<BroughtRow> rows_;
    std::vector<ListedPicture> pictures_;  // of each row
    std::vector<Pairing> pairings_;
};

}  // namespace

Result<BringReport> bringPhotos(store::Book& book, model::Id<Kind::Job> job,
                                const std::string& folder, const BringOptions& options,
                                model::Instant now) {
    if (job.isNil()) {
        return model::wrongUse("photos belong to a job: say which with --job NAME");
    }
    return model::guarded([&]() -> Result<BringReport> {
        return BringingPhotos(book, job, fs::path(folder), options, now).run();
    });
}

}  // namespace ledgerboard::intake
