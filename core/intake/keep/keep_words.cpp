#include "core/intake/keep/keep_words.h"

#include <algorithm>
#include <optional>
#include <set>

#include "core/intake/notes/own_words.h"

namespace ledgerboard::intake {

using model::Kind;
using model::Result;
using model::Value;

namespace f = model::field;

namespace {

// What a row means to the reader; empty where it means nothing yet, or two things at once.
std::optional<OwnWord> meantBy(const model::OwnWord& row) {
    OwnWord word{.phrase = row.phrase, .object = row.object, .space = row.space};
    word.treatment = row.treatment;
    word.nothing = row.nothing && row.times.value_or(kDropsThatTeach) >= kDropsThatTeach;
    const int meanings = (word.object.empty() ? 0 : 1) + (word.space.empty() ? 0 : 1) +
                         (word.treatment == model::Treatment::Unset ? 0 : 1) +
                         (word.nothing ? 1 : 0);
    return meanings == 1 && !phraseKey(word.phrase).empty() ? std::optional(word) : std::nullopt;
}

// Whether both say something of the same sort: of a thing, of a space, of a treatment.
bool ofOneSort(const model::OwnWord& row, const OwnWord& word) {
    const auto thing = [](const auto& one) { return !one.object.empty() || one.nothing; };
    const bool space = !row.space.empty() && !word.space.empty();
    const bool act =
        row.treatment != model::Treatment::Unset && word.treatment != model::Treatment::Unset;
    return (thing(row) && thing(word)) || space || act;
}

// The row that a record is, and what it is after the edits of an action; empty where it is dropped.
template <class Row>
struct Turned {
    std::optional<Row> before;
    std::optional<Row> after;
};

template <class Row>
Result<Turned<Row>> turnedBy(const store::Action& action, const store::Book& book,
                             model::RawId id) {
    auto record = book.record(Row::kKind, id);
    if (!record.ok()) {
        return record.error();
    }
    Turned<Row> turned;
    Row row;
    bool gone = false;
    const auto fields = model::infoOf(Row::kKind).fields;
    if (record.value()) {
        std::size_t at = 0;
        model::visitFields(row, [&](auto& member) {
            model::readMember(record.value()->at(fields[at++].code), member);
        });
        gone = record.value()->gone;
        if (!gone) {
            turned.before = row;
        }
    }
    for (const store::Edit& edit : action.edits()) {
        if (edit.record != id) {
            continue;
        }
        if (edit.field == model::goneCode(Row::kKind)) {
            gone = !model::isEmpty(edit.value);
        }
        std::size_t at = 0;
        model::visitFields(row, [&](auto& member) {
            if (fields[at++].code == edit.field) {
                model::readMember(edit.value, member);
            }
        });
    }
    if (!gone) {
        turned.after = row;
    }
    return turned;
}

// Whether another item of the job that was read from notes has the same name: its words do name a
// thing, and a drop is a change of plan.
Result<bool> isNamedElsewhere(const store::Book& book, const model::Item& item, model::RawId id) {
    auto items = book.rows<model::Item>(item.job);
    if (!items.ok()) {
        return items.error();
    }
    return std::any_of(items.value().begin(), items.value().end(), [&](const model::Item& other) {
        return other.id.raw() != id && !other.source.empty() &&
               model::folded(other.object) == model::folded(item.object);
    });
}

// Empty where the item was not read from notes.
Result<std::optional<Correction>> itemCorrection(const store::Action& action,
                                                 const store::Book& book, model::RawId id) {
    auto turned = turnedBy<model::Item>(action, book, id);
    if (!turned.ok()) {
        return turned.error();
    }
    Correction correction;
    const auto says = [](const model::Item& item) {
        return ItemSays{.space = {}, .treatment = item.treatment, .object = item.object};
    };
    if (turned.value().before && !turned.value().after) {
        auto elsewhere = isNamedElsewhere(book, *turned.value().before, id);
        if (!elsewhere.ok()) {
            return elsewhere.error();
        }
        if (elsewhere.value()) {
            return std::optional<Correction>();
        }
    }
    if (turned.value().before) {
        correction.before = says(*turned.value().before);
        correction.sentence = turned.value().before->source;
    }
    if (turned.value().after) {
        correction.after = says(*turned.value().after);
        correction.sentence = turned.value().after->source;
    }
    const bool teaches = !correction.sentence.empty() && correction.before != correction.after;
    return teaches ? std::optional(std::move(correction)) : std::nullopt;
}

// Empty where nothing in the space was read from notes, or its name stays.
Result<std::optional<Correction>> spaceCorrection(const store::Action& action,
                                                  const store::Book& book, model::RawId id) {
    auto turned = turnedBy<model::Space>(action, book, id);
    if (!turned.ok()) {
        return turned.error();
    }
    const auto& before = turned.value().before;
    const auto& after = turned.value().after;
    if (!before || !after || before->name == after->name) {
        return std::optional<Correction>();
    }
    auto items = book.rows<model::Item>(before->job);
    if (!items.ok()) {
        return items.error();
    }
    const auto read = std::find_if(
        items.value().begin(), items.value().end(),
        [&](const model::Item& item) { return item.space.raw() == id && !item.source.empty(); });
    if (read == items.value().end()) {
        return std::optional<Correction>();
    }
    ItemSays was;
    was.space = before->name;
    ItemSays is;
    is.space = after->name;
    return std::optional(
        Correction{.sentence = read->source, .before = was, .after = is, .spaceRenamed = true});
}

class Teacher {
  public:
    Teacher(store::Action& action, store::Book& book, std::vector<model::OwnWord> rows,
            model::Instant now)
        : action_(action), book_(book), rows_(std::move(rows)), now_(now) {}

    void teach(const Correction& correction) {
        std::vector<OwnWord> known;
        for (const model::OwnWord& row : rows_) {
            if (auto word = meantBy(row)) {
                known.push_back(std::move(*word));
            }
        }
        for (const OwnWord& lesson : lessonsOf(correction, known)) {
            keep(lesson, correction.sentence);
        }
    }

    std::vector<std::string> taught;

  private:
    void keep(const OwnWord& lesson, const std::string& sentence) {
        const std::string key = phraseKey(lesson.phrase);
        auto row = std::find_if(rows_.begin(), rows_.end(), [&](const model::OwnWord& one) {
            return ofOneSort(one, lesson) && phraseKey(one.phrase) == key;
        });
        if (row == rows_.end()) {
            rows_.emplace_back();
            row = rows_.end() - 1;
            row->id = book_.newId<Kind::OwnWord>(now_);
        } else if (lesson.nothing && (row->source == sentence || !row->object.empty())) {
            return;  // counted already; or the owner has said what it is
        }
        row->phrase = lesson.phrase;
        row->object = lesson.object;
        row->space = lesson.space;
        row->treatment = lesson.treatment;
        row->nothing = lesson.nothing;
        row->source = sentence;
        row->times = lesson.nothing ? std::optional(row->times.value_or(0) + 1) : std::nullopt;
        write(*row);
        if (!lesson.nothing || *row->times >= kDropsThatTeach) {
            taught.push_back(saidOf(lesson));
        }
    }

    void write(const model::OwnWord& row) {
        const model::RawId id = row.id.raw();
        action_.set(id, f::OwnWord::phrase, Value{row.phrase});
        action_.set(id, f::OwnWord::object, model::valueOf(row.object));
        action_.set(id, f::OwnWord::space, model::valueOf(row.space));
        action_.set(id, f::OwnWord::treatment, model::valueOf(row.treatment));
        action_.set(id, f::OwnWord::nothing, model::valueOf(row.nothing));
        action_.set(id, f::OwnWord::times, model::valueOf(row.times));
        action_.set(id, f::OwnWord::source, model::valueOf(row.source));
    }

    store::Action& action_;
    store::Book& book_;
    std::vector<model::OwnWord> rows_;
    model::Instant now_;
};

}  // namespace

Result<std::vector<OwnWord>> ownWordsOf(const store::Book& book) {
    auto rows = book.rows<model::OwnWord>();
    if (!rows.ok()) {
        return rows.error();
    }
    std::vector<OwnWord> words;
    for (const model::OwnWord& row : rows.value()) {
        if (auto word = meantBy(row)) {
            words.push_back(std::move(*word));
        }
    }
    return words;
}

Result<std::vector<std::string>> addLessons(store::Action& action, store::Book& book,
                                            std::span<const Correction> corrections,
                                            model::Instant now) {
    if (corrections.empty()) {
        return std::vector<std::string>();
    }
    auto rows = book.rows<model::OwnWord>();
    if (!rows.ok()) {
        return rows.error();
    }
    Teacher teacher(action, book, std::move(rows).value(), now);
    for (const Correction& correction : corrections) {
        teacher.teach(correction);
    }
    return std::move(teacher.taught);
}

Result<std::vector<std::string>> addLessonsOfEdits(store::Action& action, store::Book& book,
                                                   model::Instant now) {
    std::vector<Correction> corrections;
    std::set<model::RawId> seen;
    for (const store::Edit& edit : action.edits()) {
        const Kind kind = model::kindOf(edit.field);
        if ((kind != Kind::Item && kind != Kind::Space) || !seen.insert(edit.record).second) {
            continue;
        }
        auto found = kind == Kind::Item ? itemCorrection(action, book, edit.record)
                                        : spaceCorrection(action, book, edit.record);
        if (!found.ok()) {
            return found.error();
        }
        if (found.value()) {
            corrections.push_back(std::move(*found.value()));
        }
    }
    return addLessons(action, book, corrections, now);
}

}  // namespace ledgerboard::intake
