// What the tests of the model share: the value or the message of a Result, as text to compare.
#pragma once

#include <string>

#include "core/model/result.h"

namespace ledgerboard::model {

// What was read, printed; or "refused: " and the message.
template <class T>
std::string shown(const Result<T>& result) {
    return result.ok() ? result.value().toString() : "refused: " + result.error().message;
}

}  // namespace ledgerboard::model
