#include "core/intake/bank/file_line.h"

#include "core/compute/as_of.h"

namespace ledgerboard::intake {

namespace f = model::field;
using model::BankLine;
using model::Kind;
using model::Result;
using model::Value;

Result<model::JobRows> bankRows(const store::Book& book, model::Id<Kind::Job> job) {
    auto rows = book.jobRows(job);
    if (!rows.ok()) {
        return rows.error();
    }
    return compute::withoutVoided(std::move(rows).value());
}

void fileLine(store::Action& action, store::Book& book, const BankLine& line,
              const LineMatch& match, model::Instant now) {
    const model::RawId id = line.id.raw();
    model::Id<Kind::Spend> spend = match.spend;
    switch (match.is) {
        case LineIs::Unknown:
            return;
        case LineIs::Filed:
            action.set(spend.raw(), f::Spend::bankId, Value{line.bankId});
            break;
        case LineIs::NewSpend: {
            model::Spend fresh = match.fresh;
            fresh.id = book.newId<Kind::Spend>(now);
            action.add(fresh);
            spend = fresh.id;
            break;
        }
        case LineIs::Draw:
            action.set(match.draw.raw(), f::Draw::fundedOn, model::valueOf(line.postedOn));
            action.set(match.draw.raw(), f::Draw::amount, model::valueOf(line.amount));
            action.set(id, f::BankLine::draw, model::valueOf(match.draw));
            break;
        case LineIs::NotOurs:
            action.set(id, f::BankLine::notOurs, model::valueOf(true));
            break;
    }
    if (!spend.isNil()) {
        action.set(id, f::BankLine::spend, model::valueOf(spend));
    }
    action.set(id, f::BankLine::why, Value{match.reason});
    action.set(id, f::BankLine::sure,
               model::valueOf(model::member::Percent(model::Percent::of(match.sure))));
}

}  // namespace ledgerboard::intake
