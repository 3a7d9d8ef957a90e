#include "lessons/masking.hpp"

#include <algorithm>
#include <optional>

#include "exact/print_number.hpp"

namespace fw::lessons {
namespace {

using exact::Number;
using solids::FaceRole;
using solids::Solid;
using words::message;

// What the numbers of a solid give by a wrong way, when that is no way at all for some solids: nothing.
using WrongNumber = std::optional<Number> (*)(const Solid&);

Number sum_of_role(const Solid& solid, FaceRole role) {
  Number sum;
  for (const solids::Face& face : solid.faces()) {
    sum = face.role == role ? sum + face.area.amount() : sum;
  }
  return sum;
}

std::optional<Number> volume(const Solid& solid) { return solid.volume().amount(); }
std::optional<Number> surface(const Solid& solid) { return solid.surface_area().amount(); }
std::optional<Number> half_surface(const Solid& solid) { return surface(solid).value() / Number::whole(2); }

std::optional<Number> lateral(const Solid& solid) {
  return solid.lateral_area() ? std::optional(solid.lateral_area()->amount()) : std::nullopt;
}

std::optional<Number> bases(const Solid& solid) {
  const Number sum = sum_of_role(solid, FaceRole::Base);
  return sum.is_zero() ? std::nullopt : std::optional(sum);
}

// As many times one face as equals the volume, where all faces are alike and that many can be counted.
std::optional<Number> some_faces(const Solid& solid) {
  if (solid.group_count() != 1) {
    return std::nullopt;
  }
  const Number times = solid.volume().amount() / solid.faces()[geometry::FaceId{0}].area.amount();
  const bool can_be_counted = times.is_whole() && times <= Number::whole(static_cast<long long>(solid.faces().size()));
  return can_be_counted ? volume(solid) : std::nullopt;
}

// One lateral face taken for all of them, though they differ.
std::optional<Number> one_lateral_for_all(const Solid& solid) {
  std::vector<const solids::Face*> sides;
  for (const solids::Face& face : solid.faces()) {
    if (face.role == FaceRole::Lateral) {
      sides.push_back(&face);
    }
  }
  const bool differ = std::any_of(sides.begin(), sides.end(),
                                  [&](const solids::Face* side) { return side->group != sides.front()->group; });
  if (!differ) {
    return std::nullopt;
  }
  const Number count = Number::whole(static_cast<long long>(sides.size()));
  const Number sum = sum_of_role(solid, FaceRole::Lateral);
  const bool one_fits = std::any_of(sides.begin(), sides.end(),
                                    [&](const solids::Face* side) { return side->area.amount() * count == sum; });
  return one_fits ? lateral(solid) : std::nullopt;
}

std::optional<Number> bound(const Solid& solid, std::string_view name) {
  const auto found = solid.values().find(name);
  return found == solid.values().end() ? std::nullopt : std::optional(found->second);
}

// Height and slant height taken for each other.
std::optional<Number> lateral_with_height(const Solid& solid) {
  const std::optional<Number> height = bound(solid, "height");
  const std::optional<Number> slant = bound(solid, "slant_height");
  return height && slant && lateral(solid) ? std::optional(*lateral(solid) * *height / *slant) : std::nullopt;
}
std::optional<Number> volume_with_slant(const Solid& solid) {
  const std::optional<Number> height = bound(solid, "height");
  const std::optional<Number> slant = bound(solid, "slant_height");
  return height && slant ? std::optional(*volume(solid) * *slant / *height) : std::nullopt;
}

// All edges together, where one measure gives them all: adding lengths in place of areas.
std::optional<Number> all_edges(const Solid& solid) {
  const std::optional<Number> edge = bound(solid, "edge");
  const auto count = static_cast<long long>(solid.body().edge_count());
  return edge ? std::optional(*edge * Number::whole(count)) : std::nullopt;
}

constexpr const char* s = "surface_area";
constexpr const char* l = "lateral_area";
constexpr const char* v = "volume";

// A row: two numbers that a student may take for each other, what the problem must ask for, and the mistake.
struct Rule {
  WrongNumber one;
  WrongNumber other;
  std::vector<std::string> asked;
  words::Message mistake;
};
const std::vector<Rule>& rules() {
  static const std::vector<Rule> table{
      {surface, volume, {s, v}, message("mixing up volume and surface area")},
      {lateral, volume, {l, v}, message("mixing up lateral area and volume")},
      {bases, volume, {v}, message("giving the area of the bases instead of the volume")},
      {half_surface, volume, {v}, message("giving half of the surface area, the faces you can see, for the volume")},
      {some_faces, volume, {v}, message("giving the area of some of the faces for the volume")},
      {one_lateral_for_all, lateral, {s, l}, message("treating all the lateral faces as congruent")},
      {lateral_with_height,
       volume,
       {v},
       message("giving the lateral area, found with the height, instead of the volume")},
      {all_edges, surface, {s}, message("adding the edges instead of the faces")},
      {volume_with_slant,
       lateral,
       {l},
       message("giving the volume, found with the slant height, instead of the lateral area")},
  };
  return table;
}

bool holds(const std::vector<std::string>& names, const std::string& name) {
  return std::find(names.begin(), names.end(), name) != names.end();
}

// Two edges of the solid that are equal with these numbers make two faces equal: which of them was left out cannot be
// told. Alike sides of a base shape are as they should be.
bool has_faces_equal_by_chance(const Solid& solid) {
  const auto is_of_solid = [&](const algebra::Symbol& letter) {
    const std::vector<solids::Measure>& all = solid.statement().measures;
    return std::any_of(all.begin(), all.end(),
                       [&](const solids::Measure& measure) { return measure.symbol == letter && !measure.in_base; });
  };
  for (const solids::Face& one : solid.faces()) {
    const std::vector<algebra::Symbol> letters = algebra::symbols_of(one.work);
    for (const solids::Face& other : solid.faces()) {
      const std::vector<algebra::Symbol> others = algebra::symbols_of(other.work);
      if (one.area.amount() == other.area.amount() && letters != others &&
          std::all_of(letters.begin(), letters.end(), is_of_solid) &&
          std::all_of(others.begin(), others.end(), is_of_solid)) {
        return true;
      }
    }
  }
  return false;
}

}  // namespace

std::vector<words::Message> masking_hints(const Solid& solid, const std::vector<std::string>& asked) {
  std::vector<words::Message> hints;
  for (const Rule& rule : rules()) {
    const bool is_asked =
        std::any_of(rule.asked.begin(), rule.asked.end(), [&](const std::string& name) { return holds(asked, name); });
    if (!is_asked) {
      continue;
    }
    const std::optional<Number> one = rule.one(solid);
    const std::optional<Number> other = rule.other(solid);
    if (one && other && *one == *other) {
      const exact::Shown number = exact::shown(*one, 2);
      hints.push_back(message(
          "with these numbers, {mistake} gives the right number ({number}): other numbers would show the mistake",
          {{"mistake", rule.mistake}, {"number", (number.exact ? "" : "≈ ") + number.text}}));
    }
  }
  if (holds(asked, s) && has_faces_equal_by_chance(solid)) {
    hints.push_back(
        message("with these numbers, two faces of different shape have the same area, so you could not tell which one "
                "was left out: choose other numbers"));
  }
  return hints;
}

}  // namespace fw::lessons
