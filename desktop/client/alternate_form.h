// An alternate or one of its options, field by field; or a new one. What is removed, and why it may
// not be.
//
// A question is asked in words, an option has a name, and its values do not contradict each other;
// what does is refused here, so that no page has to stop for it. Threads: the UI's.
#pragma once

#include "desktop/client/money/record_form.h"

namespace ledgerboard::desk {

class AlternateForm : public RecordForm {
    Q_OBJECT
    QML_ELEMENT

  public:
    using RecordForm::RecordForm;

    // A new question; once it is kept, its first option is asked for.
    Q_INVOKABLE void beginAlternate();
    // A new option of an alternate, by its id; `question` stands over it.
    Q_INVOKABLE void beginOption(const QString& alternate, const QString& question);

    // The question of the alternate that was kept last, for its options.
    [[nodiscard]] Q_INVOKABLE QString question() const { return question_; }

    // Whether what was kept is an alternate, so that its options follow.
    [[nodiscard]] Q_INVOKABLE bool isAlternate() const { return kind() == model::Kind::Alternate; }

    // Removes an option, by its id; it is carried no longer. Refused (Desk says why) where items of
    // the scope belong to it.
    Q_INVOKABLE bool dropOption(const QString& id);
    // Removes an alternate with all of its options; refused as above.
    Q_INVOKABLE bool dropAlternate(const QString& id);

    bool put(const QString& text) override;
    [[nodiscard]] QString title() const override;

  protected:
    model::Result<void> complete(store::Action& action, const model::RawId& id,
                                 const Draft& draft) override;

  private:
    [[nodiscard]] bool refuseWithItems(const model::Option& option) const;

    QString question_;
};

}  // namespace ledgerboard::desk
