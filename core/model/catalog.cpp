#include "core/model/catalog.h"

#include <array>
#include <deque>
#include <string>
#include <unordered_map>
#include <vector>

#include "core/model/check.h"

namespace ledgerboard::model {

namespace {

// What stands in catalog.def as a type.
struct TypeWord {
    FieldType type;
    bool maySubtract = false;
};

// Named as catalog.def names them.
// NOLINTBEGIN(readability-identifier-naming)
namespace typeword {
constexpr TypeWord Text{FieldType::Text};
constexpr TypeWord Flag{FieldType::Flag};
constexpr TypeWord Count{FieldType::Count};
constexpr TypeWord Money{FieldType::Money};
constexpr TypeWord SignedMoney{FieldType::Money, true};
constexpr TypeWord Quantity{FieldType::Quantity};
constexpr TypeWord SignedQuantity{FieldType::Quantity, true};
constexpr TypeWord Percent{FieldType::Percent};
constexpr TypeWord Date{FieldType::Date};
constexpr TypeWord Instant{FieldType::Instant};
constexpr TypeWord Weekdays{FieldType::Weekdays};
constexpr TypeWord Amounts{FieldType::Amounts};
constexpr TypeWord Steps{FieldType::Steps};
constexpr TypeWord ItemAmounts{FieldType::ItemAmounts};
constexpr TypeWord Dates{FieldType::Dates};
}  // namespace typeword

// NOLINTEND(readability-identifier-naming)

std::string snakeCase(std::string_view camel) {
    std::string out;
    for (const char c : camel) {
        if (c >= 'A' && c <= 'Z') {
            if (!out.empty()) {
                out += '_';
            }
            out += static_cast<char>(c - 'A' + 'a');
        } else {
            out += c;
        }
    }
    return out;
}

// What the SQL column adds to the JSON name, so that a reader of the file knows the unit.
std::string_view columnSuffix(FieldType type) {
    switch (type) {
        case FieldType::Money:
            return "_cents";
        case FieldType::Quantity:
            return "_thousandths";
        case FieldType::Percent:
            return "_basis_points";
        case FieldType::Date:
            return "_day";
        case FieldType::Instant:
            return "_ms";
        case FieldType::Weekdays:
            return "_bits";
        case FieldType::Ref:
            return "_id";
        case FieldType::Refs:
            return "_ids";
        default:
            return "";
    }
}

// The catalog as built once from catalog.def. Strings live in a deque, whose elements never move.
struct Tables {
    std::deque<std::string> names;
    std::vector<Field> fields;
    std::vector<KindInfo> kinds;
    std::unordered_map<FieldCode, const Field*> byCode;

    std::string_view keep(std::string text) { return names.emplace_back(std::move(text)); }

    Field make(Kind kind, int number, std::string_view memberName, TypeWord type) {
        Field field{};
        field.kind = kind;
        field.code = static_cast<int>(kind) * 1000 + number;
        field.name = keep(snakeCase(memberName));
        field.column = keep(std::string(field.name) + std::string(columnSuffix(type.type)));
        field.type = type.type;
        field.maySubtract = type.maySubtract;
        return field;
    }

    void addField(Kind kind, int number, std::string_view memberName, TypeWord type,
                  std::string_view unit, Reads reads, Writes writes, Merge merge,
                  std::string_view heading, std::string_view says) {
        Field field = make(kind, number, memberName, type);
        field.unit = unit;
        field.reads = reads;
        field.writes = writes;
        field.merge = merge;
        field.heading = heading;
        field.says = says;
        fields.push_back(field);
    }

    Tables();
};

// Each line of catalog.def becomes one call; the kinds are cut from the list of fields afterwards.
Tables::Tables() {
    struct Start {
        KindInfo info;
        std::size_t at;
    };

    std::vector<Start> starts;
#define KIND(kind, number, plural, title, aliases)                                               \
    starts.push_back({KindInfo{Kind::kind, keep(snakeCase(#kind)), #plural, title, aliases, {}}, \
                      fields.size()});
#define FIELD(kind, number, member, type, unit, reads, writes, merge, heading, says)          \
    addField(Kind::kind, number, #member, typeword::type, unit, Reads::reads, Writes::writes, \
             Merge::merge, heading, says);
#define WORDS(kind, number, member, type, reads, writes, merge, heading, says)          \
    addField(Kind::kind, number, #member, TypeWord{FieldType::Words}, "", Reads::reads, \
             Writes::writes, Merge::merge, heading, says);                              \
    fields.back().words = wordsOf<type>();
#define REF(kind, number, member, meant_, reads, writes, merge, heading, says)        \
    addField(Kind::kind, number, #member, TypeWord{FieldType::Ref}, "", Reads::reads, \
             Writes::writes, Merge::merge, heading, says);                            \
    fields.back().meant = Kind::meant_;
#define REFS(kind, number, member, meant_, reads, writes, merge, heading, says)        \
    addField(Kind::kind, number, #member, TypeWord{FieldType::Refs}, "", Reads::reads, \
             Writes::writes, Merge::merge, heading, says);                             \
    fields.back().meant = Kind::meant_;
#include "core/model/catalog.def"
    for (std::size_t k = 0; k < starts.size(); ++k) {
        const std::size_t end = k + 1 < starts.size() ? starts[k + 1].at : fields.size();
        starts[k].info.fields =
            std::span<const Field>(fields.data() + starts[k].at, end - starts[k].at);
        kinds.push_back(starts[k].info);
    }
    for (const auto& field : fields) {
        require(byCode.emplace(field.code, &field).second, "catalog.def uses a field number twice");
    }
    for (std::size_t k = 0; k < kinds.size(); ++k) {
        require(static_cast<std::size_t>(kinds[k].kind) == k + 1,
                "catalog.def lists kinds in order");
    }
}

const Tables& tables() {
    static const Tables kTables;
    return kTables;
}

}  // namespace

std::span<const KindInfo> kinds() {
    return tables().kinds;
}

const KindInfo& infoOf(Kind kind) {
    const auto index = static_cast<std::size_t>(kind);
    require(index >= 1 && index <= tables().kinds.size(), "infoOf: a kind of the catalog");
    return tables().kinds[index - 1];
}

std::string folded(std::string_view name) {
    std::string out;
    for (const char c : name) {
        if (c == ' ' || c == '-' || c == '_' || c == '\t') {
            continue;
        }
        out += static_cast<char>(c >= 'A' && c <= 'Z' ? c - 'A' + 'a' : c);
    }
    return out;
}

std::optional<Kind> kindNamed(std::string_view name) {
    static const std::unordered_map<std::string, Kind> kByName = [] {
        std::unordered_map<std::string, Kind> map;
        for (const auto& info : kinds()) {
            for (const auto one : {info.name, info.table, info.title}) {
                map.emplace(folded(one), info.kind);
            }
            std::string_view rest = info.aliases;
            while (!rest.empty()) {
                const auto comma = rest.find(',');
                map.emplace(folded(rest.substr(0, comma)), info.kind);
                rest =
                    comma == std::string_view::npos ? std::string_view{} : rest.substr(comma + 1);
            }
        }
        return map;
    }();
    const auto found = kByName.find(folded(name));
    return found == kByName.end() ? std::nullopt : std::optional<Kind>(found->second);
}

const Field* fieldOf(FieldCode code) {
    const auto found = tables().byCode.find(code);
    return found == tables().byCode.end() ? nullptr : found->second;
}

const Field* fieldNamed(Kind kind, std::string_view name) {
    const std::string wanted = folded(name);
    for (const auto& field : infoOf(kind).fields) {
        if (folded(field.name) == wanted || folded(field.heading) == wanted) {
            return &field;
        }
    }
    return nullptr;
}

const Field* jobFieldOf(Kind kind) {
    for (const auto& field : infoOf(kind).fields) {
        if (field.name == "job" && kind != Kind::Person) {
            return &field;
        }
    }
    return nullptr;
}

bool isKept(Kind kind) {
    for (const auto& field : infoOf(kind).fields) {
        if (field.merge == Merge::Kept) {
            return true;
        }
    }
    return false;
}

}  // namespace ledgerboard::model
