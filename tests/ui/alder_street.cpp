#include "tests/ui/alder_street.h"

#include "core/compute/as_of.h"
#include "core/model/check.h"

#include "tests/support/fixed_chance.h"

namespace ledgerboard::ui {

namespace {

using model::Date;
using model::Kind;

Date may(int day) {
    return Date::fromYmd(2026, 5, day).value();
}

class Builder {
  public:
    Builder(store::Book& book, model::Instant now, bool withMoney)
        : book_(book), now_(now), withMoney_(withMoney) {
        job_.id = book_.newId<Kind::Job>(now_);
        job_.name = "14 Alder Street";
        job_.builtYear = 1990;
        job_.beginOn = Date::fromYmd(2026, 4, 6).value();
        job_.timeZone = "America/Chicago";
        action_.add(job_);
        if (!withMoney_) {
            // A crew lead's book names its own person, and not their role.
            model::Person person;
            person.id = book_.me();
            person.name = "Tile crew's lead";
            action_.add(person);
        }
        crew_.id = book_.newId<Kind::Crew>(now_);
        crew_.name = "Tile crew";
        action_.add(crew_);
    }

    model::Id<Kind::Space> space(const std::string& name) {
        model::Space space;
        space.id = book_.newId<Kind::Space>(now_);
        space.job = job_.id;
        space.name = name;
        space.walkOrder = ++order_;
        action_.add(space);
        return space.id;
    }

    model::Item item(const std::string& object, model::Id<Kind::Space> space) {
        model::Item item;
        item.id = book_.newId<Kind::Item>(now_);
        item.job = job_.id;
        item.space = space;
        item.treatment = model::Treatment::Replace;
        item.object = object;
        item.crew = crew_.id;
        if (withMoney_) {
            item.lumpSum = model::Money::of(1000);
        }
        return item;
    }

    void add(const model::Item& item) { action_.add(item); }

    void mark(const model::Item& item, int percent) {
        model::Mark mark;
        mark.id = book_.newId<Kind::Mark>(now_);
        mark.job = job_.id;
        mark.item = item.id;
        mark.percent = model::Percent::of(percent);
        mark.markedOn = may(12);
        mark.by = book_.me();
        action_.add(mark);
    }

    AlderStreet finish(const std::string& path) {
        const auto done = book_.commit(action_, now_);
        model::require(done.ok(), "the house of the tests is written");
        return {path, job_.id, crew_.id};
    }

  private:
    store::Book& book_;
    model::Instant now_;
    bool withMoney_;
    model::Job job_;
    model::Crew crew_;
    std::int64_t order_ = 0;
    store::Action action_{"build the house"};
};

AlderStreet build(store::Book& book, const std::string& path, bool withMoney, int more) {
    // Written three days before the phone is taken in hand.
    constexpr std::int64_t kThreeDaysMs = std::int64_t{3} * 24 * 3600 * 1000;
    const auto before =
        model::Instant::fromMilliseconds(noonOnFriday().milliseconds() - kThreeDaysMs);
    Builder builder(book, before, withMoney);
    const auto kitchen = builder.space("Kitchen");
    const auto bath = builder.space("Hall bath");
    const auto dining = builder.space("Dining room");
    builder.space("Attic");
    auto cabinets = builder.item("cabinets", kitchen);
    cabinets.plannedStartOn = may(11);
    cabinets.plannedFinishOn = may(22);
    builder.add(cabinets);
    builder.mark(cabinets, 25);
    auto shelves = builder.item("closet shelves", kitchen);
    shelves.measure = model::Measure::CountedUnits;
    shelves.quantity = model::Quantity::of(14);
    shelves.unit = "each";
    builder.add(shelves);
    auto tile = builder.item("curtain rods", bath);
    tile.measure = model::Measure::WeightedSteps;
    tile.steps = {{"prep", model::Percent::of(20)},
                  {"set", model::Percent::of(60)},
                  {"grout", model::Percent::of(20)}};
    builder.add(tile);
    auto range = builder.item("gas range", bath);
    builder.add(range);
    auto floor = builder.item("wood floor", dining);
    builder.add(floor);
    builder.mark(floor, 100);
    for (int k = 0; k < more; ++k) {
        builder.add(builder.item("outlet " + std::to_string(k + 1), kitchen));
    }
    return builder.finish(path);
}

}  // namespace

model::Instant noonOnFriday() {
    return model::Instant::parse("2026-05-15T17:00Z").value();
}

AlderStreet buildAlderStreet(const std::string& path, int items) {
    auto book =
        store::Book::create(path, "Owner", noonOnFriday(), ledgerboard::tests::fixedChance(5));
    model::require(book.ok(), "a book for the tests is made");
    return build(book.value(), path, true, items);
}

AlderStreet buildLeadsCopy(const std::string& path) {
    auto random = ledgerboard::tests::fixedChance(6);
    model::IdMaker ids(random);
    auto book =
        store::Book::createJoined(path, model::Id<Kind::Device>(ids.next(noonOnFriday())),
                                  model::Id<Kind::Person>(ids.next(noonOnFriday())), random);
    model::require(book.ok(), "a crew lead's book for the tests is made");
    return build(book.value(), path, false, 0);
}

model::JobRows rowsOf(const AlderStreet& house) {
    auto book = store::Book::open(house.path, ledgerboard::tests::fixedChance(7));
    model::require(book.ok(), "the book of the test opens");
    auto rows = book.value().jobRows(house.job);
    model::require(rows.ok(), "the job of the test is read");
    return compute::withoutVoided(std::move(rows).value());
}

std::vector<model::Mark> marksOf(const AlderStreet& house, const std::string& object) {
    const auto rows = rowsOf(house);
    std::vector<model::Mark> marks;
    for (const auto& mark : rows.marks) {
        for (const auto& item : rows.items) {
            if (item.id == mark.item && item.object == object) {
                marks.push_back(mark);
            }
        }
    }
    return marks;
}

}  // namespace ledgerboard::ui
