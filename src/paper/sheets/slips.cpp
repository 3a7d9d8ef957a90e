#include <algorithm>

#include "paper/sheets/problem_block.hpp"
#include "paper/sheets/problem_figure.hpp"
#include "paper/sheets/problem_text.hpp"
#include "practice/task_type.hpp"

namespace fw::paper {
namespace {

using figures::HAlign;
using figures::TextStyle;
using figures::VAlign;
using words::message;

constexpr double slip_gap = 6;

/// One problem about an area and one about a volume, where the lesson has them; else its first ones.
std::vector<const lessons::Problem*> slip_problems(const lessons::Lesson& lesson) {
  std::vector<const lessons::Problem*> chosen;
  const auto take = [&](practice::Asked asked) {
    for (const lessons::Problem& problem : lesson.problems) {
      const std::vector<AskedItem> items = asked_items(problem);
      const bool is_known = std::find(chosen.begin(), chosen.end(), &problem) != chosen.end();
      if (!is_known && items.size() == 1 && items.front().question.asked == asked) {
        chosen.push_back(&problem);
        return;
      }
    }
  };
  take(practice::Asked::Surface);
  take(practice::Asked::Volume);
  for (const lessons::Problem& problem : lesson.problems) {
    if (chosen.size() < 2 && std::find(chosen.begin(), chosen.end(), &problem) == chosen.end()) {
      chosen.push_back(&problem);
    }
  }
  return chosen;
}

/// A problem in its column: text, figure, answer.
void draw_slip_problem(PageCanvas& canvas, const lessons::Problem& problem, std::size_t number, const Rect& rect,
                       const PageStyle& style) {
  const TextStyle text{style.em(), black};
  std::vector<std::string> lines =
      lines_of(canvas, std::to_string(number) + ".  " + prompt_text(problem), text, rect.w);
  for (const std::string& question : question_lines(problem)) {
    const std::vector<std::string> more = lines_of(canvas, question, text, rect.w);
    lines.insert(lines.end(), more.begin(), more.end());
  }
  const double answer = 9;
  const auto most = static_cast<std::size_t>(std::max(1.0, (rect.h - answer - 25) / style.leading()));
  if (lines.size() > most) {
    lines.erase(lines.begin() + static_cast<std::ptrdiff_t>(most), lines.end());
    lines.back() += " …";
  }
  const double height = style.leading() * static_cast<double>(lines.size());
  draw_lines(canvas, lines, rect, text, style.leading());
  const double room = rect.h - height - answer - 2;
  draw_problem_figure(canvas, problem, {rect.x, rect.y + height + 1, std::min(rect.w, 75.0), std::min(room, 45.0)},
                      style);
  const std::string label = said(message("Answer"));
  canvas.text({rect.x, rect.bottom() - 2}, HAlign::Left, VAlign::Baseline, label, text);
  const double begin = rect.x + canvas.text_size(label, text).x + 2;
  draw_rule(canvas, begin, rect.bottom() - 1, rect.right() - begin);
}

void draw_slip(PageCanvas& canvas, const lessons::Lesson& lesson, const Rect& rect, const SheetOptions& options) {
  const PageStyle& style = options.style;
  const TextStyle title{style.em(), black, true};
  const TextStyle text{style.em(), black};
  canvas.text({rect.x, rect.y}, HAlign::Left, VAlign::Top, said(message("Exit slip")), title);
  if (options.has_name_line) {
    const std::string name = said(message("Name"));
    const double x = rect.x + 0.45 * rect.w;
    canvas.text({x, rect.y}, HAlign::Left, VAlign::Top, name, text);
    const double begin = x + canvas.text_size(name, text).x + 2;
    draw_rule(canvas, begin, rect.y + style.em() * 1.1, rect.right() - begin);
  }
  const std::vector<const lessons::Problem*> problems = slip_problems(lesson);
  const double head = 2 * style.em();
  const double foot = style.is_large ? 26 : 18;
  const auto columns = static_cast<double>(std::max<std::size_t>(1, problems.size()));
  const double width = (rect.w - slip_gap * (columns - 1)) / columns;
  for (std::size_t i = 0; i < problems.size(); ++i) {
    const Rect column{rect.x + (width + slip_gap) * static_cast<double>(i), rect.y + head, width, rect.h - head - foot};
    draw_slip_problem(canvas, *problems[i], i + 1, column, style);
  }
  const double y = rect.bottom() - foot + 1;
  const std::string why =
      said(problems.size() < 2 ? message("3.  How do you know that your answer makes sense?")
                               : message("3.  Which answer is an area, and which is a volume? How do you know?"));
  draw_lines(canvas, lines_of(canvas, why, text, rect.w), {rect.x, y, rect.w, foot}, text, style.leading());
  draw_rule(canvas, rect.x, rect.bottom() - 1, rect.w);
}

Printed slips_printed(const Fonts& fonts, const lessons::Lesson& lesson, const SheetOptions& options) {
  const PaperSize& paper = options.style.paper;
  const Rect box = paper.printable();
  PageCanvas canvas(fonts, paper.width, paper.height);
  const std::size_t count = options.style.is_large ? 1 : 2;
  const double height = (box.h - slip_gap * 2 * static_cast<double>(count - 1)) / static_cast<double>(count);
  for (std::size_t i = 0; i < count; ++i) {
    const double top = box.y + (height + 2 * slip_gap) * static_cast<double>(i);
    draw_slip(canvas, lesson, {box.x, top, box.w, height}, options);
    if (i > 0) {
      canvas.path({{box.x, top - slip_gap}, {box.right(), top - slip_gap}}, false, {points(0.75), {3, 2}});
    }
  }
  Printed printed;
  printed.missing = canvas.missing();
  printed.pages.push_back(std::move(canvas).take());
  return printed;
}

}  // namespace

void slips(SheetWork& work, const Fonts& fonts, const lessons::Lesson& lesson, const SheetOptions& options) {
  work.add([=, &fonts, &lesson](SheetWork& done) { done.printed.add(slips_printed(fonts, lesson, options)); });
}

}  // namespace fw::paper
