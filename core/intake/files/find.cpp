#include "core/intake/files/find.h"

#include <algorithm>
#include <type_traits>

#include "core/intake/files/nearest.h"
#include "core/intake/files/problems.h"
#include "core/model/decimal.h"
#include "core/model/saying.h"

namespace ledgerboard::intake {

namespace {

using model::Kind;
using model::RawId;

constexpr std::size_t kFewestDigits = 4;  // of a part of an id
constexpr std::size_t kMostListed = 8;

// The end of an id: of a version 7 id the end is chance, the start is the time it shares with
// whatever was made with it.
std::string endOf(RawId id) {
    return id.hex().substr(24);
}

// Hex digits of `text` in lower case, hyphens left out; empty where it holds anything else.
std::string hexOf(std::string_view text) {
    std::string hex;
    for (const char c : text) {
        if (c == '-') {
            continue;
        }
        const char low = static_cast<char>(c >= 'A' && c <= 'F' ? c - 'A' + 'a' : c);
        if ((low < '0' || low > '9') && (low < 'a' || low > 'f')) {
            return "";
        }
        hex += low;
    }
    return hex;
}

// "Kitchen/cabinets [1a2b3c4d]" holds the end of an id; empty where there is none.
std::string endInBrackets(std::string_view text) {
    const auto open = text.rfind('[');
    if (text.empty() || text.back() != ']' || open == std::string_view::npos) {
        return "";
    }
    return hexOf(text.substr(open + 1, text.size() - open - 2));
}

std::string joined(const std::string& outer, const std::string& inner) {
    return outer.empty() ? inner : outer + "/" + inner;
}

// "scope item", "crew": as a message says it; "record" for any.
std::string titleOf(Kind kind) {
    return kind == Kind::None ? "record" : std::string(model::infoOf(kind).title);
}

model::Saying saidOf(Kind kind) {
    return kind == Kind::None ? model::saying("record") : model::Saying(titleOf(kind));
}

// What mends a name that is not there.
model::Saying howToAdd(Kind kind) {
    switch (kind) {
        case Kind::None:
            return model::saying("name it as list shows it, or by four or more digits of its id");
        case Kind::Item:
            return model::saying(
                "write it as SPACE/OBJECT, as list scope shows it, or add it to the scope first");
        case Kind::Job:
            return model::saying("begin it with 'ledgerboard start NAME'");
        case Kind::Crew:
            return model::saying("add it first with add crew, or bring crews");
        case Kind::Contract:
            return model::saying("add it first with add contract, or bring contracts");
        case Kind::LenderLine:
            return model::saying("add it first with add lender-line, or bring lender-lines");
        case Kind::Spend:
            return model::saying("name it by its bank id or its id");
        default:
            return model::saying("add it first with add %1", model::infoOf(kind).name);
    }
}

}  // namespace

std::string Finder::nameWithin(RawId outer) const {
    const auto found = byId_.find(outer);
    return found == byId_.end() || records_[found->second].names.empty()
               ? ""
               : records_[found->second].names.front();
}

Finder::Forms Finder::itemForms(const model::Item& item) const {
    const std::string space = nameWithin(item.space.raw());
    const std::string longName = std::string(model::wordOf(item.treatment)) + " " + item.object;
    Forms forms{{joined(space, item.object), joined(space, longName)}, {}};
    const auto found = byId_.find(item.space.raw());
    if (found != byId_.end() && records_[found->second].names.size() > 1) {
        const std::string& letters = records_[found->second].names[1];
        forms.others = {joined(letters, item.object), joined(letters, longName)};
    }
    return forms;
}

template <class Row>
Finder::Forms Finder::formsOf(const Row& row) const {
    if constexpr (std::is_same_v<Row, model::Item>) {
        return itemForms(row);
    } else if constexpr (std::is_same_v<Row, model::Space>) {
        return {{row.name, row.shortName}, {}};
    } else if constexpr (std::is_same_v<Row, model::Alternate>) {
        return {{row.question, joined(nameWithin(row.space.raw()), row.question)}, {}};
    } else if constexpr (std::is_same_v<Row, model::Option>) {
        return {{row.name, joined(nameWithin(row.alternate.raw()), row.name)}, {}};
    } else if constexpr (std::is_same_v<Row, model::Contract>) {
        return {{row.name, joined(nameWithin(row.crew.raw()), row.name)}, {}};
    } else if constexpr (std::is_same_v<Row, model::Change>) {
        return {{row.name, joined(nameWithin(row.contract.raw()), row.name)}, {}};
    } else if constexpr (std::is_same_v<Row, model::Punch>) {
        return {{row.what, joined(nameWithin(row.space.raw()), row.what)}, {}};
    } else if constexpr (std::is_same_v<Row, model::Price>) {
        const std::string work = std::string(model::wordOf(row.treatment)) + " " + row.object;
        return {{row.object, work, work + " by " + row.unit}, {}};
    } else if constexpr (std::is_same_v<Row, model::Unknown> ||
                         std::is_same_v<Row, model::Inspection>) {
        return {{row.what}, {}};
    } else if constexpr (std::is_same_v<Row, model::Spend>) {
        return {{row.bankId}, {}};
    } else if constexpr (std::is_same_v<Row, model::BankLine>) {
        return {{"line " + row.bankId}, {}};  // the bank id alone is its row of spend
    } else if constexpr (std::is_same_v<Row, model::PayeeRule>) {
        return {{row.words}, {}};
    } else if constexpr (std::is_same_v<Row, model::OwnWord>) {
        return {{"word " + row.phrase}, {}};  // the phrase alone may be an item's object
    } else if constexpr (std::is_same_v<Row, model::Draw>) {
        return row.number
                   ? Forms{{std::to_string(*row.number)}, {"draw" + std::to_string(*row.number)}}
                   : Forms{};
    } else if constexpr (std::is_same_v<Row, model::Sale>) {
        return {{row.place}, {}};
    } else if constexpr (requires { row.name; }) {
        return {{row.name}, {}};
    } else {
        return {};
    }
}

#define KIND(kind, number, plural, title, aliases) \
    template Finder::Forms Finder::formsOf<model::kind>(const model::kind&) const;
#include "core/model/catalog.def"

void Finder::addForms(Kind kind, RawId id, Forms forms) {
    const std::size_t at = records_.size();
    if (!byId_.emplace(id, at).second) {
        return;
    }
    std::erase(forms.names, "");
    for (const auto* list : {&forms.names, &forms.others}) {
        for (const auto& name : *list) {
            if (const std::string key = model::folded(name); !key.empty()) {
                auto& places = byName_[key];
                if (places.empty() || places.back() != at) {
                    places.push_back(at);
                }
            }
        }
    }
    records_.push_back({kind, id, std::move(forms.names)});
}

void Finder::addAll(const model::JobRows& rows) {
    for (const auto& space : rows.spaces) {
        add(space);
    }
    for (const auto& alternate : rows.alternates) {
        add(alternate);
    }
    for (const auto& crew : rows.crews) {
        add(crew);
    }
    for (const auto& contract : rows.contracts) {
        add(contract);
    }
    if (!rows.job.id.isNil()) {
        add(rows.job);
    }
    model::visitLists(rows, [this](const auto& list) {
        for (const auto& row : list) {
            add(row);  // those above are already here and are left as they are
        }
    });
}

Finder::Finder(const model::JobRows& rows) {
    addAll(rows);
}

model::Result<model::JobRows> rowsForFinding(const store::Book& book, model::Id<Kind::Job> job) {
    model::JobRows rows;
    if (!job.isNil()) {
        auto read = book.jobRows(job);
        if (!read.ok()) {
            return read.error();
        }
        rows = std::move(read).value();
    } else {
        auto read = [&](auto& list) -> model::Result<void> {
            auto found = book.rows<typename std::remove_reference_t<decltype(list)>::value_type>();
            if (!found.ok()) {
                return found.error();
            }
            list = std::move(found).value();
            return {};
        };
        for (const auto& done :
             {read(rows.crews), read(rows.prices), read(rows.people), read(rows.devices)}) {
            if (!done.ok()) {
                return done.error();
            }
        }
    }
    auto jobs = book.rows<model::Job>();
    if (!jobs.ok()) {
        return jobs.error();
    }
    rows.jobs = std::move(jobs).value();
    return rows;
}

model::Result<Finder> Finder::open(const store::Book& book, model::Id<Kind::Job> job) {
    auto rows = rowsForFinding(book, job);
    if (!rows.ok()) {
        return rows.error();
    }
    return Finder(rows.value());
}

Finder::Places Finder::byId(Kind kind, std::string_view text) const {
    std::string hex = endInBrackets(text);
    hex = hex.empty() ? hexOf(text) : hex;
    Places places;
    if (hex.size() < kFewestDigits || hex.size() > 32) {
        return places;
    }
    for (std::size_t at = 0; at < records_.size(); ++at) {
        if (kind != Kind::None && records_[at].kind != kind) {
            continue;
        }
        const std::string whole = records_[at].id.hex();
        if (whole.compare(0, hex.size(), hex) == 0 ||
            whole.compare(32 - hex.size(), hex.size(), hex) == 0) {
            places.push_back(at);
        }
    }
    return places;
}

Finder::Places Finder::meant(Kind kind, std::string_view text) const {
    Places places;
    if (const auto found = byName_.find(model::folded(text)); found != byName_.end()) {
        for (const auto at : found->second) {
            if (kind == Kind::None || records_[at].kind == kind) {
                places.push_back(at);
            }
        }
    }
    return places.empty() ? byId(kind, text) : places;
}

bool Finder::hasName(Kind kind, std::string_view text) const {
    const auto found = byName_.find(model::folded(text));
    return found != byName_.end() &&
           std::any_of(found->second.begin(), found->second.end(),
                       [&](std::size_t at) { return records_[at].kind == kind; });
}

bool Finder::isOneName(Kind kind, const std::string& name) const {
    const auto found = byName_.find(model::folded(name));
    if (found == byName_.end()) {
        return false;
    }
    const auto& places = found->second;
    return std::count_if(places.begin(), places.end(),
                         [&](std::size_t at) { return records_[at].kind == kind; }) == 1;
}

std::string Finder::nameOf(RawId id) const {
    const auto found = byId_.find(id);
    if (found == byId_.end() || records_[found->second].names.empty()) {
        return id.toString();
    }
    const Named& named = records_[found->second];
    for (std::size_t k = 0; k < named.names.size(); ++k) {
        // The two letters of a space are understood and never stand for its name.
        const bool shown = k == 0 || named.kind != Kind::Space;
        if (shown && isOneName(named.kind, named.names[k])) {
            return named.names[k];
        }
    }
    const std::string& longest =
        named.kind == Kind::Space ? named.names.front() : named.names.back();
    return longest + " [" + endOf(id) + "]";
}

Kind Finder::kindOf(RawId id) const {
    const auto found = byId_.find(id);
    return found == byId_.end() ? Kind::None : records_[found->second].kind;
}

model::Error Finder::several(std::string_view text, const Places& places) const {
    model::Saying names;
    for (std::size_t k = 0; k < places.size() && k < kMostListed; ++k) {
        const Named& named = records_[places[k]];
        const model::Saying one = model::saying("%1 %2 (id ending %3)", saidOf(named.kind),
                                                inQuotes(nameOf(named.id)), endOf(named.id));
        names = k == 0 ? one : model::saying("%1, %2", names, one);
    }
    if (places.size() > kMostListed) {
        names = model::saying("%1, ...", names);
    }
    return model::cannotBeMet(
        model::saying("%1 may mean %2 records: %3: write the longer name, or the id",
                      inQuotes(text), places.size(), names));
}

model::Error Finder::none(Kind kind, std::string_view text) const {
    std::vector<std::string> names;
    std::string byObject;
    const std::string wanted = model::folded(text);
    for (const auto& record : records_) {
        if ((kind != Kind::None && record.kind != kind) || record.names.empty()) {
            continue;
        }
        const std::string& name = record.names.front();
        names.push_back(name);
        const auto slash = name.find('/');
        if (byObject.empty() && record.kind == Kind::Item && slash != std::string::npos &&
            model::folded(std::string_view(name).substr(slash + 1)) == wanted) {
            byObject = name;
        }
    }
    if (names.empty() && kind != Kind::None) {
        return model::cannotBeMet(model::saying("there is no %1 %2, nor any other yet: %3",
                                                saidOf(kind), inQuotes(text), howToAdd(kind)));
    }
    const std::string nearest = byObject.empty() ? nearestName(text, names) : byObject;
    if (nearest.empty()) {
        return model::cannotBeMet(
            model::saying("there is no %1 %2: %3", saidOf(kind), inQuotes(text), howToAdd(kind)));
    }
    return model::cannotBeMet(model::saying("there is no %1 %2; did you mean %3? Otherwise %4",
                                            saidOf(kind), inQuotes(text), inQuotes(nearest),
                                            howToAdd(kind)));
}

model::Result<RawId> Finder::find(Kind kind, std::string_view text) const {
    text = model::trimmed(text);
    const Places places = meant(kind, text);
    if (places.empty()) {
        return none(kind, text);
    }
    if (places.size() > 1) {
        return several(text, places);
    }
    return records_[places.front()].id;
}

model::Result<std::pair<Kind, RawId>> Finder::findAny(std::string_view text) const {
    auto found = find(Kind::None, text);
    if (!found.ok()) {
        return found.error();
    }
    return std::pair{kindOf(found.value()), found.value()};
}

model::FindRecord Finder::findRecord() const {
    return [this](Kind kind, std::string_view text) { return find(kind, text); };
}

model::NameRecord Finder::nameRecord() const {
    return [this](RawId id) { return nameOf(id); };
}

}  // namespace ledgerboard::intake
