#include "reasoning/worksheet.hpp"

#include <algorithm>
#include <cmath>

#include "algebra/print.hpp"
#include "exact/print_number.hpp"

namespace fw::reasoning {
namespace {

using algebra::Equation;
using algebra::Expression;
using algebra::Notation;
using algebra::Operation;
using algebra::Symbol;
using exact::Number;

bool near(double a, double b) { return std::abs(a - b) <= 1e-9 * (std::abs(a) + std::abs(b)); }

}  // namespace

std::string bracketed(const std::string& number) {
  const bool is_sum = number.find(" + ") != std::string::npos || number.find(" − ") != std::string::npos;
  return is_sum && number.back() != ')' && number.find('/') == std::string::npos ? "(" + number + ")" : number;
}

Worksheet::Worksheet(const solids::Solid& solid) : solid_(&solid) {
  constexpr int longest_decimal = 6;
  const std::vector<solids::Measure>& measures = solid.statement().measures;
  in_fractions_ = std::any_of(measures.begin(), measures.end(), [&](const solids::Measure& measure) {
    const auto value = solid.values().find(measure.symbol.name);
    return solid.written(measure.symbol) != nullptr && value != solid.values().end() && value->second.is_rational() &&
           !exact::decimals_needed(value->second, longest_decimal);
  });
}

// ---- numbers ----

std::string Worksheet::number_text(const Number& value) const {
  return in_fractions_ ? exact::fraction_text(value) : exact::class_text(value);
}

Source Worksheet::source_of_given(const Symbol& measure) const {
  const units::WrittenQuantity* written = solid_->written(measure);
  const words::Value number = written != nullptr
                                  ? words::Value(written->text)
                                  : words::Value(amount(solid_->values().at(measure.name), measure.dimension));
  Source source;
  source.faces = faces_of(measure);
  source.sentence = message("{number} is given", {{"number", number}});
  if (measure.dimension != 1) {
    source.kind = Source::Kind::Known;
    return source;
  }
  for (std::size_t i = 0; i < solid_->marks().size(); ++i) {
    const solids::MarkId id = solids::MarkId::at(i);
    const solids::Mark& mark = solid_->marks()[id];
    if (mark.symbol == measure) {
      source.mark = id;
      source.sentence = message("the label {number}: the {mark}", {{"number", number}, {"mark", Noun{mark.title}}});
      return source;
    }
  }
  return source;
}

Symbol Worksheet::numeral_of(const Symbol& measure) {
  const auto found = numeral_of_measure_.find(measure.name);
  if (found != numeral_of_measure_.end()) {
    return found->second;
  }
  Symbol numeral = sourced_numeral(solid_->values().at(measure.name), measure.dimension, source_of_given(measure));
  const units::WrittenQuantity* written = solid_->written(measure);
  // "3 ft 6 in" is no one number to work with.
  const bool is_one_number = written != nullptr && (!written->has_unit || written->number.text != written->text);
  if (is_one_number && (!written->has_unit || written->unit == solid_->unit().to_the(measure.dimension))) {
    // A decimal among fractions is written as one too.
    if (!in_fractions_ || written->number.is_fraction) {
      set_text(numeral, written->number.text);
    }
  }
  set_numeral(measure, numeral);
  return numeral;
}

void Worksheet::set_numeral(const Symbol& measure, const Symbol& numeral) {
  numeral_of_measure_.insert_or_assign(measure.name, numeral);
}

Symbol Worksheet::sourced_numeral(const Number& value, int dimension, Source source) {
  Symbol numeral = numerals_.add(value, dimension);
  source_of_[numeral.name] = sources_.size();
  sources_.push_back(std::move(source));
  return numeral;
}

void Worksheet::note_new_numerals(const Equation& equation, std::size_t step) {
  for (const Symbol& symbol : algebra::symbols_of(equation.left - equation.right)) {
    if (!numerals_.holds(symbol) || source_of_.count(symbol.name) != 0) {
      continue;
    }
    Source source;
    source.kind = Source::Kind::EarlierStep;
    source.step = step;
    source.sentence = worked_out_in(step);
    source.faces = steps_[step].faces;
    source_of_[symbol.name] = sources_.size();
    sources_.push_back(std::move(source));
  }
}

// ---- text ----

words::Amount Worksheet::amount(const Number& value, int dimension) const {
  const std::string number = number_text(value);
  return dimension == 0 ? words::Amount{number, ""} : words::Amount{bracketed(number), unit_text(dimension)};
}

words::Amount Worksheet::amount(const Symbol& numeral) const {
  const Notation shown = symbol_notation(numeral);
  return shown.parts.empty() ? words::Amount{shown.text, ""}
                             : words::Amount{shown.parts.front().text, shown.parts.back().text};
}

// A product of more than three lengths turns up on the way, as in Heron's formula.
std::string Worksheet::unit_text(int dimension) const {
  constexpr int greatest = 3;
  if (dimension <= greatest) {
    return solid_->unit().to_the(dimension).text();
  }
  const int first = std::min(dimension / 2, greatest);
  return unit_text(first) + " · " + unit_text(dimension - first);
}

words::Value Worksheet::value(const Expression& expression) const {
  const bool is_numeral = expression.operation() == Operation::Symbol && numerals_.holds(expression.symbol());
  return is_numeral ? words::Value(amount(expression.symbol())) : words::Value(text(expression));
}

std::string Worksheet::text(const Expression& expression) const { return algebra::plain_text(notation(expression)); }

Notation Worksheet::symbol_notation(const Symbol& symbol, bool with_unit) const {
  if (!numerals_.holds(symbol)) {
    return algebra::leaf(Notation::Kind::Letter, symbol.letter);
  }
  const auto written = texts_.find(symbol.name);
  Notation number =
      algebra::leaf(Notation::Kind::Number,
                    written != texts_.end() ? written->second : number_text(numerals_.values().at(symbol.name)));
  const auto source = source_of_.find(symbol.name);
  if (source != source_of_.end()) {
    number.source = source->second;
  }
  if (symbol.dimension < 1 || !with_unit) {
    return number;
  }
  number.text = bracketed(number.text);
  return algebra::row({number, algebra::leaf(Notation::Kind::Unit, unit_text(symbol.dimension))});
}

Notation Worksheet::notation(const Expression& expression) const {
  return algebra::notation(expression, [this](const Symbol& symbol) { return symbol_notation(symbol); });
}

Notation Worksheet::struck(const Canceled& cut) const {
  return algebra::notation(cut.before, [&](const Symbol& symbol) {
    Notation number = symbol_notation(symbol);
    if (!(symbol == cut.above) && !(symbol == cut.below)) {
      return number;
    }
    Notation old = algebra::leaf(Notation::Kind::Number, number_text(numerals_.values().at(symbol.name)));
    old.canceled = true;
    if (symbol == cut.below || cut.leaves_one) {
      return old;
    }
    Notation left = symbol_notation(cut.left);
    left.changed = true;
    return algebra::row({old, left});
  });
}

Notation Worksheet::side(const Expression& expression) const {
  const bool is_sum = expression.operation() == Operation::Sum;
  const std::size_t terms = is_sum ? expression.operands().size() : 1;
  if (groups_.size() != terms) {
    return notation(expression);
  }
  if (!is_sum) {
    Notation whole = notation(expression);
    whole.group = groups_.front();
    return whole;
  }
  std::vector<Notation> parts;
  for (std::size_t i = 0; i < terms; ++i) {
    if (i > 0) {
      parts.push_back(algebra::leaf(Notation::Kind::Sign, "+"));
    }
    parts.push_back(notation(expression.operands()[i]));
    parts.back().group = groups_[i];
  }
  return algebra::row(std::move(parts));
}

// A measure that is stated as a plain number, as a polygon's area from its corners, is so many of its unit.
Expression Worksheet::with_unit(const Expression& left, const Expression& right) {
  const int dimension = algebra::dimension_of(left);
  const std::optional<Number> value = algebra::evaluate(right, numerals_.values());
  const bool lacks_unit = dimension > 0 && value && algebra::dimension_of(right) == 0;
  return lacks_unit ? Expression(numerals_.add(*value, dimension)) : right;
}

// ---- steps ----

Step& Worksheet::say(StepKind kind, Message reason) {
  steps_.emplace_back();
  steps_.back().kind = kind;
  steps_.back().reason = std::move(reason);
  return steps_.back();
}

Step& Worksheet::write(StepKind kind, Message reason, Equation equation, Change change) {
  const std::size_t index = steps_.size();
  equation.right = with_unit(equation.left, equation.right);
  Step& step = say(kind, std::move(reason));
  if (change.kind != Change::Kind::Start) {
    step.before = last_line_;
    step.faces = steps_[last_line_].faces;
    step.marks = steps_[last_line_].marks;
  }
  step.change = std::move(change);
  note_new_numerals(equation, index);
  const bool left_is_letter =
      equation.left.operation() == Operation::Symbol && !numerals_.holds(equation.left.symbol());
  step.line =
      algebra::NotationLine{left_is_letter ? notation(equation.left) : side(equation.left), "=", side(equation.right)};
  const std::optional<Number> value = algebra::evaluate(equation.right, numerals_.values());
  if (equation.right.operands().empty() && value) {
    const int dimension = algebra::dimension_of(equation.right);
    step.outcome = Outcome{*value, std::nullopt};
    if (dimension >= 1 && dimension <= 3) {
      step.outcome->unit = solid_->unit().to_the(dimension);
    }
  }
  step.equation = std::move(equation);
  last_line_ = index;
  return step;
}

Solution Worksheet::finished(std::string asked, std::string title, Answer answer, Board board) && {
  return {std::move(asked),   std::move(title),  std::move(steps_), std::move(sources_),
          numerals_.values(), std::move(answer), std::move(board)};
}

// ---- what is spoken of ----

std::vector<FaceId> Worksheet::faces_of(const Symbol& measure) const {
  namespace whole = solids::symbols;
  std::vector<FaceId> faces;
  for (const solids::Face& face : solid_->faces()) {
    const bool all = measure == whole::surface_area() || measure == whole::volume();
    const bool of_base = measure == whole::base_area() || measure == whole::perimeter();
    const bool by_role = all || (of_base && face.role == solids::FaceRole::Base) ||
                         (measure == whole::lateral_area() && face.role == solids::FaceRole::Lateral);
    const bool by_length = std::any_of(face.lengths.begin(), face.lengths.end(),
                                       [&](const solids::FaceLength& length) { return length.symbol == measure; });
    if (by_role || by_length) {
      faces.push_back(face.id);
    }
  }
  return faces;
}

std::vector<solids::MarkId> Worksheet::marks_of(const std::vector<Symbol>& measures) const {
  std::vector<solids::MarkId> marks;
  for (std::size_t i = 0; i < solid_->marks().size(); ++i) {
    const solids::MarkId id = solids::MarkId::at(i);
    if (std::find(measures.begin(), measures.end(), solid_->marks()[id].symbol) != measures.end()) {
      marks.push_back(id);
    }
  }
  return marks;
}

std::vector<std::optional<std::size_t>> Worksheet::groups_of(const Expression& side_in_letters) const {
  struct Group {
    double area = 0;
    double one = 0;
    std::set<std::string> letters;
  };
  std::vector<Group> groups(solid_->group_count());
  for (const solids::Face& face : solid_->faces()) {
    Group& group = groups[face.group.index()];
    group.one = face.area.amount().to_double();
    group.area += group.one;
    for (const Symbol& letter : algebra::symbols_of(face.work)) {
      group.letters.insert(letter.name);
    }
    if (face.role == solids::FaceRole::Base) {
      group.letters.insert(solids::symbols::base_area().name);
    } else if (face.role == solids::FaceRole::Lateral) {
      group.letters.insert({solids::symbols::lateral_area().name, solids::symbols::perimeter().name});
    }
  }
  const bool is_sum = side_in_letters.operation() == Operation::Sum;
  const std::vector<Expression> terms = is_sum ? side_in_letters.operands() : std::vector<Expression>{side_in_letters};
  std::vector<std::optional<std::size_t>> found;
  for (const Expression& term : terms) {
    found.emplace_back();
    const std::optional<Number> value = algebra::evaluate(term, solid_->values());
    const std::vector<Symbol> letters = algebra::symbols_of(term);
    if (!value || algebra::dimension_of(term) != 2) {
      continue;
    }
    for (std::size_t g = 0; g < groups.size() && !found.back(); ++g) {
      const bool fits = near(value->to_double(), groups[g].area) || near(value->to_double(), groups[g].one);
      const bool speaks_of = std::all_of(letters.begin(), letters.end(), [&](const Symbol& letter) {
        return groups[g].letters.count(letter.name) != 0;
      });
      if (fits && speaks_of) {
        found.back() = g;
      }
    }
  }
  return found;
}

}  // namespace fw::reasoning
