#include "mobile/senses.h"

#include <QAudioDevice>
#include <QCameraDevice>
#include <QDir>
#include <QFile>
#include <QMediaDevices>
#include <QUuid>

#include "mobile/job_book.h"

namespace ledgerboard::phone {

namespace {

QDir folder() {
    return QDir(JobBook::here()->surroundings().bookFolder + QStringLiteral("/taken"));
}

}  // namespace

Senses::Senses(QObject* parent) : QObject(parent) {}

Senses::~Senses() = default;

// False where the program that runs has none to use, as in tests.
bool Senses::look() {
    if (!JobBook::here()->surroundings().usesSenses) {
        return false;
    }
    if (!devices_) {
        devices_ = std::make_unique<QMediaDevices>();
        connect(devices_.get(), &QMediaDevices::videoInputsChanged, this, &Senses::changed);
        connect(devices_.get(), &QMediaDevices::audioInputsChanged, this, &Senses::changed);
    }
    return true;
}

bool Senses::hasCamera() {
    return look() && !QMediaDevices::videoInputs().isEmpty();
}

bool Senses::hasMicrophone() {
    return look() && !QMediaDevices::audioInputs().isEmpty();
}

QString Senses::newFile(const QString& suffix) const {
    (void)folder().mkpath(QStringLiteral("."));
    return folder().filePath(QUuid::createUuid().toString(QUuid::WithoutBraces) + suffix);
}

void Senses::forget(const QString& path) const {
    if (QDir::cleanPath(path).startsWith(QDir::cleanPath(folder().path()) + QLatin1Char('/'))) {
        QFile::remove(path);
    }
}

}  // namespace ledgerboard::phone
