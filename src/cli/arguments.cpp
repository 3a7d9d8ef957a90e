#include "cli/arguments.hpp"

#include <CLI/CLI.hpp>
#include <charconv>
#include <sstream>

namespace fw::cli {

CLI::Validator number_between(double least, double most) {
  std::ostringstream range;
  range << "number from " << least << " to " << most;
  const auto refusal = [least, most, words = range.str()](const std::string& text) {
    double number = 0;
    const bool is_number = CLI::detail::lexical_cast(text, number) && number >= least && number <= most;
    return is_number ? std::string() : "\"" + text + "\" is not a " + words;
  };
  return {refusal, range.str()};
}

CLI::Validator whole_number() {
  const auto refusal = [](const std::string& text) {
    std::uint64_t number = 0;
    const char* end = text.data() + text.size();
    const auto read = std::from_chars(text.data(), end, number);
    const bool is_whole = read.ec == std::errc() && read.ptr == end;
    return is_whole ? std::string() : "\"" + text + "\" is not a whole number from 0 to 18446744073709551615";
  };
  return {refusal, "whole number"};
}

}  // namespace fw::cli
