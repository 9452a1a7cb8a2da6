// The scenes of the demo house, one function a picture. Each is settled and ready to paint.
#pragma once

#include "demo-data/photos/scene.h"

namespace ledgerboard::photos {

[[nodiscard]] Scene livingRoomBefore();
[[nodiscard]] Scene livingRoomDuring();
[[nodiscard]] Scene livingRoomAfter();
[[nodiscard]] Scene diningRoomBefore();
[[nodiscard]] Scene diningRoomDuring();
[[nodiscard]] Scene diningRoomAfter();
[[nodiscard]] Scene frontBedroomBefore();
[[nodiscard]] Scene frontBedroomAfter();
[[nodiscard]] Scene stairsBefore();
[[nodiscard]] Scene stairsDuring();

[[nodiscard]] Scene kitchenBefore();
[[nodiscard]] Scene kitchenDuring();
[[nodiscard]] Scene kitchenAfter();
[[nodiscard]] Scene bathroomBefore();
[[nodiscard]] Scene bathroomOpened();
[[nodiscard]] Scene bathroomTiling();
[[nodiscard]] Scene halfBathBefore();
[[nodiscard]] Scene halfBathAfter();
[[nodiscard]] Scene panelBefore();
[[nodiscard]] Scene panelAfter();
[[nodiscard]] Scene atticBefore();
[[nodiscard]] Scene atticAfter();

[[nodiscard]] Scene outsideBefore();
[[nodiscard]] Scene outsidePorch();
[[nodiscard]] Scene outsideTrim();

}  // namespace ledgerboard::photos
