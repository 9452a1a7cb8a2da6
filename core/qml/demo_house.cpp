#include "core/qml/demo_house.h"

#include <filesystem>
#include <regex>

#include <QFile>
#include <QString>

#include "core/compute/as_of.h"
#include "core/compute/cautions.h"
#include "core/intake/files/bring.h"
#include "core/intake/files/csv.h"
#include "core/intake/keep/keep_baseline.h"
#include "core/model/overflow.h"
#include "core/model/value.h"
#include "core/report/week_page.h"
#include "core/store/book.h"

namespace ledgerboard::qml {

using model::Result;

namespace {

constexpr const char* kName = "14 Quince Row";

std::string fileOf(const char* name) {
    QFile file(QStringLiteral(":/demo/") + QLatin1String(name));
    return file.open(QIODevice::ReadOnly) ? file.readAll().toStdString() : std::string();
}

// `text` with every day in it, as 2026-05-22, so many days later.
std::string later(const std::string& text, int days) {
    static const std::regex kDay(R"(\b20\d\d-[01]\d-[0-3]\d\b)");
    std::string out;
    auto from = text.cbegin();
    for (std::sregex_iterator at(text.begin(), text.end(), kDay), end; at != end; ++at) {
        out.append(from, (*at)[0].first);
        const auto day = model::Date::parse((*at)[0].str());
        out += day.ok() ? (day.value() + days).toString() : (*at)[0].str();
        from = (*at)[0].second;
    }
    return out.append(from, text.cend());
}

class Maker {
  public:
    Maker(store::Book& book, model::Instant now, int weeks)
        : book_(book), now_(now), days_(7 * weeks) {}

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
    [[nodiscard]] model::Date day(int month, int dayOfMonth) const {
        return model::Date::fromYmd(2026, month, dayOfMonth).value() + days_;
    }

    // The job and its fields, one a row of job.csv under the catalog's headings.
    Result<void> begin() {
        model::Job job;
        job.id = job_ = book_.newId<model::Kind::Job>(now_);
        job.name = kName;
        store::Action action(std::string("start ") + kName);
        action.add(job);
        auto table = intake::readCsv(later(fileOf("job.csv"), days_), "job.csv");
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
        auto report = intake::bring(book_, job_, kind, file, later(fileOf(file), days_), {}, now_);
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
        const auto kept = intake::keepBaseline(book_, compute::withoutVoided(rows.value()),
                                               day(4, 3), book_.position(), now_);
        if (!kept.ok()) {
            return kept.error();
        }
        return book_.commit(kept.value().action, now_);
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
        store::Action action("keep the review of " + day(5, 15).toString());
        action.add(page.review);
        return book_.commit(action, now_);
    }

    store::Book& book_;
    model::Instant now_;
    int days_;
    model::Id<model::Kind::Job> job_;
};

}  // namespace

int demoWeeksUntil(model::Date today) {
    const int days = today - model::Date::parse(kDemoDay).value();
    return (days - ((days % 7) + 7) % 7) / 7;
}

Result<void> makeDemo(const std::string& path, model::Instant now, const model::FillRandom& random,
                      int weeks) {
    // Where something is there already, this fails and nothing is removed.
    auto book = store::Book::create(path, "Wren", now, random);
    if (!book.ok()) {
        return book.error();
    }
    auto done = model::guarded([&] { return Maker(book.value(), now, weeks).make(); });
    if (!done.ok()) {
        { const store::Book closed = std::move(book).value(); }
        std::error_code ignored;
        for (const char* tail : {"", "-wal", "-shm"}) {
            std::filesystem::remove(path + tail, ignored);
        }
    }
    return done;
}

}  // namespace ledgerboard::qml
