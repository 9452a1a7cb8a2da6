#include "desktop/client/alternate_form.h"

#include <algorithm>

#include "core/model/value.h"
#include "core/qml/id_text.h"

#include "desktop/client/desk.h"
#include "desktop/client/money/field_words.h"
#include "desktop/client/said.h"

namespace ledgerboard::desk {

using model::Kind;
using model::Money;
using model::Result;
using qml::idFrom;
namespace f = model::field;

namespace {

constexpr model::FieldCode kValues[] = {f::Option::valueLow, f::Option::valueLikely,
                                        f::Option::valueHigh};

// Values from low to high, as far as they are said. Errors (WrongUse): naming both fields.
Result<void> checkValues(const std::vector<model::Value>& values) {
    for (std::size_t a = 0; a < values.size(); ++a) {
        for (std::size_t b = a + 1; b < values.size(); ++b) {
            std::optional<Money> low;
            std::optional<Money> high;
            model::readMember(values[a], low);
            model::readMember(values[b], high);
            if (low && high && *low > *high) {
                return Said::refusal(
                    AlternateForm::tr("%1 is more than %2: put one of them right")
                        .arg(FieldWords::heading(kValues[a]), FieldWords::heading(kValues[b])));
            }
        }
    }
    return {};
}

model::Value in(const Draft& draft, model::FieldCode field) {
    const auto found = draft.find(field);
    return found == draft.end() ? model::Value() : found->second;
}

}  // namespace

void AlternateForm::beginAlternate() {
    question_.clear();
    beginNew(QStringLiteral("alternate"), {});
}

void AlternateForm::beginOption(const QString& alternate, const QString& question) {
    const auto id = idFrom<Kind::Alternate>(alternate);
    if (id.isNil()) {
        return;
    }
    question_ = question;
    beginNew(QStringLiteral("option"), {});
    fillIn(f::Option::alternate, model::valueOf(id));
}

QString AlternateForm::title() const {
    if (isOpen() && isNew()) {
        //: Over a new option: what it answers
        return kind() == Kind::Option ? tr("New option: %1").arg(question_)
                                      : tr("New alternate: what is to be decided?");
    }
    return RecordForm::title();
}

Result<void> AlternateForm::complete(store::Action&, const model::RawId&, const Draft& draft) {
    const bool isQuestion = kind() == Kind::Alternate;
    std::string words;
    model::readMember(in(draft, isQuestion ? f::Alternate::question : f::Option::name), words);
    if (words.empty()) {
        return Said::refusal(
            (isQuestion ? tr("Question: say what is to be decided, such as “floor: refinish or "
                             "new”")
                        : tr("Option: say what would be done, such as “lay new oak”")));
    }
    if (isQuestion) {
        question_ = Said::text(words);
        return {};
    }
    std::vector<model::Value> values;
    for (const auto field : kValues) {
        values.push_back(in(draft, field));
    }
    return checkValues(values);
}

// A value that is there is held against the others before it is written.
bool AlternateForm::put(const QString& text) {
    const auto* const first = std::begin(kValues);
    if (!isNew() && canEdit() && kind() == Kind::Option) {
        const auto field = FieldWords::fields(kind())[static_cast<std::size_t>(place())];
        const auto* const at = std::find(first, std::end(kValues), field);
        auto value = readField(now(), field, text);
        if (at != std::end(kValues) && value.ok()) {
            std::vector<model::Value> values;
            for (const auto one : kValues) {
                values.push_back(one == field ? value.value() : valueIn(*now(), one, record()));
            }
            if (auto good = checkValues(values); !good.ok()) {
                Desk::here()->sayNotKept(Said::trouble(good.error()));
                return false;
            }
        }
    }
    return RecordForm::put(text);
}

bool AlternateForm::refuseWithItems(const model::Option& option) const {
    const auto items = std::count_if(now()->rows.items.begin(), now()->rows.items.end(),
                                     [&](const auto& item) { return item.option == option.id; });
    if (items > 0) {
        Desk::here()->sayNotKept(
            tr("%n item(s) of the scope belong to “%1”: drop them there first (Ctrl+3).", nullptr,
               static_cast<int>(items))
                .arg(Said::text(option.name)));
    }
    return items > 0;
}

bool AlternateForm::dropOption(const QString& id) {
    const auto wanted = idFrom<Kind::Option>(id);
    if (now() == nullptr || wanted.isNil()) {
        return false;
    }
    for (const auto& option : now()->rows.options) {
        if (option.id != wanted) {
            continue;
        }
        if (refuseWithItems(option)) {
            return false;
        }
        store::Action action("drop option " + option.name);
        action.drop(Kind::Option, wanted.raw());
        for (const auto& alternate : now()->rows.alternates) {
            if (alternate.carried == wanted) {
                action.set(alternate.id.raw(), f::Alternate::carried, model::Value());
            }
        }
        return Desk::here()->keep(action, tr("Dropped: %1").arg(Said::text(option.name)));
    }
    return false;
}

bool AlternateForm::dropAlternate(const QString& id) {
    const auto wanted = idFrom<Kind::Alternate>(id);
    if (now() == nullptr || wanted.isNil()) {
        return false;
    }
    for (const auto& alternate : now()->rows.alternates) {
        if (alternate.id != wanted) {
            continue;
        }
        store::Action action("drop alternate " + alternate.question);
        action.drop(Kind::Alternate, wanted.raw());
        for (const auto& option : now()->rows.options) {
            if (option.alternate != wanted) {
                continue;
            }
            if (refuseWithItems(option)) {
                return false;
            }
            action.drop(Kind::Option, option.id.raw());
        }
        return Desk::here()->keep(
            action, tr("Dropped with its options: %1").arg(Said::text(alternate.question)));
    }
    return false;
}

}  // namespace ledgerboard::desk
