#pragma once

#include <optional>
#include <string>
#include <vector>

#include "algebra/notation.hpp"
#include "lessons/lesson.hpp"
#include "solids/solid.hpp"

namespace fw::reasoning {

using geometry::FaceId;

/// Alike faces, or edges of one length, that are added up together: 4 × 27 cm².
struct AlikeAddend {
  std::size_t times = 1;
  exact::Number each;
  std::optional<solids::GroupId> group;  ///< of faces
  std::vector<FaceId> faces;             ///< none: edges
};

/// What is covered or edged, added up.
struct AmountSum {
  std::vector<AlikeAddend> addends;  ///< in the order of the faces, or of the solid's measures
  std::vector<FaceId> faces;         ///< that count, in face order; none for edges
  exact::Number total;
  units::Unit unit = units::Unit::none();
  algebra::NotationLine line;  ///< "area = 36 cm² + 4 × 27 cm²", each term with its group, and the total after it
};

/// The faces that count in a problem for "surface_area", "lateral_area" or "base_area" (one base), and their sum. Open
/// faces do not count.
[[nodiscard]] AmountSum faces_that_count(const lessons::Problem& problem, const std::string& measure, int places);

/// All edges of a solid. Lengths that are a measure of the solid are exact; those of others, in pyramids whose lateral
/// edges differ, are the root of a square that is right to nine decimals.
[[nodiscard]] AmountSum all_edges(const solids::Solid& solid, int places);

}  // namespace fw::reasoning
