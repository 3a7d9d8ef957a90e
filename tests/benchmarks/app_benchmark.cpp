// What the window costs. The frames with OpenGL need a display: xvfb-run build/bench/tests/benchmarks/app_benchmark.
#include <benchmark/benchmark.h>

#include <cstdlib>

#include "panels/frame.hpp"
#include "platform/assets.hpp"
#include "platform/clock.hpp"
#include "support/ui_driver.hpp"
#include "tasks/catalog.hpp"
#include "window/window.hpp"

namespace fw::panels {

using namespace state;
using namespace ui;

namespace {

lessons::Lesson demo(const char* name = "lantern_fair.json") {
  return tasks::read_lesson(platform::asset(name)).value_or({});
}

Model demo_model(const char* name = "lantern_fair.json") {
  Model model;
  model.state = opened(demo(name), "");
  return model;
}

/// State and panels of one frame, without OpenGL.
void frame_without_opengl(benchmark::State& state, const char* lesson) {
  Model model = demo_model(lesson);
  DerivedMemo memo;
  fw::test::UiDriver user(1920, 1080, [&](Ui& ui, const Fonts& fonts) {
    const FrameResult frame = draw_frame(ui, fonts, model, memo.of(model.state), 1080);
    benchmark::DoNotOptimize(frame.picture.labels.size());
  });
  double fold = 0;
  for (auto _ : state) {
    fold = fold > 0.99 ? 0 : fold + 0.01;
    model = apply(std::move(model), SetFold{fold}).model;
    user.frames(1);
  }
}
BENCHMARK_CAPTURE(frame_without_opengl, pyramid, "lantern_fair.json")->Unit(benchmark::kMillisecond);
BENCHMARK_CAPTURE(frame_without_opengl, cylinder, "lantern_rounds.json")->Unit(benchmark::kMillisecond);

/// The same while it is worked out, all steps shown and another one spoken of in each frame.
void frame_without_opengl_working_out(benchmark::State& state) {
  Model model = demo_model();
  model = apply(std::move(model), SetMode{Mode::Work}).model;
  model = apply(std::move(model), ShowSteps{true}).model;
  DerivedMemo memo;
  fw::test::UiDriver user(1920, 1080, [&](Ui& ui, const Fonts& fonts) {
    const FrameResult frame = draw_frame(ui, fonts, model, memo.of(model.state), 1080);
    benchmark::DoNotOptimize(frame.picture.labels.size());
  });
  std::size_t step = 0;
  for (auto _ : state) {
    step = (step + 1) % memo.of(model.state).worked->count;
    model = apply(std::move(model), SelectStep{step}).model;
    user.frames(1);
  }
}
BENCHMARK(frame_without_opengl_working_out)->Unit(benchmark::kMillisecond);

void apply_a_command(benchmark::State& state) {
  Model model = demo_model();
  for (auto _ : state) {
    model = apply(std::move(model), CountNext{}).model;
    model = apply(std::move(model), UncountLast{}).model;
  }
}
BENCHMARK(apply_a_command)->Unit(benchmark::kMicrosecond);

/// One frame of a fold in the real window at 1920 x 1080.
void frame_of_a_fold(benchmark::State& state, const char* lesson) {
  if (std::getenv("DISPLAY") == nullptr) {
    state.SkipWithError("no display");
    return;
  }
  platform::MemoryFiles files;
  Session session(files, demo(lesson), "");
  auto made = window::Window::make(session, {1920, 1080, false});
  if (!made) {
    state.SkipWithError(made.error().c_str());
    return;
  }
  window::Window window = std::move(made).value();
  window.frame();
  double fold = 0;
  for (auto _ : state) {
    fold = fold > 0.99 ? 0 : fold + 0.01;
    session.dispatch({SetFold{fold}});
    window.frame();
  }
}
BENCHMARK_CAPTURE(frame_of_a_fold, pyramid, "lantern_fair.json")
    ->Unit(benchmark::kMillisecond)
    ->Repetitions(5)
    ->ReportAggregatesOnly();
BENCHMARK_CAPTURE(frame_of_a_fold, cylinder, "lantern_rounds.json")
    ->Unit(benchmark::kMillisecond)
    ->Repetitions(5)
    ->ReportAggregatesOnly();

/// From nothing to the first frame: lesson, window, type, shaders.
void start_to_first_frame(benchmark::State& state) {
  if (std::getenv("DISPLAY") == nullptr) {
    state.SkipWithError("no display");
    return;
  }
  for (auto _ : state) {
    platform::MemoryFiles files;
    Session session(files, demo(), "");
    auto made = window::Window::make(session, {1920, 1080, false});
    if (!made) {
      state.SkipWithError(made.error().c_str());
      return;
    }
    window::Window window = std::move(made).value();
    window.frame();
  }
}
BENCHMARK(start_to_first_frame)->Unit(benchmark::kMillisecond)->Iterations(5);

}  // namespace
}  // namespace fw::panels

BENCHMARK_MAIN();
