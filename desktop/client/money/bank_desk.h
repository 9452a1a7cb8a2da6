// What of a bank's download would come into the book, and what is each of its lines for?
//
// The file is read by the program that knows OFX and matched in the background, as `bring spend`
// does it: tried first, so that nothing comes in before the owner says so, and then as one action.
// While it is read or matched it says how far it is and can be stopped; then the book is as it was.
// Threads: the UI's.
#pragma once

#include <atomic>
#include <memory>

#include <QObject>
#include <QTimer>
#include <QVariantList>
#include <QtQml/qqmlregistration.h>

#include "core/intake/bank/bring_bank.h"

#include "desktop/client/surroundings.h"

namespace ledgerboard::desk {

// A line of the download as the page draws it, under what would become of it.
struct DownloadLine {
    Q_GADGET
    Q_PROPERTY(QString heading MEMBER heading)
    Q_PROPERTY(QString day MEMBER day)
    Q_PROPERTY(QString amount MEMBER amount)
    Q_PROPERTY(QString written MEMBER written)
    Q_PROPERTY(QString taken MEMBER taken)
    Q_PROPERTY(QString sure MEMBER sure)
    Q_PROPERTY(QString why MEMBER why)

  public:
    QString heading;  // over the first of its kind: "Would be filed at once, 3"; else empty
    QString day;
    QString amount;
    QString written;
    QString taken;
    QString sure;
    QString why;
};

class BankDesk : public QObject {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(bool isOpen READ isOpen NOTIFY changed)
    Q_PROPERTY(bool isWorking READ isWorking NOTIFY changed)
    Q_PROPERTY(QString title READ title NOTIFY changed)
    Q_PROPERTY(QString progressText READ progressText NOTIFY progressed)
    Q_PROPERTY(QString refused READ refused NOTIFY changed)
    Q_PROPERTY(QString sumText READ sumText NOTIFY changed)
    Q_PROPERTY(int fresh READ fresh NOTIFY changed)
    Q_PROPERTY(QVariantList lines READ lines NOTIFY changed)

  public:
    explicit BankDesk(QObject* parent = nullptr);
    ~BankDesk() override;

    // Lays the empty form open: the name of a file is wanted.
    Q_INVOKABLE void open();
    // Tries a file, given as a path ("~/may.ofx" too) or a file address.
    Q_INVOKABLE void tryFile(const QString& where);
    // Brings in what was tried last.
    Q_INVOKABLE void bring();
    // Stops what is under way; the book stays as it is.
    Q_INVOKABLE void stop();
    // Puts the form away; what is under way is stopped.
    Q_INVOKABLE void close();

    [[nodiscard]] bool isOpen() const { return isOpen_; }

    [[nodiscard]] bool isWorking() const { return isWorking_; }

    [[nodiscard]] QString title() const;
    [[nodiscard]] QString progressText() const;

    // Why nothing of it can come in; empty where it can.
    [[nodiscard]] QString refused() const { return refused_; }

    [[nodiscard]] QString sumText() const;

    // Lines that are not in the book yet.
    [[nodiscard]] int fresh() const;

    // Those that would be filed, those that would wait, those that are known, each as the bank
    // lists them.
    [[nodiscard]] QVariantList lines() const { return lines_; }

  signals:
    void changed();
    void progressed();
    // What was brought is in the book.
    void brought();

  private:
    // What the thread that works says of how far it is, and is told.
    struct Course {
        std::atomic<bool> stopped{false};
        std::atomic<std::size_t> done{0};
        std::atomic<std::size_t> all{0};  // 0 while the file is read
    };

    struct Tried {
        intake::Statement statement;
        intake::BankReport report;
        QString refused;
    };

    struct Task {
        std::shared_ptr<Course> course;
        std::string name;
        std::string bookPath;
        Surroundings around;
        model::Id<model::Kind::Job> job;
        std::string timeZone;
        model::Instant at;
    };

    static void match(const Task& task, Tried& tried, bool tryOnly);
    [[nodiscard]] static Tried read(const Task& task, const QString& path);

    [[nodiscard]] Task begin();
    void take(Tried tried);
    void arrange();

    bool isOpen_ = false;
    bool isWorking_ = false;
    std::shared_ptr<Course> course_;
    QTimer telling_;
    QString file_;  // without its folders
    Tried tried_;
    QVariantList lines_;
    QString refused_;
};

}  // namespace ledgerboard::desk
