#include <algorithm>

#include "app/apply/parts.hpp"
#include "app/quiz_help.hpp"
#include "practice/read_answer.hpp"

// One student answers: what a typed or chosen answer shows, hints, the second try, the worked solution.
namespace fw::app::parts {
namespace {

using practice::AnswerVerdict;

constexpr std::size_t tries_before_the_solution = 2;

bool is_name(const QuizItem& item) {
  const AnswerForm form = answer_form(item);
  return form == AnswerForm::NetName || form == AnswerForm::Name;
}

bool takes_answers(const State& state) { return state.is_asking() && state.quiz.setup.audience == Audience::Student; }

/// A text in which no number can be read is no answer yet.
std::optional<std::string> not_readable(const QuizItem& item, const std::string& typed) {
  if (is_name(item)) {
    return std::nullopt;
  }
  const std::optional<lessons::Supply>& supply = item.problem.supply;
  const auto read = practice::read_answer(typed, supply ? supply->item : "");
  return read ? std::nullopt : std::optional(read.error());
}

Reply judged(const QuizItem& item, const std::string& typed) {
  Reply reply;
  reply.typed = typed;
  if (const auto reason = not_readable(item, typed)) {
    reply.message = *reason;
    return reply;
  }
  const auto diagnosis = practice::diagnosed(item.problem, typed);
  if (!diagnosis) {
    reply.message = diagnosis.error();
    return reply;
  }
  reply.verdict = diagnosis->verdict;
  reply.message = diagnosis->message;
  // Where several mistakes lead to a number it is asked, and nothing is shown that tells.
  const bool tells = reply.verdict == AnswerVerdict::Recognized || reply.verdict == AnswerVerdict::RightNumber;
  if (tells && !diagnosis->causes.empty()) {
    reply.faces = diagnosis->causes.front().faces;
    reply.cause = diagnosis->causes.front().id;
  }
  const bool asks_back = is_name(item) && reply.verdict == AnswerVerdict::Ask;
  reply.is_try = reply.verdict != AnswerVerdict::Right && reply.verdict != AnswerVerdict::RightNumber && !asks_back;
  return reply;
}

std::size_t tries(const ItemWork& place) {
  return static_cast<std::size_t>(
      std::count_if(place.replies.begin(), place.replies.end(), [](const Reply& reply) { return reply.is_try; }));
}

void take_answer(Model& model, const std::string& typed) {
  Quiz& quiz = model.state.quiz;
  ItemWork& place = item_work(model);
  Reply reply = judged(quiz.item(), typed);
  const bool is_right = reply.verdict == AnswerVerdict::Right;
  if (is_right || reply.is_try || reply.verdict == AnswerVerdict::RightNumber) {
    quiz.attempts.push_back({quiz.item().skill, reply.cause, is_right});
  }
  const bool is_try = reply.is_try;
  place.replies.push_back(std::move(reply));
  if (is_right) {
    finish_item(model);
  } else if (is_try && tries(place) >= tries_before_the_solution) {
    show_solution(model);
  }
}

/// The faces that the last answer with a cause spoke of.
std::vector<FaceId> faces_of_answers(const ItemWork& place) {
  for (auto reply = place.replies.rbegin(); reply != place.replies.rend(); ++reply) {
    if (!reply->faces.empty()) {
      return reply->faces;
    }
  }
  return {};
}

}  // namespace

void finish_item(Model& model) {
  item_work(model).done = true;
  if (!asks_from_net(model.state)) {
    return;
  }
  if (model.view.settings.reduced_motion) {
    model.view.fold = 0;
  } else {
    model.view.motion = Motion::Closing;
  }
}

void show_solution(Model& model) {
  ItemWork& place = item_work(model);
  const bool was_done = place.done;
  place.solution_shown = true;
  if (!was_done) {
    finish_item(model);
  }
  if (answer_form(model.state.quiz.item()) != AnswerForm::Number) {
    return;
  }
  const Worked worked = worked_for(model.state);
  Work& work = place.desk->work;
  work.decided = true;
  work.reached = worked.count;
  if (worked.count > 0) {
    if (tries(place) > 0) {
      place.failing = failing_step(worked, faces_of_answers(place));
    }
    work.present = place.failing.value_or(worked.count - 1);
  }
}

std::string on(Model& model, const SetAnswerStyle& command) {
  model.state.quiz.style = command.style;
  return command.style == AnswerStyle::Typed ? "answer by typing" : "answer by choosing";
}

std::string on(Model& model, const AnswerTyped& command) {
  if (!takes_answers(model.state) || command.text.find_first_not_of(' ') == std::string::npos) {
    return {};
  }
  take_answer(model, command.text);
  return "answer";
}

std::string on(Model& model, const AnswerOption& command) {
  if (model.state.in_item() && model.state.quiz.setup.audience == Audience::Class) {
    return choose_in_class(model, command.index);
  }
  if (!takes_answers(model.state) || !is_name(model.state.quiz.item())) {
    return {};
  }
  const practice::NetQuestion asked = question(model.state);
  std::vector<std::size_t>& tried = item_work(model).tried;
  const bool was_tried = std::find(tried.begin(), tried.end(), command.index) != tried.end();
  if (command.index >= asked.options.size() || was_tried) {
    return {};
  }
  tried.push_back(command.index);
  take_answer(model, asked.options[command.index]);
  return "answer";
}

std::string on(Model& model, const ShowHint&) {
  if (!takes_answers(model.state) || item_work(model).hints >= hints_for(model.state.quiz.item()).size()) {
    return {};
  }
  ++item_work(model).hints;
  return "show a hint";
}

std::string on(Model& model, const RevealAnswer&) {
  const bool too_early = model.state.quiz.setup.audience == Audience::Class && model.state.is_asking();
  if (!model.state.in_item() || too_early || item_work(model).solution_shown) {
    return {};
  }
  show_solution(model);
  return "show the solution";
}

}  // namespace fw::app::parts
