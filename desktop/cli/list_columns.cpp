#include "desktop/cli/list_columns.h"

#include <algorithm>

namespace ledgerboard::cli {

namespace field = model::field;
using model::Kind;

std::vector<model::FieldCode> shownFields(Kind kind) {
    switch (kind) {
        case Kind::Job:
            return {field::Job::name,   field::Job::builtYear, field::Job::purchasePrice,
                    field::Job::budget, field::Job::beginOn,   field::Job::targetFinishOn};
        case Kind::Space:
            return {field::Space::name, field::Space::shortName, field::Space::floor,
                    field::Space::floorArea, field::Space::note};
        case Kind::Item:
            return {field::Item::space, field::Item::treatment, field::Item::object,
                    field::Item::option, field::Item::crew};
        case Kind::Crew:
            return {field::Crew::name, field::Crew::trade, field::Crew::phone,
                    field::Crew::insuredUntil, field::Crew::dailyRate};
        case Kind::Contract:
            return {field::Contract::name, field::Contract::crew,      field::Contract::type,
                    field::Contract::sum,  field::Contract::retainage, field::Contract::signedOn};
        case Kind::Change:
            return {field::Change::name,     field::Change::amount,    field::Change::askedOn,
                    field::Change::signedOn, field::Change::refusedOn, field::Change::paidFrom};
        case Kind::Spend:
            return {field::Spend::spentOn, field::Spend::type,   field::Spend::payee,
                    field::Spend::item,    field::Spend::amount, field::Spend::held};
        case Kind::Mark:
            return {field::Mark::markedOn, field::Mark::item,      field::Mark::percent,
                    field::Mark::count,    field::Mark::stepsDone, field::Mark::by,
                    field::Mark::note};
        case Kind::Photo:
            return {field::Photo::takenAt, field::Photo::space, field::Photo::stage,
                    field::Photo::caption};
        case Kind::Punch:
            return {field::Punch::space, field::Punch::what, field::Punch::crew,
                    field::Punch::dueOn, field::Punch::foundOn};
        case Kind::OwnWord:
            return {field::OwnWord::phrase,    field::OwnWord::object,  field::OwnWord::space,
                    field::OwnWord::treatment, field::OwnWord::nothing, field::OwnWord::times};
        case Kind::Price:
            return {field::Price::treatment, field::Price::object, field::Price::unit,
                    field::Price::material,  field::Price::labour, field::Price::source};
        case Kind::Draw:
            return {field::Draw::number,   field::Draw::askedOn, field::Draw::inspectedOn,
                    field::Draw::fundedOn, field::Draw::amount,  field::Draw::holdback};
        case Kind::Option:
            return {field::Option::alternate, field::Option::name, field::Option::cost,
                    field::Option::days, field::Option::valueLikely};
        default: {
            std::vector<model::FieldCode> fields;
            for (const auto& one : model::infoOf(kind).fields) {
                if (one.name != "job" && fields.size() < 7) {
                    fields.push_back(one.code);
                }
            }
            return fields;
        }
    }
}

}  // namespace ledgerboard::cli
