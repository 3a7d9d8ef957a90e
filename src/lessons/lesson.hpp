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

/// What turns a problem into a word problem: {"cover": "surface_area", "each": "40 ft^2", "item": "roll"}.
struct Supply {
  std::string purpose;                         ///< "cover", "fill" or "edge"
  std::string measure;                         ///< "surface_area", "lateral_area", "volume", ...
  std::optional<units::WrittenQuantity> each;  ///< what one item covers or holds
  std::string item;                            ///< "roll"
  Rounding rounding = Rounding::Up;
  std::optional<Price> price = std::nullopt;  ///< of one item
  int coats = 1;                              ///< how often a cover is laid
  friend bool operator==(const Supply&, const Supply&) = default;
};

/// Faces that do not count, as the lesson names them: a word for their place or role, or a face's number from 1.
struct OpenFaces {
  std::string name;  ///< "top", "bases", "3"
  std::vector<geometry::FaceId> faces;
  friend bool operator==(const OpenFaces&, const OpenFaces&) = default;
};

struct Problem {
  std::string id;
  std::string prompt;
  solids::Description description;
  solids::Known known;
  std::vector<std::string> find;  ///< "surface_area", "volume", "height", "name", ...
  std::optional<Supply> supply;
  solids::Solid solid;                        ///< made from the description and what is known
  std::vector<OpenFaces> open = {};           ///< left out of the "surface_area" that this problem asks for
  std::optional<NetTask> net = std::nullopt;  ///< a question about nets; then nothing else is asked
  friend bool operator==(const Problem&, const Problem&) = default;
};

struct Lesson {
  std::string title;
  std::vector<Problem> problems;
  friend bool operator==(const Lesson&, const Lesson&) = default;
};

}  // namespace fw::lessons
