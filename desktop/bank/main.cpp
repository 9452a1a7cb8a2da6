// ledgerboard-ofx: which lines does a bank's download hold?
//
// Reads one Open Financial Exchange file (.ofx, .qfx; versions 1 and 2) with libofx and prints its
// lines as JSON, in the form README.md beside this file tells. A program of its own, because libofx
// is under the GNU General Public License: it shares no code with the rest of Ledgerboard, which
// runs it and reads what it prints.
//
// SPDX-License-Identifier: GPL-2.0-or-later
#include <clocale>
#include <cmath>
#include <cstdio>
#include <cstdlib>
#include <ctime>
#include <libofx/libofx.h>
#include <string>
#include <sys/stat.h>
#include <unistd.h>

#include <nlohmann/json.hpp>

namespace {

constexpr int kDone = 0;
constexpr int kCannotBeRead = 1;
constexpr int kWrongUse = 2;
constexpr off_t kLargestFile = 64LL << 20;  // years of lines
constexpr double kLargestAmount = 9e13;     // beyond it a double does not hold every cent
constexpr double kHalfPercentOfCent = 0.00005;
constexpr std::size_t kFiguresShown = 4;

struct Statement {
    nlohmann::json lines = nlohmann::json::array();
    std::string currency;
    std::string problem;  // the first one; nothing is printed then

    void refuse(const std::string& why) { problem = problem.empty() ? why : problem; }
};

// The last figures of an account: enough to tell one's own apart, and no secret.
std::string shortAccount(const std::string& number) {
    std::string figures;
    for (const char c : number) {
        if ((c >= '0' && c <= '9') || (c >= 'A' && c <= 'Z') || (c >= 'a' && c <= 'z')) {
            figures += c;
        }
    }
    return figures.size() <= kFiguresShown ? figures
                                           : figures.substr(figures.size() - kFiguresShown);
}

std::string dayText(std::time_t instant) {
    std::tm local{};
    char text[16] = "";
    if (localtime_r(&instant, &local) == nullptr ||
        std::strftime(text, sizeof text, "%Y-%m-%d", &local) == 0) {
        return "";
    }
    return text;
}

// "-431.20". Empty where it is no sum of cents.
std::string amountText(double amount) {
    const double cents = std::round(amount * 100);
    if (!std::isfinite(amount) || std::fabs(amount) > kLargestAmount ||
        std::fabs(cents / 100 - amount) > kHalfPercentOfCent) {
        return "";
    }
    char text[40];
    std::snprintf(text, sizeof text, "%.2f", cents / 100);
    return text;
}

int onStatus(const OfxStatusData status, void* to) {
    if (status.code_valid != 0 && status.severity_valid != 0 &&
        status.severity == OfxStatusData::ERROR) {
        std::string why = "the bank put an error in place of lines (" +
                          std::to_string(status.code) +
                          "): " + (status.name != nullptr ? status.name : "");
        if (status.server_message_valid != 0 && status.server_message != nullptr) {
            why += std::string(", ") + status.server_message;
        }
        static_cast<Statement*>(to)->refuse(why);
    }
    return 0;
}

int onAccount(const OfxAccountData account, void* to) {
    Statement& statement = *static_cast<Statement*>(to);
    if (account.currency_valid != 0) {
        if (!statement.currency.empty() && statement.currency != account.currency) {
            statement.refuse("its accounts are in different currencies");
        }
        statement.currency = account.currency;
    }
    return 0;
}

int onLine(const OfxTransactionData line, void* to) {
    Statement& statement = *static_cast<Statement*>(to);
    const std::string place = "line " + std::to_string(statement.lines.size() + 1) + ": ";
    if (line.fi_id_valid == 0 || line.amount_valid == 0 || line.date_posted_valid == 0) {
        statement.refuse(place + "id (FITID), date (DTPOSTED) or amount (TRNAMT) is missing");
        return 0;
    }
    const std::string amount = amountText(line.amount);
    const std::string day = dayText(line.date_posted);
    if (amount.empty() || day.empty()) {
        statement.refuse(place + "its amount (TRNAMT) or date (DTPOSTED) can't be read");
        return 0;
    }
    std::string memo = line.memo_valid != 0 ? line.memo : "";
    if (line.check_number_valid != 0) {
        memo += (memo.empty() ? "check " : ", check ") + std::string(line.check_number);
    }
    statement.lines.push_back(
        {{"account", shortAccount(line.account_id_valid != 0 ? line.account_id : "")},
         {"bank_id", line.fi_id},
         {"date", day},
         {"amount", amount},
         {"payee", line.name_valid != 0 ? line.name : ""},
         {"memo", memo}});
    return 0;
}

// libofx takes a file that ends early for whole where the rest would have been closing tags; lines
// may be missing then.
bool isWhole(const std::string& file) {
    constexpr off_t kEnd = 512;
    std::string end;
    if (std::FILE* opened = std::fopen(file.c_str(), "rb"); opened != nullptr) {
        ::fseeko(opened, 0, SEEK_END);
        const off_t size = ::ftello(opened);
        ::fseeko(opened, size > kEnd ? size - kEnd : 0, SEEK_SET);
        char part[kEnd];
        end.assign(part, std::fread(part, 1, sizeof part, opened));
        std::fclose(opened);
    }
    for (char& c : end) {
        c = static_cast<char>(c >= 'a' && c <= 'z' ? c - 'a' + 'A' : c);
    }
    return end.find("</OFX>") != std::string::npos;
}

int complain(int status, const std::string& what) {
    std::fprintf(stderr, "ledgerboard-ofx: %s\n", what.c_str());
    return status;
}

// libofx reports to standard error what it stumbles over, page after page; that is not for people.
void quiet() {
    if (std::freopen("/dev/null", "w", stderr) == nullptr) {
        std::exit(kCannotBeRead);
    }
}

}  // namespace

int main(int argc, char** argv) {
    if (argc != 2 && argc != 3) {
        return complain(kWrongUse,
                        "use: ledgerboard-ofx FILE [TIME-ZONE]\n"
                        "Prints the lines of a bank's OFX download as JSON.");
    }
    const std::string file = argv[1];

    struct stat info {};

    if (::stat(file.c_str(), &info) != 0 || !S_ISREG(info.st_mode) ||
        ::access(file.c_str(), R_OK) != 0) {
        return complain(kCannotBeRead, file + ": there is no such file, or it can't be read");
    }
    if (info.st_size > kLargestFile) {
        return complain(kCannotBeRead, file + ": larger than 64 MiB");
    }
    if (argc == 3) {
        ::setenv("TZ", argv[2], 1);  // days are those at the house
        ::tzset();
    }
    const int errors = ::dup(STDERR_FILENO);
    quiet();
    Statement statement;
    LibofxContextPtr context = libofx_get_new_context();
    ofx_set_status_cb(context, onStatus, &statement);
    ofx_set_account_cb(context, onAccount, &statement);
    ofx_set_transaction_cb(context, onLine, &statement);
    const int failed = libofx_proc_file(context, file.c_str(), OFX);
    libofx_free_context(context);
    ::dup2(errors, STDERR_FILENO);
    if (!statement.problem.empty()) {
        return complain(kCannotBeRead, file + ": " + statement.problem);
    }
    if (failed != 0 || !isWhole(file)) {
        return complain(kCannotBeRead,
                        file +
                            ": not a whole OFX download (cut off, not OFX, or a line in it lacks "
                            "its id, date or amount): download it again");
    }
    const nlohmann::json document = {
        {"form", 1}, {"currency", statement.currency}, {"lines", statement.lines}};
    const std::string text =
        document.dump(1, ' ', false, nlohmann::json::error_handler_t::replace) + "\n";
    const bool written =
        std::fwrite(text.data(), 1, text.size(), stdout) == text.size() && std::fflush(stdout) == 0;
    return written ? kDone : complain(kCannotBeRead, "standard output can't be written");
}
