#include "practice/hints.hpp"

#include <algorithm>
#include <initializer_list>

#include "reasoning/unknown.hpp"

namespace fw::practice {
namespace {

using reasoning::BoardLine;
using reasoning::Explanation;
using reasoning::Step;
using reasoning::StepKind;
using words::message;

Hint without_line(const Step& step) { return {step.reason, std::nullopt, step.faces, step.marks}; }

const Step* first_of(const std::vector<Step>& steps, StepKind kind) {
  const auto found = std::find_if(steps.begin(), steps.end(), [&](const Step& step) { return step.kind == kind; });
  return found == steps.end() ? nullptr : &*found;
}

// The relation that leads to what is asked: the last one that speaks of it.
const Step* relation_of(const std::vector<Step>& steps, const std::string& asked) {
  const Step* found = nullptr;
  for (const Step& step : steps) {
    if (step.kind != StepKind::Relation || !step.equation) {
      continue;
    }
    const std::vector<algebra::Symbol> letters = algebra::symbols_of(step.equation->left - step.equation->right);
    if (std::any_of(letters.begin(), letters.end(), [&](const algebra::Symbol& one) { return one.name == asked; })) {
      found = &step;
    }
  }
  return found;
}

// "For it you need: base area B and height h."
words::Message needed(const std::vector<algebra::Symbol>& letters, const solids::Solid& solid,
                      const std::string& asked) {
  std::vector<words::Message> parts;
  for (const algebra::Symbol& letter : letters) {
    for (const reasoning::Askable& one : reasoning::askable_measures(solid)) {
      if (letter.letter == one.letter && letter.name != asked) {
        const words::Message part =
            message("{measure} {letter}", {{"measure", words::Noun{one.title}}, {"letter", one.letter}});
        if (std::find(parts.begin(), parts.end(), part) == parts.end()) {
          parts.push_back(part);
        }
      }
    }
  }
  return parts.empty() ? words::Message() : message("You need the {parts:and}.", {{"parts", parts}});
}

std::string symbol_named(const solids::Solid& solid, const std::string& find) {
  for (const solids::Measure& measure : solid.statement().measures) {
    const std::string key = measure.in_base ? "base." + measure.key : measure.key;
    if (!measure.key.empty() && key == find) {
      return measure.symbol.name;
    }
  }
  return find;
}

// By formula: what the formula needs, the formula, and the first numbers put in.
bool push_by_formula(const std::vector<Step>& steps, const solids::Solid& solid, const std::string& find,
                     std::vector<Hint>& hints) {
  const std::string asked = symbol_named(solid, find);
  const Step* relation = relation_of(steps, asked);
  const Step* numbers = first_of(steps, StepKind::PutIn);
  if (relation == nullptr || numbers == nullptr) {
    return false;
  }
  const words::Message made_of =
      needed(algebra::symbols_of(relation->equation->left - relation->equation->right), solid, asked);
  if (!made_of.empty()) {
    hints.push_back({made_of, std::nullopt, relation->faces, relation->marks});
  }
  hints.push_back(hint_of(*relation));
  hints.push_back(hint_of(*numbers));
  return true;
}

const BoardLine* first_of(const reasoning::Board& board, std::initializer_list<BoardLine::Kind> kinds) {
  const auto found = std::find_if(board.lines.begin(), board.lines.end(), [&](const BoardLine& line) {
    return std::find(kinds.begin(), kinds.end(), line.kind) != kinds.end();
  });
  return found == board.lines.end() || found->equations.empty() ? nullptr : &*found;
}

// A line of the board, with the faces and lengths that its steps speak of.
Hint board_hint(const BoardLine& line, const std::vector<Step>& steps) {
  Hint hint{line.reason, reasoning::in_one_line(line), {}, {}};
  for (const std::size_t index : line.steps) {
    for (const geometry::FaceId face : steps[index].faces) {
      if (std::find(hint.faces.begin(), hint.faces.end(), face) == hint.faces.end()) {
        hint.faces.push_back(face);
      }
    }
    for (const solids::MarkId mark : steps[index].marks) {
      if (std::find(hint.marks.begin(), hint.marks.end(), mark) == hint.marks.end()) {
        hint.marks.push_back(mark);
      }
    }
  }
  return hint;
}

// As on the board: what its formula needs, the formula, and the first numbers, which are those of a part where the
// formula needs one before.
bool push_by_board(const reasoning::Solution& solution, const solids::Solid& solid, const std::string& find,
                   std::vector<Hint>& hints) {
  const BoardLine* formula = first_of(solution.board, {BoardLine::Kind::Formula});
  const BoardLine* numbers = first_of(solution.board, {BoardLine::Kind::Part, BoardLine::Kind::Substitute});
  if (formula == nullptr || numbers == nullptr || formula->equal.empty() || formula->equal.front().size() < 2) {
    return false;
  }
  const std::vector<algebra::Expression>& sides = formula->equal.front();
  const words::Message made_of = needed(algebra::symbols_of(sides[0] - sides[1]), solid, symbol_named(solid, find));
  Hint written = board_hint(*formula, solution.steps);
  if (!made_of.empty()) {
    hints.push_back({made_of, std::nullopt, written.faces, written.marks});
  }
  hints.push_back(std::move(written));
  hints.push_back(board_hint(*numbers, solution.steps));
  return true;
}

// Face by face: which faces count, the first of them with its lengths, and its area in numbers.
void push_by_faces(const std::vector<Step>& steps, std::vector<Hint>& hints) {
  const Step* named = nullptr;
  const Step* face = nullptr;
  for (const Step& step : steps) {
    if (step.kind == StepKind::Name) {
      named = &step;
    } else if (face == nullptr && step.line) {
      face = &step;
    }
  }
  if (named != nullptr) {
    hints.push_back(hint_of(*named));
  }
  if (face != nullptr) {
    hints.push_back(without_line(*face));
    hints.push_back(hint_of(*face));
  }
}

}  // namespace

Hint hint_of(const Step& step) { return {step.reason, step.line, step.faces, step.marks}; }

std::vector<Hint> hints_to_look(const reasoning::TaskWork& work) {
  constexpr std::size_t most = 3;
  std::vector<Hint> hints;
  for (const Step& step : work.steps) {
    const bool answers =
        step.kind == StepKind::Answer || (step.outcome && work.outcome && step.outcome->amount == work.outcome->amount);
    if (answers && step.line) {
      hints.push_back(without_line(step));
    }
    if (answers || hints.size() == most) {
      break;
    }
    hints.push_back(hint_of(step));
  }
  return hints;
}

std::vector<Hint> hints_to_task(const reasoning::TaskWork& work) {
  std::vector<Hint> hints;
  for (const Step& step : work.steps) {
    if (!step.line) {
      hints.push_back(hint_of(step));
      continue;
    }
    Step told = step;
    told.reason = words::first_sentence(step.reason);
    hints.push_back(without_line(told));
    hints.push_back(hint_of(step));
    break;
  }
  return hints;
}

std::vector<Hint> hints_to_measure(const Explanation& explanation, const solids::Solid& solid,
                                   const std::string& measure) {
  std::vector<Hint> hints;
  const std::vector<Step> all = reasoning::all_steps(explanation);
  if (const Step* ask = first_of(all, StepKind::Ask)) {
    hints.push_back(hint_of(*ask));
  }
  if (explanation.packs && explanation.packs->amount_step && explanation.solution.values.empty()) {
    hints.push_back(without_line(*explanation.packs->amount_step));
    hints.push_back(hint_of(*explanation.packs->amount_step));
  } else if (!push_by_board(explanation.solution, solid, measure, hints) &&
             !push_by_formula(explanation.solution.steps, solid, measure, hints)) {
    push_by_faces(explanation.solution.steps, hints);
  }
  return hints;
}

}  // namespace fw::practice
