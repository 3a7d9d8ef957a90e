#include "nets/published_solids.hpp"

namespace fw::test {
namespace {

const double root2 = std::sqrt(2.0);
const double phi = golden;

Polyhedron turned_about(const std::vector<Vec3>& seeds) { return hull_of(with_all_signs(seeds, Exchange::Cyclic)); }
Polyhedron exchanged(const std::vector<Vec3>& seeds) { return hull_of(with_all_signs(seeds, Exchange::All)); }

Polyhedron truncated_tetrahedron() {
  std::vector<Vec3> points;
  for (const Vec3& p : with_all_signs({{3, 1, 1}}, Exchange::Cyclic)) {
    if (p.x * p.y * p.z > 0) {
      points.push_back(p);
    }
  }
  return hull_of(points);
}

void add_archimedean(std::map<std::string, SolidMaker>& solids) {
  solids["truncated tetrahedron"] = truncated_tetrahedron;
  solids["cuboctahedron"] = [] { return exchanged({{0, 1, 1}}); };
  solids["truncated cube"] = [] { return exchanged({{root2 - 1, 1, 1}}); };
  solids["truncated octahedron"] = [] { return exchanged({{0, 1, 2}}); };
  solids["rhombicuboctahedron"] = [] { return exchanged({{1, 1, 1 + root2}}); };
  solids["truncated cuboctahedron"] = [] { return exchanged({{1, 1 + root2, 1 + 2 * root2}}); };
  solids["icosidodecahedron"] = [] { return turned_about({{0, 0, 2 * phi}, {1, phi, phi * phi}}); };
  solids["truncated dodecahedron"] = [] {
    return turned_about({{0, 1 / phi, 2 + phi}, {1 / phi, phi, 2 * phi}, {phi, 2, phi + 1}});
  };
  solids["truncated icosahedron"] = [] {
    return turned_about({{0, 1, 3 * phi}, {1, 2 + phi, 2 * phi}, {phi, 2, 2 * phi + 1}});
  };
  solids["rhombicosidodecahedron"] = [] {
    return turned_about({{1, 1, phi * phi * phi}, {phi * phi, phi, 2 * phi}, {2 + phi, 0, phi * phi}});
  };
  solids["truncated icosidodecahedron"] = [] {
    return turned_about({{1 / phi, 1 / phi, 3 + phi},
                         {2 / phi, phi, 1 + 2 * phi},
                         {1 / phi, phi * phi, 3 * phi - 1},
                         {2 * phi - 1, 2, 2 + phi},
                         {phi, 3, 2 * phi}});
  };
}

/// The height of an n-sided pyramid and of a cupola on 2n sides, and the distance of an antiprism's bases, with
/// all edges 1.
double cap(std::size_t n) { return std::sqrt(1 - std::pow(circumradius(n), 2)); }
double apothem(std::size_t n) { return 0.5 / std::tan(pi / static_cast<double>(n)); }
double cupola_height(std::size_t n) { return std::sqrt(1 - std::pow(apothem(2 * n) - apothem(n), 2)); }
double drum(std::size_t n) { return std::sqrt(1 - std::pow(0.5 / std::cos(pi / (2 * static_cast<double>(n))), 2)); }

/// Pyramids on a body between the heights 0 and `body`, its upper ring turned by half a step for a `twisted` one.
std::vector<Vec3> capped(std::size_t n, double body, bool twisted, bool both) {
  const double turn = twisted ? pi / static_cast<double>(n) : 0.0;
  std::vector<Vec3> points = ring(n, circumradius(n), 0);
  if (body > 0) {
    points = joined(points, ring(n, circumradius(n), body, turn));
  }
  points.push_back({0, 0, body + cap(n)});
  if (both) {
    points.push_back({0, 0, -cap(n)});
  }
  return points;
}

/// The wide ring of a cupola at height 0 and the narrow one above it, or below for `side` -1; the narrow one
/// turned on by `steps` sides of the wide one.
std::vector<Vec3> cupola(std::size_t n, double side, double steps) {
  const double step = pi / static_cast<double>(n);
  return joined(ring(2 * n, circumradius(2 * n), 0, step / 2),
                ring(n, circumradius(n), side * cupola_height(n), step + steps * step));
}
std::vector<Vec3> narrow_ring(std::size_t n, double side, double steps) {
  const std::vector<Vec3> points = cupola(n, side, steps);
  return {points.begin() + static_cast<std::ptrdiff_t>(2 * n), points.end()};
}
std::vector<Vec3> on_drum(std::size_t n, double height, double turn_steps) {
  const double step = pi / static_cast<double>(n);
  return joined(cupola(n, 1, 0), ring(2 * n, circumradius(2 * n), -height, step / 2 + turn_steps * step));
}

/// A triangular prism with pyramids on `count` of its square sides.
Polyhedron augmented_prism(std::size_t count) {
  std::vector<Vec3> points = joined(ring(3, circumradius(3), 0), ring(3, circumradius(3), 1));
  const std::vector<Vec3> apexes = ring(3, apothem(3) + cap(4), 0.5, pi / 3);
  points.insert(points.end(), apexes.begin(), apexes.begin() + static_cast<std::ptrdiff_t>(count));
  return hull_of(points);
}

/// The icosahedron without some corners, no two of them neighbors.
Polyhedron diminished_icosahedron(std::size_t count) {
  std::vector<Vec3> cut;
  std::vector<Vec3> left;
  for (const Vec3& p : with_all_signs({{0, 1, phi}}, Exchange::Cyclic)) {
    bool apart = cut.size() < count;
    for (const Vec3& q : cut) {
      const double distance = glm::length(p - q);
      apart = apart && distance > 2.1 && distance < 3.5;  // neighbors are 2 apart, opposites 3.8
    }
    (apart ? cut : left).push_back(p);
  }
  return hull_of(left);
}

void add_johnson(std::map<std::string, SolidMaker>& solids) {
  solids["J1 square pyramid"] = [] { return pyramid(4, cap(4)); };
  solids["J2 pentagonal pyramid"] = [] { return pyramid(5, cap(5)); };
  solids["J3 triangular cupola"] = [] { return hull_of(cupola(3, 1, 0)); };
  solids["J4 square cupola"] = [] { return hull_of(cupola(4, 1, 0)); };
  solids["J5 pentagonal cupola"] = [] { return hull_of(cupola(5, 1, 0)); };
  solids["J7 elongated triangular pyramid"] = [] { return hull_of(capped(3, 1, false, false)); };
  solids["J8 elongated square pyramid"] = [] { return hull_of(capped(4, 1, false, false)); };
  solids["J9 elongated pentagonal pyramid"] = [] { return hull_of(capped(5, 1, false, false)); };
  solids["J10 gyroelongated square pyramid"] = [] { return hull_of(capped(4, drum(4), true, false)); };
  solids["J11 gyroelongated pentagonal pyramid"] = [] { return hull_of(capped(5, drum(5), true, false)); };
  solids["J12 triangular bipyramid"] = [] { return bipyramid(3, cap(3)); };
  solids["J13 pentagonal bipyramid"] = [] { return bipyramid(5, cap(5)); };
  solids["J14 elongated triangular bipyramid"] = [] { return hull_of(capped(3, 1, false, true)); };
  solids["J15 elongated square bipyramid"] = [] { return hull_of(capped(4, 1, false, true)); };
  solids["J16 elongated pentagonal bipyramid"] = [] { return hull_of(capped(5, 1, false, true)); };
  solids["J17 gyroelongated square bipyramid"] = [] { return hull_of(capped(4, drum(4), true, true)); };
  solids["J18 elongated triangular cupola"] = [] { return hull_of(on_drum(3, 1, 0)); };
  solids["J19 elongated square cupola"] = [] { return hull_of(on_drum(4, 1, 0)); };
  solids["J20 elongated pentagonal cupola"] = [] { return hull_of(on_drum(5, 1, 0)); };
  solids["J22 gyroelongated triangular cupola"] = [] { return hull_of(on_drum(3, drum(6), 0.5)); };
  solids["J23 gyroelongated square cupola"] = [] { return hull_of(on_drum(4, drum(8), 0.5)); };
  solids["J24 gyroelongated pentagonal cupola"] = [] { return hull_of(on_drum(5, drum(10), 0.5)); };
  solids["J27 triangular orthobicupola"] = [] { return hull_of(joined(cupola(3, 1, 0), narrow_ring(3, -1, 0))); };
  solids["J28 square orthobicupola"] = [] { return hull_of(joined(cupola(4, 1, 0), narrow_ring(4, -1, 0))); };
  solids["J29 square gyrobicupola"] = [] { return hull_of(joined(cupola(4, 1, 0), narrow_ring(4, -1, 1))); };
  solids["J30 pentagonal orthobicupola"] = [] { return hull_of(joined(cupola(5, 1, 0), narrow_ring(5, -1, 0))); };
  solids["J31 pentagonal gyrobicupola"] = [] { return hull_of(joined(cupola(5, 1, 0), narrow_ring(5, -1, 1))); };
  solids["J49 augmented triangular prism"] = [] { return augmented_prism(1); };
  solids["J50 biaugmented triangular prism"] = [] { return augmented_prism(2); };
  solids["J51 triaugmented triangular prism"] = [] { return augmented_prism(3); };
  solids["J62 metabidiminished icosahedron"] = [] { return diminished_icosahedron(2); };
  solids["J63 tridiminished icosahedron"] = [] { return diminished_icosahedron(3); };
}

std::map<std::string, SolidMaker> all_solids() {
  std::map<std::string, SolidMaker> solids;
  solids["tetrahedron"] = regular_tetrahedron;
  solids["cube"] = cube;
  solids["octahedron"] = octahedron;
  solids["dodecahedron"] = dodecahedron;
  solids["icosahedron"] = icosahedron;
  solids["box 1x2x3"] = [] { return box(1, 2, 3); };
  solids["square box 1x1x2"] = [] { return box(1, 1, 2); };
  solids["box 1x1x1"] = [] { return box(1, 1, 1); };
  for (std::size_t n = 3; n <= 12; ++n) {
    const std::string sides = " n=" + std::to_string(n);
    solids["pyramid" + sides] = [n] { return pyramid(n, 2); };
    solids["frustum" + sides] = [n] { return frustum(n, 1, 0.6, 1.5); };
    solids["prism" + sides] = [n] { return prism(n, 2); };
    solids["bipyramid" + sides] = [n] { return bipyramid(n, 2); };
    solids["antiprism" + sides] = [n] { return antiprism(n); };
  }
  const std::vector<Vec3> scalene = {{0, 0, 0}, {4, 0, 0}, {1, 2.5, 0}};
  solids["prism scalene triangle"] = [scalene] { return prism_on(scalene, 2); };
  solids["prism isosceles triangle"] = [] { return prism_on({{0, 0, 0}, {4, 0, 0}, {2, 5, 0}}, 3); };
  solids["pyramid rectangle base"] = [] {
    return pyramid_on({{-1, -2, 0}, {1, -2, 0}, {1, 2, 0}, {-1, 2, 0}}, {0, 0, 3});
  };
  solids["scalene tetrahedron"] = [scalene] { return pyramid_on(scalene, {1, 1, 3}); };
  solids["disphenoid"] = [] { return tetrahedron({0, 0, 0}, {2, 3, 0}, {2, 0, 4}, {0, 3, 4}); };
  add_archimedean(solids);
  add_johnson(solids);
  return solids;
}

}  // namespace

const std::map<std::string, SolidMaker>& published_solids() {
  static const std::map<std::string, SolidMaker> solids = all_solids();
  return solids;
}

}  // namespace fw::test
