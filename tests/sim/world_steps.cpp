// What happens in a world, one step at a time.
#include <filesystem>

#include "tests/sim/world.h"

namespace ledgerboard::sim {

namespace field = model::field;
using model::FieldType;
using model::Kind;
using model::RawId;
using model::Role;
using model::Value;
using store::Action;

namespace {

constexpr std::int64_t kDayMs = 24 * 3600 * 1000;
constexpr std::int64_t kMonday = 20'549;  // 2026-04-06, in days since 1970

}  // namespace

std::int64_t World::amount(std::int64_t from) {
    const auto planted =
        from + static_cast<std::int64_t>(below(static_cast<std::size_t>(kAmounts)));
    leaks_.plant(planted);
    return planted;
}

// An unmistakable value for a field that is not for everyone; empty where its type allows none.
Value World::plantedFor(const model::Field& one) {
    const bool viewer = one.reads == model::Reads::Viewer;
    const std::int64_t from = viewer ? kViewerAmount : kOwnerAmount;
    switch (one.type) {
        case FieldType::Money:
        case FieldType::Quantity:
        case FieldType::Count:
            return amount(from);
        case FieldType::Text:
            return viewer ? Value{} : Value{std::string(kOwnerText) + std::to_string(++words_)};
        case FieldType::Amounts:
            return "[[\"taxes\"," + std::to_string(amount(from)) + "]]";
        default:
            return {};
    }
}

template <class Row>
RawId World::any(Actor& actor) {
    const auto rows = actor.phone.book->rows<Row>().value();
    return rows.empty() ? RawId{} : rows[below(rows.size())].id.raw();
}

void World::commit(Actor& actor, const Action& action) {
    auto done = actor.phone.book->commit(action, star_.stampOf(actor.phone));
    if (!done.ok() && done.error().code == model::ErrorCode::Damaged) {
        fail("a book could not be written: " + done.error().message);
    }
}

void World::step() {
    star_.timeMs += static_cast<std::int64_t>(below(oneIn(10) ? 8 * 3600 * 1000 : 60'000)) + 1;
    Actor& actor = *actors_[below(actors_.size())];
    const std::string who = "device " + actor.phone.device().hex().substr(24) + " (" +
                            std::string(model::wordOf(actor.role)) + "): ";
    const std::size_t what = below(100);
    if (what < 45) {
        note(who + "writes");
        if (actor.role == Role::Owner) {
            ownerWrites(actor);
        } else if (actor.role == Role::CrewLead && !oneIn(6)) {
            leadWrites(actor);
        } else {
            cheat(actor);
        }
    } else if (what < 85) {
        note(who + "meets the peer");
        meet(actor, true);
    } else if (what < 90) {
        note(who + "crashes");
        crash(actor);
    } else if (what < 93) {
        note(who + "has its clock moved");
        actor.phone.skewMs =
            static_cast<std::int64_t>(below(static_cast<std::size_t>(2 * kDayMs))) - kDayMs;
    } else if (what < 95) {
        note(who + "is backed up");
        backUp(actor);
    } else if (what < 97) {
        note(who + "is restored");
        restore(actor);
    } else if (what < 98) {
        note("the peer crashes");
        crashPeer();
    } else if (peerBackups_.empty() || oneIn(2)) {
        note("the peer is backed up");
        peerBackups_.push_back(star_.file("peer-" + std::to_string(++files_)));
        if (!star_.peerBook->backup(peerBackups_.back()).ok()) {
            fail("the peer's book could not be backed up");
        }
    } else if (oneIn(3)) {
        note("the peer is restored");
        restorePeer();
    } else {
        note("a phone is shut out");
        shutOut();
    }
}

void World::ownerWrites(Actor& actor) {
    switch (below(11)) {
        case 9:
        case 10: {
            // The same few fields again and again: what may be let go in time.
            Action action("name");
            action.set(spaces_[below(2)], field::Space::name, "Room " + std::to_string(++words_));
            return commit(actor, action);
        }
        case 0:
            return addItem(actor);
        case 1:
        case 2:
            return editItem(actor);
        case 3:
        case 4:
            return plant(actor);
        case 5:
        case 6:
            return addFact(actor);
        case 7:
            return oneIn(2) ? newerField(actor) : settleOne(actor);
        default:
            (void)actor.phone.book->undo(star_.stampOf(actor.phone));
    }
}

void World::addItem(Actor& actor) {
    Action action("item");
    const RawId item = actor.phone.book->newId(star_.now());
    action.set(item, field::Item::job, job_);
    action.set(item, field::Item::space, spaces_[below(spaces_.size())]);
    action.set(item, field::Item::treatment, std::string("replace"));
    action.set(item, field::Item::object, "object " + std::to_string(++words_));
    action.set(item, field::Item::crew, crews_[below(crews_.size())]);
    action.set(item, field::Item::quantity, static_cast<std::int64_t>(below(90'000)));
    action.set(item, field::Item::instructions, std::string(kCrewText) + std::to_string(++words_));
    action.set(item, field::Item::plannedStartOn, kMonday + static_cast<std::int64_t>(below(40)));
    commit(actor, action);
}

void World::editItem(Actor& actor) {
    const RawId item = any<model::Item>(actor);
    if (item.isNil()) {
        return;
    }
    Action action("edit");
    switch (below(8)) {
        case 0:
        case 1:
            action.set(item, field::Item::crew, crews_[below(crews_.size())]);
            break;
        case 2:
            action.drop(Kind::Item, item);
            break;
        case 3:
            action.set(item, field::Item::space, spaces_[below(spaces_.size())]);
            break;
        case 4:
            action.set(item, field::Item::option, any<model::Option>(actor));
            break;
        case 5:
            action.set(item, field::Item::acceptedOn, kMonday);
            break;
        default:
            action.set(item, field::Item::quantity, static_cast<std::int64_t>(below(5)) * 1000);
            action.set(item, field::Item::lumpSum, amount(kOwnerAmount));
    }
    commit(actor, action);
}

// A record of any kind with an unmistakable value in every field that is not for everyone.
void World::plant(Actor& actor) {
    const auto& info = model::kinds()[below(model::kinds().size())];
    if (info.kind == Kind::Person || info.kind == Kind::Device) {
        return;  // who may do what is changed by steps of their own
    }
    Action action("plant");
    const RawId record =
        info.kind == Kind::Job && oneIn(2) ? job_ : actor.phone.book->newId(star_.now());
    for (const auto& one : info.fields) {
        const bool hidden = one.reads == model::Reads::Owner || one.reads == model::Reads::Viewer;
        if (&one == model::jobFieldOf(info.kind)) {
            action.set(record, one.code, job_);
        } else if (hidden && one.writes == model::Writes::Owner) {
            if (Value value = plantedFor(one); !model::isEmpty(value)) {
                action.set(record, one.code, std::move(value));
            }
        }
    }
    commit(actor, action);
}

// What owners enter that crews see a part of.
void World::addFact(Actor& actor) {
    Action action("fact");
    const RawId record = actor.phone.book->newId(star_.now());
    const RawId item = any<model::Item>(actor);
    if (item.isNil()) {
        return;
    }
    const std::string secret = std::string(kOwnerText) + std::to_string(++words_);
    switch (below(6)) {
        case 0:
            action.set(record, field::Mark::job, job_);
            action.set(record, field::Mark::item, item);
            action.set(record, field::Mark::percent, static_cast<std::int64_t>(below(3)) * 5000);
            action.set(record, field::Mark::markedOn,
                       kMonday + static_cast<std::int64_t>(below(9)));
            action.set(record, field::Mark::by, actor.phone.book->me().raw());
            action.set(record, field::Mark::note, secret);
            break;
        case 1:
            action.set(record, field::Punch::job, job_);
            action.set(record, field::Punch::space, spaces_[below(spaces_.size())]);
            action.set(record, field::Punch::what, "grout " + std::to_string(words_));
            action.set(record, field::Punch::crew, crews_[below(crews_.size())]);
            action.set(record, field::Punch::cost, amount(kOwnerAmount));
            break;
        case 2:
            action.set(record, field::Delivery::job, job_);
            action.set(record, field::Delivery::item, item);
            action.set(record, field::Delivery::promisedOn, kMonday);
            break;
        case 3:
            action.set(record, field::Caution::job, job_);
            action.set(record, field::Caution::item, item);
            action.set(record, field::Caution::about, "old paint " + std::to_string(words_));
            action.set(record, field::Caution::source, secret);
            break;
        case 4:
            action.set(record, field::Photo::job, job_);
            action.set(record, field::Photo::item, item);
            action.set(record, field::Photo::digest, secret);
            action.set(record, field::Photo::caption, secret);
            action.set(record, field::Photo::purpose, std::string(oneIn(2) ? "site" : "receipt"));
            action.set(record, field::Photo::forLender, std::int64_t{1});
            action.set(record, field::Photo::forCrews, std::int64_t{1});
            break;
        default:
            action.set(record, field::Link::job, job_);
            action.set(record, field::Link::fromItem, item);
            action.set(record, field::Link::toItem, any<model::Item>(actor));
    }
    commit(actor, action);
}

// As a program with a newer catalog would write: fields and kinds that this one does not know.
void World::newerField(Actor& actor) {
    auto& book = *actor.phone.book;
    store::SyncBook sync(book);
    const auto log = book.entries().value();
    model::HybridClock latest;
    for (const auto& entry : log) {
        latest = std::max(latest, entry.clock);
    }
    store::Entry entry;
    entry.name = {actor.phone.device(), store::Lane::Shared,
                  sync.lastNumbers(actor.phone.device()).value()[1] + 1};
    entry.clock = latest.next(star_.stampOf(actor.phone));
    entry.record = any<model::Item>(actor);
    entry.field = oneIn(2) ? 3998 : 98'001;
    entry.value = std::string(kOwnerText) + std::to_string(++words_);
    if (!entry.record.isNil()) {
        (void)book.apply(std::vector{entry});
    }
}

void World::settleOne(Actor& actor) {
    store::SyncBook sync(*actor.phone.book);
    const auto clashes = sync.clashes().value();
    outcome_.clashes += clashes.size();
    if (!clashes.empty()) {
        const auto& clash = clashes[below(clashes.size())];
        (void)sync.settle(clash.cell, clash.heads.back().value, star_.stampOf(actor.phone));
    }
}

void World::leadWrites(Actor& actor) {
    Action action("lead");
    const RawId record = actor.phone.book->newId(star_.now());
    const RawId item = any<model::Item>(actor);
    const RawId me = actor.phone.book->me().raw();
    switch (below(7)) {
        case 0:
        case 1:
            if (item.isNil()) {
                return;
            }
            action.set(record, field::Mark::job, job_);
            action.set(record, field::Mark::item, item);
            action.set(record, field::Mark::percent, static_cast<std::int64_t>(below(101)) * 100);
            action.set(record, field::Mark::markedOn,
                       kMonday + static_cast<std::int64_t>(below(9)));
            action.set(record, field::Mark::by, me);
            action.set(record, field::Mark::note, "crew " + std::to_string(++words_));
            if (const RawId before = any<model::Mark>(actor); !before.isNil() && oneIn(3)) {
                action.set(record, field::Mark::voids, before);
            }
            break;
        case 2:
            action.set(record, field::Look::job, job_);
            action.set(record, field::Look::punch, any<model::Punch>(actor));
            action.set(record, field::Look::by, me);
            action.set(record, field::Look::said, std::string("said fixed"));
            break;
        case 3:
            action.set(record, field::Presence::job, job_);
            action.set(record, field::Presence::presentOn, kMonday);
            action.set(record, field::Presence::crew, actor.crew);
            break;
        case 4:
            action.set(record, field::Photo::job, job_);
            action.set(record, field::Photo::item, item);
            action.set(record, field::Photo::digest, "d" + std::to_string(++words_));
            action.set(record, field::Photo::purpose, std::string("site"));
            break;
        case 5:
            if (const RawId delivery = any<model::Delivery>(actor); !delivery.isNil()) {
                action.set(delivery, field::Delivery::arrivedOn,
                           kMonday + static_cast<std::int64_t>(below(5)));
            }
            break;
        default:
            if (const RawId caution = any<model::Caution>(actor); !caution.isNil()) {
                action.set(caution, field::Caution::acknowledgedBy, me);
            } else if (!item.isNil()) {
                action.set(item, field::Item::readyToLook, std::int64_t{1});
            }
    }
    commit(actor, action);
    if (oneIn(5)) {
        (void)actor.phone.book->undo(star_.stampOf(actor.phone));
    }
}

// What a program writes that was changed to write what it may not.
void World::cheat(Actor& actor) {
    Action action("cheat");
    const RawId item = any<model::Item>(actor);
    const RawId mark = any<model::Mark>(actor);
    if (item.isNil() || mark.isNil()) {
        return;
    }
    switch (below(4)) {
        case 0:
            action.set(item, field::Item::lumpSum, std::int64_t{1});
            break;
        case 1:
            action.set(item, field::Item::crew, crews_[below(crews_.size())]);
            action.set(item, field::Item::quantity, std::int64_t{1});
            break;
        case 2:
            action.drop(Kind::Mark, mark);
            break;
        default:
            action.set(mark, field::Mark::note, std::string("not so"));
            action.set(actor.phone.book->me().raw(), field::Person::role, std::string("owner"));
    }
    commit(actor, action);
}

void World::crash(Actor& actor) {
    actor.phone.book.reset();
    auto opened = store::Book::open(actor.phone.path, star_.random());
    if (!opened.ok()) {
        fail("a book did not open again: " + opened.error().message);
        return;
    }
    actor.phone.book = std::make_unique<store::Book>(std::move(opened).value());
}

void World::backUp(Actor& actor) {
    const std::string file = star_.file("backup-" + std::to_string(++files_));
    if (!actor.phone.book->backup(file).ok()) {
        fail("a book could not be backed up");
    }
    actor.backups.push_back(file);
}

void World::restore(Actor& actor) {
    if (actor.backups.empty()) {
        return;
    }
    const std::string file = star_.file("restored-" + std::to_string(++files_));
    std::filesystem::copy_file(actor.backups[below(actor.backups.size())], file);
    actor.phone.book.reset();
    actor.phone.path = file;
    actor.restored = true;
    crash(actor);
}

void World::crashPeer() {
    star_.peer.reset();
    star_.peerBook.reset();
    auto opened = tests::openBook(star_.peerPath, star_.random());
    if (!opened.ok()) {
        fail("the peer's book did not open again: " + opened.error().message);
        std::abort();  // nothing can go on without it
    }
    star_.peerBook = std::make_unique<store::Book>(std::move(opened).value());
    star_.openPeer();
}

void World::restorePeer() {
    for (const auto& actor : actors_) {
        if (actor->restored) {
            // Numbers used twice are seen by whoever still has the first use of them: where that
            // is lost as well, they are not. Told in docs/sync.md; not drawn here.
            return;
        }
    }
    // What only the peer had is lost with it. All else must come back.
    std::set<store::EntryName> held;
    for (const auto& actor : actors_) {
        if (actor->revoked) {
            continue;
        }
        for (const auto& entry : actor->phone.book->entries().value()) {
            held.insert(entry.name);
        }
        // An old copy may be restored yet, from before; what it would lack can't come back.
        actor->backups.clear();
        actor->past.clear();  // callers' signatures are good for two minutes
    }
    std::erase_if(acknowledged_, [&](const auto& one) { return !held.contains(one.first); });
    star_.peerPath = star_.file("peer-" + std::to_string(++files_));
    std::filesystem::copy_file(peerBackups_[below(peerBackups_.size())], star_.peerPath);
    crashPeer();
    if (!star_.peer->beginEpoch(star_.now()).ok()) {
        fail("the peer could not begin an epoch");
    }
    ++outcome_.restores;
}

void World::shutOut() {
    for (const auto& actor : actors_) {
        if (actor->revoked) {
            return;  // one is enough for a world of seven
        }
    }
    Actor& actor = *actors_[3 + below(actors_.size() - 3)];
    Action action("shut out");
    action.set(actor.phone.device(), field::Device::revokedOn, kMonday);
    if (!star_.peerBook->commit(action, star_.now()).ok()) {
        fail("a device could not be shut out");
    }
    actor.revoked = true;
}

}  // namespace ledgerboard::sim
