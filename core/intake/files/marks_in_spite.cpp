#include "core/intake/files/marks_in_spite.h"

#include <algorithm>

#include "core/compute/progress.h"

namespace ledgerboard::intake {

MarksInSpite::MarksInSpite(const model::JobRows& rows, model::Date today)
    : rows_(rows), cautions_(compute::cautionsOf(rows, today)) {}

bool MarksInSpite::take(const FieldValues& values) {
    const auto mark = rowFrom<model::Mark>(values);
    const auto item = std::find_if(rows_.items.begin(), rows_.items.end(),
                                   [&](const model::Item& one) { return one.id == mark.item; });
    if (item == rows_.items.end()) {
        return false;
    }
    const auto percent = compute::percentOf(*item, mark);
    const bool saysBegun = percent && *percent > model::Percent{};
    if (!compute::isInSpite(cautions_, mark.item, mark.markedOn, saysBegun)) {
        return false;
    }
    ++count_;
    for (const compute::CautionRead& caution : cautions_.all) {
        if (caution.item == mark.item) {
            names_.insert(caution.what);
        }
    }
    return true;
}

std::string MarksInSpite::remark() const {
    if (count_ == 0) {
        return "";
    }
    constexpr std::size_t kMostNames = 4;
    std::string names;
    std::size_t told = 0;
    for (const std::string& name : names_) {
        if (++told <= kMostNames) {
            names += (names.empty() ? "" : ", ") + name;
        }
    }
    if (told > kMostNames) {
        names += " and " + std::to_string(told - kMostNames) + " more";
    }
    return std::to_string(count_) +
           (count_ == 1 ? " mark says that work was begun while a caution was open; it is"
                        : " marks say that work was begun while a caution was open; they are") +
           " kept and flagged (" + names + "): 'ledgerboard cautions' tells of each";
}

}  // namespace ledgerboard::intake
