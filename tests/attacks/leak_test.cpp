// Protects: nothing that is the owner's alone ever reaches a crew lead's phone. Every field of
// every kind in the catalog is filled, thrice where it matters: for the lead's crew, for a
// neighbour's item and for somebody far. What a lead may see is written down here a second time, by
// hand; everything else holds an amount or a word that stands nowhere else, so a field that is
// added tomorrow is a secret until somebody says here that it is none. Then the lead's phones sync
// through everything: a first snapshot, photos, marks, something found, refusals, clashes, an item
// that goes to another crew and comes back, a second phone. Their files (with SQLite's log), the
// bytes of every call and answer, and the peer's log are searched in text and binary; and every
// entry on a phone must be of a field that is listed. That the search finds what is there is shown
// on the peer's own book.
#include <fstream>
#include <gmock/gmock.h>
#include <gtest/gtest.h>
#include <map>
#include <set>
#include <sstream>

#include "core/store/sync_book.h"
#include "sync/exchange/photo_files.h"

#include "tests/attacks/device.h"
#include "tests/support/pictures.h"

namespace ledgerboard::tests {
namespace {

namespace field = model::field;
using model::FieldCode;
using model::FieldType;
using model::Kind;
using model::RawId;
using model::Value;

// Source: docs/sync.md, "Who gets what": what a crew lead sees of own records. An owner's words in
// a mark's or look's note and a photo's caption stay with owners, so those three are not here.
const std::map<Kind, std::set<std::string>>& seenOfOwn() {
    static const std::map<Kind, std::set<std::string>> kSeen = {
        {Kind::Job,
         {"name", "address", "built_year", "begin_on", "target_finish_on", "work_week", "holidays",
          "currency", "time_zone", "access", "half_days"}},
        {Kind::Space,
         {"job", "name", "short_name", "floor", "walk_order", "swatch", "floor_area", "wall_area",
          "ceiling_height", "one_crew_at_a_time"}},
        {Kind::Item,
         {"job",
          "space",
          "treatment",
          "object",
          "trade",
          "quantity",
          "unit",
          "crew",
          "days_likely",
          "planned_start_on",
          "planned_finish_on",
          "actual_start_on",
          "actual_finish_on",
          "measure",
          "steps",
          "condition",
          "hazards",
          "accepted_on",
          "selection",
          "instructions",
          "do_not_cover",
          "ready_to_look",
          "reason"}},
        {Kind::Crew, {"name", "trade"}},
        {Kind::Mark,
         {"job", "item", "percent", "count", "steps_done", "marked_on", "by", "photo", "voids",
          "in_spite_of_caution"}},
        {Kind::Photo,
         {"job", "space", "item", "punch", "taken_at", "stage", "pairs_with", "spot", "width",
          "height", "for_crews"}},
        {Kind::Punch, {"job", "space", "what", "crew", "due_on", "found_on", "item"}},
        {Kind::Look, {"job", "punch", "looked_on", "by", "said", "photo"}},
        {Kind::Delivery,
         {"job", "item", "ordered_on", "promised_on", "arrived_on", "looked_at_on",
          "wrong_or_missing"}},
        {Kind::Caution,
         {"job", "item", "about", "why", "acknowledged_by", "acknowledged_on", "test_result"}},
        {Kind::Presence, {"job", "present_on", "crew"}},
        {Kind::Person, {"name"}},
    };
    return kSeen;
}

// Of another crew's item nearby.
const std::set<std::string>& seenOfNeighbour() {
    static const std::set<std::string> kSeen = {"job",
                                                "space",
                                                "treatment",
                                                "object",
                                                "trade",
                                                "planned_start_on",
                                                "planned_finish_on",
                                                "actual_finish_on"};
    return kSeen;
}

enum class Whose { Own, Neighbour, Far };

constexpr std::int64_t kFirstAmount = 7'770'000'000'000;  // 13 digits; six bytes in a file

std::string bigEndian(std::int64_t number) {
    std::string bytes;
    for (int shift = 40; shift >= 0; shift -= 8) {
        bytes += static_cast<char>(number >> shift & 0xff);
    }
    return bytes;
}

std::string contentsOf(const std::filesystem::path& path) {
    std::ifstream in(path, std::ios::binary);
    return {std::istreambuf_iterator<char>(in), {}};
}

// What was planted, and how it would look where it must not be.
class Planted {
  public:
    struct Secret {
        std::string what;                // kind, field and whose, for the message
        std::vector<std::string> forms;  // any of them is a hit
    };

    std::int64_t amount(const std::string& what) {
        const std::int64_t number = kFirstAmount + 1'000'003 * static_cast<int>(++count_);
        std::string digits = std::to_string(number);
        secrets_.push_back({what, {digits, bigEndian(number)}});
        digits.insert(digits.size() - 2, ".");
        secrets_.back().forms.push_back(digits);
        return number;
    }

    std::string word(const std::string& what) {
        std::string text = "SECRET-" + std::to_string(++count_) + "-word";
        secrets_.push_back({what, {text}});
        return text;
    }

    void add(const std::string& what, std::vector<std::string> forms) {
        secrets_.push_back({what, std::move(forms)});
    }

    [[nodiscard]] std::vector<std::string> foundIn(const std::string& bytes) const {
        std::vector<std::string> found;
        for (const auto& secret : secrets_) {
            for (const auto& form : secret.forms) {
                if (bytes.find(form) != std::string::npos) {
                    found.push_back(secret.what);
                    break;
                }
            }
        }
        return found;
    }

    [[nodiscard]] const std::vector<Secret>& all() const { return secrets_; }

  private:
    std::size_t count_ = 0;
    std::vector<Secret> secrets_;
};

class Leak : public testing::Test {
  protected:
    Leak() : laptop_(peer_, peer_.code(), 1, planted_.word("device.name")) { meet(laptop_); }

    static bool isSeen(const model::Field& known, Whose whose) {
        if (whose == Whose::Own) {
            const auto seen = seenOfOwn().find(known.kind);
            return seen != seenOfOwn().end() && seen->second.contains(std::string(known.name));
        }
        return whose == Whose::Neighbour && known.kind == Kind::Item &&
               seenOfNeighbour().contains(std::string(known.name));
    }

    // The record of `kind` that a reference of one that is `whose` leads to.
    RawId meant(Kind kind, Whose whose) {
        const bool own = whose == Whose::Own || kind == Kind::Job;
        return own ? own_[kind] : other_[kind];
    }

    // Fields whose planted value would take away the very sight that is tried out, each with its
    // own record further down: what they are, stands in place().
    static bool isPlacedByHand(const model::Field& known) {
        static const std::set<FieldCode> kByHand = {field::Item::option,
                                                    field::Item::treatment,
                                                    field::Item::space,
                                                    field::Item::crew,
                                                    field::Item::plannedStartOn,
                                                    field::Item::plannedFinishOn,
                                                    field::Mark::voids,
                                                    field::Look::by,
                                                    field::Mark::by,
                                                    field::Photo::purpose,
                                                    field::Photo::digest,
                                                    field::Alternate::chosen,
                                                    field::Link::fromItem,
                                                    field::Link::toItem,
                                                    field::Caution::acknowledgedBy,
                                                    field::Spend::voids};
        return kByHand.contains(known.code);
    }

    Value amountValue(const model::Field& known, const std::string& what, bool secret) {
        const std::int64_t number = secret ? planted_.amount(what) : std::int64_t{12};
        if (model::checkValue(known, Value{number}).ok()) {
            return number;
        }
        // Too large for the field: found by the list of entries alone.
        return std::int64_t{12};
    }

    Value valueFor(const model::Field& known, Whose whose) {
        const bool secret = !isSeen(known, whose);
        const std::string what = std::string(model::infoOf(known.kind).name) + "." +
                                 std::string(known.name) +
                                 (whose == Whose::Own         ? " (own)"
                                  : whose == Whose::Neighbour ? " (neighbour's)"
                                                              : " (far)");
        const auto word = [&] { return secret ? planted_.word(what) : std::string("plain"); };
        const auto amount = [&] { return secret ? planted_.amount(what) : std::int64_t{12}; };
        switch (known.type) {
            case FieldType::Text:
                return word();
            case FieldType::Money:
            case FieldType::Quantity:
            case FieldType::Count:
            case FieldType::Instant:
                return amountValue(known, what, secret);
            case FieldType::Flag:
                return std::int64_t{whose == Whose::Own ? 1 : 0};
            case FieldType::Percent:
                return std::int64_t{4'321};
            case FieldType::Date:
                return std::int64_t{20'561};
            case FieldType::Weekdays:
                return std::int64_t{31};
            case FieldType::Words:
                return std::string(known.words[1]);
            case FieldType::Ref:
                return meant(known.meant, whose);
            case FieldType::Refs:
                return "[\"" + meant(known.meant, whose).hex() + "\"]";
            case FieldType::Amounts:
                return "[[\"" + word() + "\"," + std::to_string(amount()) + "]]";
            case FieldType::Steps:
                return "[[\"" + word() + "\",10000]]";
            case FieldType::ItemAmounts:
                return "[[\"" + meant(Kind::Item, whose).hex() + "\"," + std::to_string(amount()) +
                       "]]";
            case FieldType::Dates:
                return std::string("[20561]");
        }
        return {};
    }

    void fill(store::Action& action, Kind kind, const RawId& id, Whose whose) {
        for (const auto& known : model::infoOf(kind).fields) {
            if (isPlacedByHand(known)) {
                continue;
            }
            const Value value = valueFor(known, whose);
            ASSERT_TRUE(model::checkValue(known, value).ok())
                << known.name << ": this test does not know how to fill it";
            action.set(id, known.code, value);
        }
        whose_[id] = {kind, whose};
    }

    void placeItem(store::Action& action, const RawId& item, const RawId& crew, const RawId& space,
                   std::int64_t day) {
        action.set(item, field::Item::treatment, std::string("replace"));
        action.set(item, field::Item::crew, crew);
        action.set(item, field::Item::space, space);
        action.set(item, field::Item::plannedStartOn, day);
        action.set(item, field::Item::plannedFinishOn, day + 2);
    }

    // Everything of the catalog, once for the crew and once for another.
    void plant() {
        for (const auto& info : model::kinds()) {
            own_[info.kind] = laptop_.book->newId(laptop_.stamp());
            other_[info.kind] = laptop_.book->newId(laptop_.stamp());
        }
        own_[Kind::Person] = laptop_.book->me().raw();
        own_[Kind::Device] = other_[Kind::Device] = laptop_.book->thisDevice().raw();
        store::Action action("everything");
        for (const auto& info : model::kinds()) {
            if (info.kind == Kind::Person || info.kind == Kind::Device) {
                continue;
            }
            fill(action, info.kind, own_[info.kind], Whose::Own);
            fill(action, info.kind, other_[info.kind],
                 info.kind == Kind::Item ? Whose::Neighbour : Whose::Far);
            if (!seenOfOwn().contains(info.kind)) {
                // Not even that there is such a record.
                const RawId& id = own_[info.kind];
                const auto& bytes = id.bytes();
                planted_.add("the id of " + std::string(info.name),
                             {id.hex(), std::string(bytes.begin(), bytes.end())});
            }
        }
        fill(action, Kind::Person, other_[Kind::Person], Whose::Far);
        place(action);
        write(laptop_, action);
    }

    void place(store::Action& action) {
        constexpr std::int64_t kDay = 20'560;
        placeItem(action, own_[Kind::Item], own_[Kind::Crew], own_[Kind::Space], kDay);
        placeItem(action, other_[Kind::Item], other_[Kind::Crew], own_[Kind::Space], kDay + 3);
        // An item of the crew that is only one way of an open decision; somebody's far away.
        for (const bool open : {true, false}) {
            const RawId item = laptop_.book->newId(laptop_.stamp());
            fill(action, Kind::Item, item, Whose::Far);
            placeItem(action, item, open ? own_[Kind::Crew] : other_[Kind::Crew],
                      other_[Kind::Space], kDay + 60);
            if (open) {
                action.set(item, field::Item::option, own_[Kind::Option]);
            }
        }
        action.set(own_[Kind::Link], field::Link::fromItem, own_[Kind::Item]);
        action.set(own_[Kind::Link], field::Link::toItem, other_[Kind::Item]);
        for (const auto& [id, code] : {std::pair(own_[Kind::Mark], field::Mark::by),
                                       std::pair(own_[Kind::Look], field::Look::by),
                                       std::pair(other_[Kind::Mark], field::Mark::by),
                                       std::pair(other_[Kind::Look], field::Look::by)}) {
            action.set(id, code, own_[Kind::Person]);
        }
        const RawId receipt = laptop_.book->newId(laptop_.stamp());
        fill(action, Kind::Photo, receipt, Whose::Far);
        action.set(receipt, field::Photo::item, own_[Kind::Item]);
        placePhoto(action, own_[Kind::Photo], "site", 1);
        placePhoto(action, other_[Kind::Photo], "site", 2);
        placePhoto(action, receipt, "receipt", 3);
        receipt_ = receipt;
    }

    // A picture with a note of the camera in it that stands nowhere else.
    void placePhoto(store::Action& action, const RawId& photo, const char* purpose, int shade) {
        const std::string note = planted_.word("what the camera wrote");
        std::string jpeg = withOrientation(paintedJpeg(320, 240, kUpright, shade), 1);
        const std::string comment =
            "\xFF\xFE" + std::string(1, '\0') + static_cast<char>(note.size() + 2) + note;
        jpeg = jpeg.substr(0, 2) + comment + jpeg.substr(2);
        const std::string digest = store::Photos(laptop_.path).keep(jpeg).value();
        planted_.add(std::string("the digest of a photo: ") + purpose, {digest});
        planted_.add(std::string("the bytes of a photo: ") + purpose, {jpeg.substr(60, 200)});
        action.set(photo, field::Photo::digest, digest);
        action.set(photo, field::Photo::purpose, std::string(purpose));
    }

    // Two owners change every checked field of the own item and job that is a secret, apart.
    void clash(Device& other) {
        meet(other);
        for (Device* device : {&laptop_, &other}) {
            store::Action action("clash");
            for (const Kind kind : {Kind::Item, Kind::Job}) {
                for (const auto& known : model::infoOf(kind).fields) {
                    if (known.merge == model::Merge::Checked && !isSeen(known, Whose::Own) &&
                        !isPlacedByHand(known) && known.type == FieldType::Money) {
                        action.set(own_[kind], known.code, valueFor(known, Whose::Own));
                    }
                }
            }
            write(*device, action);
        }
        meet(laptop_);
        meet(other);
        meet(laptop_);
        EXPECT_GT(store::SyncBook(*laptop_.book).clashes().value().size(), 5U);
    }

    // Something the crew found, with what it asks for: the owner signs it and writes in it what is
    // nobody else's to read.
    void findSomething(Device& lead) {
        const RawId change = lead.book->newId(lead.stamp());
        store::Action found("found something");
        found.set(change, field::Change::job, own_[Kind::Job]);
        found.set(change, field::Change::items, "[\"" + own_[Kind::Item].hex() + "\"]");
        found.set(change, field::Change::name, std::string("joists are rotten"));
        found.set(change, field::Change::amount, std::int64_t{45'000});
        found.set(change, field::Change::askedOn, std::int64_t{20'561});
        write(lead, found);
        meet(lead);
        meet(laptop_);
        ASSERT_TRUE(laptop_.book->record(Kind::Change, change).value().has_value());
        EXPECT_FALSE(lead.book->record(Kind::Change, change).value().has_value());
        store::Action sign("sign");
        sign.set(change, field::Change::why, planted_.word("why a change asked for was signed"));
        sign.set(change, field::Change::amount, planted_.amount("the sum it was signed at"));
        sign.set(change, field::Change::contract, own_[Kind::Contract]);
        sign.set(change, field::Change::signedOn, std::int64_t{20'562});
        write(laptop_, sign);
        meet(laptop_);
        meet(lead);
        EXPECT_FALSE(lead.book->record(Kind::Change, change).value().has_value());
    }

    // What a lead may not do or know, asked for all the same.
    void tryWhatIsRefused(Device& lead) {
        store::Action wrong("not mine");
        for (const auto& known : model::infoOf(Kind::Item).fields) {
            if (known.type == FieldType::Money) {
                wrong.set(own_[Kind::Item], known.code, std::int64_t{55});
            }
        }
        write(lead, wrong);
        meet(lead);
        for (const auto& [kind, id] : own_) {
            lead.call(sync::Call::PhotoPart, sync::write(sync::GetPhotoAsk{"", id, 0, false}));
        }
        lead.call(sync::Call::PhotoPart, sync::write(sync::GetPhotoAsk{"", receipt_, 0, true}));
        lead.call(sync::Call::Roster, "{}");
        lead.call(sync::Call::Invite, R"({"role":"owner"})");
        lead.call(sync::Call::Pull, R"({"cursor":"no cursor of yours"})");
        lead.call(sync::Call::Push, R"({"ids":[],"entries":[[1]]})");
        lead.call(sync::Call::Hello, "[[[[");
        lead.call(sync::Call::Snapshot, sync::write(sync::PullAsk{}));
    }

    void expectNothingIn(const std::string& bytes, const std::string& where) {
        for (const auto& secret : planted_.foundIn(bytes)) {
            ADD_FAILURE() << where << " holds " << secret;
        }
    }

    // Every entry on the phone that it did not write itself is of a field that is listed above.
    void expectListedEntriesOn(Device& lead) {
        store::SyncBook sync(*lead.book);
        for (const auto& one : sync.after({0, 1'000'000, std::size_t{1} << 30, {}, {}}).value()) {
            const auto planted = whose_.find(one.entry.record);
            const model::Field* known = model::fieldOf(one.entry.field);
            if (one.entry.name.device == lead.book->thisDevice().raw() || known == nullptr ||
                planted == whose_.end()) {
                continue;
            }
            EXPECT_TRUE(isSeen(*known, planted->second.second))
                << model::infoOf(known->kind).name << "." << known->name << " is on the phone";
        }
    }

    void expectNothingOn(Device& lead) {
        const std::string name = std::filesystem::path(lead.path).filename().string();
        std::size_t files = 0;
        for (const auto& file :
             std::filesystem::recursive_directory_iterator(peer_.folder().path())) {
            const bool its = file.path().string().rfind(lead.path, 0) == 0;
            if (its && file.is_regular_file()) {
                ++files;
                expectNothingIn(contentsOf(file.path()), file.path().filename().string());
            }
        }
        EXPECT_GE(files, 2U) << name;  // the book and its write-ahead log, which is searched too
        expectNothingIn(lead.wire, "the wire of " + name);
        expectListedEntriesOn(lead);
    }

    // The search has teeth: all that was planted is found where it may be.
    void expectAllAtThePeer() {
        std::string all;
        for (const auto& file :
             std::filesystem::recursive_directory_iterator(peer_.folder().path())) {
            const bool its = file.path().string().rfind(peer_.folder().file("house.book"), 0) == 0;
            all += its && file.is_regular_file() ? contentsOf(file.path()) : "";
        }
        const auto found = planted_.foundIn(all);
        const std::set<std::string> names(found.begin(), found.end());
        for (const auto& secret : planted_.all()) {
            EXPECT_TRUE(names.contains(secret.what)) << secret.what << " is not found at the peer";
        }
        EXPECT_GT(planted_.all().size(), 300U);
    }

    PeerProcess peer_;
    Planted planted_;
    Device laptop_;
    std::map<Kind, RawId> own_, other_;
    std::map<RawId, std::pair<Kind, Whose>> whose_;
    RawId receipt_;
};

TEST_F(Leak, NothingOfTheOwnersReachesACrewLeadsPhone) {
    plant();
    meet(laptop_);
    ASSERT_TRUE(laptop_.meetPhotos(true).ok());
    const nlohmann::json grant{{"role", "crew lead"}, {"crew", own_[Kind::Crew].hex()}};
    Device lead(peer_, laptop_.invite(grant), 3);
    meet(lead);
    EXPECT_TRUE(lead.meetPhotos(false).ok());
    EXPECT_GT(lead.book->rows<model::Item>().value().size(), 1U);  // the own and the neighbour's
    const auto copies = std::filesystem::path(lead.path + ".photos") / sync::kCopies;
    EXPECT_TRUE(std::filesystem::exists(copies / own_[Kind::Photo].hex()));
    findSomething(lead);
    tryWhatIsRefused(lead);

    Device other(peer_, laptop_.invite({{"role", "owner"}}), 4, planted_.word("device.name (2)"));
    clash(other);
    meet(lead);
    for (const RawId& crew : {other_[Kind::Crew], own_[Kind::Crew]}) {
        store::Action move("reassign");
        move.set(own_[Kind::Item], field::Item::crew, crew);
        write(laptop_, move);
        meet(laptop_);
        meet(lead);
        EXPECT_TRUE(lead.meetPhotos(false).ok());
    }
    Device second(peer_, laptop_.invite(grant), 5);
    meet(second);
    EXPECT_TRUE(second.meetPhotos(false).ok());

    expectNothingOn(lead);
    expectNothingOn(second);
    expectNothingIn(peer_.logged(), "the peer's log");
    expectNothingIn(peer_.printed(), "what the peer prints");
    expectAllAtThePeer();
}

}  // namespace
}  // namespace ledgerboard::tests
