#include "desktop/client/punch_sheet.h"

#include <algorithm>

#include <QFile>
#include <QSaveFile>
#include <QUrl>

#include "core/intake/photos/preview.h"
#include "core/paper/forms_paper.h"
#include "core/paper/pdf.h"
#include "core/report/forms.h"
#include "core/store/photos.h"

#include "desktop/client/background.h"
#include "desktop/client/book_reader.h"
#include "desktop/client/desk.h"
#include "desktop/client/now/punch_pictures.h"
#include "desktop/client/said.h"

namespace ledgerboard::desk {

using compute::PunchRead;
using model::Money;
using model::Verdict;
namespace f = model::field;

namespace {

constexpr int kState = 4;
constexpr int kCost = 5;

std::vector<RecordColumn> punchColumns() {
    return {{PunchSheet::tr("What"), f::Punch::what, 0, false},
            {PunchSheet::tr("Space"), f::Punch::space, 116, false},
            {PunchSheet::tr("Crew"), f::Punch::crew, 124, false},
            {PunchSheet::tr("By"), f::Punch::dueOn, 110, false},
            {PunchSheet::tr("Stands"), 0, 128, false},
            {PunchSheet::tr("Cost"), f::Punch::cost, 60, true}};
}

}  // namespace

PunchSheet::PunchSheet(QObject* parent) : RecordSheet(model::Kind::Punch, &punchColumns, parent) {
    setHeadingColumns(1, kCost);
    connect(this, &Sheet::detailChanged, this, &PunchSheet::showPictures);
    begin();
}

QString PunchSheet::groupText() const {
    return byCrew_ ? tr("By crew") : tr("By space");
}

void PunchSheet::nextGroup() {
    byCrew_ = !byCrew_;
    reread();
    emit asked();
}

void PunchSheet::turnOpen() {
    openOnly_ = !openOnly_;
    reread();
    emit asked();
}

std::vector<RecordLine> PunchSheet::linesOf() {
    list_ = compute::punchListOf(now()->rows, now()->today);
    groups_.clear();
    std::vector<RecordLine> lines;
    for (const PunchRead& read : list_.all) {
        if (openOnly_ && !read.isOpen) {
            continue;
        }
        RecordLine line;
        line.id = now()->rows.punches[read.punch].id.raw();
        const std::string& group = byCrew_ ? read.crew : read.space;
        const auto at = std::find(groups_.begin(), groups_.end(), group);
        line.group = static_cast<int>(at - groups_.begin());
        if (at == groups_.end()) {
            groups_.push_back(group);
        }
        line.counts = read.isOpen ? read.cost.value_or(Money{}) : Money{};
        line.cells = fieldCells(line.id);
        line.cells[kState] = stateText(read);
        line.isDim = !read.isOpen;
        line.strongCell = read.isLate ? kState : -1;
        lines.push_back(std::move(line));
    }
    std::stable_sort(lines.begin(), lines.end(),
                     [](const auto& a, const auto& b) { return a.group < b.group; });
    return lines;
}

QString PunchSheet::groupName(int group) const {
    const auto at = static_cast<std::size_t>(group);
    if (at < groups_.size() && !groups_[at].empty()) {
        return Said::text(groups_[at]);
    }
    return byCrew_ ? tr("Nobody yet") : tr("No space");
}

QString PunchSheet::stateText(const PunchRead& read) const {
    switch (read.lastSaid) {
        case Verdict::Accepted:
            return tr("accepted");
        case Verdict::SaidFixed:
            return tr("said fixed");
        case Verdict::NotRight:
            return read.isLate ? tr("not right, late") : tr("not right");
        case Verdict::Unset:
            break;
    }
    return read.isLate ? tr("open, late") : tr("open");
}

const PunchRead* PunchSheet::readOf(const model::RawId& id) const {
    for (const PunchRead& read : list_.all) {
        if (now() != nullptr && now()->rows.punches[read.punch].id.raw() == id) {
            return &read;
        }
    }
    return nullptr;
}

QString PunchSheet::sumText() const {
    if (now() == nullptr) {
        return {};
    }
    QString text = tr("%n to put right", nullptr, static_cast<int>(list_.open));
    if (list_.late > 0) {
        text += QStringLiteral(", ") + tr("%n late", nullptr, static_cast<int>(list_.late));
    }
    text += QStringLiteral("; ") + tr("%1 of cost").arg(Said::money(list_.cost));
    if (list_.withoutCost > 0) {
        text += QStringLiteral(", ") +
                tr("%n without a cost", nullptr, static_cast<int>(list_.withoutCost));
    }
    for (const auto& back : list_.chargeBacks) {
        text += QStringLiteral("; ") +
                tr("%1 charged back to %2").arg(Said::money(back.amount), Said::text(back.name));
    }
    if (!list_.isReadyToWalk()) {
        text += QStringLiteral("; ") + tr("too many to walk it yet");
    }
    return text + QLatin1Char('.');
}

QString PunchSheet::itemText() const {
    const PunchRead* read = onItem() ? readOf(idInHand()) : nullptr;
    return read == nullptr ? QString() : Said::text(now()->rows.punches[read->punch].what);
}

QString PunchSheet::crewText() const {
    const PunchRead* read = onItem() ? readOf(idInHand()) : nullptr;
    return read == nullptr ? QString() : Said::text(read->crew);
}

QString PunchSheet::spaceText() const {
    const PunchRead* read = onItem() ? readOf(idInHand()) : nullptr;
    return read == nullptr ? QString() : Said::text(read->space);
}

QStringList PunchSheet::detailsOf(const model::RawId& id) const {
    const PunchRead* read = readOf(id);
    if (read == nullptr) {
        return {};
    }
    const model::Punch& punch = now()->rows.punches[read->punch];
    QStringList list;
    if (punch.foundOn) {
        list << tr("Found %1.").arg(Said::day(*punch.foundOn, now()->today));
    }
    if (read->chargeBack) {
        list << tr("%1 is charged back to %2.")
                    .arg(Said::money(*read->chargeBack), Said::text(read->chargeBackTo));
    }
    for (const model::Look& look : now()->rows.looks) {
        if (look.punch != punch.id) {
            continue;
        }
        const QString day = look.lookedOn ? Said::day(*look.lookedOn, now()->today) : tr("No day");
        const QString said = look.said == Verdict::Accepted    ? tr("accepted")
                             : look.said == Verdict::SaidFixed ? tr("said fixed")
                                                               : tr("not right");
        list << (look.note.empty() ? tr("%1: %2.").arg(day, said)
                                   : tr("%1: %2, %3").arg(day, said, Said::text(look.note)));
    }
    return list;
}

bool PunchSheet::look(Verdict said, const QString& note) {
    Desk& desk = *Desk::here();
    const PunchRead* read = onItem() ? readOf(idInHand()) : nullptr;
    if (read == nullptr) {
        return false;
    }
    if (said == Verdict::Accepted && !read->isOpen) {
        desk.sayNotKept(tr("That is accepted already: Ctrl+Z takes it back, or send it back."));
        return false;
    }
    const model::Punch& punch = now()->rows.punches[read->punch];
    model::Look look;
    look.id = desk.book().newId<model::Kind::Look>(desk.instant());
    look.job = now()->rows.job.id;
    look.punch = punch.id;
    look.lookedOn = now()->today;
    look.by = desk.book().meAsKept();
    look.said = said;
    look.note = note.trimmed().toStdString();
    const bool isAccepted = said == Verdict::Accepted;
    store::Action action((isAccepted ? "accept " : "send back ") + punch.what);
    action.add(look);
    return desk.keep(
        action,
        (isAccepted ? tr("Accepted: %1") : tr("Sent back: %1")).arg(Said::text(punch.what)));
}

bool PunchSheet::accept() {
    return look(Verdict::Accepted, {});
}

bool PunchSheet::sendBack(const QString& note) {
    if (note.trimmed().isEmpty()) {
        Desk::here()->sayNotKept(tr("Say what is not right yet: the crew reads it."));
        return false;
    }
    return look(Verdict::NotRight, note);
}

QString PunchSheet::printName() const {
    const QString crew = byCrew_ ? crewText() : QString();
    return (crew.isEmpty() ? tr("punch list") : tr("punch list, %1").arg(crew)) +
           QStringLiteral(".pdf");
}

bool PunchSheet::print(const QUrl& file) {
    Desk& desk = *Desk::here();
    if (now() == nullptr) {
        return false;
    }
    const PunchRead* read = byCrew_ && onItem() ? readOf(idInHand()) : nullptr;
    std::vector<report::PunchSheet> sheets;
    for (const auto& one : list_.crews) {
        const bool isWanted = read == nullptr || now()->rows.punches[read->punch].crew == one.crew;
        if (isWanted) {
            sheets.push_back(
                one.crew.isNil()
                    ? report::punchSheetOfNobody(now()->rows, list_, now()->today)
                    : report::punchSheetOf(now()->rows, list_, one.crew, now()->today));
        }
    }
    auto bytes = paper::pdfBytes(paper::punchPaper(now()->rows.job, sheets, now()->today),
                                 paper::Size::Letter);
    if (!bytes.ok()) {
        desk.sayNotKept(Said::trouble(bytes.error()));
        return false;
    }
    const QString path = file.isLocalFile() ? file.toLocalFile() : file.toString();
    QSaveFile out(path);
    if (!out.open(QIODevice::WriteOnly) ||
        out.write(QByteArray::fromStdString(bytes.value())) < 0 || !out.commit()) {
        desk.sayNotKept(tr("%1 can't be written: %2.").arg(path, out.errorString()));
        return false;
    }
    desk.sayPlainly(tr("Written: %1").arg(path));
    return true;
}

void PunchSheet::showPictures() {
    const model::RawId id = onItem() ? idInHand() : model::RawId();
    if (id == pictured_ && picturedOf_ == now()) {
        return;
    }
    pictured_ = id;
    picturedOf_ = now();
    const PunchRead* read = id.isNil() ? nullptr : readOf(id);
    if (read == nullptr) {
        before_ = after_ = {};
        emit picturesChanged();
        return;
    }
    inBackground(
        Desk::here()->pool(), this,
        [now = now(), punch = read->punch, path = Desk::here()->bookPath()] {
            const auto pictures = punchPicturesOf(now->rows, now->rows.punches[punch]);
            const store::Photos photos(path);
            std::pair<std::string, std::string> out;
            for (const bool after : {false, true}) {
                const model::Photo* photo = after ? pictures.after : pictures.before;
                const auto bytes = photo == nullptr ? model::Result<std::string>(std::string())
                                                    : photos.read(photo->digest);
                auto preview = bytes.ok() && !bytes.value().empty()
                                   ? intake::previewOf(bytes.value())
                                   : model::Result<std::string>(std::string());
                (after ? out.second : out.first) =
                    preview.ok() ? std::move(preview).value() : std::string();
            }
            return out;
        },
        [this, id, now = now(), punch = read->punch](std::pair<std::string, std::string> bytes) {
            if (id != pictured_ || now != picturedOf_) {
                return;
            }
            const auto pictures = punchPicturesOf(now->rows, now->rows.punches[punch]);
            const auto shown = [&](const std::string& jpeg, const model::Photo* photo,
                                   const QString& what) {
                Shown out;
                if (jpeg.empty() || photo == nullptr) {
                    return out;
                }
                out.source = QStringLiteral("data:image/jpeg;base64,") +
                             QString::fromLatin1(QByteArray::fromStdString(jpeg).toBase64());
                const QString space = Said::text(spaceName(now->rows, photo->space));
                out.text = pictures.ofSpace ? tr("%1, %2").arg(space, what) : what;
                if (photo->takenAt) {
                    out.text +=
                        QStringLiteral(", ") +
                        Said::day(dayAt(*photo->takenAt, now->rows.job.timeZone), now->today);
                }
                return out;
            };
            before_ = shown(bytes.first, pictures.before, tr("before"));
            after_ = shown(bytes.second, pictures.after, tr("after"));
            emit picturesChanged();
        });
}

}  // namespace ledgerboard::desk
