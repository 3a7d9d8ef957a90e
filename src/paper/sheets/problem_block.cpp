#include "paper/sheets/problem_block.hpp"

#include <algorithm>
#include <cmath>

#include "paper/sheets/problem_figure.hpp"
#include "paper/sheets/problem_text.hpp"
#include "practice/task_type.hpp"
#include "reasoning/board/explained_board.hpp"
#include "tasks/nets/net_task.hpp"

namespace fw::paper {
namespace {

using figures::HAlign;
using figures::TextStyle;
using figures::VAlign;
using words::message;

constexpr double gutter = 10;
constexpr double part_gap = 3;
constexpr double widest_line = 35;  // in ems: about 70 characters

/// What stands of a problem, and how much room it takes.
struct ProblemParts {
  const lessons::Problem* problem = nullptr;
  std::vector<std::string> prompt;   ///< lines, questions and options among them
  std::vector<std::string> answers;  ///< what stands before and after each rule to write on
  std::vector<std::string> units;
  Vec2 figure{};
  double work_height = 0;
  bool is_wide = false;  ///< the figure takes the whole width
};

double line_step(const PageStyle& style) { return style.is_large ? 12 : 9; }

double work_height(const lessons::Problem& problem, const PageStyle& style) {
  reasoning::SolutionOptions options;
  options.notation = algebra::ClassNotation{};
  const auto all = practice::explained(problem, options);
  std::size_t lines = 2;
  for (std::size_t i = 0; all && i < all->size(); ++i) {
    for (const reasoning::BoardLine& line : reasoning::board_of(reasoning::parts_of((*all)[i])).lines) {
      lines += line.equations.empty() ? 0U : 1U;
    }
  }
  constexpr std::size_t most_lines = 12;
  return line_step(style) * static_cast<double>(std::min(lines, most_lines));
}

ProblemParts parts_of(const Packet& packet, const lessons::Problem& problem, const SheetOptions& options) {
  const PageStyle& style = options.style;
  ProblemParts parts;
  parts.problem = &problem;
  const double width = std::min(packet.width() - gutter, widest_line * style.em());
  const TextStyle text{style.em(), black};
  const auto add = [&](const std::string& paragraph) {
    const std::vector<std::string> lines = lines_of(packet.measure(), paragraph, text, width);
    parts.prompt.insert(parts.prompt.end(), lines.begin(), lines.end());
  };
  if (const std::string prompt = prompt_text(problem); !prompt.empty()) {
    add(prompt);
  }
  const std::vector<AskedItem> items = asked_items(problem);
  const std::vector<std::string> questions = question_lines(problem);
  for (std::size_t i = 0; i < items.size(); ++i) {
    const std::string letter = items.size() > 1 ? part_letter(i) + " " : "";
    if (i < questions.size()) {
      add(letter + questions[i]);
    }
    for (const std::string& option : option_lines(problem, items[i], options.order)) {
      add("     " + option);
    }
    parts.answers.push_back(letter + said(message("Answer")));
    const auto& unit = items[i].question.unit;
    parts.units.push_back(options.gives_units && unit ? unit->text() : "");
  }
  parts.figure = figure_size(problem, style);
  parts.is_wide = parts.figure.x > 0.6 * packet.width() || style.is_large;
  parts.work_height = tasks::net_asked(problem) != nullptr ? 0 : work_height(problem, style);
  return parts;
}

double text_height(const ProblemParts& parts, const PageStyle& style) {
  return style.leading() * static_cast<double>(std::max<std::size_t>(1, parts.prompt.size()));
}
double answer_height(const ProblemParts& parts, const PageStyle& style) {
  return line_step(style) * static_cast<double>(parts.answers.size());
}
/// Below the prompt: the figure, beside it or under it the space to work, and the answers.
double body_height(const ProblemParts& parts, const PageStyle& style) {
  const double answers = answer_height(parts, style);
  return parts.is_wide ? parts.figure.y + parts.work_height + answers
                       : std::max(parts.figure.y, parts.work_height + answers);
}

/// Gives the figure and the space to work less room, where a page is to hold several problems.
void fit_into(ProblemParts& parts, double height, const PageStyle& style) {
  constexpr double least_figure = 32;
  const double answers = answer_height(parts, style);
  if (height <= 0 || body_height(parts, style) <= height || parts.is_wide) {
    return;
  }
  parts.figure.y = std::max(least_figure, std::min(parts.figure.y, height));
  parts.work_height = std::max(0.0, height - answers);
}

/// Gives the space to work less room, where a problem would not fit on one page otherwise.
void fit_on_page(ProblemParts& parts, double room, const PageStyle& style) {
  constexpr double least_lines = 4;
  const double rest = text_height(parts, style) + part_gap + body_height(parts, style) - parts.work_height;
  if (parts.is_wide && rest + parts.work_height > room && rest + least_lines * line_step(style) <= room) {
    parts.work_height = room - rest;
  }
}

void draw_answers(PageCanvas& canvas, const ProblemParts& parts, const Rect& rect, const PageStyle& style) {
  const TextStyle text{style.em(), black};
  for (std::size_t i = 0; i < parts.answers.size(); ++i) {
    const double y = rect.bottom() - line_step(style) * (static_cast<double>(parts.answers.size() - i) - 0.65);
    canvas.text({rect.x, y}, HAlign::Left, VAlign::Baseline, parts.answers[i], text);
    const double begin = rect.x + canvas.text_size(parts.answers[i], text).x + 2;
    const double unit = canvas.text_size(parts.units[i], text).x;
    const double end = std::min(rect.right(), begin + (style.is_large ? 90 : 60));
    draw_rule(canvas, begin, y + 1, end - begin - (unit > 0 ? unit + 2 : 0));
    if (unit > 0) {
      canvas.text({end, y}, HAlign::Right, VAlign::Baseline, parts.units[i], text);
    }
  }
}

/// The figure, the space to work and the answers.
void draw_body(PageCanvas& canvas, const ProblemParts& parts, const Rect& rect, const SheetOptions& options) {
  const PageStyle& style = options.style;
  const double answers = answer_height(parts, style);
  if (parts.is_wide) {
    const double figure = std::min(parts.figure.y, rect.h - answers);
    draw_problem_figure(canvas, *parts.problem, {rect.x, rect.y, std::min(rect.w, parts.figure.x), figure}, style);
    const Rect below{rect.x, rect.y + figure + part_gap, rect.w, rect.h - figure - answers - part_gap};
    draw_work_space(canvas, below, options.work, style);
    draw_answers(canvas, parts, rect, style);
    return;
  }
  const double width = std::min(parts.figure.x, 0.5 * rect.w);
  draw_problem_figure(canvas, *parts.problem, {rect.x, rect.y, width, std::min(parts.figure.y, rect.h)}, style);
  const Rect right{rect.x + width + 2 * part_gap, rect.y, rect.w - width - 2 * part_gap, rect.h};
  draw_work_space(canvas, {right.x, right.y, right.w, right.h - answers}, options.work, style);
  draw_answers(canvas, parts, right, style);
}

void draw_number(PageCanvas& canvas, const Rect& rect, std::size_t number, const PageStyle& style) {
  draw_lines(canvas, {std::to_string(number) + "."}, rect, {style.em(), black, true}, style.leading());
}

}  // namespace

void draw_work_space(PageCanvas& canvas, const Rect& rect, WorkSpace work, const PageStyle& style) {
  const double width = points(0.5);
  if (work == WorkSpace::Blank || rect.w < part_gap || rect.h < part_gap) {
    return;
  }
  canvas.begin_part("work-space");
  if (work == WorkSpace::Ruled) {
    const double step = style.is_large ? 12 : 8;
    for (double y = rect.y + step; y < rect.bottom() + 0.01; y += step) {
      canvas.path({{rect.x, y}, {rect.right(), y}}, false, {width, {0.6, 1.4}});
    }
  } else {
    const double step = (style.paper.is_in_inches ? 6.35 : 5) * (style.is_large ? 2 : 1);
    const double columns = std::floor(rect.w / step);
    const double rows = std::floor(rect.h / step);
    for (int i = 0; i <= static_cast<int>(columns); ++i) {
      canvas.path({{rect.x + i * step, rect.y}, {rect.x + i * step, rect.y + rows * step}}, false,
                  {width, {0.6, 0.67}});
    }
    for (int i = 0; i <= static_cast<int>(rows); ++i) {
      canvas.path({{rect.x, rect.y + i * step}, {rect.x + columns * step, rect.y + i * step}}, false,
                  {width, {0.6, 0.67}});
    }
  }
  canvas.end_part();
}

void add_problem(Packet& packet, const lessons::Problem& problem, std::size_t number, double height,
                 const SheetOptions& options) {
  ProblemParts parts = parts_of(packet, problem, options);
  const PageStyle& style = options.style;
  const double text = text_height(parts, style);
  fit_into(parts, height - text - part_gap, style);
  fit_on_page(parts, number == 1 ? packet.first_room() : packet.room(), style);
  const double whole = text + part_gap + body_height(parts, style);
  const TextStyle prompt{style.em(), black};
  const double body = std::min(body_height(parts, style), packet.room());
  if (whole <= packet.room()) {
    packet.add(
        {{std::max(whole, height), false, false},
         [=](PageCanvas& canvas, const Rect& rect) {
           draw_number(canvas, rect, number, style);
           draw_lines(canvas, parts.prompt, {rect.x + gutter, rect.y, rect.w - gutter, text}, prompt, style.leading());
           const double top = text + part_gap;
           draw_body(canvas, parts, {rect.x + gutter, rect.y + top, rect.w - gutter, rect.h - top}, options);
         },
         problem.id});
    return;
  }
  packet.begin_page();
  const auto most = static_cast<std::size_t>(packet.first_room() / style.leading());
  for (std::size_t first = 0; first < parts.prompt.size(); first += most) {
    const auto from = parts.prompt.begin() + static_cast<std::ptrdiff_t>(first);
    const auto to = parts.prompt.begin() + static_cast<std::ptrdiff_t>(std::min(first + most, parts.prompt.size()));
    const std::vector<std::string> lines(from, to);
    packet.add(
        {{style.leading() * static_cast<double>(lines.size()), false, false},
         [=](PageCanvas& canvas, const Rect& rect) {
           if (first == 0) {
             draw_number(canvas, rect, number, style);
           }
           draw_lines(canvas, lines, {rect.x + gutter, rect.y, rect.w - gutter, rect.h}, prompt, style.leading());
         },
         problem.id});
  }
  packet.add({{body, false, false},
              [=](PageCanvas& canvas, const Rect& rect) {
                draw_body(canvas, parts, {rect.x + gutter, rect.y, rect.w - gutter, rect.h}, options);
              },
              problem.id});
  packet.tell_too_tall(problem.id);
  packet.begin_page();
}

}  // namespace fw::paper
