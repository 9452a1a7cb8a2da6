// Protects crew plans against two proofs that share nothing with the search: trying every start,
// and an integer program over time, solved by GLPK, which the program itself never links. The jobs
// are invented; the shortest length written beside each is worked out by hand and held to as well.
// LEDGERBOARD_LONG=1 in the environment adds more jobs by chance.
#include <cstdlib>
#include <glpk.h>
#include <gtest/gtest.h>
#include <map>
#include <memory>

#include "tests/outside/worked.h"
#include "tests/support/crew_jobs.h"

namespace {

using ledgerboard::compute::CrewPlanInput;
using ledgerboard::compute::Precedence;
using ledgerboard::model::LinkKind;
using nlohmann::json;
namespace compute = ledgerboard::compute;
namespace tests = ledgerboard::tests;

constexpr auto kFs = LinkKind::FinishToStart;
constexpr auto kSs = LinkKind::StartToStart;
constexpr auto kFf = LinkKind::FinishToFinish;
constexpr auto kSf = LinkKind::StartToFinish;

struct JobItem {
    std::int64_t days;
    std::vector<compute::CrewNeed> needs;
    std::optional<std::size_t> space = std::nullopt;
};

struct Job {
    const char* name;
    const char* why;  // the length by hand
    std::int64_t days;
    std::vector<std::int64_t> capacities;
    std::vector<JobItem> items;
    std::vector<Precedence> links;
};

CrewPlanInput inputOf(const Job& job) {
    CrewPlanInput input;
    std::size_t spaces = 0;
    for (const std::int64_t capacity : job.capacities) {
        input.crews.push_back({"crew " + std::to_string(input.crews.size()), capacity});
    }
    for (const JobItem& item : job.items) {
        compute::CrewedItem one;
        one.name = "item " + std::to_string(input.items.size());
        one.activity.duration = item.days;
        one.needs = item.needs;
        one.space = item.space;
        spaces = std::max(spaces, item.space ? *item.space + 1 : 0);
        input.items.push_back(one);
    }
    for (std::size_t k = 0; k < spaces; ++k) {
        input.spaces.push_back("space " + std::to_string(k));
    }
    input.precedences = job.links;
    return input;
}

const std::vector<Job>& jobs() {
    static const std::vector<Job> kJobs = {
        {"one tile crew, two baths",
         "4 + 3 days of one crew",
         7,
         {1},
         {{4, {{0}}}, {3, {{0}}}},
         {}},
        {"two baths, three crews in turn",
         "tear-out 2 + 2 begins; the second bath's tile of 3 follows the first's: 2 + 1 + 3 + 3",
         9,
         {1, 1, 1},
         {{2, {{0}}}, {1, {{1}}}, {3, {{2}}}, {2, {{0}}}, {1, {{1}}}, {3, {{2}}}},
         {{0, 1}, {1, 2}, {3, 4}, {4, 5}}},
        {"a crew of two with a job for both",
         "2 x 3 + 2 x (2 + 2) crew-days and 2 for both on one crew of two: (6 + 2 + 2 + 4) / 2",
         7,
         {2},
         {{3, {{0, 2}}}, {2, {{0}}}, {2, {{0}}}, {4, {{0}}}},
         {}},
        {"the longest item begins on the wrong crew",
         "the one after the shared crew is long: 1 + 6 beats 5 + 1 + 6",
         7,
         {1},
         {{5, {{0}}}, {1, {{0}}}, {6, {}}},
         {{1, 2}}},
        {"tile may begin two days into the board",
         "board 5, tile from day 2 for 4, grout by the same crew 1: 2 + 4 + 1",
         7,
         {1},
         {{5, {}}, {4, {{0}}}, {1, {{0}}}},
         {{0, 1, kSs, 2}, {1, 2}}},
        {"paint ends a day after the trim",
         "trim 2 ... 6 after 2 days of the crew, paint of 2 ends at 7 at the earliest",
         7,
         {1},
         {{2, {{0}}}, {4, {{0}}}, {2, {}}},
         {{1, 2, kFf, 1}, {0, 1}}},
        {"the heater leaves when the new one has begun",
         "old heater of 3 must end 4 after the new one starts: 4, then the crew's 2 more",
         6,
         {1},
         {{1, {{0}}}, {3, {}}, {2, {{0}}}},
         {{0, 1, kSf, 4}, {1, 2}}},
        {"floor begins a day before the paint ends",
         "paint 3 + 3 by one crew; the second room's floor of 2 begins at 5",
         7,
         {1, 1},
         {{3, {{0}}}, {2, {{1}}}, {3, {{0}}}, {2, {{1}}}},
         {{0, 1, kFs, -1}, {2, 3, kFs, -1}}},
        {"a small bath takes one crew at a time",
         "three crews, one room: 2 + 3 + 2",
         7,
         {1, 1, 1},
         {{2, {{0}}, 0}, {3, {{1}}, 0}, {2, {{2}}, 0}},
         {}},
        {"one crew of two is twice in the room",
         "the crew's 3 and 2 side by side, the other crew's 2 before or after: 3 + 2",
         5,
         {2, 1},
         {{3, {{0}}, 0}, {2, {{0}}, 0}, {2, {{1}}, 0}},
         {}},
        {"drying in the room keeps others out",
         "1 of the crew, 2 of drying by nobody, 3 of another crew in the same room",
         6,
         {1, 1},
         {{1, {{0}}, 0}, {2, {}, 0}, {3, {{1}}, 0}},
         {{0, 1}}},
        {"two rooms and two crews that cross",
         "each crew has 5 days and each room 5; the crews change rooms once",
         5,
         {1, 1},
         {{2, {{0}}, 0}, {3, {{0}}, 1}, {3, {{1}}, 0}, {2, {{1}}, 1}},
         {}},
        {"an inspection between two halves",
         "rough 2 + 2 by one crew, inspected together in 1, closed 2 + 2 by one crew",
         9,
         {1, 1},
         {{2, {{0}}}, {2, {{0}}}, {1, {}}, {2, {{1}}}, {2, {{1}}}},
         {{0, 2}, {1, 2}, {2, 3}, {2, 4}}},
        {"two crews together on the beam",
         "the beam of 2 needs both crews; each has 3 more, and 1 waits for the beam",
         5,
         {1, 1},
         {{2, {{0}, {1}}}, {3, {{0}}}, {3, {{1}}}, {0, {}}},
         {{0, 3}}},
        {"five on a crew of three",
         "3 x 2 + 2 x 3 + 2 + 1 x 4 + 3 x 1 = 21 crew-days on 3 are 7; items of 3, 2 and 3 people "
         "never overlap, nor do two of 2: 2 + 3 + 2 + 1",
         8,
         {3},
         {{2, {{0, 3}}}, {3, {{0, 2}}}, {2, {{0, 2}}}, {4, {{0, 1}}}, {1, {{0, 3}}}},
         {}},
    };
    return kJobs;
}

// The same as an input for `work`.
json jsonOf(const CrewPlanInput& input) {
    const std::map<LinkKind, std::string> kinds = {
        {kFs, "FS"}, {kSs, "SS"}, {kFf, "FF"}, {kSf, "SF"}};
    json out = {{"items", json::array()}, {"crews", json::object()}, {"tries", 2000}};
    for (const compute::PlanCrew& crew : input.crews) {
        out["crews"][crew.name] = crew.capacity;
    }
    for (const compute::CrewedItem& item : input.items) {
        json one = {{"id", item.name}, {"days", item.activity.duration}};
        for (const compute::CrewNeed& need : item.needs) {
            one["uses"][input.crews[need.crew].name] = need.places;
        }
        if (item.space) {
            one["space"] = input.spaces[*item.space];
        }
        out["items"].push_back(one);
    }
    for (const Precedence& link : input.precedences) {
        out["items"][link.to]["after"].push_back({{"id", input.items[link.from].name},
                                                  {"kind", kinds.at(link.kind)},
                                                  {"lag", link.lag}});
    }
    return out;
}

// An integer program over time: x(item, t) is 1 where the item starts at t; z(space, party, t) is 1
// where that party may stand in the space at t. A. Pritsker, L. Watters, P. Wolfe, Management
// Science 16 (1969), 93 to 108 (from memory).
class IntegerProgram {
  public:
    IntegerProgram(const CrewPlanInput& input, int horizon)
        : input_(input), horizon_(horizon), problem_(glp_create_prob()) {
        glp_term_out(GLP_OFF);
        glp_set_obj_dir(problem_.get(), GLP_MIN);
        length_ = column(GLP_IV, 0, horizon);
        glp_set_obj_coef(problem_.get(), length_, 1);
        addStarts();
        addLinks();
        addCrews();
        addSpaces();
    }

    int shortest() {
        glp_iocp options;
        glp_init_iocp(&options);
        options.presolve = GLP_ON;
        EXPECT_EQ(glp_intopt(problem_.get(), &options), 0);
        EXPECT_EQ(glp_mip_status(problem_.get()), GLP_OPT);
        return static_cast<int>(std::lround(glp_mip_obj_val(problem_.get())));
    }

  private:
    struct Delete {
        void operator()(glp_prob* problem) const { glp_delete_prob(problem); }
    };

    struct Term {
        int column;
        double factor;
    };

    int column(int kind, int least, int most) {
        const int added = glp_add_cols(problem_.get(), 1);
        glp_set_col_kind(problem_.get(), added, kind);
        glp_set_col_bnds(problem_.get(), added, least == most ? GLP_FX : GLP_DB, least, most);
        return added;
    }

    // Sum of terms at least `bound` (GLP_LO), at most (GLP_UP) or equal (GLP_FX).
    void row(int type, double bound, const std::vector<Term>& terms) {
        const int added = glp_add_rows(problem_.get(), 1);
        glp_set_row_bnds(problem_.get(), added, type, bound, bound);
        std::vector<int> columns = {0};
        std::vector<double> factors = {0};
        for (const Term& term : terms) {
            columns.push_back(term.column);
            factors.push_back(term.factor);
        }
        glp_set_mat_row(problem_.get(), added, static_cast<int>(terms.size()), columns.data(),
                        factors.data());
    }

    [[nodiscard]] int daysOf(std::size_t item) const {
        return static_cast<int>(input_.items[item].activity.duration);
    }

    void addStarts() {
        for (std::size_t k = 0; k < input_.items.size(); ++k) {
            const auto release = static_cast<int>(input_.items[k].activity.release);
            starts_.emplace_back();
            std::vector<Term> once;
            std::vector<Term> end = {{length_, 1}};
            for (int t = 0; t + daysOf(k) <= horizon_; ++t) {
                starts_[k].push_back(column(GLP_BV, 0, 1));
                glp_set_col_bnds(problem_.get(), starts_[k][static_cast<std::size_t>(t)],
                                 t < release ? GLP_FX : GLP_DB, 0, t < release ? 0 : 1);
                once.push_back({starts_[k].back(), 1});
                if (t > 0) {
                    end.push_back({starts_[k].back(), -1.0 * t});
                }
            }
            row(GLP_FX, 1, once);
            row(GLP_LO, daysOf(k), end);
        }
    }

    void addLinks() {
        for (const Precedence& link : input_.precedences) {
            double lag = static_cast<double>(link.lag);
            lag += link.kind == kFs || link.kind == kFf ? daysOf(link.from) : 0;
            lag -= link.kind == kFf || link.kind == kSf ? daysOf(link.to) : 0;
            std::vector<Term> terms;
            for (std::size_t t = 1; t < starts_[link.to].size(); ++t) {
                terms.push_back({starts_[link.to][t], static_cast<double>(t)});
            }
            for (std::size_t t = 1; t < starts_[link.from].size(); ++t) {
                terms.push_back({starts_[link.from][t], -static_cast<double>(t)});
            }
            row(GLP_LO, lag, terms);
        }
    }

    // The starts that have `item` under way at `time`, each times `factor`.
    void underWay(std::size_t item, int time, double factor, std::vector<Term>& terms) const {
        for (int t = std::max(0, time - daysOf(item) + 1); t <= time; ++t) {
            if (t < static_cast<int>(starts_[item].size())) {
                terms.push_back({starts_[item][static_cast<std::size_t>(t)], factor});
            }
        }
    }

    void addCrews() {
        for (std::size_t crew = 0; crew < input_.crews.size(); ++crew) {
            for (int time = 0; time < horizon_; ++time) {
                std::vector<Term> terms;
                for (std::size_t k = 0; k < input_.items.size(); ++k) {
                    for (const compute::CrewNeed& need : input_.items[k].needs) {
                        if (need.crew == crew) {
                            underWay(k, time, static_cast<double>(need.places), terms);
                        }
                    }
                }
                row(GLP_UP, static_cast<double>(input_.crews[crew].capacity), terms);
            }
        }
    }

    void addSpaces() {
        for (std::size_t space = 0; space < input_.spaces.size(); ++space) {
            // Who an item stands there with: its crews, or itself alone.
            std::map<std::vector<std::size_t>, std::vector<std::size_t>> parties;
            for (std::size_t k = 0; k < input_.items.size(); ++k) {
                if (input_.items[k].space != space) {
                    continue;
                }
                std::vector<std::size_t> crews;
                for (const compute::CrewNeed& need : input_.items[k].needs) {
                    crews.push_back(need.crew);
                }
                if (crews.empty()) {
                    crews.push_back(input_.crews.size() + k);
                }
                parties[crews].push_back(k);
            }
            for (int time = 0; time < horizon_; ++time) {
                std::vector<Term> oneParty;
                for (const auto& [crews, items] : parties) {
                    const int there = column(GLP_BV, 0, 1);
                    oneParty.push_back({there, 1});
                    for (const std::size_t k : items) {
                        std::vector<Term> terms = {{there, -1}};
                        underWay(k, time, 1, terms);
                        row(GLP_UP, 0, terms);
                    }
                }
                row(GLP_UP, 1, oneParty);
            }
        }
    }

    const CrewPlanInput& input_;
    int horizon_;
    std::unique_ptr<glp_prob, Delete> problem_;
    int length_ = 0;
    std::vector<std::vector<int>> starts_;
};

std::vector<std::int64_t> startsIn(const json& out) {
    std::vector<std::int64_t> starts;
    for (const json& item : out.at("items")) {
        starts.push_back(item.at("start").get<std::int64_t>());
        EXPECT_GE(item.at("end").get<std::int64_t>(), starts.back());
    }
    return starts;
}

TEST(CrewPlanOutside, OwnJobsReachTheProvenLength) {
    ASSERT_GE(jobs().size(), 12U);
    for (const Job& job : jobs()) {
        SCOPED_TRACE(job.name);
        const CrewPlanInput input = inputOf(job);
        const json out = ledgerboard::outside::worked("crew-plan", jsonOf(input).dump());
        EXPECT_EQ(out.at("days"), job.days) << job.why;
        EXPECT_EQ(out.at("lower_bound"), job.days);
        EXPECT_EQ(tests::EveryPlan(input).shortest(), job.days) << job.why;
        EXPECT_EQ(IntegerProgram(input, static_cast<int>(job.days) + 2).shortest(), job.days);
        EXPECT_EQ(tests::brokenRule(input, startsIn(out)), "");
        EXPECT_EQ(tests::lengthOf(input, startsIn(out)), job.days);
    }
}

// Jobs by chance, with all kinds of links, lags, earliest starts and a space. The search may miss
// the shortest plan; the bound may not pass it.
TEST(CrewPlanOutside, JobsByChanceAgreeWithBothProofs) {
    const char* isLong = std::getenv("LEDGERBOARD_LONG");
    const std::uint64_t count = isLong != nullptr && std::string(isLong) == "1" ? 400 : 25;
    std::uint64_t missed = 0;
    for (std::uint64_t seed = 1; seed <= count; ++seed) {
        SCOPED_TRACE(seed);
        compute::SeededNumbers chance(seed);
        tests::CrewJobShape shape;
        shape.items = 6;
        shape.mostDays = 4;
        const CrewPlanInput input = tests::crewJobByChance(chance, shape);
        const auto plan = compute::crewPlan(input, {2000, seed, {}});
        ASSERT_TRUE(plan.ok()) << plan.error().message;
        const std::int64_t shortest = tests::EveryPlan(input).shortest();
        EXPECT_EQ(IntegerProgram(input, static_cast<int>(plan.value().length)).shortest(),
                  shortest);
        EXPECT_GE(plan.value().length, shortest);
        EXPECT_LE(plan.value().lowerBound, shortest);
        missed += plan.value().length > shortest ? 1 : 0;
    }
    EXPECT_LE(missed * 50, count) << missed << " of " << count << " longer than need be";
}

}  // namespace
