// What a crew lead sees: own items and all that belongs to them, and of neighbours where and when.
#include <algorithm>
#include <map>

#include "sync/exchange/open_items.h"
#include "sync/exchange/view.h"

namespace ledgerboard::sync {

using model::Date;
using model::Kind;
using model::RawId;
using model::Result;

namespace {

constexpr int kNeighbourDays = 5;  // working days between two crews in one space

// Reads every row it needs once; keeps the first error.
class Rows {
  public:
    explicit Rows(store::Book& book) : book_(book) {}

    template <class Row>
    std::vector<Row> all() {
        auto read = book_.rows<Row>();
        if (!read.ok()) {
            problem_ = read.error();
            return {};
        }
        return std::move(read).value();
    }

    [[nodiscard]] const std::optional<model::Error>& problem() const { return problem_; }

  private:
    store::Book& book_;
    std::optional<model::Error> problem_;
};

class LeadView {
  public:
    LeadView(store::Book& book, const Standing& standing)
        : book_(book), rows_(book), standing_(standing) {}

    Result<View> make() {
        if (standing_.crew.isNil()) {
            return view_;
        }
        auto devices = devicesOfCrew(book_, standing_.crew);
        if (!devices.ok()) {
            return devices.error();
        }
        view_.crewDevices = std::move(devices).value();
        view_.crewDevices.insert(standing_.device);
        show(Kind::Crew, standing_.crew);
        show(Kind::Person, standing_.person);
        items_ = rows_.all<model::Item>();
        marks_ = rows_.all<model::Mark>();
        ownItems();
        ownPunches();
        marks();
        cautions();
        deliveries();
        presences();
        neighbours();
        photos();
        places();
        if (rows_.problem()) {
            return *rows_.problem();
        }
        return view_;
    }

  private:
    void show(Kind kind, const RawId& id) {
        if (!id.isNil()) {
            view_.records[id] = {kind, false};
        }
    }

    [[nodiscard]] bool own(const model::Id<Kind::Item>& item) const {
        return view_.ownItems.contains(item.raw());
    }

    void ownItems() {
        const auto open = itemsOfOpenOptions(items_, rows_.all<model::Alternate>());
        for (const auto& item : items_) {
            if (open.contains(item.id.raw())) {
                open_.insert(item.id.raw());
            } else if (item.crew.raw() == standing_.crew) {
                view_.ownItems.insert(item.id.raw());
                show(Kind::Item, item.id.raw());
                view_.ownJobs.insert(item.job.raw());
                view_.ownSpaces.insert(item.space.raw());
            }
        }
    }

    void ownPunches() {
        for (const auto& punch : rows_.all<model::Punch>()) {
            if (punch.crew.raw() == standing_.crew || (punch.crew.isNil() && own(punch.item))) {
                view_.ownPunches.insert(punch.id.raw());
                show(Kind::Punch, punch.id.raw());
                view_.ownJobs.insert(punch.job.raw());
                view_.ownSpaces.insert(punch.space.raw());
            }
        }
        for (const auto& look : rows_.all<model::Look>()) {
            if (view_.ownPunches.contains(look.punch.raw())) {
                show(Kind::Look, look.id.raw());
                show(Kind::Person, look.by.raw());
            }
        }
    }

    void marks() {
        for (const auto& mark : marks_) {
            if (own(mark.item)) {
                show(Kind::Mark, mark.id.raw());
                show(Kind::Person, mark.by.raw());
            }
        }
    }

    void cautions() {
        for (const auto& caution : rows_.all<model::Caution>()) {
            const bool ofHouse = caution.item.isNil() && view_.ownJobs.contains(caution.job.raw());
            if (own(caution.item) || ofHouse) {
                show(Kind::Caution, caution.id.raw());
                show(Kind::Person, caution.acknowledgedBy.raw());
            }
        }
    }

    void deliveries() {
        for (const auto& delivery : rows_.all<model::Delivery>()) {
            if (own(delivery.item)) {
                show(Kind::Delivery, delivery.id.raw());
            }
        }
    }

    void presences() {
        for (const auto& presence : rows_.all<model::Presence>()) {
            if (presence.crew.raw() == standing_.crew) {
                show(Kind::Presence, presence.id.raw());
            }
        }
    }

    void photos() {
        for (const auto& photo : rows_.all<model::Photo>()) {
            if (photo.purpose != model::Purpose::Site) {
                continue;
            }
            const bool shared = photo.forCrews && view_.ownJobs.contains(photo.job.raw());
            if (own(photo.item) || view_.ownPunches.contains(photo.punch.raw()) || shared ||
                takenByCrew(photo.id.raw())) {
                show(Kind::Photo, photo.id.raw());
            }
        }
    }

    bool takenByCrew(const RawId& photo) {
        store::SyncBook sync(book_);
        auto cells = sync.cellsOf(photo);
        if (!cells.ok()) {
            return false;
        }
        return std::any_of(cells.value().begin(), cells.value().end(), [&](const auto& one) {
            return one.entry.field == model::field::Photo::digest &&
                   view_.crewDevices.contains(one.entry.name.device);
        });
    }

    // Items of others that are linked to an own one, or planned in the same space close in time.
    void neighbours() {
        std::set<RawId> linked;
        for (const auto& link : rows_.all<model::Link>()) {
            if (own(link.fromItem)) {
                linked.insert(link.toItem.raw());
            }
            if (own(link.toItem)) {
                linked.insert(link.fromItem.raw());
            }
        }
        jobs_ = rows_.all<model::Job>();
        for (const auto& item : items_) {
            const RawId id = item.id.raw();
            if (own(item.id) || open_.contains(id) || item.treatment == model::Treatment::Keep) {
                continue;
            }
            if (linked.contains(id) || isClose(item)) {
                view_.records[id] = {Kind::Item, true};
                neighbourSpaces_.insert(item.space.raw());
                finishedNeighbour(item);
            }
        }
    }

    bool isClose(const model::Item& other) const {
        return std::any_of(items_.begin(), items_.end(), [&](const model::Item& item) {
            return own(item.id) && !item.space.isNil() && item.space == other.space &&
                   item.job == other.job && isWithin(item, other);
        });
    }

    bool isWithin(const model::Item& a, const model::Item& b) const {
        if (!a.plannedStartOn || !b.plannedStartOn) {
            return false;
        }
        const Date aEnd = a.plannedFinishOn.value_or(*a.plannedStartOn);
        const Date bEnd = b.plannedFinishOn.value_or(*b.plannedStartOn);
        if (aEnd < *b.plannedStartOn) {
            return workingDays(a.job, aEnd, *b.plannedStartOn) <= kNeighbourDays;
        }
        if (bEnd < *a.plannedStartOn) {
            return workingDays(a.job, bEnd, *a.plannedStartOn) <= kNeighbourDays;
        }
        return true;
    }

    // Working days after `from` up to `to`, counted no further than matters.
    int workingDays(const model::Id<Kind::Job>& job, Date from, Date to) const {
        auto week = model::Weekdays::mondayToFriday();
        std::vector<Date> holidays;
        for (const auto& one : jobs_) {
            if (one.id == job) {
                week = one.workWeek.value_or(week);
                holidays = one.holidays;
            }
        }
        int count = 0;
        for (Date day = from + 1; day <= to && count <= kNeighbourDays && day - from < 90;
             day = day + 1) {
            const bool off = std::find(holidays.begin(), holidays.end(), day) != holidays.end();
            count += week.has(day.weekday()) && !off ? 1 : 0;
        }
        return count;
    }

    // Done or not, without the marks themselves: the day stands as the actual finish.
    void finishedNeighbour(const model::Item& item) {
        if (item.actualFinishOn) {
            return;  // shown as it is
        }
        const auto id = item.id.raw();
        if (item.acceptedOn) {
            view_.finished[id] = {{id, model::field::Item::acceptedOn},
                                  model::valueOf(*item.acceptedOn)};
            return;
        }
        const auto voided = voidedMarks(marks_);
        const model::Mark* latest = nullptr;
        for (const auto& mark : marks_) {
            if (mark.item == item.id && !voided.contains(mark.id.raw()) && mark.markedOn &&
                (latest == nullptr || *mark.markedOn >= *latest->markedOn)) {
                latest = &mark;
            }
        }
        if (latest != nullptr && latest->percent && latest->percent->basisPoints() >= 10'000) {
            view_.finished[id] = {{latest->id.raw(), model::field::Mark::percent},
                                  model::valueOf(*latest->markedOn)};
        }
    }

    void places() {
        for (const auto& space : view_.ownSpaces) {
            show(Kind::Space, space);
        }
        for (const auto& space : neighbourSpaces_) {
            show(Kind::Space, space);
        }
        for (const auto& job : view_.ownJobs) {
            show(Kind::Job, job);
        }
    }

    store::Book& book_;
    Rows rows_;
    const Standing& standing_;
    View view_;
    std::vector<model::Item> items_;
    std::vector<model::Mark> marks_;
    std::vector<model::Job> jobs_;
    std::set<RawId> open_;
    std::set<RawId> neighbourSpaces_;
};

}  // namespace

Result<View> leadView(store::Book& book, const Standing& standing) {
    return LeadView(book, standing).make();
}

}  // namespace ledgerboard::sync
