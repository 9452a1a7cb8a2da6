#include "mobile/typed_amount.h"

#include "mobile/said.h"

namespace ledgerboard::phone {

namespace {

// Ten billion is a slip of the thumb.
constexpr qint64 kMostCents = 99'999'999'99;

}  // namespace

QString TypedAmount::text() const {
    return Said::cents(money());
}

void TypedAmount::type(const QString& digits) {
    for (const QChar digit : digits) {
        if (cents_ <= kMostCents / 10) {
            cents_ = cents_ * 10 + digit.digitValue();
        }
    }
    emit changed();
}

void TypedAmount::rub() {
    cents_ /= 10;
    emit changed();
}

}  // namespace ledgerboard::phone
