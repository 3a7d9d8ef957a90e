#pragma once

namespace CLI {
class Validator;
}

// What an option takes, where the library would take more: "nan" as a number, "-1" and 10^23 as a whole number.
namespace fw::cli {

/// What --help calls the value of an option that is a file's name; shells then complete files.
inline constexpr const char* file_type = "FILE";

/// A decimal number from `least` to `most`; nothing else.
[[nodiscard]] CLI::Validator number_between(double least, double most);
/// Digits alone, up to 18446744073709551615.
[[nodiscard]] CLI::Validator whole_number();

}  // namespace fw::cli
