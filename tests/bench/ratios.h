// How are speeds told? As ratios of medians within one run, on one machine: absolute times say
// little on a shared one. Used by every benchmark program here.
#pragma once

#include <algorithm>
#include <benchmark/benchmark.h>
#include <cstdio>
#include <map>
#include <string>
#include <vector>

namespace ledgerboard::bench {

// Prints as usual and keeps the times of each repetition, by benchmark name.
class Keeper : public benchmark::ConsoleReporter {
  public:
    void ReportRuns(const std::vector<Run>& runs) override {
        ConsoleReporter::ReportRuns(runs);
        for (const auto& run : runs) {
            if (run.run_type == Run::RT_Iteration && !run.error_occurred) {
                const std::string name = run.run_name.function_name + run.run_name.args;
                times_[name].push_back(run.GetAdjustedRealTime());
                processorTimes_[name].push_back(run.GetAdjustedCPUTime());
            }
        }
    }

    // Median of the repetitions by the clock: where a disk is waited for. Requires: it ran.
    double median(const std::string& name) { return middleOf(times_.at(name)); }

    // The same of processor time: for what only computes, and must not wait for other programs.
    double medianOfProcessor(const std::string& name) { return middleOf(processorTimes_.at(name)); }

  private:
    static double middleOf(std::vector<double>& times) {
        std::sort(times.begin(), times.end());
        return times[times.size() / 2];
    }

    std::map<std::string, std::vector<double>> times_;
    std::map<std::string, std::vector<double>> processorTimes_;
};

// One line: what was compared, the ratio, the goal, and whether it is met.
inline void printRatio(const char* what, double ratio, const char* goal, bool met) {
    std::printf("RATIO  %-62s %8.3f   goal %-9s %s\n", what, ratio, goal, met ? "met" : "NOT MET");
}

}  // namespace ledgerboard::bench
