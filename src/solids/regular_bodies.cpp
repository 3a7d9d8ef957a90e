#include "solids/regular_bodies.hpp"

#include <cmath>

namespace fw::solids {

using geometry::Vec3;

namespace {

constexpr double pi = 3.14159265358979323846;

void add_ring(RegularShape& shape, std::size_t count, double radius, double z, double first_turn) {
  for (std::size_t k = 0; k < count; ++k) {
    const double angle = 2 * pi * (static_cast<double>(k) + first_turn) / static_cast<double>(count);
    shape.vertices.emplace_back(radius * std::cos(angle), radius * std::sin(angle), z);
  }
}

}  // namespace

RegularShape regular_tetrahedron() {
  RegularShape shape;
  add_ring(shape, 3, 1 / std::sqrt(3.0), 0, 0);
  shape.vertices.emplace_back(0.0, 0.0, std::sqrt(2.0 / 3.0));
  shape.loops = {{2, 1, 0}, {0, 1, 3}, {1, 2, 3}, {2, 0, 3}};
  shape.hinges = {{0, 1}, {0, 2}, {0, 3}};
  return shape;
}

RegularShape regular_hexahedron() {
  RegularShape shape;
  shape.vertices = {{0, 0, 0}, {1, 0, 0}, {1, 1, 0}, {0, 1, 0}, {0, 0, 1}, {1, 0, 1}, {1, 1, 1}, {0, 1, 1}};
  shape.loops = {{0, 3, 2, 1}, {4, 5, 6, 7}, {0, 1, 5, 4}, {2, 3, 7, 6}, {3, 0, 4, 7}, {1, 2, 6, 5}};
  shape.hinges = {{0, 2}, {0, 3}, {0, 4}, {0, 5}, {3, 1}};
  return shape;
}

RegularShape regular_octahedron() {
  // Two triangles, the upper one turned by 60°, and a band of six between them.
  RegularShape shape;
  add_ring(shape, 3, 1 / std::sqrt(3.0), 0, 0);
  add_ring(shape, 3, 1 / std::sqrt(3.0), std::sqrt(2.0 / 3.0), 0.5);
  shape.loops = {{2, 1, 0}, {3, 4, 5}};
  for (std::size_t k = 0; k < 3; ++k) {
    const std::size_t next = (k + 1) % 3;
    shape.loops.push_back({k, next, 3 + k});
    shape.loops.push_back({next, 3 + next, 3 + k});
  }
  for (std::size_t i = 2; i < 7; ++i) {
    shape.hinges.push_back({i, i + 1});
  }
  shape.hinges.push_back({0, 4});
  shape.hinges.push_back({1, 5});
  return shape;
}

RegularShape regular_dodecahedron() {
  // Four rings of five corners; the middle ones are wider by the golden ratio.
  const double golden = (1 + std::sqrt(5.0)) / 2;
  const double narrow = 1 / (2 * std::sin(pi / 5));
  const double wide = golden * narrow;
  RegularShape shape;
  add_ring(shape, 5, narrow, 0, 0);
  add_ring(shape, 5, wide, narrow, 0);
  add_ring(shape, 5, wide, wide, 0.5);
  add_ring(shape, 5, narrow, wide + narrow, 0.5);
  shape.loops = {{4, 3, 2, 1, 0}, {15, 16, 17, 18, 19}};
  for (std::size_t k = 0; k < 5; ++k) {
    const std::size_t next = (k + 1) % 5;
    shape.loops.push_back({k, next, 5 + next, 10 + k, 5 + k});
  }
  for (std::size_t k = 0; k < 5; ++k) {
    const std::size_t next = (k + 1) % 5;
    shape.loops.push_back({15 + k, 10 + k, 5 + next, 10 + next, 15 + next});
  }
  for (std::size_t k = 0; k < 5; ++k) {
    shape.hinges.push_back({0, 2 + k});
    shape.hinges.push_back({1, 7 + k});
  }
  shape.hinges.push_back({2, 7});
  return shape;
}

RegularShape regular_icosahedron() {
  // Two rings of five between two poles.
  const double radius = 1 / (2 * std::sin(pi / 5));
  const double ring_gap = radius;
  const double pole_gap = std::sqrt(1 - radius * radius);
  RegularShape shape;
  add_ring(shape, 5, radius, -ring_gap / 2, 0);
  add_ring(shape, 5, radius, ring_gap / 2, 0.5);
  shape.vertices.emplace_back(0.0, 0.0, -ring_gap / 2 - pole_gap);
  shape.vertices.emplace_back(0.0, 0.0, ring_gap / 2 + pole_gap);
  // The band: 2k stands on the lower ring, 2k + 1 hangs from the upper one.
  for (std::size_t k = 0; k < 5; ++k) {
    const std::size_t next = (k + 1) % 5;
    shape.loops.push_back({k, next, 5 + k});
    shape.loops.push_back({next, 5 + next, 5 + k});
  }
  for (std::size_t k = 0; k < 5; ++k) {
    shape.loops.push_back({(k + 1) % 5, k, 10});
  }
  for (std::size_t k = 0; k < 5; ++k) {
    shape.loops.push_back({5 + k, 5 + (k + 1) % 5, 11});
  }
  for (std::size_t i = 0; i < 9; ++i) {
    shape.hinges.push_back({i, i + 1});
  }
  for (std::size_t k = 0; k < 5; ++k) {
    shape.hinges.push_back({2 * k, 10 + k});
    shape.hinges.push_back({2 * k + 1, 15 + k});
  }
  return shape;
}

RegularShape laid_down(RegularShape shape) {
  const auto& bottom = shape.loops[0];
  const Vec3 first = shape.vertices[bottom[0]];
  const Vec3 second = shape.vertices[bottom[1]];
  Vec3 center{};
  for (const std::size_t corner : bottom) {
    center += shape.vertices[corner] / static_cast<double>(bottom.size());
  }
  // Seen from below the loop runs counterclockwise, so its first edge runs to the left along the front.
  const Vec3 right = glm::normalize(first - second);
  const Vec3 back = glm::normalize(center - (first + second) * 0.5);
  const Vec3 up = glm::cross(right, back);
  for (Vec3& vertex : shape.vertices) {
    const Vec3 offset = vertex - center;
    vertex = {glm::dot(offset, right), glm::dot(offset, back), glm::dot(offset, up)};
  }
  for (const std::size_t corner : bottom) {
    shape.vertices[corner].z = 0;
  }
  return shape;
}

}  // namespace fw::solids
