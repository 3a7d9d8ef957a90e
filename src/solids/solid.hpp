#pragma once

#include <map>
#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "nets/hinge_tree.hpp"
#include "solids/body/body.hpp"
#include "solids/catalog.hpp"
#include "solids/statement.hpp"
#include "units/quantity.hpp"

namespace fw::solids {

using MarkId = Id<struct MarkTag>;
using GroupId = Id<struct GroupTag>;  ///< a congruence group of faces: A, B, C ...

/// Where the number of a face's length is written on the solid.
enum class LengthOrigin {
  OwnLabel,   ///< the label stands at this very edge or height
  EqualEdge,  ///< the label stands at another edge or height of the same length: `mark` says which
  WorkedOut,  ///< no label gives it; it follows from the relations
};

struct FaceLength {
  algebra::Symbol symbol;
  std::string title;
  exact::Number value;          ///< in the solid's unit
  geometry::Vec3 from{}, to{};  ///< as it lies in the solid; of a face that bends, unrolled (Body::flat)
  bool is_height = false;
  LengthOrigin origin = LengthOrigin::WorkedOut;
  std::optional<MarkId> mark;
};

struct Face {
  FaceId id;
  FaceRole role = FaceRole::Face;
  std::string shape;
  GroupId group;
  algebra::Expression work = 0;  ///< the area as it is worked, in symbols
  units::Area area = units::Area::of(exact::Number{}, units::Unit::none().to_the(2));
  std::vector<FaceLength> lengths;
};

/// Measured quantities of the whole that a problem gives: "volume" -> 180 ft³.
using Known = std::map<std::string, units::WrittenQuantity>;

/// A solid that exists, with everything that can be asked of it. Immutable; copies share.
class Solid {
 public:
  /// Works out every measure from those described and `known`, and checks that they agree and that the
  /// figure exists. A measure that is given twice over must agree within the rounding of what is written,
  /// and the number as written is the one used.
  ///
  /// Errors: all faults, those that make it impossible first, each with the measure and the nearest value.
  [[nodiscard]] static Result<Solid, std::vector<Fault>> make(const Description& description, const Known& known = {});

  [[nodiscard]] const Description& description() const;
  [[nodiscard]] const SolidStatement& statement() const;
  [[nodiscard]] const Traits& traits() const;  ///< of its kind
  [[nodiscard]] const std::string& name() const { return statement().name; }
  /// What is counted on it: "face", or "surface" where one is curved.
  [[nodiscard]] std::string part() const { return body().is_flat_faced() ? "face" : "surface"; }
  [[nodiscard]] units::Unit unit() const;                 ///< the length unit of all its values
  [[nodiscard]] const algebra::Bindings& values() const;  ///< every measure, and S, L, B, V, P where they exist
  [[nodiscard]] bool is_given(const algebra::Symbol& symbol) const;  ///< written in the lesson, not worked out
  /// What the lesson writes for a measure or a quantity of the whole, in the unit in which it is written; null where
  /// it writes none.
  [[nodiscard]] const units::WrittenQuantity* written(const algebra::Symbol& symbol) const;

  [[nodiscard]] const Body& body() const;  ///< the solid in space: counts, edges, outlines, nets
  [[nodiscard]] const IdVector<FaceId, Face>& faces() const;
  [[nodiscard]] std::size_t group_count() const;
  [[nodiscard]] const IdVector<MarkId, Mark>& marks() const;
  /// The label of a mark as the lesson writes it, or worked out: "7 1/2 ft", "≈ 5.20 cm", "?" for the unknown.
  [[nodiscard]] std::string label(MarkId mark) const;
  [[nodiscard]] const nets::HingeTree& classic_net() const;

  [[nodiscard]] units::Area surface_area() const;                 ///< the sum of the faces
  [[nodiscard]] std::optional<units::Area> lateral_area() const;  ///< of prisms and pyramids
  [[nodiscard]] std::optional<units::Area> base_area() const;
  [[nodiscard]] units::Volume volume() const;
  /// Labels that agree only by rounding, and numbers as warnings: never an error.
  [[nodiscard]] const std::vector<Fault>& remarks() const;
  friend bool operator==(const Solid& a, const Solid& b);  ///< equal descriptions and knowns

 private:
  struct Table;
  explicit Solid(std::shared_ptr<const Table> table) : table_(std::move(table)) {}
  std::shared_ptr<const Table> table_;
};

/// The solid with all lengths of its description converted to `unit` (for the unit switch).
[[nodiscard]] Description in_unit(const Description& description, const units::Unit& unit);

}  // namespace fw::solids
