#include "window/stage.hpp"

#include <imgui.h>

#include <algorithm>
#include <utility>

#include "ui/pace.hpp"
#include "window/painter.hpp"

namespace fw::window {

using namespace bench;
using namespace panels;
using namespace state;
using namespace ui;

namespace {

constexpr int least_drawn = 64;           // in a smaller one nothing could be seen, and the toolkit draws none of 16
constexpr double longest_tick = 0.1;      // a stall must not make a fold jump to its end
constexpr double save_after = 2.0;        // seconds after a change
constexpr double least_between = 0.0001;  // seconds; the toolkit wants time to pass between two frames

}  // namespace

// Members in the order in which they must come to life; they go in the reverse one.
struct Stage::Parts {
  explicit Parts(Session& open_session) : session(open_session) {}

  Session& session;
  ToolkitContext toolkit;
  std::optional<Painter> painter;
  Ui ui;
  Input input;
  Clipboard clipboard;
  std::string pasted;  ///< the toolkit reads it where it lies
  Pace pace;
  std::size_t frames = 0;
  std::optional<double> ticked_at;  ///< when what moves was last moved on
  std::optional<double> drawn_at;
  double changed_at = 0;
  bool unsaved = false;
  bool is_lost = false;

  void begin_toolkit(double now, const Surface& surface) {
    ImGuiIO& io = ImGui::GetIO();
    io.DisplaySize = {static_cast<float>(surface.width), static_cast<float>(surface.height)};
    io.DeltaTime = drawn_at ? static_cast<float>(std::max(now - *drawn_at, least_between)) : 1.0F / 60.0F;
    drawn_at = now;
    input.hand_over();
  }
};

Stage::Stage(std::unique_ptr<Parts> parts) : parts_(std::move(parts)) {}
Stage::Stage(Stage&&) noexcept = default;
Stage& Stage::operator=(Stage&&) noexcept = default;
Stage::~Stage() = default;

Result<Stage, std::string> Stage::make(Session& session, render::gl::Dialect dialect) {
  auto parts = std::make_unique<Parts>(session);
  auto painter = Painter::make(dialect);
  if (!painter) {
    return failure(painter.error());
  }
  parts->painter.emplace(std::move(painter).value());
  return Stage(std::move(parts));
}

Input& Stage::input() { return parts_->input; }

void Stage::use_clipboard(Clipboard clipboard) {
  parts_->clipboard = std::move(clipboard);
  ImGuiIO& io = ImGui::GetIO();
  io.ClipboardUserData = parts_.get();
  io.SetClipboardTextFn = [](void* parts, const char* text) {
    const Clipboard& way = static_cast<Parts*>(parts)->clipboard;
    if (way.copy) {
      way.copy(text);
    }
  };
  io.GetClipboardTextFn = [](void* parts) -> const char* {
    auto& own = *static_cast<Parts*>(parts);
    own.pasted = own.clipboard.paste ? own.clipboard.paste() : std::string();
    return own.pasted.c_str();
  };
}

bool Stage::frame(double now, const Surface& surface) {
  Parts& parts = *parts_;
  if (std::min({surface.width, surface.height, surface.width_px, surface.height_px}) < least_drawn || parts.is_lost) {
    parts.pace.rest();  // minimized, or a sliver: it is drawn once it is larger
    return false;
  }
  const double passed = std::min(now - parts.ticked_at.value_or(now), longest_tick);
  parts.ticked_at = now;
  bool changed = false;
  if (is_moving(parts.session.model().view)) {
    changed = parts.session.dispatch({Tick{passed}});
  }
  parts.begin_toolkit(now, surface);
  const double reading = theme::reading_height(surface.width, surface.height);
  parts.painter->begin_frame(reading, static_cast<double>(surface.height_px) / surface.height);
  const Model& model = parts.session.model();
  const Theme theme = Theme::make(model.view.settings.theme, reading);
  const FrameResult frame = draw_frame(parts.ui, parts.painter->fonts(), model, parts.session.derived(), reading);
  parts.painter->paint(frame, theme, surface.width_px, surface.height_px);
  ++parts.frames;
  if (parts.session.dispatch(frame.commands)) {
    changed = true;
    parts.unsaved = true;
    parts.changed_at = now;
  }
  parts.pace.drawn(changed, parts.input.waits(), parts.ui);
  return wants_frame();
}

bool Stage::wants_frame() const {
  return !parts_->is_lost && parts_->pace.wants_frame(is_moving(parts_->session.model().view));
}

void Stage::wake() { parts_->pace.wake(); }

void Stage::resume_at(double now) { parts_->ticked_at = now; }

Stage::Sleep Stage::sleep(double at_most) const {
  const double most = parts_->unsaved ? std::min(at_most, save_after) : at_most;
  const double seconds = Pace::wait(most, parts_->ui);
  return {seconds, seconds < most};
}

void Stage::save_if_due(double now) {
  if (now - parts_->changed_at > save_after) {
    save();
  }
}

void Stage::save() {
  if (parts_->unsaved) {
    parts_->session.save();
    parts_->unsaved = false;
  }
}

void Stage::forget() {
  parts_->painter->forget();
  parts_->is_lost = true;
}

std::optional<std::string> Stage::restore(render::gl::Dialect dialect) {
  if (auto fault = parts_->painter->restore(dialect)) {
    return fault;
  }
  parts_->is_lost = false;
  wake();
  return std::nullopt;
}

void Stage::focus(ui::WidgetId id) { parts_->ui.set_focus(id); }

std::size_t Stage::frames_drawn() const { return parts_->frames; }

const Ui& Stage::ui() const { return parts_->ui; }

}  // namespace fw::window
