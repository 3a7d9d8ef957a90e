#include "tasks/quiz/quiz_help.hpp"

#include <algorithm>

#include "tasks/nets/net_task.hpp"

namespace fw::tasks {
namespace {

using geometry::FaceId;
using reasoning::Step;
using reasoning::StepKind;

std::optional<reasoning::Explanation> explanation_of(const QuizItem& item) {
  const auto all = practice::explained(item.problem);
  return all && !all->empty() ? std::optional(all->front()) : std::nullopt;
}

/// A step as one sentence with its line.
std::string told(const Step& step) {
  const std::string line = step.line ? algebra::plain_text(*step.line) : "";
  if (step.reason.empty() || line.empty()) {
    return said(step.reason) + line;
  }
  return said(step.reason) + "  " + line;
}

/// How well a step's faces are those of a cause: 1 the same, 0 none of them.
double likeness(const std::vector<FaceId>& step, const std::vector<FaceId>& faces) {
  const auto both = std::count_if(step.begin(), step.end(), [&](FaceId face) {
    return std::find(faces.begin(), faces.end(), face) != faces.end();
  });
  const double all = static_cast<double>(step.size() + faces.size()) - static_cast<double>(both);
  return all > 0 ? static_cast<double>(both) / all : 0;
}

}  // namespace

std::uint64_t choice_seed(std::uint64_t seed, std::size_t number) {
  constexpr std::uint64_t apart = 0x9E3779B97F4A7C15ULL;
  return seed ^ (apart * (number + 1));
}

std::vector<practice::Choice> choices_for(const QuizItem& item, std::uint64_t seed, std::size_t number) {
  auto choices = practice::choices_of(item.problem, choice_seed(seed, number));
  return choices ? std::move(choices).value() : std::vector<practice::Choice>{};
}

std::vector<practice::Hint> hints_for(const QuizItem& item, const reasoning::ClassNotation& notation) {
  auto hints = practice::hints_of(item.problem, "", notation);
  return hints ? std::move(hints).value() : std::vector<practice::Hint>{};
}

std::vector<practice::Choice> reasons_for(const QuizItem& item) {
  const tasks::NetTask* net = tasks::net_asked(item.problem);
  return net == nullptr ? std::vector<practice::Choice>{} : tasks::plain(net->net_reasons(item.problem));
}

NameChoice names_for(const QuizItem& item, std::uint64_t seed, std::size_t number) {
  NameChoice found;
  if (answer_form(item) != AnswerForm::CutoutName) {
    practice::NetQuestion names = net_question_of(item, seed, number);
    return {std::move(names.options), names.right_option};
  }
  for (practice::Choice& one : choices_for(item, seed, number)) {
    found.right = one.is_right ? found.names.size() : found.right;
    found.names.push_back(said(one.text));
  }
  return found;
}

std::vector<std::string> told_solution(const QuizItem& item) {
  std::vector<std::string> sentences;
  if (tasks::net_asked(item.problem) != nullptr) {
    for (const Step& step : tasks::net_steps(item.problem)) {
      sentences.push_back(said(step.reason));
    }
    return sentences;
  }
  if (const auto explanation = explanation_of(item)) {
    for (const Step& step : reasoning::all_steps(*explanation)) {
      sentences.push_back(told(step));
    }
  }
  return sentences;
}

words::Message answer_text(const QuizItem& item) {
  if (tasks::net_asked(item.problem) != nullptr) {
    return right_choices(tasks::net_choices(item.problem));
  }
  if (answer_form(item) == AnswerForm::Option) {
    return practice::right_answer(item.problem).value_or({});
  }
  const auto explanation = explanation_of(item);
  return explanation ? explanation->answer : words::Message();
}

std::size_t failing_step(const WorkedProblem& worked, const std::vector<FaceId>& faces) {
  constexpr double alike_enough = 0.5;  // a step that speaks of all faces tells nothing about one of them
  double best = 0;
  std::optional<std::size_t> found;
  std::optional<std::size_t> line;
  std::optional<std::size_t> relation;
  for (std::size_t i = 0; i < worked.count; ++i) {
    const Step& step = worked.step(i);
    const double like = step.line ? likeness(step.faces, faces) : 0;
    if (like >= alike_enough && like > best) {
      best = like;
      found = i;
    }
    relation = step.kind == StepKind::Relation ? i : relation;
    line = line || !step.line ? line : i;
  }
  return found.value_or(relation.value_or(line.value_or(worked.count - 1)));
}

}  // namespace fw::tasks
