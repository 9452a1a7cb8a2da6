#include "desktop/cli/give_pdf.h"

#include <array>

#include "core/paper/draw_paper.h"
#include "core/paper/forms_paper.h"
#include "core/paper/pdf.h"
#include "core/paper/week_paper.h"
#include "core/report/money_text.h"

#include "desktop/cli/week_pictures.h"

namespace ledgerboard::cli {

namespace {

using model::Result;

Result<paper::Size> sizeOf(const std::string& said) {
    const std::string name = model::folded(said);
    if (name.empty() || name == "letter") {
        return paper::Size::Letter;
    }
    if (name == "a4") {
        return paper::Size::A4;
    }
    return model::wrongUse("--paper: \"" + said + "\" is neither letter nor a4");
}

Result<paper::Paper> drawFor(Session& session, const JobOnDay& job) {
    const auto request = report::drawRequestOf(job.rows, job.today);
    if (request.lines.empty()) {
        return model::cannotBeMet(
            "there is no loan for the work to draw on: 'ledgerboard draw' says how to enter it");
    }
    if (request.now.total == model::Money{}) {
        return model::cannotBeMet(
            "nothing can be requested now: 'ledgerboard draw' says why, line by line");
    }
    const auto pictures =
        paper::requestPictures(request, pictureSource(session, job.rows.job.timeZone));
    return paper::drawPaper(job.rows.job, request, pictures);
}

// The sheet of --crew, else one for each crew with open items and one for those that name none.
paper::Paper punchFor(const JobOnDay& job, model::Id<model::Kind::Crew> crew) {
    const auto list = compute::punchListOf(job.rows, job.today);
    std::vector<report::PunchSheet> sheets;
    if (!crew.isNil()) {
        sheets.push_back(report::punchSheetOf(job.rows, list, crew, job.today));
    } else {
        for (const auto& one : list.crews) {
            sheets.push_back(one.crew.isNil()
                                 ? report::punchSheetOfNobody(job.rows, list, job.today)
                                 : report::punchSheetOf(job.rows, list, one.crew, job.today));
        }
    }
    return paper::punchPaper(job.rows.job, sheets, job.today);
}

Result<paper::Paper> paperFor(Session& session, const std::string& what, const JobOnDay& job,
                              model::Id<model::Kind::Crew> crew) {
    if (what == "week") {
        return paper::weekPaper(
            report::weekPage(job.rows, job.today,
                             report::weekPictures(job.rows, job.today,
                                                  pictureSource(session, job.rows.job.timeZone))));
    }
    if (what == "draw") {
        return drawFor(session, job);
    }
    if (what == "bids") {
        const auto figures = compute::figuresOf(job.rows, job.today);
        return paper::bidsPaper(job.rows.job, report::bidScopeOf(job.rows, figures, crew),
                                job.today);
    }
    if (what == "punch") {
        return punchFor(job, crew);
    }
    return paper::formPaper(
        job.rows.job, what == "change" ? report::changeForm() : report::waiverForm(), job.today);
}

}  // namespace

bool isGivenAsPdf(const std::string& what) {
    constexpr std::array<std::string_view, 6> kPapers = {"week",  "draw",   "bids",
                                                         "punch", "change", "waiver"};
    for (const auto paper : kPapers) {
        if (what == paper) {
            return true;
        }
    }
    return false;
}

Result<std::string> pdfToGive(Session& session, const std::string& what,
                              const GiveOptions& options) {
    const auto size = sizeOf(options.paper);
    if (!size.ok()) {
        return size.error();
    }
    auto job = session.jobOnDay();
    auto crew = crewToGive(session, options.crew);
    if (!job.ok() || !crew.ok()) {
        return job.ok() ? crew.error() : job.error();
    }
    return model::guarded([&]() -> Result<std::string> {
        auto made = paperFor(session, what, job.value(), crew.value());
        return made.ok() ? paper::pdfBytes(made.value(), size.value())
                         : Result<std::string>(made.error());
    });
}

}  // namespace ledgerboard::cli
