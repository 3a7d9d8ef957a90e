#include "window/painter.hpp"

#include <backends/imgui_impl_opengl3.h>
#include <imgui.h>

#include <cmath>

#include "platform/assets.hpp"
#include "render/gl/frame.hpp"

namespace fw::window {

using namespace bench;
using namespace panels;
using namespace state;
using namespace ui;

ToolkitContext::ToolkitContext() {
  IMGUI_CHECKVERSION();
  ImGui::CreateContext();
  ImGui::GetIO().IniFilename = nullptr;
  ImGui::GetIO().LogFilename = nullptr;
}

ToolkitContext::~ToolkitContext() { ImGui::DestroyContext(); }

struct Painter::Parts {
  explicit Parts(render::gl::BenchPainter bench_painter) : bench(std::move(bench_painter)) {}
  Parts(const Parts&) = delete;
  Parts& operator=(const Parts&) = delete;
  ~Parts() { ImGui_ImplOpenGL3_Shutdown(); }

  render::gl::BenchPainter bench;
  Fonts fonts;
};

Painter::Painter(std::unique_ptr<Parts> parts) : parts_(std::move(parts)) {}
Painter::Painter(Painter&&) noexcept = default;
Painter& Painter::operator=(Painter&&) noexcept = default;
Painter::~Painter() = default;

Result<Painter, std::string> Painter::make(render::gl::Dialect dialect) {
  auto bench = render::gl::BenchPainter::make(dialect, [](std::string_view name) { return platform::asset(name); });
  if (!bench) {
    return failure(bench.error());
  }
  const char* version = dialect == render::gl::Dialect::Core33 ? "#version 330 core" : "#version 300 es";
  if (!ImGui_ImplOpenGL3_Init(version)) {
    return failure(std::string("The panels cannot be drawn: this OpenGL driver was refused by the toolkit."));
  }
  return Painter(std::make_unique<Parts>(std::move(bench).value()));
}

void Painter::begin_frame(double height) {
  if (parts_->fonts.prepare(*ImGui::GetIO().Fonts, height)) {
    ImGui_ImplOpenGL3_DestroyFontsTexture();
    ImGui_ImplOpenGL3_CreateFontsTexture();
  }
  ImGui_ImplOpenGL3_NewFrame();
  ImGui::NewFrame();
}

const Fonts& Painter::fonts() const { return parts_->fonts; }

void Painter::paint(const FrameResult& frame, const Theme& theme, int width_px, int height_px) {
  ImGui::Render();
  const Color ground = frame.shows_bench ? theme.ground : Color::hex(0x000000);
  render::gl::begin_frame(width_px, height_px, ground);
  if (frame.shows_bench) {
    const ImGuiIO& io = ImGui::GetIO();
    const double scale = io.DisplaySize.y > 0 ? height_px / static_cast<double>(io.DisplaySize.y) : 1.0;
    const auto px = [scale](double value) { return static_cast<int>(std::lround(value * scale)); };
    const figures::Rect& rect = frame.picture.rect;
    const render::gl::Rectangle viewport{px(rect.x), height_px - px(rect.bottom()), px(rect.w), px(rect.h)};
    parts_->bench.draw(render::bench_scene(frame.picture.look, frame.picture.camera), viewport);
  }
  ImGui_ImplOpenGL3_RenderDrawData(ImGui::GetDrawData());
}

}  // namespace fw::window
