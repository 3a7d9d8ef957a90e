#pragma once

#include <vector>

#include "tasks/things/thing.hpp"

// Whole lengths with which areas and volumes come out whole; private to the room.
namespace fw::tasks {

/// A right triangle with whole sides.
struct Triple {
  int leg, other, hypotenuse;
};
/// Every one whose hypotenuse is at most 65, and up to 260 those that are five times a smaller one or more; each leg
/// first once, by the hypotenuse. Source: Euclid, Elements X, lemma 1 to proposition 29; the limits: common practice,
/// no source.
[[nodiscard]] const std::vector<Triple>& triples();

/// Shapes on a right triangle, or on two of one height, that have sizes within the form's ranges. Source of the ways:
/// common practice, no source.
struct CleanTriangle {
  int base, height, second, third;  ///< the sides that stand on the base: one leg twice, a hypotenuse, or two sides
};
[[nodiscard]] std::vector<CleanTriangle> isosceles_triangles(const Form& form);
[[nodiscard]] std::vector<CleanTriangle> right_triangles(const Form& form);
[[nodiscard]] std::vector<CleanTriangle> scalene_triangles(const Form& form);
struct CleanTrapezoid {
  int longer, shorter, height, leg;
};
[[nodiscard]] std::vector<CleanTrapezoid> trapezoids(const Form& form);
struct CleanRhombus {
  int longer, shorter, side;
};
[[nodiscard]] std::vector<CleanRhombus> rhombuses(const Form& form);
struct CleanSpire {
  int length, width, height, on_length, on_width;  ///< the last two: slant heights
};
/// On a square: of equal length and width.
[[nodiscard]] std::vector<CleanSpire> square_spires(const Form& form);
[[nodiscard]] std::vector<CleanSpire> rectangular_spires(const Form& form);

/// Up to a point over a circle: a triple of radius, height and slant height.
[[nodiscard]] std::vector<Triple> round_spires(const Form& form);

/// The numbers of a range, but for those that are hard to multiply where some are easy: up to 20, or tens.
[[nodiscard]] std::vector<int> numbers_in(const Range& range, bool easy);

}  // namespace fw::tasks
