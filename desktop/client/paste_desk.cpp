#include "desktop/client/paste_desk.h"

#include <QClipboard>
#include <QGuiApplication>

#include "core/intake/files/headings.h"
#include "core/store/book.h"

#include "desktop/client/background.h"
#include "desktop/client/desk.h"
#include "desktop/client/said.h"
#include "desktop/client/scope_columns.h"

namespace ledgerboard::desk {

namespace {

constexpr const char* kPrices = "prices";
constexpr const char* kWhat = "pasted rows";
constexpr int kMostProblems = 1'000;

std::string firstLine(const std::string& text) {
    return text.substr(0, text.find('\n'));
}

QStringList cellsOf(const std::string& line) {
    return Said::text(line).remove(QLatin1Char('\r')).split(QLatin1Char('\t'));
}

// Whether the first row names columns: two of them at the least, among them what is done to what.
bool hasHeadings(const std::string& text, model::Kind kind) {
    int known = 0;
    for (const auto& cell : cellsOf(firstLine(text))) {
        const std::string key = intake::headingKey(cell.trimmed().toStdString());
        for (const auto& field : model::infoOf(kind).fields) {
            bool isIt = key == intake::headingKey(field.heading);
            for (const auto& other : intake::synonyms()) {
                if (other.field == field.code) {
                    for (const auto& word : Said::text(other.words).split(QLatin1Char(';'))) {
                        isIt = isIt || key == intake::headingKey(word.toStdString());
                    }
                }
            }
            if (isIt && !key.empty()) {
                ++known;
                break;
            }
        }
    }
    return known >= 2;
}

// The fields of the sheet's columns, from the left.
std::vector<model::FieldCode> sheetFields(model::Kind kind) {
    namespace f = model::field;
    if (kind == model::Kind::Price) {
        return {f::Price::object, f::Price::treatment, f::Price::unit, f::Price::material,
                f::Price::labour, f::Price::low,       f::Price::high, f::Price::waste,
                f::Price::source, f::Price::asOf};
    }
    std::vector<model::FieldCode> fields;
    for (const auto& column : scopeColumns()) {
        if (column.field != 0) {
            fields.push_back(column.field);
        }
    }
    return fields;
}

std::string sheetHeadings(qsizetype cells, model::Kind kind) {
    QStringList titles;
    for (const auto field : sheetFields(kind)) {
        if (titles.size() < cells) {
            titles << Said::text(model::fieldOf(field)->heading);
        }
    }
    return titles.join(QLatin1Char('\t')).toStdString() + "\n";
}

struct Tried {
    intake::BringTrial trial;
    QString refused;
};

}  // namespace

void PasteDesk::tryClipboard() {
    tryText(QGuiApplication::clipboard()->text());
}

void PasteDesk::tryText(const QString& text) {
    Desk& desk = *Desk::here();
    if (!desk.hasBook() || isWorking_) {
        return;
    }
    trial_ = {};
    refused_.clear();
    bytes_ = text.toStdString();
    isOpen_ = true;
    if (text.trimmed().isEmpty()) {
        refused_ = tr("There is nothing on the clipboard: copy rows in a spreadsheet first.");
        emit changed();
        return;
    }
    const auto kind = kind_ == QLatin1String(kPrices) ? model::Kind::Price : model::Kind::Item;
    madeHeadings_ = !hasHeadings(bytes_, kind);
    if (madeHeadings_) {
        bytes_.insert(0, sheetHeadings(cellsOf(firstLine(bytes_)).size(), kind));
    }
    isWorking_ = true;
    emit changed();
    inBackground(
        desk.pool(), this,
        [path = desk.bookPath(), around = desk.surroundings(), job = desk.job(),
         what = kind_.toStdString(), bytes = bytes_, at = desk.instant()] {
            auto book = store::Book::open(path, around.random);
            if (!book.ok()) {
                return Tried{{}, Said::trouble(book.error())};
            }
            auto trial = intake::tryBring(book.value(), job, what, kWhat, bytes, at);
            return trial.ok() ? Tried{std::move(trial).value(), {}}
                              : Tried{{}, Said::trouble(trial.error())};
        },
        [this](Tried tried) {
            isWorking_ = false;
            trial_ = std::move(tried.trial);
            refused_ = tried.refused;
            emit changed();
        });
}

void PasteDesk::bring() {
    Desk& desk = *Desk::here();
    if (!isOpen_ || isWorking_ || good() == 0) {
        return;
    }
    isWorking_ = true;
    emit changed();

    struct Brought {
        std::size_t rows = 0;
        QString refused;
    };

    inBackground(
        desk.pool(), this,
        [path = desk.bookPath(), around = desk.surroundings(), job = desk.job(),
         what = kind_.toStdString(), bytes = bytes_, leaveOut = trial_.wrongLines,
         at = desk.instant()] {
            auto book = store::Book::open(path, around.random);
            if (!book.ok()) {
                return Brought{0, Said::trouble(book.error())};
            }
            intake::BringOptions options;
            options.leaveOut = leaveOut;
            auto report = intake::bring(book.value(), job, what, kWhat, bytes, options, at);
            return report.ok() ? Brought{report.value().added + report.value().changed, {}}
                               : Brought{0, Said::trouble(report.error())};
        },
        [this](Brought brought) {
            isWorking_ = false;
            if (!brought.refused.isEmpty()) {
                refused_ = brought.refused;
                emit changed();
                return;
            }
            isOpen_ = false;
            emit changed();
            Desk::here()->sayKept(
                tr("%n row(s) brought in", nullptr, static_cast<int>(brought.rows)),
                QStringLiteral("bring scope pasted rows"));
        });
}

void PasteDesk::copyWrong() {
    QStringList lines{Said::text(firstLine(bytes_))};
    const auto all = Said::text(bytes_).split(QLatin1Char('\n'));
    for (const auto line : trial_.wrongLines) {
        QStringList why;
        for (const auto& problem : trial_.problems) {
            if (problem.line == line) {
                why << Said::told(problem.message);
            }
        }
        lines << all.value(static_cast<qsizetype>(line) - 1) + QLatin1Char('\t') +
                     why.join(QStringLiteral("; "));
    }
    QGuiApplication::clipboard()->setText(lines.join(QLatin1Char('\n')));
    Desk::here()->sayPlainly(tr("%n row(s) copied", nullptr, wrong()));
}

void PasteDesk::close() {
    isOpen_ = false;
    emit changed();
}

QString PasteDesk::title() const {
    if (isWorking_) {
        return tr("Looking at the rows\u2026");
    }
    if (!refused_.isEmpty()) {
        return tr("These rows cannot be read");
    }
    return tr("%n row(s) from a spreadsheet", nullptr, static_cast<int>(trial_.rows));
}

QString PasteDesk::goodText() const {
    if (isWorking_ || !refused_.isEmpty()) {
        return {};
    }
    QStringList parts;
    if (trial_.rest.added > 0) {
        parts << tr("%n new item(s)", nullptr, static_cast<int>(trial_.rest.added));
    }
    if (trial_.rest.changed > 0) {
        parts << tr("%n change(s) to items that are there", nullptr,
                    static_cast<int>(trial_.rest.changed));
    }
    if (trial_.rest.unchanged > 0) {
        parts << tr("%n already there as they are", nullptr,
                    static_cast<int>(trial_.rest.unchanged));
    }
    QString text = parts.join(QStringLiteral(", "));
    if (!trial_.rest.newSpaces.empty()) {
        QStringList names;
        for (const auto& name : trial_.rest.newSpaces) {
            names << Said::text(name);
        }
        text += tr("; new spaces: %1").arg(names.join(QStringLiteral(", ")));
    }
    return text;
}

QString PasteDesk::headingsText() const {
    return madeHeadings_ && refused_.isEmpty() && !isWorking_
               ? tr("No row of headings was copied, so the columns are taken as those of the "
                    "sheet: "
                    "%1.")
                     .arg(cellsOf(firstLine(bytes_)).join(QStringLiteral(", ")))
               : QString();
}

int PasteDesk::good() const {
    return static_cast<int>(trial_.rest.added + trial_.rest.changed);
}

QVariantList PasteDesk::problems() const {
    QVariantList list;
    const auto lines = Said::text(bytes_).split(QLatin1Char('\n'));
    for (const auto& problem : trial_.problems) {
        if (list.size() == kMostProblems) {
            break;
        }
        PasteProblem line;
        line.row = tr("row %1").arg(madeHeadings_ ? problem.line - 1 : problem.line);
        line.column = Said::text(problem.column);
        line.what = Said::told(problem.message);
        line.content = lines.value(static_cast<qsizetype>(problem.line) - 1)
                           .remove(QLatin1Char('\r'))
                           .replace(QLatin1Char('\t'), QStringLiteral("  "));
        list << QVariant::fromValue(line);
    }
    return list;
}

}  // namespace ledgerboard::desk
