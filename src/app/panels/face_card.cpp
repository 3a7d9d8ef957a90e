#include <algorithm>

#include "app/panels/ids.hpp"
#include "app/ui/layout.hpp"
#include "app/panels/panels.hpp"
#include "exact/print_number.hpp"
#include "figures/face_figure.hpp"

namespace fw::app::panels {
namespace {

using figures::Rect;

/// Where the numbers of a face are written, when not at the face itself.
std::string where_from(const solids::Solid& solid, const solids::Face& face) {
  std::string text;
  for (const solids::FaceLength& length : face.lengths) {
    if (length.origin == solids::LengthOrigin::EqualEdge && length.mark) {
      if (!text.empty()) {
        text += " ";
      }
      text += "The " + length.title + " here equals the edge marked " + solid.label(*length.mark) + ".";
    }
  }
  return text;
}

std::string capitalized(std::string text) {
  if (!text.empty() && text[0] >= 'a' && text[0] <= 'z') {
    text[0] = static_cast<char>(text[0] - 'a' + 'A');
  }
  return text;
}

}  // namespace

void face_card(Ui& ui, const Shown& shown, Commands& out) {
  const Desk& desk = shown.desk();
  if (!desk.picked || shown.screen.card.w <= 0) {
    return;
  }
  const Sizes& sizes = ui.sizes();
  const Rect card = shown.screen.card.inset(sizes.space, sizes.space);
  const solids::Face& face = desk.solid.faces()[*desk.picked];
  ui.rule_down(card.x, card.y, card.h);
  Column column(card.inset(1.5 * sizes.space, sizes.space), sizes.space);

  Row head(column.take(sizes.icon), sizes.space);
  if (ui.icon_button(ids::card_close, Icon::Close, "lay the face back", head.take_right(sizes.icon))) {
    out.push_back(PickFace{std::nullopt});
  }
  ui.text("Face " + figures::face_number(face.id) + ": " + face.shape, head.rest(), {.bold = true, .shrink = true});

  const bool counted = std::find(desk.counted.begin(), desk.counted.end(), face.id) != desk.counted.end();
  if (!shown.view().presenting) {
    Row buttons(column.take_bottom(sizes.field), sizes.space);
    const Rect move = buttons.take(std::min(buttons.rest().w * 0.5, ui.button_width("hang elsewhere", {.size = TextSize::Small})));
    if (ui.button(ids::card_move, "hang elsewhere", move, {.size = TextSize::Small})) {
      out.push_back(MovePicked{});
    }
    const std::string count = counted ? "count it again" : "count it";
    if (ui.button(ids::card_count, count, buttons.rest(), {.size = TextSize::Small})) {
      out.push_back(CountFace{face.id});
    }
  }
  const std::string work = reasoning::worked_area(desk.solid, face.id, places);
  const double work_height = ui.wrapped_height(work, column.rest().w);
  ui.text(work, column.take_bottom(work_height), {.bold = true, .wrap = true});
  const std::string origin = where_from(desk.solid, face);
  if (!origin.empty()) {
    const double height = ui.wrapped_height(origin, column.rest().w, TextSize::Small);
    ui.text(capitalized(origin), column.take_bottom(height), {.size = TextSize::Small, .wrap = true});
  }
  figures::draw_face(ui.canvas(), desk.solid, face.id, column.rest(), ui.theme().palette());
}

}  // namespace fw::app::panels
