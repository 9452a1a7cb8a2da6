// How is a draft held against a careful reader's list?
//
// Items match one to one when space, treatment and object agree, spaces and objects brought to one
// name through the reader's tables on both sides.
#pragma once

#include <algorithm>
#include <cstdio>
#include <exception>
#include <filesystem>
#include <fstream>
#include <iterator>
#include <string>
#include <string_view>
#include <vector>

#include <nlohmann/json.hpp>

#include "core/intake/notes/draft.h"
#include "core/intake/notes/names.h"

namespace ledgerboard::notes_lists {

struct Item {
    std::string space;
    std::string treatment;
    std::string object;
    std::string written;  // for printing
    int sure = 0;
    bool right = false;
};

inline Item itemOf(const std::string& space, const std::string& treatment,
                   const std::string& object) {
    return {.space = intake::spaceName(space),
            .treatment = treatment,
            .object = intake::objectName(object, space),
            .written = space + " | " + treatment + " | " + object};
}

inline std::string slurp(const std::filesystem::path& path) {
    std::ifstream in(path, std::ios::binary);
    return {std::istreambuf_iterator<char>(in), {}};
}

// The notes of the folders that have a list beside them, by name.
inline std::vector<std::filesystem::path> notesIn(
    const std::vector<std::filesystem::path>& folders) {
    std::vector<std::filesystem::path> notes;
    for (const std::filesystem::path& folder : folders) {
        for (const auto& entry : std::filesystem::directory_iterator(folder)) {
            std::filesystem::path list = entry.path();
            list.replace_extension(".json");
            if (entry.path().extension() == ".txt" && std::filesystem::exists(list)) {
                notes.push_back(entry.path());
            }
        }
    }
    std::sort(notes.begin(), notes.end());
    return notes;
}

// The files of the folders whose names end so, by name.
inline std::vector<std::filesystem::path> filesIn(const std::vector<std::filesystem::path>& folders,
                                                  std::string_view extension) {
    std::vector<std::filesystem::path> files;
    for (const std::filesystem::path& folder : folders) {
        for (const auto& entry : std::filesystem::directory_iterator(folder)) {
            if (entry.path().extension() == extension) {
                files.push_back(entry.path());
            }
        }
    }
    std::sort(files.begin(), files.end());
    return files;
}

inline nlohmann::json listBeside(std::filesystem::path notes) {
    notes.replace_extension(".json");
    return nlohmann::json::parse(slurp(notes));
}

inline std::vector<Item> itemsListed(const nlohmann::json& list) {
    std::vector<Item> items;
    for (const nlohmann::json& item : list.at("items")) {
        items.push_back(itemOf(item.at("space"), item.at("treatment"), item.at("object")));
    }
    return items;
}

// The items of the draft in its order; those that the list wants are right on both sides.
inline std::vector<Item> itemsMade(const intake::Draft& draft, std::vector<Item>& wanted) {
    std::vector<Item> items;
    for (const intake::DraftItem& item : draft.items) {
        Item made = itemOf(item.space, item.treatment, item.object);
        made.sure = item.source.sure;
        made.written += "   <" + std::to_string(item.source.line) + ": " +
                        item.source.sentence.substr(0, 90) + ">";
        const auto match = std::find_if(wanted.begin(), wanted.end(), [&](const Item& want) {
            return !want.right && want.space == made.space && want.treatment == made.treatment &&
                   want.object == made.object;
        });
        if (match != wanted.end()) {
            match->right = made.right = true;
        }
        items.push_back(made);
    }
    return items;
}

// The main part of a tool: what goes wrong in `run` is told under its name, and is 2.
template <class Run>
int runTool(const char* name, const Run& run) {
    try {
        return run();
    } catch (const std::exception& error) {
        std::fprintf(stderr, "%s: %s\n", name, error.what());
        return 2;
    }
}

}  // namespace ledgerboard::notes_lists
