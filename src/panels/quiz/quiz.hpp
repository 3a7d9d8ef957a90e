#pragma once

#include <optional>
#include <string>
#include <vector>

#include "figures/formula_layout.hpp"
#include "panels/panels.hpp"

// What the pages of the quiz share. Private to the panels.
namespace fw::panels {

using state::ItemWork;

/// What was done with the item in view.
[[nodiscard]] inline const ItemWork& item(const Shown& shown) { return shown.state().quiz.work(); }

/// A text of an item's page.
struct PageText {
  std::string text;
  TextSize size = TextSize::Label;
  bool bold = false;
  Color color{};
  std::optional<figures::FormulaLayout> line{};  ///< set under it
};
/// A hint with its line.
[[nodiscard]] PageText hint_text(Ui& ui, const practice::Hint& hint, double width);

/// The height of the texts, one under another.
[[nodiscard]] double texts_height(const Ui& ui, const std::vector<PageText>& texts, double width);
/// Draws them from the top of the rectangle.
void draw_texts(Ui& ui, const std::vector<PageText>& texts, const figures::Rect& rect);
/// A page of texts that scrolls to the last one.
void text_page(Ui& ui, WidgetId id, const std::vector<PageText>& texts, const figures::Rect& rect);

/// The parts of a page: the question stays above, the reply below, and what lies between them scrolls.
struct PageParts {
  figures::Rect question, between, reply;
};
/// Cuts a page by the heights that its parts would like. Where they do not all fit, each keeps a share to be read in.
[[nodiscard]] PageParts page_parts(const figures::Rect& rect, double question, double between, double reply);
/// The question, large where `is_large` and smaller beside much else.
[[nodiscard]] PageText question_text(const Ui& ui, const Shown& shown, bool is_large);
/// The width that a page leaves to its texts beside a bar.
[[nodiscard]] double page_width(const Ui& ui, const figures::Rect& rect);

/// The results of one student at the end of a set.
void quiz_results(Ui& ui, const Shown& shown, const figures::Rect& rect, Commands& out);

/// The question, its hints and options, and under them what the last answer deserves.
void choice_page(Ui& ui, const Shown& shown, const std::vector<PageText>& replies, const figures::Rect& rect,
                 Commands& out);

/// Which item it is, before and next, undo, and the end of the set.
void item_head(Ui& ui, const Shown& shown, const figures::Rect& rect, Commands& out);

}  // namespace fw::panels
