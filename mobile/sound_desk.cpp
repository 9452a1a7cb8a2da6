#include "mobile/sound_desk.h"

#include <cstring>

#include <QAudioDevice>
#include <QAudioSink>
#include <QAudioSource>
#include <QFile>
#include <QMediaDevices>

#include "core/qml/id_text.h"
#include "core/store/photos.h"

#include "mobile/job_book.h"
#include "mobile/said.h"

namespace ledgerboard::phone {

using qml::idFrom;
using qml::idText;

namespace {

QAudioFormat formatOf(int rate, int channels) {
    QAudioFormat format;
    format.setSampleRate(rate);
    format.setChannelCount(channels);
    format.setSampleFormat(QAudioFormat::Int16);
    return format;
}

}  // namespace

SoundDesk::SoundDesk(QObject* parent) : QObject(parent) {}

SoundDesk::~SoundDesk() = default;

bool SoundDesk::isRecording() const {
    return file_.has_value();
}

QString SoundDesk::lengthText() const {
    const qint64 seconds = file_ ? file_->samples() / kSoundRate : 0;
    return QStringLiteral("%1:%2").arg(seconds / 60).arg(seconds % 60, 2, 10, QLatin1Char('0'));
}

void SoundDesk::start(const QString& path) {
    const QAudioDevice microphone = QMediaDevices::defaultAudioInput();
    if (microphone.isNull()) {
        emit failed(tr("No microphone is found on this device."));
        return;
    }
    auto file = SoundFile::create(path.toStdString());
    if (!file.ok()) {
        emit failed(Said::trouble(file.error()));
        return;
    }
    path_ = path;
    file_ = std::move(file).value();
    source_ = std::make_unique<QAudioSource>(microphone, formatOf(kSoundRate, 1));
    // Fifth parts of a second: as much as is lost where the program is killed.
    source_->setBufferSize(kSoundRate / 5 * static_cast<qsizetype>(sizeof(std::int16_t)));
    heard_ = source_->start();
    if (heard_ == nullptr) {
        giveUp(tr("The microphone can't be used. Does another program have it?"));
        return;
    }
    connect(heard_, &QIODevice::readyRead, this, &SoundDesk::take);
    // Where the microphone goes away, what it gave until then is kept.
    connect(source_.get(), &QAudioSource::stateChanged, this, [this](QAudio::State state) {
        if (state == QAudio::StoppedState) {
            QMetaObject::invokeMethod(this, &SoundDesk::stop, Qt::QueuedConnection);
        }
    });
    emit changed();
}

void SoundDesk::take() {
    if (!file_ || source_->state() == QAudio::StoppedState) {
        return;
    }
    const QByteArray bytes = heard_->readAll();
    std::vector<std::int16_t> samples(static_cast<std::size_t>(bytes.size()) /
                                      sizeof(std::int16_t));
    std::memcpy(samples.data(), bytes.constData(), samples.size() * sizeof(std::int16_t));
    if (const auto added = file_->add(samples); !added.ok()) {
        giveUp(Said::trouble(added.error()));
        return;
    }
    emit changed();
}

// The file is whole from here on.
void SoundDesk::end() {
    // Qt 6.4.2 reads from a stream that it has closed when it is told of more sound meanwhile; one
    // that is suspended it leaves alone.
    source_->suspend();
    source_.reset();
    heard_ = nullptr;
    file_.reset();
    emit changed();
}

void SoundDesk::giveUp(const QString& why) {
    end();
    QFile::remove(path_);
    emit failed(why);
}

void SoundDesk::stop() {
    if (!file_) {
        return;
    }
    take();
    if (!file_) {
        return;  // it was given up, and said so
    }
    if (file_->samples() == 0) {
        giveUp(tr("Nothing was recorded."));
        return;
    }
    end();
    emit recorded(path_);
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
        auto sound = soundIn(files.pathOf(note.sound).string());
        if (!sound.ok()) {
            emit failed(Said::trouble(sound.error()));
            return;
        }
        const QAudioDevice speaker = QMediaDevices::defaultAudioOutput();
        if (speaker.isNull()) {
            emit failed(tr("No loudspeaker is found on this device."));
            return;
        }
        const auto& samples = sound.value().samples;
        playing_.close();
        playing_.setData(reinterpret_cast<const char*>(samples.data()),
                         static_cast<qsizetype>(samples.size() * sizeof(std::int16_t)));
        playing_.open(QIODevice::ReadOnly);
        sink_ = std::make_unique<QAudioSink>(speaker,
                                             formatOf(sound.value().rate, sound.value().channels));
        sink_->start(&playing_);
        return;
    }
}

}  // namespace ledgerboard::phone
