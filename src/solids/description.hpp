#pragma once

#include <map>
#include <optional>
#include <string>
#include <utility>
#include <variant>
#include <vector>

#include "exact/written.hpp"
#include "units/quantity.hpp"

namespace fw::solids {

/// A length as a lesson gives it; nothing written stands for "?", the unknown.
struct LengthEntry {
  std::optional<units::WrittenQuantity> written;
  friend bool operator==(const LengthEntry&, const LengthEntry&) = default;
};
/// A corner of a polygon: coordinates as written, in the polygon's unit.
struct PointEntry {
  exact::Written x, y;
  friend bool operator==(const PointEntry&, const PointEntry&) = default;
};
using FieldValue = std::variant<LengthEntry, std::vector<LengthEntry>, int, std::vector<PointEntry>, std::string>;

/// A solid, or the shape of its base, as a lesson file gives it: which kind, and what each field says.
/// Nothing is checked yet beyond the form of each field; Solid::make does that.
struct Description {
  std::string kind;                          ///< "pyramid"; of a base: its shape, "square"
  std::map<std::string, FieldValue> fields;  ///< by key: "slant_height"
  std::vector<Description> base;             ///< one for kinds that stand on a base shape, else none
  bool is_rounded = false;                   ///< of a solid: its whole numbers are rounded, as its decimals are
  friend bool operator==(const Description&, const Description&) = default;
};

/// The form of a field.
enum class FieldType { Length, Lengths, Count, Points, Word };
struct Field {
  std::string key;  ///< "slant_height"
  FieldType type = FieldType::Length;
  std::string title;                 ///< "slant height"
  std::vector<std::string> symbols;  ///< names of the symbols that it sets: one, or one a list item
  int least = 0, most = 0;           ///< of a Count, or of the size of a Lengths/Points list (0: no limit)
  std::vector<std::string> words;    ///< of a Word: what may stand there
};

}  // namespace fw::solids
