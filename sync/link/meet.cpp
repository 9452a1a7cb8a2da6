#include "sync/link/meet.h"

#include <array>

#include "core/intake/photos/preview.h"
#include "sync/wire/http_status.h"

namespace ledgerboard::sync {

using model::Result;

namespace {

std::uint32_t chanceBits(const model::FillRandom& random) {
    std::array<std::uint8_t, 4> bytes{};
    random(bytes.data(), bytes.size());
    return static_cast<std::uint32_t>(bytes[0]) << 24 | static_cast<std::uint32_t>(bytes[1]) << 16 |
           static_cast<std::uint32_t>(bytes[2]) << 8 | bytes[3];
}

// One device on its way through one meeting.
class OneMeeting {
  public:
    OneMeeting(const MeetAsk& ask, Link link) : ask_(ask), link_(std::move(link)) {}

    // False, with the report saying why: nobody was there, or somebody else.
    bool reach() {
        tell({MeetProgress::At::Calling, 0, 0});
        LinkAnswer answer;
        for (int tried = 1; tried <= std::max(ask_.callsToReach, 1); ++tried) {
            answer = link_.askTime();
            if (answer.ok()) {
                return true;
            }
            if (answer.fault == Fault::NotThePeer || tried == ask_.callsToReach) {
                break;
            }
            ask_.around.wait(
                waitBeforeRetryMs(ask_.retry, tried, 0, chanceBits(ask_.around.random)));
        }
        report_.message = answer.message;
        report_.end = answer.fault == Fault::Unreachable || answer.fault == Fault::Cut
                          ? MeetEnd::Offline
                          : MeetEnd::Refused;
        return false;
    }

    void exchange() {
        DeviceSide side(*ask_.book, carry());
        calls_ = 0;
        auto met = side.meet(ask_.around.now());
        // Also of a meeting that was cut: what it did is done.
        report_.entries = side.meeting();
        if (report_.entries.revoked) {
            report_.end = MeetEnd::Revoked;
            report_.message = textOf(Refusal::Revoked);
            side.sendLate();
            return;
        }
        if (!met.ok()) {
            fail(met.error());
            return;
        }
        if (ask_.withPhotos) {
            exchangePhotos(side.isOwner());
        }
    }

    Result<MeetReport> report() {
        if (report_.end == MeetEnd::Revoked) {
            return report_;
        }
        auto entries = DeviceSide(*ask_.book, {}).waiting();
        auto photos = photosWith({}, true).waitingHere();
        if (!entries.ok() || !photos.ok()) {
            return entries.ok() ? photos.error() : entries.error();
        }
        report_.entriesWaiting = entries.value();
        report_.photosWaiting = photos.value();
        return report_;
    }

    [[nodiscard]] const std::optional<model::Error>& broken() const { return broken_; }

    [[nodiscard]] Link& link() { return link_; }

  private:
    void tell(const MeetProgress& progress) const {
        if (ask_.progress) {
            ask_.progress(progress);
        }
    }

    // As carryOver(), and remembers what came between, so that a cut is told from a no.
    Carry carry() {
        return [this](Call call, const std::string& body) -> Result<Reply> {
            const bool photo = call == Call::PhotoHave || call == Call::PhotoPart;
            if (!photo) {
                tell({MeetProgress::At::Entries, ++calls_, 0});
            }
            LinkAnswer answer = link_.call(call, body);
            if (answer.refusal == Refusal::Revoked) {
                return Reply{Status::Revoked, write(Refused{answer.message, {}})};
            }
            const auto status = statusAt(answer.status);
            fault_ = answer.fault;
            busy_ = answer.status == 503 || answer.status == 408;
            if (answer.fault != Fault::None || !answer.code.empty() || !status) {
                return model::cannotBeMet(answer.message);
            }
            return Reply{*status, std::move(answer.body)};
        };
    }

    void fail(const model::Error& error) {
        if (error.code == model::ErrorCode::Damaged) {
            broken_ = error;  // of this device's own book or disk
            return;
        }
        report_.message = error.message;
        report_.end = fault_ == Fault::Unreachable || fault_ == Fault::Cut || busy_
                          ? MeetEnd::Cut
                          : MeetEnd::Refused;
    }

    DevicePhotos photosWith(Carry carry, bool owner) {
        DevicePhotos::Parts parts{ask_.book, ask_.photos,       std::move(carry),
                                  owner,     intake::previewOf, {}};
        parts.progress = [this](std::size_t done, std::size_t all) {
            tell({MeetProgress::At::Photos, done, all});
        };
        return DevicePhotos(std::move(parts));
    }

    void exchangePhotos(bool owner) {
        fault_ = Fault::None;
        DevicePhotos photos = photosWith(carry(), owner);
        auto done = photos.meet();
        report_.photos = photos.meeting();
        if (!done.ok()) {
            fail(done.error());
        }
    }

    const MeetAsk& ask_;
    Link link_;
    MeetReport report_;
    std::optional<model::Error> broken_;
    std::size_t calls_ = 0;
    Fault fault_ = Fault::None;
    bool busy_ = false;
};

Result<Link> linkOf(const MeetAsk& ask) {
    auto key = DeviceKey::keptAt(keyFileOf(ask.book->path()), ask.around.random);
    if (!key.ok()) {
        return key.error();
    }
    return Link(ask.peer.place, ask.peer.certificate, {ask.peer.device, key.value()}, ask.around,
                ask.retry, ask.timeouts);
}

}  // namespace

std::string nameOf(MeetEnd end) {
    switch (end) {
        case MeetEnd::Met:
            return "met";
        case MeetEnd::Offline:
            return "offline";
        case MeetEnd::Cut:
            return "cut";
        case MeetEnd::Refused:
            return "refused";
        case MeetEnd::Revoked:
            return "revoked";
    }
    return "";
}

Result<MeetReport> meetPeer(const MeetAsk& ask) {
    auto link = linkOf(ask);
    if (!link.ok()) {
        return link.error();
    }
    OneMeeting meeting(ask, std::move(link).value());
    if (meeting.reach()) {
        meeting.exchange();
    }
    return meeting.broken() ? Result<MeetReport>(*meeting.broken()) : meeting.report();
}

Result<Link> linkTo(const MeetAsk& ask) {
    auto link = linkOf(ask);
    if (!link.ok()) {
        return link;
    }
    OneMeeting meeting(ask, std::move(link).value());
    if (!meeting.reach()) {
        auto report = meeting.report();
        return model::cannotBeMet(report.ok() ? report.value().message : report.error().message);
    }
    return std::move(meeting.link());
}

}  // namespace ledgerboard::sync
