#include "mobile/note_list.h"

#include "mobile/job_book.h"
#include "mobile/said.h"

namespace ledgerboard::phone {

void NoteList::fill() {
    QList<NoteRow> rows;
    if (const JobNow* now = JobBook::here()->now()) {
        // The latest first.
        for (auto note = now->rows.notes.rbegin(); note != now->rows.notes.rend(); ++note) {
            const QString space =
                note->space.isNil() ? QString() : Said::text(note->space.raw().toString());
            if (space != spaceId() || (note->text.empty() && note->sound.empty())) {
                continue;
            }
            NoteRow row;
            row.id = Said::text(note->id.raw().toString());
            row.text = Said::text(note->text);
            row.spoken = note->text.empty();
            if (const Found found = findItem(*now, note->item); found.item != nullptr) {
                row.about = Said::text(now->rows.items[found.item->row].object);
            }
            rows.append(row);
        }
    }
    show(rows);
}

bool NoteList::keepNote(const QString& text) {
    JobBook& book = *JobBook::here();
    const std::string words = text.trimmed().toStdString();
    if (words.empty() || book.now() == nullptr) {
        return false;
    }
    model::Note note;
    note.id = book.book().newId<model::Kind::Note>(book.instant());
    note.job = book.now()->rows.job.id;
    if (const auto raw = model::RawId::parse(spaceId().toStdString()); raw.ok()) {
        note.space = model::Id<model::Kind::Space>(raw.value());
    }
    note.text = words;
    store::Action action("note");
    action.add(note);
    return book.keep(action, tr("Note kept"));
}

bool NoteList::typeOut(const QString& noteId, const QString& text) {
    JobBook& book = *JobBook::here();
    const std::string words = text.trimmed().toStdString();
    const auto note = model::RawId::parse(noteId.toStdString());
    if (words.empty() || !note.ok() || book.now() == nullptr) {
        return false;
    }
    store::Action action("note typed out");
    action.set(note.value(), model::field::Note::text, model::Value{words});
    action.set(note.value(), model::field::Note::typedOn,
               model::Value{std::int64_t{book.now()->today.days()}});
    return book.keep(action, tr("Note kept"));
}

}  // namespace ledgerboard::phone
