#include "reasoning/blank.hpp"

#include <algorithm>
#include <cmath>
#include <string_view>

#include "base/utf8.hpp"
#include "exact/print_number.hpp"
#include "reasoning/phrases.hpp"
#include "reasoning/typed_side.hpp"

namespace fw::reasoning {
namespace {

using algebra::Notation;
using algebra::Symbol;
using exact::Number;

constexpr const char* rule = "____";       // in running text
constexpr std::size_t longest_blank = 12;  // in letters; what it hides may be longer

BlankCheck right() { return {BlankVerdict::Right, message("Right.")}; }
BlankCheck wrong() { return {BlankVerdict::Wrong, message("Not yet. Look at the line above it and try again.")}; }

// ---- what is hidden ----

// Puts a blank in the place of what a side comes out with: all of it, or what follows its last sign of equality.
// Returns what the blank hides.
std::string hide_result(Notation& side) {
  const auto is_equal = [](const Notation& part) {
    return part.kind == Notation::Kind::Sign && (part.text == "=" || part.text == "≈");
  };
  std::size_t from = 0;
  for (std::size_t i = 0; side.kind == Notation::Kind::Row && i < side.parts.size(); ++i) {
    from = is_equal(side.parts[i]) ? i + 1 : from;
  }
  const Notation result =
      from == 0 ? side : algebra::row({side.parts.begin() + static_cast<std::ptrdiff_t>(from), side.parts.end()});
  std::string hidden = algebra::plain_text(result);
  Notation blank = algebra::leaf(Notation::Kind::Blank, std::string(std::min(hidden.size(), longest_blank), '0'));
  if (from == 0) {
    side = std::move(blank);
  } else {
    side.parts.resize(from);
    side.parts.push_back(std::move(blank));
  }
  return hidden;
}

// What a side is said to be, from one sign of equality to the next: "8 · 3", "24 cm²" of "8 · 3 = 24 cm²".
std::vector<std::string> results_in(const std::string& side) {
  std::vector<std::string> results;
  for (std::size_t from = 0; from < side.size();) {
    std::size_t end = side.size();
    std::size_t next = side.size();
    for (const std::string sign : {" = ", " ≈ "}) {
      if (const std::size_t at = side.find(sign, from); at < end) {
        end = at;
        next = at + sign.size();
      }
    }
    results.push_back(side.substr(from, end - from));
    from = next;
  }
  return results;
}

// The whole numbers on both sides of a decimal, "2" and "3" for "2.33…": where a class counts what fits, one of them is
// the count. Nothing for a whole number or for text that is not a number.
std::vector<std::string> whole_numbers_by(const std::string& text) {
  const std::size_t point = text.find('.');
  const bool is_decimal = point != std::string::npos && point > 0 && point < 9 &&
                          std::all_of(text.begin(), text.begin() + static_cast<std::ptrdiff_t>(point), is_ascii_digit);
  if (!is_decimal) {
    return {};
  }
  const std::string below = text.substr(0, point);
  return {below, std::to_string(std::stol(below) + 1)};
}

// ---- a number ----

// A decimal stands for the value when it is the value rounded to its places.
bool is_rounding_of(const exact::Written& typed, const Number& value) {
  constexpr int enough_places = 2;
  return !typed.is_fraction && typed.places >= enough_places && exact::rounded(value, typed.places) == typed.value;
}

// A wrong number, and what it has to do with the right one where that is seen at a glance.
BlankCheck wrong_number(const Number& typed, const Number& value) {
  const double right_value = value.to_double();
  const double ratio = typed.to_double() / right_value;
  // A number that goes on was typed rounded.
  const double tolerance = exact::decimals_needed(value, 4) ? 1e-9 : 1e-3;
  const auto is_times = [&](double factor) { return std::abs(ratio / factor - 1) <= tolerance; };
  const auto told = [](const Message& hint) { return BlankCheck{BlankVerdict::Wrong, hint}; };
  if (is_times(-1)) {
    return told(message("Not yet. Can it be less than zero?"));
  }
  for (const double tens : {10.0, 100.0, 1000.0, 10000.0}) {
    if (is_times(tens) || is_times(1 / tens)) {
      return told(message("The digits are right. Estimate: about how big should it be?"));
    }
  }
  if (is_times(2)) {
    return told(message("Not yet. That's twice as much. What still has to be halved?"));
  }
  if (is_times(0.5)) {
    return told(message("Not yet. That's half as much. What was halved that shouldn't be?"));
  }
  if (is_times(3)) {
    return told(message("Not yet. That's three times as much. What still has to be divided by 3?"));
  }
  if (is_times(right_value)) {
    return told(message("Not yet. That's its square. Now take the square root."));
  }
  constexpr double close = 0.02;
  return std::abs(ratio - 1) <= close ? told(message("You're close. Go over the arithmetic once more.")) : wrong();
}

BlankCheck check_number(const Outcome& outcome, const std::string& typed) {
  const auto read = units::parse_quantity(typed);
  if (!read) {
    return {BlankVerdict::Unreadable, Message(read.error().message)};
  }
  const Number& value = outcome.amount;
  const bool fits = read->number.value == value || is_rounding_of(read->number, value);
  if (!outcome.unit) {
    return fits && !read->has_unit ? right() : wrong();
  }
  if (!read->has_unit) {
    const Message asks = message("The number is right. Is it a length, an area or a volume? Write the unit.");
    return fits ? BlankCheck{BlankVerdict::RightNumberNoUnit, asks} : wrong_number(read->number.value, value);
  }
  const bool converts = read->unit.converts_to(*outcome.unit);
  const bool is_other_unit = !(read->unit == *outcome.unit);
  if (is_other_unit && converts && read->number.value * units::conversion(read->unit, *outcome.unit) == value) {
    return right();
  }
  if (fits && is_other_unit) {
    return {BlankVerdict::RightNumberWrongUnit,
            message("The number is right, but not the unit. Is it a length, an area or a volume?")};
  }
  return fits ? right() : wrong_number(read->number.value, value);
}

// ---- a side ----

using RoughValues = std::map<std::string, double, std::less<>>;

// The letters that may stand in a side: those of its equation, and every measure of the solid.
std::vector<Symbol> letters_for(const Step& step, const solids::Solid& solid, const algebra::Bindings& values) {
  std::vector<Symbol> letters;
  for (const Symbol& symbol : algebra::symbols_of(step.equation->left - step.equation->right)) {
    if (values.count(symbol.name) == 0) {
      letters.push_back(symbol);
    }
  }
  for (const solids::Measure& measure : solid.statement().measures) {
    letters.push_back(measure.symbol);
  }
  namespace whole = solids::symbols;
  letters.insert(letters.end(), {whole::surface_area(), whole::lateral_area(), whole::base_area(), whole::volume(),
                                 whole::perimeter()});
  return letters;
}

void add_numbers(const algebra::Bindings& numbers, RoughValues& values) {
  for (const auto& [name, value] : numbers) {
    values[name] = value.to_double();
  }
}

// The letters at their values in the solid, or, for `trial` from 1 on, each shifted by a share of its own.
RoughValues letter_values(const std::vector<Symbol>& letters, const solids::Solid& solid, int trial) {
  RoughValues values;
  int index = 0;
  for (const Symbol& letter : letters) {
    const auto known = solid.values().find(letter.name);
    const double base = known != solid.values().end() ? known->second.to_double() : 3.0 + index;
    const double share = trial == 0 ? 0 : 0.011 * ((index * 7 + trial * 5) % 13 + 1);
    values[letter.name] = base * (1 + share);
    ++index;
  }
  return values;
}

// "0.68819…" of a table.
bool has_number_that_goes_on(const algebra::Expression& side) {
  const std::vector<algebra::Expression>& parts = side.operands();
  return side.operation() == algebra::Operation::Number
             ? !exact::has_class_form(side.number())
             : std::any_of(parts.begin(), parts.end(), has_number_that_goes_on);
}

bool is_decimal_that_ends(const algebra::Bindings& values, const algebra::Expression& side) {
  if (has_number_that_goes_on(side)) {
    return false;
  }
  const auto symbols = algebra::symbols_of(side);
  return std::all_of(symbols.begin(), symbols.end(), [&](const Symbol& symbol) {
    constexpr int shown_places = 4;
    const auto value = values.find(symbol.name);
    return value == values.end() || exact::decimals_needed(value->second, shown_places).has_value();
  });
}

bool agree(double a, double b, double tolerance) { return std::abs(a - b) <= tolerance * std::abs(a); }

BlankCheck check_side(const Step& step, const solids::Solid& solid, const algebra::Bindings& numbers,
                      const std::string& typed) {
  const std::vector<Symbol> letters = letters_for(step, solid, numbers);
  const Result<TypedSide, Message> read = read_side(typed, letters, solid.unit());
  if (!read) {
    return {BlankVerdict::Unreadable, read.error()};
  }
  const algebra::Expression& side = step.equation->right;
  // Numbers that do not end are typed rounded.
  const double tolerance = is_decimal_that_ends(numbers, side) ? 1e-9 : 1e-3;
  constexpr int trials = 4;
  bool is_same = true;
  bool is_same_here = false;
  for (int trial = 0; trial < trials; ++trial) {
    RoughValues values = letter_values(letters, solid, trial);
    RoughValues values_typed = values;
    add_numbers(numbers, values);
    add_numbers(read->numerals.values(), values_typed);
    const double expected = algebra::rough_value(side, values);
    const bool agrees =
        std::isnan(expected) || agree(expected, algebra::rough_value(read->expression, values_typed), tolerance);
    is_same = is_same && agrees;
    is_same_here = is_same_here || (trial == 0 && agrees);
  }
  if (!is_same) {
    return is_same_here ? BlankCheck{BlankVerdict::Wrong, message("That gives the same number for this solid. Which "
                                                                  "letters and numbers does the reason talk about?")}
                        : wrong();
  }
  const int dimension = algebra::dimension_of(side);
  if (read->has_units && typed_dimension(read->expression) != dimension) {
    return {BlankVerdict::RightNumberWrongUnit,
            message("The numbers are right, but not every unit. Is each one a length, an area or a volume?")};
  }
  const auto used = algebra::symbols_of(read->expression);
  if (!read->has_units && used.empty() && dimension > 0) {
    return {BlankVerdict::RightNumberNoUnit, message("The numbers are right. What unit do they need?")};
  }
  return right();
}

// ---- a unit ----

BlankCheck check_unit(const units::Unit& unit, const std::string& typed) {
  const std::size_t first = typed.find_first_not_of(' ');
  const std::size_t last = typed.find_last_not_of(' ');
  const auto read =
      first == std::string::npos ? std::nullopt : units::Unit::find(typed.substr(first, last - first + 1));
  if (!read) {
    return {BlankVerdict::Unreadable, message("Write a unit such as cm, cm^2 or cm^3.")};
  }
  if (*read == unit) {
    return right();
  }
  return {BlankVerdict::Wrong, read->dimension() == unit.dimension()
                                   ? message("That's the right kind of unit. Which unit do the labels have?")
                                   : message("Not yet. Does the question ask for a length, an area or a volume?")};
}

}  // namespace

BlankKind blank_kind(const Step& step) {
  if (step.outcome) {
    return BlankKind::Number;
  }
  if (step.unit) {
    return BlankKind::Unit;
  }
  return step.line && step.equation ? BlankKind::Side : BlankKind::Words;
}

StepText with_blank(const Step& step) {
  StepText text{step.line, step.reason};
  if (text.line) {
    const std::string hidden = hide_result(text.line->right);
    text.reason = without(step.reason, hidden);
    for (const std::string& count :
         step.kind == StepKind::Count ? whole_numbers_by(hidden) : std::vector<std::string>{}) {
      text.reason = without(text.reason, count);
    }
  } else if (step.unit) {
    text.reason = without(step.reason, said(unit_in_words(*step.unit)));
  } else if (step.outcome) {
    const std::string unit = step.outcome->unit ? " " + step.outcome->unit->text() : "";
    text.reason = without(step.reason, exact::shown(step.outcome->amount, 2).text + unit);
  }
  if (!text.line && text.reason == step.reason) {
    text.reason = message("{gap}", {{"gap", rule}});
  }
  return text;
}

BlankedLine with_blank(const BoardLine& line) {
  BlankedLine blanked{line.equations, line.reason, {}};
  if (!line.equations.empty()) {
    // "5 = ℓ" comes to 5.
    const auto has_number = [](const Notation& side) {
      return algebra::plain_text(side).find_first_of("0123456789") != std::string::npos;
    };
    algebra::NotationLine& last = blanked.equations.back();
    Notation& side = has_number(last.left) && !has_number(last.right) ? last.left : last.right;
    const std::string text = algebra::plain_text(side);
    side = algebra::leaf(Notation::Kind::Blank, text);
    blanked.hidden = results_in(text);
    if (line.kind == BoardLine::Kind::Count) {
      const std::vector<std::string> counts = whole_numbers_by(blanked.hidden.back());
      blanked.hidden.insert(blanked.hidden.end(), counts.begin(), counts.end());
    }
    for (const std::string& one : blanked.hidden) {
      blanked.reason = without(blanked.reason, one);
    }
  } else if (line.kind == BoardLine::Kind::Answer) {
    blanked.hidden = {said(line.reason)};
    blanked.reason = message("Answer: ____________________");
  }
  return blanked;
}

Message without(const Message& reason, const std::string& hidden) {
  return hidden.empty() ? reason : words::with_gap(reason, hidden, rule);
}

BlankCheck check_blank(const Step& step, const solids::Solid& solid, const algebra::Bindings& values,
                       const std::string& typed) {
  switch (blank_kind(step)) {
    case BlankKind::Number:
      return check_number(*step.outcome, typed);
    case BlankKind::Side:
      return check_side(step, solid, values, typed);
    case BlankKind::Unit:
      return check_unit(*step.unit, typed);
    case BlankKind::Words:
      break;
  }
  ensure(false, "what is said in words cannot be judged");
  return {};
}

}  // namespace fw::reasoning
