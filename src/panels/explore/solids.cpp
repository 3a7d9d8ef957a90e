#include <algorithm>
#include <map>

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

struct Tile {
  fw::solids::Solid solid;
  std::string title;  ///< the solid's name, and its base where another solid has the same name
};

/// The shelf's solids, made once: the examples of the catalog never change.
const std::vector<Tile>& tiles() {
  static const std::vector<Tile> made = [] {
    std::vector<Tile> list;
    std::map<std::string, std::size_t> with_name;
    for (const fw::solids::Description& description : fw::solids::shelf()) {
      if (auto solid = fw::solids::Solid::make(description)) {
        ++with_name[solid->name()];
        list.push_back({std::move(solid).value(), ""});
      }
    }
    for (Tile& tile : list) {
      const std::vector<fw::solids::Description>& base = tile.solid.description().base;
      const bool is_alone = with_name[tile.solid.name()] == 1 || base.empty();
      tile.title = tile.solid.name() + (is_alone ? "" : " (" + base.front().kind + ")");
    }
    return list;
  }();
  return made;
}

}  // namespace

void solids(Ui& ui, const Shown&, const Rect& rect, Commands& out) {
  const Sizes& sizes = ui.sizes();
  const std::vector<Tile>& shelf = tiles();
  const double least = 5.2 * sizes.label;
  const auto columns = std::max<std::size_t>(1, static_cast<std::size_t>(rect.w / least));
  const std::size_t lines = (shelf.size() + columns - 1) / columns;
  // The tiles are as high as the longest title needs, in what the scroll bar leaves of the width.
  const double text_width = (rect.w - 2 * sizes.scroll_bar) / static_cast<double>(columns) - 1.5 * sizes.space;
  double text_height = 2 * ui.line(TextSize::Small);
  for (const Tile& tile : shelf) {
    text_height = std::max(text_height, ui.wrapped_height(tile.title, text_width, TextSize::Small));
  }
  const double cell_height = 4.0 * sizes.label + text_height + sizes.space;
  const Rect content = ui.begin_scroll(ids::shelf, rect, cell_height * static_cast<double>(lines));
  const double cell_width = content.w / static_cast<double>(columns);
  figures::Palette palette = ui.theme().panel_palette();
  palette.line_width = sizes.edge * 0.6;
  for (std::size_t i = 0; i < shelf.size(); ++i) {
    const std::size_t across = i % columns;
    const std::size_t down = i / columns;
    const Rect cell{content.x + cell_width * static_cast<double>(across),
                    content.y + cell_height * static_cast<double>(down), cell_width, cell_height};
    const Rect inside = cell.inset(sizes.space * 0.5, sizes.space * 0.5);
    const Interaction action = ui.region(ids::shelf_item.at(i), shelf[i].title, inside);
    if (action.clicked) {
      out.push_back(PutOnBench{shelf[i].solid.description()});
    }
    if (action.hovered) {
      ui.canvas().rounded(inside, sizes.radius, ui.theme().hover, std::nullopt);
    }
    Column column(inside);
    const Rect text = column.take_bottom(text_height);
    figures::draw_solid_sketch(ui.canvas(), shelf[i].solid, column.rest().inset(sizes.space), palette,
                               figures::SketchFill::Groups);
    ui.text(shelf[i].title, text,
            {.size = TextSize::Small, .h = HAlign::Center, .v = figures::VAlign::Top, .wrap = true, .shrink = true});
  }
  ui.end_scroll();
}

}  // namespace fw::panels
