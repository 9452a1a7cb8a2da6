#include "desktop/client/demo_house.h"

#include <filesystem>

#include <QFile>
#include <QString>

#include "core/compute/as_of.h"
#include "core/compute/cautions.h"
#include "core/compute/scope_lines.h"
#include "core/intake/files/bring.h"
#include "core/intake/files/csv.h"
#include "core/model/overflow.h"
#include "core/model/value.h"
#include "core/report/week_page.h"
#include "core/store/book.h"

namespace ledgerboard::desk {

using model::Result;

namespace {

constexpr const char* kName = "14 Quince Row";

std::string fileOf(const char* name) {
    QFile file(QStringLiteral(":/demo/") + QLatin1String(name));
    return file.open(QIODevice::ReadOnly) ? file.readAll().toStdString() : std::string();
}

model::Date day(int month, int dayOfMonth) {
    return model::Date::fromYmd(2026, month, dayOfMonth).value();
}

class Maker {
  public:
    Maker(store::Book& book, model::Instant now) : book_(book), now_(now) {}

    Result<void> make() {
        for (const auto step : {&Maker::begin, &Maker::bringBeginning, &Maker::freeze,
                                &Maker::acknowledge, &Maker::bringSite, &Maker::review}) {
            if (auto done = (this->*step)(); !done.ok()) {
                return done;
            }
        }
        return {};
    }

  private:
    // The job and its fields, one a row of job.csv under the catalog's headings.
    Result<void> begin() {
        model::Job job;
        job.id = job_ = book_.newId<model::Kind::Job>(now_);
        job.name = kName;
        store::Action action(std::string("start ") + kName);
        action.add(job);
        auto table = intake::readCsv(fileOf("job.csv"), "job.csv");
        if (!table.ok()) {
            return table.error();
        }
        for (const auto& row : table.value().rows) {
            const model::Field* field = model::fieldNamed(model::Kind::Job, row.cells[0]);
            if (field == nullptr) {
                return model::cannotBeMet("job.csv: no field " + row.cells[0]);
            }
            auto value = model::parseValue(*field, row.cells[1], {});
            if (!value.ok()) {
                return value.error();
            }
            action.set(job_.raw(), field->code, value.value());
        }
        return book_.commit(action, now_);
    }

    Result<void> bring(const char* kind, const char* file) {
        auto report = intake::bring(book_, job_, kind, file, fileOf(file), {}, now_);
        return report.ok() ? Result<void>() : Result<void>(report.error());
    }

    Result<void> bringAll(std::initializer_list<std::pair<const char*, const char*>> files) {
        for (const auto& [kind, file] : files) {
            if (auto done = bring(kind, file); !done.ok()) {
                return done;
            }
        }
        return {};
    }

    Result<void> bringBeginning() {
        return bringAll({{"prices", "prices.csv"},
                         {"crews", "crews.csv"},
                         {"contracts", "contracts.csv"},
                         {"lender-lines", "lender-lines.csv"},
                         {"scope", "scope.csv"}});
    }

    Result<void> bringSite() {
        return bringAll({{"changes", "changes.csv"},
                         {"spend", "spend.csv"},
                         {"marks", "marks.csv"},
                         {"draws", "draws.csv"},
                         {"draw-lines", "draw-lines.csv"},
                         {"punch", "punch.csv"}});
    }

    Result<void> freeze() {
        auto rows = book_.jobRows(job_);
        if (!rows.ok()) {
            return rows.error();
        }
        const compute::Frozen frozen = compute::freeze(compute::withoutVoided(rows.value()));
        model::Baseline baseline;
        baseline.id = book_.newId<model::Kind::Baseline>(now_);
        baseline.job = job_;
        baseline.frozenOn = day(4, 3);
        baseline.contingency = frozen.contingency;
        baseline.finishOn = frozen.finishOn;
        store::Action action("baseline of 2026-04-03");
        action.add(baseline);
        for (const auto& item : frozen.items) {
            model::BaselineItem one;
            one.id = book_.newId<model::Kind::BaselineItem>(now_);
            one.job = job_;
            one.baseline = baseline.id;
            one.item = item.item;
            one.budget = item.budget;
            one.plannedStartOn = item.plannedStartOn;
            one.plannedFinishOn = item.plannedFinishOn;
            action.add(one);
        }
        return book_.commit(action, now_);
    }

    // Before work began, the owner saw to every caution but those of the range and the yard.
    Result<void> acknowledge() {
        auto rows = book_.jobRows(job_);
        if (!rows.ok()) {
            return rows.error();
        }
        const auto cautions = compute::cautionsOf(compute::withoutVoided(rows.value()), day(4, 2));
        store::Action action("acknowledge cautions");
        for (const auto& caution : cautions.all) {
            if (!caution.holdsUp() || caution.what.find("range") != std::string::npos ||
                caution.what.find("yard") != std::string::npos) {
                continue;
            }
            model::Caution kept = compute::keptCaution(caution, job_);
            if (kept.id.isNil()) {
                kept.id = book_.newId<model::Kind::Caution>(now_);
            }
            kept.acknowledgedBy = book_.me();
            kept.acknowledgedOn = day(4, 2);
            action.add(kept);
        }
        return book_.commit(action, now_);
    }

    Result<void> review() {
        auto rows = book_.jobRows(job_);
        if (!rows.ok()) {
            return rows.error();
        }
        auto page =
            report::weekPage(compute::asOf(std::move(rows).value(), day(5, 15)), day(5, 15));
        page.review.id = book_.newId<model::Kind::Review>(now_);
        store::Action action("keep the review of 2026-05-15");
        action.add(page.review);
        return book_.commit(action, now_);
    }

    store::Book& book_;
    model::Instant now_;
    model::Id<model::Kind::Job> job_;
};

}  // namespace

Result<void> makeDemo(const std::string& path, model::Instant now,
                      const model::FillRandom& random) {
    // Where something is there already, this fails and nothing is removed.
    auto book = store::Book::create(path, "Wren", now, random);
    if (!book.ok()) {
        return book.error();
    }
    auto done = model::guarded([&] { return Maker(book.value(), now).make(); });
    if (!done.ok()) {
        { const store::Book closed = std::move(book).value(); }
        std::error_code ignored;
        for (const char* tail : {"", "-wal", "-shm"}) {
            std::filesystem::remove(path + tail, ignored);
        }
    }
    return done;
}

}  // namespace ledgerboard::desk
