// Which pictures of the demo house are there, and what does each show?
#pragma once

#include <string>
#include <vector>

#include "demo-data/photos/scene.h"

namespace ledgerboard::photos {

// One picture as the job knows it. The words are those of the CSV headings.
struct Shot {
    std::string space;
    std::string item;  // SPACE/OBJECT, empty where it shows the whole space
    std::string stage;
    std::string takenAt;  // UTC
    std::string spot;
    std::string caption;
    bool forLender = false;
    Scene (*scene)();

    // "kitchen--before--2026-04-03--corner-a.jpg"
    [[nodiscard]] std::string fileName() const;
};

[[nodiscard]] std::vector<Shot> allShots();

}  // namespace ledgerboard::photos
