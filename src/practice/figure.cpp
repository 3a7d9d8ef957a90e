#include "practice/figure.hpp"

#include <algorithm>
#include <numeric>

#include "lessons/open_faces.hpp"
#include "reasoning/unknown.hpp"

namespace fw::practice {
namespace {

using exact::Number;
using solids::FaceRole;
using solids::Solid;

std::optional<Asked> asked_whole(const std::string& find) {
  return find == "surface_area"   ? std::optional(Asked::Surface)
         : find == "lateral_area" ? std::optional(Asked::Lateral)
         : find == "base_area"    ? std::optional(Asked::BaseArea)
         : find == "volume"       ? std::optional(Asked::Volume)
         : find == "faces"        ? std::optional(Asked::Faces)
         : find == "name"         ? std::optional(Asked::Name)
                                  : std::nullopt;
}

const algebra::Symbol* length_named(const Solid& solid, const std::string& name) {
  for (const solids::Measure& measure : solid.statement().measures) {
    const std::string key = measure.in_base ? "base." + measure.key : measure.key;
    if (measure.symbol.name == name || (!measure.key.empty() && key == name)) {
      return &measure.symbol;
    }
  }
  return nullptr;
}

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

std::optional<Number> whole_of(const lessons::Problem& problem, const Solid& solid, Asked asked) {
  switch (asked) {
    case Asked::Surface: {
      if (problem.open.empty()) {
        return solid.surface_area().amount();
      }
      const std::vector<FaceId> open = lessons::open_faces(problem);
      Number sum;
      for (const solids::Face& face : solid.faces()) {
        sum = counts_in(problem, face, asked, open) ? sum + face.area.amount() : sum;
      }
      return sum;
    }
    case Asked::Lateral:
      return solid.lateral_area() ? std::optional(solid.lateral_area()->amount()) : std::nullopt;
    case Asked::BaseArea:
      return solid.base_area() ? std::optional(solid.base_area()->amount()) : std::nullopt;
    case Asked::Volume:
      return solid.volume().amount();
    case Asked::Faces:
      return Number::whole(static_cast<long long>(solid.faces().size()));
    default:
      return std::nullopt;
  }
}

int dimension_of(Asked asked) { return asked == Asked::Volume ? 3 : asked == Asked::Length ? 1 : 2; }

std::optional<Number> length_of(const Solid& solid, const std::string& find) {
  const algebra::Symbol* symbol = length_named(solid, find);
  const auto value = symbol == nullptr ? solid.values().end() : solid.values().find(symbol->name);
  return value == solid.values().end() ? std::nullopt : std::optional(value->second);
}

bool is_halved(const algebra::Expression& work) {
  using algebra::Operation;
  return work.operation() == Operation::Quotient && work.operands()[1].operation() == Operation::Number &&
         work.operands()[1].number() == Number::whole(2);
}

}  // namespace

Result<Question, std::string> question_of(const lessons::Problem& problem, const std::string& find) {
  Question question;
  const bool is_word_problem = problem.supply && problem.supply->each;
  if (is_word_problem && (find.empty() || find == "count")) {
    const std::optional<reasoning::SupplyWork> work = reasoning::supply_work(problem);
    question.find = "count";
    question.asked = Asked::Count;
    question.packs = work->answer;
    question.truth = work->answer->count;
    return question;
  }
  if (problem.net && (find.empty() || find == "net")) {
    question.find = "net";
    question.asked = Asked::Net;
    return question;
  }
  if (problem.find.empty() && find.empty()) {
    return failure(std::string("the problem asks for nothing, so no answer can be judged"));
  }
  question.find = find.empty() ? problem.find.front() : find;
  if (const std::optional<Asked> asked = asked_whole(question.find)) {
    question.asked = *asked;
    question.truth = whole_of(problem, problem.solid, *asked);
    if (*asked == Asked::Faces || *asked == Asked::Name) {
      return question;
    }
  } else {
    question.asked = Asked::Length;
    question.truth = length_of(problem.solid, question.find);
  }
  if (!question.truth) {
    return failure("a " + problem.solid.name() + " has no measure \"" + question.find + "\"");
  }
  question.unit = problem.solid.unit().to_the(dimension_of(question.asked));
  return question;
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
    const std::optional<Number> answer = question.asked == Asked::Length ? length_of(*without, question.find)
                                                                         : whole_of(problem, *without, question.asked);
    if (answer) {
      answers.push_back(*answer);
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

double Figure::base() const { return bases == 0 ? 0 : area_of(FaceRole::Base) / static_cast<double>(bases); }

bool Figure::is_all_alike() const { return bases == 0 && problem->solid.group_count() == 1; }

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
  figure.truth = question.truth ? question.truth->to_double() : 0;
  for (const auto& [name, number] : solid.values()) {
    figure.values.emplace(name, number.to_double());
  }
  const std::vector<FaceId> open = lessons::open_faces(problem);
  const bool is_area = question.asked == Asked::Lateral || question.asked == Asked::BaseArea;
  const Asked counted = is_area ? question.asked : Asked::Surface;
  for (const solids::Face& face : solid.faces()) {
    figure.faces.push_back({face.id, face.role, face.group, face.area.amount().to_double(),
                            counts_in(problem, face, counted, open), is_halved(face.work)});
    figure.bases += face.role == FaceRole::Base ? 1U : 0U;
    figure.closed += figure.faces.back().area;
  }
  figure.volume = solid.volume().amount().to_double();
  for (const geometry::Edge& edge : solid.polyhedron().edges()) {
    figure.edges += glm::length(solid.polyhedron().vertices()[edge.to] - solid.polyhedron().vertices()[edge.from]);
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
