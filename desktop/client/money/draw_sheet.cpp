#include "desktop/client/money/draw_sheet.h"

#include <algorithm>

#include "core/intake/photos/preview.h"
#include "core/model/value.h"
#include "core/store/photos.h"

#include "desktop/client/desk.h"
#include "desktop/client/money/record_pen.h"
#include "desktop/client/said.h"

namespace ledgerboard::desk {

using model::Money;
namespace f = model::field;

namespace {

constexpr int kSeen = 3;
constexpr int kHeld = 4;
constexpr int kBefore = 5;
constexpr int kDraw = 6;
constexpr int kWhyNot = 7;

std::vector<RecordColumn> lenderColumns() {
    return {{LenderSheet::tr("Line"), f::LenderLine::name, 0, false},
            {LenderSheet::tr("Amount"), f::LenderLine::amount, 84, true},
            {LenderSheet::tr("Lent, %"), f::LenderLine::shareLent, 92, true},
            {LenderSheet::tr("Seen"), 0, 68, true},
            {LenderSheet::tr("Held back"), 0, 84, true},
            {LenderSheet::tr("Before"), 0, 80, true},
            {LenderSheet::tr("This draw"), 0, 88, true},
            {LenderSheet::tr("Why not"), 0, 256, false}};
}

std::vector<RecordColumn> drawColumns() {
    return {{DrawSheet::tr("Draw"), f::Draw::number, 64, false},
            {DrawSheet::tr("Asked"), f::Draw::askedOn, 106, false},
            {DrawSheet::tr("Visited"), f::Draw::inspectedOn, 106, false},
            {DrawSheet::tr("Funded"), f::Draw::fundedOn, 106, false},
            {DrawSheet::tr("Received"), f::Draw::amount, 88, true},
            {DrawSheet::tr("Held back"), f::Draw::holdback, 88, true},
            {DrawSheet::tr("Fee"), f::Draw::fee, 64, true},
            {DrawSheet::tr("Note"), f::Draw::note, 0, false}};
}

std::vector<RecordColumn> visitColumns() {
    return {{VisitSheet::tr("Line"), 0, 260, false},
            {VisitSheet::tr("Amount"), 0, 96, true},
            {VisitSheet::tr("Asked, %"), f::DrawLine::asked, 96, true},
            {VisitSheet::tr("Allowed, %"), f::DrawLine::allowed, 106, true},
            {VisitSheet::tr("Why refused"), f::DrawLine::whyRefused, 0, false}};
}

std::vector<RecordColumn> photoColumns() {
    return {{PhotoSheet::tr("For the lender"), f::Photo::forLender, 110, false},
            {PhotoSheet::tr("Shows"), 0, 190, false},
            {PhotoSheet::tr("Caption"), f::Photo::caption, 0, false},
            {PhotoSheet::tr("Taken"), 0, 100, false}};
}

constexpr int kLineAmount = 1;
constexpr int kAsked = 2;
constexpr int kAllowed = 3;

constexpr int kOpen = 0;
constexpr int kFunded = 1;

constexpr int kChosen = 0;
constexpr int kOthers = 1;

}  // namespace

LenderSheet::LenderSheet(QObject* parent)
    : RecordSheet(model::Kind::LenderLine, &lenderColumns, parent) {
    begin();
}

std::vector<RecordLine> LenderSheet::linesOf() {
    draws_ = compute::drawsNowOf(now()->rows, now()->figures);
    std::vector<RecordLine> lines;
    for (const auto& figures : draws_.lines) {
        if (!figures.line) {
            continue;  // the whole loan as one: the page says so
        }
        RecordLine line;
        line.id = now()->rows.lender_lines[*figures.line].id.raw();
        line.cells = fieldCells(line.id);
        line.cells[kSeen] = Said::percent(figures.inPlace.allowed);
        line.cells[kHeld] = Said::money(figures.heldBack);
        line.cells[kBefore] = Said::money(figures.inPlace.paidBefore);
        line.cells[kDraw] = Said::money(figures.draw);
        line.cells[kWhyNot] = Said::told(figures.whyNot);
        line.strongCell = figures.draw > Money{} ? kDraw : -1;
        lines.push_back(std::move(line));
    }
    return lines;
}

QStringList LenderSheet::detailsOf(const model::RawId& id) const {
    for (const auto& figures : draws_.lines) {
        if (!figures.line || now()->rows.lender_lines[*figures.line].id.raw() != id) {
            continue;
        }
        QStringList list;
        QStringList items;
        for (const auto item : figures.items) {
            items << tr("%1 %2").arg(Said::text(now()->figures.scope.lines[item].name),
                                     Said::percent(now()->figures.lines[item].seen));
        }
        list << (items.isEmpty() ? tr("No item that counts points at this line.")
                                 : tr("Seen: %1.").arg(items.join(QStringLiteral("; "))));
        if (figures.askedOpen > Money{}) {
            list << tr("Asked for and not yet funded: %1.").arg(Said::cents(figures.askedOpen));
        }
        if (figures.refused) {
            const auto& before = *figures.refused;
            list << tr("Refused before: %1 asked, %2 allowed%3.")
                        .arg(Said::percent(before.asked), Said::percent(before.allowed),
                             before.why.empty() ? QString()
                                                : QStringLiteral(": ") + Said::text(before.why));
        }
        return list;
    }
    return {};
}

DrawSheet::DrawSheet(QObject* parent) : RecordSheet(model::Kind::Draw, &drawColumns, parent) {
    setHeadingColumns(2, -1);
    begin();
}

QString DrawSheet::groupName(int group) const {
    return group == kOpen ? tr("Asked for") : tr("Funded");
}

QString DrawSheet::itemText() const {
    return onItem() ? tr("Draw %1").arg(typedText(now(), f::Draw::number, valueOf(f::Draw::number)))
                    : QString();
}

namespace {

// Those not funded yet first, then the latest.
std::vector<const model::Draw*> drawsInOrder(const model::JobRows& rows) {
    std::vector<const model::Draw*> draws;
    for (const auto& draw : rows.draws) {
        draws.push_back(&draw);
    }
    std::stable_sort(draws.begin(), draws.end(), [](const auto* a, const auto* b) {
        const bool first = compute::isOpen(*a);
        const bool second = compute::isOpen(*b);
        return first != second ? first : b->number < a->number;
    });
    return draws;
}

}  // namespace

std::vector<RecordLine> DrawSheet::linesOf() {
    std::vector<RecordLine> lines;
    for (const auto* draw : drawsInOrder(now()->rows)) {
        RecordLine line;
        line.id = draw->id.raw();
        line.group = compute::isOpen(*draw) ? kOpen : kFunded;
        line.cells = fieldCells(line.id);
        lines.push_back(std::move(line));
    }
    return lines;
}

QStringList DrawSheet::detailsOf(const model::RawId& id) const {
    QStringList parts;
    for (const auto& line : now()->rows.draw_lines) {
        if (line.draw.raw() != id) {
            continue;
        }
        QString text = tr("%1 %2 asked")
                           .arg(Said::text(namesIn(now()).nameOf(line.lenderLine.raw())),
                                line.asked ? Said::percent(*line.asked) : QString());
        if (line.allowed && line.allowed != line.asked) {
            text += tr(", %1 allowed").arg(Said::percent(*line.allowed));
        }
        if (!line.whyRefused.empty()) {
            text += QStringLiteral(" (") + Said::text(line.whyRefused) + QLatin1Char(')');
        }
        parts << text;
    }
    return parts.isEmpty() ? QStringList{tr("It does not say its lines.")}
                           : QStringList{parts.join(QStringLiteral("; ")) + QLatin1Char('.')};
}

VisitSheet::VisitSheet(QObject* parent)
    : RecordSheet(model::Kind::DrawLine, &visitColumns, parent) {
    setHeadingColumns(kAsked, -1);
    begin();
}

QString VisitSheet::groupName(int group) const {
    return draws_.value(group);
}

QString VisitSheet::nameOf(const model::Draw& draw) const {
    const QString name =
        tr("Draw %1").arg(typedText(now(), f::Draw::number, model::valueOf(draw.number)));
    if (draw.fundedOn) {
        return tr("%1, funded %2").arg(name, Said::day(*draw.fundedOn, now()->today));
    }
    return draw.askedOn ? tr("%1, asked %2").arg(name, Said::day(*draw.askedOn, now()->today))
                        : name;
}

std::vector<RecordLine> VisitSheet::linesOf() {
    draws_.clear();
    std::vector<RecordLine> lines;
    for (const auto* draw : drawsInOrder(now()->rows)) {
        draws_ << nameOf(*draw);
        for (const auto& row : now()->rows.draw_lines) {
            if (row.draw != draw->id) {
                continue;
            }
            RecordLine line;
            line.id = row.id.raw();
            line.group = static_cast<int>(draws_.size()) - 1;
            line.cells = fieldCells(line.id);
            for (const auto& lender : now()->rows.lender_lines) {
                if (lender.id == row.lenderLine) {
                    line.cells[0] = Said::text(lender.name);
                    line.cells[kLineAmount] =
                        lender.amount ? Said::money(*lender.amount) : QString();
                }
            }
            if (!row.allowed) {
                line.cells[kAllowed] = compute::isOpen(*draw) ? tr("to come") : tr("not said");
            }
            line.strongCell = row.allowed && row.asked && *row.allowed < *row.asked ? kAllowed : -1;
            lines.push_back(std::move(line));
        }
    }
    return lines;
}

const model::DrawLine* VisitSheet::lineOf(const model::RawId& id) const {
    for (const auto& line : now()->rows.draw_lines) {
        if (line.id.raw() == id) {
            return &line;
        }
    }
    return nullptr;
}

QString VisitSheet::itemText() const {
    const auto* line = onItem() ? lineOf(idInHand()) : nullptr;
    return line == nullptr ? QString() : Said::text(namesIn(now()).nameOf(line->lenderLine.raw()));
}

QStringList VisitSheet::detailsOf(const model::RawId& id) const {
    const auto* line = lineOf(id);
    if (line == nullptr) {
        return {};
    }
    if (!line->allowed) {
        return {
            tr("What the inspector allowed is not entered yet: a percent of the line, in "
               "“Allowed”.")};
    }
    if (line->asked && *line->allowed < *line->asked) {
        return {tr("%1 was asked and %2 allowed: the rest can be asked for with another draw, once "
                   "what is missing is put right.")
                    .arg(Said::percent(*line->asked), Said::percent(*line->allowed))};
    }
    return {tr("Allowed as it was asked.")};
}

std::vector<const model::DrawLine*> VisitSheet::unsaid() const {
    std::vector<const model::DrawLine*> found;
    const auto* here = onItem() ? lineOf(idInHand()) : nullptr;
    if (here == nullptr) {
        return found;
    }
    for (const auto& line : now()->rows.draw_lines) {
        if (line.draw == here->draw && line.asked && !line.allowed) {
            found.push_back(&line);
        }
    }
    return found;
}

void VisitSheet::allowAsAsked() {
    const auto lines = unsaid();
    if (lines.empty()) {
        Desk::here()->sayPlainly(tr("Each line of this draw says what was allowed."));
        return;
    }
    store::Action action("allowed as asked");
    for (const auto* line : lines) {
        action.set(line->id.raw(), f::DrawLine::allowed, model::valueOf(line->asked));
    }
    Desk::here()->keep(action,
                       tr("%n line(s) allowed as asked", nullptr, static_cast<int>(lines.size())));
}

PhotoSheet::PhotoSheet(QObject* parent) : RecordSheet(model::Kind::Photo, &photoColumns, parent) {
    setHeadingColumns(2, -1);
    begin();
}

QString PhotoSheet::groupName(int group) const {
    return group == kChosen ? tr("For the lender") : tr("Not for the lender");
}

const model::Photo* PhotoSheet::photoOf(const model::RawId& id) const {
    for (const auto& photo : now()->rows.photos) {
        if (photo.id.raw() == id) {
            return &photo;
        }
    }
    return nullptr;
}

std::vector<RecordLine> PhotoSheet::linesOf() {
    constexpr int kShows = 1;
    constexpr int kTaken = 3;
    const auto& finder = namesIn(now());
    std::vector<const model::Photo*> photos;
    for (const auto& photo : now()->rows.photos) {
        if (photo.purpose == model::Purpose::Unset || photo.purpose == model::Purpose::Site) {
            photos.push_back(&photo);
        }
    }
    std::stable_sort(photos.begin(), photos.end(), [](const auto* a, const auto* b) {
        return a->forLender != b->forLender ? a->forLender : b->takenAt < a->takenAt;
    });
    std::vector<RecordLine> lines;
    for (const auto* photo : photos) {
        RecordLine line;
        line.id = photo->id.raw();
        line.group = photo->forLender ? kChosen : kOthers;
        line.cells = fieldCells(line.id);
        const auto what = photo->item.isNil() ? photo->space.raw() : photo->item.raw();
        line.cells[kShows] = what.isNil() ? QString() : Said::text(finder.nameOf(what));
        line.cells[kTaken] =
            photo->takenAt
                ? Said::day(dayAt(*photo->takenAt, now()->rows.job.timeZone), now()->today)
                : QString();
        lines.push_back(std::move(line));
    }
    return lines;
}

QString PhotoSheet::itemText() const {
    const auto* photo = onItem() ? photoOf(idInHand()) : nullptr;
    if (photo == nullptr) {
        return {};
    }
    const auto what = photo->item.isNil() ? photo->space.raw() : photo->item.raw();
    return what.isNil() ? tr("Picture") : Said::text(namesIn(now()).nameOf(what));
}

QStringList PhotoSheet::detailsOf(const model::RawId& id) const {
    const auto* photo = photoOf(id);
    QStringList list;
    if (photo != nullptr) {
        list << Said::text(photo->caption);
        list << (photo->forLender ? tr("It goes with the request, where a line is asked for that "
                                       "it shows.")
                                  : tr("Only the owner sees it; Ctrl+S lets it go with the "
                                       "request."));
    }
    list.removeAll(QString());
    return list;
}

void PhotoSheet::turnChosen() {
    const auto* photo = onItem() ? photoOf(idInHand()) : nullptr;
    if (photo != nullptr) {
        write(f::Photo::forLender, model::valueOf(!photo->forLender),
              photo->forLender ? tr("No longer for the lender: %1").arg(itemText())
                               : tr("For the lender: %1").arg(itemText()));
    }
}

QString PhotoSheet::picture() const {
    const auto* photo = onItem() ? photoOf(idInHand()) : nullptr;
    if (photo == nullptr) {
        return {};
    }
    const auto bytes = store::Photos(Desk::here()->bookPath()).read(photo->digest);
    if (!bytes.ok()) {
        return {};
    }
    const auto preview = intake::previewOf(bytes.value());
    return preview.ok() ? QStringLiteral("data:image/jpeg;base64,%1")
                              .arg(QString::fromLatin1(
                                  QByteArray::fromStdString(preview.value()).toBase64()))
                        : QString();
}

}  // namespace ledgerboard::desk
