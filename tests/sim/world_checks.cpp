// What must hold once all have met.
#include <algorithm>
#include <filesystem>
#include <fstream>

#include "tests/sim/world.h"

namespace ledgerboard::sim {

namespace field = model::field;
using model::Kind;
using model::RawId;
using model::Role;
using store::Entry;
using sync::Call;

namespace {

std::string wholeFile(const std::string& path) {
    std::ifstream file(path, std::ios::binary | std::ios::ate);
    if (!file) {
        return {};
    }
    std::string bytes(static_cast<std::size_t>(file.tellg()), '\0');
    file.seekg(0);
    file.read(bytes.data(), static_cast<std::streamsize>(bytes.size()));
    return bytes;
}

std::string nameOf(const Entry& entry) {
    return "entry " + entry.name.device.hex().substr(24) + "/" +
           std::to_string(static_cast<int>(entry.name.lane)) + "/" +
           std::to_string(entry.name.number) + " of field " + std::to_string(entry.field) + " at " +
           std::to_string(entry.clock.raw());
}

bool same(const Entry& a, const Entry& b) {
    return a.name == b.name && a.clock == b.clock && a.record == b.record && a.field == b.field &&
           a.value == b.value;
}

// The first line in which two texts differ.
std::string firstDifference(const std::string& a, const std::string& b) {
    const auto at = static_cast<std::size_t>(
        std::mismatch(a.begin(), a.end(), b.begin(), b.end()).first - a.begin());
    const auto line = a.rfind('\n', at) + 1;
    const auto recordAt = a.rfind("\n", line > 200 ? line - 200 : 0);
    return "\n...\n" + a.substr(recordAt + 1, at - recordAt + 60) + "\n--- instead of ---\n" +
           b.substr(recordAt + 1, at - recordAt + 60);
}

RawId refIn(const store::Record& record, model::FieldCode code) {
    const auto* id = std::get_if<RawId>(&record.at(code));
    return id != nullptr ? *id : RawId{};
}

}  // namespace

void World::check() {
    // All of them where there is time, otherwise another one in each world.
    for (std::size_t k = 0; k < actors_.size(); ++k) {
        if (!tests::isLong() && k != seed_ % actors_.size()) {
            continue;
        }
        const auto report = actors_[k]->phone.book->verify(false).value();
        if (!report.findings.empty()) {
            fail("a device's book does not add up: " + report.findings.front().what);
        }
    }
    const auto report = star_.peerBook->verify(false).value();
    // References may lead to what was lost with a restored peer, and planted records to nothing.
    for (const auto& finding : report.findings) {
        if (finding.what.find("that is not in the book") == std::string::npos) {
            fail("the peer's book does not add up: " + finding.what);
        }
    }
    checkOwners();
    checkOthers();
    checkAcknowledged();
    checkFiles();
}

// Whether a value was written over and may be gone: an entry that is not there, and whose field
// holds a later one.
bool World::mayBeGone(const Entry& entry) {
    const model::Field* known = model::fieldOf(entry.field);
    if (known == nullptr || known->merge != model::Merge::Last ||
        known->type == model::FieldType::Money || known->type == model::FieldType::Amounts ||
        known->type == model::FieldType::ItemAmounts) {
        return false;
    }
    for (const auto& one : store::SyncBook(*star_.peerBook).cellsOf(entry.record).value()) {
        if (one.entry.field == entry.field) {
            return one.entry.name != entry.name &&
                   store::beats(known->merge, one.entry.clock, one.entry.name, entry.clock,
                                entry.name);
        }
    }
    return false;
}

// An owner's log is the peer's, but for what the one or the other let go.
void World::sameLog(const std::vector<Entry>& own, const std::vector<Entry>& peers) {
    auto missing = [&](const Entry& entry, const char* whose) {
        if (!mayBeGone(entry)) {
            fail(std::string(whose) + " log lacks or has otherwise " + nameOf(entry));
        }
    };
    auto mine = own.begin();
    auto theirs = peers.begin();
    while (mine != own.end() || theirs != peers.end()) {
        if (mine != own.end() && theirs != peers.end() && same(*mine, *theirs)) {
            ++mine;
            ++theirs;
        } else if (theirs == peers.end() || (mine != own.end() && mine->name < theirs->name)) {
            missing(*mine++, "the peer's");
        } else {
            missing(*theirs++, "an owner's");
        }
    }
}

void World::checkOwners() {
    auto sorted = [](const store::Book& book) {
        auto entries = book.entries().value();
        std::sort(entries.begin(), entries.end(),
                  [](const Entry& a, const Entry& b) { return a.name < b.name; });
        return entries;
    };
    const auto log = sorted(*star_.peerBook);
    const std::string dump = star_.peerBook->dump().value();
    const auto asides = store::SyncBook(*star_.peerBook).asides(0, 100'000).value();
    const auto clashes = store::SyncBook(*star_.peerBook).clashes().value();
    for (const auto& actor : actors_) {
        if (actor->role != Role::Owner) {
            continue;
        }
        store::SyncBook sync(*actor->phone.book);
        if (actor->phone.book->dump().value() != dump) {
            fail("an owner's cells differ from the peer's: " +
                 firstDifference(actor->phone.book->dump().value(), dump));
        }
        sameLog(sorted(*actor->phone.book), log);
        std::set<store::EntryName> known;
        for (const auto& aside : sync.asides(0, 100'000).value()) {
            known.insert(aside.entry.name);
        }
        for (const auto& aside : asides) {
            if (!known.contains(aside.entry.name)) {
                fail("what was set aside did not reach an owner: " + nameOf(aside.entry));
            }
        }
        if (sync.clashes().value().size() != clashes.size()) {
            fail("an owner sees other clashes than the peer");
        }
    }
    outcome_.clashes += clashes.size();
}

void World::checkOthers() {
    for (const auto& actor : actors_) {
        if (actor->role == Role::Owner || actor->revoked) {
            continue;
        }
        const std::string step = actor->phone.book->dump().value();
        const std::string nothing = fromNothing(*actor);
        if (step != nothing) {
            fail("step by step a " + std::string(model::wordOf(actor->role)) +
                 " has something else than from nothing: " + firstDifference(step, nothing));
        }
        if (actor->role == Role::CrewLead) {
            checkLead(*actor);
        }
    }
}

// Who wrote what a cell holds, by the peer's log; nil where it holds nothing.
RawId World::authorOf(const RawId& record, model::FieldCode code) {
    for (const auto& one : store::SyncBook(*star_.peerBook).cellsOf(record).value()) {
        if (one.entry.field == code) {
            return one.entry.name.device;
        }
    }
    return {};
}

// Against the owner's rows, told a second time: own items are there with what a crew reads, others
// are not.
void World::checkLead(const Actor& actor) {
    const auto& book = *actor.phone.book;
    std::set<RawId> chosen;
    for (const auto& alternate : star_.peerBook->rows<model::Alternate>().value()) {
        chosen.insert(alternate.chosen.raw());
    }
    std::set<RawId> own;
    for (const auto& item : star_.peerBook->rows<model::Item>().value()) {
        const bool open = !item.option.isNil() && !chosen.contains(item.option.raw());
        const auto row = book.record(Kind::Item, item.id.raw()).value();
        const bool mine = item.crew.raw() == actor.crew && !open;
        if (mine) {
            own.insert(item.id.raw());
            const auto theirs = star_.peerBook->record(Kind::Item, item.id.raw()).value();
            if (!row || row->at(field::Item::quantity) != theirs->at(field::Item::quantity)) {
                fail("a crew lead lacks the quantity of an own item");
            }
        }
        const auto crew = row ? refIn(*row, field::Item::crew) : RawId{};
        if (row && !mine && (!crew.isNil() || !model::isEmpty(row->at(field::Item::quantity)))) {
            fail("a crew lead has another crew's item with its quantity");
        }
        if (row && open) {
            fail("a crew lead has an item of an option that was not chosen");
        }
    }
    std::size_t marks = 0;
    for (const auto& mark : star_.peerBook->rows<model::Mark>().value()) {
        if (own.contains(mark.item.raw())) {
            ++marks;
            if (!book.record(Kind::Mark, mark.id.raw()).value()) {
                fail("a crew lead lacks a mark of an own item");
            }
        }
    }
    if (book.records(Kind::Mark, {}, true).value().size() != marks) {
        fail("a crew lead has marks of other crews' items");
    }
    // Its own photos keep their digest, which it finds their files by; those of others have none.
    for (const auto& photo : book.records(Kind::Photo, {}, true).value()) {
        const auto author = authorOf(photo.id, field::Photo::digest);
        if (model::isEmpty(photo.at(field::Photo::digest)) == actor.names.contains(author)) {
            fail("a crew lead lacks the digest of an own photo, or has that of another");
        }
    }
    for (const auto& punch : book.rows<model::Punch>().value()) {
        if (punch.crew.raw() != actor.crew && !own.contains(punch.item.raw())) {
            fail("a crew lead has another crew's punch item");
        }
    }
}

void World::checkAcknowledged() {
    store::SyncBook peer(*star_.peerBook);
    std::set<RawId> shutOut;
    for (const auto& actor : actors_) {
        if (actor->revoked) {
            shutOut.insert(actor->names.begin(), actor->names.end());
        }
    }
    for (const auto& [name, entry] : acknowledged_) {
        const auto known = peer.entryNamed(name).value();
        outcome_.compacted += known && known->compacted ? 1 : 0;
        const bool there = known && !known->compacted && same(known->entry, entry);
        if (!there && !mayBeGone(entry) && !shutOut.contains(name.device)) {
            fail("the peer acknowledged it and does not have it: " + nameOf(entry));
        }
    }
    for (const auto& actor : actors_) {
        if (actor->revoked) {
            continue;
        }
        for (const auto& entry : actor->phone.book->entries().value()) {
            if (entry.name.device == actor->phone.device() &&
                entry.name.lane != store::Lane::Sealed && !peer.entryNamed(entry.name).value()) {
                fail("a device wrote it and the peer does not have it: " + nameOf(entry));
            }
        }
    }
}

void World::checkFiles() {
    for (const auto& actor : actors_) {
        if (actor->role == Role::Owner) {
            continue;
        }
        for (const auto* tail : {"", "-wal", "-shm"}) {
            const std::string path = actor->phone.path + tail;
            if (auto leak = leaks_.find(wholeFile(path), actor->role == Role::Viewer)) {
                fail("the file of a " + std::string(model::wordOf(actor->role)) + " holds " +
                     *leak);
            }
        }
    }
    // The search finds what is there: an owner's own file is full of it.
    const std::string& path = actors_.front()->phone.path;
    const std::string all = wholeFile(path) + wholeFile(path + "-wal");
    if (!leaks_.find(all, false) || !leaks_.find(all, true)) {
        fail("the search for leaks finds nothing even where everything is");
    }
}

std::string World::fromNothing(const Actor& actor) {
    auto book = store::Book::createJoined(star_.file("nothing-" + std::to_string(++files_)),
                                          actor.phone.book->thisDevice(), actor.phone.book->me(),
                                          star_.random())
                    .value();
    store::SyncBook sync(book);
    sync::PullAnswer answer;
    do {
        const auto reply =
            star_.peer->answer(Call::Snapshot, actor.phone.key,
                               sync::write(sync::PullAsk{answer.cursor}), star_.now());
        auto read = sync::readPullAnswer(reply.body);
        if (!read.ok()) {
            fail("a pull from nothing was refused: " + reply.body);
            return "";
        }
        answer = std::move(read).value();
        store::Taking taking;
        taking.entries = answer.entries;
        taking.forget = answer.drops;
        if (!sync.take(taking).ok()) {
            fail("a pull from nothing could not be taken");
        }
    } while (answer.more);
    return book.dump().value();
}

}  // namespace ledgerboard::sim
