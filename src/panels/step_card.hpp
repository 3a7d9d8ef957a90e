#pragma once

#include <optional>
#include <string>
#include <utility>
#include <vector>

#include "figures/column_work_figure.hpp"
#include "figures/formula_layout.hpp"
#include "panels/panels.hpp"

// One step in the list, laid out before it is drawn. Private to the panels.
namespace fw::panels {

struct StepCard {
  std::size_t step = 0;
  std::optional<std::size_t> board_line;  ///< a line of the board, and no step
  double indent = 0;                      ///< of a step that a line of the board is opened into
  bool is_present = false;
  bool is_origin = false;  ///< the pointed number was worked out here
  std::string number;      ///< of the step, in the margin
  std::string remark;      ///< above all; of a step that a wrong answer points to
  double remark_height = 0;
  std::string reason;
  double reason_height = 0;
  std::string line_text;
  std::optional<figures::FormulaLayout> line;
  figures::Vec2 line_at{};  ///< from the card's top left corner, as all places here
  struct Aside {
    figures::ColumnWorkFigure figure;
    figures::Vec2 at{};
  };
  std::vector<Aside> asides;
  double height = 0;
};

/// The cards of the steps `from` up to `to`, their signs under each other. The present step is large, the others small.
[[nodiscard]] std::vector<StepCard> step_cards(const Ui& ui, figures::Canvas& canvas, const Shown& shown,
                                               std::size_t from, std::size_t to, double width);
/// The lines of the board that are shown, each with its steps under it where it is opened. Equations are large.
[[nodiscard]] std::vector<StepCard> board_cards(const Ui& ui, figures::Canvas& canvas, const Shown& shown,
                                                double width);
void draw_card(Ui& ui, const Shown& shown, const StepCard& card, const figures::Rect& rect, Commands& out);

}  // namespace fw::panels
