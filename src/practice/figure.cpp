#include "practice/figure.hpp"

#include <algorithm>
#include <numeric>

#include "lessons/asked_value.hpp"
#include "lessons/open_faces.hpp"
#include "reasoning/unknown.hpp"

namespace fw::practice {
namespace {

using exact::Number;
using solids::FaceRole;
using solids::Solid;

bool counts_in(const lessons::Problem& problem, const solids::Face& face, Asked asked,
               const std::vector<FaceId>& open) {
  switch (asked) {
    case Asked::Surface:
      return std::find(open.begin(), open.end(), face.id) == open.end();
    case Asked::Lateral:
      return face.role == FaceRole::Lateral;
    case Asked::BaseArea:
      return face.role == FaceRole::Base && face.id.index() == 0;
    default:
      return problem.open.empty();
  }
}

bool is_halved(const algebra::Expression& work) {
  using algebra::Operation;
  return work.operation() == Operation::Quotient && work.operands()[1].operation() == Operation::Number &&
         work.operands()[1].number() == Number::whole(2);
}

}  // namespace

bool counts_parts(Asked asked) {
  return asked == Asked::Faces || asked == Asked::Edges || asked == Asked::Vertices || asked == Asked::Parts;
}

std::string part_counted(Asked asked) {
  return asked == Asked::Faces ? "face" : asked == Asked::Edges ? "edge" : "vertex";
}

std::vector<Number> answers_from_roots(const lessons::Problem& problem, const Question& question) {
  std::vector<Number> answers;
  const std::vector<solids::Fault>& remarks = problem.solid.remarks();
  const bool is_rounded = std::any_of(remarks.begin(), remarks.end(), [](const solids::Fault& remark) {
    return remark.severity == solids::Severity::Rounding;
  });
  if (!is_rounded || !question.unit) {
    return answers;
  }
  for (const reasoning::Askable& measure : reasoning::askable_measures(problem.solid)) {
    if (!measure.is_given) {
      continue;
    }
    const auto without = reasoning::asked_for(problem.solid, measure.name);
    if (!without) {
      continue;
    }
    const std::optional<Number> answer = lessons::asked_value(problem, *without, question.measure);
    if (answer && question.is_converted) {
      answers.push_back(*answer *
                        units::conversion(problem.solid.unit().to_the(question.unit->dimension()), *question.unit));
    } else if (answer) {
      const Number factor = question.factor.value_or(Number::whole(1));
      answers.push_back(*answer * exact::power(factor, question.unit->dimension()));
    }
  }
  return answers;
}

std::optional<double> Figure::value(std::string_view name) const {
  const auto found = values.find(name);
  return found == values.end() ? std::nullopt : std::optional(found->second);
}

std::vector<const FigureFace*> Figure::of_role(FaceRole role) const {
  std::vector<const FigureFace*> list;
  for (const FigureFace& one : faces) {
    if (one.role == role) {
      list.push_back(&one);
    }
  }
  return list;
}

double Figure::area_of(FaceRole role) const {
  double sum = 0;
  for (const FigureFace& one : faces) {
    sum += one.role == role ? one.area : 0;
  }
  return sum;
}

double Figure::base() const { return traits().has_base ? faces[0].area : 0; }

double Figure::area_with(const FigureFace& one, const Values& others) const {
  Values changed = others;
  changed.insert(values.begin(), values.end());
  return algebra::rough_value(face(one).work, changed);
}

Figure figure_of(const lessons::Problem& problem, const Question& question) {
  const Solid& solid = problem.solid;
  Figure figure;
  figure.problem = &problem;
  figure.question = &question;
  if (question.is_converted) {
    figure.to_asked = units::conversion(solid.unit().to_the(question.unit->dimension()), *question.unit).to_double();
  }
  figure.truth = question.truth ? question.truth->to_double() / figure.to_asked : 0;
  for (const auto& [name, number] : solid.values()) {
    figure.values.emplace(name, number.to_double());
  }
  const std::vector<FaceId> open = lessons::open_faces(problem);
  const bool is_area = question.asked == Asked::Lateral || question.asked == Asked::BaseArea;
  const Asked counted = is_area ? question.asked : Asked::Surface;
  for (const solids::Face& face : solid.faces()) {
    figure.faces.push_back({face.id, face.role, face.group, face.area.amount().to_double(),
                            counts_in(problem, face, counted, open), is_halved(face.work)});
    figure.closed += figure.faces.back().area;
  }
  figure.volume = solid.volume().amount().to_double();
  for (const double length : solid.body().edge_lengths()) {
    figure.edges += length;
  }
  for (const solids::Measure& measure : solid.statement().measures) {
    const auto value = figure.values.find(measure.symbol.name);
    const bool is_new = std::find(figure.label_names.begin(), figure.label_names.end(), measure.symbol.name) ==
                        figure.label_names.end();
    if (is_new && !measure.key.empty() && value != figure.values.end() && solid.is_given(measure.symbol)) {
      figure.label_names.push_back(measure.symbol.name);
      figure.labels.push_back(value->second);
    }
  }
  return figure;
}

}  // namespace fw::practice
