#include "core/intake/files/headings.h"

#include <algorithm>
#include <array>
#include <unordered_map>

#include "core/intake/files/nearest.h"
#include "core/model/decimal.h"
#include "core/model/saying.h"

namespace ledgerboard::intake {

namespace {

using model::Field;

// Calls take(word) for each word of a list with semicolons between.
template <class Take>
void eachWord(std::string_view words, Take&& take) {
    while (!words.empty()) {
        const auto end = words.find(';');
        take(words.substr(0, end));
        words = end == std::string_view::npos ? std::string_view{} : words.substr(end + 1);
    }
}

// "Amount ($)" without what stands in brackets at its end.
std::string_view withoutUnit(std::string_view heading) {
    heading = model::trimmed(heading);
    for (const auto& [open, close] : {std::pair{'(', ')'}, std::pair{'[', ']'}}) {
        const auto at = heading.rfind(open);
        if (!heading.empty() && heading.back() == close && at != std::string_view::npos && at > 0) {
            return heading.substr(0, at);
        }
    }
    return heading;
}

// What a heading may stand for.
struct Meaning {
    const Field* field = nullptr;
    bool isAfter = false;
};

class Meanings {
  public:
    explicit Meanings(const BringKind& kind) : kind_(kind), fields_(columnsOf(kind)) {
        for (const auto* field : fields_) {
            known_.emplace(headingKey(field->heading), Meaning{field, false});
        }
        for (const auto* field : fields_) {
            known_.emplace(headingKey(field->name), Meaning{field, false});
        }
        if (kind.hasAfter) {
            for (const auto* word :
                 {"after", "comesafter", "waitsfor", "follows", "predecessors"}) {
                known_.emplace(word, Meaning{nullptr, true});
            }
        }
        if (kind.spaceBesideItem) {
            for (const auto* word : {"space", "room", "area", "location"}) {
                known_.emplace(word, Meaning{nullptr, false});
            }
        }
        for (const auto& one : synonyms()) {
            if (model::kindOf(one.field) == kind.kind) {
                eachWord(one.words, [&](std::string_view word) {
                    known_.emplace(headingKey(word), Meaning{model::fieldOf(one.field), false});
                });
            }
        }
    }

    [[nodiscard]] std::optional<Meaning> of(std::string_view heading) const {
        std::string bare = headingKey(heading);  // "Waste %" where "waste" is known
        std::erase(bare, '%');
        for (const auto& key : {headingKey(heading), headingKey(withoutUnit(heading)), bare}) {
            if (const auto found = known_.find(key); found != known_.end()) {
                return found->second;
            }
        }
        return std::nullopt;
    }

    [[nodiscard]] std::vector<std::string> headings() const {
        std::vector<std::string> out;
        for (const auto* field : fields_) {
            out.emplace_back(field->heading);
        }
        if (kind_.hasAfter) {
            out.emplace_back("After");
        }
        return out;
    }

    // "Date, Kind, Amount ...": what a person may write.
    [[nodiscard]] std::string headingsSaid() const {
        std::string out;
        for (const auto& heading : headings()) {
            out += (out.empty() ? "" : ", ") + heading;
        }
        return out;
    }

    [[nodiscard]] std::string unknown(std::string_view heading) const {
        const std::string key = headingKey(withoutUnit(heading));
        for (const auto& advice : advices()) {
            bool meant = false;
            if (advice.kind == kind_.kind) {
                eachWord(advice.words, [&](std::string_view word) {
                    meant =
                        meant || headingKey(word) == key || headingKey(word) == headingKey(heading);
                });
            }
            if (meant) {
                return std::string(advice.says) + "; or leave it out with --match " +
                       inQuotes(std::string(heading) + "=-");
            }
        }
        const std::string nearest = nearestName(heading, headings());
        std::string out = "is no heading that " + std::string(kind_.word) + " has";
        if (!nearest.empty()) {
            out += "; did you mean " + inQuotes(nearest) + "? Then say --match " +
                   inQuotes(std::string(heading) + "=" + nearest) + "; to";
        } else {
            out += " (" + headingsSaid() + "); to";
        }
        return out + " leave it out, say --match " + inQuotes(std::string(heading) + "=-");
    }

  private:
    const BringKind& kind_;
    std::vector<const Field*> fields_;
    std::unordered_map<std::string, Meaning> known_;
};

bool hasCells(const CsvTable& table, std::size_t at) {
    return std::any_of(table.rows.begin(), table.rows.end(),
                       [&](const CsvRow& row) { return !row.cells[at].empty(); });
}

// One use of matchHeadings.
class Matching {
  public:
    Matching(const BringKind& kind, const CsvTable& table, const std::vector<HeadingMatch>& matches,
             Problems& problems)
        : kind_(kind), table_(table), matches_(matches), problems_(problems), meanings_(kind) {}

    std::vector<Column> run() {
        checkMatches();
        for (std::size_t at = 0; at < table_.headings.cells.size(); ++at) {
            take(at);
        }
        if (columns_.empty() && unknown_ == table_.headings.cells.size()) {
            problems_.add(
                table_.headings.line, "",
                model::saying(
                    "none of its headings is known: the first line must name the columns (%1)",
                    meanings_.headingsSaid())
                    .text());
            return {};
        }
        for (const auto& [at, message] : unknowns_) {
            problem(at, message);
        }
        checkNeeded();
        return std::move(columns_);
    }

  private:
    void problem(std::size_t at, const std::string& message) {
        const auto& heading = table_.headings.cells[at];
        problems_.add(table_.headings.line,
                      heading.empty() ? std::to_string(at + 1) : heading.substr(0, 60), message);
    }

    void checkMatches() {
        for (const auto& match : matches_) {
            const bool there =
                std::any_of(table_.headings.cells.begin(), table_.headings.cells.end(),
                            [&](const std::string& cell) {
                                return headingKey(cell) == headingKey(match.theirs);
                            });
            if (!there) {
                const std::string nearest = nearestName(match.theirs, table_.headings.cells);
                problems_.add(
                    table_.headings.line, "",
                    "--match names the heading " + inQuotes(match.theirs) +
                        ", which the file does not have" +
                        (nearest.empty() ? "" : "; did you mean " + inQuotes(nearest) + "?"));
            }
            if (match.ours != "-" && !meanings_.of(match.ours)) {
                const std::string nearest = nearestName(match.ours, meanings_.headings());
                problems_.add(table_.headings.line, "",
                              "--match names the field " + inQuotes(match.ours) + ", which " +
                                  std::string(kind_.word) + " does not have: " +
                                  (nearest.empty() ? "it has " + meanings_.headingsSaid()
                                                   : "did you mean " + inQuotes(nearest) + "?"));
            }
        }
    }

    void take(std::size_t at) {
        const std::string& heading = table_.headings.cells[at];
        if (heading.empty()) {
            ++unknown_;
            if (hasCells(table_, at)) {
                unknowns_.emplace_back(at, "has cells but no heading: write one in line " +
                                               std::to_string(table_.headings.line));
            }
            return;
        }
        std::string_view said = heading;
        for (const auto& match : matches_) {
            if (headingKey(match.theirs) == headingKey(heading)) {
                said = match.ours;
            }
        }
        if (said == "-") {
            return;
        }
        const auto meaning = meanings_.of(said);
        if (!meaning) {
            ++unknown_;
            if (said == heading) {
                unknowns_.emplace_back(at, meanings_.unknown(heading));
            }
            return;
        }
        for (const auto& earlier : columns_) {
            if (earlier.field == meaning->field) {
                problem(at, "means the same as column " + inQuotes(earlier.heading) +
                                ": take one out, or leave it out with --match " +
                                inQuotes(heading + "=-"));
                return;
            }
        }
        columns_.push_back({at, heading, meaning->field, meaning->isAfter});
    }

    void checkNeeded() {
        auto needed = kind_.needed;
        needed.insert(needed.end(), kind_.neededColumns.begin(), kind_.neededColumns.end());
        for (const auto code : needed) {
            const bool there = std::any_of(
                columns_.begin(), columns_.end(),
                [&](const Column& column) { return column.field == model::fieldOf(code); });
            if (!there) {
                const std::string heading(model::fieldOf(code)->heading);
                problems_.add(table_.headings.line, heading,
                              model::saying("is missing: %1 needs it; add it, or say which column "
                                            "it is with --match theirs=%2",
                                            kind_.word, inQuotes(heading))
                                  .text());
            }
        }
    }

    const BringKind& kind_;
    const CsvTable& table_;
    const std::vector<HeadingMatch>& matches_;
    Problems& problems_;
    Meanings meanings_;
    std::vector<Column> columns_;
    std::size_t unknown_ = 0;
    std::vector<std::pair<std::size_t, std::string>> unknowns_;
};

}  // namespace

std::string headingKey(std::string_view heading) {
    std::string out;
    for (const char c : heading) {
        const bool letter = (c >= 'a' && c <= 'z') || (c >= '0' && c <= '9') || c == '%' ||
                            c == '#' || static_cast<unsigned char>(c) >= 0x80;
        if (c >= 'A' && c <= 'Z') {
            out += static_cast<char>(c - 'A' + 'a');
        } else if (letter) {
            out += c;
        }
    }
    return out;
}

model::Result<std::vector<HeadingMatch>> parseMatches(std::string_view text) {
    std::vector<HeadingMatch> out;
    while (!model::trimmed(text).empty()) {
        text = model::trimmed(text);
        // Theirs may stand in double quotes, for a heading that holds a comma.
        const auto close = text.front() == '"' ? text.find('"', 1) : std::string_view::npos;
        const bool isQuoted = close != std::string_view::npos;
        const auto end = text.find(',', isQuoted ? close : 0);
        const auto part = text.substr(0, end);
        const auto equals = part.rfind('=');
        const auto theirs = isQuoted && equals != std::string_view::npos && equals > close
                                ? text.substr(1, close - 1)
                                : model::trimmed(part.substr(0, equals));
        const auto ours = equals == std::string_view::npos
                              ? std::string_view{}
                              : model::trimmed(part.substr(equals + 1));
        if (theirs.empty() || ours.empty()) {
            return model::wrongUse(model::saying(
                "--match: %1 is not of the form theirs=ours: write it like --match \"Paid "
                "to=Payee,Ref=-\"; a heading that holds a comma stands in double quotes",
                inQuotes(model::trimmed(part))));
        }
        out.push_back({std::string(theirs), std::string(ours)});
        text = end == std::string_view::npos ? std::string_view{} : text.substr(end + 1);
    }
    return out;
}

std::vector<Column> matchHeadings(const BringKind& kind, const CsvTable& table,
                                  const std::vector<HeadingMatch>& matches, Problems& problems) {
    return Matching(kind, table, matches, problems).run();
}

}  // namespace ledgerboard::intake
