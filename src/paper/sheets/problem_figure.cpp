#include "paper/sheets/problem_figure.hpp"

#include <algorithm>

#include "figures/label_layout.hpp"
#include "figures/net_sketch.hpp"
#include "practice/choices.hpp"
#include "practice/task_type.hpp"
#include "tasks/decide/claim.hpp"
#include "tasks/nets/net_task.hpp"

namespace fw::paper {
namespace {

using figures::HAlign;
using figures::Stroke;
using figures::VAlign;

constexpr double degree = 0.017453292519943295;

/// The sheets of a question about nets with the shape of the solid, side by side.
struct Cell {
  const lessons::NetSheet* sheet = nullptr;  ///< none: the solid
  std::string letter;
};

std::vector<Cell> cells_of(const tasks::NetTask& task) {
  std::vector<Cell> cells;
  if (task.shows_solid()) {
    cells.push_back({});
  }
  for (std::size_t i = 0; i < task.sheets().size(); ++i) {
    const bool is_chosen = task.sheets().size() > 1;
    cells.push_back({&task.sheets()[i], is_chosen ? practice::letter(i) : ""});
  }
  return cells;
}

std::size_t columns_of(std::size_t cells) { return cells <= 3 ? cells : cells == 4 ? 2 : 3; }

void draw_letter_disc(PageCanvas& canvas, Vec2 center, const std::string& letter, double em) {
  canvas.circle(center, 0.75 * em, white, Stroke{black, points(0.6)});
  canvas.text(center, HAlign::Center, VAlign::Middle, letter, {em, black, true});
}

/// Two pieces share the middle of an edge where they are joined.
bool is_joint(const nets::Cutout& cutout, nets::PieceEdge edge) {
  const auto& pieces = cutout.pieces();
  const auto& own = pieces[edge.piece].joint;
  if (own && own->by == edge.edge) {
    return true;
  }
  return std::any_of(pieces.begin(), pieces.end(), [&](const nets::Piece& piece) {
    return piece.joint && piece.joint->on == edge.piece && piece.joint->edge == edge.edge;
  });
}

void draw_cutout(PageCanvas& canvas, const tasks::NetTask& task, const lessons::NetSheet& sheet, const Rect& rect,
                 const PageStyle& style) {
  const double em = style.small_em();
  const double room = task.places().empty() ? points(1) : 1.2 * em;
  const auto shapes =
      figures::fitted(nets::lying(sheet.cutout, sheet.turn_degrees * degree, sheet.flipped), rect.inset(room));
  const Stroke cut{black, points(1) * style.thick()};
  const Stroke fold{black, points(0.75) * style.thick(), 2.5};
  for (std::size_t i = 0; i < shapes.size(); ++i) {
    for (std::size_t side = 0; side < shapes[i].size(); ++side) {
      const nets::PieceEdge edge{nets::PieceId::at(i), side};
      const auto& own = sheet.cutout.pieces()[edge.piece].joint;
      if (own && own->by == side) {
        continue;  // drawn with the piece that it hangs on
      }
      canvas.line(shapes[i][side], shapes[i][(side + 1) % shapes[i].size()], is_joint(sheet.cutout, edge) ? fold : cut);
    }
  }
  const std::vector<nets::Joint> places = task.places();
  for (std::size_t i = 0; i < places.size(); ++i) {
    const auto& shape = shapes[places[i].on.index()];
    const Vec2& from = shape[places[i].edge];
    const Vec2& to = shape[(places[i].edge + 1) % shape.size()];
    draw_letter_disc(canvas, (from + to) * 0.5, practice::letter(i), em);
  }
}

}  // namespace

std::vector<std::optional<std::string>> student_labels(const lessons::Problem& problem) {
  const solids::Solid& solid = problem.solid;
  const auto* claim = practice::task_as<tasks::Claim>(problem);
  std::vector<std::optional<std::string>> labels;
  for (std::size_t i = 0; i < solid.marks().size(); ++i) {
    const solids::MarkId id = solids::MarkId::at(i);
    const algebra::Symbol& symbol = solid.marks()[id].symbol;
    const std::string label = solid.label(id);
    const auto& measures = solid.statement().measures;
    const bool is_claimed =
        claim != nullptr && std::any_of(measures.begin(), measures.end(), [&](const solids::Measure& measure) {
          return measure.symbol == symbol && claim->label() == (measure.in_base ? "base." : "") + measure.key;
        });
    const bool is_asked =
        label == "?" || std::any_of(measures.begin(), measures.end(), [&](const solids::Measure& measure) {
          const std::string key = (measure.in_base ? "base." : "") + measure.key;
          return measure.symbol == symbol && !solid.is_given(symbol) &&
                 std::any_of(problem.tasks.begin(), problem.tasks.end(),
                             [&](const lessons::Task& task) { return task->find() == key && !key.empty(); });
        });
    if (is_claimed) {
      labels.emplace_back(claim->value().text + "?");
    } else if (is_asked) {
      labels.emplace_back(symbol.letter + " = ?");
    } else {
      labels.push_back(solid.is_given(symbol) ? std::optional(label) : std::nullopt);
    }
  }
  return labels;
}

Vec2 figure_size(const lessons::Problem& problem, const PageStyle& style) {
  const double scale = style.is_large ? 1.4 : 1;
  if (const tasks::NetTask* task = tasks::net_asked(problem)) {
    const std::size_t cells = cells_of(*task).size();
    const std::size_t columns = columns_of(cells);
    const std::size_t rows = (cells + columns - 1) / columns;
    return {style.paper.printable().w, 52 * scale * static_cast<double>(rows)};
  }
  return {75 * scale, 60 * scale};
}

void draw_problem_figure(PageCanvas& canvas, const lessons::Problem& problem, const Rect& rect,
                         const PageStyle& style) {
  canvas.begin_part("figure");
  const tasks::NetTask* task = tasks::net_asked(problem);
  if (task == nullptr) {
    figures::draw_solid_figure(canvas, problem.solid, student_labels(problem), rect, style.figure_look());
    canvas.end_part();
    return;
  }
  const std::vector<Cell> cells = cells_of(*task);
  const std::size_t columns = columns_of(cells.size());
  const std::size_t rows = (cells.size() + columns - 1) / columns;
  const double width = rect.w / static_cast<double>(columns);
  const double height = rect.h / static_cast<double>(rows);
  for (std::size_t i = 0; i < cells.size(); ++i) {
    const std::size_t row = i / columns;
    const Rect cell = Rect{rect.x + width * static_cast<double>(i % columns),
                           rect.y + height * static_cast<double>(row), width, height}
                          .inset(3);
    if (cells[i].sheet == nullptr) {
      figures::draw_solid_figure(canvas, problem.solid, student_labels(problem), cell, style.figure_look());
      continue;
    }
    const double gutter = cells[i].letter.empty() ? 0 : 2 * style.em();
    draw_cutout(canvas, *task, *cells[i].sheet, {cell.x + gutter, cell.y, cell.w - gutter, cell.h}, style);
    if (!cells[i].letter.empty()) {
      draw_letter_disc(canvas, {cell.x + style.em(), cell.y + style.em()}, cells[i].letter, style.em());
    }
  }
  canvas.end_part();
}

}  // namespace fw::paper
