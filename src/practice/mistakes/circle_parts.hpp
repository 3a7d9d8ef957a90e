#pragma once

#include <optional>
#include <string_view>

#include "practice/figure.hpp"

// What mistakes with circles are worked out from; private to the folder.
namespace fw::practice {

inline constexpr double circle_pi = 3.14159265358979323846;

/// The measures of a solid that stands on a circle.
struct Circle {
  double radius = 0, height = 0;
  double slant = 0;  ///< 0 where there is none
  double around = 0;
  double disk = 0, side = 0;    ///< areas
  double disks = 0, sides = 0;  ///< how many count for what is asked
  bool comes_to_a_point = false;
};
/// Nothing for a solid that stands on none.
[[nodiscard]] std::optional<Circle> circle_of(const Figure& figure);

/// Whether the lesson gives the length of this name.
[[nodiscard]] bool is_labelled(const Figure& figure, std::string_view name);

}  // namespace fw::practice
