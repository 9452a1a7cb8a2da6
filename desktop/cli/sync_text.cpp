#include "desktop/cli/sync_text.h"

#include <algorithm>
#include <cstdlib>

#include <nlohmann/json.hpp>

#include "core/report/money_text.h"

namespace ledgerboard::cli {

using report::countText;

namespace {

std::string changes(std::size_t count) {
    return countText(static_cast<std::int64_t>(count), "change", "changes");
}

std::string photos(std::size_t count) {
    return countText(static_cast<std::int64_t>(count), "photo", "photos");
}

// "1.2 MB", "340 kB": in thousands, as networks count.
std::string sizeText(std::int64_t bytes) {
    constexpr std::int64_t kThousand = 1'000;
    if (bytes < kThousand * kThousand) {
        return std::to_string((bytes + kThousand - 1) / kThousand) + " kB";
    }
    const std::int64_t tenths = bytes / (kThousand * kThousand / 10);
    return std::to_string(tenths / 10) + "." + std::to_string(tenths % 10) + " MB";
}

// "128 changes and 3 photos (1.2 MB)".
std::string bothText(std::size_t entries, std::size_t pictures, std::int64_t bytes) {
    std::string text = entries == 0 ? "" : changes(entries);
    if (pictures > 0) {
        text += (text.empty() ? "" : " and ") + photos(pictures) + " (" + sizeText(bytes) + ")";
    }
    return text.empty() ? "nothing new" : text;
}

// How long a clock is off, in the largest unit that says it.
std::string spanText(std::int64_t ms) {
    const std::int64_t seconds = std::abs(ms) / 1'000;
    if (seconds < 120) {
        return countText(seconds, "second", "seconds");
    }
    return seconds < 7'200 ? countText(seconds / 60, "minute", "minutes")
                           : countText(seconds / 3'600, "hour", "hours");
}

std::string waitingText(const sync::MeetReport& report) {
    if (report.entriesWaiting == 0 && report.photosWaiting == 0) {
        return "";
    }
    const std::string text =
        report.photosWaiting == 0 ? changes(report.entriesWaiting)
        : report.entriesWaiting == 0
            ? photos(report.photosWaiting)
            : changes(report.entriesWaiting) + " and " + photos(report.photosWaiting);
    const bool one = report.entriesWaiting + report.photosWaiting == 1;
    return text + (one ? " waits" : " wait") + " here to go up";
}

}  // namespace

std::string meetingText(const sync::MeetReport& report, const sync::Place& place,
                        std::size_t clashes) {
    const sync::Meeting& met = report.entries;
    std::string text =
        "Met the peer at " + sync::toText(place) + ".\n" + "Up:    " +
        bothText(met.sent - std::min(met.sent, met.refused), report.photos.sent,
                 report.photos.sentBytes) +
        ".\nDown:  " + bothText(met.received, report.photos.received, report.photos.receivedBytes) +
        ".\n";
    if (met.renewed) {
        text += "This copy was an old one, from a backup: it goes by a new id from now on.\n";
    }
    if (met.restamped > 0) {
        text += "This device's clock is " + spanText(met.clockOffsetMs) +
                " off: what was written by it got the peer's time.\n";
    }
    if (met.refused > 0) {
        text += "Set aside: " + changes(met.refused) +
                (met.refused == 1 ? " is not this device's to make; the owner sees it.\n"
                                  : " are not this device's to make; the owner sees them.\n");
    }
    if (met.dropped > 0 || report.photos.removed > 0) {
        text += "No longer for this device, and gone from it: " +
                countText(static_cast<std::int64_t>(met.dropped), "value", "values") +
                (report.photos.removed > 0 ? " and " + photos(report.photos.removed) : "") + ".\n";
    }
    for (const auto& sentence : report.photos.refused) {
        text += "Not sent: " + sentence + ".\n";
    }
    if (report.photos.waiting > 0) {
        text += "Still to come: " + photos(report.photos.waiting) +
                ", once the device that took them has sent them.\n";
    }
    if (const std::string waits = waitingText(report); !waits.empty()) {
        text += "Waiting: " + waits + ".\n";
    }
    if (clashes > 0) {
        text += countText(static_cast<std::int64_t>(clashes), "field was", "fields were") +
                " changed on two devices: 'ledgerboard clashes' shows both values.\n";
    }
    return text;
}

std::string noMeetingText(const sync::MeetReport& report) {
    const std::string waits = waitingText(report);
    const std::string kept =
        waits.empty() ? "nothing waits here to go up" : "nothing is lost: " + waits;
    switch (report.end) {
        case sync::MeetEnd::Offline:
            return report.message + "\nThis device was not heard; " + kept +
                   ". Run 'ledgerboard sync' again when it is in reach.";
        case sync::MeetEnd::Cut:
            return report.message + "\nThe meeting was cut short; " + kept +
                   ". 'ledgerboard sync' goes on from there.";
        default:
            return report.message + "\nAnd so " + kept + ".";
    }
}

nlohmann::json meetingJson(const sync::MeetReport& report, const sync::Place& place) {
    const sync::Meeting& met = report.entries;
    return {{"end", sync::nameOf(report.end)},
            {"message", report.message},
            {"address", sync::toText(place)},
            {"sent", met.sent - std::min(met.sent, met.refused)},
            {"received", met.received},
            {"set_aside", met.refused},
            {"dropped", met.dropped},
            {"restamped", met.restamped},
            {"new_identity", met.renewed},
            {"photos",
             {{"sent", report.photos.sent},
              {"received", report.photos.received},
              {"sent_bytes", report.photos.sentBytes},
              {"received_bytes", report.photos.receivedBytes},
              {"removed", report.photos.removed},
              {"still_to_come", report.photos.waiting},
              {"not_sent", report.photos.refused}}},
            {"waiting", {{"changes", report.entriesWaiting}, {"photos", report.photosWaiting}}}};
}

}  // namespace ledgerboard::cli
