#include "core/intake/files/after_column.h"

#include <algorithm>
#include <array>
#include <optional>
#include <unordered_map>

#include "core/compute/links.h"
#include "core/intake/files/past.h"
#include "core/model/decimal.h"
#include "core/model/saying.h"

namespace ledgerboard::intake {

namespace {

namespace f = model::field;
using model::LinkKind;
using model::RawId;
using model::Value;

constexpr std::int64_t kMostLag = 3'650'000;  // thousandths of a day: ten years

struct ShortKind {
    std::string_view name;
    LinkKind kind;
};

constexpr std::array<ShortKind, 4> kShortKinds = {{{"FS", LinkKind::FinishToStart},
                                                   {"SS", LinkKind::StartToStart},
                                                   {"FF", LinkKind::FinishToFinish},
                                                   {"SF", LinkKind::StartToFinish}}};

bool isSpace(char c) {
    return c == ' ' || c == '\t' || c == '\n';
}

// Takes "+2", "-1.5" from the end of `text`. Empty where none stands there.
model::Result<std::optional<std::int64_t>> takeLag(std::string_view& text) {
    const auto sign = text.find_last_of("+-");
    if (sign == std::string_view::npos || sign + 1 >= text.size() ||
        text.find_first_not_of("0123456789.", sign + 1) != std::string_view::npos) {
        return std::optional<std::int64_t>();
    }
    // "Bedroom-2" is a name: before a lag stands a space or a kind.
    const std::string_view before = text.substr(0, sign);
    const bool afterKind =
        (before.size() == 2 || (before.size() > 2 && isSpace(before[before.size() - 3]))) &&
        std::any_of(kShortKinds.begin(), kShortKinds.end(), [&](const ShortKind& one) {
            return model::folded(before.substr(before.size() - 2)) == model::folded(one.name);
        });
    if (!afterKind && (before.empty() || !isSpace(before.back()))) {
        return std::optional<std::int64_t>();
    }
    const auto days = model::parseDecimal(text.substr(sign + 1), 3);
    if (!days.ok() || days.value() > kMostLag) {
        return model::wrongUse(
            model::saying("\"%1\" is no lag: write working days up to 3650, such as +2 or -1",
                          text.substr(sign)));
    }
    const bool isLess = text[sign] == '-';
    text = model::trimmed(before);
    return std::optional(isLess ? -days.value() : days.value());
}

std::optional<LinkKind> takeKind(std::string_view& text) {
    const auto space = text.find_last_of(" \t\n");
    const std::string_view word = text.substr(space == std::string_view::npos ? 0 : space + 1);
    for (const ShortKind& one : kShortKinds) {
        if (model::folded(word) == model::folded(one.name)) {
            text = space == std::string_view::npos ? std::string_view{}
                                                   : model::trimmed(text.substr(0, space));
            return one.kind;
        }
    }
    return std::nullopt;
}

model::Result<AfterEntry> parseEntry(std::string_view text) {
    AfterEntry entry;
    std::string_view rest = text;
    const auto lag = takeLag(rest);
    if (!lag.ok()) {
        return lag.error();
    }
    entry.lag = lag.value().value_or(0);
    entry.kind = takeKind(rest).value_or(LinkKind::FinishToStart);
    entry.item = std::string(rest);
    if (entry.item.empty()) {
        return model::wrongUse(
            model::saying("\"%1\" names no item: write it like \"Hall bath/tile SS+2\"", text));
    }
    return entry;
}

// One use of bringAfter.
class Linking {
  public:
    Linking(const std::string& heading, const Finder& finder, store::Book& book,
            model::Id<model::Kind::Job> job, model::Instant now, store::Action& action,
            Problems& problems)
        : heading_(heading),
          finder_(finder),
          book_(book),
          job_(job),
          now_(now),
          action_(action),
          problems_(problems),
          past_(book) {}

    model::Result<std::vector<std::string>> run(const std::vector<AfterCell>& cells) {
        auto read = book_.records(model::Kind::Link, job_, true);
        if (!read.ok()) {
            return read.error();
        }
        records_ = std::move(read).value();
        used_.assign(records_.size(), false);
        for (std::size_t k = 0; k < records_.size(); ++k) {
            byEnds_[endsOf(idAt(k, f::Link::fromItem), idAt(k, f::Link::toItem))].push_back(k);
        }
        std::vector<std::string> details;
        details.reserve(cells.size());
        for (const AfterCell& cell : cells) {
            details.push_back(bringCell(cell));
        }
        refuseRings();
        if (past_.error()) {
            return *past_.error();
        }
        return details;
    }

  private:
    [[nodiscard]] RawId idAt(std::size_t record, model::FieldCode code) const {
        const auto* id = std::get_if<RawId>(&records_[record].at(code));
        return id == nullptr ? RawId() : *id;
    }

    [[nodiscard]] static std::string endsOf(RawId from, RawId to) { return from.hex() + to.hex(); }

    [[nodiscard]] LinkKind kindAt(std::size_t record) const {
        const auto* word = std::get_if<std::string>(&records_[record].at(f::Link::type));
        const auto kind = word == nullptr ? std::nullopt : model::fromWord<LinkKind>(*word);
        return kind.value_or(LinkKind::Unset) == LinkKind::Unset ? LinkKind::FinishToStart : *kind;
    }

    [[nodiscard]] std::int64_t lagAt(std::size_t record) const {
        const auto* lag = std::get_if<std::int64_t>(&records_[record].at(f::Link::lag));
        return lag == nullptr ? 0 : *lag;
    }

    std::string bringCell(const AfterCell& cell) {
        auto entries = parseAfter(cell.text);
        if (!entries.ok()) {
            problems_.add(cell.line, heading_, entries.error().message);
            return {};
        }
        std::string detail;
        for (const AfterEntry& entry : entries.value()) {
            const auto from = finder_.find(model::Kind::Item, entry.item);
            if (!from.ok()) {
                problems_.add(cell.line, heading_, from.error().message);
            } else if (from.value() == cell.item) {
                problems_.add(
                    cell.line, heading_,
                    model::saying("names the row's own item, %1: an item does not wait for itself",
                                  finder_.nameOf(cell.item))
                        .text());
            } else if (bringEntry(entry, from.value(), cell)) {
                detail += (detail.empty() ? "after " : "; ") + printAfter(entry);
            }
        }
        return detail;
    }

    // Whether anything is written.
    bool bringEntry(const AfterEntry& entry, RawId from, const AfterCell& cell) {
        if (!said_.emplace(endsOf(from, cell.item) + std::string(model::wordOf(entry.kind)), true)
                 .second) {
            problems_.add(cell.line, heading_,
                          model::saying("names %1 twice with one kind of link: take one out",
                                        finder_.nameOf(from))
                              .text());
            return false;
        }
        links_.push_back({cell.line, from, cell.item});
        if (const auto record = recordFor(entry, from, cell.item)) {
            used_[*record] = true;
            return !records_[*record].gone && change(*record, entry);
        }
        model::Link link;
        link.id = book_.newId<model::Kind::Link>(now_);
        link.job = job_;
        link.fromItem = model::Id<model::Kind::Item>(from);
        link.toItem = model::Id<model::Kind::Item>(cell.item);
        link.type = entry.kind;
        if (entry.lag != 0) {
            link.lag = model::Quantity::fromThousandths(entry.lag);
        }
        action_.add(link);
        return true;
    }

    // The record this entry speaks of: one of its kind, else any between the two, else a dropped
    // one that said just this.
    std::optional<std::size_t> recordFor(const AfterEntry& entry, RawId from, RawId to) const {
        const auto found = byEnds_.find(endsOf(from, to));
        if (found == byEnds_.end()) {
            return std::nullopt;
        }
        const auto first = [&](auto&& fits) -> std::optional<std::size_t> {
            for (const std::size_t k : found->second) {
                if (!used_[k] && fits(k)) {
                    return k;
                }
            }
            return std::nullopt;
        };
        if (const auto k = first(
                [&](std::size_t at) { return !records_[at].gone && kindAt(at) == entry.kind; })) {
            return k;
        }
        if (const auto k = first([&](std::size_t at) { return !records_[at].gone; })) {
            return k;
        }
        return first(
            [&](std::size_t at) { return kindAt(at) == entry.kind && lagAt(at) == entry.lag; });
    }

    bool change(std::size_t record, const AfterEntry& entry) {
        bool isChanged = false;
        const RawId id = records_[record].id;
        const auto set = [&](model::FieldCode code, const Value& value) {
            if (!past_.held(id, code, value)) {
                action_.set(id, code, value);
                isChanged = true;
            }
        };
        if (kindAt(record) != entry.kind) {
            set(f::Link::type, Value{std::string(model::wordOf(entry.kind))});
        }
        if (lagAt(record) != entry.lag) {
            set(f::Link::lag, Value{entry.lag});
        }
        return isChanged;
    }

    // Of the links that stand once the file is in. A ring that was there before and that no cell
    // has part in is not this file's to mend.
    void refuseRings() {
        std::vector<model::Link> all;
        for (std::size_t k = 0; k < records_.size(); ++k) {
            if (!records_[k].gone) {
                all.push_back(linkBetween(idAt(k, f::Link::fromItem), idAt(k, f::Link::toItem)));
            }
        }
        if (!compute::ringOf(all).empty()) {
            return;
        }
        for (const Said& said : links_) {
            all.push_back(linkBetween(said.from, said.to));
        }
        const auto ring = compute::ringOf(all);
        for (const Said& said : links_) {
            if (isWithin(ring, said)) {
                problems_.add(
                    said.line, heading_,
                    model::saying(
                        "items would wait for each other in a loop: %1: take one of these out",
                        compute::ringText(ring,
                                          [&](const compute::ItemId& item) {
                                              return finder_.nameOf(item.raw());
                                          }))
                        .text());
                return;
            }
        }
    }

    struct Said {
        std::int64_t line = 0;
        RawId from;
        RawId to;
    };

    static bool isWithin(const std::vector<compute::ItemId>& ring, const Said& said) {
        for (std::size_t k = 0; k < ring.size(); ++k) {
            if (ring[k].raw() == said.from && ring[(k + 1) % ring.size()].raw() == said.to) {
                return true;
            }
        }
        return false;
    }

    static model::Link linkBetween(RawId from, RawId to) {
        model::Link link;
        link.fromItem = compute::ItemId(from);
        link.toItem = compute::ItemId(to);
        return link;
    }

    const std::string& heading_;
    const Finder& finder_;
    store::Book& book_;
    model::Id<model::Kind::Job> job_;
    model::Instant now_;
    store::Action& action_;
    Problems& problems_;
    Past past_;
    std::vector<store::Record> records_;  // links, dropped ones too
    std::vector<bool> used_;
    std::unordered_map<std::string, std::vector<std::size_t>> byEnds_;
    std::unordered_map<std::string, bool> said_;  // ends and kind
    std::vector<Said> links_;
};

}  // namespace

model::Result<std::vector<AfterEntry>> parseAfter(std::string_view text) {
    std::vector<AfterEntry> out;
    while (!text.empty()) {
        const auto end = text.find(';');
        const std::string_view part = model::trimmed(text.substr(0, end));
        text = end == std::string_view::npos ? std::string_view{} : text.substr(end + 1);
        if (part.empty()) {
            continue;
        }
        auto entry = parseEntry(part);
        if (!entry.ok()) {
            return entry.error();
        }
        out.push_back(std::move(entry).value());
    }
    return out;
}

std::string printAfter(const AfterEntry& entry) {
    std::string text = entry.item;
    if (entry.kind != LinkKind::FinishToStart || entry.lag != 0) {
        for (const ShortKind& one : kShortKinds) {
            text += one.kind == entry.kind ? " " + std::string(one.name) : "";
        }
    }
    if (entry.lag != 0) {
        text += (entry.lag > 0 ? "+" : "") + model::printDecimal(entry.lag, 3, 0, false);
    }
    return text;
}

model::Result<std::vector<std::string>> bringAfter(const std::vector<AfterCell>& cells,
                                                   const std::string& heading, const Finder& finder,
                                                   store::Book& book,
                                                   model::Id<model::Kind::Job> job,
                                                   model::Instant now, store::Action& action,
                                                   Problems& problems) {
    return Linking(heading, finder, book, job, now, action, problems).run(cells);
}

}  // namespace ledgerboard::intake
