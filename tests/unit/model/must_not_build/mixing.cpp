// Protects: Money, Quantity, Percent, dates and ids cannot be mixed up. How: this file builds as it
// stands, and fails to build with any one of the lines below switched on (see CMakeLists.txt).
#include "core/model/date.h"
#include "core/model/id.h"
#include "core/model/money.h"
#include "core/model/percent.h"
#include "core/model/quantity.h"

namespace ledgerboard::model {

void mix(Money money, Percent percent, Quantity quantity, Date date, Id<Kind::Item> item) {
    const Money sum = money + share(percent, money) + times(quantity, money);
    const Date later = date + 1;
    const Id<Kind::Item> same = item;
    (void)sum;
    (void)later;
    (void)same;
#ifdef MONEY_PLUS_PERCENT
    (void)(money + percent);
#endif
#ifdef MONEY_PLUS_QUANTITY
    (void)(money + quantity);
#endif
#ifdef QUANTITY_PLUS_PERCENT
    (void)(quantity + percent);
#endif
#ifdef MONEY_TIMES_MONEY
    (void)(money * money);
#endif
#ifdef MONEY_LESS_THAN_PERCENT
    (void)(money < percent);
#endif
#ifdef DATE_PLUS_DATE
    (void)(date + date);
#endif
#ifdef JOB_ID_FROM_ITEM_ID
    const Id<Kind::Job> job = item;
    (void)job;
#endif
#ifdef JOB_ID_EQUALS_ITEM_ID
    (void)(Id<Kind::Job>() == item);
#endif
#ifdef MONEY_FROM_NUMBER
    const Money fromNumber = 5;
    (void)fromNumber;
#endif
#ifdef MONEY_FROM_DOUBLE
    const Money fromDouble = 5.0;
    (void)fromDouble;
#endif
#ifdef MINOR_UNITS_FROM_DOUBLE
    (void)Money::fromMinor(5.0);
#endif
#ifdef DOLLARS_FROM_DOUBLE
    (void)Money::of(5.0);
#endif
}

}  // namespace ledgerboard::model
