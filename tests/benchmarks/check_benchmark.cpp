#include <benchmark/benchmark.h>

#include <cmath>
#include <cstdio>

#include "solids/solid.hpp"
#include "tasks/catalog.hpp"

namespace fw::lessons {
namespace {

/// Solids as a teacher writes them, each with one number open: `#` is replaced by a whole number.
const std::vector<std::string>& patterns() {
  static const std::vector<std::string> all{
      R"("solid": {"kind": "rectangular prism", "length": "# cm", "width": "7 cm", "height": "5 cm"})"
      R"(, "find": ["surface_area"])",
      R"("solid": {"kind": "cube", "edge": "# cm"})"
      R"(, "find": ["volume"])",
      R"("solid": {"kind": "pyramid", "base": {"shape": "square", "side": "# cm"}, "slant_height": "45 cm"})"
      R"(, "find": ["surface_area"])",
      R"("solid": {"kind": "pyramid", "base": {"shape": "square", "side": "# cm"}, "height": "12 cm"})"
      R"(, "find": ["slant_height"])",
      R"("solid": {"kind": "prism", "base": {"shape": "triangle", "sides": ["# cm", "40 cm", "41 cm"]})"
      R"(, "height": "10 cm"})"
      R"(, "find": ["volume"])",
      R"("solid": {"kind": "prism", "base": {"shape": "right triangle", "legs": ["# cm", "15 cm"]}, "height": "10 cm"})"
      R"(, "find": ["surface_area"])",
      R"("solid": {"kind": "prism", "base": {"shape": "equilateral triangle", "side": "# cm"}, "height": "10.5 cm"})"
      R"(, "find": ["surface_area"])",
      R"("solid": {"kind": "pyramid", "base": {"shape": "rectangle", "length": "# cm", "width": "18 cm"})"
      R"(, "height": "12 cm"})"
      R"(, "find": ["surface_area"])",
      R"("solid": {"kind": "prism", "base": {"shape": "regular polygon", "count": 6, "side": "# cm"})"
      R"(, "height": "10 cm"})"
      R"(, "find": ["volume"])",
      R"("solid": {"kind": "rectangular prism", "length": "# ft", "width": "5 ft")"
      R"(, "height": "?"}, "known": {"volume": "180 ft^3"})"
      R"(, "find": ["height"])"};
  return all;
}

std::string lesson_of(std::size_t count) {
  std::string text = R"({"lesson": 1, "title": "Lantern fair", "problems": [)";
  for (std::size_t i = 0; i < count; ++i) {
    std::string pattern = patterns()[i % patterns().size()];
    pattern.replace(pattern.find('#'), 1, std::to_string(6 + i / patterns().size() % 50));
    text += (i == 0 ? "" : ",") +
            (R"({"id": "p)" + std::to_string(i) + R"(", "prompt": "How much card is needed?", )") + pattern + "}";
  }
  return text + "]}";
}

void check_a_lesson(benchmark::State& state) {
  const std::string text = lesson_of(static_cast<std::size_t>(state.range(0)));
  for (auto round : state) {
    (void)round;
    benchmark::DoNotOptimize(tasks::findings_of(text).size());
  }
}
BENCHMARK(check_a_lesson)->Arg(1000)->Unit(benchmark::kMillisecond);

/// A regular polygon's corners, to four decimals, as a lesson gives them.
std::string corners(int count, double radius) {
  std::string text;
  for (int i = 0; i < count; ++i) {
    const double angle_rad = 2 * 3.14159265358979323846 * i / count;
    char point[64];
    std::snprintf(point, sizeof point, "[%.4f, %.4f]", radius * std::cos(angle_rad), radius * std::sin(angle_rad));
    text += (i == 0 ? "" : ", ") + std::string(point);
  }
  return text;
}

std::string on_polygon(const std::string& kind, int count, double radius, int number) {
  return R"({"id": "p)" + std::to_string(number) + R"(", "prompt": "How much card is needed?", "solid": {"kind": ")" +
         kind + R"(", "base": {"shape": "polygon", "unit": "cm", "vertices": [)" + corners(count, radius) +
         R"(]}, "height": "9 cm"}, "find": ["surface_area"]})";
}

void check_text(benchmark::State& state, const std::string& problems) {
  const std::string text = R"({"lesson": 1, "title": "Lantern fair", "problems": [)" + problems + "]}";
  for (auto round : state) {
    (void)round;
    benchmark::DoNotOptimize(tasks::findings_of(text).size());
  }
}

void check_a_pyramid_on_corners(benchmark::State& state) {
  check_text(state, on_polygon("pyramid", static_cast<int>(state.range(0)), 100, 1));
}
BENCHMARK(check_a_pyramid_on_corners)->Arg(10)->Arg(20)->Arg(40)->Unit(benchmark::kMillisecond);

void check_prisms_on_polygons(benchmark::State& state) {
  std::string problems;
  for (int i = 0; i < state.range(0); ++i) {
    problems += (i == 0 ? "" : ",") + on_polygon("prism", 5 + i % 8, 20 + i % 50, i);
  }
  check_text(state, problems);
}
BENCHMARK(check_prisms_on_polygons)->Arg(1000)->Unit(benchmark::kMillisecond);

void check_a_box_of_extremes(benchmark::State& state) {
  check_text(state, R"({"id": "p", "prompt": "How much card is needed?", "solid": {"kind": "rectangular prism", )"
                    R"("length": "1000 km", "width": "1 km", "height": "1 mm"}, "find": ["surface_area"]})");
}
BENCHMARK(check_a_box_of_extremes)->Unit(benchmark::kMillisecond);

void make_a_solid(benchmark::State& state, const solids::Description& description) {
  for (auto round : state) {
    (void)round;
    benchmark::DoNotOptimize(solids::Solid::make(description).has_value());
  }
}

void register_the_shelf() {
  for (const solids::Description& description : solids::shelf()) {
    const std::string name =
        "make/" + description.kind + (description.base.empty() ? "" : "/" + description.base.front().kind);
    benchmark::RegisterBenchmark(name.c_str(), [description](benchmark::State& state) {
      make_a_solid(state, description);
    })->Unit(benchmark::kMicrosecond);
  }
}

}  // namespace
}  // namespace fw::lessons

int main(int argc, char** argv) {
  fw::lessons::register_the_shelf();
  benchmark::Initialize(&argc, argv);
  benchmark::RunSpecifiedBenchmarks();
  return 0;
}
