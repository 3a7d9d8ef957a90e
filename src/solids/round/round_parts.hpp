#pragma once

#include <functional>

#include "solids/kind_parts.hpp"

// What the kinds that stand on a circle share; private to the room.
namespace fw::solids {

/// The measures of a circle, any one of which gives the others, and the value of π that a lesson works with. Their
/// names are the keys of their fields.
struct CircleSymbols {
  algebra::Symbol radius{"radius", "r", 1};
  algebra::Symbol diameter{"diameter", "d", 1};
  algebra::Symbol circumference{"circumference", "C", 1};
  std::string of_which;      ///< behind their titles where a solid has two circles: " of the top"
  std::string pi = "exact";  ///< or "3.14", "22/7"

  /// `count` times π times a factor, as a class writes it: "2 · π · r", "3.14 · r²", "22 · r² ÷ 7".
  [[nodiscard]] algebra::Expression times_pi(const algebra::Expression& factor, int count = 1) const;
  /// "the area of a circle is π times the radius squared", and the value of π where a lesson has its own.
  [[nodiscard]] words::Message with_pi(words::Message sentence) const;
};
/// What the field "pi" says.
[[nodiscard]] std::string pi_of(const Description& description);

/// Of a solid on a circle that shares these traits with one on a polygon.
[[nodiscard]] Traits round(Traits traits);

/// The value of π that a lesson works with.
[[nodiscard]] Field pi_field();
/// "radius", "diameter" and "circumference", or what the circle's measures are called.
[[nodiscard]] std::vector<Field> circle_fields(const CircleSymbols& circle = {});
/// Adds the circle's measures, and d = 2r and C = 2πr.
void add_rim(SolidStatement& statement, const CircleSymbols& circle);
/// The same of the circle that the solid stands on, and B = πr².
void add_circle(SolidStatement& statement, const CircleSymbols& circle);

/// How many strips a face that bends is made of: few enough to be quick, and so many that a rim 400 pixels across is
/// nowhere a quarter of a pixel off. Odd, so that the middle strip lies opposite the seam.
inline constexpr std::size_t strip_count = 73;

/// A circle in corners, counterclockwise, as long round as the true one. Strip i runs from corner i to i + 1; the
/// middle one is in front, across the y axis, and the seam behind.
class RoundOutline {
 public:
  RoundOutline(double radius, double circumference);
  [[nodiscard]] geometry::Vec2 corner(std::size_t i) const;
  [[nodiscard]] double radius() const { return radius_; }                ///< as labelled
  [[nodiscard]] double corner_radius() const { return corner_radius_; }  ///< a little more
  [[nodiscard]] double strip_width() const { return strip_width_; }
  [[nodiscard]] double front() const;  ///< y of the middle strip: how far it is in front of the center, negative

 private:
  double radius_, strip_width_, corner_radius_;
};

/// The corner of the rim at which a length is labelled: to the right, in front.
inline constexpr std::size_t labelled_corner = strip_count / 2 + 2 * strip_count / 9;

/// The corners and loops of a solid between two circles: the one below, the one above, and the strips from `below(i)`
/// up to `above(i)`.
void add_rings(BodyStatement& body, const std::function<geometry::Vec3(std::size_t)>& below,
               const std::function<geometry::Vec3(std::size_t)>& above);
/// One after another, with the faces that hang on the middle strip. `first`: the loop of the first strip.
[[nodiscard]] HingePairs strip_hinges(std::size_t first, const std::vector<std::size_t>& hanging);

/// The face of a disk: π × r². `clear`: a point of its rim, a quarter turn from the lengths.
[[nodiscard]] FaceStatement disk(const CircleSymbols& circle, geometry::Vec3 center, geometry::Vec3 rim,
                                 geometry::Vec3 clear);
/// A length of the circle with its label: the radius from `center` to `rim`, the diameter from `across` to `rim`, and
/// the circumference at the edge from `rim` to `next`.
void add_circle_marks(BodyStatement& body, const CircleSymbols& circle, std::size_t face, geometry::Vec3 center,
                      geometry::Vec3 rim, geometry::Vec3 across, geometry::Vec3 next);

}  // namespace fw::solids
