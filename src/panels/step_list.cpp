#include <algorithm>

#include "panels/ids.hpp"
#include "panels/step_card.hpp"
#include "ui/layout.hpp"

namespace fw::panels {

using namespace bench;
using namespace state;
using namespace ui;

namespace {

using figures::Rect;

constexpr double least_column = 9.4;  // in label sizes, of one way beside the other

/// A card, or a text between cards.
struct Block {
  std::optional<StepCard> card;
  std::string text;
  TextOptions options;
  double height = 0;
};

class Blocks {
 public:
  Blocks(const Ui& ui, figures::Canvas& canvas, const Shown& shown, double width)
      : ui_(&ui), canvas_(&canvas), shown_(&shown), width_(width) {}

  void add_text(const std::string& text, TextSize size, bool bold, bool quiet) {
    if (text.empty()) {
      return;
    }
    TextOptions options{.size = size, .bold = bold, .v = figures::VAlign::Top, .wrap = true};
    if (quiet) {
      options.color = ui_->theme().quiet_ink;
    }
    const double height = ui_->wrapped_height(text, width_, size, bold) + ui_->sizes().space;
    blocks_.push_back({std::nullopt, text, options, height});
  }

  /// What is shown of a part.
  void add_part(const WorkPart& part) {
    const std::size_t end = std::min(part.first + part.steps.size(), shown_->desk().work.reached);
    if (part.first >= end) {
      return;
    }
    add_text(said(part.title), TextSize::Small, true, false);
    for (StepCard& card : step_cards(*ui_, *canvas_, *shown_, part.first, end, width_)) {
      const double height = card.height;
      blocks_.push_back({std::move(card), {}, {}, height});
    }
  }

  void add_board() {
    for (StepCard& card : board_cards(*ui_, *canvas_, *shown_, width_)) {
      const double height = card.height;
      blocks_.push_back({std::move(card), {}, {}, height});
    }
  }

  [[nodiscard]] double height() const {
    double sum = 0;
    for (const Block& block : blocks_) {
      sum += block.height;
    }
    return sum;
  }

  /// The present step, or the present line with the steps that it is opened into, together with the one that the
  /// pointed number comes from where both have room.
  [[nodiscard]] std::optional<Span> in_view(double room) const {
    std::optional<Span> present;
    std::optional<Span> origin;
    double top = 0;
    bool is_open = false;
    for (const Block& block : blocks_) {
      const bool is_present = block.card && block.card->is_present;
      if (is_present) {
        present = Span{top, block.height};
      } else if (is_open && block.card && block.card->indent > 0 && present->height + block.height <= room) {
        present->height += block.height;
      }
      is_open = is_present || (is_open && block.card && block.card->indent > 0);
      if (block.card && block.card->is_origin) {
        origin = Span{top, block.height};
      }
      top += block.height;
    }
    if (!origin || !present) {
      return present;
    }
    const double first = std::min(origin->top, present->top);
    const double last = std::max(origin->top + origin->height, present->top + present->height);
    return last - first <= room ? Span{first, last - first} : *origin;
  }

  void draw(Ui& ui, WidgetId id, const Rect& rect, Commands& out) const {
    const std::optional<Span> view = from_a_block(in_view(rect.h), rect.h);
    const double content_height = std::max(height(), view ? view->top + view->height : 0);
    const Rect content = ui.begin_scroll(id, rect, content_height, view);
    double top = content.y;
    for (const Block& block : blocks_) {
      const Rect place{content.x, top, width_, block.height};
      top += block.height;
      if (place.bottom() < rect.y || place.y > rect.bottom()) {
        continue;  // out of sight
      }
      if (block.card) {
        draw_card(ui, *shown_, *block.card, place, out);
      } else {
        ui.text(block.text, place, block.options);
      }
    }
    ui.end_scroll();
  }

 private:
  /// The whole view, begun where a block begins, so that none is cut at its upper edge.
  [[nodiscard]] std::optional<Span> from_a_block(std::optional<Span> wanted, double room) const {
    if (!wanted || wanted->height > room || wanted->top + wanted->height <= room) {
      return wanted;
    }
    double top = 0;
    for (const Block& block : blocks_) {
      if (top + room >= wanted->top + wanted->height) {
        break;
      }
      top += block.height;
    }
    return Span{std::min(top, wanted->top), room};
  }

  const Ui* ui_;
  figures::Canvas* canvas_;
  const Shown* shown_;
  double width_;
  std::vector<Block> blocks_;
};

void add_problem(Blocks& blocks, const Shown& shown) {
  blocks.add_text(shown.derived.prompt, TextSize::Small, false, true);
}

void add_end(Blocks& blocks, const Shown& shown) {
  const WorkedProblem& worked = shown.worked();
  if (shown.desk().work.reached < worked.count) {
    return;
  }
  blocks.add_text(said(worked.comparison), TextSize::Label, true, false);
  for (const words::Message& note : worked.notes) {
    blocks.add_text(said(note), TextSize::Small, false, false);
  }
}

double text_width_in(const Ui& ui, double width) { return width - ui.sizes().scroll_bar - ui.sizes().space; }

}  // namespace

void step_list(Ui& ui, const Shown& shown, const Rect& rect, Commands& out) {
  const WorkedProblem& worked = shown.worked();
  if (shows_board(shown.model, worked)) {
    Blocks blocks(ui, ui.canvas(), shown, text_width_in(ui, rect.w));
    add_problem(blocks, shown);
    blocks.add_board();
    add_end(blocks, shown);
    blocks.draw(ui, ids::work_list, rect, out);
    return;
  }
  const double space = 2 * ui.sizes().space;
  const double half = (rect.w - 2 * space) / 2;
  const bool in_columns = !worked.comparison.empty() && text_width_in(ui, half) >= least_column * ui.sizes().label;
  if (!in_columns) {
    Blocks blocks(ui, ui.canvas(), shown, text_width_in(ui, rect.w));
    add_problem(blocks, shown);
    for (const WorkPart& part : worked.parts) {
      blocks.add_part(part);
    }
    add_end(blocks, shown);
    blocks.draw(ui, ids::work_list, rect, out);
    return;
  }
  // The second way stands beside the first; what follows both comes under it.
  Row halves(rect, 2 * space);
  const Rect left = halves.take(half);
  const Rect right = halves.rest();
  ui.rule_down(left.right() + space, rect.y, rect.h);
  Blocks first(ui, ui.canvas(), shown, text_width_in(ui, left.w));
  add_problem(first, shown);
  const auto other_way =
      std::find_if(worked.parts.begin(), worked.parts.end(), [](const WorkPart& part) { return part.is_other_way; });
  for (auto part = worked.parts.begin(); part != other_way; ++part) {
    first.add_part(*part);
  }
  first.draw(ui, ids::work_list, left, out);
  Blocks second(ui, ui.canvas(), shown, text_width_in(ui, right.w));
  for (auto part = other_way; part != worked.parts.end(); ++part) {
    second.add_part(*part);
  }
  add_end(second, shown);
  second.draw(ui, ids::work_list.at(1), right, out);
}

}  // namespace fw::panels
