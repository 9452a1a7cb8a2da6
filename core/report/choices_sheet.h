// What do the parts of the page of open alternates print with? Inside core/report.
#pragma once

#include <algorithm>
#include <string>
#include <vector>

#include "core/report/choices_text.h"
#include "core/report/money_text.h"
#include "core/report/table.h"

namespace ledgerboard::report {

inline constexpr std::size_t kLongestName = 60;

class ChoicesSheet {
  public:
    explicit ChoicesSheet(const ChoicesView& view)
        : view_(view), choices_(view.choices), width_(std::min<std::size_t>(view.width, 100)) {}

    [[nodiscard]] std::string take() {
        std::string text = std::move(text_);
        text_.clear();
        return text;
    }

  protected:
    void line(const std::string& text) { text_ += text + "\n"; }

    void blank() { text_ += "\n"; }

    void heading(const std::string& text) {
        blank();
        for (const std::string& part : wrapped(shownText(text, view_.script), width_)) {
            line(view_.bold ? "\033[1m" + part + "\033[0m" : part);
        }
    }

    void paragraph(const std::string& text, const std::string& lead = "") {
        std::string start = lead;
        for (const auto& part : wrapped(shownText(text, view_.script), width_ - columnsOf(lead))) {
            line(start + part);
            start = std::string(columnsOf(lead), ' ');
        }
    }

    // Commands are never wrapped: they are there to be copied.
    void command(const std::vector<std::string>& arguments) {
        line("  " + shownText(commandText(arguments), view_.script));
    }

    void table(const Table& rows) { text_ += printTable(rows, {width_, view_.script, view_.bold}); }

    [[nodiscard]] std::string whole(model::Money money) const {
        return wholeText(money, view_.script);
    }

    [[nodiscard]] std::string date(model::Date day) const { return dateText(day, view_.today); }

    [[nodiscard]] const model::Option& rowOf(const compute::OptionChoice& option) const {
        return view_.rows.options[option.option];
    }

    [[nodiscard]] std::string nameOf(const compute::OptionChoice& option) const {
        return clipped(shownText(optionLabel(rowOf(option)), view_.script), kLongestName,
                       view_.script);
    }

    [[nodiscard]] std::string quoted(const compute::OptionChoice& option) const {
        return "\"" + nameOf(option) + "\"";
    }

    // "+7 days", "−2 days", "0 days".
    [[nodiscard]] std::string daysText(int days) const {
        const std::string sign = days < 0   ? shownText("\xE2\x88\x92", view_.script)
                                 : days > 0 ? "+"
                                            : "";
        return sign + countText(std::abs(days), "day", "days");
    }

    const ChoicesView& view_;
    const compute::Choices& choices_;
    std::size_t width_;

  private:
    std::string text_;
};

// A table for each open alternate, and what there is to say of its options and of waiting.
[[nodiscard]] std::string choicesAlternatesText(const ChoicesView& view);

}  // namespace ledgerboard::report
