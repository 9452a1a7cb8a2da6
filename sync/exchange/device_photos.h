// How do photos get from a device to the peer and back? Small copies first, then the pictures in
// parts, each going on from what is there already.
//
// An owner's device ends with every original, and with the sounds of spoken notes. Another's sends
// what it took, and has of what it may see a small copy and a larger one, made by the peer:
// previews/<photo's id> and copies/<photo's id> in the photo folder. What it may not see any more
// is removed. Entries do not wait for any of it. Threads: one at a time.
#pragma once

#include <functional>
#include <map>
#include <set>
#include <string>
#include <vector>

#include "core/store/photos.h"
#include "core/store/sync_book.h"
#include "sync/exchange/device_side.h"
#include "sync/wire/photo_messages.h"

namespace ledgerboard::sync {

// How it went. Counts are of pictures, bytes of what was sent and taken of them.
struct PhotoMeeting {
    std::size_t sent = 0;
    std::size_t received = 0;
    std::size_t waiting = 0;  // not come yet: whoever took them has not met the peer since
    std::size_t removed = 0;  // not for this device any more
    std::int64_t sentBytes = 0;
    std::int64_t receivedBytes = 0;
    std::vector<std::string> refused;  // a sentence for each that could not be sent
};

class DevicePhotos {
  public:
    struct Parts {
        store::Book* book = nullptr;  // outlives it
        store::Photos photos;
        Carry carry;
        bool owner = false;
        // A small copy of a picture, to be sent before it. Where there is none, none is sent.
        std::function<model::Result<std::string>(std::string_view original)> previewOf;
        // Told after each picture: how many are done of how many. May be empty.
        std::function<void(std::size_t done, std::size_t all)> progress;
    };

    explicit DevicePhotos(Parts parts) : parts_(std::move(parts)) {}

    // Sends and takes everything there is. Errors (CannotBeMet): the peer was not reached; what was
    // done until then is kept, as meeting() says, and gone on from next time. Of the book, the
    // disk.
    [[nodiscard]] model::Result<void> meet();

    [[nodiscard]] const PhotoMeeting& meeting() const { return meeting_; }

    // How many pictures the peer is not known to have. Errors: of the book.
    [[nodiscard]] model::Result<std::size_t> waitingHere();

  private:
    struct Wanted {
        model::RawId photo;  // or the note, of a sound
        std::string digest;  // of an owner's
        bool picture = true;
    };

    // What is asked for, and the file it becomes: for other roles named by the photo.
    [[nodiscard]] std::filesystem::path copyPath(const Wanted& wanted, bool preview) const;
    [[nodiscard]] model::Result<std::vector<std::string>> toSend();
    model::Result<void> sendAll();
    model::Result<void> sendPreviews(const std::vector<std::string>& digests);
    model::Result<void> sendOne(const std::string& digest, std::int64_t held);
    [[nodiscard]] model::Result<std::vector<Wanted>> wantedHere() const;
    model::Result<void> takeAll();
    model::Result<void> takePreview(const Wanted& wanted);
    model::Result<bool> takeOne(const Wanted& wanted);
    model::Result<void> keepWhole(const Wanted& wanted, const std::filesystem::path& arriving);
    model::Result<void> removeStrange();

    // Of a picture that the peer lacks: how much it has of it, and whether a small copy.
    struct Held {
        std::int64_t bytes = 0;
        bool preview = false;
    };

    model::Result<std::map<std::string, Held>> askHeld(const std::vector<std::string>& digests);
    model::Result<Reply> call(Call call, const std::string& body);
    [[nodiscard]] model::Result<std::set<std::string>> atPeer();
    void noteAtPeer(const std::set<std::string>& digests);
    void tell();

    Parts parts_;
    PhotoMeeting meeting_;
    std::size_t done_ = 0;
    std::size_t all_ = 0;
    Status said_ = Status::Ok;
};

// The file that shows a photo on this device: the original, else the copy, else the small copy.
// Empty where none has come.
[[nodiscard]] std::filesystem::path fileOf(const store::Photos& photos, const model::Photo& photo);

}  // namespace ledgerboard::sync
