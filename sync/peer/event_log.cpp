#include "sync/peer/event_log.h"

#include <nlohmann/json.hpp>

namespace ledgerboard::sync {

void EventLog::write(const Event& event, model::Instant at) {
    nlohmann::ordered_json line{{"at", at.toString()}, {"event", event.what}};
    const auto addText = [&](const char* name, const std::string& text) {
        if (!text.empty()) {
            line[name] = text;
        }
    };
    const auto addCount = [&](const char* name, std::int64_t count) {
        if (count >= 0) {
            line[name] = count;
        }
    };
    addText("call", event.call);
    addText("code", event.code);
    addText("address", event.address);
    addText("device", event.device.isNil() ? "" : event.device.hex());
    addCount("status", event.status);
    addCount("bytes_in", event.bytesIn);
    addCount("bytes_out", event.bytesOut);
    addCount("ms", event.ms);
    const std::string text =
        line.dump(-1, ' ', true, nlohmann::ordered_json::error_handler_t::replace) + "\n";
    const std::lock_guard<std::mutex> lock(mutex_);
    out_ << text << std::flush;
}

}  // namespace ledgerboard::sync
