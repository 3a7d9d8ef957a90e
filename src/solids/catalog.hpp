#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "base/result.hpp"
#include "solids/statement.hpp"
#include "words/message.hpp"

namespace fw::solids {

/// What is wrong with a described solid, and what would be right.
enum class Severity { Impossible, Missing, Rounding, Masking };
struct Fault {
  Severity severity = Severity::Impossible;
  std::string measure;     ///< the field at fault, "base.side" or "slant_height"; empty: the whole
  words::Message message;  ///< with the value that would fit
  std::string nearest;     ///< that value as text with its unit, "3.1 cm"; empty if none can be named
  friend bool operator==(const Fault&, const Fault&) = default;
};

/// A row of the table of base shapes.
struct ShapeKind {
  std::string key;  ///< as in lesson files: "right triangle"
  std::vector<Field> fields;
  /// Counts and points must be known here; lengths may be anything.
  Result<ShapeStatement, std::vector<Fault>> (*state)(const Description& description);
  Description example;  ///< what the shelf puts on the bench
  std::vector<Description> further_examples;
};

/// What made-up problems need a kind for. Each use is served by one kind, which has the fields named here.
enum class Use {
  Box,           ///< "length", "width" and "height"
  Block,         ///< of equal faces, by its "edge"
  Upright,       ///< on any base shape: "height"; "lies" lays it on its side
  Pointed,       ///< on any base shape, up to an apex: "height", "slant_height" or "slant_heights"
  Round,         ///< on a circle: "radius" or "diameter", "height"; "lies" lays it on its side
  RoundPointed,  ///< on a circle, up to an apex: "radius" or "diameter", "height", "slant_height"
};

/// A row of the table of kinds.
struct Kind {
  std::string key;  ///< "pyramid"
  std::vector<Field> fields;
  bool stands_on_base = false;  ///< has a "base" of any base shape
  /// `base` is null for kinds without a base shape. Its measures' symbols already carry their names in the solid.
  Result<SolidStatement, std::vector<Fault>> (*state)(const Description& description, const ShapeStatement* base);
  Traits traits;
  Description example;
  std::vector<Description> further_examples;
  std::vector<Use> uses;
};

[[nodiscard]] const std::vector<Kind>& kinds();
[[nodiscard]] const std::vector<ShapeKind>& base_shapes();
[[nodiscard]] const Kind* find_kind(std::string_view key);
[[nodiscard]] const ShapeKind* find_base_shape(std::string_view key);
[[nodiscard]] const Kind& kind_for(Use use);

/// Every solid that the shelf shows: each kind with each base shape that it can stand on, as an example.
[[nodiscard]] std::vector<Description> shelf();

}  // namespace fw::solids
