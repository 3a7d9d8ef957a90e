#pragma once

#include <cmath>
#include <functional>
#include <string>
#include <vector>

#include "support/random.hpp"

// Families of figures by formulas that have nothing to do with the program's own.
namespace fw::solids {

using LengthValues = std::vector<double>;

/// What a family says of itself, by formulas that have nothing to do with the program's own: all labels of a figure,
/// lengths in the order of the text and then S, L, B and V as far as they exist, from as many lengths as fix it.
struct Family {
  std::string text;                                         ///< every label is "1 cm"
  std::vector<std::string> symbols;                         ///< of the labels
  std::function<LengthValues(test::Dice&)> choose;          ///< lengths that fix a figure, such as a textbook draws
  std::function<LengthValues(const LengthValues&)> labels;  ///< NaN where there is no such figure
  std::vector<std::string> fixing = {};                     ///< the labels that are those lengths themselves
};

inline constexpr double pi = 3.14159265358979323846;
inline const std::vector<std::string> of_the_whole{"surface_area", "lateral_area", "base_area", "volume"};

/// Outer measures of a prism of perimeter P, base area B and height h.
inline LengthValues with_prism(LengthValues lengths, double p, double b, double h) {
  lengths.insert(lengths.end(), {h, p * h + 2 * b, p * h, b, b * h});
  return lengths;
}
/// Sides with the distance of the foot from each.
struct Side {
  double length, distance;
};
/// Of a pyramid: height, slant heights where they are written, lateral edge where all are equal.
inline LengthValues with_pyramid(LengthValues lengths, const std::vector<Side>& sides, double b, double h,
                                 const std::vector<double>& slant_distances, double corner) {
  double lateral = 0;
  for (const Side& side : sides) {
    lateral += side.length * std::hypot(h, side.distance) / 2;
  }
  lengths.push_back(h);
  for (const double distance : slant_distances) {
    lengths.push_back(std::hypot(h, distance));
  }
  if (corner > 0) {
    lengths.push_back(std::hypot(h, corner));
  }
  lengths.insert(lengths.end(), {b + lateral, lateral, b, b * h / 3});
  return lengths;
}

inline std::function<LengthValues(test::Dice&)> between(double low, double high, std::size_t count) {
  return [=](test::Dice& dice) {
    LengthValues lengths;
    for (std::size_t i = 0; i < count; ++i) {
      lengths.push_back(dice.between(low, high));
    }
    return lengths;
  };
}

inline double heron(double a, double b, double c) {
  const double s = (a + b + c) / 2;
  return std::sqrt(s * (s - a) * (s - b) * (s - c));
}

/// Three sides of a triangle with no very flat corner, and a fourth length.
inline LengthValues triangle_and_height(test::Dice& dice) {
  const double left = dice.between(-4, 12);
  const double right = dice.between(5, 12);
  const double height = dice.between(3, 12);
  return {left + right, std::hypot(right, height), std::hypot(left, height), dice.between(3, 20)};
}

/// Bases, height and how far each leg leans in; and the height of the prism.
inline LengthValues trapezoid_and_height(test::Dice& dice) {
  const double right = dice.between(1, 6);
  const double left = dice.between(1, 6);
  const double height = dice.between(3, 12);
  const double shorter = dice.between(3, 12);
  return {shorter + left + right, shorter, std::hypot(right, height), std::hypot(left, height), dice.between(3, 20)};
}

inline void add_prisms(std::vector<Family>& all) {
  all.push_back({"prism | height: 1 cm | base square | side: 1 cm",
                 {"base.side", "height"},
                 between(3, 18, 2),
                 [](const LengthValues& x) { return with_prism({x[0]}, 4 * x[0], x[0] * x[0], x[1]); },
                 {"base.side", "height"}});
  all.push_back({"prism | height: 1 cm | base rectangle | length: 1 cm | width: 1 cm",
                 {"base.length", "base.width", "height"},
                 between(3, 18, 3),
                 [](const LengthValues& x) {
                   return with_prism({x[0], x[1]}, 2 * (x[0] + x[1]), x[0] * x[1], x[2]);
                 },
                 {"base.length", "base.width", "height"}});
  all.push_back({"prism | height: 1 cm | base triangle | sides: 1 cm, 1 cm, 1 cm | height: 1 cm",
                 {"base.base", "base.sides.2", "base.sides.3", "base.height", "height"},
                 &triangle_and_height,
                 [](const LengthValues& x) {
                   const double area = heron(x[0], x[1], x[2]);
                   return with_prism({x[0], x[1], x[2], 2 * area / x[0]}, x[0] + x[1] + x[2], area, x[3]);
                 },
                 {"base.base", "base.sides.2", "base.sides.3", "height"}});
  all.push_back({"prism | height: 1 cm | base right triangle | legs: 1 cm, 1 cm | hypotenuse: 1 cm",
                 {"base.legs.1", "base.legs.2", "base.hypotenuse", "height"},
                 between(3, 18, 3),
                 [](const LengthValues& x) {
                   const double c = std::hypot(x[0], x[1]);
                   return with_prism({x[0], x[1], c}, x[0] + x[1] + c, x[0] * x[1] / 2, x[2]);
                 },
                 {"base.legs.1", "base.legs.2", "height"}});
  all.push_back({"prism | height: 1 cm | base equilateral triangle | side: 1 cm | height: 1 cm",
                 {"base.side", "base.height", "height"},
                 between(3, 18, 2),
                 [](const LengthValues& x) {
                   const double t = x[0] * std::sqrt(3.0) / 2;
                   return with_prism({x[0], t}, 3 * x[0], x[0] * t / 2, x[1]);
                 },
                 {"base.side", "height"}});
  all.push_back({"prism | height: 1 cm | base isosceles triangle | base: 1 cm | leg: 1 cm | height: 1 cm",
                 {"base.base", "base.leg", "base.height", "height"},
                 between(3, 18, 3),
                 [](const LengthValues& x) {  // base, height, height of the prism
                   const double c = std::hypot(x[0] / 2, x[1]);
                   return with_prism({x[0], c, x[1]}, x[0] + 2 * c, x[0] * x[1] / 2, x[2]);
                 },
                 {"base.base", "base.height", "height"}});
  all.push_back({"prism | height: 1 cm | base parallelogram | base: 1 cm | side: 1 cm | height: 1 cm",
                 {"base.base", "base.side", "base.height", "height"},
                 [](test::Dice& dice) {
                   const double t = dice.between(3, 15);
                   return LengthValues{dice.between(3, 18), t * dice.between(1.05, 1.5), t, dice.between(3, 18)};
                 },
                 [](const LengthValues& x) {
                   const double t = x[1] >= x[2] ? x[2] : NAN;
                   return with_prism({x[0], x[1], t}, 2 * (x[0] + x[1]), x[0] * t, x[3]);
                 },
                 {"base.base", "base.side", "base.height", "height"}});
  all.push_back({"prism | height: 1 cm | base rhombus | diagonals: 1 cm, 1 cm | side: 1 cm | height: 1 cm",
                 {"base.diagonals.1", "base.diagonals.2", "base.side", "base.height", "height"},
                 between(4, 20, 3),
                 [](const LengthValues& x) {
                   const double s = std::hypot(x[0], x[1]) / 2;
                   return with_prism({x[0], x[1], s, x[0] * x[1] / 2 / s}, 4 * s, x[0] * x[1] / 2, x[2]);
                 },
                 {"base.diagonals.1", "base.diagonals.2", "height"}});
  all.push_back({"prism | height: 1 cm | base trapezoid | bases: 2 cm, 1 cm | legs: 1 cm, 2 cm | height: 1 cm",
                 {"base.bases.1", "base.bases.2", "base.legs.1", "base.legs.2", "base.height", "height"},
                 &trapezoid_and_height,
                 [](const LengthValues& x) {
                   const double across = x[0] - x[1];
                   const double t = 2 * heron(across, x[2], x[3]) / across;
                   return with_prism({x[0], x[1], x[2], x[3], across > 0 ? t : NAN}, x[0] + x[1] + x[2] + x[3],
                                     (x[0] + x[1]) * t / 2, x[4]);
                 },
                 {"base.bases.1", "base.bases.2", "base.legs.1", "base.legs.2", "height"}});
  all.push_back(
      {"prism | height: 1 cm | base trapezoid | bases: 2 cm, 1 cm | legs: 1 cm | height: 1 cm",
       {"base.bases.1", "base.bases.2", "base.legs.1", "base.height", "height"},
       [](test::Dice& dice) {
         const double shorter = dice.between(3, 12);
         return LengthValues{shorter + dice.between(2, 10), shorter, dice.between(3, 12), dice.between(3, 18)};
       },
       [](const LengthValues& x) {  // bases, height, height of the prism
         const double c = std::hypot((x[0] - x[1]) / 2, x[2]);
         return with_prism({x[0], x[1], x[0] > x[1] ? c : NAN, x[2]}, x[0] + x[1] + 2 * c, (x[0] + x[1]) * x[2] / 2,
                           x[3]);
       },
       {"base.bases.1", "base.bases.2", "base.height", "height"}});
  for (const int count : {5, 6, 7, 8, 12}) {
    all.push_back({"prism | height: 1 cm | base regular polygon | count: " + std::to_string(count) +
                       " | side: 1 cm | apothem: 1 cm",
                   {"base.side", "base.apothem", "height"},
                   between(3, 12, 2),
                   [count](const LengthValues& x) {
                     const double a = x[0] / (2 * std::tan(pi / count));
                     return with_prism({x[0], a}, count * x[0], count * x[0] * a / 2, x[1]);
                   },
                   {"base.side", "height"}});
  }
}

inline void add_pyramids(std::vector<Family>& all) {
  all.push_back(
      {"pyramid | height: 1 cm | slant_height: 1 cm | lateral_edge: 1 cm | base square | side: 1 cm",
       {"base.side", "height", "slant_height", "lateral_edge"},
       between(4, 20, 2),
       [](const LengthValues& x) {
         const double d = x[0] / 2;
         return with_pyramid({x[0]}, std::vector<Side>(4, {x[0], d}), x[0] * x[0], x[1], {d}, d * std::sqrt(2.0));
       },
       {"base.side", "height"}});
  all.push_back(
      {"pyramid | height: 1 cm | slant_heights: 1 cm, 1 cm | lateral_edge: 1 cm | base rectangle | length: 1 cm | "
       "width: "
       "1 cm",
       {"base.length", "base.width", "height", "slant_heights.1", "slant_heights.2", "lateral_edge"},
       between(4, 20, 3),
       [](const LengthValues& x) {
         const double l = x[0] / 2;
         const double w = x[1] / 2;
         return with_pyramid({x[0], x[1]}, {{x[0], w}, {x[1], l}, {x[0], w}, {x[1], l}}, x[0] * x[1], x[2], {w, l},
                             std::hypot(l, w));
       },
       {"base.length", "base.width", "height"}});
  all.push_back(
      {"pyramid | height: 1 cm | slant_height: 1 cm | lateral_edge: 1 cm | base equilateral triangle | side: 1 "
       "cm | height: 1 cm",
       {"base.side", "base.height", "height", "slant_height", "lateral_edge"},
       between(4, 20, 2),
       [](const LengthValues& x) {
         const double t = x[0] * std::sqrt(3.0) / 2;
         return with_pyramid({x[0], t}, std::vector<Side>(3, {x[0], t / 3}), x[0] * t / 2, x[1], {t / 3}, t * 2 / 3);
       },
       {"base.side", "height"}});
  for (const int count : {5, 6, 8}) {
    all.push_back({"pyramid | height: 1 cm | slant_height: 1 cm | lateral_edge: 1 cm | base regular polygon | count: " +
                       std::to_string(count) + " | side: 1 cm | apothem: 1 cm",
                   {"base.side", "base.apothem", "height", "slant_height", "lateral_edge"},
                   between(4, 12, 2),
                   [count](const LengthValues& x) {
                     const double a = x[0] / (2 * std::tan(pi / count));
                     return with_pyramid({x[0], a}, std::vector<Side>(static_cast<std::size_t>(count), {x[0], a}),
                                         count * x[0] * a / 2, x[1], {a}, std::hypot(a, x[0] / 2));
                   },
                   {"base.side", "height"}});
  }
  all.push_back(
      {"pyramid | height: 1 cm | slant_height: 1 cm | base rhombus | diagonals: 1 cm, 1 cm | side: 1 cm | "
       "height: 1 cm",
       {"base.diagonals.1", "base.diagonals.2", "base.side", "base.height", "height", "slant_height"},
       between(4, 20, 3),
       [](const LengthValues& x) {
         const double s = std::hypot(x[0], x[1]) / 2;
         const double t = x[0] * x[1] / 2 / s;
         return with_pyramid({x[0], x[1], s, t}, std::vector<Side>(4, {s, t / 2}), s * t, x[2], {t / 2}, 0);
       },
       {"base.diagonals.1", "base.diagonals.2", "height"}});
  all.push_back(
      {"pyramid | height: 1 cm | slant_heights: 1 cm, 1 cm | base isosceles triangle | base: 1 cm | leg: 1 cm "
       "| height: 1 cm",
       {"base.base", "base.leg", "base.height", "height", "slant_heights.1", "slant_heights.2"},
       [](test::Dice& dice) {
         const double base = dice.between(4, 18);
         return LengthValues{base, base * dice.between(0.4, 1.6), dice.between(4, 18)};
       },
       [](const LengthValues& x) {  // base, height of the triangle, height
         const double c = std::hypot(x[0] / 2, x[1]);
         const double d = x[0] * x[1] / (3 * c);
         return with_pyramid({x[0], c, x[1]}, {{x[0], x[1] / 3}, {c, d}, {c, d}}, x[0] * x[1] / 2, x[2], {x[1] / 3, d},
                             0);
       },
       {"base.base", "base.height", "height"}});
  all.push_back({"pyramid | height: 1 cm | base triangle | sides: 1 cm, 1 cm, 1 cm | height: 1 cm",
                 {"base.base", "base.sides.2", "base.sides.3", "base.height", "height"},
                 &triangle_and_height,
                 [](const LengthValues& x) {
                   const double area = heron(x[0], x[1], x[2]);
                   std::vector<Side> sides;
                   for (std::size_t i = 0; i < 3; ++i) {
                     sides.push_back({x[i], 2 * area / x[i] / 3});
                   }
                   return with_pyramid({x[0], x[1], x[2], 2 * area / x[0]}, sides, area, x[3], {}, 0);
                 },
                 {"base.base", "base.sides.2", "base.sides.3", "height"}});
}

inline std::vector<Family> all_families() {
  std::vector<Family> all;
  all.push_back({"rectangular prism | length: 1 cm | width: 1 cm | height: 1 cm",
                 {"length", "width", "height"},
                 between(3, 18, 3),
                 [](const LengthValues& x) {
                   return with_prism({x[0], x[1]}, 2 * (x[0] + x[1]), x[0] * x[1], x[2]);
                 },
                 {"length", "width", "height"}});
  all.push_back({"cube | edge: 1 cm",
                 {"edge"},
                 between(2, 20, 1),
                 [](const LengthValues& x) {
                   return LengthValues{x[0], 6 * x[0] * x[0], NAN, NAN, x[0] * x[0] * x[0]};
                 },
                 {"edge"}});
  // Surface and volume of edge 1. Source: H. S. M. Coxeter, Regular Polytopes, Table I (from memory).
  const double root5 = std::sqrt(5.0);
  const std::vector<LengthValues> regular{{4, std::sqrt(3.0), std::sqrt(2.0) / 12},
                                          {8, 2 * std::sqrt(3.0), std::sqrt(2.0) / 3},
                                          {12, 3 * std::sqrt(25 + 10 * root5), (15 + 7 * root5) / 4},
                                          {20, 5 * std::sqrt(3.0), 5 * (3 + root5) / 12}};
  for (const LengthValues& row : regular) {
    all.push_back({"regular polyhedron | edge: 1 cm | faces: " + std::to_string(static_cast<int>(row[0])),
                   {"edge"},
                   between(2, 20, 1),
                   [row](const LengthValues& x) {
                     return LengthValues{x[0], row[1] * x[0] * x[0], NAN, NAN, row[2] * x[0] * x[0] * x[0]};
                   },
                   {"edge"}});
  }
  add_prisms(all);
  add_pyramids(all);
  return all;
}

}  // namespace fw::solids
