#include "core/paper/forms_paper.h"

#include "core/report/money_text.h"

namespace ledgerboard::paper {

namespace {

Cell words(std::string text) {
    Cell cell;
    cell.text = std::move(text);
    return cell;
}

Cell blank() {
    Cell cell;
    cell.isBlank = true;
    return cell;
}

void addPart(std::vector<Block>& to, const report::FormPart& part) {
    if (!part.heading.empty()) {
        to.push_back({Heading{part.heading}});
    }
    if (!part.says.empty()) {
        to.push_back({Paragraph{part.says, false, false}});
    }
    if (part.blankLines > 0) {
        to.push_back({BlankLines{part.blankLines}});
    }
    if (!part.fields.empty()) {
        to.push_back({Fields{part.fields}});
    }
}

Paper paperOf(const model::Job& job, const std::string& title, model::Date today) {
    return {title + ", " + job.name, title + ", " + report::houseText(job), today, false, {}};
}

void addPunch(std::vector<Block>& to, const model::Job& job, const report::PunchSheet& sheet,
              model::Date today) {
    const std::string open =
        report::countText(static_cast<std::int64_t>(sheet.open), "item open", "items open");
    to.push_back(
        {Title{"Punch list, " + (sheet.crew.empty() ? "no crew named" : sheet.crew),
               report::houseText(job), "As of " + report::longDateText(today) + ", " + open}});
    for (const auto& room : sheet.rooms) {
        Table table{{{"To put right", Fit::Words, 2.6},
                     {"By", Fit::Words, 0.9},
                     {"Fixed on, initials", Fit::Words, 1.1}},
                    {},
                    true,
                    false};
        for (const auto& line : room.lines) {
            Cell what = words(line.what);
            what.hasBox = true;
            table.rows.push_back({std::move(what), words(line.by), blank()});
        }
        to.push_back({Heading{room.name}});
        to.push_back({std::move(table)});
    }
}

}  // namespace

Paper bidsPaper(const model::Job& job, const report::BidScope& scope, model::Date today) {
    Paper paper = paperOf(job, "Scope of work", today);
    paper.blocks.push_back({Title{"Scope of work", report::houseText(job),
                                  "To bid on, as of " + report::longDateText(today) +
                                      (scope.crew.empty() ? "" : ", " + scope.crew)}});
    if (scope.rooms.empty()) {
        paper.blocks.push_back({Paragraph{report::nothingToBidOn(scope), false, false}});
        return paper;
    }
    for (const auto& room : scope.rooms) {
        Table table{{{"Work", Fit::Words, 3.4},
                     {"Size", Fit::Figure, 1},
                     {"Price", Fit::Words, 0.9},
                     {"Days", Fit::Words, 0.6}},
                    {},
                    true,
                    false};
        for (const auto& line : room.lines) {
            Cell work = words(line.work);
            work.under = line.more;
            table.rows.push_back({std::move(work), words(line.size), blank(), blank()});
        }
        paper.blocks.push_back({Heading{room.name}});
        paper.blocks.push_back({std::move(table)});
    }
    const report::FormPart end = report::bidderPart();
    paper.blocks.push_back({Heading{"The bid"}});
    paper.blocks.push_back({Fields{end.fields}});
    paper.blocks.push_back({Paragraph{end.says, true, false}});
    return paper;
}

Paper punchPaper(const model::Job& job, const std::vector<report::PunchSheet>& sheets,
                 model::Date today) {
    Paper paper = paperOf(job, "Punch list", today);
    for (const auto& sheet : sheets) {
        if (sheet.open > 0) {
            paper.blocks.push_back({NewPage{}});
            addPunch(paper.blocks, job, sheet, today);
        }
    }
    if (paper.blocks.empty()) {
        const std::string crew = sheets.size() == 1 ? sheets.front().crew : "";
        paper.blocks = {{Title{"Punch list" + (crew.empty() ? "" : ", " + crew),
                               report::houseText(job), "As of " + report::longDateText(today)}},
                        {Paragraph{report::nothingToPutRight(), false, false}}};
    }
    return paper;
}

Paper formPaper(const model::Job& job, const report::BlankForm& form, model::Date today) {
    Paper paper = paperOf(job, form.title, today);
    paper.blocks.push_back({Title{form.title, report::houseText(job), ""}});
    paper.blocks.push_back({Notice{form.notice}});
    for (const auto& part : form.parts) {
        if (part.isOnNewPage) {  // a paper of its own: it may be handed on alone
            paper.blocks.push_back({NewPage{}});
            paper.blocks.push_back({Title{form.title, report::houseText(job), ""}});
            paper.blocks.push_back({Notice{form.notice}});
        }
        addPart(paper.blocks, part);
    }
    return paper;
}

}  // namespace ledgerboard::paper
