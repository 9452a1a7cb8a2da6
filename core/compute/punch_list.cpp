#include "core/compute/punch_list.h"

#include <algorithm>
#include <array>
#include <tuple>

#include "core/compute/positions.h"
#include "core/model/saying.h"

namespace ledgerboard::compute {

namespace {

using model::Date;
using model::Money;
using model::Saying;
using model::saying;

model::Place placedNear(Date day, Date today) {
    constexpr std::array kWeekdays = {"Monday", "Tuesday",  "Wednesday", "Thursday",
                                      "Friday", "Saturday", "Sunday"};
    constexpr int kAhead = 6;
    if (day >= today && day <= today + kAhead) {
        return {model::Place::Is::Weekday,
                kWeekdays[static_cast<std::size_t>(day.weekday())],
                day.days(),
                {}};
    }
    return model::placed(day);
}

class Reader {
  public:
    Reader(const model::JobRows& rows, Date today)
        : rows_(rows),
          today_(today),
          spaces_(rows.spaces),
          crews_(rows.crews),
          punches_(rows.punches),
          last_(rows.punches.size(), nullptr) {
        for (const model::Look& look : rows.looks) {
            const auto k = punches_.of(look.punch);
            if (k && (last_[*k] == nullptr || std::tie(last_[*k]->lookedOn, last_[*k]->id) <
                                                  std::tie(look.lookedOn, look.id))) {
                last_[*k] = &look;
            }
        }
    }

    PunchList read() {
        for (std::size_t k = 0; k < rows_.punches.size(); ++k) {
            out_.all.push_back(readOne(k));
        }
        std::stable_sort(out_.all.begin(), out_.all.end(),
                         [this](const PunchRead& a, const PunchRead& b) {
                             return placeOf(a.punch) < placeOf(b.punch);
                         });
        addUp();
        return std::move(out_);
    }

  private:
    std::string crewName(const model::Id<model::Kind::Crew>& crew) const {
        const auto k = crews_.of(crew);
        return k ? rows_.crews[*k].name : std::string();
    }

    PunchRead readOne(std::size_t k) const {
        const model::Punch& punch = rows_.punches[k];
        PunchRead read;
        read.punch = k;
        if (const auto space = spaces_.of(punch.space)) {
            read.space = rows_.spaces[*space].name;
        }
        read.crew = crewName(punch.crew);
        if (last_[k] != nullptr) {
            read.lastSaid = last_[k]->said;
            read.lastLookOn = last_[k]->lookedOn;
        }
        read.isOpen = read.lastSaid != model::Verdict::Accepted;
        read.isLate = read.isOpen && punch.dueOn && *punch.dueOn < today_;
        read.cost = punch.cost;
        read.chargeBackTo = crewName(punch.chargeBackTo);
        if (!read.chargeBackTo.empty()) {
            read.chargeBack = punch.chargeBack ? punch.chargeBack : punch.cost;
        }
        read.sentence = sentenceOf(punch, read).text();
        return read;
    }

    [[nodiscard]] Saying sentenceOf(const model::Punch& punch, const PunchRead& read) const {
        const Saying who = read.crew.empty() ? saying("Nobody yet") : model::asWritten(read.crew);
        Saying text = duty(who, punch, read);
        const auto& on = read.lastLookOn;
        if (read.lastSaid == model::Verdict::SaidFixed) {
            return on ? saying("%1 (said fixed %2, not looked at yet)", text, *on)
                      : saying("%1 (said fixed, not looked at yet)", text);
        }
        if (read.lastSaid == model::Verdict::NotRight) {
            return on ? saying("%1 (looked at %2, not right)", text, *on)
                      : saying("%1 (looked at, not right)", text);
        }
        return text;
    }

    [[nodiscard]] Saying duty(const Saying& who, const model::Punch& punch,
                              const PunchRead& read) const {
        if (!punch.dueOn) {
            return saying("%1: %2", who, punch.what);
        }
        if (read.isLate) {
            return saying("%1, due since %2: %3", who, *punch.dueOn, punch.what);
        }
        return *punch.dueOn == today_
                   ? saying("%1, today: %2", who, punch.what)
                   : saying("%1, by %2: %3", who, placedNear(*punch.dueOn, today_), punch.what);
    }

    std::tuple<std::int64_t, std::size_t, std::int32_t> placeOf(std::size_t k) const {
        const model::Punch& punch = rows_.punches[k];
        const auto space = spaces_.of(punch.space);
        return {space ? rows_.spaces[*space].walkOrder.value_or(INT64_MAX) : INT64_MAX,
                space.value_or(SIZE_MAX), punch.dueOn ? punch.dueOn->days() : INT32_MAX};
    }

    void addUp() {
        std::vector<PunchCrew> crews(rows_.crews.size() + 1);
        std::vector<ChargeBack> charges(rows_.crews.size());
        for (std::size_t k = 0; k < rows_.crews.size(); ++k) {
            crews[k].crew = charges[k].crew = rows_.crews[k].id;
            crews[k].name = charges[k].name = rows_.crews[k].name;
        }
        for (const PunchRead& read : out_.all) {
            const model::Punch& punch = rows_.punches[read.punch];
            if (const auto payer = crews_.of(punch.chargeBackTo)) {
                ChargeBack& charge = charges[*payer];
                ++charge.items;
                charge.amount += read.chargeBack.value_or(Money{});
                charge.withoutAmount += read.chargeBack ? 0 : 1;
            }
            if (!read.isOpen) {
                continue;
            }
            PunchCrew& crew = crews[crews_.of(punch.crew).value_or(rows_.crews.size())];
            ++crew.open;
            ++out_.open;
            crew.late += read.isLate ? 1 : 0;
            out_.late += read.isLate ? 1 : 0;
            crew.cost += read.cost.value_or(Money{});
            out_.cost += read.cost.value_or(Money{});
            crew.withoutCost += read.cost ? 0 : 1;
            out_.withoutCost += read.cost ? 0 : 1;
        }
        std::copy_if(crews.begin(), crews.end(), std::back_inserter(out_.crews),
                     [](const PunchCrew& crew) { return crew.open > 0; });
        std::copy_if(charges.begin(), charges.end(), std::back_inserter(out_.chargeBacks),
                     [](const ChargeBack& charge) { return charge.items > 0; });
    }

    const model::JobRows& rows_;
    Date today_;
    Positions<model::Space> spaces_;
    Positions<model::Crew> crews_;
    Positions<model::Punch> punches_;
    std::vector<const model::Look*> last_;  // of each punch item
    PunchList out_;
};

}  // namespace

PunchList punchListOf(const model::JobRows& rows, Date today) {
    return Reader(rows, today).read();
}

std::string dayWords(Date day, Date today) {
    return placedNear(day, today).text;
}

}  // namespace ledgerboard::compute
