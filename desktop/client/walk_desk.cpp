#include "desktop/client/walk_desk.h"

#include <algorithm>

#include <QFile>
#include <QLocale>
#include <QRegularExpression>
#include <QSettings>
#include <QUrl>

#include "core/intake/keep/keep_draft.h"
#include "core/intake/keep/keep_words.h"
#include "core/intake/notes/read_notes.h"
#include "core/model/catalog.h"
#include "core/model/words.h"
#include "core/qml/id_text.h"

#include "desktop/client/background.h"
#include "desktop/client/desk.h"
#include "desktop/client/said.h"

namespace ledgerboard::desk {

using qml::idText;

namespace {

constexpr int kReadSoonMs = 250;
constexpr int kUnsureBelow = 60;  // of 100: to be looked at
constexpr qint64 kLargestNotes = 8 << 20;

QSettings settings() {
    return QSettings(Desk::here()->surroundings().settingsFile, QSettings::IniFormat);
}

// The notes of each job for themselves.
QString notesKey() {
    return QStringLiteral("walk/") + idText(Desk::here()->job());
}

struct Read {
    intake::Draft draft;
    QString refused;
};

QString joined(const QStringList& parts) {
    QStringList filled = parts;
    filled.removeAll(QString());
    return filled.join(QStringLiteral(", "));
}

// With a capital letter, as a heading begins.
QString begun(const std::string& utf8) {
    QString words = Said::text(utf8);
    if (!words.isEmpty()) {
        words[0] = words[0].toUpper();
    }
    return words;
}

QString moneyOf(const std::optional<model::Money>& money) {
    return money ? Said::money(*money) : QString();
}

}  // namespace

WalkDesk::WalkDesk(QObject* parent) : RowModel(parent) {
    soon_.setSingleShot(true);
    soon_.setInterval(kReadSoonMs);
    connect(&soon_, &QTimer::timeout, this, &WalkDesk::read);
    connect(Desk::here(), &Desk::wordsChanged, this, &WalkDesk::arrange);
    connect(Desk::here(), &Desk::changed, this, &WalkDesk::learnWords);
    learnWords();
    notes_ = settings().value(notesKey()).toString();
    if (!notes_.isEmpty()) {
        read();
    }
}

QVariant WalkDesk::drawnAt(int place) const {
    return QVariant::fromValue(shownRow(rows_[static_cast<std::size_t>(place)]));
}

void WalkDesk::setNotes(const QString& notes) {
    if (notes == notes_) {
        return;
    }
    notes_ = notes;
    settings().setValue(notesKey(), notes_);
    emit notesChanged();
    readSoon();
}

void WalkDesk::readSoon() {
    isReading_ = true;
    soon_.start();
    emit shown();
}

void WalkDesk::read() {
    const int asked = ++asked_;
    isReading_ = true;
    intake::ReadOptions how;
    if (Desk::here()->hasBook()) {
        auto words = intake::ownWordsOf(Desk::here()->book());
        how.ownWords = words.ok() ? std::move(words).value() : how.ownWords;
    }
    inBackground(
        Desk::here()->pool(), this,
        [text = notes_.toStdString(), how = std::move(how)] {
            auto draft = intake::readNotes(text, how);
            return draft.ok() ? Read{std::move(draft).value(), {}}
                              : Read{{}, Said::trouble(draft.error())};
        },
        [this, asked](Read read) {
            if (asked != asked_) {
                return;
            }
            isReading_ = soon_.isActive();
            draft_ = std::move(read.draft);
            asRead_ = draft_.items;
            refused_ = read.refused;
            arrange();
        });
    emit shown();
}

// Items by space in walking order, then open choices, facts and cautions. What was dropped is
// forgotten when the notes change: the draft is another one then.
void WalkDesk::arrange() {
    beginResetModel();
    rows_.clear();
    const auto put = [this](Part part, std::size_t count, const QString& heading) {
        if (count > 0) {
            rows_.push_back({Part::Heading, 0, heading, false});
        }
        for (std::size_t k = 0; k < count; ++k) {
            rows_.push_back({part, k, {}, false});
        }
    };
    std::vector<std::string> spaces;
    for (const auto& space : draft_.spaces) {
        spaces.push_back(space.name);
    }
    for (const auto& item : draft_.items) {
        if (std::find(spaces.begin(), spaces.end(), item.space) == spaces.end()) {
            spaces.push_back(item.space);
        }
    }
    for (const auto& space : spaces) {
        bool isFirst = true;
        for (std::size_t k = 0; k < draft_.items.size(); ++k) {
            if (draft_.items[k].space != space) {
                continue;
            }
            if (isFirst) {
                rows_.push_back(
                    {Part::Heading, 0, space.empty() ? tr("No space") : begun(space), false});
                isFirst = false;
            }
            rows_.push_back({Part::Item, k, {}, false});
        }
    }
    put(Part::Alternate, draft_.alternates.size(), tr("Open choices"));
    put(Part::Fact, draft_.facts.size(), tr("Facts of the deal"));
    put(Part::Caution, draft_.cautions.size(), tr("Hazards named"));
    endResetModel();
    place_ = std::clamp(place_, rows_.empty() ? -1 : 0, count() - 1);
    while (place_ >= 0 && place_ < count() && !isRow(place_)) {
        ++place_;
    }
    findSentence();
    emit shown();
}

bool WalkDesk::isRow(int place) const {
    return place >= 0 && place < count() &&
           rows_[static_cast<std::size_t>(place)].part != Part::Heading;
}

const intake::Source* WalkDesk::sourceOf(const Row& row) const {
    switch (row.part) {
        case Part::Item:
            return &draft_.items[row.at].source;
        case Part::Alternate:
            return &draft_.alternates[row.at].source;
        case Part::Fact:
            return &draft_.facts[row.at].source;
        case Part::Caution:
            return &draft_.cautions[row.at].source;
        case Part::Heading:
            break;
    }
    return nullptr;
}

// The sentence as it stands in the notes, from its line on: white space was folded in reading.
WalkDesk::Range WalkDesk::rangeOf(const intake::Source& source) const {
    int begin = 0;
    for (int line = 1; line < source.line; ++line) {
        const auto next = notes_.indexOf(QLatin1Char('\n'), begin);
        if (next < 0) {
            break;
        }
        begin = static_cast<int>(next) + 1;
    }
    QStringList words;
    for (const auto& word :
         Said::text(source.sentence).split(QLatin1Char(' '), Qt::SkipEmptyParts)) {
        words << QRegularExpression::escape(word);
    }
    if (words.isEmpty()) {
        return {};
    }
    const QRegularExpression sentence(words.join(QStringLiteral("\\s+")));
    auto match = sentence.match(notes_, begin);
    if (!match.hasMatch()) {
        match = sentence.match(notes_);
    }
    return match.hasMatch() ? Range{static_cast<int>(match.capturedStart()),
                                    static_cast<int>(match.capturedEnd())}
                            : Range{};
}

void WalkDesk::findSentence() {
    Range range;
    if (isRow(place_)) {
        range = rangeOf(*sourceOf(rows_[static_cast<std::size_t>(place_)]));
    }
    from_ = range.from;
    to_ = range.to;
    emit moved();
}

void WalkDesk::setPlace(int place) {
    if (isRow(place) && place != place_) {
        place_ = place;
        findSentence();
    }
}

void WalkDesk::move(int down) {
    const int step = down > 0 ? 1 : -1;
    int next = place_ + step;
    while (next >= 0 && next < count() && !isRow(next)) {
        next += step;
    }
    setPlace(next);
}

void WalkDesk::goToText(int position) {
    for (int k = 0; k < count(); ++k) {
        if (!isRow(k)) {
            continue;
        }
        const Range range = rangeOf(*sourceOf(rows_[static_cast<std::size_t>(k)]));
        if (position >= range.from && position < range.to) {
            setPlace(k);
            return;
        }
    }
}

void WalkDesk::flip() {
    if (!isRow(place_)) {
        return;
    }
    Row& row = rows_[static_cast<std::size_t>(place_)];
    row.dropped = !row.dropped;
    emit dataChanged(index(place_), index(place_), {kRowRole});
    emit shown();
}

QStringList WalkDesk::parts() const {
    if (!isRow(place_) || rows_[static_cast<std::size_t>(place_)].part != Part::Item) {
        return {};
    }
    const auto& item = draft_.items[rows_[static_cast<std::size_t>(place_)].at];
    return {
        Said::text(item.space),  Said::text(item.treatment),
        Said::text(item.object), item.quantity ? Said::text(item.quantity->toString()) : QString(),
        Said::text(item.unit),   item.cost ? Said::text(item.cost->toString()) : QString()};
}

bool WalkDesk::correct(const QStringList& parts) {
    constexpr int kParts = 6;
    if (parts.size() != kParts || this->parts().isEmpty()) {
        return false;
    }
    intake::DraftItem item = draft_.items[rows_[static_cast<std::size_t>(place_)].at];
    const std::string treatment = model::folded(parts.at(1).toStdString());
    if (!model::fromWord<model::Treatment>(treatment) || treatment.empty()) {
        Desk::here()->sayNotKept(tr("“%1” is no treatment: it is keep, inspect, clean, repair, "
                                    "refinish, replace, remove, add or relocate.")
                                     .arg(parts.at(1)));
        return false;
    }
    item.quantity.reset();
    item.cost.reset();
    if (const std::string text = parts.at(3).trimmed().toStdString(); !text.empty()) {
        auto quantity = model::Quantity::parse(text);
        if (!quantity.ok()) {
            Desk::here()->sayNotKept(Said::trouble(quantity.error()));
            return false;
        }
        item.quantity = quantity.value();
    }
    if (const std::string text = parts.at(5).trimmed().toStdString(); !text.empty()) {
        auto cost = model::Money::parse(text);
        if (!cost.ok()) {
            Desk::here()->sayNotKept(Said::trouble(cost.error()));
            return false;
        }
        item.cost = cost.value();
    }
    item.space = parts.at(0).trimmed().toStdString();
    item.treatment = treatment;
    item.object = parts.at(2).trimmed().toStdString();
    item.unit = parts.at(4).trimmed().toStdString();
    item.source.sure = 100;  // somebody looked
    draft_.items[rows_[static_cast<std::size_t>(place_)].at] = item;
    emit dataChanged(index(place_), index(place_), {kRowRole});
    emit shown();
    return true;
}

// What the book knows of the owner's words now.
void WalkDesk::learnWords() {
    std::vector<model::OwnWord> words;
    if (Desk::here()->hasBook()) {
        auto rows = Desk::here()->book().rows<model::OwnWord>();
        words = rows.ok() ? std::move(rows).value() : words;
    }
    const auto same = [](const model::OwnWord& a, const model::OwnWord& b) {
        return a.id == b.id && a.phrase == b.phrase && a.object == b.object && a.space == b.space &&
               a.treatment == b.treatment && a.nothing == b.nothing && a.times == b.times;
    };
    if (!std::equal(words.begin(), words.end(), ownWords_.begin(), ownWords_.end(), same)) {
        ownWords_ = std::move(words);
        emit ownWordsChanged();
    }
}

QStringList WalkDesk::ownWords() const {
    QStringList said;
    for (const auto& word : ownWords_) {
        const QString phrase = Said::text(word.phrase);
        if (!word.object.empty() &&
            intake::phraseKey(word.phrase) == intake::phraseKey(word.object)) {
            said << tr("“%1” is an object").arg(phrase);
        } else if (!word.object.empty()) {
            said << tr("“%1” means %2").arg(phrase, Said::text(word.object));
        } else if (!word.space.empty()) {
            said << tr("“%1” means the space %2").arg(phrase, Said::text(word.space));
        } else if (word.treatment != model::Treatment::Unset) {
            said << tr("“%1” means %2").arg(phrase, Said::treatment(word.treatment));
        } else if (word.times.value_or(intake::kDropsThatTeach) < intake::kDropsThatTeach) {
            said << tr("“%1” was dropped once").arg(phrase);
        } else {
            said << tr("“%1” is no object").arg(phrase);
        }
    }
    return said;
}

void WalkDesk::forget(int at) {
    if (at < 0 || at >= static_cast<int>(ownWords_.size())) {
        return;
    }
    const model::OwnWord word = ownWords_[static_cast<std::size_t>(at)];
    store::Action action("forget the word " + word.phrase);
    action.drop(model::Kind::OwnWord, word.id.raw());
    if (Desk::here()->keep(action, tr("Forgotten: “%1”").arg(Said::text(word.phrase)))) {
        learnWords();
        readSoon();
    }
}

// The items as they are to be kept; empty where one was dropped.
std::vector<std::optional<intake::DraftItem>> WalkDesk::wantedItems() const {
    std::vector<std::optional<intake::DraftItem>> wanted(draft_.items.size());
    for (const auto& row : rows_) {
        if (row.part == Part::Item && !row.dropped) {
            wanted[row.at] = draft_.items[row.at];
        }
    }
    return wanted;
}

bool WalkDesk::canKeep() const {
    return !isReading_ && std::any_of(rows_.begin(), rows_.end(), [](const Row& row) {
        return row.part != Part::Heading && !row.dropped;
    });
}

void WalkDesk::keep() {
    Desk& desk = *Desk::here();
    if (!canKeep() || !desk.hasBook()) {
        return;
    }
    intake::Draft wanted;
    wanted.spaces = draft_.spaces;
    for (const auto& row : rows_) {
        if (row.dropped) {
            continue;
        }
        switch (row.part) {
            case Part::Item:
                wanted.items.push_back(draft_.items[row.at]);
                break;
            case Part::Alternate:
                wanted.alternates.push_back(draft_.alternates[row.at]);
                break;
            case Part::Fact:
                wanted.facts.push_back(draft_.facts[row.at]);
                break;
            case Part::Caution:
                wanted.cautions.push_back(draft_.cautions[row.at]);
                break;
            case Part::Heading:
                break;
        }
    }
    const auto corrections = intake::correctionsOf(asRead_, wantedItems());
    auto report = intake::keepDraft(desk.book(), desk.job(), wanted, desk.instant(), corrections);
    if (!report.ok()) {
        desk.sayNotKept(Said::trouble(report.error()));
        return;
    }
    const auto& kept = report.value();
    if (kept.spaces + kept.items + kept.alternates + kept.cautions + kept.factsSet.size() +
            kept.taught.size() ==
        0) {
        desk.sayPlainly(tr("All of it was there already."));
        return;
    }
    QStringList said;
    said << tr("%n item(s)", nullptr, static_cast<int>(kept.items));
    if (report.value().alternates > 0) {
        said << tr("%n open choice(s)", nullptr, static_cast<int>(report.value().alternates));
    }
    if (!report.value().factsSet.empty()) {
        said << tr("%n fact(s)", nullptr, static_cast<int>(report.value().factsSet.size()));
    }
    if (report.value().alreadyThere > 0) {
        said << tr("%n were there already", nullptr, static_cast<int>(report.value().alreadyThere));
    }
    if (!kept.taught.empty()) {
        said << tr("%n word(s) learned", nullptr, static_cast<int>(kept.taught.size()));
    }
    desk.sayKept(tr("Kept from the notes: %1").arg(joined(said)), QStringLiteral("keep notes"));
    learnWords();
}

void WalkDesk::open(const QString& where) {
    const QUrl address(where);
    QFile file(address.isLocalFile() ? address.toLocalFile() : where);
    if (!file.open(QIODevice::ReadOnly) || file.size() > kLargestNotes) {
        Desk::here()->sayNotKept(tr("%1 cannot be read: choose a text file.").arg(file.fileName()));
        return;
    }
    setNotes(QString::fromUtf8(file.readAll()));
}

void WalkDesk::wipe() {
    setNotes({});
}

QString WalkDesk::sumText() const {
    int items = 0;
    int unsure = 0;
    int dropped = 0;
    for (const auto& row : rows_) {
        if (row.part == Part::Heading) {
            continue;
        }
        dropped += row.dropped ? 1 : 0;
        if (!row.dropped && row.part == Part::Item) {
            ++items;
            unsure += sourceOf(row)->sure < kUnsureBelow ? 1 : 0;
        }
    }
    QStringList parts{tr("%n item(s)", nullptr, items)};
    if (unsure > 0) {
        parts << tr("%n to be looked at", nullptr, unsure);
    }
    if (dropped > 0) {
        parts << tr("%n dropped", nullptr, dropped);
    }
    return joined(parts);
}

WalkRow WalkDesk::shownRow(const Row& row) const {
    WalkRow out;
    out.isHeading = row.part == Part::Heading;
    out.isItem = row.part == Part::Item;
    out.isDropped = row.dropped;
    if (const auto* source = sourceOf(row)) {
        out.sure = tr("%1 sure").arg(Said::percent(model::Percent::of(source->sure)));
        out.isUnsure = source->sure < kUnsureBelow;
    }
    switch (row.part) {
        case Part::Heading:
            out.what = row.heading;
            break;
        case Part::Item: {
            const auto& item = draft_.items[row.at];
            const auto treatment = model::fromWord<model::Treatment>(item.treatment);
            out.what = Said::treatment(treatment.value_or(model::Treatment::Unset)) +
                       QLatin1Char(' ') + Said::text(item.object);
            out.figures = joined(
                {item.quantity ? Said::text(item.quantity->toString()) + QLatin1Char(' ') +
                                     Said::text(item.unit)
                               : QString(),
                 moneyOf(item.cost),
                 item.days ? tr("%1 days").arg(Said::text(item.days->toString())) : QString(),
                 item.leadDays ? tr("%1 days to come").arg(Said::text(item.leadDays->toString()))
                               : QString()});
            out.note = Said::text(item.note);
            break;
        }
        case Part::Alternate: {
            const auto& choice = draft_.alternates[row.at];
            out.what = Said::text(choice.space.empty() ? choice.question
                                                       : choice.space + ": " + choice.question);
            QStringList options;
            for (const auto& option : choice.options) {
                options << Said::text(option.name) +
                               (option.cost
                                    ? QStringLiteral(" (") + moneyOf(option.cost) + QLatin1Char(')')
                                    : QString());
            }
            out.note = options.join(tr(" or "));
            break;
        }
        case Part::Fact:
            out.what =
                Said::text(draft_.facts[row.at].name).replace(QLatin1Char('_'), QLatin1Char(' '));
            out.figures = Said::text(draft_.facts[row.at].value);
            break;
        case Part::Caution:
            out.what = Said::told(draft_.cautions[row.at].about);
            out.note = Said::told(draft_.cautions[row.at].why);
            out.isHazard = true;
            break;
    }
    return out;
}

}  // namespace ledgerboard::desk
