#include "solids/catalog.hpp"

#include <algorithm>

#include "base/ensure.hpp"
#include "solids/solid.hpp"

namespace fw::solids {

namespace shape {
ShapeKind square();
ShapeKind rectangle();
ShapeKind triangle();
ShapeKind right_triangle();
ShapeKind equilateral_triangle();
ShapeKind isosceles_triangle();
ShapeKind parallelogram();
ShapeKind rhombus();
ShapeKind trapezoid();
ShapeKind regular_polygon();
ShapeKind polygon();
}  // namespace shape

namespace kind {
Kind cube();
Kind rectangular_prism();
Kind prism();
Kind pyramid();
Kind regular_polyhedron();
Kind cylinder();
Kind cone();
Kind cone_frustum();
}  // namespace kind

const std::vector<Kind>& kinds() {
  static const std::vector<Kind> table{kind::cube(),    kind::rectangular_prism(),  kind::prism(),
                                       kind::pyramid(), kind::regular_polyhedron(), kind::cylinder(),
                                       kind::cone(),    kind::cone_frustum()};
  return table;
}

const std::vector<ShapeKind>& base_shapes() {
  static const std::vector<ShapeKind> table{shape::square(),
                                            shape::rectangle(),
                                            shape::triangle(),
                                            shape::right_triangle(),
                                            shape::equilateral_triangle(),
                                            shape::isosceles_triangle(),
                                            shape::parallelogram(),
                                            shape::rhombus(),
                                            shape::trapezoid(),
                                            shape::regular_polygon(),
                                            shape::polygon()};
  return table;
}

namespace {

template <class Row>
const Row* find_row(const std::vector<Row>& table, std::string_view key) {
  const auto found = std::find_if(table.begin(), table.end(), [&](const Row& row) { return row.key == key; });
  return found == table.end() ? nullptr : &*found;
}

template <class Row>
std::vector<Description> examples(const Row& row) {
  std::vector<Description> all{row.example};
  all.insert(all.end(), row.further_examples.begin(), row.further_examples.end());
  return all;
}

}  // namespace

const Kind* find_kind(std::string_view key) { return find_row(kinds(), key); }
const ShapeKind* find_base_shape(std::string_view key) { return find_row(base_shapes(), key); }

const Kind& kind_for(Use use) {
  const auto serves = [&](const Kind& kind) {
    return std::find(kind.uses.begin(), kind.uses.end(), use) != kind.uses.end();
  };
  const auto found = std::find_if(kinds().begin(), kinds().end(), serves);
  ensure(found != kinds().end(), "no kind of solid serves a use of made-up problems");
  return *found;
}

namespace {

std::vector<Description> standing_solids() {
  std::vector<Description> all;
  for (const Kind& kind : kinds()) {
    for (const Description& example : examples(kind)) {
      if (!kind.stands_on_base) {
        all.push_back(example);
        continue;
      }
      for (const ShapeKind& shape : base_shapes()) {
        for (const Description& base : examples(shape)) {
          Description standing = example;
          standing.base = {base};
          if (Solid::make(standing)) {
            all.push_back(standing);
          }
        }
      }
    }
  }
  return all;
}

}  // namespace

std::vector<Description> shelf() {
  // Found once: which bases a kind can stand on is tried out, and never changes.
  static const std::vector<Description> all = standing_solids();
  return all;
}

}  // namespace fw::solids
