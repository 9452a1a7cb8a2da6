// Reads every source of the project and says which rules it breaks.
//
// Usage: tidy ROOT                  exit status 1 where any rule is broken
//        tidy --self-test BADFOLDER exit status 1 where any rule cannot fail
#include <algorithm>
#include <array>
#include <cstdio>
#include <filesystem>
#include <fstream>
#include <sstream>

#include "tests/tidy/rules.h"

namespace ledgerboard::tidy {

namespace {

namespace fs = std::filesystem;

constexpr std::array<std::string_view, 6> kFolders = {"core",    "sync",  "mobile",
                                                      "desktop", "tests", "demo-data"};

bool isSource(const fs::path& path) {
    const auto extension = path.extension();
    return extension == ".h" || extension == ".cpp" || extension == ".def" ||
           path.filename() == "CMakeLists.txt";
}

// The sources below the root, in order; the bad examples are left out.
std::vector<fs::path> sourcesBelow(const fs::path& root) {
    std::vector<fs::path> out;
    for (const auto folder : kFolders) {
        if (!fs::is_directory(root / folder)) {
            continue;
        }
        for (const auto& entry : fs::recursive_directory_iterator(root / folder)) {
            const auto path = entry.path().lexically_relative(root).generic_string();
            if (entry.is_regular_file() && isSource(entry.path()) &&
                !isUnder(path, "tests/tidy/bad")) {
                out.push_back(entry.path());
            }
        }
    }
    std::sort(out.begin(), out.end());
    return out;
}

int inspectAll(const fs::path& root) {
    const auto sources = sourcesBelow(root);
    int broken = 0;
    NamesTaken names;
    for (const auto& path : sources) {
        const auto source =
            sourceText(path.lexically_relative(root).generic_string(), contentsOf(path.string()));
        std::vector<Finding> named;
        names.read(source, named);
        for (const auto& findings : {brokenArrows(source), brokenLooks(source), named}) {
            for (const auto& finding : findings) {
                std::printf("%s:%zu: %s: %s\n", finding.path.c_str(), finding.line,
                            finding.rule.c_str(), finding.says.c_str());
                ++broken;
            }
        }
    }
    std::printf("%zu sources read, %d findings\n", sources.size(), broken);
    if (sources.size() < 20) {
        std::printf("that is too few: is %s the root of the project?\n", root.string().c_str());
        return 1;
    }
    return broken == 0 ? 0 : 1;
}

}  // namespace

std::string contentsOf(const std::string& path) {
    std::ifstream in(path, std::ios::binary);
    std::ostringstream out;
    out << in.rdbuf();
    return out.str();
}

}  // namespace ledgerboard::tidy

int main(int argc, char** argv) {
    using namespace ledgerboard::tidy;
    if (argc == 3 && std::string_view(argv[1]) == "--self-test") {
        return selfTest(argv[2]) == 0 ? 0 : 1;
    }
    if (argc == 2) {
        return inspectAll(argv[1]);
    }
    std::fprintf(stderr, "usage: tidy ROOT | tidy --self-test BADFOLDER\n");
    return 2;
}
