#include "desktop/client/now/scope_rows.h"

#include <algorithm>
#include <map>
#include <numeric>
#include <tuple>
#include <unordered_map>

#include "core/compute/pricing.h"

namespace ledgerboard::desk {

namespace {

using compute::Counting;
using model::Money;

std::vector<std::string> wordsOf(const std::string& filter) {
    std::vector<std::string> words;
    std::string word;
    for (const char c : compute::folded(filter) + " ") {
        if (c != ' ') {
            word += c;
        } else if (!word.empty()) {
            words.push_back(std::move(word));
            word.clear();
        }
    }
    return words;
}

class Sheet {
  public:
    Sheet(const JobNow& now, GroupBy by) : now_(now), by_(by) {
        for (const auto& space : now_.rows.spaces) {
            spaces_.push_back(&space);
        }
        std::stable_sort(spaces_.begin(), spaces_.end(), [](const auto* a, const auto* b) {
            return a->walkOrder.value_or(INT64_MAX) < b->walkOrder.value_or(INT64_MAX);
        });
        for (std::size_t k = 0; k < spaces_.size(); ++k) {
            spaceRank_.emplace(spaces_[k]->id.raw(), k);
        }
        for (std::size_t k = 0; k < now_.rows.crews.size(); ++k) {
            crewRank_.emplace(now_.rows.crews[k].id.raw(), k);
        }
    }

    ScopeRows make(const std::string& filter) {
        const auto words = wordsOf(filter);
        std::vector<std::size_t> order;
        for (std::size_t k = 0; k < now_.rows.items.size(); ++k) {
            const auto& hay = now_.haystacks[k];
            if (std::all_of(words.begin(), words.end(), [&hay](const std::string& word) {
                    return hay.find(word) != std::string::npos;
                })) {
                order.push_back(k);
            }
        }
        rankGroups(order);
        std::stable_sort(order.begin(), order.end(), [this](std::size_t a, std::size_t b) {
            return std::tuple(group_[a], spaceOf(a)) < std::tuple(group_[b], spaceOf(b));
        });
        ScopeRows out;
        std::size_t heading = 0;
        for (std::size_t at = 0; at < order.size(); ++at) {
            const std::size_t k = order[at];
            if (by_ != GroupBy::Nothing && (at == 0 || group_[k] != group_[order[at - 1]])) {
                heading = out.rows.size();
                out.rows.push_back(headingOf(k));
            }
            ScopeRow row;
            row.item = k;
            out.rows.push_back(row);
            count(k, out, by_ == GroupBy::Nothing ? nullptr : &out.rows[heading]);
        }
        return out;
    }

  private:
    [[nodiscard]] std::size_t spaceOf(std::size_t k) const {
        const auto found = spaceRank_.find(now_.rows.items[k].space.raw());
        return found == spaceRank_.end() ? spaces_.size() : found->second;
    }

    [[nodiscard]] const compute::ScopeLine& line(std::size_t k) const {
        return now_.figures.scope.lines[k];
    }

    // The place of each item's group: by space in walking order, by trade in order of name, by crew
    // as they are in the book; what belongs to none last.
    void rankGroups(const std::vector<std::size_t>& order) {
        group_.assign(now_.rows.items.size(), 0);
        std::map<std::string, std::size_t> trades;
        if (by_ == GroupBy::Trade) {
            for (const std::size_t k : order) {
                trades.emplace(line(k).trade, 0);
            }
            std::size_t place = 0;
            for (auto& [trade, rank] : trades) {
                rank = trade.empty() ? trades.size() : place++;
            }
        }
        for (const std::size_t k : order) {
            if (by_ == GroupBy::Space) {
                group_[k] = spaceOf(k);
            } else if (by_ == GroupBy::Trade) {
                group_[k] = trades.at(line(k).trade);
            } else if (by_ == GroupBy::Crew) {
                const auto found = crewRank_.find(line(k).crew.raw());
                group_[k] = found == crewRank_.end() ? crewRank_.size() : found->second;
            }
        }
    }

    [[nodiscard]] ScopeRow headingOf(std::size_t k) const {
        ScopeRow row;
        row.isHeading = true;
        if (by_ == GroupBy::Space && spaceOf(k) < spaces_.size()) {
            row.heading = spaces_[spaceOf(k)]->name;
            row.group = spaces_[spaceOf(k)]->id.raw();
        } else if (by_ == GroupBy::Trade) {
            row.heading = line(k).trade;
        } else if (by_ == GroupBy::Crew) {
            row.heading = crewName(now_.rows, line(k).crew);
            row.group = line(k).crew.raw();
        }
        return row;
    }

    void count(std::size_t k, ScopeRows& all, ScopeRow* heading) const {
        ++all.items;
        const auto& one = line(k);
        if (one.counting != Counting::Counts) {
            return;
        }
        ++all.counting;
        all.unpriced += one.pricing.by == compute::PricedBy::Nothing ? 1 : 0;
        all.line = all.line + one.pricing.line;
        all.budgetNow = all.budgetNow + now_.figures.lines[k].budgetNow;
        if (heading != nullptr) {
            ++heading->count;
            heading->line = heading->line + one.pricing.line;
            heading->budgetNow = heading->budgetNow + now_.figures.lines[k].budgetNow;
        }
    }

    const JobNow& now_;
    GroupBy by_;
    std::vector<const model::Space*> spaces_;
    std::unordered_map<model::RawId, std::size_t, model::RawIdHash> spaceRank_;
    std::unordered_map<model::RawId, std::size_t, model::RawIdHash> crewRank_;
    std::vector<std::size_t> group_;
};

}  // namespace

ScopeRows scopeRowsOf(const JobNow& now, GroupBy by, const std::string& filter) {
    return Sheet(now, by).make(filter);
}

}  // namespace ledgerboard::desk
