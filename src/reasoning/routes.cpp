#include "reasoning/routes.hpp"

#include <algorithm>

namespace fw::reasoning {
namespace {

std::size_t lines_of_work(const Solution& solution) {
  return static_cast<std::size_t>(std::count_if(solution.steps.begin(), solution.steps.end(),
                                                [](const Step& step) { return step.line.has_value(); }));
}

Message compared(const Routes& routes) {
  const std::size_t formula = routes.formula_lines;
  const std::size_t faces = routes.face_lines;
  const std::size_t less = std::min(formula, faces);
  const std::size_t more = std::max(formula, faces);
  const Message shorter =
      less == more ? message("Both ways take {count} lines here.", {{"count", less}})
      : faces == less
          ? message("Face by face is shorter here: {less} lines instead of {more}.", {{"less", less}, {"more", more}})
          : message("The formula is shorter here: {less} lines instead of {more}.", {{"less", less}, {"more", more}});
  return message("{shorter} Both give {answer}.", {{"shorter", shorter}, {"answer", routes.by_formula.answer.text}});
}

}  // namespace

Result<Routes, Message> two_routes(const solids::Solid& solid, const std::string& asked,
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
  Routes routes{std::move(formula).value(), std::move(faces).value(), 0, 0, {}};
  routes.formula_lines = lines_of_work(routes.by_formula);
  routes.face_lines = lines_of_work(routes.by_faces);
  routes.comparison = compared(routes);
  return routes;
}

}  // namespace fw::reasoning
