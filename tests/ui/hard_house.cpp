#include "tests/ui/hard_house.h"

#include "core/model/check.h"

#include "tests/support/fixed_chance.h"

namespace ledgerboard::ui {

namespace {

using model::Kind;

constexpr const char* kLongSpace =
    "Primary bedroom with the dressing room behind it and the stair up to the old sleeping porch";
constexpr const char* kLongItem =
    "built-in wardrobe with glazed doors, the drawers under it, and the matching window seat that "
    "runs along the whole of the north wall to the chimney breast";

model::Space spaceAt(store::Book& book, const model::Job& job, int place) {
    model::Space space;
    space.id = book.newId<Kind::Space>(noonOnFriday());
    space.job = job.id;
    space.walkOrder = place + 1;
    space.name = place == 0   ? kLongSpace
                 : place == 1 ? ""
                              : "Guest room " + std::to_string(place + 1);
    return space;
}

}  // namespace

AlderStreet buildHardHouse(const std::string& path) {
    auto opened =
        store::Book::create(path, "Owner", noonOnFriday(), ledgerboard::tests::fixedChance(11));
    model::require(opened.ok(), "a book for the tests is made");
    store::Book& book = opened.value();
    store::Action action("build the hard house");
    model::Job job;
    job.id = book.newId<Kind::Job>(noonOnFriday());
    job.name = "The former boarding house of the canal company at the corner of Lower Weir Lane";
    job.builtYear = 1990;
    job.timeZone = "America/Chicago";
    action.add(job);
    model::Crew crew;
    crew.id = book.newId<Kind::Crew>(noonOnFriday());
    crew.name = "Cabinet makers and finish carpenters of the upper valley";
    action.add(crew);
    std::vector<model::Id<Kind::Space>> spaces;
    for (int k = 0; k < kHardSpaces; ++k) {
        const auto space = spaceAt(book, job, k);
        spaces.push_back(space.id);
        action.add(space);
        model::Item item;
        item.id = book.newId<Kind::Item>(noonOnFriday());
        item.job = job.id;
        item.space = space.id;
        item.treatment = model::Treatment::Refinish;
        item.object = k == 0 ? kLongItem : k == 1 ? "" : "shelves";
        item.crew = crew.id;
        item.lumpSum = model::Money::of(100);
        action.add(item);
    }
    for (int k = 0; k < kHardPunches; ++k) {
        model::Punch punch;
        punch.id = book.newId<Kind::Punch>(noonOnFriday());
        punch.job = job.id;
        punch.space = spaces[2];
        punch.crew = crew.id;
        punch.what = k == 0 ? "" : "nail " + std::to_string(k + 1) + " stands proud";
        action.add(punch);
    }
    model::require(book.commit(action, noonOnFriday()).ok(), "the hard house is written");
    return {path, job.id, crew.id};
}

}  // namespace ledgerboard::ui
