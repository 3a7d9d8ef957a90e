#include <algorithm>
#include <memory>
#include "paper/sheets/worked_lines.hpp"

namespace fw::paper {
namespace {

using words::message;

constexpr std::size_t most_mistakes = 6;
constexpr double key_indent = 10;
constexpr double key_gap = 4;
constexpr double key_block_gap = 1.2;

/// Wrong numbers, two beside each other.
void add_mistakes(Packet& packet, const lessons::Problem& problem, const AskedItem& item, const PageStyle& style) {
  const std::vector<LikelyMistake> mistakes = likely_mistakes(problem, item, most_mistakes);
  if (mistakes.empty()) {
    return;
  }
  packet.add_text(said(message("Wrong numbers, and what they look like")), style.small_em(), true, true, key_indent);
  const figures::TextStyle text{style.small_em(), black};
  const double leading = text.size * style.leading() / style.em();
  const double width = (packet.width() - key_indent) / 2 - key_gap;
  for (std::size_t i = 0; i < mistakes.size(); i += 2) {
    std::vector<std::vector<std::string>> cells;
    std::size_t lines = 0;
    for (std::size_t k = i; k < std::min(i + 2, mistakes.size()); ++k) {
      cells.push_back(lines_of(packet.measure(), mistakes[k].told, text, width));
      lines = std::max(lines, cells.back().size());
    }
    packet.add({{leading * static_cast<double>(lines), false, false},
                [=](PageCanvas& canvas, const Rect& rect) {
                  double x = rect.x + key_indent;
                  for (const std::vector<std::string>& cell : cells) {
                    draw_lines(canvas, cell, {x, rect.y, width, rect.h}, text, leading);
                    x += width + key_gap;
                  }
                },
                problem.id});
  }
}

/// The answers to a problem with what the key says of each.
void add_answers(Packet& packet, const lessons::Lesson& lesson, std::size_t number, const SheetOptions& options) {
  const PageStyle& style = options.style;
  const lessons::Problem& problem = lesson.problems[number];
  const std::vector<AskedItem> items = asked_items(problem);
  for (std::size_t k = 0; k < items.size(); ++k) {
    const std::string letter = items.size() > 1 ? part_letter(k) + "  " : "";
    const std::string answer =
        std::to_string(number + 1) + ".  " + letter + answer_line(problem, items[k], options.order);
    packet.add_text(answer, style.em(), true, options.steps != Steps::None);
    if (options.steps == Steps::None) {
      continue;
    }
    if (const std::string accepted = accepted_line(problem, items[k]); !accepted.empty()) {
      packet.add_text(accepted, style.small_em(), false, true, key_indent);
    }
    add_worked(packet, lesson, problem, items[k], options, true);
    add_mistakes(packet, problem, items[k], style);
    packet.add_space(4);
  }
}

}  // namespace

void key(SheetWork& work, const Fonts& fonts, const lessons::Lesson& lesson, const SheetOptions& options) {
  SheetOptions full = options;
  full.gaps = Gaps::None;
  const std::string title = said(message("Key: {title}", {{"title", lesson.title}}));
  const auto packet = std::make_shared<Packet>(
      fonts, options.style, Furniture{title, options.version, lesson_code(lesson), false}, key_block_gap);
  add_packet(work, packet, lesson.problems.size(),
             [=, &lesson](Packet& pages, std::size_t i) { add_answers(pages, lesson, i, full); });
}

}  // namespace fw::paper
