// budget-of BOOK DAY: what every job in a book will cost, as of a day.
#include <iostream>

#include "core/compute/as_of.h"
#include "core/compute/budget.h"
#include "core/model/machine.h"
#include "core/store/book.h"

int main(int argc, char** argv) {
    namespace lb = ledgerboard;
    const auto day = argc == 3 ? lb::model::Date::parse(argv[2])
                               : lb::model::Result<lb::model::Date>(lb::model::wrongUse("DAY"));
    if (!day.ok()) {
        std::cerr << "use: budget-of BOOK DAY, such as: budget-of ledgerboard.book 2026-05-22\n";
        return 2;
    }
    auto book = lb::store::Book::open(argv[1], lb::model::fillRandom);
    if (!book.ok()) {
        std::cerr << book.error().message << "\n";
        return 1;
    }
    const auto jobs = book.value().rows<lb::model::Job>();
    for (const auto& job : jobs.ok() ? jobs.value() : std::vector<lb::model::Job>()) {
        auto rows = book.value().jobRows(job.id);
        if (rows.ok()) {
            const auto asOf = lb::compute::asOf(std::move(rows).value(), day.value());
            const auto figures = lb::compute::figuresOf(asOf, day.value());
            std::cout << job.name << ": will cost " << figures.job.forecast.toString()
                      << ", budget " << figures.job.budgetNow.toString() << "\n";
        }
    }
}
