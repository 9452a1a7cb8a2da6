#include "tests/crash/script.h"

#include <filesystem>

#include "core/model/check.h"

namespace ledgerboard::tests {

namespace field = model::field;
using model::Result;
using store::Action;

namespace {

constexpr int kSteps = 7;
constexpr std::size_t kIds = 16;

}  // namespace

Script::Script(std::string path) : path_(std::move(path)), beginning_(path_ + ".beginning") {
    auto made = store::Book::create(beginning_, "Ann", at(0), fixedChance(1));
    model::require(made.ok(), "Script: a book to begin from");
    for (std::size_t k = 0; k < kIds; ++k) {
        ids_.push_back(made.value().newId(at(0)));
    }
    Action action("begin");
    action.set(ids_[0], field::Job::name, std::string("Elm Street"));
    action.set(ids_[1], field::Space::job, ids_[0]);
    action.set(ids_[1], field::Space::name, std::string("Bath"));
    model::require(made.value().commit(action, at(1)).ok(), "Script: a house");
}

int Script::steps() {
    return kSteps;
}

model::Instant Script::at(int number) const {
    return model::Instant::fromMilliseconds(1'775'476'800'000 + number * 60'000);
}

void Script::begin() {
    close();
    for (const auto* tail : {"", "-wal", "-shm"}) {
        std::filesystem::remove(path_ + tail);
    }
    std::filesystem::copy_file(beginning_, path_);
    model::require(open().ok(), "Script: the book opens");
}

Result<void> Script::open() {
    auto opened = store::Book::open(path_, fixedChance(2));
    if (!opened.ok()) {
        return opened.error();
    }
    book_ = std::make_unique<store::Book>(std::move(opened).value());
    return {};
}

Result<void> Script::step(int number) {
    switch (number) {
        case 2: {
            auto done = book_->undo(at(10 + number));
            return done.ok() ? Result<void>() : Result<void>(done.error());
        }
        case 4:
            return exchange(number);
        case 5:
            close();  // what the log before the file holds goes into the file
            return open();
        default:
            return book(number);
    }
}

// An item with its money, and a spend: one action.
Result<void> Script::book(int number) {
    const auto item = ids_[2 + static_cast<std::size_t>(number)];
    Action action("step " + std::to_string(number));
    action.set(item, field::Item::job, ids_[0]);
    action.set(item, field::Item::space, ids_[1]);
    action.set(item, field::Item::treatment, std::string("replace"));
    action.set(item, field::Item::object, "object " + std::to_string(number));
    action.set(item, field::Item::lumpSum, std::int64_t{100'000} + number);
    return book_->commit(action, at(10 + number));
}

// Forty entries of another device and how far that went.
Result<void> Script::exchange(int number) {
    store::SyncBook sync(*book_);
    store::Taking taking;
    for (std::int64_t k = 1; k <= 40; ++k) {
        store::Entry entry;
        entry.name = {ids_[kIds - 1], store::Lane::Shared, k};
        entry.clock = model::HybridClock{}.next(at(10 + number));
        entry.record = ids_[10 + static_cast<std::size_t>(k % 4)];
        entry.field = k <= 4 ? field::Space::job : field::Space::name;
        entry.value = k <= 4 ? model::Value{ids_[0]} : model::Value{"Room " + std::to_string(k)};
        taking.entries.push_back(entry);
    }
    taking.remember = {{"sync.cursor", std::string("l.40")}};
    auto taken = sync.take(taking);
    return taken.ok() ? Result<void>() : Result<void>(taken.error());
}

std::string Script::holds() {
    store::SyncBook sync(*book_);
    const auto cursor = sync.recall("sync.cursor").value();
    const auto* text = std::get_if<std::string>(&cursor);
    return book_->dump().value() + "cursor " + (text != nullptr ? *text : "none") + "\n";
}

std::string Script::wrong() {
    std::string found;
    for (const auto& finding : book_->verify(false).value().findings) {
        found += finding.what + "\n";
    }
    return found;
}

std::size_t Script::entries() {
    return book_->entries().value().size();
}

}  // namespace ledgerboard::tests
