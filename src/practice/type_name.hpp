#pragma once

#include <string>

namespace fw::practice {

/// What stands together on a page of types, in the order of that page.
enum class Heading {
  NameAndCount,
  Area,
  Volume,
  MissingLength,
  Nets,
  WordProblems,
  CopiesAndUnits,
  DecideAndCheck,
};
/// "Name and count".
[[nodiscard]] const char* text(Heading heading);
inline constexpr std::size_t headings = 8;

/// A type of problem that can be asked for by its key.
struct TypeName {
  std::string key;    ///< "surface"
  std::string title;  ///< "surface area"
  int level = 1;      ///< from which level on it is used: 1 to 3
  Heading heading = Heading::NameAndCount;
};

}  // namespace fw::practice
