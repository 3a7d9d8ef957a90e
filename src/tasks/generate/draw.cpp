#include "tasks/generate/draw.hpp"

#include <algorithm>
#include <array>

#include "base/ensure.hpp"
#include "solids/catalog.hpp"

namespace fw::tasks {
namespace {

using solids::Description;
using solids::FieldValue;
using solids::LengthEntry;

LengthEntry whole(int number, const std::string& unit) { return entry(std::to_string(number), unit); }
std::vector<LengthEntry> wholes(const std::vector<int>& numbers, const std::string& unit) {
  std::vector<LengthEntry> entries;
  entries.reserve(numbers.size());
  for (const int number : numbers) {
    entries.push_back(whole(number, unit));
  }
  return entries;
}
void put_on(Description& description, const std::string& shape, std::map<std::string, FieldValue> fields) {
  Description base;
  base.kind = shape;
  base.fields = std::move(fields);
  description.base = {std::move(base)};
}
void lay(Description& description, Seed& seed) {
  if (seed.below(2) == 0) {
    description.fields["lies"] = std::string("side");
  }
}

void box(Description& description, Seed& seed, int level, Labels, const std::string& unit) {
  const int most = level == 1 ? 12 : 18;
  std::array<int, 3> edges{};
  do {
    for (int& edge : edges) {
      edge = drawn(seed, 4, most);
    }
  } while (edges[0] == edges[1] || edges[1] == edges[2] || edges[0] == edges[2]);
  const bool has_half = level == 3 && edges[0] % 2 == 0 && edges[1] % 2 == 0;
  description.fields = {{"length", whole(edges[0], unit)},
                        {"width", whole(edges[1], unit)},
                        {"height", entry(std::to_string(edges[2]) + (has_half ? ".5" : ""), unit)}};
}

void block(Description& description, Seed& seed, int level, Labels, const std::string& unit) {
  // Up to 6 some number of faces is the volume.
  description.fields["edge"] = whole(drawn(seed, 7, level == 1 ? 12 : 19), unit);
}

// Triangles with whole sides and heights: base, height, the other sides. Source: the rational right triangles that
// schools use (3-4-5, 5-12-13, 8-15-17, 7-24-25, 20-21-29) and pairs of them; common practice, no source. The areas and
// lengths for which a usual mistake gives the right answer are refused afterward.
struct Triangle {
  int base, height, second, third;
};
void tent(Description& description, Seed& seed, int, Labels, const std::string& unit) {
  static const std::vector<Triangle> pool{{8, 3, 5, 5},     {10, 12, 13, 13}, {12, 8, 10, 10}, {16, 15, 17, 17},
                                          {18, 12, 15, 15}, {14, 24, 25, 25}, {30, 8, 17, 17}, {24, 5, 13, 13}};
  const Triangle& t = one_of(pool, seed);
  put_on(description, "isosceles triangle",
         {{"base", whole(t.base, unit)}, {"height", whole(t.height, unit)}, {"leg", whole(t.second, unit)}});
  description.fields["height"] = whole(drawn(seed, 5, 20), unit);
  lay(description, seed);
}
void ramp(Description& description, Seed& seed, int, Labels, const std::string& unit) {
  static const std::vector<Triangle> pool{{8, 15, 17, 0}, {15, 8, 17, 0},  {20, 21, 29, 0}, {24, 7, 25, 0},
                                          {12, 9, 15, 0}, {16, 12, 20, 0}, {21, 20, 29, 0}};
  const Triangle& t = one_of(pool, seed);
  put_on(description, "right triangle",
         {{"legs", wholes({t.base, t.height}, unit)}, {"hypotenuse", whole(t.second, unit)}});
  description.fields["height"] = whole(drawn(seed, 5, 20), unit);
  lay(description, seed);
}
void flag_box(Description& description, Seed& seed, int, Labels, const std::string& unit) {
  static const std::vector<Triangle> pool{{21, 8, 17, 10},  {4, 12, 13, 15},  {14, 12, 13, 15},
                                          {25, 12, 15, 20}, {28, 15, 17, 25}, {11, 12, 13, 20}};
  const Triangle& t = one_of(pool, seed);
  put_on(description, "triangle",
         {{"sides", wholes({t.base, t.second, t.third}, unit)}, {"height", whole(t.height, unit)}});
  description.fields["height"] = whole(drawn(seed, 5, 20), unit);
}
void trough(Description& description, Seed& seed, int, Labels, const std::string& unit) {
  struct Trapezoid {
    int longer, shorter, height, leg;
  };
  static const std::vector<Trapezoid> pool{{16, 10, 4, 5}, {12, 6, 4, 5},   {14, 4, 12, 13}, {16, 4, 8, 10},
                                           {20, 14, 4, 5}, {22, 10, 8, 10}, {25, 9, 15, 17}, {18, 8, 12, 13}};
  const Trapezoid& t = one_of(pool, seed);
  put_on(description, "trapezoid",
         {{"bases", wholes({t.longer, t.shorter}, unit)},
          {"height", whole(t.height, unit)},
          {"legs", wholes({t.leg, t.leg}, unit)}});
  description.fields["height"] = whole(drawn(seed, 7, 25), unit);
  lay(description, seed);
}
void kite_box(Description& description, Seed& seed, int, Labels, const std::string& unit) {
  struct Rhombus {
    int longer, shorter, side;
  };
  static const std::vector<Rhombus> pool{{24, 10, 13}, {16, 12, 10}, {30, 16, 17}, {42, 40, 29}, {24, 18, 15}};
  const Rhombus& r = one_of(pool, seed);
  put_on(description, "rhombus", {{"diagonals", wholes({r.longer, r.shorter}, unit)}, {"side", whole(r.side, unit)}});
  description.fields["height"] = whole(drawn(seed, 5, 20), unit);
}
void spire(Description& description, Seed& seed, int, Labels labels, const std::string& unit) {
  // Side, height and slant height, all whole: every one up to 40 for which no usual mistake gives the right answer,
  // counted anew for each problem.
  struct Row {
    int side, height, slant;
  };
  static const std::vector<Row> pool{{10, 12, 13}, {14, 24, 25}, {16, 15, 17}, {18, 12, 15}, {18, 40, 41},
                                     {20, 24, 26}, {24, 5, 13},  {24, 35, 37}, {30, 8, 17},  {30, 20, 25},
                                     {30, 36, 39}, {32, 30, 34}, {40, 15, 25}, {40, 21, 29}};
  const Row& row = one_of(pool, seed);
  put_on(description, "square", {{"side", whole(row.side, unit)}});
  if (labels != Labels::ForVolume) {
    description.fields["slant_height"] = whole(row.slant, unit);
  }
  if (labels != Labels::ForArea) {
    description.fields["height"] = whole(row.height, unit);
  }
}
void stall_roof(Description& description, Seed& seed, int, Labels labels, const std::string& unit) {
  struct Row {
    int length, width, height, on_length, on_width;
  };
  static const std::vector<Row> pool{{10, 18, 12, 15, 13}, {12, 30, 8, 17, 10},  {10, 32, 12, 20, 13},
                                     {18, 32, 12, 20, 15}, {16, 40, 15, 25, 17}, {14, 20, 24, 26, 25},
                                     {14, 36, 24, 30, 25}, {20, 36, 24, 30, 26}};
  const Row& row = one_of(pool, seed);
  put_on(description, "rectangle", {{"length", whole(row.length, unit)}, {"width", whole(row.width, unit)}});
  if (labels != Labels::ForVolume) {
    description.fields["slant_heights"] = wholes({row.on_length, row.on_width}, unit);
  }
  if (labels != Labels::ForArea) {
    description.fields["height"] = whole(row.height, unit);
  }
}

}  // namespace

const std::vector<Family>& families() {
  using solids::Use;
  const std::string h = "height";
  static const std::vector<Family> table{
      {1, Use::Box, box, {"candle box", "crate of lamps", "box for ribbons", "tool chest"}, h, h, true, false},
      {1, Use::Block, block, {"paper lantern", "block of ice", "gift box"}, "edge", "edge", true, false},
      {1, Use::Upright, tent, {"small tent", "ticket booth roof", "bunting box"}, h, h, false, true},
      {1, Use::Pointed, spire, {"wax spire", "ice tower top", "lantern top"}, h, "slant_height", false, true},
      {2, Use::Upright, ramp, {"ramp to the stage", "wheel stop", "display stand"}, h, h, false, true},
      {2,
       Use::Upright,
       trough,
       {"planter by the gate", "feeding trough for geese", "bench of snow"},
       h,
       h,
       false,
       true},
      {2, Use::Pointed, stall_roof, {"roof of a stall", "cover of a well"}, h, "", false, true},
      {3, Use::Upright, flag_box, {"flag box", "sign post foot"}, h, h, false, true},
      {3, Use::Upright, kite_box, {"kite box", "star lamp stand"}, h, h, false, true},
  };
  return table;
}

Description Family::draw(Seed& seed, int at_level, Labels labels, const std::string& unit) const {
  Description description;
  description.kind = solids::kind_for(use).key;
  measure(description, seed, at_level, labels, unit);
  return description;
}

int drawn(Seed& seed, int least, int most) {
  return least + static_cast<int>(seed.below(static_cast<std::size_t>(most - least) + 1));
}

LengthEntry entry(const std::string& number, const std::string& unit) {
  const auto quantity = units::parse_quantity(number + " " + unit);
  ensure(quantity.has_value(), "a drawn length can be read");
  return {*quantity};
}

Description without(Description description, const std::string& key) {
  description.fields[key] = LengthEntry{};
  return description;
}

}  // namespace fw::tasks
