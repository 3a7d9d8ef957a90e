#include <algorithm>

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

/// What can be done with the face.
void card_buttons(Ui& ui, const Shown& shown, const solids::Face& face, const Rect& rect, Commands& out) {
  const Sizes& sizes = ui.sizes();
  const Desk& desk = shown.desk();
  Row row(rect, sizes.space * 0.5);
  const auto icon = [&](WidgetId id, Icon picture, const char* text) {
    return ui.icon_button(id, picture, text, row.take_right(sizes.icon));
  };
  if (icon(ids::card_close, Icon::Close, "put the face back")) {
    out.push_back(PickFace{std::nullopt});
  }
  if (!shown.view().presenting) {
    if (icon(ids::card_move, Icon::Flip, "move this face to another edge of the net")) {
      out.push_back(MovePicked{});
    }
    const bool counted = std::find(desk.counted.begin(), desk.counted.end(), face.id) != desk.counted.end();
    if (icon(ids::card_count, Icon::Plus, counted ? "count it again" : "count it")) {
      out.push_back(CountFace{face.id});
    }
  }
  // Its row has the number too, and so has the picture.
  for (const std::string& title : {"Face " + figures::face_number(face.id), figures::face_number(face.id)}) {
    if (ui.text_width(title, TextSize::Small, true) <= row.rest().w) {
      ui.text(title, row.rest(), {.size = TextSize::Small, .bold = true});
      return;
    }
  }
}

}  // namespace

double face_card_height(const Ui& ui) { return 5.4 * ui.sizes().label; }

void face_card(Ui& ui, const Shown& shown, const Rect& rect, Commands& out) {
  const Sizes& sizes = ui.sizes();
  const solids::Face& face = shown.desk().solid.faces()[*shown.desk().picked];
  const Rect card = rect.inset(0, sizes.space * 0.5);
  ui.canvas().rounded(card, sizes.radius, std::nullopt, figures::Stroke{ui.theme().ink, sizes.rule, 0});
  Row halves(card.inset(sizes.space, sizes.space * 0.5), sizes.space);
  figures::draw_face(ui.canvas(), shown.desk().solid, face.id, halves.take(card.w * 0.52), ui.theme().panel_palette());
  Column column(halves.rest(), sizes.space * 0.5);
  card_buttons(ui, shown, face, column.take(sizes.icon), out);
  const std::string& work = shown.derived.picked_work;
  const bool large = ui.wrapped_height(work, column.rest().w, TextSize::Label, true) <= column.rest().h;
  const TextSize size = large ? TextSize::Label : TextSize::Small;
  ui.text(work, column.take(std::min(ui.wrapped_height(work, column.rest().w, size, true), column.rest().h)),
          {.size = size, .bold = true, .wrap = true});
  for (const std::string& more : {where_from(face), face.shape}) {
    const double height = ui.wrapped_height(more, column.rest().w, TextSize::Small);
    if (!more.empty() && height <= column.rest().h) {
      ui.text(more, column.take(height), {.size = TextSize::Small, .wrap = true});
    }
  }
}

}  // namespace fw::panels
