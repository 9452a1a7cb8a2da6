#include "desktop/client/money/closing_view.h"

#include "core/model/overflow.h"

#include "desktop/client/desk.h"
#include "desktop/client/said.h"
#include "desktop/client/week_rows.h"

namespace ledgerboard::desk {

using compute::ClosingPart;
using model::Money;

namespace {

struct PartWords {
    ClosingPart part;
    const char* name;
    const char* page;  // where it is dealt with
};

constexpr PartWords kParts[] = {
    {ClosingPart::Items, QT_TRANSLATE_NOOP("ledgerboard::desk::ClosingView", "Scope items"),
     "scope"},
    {ClosingPart::Decisions, QT_TRANSLATE_NOOP("ledgerboard::desk::ClosingView", "Open decisions"),
     "alternates"},
    {ClosingPart::Changes,
     QT_TRANSLATE_NOOP("ledgerboard::desk::ClosingView", "Changes neither signed nor refused"),
     "contracts"},
    {ClosingPart::Cautions, QT_TRANSLATE_NOOP("ledgerboard::desk::ClosingView", "Open cautions"),
     "scope"},
    {ClosingPart::Punch, QT_TRANSLATE_NOOP("ledgerboard::desk::ClosingView", "Punch items"),
     "punch"},
    {ClosingPart::Inspections, QT_TRANSLATE_NOOP("ledgerboard::desk::ClosingView", "Inspections"),
     "schedule"},
    {ClosingPart::Papers, QT_TRANSLATE_NOOP("ledgerboard::desk::ClosingView", "Missing papers"),
     "contracts"},
    {ClosingPart::Receipts,
     QT_TRANSLATE_NOOP("ledgerboard::desk::ClosingView", "Receipts without an amount"), "spend"},
    {ClosingPart::Retainage,
     QT_TRANSLATE_NOOP("ledgerboard::desk::ClosingView", "Held back or owed"), "contracts"},
    {ClosingPart::FinalDraw, QT_TRANSLATE_NOOP("ledgerboard::desk::ClosingView", "Lender's draws"),
     "draws"}};

const PartWords& wordsOf(ClosingPart part) {
    for (const auto& words : kParts) {
        if (words.part == part) {
            return words;
        }
    }
    return kParts[0];
}

// A missing bill or receipt is dealt with on Spend.
QString pageOf(const compute::StandsBetween& one) {
    const QString key = one.part == ClosingPart::Papers && one.recordKind == model::Kind::Spend
                            ? QStringLiteral("spend")
                            : QLatin1String(wordsOf(one.part).page);
    return Desk::here()->hasPage(key) ? key : QString();
}

QString nameOfPage(const QString& key) {
    for (const auto& divider : Desk::here()->dividers()) {
        if (divider.value<Divider>().key == key) {
            return divider.value<Divider>().name;
        }
    }
    return {};
}

QString stateOf(const std::optional<bool>& done) {
    return !done   ? ClosingView::tr("have you?")
           : *done ? ClosingView::tr("done")
                   : ClosingView::tr("not yet");
}

}  // namespace

ClosingView::ClosingView(QObject* parent) : QObject(parent) {
    connect(Desk::here(), &Desk::changed, this, &ClosingView::follow);
    connect(Desk::here(), &Desk::wordsChanged, this, &ClosingView::changed);
    follow();
}

void ClosingView::follow() {
    auto now = Desk::here()->now();
    if (now == now_) {
        return;
    }
    now_ = std::move(now);
    closing_ = {};
    if (now_ != nullptr) {
        auto closing = model::guarded([this]() -> model::Result<compute::Closing> {
            return compute::closingOf(now_->rows, now_->figures, now_->today);
        });
        if (closing.ok()) {
            closing_ = std::move(closing).value();
        } else {
            Desk::here()->sayNotKept(Said::trouble(closing.error()));
        }
    }
    emit changed();
}

QString ClosingView::title() const {
    if (now_ == nullptr) {
        return {};
    }
    const QString items =
        tr("%1 of %n item(s) finished.", nullptr, static_cast<int>(closing_.items))
            .arg(closing_.finished);
    return items + QLatin1Char(' ') +
           (closing_.stands.empty()
                ? tr("Nothing that the book knows of stands between this job and finished.")
                : tr("%n thing(s) stand between this job and finished.", nullptr,
                     static_cast<int>(closing_.stands.size())));
}

QVariantList ClosingView::stands() const {
    QVariantList groups;
    for (const auto& part : kParts) {
        ClosingGroup group;
        for (const auto& one : closing_.stands) {
            if (one.part != part.part) {
                continue;
            }
            PageLine line;
            line.what = Said::told(one.what);
            line.why = Said::told(one.why);
            line.figure = one.money && *one.money != Money{} ? Said::money(*one.money) : QString();
            line.pageKey = pageOf(one);
            if (line.pageKey == QLatin1String("scope") && one.recordKind == model::Kind::Item) {
                line.filter = QString(line.what).replace(QLatin1Char('/'), QLatin1Char(' '));
            }
            line.page = nameOfPage(line.pageKey);
            group.lines << QVariant::fromValue(line);
        }
        if (!group.lines.isEmpty()) {
            group.title = tr("%1: %2").arg(tr(part.name)).arg(group.lines.size());
            groups << QVariant::fromValue(group);
        }
    }
    return groups;
}

QVariantList ClosingView::releases() const {
    QVariantList groups;
    for (const auto& release : closing_.releases) {
        ClosingGroup group;
        group.title = tr("%1: held %2, left to pay %3")
                          .arg(Said::text(release.name), Said::money(release.held),
                               Said::money(release.leftToPay));
        for (std::size_t k = 0; k < release.steps.size(); ++k) {
            const auto& step = release.steps[k];
            PageLine line;
            line.what = Said::told(step.what);
            line.why = Said::told(step.says);
            if (step.amount && step.of) {
                line.why = tr("%1 of %2 %3")
                               .arg(Said::money(*step.amount), Said::money(*step.of), line.why)
                               .trimmed();
            }
            line.figure = stateOf(step.done);
            line.isPressing = release.next == k;
            group.lines << QVariant::fromValue(line);
        }
        if (release.leftToDo > Money{}) {
            group.foot = tr("Keep back %1 to %2, 1.5 to 2 times the %3 left to do.")
                             .arg(Said::money(release.holdLow), Said::money(release.holdHigh),
                                  Said::money(release.leftToDo));
        }
        groups << QVariant::fromValue(group);
    }
    return groups;
}

QVariantList ClosingView::papers() const {
    QVariantList lines;
    for (const auto& paper : closing_.papers) {
        PageLine line;
        line.what = Said::told(paper.what);
        line.why = Said::told(paper.says);
        line.figure = stateOf(paper.known);
        lines << QVariant::fromValue(line);
    }
    return lines;
}

}  // namespace ledgerboard::desk
