#include <benchmark/benchmark.h>

#include <algorithm>
#include <chrono>

#include "reasoning/solution.hpp"
#include "reasoning/unknown.hpp"
#include "solids/catalog.hpp"

namespace fw::reasoning {
namespace {

struct Asked {
  solids::Solid solid;
  std::string measure;
};

/// Every measure of the shelf's figures that is not given.
std::vector<Asked> asked_of_the_shelf() {
  std::vector<Asked> all;
  for (const solids::Description& description : solids::shelf()) {
    const auto solid = solids::Solid::make(description);
    for (const Askable& measure : askable_measures(*solid)) {
      if (!measure.is_given) {
        all.push_back({*solid, measure.name});
      }
    }
  }
  return all;
}

/// Counters: the median and the longest of the worked solutions, in milliseconds.
void work_out_the_shelf(benchmark::State& state, Route route) {
  std::vector<Asked> all = asked_of_the_shelf();
  if (route == Route::FaceByFace) {
    all.erase(std::remove_if(all.begin(), all.end(), [](const Asked& a) { return a.measure != "surface_area"; }),
              all.end());
  }
  SolutionOptions options;
  options.route = route;
  std::vector<double> times_ms;
  for (auto round : state) {
    (void)round;
    for (const Asked& asked : all) {
      const auto start = std::chrono::steady_clock::now();
      benchmark::DoNotOptimize(worked_solution(asked.solid, asked.measure, options).has_value());
      times_ms.push_back(std::chrono::duration<double, std::milli>(std::chrono::steady_clock::now() - start).count());
    }
  }
  std::sort(times_ms.begin(), times_ms.end());
  state.counters["solutions"] = static_cast<double>(all.size());
  state.counters["median_ms"] = times_ms[times_ms.size() / 2];
  state.counters["longest_ms"] = times_ms.back();
}
BENCHMARK_CAPTURE(work_out_the_shelf, by_formula, Route::Formula)->Unit(benchmark::kMillisecond);
BENCHMARK_CAPTURE(work_out_the_shelf, face_by_face, Route::FaceByFace)->Unit(benchmark::kMillisecond);

}  // namespace
}  // namespace fw::reasoning

BENCHMARK_MAIN();
