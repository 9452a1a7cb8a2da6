#include "core/report/risk_text.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <optional>

#include "core/report/money_text.h"
#include "core/report/table.h"

namespace ledgerboard::report {

namespace {

using compute::DriverKind;
using compute::JobRisk;
using compute::RiskBasis;
using model::Date;
using model::Money;

constexpr std::size_t kMostDrivers = 5;
constexpr std::size_t kLabel = 11;  // columns of "Will finish"
constexpr std::size_t kEnd = 10;    // columns of the figure at either end of the bars

// A chance as a whole percent; what is not quite none or all is never shown as such.
std::string chanceText(double percent) {
    const double whole = std::round(percent);
    if (percent > 0 && whole < 1) {
        return "under 1 %";
    }
    if (percent < 100 && whole > 99) {
        return "over 99 %";
    }
    return std::to_string(std::lround(whole)) + " %";
}

std::string shareText(double percent) {
    return percent > 0 ? (percent < 0.5 ? "<1 %" : std::to_string(std::lround(percent)) + " %")
                       : std::string();
}

class Writer {
  public:
    explicit Writer(const RiskView& view)
        : view_(view), risk_(view.risk), basis_(view.risk.basis) {}

    std::string page() {
        paragraph(view_.rows.job.name + ": how sure the figures are, " + longDateText(view_.today));
        if (basis_.open + basis_.finished == 0) {
            text_ +=
                "\nThere is no scope yet, and so nothing to be unsure of. Enter what is to be "
                "done:\n  ledgerboard add scope Space=Kitchen Treatment=replace "
                "Object=cabinets \\\n    \"Lump sum=7400\" \"Cost low=6500\" \"Cost "
                "high=9800\" Days=3 \"Days low=2\" \"Days high=5\"\n";
            return text_;
        }
        if (!risk_.anySpread) {
            text_ += "\n";
            paragraph(basis_.open == 0
                          ? "Everything is finished: nothing is left that could come out "
                            "differently."
                          : "Nothing in what is left can come out differently: every open item "
                            "goes by its contract or your own estimate, and no days are entered.");
        }
        text_ += "\n";
        percentiles();
        chances();
        bars();
        drivers();
        restsOn();
        return text_;
    }

  private:
    void paragraph(const std::string& words) {
        for (const auto& line : wrapped(shownText(words, view_.script), view_.width)) {
            text_ += line + "\n";
        }
    }

    // A line that goes on below its own beginning.
    void hanging(const std::string& head, const std::string& words) {
        const std::size_t indent = columnsOf(shownText(head, view_.script));
        bool isFirst = true;
        for (const auto& line : wrapped(shownText(words, view_.script), view_.width - indent)) {
            text_ +=
                (isFirst ? shownText(head, view_.script) : std::string(indent, ' ')) + line + "\n";
            isFirst = false;
        }
    }

    [[nodiscard]] std::string money(Money amount) const { return wholeText(amount, view_.script); }

    [[nodiscard]] std::string day(Date date) const { return dateText(date, view_.today); }

    void percentiles() {
        Table table{{{"", false},
                     {"p10", true},
                     {"p50", true},
                     {"p80", true},
                     {"p90", true},
                     {"Forecast", true}},
                    {}};
        table.rows.push_back({"Will cost", money(risk_.cost.p10), money(risk_.cost.p50),
                              money(risk_.cost.p80), money(risk_.cost.p90), money(risk_.forecast)});
        if (risk_.finish) {
            const auto& finish = *risk_.finish;
            table.rows.push_back({"Will finish", day(finish.p10), day(finish.p50), day(finish.p80),
                                  day(finish.p90), day(*risk_.planned)});
        }
        if (risk_.profit) {
            const auto& profit = *risk_.profit;
            table.rows.push_back({"Will earn", money(profit.p10), money(profit.p50),
                                  money(profit.p80), money(profit.p90), money(*risk_.dealProfit)});
        }
        text_ += printTable(table, {view_.width, view_.script, view_.bold});
        paragraph(
            "p80: in 80 trials of 100 it is this or less, this day or sooner; of earnings the low "
            "end is the bad one. Forecast: all as likely, nothing unknown or unsigned.");
        if (!risk_.finish && basis_.open > 0) {
            text_ +=
                "No finish can be told: no open item has days. Enter them, such as\n"
                "  ledgerboard set kitchen/cabinets Days 3\n";
        }
        noProfit();
    }

    void noProfit() {
        if (!risk_.profitProblem.empty()) {
            paragraph("No earnings can be told: " + risk_.profitProblem + ".");
        } else if (!risk_.profit) {
            std::string missing;
            for (const auto& input : risk_.profitMissing) {
                missing += (missing.empty() ? "" : ", ") + std::string(input.heading);
            }
            paragraph("No earnings can be told without: " + missing + ". Enter it, such as");
            text_ += "  ledgerboard set job \"" +
                     std::string(risk_.profitMissing.empty() ? "Resale"
                                                             : risk_.profitMissing[0].heading) +
                     "\" 200000\n";
        }
    }

    void chance(const std::optional<double>& percent, const std::string& words) {
        if (percent) {
            hanging("  " + paddedLeft(chanceText(*percent), 9) + "  ", words);
        }
    }

    void chances() {
        const model::Job& job = view_.rows.job;
        text_ += "\nThe chance\n";
        const Money bac = risk_.cost.p80 - risk_.contingency80;
        chance(risk_.withinBudget, "to stay within budget now and contingency left (" + money(bac) +
                                       " + " + money(risk_.contingencyLeft) + ")");
        if (job.budget) {
            chance(risk_.withinCeiling, "to stay within your ceiling of " + money(*job.budget));
        }
        if (job.targetFinishOn) {
            chance(risk_.byTarget, "to finish by " + longDateText(*job.targetFinishOn));
        }
        if (job.wantedProfit) {
            chance(risk_.earnsWanted, "to earn the " + money(*job.wantedProfit) + " you want");
        }
        chance(risk_.losesMoney, "to lose money");
        text_ += "\n";
        contingency();
    }

    void contingency() {
        const Money needed = risk_.contingency80;
        if (needed <= Money{}) {
            paragraph(
                "Contingency: none is needed to stay within budget now in 80 trials of 100 (" +
                money(-needed) + " to spare); " + money(risk_.contingencyLeft) + " is left.");
            return;
        }
        const Money spare = risk_.contingencyLeft - needed;
        paragraph("Contingency: it takes " + money(needed) +
                  " on top of budget now to be enough in 80 trials of 100; " +
                  money(risk_.contingencyLeft) + " is left, " +
                  (spare < Money{} ? money(-spare) + " too little." : "which is enough."));
    }

    // One row of bars with its ends, and below it where the forecast stands.
    void barRow(const char* label, const std::string& least, const std::string& most,
                const std::vector<std::size_t>& counts, double forecastShare) {
        const std::size_t margin = kLabel + 1 + kEnd + 1;
        text_ += padded(label, kLabel) + " " + paddedLeft(least, kEnd) + " " +
                 barsText(counts, view_.script) + " " + most + "\n";
        const auto place = static_cast<std::size_t>(std::lround(
            std::clamp(forecastShare, 0.0, 1.0) * static_cast<double>(counts.size() - 1)));
        text_ +=
            std::string(margin + place, ' ') + (view_.script == Script::Ascii ? "^" : "▲") + "\n";
    }

    static double shareOf(Money at, const compute::MoneySpread& spread) {
        const auto width = static_cast<double>((spread.most - spread.least).minor());
        return width > 0 ? static_cast<double>((at - spread.least).minor()) / width : 0;
    }

    void bars() {
        if (!risk_.anySpread) {
            return;
        }
        text_ += "\n";
        paragraph("All trials from the least to the most, the forecast marked below:");
        if (risk_.cost.least < risk_.cost.most) {
            barRow("Will cost", money(risk_.cost.least), money(risk_.cost.most), risk_.cost.counts,
                   shareOf(risk_.forecast, risk_.cost));
        }
        if (risk_.finish && risk_.finish->least < risk_.finish->most) {
            const auto& finish = *risk_.finish;
            barRow("Will finish", day(finish.least), day(finish.most), finish.counts,
                   static_cast<double>(*risk_.planned - finish.least) /
                       static_cast<double>(finish.most - finish.least));
        }
        if (risk_.profit && risk_.profit->least < risk_.profit->most) {
            barRow("Will earn", money(risk_.profit->least), money(risk_.profit->most),
                   risk_.profit->counts, shareOf(*risk_.dealProfit, *risk_.profit));
        }
    }

    static std::string driverText(const compute::JobDriver& driver) {
        switch (driver.kind) {
            case DriverKind::ItemCost:
                return driver.what + ", its cost";
            case DriverKind::ItemDuration:
                return driver.what + ", its days";
            case DriverKind::ItemReady:
                return driver.what + ", when its goods come";
            case DriverKind::Unknown:
                return driver.what + ", whether it comes";
            case DriverKind::Income:
                return driver.what;
        }
        return {};
    }

    void drivers() {
        if (risk_.drivers.empty()) {
            return;
        }
        Table table{{{"What drives the spread of", false},
                     {"Cost", true},
                     {"Finish", true},
                     {"Earnings", true}},
                    {}};
        for (std::size_t k = 0; k < std::min(kMostDrivers, risk_.drivers.size()); ++k) {
            const auto& driver = risk_.drivers[k];
            table.rows.push_back({shownText(driverText(driver), view_.script),
                                  shareText(driver.costPercent), shareText(driver.finishPercent),
                                  shareText(driver.profitPercent)});
        }
        text_ += "\n" + printTable(table, {view_.width, view_.script, view_.bold});
    }

    static std::string items(std::size_t count) {
        return countText(static_cast<std::int64_t>(count), "item", "items");
    }

    static std::string rangeText(const compute::UsualRange& range) {
        return std::to_string(range.low) + " to " + std::to_string(range.high) + " %";
    }

    void restsOn() {
        text_ += "\nWhat it rests on\n";
        hanging("- ", countText(static_cast<std::int64_t>(risk_.trials), "trial", "trials") +
                          " of what is left, seed " + std::to_string(risk_.seed) +
                          "; estimates err together by a rank correlation of " +
                          std::to_string(std::lround(risk_.correlation * 100)) + " %.");
        hanging("- ", items(basis_.finished) + " finished and " + items(basis_.open) +
                          " open. What is billed is certain.");
        restOfCost();
        restOfDays();
        restOfUnknowns();
        if (risk_.profit) {
            hanging("- ", "A day later costs " + centsText(risk_.dayCosts, view_.script) +
                              (basis_.resaleRanged
                                   ? "; the resale value goes from low to high."
                                   : "; the resale value is taken as certain (set job \"Resale "
                                     "low\" and \"Resale high\")."));
        }
    }

    void restOfCost() {
        if (basis_.unpriced > 0) {
            hanging("- ", "Cost: " + items(basis_.unpriced) +
                              (basis_.unpriced == 1 ? " has no price and counts"
                                                    : " have no price and count") +
                              " as nothing here, so the work will cost more than this: bring "
                              "prices, or set a Lump sum.");
        }
        std::string certain;
        if (basis_.byContract > 0) {
            certain = items(basis_.byContract) + " by signed contract or order";
        }
        if (basis_.byEstimate > 0) {
            certain += (certain.empty() ? "" : " and ") + items(basis_.byEstimate) +
                       " by your own estimate";
        }
        if (!certain.empty()) {
            hanging("- ", "Cost: " + certain + ", taken as certain.");
        }
        ranges("Cost", basis_.costRanged, basis_.costUsual,
               rangeText(compute::kUsualCost) +
                   " of what is to go, for want of low and high (set Cost low and Cost high)");
    }

    // How many go by low and high, and how many by a usual range, in words.
    void ranges(const char* of, std::size_t ranged, std::size_t usual, const std::string& range) {
        if (ranged > 0) {
            hanging("- ", std::string(of) + ": " + items(ranged) + " by low and high.");
        }
        if (usual > 0) {
            hanging("- ", std::string(of) + ": " + items(usual) + " by " + range + ".");
        }
    }

    void restOfDays() {
        ranges("Days", basis_.daysRanged, basis_.daysUsual,
               rangeText(compute::kUsualDays) +
                   " of what is left, for want of low and high (set Days low and Days high)");
        if (basis_.turns > 0) {
            hanging("- ", "A crew that is late on one item is late on its next.");
        }
        if (basis_.withoutDays > 0) {
            hanging("- ", items(basis_.withoutDays) +
                              " with neither days nor dates: they take no time here.");
        }
        if (basis_.goodsAwaited > 0) {
            hanging("- ", "Goods: " + items(basis_.goodsAwaited) +
                              " awaited, up to half the lead time late, a week at least.");
        }
    }

    void restOfUnknowns() {
        if (basis_.unknowns > 0) {
            hanging("- ",
                    countText(static_cast<std::int64_t>(basis_.unknowns), "unknown", "unknowns") +
                        ", each by its chance.");
        }
        if (basis_.unsignedChanges > 0) {
            hanging("- ", countText(static_cast<std::int64_t>(basis_.unsignedChanges),
                                    "unsigned change", "unsigned changes") +
                              ", each at an even chance of being signed.");
        }
        if (basis_.unknowns == 0 && basis_.unknownsWithoutChance == 0) {
            text_ +=
                "- No unknown is entered. What might be found is entered so:\n"
                "  ledgerboard add unknown Unknown=\"rot in the joists\" Chance=30 Cost=2400 "
                "Days=2\n";
        }
        if (basis_.unknownsWithoutChance > 0) {
            hanging("- ", "Left out: " +
                              countText(static_cast<std::int64_t>(basis_.unknownsWithoutChance),
                                        "unknown", "unknowns") +
                              " without a chance (set Chance).");
        }
        if (basis_.unknownsPast > 0) {
            hanging("- ", "Left out: " +
                              countText(static_cast<std::int64_t>(basis_.unknownsPast), "unknown",
                                        "unknowns") +
                              " whose item is finished or does not count.");
        }
    }

    const RiskView& view_;
    const JobRisk& risk_;
    const RiskBasis& basis_;
    std::string text_;
};

}  // namespace

std::string barsText(const std::vector<std::size_t>& counts, Script script) {
    constexpr std::array<const char*, 9> kBlocks = {" ", "▁", "▂", "▃", "▄", "▅", "▆", "▇", "█"};
    constexpr std::array<const char*, 9> kSigns = {" ", ".", ".", ":", "-", "=", "+", "*", "#"};
    const auto& letters = script == Script::Ascii ? kSigns : kBlocks;
    const std::size_t most = counts.empty() ? 0 : *std::max_element(counts.begin(), counts.end());
    std::string bars;
    for (const std::size_t count : counts) {
        // Rounded up, so that what happened once is still seen.
        bars += letters[most == 0 ? 0 : (count * (letters.size() - 1) + most - 1) / most];
    }
    return bars;
}

std::string riskText(const RiskView& view) {
    return Writer(view).page();
}

}  // namespace ledgerboard::report
