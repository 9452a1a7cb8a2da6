// Which two pictures show a punch item, before and after?
//
// Its own: the first one taken of it, and the last one marked as after or shown by a look. Where it
// has none, the latest after picture of its space, and the before picture it is paired with, else
// the latest one of the space. Source: project decision. Threads: any.
#pragma once

#include "core/model/rows.h"

namespace ledgerboard::desk {

struct PunchPictures {
    const model::Photo* before = nullptr;  // null where there is none
    const model::Photo* after = nullptr;
    bool ofSpace = false;  // they show the space, not the item itself
};

// Requires: rows outlive it. Receipts and papers are never shown.
[[nodiscard]] PunchPictures punchPicturesOf(const model::JobRows& rows, const model::Punch& punch);

}  // namespace ledgerboard::desk
