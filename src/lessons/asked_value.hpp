#pragma once

#include <array>
#include <optional>
#include <string>
#include <string_view>

#include "lessons/lesson.hpp"

namespace fw::lessons {

/// The length of this name, "height" or "base.side"; of a list such as "slant_heights" the first that is not given, or
/// the first of all. Null for other names.
[[nodiscard]] const algebra::Symbol* length_named(const solids::Solid& solid, const std::string& name);

/// 2 for areas, 3 for the volume, 1 for a length of the solid ("height", "base.side"); nothing for other names.
[[nodiscard]] std::optional<int> dimension_of_asked(const solids::Solid& solid, const std::string& find);

/// What is asked of a solid by this name, in the solid's own unit; open faces of the problem do not count in its
/// surface area. Nothing where the solid has no such measure. `solid`: the problem's, or one that stands for it.
[[nodiscard]] std::optional<exact::Number> asked_value(const Problem& problem, const solids::Solid& solid,
                                                       const std::string& find);

/// How many "faces", "edges" or "vertices" there are.
[[nodiscard]] std::size_t count_of(const solids::Solid& solid, std::string_view find);

/// Length, width and height of a box that has a name for each; nothing for other solids.
[[nodiscard]] std::optional<std::array<exact::Number, 3>> edges_of_box(const solids::Solid& solid);

/// The edges of a box in whole numbers.
using WholeBox = std::array<long long, 3>;
/// Nothing for other solids, for edges that are not whole, and for those over 1,000.
[[nodiscard]] std::optional<WholeBox> whole_box(const solids::Solid& solid);
/// Whether the surface area and the volume are one number, in the solid's own unit.
[[nodiscard]] bool has_same_number(const solids::Solid& solid);

/// Whether a face's area is worked from two lengths.
[[nodiscard]] bool has_two_lengths(const solids::Face& face);

}  // namespace fw::lessons
