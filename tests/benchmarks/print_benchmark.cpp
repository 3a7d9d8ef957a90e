#include <benchmark/benchmark.h>

#include "paper/pdf_file.hpp"
#include "paper/sheets/print.hpp"
#include "platform/assets.hpp"
#include "state/paper_type.hpp"
#include "tasks/catalog.hpp"
#include "tasks/generate/generate.hpp"

namespace fw::paper {
namespace {

lessons::Lesson demo_lesson() { return tasks::read_lesson(platform::asset("lantern_fair.json")).value(); }

lessons::Lesson made_up(std::size_t count) {
  tasks::PracticeRequest request;
  request.level = 2;
  request.count = count;
  return tasks::generated(request)->front();
}

void print_sheet(benchmark::State& state, const char* sheet, const lessons::Lesson& lesson) {
  SheetOptions options;
  options.versions = 4;
  std::size_t pages = 0;
  for (auto round : state) {
    (void)round;
    const Printed printed = made(find_sheet(sheet)->plan, state::paper_type(), lesson, options);
    benchmark::DoNotOptimize(pdf_file(printed.pages, state::paper_type(), lesson.title));
    pages = printed.pages.size();
  }
  state.counters["pages"] = static_cast<double>(pages);
}

/// The demo lesson as a PDF file. Aim: a handout with its key under 1 s, four versions with their keys under 5 s.
BENCHMARK_CAPTURE(print_sheet, handout, "handout", demo_lesson())->Unit(benchmark::kMillisecond);
BENCHMARK_CAPTURE(print_sheet, key, "key", demo_lesson())->Unit(benchmark::kMillisecond);
BENCHMARK_CAPTURE(print_sheet, notes, "notes", demo_lesson())->Unit(benchmark::kMillisecond);
BENCHMARK_CAPTURE(print_sheet, nets, "nets", demo_lesson())->Unit(benchmark::kMillisecond);
BENCHMARK_CAPTURE(print_sheet, four_versions, "test", demo_lesson())->Unit(benchmark::kMillisecond);
BENCHMARK_CAPTURE(print_sheet, handout_of_1000, "handout", made_up(1000))->Unit(benchmark::kMillisecond);
BENCHMARK_CAPTURE(print_sheet, key_of_1000, "key", made_up(1000))->Unit(benchmark::kMillisecond);

}  // namespace
}  // namespace fw::paper

BENCHMARK_MAIN();
