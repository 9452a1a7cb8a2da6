#include "mobile/punch_items.h"

#include <array>

#include "core/qml/id_text.h"
#include "core/store/photos.h"

#include "mobile/job_book.h"
#include "mobile/picture_keeper.h"
#include "mobile/said.h"

namespace ledgerboard::phone {

using qml::idFrom;
using qml::idText;

namespace {

// Calendar days ahead. Three to seven are usual (common practice, no source).
constexpr std::array<int, 4> kDueInDays = {1, 3, 7, 14};

QString lookedText(const compute::PunchRead& read) {
    const QString day = read.lastLookOn ? Said::day(*read.lastLookOn) : QString();
    switch (read.lastSaid) {
        case model::Verdict::SaidFixed:
            return PunchItems::tr("Said fixed on %1, not looked at yet").arg(day);
        case model::Verdict::NotRight:
            return PunchItems::tr("Looked at on %1: not right").arg(day);
        case model::Verdict::Accepted:
        case model::Verdict::Unset:
            break;
    }
    return {};
}

QList<QUrl> photosOf(const JobNow& now, const store::Photos& files,
                     model::Id<model::Kind::Punch> punch) {
    QList<QUrl> urls;
    for (const auto& photo : now.rows.photos) {
        const QUrl url = photo.punch == punch ? pictureUrl(files, photo) : QUrl();
        if (!url.isEmpty()) {
            urls << url;
        }
    }
    return urls;
}

}  // namespace

QStringList PunchItems::crews() const {
    return crewNames_;
}

QStringList PunchItems::dueWords() const {
    QStringList words;
    if (const JobNow* now = JobBook::here()->now()) {
        for (const int days : kDueInDays) {
            words << Said::near(now->today + days, now->today);
        }
    }
    return words;
}

void PunchItems::fill() {
    JobBook& book = *JobBook::here();
    QList<PunchRow> rows;
    crewIds_.clear();
    crewNames_.clear();
    if (const JobNow* now = book.now()) {
        const store::Photos files(book.book().path());
        for (const auto& read : now->punch.all) {
            const auto& punch = now->rows.punches[read.punch];
            if (!read.isOpen || idText(punch.space) != spaceId()) {
                continue;
            }
            rows << PunchRow{
                idText(punch.id),
                punch.what.empty() ? tr("nothing is written down of it") : Said::text(punch.what),
                Said::whoAndWhen(read, punch, now->today), lookedText(read),
                photosOf(*now, files, punch.id)};
        }
        // Twice over the crews: those with work here, then the others.
        for (const bool here : {true, false}) {
            for (const auto& crew : now->rows.crews) {
                bool worksHere = false;
                for (const auto& item : now->rows.items) {
                    worksHere =
                        worksHere || (item.crew == crew.id && idText(item.space) == spaceId());
                }
                if (worksHere == here) {
                    crewIds_ << idText(crew.id);
                    crewNames_ << Said::text(crew.name);
                }
            }
        }
    }
    show(rows);
    emit crewsChanged();
}

bool PunchItems::keepItem(const QString& what, int crew, int due, const QString& picture) {
    JobBook& book = *JobBook::here();
    if (book.now() == nullptr) {
        return false;
    }
    if (what.trimmed().isEmpty() && picture.isEmpty()) {
        book.sayNotKept(tr("Say in a few words what is to be put right, or show it."));
        return false;
    }
    model::Punch punch;
    punch.id = book.book().newId<model::Kind::Punch>(book.instant());
    punch.job = book.now()->rows.job.id;
    punch.space = idFrom<model::Kind::Space>(spaceId());
    punch.what = (what.trimmed().isEmpty() ? tr("see the photo") : what.trimmed()).toStdString();
    punch.foundOn = book.now()->today;
    if (crew >= 0 && crew < crewIds_.size()) {
        punch.crew = idFrom<model::Kind::Crew>(crewIds_.at(crew));
    }
    if (due >= 0 && due < static_cast<int>(kDueInDays.size())) {
        punch.dueOn = book.now()->today + kDueInDays.at(static_cast<std::size_t>(due));
    }
    store::Action action("punch item");
    action.add(punch);
    if (!picture.isEmpty()) {
        PictureWish wish;
        wish.path = picture;
        wish.stage = model::Stage::During;
        wish.space = punch.space;
        wish.punch = punch.id;
        if (auto kept = keepPicture(book, wish, action); !kept.ok()) {
            book.sayNotKept(Said::trouble(kept.error()));
            return false;
        }
    }
    return book.keep(action, tr("Punch item kept"));
}

bool PunchItems::keepLook(const QString& id, const QString& said, const QString& note,
                          const QString& picture) {
    JobBook& book = *JobBook::here();
    if (book.now() == nullptr) {
        return false;
    }
    model::Look look;
    look.id = book.book().newId<model::Kind::Look>(book.instant());
    look.job = book.now()->rows.job.id;
    look.punch = idFrom<model::Kind::Punch>(id);
    look.lookedOn = book.now()->today;
    look.by = book.by();
    look.note = note.trimmed().toStdString();
    look.said = said == QLatin1String("accepted")   ? model::Verdict::Accepted
                : said == QLatin1String("notRight") ? model::Verdict::NotRight
                                                    : model::Verdict::SaidFixed;
    store::Action action("look at a punch item");
    if (!picture.isEmpty()) {
        PictureWish wish;
        wish.path = picture;
        wish.stage = model::Stage::After;
        wish.space = idFrom<model::Kind::Space>(spaceId());
        wish.punch = look.punch;
        auto kept = keepPicture(book, wish, action);
        if (!kept.ok()) {
            book.sayNotKept(Said::trouble(kept.error()));
            return false;
        }
        look.photo = kept.value();
    }
    action.add(look);
    return book.keep(action, look.said == model::Verdict::Accepted   ? tr("Punch item accepted")
                             : look.said == model::Verdict::NotRight ? tr("Punch item sent back")
                                                                     : tr("Said to be fixed"));
}

}  // namespace ledgerboard::phone
