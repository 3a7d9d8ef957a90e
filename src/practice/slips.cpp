#include "practice/slips.hpp"

#include <algorithm>
#include <cctype>
#include <cmath>

#include "exact/print_number.hpp"
#include "practice/pi_values.hpp"

namespace fw::practice {
namespace {

using exact::Number;
using units::Unit;
using words::message;

bool fits(const TypedAnswer& typed, double value) { return value > 0 && stands_for(typed.number, value); }

// How many of the unit's lengths make one of the other's: 0.01 from cm to m. Capacities go by the edge of their cube.
double length_factor(const Unit& from, const Unit& to) {
  return std::pow(units::conversion(from, to).to_double(), 1.0 / from.dimension());
}

Cause cause(const std::string& id, const TypedAnswer& typed, const Saying& saying) {
  return {id, saying.about(typed.number.text), {}, false};
}

constexpr double roughest = 0.01;  // rounding of a converted answer, as a part of it

bool is_power_of_ten_apart(double a, double b) { return std::abs(a / b - 10) < 1e-9 || std::abs(b / a - 10) < 1e-9; }

// The digits of a number as it is printed, in rising order, and whether two neighbors alone have changed places.
bool has_exchanged_digits(const std::string& typed, const std::string& right) {
  if (typed.size() != right.size() || typed == right) {
    return false;
  }
  std::vector<std::size_t> different;
  for (std::size_t i = 0; i < typed.size(); ++i) {
    if (typed[i] != right[i]) {
      different.push_back(i);
    }
  }
  return different.size() == 2 && different[1] == different[0] + 1 && typed[different[0]] == right[different[1]] &&
         typed[different[1]] == right[different[0]];
}

// Two whole numbers that differ by a 1 in the tens or a place further left.
bool is_a_carry_off(const Number& typed, const Number& right) {
  const double apart = std::abs(typed.to_double() - right.to_double());
  const bool is_smaller = apart < std::min(typed.to_double(), right.to_double()) / 2;
  const double tens = std::log10(apart);
  return typed.is_whole() && right.is_whole() && apart >= 10 && is_smaller && std::abs(tens - std::round(tens)) < 1e-9;
}

// The answer with one product of a face, or of the volume, from the next row of the times table.
std::vector<double> next_rows(const Figure& figure) {
  std::vector<double> numbers;
  if (figure.question->asked != Asked::Surface && figure.question->asked != Asked::Lateral) {
    return numbers;
  }
  std::vector<solids::GroupId> done;
  for (const FigureFace& face : figure.faces) {
    const bool is_done = std::find(done.begin(), done.end(), face.group) != done.end();
    const std::vector<solids::FaceLength>& lengths = figure.face(face).lengths;
    if (is_done || !face.counts || lengths.size() != 2 || face.is_halved) {
      continue;
    }
    done.push_back(face.group);
    const auto alike = std::count_if(figure.faces.begin(), figure.faces.end(),
                                     [&](const FigureFace& one) { return one.group == face.group && one.counts; });
    for (const solids::FaceLength& length : lengths) {
      const double by = static_cast<double>(alike) * length.value.to_double();
      numbers.push_back(figure.truth + by);
      numbers.push_back(figure.truth - by);
    }
  }
  return numbers;
}

}  // namespace

bool has_right_number(const TypedAnswer& typed, const Question& question, const std::vector<Number>& from_roots) {
  // A small number that is converted has few digits before it ends: rounded like a larger one, nothing is left of it.
  const double apart = std::abs(typed.number.value.to_double() / question.truth->to_double() - 1);
  if (question.is_converted && apart > roughest) {
    return false;
  }
  const auto fits_number = [&](const Number& answer) {
    return stands_for(typed.number, answer) ||
           (question.round_to && typed.number.value == exact::rounded(answer, *question.round_to));
  };
  return fits_number(*question.truth) || std::any_of(from_roots.begin(), from_roots.end(), fits_number) ||
         other_pi(typed.number, question).has_value();
}

bool is_right(const TypedAnswer& typed, const Question& question, const std::vector<Number>& from_roots) {
  if (question.is_converted) {
    const bool is_asked_unit = typed.unit && question.unit->converts_to(*typed.unit) &&
                               units::conversion(*question.unit, *typed.unit) == Number::whole(1);
    if (!is_asked_unit) {
      return false;
    }
  }
  if (!question.unit) {
    if (question.packs && question.packs->cost) {  // the count alone is a step on the way
      return !typed.unit && typed.number.value == *question.packs->cost;
    }
    return !typed.unit && has_right_number(typed, question, from_roots);
  }
  const bool has_no_unit = *question.unit == Unit::none().to_the(question.unit->dimension());
  if (!typed.unit) {
    return has_no_unit && has_right_number(typed, question, from_roots);
  }
  if (*typed.unit == *question.unit) {
    return has_right_number(typed, question, from_roots);
  }
  if (!question.unit->converts_to(*typed.unit)) {
    return false;
  }
  Question converted = question;
  const Number factor = units::conversion(*question.unit, *typed.unit);
  converted.truth = *question.truth * factor;
  std::vector<Number> roots;
  roots.reserve(from_roots.size());
  for (const Number& answer : from_roots) {
    roots.push_back(answer * factor);
  }
  return has_right_number(typed, converted, roots);
}

Cause wrong_unit(const TypedAnswer& typed, const Question& question) {
  const int dimension = question.unit->dimension();
  const auto told = [](const char* id, const words::Message& unit) {
    return Cause{id, message("The number is right. {unit}", {{"unit", unit}}), {}, false};
  };
  if (!typed.unit || typed.unit->dimension() == 1) {
    return told("G1", dimension == 1 ? message("What unit does it need?")
                                     : message("Are you measuring a length, an area or a volume? Write its unit."));
  }
  if (typed.unit->dimension() == dimension) {
    return told("G2", message("What unit are the lengths of this solid in? Use that unit, squared or cubed."));
  }
  return told("G2", dimension == 1   ? message("This is a length, so write its unit without an exponent.")
                    : dimension == 2 ? message("Area is measured in squares, so write the small 2.")
                                     : message("Volume is measured in cubes, so write the small 3."));
}

std::optional<Cause> unit_still_asked(const TypedAnswer& typed, const Question& question, const std::string& prompt) {
  if (!question.unit || !typed.unit || *typed.unit == *question.unit) {
    return std::nullopt;
  }
  const words::Noun unit{question.unit->name()};
  std::string low = prompt;
  std::transform(low.begin(), low.end(), low.begin(), [](unsigned char c) { return std::tolower(c); });
  const auto asks = [&](const words::Message& words) { return low.find(said(words)) != std::string::npos; };
  const words::Value symbol = question.unit->text();
  const bool is_asked =
      asks(message("how many {unit:s}", {{"unit", unit}})) || asks(message(" in {unit:s}", {{"unit", unit}})) ||
      asks(message("how many {unit} ", {{"unit", symbol}})) || asks(message(" in {unit}?", {{"unit", symbol}}));
  if (!is_asked) {
    return std::nullopt;
  }
  return Cause{"G9",
               message("That is right. The problem asks for {unit:s}: write it in {symbol}.",
                       {{"unit", unit}, {"symbol", symbol}}),
               {},
               false};
}

std::vector<Cause> wrong_conversions(const TypedAnswer& typed, const Figure& figure) {
  const Question& question = *figure.question;
  std::vector<Cause> causes;
  if (!question.unit || !typed.unit || *typed.unit == *question.unit || !question.unit->converts_to(*typed.unit)) {
    return causes;
  }
  const double truth = question.truth->to_double();
  const double factor = length_factor(*question.unit, *typed.unit);
  const int dimension = question.unit->dimension();
  const double whole_factor = std::pow(factor, dimension);
  if (typed.unit->is_capacity()) {
    if (is_power_of_ten_apart(typed.number.value.to_double(), truth * whole_factor)) {
      causes.push_back({"G7",
                        message("{n} is off by a power of ten. How many cubes fill one {capacity}?",
                                {{"n", typed.number.text}, {"capacity", words::Noun{typed.unit->name()}}}),
                        {},
                        false});
    }
    return causes;
  }
  for (int power = 1; power < dimension; ++power) {
    if (fits(typed, truth * std::pow(factor, power))) {
      const bool is_customary =
          typed.unit->root() && std::abs(std::log10(factor) - std::round(std::log10(factor))) > 1e-6;
      causes.push_back(cause(is_customary     ? "G8"
                             : dimension == 2 ? "G3"
                                              : "G4",
                             typed,
                             Saying("{n} is what you get if you convert as if it were a length.",
                                    "How many dimensions are you converting?")));
    }
  }
  if (fits(typed, truth / whole_factor)) {
    causes.push_back(cause(
        "G5", typed,
        Saying("{n} is what you get if you convert the wrong way.", "Does it take more of a larger unit, or fewer?")));
  }
  return causes;
}

Cause rounded_too_far(const TypedAnswer& typed) {
  return cause("M4", typed, Saying("{n} is rounded too much.", "Keep at least three significant digits."));
}

std::vector<Cause> slips(const TypedAnswer& typed, const Figure& figure) {
  std::vector<Cause> causes;
  const double number = typed.number.value.to_double();
  const double truth = figure.question->truth->to_double();
  if (is_power_of_ten_apart(number, truth)) {
    causes.push_back(
        cause("M1", typed, Saying("{n} has the right digits.", "Estimate first. About how big should the answer be?")));
  }
  const exact::Shown shown = exact::shown(*figure.question->truth, 2);
  if (has_exchanged_digits(exact::shown(typed.number.value, 2).text, shown.text)) {
    causes.push_back(cause("M2", typed, Saying("{n} is close.", "Are two digits switched?")));
  }
  const std::vector<double> rows = next_rows(figure);
  if (std::any_of(rows.begin(), rows.end(), [&](double row) { return fits(typed, row); })) {
    const bool is_of_adding = is_a_carry_off(typed.number.value, *figure.question->truth);
    causes.push_back(cause("M3", typed,
                           is_of_adding
                               ? Saying("{n} is close.", "Check each product, and then add again.")
                               : Saying("{n} is off by one product.", "Check the multiplication for each face.")));
  }
  constexpr double nearly = 2;  // that a count is off by
  if (counts_parts(figure.question->asked) && !typed.unit && std::abs(number - truth) <= nearly && number > 2) {
    causes.push_back(
        cause("M6", typed, Saying("{n} is close.", "Mark each one as you count. Is one missing, or counted twice?")));
  }
  if (causes.empty() && figure.question->unit && is_a_carry_off(typed.number.value, *figure.question->truth)) {
    causes.push_back(cause("M5", typed, Saying("{n} is off by one digit.", "Add again. Did you carry, or borrow?")));
  }
  constexpr double early = 0.01;
  if (!shown.exact && std::abs(number - truth) < early * truth) {
    causes.push_back(cause("M4", typed, Saying("{n} is very close.", "Round only once, at the end.")));
  }
  return causes;
}

}  // namespace fw::practice
