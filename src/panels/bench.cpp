#include <algorithm>
#include <cmath>

#include "bench/landing.hpp"
#include "figures/solid_sketch.hpp"
#include "panels/ids.hpp"
#include "panels/panels.hpp"
#include "ui/layout.hpp"

namespace fw::panels {

using namespace bench;
using namespace state;
using namespace ui;

namespace {

using figures::Rect;
using figures::Vec2;

constexpr double drag_rad_per_px = 0.006;
constexpr double dragging_from_fold = 0.5;  // from here on a drag on a face moves the face, not the eye

/// Buttons for all that a drag or a wheel does.
void view_buttons(Ui& ui, const Rect& strip, Commands& out) {
  const Sizes& sizes = ui.sizes();
  const double size = tool_size(sizes);
  const double width = tools_width(sizes);
  Row row({strip.right() - width, strip.center().y - size / 2, width - sizes.space, size}, sizes.space * 0.5);
  const auto pressed = [&](WidgetId id, Icon icon, const char* text) {
    return ui.icon_button(id, icon, text, row.take(size));
  };
  if (pressed(ids::turn_left, Icon::TurnLeft, "turn left")) {
    out.push_back(Orbit{turn_step_rad, 0});
  }
  if (pressed(ids::turn_right, Icon::TurnRight, "turn right")) {
    out.push_back(Orbit{-turn_step_rad, 0});
  }
  if (pressed(ids::tilt_up, Icon::TurnUp, "look from higher up")) {
    out.push_back(Orbit{0, turn_step_rad});
  }
  if (pressed(ids::tilt_down, Icon::TurnDown, "look from lower down")) {
    out.push_back(Orbit{0, -turn_step_rad});
  }
  if (pressed(ids::zoom_in, Icon::ZoomIn, "larger")) {
    out.push_back(Zoom{zoom_step});
  }
  if (pressed(ids::zoom_out, Icon::ZoomOut, "smaller")) {
    out.push_back(Zoom{1 / zoom_step});
  }
  if (pressed(ids::fit, Icon::Fit, "fit to the bench")) {
    out.push_back(FitView{});
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

/// A face on its way to another edge of the net goes with the pointer. The places that it can take are dashed, and the
/// one where it would snap in is filled.
void carry(Ui& ui, const Shown& shown, const Interaction& action, const BenchPicture& picture, Commands& out) {
  if (!shown.view().dragged) {
    return;
  }
  const FaceId face = *shown.view().dragged;
  const std::vector<Landing> all = landings(picture, shown.model, face);
  const Landing* landing = landing_near(all, picture, shown.desk(), face, action.pointer);
  if (action.released) {
    landing != nullptr ? out.push_back(MoveFace{face, landing->edge}) : out.push_back(DragFace{std::nullopt, true});
    return;
  }
  const Sizes& sizes = ui.sizes();
  const Color ink = ui.theme().ink;
  constexpr float see_through = 0.45F;
  for (const Landing& one : all) {
    const bool takes = &one == landing;
    ui.canvas().polygon(one.outline, takes ? std::optional(ui.theme().hover) : std::nullopt,
                        figures::Stroke{ink, sizes.edge, takes ? 0 : 3 * sizes.edge});
  }
  std::vector<Vec2> carried = outline_of(picture, face);
  for (Vec2& corner : carried) {
    corner += action.pointer - action.press;
  }
  ui.canvas().polygon(carried, ui.theme().hover.with_opacity(see_through), figures::Stroke{ink, sizes.edge, 0});
}

/// The solid that card should fold into, with the lengths that it has.
void solid_beside(Ui& ui, const Shown& shown, const Rect& rect) {
  const Sizes& sizes = ui.sizes();
  const solids::Solid& solid = shown.derived.cutouts->solid;
  figures::Palette palette = ui.theme().palette();
  palette.line_width = sizes.edge * 0.8;
  const Rect inside = rect.inset(sizes.space);
  const bool is_wide = rect.w > rect.h;
  Column column(inside, sizes.space);
  Row row(inside, sizes.space);
  const double side = is_wide ? std::min(inside.h, inside.w * 0.32) : std::min(inside.w, inside.h * 0.5);
  const Rect place = is_wide ? row.take(side) : column.take(side);
  const Rect rest = is_wide ? row.rest() : column.rest();
  figures::draw_solid_sketch(ui.canvas(), solid, place.middle(side * 0.9, side * 0.9), palette);
  std::vector<std::string> lengths;
  for (const reasoning::EditableMeasure& measure : shown.derived.measures) {
    lengths.push_back(measure.title + " " + measure.text + (measure.unit.empty() ? "" : " " + measure.unit));
  }
  lengths.erase(std::unique(lengths.begin(), lengths.end()), lengths.end());  // both legs of a trapezoid
  for (const char* between : {"\n", ", "}) {  // a line each, or where there is no height for that one after another
    std::string text;
    for (const std::string& length : lengths) text += (text.empty() ? "" : between) + length;
    if (ui.wrapped_height(text, rest.w, TextSize::Small) <= rest.h) {
      ui.text(text, rest, {.size = TextSize::Small, .v = figures::VAlign::Top, .wrap = true});
      return;
    }
  }
}

}  // namespace

void point_face(const Desk& desk, FaceId face, Commands& out) {
  out.push_back(PickFace{desk.picked == face ? std::nullopt : std::optional(face)});
}

void choose_face(const Desk& desk, FaceId face, Commands& out) {
  const bool counted = std::find(desk.counted.begin(), desk.counted.end(), face) != desk.counted.end();
  if (!counted) {
    out.push_back(CountFace{face});
  } else {
    out.push_back(PickFace{desk.picked == face ? std::nullopt : std::optional<FaceId>(face)});
  }
}

void bench(Ui& ui, const Shown& shown, const BenchPicture& picture, Commands& out) {
  draw_bench_texts(ui.canvas(), picture, ui.theme());
  if (picture.beside) {
    solid_beside(ui, shown, *picture.beside);
  }
  const Rect& rect = shown.screen.bench;
  if (shown.screen.tools.h > 0) {
    view_buttons(ui, shown.screen.tools, out);
  }
  const bool is_hidden = shown.state().is_asking();
  const std::string about = "the " + (shown.derived.question || shown.derived.cutouts ? "net"
                                      : is_hidden                                     ? "solid"
                                                                                      : shown.desk().solid.name());
  const Interaction action = ui.region(ids::bench, about, rect, Ui::RegionFocus::Ring);
  const std::optional<FaceId> under = action.hovered ? face_at(picture, action.pointer) : std::nullopt;
  const bool picks = shown.state().mode != Mode::Quiz && !shown.derived.cutouts;
  if (picks && under != shown.view().hovered) {
    out.push_back(Hover{under});
  }
  drag(shown, action, picture, out);
  carry(ui, shown, action, picture, out);
  if (picks && action.clicked && !action.by_key) {
    const auto face = face_at(picture, action.pointer);
    if (face && shown.state().mode == Mode::Work) {
      point_face(shown.desk(), *face, out);
    } else if (face) {
      if (shown.view().panel != SidePanel::Faces) {
        out.push_back(ShowPanel{SidePanel::Faces});  // where it is counted, and its card
      }
      choose_face(shown.desk(), *face, out);
    } else {
      out.push_back(PickFace{std::nullopt});
    }
  }
  if (!picks && action.clicked && !action.by_key) {
    if (const auto option = option_at(picture, action.pointer)) {
      out.push_back(AnswerOption{*option});
    }
  }
  if (action.wheel != 0) {
    out.push_back(Zoom{std::pow(zoom_step, action.wheel)});
  }
}

}  // namespace fw::panels
