#include "reasoning/board/board.hpp"

#include <algorithm>

#include "base/utf8.hpp"

namespace fw::reasoning {

std::string equation_text(const BoardLine& line) {
  std::string text;
  for (const algebra::NotationLine& equation : line.equations) {
    text += (text.empty() ? "" : ",  ") + algebra::plain_text(equation);
  }
  return text;
}

algebra::NotationLine in_one_line(const BoardLine& line) {
  using algebra::Notation;
  algebra::NotationLine whole = line.equations.front();
  if (line.equations.size() == 1) {
    return whole;
  }
  std::vector<Notation> parts{std::move(whole.right)};
  for (std::size_t i = 1; i < line.equations.size(); ++i) {
    const algebra::NotationLine& next = line.equations[i];
    for (Notation part : {algebra::leaf(Notation::Kind::Words, ","), next.left,
                          algebra::leaf(Notation::Kind::Sign, next.sign), next.right}) {
      parts.push_back(std::move(part));
    }
  }
  whole.right = algebra::row(std::move(parts));
  return whole;
}

std::string board_text(const std::vector<BoardLine>& lines) {
  constexpr std::size_t indent = 4;
  constexpr std::size_t gap = 3;
  constexpr std::size_t widest = 48;  // a longer equation has its reason under it
  std::size_t column = 0;
  for (const BoardLine& line : lines) {
    const std::size_t width = character_count(equation_text(line));
    column = width <= widest ? std::max(column, width + gap) : column;
  }
  std::string text;
  for (const BoardLine& line : lines) {
    const std::string equation = equation_text(line);
    const std::string reason = said(line.reason);
    const std::size_t width = character_count(equation);
    text += std::string(line.kind == BoardLine::Kind::Ask ? indent / 2 : indent, ' ') + equation;
    if (!equation.empty() && !reason.empty()) {
      text += width + gap <= column ? std::string(column - width, ' ') : "\n" + std::string(indent + column, ' ');
    }
    text += reason + '\n';
  }
  return text;
}

}  // namespace fw::reasoning
