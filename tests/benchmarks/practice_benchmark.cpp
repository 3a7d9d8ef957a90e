#include <benchmark/benchmark.h>

#include "practice/choices.hpp"
#include "practice/diagnosis.hpp"
#include "tasks/generate/generate.hpp"

namespace fw::practice {
namespace {

/// Mixed problems of all types and levels, `count` a round. Aim: 1,000 in under 2 s.
void generate_problems(benchmark::State& state) {
  const auto count = static_cast<std::size_t>(state.range(0));
  for (auto round : state) {
    (void)round;
    std::size_t made = 0;
    for (std::uint64_t seed = 1; made < count; ++seed) {
      tasks::PracticeRequest request;
      request.seed = seed;
      request.level = 1 + static_cast<int>(seed % 3);
      request.count = 50;
      const auto lessons = tasks::generated(request);
      if (!lessons) {
        state.SkipWithError(words::said(lessons.error()).c_str());
        return;
      }
      made += lessons->front().problems.size();
    }
  }
}
BENCHMARK(generate_problems)->Arg(1000)->Unit(benchmark::kMillisecond);

std::vector<lessons::Problem> problems_of(int level) {
  tasks::PracticeRequest request;
  request.level = level;
  request.count = 60;
  return tasks::generated(request)->front().problems;
}

/// One answer after another, wrong ones that the table does not know. Aim: under 1 ms each.
void diagnose_answers(benchmark::State& state) {
  const std::vector<lessons::Problem> problems = problems_of(static_cast<int>(state.range(0)));
  std::size_t i = 0;
  for (auto round : state) {
    (void)round;
    const lessons::Problem& problem = problems[i++ % problems.size()];
    benchmark::DoNotOptimize(diagnosed(problem, "217.3").has_value());
  }
}
BENCHMARK(diagnose_answers)->Arg(1)->Arg(2)->Arg(3)->Unit(benchmark::kMicrosecond);

void choose_options(benchmark::State& state) {
  const std::vector<lessons::Problem> problems = problems_of(static_cast<int>(state.range(0)));
  std::size_t i = 0;
  for (auto round : state) {
    (void)round;
    const lessons::Problem& problem = problems[i++ % problems.size()];
    benchmark::DoNotOptimize(choices_of(problem, i).has_value());
  }
}
BENCHMARK(choose_options)->Arg(3)->Unit(benchmark::kMicrosecond);

}  // namespace
}  // namespace fw::practice

BENCHMARK_MAIN();
