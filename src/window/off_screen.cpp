#include "window/off_screen.hpp"

#include <imgui.h>

#include "render/gl/headless.hpp"
#include "render/gl/offscreen.hpp"
#include "window/painter.hpp"

namespace fw::window {

using namespace bench;
using namespace panels;
using namespace state;
using namespace ui;

namespace {

/// The bench alone, on the whole picture.
FrameResult bench_frame(Ui& ui, const Fonts& fonts, const Model& model, const Derived& derived, const Theme& theme) {
  FrameResult result;
  ui.begin(theme, fonts);
  result.picture = bench_picture(model, derived, theme, ui.window(), label_measure(ui.canvas(), theme));
  draw_bench_texts(ui.canvas(), result.picture, theme);
  ui.end();
  return result;
}

/// Where pictures are drawn.
struct Easel {
  const render::gl::Offscreen& target;
  Painter& paint;
  int width = 0, height = 0;
};

render::Picture drawn(const Easel& easel, const Model& model, PictureOf what) {
  ImGuiIO& io = ImGui::GetIO();
  io.DisplaySize = {static_cast<float>(easel.width), static_cast<float>(easel.height)};
  io.DeltaTime = 1.0F / 60.0F;
  const double reading = theme::reading_height(easel.width, easel.height);
  const Theme theme = Theme::make(model.view.settings.theme, reading);
  DerivedMemo memo;
  const Derived& derived = memo.of(model.state);
  Ui ui;
  // Two frames, since what follows from the first one's layout shows in the second.
  for (int i = 0; i < 2; ++i) {
    easel.paint.begin_frame(reading);
    const FrameResult frame = what == PictureOf::Bench ? bench_frame(ui, easel.paint.fonts(), model, derived, theme)
                                                       : draw_frame(ui, easel.paint.fonts(), model, derived, reading);
    easel.target.begin(theme.ground);
    easel.paint.paint(frame, theme, easel.width, easel.height);
  }
  return easel.target.read_back();
}

}  // namespace

std::optional<std::string> off_screen_pictures(const std::vector<Model>& models, PictureOf what, int width, int height,
                                               const TakePicture& take) {
  const auto context = render::gl::HeadlessContext::make();
  if (!context) {
    return context.error();
  }
  const auto target = render::gl::Offscreen::make(width, height);
  if (!target) {
    return target.error();
  }
  const ToolkitContext toolkit;
  auto painter = Painter::make(context->dialect());
  if (!painter) {
    return painter.error();
  }
  Painter paint = std::move(painter).value();
  for (std::size_t i = 0; i < models.size(); ++i) {
    if (auto fault = take(i, drawn({*target, paint, width, height}, models[i], what))) {
      return fault;
    }
  }
  return std::nullopt;
}

}  // namespace fw::window
