#include <benchmark/benchmark.h>

#include "geometry/symmetry.hpp"
#include "nets/enumerate.hpp"
#include "nets/folding.hpp"
#include "nets/layout.hpp"
#include "support/polyhedra.hpp"

namespace fw::nets {
namespace {

// The aim: the 43,380 distinct nets of the dodecahedron listed and each tested for overlap in under 3 s.
void count_dodecahedron_nets(benchmark::State& state) {
  const Polyhedron solid = test::dodecahedron();
  for (auto round : state) {
    (void)round;
    benchmark::DoNotOptimize(count_nets(solid).distinct);
  }
}
BENCHMARK(count_dodecahedron_nets)->Unit(benchmark::kMillisecond);

void count_icosahedron_nets(benchmark::State& state) {
  const Polyhedron solid = test::icosahedron();
  for (auto round : state) {
    (void)round;
    benchmark::DoNotOptimize(count_nets(solid).distinct);
  }
}
BENCHMARK(count_icosahedron_nets)->Unit(benchmark::kMillisecond);

void first_nets_of_a_prism(benchmark::State& state) {
  const Polyhedron solid = test::prism(static_cast<std::size_t>(state.range(0)), 1);
  for (auto round : state) {
    (void)round;
    benchmark::DoNotOptimize(distinct_nets(solid, FaceId::at(0), 60).nets.size());
  }
}
BENCHMARK(first_nets_of_a_prism)->Arg(6)->Arg(12)->Arg(20)->Unit(benchmark::kMicrosecond);

void find_symmetries(benchmark::State& state) {
  const Polyhedron solid = test::icosahedron();
  for (auto round : state) {
    (void)round;
    benchmark::DoNotOptimize(geometry::symmetries(solid).size());
  }
}
BENCHMARK(find_symmetries)->Unit(benchmark::kMicrosecond);

void unfold_and_test(benchmark::State& state) {
  const Polyhedron solid = test::dodecahedron();
  const HingeTree tree = distinct_nets(solid, FaceId::at(0), 1).nets.front();
  for (auto round : state) {
    (void)round;
    benchmark::DoNotOptimize(overlapping(unfolded(solid, tree)).size());
  }
}
BENCHMARK(unfold_and_test)->Unit(benchmark::kMicrosecond);

// Asked for in every frame of a folding.
void fold(benchmark::State& state) {
  const Polyhedron solid = test::dodecahedron();
  const HingeTree tree = distinct_nets(solid, FaceId::at(0), 1).nets.front();
  for (auto round : state) {
    (void)round;
    benchmark::DoNotOptimize(pose(solid, tree, 0.4, FoldOrder::OneByOne).size());
  }
}
BENCHMARK(fold)->Unit(benchmark::kMicrosecond);

}  // namespace
}  // namespace fw::nets

BENCHMARK_MAIN();
