// Who may lean on whom? The arrows of DEVELOPERS.md, checked on every #include and on what each
// library links.
#include <array>
#include <optional>
#include <regex>
#include <string>

#include "tests/tidy/rules.h"

namespace ledgerboard::tidy {

namespace {

// A folder and the folders it may include from, itself always among them.
struct Layer {
    std::string_view folder;
    std::vector<std::string_view> mayUse;
};

// The deepest folder that holds a file decides. tests/ may include anything.
const std::vector<Layer>& layers() {
    static const std::vector<Layer> kLayers = {
        {"core/model", {}},
        {"core/compute", {"core/model"}},
        {"core/store", {"core/model"}},
        {"core/store/postgres", {"core/model", "core/store"}},
        {"core/intake/tables", {}},
        {"core/intake/notes", {"core/model", "core/intake/tables"}},
        {"core/intake/files", {"core/model", "core/compute", "core/store"}},
        {"core/intake/bank", {"core/model", "core/compute", "core/store"}},
        {"core/intake/keep", {"core/model", "core/compute", "core/store", "core/intake"}},
        {"core/intake", {"core/model", "core/store"}},
        {"core/report", {"core/model", "core/compute", "core/store"}},
        {"core/give", {"core/model", "core/compute", "core/store", "core/report"}},
        {"core/paper", {"core/model", "core/compute", "core/report"}},
        {"core/qml", {"core", "sync"}},
        {"sync/wire", {"core/model", "core/store"}},
        {"sync/exchange", {"core/model", "core/store", "sync/wire"}},
        {"sync/identity", {"core/model", "sync/wire"}},
        {"sync/guard", {"core/model", "sync/wire"}},
        {"sync/link",
         {"core/model", "core/store", "core/intake/photos", "sync/wire", "sync/identity",
          "sync/exchange"}},
        {"sync/peer",
         {"core/model", "core/store", "core/intake/photos", "sync/wire", "sync/identity",
          "sync/guard", "sync/exchange"}},
        {"sync", {"core/model", "core/store", "core/intake/photos"}},
        {"mobile/now", {"core/model", "core/compute", "core/report", "core/store"}},
        {"mobile", {"core", "sync"}},
        {"desktop", {"core", "sync"}},
        {"desktop/bank", {}},
        {"desktop/client", {"core", "sync"}},
        {"desktop/client/now", {"core/model", "core/compute", "core/report"}},
        {"desktop/cli/work", {"core/model", "core/compute"}},
        {"desktop/cli", {"core", "sync"}},
        {"demo-data", {"core"}},
    };
    return kLayers;
}

const Layer* layerOf(std::string_view path) {
    const Layer* deepest = nullptr;
    for (const auto& layer : layers()) {
        if (isUnder(path, layer.folder) &&
            (deepest == nullptr || layer.folder.size() > deepest->folder.size())) {
            deepest = &layer;
        }
    }
    return deepest;
}

bool mayUse(const Layer& layer, std::string_view path) {
    bool may = isUnder(path, layer.folder);
    for (const auto folder : layer.mayUse) {
        may = may || isUnder(path, folder);
    }
    const bool isCommandLine =
        layer.folder == "desktop/cli" || isUnder(layer.folder, "desktop/cli");
    // core/qml is the only part of core with Qt in it; the command line stays free of it. What
    // speaks to PostgreSQL is the peer's.
    const bool qt = isUnder(path, "core/qml") && isCommandLine;
    const bool postgres = isUnder(path, "core/store/postgres") && layer.folder != "sync/peer" &&
                          layer.folder != "core/store/postgres";
    return may && !qt && !postgres;
}

void checkOurInclude(const SourceText& source, std::size_t at, std::string_view included,
                     std::vector<Finding>& out) {
    static constexpr std::array<std::string_view, 6> kTop = {"core",    "sync",  "mobile",
                                                             "desktop", "tests", "demo-data"};
    bool fromRoot = false;
    for (const auto folder : kTop) {
        fromRoot = fromRoot || isUnder(included, folder);
    }
    if (!fromRoot) {
        out.push_back({"include-from-root", source.path, at + 1,
                       "\"" + std::string(included) + "\": write the path from the root, as in " +
                           "\"core/model/money.h\""});
        return;
    }
    const Layer* layer = layerOf(source.path);
    if (layer != nullptr && !mayUse(*layer, included)) {
        out.push_back({"arrow", source.path, at + 1,
                       std::string(layer->folder) + " may not lean on " + std::string(included)});
    }
}

bool isQtHeader(std::string_view included) {
    return included.size() > 1 && included[0] == 'Q' &&
           ((included[1] >= 'A' && included[1] <= 'Z') || included.substr(0, 2) == "Qt");
}

void checkLibraryInclude(const SourceText& source, std::size_t at, std::string_view included,
                         std::vector<Finding>& out) {
    const auto& path = source.path;
    const bool test = isUnder(path, "tests");
    if (included == "sqlite3.h" && !isUnder(path, "core/store") && !test) {
        out.push_back({"sqlite", path, at + 1, "sqlite3.h belongs to core/store alone"});
    }
    const bool httpAllowed = isUnder(path, "sync/guard") || isUnder(path, "sync/link");
    if (included == "libpq-fe.h" && !isUnder(path, "core/store/postgres") && !test) {
        out.push_back({"libpq", path, at + 1, "libpq-fe.h belongs to core/store/postgres alone"});
    }
    if (included == "httplib.h" && !httpAllowed && !test) {
        out.push_back({"httplib", path, at + 1, "httplib.h belongs to sync/guard and sync/link"});
    }
    const bool qtAllowed = isUnder(path, "core/qml") || isUnder(path, "mobile") ||
                           (isUnder(path, "desktop") && !isUnder(path, "desktop/cli")) ||
                           isUnder(path, "tests/ui") || isUnder(path, "tests/desk");
    if (isQtHeader(included) && !qtAllowed) {
        out.push_back(
            {"qt", path, at + 1,
             "Qt stays in core/qml, mobile, desktop (not its command line), tests/ui and desk"});
    }
}

// Whether a line is worth the slower look: everything kAsks finds has one of these in it.
bool mayAsk(const std::string& line) {
    for (const auto* part : {"now", "rand", "time", "CURRENT_", "clockNow", "fillRandom"}) {
        if (line.find(part) != std::string::npos) {
            return true;
        }
    }
    return false;
}

// Only main reads a clock or a random device, by core/model/machine.h; everything else is handed
// the time and the chance.
void checkClockAndChance(const SourceText& source, std::vector<Finding>& out) {
    static const std::regex kAsks(
        R"((system_clock|high_resolution_clock|utc_clock)\s*::\s*now|\bs?rand\s*\()"
        R"(|\btime\s*\(\s*(nullptr|NULL|0|&)|\brandom_device\b|\bgettimeofday\s*\()"
        R"(|\bclock_gettime\s*\(|\bgetrandom\s*\(|\brandombytes_\w+)"
        R"(|\bclockNow\b|\bfillRandom\b)"
        R"(|CURRENT_(TIMESTAMP|DATE|TIME)\b|'now'|\brandomblob\s*\()",
        std::regex::optimize);
    const bool main = endsWith(source.path, "/main.cpp") &&
                      (isUnder(source.path, "desktop") || isUnder(source.path, "mobile") ||
                       isUnder(source.path, "sync"));
    const bool machine =
        source.path == "core/model/machine.cpp" || source.path == "core/model/machine.h";
    if (main || machine || !isCpp(source) || isUnder(source.path, "tests/tidy")) {
        return;
    }
    for (std::size_t k = 0; k < source.code.size(); ++k) {
        if (mayAsk(source.code[k]) && std::regex_search(source.code[k], kAsks)) {
            out.push_back({"clock-and-chance", source.path, k + 1,
                           "only main asks for the time or for chance: take it as an argument"});
        }
    }
}

// The folder of a library of ours by the name it is linked under.
std::optional<std::string_view> folderOfLibrary(const std::string& name) {
    static const std::vector<std::pair<std::string_view, std::string_view>> kLibraries = {
        {"model", "core/model/"},
        {"compute", "core/compute/"},
        {"store", "core/store/"},
        {"postgres", "core/store/postgres/"},
        {"report", "core/report/"},
        {"give", "core/give/"},
        {"paper", "core/paper/"},
        {"notes", "core/intake/notes/"},
        {"note_tables", "core/intake/tables/"},
        {"files", "core/intake/files/"},
        {"keep", "core/intake/keep/"},
        {"photos", "core/intake/photos/"},
        {"bank", "core/intake/bank/"},
        {"qml", "core/qml/"},
        {"qmlplugin", "core/qml/"},
        {"pictures_alone", "core/qml/"},
        {"now", "mobile/now/"},
        {"now_alone", "mobile/now/"},
        {"phone", "mobile/"},
        {"phoneplugin", "mobile/"},
        {"folder", "desktop/client/now/"},
        {"folder_alone", "desktop/client/now/"},
        {"desk", "desktop/client/"},
        {"deskplugin", "desktop/client/"},
        {"wire", "sync/wire/"},
        {"identity", "sync/identity/"},
        {"exchange", "sync/exchange/"},
        {"guard", "sync/guard/"},
        {"peer", "sync/peer/"},
        {"link", "sync/link/"},
        {"work", "desktop/cli/work/"},
        {"cli", "desktop/cli/"},
    };
    for (const auto& [library, folder] : kLibraries) {
        if (library == name) {
            return folder;
        }
    }
    return std::nullopt;
}

// The same arrows at link level: which libraries of ours a folder's CMakeLists.txt names.
void checkLinks(const SourceText& source, std::vector<Finding>& out) {
    static const std::regex kLibrary(R"(ledgerboard(?:_|::)(\w+))");
    const Layer* layer = layerOf(source.path);
    if (layer == nullptr) {
        return;
    }
    for (std::size_t k = 0; k < source.lines.size(); ++k) {
        const std::string line = source.lines[k].substr(0, source.lines[k].find('#'));
        for (auto at = std::sregex_iterator(line.begin(), line.end(), kLibrary);
             at != std::sregex_iterator(); ++at) {
            const std::string name = (*at)[1].str();
            const auto folder = folderOfLibrary(name);
            if (!folder && name != "settings") {
                out.push_back(
                    {"link-arrow", source.path, k + 1,
                     at->str() + " has no folder in tests/tidy/arrows.cpp: add it there"});
            }
            if (folder && !mayUse(*layer, std::string(*folder) + "library")) {
                out.push_back({"link-arrow", source.path, k + 1,
                               std::string(layer->folder) + " may not link " + at->str()});
            }
        }
    }
}

}  // namespace

std::vector<Finding> brokenArrows(const SourceText& source) {
    std::vector<Finding> out;
    if (endsWith(source.path, "/CMakeLists.txt")) {
        checkLinks(source, out);
        return out;
    }
    for (std::size_t k = 0; k < source.code.size(); ++k) {
        bool quoted = false;
        const auto included = includedBy(source.code[k], quoted);
        if (included.empty()) {
            continue;
        }
        if (quoted) {
            checkOurInclude(source, k, included, out);
        } else {
            checkLibraryInclude(source, k, included, out);
        }
    }
    checkClockAndChance(source, out);
    return out;
}

}  // namespace ledgerboard::tidy
