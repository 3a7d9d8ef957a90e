#pragma once

#include <algorithm>
#include <array>
#include <string>
#include <vector>

// Things that a 12-year-old has seen, in the sizes that they have, and what goes on them and into them; private to the
// room. Source of sizes, packs and prices: common practice, no source.
namespace fw::tasks {

/// What a measure of a thing is at least and at most; it is drawn in steps from the least on.
struct Range {
  int least = 0, most = 0, step = 1;
  [[nodiscard]] bool holds(int number) const {
    return number >= least && number <= most && (number - least) % step == 0;
  }
};

/// The shapes of things, and the measures that are bounded, in their order.
enum class Shape {
  Box,        ///< length, width, height
  Block,      ///< edge
  Isosceles,  ///< prism on a triangle with two equal sides: base and height of the triangle, length of the prism
  Right,      ///< prism on a right triangle: its legs, length of the prism
  Scalene,    ///< prism on a triangle with three different sides: a side, height on it, length of the prism
  Trapezoid,  ///< prism on a trapezoid with equal legs: longer base and height of the trapezoid, length of the prism
  Rhombus,    ///< prism on a rhombus: longer and shorter diagonal, length of the prism
  Spire,      ///< on a square: side, height
  Roof,       ///< pyramid on a rectangle: length, width, height
  Can,        ///< on a circle: radius, height
  Hat         ///< on a circle, up to a point: radius, height
};

/// A shape of a thing, in one unit.
struct Form {
  Shape shape = Shape::Box;
  std::string unit;
  std::array<Range, 3> sizes{};  ///< those that the shape has not are empty
  bool lies = false;             ///< a prism that lies on a side, as a tent does

  /// The greatest length of all that are bounded.
  [[nodiscard]] int greatest() const { return std::max({sizes[0].most, sizes[1].most, sizes[2].most}); }
};

/// How a material comes onto a thing.
enum class Way {
  Wrap,  ///< laid on the faces
  Paint,
  Build  ///< the faces are made of it
};

/// How a material or a filling is sold.
struct Pack {
  std::string item;             ///< "sheet"
  std::string each;             ///< "560 in^2"
  int least_price, most_price;  ///< in whole dollars
};

/// What covers faces.
struct Material {
  std::string name;  ///< "wrapping paper"
  Way way;
  std::vector<Pack> packs;
};

/// What fills a thing, or what a solid thing is made of.
struct Filling {
  std::string name;            ///< "potting soil"
  std::vector<Pack> packs;     ///< in which it is bought
  std::vector<Pack> portions;  ///< into which it is shared out; without a price
};

/// What else is done with a thing.
enum Trait : unsigned {
  HasTrim = 1U,        ///< ribbon, tape or lights run along its edges
  HasFrame = 2U,       ///< its edges are a frame of straws or rods
  IsLump = 4U,         ///< nobody makes a copy or a model of it: a block of ice, a thing that is giant already
  HasOpenTop = 8U,     ///< comes without its top
  HasOpenEnds = 16U,   ///< comes without its two bases, or without top and bottom
  HasBareBottom = 32U  ///< what goes on it does not go on its bottom
};

struct Thing {
  std::string name;  ///< in the singular: "gift box"
  std::string who;   ///< makes it at the fair: "the art club"
  std::vector<Form> forms;
  std::vector<std::string> covers = {};  ///< materials for all faces
  std::vector<std::string> sides = {};   ///< materials for the lateral faces alone
  std::vector<std::string> shell = {};   ///< materials for what is left where some faces are open
  std::string filling = "";              ///< empty: nothing fills it
  std::string solid_of = "";             ///< what it is made of all through; empty: it is hollow
  unsigned traits = 0;                   ///< Trait, added up
  std::vector<std::string> packs = {};   ///< items that are packed into it in rows

  [[nodiscard]] bool has(Trait trait) const { return (traits & trait) != 0; }
};

/// All of them: boxes and cubes, prisms, pyramids, and those on a circle.
[[nodiscard]] const std::vector<Thing>& things();
[[nodiscard]] const std::vector<Material>& materials();
[[nodiscard]] const std::vector<Filling>& fillings();
/// Requires: there is one of this name.
[[nodiscard]] const Material& material_named(const std::string& name);
[[nodiscard]] const Filling& filling_named(const std::string& name);

/// An item that is packed in rows: its length, width and height.
struct PackedItem {
  std::string name;
  std::string unit;
  std::array<int, 3> edges;
};
[[nodiscard]] const std::vector<PackedItem>& packed_items();

// The table's parts, each in a file of its own.
[[nodiscard]] std::vector<Thing> box_things();
[[nodiscard]] std::vector<Thing> upright_things();
[[nodiscard]] std::vector<Thing> pointed_things();
[[nodiscard]] std::vector<Thing> round_things();

}  // namespace fw::tasks
