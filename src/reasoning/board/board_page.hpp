#pragma once

#include "reasoning/board/board.hpp"
#include "reasoning/worksheet.hpp"

// The board while it is written, beside the page with every step; private to the room.
namespace fw::reasoning {

/// Expressions that are equal, as they stand on a line: {"B", "½ · 8 · 3", "12"}.
using EqualParts = std::vector<algebra::Expression>;

class BoardPage {
 public:
  /// Requires: all steps are on the sheet.
  BoardPage(Worksheet& sheet, const ClassNotation& style) : sheet_(&sheet), style_(style) {}

  [[nodiscard]] Worksheet& sheet() { return *sheet_; }
  [[nodiscard]] const ClassNotation& style() const { return style_; }
  /// The number of lines, which is the row of the next one.
  [[nodiscard]] std::size_t size() const { return board_.lines.size(); }
  [[nodiscard]] BoardLine& line(std::size_t index) { return board_.lines[index]; }

  /// Returns the row of the line.
  std::size_t say(BoardLine::Kind kind, Message reason);
  std::size_t write(BoardLine::Kind kind, Message reason, const std::vector<EqualParts>& equations);
  /// A number that the next line comes out with.
  [[nodiscard]] algebra::Expression number(const exact::Number& value, int dimension);
  /// The terms of sums with as many terms stand for these faces, from now on.
  void color_terms(std::vector<std::optional<std::size_t>> groups) { groups_ = std::move(groups); }
  /// The line has the step.
  void cover(std::size_t line, std::size_t step);

  /// What stands in a reason: without units, where the lines have none.
  [[nodiscard]] std::string text(const algebra::Expression& expression) const;
  [[nodiscard]] algebra::NotationLine notation_line(const EqualParts& equal) const;

  /// Requires: every step is covered once.
  [[nodiscard]] Board finished() &&;

 private:
  [[nodiscard]] algebra::Notation notation(const algebra::Expression& expression) const;
  [[nodiscard]] algebra::Notation side(const algebra::Expression& expression) const;

  Worksheet* sheet_;
  ClassNotation style_;
  Board board_;
  std::map<std::string, std::size_t> own_;  // numbers that are not on the sheet, and the lines that they come from
  std::vector<std::optional<std::size_t>> groups_;
};

}  // namespace fw::reasoning
