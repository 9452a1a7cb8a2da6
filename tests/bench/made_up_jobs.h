// What do benchmarks measure on? A book of jobs of 300 items, 5,000 marks and 2,000 spends each.
//
// Everything of a row follows from its number, so each run makes the same jobs. Jobs are made four
// at a time, as an owner of several houses has them: a week of the first, the same week of the
// second and so on, so that the rows of a job do not lie together in the file.
#pragma once

#include <string>
#include <vector>

#include "core/model/check.h"
#include "core/store/action.h"
#include "core/store/book.h"

namespace ledgerboard::bench {

inline constexpr int kItems = 300;
inline constexpr int kMarks = 5'000;
inline constexpr int kSpends = 2'000;
inline constexpr int kSpaces = 20;
inline constexpr int kCrews = 10;
inline constexpr int kWeeks = 8;

// A Monday.
inline constexpr model::Date kBegin = model::Date::fromDays(20'549);  // 2026-04-06
// The Friday that pages are made for: the job is well under way.
inline constexpr model::Date kToday = kBegin + 46;

// Makes the rows of one job, week by week.
class MadeUpJob {
  public:
    MadeUpJob(model::IdMaker& ids, model::Id<model::Kind::Person> by,
              const std::vector<model::Crew>& crews, int number)
        : ids_(ids), by_(by), crews_(crews), number_(number) {}

    [[nodiscard]] model::Id<model::Kind::Job> id() const { return job_; }

    // The job, its spaces, contracts, items and baseline.
    void begin(store::Action& out) {
        model::Job job;
        job_ = job.id = next<model::Kind::Job>();
        job.name = "House " + std::to_string(number_);
        job.purchasePrice = model::Money::of(210'000);
        job.resaleLikely = model::Money::of(520'000);
        job.contingency = model::Percent::of(10);
        job.beginOn = kBegin;
        job.targetFinishOn = kBegin + 7 * kWeeks - 3;
        job.currency = "USD";
        out.add(job);
        for (int k = 0; k < kSpaces; ++k) {
            model::Space space;
            space.id = next<model::Kind::Space>();
            space.job = job_;
            space.name = "Room " + std::to_string(k + 1);
            space.walkOrder = k + 1;
            spaces_.push_back(space.id);
            out.add(space);
        }
        for (int k = 0; k < kCrews; ++k) {
            addContract(out, k);
        }
        for (int k = 0; k < kItems; ++k) {
            addItem(out, k);
        }
        addBaseline(out);
    }

    // The marks and the spend of one of the kWeeks weeks.
    void addWeek(store::Action& out, int week) {
        for (int k = kMarks * week / kWeeks; k < kMarks * (week + 1) / kWeeks; ++k) {
            addMark(out, k, kBegin + 7 * week + k % 5);
        }
        for (int k = kSpends * week / kWeeks; k < kSpends * (week + 1) / kWeeks; ++k) {
            addSpend(out, k, kBegin + 7 * week + k % 5);
        }
    }

  private:
    template <model::Kind K>
    model::Id<K> next() {
        return model::Id<K>(ids_.next(model::Instant::fromMilliseconds(1'775'476'800'000)));
    }

    void addContract(store::Action& out, int k) {
        model::Contract contract;
        contract.id = next<model::Kind::Contract>();
        contract.job = job_;
        contract.crew = crews_[static_cast<std::size_t>(k)].id;
        contract.name = crews_[static_cast<std::size_t>(k)].trade;
        contract.type = model::ContractKind::Subcontract;
        contract.sum = model::Money::of(12'000 + 500 * k);
        contract.retainage = model::Percent::of(10);
        contract.signedOn = kBegin - 10;
        contracts_.push_back(contract.id);
        out.add(contract);
    }

    void addItem(store::Action& out, int k) {
        model::Item item;
        item.id = next<model::Kind::Item>();
        item.job = job_;
        item.space = spaces_[static_cast<std::size_t>(k % kSpaces)];
        item.treatment = k % 3 == 0 ? model::Treatment::Replace : model::Treatment::Repair;
        item.object = "part " + std::to_string(k / kSpaces + 1);
        const auto crew = static_cast<std::size_t>(k % kCrews);
        item.trade = crews_[crew].trade;
        item.crew = crews_[crew].id;
        if (k % 4 == 0) {
            item.contract = contracts_[crew];
        }
        item.quantity = model::Quantity::of(10 + k % 40);
        item.unit = "sq ft";
        item.unitCostMaterial = model::Money::of(3 + k % 7);
        item.unitCostLabour = model::Money::of(5 + k % 5);
        item.daysLikely = model::Quantity::of(1 + k % 4);
        item.plannedStartOn = kBegin + (k * (7 * kWeeks - 10)) / kItems;
        item.plannedFinishOn = *item.plannedStartOn + 4;
        items_.push_back(item);
        out.add(item);
    }

    void addBaseline(store::Action& out) {
        model::Baseline baseline;
        baseline.id = next<model::Kind::Baseline>();
        baseline.job = job_;
        baseline.frozenOn = kBegin - 3;
        baseline.contingency = model::Money::of(9'000);
        baseline.finishOn = kBegin + 7 * kWeeks - 3;
        out.add(baseline);
        for (const auto& item : items_) {
            model::BaselineItem frozen;
            frozen.id = next<model::Kind::BaselineItem>();
            frozen.job = job_;
            frozen.baseline = baseline.id;
            frozen.item = item.id;
            frozen.budget = model::Money::of(300);
            frozen.plannedStartOn = item.plannedStartOn;
            frozen.plannedFinishOn = item.plannedFinishOn;
            out.add(frozen);
        }
    }

    void addMark(store::Action& out, int k, model::Date on) {
        model::Mark mark;
        mark.id = next<model::Kind::Mark>();
        mark.job = job_;
        mark.item = items_[static_cast<std::size_t>(k % kItems)].id;
        mark.percent = model::Percent::of(1 + 99LL * k / kMarks);
        mark.markedOn = on;
        mark.by = by_;
        out.add(mark);
    }

    // Invoices under contract, the payments of them, and receipts.
    void addSpend(store::Action& out, int k, model::Date on) {
        model::Spend spend;
        spend.id = next<model::Kind::Spend>();
        spend.job = job_;
        spend.type = k % 4 == 0   ? model::SpendKind::Invoice
                     : k % 4 == 1 ? model::SpendKind::Payment
                                  : model::SpendKind::Receipt;
        spend.spentOn = on;
        spend.amount = model::Money::fromMinor(1'000 + 37LL * (k % 400));
        spend.item = items_[static_cast<std::size_t>(k % kItems)].id;
        spend.payee = "Supplier " + std::to_string(k % 25);
        if (k % 4 < 2) {
            spend.contract = contracts_[static_cast<std::size_t>(k % kCrews)];
        }
        out.add(spend);
    }

    model::IdMaker& ids_;
    model::Id<model::Kind::Person> by_;
    const std::vector<model::Crew>& crews_;
    int number_;
    model::Id<model::Kind::Job> job_;
    std::vector<model::Id<model::Kind::Space>> spaces_;
    std::vector<model::Id<model::Kind::Contract>> contracts_;
    std::vector<model::Item> items_;
};

// Puts actions into a book as another device of its owner would: through Book::apply, which spares
// what commit asks about each edit.
class Writer {
  public:
    Writer(store::Book& book, model::RawId device) : book_(book), device_(device) {}

    void write(const store::Action& action) {
        std::vector<store::Entry> entries;
        entries.reserve(action.edits().size());
        clock_ = clock_.next(model::Instant::fromMilliseconds(1'775'476'800'000));
        for (const auto& edit : action.edits()) {
            store::Entry entry;
            const auto lane = store::laneOf(*model::fieldOf(edit.field));
            entry.name = {device_, lane, ++numbers_[static_cast<std::size_t>(lane)]};
            entry.clock = clock_;
            entry.record = edit.record;
            entry.field = edit.field;
            entry.value = edit.value;
            entries.push_back(std::move(entry));
        }
        auto taken = book_.apply(entries);
        model::require(taken.ok() && taken.value() == entries.size(), "the bench writes its book");
    }

  private:
    store::Book& book_;
    model::RawId device_;
    model::HybridClock clock_;
    std::int64_t numbers_[2] = {0, 0};
};

// Fills an empty book with `count` jobs; their ids in order.
inline std::vector<model::Id<model::Kind::Job>> fillWithJobs(store::Book& book, int count,
                                                             model::FillRandom chance) {
    model::IdMaker ids(std::move(chance));
    const auto start = model::Instant::fromMilliseconds(1'775'476'800'000);
    Writer writer(book, ids.next(start));
    std::vector<model::Crew> crews;
    store::Action crewsAction("crews");
    for (int k = 0; k < kCrews; ++k) {
        model::Crew crew;
        crew.id = model::Id<model::Kind::Crew>(ids.next(start));
        crew.name = "Crew " + std::to_string(k + 1);
        crew.trade = "Trade " + std::to_string(k + 1);
        crews.push_back(crew);
        crewsAction.add(crew);
    }
    writer.write(crewsAction);
    std::vector<model::Id<model::Kind::Job>> made;
    constexpr int kAtOnce = 4;
    for (int first = 0; first < count; first += kAtOnce) {
        std::vector<MadeUpJob> jobs;
        for (int k = first; k < std::min(count, first + kAtOnce); ++k) {
            store::Action action("a job");
            jobs.emplace_back(ids, book.me(), crews, k + 1).begin(action);
            writer.write(action);
            made.push_back(jobs.back().id());
        }
        for (int week = 0; week < kWeeks; ++week) {
            for (auto& job : jobs) {
                store::Action action("a week");
                job.addWeek(action, week);
                writer.write(action);
            }
        }
    }
    return made;
}

}  // namespace ledgerboard::bench
