#include "practice/task_type.hpp"

#include <algorithm>

#include "base/ensure.hpp"
#include "lessons/masking.hpp"
#include "lessons/open_faces.hpp"

namespace fw::practice {

using lessons::Problem;
using lessons::Task;
using reasoning::Explanation;

bool is_name(AnswerForm form) {
  return form == AnswerForm::NetName || form == AnswerForm::Name || form == AnswerForm::CutoutName;
}

bool is_flat(AnswerForm form) {
  return form == AnswerForm::NetName || form == AnswerForm::CutoutName || form == AnswerForm::Cutout;
}

bool is_worked(AnswerForm form) {
  return form == AnswerForm::Number || form == AnswerForm::Count || form == AnswerForm::Option;
}

bool is_chosen(AnswerForm form) { return form == AnswerForm::Option || form == AnswerForm::Cutout; }

std::vector<Fact> TaskType::facts(const Problem&) const { return {}; }

ExplainedAt TaskType::explained_at(const Problem&) const { return ExplainedAt::ItsPlace; }

std::optional<reasoning::TaskWork> TaskType::work(const Problem&, int) const { return std::nullopt; }

std::vector<words::Message> TaskType::masking(const Problem&) const { return {}; }

const TaskType& stated(const Task& task) {
  const TaskType* type = task.as<TaskType>();
  ensure(type != nullptr, "a problem asks for something that is no type of question");
  return *type;
}

const TaskType* first_task(const Problem& problem) {
  for (const Task& task : problem.tasks) {
    if (stated(task).has_question()) {
      return &stated(task);
    }
  }
  return nullptr;
}

Result<Question, words::Message> question_of(const Problem& problem, const std::string& find) {
  const TaskType* task = task_asked(problem, find);
  if (task == nullptr) {
    return failure(find.empty() ? words::message("the problem asks for nothing, so no answer can be judged")
                                : words::message("the problem does not ask for \"{find}\"", {{"find", find}}));
  }
  const auto asked = task->question(problem);
  if (!asked) {
    return failure(asked.error());
  }
  Question question = *asked;
  question.round_to = task->is_rounded() ? problem.round_to : std::nullopt;
  question.has_circle = problem.solid.traits().has_round_base;
  return question;
}

const TaskType* task_asked(const Problem& problem, const std::string& find) {
  if (find.empty()) {
    return first_task(problem);
  }
  for (const Task& task : problem.tasks) {
    if (task->key() == find && stated(task).has_question()) {
      return &stated(task);
    }
  }
  return nullptr;
}

std::string item_of(const Problem& problem) {
  for (const Task& task : problem.tasks) {
    if (std::string item = stated(task).item(); !item.empty()) {
      return item;
    }
  }
  return {};
}

Result<Explanation, words::Message> explained_task(const Problem& problem, const Task& task,
                                                   const reasoning::SolutionOptions& options) {
  reasoning::SolutionOptions with_open = options;
  with_open.open = lessons::open_faces(problem);
  if (!options.places && task->is_rounded()) {
    with_open.places = problem.round_to;
  }
  return stated(task).explained(problem, with_open);
}

Result<std::vector<Explanation>, words::Message> explained(const Problem& problem,
                                                           const reasoning::SolutionOptions& options) {
  std::vector<Explanation> all;
  for (const ExplainedAt at : {ExplainedAt::ItsPlace, ExplainedAt::TheEnd}) {
    for (const Task& task : problem.tasks) {
      if (stated(task).explained_at(problem) != at) {
        continue;
      }
      auto one = explained_task(problem, task, options);
      if (!one) {
        return failure(one.error());
      }
      all.push_back(std::move(one).value());
    }
  }
  return all;
}

std::optional<reasoning::TaskWork> task_work(const Problem& problem, int places) {
  for (const Task& task : problem.tasks) {
    if (auto work = stated(task).work(problem, places)) {
      return work;
    }
  }
  return std::nullopt;
}

std::string type_of(const Problem& problem) {
  const TaskType* task = first_task(problem);
  return task == nullptr || !task->question(problem) ? "" : task->type(problem);
}

std::vector<words::Message> masking_hints(const Problem& problem) {
  std::vector<std::string> measures;
  std::vector<words::Message> others;
  for (const Task& task : problem.tasks) {
    measures.push_back(stated(task).masked_measure());
    for (words::Message& hint : stated(task).masking(problem)) {
      others.push_back(std::move(hint));
    }
  }
  std::vector<words::Message> hints = lessons::masking_hints(problem.solid, measures);
  hints.insert(hints.end(), others.begin(), others.end());
  return hints;
}

Result<std::vector<Hint>, words::Message> hints_of(const Problem& problem, const std::string& find,
                                                   const reasoning::ClassNotation& notation) {
  const auto question = question_of(problem, find);
  return question ? task_asked(problem, find)->hints(problem, notation) : failure(question.error());
}

Result<std::vector<Choice>, words::Message> choices_of(const Problem& problem, std::uint64_t seed,
                                                       const std::string& find) {
  const auto question = question_of(problem, find);
  Seed stream{seed};
  return question ? task_asked(problem, find)->choices(problem, *question, stream) : failure(question.error());
}

Result<words::Message, words::Message> right_answer(const Problem& problem, const std::string& find) {
  const auto question = question_of(problem, find);
  return question ? task_asked(problem, find)->answer(problem, *question) : failure(question.error());
}

Result<Diagnosis, words::Message> diagnosed(const Problem& problem, std::string_view typed, const std::string& find,
                                            std::uint64_t seed) {
  const auto question = question_of(problem, find);
  return question ? task_asked(problem, find)->judged(problem, *question, typed, seed) : failure(question.error());
}

}  // namespace fw::practice
