#include "solids/base_shapes/strips.hpp"

#include <algorithm>

#include "exact/print_number.hpp"

namespace fw::solids::shape {
namespace {

using exact::Number;

/// Between two sides of the polygon, from `bottom` to `top`; each width is measured at that height.
struct Strip {
  Number bottom, top;
  ExactPoint lower_left, lower_right, upper_left, upper_right;
  [[nodiscard]] Number lower_width() const { return lower_right.x - lower_left.x; }
  [[nodiscard]] Number upper_width() const { return upper_right.x - upper_left.x; }
  [[nodiscard]] bool is_rectangle() const { return lower_left.x == upper_left.x && lower_right.x == upper_right.x; }
};

struct Side {
  ExactPoint from, to;  ///< from.y < to.y
  [[nodiscard]] ExactPoint at(const Number& y) const {
    return {from.x + (to.x - from.x) * (y - from.y) / (to.y - from.y), y};
  }
};

/// Those that are not level.
std::vector<Side> sides_of(const std::vector<ExactPoint>& corners) {
  std::vector<Side> sides;
  for (std::size_t i = 0; i < corners.size(); ++i) {
    const ExactPoint& a = corners[i];
    const ExactPoint& b = corners[(i + 1) % corners.size()];
    if (!(a.y == b.y)) {
      sides.push_back(a.y < b.y ? Side{a, b} : Side{b, a});
    }
  }
  return sides;
}

std::vector<Number> heights_of(const std::vector<ExactPoint>& corners) {
  std::vector<Number> heights;
  heights.reserve(corners.size());
  for (const ExactPoint& corner : corners) {
    heights.push_back(corner.y);
  }
  std::sort(heights.begin(), heights.end());
  heights.erase(std::unique(heights.begin(), heights.end()), heights.end());
  return heights;
}

/// The rectangle that goes on in this strip; null where none does.
Strip* carried_on(std::vector<Strip>& strips, const Strip& strip) {
  const auto below = std::find_if(strips.begin(), strips.end(), [&](const Strip& other) {
    return other.is_rectangle() && strip.is_rectangle() && other.top == strip.bottom &&
           other.upper_left.x == strip.lower_left.x && other.upper_right.x == strip.lower_right.x;
  });
  return below == strips.end() ? nullptr : &*below;
}

std::vector<Strip> cut_level(const std::vector<ExactPoint>& corners) {
  const std::vector<Side> sides = sides_of(corners);
  const std::vector<Number> heights = heights_of(corners);
  std::vector<Strip> strips;
  for (std::size_t i = 0; i + 1 < heights.size(); ++i) {
    const Number& bottom = heights[i];
    const Number& top = heights[i + 1];
    const Number middle = (bottom + top) / whole(2);
    std::vector<Side> through;
    std::copy_if(sides.begin(), sides.end(), std::back_inserter(through),
                 [&](const Side& side) { return side.from.y < middle && middle < side.to.y; });
    std::sort(through.begin(), through.end(),
              [&](const Side& a, const Side& b) { return a.at(middle).x < b.at(middle).x; });
    for (std::size_t k = 0; k + 1 < through.size(); k += 2) {
      const Strip strip{
          bottom, top, through[k].at(bottom), through[k + 1].at(bottom), through[k].at(top), through[k + 1].at(top)};
      if (Strip* below = carried_on(strips, strip)) {
        below->top = top;
      } else {
        strips.push_back(strip);
      }
    }
  }
  return strips;
}

std::string work_of(const Strip& strip) {
  const std::string height = exact::class_text(strip.top - strip.bottom);
  const std::string lower = exact::class_text(strip.lower_width());
  const std::string upper = exact::class_text(strip.upper_width());
  if (strip.is_rectangle()) {
    return lower + " × " + height;
  }
  if (strip.lower_width().is_zero() || strip.upper_width().is_zero()) {
    return (strip.lower_width().is_zero() ? upper : lower) + " × " + height + " ÷ 2";
  }
  return "(" + lower + " + " + upper + ") × " + height + " ÷ 2";
}

}  // namespace

Strips cut_into_strips(const std::vector<ExactPoint>& corners) {
  std::vector<ExactPoint> turned;
  turned.reserve(corners.size());
  for (const ExactPoint& corner : corners) {
    turned.push_back({corner.y, corner.x});
  }
  const std::vector<Strip> level = cut_level(corners);
  const std::vector<Strip> upright = cut_level(turned);
  Strips strips;
  for (const Strip& strip : upright.size() < level.size() ? upright : level) {
    const bool is_triangle = strip.lower_width().is_zero() || strip.upper_width().is_zero();
    ++(strip.is_rectangle() ? strips.rectangles : is_triangle ? strips.triangles : strips.trapezoids);
    strips.work += (strips.work.empty() ? "" : " + ") + work_of(strip);
  }
  return strips;
}

}  // namespace fw::solids::shape
