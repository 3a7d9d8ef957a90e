#include <algorithm>
#include <cmath>

#include "app/panels/ids.hpp"
#include "app/panels/panels.hpp"
#include "app/ui/layout.hpp"

namespace fw::app::panels {
namespace {

using figures::Rect;
using figures::Vec2;

constexpr double turn_step_rad = 0.2617993877991494;  // 15 degrees
constexpr double drag_rad_per_px = 0.006;
constexpr double zoom_step = 1.15;
constexpr double dragging_from_fold = 0.5;  // from here on a drag on a face moves the face, not the eye

/// Buttons for all that a drag or a wheel does.
void view_buttons(Ui& ui, const Rect& strip, Commands& out) {
  const Sizes& sizes = ui.sizes();
  struct ViewButton {
    WidgetId id;
    Icon icon;
    const char* text;
    Command command;
  };
  const ViewButton buttons[] = {
      {ids::turn_left, Icon::TurnLeft, "turn left", Orbit{turn_step_rad, 0}},
      {ids::turn_right, Icon::TurnRight, "turn right", Orbit{-turn_step_rad, 0}},
      {ids::tilt_up, Icon::TurnUp, "see from farther above", Orbit{0, turn_step_rad}},
      {ids::tilt_down, Icon::TurnDown, "see from farther below", Orbit{0, -turn_step_rad}},
      {ids::zoom_in, Icon::ZoomIn, "larger", Zoom{zoom_step}},
      {ids::zoom_out, Icon::ZoomOut, "smaller", Zoom{1 / zoom_step}},
      {ids::fit, Icon::Fit, "fit to the bench", FitView{}},
  };
  const double size = strip.h - sizes.space;
  const double width = (size + sizes.space * 0.5) * static_cast<double>(std::size(buttons));
  Row row({strip.right() - width - sizes.space, strip.y, width, size}, sizes.space * 0.5);
  for (const ViewButton& button : buttons) {
    if (ui.icon_button(button.id, button.icon, button.text, row.take(size))) {
      out.push_back(button.command);
    }
  }
}

void drag(const Shown& shown, const Interaction& action, const BenchPicture& picture, Commands& out) {
  const std::optional<FaceId> pressed = face_at(picture, action.press);
  const bool moves_face = shown.state().mode == Mode::Explore && shown.view().fold >= dragging_from_fold &&
                          (shown.view().dragged || pressed) && !action.second_button;
  if (action.dragging && moves_face) {
    if (!shown.view().dragged) {
      out.push_back(DragFace{pressed});
    }
    return;
  }
  if ((action.dragging || action.second_button) && (action.moved.x != 0 || action.moved.y != 0)) {
    out.push_back(Orbit{-action.moved.x * drag_rad_per_px, action.moved.y * drag_rad_per_px});
  }
}

void let_go(const Shown& shown, const Interaction& action, const BenchPicture& picture, Commands& out) {
  if (!shown.view().dragged || !action.released) {
    return;
  }
  const FaceId dragged = *shown.view().dragged;
  const std::optional<FaceId> target = face_at(picture, action.pointer);
  const auto edge = target ? edge_for_drop(shown.desk(), dragged, *target) : std::nullopt;
  if (edge) {
    out.push_back(MoveFace{dragged, *edge});
  } else {
    out.push_back(DragFace{std::nullopt});
  }
}

/// While a face is dragged: a line from it to the pointer, and the face under the pointer told apart if it would take
/// it.
void drag_hint(Ui& ui, const Shown& shown, const BenchPicture& picture, Vec2 pointer) {
  if (!shown.view().dragged) {
    return;
  }
  const auto from = std::find_if(picture.numbers.begin(), picture.numbers.end(),
                                 [&](const FaceNumber& number) { return number.face == *shown.view().dragged; });
  if (from != picture.numbers.end()) {
    ui.canvas().line(from->center, pointer, {ui.theme().ink, ui.sizes().edge, ui.sizes().edge * 3});
  }
  const std::optional<FaceId> target = face_at(picture, pointer);
  const bool takes = target && edge_for_drop(shown.desk(), *shown.view().dragged, *target);
  ui.canvas().circle(pointer, ui.sizes().space, takes ? std::optional<Color>(ui.theme().ink) : std::nullopt,
                     figures::Stroke{ui.theme().ink, ui.sizes().edge, 0});
}

}  // namespace

Command face_chosen(const Desk& desk, FaceId face) {
  const bool counted = std::find(desk.counted.begin(), desk.counted.end(), face) != desk.counted.end();
  if (!counted) {
    return CountFace{face};
  }
  if (desk.picked == face) {
    return PickFace{std::nullopt};
  }
  return PickFace{face};
}

void bench(Ui& ui, const Shown& shown, const BenchPicture& picture, Commands& out) {
  draw_bench_texts(ui.canvas(), picture, ui.theme());
  const Rect& rect = shown.screen.bench;
  if (shown.screen.tools.h > 0) {
    view_buttons(ui, shown.screen.tools, out);
  }
  const std::string about = shown.state().mode == Mode::Quiz ? "the net" : "the " + shown.desk().solid.name();
  const Interaction action = ui.region(ids::bench, about, rect, Ui::RegionFocus::Ring);
  const std::optional<FaceId> under = action.hovered ? face_at(picture, action.pointer) : std::nullopt;
  const bool picks = shown.state().mode == Mode::Explore;
  if (picks && under != shown.view().hovered) {
    out.push_back(Hover{under});
  }
  drag(shown, action, picture, out);
  let_go(shown, action, picture, out);
  drag_hint(ui, shown, picture, action.pointer);
  if (picks && action.clicked && !action.by_key) {
    if (const auto face = face_at(picture, action.pointer)) {
      out.push_back(face_chosen(shown.desk(), *face));
    } else {
      out.push_back(PickFace{std::nullopt});
    }
  }
  if (action.wheel != 0) {
    out.push_back(Zoom{std::pow(zoom_step, action.wheel)});
  }
}

}  // namespace fw::app::panels
