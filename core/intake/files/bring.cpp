#include "core/intake/files/bring.h"

#include <algorithm>
#include <filesystem>
#include <optional>
#include <unordered_map>

#include "core/intake/files/after_column.h"
#include "core/intake/files/csv.h"
#include "core/intake/files/find.h"
#include "core/intake/files/headings.h"
#include "core/intake/files/marks_in_spite.h"
#include "core/intake/files/nearest.h"
#include "core/intake/files/pairing.h"
#include "core/intake/files/problems.h"
#include "core/intake/files/row_check.h"
#include "core/intake/files/row_reader.h"
#include "core/intake/files/row_writer.h"
#include "core/intake/files/space_maker.h"
#include "core/model/overflow.h"
#include "core/model/saying.h"
#include "core/store/action.h"

namespace ledgerboard::intake {

namespace {

namespace f = model::field;
using model::FieldCode;
using model::Kind;
using model::RawId;
using model::Value;

model::Result<const BringKind*> kindFor(std::string_view word) {
    if (const auto* kind = bringKindNamed(word)) {
        return kind;
    }
    std::vector<std::string> words;
    std::string all;
    for (const auto& one : bringKinds()) {
        words.emplace_back(one.word);
        all += (all.empty() ? "" : ", ") + words.back();
    }
    words.emplace_back("photos");  // brought by other means, and meant as often
    const std::string nearest = nearestName(word, words);
    return model::wrongUse("\"" + std::string(word) + "\" is nothing that is brought from CSV" +
                           (nearest.empty() ? "" : "; did you mean " + nearest + "?") +
                           " (it can be: " + all + "; or photos, from a folder)");
}

// One letter off, which is more likely a slip than another name; "Bedroom 2" is no slip of
// "Bedroom 1".
bool isSlipOf(std::string_view name, std::string_view other) {
    const auto digits = [](std::string_view text) {
        std::string out;
        for (const char c : text) {
            if (c >= '0' && c <= '9') {
                out += c;
            }
        }
        return out;
    };
    return digits(name) == digits(other) &&
           editDistance(model::folded(name), model::folded(other)) == 1;
}

// One file on its way into the book.
class Bringing {
  public:
    Bringing(store::Book& book, model::Id<Kind::Job> job, const BringKind& kind,
             const std::string& file, const BringOptions& options, model::Instant now)
        : book_(book),
          job_(job),
          kind_(kind),
          options_(options),
          now_(now),
          problems_(file),
          action_("bring " + std::string(kind.word) + " " + file, book.position()) {
        report_.file = file;
        report_.kind = kind.kind;
    }

    model::Result<BringReport> run(std::string_view bytes) {
        for (auto step : {&Bringing::readColumns, &Bringing::readBook}) {
            if (auto done = (this->*step)(bytes); !done.ok()) {
                return done.error();
            }
        }
        makeSpaces();
        knowBankIds();
        readRowsOfFile();
        const HeadingOf headingOf = [this](FieldCode code) { return headingFor(code); };
        auto paired =
            pairRows({kind_, rows_, columns_, existing_, book_, *finder_, headingOf}, problems_);
        if (!paired.ok()) {
            return paired.error();
        }
        pairings_ = std::move(paired).value();
        checkRecords(headingOf);
        if (auto done = readAfter(); !done.ok()) {
            return done.error();
        }
        if (!problems_.none()) {
            return problems_.asError();
        }
        for (std::size_t at = 0; at < rows_.size(); ++at) {
            write(at);
        }
        return finish();
    }

    [[nodiscard]] const Problems& problems() const { return problems_; }

    [[nodiscard]] const CsvTable& table() const { return table_; }

  private:
    model::Result<void> readColumns(std::string_view bytes) {
        auto matches = parseMatches(options_.match);
        if (!matches.ok()) {
            return matches.error();
        }
        auto table = readCsv(bytes, problems_.file());
        if (!table.ok()) {
            return table.error();
        }
        table_ = std::move(table).value();
        std::erase_if(table_.rows, [this](const CsvRow& row) {
            return std::binary_search(options_.leaveOut.begin(), options_.leaveOut.end(), row.line);
        });
        columns_ = matchHeadings(kind_, table_, matches.value(), problems_);
        return problems_.none() ? model::Result<void>{} : problems_.asError();
    }

    model::Result<void> readBook(std::string_view /*bytes*/) {
        auto rows = rowsForFinding(book_, job_);
        if (!rows.ok()) {
            return rows.error();
        }
        bookRows_ = std::move(rows).value();
        finder_.emplace(bookRows_);
        writer_.emplace(*finder_, existing_, job_, action_, report_);
        const bool ofJob = model::jobFieldOf(kind_.kind) != nullptr;
        auto existing = book_.records(kind_.kind, ofJob ? job_ : model::Id<Kind::Job>(), true);
        if (!existing.ok()) {
            return existing.error();
        }
        existing_ = std::move(existing).value();
        return {};
    }

    // What the file calls a field; the catalog's heading where it has no such column.
    [[nodiscard]] std::string headingFor(FieldCode code) const {
        for (const auto& column : columns_) {
            if (column.field != nullptr && column.field->code == code) {
                return column.heading;
            }
        }
        return std::string(model::fieldOf(code)->heading);
    }

    [[nodiscard]] const Column* columnFor(FieldCode code) const {
        for (const auto& column : columns_) {
            if (column.field != nullptr && column.field->code == code) {
                return &column;
            }
        }
        return nullptr;
    }

    // Spaces that the scope names and the job does not have yet.
    void makeSpaces() {
        const Column* column = columnFor(f::Item::space);
        if (kind_.kind != Kind::Item || column == nullptr) {
            return;
        }
        std::vector<std::string> known;
        for (const auto& space : bookRows_.spaces) {
            known.push_back(space.name);
        }
        SpaceMaker maker(bookRows_.spaces);
        for (const auto& row : table_.rows) {
            const std::string name = cleanText(*column->field, row.cells[column->at]);
            if (name.empty() || finder_->hasName(Kind::Space, name) ||
                finder_->find(Kind::Space, name).ok()) {
                continue;
            }
            const auto space = maker.make(book_.newId<Kind::Space>(now_), job_, name);
            for (const auto& other : known) {
                if (isSlipOf(name, other)) {
                    report_.remarks.push_back(
                        "the new space \"" + name + "\" (line " + std::to_string(row.line) +
                        ") is written much like \"" + other + "\": is it another one?");
                }
            }
            finder_->add(space);
            action_.add(space);
            known.push_back(name);
            report_.newSpaces.push_back(name);
        }
    }

    // A payment may name an invoice of the same file by its bank id.
    void knowBankIds() {
        const Column* column = columnFor(f::Spend::bankId);
        if (kind_.kind != Kind::Spend) {
            return;
        }
        ids_.assign(table_.rows.size(), RawId());
        std::unordered_map<std::string, RawId> dropped;
        for (const auto& record : existing_) {
            if (const auto* text = std::get_if<std::string>(&record.at(f::Spend::bankId))) {
                dropped.emplace(*text, record.id);
            }
        }
        for (std::size_t at = 0; column != nullptr && at < table_.rows.size(); ++at) {
            model::Spend spend;
            spend.bankId = cleanText(*column->field, table_.rows[at].cells[column->at]);
            if (spend.bankId.empty() || finder_->hasName(Kind::Spend, spend.bankId)) {
                continue;
            }
            const auto known = dropped.find(spend.bankId);
            ids_[at] = known != dropped.end() ? known->second : book_.newId(now_);
            spend.id = model::Id<Kind::Spend>(ids_[at]);
            finder_->add(spend);
        }
    }

    void readRowsOfFile() {
        std::optional<model::Date> begin = bookRows_.job.beginOn;
        rows_ = readRows(kind_, table_, columns_, *finder_, datesAround(begin, now_.utcDate()),
                         problems_);
        ids_.resize(rows_.size());
        for (auto& id : ids_) {
            id = id.isNil() ? book_.newId(now_) : id;
        }
    }

    void checkRecords(const HeadingOf& headingOf) {
        RowSurroundings around{*finder_, {}, {}};
        for (const auto& item : bookRows_.items) {
            around.items.emplace(item.id.raw(), &item);
        }
        for (const auto& spend : bookRows_.spends) {
            around.spendKinds.emplace(spend.id.raw(), std::string(model::wordOf(spend.type)));
        }
        if (kind_.kind == Kind::Spend) {
            for (std::size_t at = 0; at < rows_.size(); ++at) {
                const Value type = valueIn(rows_[at].values, f::Spend::type);
                if (const auto* word = std::get_if<std::string>(&type)) {
                    around.spendKinds.emplace(ids_[at], *word);
                }
            }
        }
        for (std::size_t at = 0; at < rows_.size(); ++at) {
            if (pairings_[at].as == PairedAs::Same) {
                continue;
            }
            BroughtRow record = rows_[at];
            if (pairings_[at].as == PairedAs::Different) {
                record.values = recordWith(*pairings_[at].record, pairings_[at].changes);
            }
            checkRecord(kind_.kind, record, around, headingOf, problems_);
        }
    }

    // Links from the column After, once every item that the file names is known.
    model::Result<void> readAfter() {
        const auto column = std::find_if(columns_.begin(), columns_.end(),
                                         [](const Column& one) { return one.isAfter; });
        after_.resize(rows_.size());
        if (column == columns_.end() || !problems_.none()) {
            return {};
        }
        std::vector<AfterCell> cells;
        std::vector<std::size_t> rowOf;
        for (std::size_t at = 0; at < rows_.size(); ++at) {
            const Pairing& pairing = pairings_[at];
            const RawId id = pairing.record ? existing_[*pairing.record].id : ids_[at];
            if (pairing.as == PairedAs::New) {
                finder_->add(itemNamed(id, rows_[at].values));
            }
            const bool isGone = pairing.record && existing_[*pairing.record].gone;
            if (const auto& text = table_.rows[at].cells[column->at]; !text.empty() && !isGone) {
                cells.push_back({rows_[at].line, id, text});
                rowOf.push_back(at);
            }
        }
        auto details =
            bringAfter(cells, column->heading, *finder_, book_, job_, now_, action_, problems_);
        if (!details.ok()) {
            return details.error();
        }
        for (std::size_t k = 0; k < rowOf.size(); ++k) {
            after_[rowOf[k]] = details.value()[k];
        }
        return {};
    }

    // As far as it takes to find it by name.
    static model::Item itemNamed(RawId id, const FieldValues& values) {
        model::Item item;
        item.id = model::Id<Kind::Item>(id);
        const Value space = valueIn(values, f::Item::space);
        const Value object = valueIn(values, f::Item::object);
        const Value treatment = valueIn(values, f::Item::treatment);
        if (const auto* raw = std::get_if<RawId>(&space)) {
            item.space = model::Id<Kind::Space>(*raw);
        }
        if (const auto* text = std::get_if<std::string>(&object)) {
            item.object = *text;
        }
        if (const auto* word = std::get_if<std::string>(&treatment)) {
            item.treatment =
                model::fromWord<model::Treatment>(*word).value_or(model::Treatment::Unset);
        }
        return item;
    }

    // The record as it will stand.
    [[nodiscard]] FieldValues recordWith(std::size_t existing, const FieldValues& changes) const {
        FieldValues record = changes;
        const auto fields = model::infoOf(kind_.kind).fields;
        for (std::size_t k = 0; k < fields.size(); ++k) {
            const Value& value = existing_[existing].values[k];
            if (!model::isEmpty(value)) {
                record.emplace(fields[k].code, value);
            }
        }
        return record;
    }

    [[nodiscard]] std::string printed(FieldCode code, const Value& value) const {
        return writer_->printed(code, value);
    }

    // What a row is called in the report.
    [[nodiscard]] std::string nameOfRow(const FieldValues& values) const {
        if (kind_.kind == Kind::Item) {
            return printed(f::Item::space, valueIn(values, f::Item::space)) + "/" +
                   printed(f::Item::treatment, valueIn(values, f::Item::treatment)) + " " +
                   printed(f::Item::object, valueIn(values, f::Item::object));
        }
        std::vector<FieldCode> codes = kind_.key;
        if (kind_.kind == Kind::Spend) {
            codes = {f::Spend::spentOn, f::Spend::type, f::Spend::amount, f::Spend::payee};
        } else if (kind_.kind == Kind::Mark) {
            codes = {f::Mark::item, f::Mark::markedOn};
        }
        std::string out;
        for (const auto code : codes) {
            const std::string text = printed(code, valueIn(values, code));
            out += text.empty() ? "" : (out.empty() ? "" : ", ") + text;
        }
        return out;
    }

    void write(std::size_t at) {
        const auto& row = rows_[at];
        BringLine& line = writer_->write(row, nameOfRow(row.values), pairings_[at], ids_[at]);
        if (pairings_[at].as == PairedAs::New && kind_.kind == Kind::Mark) {
            writeMark(ids_[at], row.values);
        }
        if (after_[at].empty()) {
            return;
        }
        if (line.outcome == BringOutcome::Unchanged) {
            line.outcome = BringOutcome::Changed;
            --report_.unchanged;
            ++report_.changed;
        }
        line.detail += (line.detail.empty() ? "" : "; ") + after_[at];
    }

    // Who says it, and whether a caution on its item is open.
    void writeMark(RawId id, const FieldValues& values) {
        action_.set(id, f::Mark::by, model::valueOf(book_.meAsKept()));
        action_.set(id, f::Mark::onDevice, model::valueOf(book_.thisDeviceAsKept()));
        if (!inSpite_) {
            inSpite_.emplace(bookRows_, now_.utcDate());
        }
        if (inSpite_->take(values)) {
            action_.set(id, f::Mark::inSpiteOfCaution, Value{std::int64_t{1}});
        }
    }

    model::Result<BringReport> finish() {
        if (const std::string remark = inSpite_ ? inSpite_->remark() : ""; !remark.empty()) {
            report_.remarks.push_back(remark);
        }
        if (rows_.empty()) {
            report_.remarks.push_back(report_.file + " has headings and no rows");
        }
        if (!options_.tryOnly && !action_.empty()) {
            if (auto done = book_.commit(action_, now_); !done.ok()) {
                return done.error();
            }
            report_.written = true;
        }
        return std::move(report_);
    }

    store::Book& book_;
    model::Id<Kind::Job> job_;
    const BringKind& kind_;
    const BringOptions& options_;
    model::Instant now_;
    Problems problems_;
    store::Action action_;
    BringReport report_;
    CsvTable table_;
    std::vector<Column> columns_;
    model::JobRows bookRows_;
    std::optional<Finder> finder_;
    std::optional<RowWriter> writer_;
    std::vector<store::Record> existing_;
    std::vector<BroughtRow> rows_;
    std::vector<RawId> ids_;  // of each row, used where it turns out new
    std::vector<Pairing> pairings_;
    std::vector<std::string> after_;       // of each row: what its column After brings, in words
    std::optional<MarksInSpite> inSpite_;  // of marks that are new
};

}  // namespace

model::Result<BringReport> bring(store::Book& book, model::Id<Kind::Job> job,
                                 std::string_view kindWord, const std::string& file,
                                 std::string_view bytes, const BringOptions& options,
                                 model::Instant now) {
    auto kind = kindFor(kindWord);
    if (!kind.ok()) {
        return kind.error();
    }
    if (job.isNil() && model::jobFieldOf(kind.value()->kind) != nullptr) {
        return model::wrongUse(
            model::saying("%1 belongs to a job: say which with --job NAME", kindWord));
    }
    return model::guarded([&]() -> model::Result<BringReport> {
        return Bringing(book, job, *kind.value(), file, options, now).run(bytes);
    });
}

model::Result<BringTrial> tryBring(store::Book& book, model::Id<Kind::Job> job,
                                   std::string_view kindWord, const std::string& file,
                                   std::string_view bytes, model::Instant now) {
    auto kind = kindFor(kindWord);
    if (!kind.ok()) {
        return kind.error();
    }
    return model::guarded([&]() -> model::Result<BringTrial> {
        BringTrial trial;
        BringOptions options;
        options.tryOnly = true;
        // Each turn leaves out a row more at the least, so there is an end.
        while (true) {
            Bringing bringing(book, job, *kind.value(), file, options, now);
            auto report = bringing.run(bytes);
            trial.rows = std::max(trial.rows, bringing.table().rows.size());
            if (report.ok()) {
                trial.rest = std::move(report).value();
                trial.wrongLines = options.leaveOut;
                std::stable_sort(
                    trial.problems.begin(), trial.problems.end(),
                    [](const Problem& a, const Problem& b) { return a.line < b.line; });
                return trial;
            }
            const auto& found = bringing.problems().list();
            const auto head = bringing.table().headings.line;
            if (found.empty() ||
                std::any_of(found.begin(), found.end(),
                            [head](const Problem& one) { return one.line <= head; })) {
                return report.error();
            }
            for (const auto& problem : found) {
                trial.problems.push_back(problem);
                options.leaveOut.push_back(problem.line);
            }
            std::sort(options.leaveOut.begin(), options.leaveOut.end());
            options.leaveOut.erase(std::unique(options.leaveOut.begin(), options.leaveOut.end()),
                                   options.leaveOut.end());
        }
    });
}

model::Result<BringReport> bringFile(store::Book& book, model::Id<Kind::Job> job,
                                     std::string_view kind, const std::string& path,
                                     const BringOptions& options, model::Instant now) {
    auto bytes = readWholeFile(path);
    if (!bytes.ok()) {
        return bytes.error();
    }
    return bring(book, job, kind, std::filesystem::path(path).filename().string(), bytes.value(),
                 options, now);
}

}  // namespace ledgerboard::intake
