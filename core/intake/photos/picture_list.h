// Which picture does each row of a photos.csv name, and can it be taken?
//
// A picture is a JPEG or HEIC file in the folder of the list or in a folder within it.
#pragma once

#include <cstdint>
#include <filesystem>
#include <string>
#include <vector>

#include "core/intake/files/csv.h"
#include "core/intake/files/headings.h"
#include "core/intake/files/problems.h"
#include "core/intake/photos/exif.h"
#include "core/intake/photos/picture.h"

namespace ledgerboard::intake {

// The column that names the pictures.
inline constexpr const char* kFileHeading = "File";

struct ListedPicture {
    std::int64_t line = 0;
    std::string file;            // as the list names it
    std::filesystem::path path;  // empty where it cannot be taken, which is a problem already
    std::string digest;
    PictureSize size;
    std::int64_t bytes = 0;
    CameraNote note;
};

// Takes the column of file names out of `table` (and the match that names it out of `matches`), for
// it is no field of the catalog. One cell a row; empty, with a problem added, where there is no
// such column or there are two.
[[nodiscard]] std::vector<std::string> takeFileColumn(CsvTable& table,
                                                      std::vector<HeadingMatch>& matches,
                                                      Problems& problems);

// Looks at each picture of `files`, one a row of `table`, in its order. Adds to `problems`: no
// name, a path that leads out of `folder`, no such file, too large, not a picture, one picture
// twice.
[[nodiscard]] std::vector<ListedPicture> lookAtPictures(const std::filesystem::path& folder,
                                                        const CsvTable& table,
                                                        const std::vector<std::string>& files,
                                                        Problems& problems);

// Pictures by their names (.jpg, .jpeg, .heic, .heif) right in `folder` that `listed` does not
// have, by name.
[[nodiscard]] std::vector<std::string> notListed(const std::filesystem::path& folder,
                                                 const std::vector<ListedPicture>& listed);

}  // namespace ledgerboard::intake
