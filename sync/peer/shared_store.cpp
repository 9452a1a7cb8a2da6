#include "sync/peer/shared_store.h"

#include <algorithm>

#include "core/store/schema.h"
#include "sync/identity/pairing.h"

namespace ledgerboard::sync {

using model::Instant;
using model::RawId;
using model::Result;
using store::Database;
using store::Statement;

namespace {

constexpr const char* kTables = R"sql(
CREATE TABLE IF NOT EXISTS peer_devices(
    device ID NOT NULL PRIMARY KEY,
    key BYTES NOT NULL,
    role TEXT NOT NULL,
    crew ID NOT NULL,
    job ID NOT NULL,
    joined_ms INTEGER NOT NULL,
    revoked_ms INTEGER
) KEYED;
CREATE TABLE IF NOT EXISTS peer_invitations(
    handle TEXT NOT NULL PRIMARY KEY,
    code TEXT NOT NULL,
    role TEXT NOT NULL,
    crew ID NOT NULL,
    job ID NOT NULL,
    person ID NOT NULL,
    name TEXT NOT NULL,
    made_ms INTEGER NOT NULL,
    wrong INTEGER NOT NULL,
    taken_device ID,
    taken_key BYTES
) KEYED;
CREATE TABLE IF NOT EXISTS peer_nonces(
    device ID NOT NULL,
    nonce ID NOT NULL,
    until_ms INTEGER NOT NULL,
    PRIMARY KEY(device, nonce)
) KEYED;
CREATE INDEX IF NOT EXISTS peer_nonces_by_time ON peer_nonces(until_ms);
)sql";

std::string bytesOf(const PublicKey& key) {
    return {reinterpret_cast<const char*>(key.data()), key.size()};
}

std::optional<PublicKey> keyIn(const std::string& bytes) {
    PublicKey key{};
    if (bytes.size() != key.size()) {
        return std::nullopt;
    }
    std::copy(bytes.begin(), bytes.end(), key.begin());
    return key;
}

Instant instantIn(const Statement& select, int at) {
    return Instant::fromMilliseconds(select.integer(at));
}

// Whatever reads from here on knows no unset roles, and no keys of another length.
[[noreturn]] void doesNotRead(const char* what) {
    throw store::DatabaseFailure(model::ErrorCode::Damaged,
                                 std::string("the list of ") + what + " in the store is damaged");
}

std::optional<KnownDevice> knownIn(Database& database, const RawId& device) {
    auto select = database.prepare(
        "SELECT key, role, crew, job, revoked_ms FROM peer_devices WHERE device = ?1");
    if (!select.bind(1, device).step()) {
        return std::nullopt;
    }
    const auto key = keyIn(select.blob(0));
    const auto role = roleNamed(select.text(1));
    if (!key || role == model::Role::Unset) {
        doesNotRead("devices");
    }
    return KnownDevice{*key, {role, select.id(2), select.id(3)}, !select.isNull(4)};
}

std::size_t countIn(Database& database, const std::string& from) {
    auto select = database.prepare("SELECT count(*) FROM " + from);
    select.step();
    return static_cast<std::size_t>(select.integer(0));
}

std::optional<OpenInvitation> invitationIn(Database& database, const std::string& handle) {
    auto select = database.prepare(
        "SELECT code, role, crew, job, person, name, made_ms, wrong, taken_device, taken_key "
        "FROM peer_invitations WHERE handle = ?1");
    if (!select.bind(1, std::string_view(handle)).step()) {
        return std::nullopt;
    }
    auto code = PairingCode::parse(select.text(0));
    const auto role = roleNamed(select.text(1));
    const auto key = select.isNull(9) ? PublicKey{} : keyIn(select.blob(9));
    if (!code.ok() || role == model::Role::Unset || !key) {
        doesNotRead("invitations");
    }
    OpenInvitation invitation{code.value(),
                              {role, select.id(2), select.id(3), select.id(4), select.text(5)},
                              instantIn(select, 6),
                              static_cast<int>(select.integer(7))};
    if (!select.isNull(8)) {
        invitation.takenBy = std::pair(select.id(8), *key);
    }
    return invitation;
}

}  // namespace

Result<std::unique_ptr<SharedStore>> SharedStore::open(std::unique_ptr<store::Backend> backend) {
    std::unique_ptr<SharedStore> shared(new SharedStore(std::move(backend)));
    auto made = shared->change([](Database& database) {
        database.run(store::inWordsOf(database.dialect(), kTables));
        return true;
    });
    return made.ok() ? Result<std::unique_ptr<SharedStore>>(std::move(shared))
                     : Result<std::unique_ptr<SharedStore>>(made.error());
}

Result<void> SharedStore::with(const std::function<void(Database& database)>& work) {
    const std::lock_guard<std::mutex> lock(mutex_);
    try {
        work(database_);
        return {};
    } catch (const store::DatabaseFailure& failure) {
        return model::Error{failure.code(), failure.what()};
    }
}

Result<void> SharedStore::change(const std::function<bool(Database& database)>& work,
                                 store::Durable durable) {
    return with([&](Database& database) {
        store::Transaction transaction(database, durable);
        if (work(database)) {
            transaction.commit();
        }
    });
}

Result<std::optional<KnownDevice>> StoredDevices::find(const RawId& device) const {
    std::optional<KnownDevice> known;
    auto read = shared_.with([&](Database& database) { known = knownIn(database, device); });
    return read.ok() ? Result<std::optional<KnownDevice>>(known)
                     : Result<std::optional<KnownDevice>>(read.error());
}

Result<std::size_t> StoredDevices::count() const {
    std::size_t count = 0;
    auto read =
        shared_.with([&](Database& database) { count = countIn(database, "peer_devices"); });
    return read.ok() ? Result<std::size_t>(count) : Result<std::size_t>(read.error());
}

Result<Refusal> StoredDevices::admit(const RawId& device, const PublicKey& key, const Grant& grant,
                                     Instant now) {
    Refusal refusal = Refusal::None;
    auto done = shared_.change([&](Database& database) {
        if (const auto known = knownIn(database, device)) {
            refusal = known->key != key ? Refusal::DeviceTaken
                      : known->revoked  ? Refusal::Revoked
                                        : Refusal::None;
            return false;
        }
        if (countIn(database, "peer_devices") >= kMostDevices) {
            refusal = Refusal::Crowded;
            return false;
        }
        const std::string bytes = bytesOf(key);
        const std::string role = roleName(grant.role);
        auto insert = database.prepare(
            "INSERT INTO peer_devices(device, key, role, crew, job, joined_ms) "
            "VALUES(?1, ?2, ?3, ?4, ?5, ?6)");
        insert.bind(1, device)
            .bindBlob(2, bytes)
            .bind(3, std::string_view(role))
            .bind(4, grant.crew)
            .bind(5, grant.job)
            .bind(6, now.milliseconds())
            .run();
        return true;
    });
    return done.ok() ? Result<Refusal>(refusal) : Result<Refusal>(done.error());
}

Result<bool> StoredDevices::revoke(const RawId& device, Instant now) {
    bool changed = false;
    auto done = shared_.change([&](Database& database) {
        auto update = database.prepare(
            "UPDATE peer_devices SET revoked_ms = ?2 WHERE device = ?1 AND revoked_ms IS NULL");
        update.bind(1, device).bind(2, now.milliseconds()).run();
        changed = database.changes() > 0;
        return changed;
    });
    return done.ok() ? Result<bool>(changed) : Result<bool>(done.error());
}

Result<PairingCode> StoredInvitations::invite(const Grant& grant, Instant now) {
    std::optional<PairingCode> given;
    std::size_t open = 0;
    auto done = shared_.change([&](Database& database) {
        // One that is over is kept as long again, so that its holder is told so.
        auto forget = database.prepare("DELETE FROM peer_invitations WHERE made_ms < ?1");
        forget.bind(1, now.milliseconds() - 2 * kInvitationMs).run();
        open = countIn(database, "peer_invitations WHERE taken_device IS NULL AND made_ms >= " +
                                     std::to_string(now.milliseconds() - kInvitationMs));
        if (open >= kMostOpenInvitations) {
            return false;
        }
        auto code = PairingCode::fresh(random_);
        while (invitationIn(database, std::string(code.handle()))) {
            code = PairingCode::fresh(random_);
        }
        const std::string role = roleName(grant.role);
        auto insert = database.prepare(
            "INSERT INTO peer_invitations(handle, code, role, crew, job, person, name, made_ms, "
            "wrong) VALUES(?1, ?2, ?3, ?4, ?5, ?6, ?7, ?8, 0)");
        insert.bind(1, code.handle())
            .bind(2, std::string_view(code.plain()))
            .bind(3, std::string_view(role))
            .bind(4, grant.crew)
            .bind(5, grant.job)
            .bind(6, grant.person)
            .bind(7, std::string_view(grant.name))
            .bind(8, now.milliseconds())
            .run();
        given = code;
        return true;
    });
    if (!done.ok()) {
        return done.error();
    }
    if (!given) {
        return model::cannotBeMet(std::to_string(open) +
                                  " invitations are open: wait ten minutes for them to lapse");
    }
    return *given;
}

Redeemed StoredInvitations::redeem(const PairingRequest& request, Instant now) {
    Redeemed redeemed{Refusal::NoInvitation, {}, {}};
    auto done = shared_.change([&](Database& database) {
        auto invitation = invitationIn(database, request.handle);
        if (!invitation ||
            now.milliseconds() - invitation->made.milliseconds() > 2 * kInvitationMs) {
            return false;
        }
        redeemed = judge(*invitation, request, certificate_, now);
        auto update = database.prepare(
            "UPDATE peer_invitations SET wrong = ?2, taken_device = ?3, taken_key = ?4 "
            "WHERE handle = ?1");
        const auto& by = invitation->takenBy;
        const model::Value device = by ? model::Value{by->first} : model::Value{};
        const std::string key = by ? bytesOf(by->second) : std::string();
        update.bind(1, std::string_view(request.handle))
            .bind(2, std::int64_t{invitation->wrong})
            .bind(3, device)
            .bindBlob(4, key)
            .run();
        return true;
    });
    return done.ok() ? redeemed : Redeemed{Refusal::Unready, {}, {}};
}

void StoredNonces::forget(Database& database, std::int64_t nowMs) {
    constexpr std::int64_t kEveryMs = 1'000;
    if (nowMs - forgotMs_ >= 0 && nowMs - forgotMs_ < kEveryMs) {
        return;
    }
    auto remove = database.prepare("DELETE FROM peer_nonces WHERE until_ms < ?1");
    remove.bind(1, nowMs).run();
    count_ = static_cast<std::int64_t>(countIn(database, "peer_nonces"));
    forgotMs_ = nowMs;
}

Refusal StoredNonces::takeWithin(Database& database, const RawId& device, const RawId& nonce,
                                 Instant signedAt, Instant now) {
    forget(database, now.milliseconds());
    {
        auto select =
            database.prepare("SELECT 1 FROM peer_nonces WHERE device = ?1 AND nonce = ?2");
        if (select.bind(1, device).bind(2, nonce).step()) {
            return Refusal::Replayed;
        }
    }
    auto count = database.prepare("SELECT count(*) FROM peer_nonces WHERE device = ?1");
    count.bind(1, device).step();
    if (count_ >= static_cast<std::int64_t>(kMostNonces) ||
        count.integer(0) >= static_cast<std::int64_t>(kMostNoncesPerDevice)) {
        return Refusal::Crowded;
    }
    auto insert =
        database.prepare("INSERT INTO peer_nonces(device, nonce, until_ms) VALUES(?1, ?2, ?3)");
    insert.bind(1, device).bind(2, nonce).bind(3, signedAt.milliseconds() + kSignatureWindowMs);
    insert.run();
    ++count_;
    return Refusal::None;
}

Refusal StoredNonces::take(const RawId& device, const Nonce& nonce, Instant signedAt, Instant now) {
    Refusal refusal = Refusal::Unready;
    auto done = shared_.change(
        [&](Database& database) {
            const std::int64_t connections = database.backend().connections();
            if (connections_ != 0 && connections != connections_) {
                begin_ = std::max(begin_, now);
            }
            connections_ = connections;
            refusal = signedAt <= begin_
                          ? Refusal::Expired
                          : takeWithin(database, device, RawId(nonce), signedAt, now);
            return refusal == Refusal::None;
        },
        store::Durable::Later);
    return done.ok() ? refusal : Refusal::Unready;
}

}  // namespace ledgerboard::sync
