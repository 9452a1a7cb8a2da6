// In what words does the desktop say dates, money, percents and what is done to what? In those of
// both clients.
#pragma once

#include "core/qml/said.h"

namespace ledgerboard::desk {

using qml::Said;

}  // namespace ledgerboard::desk
