#include <CLI/CLI.hpp>
#include <algorithm>
#include <iostream>
#include <memory>

#include "cli/arguments.hpp"
#include "cli/json_output.hpp"
#include "cli/open_lesson.hpp"
#include "cli/told_solution.hpp"
#include "cli/verbs/verbs.hpp"
#include "tasks/nets/net_task.hpp"

namespace fw::cli {
namespace {

using reasoning::Explanation;
using reasoning::Route;
using reasoning::SolutionOptions;
using reasoning::Step;

constexpr int most_places = 9;

struct ExplainOptions {
  std::string lesson;
  std::optional<std::string> problem;
  std::string route = "formula";
  std::optional<int> places;
  std::string unit;
  SolutionStyle style{"every", {}};
  algebra::ClassNotation notation;  ///< of the lines on the board
  bool json = false;
};

// ---- JSON ----

Json aside_json(const exact::ColumnWork& aside) {
  return {{"caption", aside.caption}, {"text", exact::plain_text(aside)}};
}

Json step_json(const Step& step) {
  Json faces = Json::array();
  for (const reasoning::FaceId face : step.faces) {
    faces.push_back(face.index() + 1);
  }
  Json asides = Json::array();
  for (const exact::ColumnWork& aside : step.asides) {
    asides.push_back(aside_json(aside));
  }
  return {{"equation", step.line ? Json(algebra::plain_text(*step.line)) : Json(nullptr)},
          {"mathml", step.line ? Json(algebra::mathml(*step.line)) : Json(nullptr)},
          {"reason", said(step.reason)},
          {"asides", std::move(asides)},
          {"faces", std::move(faces)}};
}

Json steps_json(const std::vector<Step>& steps) {
  Json list = Json::array();
  for (const Step& step : steps) {
    list.push_back(step_json(step));
  }
  return list;
}

// Steps are counted through all parts, from 1.
Json board_json(const reasoning::Board& board) {
  Json list = Json::array();
  for (const reasoning::BoardLine& line : board.lines) {
    Json equations = Json::array();
    for (const algebra::NotationLine& equation : line.equations) {
      equations.push_back({{"text", algebra::plain_text(equation)}, {"mathml", algebra::mathml(equation)}});
    }
    Json steps = Json::array();
    for (const std::size_t step : line.steps) {
      steps.push_back(step + 1);
    }
    list.push_back({{"equations", std::move(equations)}, {"reason", said(line.reason)}, {"steps", std::move(steps)}});
  }
  return list;
}

// A word problem's amount is worked out on the way to its count; it is the answer where the problem asks for it too.
bool asks_for_count_alone(const lessons::Problem& problem, const Explanation& one) {
  const std::vector<std::string> asked = lessons::find_of(problem);
  return one.packs && std::find(asked.begin(), asked.end(), one.find) == asked.end();
}

Json explanation_json(const lessons::Problem& problem, const std::string& route, const Explanation& one,
                      const algebra::ClassNotation& notation) {
  Json json{{"id", problem.id}, {"find", one.find}, {"route", route}};
  const reasoning::Answer& answer = one.solution.answer;
  if (one.task && one.task->outcome && one.task->outcome->unit) {
    json["answer"] = quantity_json(one.task->outcome->amount, *one.task->outcome->unit);
    json["answer"]["text"] = said(one.answer);
  } else if (answer.text.empty() || one.task || asks_for_count_alone(problem, one)) {
    json["answer"] = {{"text", said(one.answer)}};
  } else {
    json["answer"] = quantity_json(answer.amount, answer.unit);
    json["answer"]["text"] = answer.text;
    json["answer"]["notes"] = Json::array();
    for (const words::Message& note : answer.notes) {
      json["answer"]["notes"].push_back(said(note));
    }
  }
  std::vector<Step> steps;
  for (const reasoning::Solution& edge : one.edges) {
    steps.insert(steps.end(), edge.steps.begin(), edge.steps.end());
  }
  json["steps"] = steps_json(one.edges.empty() ? one.solution.steps : steps);
  if (one.task) {
    json["task"] = {{"name", one.task->task}, {"steps", steps_json(one.task->steps)}};
  }
  if (one.packs) {
    json["supply"] = {{"decision", lessons::word_of(one.packs->decision.purpose)},
                      {"reason", said(one.packs->decision.sentence)},
                      {"answer", one.packs->answer ? Json(said(one.packs->answer->text)) : Json(nullptr)},
                      {"steps", steps_json(one.packs->steps)}};
  }
  json["board"] = board_json(board_of(one, notation));
  return json;
}

// ---- the verb ----

struct NamedRoute {
  std::string name;
  Route route;
};
std::vector<NamedRoute> routes_of(const std::string& name) {
  const NamedRoute formula{"formula", Route::Formula};
  const NamedRoute faces{"faces", Route::FaceByFace};
  if (name == "both") {
    return {formula, faces};
  }
  return {name == "faces" ? faces : formula};
}

// What is measured face by face; for a length or a volume that way leads nowhere.
bool is_area(const std::string& find) {
  return find == "surface_area" || find == "lateral_area" || find == "base_area";
}

bool asks_for_no_area(const lessons::Task& task) {
  const std::string find = task->find();
  return !find.empty() && !is_area(find);
}

void tell(const ExplainOptions& options, const lessons::Problem& problem, const std::string& message) {
  std::cerr << "foldwright: " << options.lesson << ": problem " << problem.id << ": " << message << '\n';
}

// A question about nets has one way to its answer: folding.
void explain_net(const lessons::Problem& problem, bool as_json, Json& list) {
  if (!as_json) {
    std::cout << told_heading(problem) << '\n' << told_net(problem) << '\n';
    return;
  }
  list.push_back({{"id", problem.id},
                  {"find", "net"},
                  {"answer", {{"text", said(tasks::net_answer(problem))}}},
                  {"steps", steps_json(tasks::net_steps(problem))}});
}

// One way through a problem. Returns whether anything was said: there may be no area to add up face by face.
bool explain_by(const NamedRoute& named, lessons::Problem problem, const ExplainOptions& options, Json& list,
                ExitStatus& status) {
  if (named.route == Route::FaceByFace) {
    problem.tasks.erase(std::remove_if(problem.tasks.begin(), problem.tasks.end(), asks_for_no_area),
                        problem.tasks.end());
    if (lessons::find_of(problem).empty()) {
      return false;
    }
  }
  SolutionOptions solution_options;
  solution_options.route = named.route;
  if (options.json || options.style.is_board()) {
    solution_options.notation = options.notation;
  }
  solution_options.places = options.places;
  if (!options.unit.empty()) {
    solution_options.unit = units::Unit::find(options.unit);
  }
  const auto all = practice::explained(problem, solution_options);
  if (!all) {
    tell(options, problem, said(all.error()));
    status = worse(status, ExitStatus::LessonAtFault);
    return true;
  }
  for (const Explanation& one : *all) {
    if (options.json) {
      list.push_back(explanation_json(problem, named.name, one, options.notation));
      continue;
    }
    std::cout << told_heading(problem) << (options.route == "both" ? " (" + named.name + ")" : "") << '\n'
              << told_solution(one, options.style.is_board(), options.notation) << '\n';
  }
  return !all->empty();
}

ExitStatus explain(ExplainOptions options) {
  ExitStatus status = ExitStatus::Done;
  const std::optional<lessons::Lesson> lesson = open_lesson(options.lesson, status);
  if (!lesson) {
    return status;
  }
  options.notation = options.style.notation(*lesson);
  Json list = Json::array();
  for (const lessons::Problem& problem : chosen_problems(*lesson, options.lesson, options.problem, status)) {
    if (tasks::net_asked(problem) != nullptr) {
      explain_net(problem, options.json, list);
      continue;
    }
    if (problem.tasks.empty()) {  // it is there to be looked at, and no mistake
      tell(options, problem, "asks nothing, so there is nothing to work out; \"find\": [\"volume\"] would ask");
      continue;
    }
    bool told = false;
    for (const NamedRoute& named : routes_of(options.route)) {
      told = explain_by(named, problem, options, list, status) || told;
    }
    if (!told) {
      tell(options, problem, "asks for no area, so there is nothing to add up face by face");
      status = worse(status, ExitStatus::LessonAtFault);
    }
  }
  if (options.json && status != ExitStatus::WrongUsage) {
    print_json({{"problems", std::move(list)}});
  }
  return status;
}

}  // namespace

void add_explain(CLI::App& app, ExitStatus& status) {
  const auto options = std::make_shared<ExplainOptions>();
  CLI::App* verb = app.add_subcommand("explain", "Works every problem out, step by step");
  verb->add_option("LESSON", options->lesson, "The lesson file")->type_name(file_type)->required();
  verb->add_option("--problem", options->problem, "The id of the one problem to explain");
  verb->add_option("--route", options->route, "By formula, face by face, or both")
      ->check(CLI::IsMember({"faces", "formula", "both"}))
      ->capture_default_str();
  verb->add_option("--places", options->places, "Decimals of an answer that does not end")
      ->check(CLI::Range(0, most_places))
      ->capture_default_str();
  verb->add_option("--unit", options->unit, "The unit of the answers, such as m or ft^2")
      ->check([](const std::string& text) {
        return units::Unit::find(text) ? std::string() : "\"" + text + "\" is no unit; cm, ft^2 and L are some";
      });
  add_style_options(*verb, options->style);
  verb->add_flag("--json", options->json, "Print JSON for programs");
  verb->callback([options, &status] { status = explain(*options); });
}

}  // namespace fw::cli
