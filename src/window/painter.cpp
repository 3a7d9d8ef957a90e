#include "window/painter.hpp"

#include <imgui.h>

#include <algorithm>
#include <cmath>
#include <cstddef>
#include <cstring>

#include "platform/assets.hpp"
#include "render/gl/draw_panels.hpp"
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

namespace {

std::string_view shader_text(std::string_view name) { return platform::asset(name); }

/// The part of a clip rectangle that lies on the framebuffer.
render::gl::Rectangle clip_of(const ImVec4& clip, const ImVec2& scale, int width_px, int height_px) {
  const auto within = [](float value, int most) { return std::clamp(static_cast<int>(value), 0, most); };
  const int left = within(clip.x * scale.x, width_px);
  const int right = within(clip.z * scale.x, width_px);
  const int top = within(clip.y * scale.y, height_px);
  const int bottom = within(clip.w * scale.y, height_px);
  return {left, height_px - bottom, right - left, bottom - top};
}

/// Takes in one of the toolkit's lists, cut to the framebuffer.
void add_list(render::gl::PanelDrawing& drawing, const ImDrawList& list, const ImVec2& scale, int width_px,
              int height_px) {
  static_assert(sizeof(render::gl::PanelVertex) == sizeof(ImDrawVert) && offsetof(ImDrawVert, uv) == 8 &&
                offsetof(ImDrawVert, col) == 16);
  const std::size_t before = drawing.vertices.size();
  const auto count = static_cast<std::size_t>(list.VtxBuffer.Size);
  drawing.vertices.resize(before + count);
  if (count > 0) std::memcpy(&drawing.vertices[before], list.VtxBuffer.Data, count * sizeof(ImDrawVert));
  for (const ImDrawCmd& command : list.CmdBuffer) {
    const render::gl::Rectangle clip = clip_of(command.ClipRect, scale, width_px, height_px);
    if (clip.width <= 0 || clip.height <= 0) continue;
    const std::size_t shift = before + command.VtxOffset;
    const ImDrawIdx* first = list.IdxBuffer.Data + command.IdxOffset;
    for (const ImDrawIdx* index = first; index != first + command.ElemCount; ++index) {
      drawing.indices.push_back(static_cast<std::uint32_t>(shift + *index));
    }
    if (drawing.runs.empty() || !(drawing.runs.back().clip == clip)) drawing.runs.push_back({clip, 0});
    drawing.runs.back().index_count += command.ElemCount;
  }
}

}  // namespace

struct Painter::Parts {
  Parts(render::gl::BenchPainter bench_painter, render::gl::PanelPainter panel_painter)
      : bench(std::move(bench_painter)), panels(std::move(panel_painter)) {}

  void send_atlas() {
    unsigned char* opacities = nullptr;
    int width = 0;
    int height = 0;
    ImGui::GetIO().Fonts->GetTexDataAsAlpha8(&opacities, &width, &height);
    panels.take_atlas(width, height, opacities);
  }

  render::gl::BenchPainter bench;
  render::gl::PanelPainter panels;
  render::gl::PanelDrawing drawing;  ///< kept, so that each frame finds its room
  Fonts fonts;
};

Painter::Painter(std::unique_ptr<Parts> parts) : parts_(std::move(parts)) {}
Painter::Painter(Painter&&) noexcept = default;
Painter& Painter::operator=(Painter&&) noexcept = default;
Painter::~Painter() = default;

Result<Painter, std::string> Painter::make(render::gl::Dialect dialect) {
  auto bench = render::gl::BenchPainter::make(dialect, shader_text);
  if (!bench) {
    return failure(bench.error());
  }
  auto panels = render::gl::PanelPainter::make(dialect, shader_text);
  if (!panels) {
    return failure(panels.error());
  }
  ImGui::GetIO().BackendFlags |= ImGuiBackendFlags_RendererHasVtxOffset;
  return Painter(std::make_unique<Parts>(std::move(bench).value(), std::move(panels).value()));
}

void Painter::begin_frame(double height, double pixel_ratio) {
  if (parts_->fonts.prepare(*ImGui::GetIO().Fonts, height, pixel_ratio)) {
    parts_->send_atlas();
  }
  ImGui::NewFrame();
}

const Fonts& Painter::fonts() const { return parts_->fonts; }

void Painter::paint(const FrameResult& frame, const Theme& theme, int width_px, int height_px) {
  ImGui::Render();
  const ImDrawData& toolkit = *ImGui::GetDrawData();
  const Color ground = frame.shows_bench ? theme.ground : Color::hex(0x000000);
  render::gl::begin_frame(width_px, height_px, ground);
  const double scale = toolkit.DisplaySize.y > 0 ? height_px / static_cast<double>(toolkit.DisplaySize.y) : 1.0;
  if (frame.shows_bench) {
    const auto px = [scale](double value) { return static_cast<int>(std::lround(value * scale)); };
    const figures::Rect& rect = frame.picture.rect;
    const render::gl::Rectangle viewport{px(rect.x), height_px - px(rect.bottom()), px(rect.w), px(rect.h)};
    parts_->bench.draw(render::bench_scene(frame.picture.look, frame.picture.camera), viewport);
  }
  render::gl::PanelDrawing& drawing = parts_->drawing;
  drawing.width = static_cast<double>(toolkit.DisplaySize.x);
  drawing.height = static_cast<double>(toolkit.DisplaySize.y);
  drawing.vertices.clear();
  drawing.indices.clear();
  drawing.runs.clear();
  const auto pixels = static_cast<float>(scale);
  for (int i = 0; i < toolkit.CmdListsCount; ++i) {
    add_list(drawing, *toolkit.CmdLists[i], {pixels, pixels}, width_px, height_px);
  }
  parts_->panels.draw(drawing, width_px, height_px);
}

void Painter::forget() {
  parts_->bench.forget();
  parts_->panels.forget();
}

std::optional<std::string> Painter::restore(render::gl::Dialect dialect) {
  auto bench = render::gl::BenchPainter::make(dialect, shader_text);
  if (!bench) {
    return bench.error();
  }
  auto panels = render::gl::PanelPainter::make(dialect, shader_text);
  if (!panels) {
    return panels.error();
  }
  parts_->bench = std::move(bench).value();
  parts_->panels = std::move(panels).value();
  if (parts_->fonts.is_ready()) {
    parts_->send_atlas();
  }
  return std::nullopt;
}

}  // namespace fw::window
