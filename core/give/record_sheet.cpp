#include "core/give/record_sheet.h"

namespace ledgerboard::give {

namespace {

using model::FieldType;

Form formOf(const model::Field& field) {
    switch (field.type) {
        case FieldType::Money:
            return Form::Money;
        case FieldType::Quantity:
            return Form::Quantity;
        case FieldType::Percent:
            return Form::Percent;
        case FieldType::Count:
            return Form::Count;
        case FieldType::Date:
            return Form::Date;
        default:
            return Form::Text;
    }
}

Cell cellOf(const model::Field& field, const model::Value& value, const model::NameRecord& name) {
    const auto* stored = std::get_if<std::int64_t>(&value);
    if (model::isEmpty(value)) {
        return {};
    }
    if (stored != nullptr) {
        switch (formOf(field)) {
            case Form::Money:
                return model::Money::fromMinor(*stored);
            case Form::Quantity:
                return model::Quantity::fromThousandths(*stored);
            case Form::Percent:
                return model::Percent::fromBasisPoints(*stored);
            case Form::Count:
                return *stored;
            case Form::Date:
                return model::Date::fromDays(static_cast<std::int32_t>(*stored));
            case Form::Text:
                break;
        }
    }
    return model::printValue(field, value, name);
}

// Budget now and forecast are what "over" is worked out from.
void addFigureColumns(Sheet& sheet) {
    const std::size_t first = sheet.columns.size();
    sheet.columns.push_back({"Budget now", Form::Money, true, ""});
    sheet.columns.push_back({"Done", Form::Percent, false, ""});
    sheet.columns.push_back({"Earned", Form::Money, true, ""});
    sheet.columns.push_back({"Billed", Form::Money, true, ""});
    sheet.columns.push_back({"Paid", Form::Money, true, ""});
    sheet.columns.push_back({"Forecast", Form::Money, true, ""});
    sheet.columns.push_back({"Over", Form::Money, true,
                             "=" + columnLetters(first + 5) + "#-" + columnLetters(first) + "#"});
}

void addFigures(const compute::LineFigures* line, std::vector<Cell>& cells) {
    if (line == nullptr) {
        cells.resize(cells.size() + 7);
        return;
    }
    cells.insert(cells.end(), {line->budgetNow, line->shown, line->earned, line->billed, line->paid,
                               line->forecast, line->beyondBudget()});
}

}  // namespace

Sheet recordSheet(model::Kind kind, const std::vector<store::Record>& records,
                  const std::map<model::RawId, compute::LineFigures>& figures,
                  const model::NameRecord& name, const std::string& title) {
    const auto& info = model::infoOf(kind);
    Sheet sheet{std::string(info.table), title, {}, {}};
    std::vector<const model::Field*> fields;
    for (const auto& field : info.fields) {
        if (field.name != "job") {
            fields.push_back(&field);
            const Form form = formOf(field);
            // What is per unit or per day does not add up.
            const bool addsUp = form == Form::Money && field.unit.empty();
            sheet.columns.push_back({std::string(field.heading), form, addsUp, ""});
        }
    }
    const bool isScope = kind == model::Kind::Item;
    if (isScope) {
        addFigureColumns(sheet);
    }
    for (const auto& record : records) {
        std::vector<Cell> cells;
        cells.reserve(sheet.columns.size());
        for (const auto* field : fields) {
            cells.push_back(cellOf(*field, record.at(field->code), name));
        }
        if (isScope) {
            const auto found = figures.find(record.id);
            addFigures(found == figures.end() ? nullptr : &found->second, cells);
        }
        sheet.rows.push_back(std::move(cells));
    }
    return sheet;
}

}  // namespace ledgerboard::give
