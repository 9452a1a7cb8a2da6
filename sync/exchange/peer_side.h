// What does the peer answer? Everything behind a call whose caller was verified: no socket, no
// clock, no source of chance.
//
// What each role is sent and may write is told in docs/sync.md and decided here, on the peer.
// Threads: one call at a time for each PeerSide; several may serve one book.
#pragma once

#include <functional>
#include <string>
#include <string_view>

#include "core/store/photos.h"
#include "core/store/sync_book.h"
#include "sync/exchange/may_write.h"
#include "sync/exchange/seal.h"
#include "sync/exchange/standing.h"
#include "sync/exchange/view.h"
#include "sync/wire/calls.h"
#include "sync/wire/messages.h"
#include "sync/wire/photo_messages.h"
#include "sync/wire/reply.h"

namespace ledgerboard::sync {

class PeerSide {
  public:
    // How long values that were written over are kept, and how long a silent device is waited for.
    struct Keeping {
        std::int64_t keptMs = kKeptMs;
        std::int64_t silentMs = kSilentMs;
        std::int64_t everyMs = kCompactEveryMs;
    };

    struct Parts {
        store::Book* book = nullptr;  // outlives the PeerSide
        model::FillRandom random;
        // A re-encoded copy of a photo without what its file says of place and camera, for other
        // roles than owner. Where there is none, they get no photos.
        std::function<model::Result<std::string>(std::string_view original)> copyOf;
        // The same, small enough to go first. Where there is none, copyOf's is taken.
        std::function<model::Result<std::string>(std::string_view original)> previewOf;
        Keeping keeping;
    };

    // Reads the peer's epoch and key from the book, makes them the first time. Errors: of the book.
    [[nodiscard]] static model::Result<PeerSide> open(Parts parts);

    // Answers one call of the device paired as `device`, which was verified. Never fails: what goes
    // wrong is a status. All that one call reads and writes is one transaction, so that several
    // peers can serve one book; but for photos, which are files and never change.
    [[nodiscard]] Reply answer(Call call, const model::RawId& device, std::string_view body,
                               model::Instant now);

    // Lets go of values that were written over long ago and that every owner's device has taken or
    // was silent too long to be waited for. Done by itself at a hello, once a day. Returns how many
    // went. Errors: of the book.
    [[nodiscard]] model::Result<std::size_t> compact(model::Instant now);

    // After the book was restored from a backup: devices are to send again what it lacks.
    // Errors: of the book.
    [[nodiscard]] model::Result<void> beginEpoch(model::Instant now);

  private:
    PeerSide(Parts parts, model::RawId epoch, Seal seal)
        : parts_(std::move(parts)),
          book_(*parts_.book),
          photos_(parts_.book->path()),
          epoch_(epoch),
          seal_(std::move(seal)) {}

    struct Judged;
    struct Self;
    static model::Result<Self> selfIn(store::SyncBook& book);
    model::Result<void> recallSelf();
    Reply answerWithin(Call call, const model::RawId& device, std::string_view body,
                       model::Instant now);
    model::Result<std::size_t> compactNow(model::Instant now);
    enum class Met { New, Known, Differs };

    Reply hello(Standing standing, std::string_view body, model::Instant now);
    model::Result<std::int64_t> takenByAll(model::Instant now);
    model::Result<bool> renew(const Standing& standing, const model::RawId& device,
                              model::Instant now);
    Reply push(const Standing& standing, std::string_view body, model::Instant now);
    model::Result<Status> judge(const Standing& standing, std::vector<store::Entry>& entries,
                                model::Instant now, Judged& judged);
    model::Result<bool> isOfPerson(const Standing& standing, const model::RawId& device);
    static Met metBefore(const store::Entry& entry, bool own, Judged& judged);
    model::Result<void> takeOrSetAside(const Standing& standing, store::Entry& entry,
                                       WriteJudge& writes, model::Instant now, Judged& judged);
    Reply shutOut(const Standing& standing, std::string_view body, model::Instant now);
    Reply pull(const Standing& standing, std::string_view body, model::Instant now);
    Reply pullLog(const Standing& standing, const std::string& cursor, model::Instant now);
    Reply pullView(const Standing& standing, const std::string& cursor, model::Instant now);
    Reply roster(const Standing& standing, model::Instant now);
    Reply photoHave(const Standing& standing, std::string_view body, model::Instant now);
    Reply photoPart(const Standing& standing, std::string_view body, model::Instant now);
    Reply putPhoto(const Standing& standing, const PhotoPart& part, model::Instant now);
    bool keepPreview(const PhotoPart& part);
    model::Result<std::string> copyFor(const std::string& digest, bool preview);
    Reply getPhoto(const Standing& standing, const GetPhotoAsk& ask, model::Instant now);

    model::Result<void> unseal(const model::RawId& device, store::Entry& entry);
    model::Result<std::vector<store::Entry>> sealed(const Standing& standing,
                                                    const ViewCells& cells,
                                                    const std::vector<store::SentCell>& chosen);

    Parts parts_;
    store::SyncBook book_;
    store::Photos photos_;
    model::RawId epoch_;
    Seal seal_;
};

}  // namespace ledgerboard::sync
