#include "core/intake/notes/fact_told.h"

#include <algorithm>
#include <cstdlib>

namespace ledgerboard::intake {

bool ToldFacts::has(std::string_view name) const {
    return std::any_of(told.begin(), told.end(),
                       [&](const ToldFact& one) { return one.fact.name == name; });
}

std::int64_t ToldFacts::first(std::string_view name) const {
    const auto found = std::find_if(told.begin(), told.end(),
                                    [&](const ToldFact& one) { return one.fact.name == name; });
    return found == told.end() ? 0 : found->sum;
}

int ToldFacts::farFromFacts(int at) const {
    int far = 1000;
    for (const ToldFact& one : told) {
        far = std::min(far, std::abs(one.at - at));
    }
    return far;
}

// Whether another figure is told right beside it: "1991." "612 is the number."
bool ToldFacts::hasCompany(const LooseFigure& figure) const {
    return std::any_of(loose.begin(), loose.end(), [&](const LooseFigure& other) {
        return &other != &figure && other.value != figure.value &&
               std::abs(other.at - figure.at) <= 1;
    });
}

bool ToldFacts::isAmongFacts(const LooseFigure& figure) const {
    constexpr int kNear = 2;
    constexpr int kClosing = 6;
    constexpr int kMostWords = 7;
    const bool closes = figure.words <= kMostWords && figure.at + kClosing > last &&
                        (figure.of == LooseFigure::Of::Sum || hasCompany(figure));
    return closes || farFromFacts(figure.at) <= (figure.round ? 1 : kNear);
}

bool ToldFacts::isYear(const LooseFigure& figure) const {
    const std::string two = std::to_string(figure.value / kThousandDollars);
    return std::any_of(told.begin(), told.end(), [&](const ToldFact& one) {
        return one.fact.name == "built" && one.fact.value.ends_with(two);
    });
}

void ToldFacts::add(const std::string& name, const LooseFigure& figure, const std::string& value) {
    const bool known = std::any_of(told.begin(), told.end(), [&](const ToldFact& one) {
        return one.fact.name == name && one.fact.value == value;
    });
    const bool sum = name != "built" && figure.of == LooseFigure::Of::Sum;
    if (!known) {
        told.push_back({{name, value, figure.source}, sum ? figure.value : 0, figure.at});
    }
}

void ToldFacts::dropNameless() {
    std::vector<ToldFact> kept;
    for (ToldFact& one : told) {
        const bool twice = std::any_of(kept.begin(), kept.end(), [&](const ToldFact& other) {
            return other.fact.name == one.fact.name && other.fact.value == one.fact.value;
        });
        if (!one.fact.name.empty() && !twice) {
            kept.push_back(std::move(one));
        }
    }
    told = std::move(kept);
}

}  // namespace ledgerboard::intake
