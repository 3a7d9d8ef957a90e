#pragma once

#include <initializer_list>
#include <string>
#include <vector>

#include "practice/figure.hpp"
#include "words/message.hpp"

namespace fw::practice {

/// A number that a mistake leads to, and the faces that it speaks of.
struct Found {
  double value = 0;
  std::vector<FaceId> faces;
};
using Finds = std::vector<Found>;

/// What a pattern says of a number; one without the place {n} says nothing of it. "286"; or "the number", where it is
/// not known any more.
[[nodiscard]] words::Message about(words::Pattern pattern, const words::Value& number);

/// What is said of a wrong number: what the number {n} would be, in the conditional, and one action.
struct Saying {
  words::Pattern says, asks;
  Saying(words::Pattern says_of, words::Pattern asks_for) : says(says_of), asks(asks_for) {}
  [[nodiscard]] words::Message about(const words::Value& number) const;
  friend bool operator==(const Saying& a, const Saying& b) {
    return a.says.text() == b.says.text() && a.asks.text() == b.asks.text();
  }
};

/// A row of the table of mistakes: a way that students are known to take, and the number that it leads to in any
/// solid. The way reads measures, roles, groups and areas of faces; where it is no way for a solid it finds nothing.
/// Source of the rows' ids and ways: studies named beside them; all others are common practice, no source.
struct Signature {
  std::string id;            ///< the family's letter and a number: "A1"
  std::vector<Asked> asked;  ///< for which questions it is a mistake
  void (*way)(const Figure& figure, Finds& finds);
  Saying saying;
  bool is_rare = false;  ///< told only where no other row leads to the number
};

/// All mistakes, the likeliest first: wrong quantity (A), halves and factors (C, F), heights and bases (D, E), faces
/// (B), missing measures (K), word problems (L), copies (H), units (G). Circles (O) come before them all.
[[nodiscard]] const std::vector<Signature>& signatures();

/// Mistakes that always lead to one number, and the question that tells them apart.
struct SharedNumber {
  std::vector<std::string> ids;
  words::Message question;
};
[[nodiscard]] const std::vector<SharedNumber>& shared_numbers();

/// A wrong number of a problem with the mistake that leads to it.
struct WrongNumber {
  const Signature* signature = nullptr;
  double value = 0;  ///< in the unit in which the answer is asked
  std::vector<FaceId> faces;
};
/// Every wrong number that the table finds, in the table's order; never the truth itself (nearer than one part in a
/// thousand million), and no number twice for one mistake.
[[nodiscard]] std::vector<WrongNumber> wrong_numbers(const Figure& figure);
/// The same with those that lead to the truth, because of the numbers chosen.
[[nodiscard]] std::vector<WrongNumber> all_wrong_numbers(const Figure& figure);

// The table's parts, each in a file of its own.
[[nodiscard]] std::vector<Signature> circle_signatures();          ///< O, of solids that stand on a circle
[[nodiscard]] std::vector<Signature> circle_unknown_signatures();  ///< O, of their missing measures
[[nodiscard]] std::vector<Signature> quantity_signatures();        ///< A
[[nodiscard]] std::vector<Signature> factor_signatures();          ///< C, F
[[nodiscard]] std::vector<Signature> height_signatures();          ///< D, E
[[nodiscard]] std::vector<Signature> face_signatures();            ///< B
[[nodiscard]] std::vector<Signature> base_area_signatures();       ///< A, B, C of one base
[[nodiscard]] std::vector<Signature> unknown_signatures();         ///< K
[[nodiscard]] std::vector<Signature> supply_signatures();          ///< L
[[nodiscard]] std::vector<Signature> packing_signatures();         ///< L of items that are packed, and of boxes
[[nodiscard]] std::vector<Signature> scaling_signatures();         ///< H
[[nodiscard]] std::vector<Signature> unit_signatures();            ///< G, of labels and of the unit asked
[[nodiscard]] std::vector<Signature> far_signatures();             ///< rarer ways of A, B and E
[[nodiscard]] std::vector<Signature> far_area_signatures();        ///< rarer ways of A to F to an area or the volume

}  // namespace fw::practice
