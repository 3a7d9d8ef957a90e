#include "reasoning/routes.hpp"

#include <algorithm>

#include "exact/print_number.hpp"

namespace fw::reasoning {
namespace {

using exact::Number;

std::size_t lines_of_work(const Solution& solution) {
  return static_cast<std::size_t>(std::count_if(solution.steps.begin(), solution.steps.end(),
                                                [](const Step& step) { return step.line.has_value(); }));
}

std::string compared(const Routes& routes) {
  const std::string same = " Both give " + routes.by_formula.answer.text + ".";
  const std::size_t formula = routes.formula_lines;
  const std::size_t faces = routes.face_lines;
  if (formula == faces) {
    return "Both ways take " + std::to_string(formula) + " lines here." + same;
  }
  const bool faces_shorter = faces < formula;
  return std::string(faces_shorter ? "Face by face is shorter here: " : "The formula is shorter here: ") +
         std::to_string(std::min(formula, faces)) + " lines instead of " + std::to_string(std::max(formula, faces)) +
         "." + same;
}

// A decimal stands for the value when it is the value rounded to its places.
bool is_rounding_of(const exact::Written& typed, const Number& value) {
  constexpr int enough_places = 2;
  return !typed.is_fraction && typed.places >= enough_places && exact::rounded(value, typed.places) == typed.value;
}

bool is_right_number(const exact::Written& typed, const Number& value) {
  return typed.value == value || is_rounding_of(typed, value);
}

}  // namespace

Result<Routes, std::string> two_routes(const solids::Solid& solid, const std::string& asked,
                                       const SolutionOptions& options) {
  SolutionOptions by_formula = options;
  by_formula.route = Route::Formula;
  SolutionOptions by_faces = options;
  by_faces.route = Route::FaceByFace;
  auto formula = worked_solution(solid, asked, by_formula);
  if (!formula) {
    return failure(formula.error());
  }
  auto faces = worked_solution(solid, asked, by_faces);
  if (!faces) {
    return failure(faces.error());
  }
  Routes routes{std::move(formula).value(), std::move(faces).value(), 0, 0, ""};
  routes.formula_lines = lines_of_work(routes.by_formula);
  routes.face_lines = lines_of_work(routes.by_faces);
  routes.comparison = compared(routes);
  return routes;
}

BlankCheck check_blank(const Step& step, const std::string& typed) {
  ensure(step.outcome.has_value(), "a blank stands where a step has a number");
  const Outcome& outcome = *step.outcome;
  const auto read = units::parse_quantity(typed);
  if (!read) {
    return {BlankVerdict::Unreadable, read.error().message};
  }
  const Number& value = outcome.amount;
  if (!outcome.unit) {
    const bool right = !read->has_unit && is_right_number(read->number, value);
    return right ? BlankCheck{BlankVerdict::Right, "Right."}
                 : BlankCheck{BlankVerdict::Wrong, "Not yet. Look at the line above and try again."};
  }
  const bool number_fits = is_right_number(read->number, value);
  if (!read->has_unit) {
    return number_fits ? BlankCheck{BlankVerdict::RightNumberNoUnit,
                                    "The number is right. Which unit belongs to it: a length, a square or a cube?"}
                       : BlankCheck{BlankVerdict::Wrong, "Not yet. Look at the line above and try again."};
  }
  if (read->unit == *outcome.unit) {
    return number_fits ? BlankCheck{BlankVerdict::Right, "Right."}
                       : BlankCheck{BlankVerdict::Wrong, "Not yet. Look at the line above and try again."};
  }
  const bool converts = read->unit.converts_to(*outcome.unit);
  if (converts && read->number.value * units::conversion(read->unit, *outcome.unit) == value) {
    return {BlankVerdict::Right, "Right."};
  }
  return number_fits ? BlankCheck{BlankVerdict::RightNumberWrongUnit,
                                  "The number is right, but the unit is another one. What is counted here: lengths, "
                                  "squares or cubes?"}
                     : BlankCheck{BlankVerdict::Wrong, "Not yet. Look at the line above and try again."};
}

}  // namespace fw::reasoning
