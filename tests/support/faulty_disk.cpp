#include "tests/support/faulty_disk.h"

#include <algorithm>
#include <cstring>
#include <filesystem>
#include <fstream>
#include <map>
#include <random>
#include <string_view>
#include <vector>

#include <sqlite3.h>

#include "core/model/check.h"

namespace ledgerboard::tests {

namespace {

constexpr std::size_t kSector = 512;

struct Write {
    std::size_t offset = 0;
    std::string bytes;
};

// What of a file a power cut leaves.
struct OnDisk {
    std::string synced;
    std::vector<Write> since;
};

struct State {
    sqlite3_vfs* real = nullptr;
    sqlite3_vfs shim{};
    Fault fault = Fault::None;
    std::int64_t at = 0;
    std::int64_t operations = 0;
    bool dead = false;
    bool struck = false;
    bool watching = false;
    bool neverSynchronise = false;
    std::map<std::string, OnDisk> files;
};

State state;

// One open file: SQLite's part first, then ours, then the real one's.
struct File {
    sqlite3_file base;
    std::string* path;
    sqlite3_file* real;
};

File& of(sqlite3_file* file) {
    return *reinterpret_cast<File*>(file);
}

sqlite3_file* realOf(sqlite3_file* file) {
    return of(file).real;
}

std::string wholeFile(const std::string& path) {
    std::ifstream file(path, std::ios::binary | std::ios::ate);
    std::string bytes(file ? static_cast<std::size_t>(file.tellg()) : 0, '\0');
    file.seekg(0);
    file.read(bytes.data(), static_cast<std::streamsize>(bytes.size()));
    return bytes;
}

// What is to happen to the operation that begins now.
Fault next() {
    ++state.operations;
    const bool now = state.fault != Fault::None &&
                     (state.operations == state.at || (state.dead && state.operations > state.at));
    if (!now) {
        return Fault::None;
    }
    state.struck = true;
    return state.operations == state.at ? state.fault : Fault::Error;
}

int codeOf(Fault fault, int otherwise) {
    return fault == Fault::Full ? SQLITE_FULL : otherwise;
}

void noteWrite(sqlite3_file* file, const void* bytes, int count, sqlite3_int64 offset) {
    if (state.watching && of(file).path != nullptr) {
        state.files[*of(file).path].since.push_back(
            {static_cast<std::size_t>(offset),
             std::string(static_cast<const char*>(bytes), static_cast<std::size_t>(count))});
    }
}

void noteSynced(sqlite3_file* file) {
    if (state.watching && of(file).path != nullptr) {
        state.files[*of(file).path] = {wholeFile(*of(file).path), {}};
    }
}

int closeFile(sqlite3_file* file) {
    const int code = realOf(file)->pMethods->xClose(realOf(file));
    delete of(file).path;
    return code;
}

int readFile(sqlite3_file* file, void* into, int count, sqlite3_int64 offset) {
    return realOf(file)->pMethods->xRead(realOf(file), into, count, offset);
}

int writeFile(sqlite3_file* file, const void* bytes, int count, sqlite3_int64 offset) {
    const Fault fault = next();
    if (fault == Fault::Torn) {
        noteWrite(file, bytes, count / 2, offset);
        (void)realOf(file)->pMethods->xWrite(realOf(file), bytes, count / 2, offset);
    }
    if (fault != Fault::None) {
        return codeOf(fault, SQLITE_IOERR_WRITE);
    }
    noteWrite(file, bytes, count, offset);
    return realOf(file)->pMethods->xWrite(realOf(file), bytes, count, offset);
}

int truncateFile(sqlite3_file* file, sqlite3_int64 size) {
    if (const Fault fault = next(); fault != Fault::None) {
        return codeOf(fault, SQLITE_IOERR_TRUNCATE);
    }
    return realOf(file)->pMethods->xTruncate(realOf(file), size);
}

int syncFile(sqlite3_file* file, int flags) {
    if (const Fault fault = next(); fault != Fault::None) {
        return codeOf(fault, SQLITE_IOERR_FSYNC);
    }
    const int code = realOf(file)->pMethods->xSync(realOf(file), flags);
    noteSynced(file);
    return code;
}

int sizeOf(sqlite3_file* file, sqlite3_int64* size) {
    return realOf(file)->pMethods->xFileSize(realOf(file), size);
}

int lockFile(sqlite3_file* file, int level) {
    return realOf(file)->pMethods->xLock(realOf(file), level);
}

int unlockFile(sqlite3_file* file, int level) {
    return realOf(file)->pMethods->xUnlock(realOf(file), level);
}

int checkLock(sqlite3_file* file, int* out) {
    return realOf(file)->pMethods->xCheckReservedLock(realOf(file), out);
}

int control(sqlite3_file* file, int op, void* arg) {
    if (op == SQLITE_FCNTL_PRAGMA && state.neverSynchronise) {
        const char* const* words = static_cast<char**>(arg);
        if (std::string_view(words[1]) == "synchronous" && words[2] != nullptr &&
            std::string_view(words[2]) == "FULL") {
            return SQLITE_OK;  // heard, and not done
        }
    }
    return realOf(file)->pMethods->xFileControl(realOf(file), op, arg);
}

int sectorSize(sqlite3_file* file) {
    return realOf(file)->pMethods->xSectorSize(realOf(file));
}

// None: this disk promises nothing.
int characteristics(sqlite3_file*) {
    return 0;
}

int shmMap(sqlite3_file* file, int page, int size, int extend, volatile void** out) {
    return realOf(file)->pMethods->xShmMap(realOf(file), page, size, extend, out);
}

int shmLock(sqlite3_file* file, int offset, int count, int flags) {
    return realOf(file)->pMethods->xShmLock(realOf(file), offset, count, flags);
}

void shmBarrier(sqlite3_file* file) {
    realOf(file)->pMethods->xShmBarrier(realOf(file));
}

int shmUnmap(sqlite3_file* file, int remove) {
    return realOf(file)->pMethods->xShmUnmap(realOf(file), remove);
}

const sqlite3_io_methods kMethods = {
    2,        closeFile,  readFile,  writeFile, truncateFile, syncFile,        sizeOf,
    lockFile, unlockFile, checkLock, control,   sectorSize,   characteristics, shmMap,
    shmLock,  shmBarrier, shmUnmap,  nullptr,   nullptr};

int openFile(sqlite3_vfs*, const char* name, sqlite3_file* file, int flags, int* outFlags) {
    auto& ours = of(file);
    ours.base.pMethods = nullptr;
    ours.path = nullptr;
    ours.real = reinterpret_cast<sqlite3_file*>(&ours + 1);
    const int code = state.real->xOpen(state.real, name, ours.real, flags, outFlags);
    if (code != SQLITE_OK) {
        return code;
    }
    ours.path = name != nullptr ? new std::string(name) : nullptr;
    ours.base.pMethods = &kMethods;
    if (state.watching && name != nullptr) {
        state.files.try_emplace(name, OnDisk{wholeFile(name), {}});
    }
    return SQLITE_OK;
}

int deleteFile(sqlite3_vfs*, const char* name, int syncFolder) {
    if (next() != Fault::None) {
        return SQLITE_IOERR_DELETE;
    }
    state.files.erase(name);
    return state.real->xDelete(state.real, name, syncFolder);
}

int switchOff(sqlite3* handle, char**, const sqlite3_api_routines*) {
    return sqlite3_exec(handle, "PRAGMA synchronous = OFF", nullptr, nullptr, nullptr);
}

using Entry = void (*)();

// What a power cut leaves of a file.
std::string afterCut(const OnDisk& file, std::mt19937_64& chance) {
    std::string bytes = file.synced;
    for (const auto& write : file.since) {
        if (chance() % 2 == 0) {
            continue;  // it never reached the disk
        }
        const bool torn = chance() % 4 == 0;
        for (std::size_t from = 0; from < write.bytes.size(); from += kSector) {
            const std::size_t count = std::min(kSector, write.bytes.size() - from);
            if (torn && chance() % 2 == 0) {
                continue;
            }
            const std::size_t end = write.offset + from + count;
            bytes.resize(std::max(bytes.size(), end));
            bytes.replace(write.offset + from, count, write.bytes, from, count);
        }
    }
    return bytes;
}

}  // namespace

FaultyDisk::FaultyDisk() {
    state = {};
    state.real = sqlite3_vfs_find(nullptr);
    model::require(state.real != nullptr, "FaultyDisk: SQLite has a disk");
    state.shim = *state.real;
    state.shim.zName = "faulty";
    state.shim.szOsFile = static_cast<int>(sizeof(File)) + state.real->szOsFile;
    state.shim.xOpen = openFile;
    state.shim.xDelete = deleteFile;
    sqlite3_vfs_register(&state.shim, 1);
}

FaultyDisk::~FaultyDisk() {
    sqlite3_reset_auto_extension();
    sqlite3_vfs_unregister(&state.shim);
    sqlite3_vfs_register(state.real, 1);
}

void FaultyDisk::arm(Fault fault, std::int64_t at, bool dead) {
    mend();
    state.fault = fault;
    state.at = at;
    state.dead = dead;
}

void FaultyDisk::mend() {
    state.fault = Fault::None;
    state.operations = 0;
    state.struck = false;
    state.dead = false;
}

std::int64_t FaultyDisk::operations() const {
    return state.operations;
}

bool FaultyDisk::struck() const {
    return state.struck;
}

void FaultyDisk::neverSynchronise() {
    state.neverSynchronise = true;
    sqlite3_auto_extension(reinterpret_cast<Entry>(switchOff));
}

void FaultyDisk::watchPower() {
    state.watching = true;
    state.files.clear();
}

void FaultyDisk::restorePower(std::uint64_t seed) {
    std::mt19937_64 chance(seed);
    for (const auto& [path, file] : state.files) {
        if (path.ends_with("-shm") || !std::filesystem::exists(path)) {
            continue;
        }
        std::ofstream out(path, std::ios::binary | std::ios::trunc);
        out << afterCut(file, chance);
        std::error_code ignored;
        std::filesystem::remove(path + "-shm", ignored);
    }
    state.files.clear();
    state.watching = false;
}

}  // namespace ledgerboard::tests
