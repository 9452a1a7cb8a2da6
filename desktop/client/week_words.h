// In what words does the week's page say its figures, in the language of the pages?
//
// The figures are those of report::WeekPage and no others. What people typed, and the sentences
// that core makes of it (why a line moved, what is to be done), stand as they are.
#pragma once

#include <vector>

#include <QCoreApplication>
#include <QString>

#include "core/report/week_page.h"

#include "desktop/client/week_rows.h"

namespace ledgerboard::desk {

class WeekWords {
    Q_DECLARE_TR_FUNCTIONS(WeekWords)

  public:
    // Will cost, will finish, will earn, cash lowest; what cannot be told says what to enter.
    [[nodiscard]] static std::vector<HeadLine> head(const report::WeekPage& page);
    // "This week, to Friday 15 May 2026".
    [[nodiscard]] static QString title(const report::WeekPage& page);
    // "Week 6 of 8. Last review Fri 8 May."
    [[nodiscard]] static QString when(const report::WeekPage& page);
    // "Since Fri 8 May".
    [[nodiscard]] static QString since(const report::WeekPage& page);
    [[nodiscard]] static QString level(const report::Level& level);
    [[nodiscard]] static QString levelScale(const report::Level& level);
    [[nodiscard]] static QString progress(const report::Progress& progress);
    // What is asked and unknown, and contingency; each may be empty.
    [[nodiscard]] static QString asked(const report::WeekPage& page);
    [[nodiscard]] static QString contingency(const report::WeekPage& page);
    [[nodiscard]] static QString buyer(const report::WeekPage& page);
    // What the page leaves out, aloud; empty where nothing.
    [[nodiscard]] static QString leftOut(const report::WeekPage& page);
    // "over 410", "early 300", "under 120", "on budget".
    [[nodiscard]] static QString standing(const report::TradeMoney& trade);
    // "Order shower door", "Decide: keep the pantry wall?"
    // An answer to what an owner asks every week.
    [[nodiscard]] static QString answer(const report::WeekPage& page, const report::Answer& answer);
    [[nodiscard]] static QString next(const report::NextEvent& event);
};

}  // namespace ledgerboard::desk
