#include "desktop/client/money/field_words.h"

namespace ledgerboard::desk {

namespace {

namespace f = model::field;
using model::FieldCode;
using model::Kind;

struct Heading {
    FieldCode field;
    const char* words;
};

constexpr Heading kHeadings[] = {
    {f::Contract::name, QT_TRANSLATE_NOOP("FieldWords", "Contract")},
    {f::Contract::type, QT_TRANSLATE_NOOP("FieldWords", "Kind")},
    {f::Contract::crew, QT_TRANSLATE_NOOP("FieldWords", "Crew")},
    {f::Contract::sum, QT_TRANSLATE_NOOP("FieldWords", "Sum")},
    {f::Contract::deposit, QT_TRANSLATE_NOOP("FieldWords", "Deposit")},
    {f::Contract::retainage, QT_TRANSLATE_NOOP("FieldWords", "Retainage")},
    {f::Contract::retainageUntil, QT_TRANSLATE_NOOP("FieldWords", "Retainage until")},
    {f::Contract::paymentSteps, QT_TRANSLATE_NOOP("FieldWords", "Payment steps")},
    {f::Contract::signedOn, QT_TRANSLATE_NOOP("FieldWords", "Signed")},
    {f::Contract::startOn, QT_TRANSLATE_NOOP("FieldWords", "Start")},
    {f::Contract::finishOn, QT_TRANSLATE_NOOP("FieldWords", "Finish")},
    {f::Contract::whoBuysWhat, QT_TRANSLATE_NOOP("FieldWords", "Who buys what")},
    {f::Contract::insuranceSeen, QT_TRANSLATE_NOOP("FieldWords", "Insurance seen")},
    {f::Contract::waiverReceivedOn, QT_TRANSLATE_NOOP("FieldWords", "Waiver received")},
    {f::Contract::acceptedOn, QT_TRANSLATE_NOOP("FieldWords", "Accepted")},
    {f::Contract::note, QT_TRANSLATE_NOOP("FieldWords", "Note")},
    {f::Change::name, QT_TRANSLATE_NOOP("FieldWords", "Change")},
    {f::Change::contract, QT_TRANSLATE_NOOP("FieldWords", "Contract")},
    {f::Change::items, QT_TRANSLATE_NOOP("FieldWords", "Items")},
    {f::Change::amount, QT_TRANSLATE_NOOP("FieldWords", "Amount")},
    {f::Change::days, QT_TRANSLATE_NOOP("FieldWords", "Days")},
    {f::Change::paidFrom, QT_TRANSLATE_NOOP("FieldWords", "Paid from")},
    {f::Change::askedOn, QT_TRANSLATE_NOOP("FieldWords", "Asked")},
    {f::Change::signedOn, QT_TRANSLATE_NOOP("FieldWords", "Signed")},
    {f::Change::refusedOn, QT_TRANSLATE_NOOP("FieldWords", "Refused")},
    {f::Change::why, QT_TRANSLATE_NOOP("FieldWords", "Why")},
    {f::Change::split, QT_TRANSLATE_NOOP("FieldWords", "Split")},
    {f::Spend::type, QT_TRANSLATE_NOOP("FieldWords", "Kind")},
    {f::Spend::spentOn, QT_TRANSLATE_NOOP("FieldWords", "Date")},
    {f::Spend::payee, QT_TRANSLATE_NOOP("FieldWords", "Payee")},
    {f::Spend::amount, QT_TRANSLATE_NOOP("FieldWords", "Amount")},
    {f::Spend::tax, QT_TRANSLATE_NOOP("FieldWords", "Tax")},
    {f::Spend::item, QT_TRANSLATE_NOOP("FieldWords", "Item")},
    {f::Spend::contract, QT_TRANSLATE_NOOP("FieldWords", "Contract")},
    {f::Spend::crew, QT_TRANSLATE_NOOP("FieldWords", "Crew")},
    {f::Spend::dueOn, QT_TRANSLATE_NOOP("FieldWords", "Due")},
    {f::Spend::held, QT_TRANSLATE_NOOP("FieldWords", "Held")},
    {f::Spend::pays, QT_TRANSLATE_NOOP("FieldWords", "Pays")},
    {f::Spend::split, QT_TRANSLATE_NOOP("FieldWords", "Split")},
    {f::Spend::paperSeen, QT_TRANSLATE_NOOP("FieldWords", "Paper seen")},
    {f::Spend::note, QT_TRANSLATE_NOOP("FieldWords", "Note")},
    {f::Draw::number, QT_TRANSLATE_NOOP("FieldWords", "Draw")},
    {f::Draw::askedOn, QT_TRANSLATE_NOOP("FieldWords", "Asked")},
    {f::Draw::inspectedOn, QT_TRANSLATE_NOOP("FieldWords", "Inspected")},
    {f::Draw::fundedOn, QT_TRANSLATE_NOOP("FieldWords", "Funded")},
    {f::Draw::amount, QT_TRANSLATE_NOOP("FieldWords", "Amount")},
    {f::Draw::holdback, QT_TRANSLATE_NOOP("FieldWords", "Held back")},
    {f::Draw::fee, QT_TRANSLATE_NOOP("FieldWords", "Fee")},
    {f::Draw::note, QT_TRANSLATE_NOOP("FieldWords", "Note")},
    {f::DrawLine::lenderLine, QT_TRANSLATE_NOOP("FieldWords", "Lender line")},
    {f::DrawLine::asked, QT_TRANSLATE_NOOP("FieldWords", "Asked")},
    {f::DrawLine::allowed, QT_TRANSLATE_NOOP("FieldWords", "Allowed")},
    {f::DrawLine::whyRefused, QT_TRANSLATE_NOOP("FieldWords", "Why refused")},
    {f::LenderLine::name, QT_TRANSLATE_NOOP("FieldWords", "Lender line")},
    {f::LenderLine::amount, QT_TRANSLATE_NOOP("FieldWords", "Amount")},
    {f::LenderLine::shareLent, QT_TRANSLATE_NOOP("FieldWords", "Share lent")},
    {f::Delivery::item, QT_TRANSLATE_NOOP("FieldWords", "Item")},
    {f::Delivery::orderedOn, QT_TRANSLATE_NOOP("FieldWords", "Ordered")},
    {f::Delivery::promisedOn, QT_TRANSLATE_NOOP("FieldWords", "Promised")},
    {f::Delivery::arrivedOn, QT_TRANSLATE_NOOP("FieldWords", "Arrived")},
    {f::Delivery::lookedAtOn, QT_TRANSLATE_NOOP("FieldWords", "Looked at")},
    {f::Delivery::wrongOrMissing, QT_TRANSLATE_NOOP("FieldWords", "Wrong or missing")},
    {f::PayeeRule::words, QT_TRANSLATE_NOOP("FieldWords", "Bank writes")},
    {f::PayeeRule::payee, QT_TRANSLATE_NOOP("FieldWords", "Payee")},
    {f::PayeeRule::item, QT_TRANSLATE_NOOP("FieldWords", "Item")},
    {f::PayeeRule::contract, QT_TRANSLATE_NOOP("FieldWords", "Contract")},
    {f::PayeeRule::crew, QT_TRANSLATE_NOOP("FieldWords", "Crew")},
    {f::PayeeRule::notOurs, QT_TRANSLATE_NOOP("FieldWords", "Not ours")},
    {f::Punch::what, QT_TRANSLATE_NOOP("FieldWords", "What")},
    {f::Punch::space, QT_TRANSLATE_NOOP("FieldWords", "Space")},
    {f::Punch::crew, QT_TRANSLATE_NOOP("FieldWords", "Crew")},
    {f::Punch::dueOn, QT_TRANSLATE_NOOP("FieldWords", "By")},
    {f::Punch::foundOn, QT_TRANSLATE_NOOP("FieldWords", "Found")},
    {f::Punch::item, QT_TRANSLATE_NOOP("FieldWords", "Item")},
    {f::Punch::cost, QT_TRANSLATE_NOOP("FieldWords", "Cost")},
    {f::Punch::chargeBackTo, QT_TRANSLATE_NOOP("FieldWords", "Charge back to")},
    {f::Punch::chargeBack, QT_TRANSLATE_NOOP("FieldWords", "Charge back")},
    {f::Price::object, QT_TRANSLATE_NOOP("FieldWords", "Object")},
    {f::Price::treatment, QT_TRANSLATE_NOOP("FieldWords", "Treatment")},
    {f::Price::unit, QT_TRANSLATE_NOOP("FieldWords", "Unit")},
    {f::Price::material, QT_TRANSLATE_NOOP("FieldWords", "Material")},
    {f::Price::labour, QT_TRANSLATE_NOOP("FieldWords", "Labour")},
    {f::Price::low, QT_TRANSLATE_NOOP("FieldWords", "Low")},
    {f::Price::high, QT_TRANSLATE_NOOP("FieldWords", "High")},
    {f::Price::waste, QT_TRANSLATE_NOOP("FieldWords", "Waste")},
    {f::Price::pack, QT_TRANSLATE_NOOP("FieldWords", "Pack")},
    {f::Price::leadDays, QT_TRANSLATE_NOOP("FieldWords", "Lead days")},
    {f::Price::trade, QT_TRANSLATE_NOOP("FieldWords", "Trade")},
    {f::Price::source, QT_TRANSLATE_NOOP("FieldWords", "Source")},
    {f::Price::asOf, QT_TRANSLATE_NOOP("FieldWords", "As of")},
    {f::Item::contract, QT_TRANSLATE_NOOP("FieldWords", "Contract")},
    {f::Item::lenderLine, QT_TRANSLATE_NOOP("FieldWords", "Lender line")},
    {f::Item::leadDays, QT_TRANSLATE_NOOP("FieldWords", "Lead days")},
    {f::Item::orderOn, QT_TRANSLATE_NOOP("FieldWords", "Order on")},
    {f::Item::waste, QT_TRANSLATE_NOOP("FieldWords", "Waste")},
    {f::Item::pack, QT_TRANSLATE_NOOP("FieldWords", "Pack")},
    {f::Item::costLow, QT_TRANSLATE_NOOP("FieldWords", "Cost low")},
    {f::Item::costHigh, QT_TRANSLATE_NOOP("FieldWords", "Cost high")},
    {f::Item::note, QT_TRANSLATE_NOOP("FieldWords", "Note")},
    {f::Alternate::space, QT_TRANSLATE_NOOP("FieldWords", "Space")},
    {f::Alternate::question, QT_TRANSLATE_NOOP("FieldWords", "Question")},
    {f::Alternate::decideBy, QT_TRANSLATE_NOOP("FieldWords", "Decide by")},
    {f::Option::name, QT_TRANSLATE_NOOP("FieldWords", "Option")},
    {f::Option::cost, QT_TRANSLATE_NOOP("FieldWords", "Cost")},
    {f::Option::days, QT_TRANSLATE_NOOP("FieldWords", "Days")},
    {f::Option::valueLow, QT_TRANSLATE_NOOP("FieldWords", "Value low")},
    {f::Option::valueLikely, QT_TRANSLATE_NOOP("FieldWords", "Value")},
    {f::Option::valueHigh, QT_TRANSLATE_NOOP("FieldWords", "Value high")},
    {f::Option::needs, QT_TRANSLATE_NOOP("FieldWords", "Needs")},
    {f::Option::excludes, QT_TRANSLATE_NOOP("FieldWords", "Excludes")},
    {f::Option::note, QT_TRANSLATE_NOOP("FieldWords", "Note")},
    {f::Job::builtYear, QT_TRANSLATE_NOOP("FieldWords", "Built")},
    {f::Job::purchasePrice, QT_TRANSLATE_NOOP("FieldWords", "Purchase price")},
    {f::Job::purchasedOn, QT_TRANSLATE_NOOP("FieldWords", "Purchased")},
    {f::Job::resaleLikely, QT_TRANSLATE_NOOP("FieldWords", "Resale")},
    {f::Job::resaleLow, QT_TRANSLATE_NOOP("FieldWords", "Resale low")},
    {f::Job::resaleHigh, QT_TRANSLATE_NOOP("FieldWords", "Resale high")},
    {f::Job::streetCeiling, QT_TRANSLATE_NOOP("FieldWords", "Street's ceiling")},
    {f::Job::budget, QT_TRANSLATE_NOOP("FieldWords", "Budget")},
    {f::Job::contingency, QT_TRANSLATE_NOOP("FieldWords", "Contingency")},
    {f::Job::wantedProfit, QT_TRANSLATE_NOOP("FieldWords", "Wanted profit")},
    {f::Job::beginOn, QT_TRANSLATE_NOOP("FieldWords", "Begin")},
    {f::Job::targetFinishOn, QT_TRANSLATE_NOOP("FieldWords", "Finish")},
    {f::Job::resaleDays, QT_TRANSLATE_NOOP("FieldWords", "Days to resale")},
    {f::Job::buyingCosts, QT_TRANSLATE_NOOP("FieldWords", "Buying costs")},
    {f::Job::sellingCosts, QT_TRANSLATE_NOOP("FieldWords", "Selling costs")},
    {f::Job::commission, QT_TRANSLATE_NOOP("FieldWords", "Commission")},
    {f::Job::holdingCosts, QT_TRANSLATE_NOOP("FieldWords", "Holding costs")},
    {f::Job::cashAtStart, QT_TRANSLATE_NOOP("FieldWords", "Cash at start")},
    {f::Job::purchaseLoan, QT_TRANSLATE_NOOP("FieldWords", "Purchase loan")},
    {f::Job::workLoan, QT_TRANSLATE_NOOP("FieldWords", "Work loan")},
    {f::Job::loanRate, QT_TRANSLATE_NOOP("FieldWords", "Loan rate")},
    {f::Job::purchasePoints, QT_TRANSLATE_NOOP("FieldWords", "Points, purchase")},
    {f::Job::workPoints, QT_TRANSLATE_NOOP("FieldWords", "Points, work")},
    {f::Job::lenderFees, QT_TRANSLATE_NOOP("FieldWords", "Lender fees")},
    {f::Job::drawLimit, QT_TRANSLATE_NOOP("FieldWords", "Draw limit")},
    {f::Job::holdback, QT_TRANSLATE_NOOP("FieldWords", "Holdback")},
    {f::Job::visitFee, QT_TRANSLATE_NOOP("FieldWords", "Fee per visit")},
    {f::Job::visitDays, QT_TRANSLATE_NOOP("FieldWords", "Days to visit")},
    {f::Job::fundDays, QT_TRANSLATE_NOOP("FieldWords", "Days to money")},
    {f::Job::termEndOn, QT_TRANSLATE_NOOP("FieldWords", "Term end")},
    {f::Job::extensionFee, QT_TRANSLATE_NOOP("FieldWords", "Extension fee")},
};

struct Word {
    const char* stored;
    const char* words;
};

constexpr Word kWords[] = {
    {"subcontract", QT_TRANSLATE_NOOP("FieldWords", "Subcontract")},
    {"order", QT_TRANSLATE_NOOP("FieldWords", "Order")},
    {"invoice", QT_TRANSLATE_NOOP("FieldWords", "Invoice")},
    {"payment", QT_TRANSLATE_NOOP("FieldWords", "Payment")},
    {"receipt", QT_TRANSLATE_NOOP("FieldWords", "Receipt")},
    {"fee", QT_TRANSLATE_NOOP("FieldWords", "Fee")},
    {"refund", QT_TRANSLATE_NOOP("FieldWords", "Refund")},
    {"contingency", QT_TRANSLATE_NOOP("FieldWords", "Contingency")},
    {"new money", QT_TRANSLATE_NOOP("FieldWords", "New money")},
    {"keep", QT_TRANSLATE_NOOP("FieldWords", "Keep")},
    {"inspect", QT_TRANSLATE_NOOP("FieldWords", "Inspect")},
    {"clean", QT_TRANSLATE_NOOP("FieldWords", "Clean")},
    {"repair", QT_TRANSLATE_NOOP("FieldWords", "Repair")},
    {"refinish", QT_TRANSLATE_NOOP("FieldWords", "Refinish")},
    {"replace", QT_TRANSLATE_NOOP("FieldWords", "Replace")},
    {"remove", QT_TRANSLATE_NOOP("FieldWords", "Remove")},
    {"add", QT_TRANSLATE_NOOP("FieldWords", "Add")},
    {"relocate", QT_TRANSLATE_NOOP("FieldWords", "Relocate")},
};

constexpr Heading kTitles[] = {
    {static_cast<FieldCode>(Kind::Contract), QT_TRANSLATE_NOOP("FieldWords", "Contract or order")},
    {static_cast<FieldCode>(Kind::Change), QT_TRANSLATE_NOOP("FieldWords", "Change order")},
    {static_cast<FieldCode>(Kind::Spend),
     QT_TRANSLATE_NOOP("FieldWords", "Bill, receipt or payment")},
    {static_cast<FieldCode>(Kind::Draw), QT_TRANSLATE_NOOP("FieldWords", "Draw")},
    {static_cast<FieldCode>(Kind::DrawLine), QT_TRANSLATE_NOOP("FieldWords", "Line of a draw")},
    {static_cast<FieldCode>(Kind::LenderLine), QT_TRANSLATE_NOOP("FieldWords", "Lender line")},
    {static_cast<FieldCode>(Kind::Delivery), QT_TRANSLATE_NOOP("FieldWords", "Delivery")},
    {static_cast<FieldCode>(Kind::PayeeRule), QT_TRANSLATE_NOOP("FieldWords", "Payee rule")},
    {static_cast<FieldCode>(Kind::Punch), QT_TRANSLATE_NOOP("FieldWords", "Punch item")},
    {static_cast<FieldCode>(Kind::Alternate), QT_TRANSLATE_NOOP("FieldWords", "Alternate")},
    {static_cast<FieldCode>(Kind::Option), QT_TRANSLATE_NOOP("FieldWords", "Option")},
    {static_cast<FieldCode>(Kind::Price), QT_TRANSLATE_NOOP("FieldWords", "Price")},
};

}  // namespace

QString FieldWords::heading(FieldCode field) {
    for (const auto& one : kHeadings) {
        if (one.field == field) {
            return tr(one.words);
        }
    }
    const auto heading = model::fieldOf(field)->heading;
    return QString::fromUtf8(heading.data(), static_cast<qsizetype>(heading.size()));
}

QString FieldWords::word(std::string_view stored) {
    for (const auto& one : kWords) {
        if (stored == one.stored) {
            return tr(one.words);
        }
    }
    return QString::fromUtf8(stored.data(), static_cast<qsizetype>(stored.size()));
}

QString FieldWords::yes() {
    return tr("yes");
}

QString FieldWords::kind(Kind kind) {
    for (const auto& one : kTitles) {
        if (one.field == static_cast<FieldCode>(kind)) {
            return tr(one.words);
        }
    }
    const auto title = model::infoOf(kind).title;
    return QString::fromUtf8(title.data(), static_cast<qsizetype>(title.size()));
}

const std::vector<FieldCode>& FieldWords::fields(Kind kind) {
    static const auto kAll = [] {
        std::vector<std::vector<FieldCode>> all(model::kinds().size() + 2);
        for (const auto& one : kHeadings) {
            all[static_cast<std::size_t>(model::kindOf(one.field))].push_back(one.field);
        }
        return all;
    }();
    return kAll.at(static_cast<std::size_t>(kind));
}

}  // namespace ledgerboard::desk
