// Which jobs are in the book, how does each stand, and what is at stake across all of them?
//
// The figures are those of each job's weekly page (report::weekPage), worked out one job after the
// other in the background: a job's name is there at once and its figures follow. Sums are made of
// jobs in one currency, the one most of them have; a sum says how many jobs are not in it.
// Threads: the UI's.
#pragma once

#include <atomic>
#include <map>
#include <memory>

#include <QtQml/qqmlregistration.h>

#include "core/report/week_page.h"

#include "desktop/client/book_reader.h"
#include "desktop/client/row_model.h"

namespace ledgerboard::desk {

// A job as the first page shows it.
struct JobLine {
    Q_GADGET
    Q_PROPERTY(QString id MEMBER id)
    Q_PROPERTY(QString name MEMBER name)
    Q_PROPERTY(bool isReady MEMBER isReady)
    Q_PROPERTY(QString trouble MEMBER trouble)
    Q_PROPERTY(bool hasWork MEMBER hasWork)
    Q_PROPERTY(bool hasLevel MEMBER hasLevel)
    Q_PROPERTY(double done MEMBER done)
    Q_PROPERTY(double plan MEMBER plan)
    Q_PROPERTY(bool finished MEMBER finished)
    Q_PROPERTY(QString doneText MEMBER doneText)
    Q_PROPERTY(double lean MEMBER lean)
    Q_PROPERTY(double hair MEMBER hair)
    Q_PROPERTY(QString overText MEMBER overText)
    Q_PROPERTY(QString cost MEMBER cost)
    Q_PROPERTY(QString finish MEMBER finish)
    Q_PROPERTY(QString late MEMBER late)
    Q_PROPERTY(QString earn MEMBER earn)
    Q_PROPERTY(QString spent MEMBER spent)

  public:
    QString id;
    QString name;
    bool isReady = false;  // whether its figures are there
    QString trouble;       // why they cannot be
    bool hasWork = false;
    bool hasLevel = false;
    double done = 0;
    double plan = -1;
    bool finished = false;
    QString doneText;
    double lean = 0;
    double hair = 0.5;
    QString overText;
    QString cost;
    QString finish;
    QString late;
    QString earn;
    QString spent;

    friend bool operator==(const JobLine&, const JobLine&) = default;
};

class JobList : public RowModel {
    Q_OBJECT
    QML_ELEMENT
    Q_PROPERTY(int count READ count NOTIFY changed)
    Q_PROPERTY(bool isWorking READ isWorking NOTIFY changed)
    Q_PROPERTY(QString stakeCost READ stakeCost NOTIFY changed)
    Q_PROPERTY(QString stakeSpent READ stakeSpent NOTIFY changed)
    Q_PROPERTY(QString stakeToGo READ stakeToGo NOTIFY changed)
    Q_PROPERTY(QString stakeEarn READ stakeEarn NOTIFY changed)
    Q_PROPERTY(QString stakeNote READ stakeNote NOTIFY changed)

  public:
    explicit JobList(QObject* parent = nullptr);
    ~JobList() override;

    [[nodiscard]] int count() const override { return static_cast<int>(lines_.size()); }

    [[nodiscard]] bool isWorking() const { return working_; }

    [[nodiscard]] QString stakeCost() const { return stakeCost_; }

    [[nodiscard]] QString stakeSpent() const { return stakeSpent_; }

    [[nodiscard]] QString stakeToGo() const { return stakeToGo_; }

    // Empty where no job can say.
    [[nodiscard]] QString stakeEarn() const { return stakeEarn_; }

    [[nodiscard]] QString stakeNote() const { return stakeNote_; }

    Q_INVOKABLE [[nodiscard]] QString idAt(int place) const;

  signals:
    void changed();

  protected:
    [[nodiscard]] QVariant drawnAt(int place) const override;

  private:
    struct Glance {
        std::shared_ptr<const report::WeekPage> page;
        QString trouble;
    };

    void follow();
    void workOn();
    void show();
    void addUp();
    [[nodiscard]] JobLine lineOf(const JobName& job) const;

    QList<JobLine> lines_;
    std::map<model::RawId, Glance> glances_;
    std::string path_;           // of the book that glances_ are of
    store::LogPosition readAt_;  // and how far its log had come
    std::optional<model::Date> asOf_;
    bool working_ = false;
    // False once what is being worked out is wanted no more.
    std::shared_ptr<std::atomic<bool>> wanted_ = std::make_shared<std::atomic<bool>>(true);
    QString stakeCost_;
    QString stakeSpent_;
    QString stakeToGo_;
    QString stakeEarn_;
    QString stakeNote_;
};

}  // namespace ledgerboard::desk
