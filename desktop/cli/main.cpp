// The program `ledgerboard`: the one place that reads the clock, chance, the environment and the
// terminal, and hands them on.
#include <chrono>
#include <cstdlib>
#include <ctime>
#include <filesystem>
#include <functional>
#include <iostream>
#include <sys/ioctl.h>
#include <thread>
#include <unistd.h>

#include "core/intake/bank/bank_program.h"
#include "core/model/machine.h"

#include "desktop/cli/run.h"

namespace {

using namespace ledgerboard;

std::string environment(const char* name) {
    const char* value = std::getenv(name);
    return value == nullptr ? "" : value;
}

// Calls `ask` with this process in a time zone; empty: in this computer's. Runs before any thread
// is made: TZ belongs to the whole process. Errors: a zone that this computer does not know.
template <class T>
model::Result<T> inZone(const std::string& zone, const std::function<model::Result<T>()>& ask) {
    const std::string before = environment("TZ");
    std::error_code problem;
    const bool known = !zone.empty() && zone.find("..") == std::string::npos &&
                       std::filesystem::is_regular_file("/usr/share/zoneinfo/" + zone, problem);
    if (!known && !zone.empty()) {
        return model::cannotBeMet("Time zone: this computer knows no zone \"" + zone +
                                  "\"; set it to one such as America/Chicago with 'ledgerboard "
                                  "set job \"Time zone\" ZONE'");
    }
    if (known) {
        ::setenv("TZ", zone.c_str(), 1);
    }
    ::tzset();
    auto answer = ask();
    if (known) {
        if (before.empty()) {
            ::unsetenv("TZ");
        } else {
            ::setenv("TZ", before.c_str(), 1);
        }
        ::tzset();
    }
    return answer;
}

model::Result<model::Date> dayIn(model::Instant instant, const std::string& zone) {
    return inZone<model::Date>(zone, [&]() -> model::Result<model::Date> {
        const std::time_t seconds = instant.milliseconds() / 1000;
        std::tm local{};
        ::localtime_r(&seconds, &local);
        auto day = model::Date::fromYmd(local.tm_year + 1900, local.tm_mon + 1, local.tm_mday);
        return day.ok() ? day.value() : instant.utcDate();
    });
}

model::Result<model::Instant> instantIn(const std::string& text, const std::string& zone) {
    return inZone<model::Instant>(zone, [&]() -> model::Result<model::Instant> {
        std::tm local{};
        const char* end = ::strptime(text.c_str(), "%Y-%m-%dT%H:%M:%S", &local);
        local.tm_isdst = -1;
        const std::time_t seconds = end != nullptr && *end == 0 ? std::mktime(&local) : -1;
        if (seconds == -1) {
            return model::cannotBeMet(text + " is no time of a clock");
        }
        return model::Instant::fromMilliseconds(std::int64_t{seconds} * 1000);
    });
}

std::string thisProgram() {
    std::error_code problem;
    return std::filesystem::read_symlink("/proc/self/exe", problem).string();
}

std::string thisZone() {
    if (const std::string zone = environment("TZ"); !zone.empty()) {
        return zone;
    }
    std::error_code problem;
    const std::string link = std::filesystem::read_symlink("/etc/localtime", problem).string();
    const std::string mark = "/zoneinfo/";
    const auto at = link.find(mark);
    return at == std::string::npos ? "" : link.substr(at + mark.size());
}

bool showsUnicode() {
    for (const auto* name : {"LC_ALL", "LC_CTYPE", "LANG"}) {
        const std::string value = environment(name);
        if (!value.empty()) {
            return value.find("UTF-8") != std::string::npos ||
                   value.find("utf8") != std::string::npos;
        }
    }
    return false;
}

std::size_t terminalWidth() {
    // What the person set goes before what the terminal says.
    constexpr unsigned long kWidest = 1000;
    if (const auto said = std::strtoul(environment("COLUMNS").c_str(), nullptr, 10);
        said >= 40 && said <= kWidest) {
        return said;
    }
    winsize size{};
    if (::ioctl(STDOUT_FILENO, TIOCGWINSZ, &size) == 0 && size.ws_col >= 40) {
        return size.ws_col;
    }
    return 80;
}

}  // namespace

int main(int argc, char** argv) {
    const bool terminal = ::isatty(STDOUT_FILENO) != 0;
    const bool dumb = environment("TERM") == "dumb";
    std::string book = environment("LEDGERBOARD_BOOK");
    cli::Surroundings surroundings{
        model::clockNow,
        dayIn,
        thisZone(),
        model::fillRandom,
        std::cin,
        std::cout,
        std::cerr,
        book.empty() ? "ledgerboard.book" : book,
        terminalWidth(),
        terminal && !dumb,
        showsUnicode() && !dumb,
        [](int ms) { std::this_thread::sleep_for(std::chrono::milliseconds(ms)); },
        instantIn,
        [](const std::string& file, const std::string& zone) {
            return intake::readByBankProgram(intake::bankProgramBeside(thisProgram()), file, zone);
        },
    };
    try {
        return cli::run({argv + 1, argv + argc}, surroundings);
    } catch (const std::exception& error) {
        // The last net. An action is written whole or not at all, so the book holds.
        std::cerr << "ledgerboard: stopped by something unforeseen (" << error.what()
                  << "): see with 'ledgerboard list' whether it was done\n";
        return cli::kCannotBeMet;
    }
}
