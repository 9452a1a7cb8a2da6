#include "mobile/walk_draft.h"

#include "core/intake/keep/keep_draft.h"
#include "core/intake/keep/keep_words.h"
#include "core/intake/notes/read_notes.h"

#include "mobile/job_book.h"
#include "mobile/said.h"

namespace ledgerboard::phone {

void WalkDraft::read(const QString& place, const QString& notes) {
    draft_ = {};
    kept_.clear();
    why_.clear();
    if (!notes.trimmed().isEmpty()) {
        // The room's name first, as somebody says it who walks in.
        intake::ReadOptions how;
        if (JobBook::here()->now() != nullptr) {
            auto words = intake::ownWordsOf(JobBook::here()->book());
            how.ownWords = words.ok() ? std::move(words).value() : how.ownWords;
        }
        auto draft = intake::readNotes((place + QStringLiteral(". ") + notes).toStdString(), how);
        if (draft.ok()) {
            draft_ = std::move(draft).value();
            why_ = draft_.items.empty()
                       ? tr("No work was read from that. Say what is done to what, such as "
                            "\"replace the sink\".")
                       : QString();
        } else {
            why_ = Said::trouble(draft.error());
        }
    }
    kept_.fill(true, static_cast<qsizetype>(draft_.items.size()));
    fill();
    emit whyChanged();
}

void WalkDraft::flip(int row) {
    if (row >= 0 && row < kept_.size()) {
        kept_[row] = !kept_.at(row);
        fill();
    }
}

void WalkDraft::fill() {
    QList<DraftRow> rows;
    for (const auto& item : draft_.items) {
        DraftRow row;
        row.id = QString::number(rows.size());
        const auto treatment = model::fromWord<model::Treatment>(item.treatment);
        row.words = Said::treatment(treatment.value_or(model::Treatment::Unset)) +
                    QLatin1Char(' ') + Said::text(item.object);
        if (item.quantity) {
            row.words += QStringLiteral(", ") + Said::text(item.quantity->toString()) +
                         QChar(0xa0) + Said::text(item.unit);
        }
        row.words += QStringLiteral(" (") + Said::text(item.space) + QLatin1Char(')');
        row.from = Said::text(item.source.sentence);
        row.kept = kept_.at(rows.size());
        rows << row;
    }
    show(rows);
}

bool WalkDraft::keep() {
    JobBook& book = *JobBook::here();
    if (book.now() == nullptr || !book.isOwner()) {
        return false;
    }
    intake::Draft wanted = draft_;
    wanted.items.clear();
    std::vector<std::optional<intake::DraftItem>> items(draft_.items.size());
    for (std::size_t k = 0; k < items.size(); ++k) {
        if (kept_.at(static_cast<qsizetype>(k))) {
            items[k] = draft_.items[k];
            wanted.items.push_back(draft_.items[k]);
        }
    }
    auto report = intake::keepDraft(book.book(), book.now()->rows.job.id, wanted, book.instant(),
                                    intake::correctionsOf(draft_.items, items));
    if (!report.ok()) {
        book.sayNotKept(Said::trouble(report.error()));
        return false;
    }
    QString said = tr("%n item(s) kept", nullptr, static_cast<int>(report.value().items));
    if (const auto learned = static_cast<int>(report.value().taught.size()); learned > 0) {
        said += QStringLiteral(", ") + tr("%n word(s) learned", nullptr, learned);
    }
    book.sayKept(said);
    return true;
}

}  // namespace ledgerboard::phone
