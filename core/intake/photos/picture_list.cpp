#include "core/intake/photos/picture_list.h"

#include <algorithm>
#include <array>
#include <unordered_map>

#include "core/intake/files/nearest.h"
#include "core/model/decimal.h"
#include "core/model/saying.h"
#include "core/store/photos.h"

namespace ledgerboard::intake {

namespace fs = std::filesystem;
using model::Result;

namespace {

// How people head that column: common practice, no source.
constexpr std::array kFileHeadings = {"file", "filename", "picture", "photo", "image", "path"};

bool isFileHeading(std::string_view heading) {
    const std::string key = headingKey(heading);
    return std::find(kFileHeadings.begin(), kFileHeadings.end(), key) != kFileHeadings.end();
}

bool isPictureName(const fs::path& path) {
    std::string ending = path.extension().string();
    std::transform(ending.begin(), ending.end(), ending.begin(),
                   [](char c) { return static_cast<char>(c >= 'A' && c <= 'Z' ? c + 32 : c); });
    return ending == ".jpg" || ending == ".jpeg" || ending == ".heic" || ending == ".heif";
}

std::vector<std::string> picturesIn(const fs::path& folder) {
    std::vector<std::string> names;
    std::error_code problem;
    for (fs::directory_iterator at(folder, problem), end; !problem && at != end;
         at.increment(problem)) {
        if (isPictureName(at->path())) {
            names.push_back(at->path().filename().string());
        }
    }
    std::sort(names.begin(), names.end());
    return names;
}

// Where a picture is, within the folder whatever links and dots its name has.
Result<fs::path> placeOf(const fs::path& folder, const std::string& file) {
    const fs::path named(file);
    const bool climbs = std::find(named.begin(), named.end(), "..") != named.end();
    const std::string mend = "copy the picture into the folder and name it there";
    if (named.is_absolute() || climbs) {
        return model::wrongUse(model::saying("leads out of the folder: %1", mend));
    }
    std::error_code problem;
    const fs::path path = fs::canonical(folder / named, problem);
    if (problem) {
        const std::string near = nearestName(file, picturesIn(folder));
        return model::wrongUse(
            near.empty()
                ? model::saying("there is no such file in the folder: check its name")
                : model::saying("there is no such file in the folder: is it \"%1\"?", near));
    }
    const fs::path home = fs::canonical(folder, problem);
    const auto [ofHome, ofPath] = std::mismatch(home.begin(), home.end(), path.begin(), path.end());
    if (problem || ofHome != home.end()) {
        return model::wrongUse(model::saying("is a link that leads out of the folder: %1", mend));
    }
    if (!fs::is_regular_file(path, problem)) {
        return model::wrongUse("is not a file: name a picture");
    }
    return path;
}

// Reads one picture. Requires: picture.path is set.
Result<void> readPicture(ListedPicture& picture) {
    static_assert(store::kLargestPhoto <= kLargestFile, "readWholeFile takes every photo");
    std::error_code problem;
    if (fs::file_size(picture.path, problem) > store::kLargestPhoto && !problem) {
        return model::wrongUse(model::saying("is larger than %1 MB: save it smaller first",
                                             store::kLargestPhoto >> 20));
    }
    auto bytes = readWholeFile(picture.path.string());
    if (!bytes.ok()) {
        return bytes.error();
    }
    auto size = pictureSize(bytes.value());
    if (!size.ok()) {
        return size.error();
    }
    picture.size = size.value();
    picture.digest = store::Photos::digestOf(bytes.value());
    picture.bytes = static_cast<std::int64_t>(bytes.value().size());
    picture.note = cameraNoteOf(bytes.value());
    return {};
}

}  // namespace

std::vector<std::string> takeFileColumn(CsvTable& table, std::vector<HeadingMatch>& matches,
                                        Problems& problems) {
    const auto saysFile = [&](const std::string& heading) {
        for (const auto& match : matches) {
            if (headingKey(match.theirs) == headingKey(heading)) {
                return isFileHeading(match.ours);
            }
        }
        return isFileHeading(heading);
    };
    std::vector<std::size_t> found;
    for (std::size_t at = 0; at < table.headings.cells.size(); ++at) {
        if (saysFile(table.headings.cells[at])) {
            found.push_back(at);
        }
    }
    if (found.empty()) {
        problems.add(table.headings.line, kFileHeading,
                     model::saying("is missing: it names the pictures; add it, or say which column "
                                   "it is with --match theirs=File")
                         .text());
        return {};
    }
    if (found.size() > 1) {
        problems.add(table.headings.line, table.headings.cells[found[1]],
                     model::saying("means the same as column \"%1\": take one out, or leave it out "
                                   "with --match \"%2=-\"",
                                   table.headings.cells[found[0]], table.headings.cells[found[1]])
                         .text());
        return {};
    }
    const auto at = static_cast<std::ptrdiff_t>(found.front());
    std::erase_if(matches, [&](const HeadingMatch& match) {
        return headingKey(match.theirs) == headingKey(table.headings.cells[found.front()]);
    });
    table.headings.cells.erase(table.headings.cells.begin() + at);
    std::vector<std::string> files;
    for (auto& row : table.rows) {
        files.emplace_back(model::trimmed(row.cells[found.front()]));
        row.cells.erase(row.cells.begin() + at);
    }
    return files;
}

std::vector<ListedPicture> lookAtPictures(const fs::path& folder, const CsvTable& table,
                                          const std::vector<std::string>& files,
                                          Problems& problems) {
    std::vector<ListedPicture> out;
    std::unordered_map<std::string, std::int64_t> lineOf;
    for (std::size_t k = 0; k < files.size(); ++k) {
        ListedPicture picture{table.rows[k].line, files[k], {}, {}, {}, 0, {}};
        const auto wrong = [&](const std::string& message) {
            problems.add(picture.line, kFileHeading, message);
            picture.path.clear();
        };
        if (files[k].empty()) {
            wrong("is empty: say the name of the picture's file");
        } else if (auto place = placeOf(folder, files[k]); !place.ok()) {
            wrong("\"" + files[k] + "\" " + place.error().message);
        } else {
            picture.path = place.value();
            if (auto done = readPicture(picture); !done.ok()) {
                wrong("\"" + files[k] + "\" " + done.error().message);
            } else if (const auto [earlier, isNew] = lineOf.emplace(picture.digest, picture.line);
                       !isNew) {
                wrong("\"" + files[k] + "\" is the same picture as that of line " +
                      std::to_string(earlier->second) + ", byte for byte: list it once");
            }
        }
        out.push_back(std::move(picture));
    }
    return out;
}

std::vector<std::string> notListed(const fs::path& folder,
                                   const std::vector<ListedPicture>& listed) {
    auto names = picturesIn(folder);
    std::erase_if(names, [&](const std::string& name) {
        return std::any_of(listed.begin(), listed.end(), [&](const ListedPicture& picture) {
            return fs::path(picture.file).lexically_normal() == fs::path(name);
        });
    });
    return names;
}

}  // namespace ledgerboard::intake
