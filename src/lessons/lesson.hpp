#pragma once

#include <optional>
#include <string>
#include <vector>

#include "lessons/net_task.hpp"
#include "solids/solid.hpp"

namespace fw::lessons {

/// What becomes of a part of an item: packs are not split, and only what is whole counts as made or filled.
enum class Rounding { Up, Down, None };

/// What one item costs: "4.50", "$4.50", "3".
struct Price {
  std::string text;  ///< as written
  std::string sign;  ///< "$", "£", "€" or none
  exact::Number amount;
  friend bool operator==(const Price& a, const Price& b) { return a.text == b.text; }
};

/// The edges of an item that is packed, as written.
struct ItemBox {
  units::WrittenQuantity length, width, height;
  friend bool operator==(const ItemBox&, const ItemBox&) = default;
};

/// What turns a problem into a word problem: {"cover": "surface_area", "each": "40 ft^2", "item": "roll"}.
struct Supply {
  std::string purpose;                         ///< "cover", "fill", "edge" or "pack"
  std::string measure;                         ///< "surface_area", "lateral_area", "volume", ...
  std::optional<units::WrittenQuantity> each;  ///< what one item covers or holds
  std::string item;                            ///< "roll"
  Rounding rounding = Rounding::Up;
  std::optional<Price> price = std::nullopt;  ///< of one item
  int coats = 1;                              ///< how often a cover is laid
  std::optional<ItemBox> box = std::nullopt;  ///< of one item, where items are packed
  friend bool operator==(const Supply&, const Supply&) = default;
};

/// Faces that do not count, as the lesson names them: a word for their place or role, or a face's number from 1.
struct OpenFaces {
  std::string name;  ///< "top", "bases", "3"
  std::vector<geometry::FaceId> faces;
  friend bool operator==(const OpenFaces&, const OpenFaces&) = default;
};

/// A copy of the solid, every edge of it as many times as long. What is asked for is the copy's then.
struct Scaling {
  std::string text;                     ///< of the factor as written: "4", "1/2", "2.5"; "?" where it is asked for
  std::optional<exact::Number> factor;  ///< worked out from what is known of the copy where it is asked for
  solids::Known copy;  ///< what is known of the copy: one area or volume; none where the factor is given
  friend bool operator==(const Scaling& a, const Scaling& b) { return a.text == b.text && a.copy == b.copy; }
};

/// A label that somebody would put to the figure, beside those that the solid has. Can it be true?
struct Claim {
  std::string measure;  ///< the name of a length that the solid does not give: "slant_height", "base.leg"
  units::WrittenQuantity value;
  friend bool operator==(const Claim&, const Claim&) = default;
};

struct Problem {
  std::string id;
  std::string prompt;
  solids::Description description;
  solids::Known known;
  std::vector<std::string> find;  ///< "surface_area", "volume", "height", "name", ...
  std::optional<Supply> supply;
  solids::Solid solid;               ///< made from the description and what is known
  std::vector<OpenFaces> open = {};  ///< left out of the "surface_area" that this problem asks for
  std::optional<Scaling> scale = std::nullopt;
  std::optional<units::Unit> unit = std::nullopt;              ///< in which the answer is asked; none: the solid's own
  std::optional<Claim> claim = std::nullopt;                   ///< asked is whether the figure can be so
  std::optional<units::WrittenQuantity> wrong = std::nullopt;  ///< a wrong answer, whose mistake is asked for
  std::vector<units::WrittenQuantity> between = {};     ///< bounds of the intervals to choose from, in rising order
  std::optional<geometry::FaceId> face = std::nullopt;  ///< asked are the two lengths of this face
  std::optional<NetTask> net = std::nullopt;            ///< a question about nets; then nothing else is asked
  friend bool operator==(const Problem&, const Problem&) = default;
};

struct Lesson {
  std::string title;
  std::vector<Problem> problems;
  friend bool operator==(const Lesson&, const Lesson&) = default;
};

}  // namespace fw::lessons
