#include "core/intake/files/bring_kinds.h"

#include <algorithm>
#include <array>

namespace ledgerboard::intake {

namespace {

namespace f = model::field;
using model::Kind;

// How people head the same columns: common practice, no source.
constexpr std::array kSynonyms = {
    Synonyms{f::Item::space, "room;area;location;where"},
    Synonyms{f::Item::treatment, "action;do;what to do;work type"},
    Synonyms{f::Item::object, "description;task;work;item;scope item;what;element"},
    Synonyms{f::Item::note, "notes;comment;comments;remark;remarks;memo"},
    Synonyms{f::Item::quantity, "qty;count;how many;how much"},
    Synonyms{f::Item::unit, "uom;units;unit of measure;measure"},
    Synonyms{f::Item::unitCostMaterial,
             "unit material;material unit cost;material unit price;material each"},
    Synonyms{f::Item::unitCostLabour,
             "labor per unit;unit labour;unit labor;labour unit cost;labor unit cost;labor each"},
    Synonyms{f::Item::lumpSum, "lump;cost;price;amount;total;total cost;total price;item cost"},
    Synonyms{f::Item::costLow, "low;low cost;least;minimum"},
    Synonyms{f::Item::costHigh, "high;high cost;most;maximum"},
    Synonyms{f::Item::crew, "who;done by;assigned crew;subcontractor;sub"},
    Synonyms{f::Item::contract, "commitment;order"},
    Synonyms{f::Item::daysLikely, "duration;days likely;likely days;working days"},
    Synonyms{f::Item::daysLow, "least days;min days"},
    Synonyms{f::Item::daysHigh, "most days;max days"},
    Synonyms{f::Item::leadDays, "lead time;lead;lead time days"},
    Synonyms{f::Item::orderOn, "order by;order date"},
    Synonyms{f::Item::plannedStartOn, "start;start date;from;begin"},
    Synonyms{f::Item::plannedFinishOn, "finish;finish date;end;end date;until"},
    Synonyms{f::Item::condition, "condition;found"},
    Synonyms{f::Item::measure, "measured;progress by"},
    Synonyms{f::Item::hazards, "hazard"},

    Synonyms{f::Price::object, "description;item;work;task;what;element"},
    Synonyms{f::Price::treatment, "action;work type"},
    Synonyms{f::Price::unit, "uom;per;unit of measure"},
    Synonyms{f::Price::material,
             "materials;material cost;material price;material per unit;unit material"},
    Synonyms{f::Price::labour,
             "labor;labour cost;labor cost;labour per unit;labor per unit;unit labour;unit labor"},
    Synonyms{f::Price::low, "least;minimum;low price"},
    Synonyms{f::Price::high, "most;maximum;high price"},
    Synonyms{f::Price::leadDays, "lead time;lead;lead time days"},
    Synonyms{f::Price::asOf, "date;price date;updated"},
    Synonyms{f::Price::pack, "pack size;units per pack"},

    Synonyms{f::Crew::name, "name;company;crew name;subcontractor;who"},
    Synonyms{f::Crew::lead, "crew lead;foreman;contact;lead name"},
    Synonyms{f::Crew::phone, "telephone;phone number;mobile;cell;tel"},
    Synonyms{f::Crew::licence, "license;licence number;license number;licence no;license no"},
    Synonyms{f::Crew::insuredUntil, "insurance until;insurance;insurance expires;insured to"},
    Synonyms{f::Crew::dailyRate, "day rate;rate;rate per day;per day"},
    Synonyms{f::Crew::capacity, "people;places"},
    Synonyms{f::Crew::note, "notes;comment;comments;memo"},

    Synonyms{f::Spend::type, "type;spend kind;transaction type"},
    Synonyms{f::Spend::spentOn, "day;paid on;posted;invoice date;transaction date;date paid"},
    Synonyms{f::Spend::amount, "total;sum;cost;price;paid;invoice amount"},
    Synonyms{f::Spend::item, "scope item;for;object"},
    Synonyms{f::Spend::contract, "commitment;order;po"},
    Synonyms{f::Spend::payee, "vendor;supplier;paid to;store;shop;merchant;seller;to"},
    Synonyms{f::Spend::tax, "sales tax;vat"},
    Synonyms{f::Spend::held, "retainage;retainage held;held back"},
    Synonyms{f::Spend::dueOn, "due date;due by;pay by"},
    Synonyms{f::Spend::pays, "pays invoice;for invoice"},
    Synonyms{f::Spend::bankId, "fitid;transaction id;reference;bank reference;ref;transaction"},
    Synonyms{f::Spend::note, "memo;notes;comment;comments;description;details"},
    Synonyms{f::Spend::paperSeen, "receipt seen;paper;have receipt"},

    Synonyms{f::Contract::name, "name;contract name;for;what;description;commitment"},
    Synonyms{f::Contract::crew, "contractor;subcontractor;sub;supplier;vendor;with"},
    Synonyms{f::Contract::type, "type;contract type"},
    Synonyms{f::Contract::sum, "amount;total;contract sum;price;contract amount;agreed"},
    Synonyms{f::Contract::deposit, "down payment"},
    Synonyms{f::Contract::retainage, "held back;retention"},
    Synonyms{f::Contract::signedOn, "date;signed on;date signed"},
    Synonyms{f::Contract::startOn, "start date;begin;from"},
    Synonyms{f::Contract::finishOn, "finish date;end;end date;until"},
    Synonyms{f::Contract::waiverReceivedOn, "waiver;lien waiver"},
    Synonyms{f::Contract::note, "notes;comment;comments;memo"},

    Synonyms{f::Change::name, "change order;name;what;description;title"},
    Synonyms{f::Change::contract, "commitment;order"},
    Synonyms{f::Change::items, "item;scope items"},
    Synonyms{f::Change::why, "reason;because;note;notes"},
    Synonyms{f::Change::amount, "cost;price;total;sum;adds"},
    Synonyms{f::Change::days, "days added;added days;extra days"},
    Synonyms{f::Change::askedOn, "date;requested;asked on;date asked"},
    Synonyms{f::Change::signedOn, "approved;signed on;date signed"},

    Synonyms{f::Mark::item, "scope item;object;work;task;what;description"},
    Synonyms{f::Mark::percent,
             "pct;% done;done;progress;complete;percent done;% complete;%;"
             "percent complete"},
    Synonyms{f::Mark::count, "units done;done count;counted;qty;quantity"},
    Synonyms{f::Mark::stepsDone, "steps;step"},
    Synonyms{f::Mark::markedOn, "day;seen;seen on;marked on;when;at"},
    Synonyms{f::Mark::note, "notes;comment;comments;memo;remark;remarks"},

    Synonyms{f::Draw::number, "number;no;#;draw no;draw number;draw #"},
    Synonyms{f::Draw::askedOn, "requested;date asked;asked on;date"},
    Synonyms{f::Draw::inspectedOn, "inspection;inspected on;visit"},
    Synonyms{f::Draw::fundedOn, "received;paid;funded on;money came"},
    Synonyms{f::Draw::amount, "sum;total;received amount;money"},
    Synonyms{f::Draw::holdback, "holdback;retainage"},
    Synonyms{f::Draw::fee, "fees;draw fee"},
    Synonyms{f::Draw::note, "notes;comment;comments;memo"},

    Synonyms{f::Punch::space, "room;area;location;where"},
    Synonyms{f::Punch::what, "description;punch item;issue;problem;defect;work;task;to do"},
    Synonyms{f::Punch::crew, "who;subcontractor;sub;by whom"},
    Synonyms{f::Punch::dueOn, "due date;due by;by;by when"},
    Synonyms{f::Punch::foundOn, "date;found on;date found;seen"},
    Synonyms{f::Punch::cost, "amount;price;total"},
    Synonyms{f::Punch::chargeBackTo, "charge to;back charge to"},
    Synonyms{f::Punch::chargeBack, "back charge;charge"},
    Synonyms{f::Punch::item, "scope item"},

    Synonyms{f::Photo::space, "room;area;location;where"},
    Synonyms{f::Photo::item, "scope item;object;work;task"},
    Synonyms{f::Photo::stage, "before or after"},
    Synonyms{f::Photo::takenAt, "taken;taken on;when;time;date;date taken"},
    Synonyms{f::Photo::spot, "from;corner;standpoint"},
    Synonyms{f::Photo::caption, "description;title;what;note;notes;comment;comments"},
    Synonyms{f::Photo::forLender, "lender;for lender"},
};

constexpr std::array kAdvices = {
    Advice{Kind::Item, "percent;pct;% done;progress;done;status;complete;percent complete",
           "progress is never a field of an item: bring it as marks (Item, Date, Percent)"},
    Advice{Kind::Item, "unit cost;unit price;price per unit;cost per unit;rate",
           "a unit has two prices: say \"Material per unit\" or \"Labour per unit\""},
    Advice{Kind::Item, "material;materials;material cost",
           "say \"Material per unit\" for the price of one unit, or \"Lump sum\" for all of it"},
    Advice{Kind::Item, "labour;labor;labour cost;labor cost",
           "say \"Labour per unit\" for the price of one unit, or \"Lump sum\" for all of it"},
    Advice{Kind::Price, "price;cost;unit cost;unit price;amount;total",
           "a price has two parts: say \"Material\" or \"Labour\""},
    Advice{Kind::Spend, "debit;credit;money in;money out;withdrawal;withdrawals;deposits",
           "spend has one column \"Amount\" without signs; the column \"Kind\" says invoice, "
           "payment, receipt, fee or refund"},
    Advice{Kind::Punch, "status;done;fixed;accepted;open",
           "whether a punch item is fixed is said by a look at it, not by its file"},
};

std::vector<BringKind> makeKinds() {
    std::vector<BringKind> kinds(11);
    kinds[0] = {.word = "scope",
                .kind = Kind::Item,
                .needed = {f::Item::space, f::Item::treatment, f::Item::object},
                .key = {f::Item::space, f::Item::treatment, f::Item::object},
                .hasAfter = true};
    kinds[1] = {.word = "prices",
                .kind = Kind::Price,
                .needed = {f::Price::object, f::Price::treatment, f::Price::unit},
                .key = {f::Price::object, f::Price::treatment, f::Price::unit}};
    kinds[2] = {
        .word = "crews", .kind = Kind::Crew, .needed = {f::Crew::name}, .key = {f::Crew::name}};
    kinds[3] = {.word = "spend",
                .kind = Kind::Spend,
                .leftOut = {f::Spend::voids, f::Spend::photo},
                .needed = {f::Spend::type, f::Spend::spentOn},
                .neededColumns = {f::Spend::amount},
                .spaceBesideItem = true};
    kinds[4] = {.word = "contracts",
                .kind = Kind::Contract,
                .needed = {f::Contract::name},
                .key = {f::Contract::name, f::Contract::crew},
                .keyFillsIn = true};
    kinds[5] = {.word = "changes",
                .kind = Kind::Change,
                .needed = {f::Change::name},
                .key = {f::Change::name}};
    kinds[6] = {.word = "marks",
                .kind = Kind::Mark,
                .leftOut = {f::Mark::by, f::Mark::onDevice, f::Mark::photo, f::Mark::voids,
                            f::Mark::inSpiteOfCaution},
                .needed = {f::Mark::item, f::Mark::markedOn},
                .spaceBesideItem = true};
    kinds[7] = {
        .word = "draws", .kind = Kind::Draw, .needed = {f::Draw::number}, .key = {f::Draw::number}};
    kinds[8] = {.word = "punch",
                .kind = Kind::Punch,
                .needed = {f::Punch::what},
                .key = {f::Punch::space, f::Punch::what, f::Punch::foundOn}};
    kinds[9] = {.word = "lender-lines",
                .kind = Kind::LenderLine,
                .needed = {f::LenderLine::name, f::LenderLine::amount},
                .key = {f::LenderLine::name}};
    kinds[10] = {.word = "draw-lines",
                 .kind = Kind::DrawLine,
                 .needed = {f::DrawLine::draw, f::DrawLine::lenderLine},
                 .key = {f::DrawLine::draw, f::DrawLine::lenderLine}};
    return kinds;
}

}  // namespace

std::span<const BringKind> bringKinds() {
    static const std::vector<BringKind> kKinds = makeKinds();
    return kKinds;
}

const BringKind* bringKindNamed(std::string_view word) {
    const auto kind = model::kindNamed(word);
    for (const auto& one : bringKinds()) {
        if (model::folded(one.word) == model::folded(word) || (kind && *kind == one.kind)) {
            return &one;
        }
    }
    return nullptr;
}

std::vector<const model::Field*> columnsOf(const BringKind& kind) {
    std::vector<const model::Field*> columns;
    const auto* job = model::jobFieldOf(kind.kind);
    for (const auto& field : model::infoOf(kind.kind).fields) {
        const bool out =
            std::find(kind.leftOut.begin(), kind.leftOut.end(), field.code) != kind.leftOut.end();
        if (!out && (job == nullptr || field.code != job->code)) {
            columns.push_back(&field);
        }
    }
    return columns;
}

std::span<const Synonyms> synonyms() {
    return kSynonyms;
}

std::span<const Advice> advices() {
    return kAdvices;
}

}  // namespace ledgerboard::intake
