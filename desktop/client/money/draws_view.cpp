#include "desktop/client/money/draws_view.h"

#include <algorithm>

#include <QDir>
#include <QFileInfo>
#include <QSaveFile>
#include <QUrl>

#include "core/compute/draw_ask.h"
#include "core/model/overflow.h"
#include "core/paper/draw_paper.h"
#include "core/paper/pdf.h"
#include "core/report/draw_request.h"
#include "core/report/money_text.h"

#include "desktop/client/background.h"
#include "desktop/client/desk.h"
#include "desktop/client/now/what_if.h"
#include "desktop/client/said.h"
#include "desktop/client/week_pictures.h"
#include "desktop/client/week_rows.h"

namespace ledgerboard::desk {

using model::Kind;
using model::Money;
using model::Result;

namespace {

HeadLine lineOf(const QString& name, const QString& figure, const QString& rest) {
    HeadLine line;
    line.name = name;
    line.figure = figure;
    line.rest = rest;
    return line;
}

}  // namespace

DrawsView::DrawsView(QObject* parent) : QObject(parent) {
    connect(Desk::here(), &Desk::changed, this, &DrawsView::follow);
    connect(Desk::here(), &Desk::wordsChanged, this, &DrawsView::changed);
    follow();
}

void DrawsView::follow() {
    Desk& desk = *Desk::here();
    auto now = desk.now();
    if (now == now_) {
        return;
    }
    now_ = std::move(now);
    draws_ = {};
    ahead_.clear();
    if (now_ != nullptr) {
        auto draws = model::guarded([this]() -> Result<compute::DrawsNow> {
            return compute::drawsNowOf(now_->rows, now_->figures);
        });
        if (draws.ok()) {
            draws_ = std::move(draws).value();
        } else {
            desk.sayNotKept(Said::trouble(draws.error()));
        }
        inBackground(
            desk.pool(), this,
            [now = now_] {
                return model::guarded(
                    [&] { return dealNowOf(now->rows, now->figures, now->today); });
            },
            [this, now = now_](Result<DealNow> deal) {
                if (now == now_ && deal.ok()) {
                    ahead_ = deal.value().plan.drawsAhead;
                    emit changed();
                }
            });
    }
    emit changed();
}

QVariantList DrawsView::figures() const {
    if (now_ == nullptr) {
        return {};
    }
    const Money net = draws_.total - std::min(draws_.fee, draws_.total);
    return {QVariant::fromValue(
                lineOf(tr("Can be asked for now"), Said::money(draws_.total),
                       draws_.isFinal ? tr("the final draw") : tr("by what you have seen"))),
            QVariant::fromValue(lineOf(tr("Would arrive"), Said::money(net),
                                       tr("less the fee of %1").arg(Said::money(draws_.fee)))),
            QVariant::fromValue(
                lineOf(tr("Held back"), Said::money(draws_.heldBack), tr("this draw with it"))),
            QVariant::fromValue(lineOf(tr("Paid or asked before"), Said::money(draws_.paidBefore),
                                       tr("before fees"))),
            QVariant::fromValue(
                lineOf(tr("Limit"), draws_.limit ? Said::money(*draws_.limit) : tr("none"),
                       draws_.cutByLimit > Money{}
                           ? tr("cuts %1 of this draw").arg(Said::money(draws_.cutByLimit))
                           : tr("of all draws")))};
}

QStringList DrawsView::notes() const {
    QStringList list;
    if (now_ == nullptr || !hasLoan()) {
        return list;
    }
    if (draws_.total == Money{}) {
        list << tr("Nothing can be asked for now.");
    } else if (draws_.total <= draws_.fee) {
        list << tr("The fee eats it: wait.");
    }
    for (const auto& draw : ahead_) {
        if (draw.askOn) {
            list << tr("By the plan, ask next on %1 for %2; the money comes %3.")
                        .arg(Said::day(*draw.askOn, now_->today), Said::money(draw.total),
                             Said::day(draw.moneyOn, now_->today));
            break;
        }
    }
    if (!draws_.byLines) {
        list << tr(
            "There are no lender lines, so the whole loan stands as one; a draw is asked "
            "for by the lender's lines.");
    } else if (draws_.itemsWithoutLine > 0) {
        list << tr("%n item(s) point at no lender line: nothing is lent on them.", nullptr,
                   static_cast<int>(draws_.itemsWithoutLine));
    }
    list << tr(
        "Seen is what you marked yourself. A visit often allows 5 to 15 points less "
        "(common practice, no source).");
    return list;
}

bool DrawsView::ask() {
    Desk& desk = *Desk::here();
    if (now_ == nullptr || !desk.hasBook()) {
        return false;
    }
    if (!draws_.byLines) {
        desk.sayNotKept(
            tr("A draw is asked for by the lender's lines, and there are none: enter "
               "them first."));
        return false;
    }
    if (draws_.total == Money{}) {
        desk.sayNotKept(tr("Nothing can be asked for now; the lines say why."));
        return false;
    }
    auto asked = compute::drawAskOf(now_->rows, draws_, now_->today);
    asked.draw.id = desk.book().newId<Kind::Draw>(desk.instant());
    store::Action action("ask for draw " + std::to_string(*asked.draw.number), desk.position());
    action.add(asked.draw);
    for (auto& line : asked.lines) {
        line.id = desk.book().newId<Kind::DrawLine>(desk.instant());
        line.draw = asked.draw.id;
        action.add(line);
    }
    return desk.keep(action, tr("Draw %1 asked for: %2 over %n line(s)", nullptr,
                                static_cast<int>(asked.lines.size()))
                                 .arg(*asked.draw.number)
                                 .arg(Said::money(draws_.total)));
}

QString DrawsView::printName() const {
    const Desk& desk = *Desk::here();
    const QFileInfo book(QString::fromStdString(desk.bookPath()));
    return book.dir().filePath(tr("draw request %1.pdf").arg(desk.todayText()));
}

bool DrawsView::print(const QString& where) {
    Desk& desk = *Desk::here();
    if (now_ == nullptr) {
        return false;
    }
    const QUrl address(where);
    const QString path = address.isLocalFile() ? address.toLocalFile() : where;
    auto pdf = model::guarded([&]() -> Result<std::string> {
        const auto request = report::drawRequestOf(now_->rows, now_->today);
        if (request.lines.empty() || request.now.total == Money{}) {
            return Said::refusal(tr("There is nothing to ask the lender for now."));
        }
        return paper::pdfBytes(
            paper::drawPaper(now_->rows.job, request,
                             paper::requestPictures(
                                 request, pictureSource(desk.bookPath(), now_->rows.job.timeZone))),
            paper::Size::Letter);
    });
    if (!pdf.ok()) {
        desk.sayNotKept(Said::trouble(pdf.error()));
        return false;
    }
    QSaveFile file(path);
    if (!file.open(QIODevice::WriteOnly) ||
        file.write(pdf.value().data(), static_cast<qint64>(pdf.value().size())) < 0 ||
        !file.commit()) {
        desk.sayNotKept(tr("%1 could not be written: %2").arg(path, file.errorString()));
        return false;
    }
    desk.sayPlainly(tr("The request is in %1").arg(path));
    return true;
}

}  // namespace ledgerboard::desk
