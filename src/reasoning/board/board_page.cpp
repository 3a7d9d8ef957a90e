#include "reasoning/board/board_page.hpp"

#include <algorithm>
#include <limits>

#include "base/ensure.hpp"

namespace fw::reasoning {

using algebra::Expression;
using algebra::Notation;
using algebra::Operation;
using algebra::Symbol;

namespace {

// Until the page is finished, a number that comes from a line has the row of that line from here on as its source: the
// sheet may still get sources of its own.
constexpr std::size_t first_line_source = std::numeric_limits<std::size_t>::max() / 2;

void move_line_sources(Notation& notation, std::size_t to) {
  if (notation.source && *notation.source >= first_line_source) {
    notation.source = *notation.source - first_line_source + to;
  }
  for (Notation& part : notation.parts) {
    move_line_sources(part, to);
  }
}

}  // namespace

std::size_t BoardPage::say(BoardLine::Kind kind, Message reason) {
  board_.lines.emplace_back();
  board_.lines.back().kind = kind;
  board_.lines.back().reason = std::move(reason);
  return board_.lines.size() - 1;
}

std::size_t BoardPage::write(BoardLine::Kind kind, Message reason, const std::vector<EqualParts>& equations) {
  const std::size_t row = say(kind, std::move(reason));
  for (const EqualParts& equal : equations) {
    board_.lines[row].equations.push_back(notation_line(equal));
    board_.lines[row].equal.push_back(equal);
  }
  return row;
}

Expression BoardPage::number(const exact::Number& value, int dimension) {
  if (dimension == 0) {
    return value;
  }
  Symbol numeral = sheet_->numerals().add(value, dimension);
  own_[numeral.name] = size();
  return numeral;
}

void BoardPage::cover(std::size_t line, std::size_t step) { board_.lines.at(line).steps.push_back(step); }

Notation BoardPage::notation(const Expression& expression) const {
  const bool has_units = style_.units == ClassNotation::Units::OnEveryLine;
  return algebra::class_notation(
      expression,
      [&](const Symbol& symbol) {
        Notation shown = sheet_->symbol_notation(symbol, has_units);
        const auto own = own_.find(symbol.name);
        if (own != own_.end()) {
          (shown.parts.empty() ? shown : shown.parts.front()).source = first_line_source + own->second;
        }
        return shown;
      },
      style_);
}

std::string BoardPage::text(const Expression& expression) const { return algebra::plain_text(notation(expression)); }

Notation BoardPage::side(const Expression& expression) const {
  Notation shown = notation(expression);
  const bool is_sum = expression.operation() == Operation::Sum;
  const std::size_t terms = is_sum ? expression.operands().size() : 1;
  if (terms != groups_.size() || (is_sum && shown.parts.size() != 2 * terms - 1)) {
    return shown;
  }
  for (std::size_t i = 0; i < terms; ++i) {
    (is_sum ? shown.parts[2 * i] : shown).group = groups_[i];
  }
  return shown;
}

algebra::NotationLine BoardPage::notation_line(const EqualParts& equal) const {
  ensure(equal.size() >= 2, "a line on the board needs two sides");
  std::vector<Notation> right;
  for (std::size_t i = 1; i < equal.size(); ++i) {
    if (i > 1) {
      right.push_back(algebra::leaf(Notation::Kind::Sign, "="));
    }
    right.push_back(side(equal[i]));
  }
  return {notation(equal.front()), "=", right.size() == 1 ? right.front() : algebra::row(std::move(right))};
}

Board BoardPage::finished() && {
  const std::size_t count = sheet_->steps().size();
  std::vector<std::optional<std::size_t>> line_of(count);
  for (std::size_t row = 0; row < board_.lines.size(); ++row) {
    std::vector<std::size_t>& steps = board_.lines[row].steps;
    std::sort(steps.begin(), steps.end());
    for (const std::size_t step : steps) {
      ensure(!line_of.at(step), "a step belongs to two lines of the board");
      line_of[step] = row;
    }
  }
  board_.sources = sheet_->sources();
  const std::size_t of_sheet = board_.sources.size();
  for (std::size_t row = 0; row < board_.lines.size(); ++row) {
    board_.sources.push_back({Source::Kind::EarlierStep, {}, std::nullopt, row, {}});
    for (algebra::NotationLine& equation : board_.lines[row].equations) {
      move_line_sources(equation.left, of_sheet);
      move_line_sources(equation.right, of_sheet);
    }
  }
  for (std::size_t i = 0; i < board_.sources.size(); ++i) {
    Source& source = board_.sources[i];
    if (source.step && i < of_sheet) {
      ensure(line_of[*source.step].has_value(), "a step belongs to no line of the board");
      source.step = line_of[*source.step];
    }
    if (source.step) {
      source.sentence = message("found: {line}", {{"line", equation_text(board_.lines[*source.step])}});
    }
  }
  ensure(std::all_of(line_of.begin(), line_of.end(), [](const auto& line) { return line.has_value(); }),
         "a step belongs to no line of the board");
  return std::move(board_);
}

}  // namespace fw::reasoning
