#include <algorithm>

#include "exact/print_number.hpp"
#include "figures/face_figure.hpp"
#include "panels/ids.hpp"
#include "panels/panels.hpp"
#include "ui/layout.hpp"

namespace fw::panels {

using namespace bench;
using namespace state;
using namespace ui;

namespace {

using figures::Rect;

/// Where the numbers of a face are written, when not at the face itself.
std::string where_from(const solids::Face& face) {
  const auto elsewhere = std::count_if(face.lengths.begin(), face.lengths.end(), [](const solids::FaceLength& length) {
    return length.origin == solids::LengthOrigin::EqualEdge && length.mark;
  });
  if (elsewhere == 0) {
    return {};
  }
  return elsewhere == 1 ? "“=” means the same length as the bold edge."
                        : "“=” means the same length as the bold edges.";
}

/// Its number, and buttons; how it can be counted goes where there is room.
void card_head(Ui& ui, const Shown& shown, const solids::Face& face, Column& column, Commands& out) {
  const Sizes& sizes = ui.sizes();
  const Desk& desk = shown.desk();
  const bool edits = !shown.view().presenting;
  Row row(column.take(sizes.icon), sizes.space * 0.5);
  const auto icon = [&](WidgetId id, Icon picture, const char* text) {
    return ui.icon_button(id, picture, text, row.take_right(sizes.icon));
  };
  if (icon(ids::card_close, Icon::Close, "put the face back")) {
    out.push_back(PickFace{std::nullopt});
  }
  if (edits && icon(ids::card_move, Icon::Flip, "move this face to another edge of the net")) {
    out.push_back(MovePicked{});
  }
  const bool counted = std::find(desk.counted.begin(), desk.counted.end(), face.id) != desk.counted.end();
  const char* count = counted ? "count it again" : "count it";
  const bool low = column.rest().h < 8 * sizes.label;  // no height for a button and a sentence
  if (edits && low && icon(ids::card_count, Icon::Plus, count)) {
    out.push_back(CountFace{face.id});
  }
  ui.text("Face " + figures::face_number(face.id), row.rest(), {.bold = true, .shrink = true});
  if (!low) {
    ui.text(face.shape, column.take(ui.line(TextSize::Small)), {.size = TextSize::Small, .shrink = true});
  }
  if (edits && !low && ui.button(ids::card_count, count, column.take_bottom(sizes.field), {.size = TextSize::Small})) {
    out.push_back(CountFace{face.id});
  }
}

/// The face as it lies, over its area or beside it.
void figure_and_work(Ui& ui, const Shown& shown, const solids::Face& face, const Rect& rect) {
  const Sizes& sizes = ui.sizes();
  const solids::Solid& solid = shown.desk().solid;
  Row halves(rect, 2 * sizes.space);
  const Rect beside = shown.screen.tight ? halves.take(rect.w * 0.44) : Rect{};  // no height for one over the other
  Column column(halves.rest(), sizes.space);
  const std::string& work = shown.derived.picked_work;
  const auto height_in = [&](TextSize size) { return ui.wrapped_height(work, column.rest().w, size, true); };
  const TextSize size = height_in(TextSize::Label) <= column.rest().h ? TextSize::Label : TextSize::Small;
  ui.text(work, column.take_bottom(height_in(size)), {.size = size, .bold = true, .wrap = true});
  const std::string origin = where_from(face);
  const double origin_height = origin.empty() ? 0 : ui.wrapped_height(origin, column.rest().w, TextSize::Small);
  const double figure_height = shown.screen.tight ? 0 : 5 * sizes.label;
  if (origin_height > 0 && column.rest().h - origin_height > figure_height) {
    ui.text(origin, column.take_bottom(origin_height), {.size = TextSize::Small, .wrap = true});
  }
  figures::draw_face(ui.canvas(), solid, face.id, shown.screen.tight ? beside : column.rest(), ui.theme().palette());
}

}  // namespace

void face_card(Ui& ui, const Shown& shown, Commands& out) {
  const Desk& desk = shown.desk();
  if (!desk.picked || shown.screen.card.w <= 0) {
    return;
  }
  const Sizes& sizes = ui.sizes();
  const Rect card = shown.screen.card.inset(sizes.space, sizes.space);
  if (shown.screen.tight) {
    ui.rule_across(card.x, card.y, card.w);
  } else {
    ui.rule_down(card.x, card.y, card.h);
  }
  const solids::Face& face = desk.solid.faces()[*desk.picked];
  Column column(card.inset(1.5 * sizes.space, sizes.space), sizes.space);
  card_head(ui, shown, face, column, out);
  figure_and_work(ui, shown, face, column.rest());
}

}  // namespace fw::panels
