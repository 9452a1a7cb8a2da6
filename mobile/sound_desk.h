// A spoken note: recorded, kept as sound beside the book, to be typed later.
//
// The sound travels as photos do, to owners' devices alone.
// Threads: the UI's; the recorder has its own.
#pragma once

#include <memory>

#include <QObject>
#include <QtQml/qqmlregistration.h>

class QAudioInput;
class QAudioOutput;
class QMediaCaptureSession;
class QMediaPlayer;
class QMediaRecorder;

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

    // Requires: there is a microphone, and `path` can be written.
    Q_INVOKABLE void start(const QString& path);
    // Ends it; recorded() follows once the file is whole.
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
    QString path_;
    std::unique_ptr<QAudioInput> input_;
    std::unique_ptr<QMediaCaptureSession> session_;
    std::unique_ptr<QMediaRecorder> recorder_;
    std::unique_ptr<QAudioOutput> output_;
    std::unique_ptr<QMediaPlayer> player_;
};

}  // namespace ledgerboard::phone
