// What can be asked for? One function per verb; each carries it out whole or leaves all as it was.
#pragma once

#include <string>
#include <vector>

#include "core/model/result.h"

#include "desktop/cli/plan_by_crews.h"
#include "desktop/cli/session.h"

namespace ledgerboard::cli {

struct StartOptions {
    std::string name, owner, built, area, purchase, resale, budget, begin, finish;
};

struct ReadOptions {
    std::string file;
    bool keep = false;
    bool explain = false;
    bool unsure = false;  // also what is too unsure to be made an item
};

struct BringOptions {
    std::string kind, file, match;
    bool tryOnly = false;
};

struct BankOptions {
    std::string line, target;
    bool yes = false;
    bool notOurs = false;
    bool once = false;
};

struct ChooseOptions {
    std::string alternate, option, why, cash, finish, chance;
};

struct EditOptions {
    std::string record, field, value;
};

struct AddOptions {
    std::string kind;
    std::vector<std::string> fields;
};

struct ListOptions {
    std::string kind;
    bool csv = false;
    bool all = false;
};

struct MarkOptions {
    std::string item, percent, count, at, note;
    std::vector<std::string> steps;
};

struct AcknowledgeOptions {
    std::string caution, about, result, at;
    bool all = false;
};

struct BaselineOptions {
    std::string on;
};

struct WeekOptions {
    bool keep = false;
};

struct DrawOptions {
    bool ask = false;
    std::string at;
};

struct GiveOptions {
    std::string what, format, file;
    std::string crew;   // of a schedule
    std::string paper;  // of a PDF: letter or a4
};

struct PlanOptions {
    bool keep = false;
    bool link = false;
    CrewPlanOptions crews;
};

struct RiskOptions {
    std::string trials, seed;
};

struct RestoreOptions {
    std::string file;
    bool replace = false;
};

struct InviteOptions {
    std::string role, whom, name;
};

struct JoinOptions {
    std::string address, code, called;
    bool again = false;
};

struct SyncOptions {
    std::string address;
    bool noPhotos = false;
};

using Done = model::Result<void>;

// How tables and pages fit the place they are shown in.
[[nodiscard]] report::TableStyle styleOf(Session& session);

[[nodiscard]] Done verbStart(Session& session, const StartOptions& options);
[[nodiscard]] Done verbRead(Session& session, const ReadOptions& options);
[[nodiscard]] Done verbBring(Session& session, const BringOptions& options);
// `bring spend` with a bank's download.
[[nodiscard]] Done bringDownload(Session& session, const BringOptions& options);
[[nodiscard]] Done verbBank(Session& session, const BankOptions& options);
[[nodiscard]] Done verbSet(Session& session, const EditOptions& options);
[[nodiscard]] Done verbAdd(Session& session, const AddOptions& options);
[[nodiscard]] Done verbDrop(Session& session, const std::string& record);
[[nodiscard]] Done verbUndo(Session& session);
[[nodiscard]] Done verbRedo(Session& session);
[[nodiscard]] Done verbList(Session& session, const ListOptions& options);
[[nodiscard]] Done verbMark(Session& session, const MarkOptions& options);
[[nodiscard]] Done verbAcknowledge(Session& session, const AcknowledgeOptions& options);
[[nodiscard]] Done verbBaseline(Session& session, const BaselineOptions& options);
[[nodiscard]] Done verbWeek(Session& session, const WeekOptions& options);
[[nodiscard]] Done verbCautions(Session& session, const std::string& item);
[[nodiscard]] Done verbChoose(Session& session, const ChooseOptions& options);
[[nodiscard]] Done verbClose(Session& session);
[[nodiscard]] Done verbDeal(Session& session);
[[nodiscard]] Done verbCash(Session& session);
[[nodiscard]] Done verbDraw(Session& session, const DrawOptions& options);
[[nodiscard]] Done verbPlan(Session& session, const PlanOptions& options);
[[nodiscard]] Done verbPunch(Session& session, const std::string& crew);
[[nodiscard]] Done verbTaught(Session& session, bool keep);
[[nodiscard]] Done verbRisk(Session& session, const RiskOptions& options);
[[nodiscard]] Done verbClashes(Session& session);
[[nodiscard]] Done verbSettle(Session& session, const EditOptions& options);
[[nodiscard]] Done verbAside(Session& session);
[[nodiscard]] Done verbInvite(Session& session, const InviteOptions& options);
[[nodiscard]] Done verbJoin(Session& session, const JoinOptions& options);
[[nodiscard]] Done verbSync(Session& session, const SyncOptions& options);
[[nodiscard]] Done verbDevices(Session& session);
[[nodiscard]] Done verbRevoke(Session& session, const std::string& device);
[[nodiscard]] Done verbHistory(Session& session, const std::string& record);
[[nodiscard]] Done verbGive(Session& session, const GiveOptions& options);
[[nodiscard]] Done verbVerify(Session& session, bool mend);
[[nodiscard]] Done verbBackup(Session& session, const std::string& file);
[[nodiscard]] Done verbRestore(Session& session, const RestoreOptions& options);
[[nodiscard]] Done verbWork(Session& session, const std::string& name);

}  // namespace ledgerboard::cli
