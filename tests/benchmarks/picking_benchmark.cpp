#include <benchmark/benchmark.h>

#include "geometry/ray.hpp"
#include "nets/enumerate.hpp"
#include "nets/folding.hpp"
#include "support/polyhedra.hpp"

namespace fw::nets {
namespace {

// Asked for at every move of the pointer.
void pick_a_face(benchmark::State& state) {
  const Polyhedron solid = test::prism(static_cast<std::size_t>(state.range(0)), 1);
  const HingeTree tree = distinct_nets(solid, FaceId::at(0), 1).nets.front();
  const Pose half_open = pose(solid, tree, 0.5, FoldOrder::Together);
  double offset = 0;
  for (auto round : state) {
    (void)round;
    offset = offset > 1 ? 0 : offset + 0.01;
    const geometry::Ray ray{{offset, 5, 7}, {-0.1, -0.6, -0.8}};
    benchmark::DoNotOptimize(geometry::nearest_hit(half_open, ray).has_value());
  }
}
BENCHMARK(pick_a_face)->Arg(6)->Arg(20)->Unit(benchmark::kMicrosecond);

// The same on a closed prism of so many sides.
void pick_a_face_of_a_closed_prism(benchmark::State& state) {
  const Polyhedron solid = test::prism(static_cast<std::size_t>(state.range(0)), 1);
  Pose closed;
  for (const Polyhedron::Loop& loop : solid.faces()) {
    std::vector<geometry::Vec3> corners;
    for (const auto vertex : loop) {
      corners.push_back(solid.vertices()[vertex]);
    }
    closed.push_back(std::move(corners));
  }
  double offset = 0;
  for (auto round : state) {
    (void)round;
    offset = offset > 1 ? 0 : offset + 0.01;
    const geometry::Ray ray{{offset, 5, 7}, {-0.1, -0.6, -0.8}};
    benchmark::DoNotOptimize(geometry::nearest_hit(closed, ray).has_value());
  }
}
BENCHMARK(pick_a_face_of_a_closed_prism)->Arg(998)->Unit(benchmark::kMicrosecond);

}  // namespace
}  // namespace fw::nets

BENCHMARK_MAIN();
