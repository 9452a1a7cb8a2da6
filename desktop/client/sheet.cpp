#include "desktop/client/sheet.h"

#include <algorithm>

#include <QClipboard>
#include <QGuiApplication>

#include "desktop/client/desk.h"

namespace ledgerboard::desk {

QVariant Sheet::drawnAt(int place) const {
    return QVariant::fromValue(rowAt(place));
}

void Sheet::findPlace() {
    for (int k = 0; k < count() && !inHand_.isNil(); ++k) {
        if (isItem(k) && idAt(k) == inHand_) {
            place_ = from_ = k;
            return;
        }
    }
    place_ = std::clamp(place_, count() > 0 ? 0 : -1, std::max(count() - 1, -1));
    if (place_ >= 0 && !isItem(place_) && place_ + 1 < count()) {
        ++place_;
    }
    from_ = place_;
    // While a filter hides it, the record in hand is not forgotten.
    if (filter_.isEmpty() && isItem(place_)) {
        inHand_ = idAt(place_);
    }
}

void Sheet::tell() {
    emit shown();
    emit moved();
    emit detailChanged();
}

void Sheet::want(const model::RawId& id, int column) {
    inHand_ = id;
    column_ = column;
}

std::vector<int> Sheet::chosenPlaces() const {
    std::vector<int> places;
    for (int k = std::max(0, std::min(place_, from_)); k <= std::max(place_, from_); ++k) {
        if (isItem(k)) {
            places.push_back(k);
        }
    }
    return places;
}

void Sheet::stepTo(int place, int column, bool extend) {
    place_ = place;
    column_ = column;
    if (!extend) {
        from_ = place_;
    }
    if (isItem(place_)) {
        inHand_ = idAt(place_);
    }
    emit moved();
    emit detailChanged();
}

void Sheet::setPlace(int place) {
    if (isItem(place)) {
        stepTo(place, column_, false);
    }
}

void Sheet::setColumn(int column) {
    stepTo(place_, std::clamp(column, 0, columnTotal() - 1), false);
}

void Sheet::move(int down, int right, bool extend) {
    int place = place_;
    const int step = down > 0 ? 1 : -1;
    for (int left = std::abs(down); left > 0;) {
        int next = place + step;
        while (next >= 0 && next < count() && !isItem(next)) {
            next += step;
        }
        if (!isItem(next)) {
            break;
        }
        place = next;
        --left;
    }
    stepTo(place, std::clamp(column_ + right, 0, columnTotal() - 1), extend);
}

void Sheet::toEnd(bool last) {
    move(last ? count() : -count(), 0, false);
}

void Sheet::setFilter(const QString& filter) {
    if (filter != filter_) {
        filter_ = filter;
        arrange();
    }
}

void Sheet::copyRows() {
    QStringList titles;
    for (const auto& column : columns()) {
        titles << column.value<SheetColumn>().title;
    }
    QStringList lines{titles.join(QLatin1Char('\t'))};
    for (const int k : chosenPlaces()) {
        lines << rowAt(k).cells.join(QLatin1Char('\t'));
    }
    QGuiApplication::clipboard()->setText(lines.join(QLatin1Char('\n')));
    Desk::here()->sayPlainly(tr("%n row(s) copied", nullptr, static_cast<int>(lines.size()) - 1));
}

}  // namespace ledgerboard::desk
