#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "solids/solid.hpp"

namespace fw::lessons {

/// The measures of the whole that a lesson can give as known: surface_area, lateral_area, base_area, volume.
[[nodiscard]] const std::vector<std::string>& whole_measures();
/// 2 for areas, 3 for the volume; nothing for other names.
[[nodiscard]] std::optional<int> dimension_of_whole(std::string_view name);

/// The measures that can be asked of a solid: those of its whole that it has, and every length that its kind speaks of
/// ("slant_height", "base.side"). What else can be asked is known to the types of questions, in rooms above.
[[nodiscard]] std::vector<std::string> askable(const solids::Solid& solid);

/// Those of a dimension: areas to cover, volumes to fill, lengths to edge ("edges" is all of them together).
[[nodiscard]] std::vector<std::string> measures_of_dimension(const solids::Solid& solid, int dimension);

}  // namespace fw::lessons
