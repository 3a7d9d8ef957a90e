#include "exact/signs.hpp"

namespace fw::exact {

std::string raised(int n) {
  std::string text;
  for (const char digit : std::to_string(n)) {
    text += raised_digits[static_cast<std::size_t>(digit - '0')];
  }
  return text;
}

}  // namespace fw::exact
