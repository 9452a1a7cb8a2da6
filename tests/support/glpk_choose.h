// How do the tests and benchmarks ask another solver for the best set? As a mixed integer program
// to GLPK, the GNU Linear Programming Kit: a program of its own making, which shares no line with
// core/compute. Linked by tests and benchmarks alone.
#pragma once

#include <glpk.h>
#include <memory>
#include <optional>

#include "core/compute/choose.h"

namespace ledgerboard::tests {

// A program to be solved: one column of 0 or 1 for each option, then, with a ceiling, one for what
// is added. The objective is the net in units of currency.
class GlpkChoose {
  public:
    explicit GlpkChoose(const compute::ChooseInput& input) : problem_(glp_create_prob()) {
        glp_term_out(GLP_OFF);
        glp_set_obj_dir(problem_.get(), GLP_MAX);
        addOptions(input);
        for (std::size_t k = 0; k < input.alternates.size(); ++k) {
            std::vector<double> ones(columns_, 0);
            for (std::size_t p = 0; p < input.alternates[k].size(); ++p) {
                ones[at({k, p})] = 1;
            }
            addRow(ones, GLP_FX, 1);
        }
        const auto sumOf = [&](auto figure) {
            std::vector<double> sum(columns_, 0);
            forEach(input, [&](compute::OptionPlace place, const compute::WeighedOption& option) {
                sum[at(place)] = figure(option);
            });
            return sum;
        };
        if (input.cash) {
            addRow(sumOf([](const auto& option) { return units(option.cost); }), GLP_UP,
                   units(*input.cash));
        }
        if (input.days) {
            addRow(sumOf([](const auto& option) { return units(option.days); }), GLP_UP,
                   units(*input.days));
        }
        addTies(input);
        if (input.ceiling) {
            // added - sum of values <= what the house is beyond the ceiling
            auto values = sumOf([](const auto& option) { return -units(option.value); });
            values[columns_ - 1] = 1;
            addRow(values, GLP_UP, std::max(0.0, units(input.resale) - units(*input.ceiling)));
        }
    }

    // The highest net; empty where no set goes together within the limits.
    [[nodiscard]] std::optional<double> solve() {
        glp_iocp control;
        glp_init_iocp(&control);
        control.presolve = GLP_ON;
        control.msg_lev = GLP_MSG_OFF;
        const int failed = glp_intopt(problem_.get(), &control);
        if (failed != 0 || glp_mip_status(problem_.get()) != GLP_OPT) {
            return std::nullopt;
        }
        return glp_mip_obj_val(problem_.get());
    }

  private:
    struct Delete {
        void operator()(glp_prob* problem) const { glp_delete_prob(problem); }
    };

    static double units(model::Money money) { return static_cast<double>(money.minor()) / 100; }

    static double units(model::Quantity quantity) {
        return static_cast<double>(quantity.thousandths()) / 1000;
    }

    template <class Take>
    static void forEach(const compute::ChooseInput& input, Take take) {
        for (std::size_t k = 0; k < input.alternates.size(); ++k) {
            for (std::size_t p = 0; p < input.alternates[k].size(); ++p) {
                take(compute::OptionPlace{k, p}, input.alternates[k][p]);
            }
        }
    }

    [[nodiscard]] std::size_t at(compute::OptionPlace place) const {
        return firsts_[place.alternate] + place.option;
    }

    void addOptions(const compute::ChooseInput& input) {
        const double kept = static_cast<double>(input.keptShare.basisPoints()) / 10'000;
        for (const auto& options : input.alternates) {
            firsts_.push_back(columns_);
            columns_ += options.size();
        }
        const std::size_t options = columns_;
        columns_ += input.ceiling ? 1 : 0;
        glp_add_cols(problem_.get(), static_cast<int>(columns_));
        forEach(input, [&](compute::OptionPlace place, const compute::WeighedOption& option) {
            const int column = static_cast<int>(at(place)) + 1;
            glp_set_col_kind(problem_.get(), column, GLP_BV);
            const double outgo = units(option.cost) + units(option.days) * units(input.dayCosts);
            const double gain = input.ceiling ? 0 : kept * units(option.value);
            glp_set_obj_coef(problem_.get(), column, gain - outgo);
        });
        if (input.ceiling) {
            const int column = static_cast<int>(options) + 1;
            const double room = std::max(0.0, units(*input.ceiling) - units(input.resale));
            glp_set_col_bnds(problem_.get(), column, GLP_UP, 0, room);
            glp_set_obj_coef(problem_.get(), column, kept);
        }
    }

    void addTies(const compute::ChooseInput& input) {
        forEach(input, [&](compute::OptionPlace place, const compute::WeighedOption& option) {
            for (const auto& needed : option.needs) {  // this - needed <= 0
                std::vector<double> row(columns_, 0);
                row[at(place)] += 1;
                row[at(needed)] -= 1;
                addRow(row, GLP_UP, 0);
            }
            for (const auto& excluded : option.excludes) {  // this + excluded <= 1
                std::vector<double> row(columns_, 0);
                row[at(place)] += 1;
                row[at(excluded)] += 1;
                addRow(row, GLP_UP, 1);
            }
        });
    }

    void addRow(const std::vector<double>& values, int kind, double bound) {
        std::vector<int> columns(1, 0);
        std::vector<double> present(1, 0);
        for (std::size_t k = 0; k < values.size(); ++k) {
            if (values[k] != 0) {
                columns.push_back(static_cast<int>(k) + 1);
                present.push_back(values[k]);
            }
        }
        const int row = glp_add_rows(problem_.get(), 1);
        glp_set_row_bnds(problem_.get(), row, kind, bound, bound);
        glp_set_mat_row(problem_.get(), row, static_cast<int>(columns.size()) - 1, columns.data(),
                        present.data());
    }

    std::unique_ptr<glp_prob, Delete> problem_;
    std::vector<std::size_t> firsts_;
    std::size_t columns_ = 0;
};

}  // namespace ledgerboard::tests
