#include "core/report/draw_request.h"

#include <algorithm>

#include "core/compute/as_of.h"

namespace ledgerboard::report {

namespace {

using model::Date;
using model::JobRows;

// The draw asked for last, where the lender has neither looked nor paid yet.
const model::Draw* openDraw(const JobRows& rows) {
    const model::Draw* open = nullptr;
    for (const auto& draw : rows.draws) {
        if (draw.askedOn && !draw.inspectedOn && compute::isOpen(draw) &&
            (open == nullptr || *open->askedOn < *draw.askedOn ||
             (*open->askedOn == *draw.askedOn &&
              open->number.value_or(0) < draw.number.value_or(0)))) {
            open = &draw;
        }
    }
    return open;
}

JobRows withoutDraw(JobRows rows, model::Id<model::Kind::Draw> id) {
    std::erase_if(rows.draws, [&](const auto& draw) { return draw.id == id; });
    std::erase_if(rows.draw_lines, [&](const auto& line) { return line.draw == id; });
    return rows;
}

std::string spaceName(const JobRows& rows, model::Id<model::Kind::Space> id) {
    for (const auto& space : rows.spaces) {
        if (space.id == id && !id.isNil()) {
            return space.name;
        }
    }
    return "";
}

bool isForLender(const model::Photo& photo) {
    return photo.forLender && !photo.digest.empty() &&
           (photo.purpose == model::Purpose::Unset || photo.purpose == model::Purpose::Site);
}

RequestPhoto requestPhoto(const JobRows& rows, const model::Item& item, const model::Photo& photo) {
    const std::string space = spaceName(rows, item.space);
    std::string shows = space + (space.empty() ? "" : ", ") + item.object;
    if (photo.stage != model::Stage::Unset) {
        shows += ", " + std::string(model::wordOf(photo.stage));
    }
    return {photo, shows};
}

std::vector<RequestPhoto> photosOf(const JobRows& rows, const std::vector<std::size_t>& items) {
    std::vector<RequestPhoto> photos;
    for (const std::size_t k : items) {
        for (const auto& photo : rows.photos) {
            if (photo.item == rows.items[k].id && isForLender(photo)) {
                photos.push_back(requestPhoto(rows, rows.items[k], photo));
            }
        }
    }
    std::stable_sort(photos.begin(), photos.end(), [](const auto& a, const auto& b) {
        return b.photo.takenAt < a.photo.takenAt;
    });
    photos.resize(std::min(photos.size(), kMostPicturesALine));
    return photos;
}

RequestLine lineOf(const JobRows& rows, const compute::JobFigures& figures,
                   const compute::LenderLineFigures& line) {
    std::vector<std::size_t> items = line.items;
    for (std::size_t k = 0; !line.line && k < rows.items.size(); ++k) {  // the whole work loan
        if (figures.scope.lines[k].counting == compute::Counting::Counts) {
            items.push_back(k);
        }
    }
    RequestLine out{line, true, {}, photosOf(rows, items)};
    for (const std::size_t k : items) {
        const auto& item = rows.items[k];
        const std::string space = spaceName(rows, item.space);
        out.work.push_back({space + (space.empty() ? "" : ": ") +
                                std::string(model::wordOf(item.treatment)) + " " + item.object,
                            figures.lines[k].seen});
    }
    return out;
}

// Sets each line to what the draw in the book asks of it. A draw without lines asks for all there
// was.
void setAsked(DrawRequest& request, const JobRows& rows, const model::Draw& draw) {
    std::vector<std::optional<model::Percent>> asked(request.lines.size());
    bool isByLine = false;
    for (const auto& part : rows.draw_lines) {
        for (std::size_t k = 0; k < request.lines.size(); ++k) {
            const auto row = request.lines[k].figures.line;
            if (part.draw == draw.id && row && rows.lender_lines[*row].id == part.lenderLine) {
                asked[k] = part.asked.value_or(model::Percent{});
                isByLine = true;
            }
        }
    }
    if (!isByLine) {
        return;
    }
    std::vector<compute::LineInPlace> lines;
    for (std::size_t k = 0; k < request.lines.size(); ++k) {
        auto& line = request.lines[k];
        line.isAsked = asked[k].has_value();
        line.figures.inPlace.allowed = asked[k].value_or(line.figures.inPlace.allowed);
        lines.push_back(line.figures.inPlace);
        lines.back().allowed = asked[k].value_or(model::Percent{});
    }
    const auto drawn = compute::drawnOf(lines, {rows.job.holdback.value_or(model::Percent{}),
                                                request.now.limit, request.now.isFinal});
    request.now.total = drawn.total;
    request.now.cutByLimit = drawn.cutByLimit;
    request.now.heldBack = {};
    for (std::size_t k = 0; k < request.lines.size(); ++k) {
        auto& figures = request.lines[k].figures;
        figures.draw = drawn.lines[k].draw;
        figures.heldBack = request.lines[k].isAsked ? drawn.lines[k].heldBack : figures.heldBack;
        request.now.heldBack += figures.heldBack;
    }
}

}  // namespace

DrawRequest drawRequestOf(const JobRows& rows, Date today) {
    DrawRequest request;
    request.day = today;
    JobRows seen = rows;
    const auto* open = openDraw(rows);
    if (open != nullptr) {
        request.isAsked = true;
        request.day = *open->askedOn;
        request.number = open->number.value_or(1);
        seen = compute::asOf(withoutDraw(rows, open->id), *open->askedOn);
    } else {
        for (const auto& draw : rows.draws) {
            request.number = std::max(request.number, draw.number.value_or(0) + 1);
        }
    }
    const auto figures = compute::figuresOf(seen, request.day);
    request.now = compute::drawsNowOf(seen, figures);
    for (const auto& line : request.now.lines) {
        request.lines.push_back(lineOf(seen, figures, line));
    }
    if (open != nullptr) {
        setAsked(request, rows, *open);
    }
    return request;
}

}  // namespace ledgerboard::report
