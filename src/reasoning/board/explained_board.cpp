#include "reasoning/board/explained_board.hpp"

#include <algorithm>

namespace fw::reasoning {
namespace {

using algebra::Notation;
using algebra::NotationLine;
using Line = BoardLine::Kind;

void shift_sources(Notation& notation, std::size_t by) {
  if (notation.source) {
    notation.source = *notation.source + by;
  }
  for (Notation& part : notation.parts) {
    shift_sources(part, by);
  }
}

// "S = 2 · 12 + 18 · 7 = 150", or "ℓ² = 12² + 9², ℓ = 15": the numbers put in, and the value.
std::vector<NotationLine> in_one(const std::vector<BoardLine>& lines) {
  const auto value = std::find_if(lines.rbegin(), lines.rend(), [](const BoardLine& line) {
    return line.kind != Line::Answer && line.kind != Line::Convert && !line.equations.empty();
  });
  if (value == lines.rend()) {
    return {};
  }
  NotationLine last = value->equations.back();
  const auto numbers =
      std::find_if(lines.rbegin(), lines.rend(), [](const BoardLine& line) { return line.kind == Line::Substitute; });
  if (numbers == lines.rend() || numbers == value) {
    return {last};
  }
  const NotationLine& first = numbers->equations.back();
  if (!(first.left == last.left)) {
    return {first, last};
  }
  last.right = algebra::row({first.right, algebra::leaf(Notation::Kind::Sign, "="), last.right});
  return {last};
}

class WholeBoard {
 public:
  explicit WholeBoard(const ClassNotation& notation) : notation_(notation) {}

  void add(const WorkPart& part, bool goes_on) {
    first_ = part.first;
    sources_ = board_.sources.size();
    lines_ = board_.lines.size();
    if (part.board.lines.empty()) {
      add_steps(part);
    } else {
      add_lines(goes_on ? shortened(part.board.lines) : part.board.lines, part.board.sources);
    }
  }

  [[nodiscard]] Board done() && {
    if (!waiting_.empty()) {
      push({Line::Ask, one_after_another(reasons_), {}, {}, {}});
    }
    return std::move(board_);
  }

 private:
  // Words that come before any line: the decision, what is asked.
  void wait(const Step& step, std::size_t index) {
    waiting_.push_back(index);
    reasons_.push_back(step.reason);
  }

  void push(BoardLine line) {
    line.steps.insert(line.steps.begin(), waiting_.begin(), waiting_.end());
    waiting_.clear();
    reasons_.clear();
    board_.lines.push_back(std::move(line));
  }

  // What is asked, and one line that opens into all steps of the way to it.
  [[nodiscard]] static std::vector<BoardLine> shortened(const std::vector<BoardLine>& lines) {
    const auto formula =
        std::find_if(lines.begin(), lines.end(), [](const BoardLine& line) { return line.kind == Line::Formula; });
    BoardLine amount;
    amount.kind = Line::Part;
    amount.equations = in_one(lines);
    amount.reason = formula == lines.end() ? message("Add the areas.") : formula->reason;
    for (std::size_t i = 1; i < lines.size(); ++i) {
      amount.steps.insert(amount.steps.end(), lines[i].steps.begin(), lines[i].steps.end());
    }
    std::sort(amount.steps.begin(), amount.steps.end());
    return {lines.front(), std::move(amount)};
  }

  void add_lines(const std::vector<BoardLine>& lines, const std::vector<Source>& sources) {
    const bool is_short = lines.size() == 2;
    for (BoardLine line : lines) {
      for (std::size_t& step : line.steps) {
        step += first_;
      }
      for (NotationLine& equation : line.equations) {
        shift_sources(equation.left, sources_);
        shift_sources(equation.right, sources_);
      }
      if (line.kind == Line::Ask && !reasons_.empty()) {
        reasons_.push_back(line.reason);
        line.reason = one_after_another(reasons_);
      }
      push(std::move(line));
    }
    for (Source source : sources) {
      if (source.step) {
        source.step = lines_ + (is_short ? std::min<std::size_t>(*source.step, 1) : *source.step);
      }
      board_.sources.push_back(std::move(source));
    }
  }

  void add_steps(const WorkPart& part) {
    std::vector<std::size_t> line_of(part.steps.size(), board_.lines.size());
    for (std::size_t i = 0; i < part.steps.size(); ++i) {
      const Step& step = part.steps[i];
      const std::size_t index = first_ + i;
      const bool begins = !step.line && (step.kind == StepKind::Ask || step.kind == StepKind::Name);
      if (begins && board_.lines.empty()) {
        wait(step, index);
        continue;
      }
      if (!waiting_.empty() && board_.lines.empty()) {
        push({Line::Ask, one_after_another(reasons_), {}, {}, {}});
      }
      const bool joins = step.on_board != Step::OnBoard::OwnLine && board_.lines.size() > lines_;
      if (!joins) {
        push({step.kind == StepKind::Answer ? Line::Answer : Line::Count, step.reason, {}, {}, {}});
      }
      BoardLine& line = board_.lines.back();
      line.steps.push_back(index);
      line_of[i] = board_.lines.size() - 1;
      if (step.on_board == Step::OnBoard::JoinsAndTells) {
        line.reason = step.reason;
      }
      if (step.line) {
        ClassNotation notation = notation_;
        notation.units = step.kind == StepKind::Convert ? ClassNotation::Units::OnEveryLine : notation.units;
        line.equations.push_back(in_class_notation(*step.line, notation));
        shift_sources(line.equations.back().left, sources_);
        shift_sources(line.equations.back().right, sources_);
      }
    }
    for (Source source : part.sources) {
      source.step = source.step && *source.step < line_of.size() ? std::optional(line_of[*source.step]) : std::nullopt;
      board_.sources.push_back(std::move(source));
    }
  }

  ClassNotation notation_;
  Board board_;
  std::size_t first_ = 0;    // step of the part
  std::size_t sources_ = 0;  // before the part
  std::size_t lines_ = 0;
  std::vector<std::size_t> waiting_;
  std::vector<Message> reasons_;
};

}  // namespace

Board board_of(const std::vector<WorkPart>& parts, const ClassNotation& notation) {
  WholeBoard whole(notation);
  for (std::size_t i = 0; i < parts.size(); ++i) {
    const bool goes_on = i + 1 < parts.size() && !parts[i + 1].is_other_way && !parts[i].is_other_way;
    whole.add(parts[i], goes_on);
  }
  return std::move(whole).done();
}

}  // namespace fw::reasoning
