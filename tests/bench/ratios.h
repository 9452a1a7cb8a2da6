// How are speeds told? As ratios of medians within one run, on one machine: absolute times say little
// on a shared one. Used by every benchmark program here.
#pragma once

#include <benchmark/benchmark.h>

#include <algorithm>
#include <cstdio>
#include <map>
#include <string>
#include <vector>

namespace ledgerboard::bench {

// Prints as usual and keeps the real time of each repetition, by benchmark name.
class Keeper : public benchmark::ConsoleReporter {
  public:
    void ReportRuns(const std::vector<Run>& runs) override {
        ConsoleReporter::ReportRuns(runs);
        for (const auto& run : runs) {
            if (run.run_type == Run::RT_Iteration && !run.error_occurred) {
                times_[run.run_name.function_name + run.run_name.args].push_back(
                    run.GetAdjustedRealTime());
            }
        }
    }
    // Median of the repetitions. Requires: the benchmark ran.
    double median(const std::string& name) {
        auto& times = times_.at(name);
        std::sort(times.begin(), times.end());
        return times[times.size() / 2];
    }

  private:
    std::map<std::string, std::vector<double>> times_;
};

// One line: what was compared, the ratio, the goal, and whether it is met.
inline void printRatio(const char* what, double ratio, const char* goal, bool met) {
    std::printf("RATIO  %-62s %8.3f   goal %-9s %s\n", what, ratio, goal, met ? "met" : "NOT MET");
}

}  // namespace ledgerboard::bench
