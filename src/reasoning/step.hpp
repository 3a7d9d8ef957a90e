#pragma once

#include <optional>
#include <string>
#include <vector>

#include "algebra/notation.hpp"
#include "exact/column_work.hpp"
#include "solids/solid.hpp"
#include "words/message.hpp"

namespace fw::reasoning {

using geometry::FaceId;
using words::Message;
using words::message;
using words::Noun;

/// Where a number of a worked solution comes from; "where does this number come from?" is answered with it.
struct Source {
  enum class Kind { Label, EqualEdge, Known, EarlierStep };
  Kind kind = Kind::Label;
  words::Message sentence;             ///< "the label 6 cm at the base edge", "worked out in step 4"
  std::optional<solids::MarkId> mark;  ///< of a label on the solid
  std::optional<std::size_t> step;     ///< of an earlier step
  std::vector<FaceId> faces;           ///< the faces that it belongs to
};

/// "worked out in step 4"; `step` counts from 0.
[[nodiscard]] inline Message worked_out_in(std::size_t step) {
  return message("found in step {step}", {{"step", step + 1}});
}

enum class StepKind {
  Ask,          ///< what is asked: a cover, a filling or an edge, and its unit
  Name,         ///< the solid and its number of faces
  Convert,      ///< unlike units, or to the unit asked
  Relation,     ///< the formula in letters
  PutIn,        ///< the numbers, or another formula, in place of letters
  Cancel,       ///< common factors
  Work,         ///< arithmetic on one side
  BothSides,    ///< the same done to both sides
  TakeRoot,     ///< square or cube root
  ChooseValue,  ///< of two roots, the one that can be a length
  Numeric,      ///< found by trying closer and closer, since school has no formula
  Round,        ///< once, at the end
  Answer,       ///< with its unit
  Check,        ///< the answer put back
  Count,        ///< of a word problem: packs, cost, coats, leftover
};

/// A number with its unit that a step comes out with: what a blank asks for.
struct Outcome {
  exact::Number amount;
  std::optional<units::Unit> unit;  ///< none: a plain count
};

/// What a step did to the equation it comes from, so that it can be checked: at any values of the letters, each
/// side after is the same side before, with the operand added, taken off and so on.
struct Change {
  enum class Kind {
    Start,    ///< a new equation
    PutIn,    ///< `operand` for `symbol`, or numbers for all letters but the unknown
    Rewrite,  ///< each side worked out for itself
    Swap,     ///< the same, and the sides changed places
    Add,
    Subtract,
    Multiply,
    Divide,
    TakeRoot,
    Square,
    Search,  ///< a number found by trying
  };
  Kind kind = Kind::Start;
  std::optional<algebra::Expression> operand = std::nullopt;
  int degree = 2;                                        ///< of a root
  std::optional<algebra::Symbol> symbol = std::nullopt;  ///< that was replaced
};

struct Step {
  StepKind kind = StepKind::Work;
  words::Message reason;                      ///< a sentence in a student's words
  std::optional<algebra::NotationLine> line;  ///< the equation as it stands after the step; none: words only
  std::optional<algebra::Equation> equation;  ///< the same in symbols, numbers as symbols bound in `Solution::values`
  Change change;
  std::optional<std::size_t> before;      ///< the step whose equation this one comes from
  std::optional<Outcome> outcome;         ///< none: the step has no number to ask for
  std::optional<units::Unit> unit;        ///< that the answer is counted in, where the step says no more than that
  std::vector<FaceId> faces;              ///< that the step speaks of
  std::vector<solids::MarkId> marks;      ///< lengths that it speaks of
  std::vector<exact::ColumnWork> asides;  ///< arithmetic that is more than the head can do, in order
  /// Where it stands in the short way: on a line of its own, or on that of the step before, whose reason it may give.
  enum class OnBoard { OwnLine, Joins, JoinsAndTells };
  OnBoard on_board = OnBoard::OwnLine;
};

}  // namespace fw::reasoning
