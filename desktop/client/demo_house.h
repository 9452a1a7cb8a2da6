// The invented house, for somebody without a job: core/qml/demo_house.h, by the desktop's name.
#pragma once

#include "core/qml/demo_house.h"

namespace ledgerboard::desk {

using qml::kDemoDay;
using qml::makeDemo;

}  // namespace ledgerboard::desk
