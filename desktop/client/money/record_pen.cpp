#include "desktop/client/money/record_pen.h"

#include <algorithm>
#include <set>

#include "core/compute/pricing.h"
#include "core/model/saying.h"
#include "core/model/value.h"

#include "desktop/client/money/field_words.h"
#include "desktop/client/said.h"

namespace ledgerboard::desk {

using model::FieldType;
using model::Kind;
using model::Result;
using model::Value;
namespace f = model::field;

namespace {

constexpr qsizetype kMostChoices = 8;

// What the records of a kind are called, for the list below a cell.
QStringList namesOf(const std::shared_ptr<const JobNow>& now, Kind kind) {
    QStringList names;
    const auto& finder = namesIn(now);
    model::visitLists(now->rows, [&](const auto& list) {
        using Row = typename std::decay_t<decltype(list)>::value_type;
        if (Row::kKind != kind) {
            return;
        }
        for (const auto& row : list) {
            names << Said::text(finder.nameOf(row.id.raw()));
        }
    });
    names.sort(Qt::CaseInsensitive);
    return names;
}

QString refsText(const std::shared_ptr<const JobNow>& now, const model::Field& field,
                 const Value& value) {
    return Said::text(model::printValue(field, value, namesIn(now).nameRecord()));
}

// The word as it is stored, for what was typed in the words of the page or of the book.
QString storedWord(const model::Field& field, const QString& typed) {
    const QString wanted = typed.toCaseFolded();
    QStringList begun;
    for (const auto& word : field.words) {
        QString stored = Said::text(word);
        const QString shown = FieldWords::word(word).toCaseFolded();
        if (stored.isEmpty()) {
            continue;
        }
        if (stored == wanted || shown == wanted) {
            return stored;
        }
        if (!wanted.isEmpty() && (stored.startsWith(wanted) || shown.startsWith(wanted))) {
            begun << stored;
        }
    }
    return begun.size() == 1 ? begun.first() : typed;
}

// A name that is a part of just one.
QString wholeName(const std::shared_ptr<const JobNow>& now, const model::Field& field,
                  const QString& typed) {
    if (typed.isEmpty() || namesIn(now).find(field.meant, typed.toStdString()).ok()) {
        return typed;
    }
    const QStringList near = choicesFor(now, field.code, typed);
    return near.size() == 1 ? near.first() : typed;
}

// A spend written anew with another fact; payments of it and the bank's line follow.
model::RawId writeAnew(store::Book& book, const JobNow& now, const model::RawId& id,
                       model::Instant at, model::FieldCode field, const Value& value,
                       store::Action& action) {
    const auto found = std::find_if(now.rows.spends.begin(), now.rows.spends.end(),
                                    [&](const auto& row) { return row.id.raw() == id; });
    if (found == now.rows.spends.end()) {
        return id;
    }
    model::Spend fresh = *found;
    fresh.id = book.newId<Kind::Spend>(at);
    fresh.voids = found->id;
    action.add(fresh);
    action.set(fresh.id.raw(), field, value);
    for (const auto& other : now.rows.spends) {
        if (other.pays == found->id) {
            action.set(other.id.raw(), f::Spend::pays, fresh.id.raw());
        }
    }
    for (const auto& line : now.rows.bank_lines) {
        if (line.spend == found->id) {
            action.set(line.id.raw(), f::BankLine::spend, fresh.id.raw());
        }
    }
    return fresh.id.raw();
}

}  // namespace

const intake::Finder& namesIn(const std::shared_ptr<const JobNow>& now) {
    static std::weak_ptr<const JobNow> of;
    static std::optional<intake::Finder> finder;
    if (!finder || of.lock() != now) {
        finder.emplace(now->rows);
        of = now;
    }
    return *finder;
}

Value valueIn(const JobNow& now, model::FieldCode field, const model::RawId& id) {
    if (model::kindOf(field) == Kind::Job) {
        return store::recordOf(now.rows.job).at(field);
    }
    Value value;
    model::visitLists(now.rows, [&](const auto& list) {
        using Row = typename std::decay_t<decltype(list)>::value_type;
        if (Row::kKind != model::kindOf(field)) {
            return;
        }
        for (const auto& row : list) {
            if (row.id.raw() == id) {
                value = store::recordOf(row).at(field);
                return;
            }
        }
    });
    return value;
}

QString typedText(const std::shared_ptr<const JobNow>& now, model::FieldCode code,
                  const Value& value) {
    const model::Field& field = *model::fieldOf(code);
    if (field.type == FieldType::Words && !model::isEmpty(value)) {
        return FieldWords::word(std::get<std::string>(value));
    }
    if (field.type == FieldType::Flag) {
        return model::isEmpty(value) ? QString() : FieldWords::yes();
    }
    return refsText(now, field, value);
}

QString shownText(const std::shared_ptr<const JobNow>& now, model::FieldCode code,
                  const Value& value) {
    const model::Field& field = *model::fieldOf(code);
    if (model::isEmpty(value)) {
        return {};
    }
    switch (field.type) {
        case FieldType::Money: {
            std::optional<model::Money> money;
            model::readMember(value, money);
            return money ? Said::money(*money) : QString();
        }
        case FieldType::Date: {
            std::optional<model::Date> day;
            model::readMember(value, day);
            return day ? Said::day(*day, now->today) : QString();
        }
        default:
            return typedText(now, code, value);
    }
}

QStringList choicesFor(const std::shared_ptr<const JobNow>& now, model::FieldCode code,
                       const QString& typed) {
    const model::Field& field = *model::fieldOf(code);
    QStringList all;
    if (field.type == FieldType::Words) {
        for (const auto& word : field.words) {
            if (!word.empty()) {
                all << FieldWords::word(word);
            }
        }
    } else if (field.type == FieldType::Ref) {
        all = namesOf(now, field.meant);
    } else if (code == f::Spend::payee) {
        std::set<QString> payees;
        for (const auto& spend : now->rows.spends) {
            payees.insert(Said::text(spend.payee));
        }
        all = QStringList(payees.begin(), payees.end());
    }
    QStringList first;
    QStringList others;
    for (const auto& name : all) {
        const auto at = name.indexOf(typed.trimmed(), 0, Qt::CaseInsensitive);
        if (at == 0) {
            first << name;
        } else if (at > 0) {
            others << name;
        }
    }
    return (first + others).mid(0, kMostChoices);
}

Result<Value> readField(const std::shared_ptr<const JobNow>& now, model::FieldCode code,
                        const QString& text) {
    const model::Field& field = *model::fieldOf(code);
    QString typed = text.trimmed();
    if (field.type == FieldType::Words) {
        typed = storedWord(field, typed);
    } else if (field.type == FieldType::Ref) {
        typed = wholeName(now, field, typed);
    } else if (field.type == FieldType::Flag && !typed.isEmpty() &&
               FieldWords::yes().startsWith(typed, Qt::CaseInsensitive)) {
        typed = QStringLiteral("yes");
    }
    auto value = model::parseValue(field, typed.toStdString(), namesIn(now).findRecord());
    if (!value.ok()) {
        return model::inPlace(model::asWritten(FieldWords::heading(code).toStdString()),
                              value.error());
    }
    if (auto good = model::checkValue(field, value.value()); !good.ok()) {
        return good.error();
    }
    return value;
}

store::Action setField(store::Book& book, const std::shared_ptr<const JobNow>& now,
                       model::FieldCode code, const model::RawId& id, const Value& value,
                       model::Instant at, model::RawId& stands) {
    const model::Field& field = *model::fieldOf(code);
    store::Action action("set " + namesIn(now).nameOf(id) + ", " + std::string(field.heading));
    stands = id;
    if (field.merge == model::Merge::Kept && field.kind == Kind::Spend) {
        stands = writeAnew(book, *now, id, at, code, value, action);
    } else {
        action.set(id, code, value);
    }
    return action;
}

store::Action newRecord(const JobNow& now, Kind kind, const model::RawId& id, const Draft& draft) {
    store::Action action("add " + std::string(model::infoOf(kind).title));
    if (const model::Field* job = model::jobFieldOf(kind)) {
        action.set(id, job->code, now.rows.job.id.raw());
    }
    for (const auto& [field, value] : draft) {
        if (!model::isEmpty(value)) {
            action.set(id, field, value);
        }
    }
    return action;
}

}  // namespace ledgerboard::desk
