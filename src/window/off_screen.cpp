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

}  // namespace

Result<render::Picture, std::string> off_screen_picture(const Model& model, PictureOf what, int width, int height) {
  const auto context = render::gl::HeadlessContext::make();
  if (!context) {
    return failure(context.error());
  }
  const auto target = render::gl::Offscreen::make(width, height);
  if (!target) {
    return failure(target.error());
  }
  const ToolkitContext toolkit;
  auto painter = Painter::make(context->dialect());
  if (!painter) {
    return failure(painter.error());
  }
  Painter paint = std::move(painter).value();
  ImGuiIO& io = ImGui::GetIO();
  io.DisplaySize = {static_cast<float>(width), static_cast<float>(height)};
  io.DeltaTime = 1.0F / 60.0F;
  const double reading = theme::reading_height(width, height);
  const Theme theme = Theme::make(model.view.settings.theme, reading);
  DerivedMemo memo;
  const Derived& derived = memo.of(model.state);
  Ui ui;
  // Two frames, since what follows from the first one's layout shows in the second.
  for (int i = 0; i < 2; ++i) {
    paint.begin_frame(reading);
    const FrameResult frame = what == PictureOf::Bench ? bench_frame(ui, paint.fonts(), model, derived, theme)
                                                       : draw_frame(ui, paint.fonts(), model, derived, reading);
    target->begin(theme.ground);
    paint.paint(frame, theme, width, height);
  }
  return target->read_back();
}

}  // namespace fw::window
