#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "solids/solid.hpp"

namespace fw::solids {

enum class NameVerdict {
  Right,
  AskBase,      ///< "pyramid" alone: which base?
  WrongFamily,  ///< a prism called a pyramid, or the reverse
  WrongBase,    ///< the right family, another base
  Unknown,      ///< no name of a solid
};
/// Judges a typed name: capitals, hyphens, plurals, articles and one slip of spelling in a word do not count.
/// A more general right name ("rectangular prism" for a cube) is Right only where the kind lists it.
[[nodiscard]] NameVerdict judge_name(const Solid& solid, std::string_view typed);

/// Names of other solids with as many faces, for options beside the right one; most alike first.
[[nodiscard]] std::vector<std::string> names_with_face_count(std::size_t faces);

/// Names of other solids for options beside the right one: those with as many faces. Few have as few faces as a solid
/// on a circle; beside it stand the others on a circle, then those nearest to it in the number of faces.
[[nodiscard]] std::vector<std::string> names_beside(const Solid& solid);

}  // namespace fw::solids
