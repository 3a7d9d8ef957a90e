#pragma once

#include <optional>
#include <string>
#include <vector>

#include "solids/solid.hpp"

namespace fw::reasoning {

using geometry::FaceId;

enum class Grouping { EachFace, AlikeTogether };

/// A number in a column: padded on the left with figure spaces so that the points stand under each other.
struct ColumnNumber {
  std::string whole;     ///< "49"
  std::string fraction;  ///< ".5" or ""
  bool exact = true;
};
/// Addends as they are written in a column. Who adds up what is written, and rounds the sum once, gets the sum as it is
/// written.
struct AddendColumn {
  std::vector<ColumnNumber> addends;
  bool is_rounded = false;  ///< some addend is
  int extra_digits = 0;     ///< that rounded addends have more than the sum
};
/// `places`: decimals at most of the sum.
[[nodiscard]] AddendColumn adding_up(const std::vector<exact::Number>& addends, int places);

/// One line of the running count.
struct LedgerRow {
  std::vector<FaceId> faces;  ///< one, or all congruent faces counted together
  solids::GroupId group;
  std::size_t times_counted = 0;  ///< 0: still to be counted; more than the number of faces: counted twice
  std::string work;               ///< "6 × 9 ÷ 2", or "4 × (6 × 9 ÷ 2)" when counted together
  std::string symbols;            ///< "s · ℓ ÷ 2"
  exact::Number addend;           ///< what the row adds up to, as counted
  std::vector<FaceId> open = {};  ///< those of `faces` that do not count
};

/// The count of faces: a value made from a solid and the faces counted so far, in order.
struct Ledger {
  std::vector<LedgerRow> rows;    ///< one a face (or a group), in face order
  std::size_t faces_counted = 0;  ///< distinct ones, open ones left out
  std::size_t faces_total = 0;    ///< those that count
  std::vector<FaceId> counted_twice;
  std::vector<FaceId> counted_open;    ///< counted though they do not count, each once
  std::vector<exact::Number> addends;  ///< in the order counted, one a count
  units::Area so_far = units::Area::of(exact::Number{}, units::Unit::none().to_the(2));
  AddendColumn column;           ///< of the rows' addends
  bool is_surface_area = false;  ///< every face that counts counted exactly once, and no other
};
/// Decimals at most of the sum, and of an area unless the column takes more to add up.
inline constexpr int ledger_places = 2;
/// `counted` may name a face more than once: the class's mistake is kept, and shown.
/// `open`: the faces of an open solid that do not count; one that is counted all the same is a mistake like the other.
[[nodiscard]] Ledger ledger(const solids::Solid& solid, const std::vector<FaceId>& counted, Grouping grouping,
                            const std::vector<FaceId>& open = {});

/// The area of one face, worked: "9 cm × 11 cm ÷ 2 = 49.5 cm²".
[[nodiscard]] std::string worked_area(const solids::Solid& solid, FaceId face, int places);
/// "V = B · h ÷ 3 = 36 cm² × 6.32 cm ÷ 3 ≈ 75.9 cm³", in lines: formula, numbers, result.
[[nodiscard]] std::vector<std::string> worked_volume(const solids::Solid& solid, int places);

}  // namespace fw::reasoning
