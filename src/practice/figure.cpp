#include "practice/figure.hpp"

#include <algorithm>
#include <numeric>

#include "lessons/asked_value.hpp"
#include "lessons/open_faces.hpp"
#include "reasoning/tasks/task.hpp"
#include "reasoning/unknown.hpp"

namespace fw::practice {
namespace {

using exact::Number;
using solids::FaceRole;
using solids::Solid;
using units::Unit;

std::optional<Asked> asked_whole(const std::string& find) {
  return find == "surface_area"   ? std::optional(Asked::Surface)
         : find == "lateral_area" ? std::optional(Asked::Lateral)
         : find == "base_area"    ? std::optional(Asked::BaseArea)
         : find == "volume"       ? std::optional(Asked::Volume)
         : find == "faces"        ? std::optional(Asked::Faces)
         : find == "edges"        ? std::optional(Asked::Edges)
         : find == "vertices"     ? std::optional(Asked::Vertices)
         : find == "name"         ? std::optional(Asked::Name)
                                  : std::nullopt;
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

int dimension_of(Asked asked) { return asked == Asked::Volume ? 3 : asked == Asked::Length ? 1 : 2; }

// A measure of the solid, in the unit in which it is asked.
Result<Question, std::string> measure_question(const lessons::Problem& problem, const std::string& find) {
  Question question;
  question.find = find;
  const std::optional<Asked> asked = asked_whole(find);
  question.asked = asked.value_or(Asked::Length);
  if (question.asked == Asked::Name) {
    question.form = Form::Name;
    return question;
  }
  if (counts_parts(question.asked)) {
    question.truth = Number::whole(static_cast<long long>(reasoning::count_of(problem.solid, find)));
    return question;
  }
  question.truth = lessons::asked_value(problem, problem.solid, find);
  if (!question.truth) {
    return failure("a " + problem.solid.name() + " has no measure \"" + find + "\"");
  }
  const Unit own = problem.solid.unit().to_the(dimension_of(question.asked));
  question.unit = own;
  if (problem.unit && problem.unit->converts_to(own) && !(*problem.unit == own)) {
    question.unit = problem.unit;
    question.is_converted = true;
    question.truth = *question.truth * units::conversion(own, *problem.unit);
  }
  return question;
}

Number copied(const lessons::Problem& problem, const Number& amount, int dimension) {
  return problem.scale && problem.scale->factor ? amount * exact::power(*problem.scale->factor, dimension) : amount;
}

Result<Question, std::string> copy_question(const lessons::Problem& problem, const std::string& find) {
  const auto original = measure_question(problem, find);
  if (!original || !original->unit) {
    return original;
  }
  Question question = *original;
  const int dimension = question.unit->dimension();
  question.asked = dimension == 3 ? Asked::CopyVolume : Asked::CopyArea;
  question.truth = copied(problem, *question.truth, dimension);
  return question;
}

// What is asked in another way than by a measure alone.
Result<Question, std::string> task_question(const lessons::Problem& problem, const std::string& task,
                                            const std::string& find) {
  Question question;
  question.find = task;
  if (task == "copy") {
    return copy_question(problem, find.empty() ? problem.find.front() : find);
  }
  if (task == "count") {
    question.asked = Asked::Packed;
    question.truth = Number::whole(lessons::packings(problem).front().count);
  } else if (task == "scale") {
    question.asked = Asked::Scale;
    question.truth = problem.scale->factor;
  } else if (task == "same_number") {
    question.asked = Asked::SameNumber;
    question.form = Form::Same;
  } else if (task == "least_surface") {
    const reasoning::Outcome outcome = *reasoning::task_work(problem)->outcome;
    question.asked = Asked::LeastSurface;
    question.truth = outcome.amount;
    question.unit = outcome.unit;
  } else if (task == "lengths") {
    question.asked = Asked::FaceLengths;
    question.form = Form::Lengths;
  } else if (task == "purpose") {
    question.asked = Asked::Purpose;
    question.form = Form::Purpose;
  } else {
    const auto measure = measure_question(problem, task == "claim" ? problem.claim->measure : problem.find.front());
    if (!measure) {
      return measure;
    }
    question = *measure;
    question.find = task;
    question.form = task == "claim" ? Form::YesNo : task == "mistake" ? Form::Mistake : Form::Interval;
  }
  return question;
}

bool is_halved(const algebra::Expression& work) {
  using algebra::Operation;
  return work.operation() == Operation::Quotient && work.operands()[1].operation() == Operation::Number &&
         work.operands()[1].number() == Number::whole(2);
}

}  // namespace

bool counts_parts(Asked asked) { return asked == Asked::Faces || asked == Asked::Edges || asked == Asked::Vertices; }

Result<Question, std::string> question_of(const lessons::Problem& problem, const std::string& find) {
  const std::string task = find == "purpose" && problem.supply ? find : reasoning::task_of(problem);
  if (!task.empty() && (find.empty() || find == task || problem.scale)) {
    return task_question(problem, task, find);
  }
  const bool is_word_problem = problem.supply && problem.supply->each;
  if (is_word_problem && (find.empty() || find == "count")) {
    Question question;
    const std::optional<reasoning::SupplyWork> work = reasoning::supply_work(problem);
    question.find = "count";
    question.asked = Asked::Count;
    question.packs = work->answer;
    question.truth = work->answer->count;
    return question;
  }
  if (problem.net && (find.empty() || find == "net")) {
    Question question;
    question.find = "net";
    question.asked = Asked::Net;
    return question;
  }
  if (problem.find.empty() && find.empty()) {
    return failure(std::string("the problem asks for nothing, so no answer can be judged"));
  }
  return measure_question(problem, find.empty() ? problem.find.front() : find);
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
    const bool is_task = question.form != Form::Number || question.asked == Asked::Scale;
    const std::string find = !is_task ? question.find : problem.find.empty() ? "" : problem.find.front();
    const std::optional<Number> answer = lessons::asked_value(problem, *without, find);
    if (answer && question.is_converted) {
      answers.push_back(*answer *
                        units::conversion(problem.solid.unit().to_the(question.unit->dimension()), *question.unit));
    } else if (answer) {
      answers.push_back(copied(problem, *answer, question.unit->dimension()));
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
