#include "core/compute/closing.h"

#include <algorithm>

#include "core/compute/closing_parts.h"
#include "core/compute/papers.h"
#include "core/compute/positions.h"
#include "core/model/saying.h"

namespace ledgerboard::compute {

namespace {

using model::asWritten;
using model::Date;
using model::Kind;
using model::Money;
using model::Saying;
using model::saying;

// Collects what stands between. Lives for one call of closingOf.
class Collector {
  public:
    Collector(const model::JobRows& rows, const JobFigures& figures, Date today)
        : rows_(rows),
          figures_(figures),
          today_(today),
          spaces_(rows.spaces),
          cautions_(cautionsOf(rows, today)),
          punch_(punchListOf(rows, today)) {}

    Closing collect() {
        addItems();
        addDecisions();
        addChanges();
        addCautions();
        addPunch();
        addInspections();
        addPapers();
        out_.releases = releasesOf(rows_, figures_, punch_);
        addRetainage();
        addDraws();
        std::stable_sort(
            out_.stands.begin(), out_.stands.end(),
            [](const StandsBetween& a, const StandsBetween& b) { return a.part < b.part; });
        out_.papers = finalPapersOf(rows_, cautions_);
        return std::move(out_);
    }

  private:
    void add(ClosingPart part, Saying what, Saying why, std::optional<Money> money, Kind kind,
             model::RawId record) {
        out_.stands.push_back({part, std::move(what), std::move(why), money, kind, record});
    }

    void addItems() {
        for (std::size_t k = 0; k < rows_.items.size(); ++k) {
            if (figures_.scope.lines[k].counting != Counting::Counts) {
                continue;
            }
            ++out_.items;
            const LineFigures& line = figures_.lines[k];
            if (line.shown == model::Percent::whole()) {
                ++out_.finished;
                continue;
            }
            add(ClosingPart::Items, asWritten(figures_.scope.lines[k].name),
                saying("%1 % shown", line.shown), line.toGo, Kind::Item, rows_.items[k].id.raw());
        }
    }

    void addDecisions() {
        for (const model::Alternate& alternate : rows_.alternates) {
            if (alternate.chosen.isNil()) {
                const auto space = spaces_.of(alternate.space);
                const std::string where = space ? rows_.spaces[*space].name + ": " : "";
                add(ClosingPart::Decisions, asWritten(where + alternate.question),
                    alternate.decideBy ? saying("decide by %1", *alternate.decideBy)
                                       : saying("nobody has decided"),
                    std::nullopt, Kind::Alternate, alternate.id.raw());
            }
        }
    }

    void addChanges() {
        for (const model::Change& change : rows_.changes) {
            if (!change.signedOn && !change.refusedOn) {
                add(ClosingPart::Changes, asWritten(change.name),
                    change.askedOn ? saying("asked %1, not signed", *change.askedOn)
                                   : saying("not signed"),
                    changeAmount(change), Kind::Change, change.id.raw());
            }
        }
    }

    void addCautions() {
        for (const CautionRead& caution : cautions_.all) {
            if (caution.holdsUp()) {
                add(ClosingPart::Cautions, asWritten(caution.what),
                    caution.isBegun
                        ? saying("%1, begun in spite of it", Saying(caution.about))
                        : saying("%1, nobody has acknowledged it", Saying(caution.about)),
                    std::nullopt, Kind::Item, caution.item.raw());
            }
        }
    }

    void addPunch() {
        for (const PunchRead& read : punch_.all) {
            if (read.isOpen) {
                add(ClosingPart::Punch, asWritten(read.space), Saying(read.sentence), read.cost,
                    Kind::Punch, rows_.punches[read.punch].id.raw());
            }
        }
    }

    void addInspections() {
        for (const InspectionRead& read : inspectionsOf(rows_)) {
            if (read.passed) {
                continue;
            }
            const model::Inspection& last = rows_.inspections[read.last];
            Saying why = saying("not held yet");
            if (last.heldOn && last.outcome == model::Outcome::Corrections) {
                why = last.corrections.empty()
                          ? saying("corrections %1", *last.heldOn)
                          : saying("corrections %1: %2", *last.heldOn, last.corrections);
            } else if (last.heldOn) {
                why = saying("held %1, no outcome entered", *last.heldOn);
            }
            add(ClosingPart::Inspections, asWritten(last.what), why, std::nullopt, Kind::Inspection,
                last.id.raw());
        }
    }

    void addPapers() {
        for (const MissingPaper& paper : missingPapersOf(rows_, today_)) {
            const bool isUnfinished = paper.kind == MissingPaper::Kind::Amount;
            add(isUnfinished ? ClosingPart::Receipts : ClosingPart::Papers, paper.name,
                isUnfinished ? saying("no amount entered, so it counts nowhere")
                             : saying("not seen yet"),
                paper.amount, paper.recordKind, paper.record);
        }
    }

    void addRetainage() {
        for (const Release& release : out_.releases) {
            if (release.held == Money{} && release.leftToPay == Money{}) {
                continue;
            }
            const bool isHeld = release.held > Money{};
            const Saying state = isHeld ? saying("held") : saying("left to pay");
            add(ClosingPart::Retainage, asWritten(release.name),
                release.next ? saying("%1; next: %2", state, release.steps[*release.next].what)
                             : state,
                isHeld ? release.held : release.leftToPay, Kind::Contract,
                rows_.contracts[release.contract].id.raw());
        }
    }

    // The draw that came last and held nothing back has paid out what was held before.
    void addDraws() {
        Money heldBack;
        const model::Draw* lastFunded = nullptr;
        for (const model::Draw& draw : rows_.draws) {
            const Saying name = draw.number ? saying("Draw %1", *draw.number) : saying("A draw");
            if (!draw.fundedOn && (draw.askedOn || draw.inspectedOn)) {
                add(ClosingPart::FinalDraw, name, saying("asked for, not funded"), draw.amount,
                    Kind::Draw, draw.id.raw());
            }
            if (draw.fundedOn) {
                heldBack += draw.holdback.value_or(Money{});
                if (lastFunded == nullptr || *draw.fundedOn >= *lastFunded->fundedOn) {
                    lastFunded = &draw;
                }
            }
        }
        if (lastFunded != nullptr && lastFunded->holdback.value_or(Money{}) > Money{}) {
            add(ClosingPart::FinalDraw, saying("Final draw"),
                saying("the lender holds this back until permit finals, waivers and punch are in"),
                heldBack, Kind::Draw, lastFunded->id.raw());
        }
    }

    const model::JobRows& rows_;
    const JobFigures& figures_;
    Date today_;
    Positions<model::Space> spaces_;
    Cautions cautions_;
    PunchList punch_;
    Closing out_;
};

}  // namespace

std::string_view wordsFor(ClosingPart part) {
    switch (part) {
        case ClosingPart::Items:
            return "scope items";
        case ClosingPart::Decisions:
            return "open decisions";
        case ClosingPart::Changes:
            return "unsigned changes";
        case ClosingPart::Cautions:
            return "cautions";
        case ClosingPart::Punch:
            return "punch items";
        case ClosingPart::Inspections:
            return "inspections";
        case ClosingPart::Papers:
            return "papers";
        case ClosingPart::Receipts:
            return "receipts without an amount";
        case ClosingPart::Retainage:
            return "retainage and last payments";
        case ClosingPart::FinalDraw:
            return "draws";
    }
    return "";
}

Closing closingOf(const model::JobRows& rows, const JobFigures& figures, Date today) {
    return Collector(rows, figures, today).collect();
}

}  // namespace ledgerboard::compute
