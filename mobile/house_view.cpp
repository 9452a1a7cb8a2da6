#include "mobile/house_view.h"

#include "mobile/job_book.h"
#include "mobile/said.h"

namespace ledgerboard::phone {

namespace {

const JobNow* now() {
    return JobBook::here()->now();
}

}  // namespace

HouseView::HouseView(QObject* parent) : QObject(parent) {
    connect(JobBook::here(), &JobBook::changed, this, &HouseView::changed);
}

QString HouseView::name() const {
    return now() == nullptr ? QString() : Said::text(now()->rows.job.name);
}

QString HouseView::dayText() const {
    if (now() == nullptr) {
        return {};
    }
    const model::Date today = now()->today;
    const auto& begin = now()->rows.job.beginOn;
    if (!begin || *begin > today) {
        return Said::day(today);
    }
    // Weeks begin on the weekday that work began on.
    return tr("%1, week %2").arg(Said::day(today)).arg((today - *begin) / 7 + 1);
}

QString HouseView::waitingText() const {
    const Waiting& waiting = JobBook::here()->waiting();
    if (!waiting.hasPeer) {
        return tr("kept on this phone");
    }
    if (waiting.isEmpty()) {
        return tr("nothing waits");
    }
    QStringList parts;
    if (waiting.marks > 0) {
        parts << tr("%n mark(s)", nullptr, static_cast<int>(waiting.marks));
    }
    if (waiting.photos > 0) {
        parts << tr("%n photo(s)", nullptr, static_cast<int>(waiting.photos));
    }
    if (waiting.others > 0) {
        parts << tr("%n more", nullptr, static_cast<int>(waiting.others));
    }
    return tr("%1 wait").arg(parts.join(QStringLiteral(", ")));
}

QString HouseView::accessText() const {
    if (now() == nullptr || now()->isOwner) {
        return {};  // an owner knows
    }
    QStringList parts{Said::text(now()->rows.job.address), Said::text(now()->rows.job.access)};
    parts.removeAll(QString());
    parts.removeAll(name());
    return parts.join(QStringLiteral(". "));
}

bool HouseView::hasLevel() const {
    return now() != nullptr && now()->level.has_value();
}

double HouseView::lean() const {
    return hasLevel() ? now()->level->lean : 0;
}

double HouseView::hair() const {
    return hasLevel() ? now()->level->hair : 0.5;
}

QString HouseView::levelText() const {
    if (!hasLevel()) {
        return {};
    }
    const model::Money over = now()->level->over;
    const model::Money size = over < model::Money{} ? -over : over;
    const QString figure = Said::money(size);
    if (size < model::Money::of(1)) {
        return tr("will cost what was budgeted");
    }
    return over > model::Money{} ? tr("will cost <b>%1 more</b> than budget").arg(figure)
                                 : tr("will cost <b>%1 less</b> than budget").arg(figure);
}

}  // namespace ledgerboard::phone
