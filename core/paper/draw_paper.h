// How does a request for a draw read as it goes to the lender?
//
// The lender's lines to the cent, what is in place behind each line asked for, and its pictures.
// Threads: any number may ask.
#pragma once

#include <string>
#include <vector>

#include "core/paper/paper.h"
#include "core/report/draw_request.h"
#include "core/report/week_pictures.h"

namespace ledgerboard::paper {

// Pictures of each of request.lines, small enough for a page, with what they show.
using RequestPictures = std::vector<std::vector<Picture>>;

// Those of the request's photos that can be shown.
[[nodiscard]] RequestPictures requestPictures(const report::DrawRequest& request,
                                              const report::PictureSource& source);

// Requires: pictures has as many as request.lines.
[[nodiscard]] Paper drawPaper(const model::Job& job, const report::DrawRequest& request,
                              const RequestPictures& pictures);

}  // namespace ledgerboard::paper
