// cautions and acknowledge: hazards and duties by item, and who has taken note of them.
#include <algorithm>

#include <nlohmann/json.hpp>

#include "core/compute/as_of.h"
#include "core/compute/cautions.h"
#include "core/intake/files/nearest.h"
#include "core/report/money_text.h"

#include "desktop/cli/caution_text.h"
#include "desktop/cli/dated.h"
#include "desktop/cli/paragraphs.h"
#include "desktop/cli/verbs.h"

namespace ledgerboard::cli {

namespace {

namespace f = model::field;
using compute::CautionRead;
using compute::Cautions;
using compute::CautionState;
using model::Kind;
using model::Result;
using model::Value;

using Targets = std::vector<const CautionRead*>;

// One key for all names of a rule; other words for themselves.
std::string keyOf(std::string_view about) {
    const auto* row = compute::cautionNamed(about);
    return model::folded(row == nullptr ? about : row->about);
}

// Whether a caution goes by this name; one about a crew also by what it is about alone.
bool isCalled(const CautionRead& caution, const std::string& name) {
    return keyOf(caution.about) == keyOf(name) ||
           keyOf(caution.about.substr(0, caution.about.find(": "))) == keyOf(name);
}

bool isHouse(const std::string& text) {
    const std::string word = model::folded(text);
    return word == "house" || word == "thehouse" || word == "job";
}

std::string listOf(Session& session, const Targets& targets) {
    std::string list;
    for (const CautionRead* target : targets) {
        list += "\n  " + acknowledgeCommand(session, *target);
    }
    return list;
}

// Of the cautions of one item, or of the house, the one meant.
Result<Targets> choose(Session& session, const Targets& ofOne, const std::string& name,
                       const std::string& about) {
    Targets named;
    Targets open;
    for (const CautionRead* caution : ofOne) {
        if (about.empty() ? caution->state != CautionState::Acknowledged
                          : isCalled(*caution, about)) {
            named.push_back(caution);
            if (caution->state != CautionState::Acknowledged) {
                open.push_back(caution);
            }
        }
    }
    if (named.empty()) {
        std::string known;
        for (const CautionRead* caution : ofOne) {
            known += (known.empty() ? "" : ", ") + caution->about;
        }
        return model::cannotBeMet(
            name + (about.empty() ? " has no open caution" : " has no caution \"" + about + "\"") +
            (known.empty() ? "" : "; it has: " + known));
    }
    // Several open ones of one name (sentences of the notes) are acknowledged together.
    const bool oneName = std::all_of(named.begin(), named.end(), [&](const CautionRead* caution) {
        return keyOf(caution->about) == keyOf(named.front()->about);
    });
    if (!oneName) {
        return model::cannotBeMet(
            name + " has several open cautions; say which:" + listOf(session, named));
    }
    return open.empty() ? Targets{named.front()} : open;
}

Result<Targets> everywhere(const Cautions& cautions, const std::string& about) {
    Targets targets;
    std::vector<std::string> known;
    for (const CautionRead& caution : cautions.all) {
        known.push_back(caution.about);
        if (isCalled(caution, about) && caution.state == CautionState::Open) {
            targets.push_back(&caution);
        }
    }
    if (targets.empty()) {
        const std::string near = intake::nearestName(about, known);
        return model::cannotBeMet("no open caution is called \"" + about + "\"" +
                                  (near.empty() ? "" : ": did you mean \"" + near + "\"?") +
                                  " 'ledgerboard cautions' lists them");
    }
    return targets;
}

Result<Targets> meantBy(Session& session, const Cautions& cautions,
                        const AcknowledgeOptions& options) {
    if (options.all) {
        if (!options.about.empty()) {
            return model::wrongUse("with --all name the caution alone: ledgerboard acknowledge \"" +
                                   options.about + "\" --all");
        }
        return everywhere(cautions, options.caution);
    }
    const auto those = [&](auto&& pick) {
        Targets out;
        for (const CautionRead& caution : cautions.all) {
            if (pick(caution)) {
                out.push_back(&caution);
            }
        }
        return out;
    };
    if (isHouse(options.caution)) {
        return choose(session, those([](const CautionRead& one) { return one.item.isNil(); }),
                      "the house", options.about);
    }
    auto finder = session.finder();
    if (!finder.ok()) {
        return finder.error();
    }
    auto item = finder.value()->find(Kind::Item, options.caution);
    if (item.ok()) {
        const std::string name = finder.value()->nameOf(item.value());
        return choose(session,
                      those([&](const CautionRead& one) { return one.item.raw() == item.value(); }),
                      name, options.about);
    }
    if (auto record = finder.value()->find(Kind::Caution, options.caution); record.ok()) {
        const Targets targets =
            those([&](const CautionRead& one) { return one.record.raw() == record.value(); });
        if (!targets.empty()) {
            return targets;
        }
    }
    return model::Error{item.error().code,
                        "CAUTION: " + item.error().message +
                            ". Name an item with what the caution is about, 'house' with it, or "
                            "the end of the caution's id"};
}

Result<void> refuseNothingNew(const Targets& targets, const std::string& result) {
    const CautionRead& first = *targets.front();
    if (first.state != CautionState::Acknowledged || !result.empty()) {
        return {};
    }
    return model::cannotBeMet(
        first.about + " is acknowledged already" +
        (first.acknowledgedOn ? " (" + first.acknowledgedOn->toString() + ")" : "") +
        ": add --result \"what was found\" to record a test result");
}

void put(store::Action& action, store::Book& book, const CautionRead& target,
         model::Id<Kind::Job> job, model::Date on, const std::string& result, model::Instant now) {
    model::Caution row = compute::keptCaution(target, job);
    if (row.id.isNil()) {
        row.id = book.newId<Kind::Caution>(now);
        action.add(row);
    }
    const model::RawId id = row.id.raw();
    if (target.state != CautionState::Acknowledged) {
        action.set(id, f::Caution::acknowledgedBy, model::valueOf(book.meAsKept()));
        action.set(id, f::Caution::acknowledgedOn, model::valueOf(model::member::Date(on)));
    }
    if (!result.empty()) {
        action.set(id, f::Caution::testResult, Value{result});
    }
}

std::string nameOf(const CautionRead& target) {
    return target.item.isNil() ? "the house" : target.what;
}

void print(Session& session, const Targets& targets, model::Date day, const std::string& result) {
    if (session.json()) {
        nlohmann::json list = nlohmann::json::array();
        for (const CautionRead* target : targets) {
            list.push_back(
                {{"item", target->item.isNil() ? nlohmann::json(nullptr)
                                               : nlohmann::json(target->item.raw().toString())},
                 {"name", nameOf(*target)},
                 {"about", target->about}});
        }
        session.printJson({{"acknowledged", list},
                           {"date", targets.front()->acknowledgedOn.value_or(day).toString()},
                           {"test_result", result}});
        return;
    }
    std::string names;
    for (const CautionRead* target : targets) {
        names += (names.empty() ? "" : ", ") + nameOf(*target);
    }
    const CautionRead& first = *targets.front();
    const std::string about = first.about.substr(0, first.about.find(": "));
    const std::string what =
        first.state == CautionState::Acknowledged
            ? about + ", test result recorded"
            : (targets.size() > 1 ? about + " acknowledged for " + std::to_string(targets.size())
                                  : first.about + " acknowledged") +
                  " on " + day.toString();
    session.print(paragraph(session, what + (result.empty() ? "" : ": " + result) + "."));
    session.print(paragraph(session, "For: " + names + ".", 2));
    session.print(paragraph(session, compute::kCautionReminder));
}

}  // namespace

Done verbCautions(Session& session, const std::string& itemText) {
    auto job = session.jobOnDay();
    if (!job.ok()) {
        return job.error();
    }
    std::optional<model::RawId> only;
    if (!itemText.empty()) {
        auto finder = session.finder();
        if (!finder.ok()) {
            return finder.error();
        }
        auto item = finder.value()->find(Kind::Item, itemText);
        if (!item.ok()) {
            return item.error();
        }
        only = item.value();
    }
    const model::JobRows& rows = job.value().rows;
    const model::Date today = job.value().today;
    return model::guarded([&]() -> Done {
        Cautions cautions = compute::cautionsOf(rows, today);
        if (only) {
            std::erase_if(cautions.all,
                          [&](const CautionRead& one) { return one.item.raw() != *only; });
            std::erase_if(cautions.inSpite,
                          [&](const auto& one) { return one.item.raw() != *only; });
        }
        if (session.json()) {
            session.printJson(cautionJson(cautions));
        } else if (only && cautions.all.empty()) {
            session.print("The tables raise no caution for " +
                          session.finder().value()->nameOf(*only) + ". " +
                          std::string(compute::kCautionReminder) + "\n");
        } else if (cautions.all.empty()) {
            session.print(rows.job.name +
                          ": no cautions, for there is no work in the scope yet.\n"
                          "Next: ledgerboard read walk-notes.txt --keep\n");
        } else {
            session.print(cautionText(session, rows, cautions));
        }
        return {};
    });
}

Done verbAcknowledge(Session& session, const AcknowledgeOptions& options) {
    if (auto good = session.refusePast("acknowledge", true); !good.ok()) {
        return good.error();
    }
    auto job = session.job();
    if (!job.ok()) {
        return job.error();
    }
    if (!options.result.empty() && model::folded(options.result).empty()) {
        return model::wrongUse("--result is blank: say what was found, or leave it out");
    }
    auto day = dayOf(session, "--at", options.at);
    if (!day.ok()) {
        return day.error();
    }
    store::Book& book = *session.book().value();
    auto rows = book.jobRows(job.value());
    if (!rows.ok()) {
        return rows.error();
    }
    return model::guarded([&]() -> Done {
        const Cautions cautions =
            compute::cautionsOf(compute::withoutVoided(std::move(rows.value())), day.value());
        auto targets = meantBy(session, cautions, options);
        if (!targets.ok()) {
            return targets.error();
        }
        if (auto good = refuseNothingNew(targets.value(), options.result); !good.ok()) {
            return good.error();
        }
        const std::string about = targets.value().front()->about;
        store::Action action("acknowledge " + about);
        for (const CautionRead* target : targets.value()) {
            put(action, book, *target, job.value(), day.value(), options.result, session.now());
        }
        if (auto done = book.commit(action, session.now()); !done.ok()) {
            return done.error();
        }
        session.forgetRows();
        print(session, targets.value(), day.value(), options.result);
        return {};
    });
}

}  // namespace ledgerboard::cli
