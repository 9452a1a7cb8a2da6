#include "core/compute/usual_order.h"

#include <algorithm>
#include <array>
#include <functional>
#include <unordered_set>

#include "core/model/value.h"

namespace ledgerboard::compute {

namespace {

using model::Item;
using model::Treatment;
using ItemId = model::Id<model::Kind::Item>;

struct Step {
    std::string_view name;
    std::string_view objects;  // parts of an object's name, semicolons between
    std::string_view trades;
};

// One line a step, in order.
constexpr std::array kSteps = {
    Step{"survey", "asbestos;lead survey;test;sample", ""},
    Step{"permits", "permit", ""},
    Step{"tear-out", "tear-out;tear out;demolition;carpet;wallpaper", "demolition"},
    Step{"structure", "subfloor;joist;framing;beam;foundation;post", "framing"},
    Step{"heating ducts", "duct;furnace;air conditioning;boiler;heat pump", "heating"},
    Step{"rough plumbing", "pipe;drain;sewer;tub;shower valve;water heater", ""},
    Step{"rough electric", "wiring;electrical panel;outlet;circuit;service", ""},
    Step{"insulation", "insulation", "insulation"},
    Step{"drywall and plaster", "wallboard;drywall;plaster;ceiling", "plaster"},
    Step{"tile and floors under cabinets", "tile;vinyl floor;plank floor", "tile"},
    Step{"cabinets", "cabinet", ""},
    Step{"counter", "counter", ""},
    Step{"backsplash", "backsplash", ""},
    Step{"doors and trim", "door;trim;baseboard;railing;casing;shelf;closet", ""},
    Step{"finish plumbing", "vanity;toilet;sink;faucet;dishwasher", "plumbing"},
    Step{"finish electric", "light;fixture;alarm;fan;range;refrigerator;appliance", "electrical"},
    Step{"wood floors", "wood floor;stair tread;hardwood", "floors"},
    Step{"last coat", "walls;paint", "paint"},
    Step{"final clean", "final clean", ""},
};

constexpr std::size_t kTearOut = 2;
constexpr std::size_t kBackSplash = 12;

// Whether `text` holds one of the words of a list with semicolons between.
bool holdsOne(std::string_view text, std::string_view words) {
    while (!words.empty()) {
        const auto end = words.find(';');
        if (text.find(words.substr(0, end)) != std::string_view::npos) {
            return true;
        }
        words = end == std::string_view::npos ? std::string_view{} : words.substr(end + 1);
    }
    return false;
}

std::string lowered(std::string_view text) {
    std::string out(text);
    std::transform(out.begin(), out.end(), out.begin(),
                   [](char c) { return c >= 'A' && c <= 'Z' ? static_cast<char>(c + 32) : c; });
    return out;
}

class Linker {
  public:
    Linker(const model::JobRows& rows, const JobFigures& figures) : rows_(rows), figures_(figures) {
        for (const model::Link& link : rows.links) {
            linked_.insert(link.fromItem);
            linked_.insert(link.toItem);
        }
        for (const model::Space& space : rows.spaces) {
            const std::string name = model::folded(space.name);
            if (name == "wholehouse" || name == "house") {
                wholeHouse_.insert(space.id);
            }
            if (holdsOne(lowered(space.name), "outside;yard;garden;exterior;roof")) {
                outside_.insert(space.id);
            }
        }
    }

    std::vector<model::Link> links() {
        for (std::size_t k = 0; k < rows_.items.size(); ++k) {
            const auto step = stepOf(k);
            if (step && *step + 1 < kSteps.size() && !linked_.contains(rows_.items[k].id)) {
                linkAfterNearest(k, *step);
            }
        }
        for (std::size_t k = 0; k < rows_.items.size(); ++k) {
            if (stepOf(k) == kSteps.size() - 1 && !linked_.contains(rows_.items[k].id)) {
                linkAfterAllEnds(k);
            }
        }
        return std::move(out_);
    }

  private:
    bool isOpen(std::size_t k) const {
        return figures_.scope.lines[k].counting == Counting::Counts &&
               figures_.lines[k].shown < model::Percent::whole();
    }

    std::optional<std::size_t> stepOf(std::size_t k) const {
        const Item& item = rows_.items[k];
        return isOpen(k) && !outside_.contains(item.space) ? usualStepOf(item) : std::nullopt;
    }

    bool isOfWholeHouse(const Item& item) const {
        return item.space.isNil() || wholeHouse_.contains(item.space);
    }

    void add(std::size_t from, std::size_t to) {
        model::Link link;
        link.fromItem = rows_.items[from].id;
        link.toItem = rows_.items[to].id;
        link.type = model::LinkKind::FinishToStart;
        out_.push_back(link);
    }

    void linkAfterNearest(std::size_t to, std::size_t step) {
        const Item& waits = rows_.items[to];
        std::optional<std::size_t> nearest;
        std::vector<std::size_t> before;
        for (std::size_t k = 0; k < rows_.items.size(); ++k) {
            const Item& item = rows_.items[k];
            const bool isNear =
                isOfWholeHouse(item) || (!isOfWholeHouse(waits) && item.space == waits.space);
            const auto earlier = stepOf(k);
            if (!isNear || !earlier || *earlier >= step || (nearest && *earlier < *nearest)) {
                continue;
            }
            if (nearest != earlier) {
                before.clear();
            }
            nearest = earlier;
            before.push_back(k);
        }
        for (const std::size_t k : before) {
            add(k, to);
        }
    }

    void linkAfterAllEnds(std::size_t to) {
        std::unordered_set<ItemId> waitedFor;
        for (const std::vector<model::Link>& links : {std::cref(rows_.links), std::cref(out_)}) {
            for (const model::Link& link : links) {
                waitedFor.insert(link.fromItem);
            }
        }
        for (std::size_t k = 0; k < rows_.items.size(); ++k) {
            if (k != to && isOpen(k) && stepOf(k) != kSteps.size() - 1 &&
                !waitedFor.contains(rows_.items[k].id)) {
                add(k, to);
            }
        }
    }

    const model::JobRows& rows_;
    const JobFigures& figures_;
    std::unordered_set<ItemId> linked_;
    std::unordered_set<model::Id<model::Kind::Space>> wholeHouse_;
    std::unordered_set<model::Id<model::Kind::Space>> outside_;
    std::vector<model::Link> out_;
};

}  // namespace

std::vector<std::string_view> usualSteps() {
    std::vector<std::string_view> names;
    names.reserve(kSteps.size());
    for (const Step& step : kSteps) {
        names.push_back(step.name);
    }
    return names;
}

std::optional<std::size_t> usualStepOf(const Item& item) {
    const std::string object = lowered(item.object);
    if (holdsOne(object, kSteps[kBackSplash].objects)) {
        return kBackSplash;  // which is tile too
    }
    if (item.treatment == Treatment::Remove) {
        return kTearOut;
    }
    // The longest way of being named comes first: "wood floor" before "floor".
    for (std::size_t k = kSteps.size(); k-- > 0;) {
        if (holdsOne(object, kSteps[k].objects)) {
            return k;
        }
    }
    const std::string trade = lowered(item.trade);
    for (std::size_t k = 0; k < kSteps.size(); ++k) {
        if (!trade.empty() && holdsOne(trade, kSteps[k].trades)) {
            return k;
        }
    }
    return std::nullopt;
}

std::vector<model::Link> usualLinks(const model::JobRows& rows, const JobFigures& figures) {
    return Linker(rows, figures).links();
}

}  // namespace ledgerboard::compute
