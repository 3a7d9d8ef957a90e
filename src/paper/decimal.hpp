#pragma once

#include <cmath>
#include <string>

namespace fw::paper {

/// A coordinate as files have it: rounded to so many decimals, without zeros at the end, the same in every language of
/// the machine.
[[nodiscard]] inline std::string decimal(double value, int places = 4) {
  long long one = 1;
  for (int i = 0; i < places; ++i) {
    one *= 10;
  }
  const long long number = std::llround(value * static_cast<double>(one));
  const long long size = number < 0 ? -number : number;
  std::string text = (number < 0 ? "-" : "") + std::to_string(size / one);
  if (size % one != 0) {
    const std::string digits = std::to_string(one + size % one).substr(1);
    text += "." + digits.substr(0, digits.find_last_not_of('0') + 1);
  }
  return text;
}

}  // namespace fw::paper
