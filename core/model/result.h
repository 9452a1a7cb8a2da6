// How does an operation say that it could not be done, and why?
//
// Operating errors (bad input, a missing record, a damaged file) are Results. Programmer errors are
// checks that stay on (see check.h). No public function of core lets an exception out, except that
// arithmetic on the strong types throws OverflowError (overflow.h), caught at the edge of a verb.
#pragma once

#include <optional>
#include <string>
#include <utility>
#include <variant>

namespace ledgerboard::model {

// What kind of failure it is. The command line turns each into its exit status.
enum class ErrorCode {
    CannotBeMet,  // the request is well formed but cannot be carried out as things are
    WrongUse,     // the request itself is malformed: an unknown word, a value that can't be read
    Damaged,      // the book is damaged, foreign, newer, or cannot be written
};

// A failure. `message` is a whole sentence for the person who must act: it names the place
// (file, line, field or record) and what to do about it.
struct Error {
    ErrorCode code = ErrorCode::CannotBeMet;
    std::string message;
};

[[nodiscard]] inline Error cannotBeMet(std::string message) {
    return Error{ErrorCode::CannotBeMet, std::move(message)};
}

[[nodiscard]] inline Error wrongUse(std::string message) {
    return Error{ErrorCode::WrongUse, std::move(message)};
}

[[nodiscard]] inline Error damaged(std::string message) {
    return Error{ErrorCode::Damaged, std::move(message)};
}

// Either a value or an Error. Requires: value() only when ok(), error() only when not.
template <class T>
class [[nodiscard]] Result {
  public:
    // Implicit, so that a function can simply return a value or an Error.
    Result(T value) : held_(std::in_place_index<0>, std::move(value)) {}  // NOLINT

    Result(Error error) : held_(std::in_place_index<1>, std::move(error)) {}  // NOLINT

    [[nodiscard]] bool ok() const { return held_.index() == 0; }

    [[nodiscard]] const T& value() const& { return std::get<0>(held_); }

    [[nodiscard]] T& value() & { return std::get<0>(held_); }

    // By value, so that a loop over a temporary's value() walks something that lives.
    [[nodiscard]] T value() && { return std::get<0>(std::move(held_)); }

    [[nodiscard]] const Error& error() const { return std::get<1>(held_); }

  private:
    std::variant<T, Error> held_;
};

template <>
class [[nodiscard]] Result<void> {
  public:
    Result() = default;

    Result(Error error) : error_(std::move(error)) {}  // NOLINT

    [[nodiscard]] bool ok() const { return !error_.has_value(); }

    [[nodiscard]] const Error& error() const { return *error_; }

  private:
    std::optional<Error> error_;
};

}  // namespace ledgerboard::model
