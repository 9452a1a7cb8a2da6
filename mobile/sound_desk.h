// A spoken note: recorded, kept as sound beside the book, to be typed later.
//
// The sound travels as photos do, to owners' devices alone. What the microphone gives is written
// here and not by Qt's recorder, whose formats hang on what else is installed. Threads: the UI's.
#pragma once

#include <memory>
#include <optional>

#include <QBuffer>
#include <QObject>
#include <QtQml/qqmlregistration.h>

#include "mobile/sound_file.h"

class QAudioSink;
class QAudioSource;

namespace ledgerboard::phone {

class SoundDesk : public QObject {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(bool isRecording READ isRecording NOTIFY changed)
    Q_PROPERTY(QString lengthText READ lengthText NOTIFY changed)

  public:
    explicit SoundDesk(QObject* parent = nullptr);
    ~SoundDesk() override;

    [[nodiscard]] bool isRecording() const;
    [[nodiscard]] QString lengthText() const;  // "0:12"

    // Writes what the microphone hears to `path`. failed() where there is none, where it can't be
    // used, or the disk is full.
    Q_INVOKABLE void start(const QString& path);
    // Ends it; recorded() follows once the file is whole, failed() where nothing was heard.
    Q_INVOKABLE void stop();
    // Keeps the sound of a file as a note of the space; true once it is on disk.
    Q_INVOKABLE bool keepSound(const QString& path, const QString& spaceId);

    // Lets the sound of a note be heard, from its beginning.
    Q_INVOKABLE void play(const QString& noteId);

  signals:
    void changed();
    void recorded(const QString& path);
    void failed(const QString& why);

  private:
    void take();
    void end();
    void giveUp(const QString& why);

    QString path_;
    std::unique_ptr<QAudioSource> source_;
    QIODevice* heard_ = nullptr;  // of source_
    std::optional<SoundFile> file_;
    std::unique_ptr<QAudioSink> sink_;
    QBuffer playing_;
};

}  // namespace ledgerboard::phone
