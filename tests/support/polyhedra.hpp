#pragma once

#include <algorithm>
#include <array>
#include <cmath>
#include <string>
#include <utility>
#include <vector>

#include "base/ensure.hpp"
#include "geometry/measure.hpp"
#include "geometry/polyhedron.hpp"

// Polyhedra to test with, built from coordinates that every handbook gives.
namespace fw::test {

using geometry::Polyhedron;
using geometry::Vec3;
using geometry::VertexId;

inline constexpr double pi = 3.14159265358979323846;

/// Requires: the loops are those of a polyhedron.
inline Polyhedron solid_of(std::vector<Vec3> vertices, const std::vector<std::vector<std::size_t>>& faces) {
  std::vector<Polyhedron::Loop> loops;
  for (const auto& face : faces) {
    Polyhedron::Loop loop;
    for (const std::size_t vertex : face) {
      loop.push_back(VertexId::at(vertex));
    }
    loops.push_back(loop);
  }
  auto made = Polyhedron::make(std::move(vertices), std::move(loops));
  ensure(made.has_value(), made.has_value() ? "" : made.error().front());
  return std::move(made).value();
}

/// The convex hull, by trying each plane through three points. Requires: each point is a corner of the hull.
inline Polyhedron hull_of(const std::vector<Vec3>& points) {
  const double reach = 1e-7 * geometry::bounding_box(points).diagonal();
  std::vector<std::vector<std::size_t>> faces;
  for (std::size_t a = 0; a < points.size(); ++a) {
    for (std::size_t b = a + 1; b < points.size(); ++b) {
      for (std::size_t c = a + 1; c < points.size(); ++c) {
        // Each face once: `a` its lowest corner, `b` the next one counterclockwise.
        if (c == b) {
          continue;
        }
        const Vec3 across = glm::cross(points[b] - points[a], points[c] - points[a]);
        if (glm::length(across) < reach * reach) {
          continue;
        }
        const Vec3 normal = glm::normalize(across);
        std::vector<std::size_t> on;
        bool outside = true;
        for (std::size_t p = 0; p < points.size() && outside; ++p) {
          const double height = glm::dot(points[p] - points[a], normal);
          outside = height < reach;
          if (std::abs(height) < reach) {
            on.push_back(p);
          }
        }
        if (!outside || on.front() != a) {
          continue;
        }
        Vec3 middle{0, 0, 0};
        for (const std::size_t p : on) {
          middle += points[p] / static_cast<double>(on.size());
        }
        const Vec3 right = glm::normalize(points[a] - middle);
        const Vec3 up = glm::cross(normal, right);
        const auto angle = [&](std::size_t p) {
          const double around = std::atan2(glm::dot(points[p] - middle, up), glm::dot(points[p] - middle, right));
          return p == a ? 0.0 : (around < 0 ? around + 2 * pi : around);
        };
        std::sort(on.begin(), on.end(), [&](std::size_t p, std::size_t q) { return angle(p) < angle(q); });
        if (on[1] == b && on[2] == c) {
          faces.push_back(on);
        }
      }
    }
  }
  return solid_of(points, faces);
}

/// n points round the z axis, the first one turned by `turn_rad` from the x axis.
inline std::vector<Vec3> ring(std::size_t n, double radius, double z, double turn_rad = 0) {
  std::vector<Vec3> points;
  for (std::size_t i = 0; i < n; ++i) {
    const double angle = turn_rad + 2 * pi * static_cast<double>(i) / static_cast<double>(n);
    points.push_back({radius * std::cos(angle), radius * std::sin(angle), z});
  }
  return points;
}
inline std::vector<Vec3> joined(std::vector<Vec3> a, const std::vector<Vec3>& b) {
  a.insert(a.end(), b.begin(), b.end());
  return a;
}
/// Of a regular n-gon with side 1.
inline double circumradius(std::size_t n) { return 0.5 / std::sin(pi / static_cast<double>(n)); }

inline Polyhedron box(double a, double b, double c) {
  return solid_of({{0, 0, 0}, {a, 0, 0}, {a, b, 0}, {0, b, 0}, {0, 0, c}, {a, 0, c}, {a, b, c}, {0, b, c}},
                  {{0, 3, 2, 1}, {4, 5, 6, 7}, {0, 1, 5, 4}, {1, 2, 6, 5}, {2, 3, 7, 6}, {3, 0, 4, 7}});
}
/// Two rings of n corners each, side by side: bottom, top, then the sides.
inline Polyhedron between_rings(const std::vector<Vec3>& bottom, const std::vector<Vec3>& top) {
  const std::size_t n = bottom.size();
  std::vector<std::vector<std::size_t>> faces(2);
  for (std::size_t i = 0; i < n; ++i) {
    faces[0].push_back(n - 1 - i);
    faces[1].push_back(n + i);
    faces.push_back({i, (i + 1) % n, n + (i + 1) % n, n + i});
  }
  return solid_of(joined(bottom, top), faces);
}
/// On a regular n-gon with side 1.
inline Polyhedron prism(std::size_t n, double height) {
  return between_rings(ring(n, circumradius(n), 0), ring(n, circumradius(n), height));
}
inline Polyhedron prism_on(const std::vector<Vec3>& base, double height) {
  std::vector<Vec3> top = base;
  for (Vec3& corner : top) {
    corner.z += height;
  }
  return between_rings(base, top);
}
inline Polyhedron frustum(std::size_t n, double bottom_radius, double top_radius, double height) {
  return between_rings(ring(n, bottom_radius, 0), ring(n, top_radius, height));
}
inline Polyhedron pyramid_on(std::vector<Vec3> base, Vec3 apex) {
  const std::size_t n = base.size();
  std::vector<std::vector<std::size_t>> faces(1);
  for (std::size_t i = 0; i < n; ++i) {
    faces[0].push_back(n - 1 - i);
    faces.push_back({i, (i + 1) % n, n});
  }
  base.push_back(apex);
  return solid_of(std::move(base), faces);
}
inline Polyhedron pyramid(std::size_t n, double height) {
  return pyramid_on(ring(n, circumradius(n), 0), {0, 0, height});
}
inline Polyhedron bipyramid(std::size_t n, double height) {
  return hull_of(joined(ring(n, circumradius(n), 0), {{0, 0, height}, {0, 0, -height}}));
}
/// With equilateral sides.
inline Polyhedron antiprism(std::size_t n) {
  const double count = static_cast<double>(n);
  const double height = std::sqrt(1 - std::pow(0.5 / std::cos(pi / (2 * count)), 2));
  return hull_of(joined(ring(n, circumradius(n), 0), ring(n, circumradius(n), height, pi / count)));
}
inline Polyhedron tetrahedron(Vec3 a, Vec3 b, Vec3 c, Vec3 d) { return hull_of({a, b, c, d}); }

/// All points with these coordinates, each sign changed in every way; `even`: also their cyclic exchanges.
enum class Exchange { None, Cyclic, All };
inline std::vector<Vec3> with_all_signs(const std::vector<Vec3>& seeds, Exchange exchange) {
  std::vector<Vec3> points;
  const auto add = [&points](Vec3 p) {
    for (const Vec3& known : points) {
      if (glm::length(known - p) < 1e-9) {
        return;
      }
    }
    points.push_back(p);
  };
  for (const Vec3& s : seeds) {
    for (int signs = 0; signs < 8; ++signs) {
      const Vec3 p = {(signs & 1) != 0 ? -s.x : s.x, (signs & 2) != 0 ? -s.y : s.y, (signs & 4) != 0 ? -s.z : s.z};
      add(p);
      if (exchange != Exchange::None) {
        add({p.y, p.z, p.x});
        add({p.z, p.x, p.y});
      }
      if (exchange == Exchange::All) {
        add({p.y, p.x, p.z});
        add({p.x, p.z, p.y});
        add({p.z, p.y, p.x});
      }
    }
  }
  return points;
}

inline const double golden = (1 + std::sqrt(5.0)) / 2;

inline Polyhedron regular_tetrahedron() { return tetrahedron({1, 1, 1}, {1, -1, -1}, {-1, 1, -1}, {-1, -1, 1}); }
inline Polyhedron cube() { return box(1, 1, 1); }
inline Polyhedron octahedron() { return hull_of(with_all_signs({{1, 0, 0}}, Exchange::Cyclic)); }
inline Polyhedron dodecahedron() {
  return hull_of(
      joined(with_all_signs({{1, 1, 1}}, Exchange::None), with_all_signs({{0, 1 / golden, golden}}, Exchange::Cyclic)));
}
inline Polyhedron icosahedron() { return hull_of(with_all_signs({{0, 1, golden}}, Exchange::Cyclic)); }

/// An L-shaped room: six corners round, one of them reflex.
inline Polyhedron l_prism(double height) {
  return prism_on({{0, 0, 0}, {3, 0, 0}, {3, 1, 0}, {1, 1, 0}, {1, 2, 0}, {0, 2, 0}}, height);
}

struct NamedSolid {
  std::string name;
  Polyhedron solid;
};
/// One of each sort, convex or not, for laws that hold for all.
inline std::vector<NamedSolid> sample_solids() {
  return {{"tetrahedron", regular_tetrahedron()},
          {"cube", cube()},
          {"octahedron", octahedron()},
          {"dodecahedron", dodecahedron()},
          {"icosahedron", icosahedron()},
          {"box 2x3x4", box(2, 3, 4)},
          {"prism n=3", prism(3, 2)},
          {"prism n=7", prism(7, 0.3)},
          {"pyramid n=5", pyramid(5, 1.5)},
          {"bipyramid n=6", bipyramid(6, 0.7)},
          {"antiprism n=4", antiprism(4)},
          {"frustum n=4", frustum(4, 1, 0.5, 0.1)},
          {"slanted tetrahedron", tetrahedron({0, 0, 0}, {1, 0, 0}, {10, 1, 0}, {16, 4, 2})},
          {"L-shaped prism", l_prism(1.25)}};
}

}  // namespace fw::test
