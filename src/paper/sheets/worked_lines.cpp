#include "paper/sheets/worked_lines.hpp"

#include <algorithm>
#include <cmath>

#include "figures/formula_layout.hpp"
#include "practice/task_type.hpp"
#include "reasoning/blank.hpp"
#include "reasoning/board/explained_board.hpp"

namespace fw::paper {
namespace {

using algebra::Notation;
using algebra::NotationLine;
using figures::FormulaLayout;
using figures::HAlign;
using figures::VAlign;
using words::message;

constexpr double work_indent = 10;

/// A line of a solution as it is printed.
struct WorkedLine {
  std::vector<NotationLine> equations;
  words::Message reason;
  bool earns = false;  ///< it is worth a point
  bool has_gap = false;
  bool is_answer = false;  ///< half filled notes leave it open as well
};

/// Without the marks that only color can carry.
Notation plain(Notation notation) {
  notation.group.reset();
  notation.source.reset();
  notation.changed = false;
  for (Notation& part : notation.parts) {
    part = plain(std::move(part));
  }
  return notation;
}

/// A gap as wide as any of about this length, so that its width tells nothing.
Notation gap_for(const std::string& text, double em, const PageCanvas& canvas) {
  constexpr double step = 5;
  const double digit = canvas.text_size("0", {em, black}).x;
  const double wanted = std::ceil(1.6 * canvas.text_size(text, {em, black}).x / step) * step;
  const auto digits = static_cast<std::size_t>(std::max(3.0, std::round(wanted / digit)));
  return algebra::leaf(Notation::Kind::Blank, std::string(digits, '0'));
}

Notation with_wide_gaps(Notation notation, double em, const PageCanvas& canvas) {
  if (notation.kind == Notation::Kind::Blank) {
    return gap_for(notation.text, em, canvas);
  }
  for (Notation& part : notation.parts) {
    part = with_wide_gaps(std::move(part), em, canvas);
  }
  return notation;
}

std::vector<WorkedLine> board_lines(const reasoning::Explanation& explanation, const algebra::ClassNotation& style,
                                    std::vector<WorkedLine>& gapped) {
  using Kind = reasoning::BoardLine::Kind;
  std::vector<WorkedLine> lines;
  for (const reasoning::BoardLine& line : reasoning::board_of(reasoning::parts_of(explanation), style).lines) {
    const bool earns = line.kind == Kind::Convert || line.kind == Kind::Formula || line.kind == Kind::Part ||
                       line.kind == Kind::Substitute || line.kind == Kind::Count || line.kind == Kind::Answer;
    lines.push_back({line.equations, line.reason, earns, false, line.kind == Kind::Answer});
    const reasoning::BlankedLine blank = reasoning::with_blank(line);
    gapped.push_back(blank.hidden.empty()
                         ? lines.back()
                         : WorkedLine{blank.equations, blank.reason, earns, true, lines.back().is_answer});
  }
  return lines;
}

std::vector<WorkedLine> every_line(const reasoning::Explanation& explanation, std::vector<WorkedLine>& gapped) {
  using Kind = reasoning::StepKind;
  std::vector<WorkedLine> lines;
  for (const reasoning::Step& step : reasoning::all_steps(explanation)) {
    const bool earns = step.kind == Kind::Relation || step.kind == Kind::PutIn || step.kind == Kind::Answer ||
                       step.kind == Kind::Count || step.kind == Kind::Convert;
    const auto equations = [](const std::optional<NotationLine>& line) {
      return line ? std::vector<NotationLine>{*line} : std::vector<NotationLine>{};
    };
    const bool checks = step.kind == Kind::Check;  // it says the answer again
    lines.push_back({equations(step.line), step.reason, earns, false, checks || step.kind == Kind::Answer});
    const bool can_ask = reasoning::blank_kind(step) != reasoning::BlankKind::Words;
    const reasoning::StepText blank = can_ask ? reasoning::with_blank(step) : reasoning::StepText{};
    const words::Message reason =
        checks ? message("Check: substitute your answer. Are both sides equal?") : blank.reason;
    gapped.push_back(can_ask || checks ? WorkedLine{equations(blank.line), reason, earns, true, false} : lines.back());
  }
  return lines;
}

/// What stands before the answer in words alone gives it away: "544 is the area of the triangles alone." It is asked
/// for instead, after what the first line asks.
void hide_the_why(std::vector<WorkedLine>& gapped) {
  const words::Message why = message("Why? ____________________");
  for (std::size_t i = 1; i < gapped.size(); ++i) {
    WorkedLine& line = gapped[i - 1];
    const bool is_about_it = gapped[i].is_answer && gapped[i].equations.empty() && line.equations.empty();
    if (!is_about_it || line.has_gap) {
      continue;
    }
    const words::Message asks = words::first_sentence(line.reason);
    if (i > 1 || !(asks == line.reason)) {
      line.reason = i > 1 ? why : words::one_after_another({asks, why});
      line.has_gap = true;
    }
  }
}

/// Whether nothing but words stands between a line and the answer: the line comes to it.
bool comes_to_the_answer(const std::vector<WorkedLine>& lines, std::size_t index) {
  for (std::size_t i = index + 1; i < lines.size(); ++i) {
    if (lines[i].is_answer || !lines[i].equations.empty()) {
      return lines[i].is_answer;
    }
  }
  return false;
}

/// The lines with their gaps: all of them; or, half filled, every second one. What comes to the answer stays open.
std::vector<WorkedLine> lines_with_gaps(const reasoning::Explanation& explanation, const SheetOptions& options,
                                        const algebra::ClassNotation& style) {
  std::vector<WorkedLine> gapped;
  std::vector<WorkedLine> lines =
      options.steps == Steps::Every ? every_line(explanation, gapped) : board_lines(explanation, style, gapped);
  if (options.gaps == Gaps::None) {
    return lines;
  }
  hide_the_why(gapped);
  std::size_t count = 0;
  for (std::size_t i = 0; i < lines.size(); ++i) {
    if (!gapped[i].has_gap) {
      continue;
    }
    const bool stays_open = lines[i].is_answer || comes_to_the_answer(lines, i);
    const bool is_filled = options.gaps == Gaps::Half && count++ % 2 == 0 && !stays_open;
    if (!is_filled) {
      lines[i] = gapped[i];
    }
  }
  return lines;
}

/// A line as it is set.
struct SetLine {
  std::vector<FormulaLayout> formulas;
  std::vector<std::string> reason;
  double formula_width = 0;
  double formula_height = 0;
  double height = 0;
  bool is_stacked = false;  ///< the equations have no room beside each other
  bool is_above = false;    ///< nor has the reason beside them
};

SetLine set_line(const Packet& packet, const WorkedLine& line, const PageStyle& style, double points_room) {
  const double em = style.em();
  SetLine set;
  const double width = packet.width() - work_indent - points_room;
  set.formula_width = line.equations.empty() ? 0 : 0.5 * width;
  double row = 0;
  double column = 0;
  double widest = 0;
  const auto add = [&](const NotationLine& equation, double size) {
    FormulaLayout formula(packet.measure(), equation, size, width);
    widest = std::max(widest, formula.size().x);
    row += formula.size().x + 2 * em;
    column += formula.size().y + 1;
    set.formula_height = std::max(set.formula_height, formula.size().y);
    set.formulas.push_back(std::move(formula));
  };
  for (NotationLine equation : line.equations) {
    equation.left = with_wide_gaps(plain(equation.left), em, packet.measure());
    equation.right = with_wide_gaps(plain(equation.right), em, packet.measure());
    const double wide = FormulaLayout(packet.measure(), equation, em, width).size().x;
    add(equation, em * std::min(1.0, width / wide));
  }
  set.is_stacked = row > 0.7 * width && set.formulas.size() > 1;
  if (set.is_stacked) {
    set.formula_height = column;
  }
  const double taken = (set.is_stacked ? widest : row) + 2;
  set.is_above = !set.formulas.empty() && taken > 0.7 * width;
  set.formula_width = set.is_above ? 0 : std::max(set.formula_width, set.formulas.empty() ? 0 : taken);
  const double reason_em = set.formulas.empty() ? em : style.small_em();
  set.reason = lines_of(packet.measure(), said(line.reason), {reason_em, black}, width - set.formula_width);
  const double reason = reason_em * style.leading() / em * static_cast<double>(set.reason.size());
  set.height =
      (set.is_above ? set.formula_height + reason : std::max(set.formula_height, reason)) + (line.has_gap ? 1 : 0);
  return set;
}

void draw_set_line(PageCanvas& canvas, const SetLine& set, const Rect& rect, const PageStyle& style) {
  double x = rect.x;
  double y = rect.y;
  for (const FormulaLayout& formula : set.formulas) {
    const double above = set.is_stacked ? 0 : (set.formula_height - formula.size().y) / 2;
    formula.draw(canvas, {x, y + above}, style.palette());
    x += set.is_stacked ? 0 : formula.size().x + 2 * style.em();
    y += set.is_stacked ? formula.size().y + 1 : 0;
  }
  const double em = set.formulas.empty() ? style.em() : style.small_em();
  const double leading = em * style.leading() / style.em();
  const bool is_single = set.reason.size() == 1 && !set.formulas.empty();
  const double top = rect.y + (set.is_above ? set.formula_height : is_single ? (set.formula_height - leading) / 2 : 0);
  draw_lines(canvas, set.reason, {rect.x + set.formula_width, top, rect.w, rect.h}, {em, black}, leading);
}

}  // namespace

void add_worked(Packet& packet, const lessons::Lesson& lesson, const lessons::Problem& problem, const AskedItem& item,
                const SheetOptions& options, bool points) {
  reasoning::SolutionOptions wanted;
  wanted.notation = lesson.notation;
  const PageStyle style = options.style;
  const auto task = std::find_if(problem.tasks.begin(), problem.tasks.end(),
                                 [&](const lessons::Task& one) { return one->key() == item.type->key(); });
  const auto explanation = practice::explained_task(problem, *task, wanted);
  if (!explanation) {
    packet.add_text(said(explanation.error()), style.em());
    return;
  }
  const double points_room = points ? 3 * style.em() : 0;
  const std::vector<WorkedLine> lines = lines_with_gaps(*explanation, options, lesson.notation);
  for (std::size_t i = 0; i < lines.size(); ++i) {
    const WorkedLine& line = lines[i];
    const SetLine set = set_line(packet, line, style, points_room);
    packet.add({{set.height, i == 0 && lines.size() > 1, false},
                [=](PageCanvas& canvas, const Rect& rect) {
                  draw_set_line(canvas, set, {rect.x + work_indent, rect.y, rect.w - work_indent, rect.h}, style);
                  if (points && line.earns) {
                    canvas.text({rect.right(), rect.y}, HAlign::Right, VAlign::Top, said(message("1 pt")),
                                {style.small_em(), black});
                  }
                },
                problem.id});
  }
}

}  // namespace fw::paper
