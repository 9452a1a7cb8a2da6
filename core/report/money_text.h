// How are money, percents, dates and counts written for people to read?
//
// Pages show whole dollars, rounded half away from zero from the exact figure (each figure by
// itself, so a column of rounded figures may be a dollar off its rounded total); cents are shown
// where a single bill is meant. JSON and CSV never use these: they print every cent.
#pragma once

#include <cstdint>
#include <string>

#include "core/model/date.h"
#include "core/model/money.h"
#include "core/model/percent.h"
#include "core/report/plain_text.h"

namespace ledgerboard::report {

// "123,320", "−420" (U+2212; "-420" in ASCII), "0".
[[nodiscard]] std::string wholeText(model::Money money, Script script);

// "123,320.50".
[[nodiscard]] std::string centsText(model::Money money, Script script);

// A difference: "+1,180", "−420", and "0" where it rounds to nothing.
[[nodiscard]] std::string signedText(model::Money money, Script script);

// Where columns are narrow: whole up to 11 letters ("123,320"), beyond that in millions
// ("10,000,000M").
[[nodiscard]] std::string shortText(model::Money money, Script script);
[[nodiscard]] std::string shortSignedText(model::Money money, Script script);

// For the ends of an axis, in as few letters as keep it exact to a tenth: "0", "950", "30k",
// "7.5k", "1.2M".
[[nodiscard]] std::string axisText(model::Money money, Script script);

// "72 %", whole.
[[nodiscard]] std::string percentText(model::Percent percent, Script script);

// "15.0 %", one decimal.
[[nodiscard]] std::string tenthsText(model::Percent percent, Script script);

// "Friday 15 May 2026".
[[nodiscard]] std::string longDateText(model::Date date);

// "Fri 15 May"; the year is added where it is not that of `today`: "Mon 4 Jan 2027".
[[nodiscard]] std::string dateText(model::Date date, model::Date today);

// "15 May", with no weekday: along an axis.
[[nodiscard]] std::string dayMonthText(model::Date date);

// "1 day", "3 days". Requires: count >= 0.
[[nodiscard]] std::string countText(std::int64_t count, const char* one, const char* many);

}  // namespace ledgerboard::report
