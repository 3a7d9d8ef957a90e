#include "reasoning/board/formula_board.hpp"

#include <algorithm>

#include "algebra/print.hpp"
#include "exact/print_number.hpp"
#include "reasoning/board/solving.hpp"
#include "reasoning/phrases.hpp"

namespace fw::reasoning {
namespace {

using algebra::Equation;
using algebra::Expression;
using algebra::Operation;
using algebra::Symbol;
using Line = BoardLine::Kind;

bool stands_alone(const Link& link) {
  return link.derivation == nullptr && link.substitutions.empty() && link.relation.left == Expression(link.unknown) &&
         algebra::occurrences(link.relation.right, link.unknown) == 0;
}

bool has(const Equation& equation, const Symbol& symbol) {
  return algebra::occurrences(equation.left, symbol) + algebra::occurrences(equation.right, symbol) > 0;
}

Expression with_numbers(Expression expression, Worksheet& sheet, const std::optional<Symbol>& but) {
  for (const Symbol& letter : algebra::symbols_of(expression)) {
    if (!sheet.numerals().holds(letter) && !(but && letter == *but)) {
      expression = algebra::replaced(expression, letter, sheet.numeral_of(letter));
    }
  }
  return expression;
}

// "8 · 8" and "4 · 8": what a class works out on the way, without a line of its own.
std::size_t factors_in(const Expression& e) {
  switch (e.operation()) {
    case Operation::Number:
    case Operation::Symbol:
      return 1;
    case Operation::Power:
      return factors_in(e.operands().front()) * static_cast<std::size_t>(e.exponent());
    case Operation::Product: {
      std::size_t count = 0;
      for (const Expression& operand : e.operands()) {
        count += factors_in(operand);
      }
      return count;
    }
    default:
      return 99;
  }
}

// A square written out: 8 · 8.
Expression written_out(const Expression& e) {
  return e.operation() == Operation::Power && e.exponent() == 2 ? e.operands().front() * e.operands().front() : e;
}

// A letter that is a whole side, or a whole term of a sum.
bool stands_as_term(const Expression& side, const Symbol& letter) {
  if (side.operation() == Operation::Sum) {
    return std::any_of(side.operands().begin(), side.operands().end(),
                       [&](const Expression& term) { return term == Expression(letter); });
  }
  return side == Expression(letter);
}

// "The base and the 4 triangles make up the surface."
Message surface_sentence(const solids::Solid& solid) {
  std::size_t lateral = 0;
  std::string shape;
  bool one_shape = true;
  for (const solids::Face& face : solid.faces()) {
    if (face.role == solids::FaceRole::Base) {
      continue;
    }
    ++lateral;
    one_shape = one_shape && (shape.empty() || shape == face.shape);
    shape = face.shape;
  }
  if (!solid.body().is_flat_faced()) {
    return solid.traits().has_second_base ? message("The two bases and the curved side make up the surface.")
                                          : message("The base and the curved side make up the surface.");
  }
  const Noun noun{one_shape ? shape : "lateral face"};
  return solid.traits().has_second_base ? message("The two bases and the {count} {faces#count} make up the surface.",
                                                  {{"count", lateral}, {"faces", noun}})
                                        : message("The base and the {count} {faces#count} make up the surface.",
                                                  {{"count", lateral}, {"faces", noun}});
}

class FormulaBoard {
 public:
  FormulaBoard(BoardPage& page, const std::vector<WrittenLink>& links, Symbol asked)
      : page_(&page), links_(&links), asked_(std::move(asked)), main_(links.back().link) {}

  void write() {
    const bool has_no_letters = algebra::symbols_of(main_->relation).size() == 1;
    if (main_->derivation != nullptr || has_no_letters) {
      for (const WrittenLink& link : *links_) {
        write_board_part(*page_, link);
      }
      return;
    }
    choose_formula();
    const std::size_t formula_row = write_formula();
    write_parts();
    const std::size_t rows = page_->size();
    const Equation numbers = write_numbers();
    const auto solved = write_solving(*page_, rows, numbers, asked_, page_->sheet().numeral_of(asked_));
    if (solved) {
      cover_solved(formula_row, rows, *solved);
    } else {
      cover_steps(formula_row, rows);
    }
  }

 private:
  // The formula as it is taught: with ½Pℓ or Ph for the lateral area, where nobody asks for that.
  void choose_formula() {
    const Symbol& lateral = solids::symbols::lateral_area();
    formula_ = in_notation(main_->relation);
    for (const Substitution& one : in_turn(*main_)) {
      if (one.symbol == lateral) {
        formula_ = algebra::replaced(formula_, lateral, one.value);
        reason_ = surface_sentence(page_->sheet().solid());
      } else {
        others_.push_back(one);
      }
    }
    const auto leads_to_lateral = [&](const WrittenLink& written) {
      return written.link != main_ && written.link->unknown == lateral && written.link->derivation == nullptr &&
             written.link->substitutions.empty();
    };
    const auto found = std::find_if(links_->begin(), links_->end(), leads_to_lateral);
    if (found == links_->end() || !main_->substitutions.empty() || asked_ == lateral) {
      return;
    }
    if (stands_alone(*found->link) && has(main_->relation, lateral)) {
      folded_ = &*found;
      formula_ = algebra::replaced(main_->relation, lateral, found->link->relation.right);
    } else if (!stands_alone(*found->link) && main_->relation.left == Expression(lateral)) {
      const Equation folded = algebra::replaced(found->link->relation, lateral, main_->relation.right);
      if (is_solved_on_one_side(folded)) {
        folded_ = &*found;
        formula_ = folded;
      }
    }
    if (folded_ != nullptr) {
      reason_ = surface_sentence(page_->sheet().solid());
    }
  }

  // V = Bh for a box, where the class writes it so.
  [[nodiscard]] Equation in_notation(const Equation& relation) {
    const auto& edges = page_->sheet().solid().traits().box_edges;
    const bool wants_base = page_->style().box_volume == ClassNotation::BoxVolume::BaseTimesHeight;
    if (!edges || !wants_base || !(relation.left == Expression(solids::symbols::volume())) || asked_ == (*edges)[0] ||
        asked_ == (*edges)[1]) {
      return relation;
    }
    reason_ = message("The volume of a box is the base area times the height.");
    base_of_box_ = Expression((*edges)[0]) * (*edges)[1];
    return {relation.left, Expression(solids::symbols::base_area()) * (*edges)[2]};
  }

  [[nodiscard]] bool is_solved_on_one_side(const Equation& equation) const {
    return algebra::occurrences(equation.left, asked_) + algebra::occurrences(equation.right, asked_) == 1 &&
           !algebra::stands_under_root(equation.right, asked_);
  }

  std::size_t write_formula() {
    Worksheet& sheet = page_->sheet();
    page_->color_terms(sheet.groups_of(formula_.right));
    const Message reason = reason_.empty() ? message("{reason:up}.", {{"reason", main_->reason}}) : reason_;
    const std::size_t row = page_->write(Line::Formula, reason, {{formula_.left, formula_.right}});
    spelled_ = formula_;
    std::vector<Message> values;
    for (const Substitution& one : others_) {
      const Equation next = algebra::replaced(spelled_, one.symbol, one.value);
      if (has(spelled_, one.symbol)) {
        values.push_back(
            message("{letter} = {value}", {{"letter", one.symbol.letter}, {"value", page_->text(one.value)}}));
      }
      spelled_ = next;
    }
    letters_row_ = row;
    if (!values.empty()) {
      letters_row_ = page_->write(Line::Substitute, message("Substitute {values:and}.", {{"values", values}}),
                                  {{spelled_.left, spelled_.right}});
    }
    return row;
  }

  [[nodiscard]] bool is_on_the_way(const Link& link) const {
    const bool serves_a_part = std::any_of(links_->begin(), links_->end(), [&](const WrittenLink& other) {
      return other.link != main_ && &other != folded_ && other.link != &link &&
             has(composed(*other.link), link.unknown);
    });
    return stands_alone(link) && has(spelled_, link.unknown) && factors_in(link.relation.right) == 2 && !serves_a_part;
  }

  void write_parts() {
    for (const WrittenLink& written : *links_) {
      if (written.link == main_ || &written == folded_) {
        continue;
      }
      if (is_on_the_way(*written.link)) {
        on_the_way_.push_back(&written);
      } else {
        write_board_part(*page_, written);
      }
    }
  }

  Equation write_numbers() {
    Worksheet& sheet = page_->sheet();
    Equation equation = spelled_;
    std::vector<Message> values;
    for (const WrittenLink* written : on_the_way_) {
      const Link& link = *written->link;
      const Expression work = with_numbers(link.relation.right, sheet, std::nullopt);
      values.push_back(
          message("{letter} = {work}", {{"letter", link.unknown.letter}, {"work", page_->text(written_out(work))}}));
      const bool is_term = stands_as_term(equation.left, link.unknown) || stands_as_term(equation.right, link.unknown);
      equation = algebra::replaced(equation, link.unknown, is_term ? work : Expression(sheet.numeral_of(link.unknown)));
    }
    if (base_of_box_) {
      const Expression work = with_numbers(*base_of_box_, sheet, std::nullopt);
      const Symbol& base = solids::symbols::base_area();
      values.push_back(message("{letter} = {work}", {{"letter", base.letter}, {"work", page_->text(work)}}));
      const exact::Number area = *algebra::evaluate(work, sheet.numerals().values());
      equation = algebra::replaced(equation, base, page_->number(area, base.dimension));
    }
    equation = {with_numbers(equation.left, sheet, asked_), with_numbers(equation.right, sheet, asked_)};
    const std::size_t row =
        page_->write(Line::Substitute,
                     values.empty() ? message("Substitute.") : message("Substitute. {values:,}.", {{"values", values}}),
                     {{equation.left, equation.right}});
    for (const WrittenLink* written : on_the_way_) {
      cover_all(row, *written);
    }
    return equation;
  }

  void cover_all(std::size_t row, const WrittenLink& written) {
    for (std::size_t step = written.first; step < written.end; ++step) {
      page_->cover(row, step);
    }
  }

  [[nodiscard]] const Step& step(std::size_t index) const { return page_->sheet().steps()[index]; }

  // Formula, letters and numbers; returns the first step after them.
  std::size_t cover_start(const WrittenLink& written, std::size_t formula_row, std::size_t numbers_row) {
    std::size_t index = written.first;
    for (; index < written.end; ++index) {
      const Step& one = step(index);
      if (one.kind == StepKind::Relation) {
        page_->cover(formula_row, index);
      } else if (one.kind == StepKind::PutIn) {
        const bool is_lateral = one.change.symbol && *one.change.symbol == solids::symbols::lateral_area();
        page_->cover(!one.change.symbol ? numbers_row : is_lateral ? formula_row : letters_row_, index);
      } else {
        break;
      }
    }
    return index;
  }

  void cover_solved(std::size_t formula_row, std::size_t numbers_row, const SolvedLines& lines) {
    for (const WrittenLink* written : {folded_, &links_->back()}) {
      if (written == nullptr) {
        continue;
      }
      std::size_t row = lines.simplify;
      for (std::size_t i = cover_start(*written, formula_row, numbers_row); i < written->end; ++i) {
        const bool is_end = i + 1 == written->end && written->link == main_;
        row = is_end ? *lines.last : lines.line_of(step(i), row);
        page_->cover(row, i);
      }
    }
  }

  // Where the equation is solved in a way of its own: what is done to both sides, with the arithmetic that follows it.
  void cover_steps(std::size_t formula_row, std::size_t numbers_row) {
    const WrittenLink& written = links_->back();
    std::size_t i = cover_start(written, formula_row, numbers_row);
    while (i < written.end) {
      const std::size_t begin = i;
      const auto follows = [&](std::size_t next) {
        return next < written.end && step(next).kind == StepKind::Work && step(next).change.kind != Change::Kind::Start;
      };
      ++i;
      while (follows(i)) {
        ++i;
      }
      const Step& first = step(begin);
      const Equation& equation = *step(i - 1).equation;
      const bool only_works = first.kind == StepKind::Work || first.kind == StepKind::Cancel;
      const std::size_t row =
          page_->write(only_works ? Line::Simplify : Line::Solve, only_works ? message("Simplify.") : first.reason,
                       {{equation.left, equation.right}});
      for (std::size_t covered = begin; covered < i; ++covered) {
        page_->cover(row, covered);
      }
    }
  }

  BoardPage* page_;
  const std::vector<WrittenLink>* links_;
  Symbol asked_;
  const Link* main_;
  const WrittenLink* folded_ = nullptr;  // that leads to the lateral area
  Equation formula_{0, 0};
  Equation spelled_{0, 0};  // with formulas in place of letters that nobody knows
  std::optional<Expression> base_of_box_;
  std::vector<Substitution> others_;  // that are made after the formula
  std::vector<const WrittenLink*> on_the_way_;
  Message reason_;
  std::size_t letters_row_ = 0;
};

// "ℓ² = 289" before the root of it is taken.
std::optional<Equation> before_root(Worksheet& sheet, const WrittenLink& part) {
  for (std::size_t i = part.first; i < part.end; ++i) {
    if (sheet.steps()[i].kind == StepKind::TakeRoot && sheet.steps()[i].before) {
      return sheet.steps()[*sheet.steps()[i].before].equation;
    }
  }
  return std::nullopt;
}

}  // namespace

void write_board_part(BoardPage& page, const WrittenLink& part) {
  Worksheet& sheet = page.sheet();
  const Link& link = *part.link;
  const Expression value = sheet.numeral_of(link.unknown);
  const Message reason = message("{reason:up}.", {{"reason", reason_on(link, sheet.solid().values())}});
  std::vector<EqualParts> equations;
  if (link.derivation != nullptr) {
    equations = {{link.unknown, value}};
  } else {
    const Equation formula = composed(link);
    const Equation numbers = {with_numbers(formula.left, sheet, link.unknown),
                              with_numbers(formula.right, sheet, link.unknown)};
    const std::optional<Equation> squared = before_root(sheet, part);
    if (numbers.left == Expression(link.unknown)) {
      equations = {{link.unknown, numbers.right}};
      if (!numbers.right.operands().empty()) {
        equations.front().push_back(value);
      }
    } else if (squared && squared->left == numbers.left) {
      equations = {{squared->left, numbers.right, squared->right}, {link.unknown, value}};
    } else if (squared) {
      equations = {{numbers.left, numbers.right}, {squared->left, squared->right}, {link.unknown, value}};
    } else {
      equations = {{numbers.left, numbers.right}, {link.unknown, value}};
    }
  }
  const std::size_t row = page.write(Line::Part, reason, equations);
  for (std::size_t step = part.first; step < part.end; ++step) {
    page.cover(row, step);
  }
}

void write_board_head(BoardPage& page, const Symbol& asked, const std::vector<Symbol>& used, std::size_t end) {
  Worksheet& sheet = page.sheet();
  const solids::Solid& solid = sheet.solid();
  std::vector<Message> given;
  for (const Symbol& measure : used) {
    const units::WrittenQuantity* written = solid.written(measure);
    const words::Value number = written == nullptr || !written->has_unit
                                    ? words::Value(sheet.amount(solid.values().at(measure.name), measure.dimension))
                                : written->number.text == written->text
                                    ? words::Value(written->text)  // "1 ft 4 in"
                                    : words::Value(words::Amount{written->number.text, written->unit.text()});
    given.push_back(message("{letter} = {number}", {{"letter", measure.letter}, {"number", number}}));
  }
  const Noun title{title_of(solid, asked)};
  const Noun name{solid.name()};
  const std::size_t ask = page.say(
      Line::Ask, given.empty()
                     ? message("Find the {measure}, {letter}, of {solid:a}.",
                               {{"measure", title}, {"letter", asked.letter}, {"solid", name}})
                     : message("Find the {measure}, {letter}, of {solid:a} with {given:and}.",
                               {{"measure", title}, {"letter", asked.letter}, {"solid", name}, {"given", given}}));
  std::vector<std::size_t> conversions;
  for (std::size_t step = 0; step < end; ++step) {
    if (sheet.steps()[step].line) {
      conversions.push_back(step);
    } else {
      page.cover(ask, step);
    }
  }
  if (conversions.empty()) {
    return;
  }
  const std::size_t row =
      page.say(Line::Convert, message("Write every length in {unit:s}.", {{"unit", Noun{solid.unit().name()}}}));
  for (const std::size_t step : conversions) {
    page.line(row).equations.push_back(*sheet.steps()[step].line);
    page.cover(row, step);
  }
}

void write_board_end(BoardPage& page, std::size_t begin) {
  const std::vector<Step>& steps = page.sheet().steps();
  std::vector<Message> reasons;
  std::vector<std::size_t> covered;
  std::optional<algebra::NotationLine> rounded;
  for (std::size_t i = begin; i < steps.size(); ++i) {
    const Step& step = steps[i];
    if (step.kind == StepKind::Convert) {
      const std::size_t row = page.say(Line::Convert, step.reason);
      page.line(row).equations.push_back(*step.line);
      page.cover(row, i);
      continue;
    }
    if (step.kind == StepKind::Round || step.kind == StepKind::Answer) {
      reasons.push_back(step.reason);
    }
    rounded = step.kind == StepKind::Round ? step.line : rounded;
    covered.push_back(i);
  }
  const std::size_t row = page.say(Line::Answer, one_after_another(reasons));
  if (rounded) {
    page.line(row).equations.push_back(algebra::in_class_notation(*rounded, page.style()));
  }
  for (const std::size_t step : covered) {
    page.cover(row, step);
  }
}

void write_board_formula(BoardPage& page, const std::vector<WrittenLink>& links, const Symbol& asked) {
  FormulaBoard(page, links, asked).write();
}

}  // namespace fw::reasoning
