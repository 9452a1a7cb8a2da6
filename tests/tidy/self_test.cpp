// Has every rule teeth? Each must find its bad example, and must find nothing else there.
#include <algorithm>
#include <array>
#include <cstdio>
#include <filesystem>
#include <map>
#include <set>

#include "tests/tidy/rules.h"

namespace ledgerboard::tidy {

namespace {

namespace fs = std::filesystem;

constexpr std::array<std::string_view, 14> kRules = {"arrow",
                                                     "include-from-root",
                                                     "link-arrow",
                                                     "sqlite",
                                                     "httplib",
                                                     "qt",
                                                     "clock-and-chance",
                                                     "long-line",
                                                     "tab",
                                                     "pragma-once",
                                                     "opening-comment",
                                                     "left-over",
                                                     "long-file",
                                                     "one-name"};

// The rules that a file breaks, and how often.
std::map<std::string, int> brokenBy(const SourceText& source) {
    std::map<std::string, int> out;
    for (const auto& findings : {brokenArrows(source), brokenLooks(source)}) {
        for (const auto& finding : findings) {
            ++out[finding.rule];
        }
    }
    return out;
}

// True where `source` breaks `rule` at least once and no other.
bool breaksOnly(const SourceText& source, const std::string& rule) {
    const auto broken = brokenBy(source);
    if (broken.size() == 1 && broken.begin()->first == rule) {
        return true;
    }
    std::printf("%s breaks", source.path.c_str());
    for (const auto& [name, count] : broken) {
        std::printf(" %s", name.c_str());
    }
    std::printf("%s, where it must break %s alone\n", broken.empty() ? " nothing" : "",
                rule.c_str());
    return false;
}

// Too long to keep as a file: 701 lines, where 700 are allowed.
bool longFileHasTeeth() {
    std::string text = "// What does one line too many do?\n#pragma once\n";
    for (int k = 0; k < 698; ++k) {
        text += "\n";
    }
    const bool quiet = brokenBy(sourceText("core/model/long.h", text)).empty();
    return breaksOnly(sourceText("core/model/long.h", text + "\n"), "long-file") && quiet;
}

// Found where one name stands in two files of one namespace, and nowhere else.
bool oneNameHasTeeth() {
    const auto header = [](const char* path, const std::string& within, const char* type) {
        return sourceText(path, "// What?\n#pragma once\nnamespace " + within + " {\n" + type +
                                    " {\n};\n}  // namespace " + within + "\n");
    };
    NamesTaken names;
    std::vector<Finding> found;
    names.read(header("core/a.h", "ledgerboard::a", "struct Row"), found);
    names.read(header("core/b.h", "ledgerboard::b", "struct Row"), found);
    names.read(header("core/c.h", "ledgerboard::a", "class Rows"), found);
    names.read(sourceText("core/d.cpp",
                          "namespace ledgerboard::a {\nnamespace {\nstruct Row {\n};"
                          "\n}  // namespace\n}  // namespace ledgerboard::a\n"),
               found);
    const bool quiet = found.empty();
    names.read(header("core/e.h", "ledgerboard::a", "enum class Row"), found);
    return quiet && found.size() == 1 && found[0].rule == "one-name";
}

}  // namespace

int selfTest(const std::string& badFolder) {
    std::set<std::string> withTeeth;
    std::set<std::string> toothless;
    if (longFileHasTeeth()) {
        withTeeth.insert("long-file");
    }
    if (oneNameHasTeeth()) {
        withTeeth.insert("one-name");
    }
    for (const auto& entry : fs::recursive_directory_iterator(badFolder)) {
        const fs::path inside = entry.path().lexically_relative(badFolder);
        // "CMakeLists.txt.bad" stands for CMakeLists.txt, so that no build ever takes it for one.
        std::string path = inside.lexically_relative(*inside.begin()).generic_string();
        if (!entry.is_regular_file() || inside.begin()->string().front() == '.') {
            continue;
        }
        if (endsWith(path, ".bad")) {
            path.resize(path.size() - 4);
        }
        const std::string rule = inside.begin()->string();
        const bool good = breaksOnly(sourceText(path, contentsOf(entry.path().string())), rule);
        (good ? withTeeth : toothless).insert(rule);
    }
    int missing = 0;
    for (const auto rule : kRules) {
        const std::string name(rule);
        if (withTeeth.count(name) == 0 || toothless.count(name) != 0) {
            std::printf("the rule %s has no teeth\n", name.c_str());
            ++missing;
        }
    }
    for (const auto& rule : toothless) {
        if (std::find(kRules.begin(), kRules.end(), rule) == kRules.end()) {
            std::printf("there is no rule %s\n", rule.c_str());
            ++missing;
        }
    }
    std::printf("%zu rules, %d without teeth\n", kRules.size(), missing);
    return missing;
}

}  // namespace ledgerboard::tidy
