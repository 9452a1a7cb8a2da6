#include "desktop/client/week_view.h"

#include <algorithm>
#include <map>

#include <QDir>
#include <QFileInfo>
#include <QUrl>

#include "core/report/theme.h"
#include "core/report/week_words.h"

#include "desktop/client/desk.h"
#include "desktop/client/said.h"
#include "desktop/client/week_plot.h"
#include "desktop/client/week_sheet.h"
#include "desktop/client/week_words.h"

namespace ledgerboard::desk {

using model::Money;

namespace {

// A page of the folder by the name that core knows it by; empty while it is not there.
QString keyOfPage(const std::string& name) {
    static const std::map<std::string, const char*> kKeys = {
        {"Scope of work", "scope"}, {"Alternates", "alternates"},
        {"Schedule", "schedule"},   {"Contracts and orders", "contracts"},
        {"Spend", "spend"},         {"Draws", "draws"},
        {"Deal", "deal"},           {"Punch list", "punch"},
        {"Closing", "closing"},     {"Price book", "prices"},
        {"Devices", "devices"}};
    const auto found = kKeys.find(name);
    const QString key = found == kKeys.end() ? QString() : QLatin1String(found->second);
    return Desk::here()->hasPage(key) ? key : QString();
}

// The name of a page in the language of the pages.
QString nameOfPage(const std::string& name) {
    static constexpr const char* kNames[] = {
        QT_TRANSLATE_NOOP("ledgerboard::desk::WeekView", "Scope of work"),
        QT_TRANSLATE_NOOP("ledgerboard::desk::WeekView", "Alternates"),
        QT_TRANSLATE_NOOP("ledgerboard::desk::WeekView", "Schedule"),
        QT_TRANSLATE_NOOP("ledgerboard::desk::WeekView", "Contracts and orders"),
        QT_TRANSLATE_NOOP("ledgerboard::desk::WeekView", "Spend"),
        QT_TRANSLATE_NOOP("ledgerboard::desk::WeekView", "Draws"),
        QT_TRANSLATE_NOOP("ledgerboard::desk::WeekView", "Deal"),
        QT_TRANSLATE_NOOP("ledgerboard::desk::WeekView", "Punch list"),
        QT_TRANSLATE_NOOP("ledgerboard::desk::WeekView", "Closing")};
    for (const char* known : kNames) {
        if (name == known) {
            return WeekView::tr(known);
        }
    }
    return Said::text(name);
}

// Whether lines of the page can open those of the scope.
bool hasScope() {
    return Desk::here()->hasPage(QStringLiteral("scope"));
}

template <class T>
void append(QVariantList& list, const T& line) {
    list << QVariant::fromValue(line);
}

double shareOf(model::Percent percent) {
    return static_cast<double>(percent.basisPoints()) / 10'000;
}

}  // namespace

WeekView::WeekView(QObject* parent) : QObject(parent) {
    connect(Desk::here(), &Desk::changed, this, &WeekView::follow);
    connect(Desk::here(), &Desk::weekChanged, this, &WeekView::follow);
    connect(Desk::here(), &Desk::wordsChanged, this, [this] {
        page_.reset();
        follow();
    });
    follow();
}

void WeekView::follow() {
    auto page = Desk::here()->week();
    if (page == page_ && page != nullptr) {
        return;
    }
    page_ = std::move(page);
    plot_.show(page_ == nullptr ? qml::PlotData() : weekPlotOf(*page_));
    emit changed();
}

QString WeekView::trouble() const {
    return page_ == nullptr ? Desk::here()->weekTrouble() : QString();
}

QString WeekView::title() const {
    return page_ == nullptr ? tr("This week") : WeekWords::title(*page_);
}

QString WeekView::when() const {
    return page_ == nullptr ? QString() : WeekWords::when(*page_);
}

double WeekView::lean() const {
    if (!hasLevel() || page_->level->end <= Money{}) {
        return 0;
    }
    return std::clamp(static_cast<double>(page_->level->over.minor()) /
                          static_cast<double>(page_->level->end.minor()),
                      -1.0, 1.0);
}

double WeekView::hair() const {
    if (!hasLevel() || page_->level->end <= Money{}) {
        return 0.5;
    }
    return static_cast<double>(page_->level->hairline.minor()) /
           static_cast<double>(page_->level->end.minor());
}

QString WeekView::levelText() const {
    return hasLevel() ? WeekWords::level(*page_->level) : QString();
}

QString WeekView::levelScale() const {
    return hasLevel() ? WeekWords::levelScale(*page_->level) : QString();
}

QString WeekView::levelLow() const {
    return hasLevel() ? tr("%1 less").arg(Said::change(-page_->level->end)) : QString();
}

QString WeekView::levelHigh() const {
    return hasLevel() ? tr("%1 more").arg(Said::change(page_->level->end)) : QString();
}

QVariantList WeekView::head() const {
    QVariantList list;
    if (page_ != nullptr) {
        for (const auto& line : WeekWords::head(*page_)) {
            append(list, line);
        }
    }
    return list;
}

QString WeekView::buyerText() const {
    return page_ == nullptr ? QString() : WeekWords::buyer(*page_);
}

QString WeekView::progressText() const {
    return page_ == nullptr ? QString() : WeekWords::progress(page_->progress);
}

QString WeekView::methodsText() const {
    return page_ == nullptr ? QString()
                            : Said::text(report::methodsText(*page_, report::Script::Unicode));
}

QVariantList WeekView::movers() const {
    QVariantList list;
    if (!hasMovers()) {
        return list;
    }
    for (const auto& mover : page_->movers->largest) {
        PageLine line;
        line.what = Said::text(mover.what);
        line.why = Said::told(mover.why);
        line.figure = Said::change(mover.amount);
        append(list, line);
    }
    if (page_->movers->otherCount > 0 || !Said::isNothing(page_->movers->others)) {
        PageLine others;
        others.what = page_->movers->otherCount > 0
                          ? tr("All others (%1)").arg(page_->movers->otherCount)
                          : tr("All others");
        others.figure = Said::change(page_->movers->others);
        append(list, others);
    }
    PageLine total;
    total.what = WeekWords::since(*page_);
    total.figure = Said::change(page_->movers->total);
    total.isTotal = true;
    append(list, total);
    return list;
}

QString WeekView::askedText() const {
    return page_ == nullptr ? QString() : WeekWords::asked(*page_);
}

QString WeekView::contingencyText() const {
    return page_ == nullptr ? QString() : WeekWords::contingency(*page_);
}

QVariantList WeekView::trades() const {
    QVariantList list;
    if (page_ == nullptr) {
        return list;
    }
    const auto lineOf = [](const report::TradeMoney& trade) {
        TradeLine line;
        line.trade = Said::text(trade.trade);
        for (const Money money :
             {trade.amounts.budgetNow, trade.amounts.committed, trade.amounts.billed,
              trade.amounts.held, trade.amounts.paid, trade.amounts.forecast}) {
            line.cells << Said::money(money);
        }
        line.cells << WeekWords::standing(trade);
        return line;
    };
    const auto now = Desk::here()->now();
    for (const auto& trade : page_->trades) {
        TradeLine line = lineOf(trade);
        const bool isOne = now != nullptr && hasScope() &&
                           std::any_of(now->figures.scope.lines.begin(),
                                       now->figures.scope.lines.end(), [&](const auto& one) {
                                           return !one.item.isNil() && one.trade == trade.trade;
                                       });
        line.filter = isOne ? line.trade : QString();
        append(list, line);
    }
    TradeLine all = lineOf({std::string(), page_->total, Money{}});
    all.trade = tr("All");
    all.isTotal = true;
    append(list, all);
    return list;
}

QVariantList WeekView::rooms() const {
    QVariantList list;
    if (page_ == nullptr) {
        return list;
    }
    for (std::size_t k = 0; k < page_->rooms.size(); ++k) {
        const auto& room = page_->rooms[k];
        const auto chip = report::chipFor(room.swatch, k);
        RoomLine line;
        line.name = Said::text(room.name);
        line.filter = room.items > 0 && hasScope() ? line.name : QString();
        line.shortName = Said::text(room.shortName).toUpper();
        line.ground = QColor(Said::text(chip.ground));
        line.ink = QColor(Said::text(chip.text));
        line.done = shareOf(room.done);
        line.plan = room.planned ? shareOf(*room.planned) : -1;
        line.hasWork = room.items > 0;
        line.finished = line.hasWork && room.done >= model::Percent::whole();
        line.doneText = line.hasWork ? Said::done(room.done) : tr("none");
        line.planText = line.hasWork && room.planned
                            ? tr("plan %1").arg(Said::percent(*room.planned))
                            : QString();
        line.over = Said::change(room.over);
        append(list, line);
    }
    return list;
}

QVariantList WeekView::next() const {
    QVariantList list;
    if (page_ == nullptr) {
        return list;
    }
    for (const auto& event : page_->next) {
        PageLine line;
        line.day = event.on ? Said::day(*event.on, page_->today) : tr("no day yet");
        line.what = WeekWords::next(event);
        line.figure = event.amount ? Said::money(*event.amount) : QString();
        line.isPressing = event.isLate;
        line.why = event.isLate ? tr("late") : QString();
        append(list, line);
    }
    return list;
}

QVariantList WeekView::papers() const {
    QVariantList list;
    if (page_ == nullptr) {
        return list;
    }
    for (const auto& paper : page_->papers) {
        PageLine line;
        line.what = Said::told(paper.what);
        line.figure = paper.amount ? Said::cents(*paper.amount) : QString();
        line.day =
            paper.days && *paper.days > 0 ? tr("%n day(s)", nullptr, *paper.days) : QString();
        append(list, line);
    }
    return list;
}

QVariantList WeekView::monday() const {
    QVariantList list;
    if (page_ == nullptr) {
        return list;
    }
    for (const auto& todo : page_->monday) {
        PageLine line;
        line.what = Said::told(todo.what);
        line.why = Said::told(todo.because);
        line.page = nameOfPage(todo.page);
        line.pageKey = keyOfPage(todo.page);
        line.isPressing = todo.isPressing;
        line.isBarred = todo.isBarred;
        append(list, line);
    }
    return list;
}

QVariantList WeekView::answers() const {
    QVariantList list;
    if (page_ == nullptr) {
        return list;
    }
    for (const auto& answer : page_->answers) {
        PageLine line;
        line.what = Said::told(answer.question);
        line.why = WeekWords::answer(*page_, answer);
        append(list, line);
    }
    return list;
}

QVariantList WeekView::photos() const {
    QVariantList list;
    if (page_ == nullptr) {
        return list;
    }
    for (const auto& photo : page_->photos) {
        WeekPictureLine line;
        line.caption = Said::text(photo.caption);
        if (photo.takenOn) {
            line.caption += (line.caption.isEmpty() ? QString() : QStringLiteral(", ")) +
                            Said::day(*photo.takenOn, page_->today);
        }
        line.source =
            QStringLiteral("data:%1;base64,%2")
                .arg(Said::text(photo.mediaType),
                     QString::fromLatin1(QByteArray::fromStdString(photo.bytes).toBase64()));
        append(list, line);
    }
    return list;
}

QString WeekView::leftOutText() const {
    return page_ == nullptr ? QString() : WeekWords::leftOut(*page_);
}

QString WeekView::reminder() const {
    return page_ != nullptr && report::showsBarred(*page_)
               ? tr("Reminders only: rules change by place; ask your building office and a "
                    "licensed trade.")
               : QString();
}

void WeekView::keepReview() {
    Desk& desk = *Desk::here();
    const auto now = desk.now();
    if (page_ == nullptr || now == nullptr) {
        return;
    }
    for (const auto& kept : now->rows.reviews) {
        if (kept.reviewedOn == page_->review.reviewedOn) {
            desk.sayNotKept(
                tr("The review of %1 is kept already: a review stays as it was that day.")
                    .arg(Said::day(page_->today, page_->today)));
            return;
        }
    }
    model::Review review = page_->review;
    review.id = desk.book().newId<model::Kind::Review>(desk.instant());
    store::Action action("keep the review of " + page_->today.toString());
    action.add(review);
    desk.keep(action, tr("Kept as the review of %1").arg(Said::day(page_->today, page_->today)));
}

QString WeekView::printName() const {
    if (page_ == nullptr) {
        return {};
    }
    const QFileInfo book(QString::fromStdString(Desk::here()->bookPath()));
    return book.dir().filePath(
        QStringLiteral("%1 %2.pdf")
            .arg(Said::text(page_->job).replace(QLatin1Char('/'), QLatin1Char('-')),
                 Said::text(page_->today.toString())));
}

bool WeekView::print(const QString& where) {
    if (page_ == nullptr) {
        return false;
    }
    const QUrl address(where);
    const QString path = address.isLocalFile() ? address.toLocalFile() : where;
    if (!writeWeekSheet(*page_, path)) {
        Desk::here()->sayNotKept(
            tr("%1 cannot be written: check the folder and the disk.").arg(path));
        return false;
    }
    Desk::here()->sayPlainly(tr("The sheet is at %1").arg(path));
    return true;
}

}  // namespace ledgerboard::desk
