#include "mobile/picture_folder.h"

#include <algorithm>

#include <QDateTime>
#include <QDirIterator>
#include <QFileInfo>
#include <QLocale>

#include "mobile/job_book.h"

namespace ledgerboard::phone {

namespace {

// More are not looked through at a visit.
constexpr qsizetype kMostPictures = 500;

}  // namespace

PictureFolder::PictureFolder(QObject* parent) : RowList(parent) {
    refresh();
}

void PictureFolder::refresh() {
    QFileInfoList files;
    for (const auto& folder : JobBook::here()->surroundings().pictureFolders) {
        QDirIterator each(
            folder, {QStringLiteral("*.jpg"), QStringLiteral("*.jpeg"), QStringLiteral("*.heic")},
            QDir::Files, QDirIterator::Subdirectories);
        while (each.hasNext()) {
            each.next();
            files << each.fileInfo();
        }
    }
    std::sort(files.begin(), files.end(), [](const QFileInfo& a, const QFileInfo& b) {
        const QDateTime one = a.lastModified();
        const QDateTime other = b.lastModified();
        return one != other ? one > other : a.filePath() < b.filePath();
    });
    QList<PictureRow> rows;
    for (const auto& file : files.mid(0, kMostPictures)) {
        PictureRow row;
        row.id = file.absoluteFilePath();
        row.url = QUrl::fromLocalFile(row.id);
        row.spoken =
            tr("Picture of %1").arg(QLocale().toString(file.lastModified(), QLocale::ShortFormat));
        rows << row;
    }
    show(rows);
}

}  // namespace ledgerboard::phone
