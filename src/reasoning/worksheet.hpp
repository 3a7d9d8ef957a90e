#pragma once

#include <map>
#include <set>
#include <string>
#include <vector>

#include "algebra/isolate.hpp"
#include "reasoning/arithmetic.hpp"
#include "reasoning/solution.hpp"

// The page that a worked solution is written on; private to the room.
namespace fw::reasoning {

/// Collects the steps of a solution: knows which number stands for which measure, where each number comes from, and
/// how an equation is set.
class Worksheet {
 public:
  explicit Worksheet(const solids::Solid& solid);

  [[nodiscard]] const solids::Solid& solid() const { return *solid_; }
  [[nodiscard]] algebra::Numerals& numerals() { return numerals_; }
  [[nodiscard]] std::vector<Step>& steps() { return steps_; }
  [[nodiscard]] const std::vector<Source>& sources() const { return sources_; }

  /// The number that stands for a measure from now on. Numbers of the lesson come with their source.
  /// Requires: the measure is given, or was set.
  [[nodiscard]] algebra::Symbol numeral_of(const algebra::Symbol& measure);
  void set_numeral(const algebra::Symbol& measure, const algebra::Symbol& numeral);
  /// A number that comes from what a source says.
  [[nodiscard]] algebra::Symbol sourced_numeral(const exact::Number& value, int dimension, Source source);
  /// As class_text() has it; in fractions alone where a label of the solid is one that does not end as a decimal.
  [[nodiscard]] std::string number_text(const exact::Number& value) const;
  /// The numeral is written so: "7 1/2" as the label has it.
  void set_text(const algebra::Symbol& numeral, std::string text) { texts_[numeral.name] = std::move(text); }

  /// A step of words alone.
  Step& say(StepKind kind, Message reason);
  /// A step with an equation. New numbers in it are said to come from this step.
  Step& write(StepKind kind, Message reason, algebra::Equation equation, Change change);
  /// The step that writes follow from.
  [[nodiscard]] std::size_t last_line() const { return last_line_; }

  /// "36 cm²", "6√3 cm", "4s": what stands in a line, in running text; a number alone as an amount.
  [[nodiscard]] words::Value value(const algebra::Expression& expression) const;
  [[nodiscard]] std::string text(const algebra::Expression& expression) const;
  [[nodiscard]] words::Amount amount(const exact::Number& value, int dimension) const;
  [[nodiscard]] words::Amount amount(const algebra::Symbol& numeral) const;
  [[nodiscard]] algebra::Notation notation(const algebra::Expression& expression) const;
  /// A letter, or a number with its source, and with its unit where that is wanted.
  [[nodiscard]] algebra::Notation symbol_notation(const algebra::Symbol& symbol, bool with_unit = true) const;
  /// A fraction with two numbers struck out and what remains of the upper one beside it.
  [[nodiscard]] algebra::Notation struck(const Canceled& cut) const;
  /// Which faces a sum's terms stand for, from now on: one entry a term of a sum, or one for the whole side.
  void color_terms(std::vector<std::optional<std::size_t>> groups) { groups_ = std::move(groups); }

  /// The faces and the lengths that an equation in letters speaks of.
  [[nodiscard]] std::vector<FaceId> faces_of(const algebra::Symbol& measure) const;
  [[nodiscard]] std::vector<solids::MarkId> marks_of(const std::vector<algebra::Symbol>& measures) const;
  /// For each term of the right side, the group of alike faces whose area it is.
  [[nodiscard]] std::vector<std::optional<std::size_t>> groups_of(const algebra::Expression& side) const;

  /// Ends the page. `board`: the same in short.
  [[nodiscard]] Solution finished(std::string asked, std::string title, Answer answer, Board board = {}) &&;

 private:
  [[nodiscard]] std::string unit_text(int dimension) const;
  [[nodiscard]] algebra::Notation side(const algebra::Expression& expression) const;
  [[nodiscard]] algebra::Expression with_unit(const algebra::Expression& left, const algebra::Expression& right);
  void note_new_numerals(const algebra::Equation& equation, std::size_t step);
  [[nodiscard]] Source source_of_given(const algebra::Symbol& measure) const;

  const solids::Solid* solid_;
  bool in_fractions_ = false;
  algebra::Numerals numerals_;
  std::vector<Step> steps_;
  std::vector<Source> sources_;
  std::map<std::string, algebra::Symbol> numeral_of_measure_;
  std::map<std::string, std::string> texts_;      // of numerals that are written as the lesson has them
  std::map<std::string, std::size_t> source_of_;  // of numerals
  std::vector<std::optional<std::size_t>> groups_;
  std::size_t last_line_ = 0;
};

/// A sum before a unit: "(216 + 48√3)"; other numbers as they are.
[[nodiscard]] std::string bracketed(const std::string& number);

}  // namespace fw::reasoning
