#include "mobile/sound_desk.h"

#include <QAudioInput>
#include <QAudioOutput>
#include <QFile>
#include <QMediaCaptureSession>
#include <QMediaFormat>
#include <QMediaPlayer>
#include <QMediaRecorder>
#include <QUrl>

#include "core/qml/id_text.h"
#include "core/store/photos.h"

#include "mobile/job_book.h"
#include "mobile/said.h"

namespace ledgerboard::phone {

using qml::idFrom;
using qml::idText;

SoundDesk::SoundDesk(QObject* parent) : QObject(parent) {}

SoundDesk::~SoundDesk() = default;

bool SoundDesk::isRecording() const {
    return recorder_ && recorder_->recorderState() == QMediaRecorder::RecordingState;
}

QString SoundDesk::lengthText() const {
    const qint64 seconds = recorder_ ? recorder_->duration() / 1000 : 0;
    return QStringLiteral("%1:%2").arg(seconds / 60).arg(seconds % 60, 2, 10, QLatin1Char('0'));
}

void SoundDesk::start(const QString& path) {
    path_ = path;
    if (!recorder_) {
        input_ = std::make_unique<QAudioInput>();
        session_ = std::make_unique<QMediaCaptureSession>();
        recorder_ = std::make_unique<QMediaRecorder>();
        session_->setAudioInput(input_.get());
        session_->setRecorder(recorder_.get());
        recorder_->setMediaFormat(QMediaFormat(QMediaFormat::Ogg));
        recorder_->setQuality(QMediaRecorder::LowQuality);
        connect(recorder_.get(), &QMediaRecorder::durationChanged, this, &SoundDesk::changed);
        connect(recorder_.get(), &QMediaRecorder::errorOccurred, this,
                [this](QMediaRecorder::Error, const QString& why) { emit failed(why); });
        connect(recorder_.get(), &QMediaRecorder::recorderStateChanged, this,
                [this](QMediaRecorder::RecorderState state) {
                    emit changed();
                    if (state == QMediaRecorder::StoppedState) {
                        emit recorded(recorder_->actualLocation().toLocalFile());
                    }
                });
    }
    recorder_->setOutputLocation(QUrl::fromLocalFile(path));
    recorder_->record();
}

void SoundDesk::stop() {
    if (recorder_) {
        recorder_->stop();
    }
}

bool SoundDesk::keepSound(const QString& path, const QString& spaceId) {
    JobBook& book = *JobBook::here();
    QFile file(path);
    if (book.now() == nullptr || !book.isOwner()) {
        return false;
    }
    if (!file.open(QIODevice::ReadOnly) || file.size() == 0) {
        book.sayNotKept(tr("Nothing was recorded."));
        return false;
    }
    auto digest = store::Photos(book.book().path()).keep(file.readAll().toStdString());
    if (!digest.ok()) {
        book.sayNotKept(Said::trouble(digest.error()));
        return false;
    }
    model::Note note;
    note.id = book.book().newId<model::Kind::Note>(book.instant());
    note.job = book.now()->rows.job.id;
    note.space = idFrom<model::Kind::Space>(spaceId);
    note.sound = digest.value();
    store::Action action("spoken note");
    action.add(note);
    return book.keep(action, tr("Spoken note kept, to be typed later"));
}

void SoundDesk::play(const QString& noteId) {
    JobBook& book = *JobBook::here();
    if (book.now() == nullptr) {
        return;
    }
    const store::Photos files(book.book().path());
    for (const auto& note : book.now()->rows.notes) {
        if (idText(note.id) != noteId || !store::Photos::isDigest(note.sound)) {
            continue;
        }
        if (files.check(note.sound) != store::PhotoState::Right) {
            emit failed(tr("The sound has not come yet from the phone that recorded it."));
            return;
        }
        if (!player_) {
            output_ = std::make_unique<QAudioOutput>();
            player_ = std::make_unique<QMediaPlayer>();
            player_->setAudioOutput(output_.get());
        }
        player_->setSource(
            QUrl::fromLocalFile(QString::fromStdString(files.pathOf(note.sound).string())));
        player_->play();
    }
}

}  // namespace ledgerboard::phone
