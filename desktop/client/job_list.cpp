#include "desktop/client/job_list.h"

#include <algorithm>

#include "core/model/overflow.h"
#include "core/qml/id_text.h"
#include "core/store/book.h"

#include "desktop/client/background.h"
#include "desktop/client/desk.h"
#include "desktop/client/said.h"
#include "desktop/client/week_words.h"

namespace ledgerboard::desk {

using qml::idText;

using model::Money;
using model::Result;
using report::WeekPage;

namespace {

double shareOf(model::Percent percent) {
    return static_cast<double>(percent.basisPoints()) / 10'000;
}

Result<WeekPage> readWeek(const std::string& path, const Surroundings& around,
                          const model::Id<model::Kind::Job>& job,
                          const std::optional<model::Date>& asOf) {
    return model::guarded([&]() -> Result<WeekPage> {
        auto book = store::Book::open(path, around.random);
        if (!book.ok()) {
            return book.error();
        }
        auto rows = book.value().jobRows(job);
        if (!rows.ok()) {
            return rows.error();
        }
        const model::Date today = asOf ? *asOf : dayAt(around.now(), rows.value().job.timeZone);
        return report::weekPage(rows.value(), today);
    });
}

// The currency that most of the jobs have.
std::string mostCommon(const std::vector<std::string>& currencies) {
    std::string best;
    std::ptrdiff_t most = 0;
    for (const auto& one : currencies) {
        const auto count = std::count(currencies.begin(), currencies.end(), one);
        if (count > most) {
            most = count;
            best = one;
        }
    }
    return best;
}

}  // namespace

JobList::JobList(QObject* parent) : RowModel(parent) {
    connect(Desk::here(), &Desk::changed, this, &JobList::follow);
    connect(Desk::here(), &Desk::wordsChanged, this, &JobList::show);
    follow();
}

JobList::~JobList() {
    *wanted_ = false;
}

QVariant JobList::drawnAt(int place) const {
    return QVariant::fromValue(lines_.at(place));
}

QString JobList::idAt(int place) const {
    return place >= 0 && place < lines_.size() ? lines_.at(place).id : QString();
}

void JobList::follow() {
    Desk& desk = *Desk::here();
    const bool isSame =
        desk.bookPath() == path_ && desk.position() == readAt_ && desk.asOf() == asOf_;
    if (desk.state() == Desk::Open && !isSame) {
        if (desk.bookPath() != path_) {
            glances_.clear();
        }
        path_ = desk.bookPath();
        readAt_ = desk.position();
        asOf_ = desk.asOf();
        *wanted_ = false;  // what is under way is of the book as it was
        wanted_ = std::make_shared<std::atomic<bool>>(true);
        workOn();
    }
    show();
}

void JobList::workOn() {
    Desk& desk = *Desk::here();
    working_ = !desk.jobs().empty();
    for (std::size_t k = 0; k < desk.jobs().size(); ++k) {
        const auto job = desk.jobs()[k].id;
        const bool isLast = k + 1 == desk.jobs().size();
        inBackground(
            desk.pool(), this,
            [path = path_, around = desk.surroundings(), job, asOf = asOf_, wanted = wanted_] {
                if (!*wanted) {
                    return Glance{};
                }
                auto page = readWeek(path, around, job, asOf);
                return page.ok()
                           ? Glance{std::make_shared<const WeekPage>(std::move(page).value()), {}}
                           : Glance{nullptr, Said::trouble(page.error())};
            },
            [this, job, isLast, wanted = wanted_](Glance glance) {
                if (!*wanted) {
                    return;
                }
                glances_[job.raw()] = std::move(glance);
                working_ = working_ && !isLast;
                show();
            });
    }
}

JobLine JobList::lineOf(const JobName& job) const {
    JobLine line;
    line.id = idText(job.id);
    line.name = Said::text(job.name);
    const auto found = glances_.find(job.id.raw());
    if (found == glances_.end()) {
        return line;
    }
    line.trouble = found->second.trouble;
    if (found->second.page == nullptr) {
        return line;
    }
    const WeekPage& page = *found->second.page;
    line.isReady = true;
    line.hasWork = page.items > 0;
    line.done = shareOf(page.progress.done);
    line.plan = page.progress.planned ? shareOf(*page.progress.planned) : -1;
    line.finished = line.hasWork && page.progress.done >= model::Percent::whole();
    line.doneText = Said::done(page.progress.done);
    if (page.level && page.level->end > Money{}) {
        const auto end = static_cast<double>(page.level->end.minor());
        line.hasLevel = true;
        line.lean = std::clamp(static_cast<double>(page.level->over.minor()) / end, -1.0, 1.0);
        line.hair = static_cast<double>(page.level->hairline.minor()) / end;
    }
    const auto head = WeekWords::head(page);
    line.cost = head[0].figure;
    line.overText = head[0].strong;
    line.finish = head[1].figure;
    line.late = head[1].strong;
    line.earn = head[2].figure;
    line.spent = Said::money(page.total.billed);
    return line;
}

void JobList::show() {
    QList<JobLine> lines;
    for (const auto& job : Desk::here()->jobs()) {
        lines << lineOf(job);
    }
    const bool isSameList =
        lines.size() == lines_.size() &&
        std::equal(lines.begin(), lines.end(), lines_.begin(),
                   [](const JobLine& a, const JobLine& b) { return a.id == b.id; });
    if (!isSameList) {
        beginResetModel();
        lines_ = lines;
        endResetModel();
    }
    for (qsizetype k = 0; k < lines.size(); ++k) {
        if (!(lines_.at(k) == lines.at(k))) {
            lines_[k] = lines.at(k);
            const QModelIndex at = index(static_cast<int>(k));
            emit dataChanged(at, at, {kRowRole});
        }
    }
    addUp();
    emit changed();
}

void JobList::addUp() {
    std::vector<const WeekPage*> pages;
    std::vector<std::string> currencies;
    for (const auto& job : Desk::here()->jobs()) {
        const auto found = glances_.find(job.id.raw());
        if (found != glances_.end() && found->second.page != nullptr) {
            pages.push_back(found->second.page.get());
            currencies.push_back(found->second.page->currency);
        }
    }
    const std::string currency = mostCommon(currencies);
    Money cost;
    Money spent;
    Money earn;
    int earning = 0;
    int counted = 0;
    try {
        for (const auto* page : pages) {
            if (page->currency != currency) {
                continue;
            }
            ++counted;
            cost = cost + page->cost.forecast;
            spent = spent + page->total.billed;
            if (page->earn.profit) {
                earn = earn + *page->earn.profit;
                ++earning;
            }
        }
        stakeToGo_ = Said::money(cost - spent);
    } catch (const model::OverflowError&) {
        stakeCost_ = stakeSpent_ = stakeToGo_ = stakeEarn_ = QString();
        stakeNote_ = tr("The sums are too large to be added up.");
        return;
    }
    stakeCost_ = Said::money(cost);
    stakeSpent_ = Said::money(spent);
    stakeEarn_ = earning > 0 ? Said::money(earn) : QString();
    QStringList notes;
    const int all = static_cast<int>(Desk::here()->jobs().size());
    if (counted < all) {
        notes << (working_ ? tr("%1 of %2 jobs added up so far.").arg(counted).arg(all)
                           : tr("%n job(s) not in the sums.", nullptr, all - counted));
    }
    if (earning < counted) {
        notes << tr("%n job(s) cannot say yet what they will earn.", nullptr, counted - earning);
    }
    stakeNote_ = notes.join(QLatin1Char(' '));
}

}  // namespace ledgerboard::desk
