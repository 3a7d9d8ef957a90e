#include "reasoning/routes.hpp"

#include <algorithm>

namespace fw::reasoning {
namespace {

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

}  // namespace fw::reasoning
