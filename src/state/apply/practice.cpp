#include <algorithm>

#include "practice/read_answer.hpp"
#include "state/apply/handlers.hpp"
#include "state/worked.hpp"
#include "tasks/decide/mistake.hpp"
#include "tasks/generate/generate.hpp"
#include "tasks/nets/net_task.hpp"
#include "tasks/quiz/quiz_help.hpp"

// One student answers: what a typed or chosen answer shows, hints, further tries, the worked solution.
namespace fw::state::handlers {
namespace {

using practice::AnswerVerdict;

constexpr std::size_t tries_before_the_solution = 3;

bool takes_answers(const State& state) { return state.is_asking() && state.quiz.setup.audience == Audience::Student; }

/// A text in which no number can be read is no answer yet.
std::optional<words::Message> not_readable(const QuizItem& item, const std::string& typed, bool asks_value) {
  const AnswerForm form = answer_form(item);
  if (is_name(form) || (is_chosen(form) && !asks_value)) {
    return std::nullopt;
  }
  const auto question = practice::question_of(item.problem);
  const auto read = practice::read_answer(typed, question ? question->item : "", item.problem.prompt);
  return read ? std::nullopt : std::optional(read.error());
}

/// Names are typed as words. A single letter is not a name, and without options on screen it chooses nothing.
bool is_letter_for_name(const QuizItem& item, const std::string& typed) {
  const auto characters =
      std::count_if(typed.begin(), typed.end(), [](char c) { return c != ' ' && c != '.' && c != ')'; });
  return is_name(answer_form(item)) && characters < 2;
}

Reply judged(const QuizItem& item, const std::string& typed, std::uint64_t seed, bool asks_value) {
  Reply reply;
  reply.typed = typed;
  if (const auto reason = not_readable(item, typed, asks_value)) {
    reply.message = *reason;
    return reply;
  }
  if (is_letter_for_name(item, typed)) {
    reply.message = practice::name_feedback(item.problem.solid, typed).message;
    return reply;
  }
  const auto diagnosis = practice::diagnosed(item.problem, typed, "", seed);
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
  // Ask again for what names no solid and no option. A number always counts as an answer.
  const bool is_in_words = is_name(answer_form(item)) || (is_chosen(answer_form(item)) && !asks_value);
  const bool is_no_answer =
      is_in_words && (reply.verdict == AnswerVerdict::Ask || reply.verdict == AnswerVerdict::Unrecognized);
  reply.is_try = reply.verdict != AnswerVerdict::Right && reply.verdict != AnswerVerdict::RightNumber && !is_no_answer;
  return reply;
}

std::size_t tries(const ItemWork& place) {
  return static_cast<std::size_t>(
      std::count_if(place.replies.begin(), place.replies.end(), [](const Reply& reply) { return reply.is_try; }));
}

/// Only the first answer to a problem counts: later ones come after some help.
void count_once(Model& model, const std::string& cause, bool is_right) {
  Quiz& quiz = model.state.quiz;
  ItemWork& place = item_work(model);
  if (!place.is_counted) {
    quiz.attempts.push_back({quiz.item().skill, cause, is_right, place.hints > 0 || place.retries > 0});
    place.is_counted = true;
  }
}

void take_reply(Model& model, Reply reply) {
  ItemWork& place = item_work(model);
  const bool is_right = reply.verdict == AnswerVerdict::Right;
  if (is_right || reply.is_try || reply.verdict == AnswerVerdict::RightNumber) {
    count_once(model, reply.cause, is_right);
  }
  const bool is_try = reply.is_try;
  place.replies.push_back(std::move(reply));
  if (is_right) {
    finish_item(model);
  } else if (is_try && tries(place) >= tries_before_the_solution) {
    show_solution(model);
  }
}

void take_answer(Model& model, const std::string& typed) {
  const Quiz& quiz = model.state.quiz;
  const std::uint64_t seed = tasks::choice_seed(quiz.setup.seed, quiz.number);
  take_reply(model, judged(quiz.item(), typed, seed, quiz.work().asks_value));
}

/// Puts the option among those that were chosen; false where it was among them.
bool is_new(std::vector<std::size_t>& chosen, std::size_t index) {
  const bool is_there = std::find(chosen.begin(), chosen.end(), index) != chosen.end();
  if (!is_there) {
    chosen.push_back(index);
  }
  return !is_there;
}

Reply reply_to(const practice::Choice& choice) {
  Reply reply;
  reply.typed = said(choice.text);
  reply.verdict = choice.is_right ? AnswerVerdict::Right : AnswerVerdict::Recognized;
  reply.message = choice.message;
  reply.cause = choice.cause;
  reply.is_try = !choice.is_right;
  return reply;
}

/// "No net" was right: the answer counts with its reason.
std::string ask_why(Model& model) {
  item_work(model).asks_why = true;
  return "answer";
}

/// The mistake was found. The right number is typed next, and that answer counts.
std::string ask_value(Model& model, const practice::Choice& found) {
  ItemWork& place = item_work(model);
  place.asks_value = true;
  Reply reply = reply_to(found);
  reply.verdict = AnswerVerdict::Ask;
  reply.typed.clear();  // it is marked among the options, and the field is empty
  reply.cause.clear();
  place.replies.push_back(std::move(reply));
  return "answer";
}

/// Every place that fits is asked for: the right ones that were chosen stay chosen.
std::string places_so_far(const std::vector<practice::Choice>& choices, const std::vector<std::size_t>& tried) {
  std::string letters;
  for (const std::size_t one : tried) {
    if (choices[one].is_right || one == tried.back()) {
      letters += (letters.empty() ? "" : ", ") + said(choices[one].text);
    }
  }
  return letters;
}

std::string choose_reason(Model& model, std::size_t index) {
  const std::vector<practice::Choice> reasons = reasons_for(model.state.quiz.item());
  if (index >= reasons.size() || !is_new(item_work(model).reasons, index)) {
    return {};
  }
  take_reply(model, reply_to(reasons[index]));
  return "answer";
}

/// Once the answer is out, card of another option is folded.
std::string show_option(Model& model, std::size_t index) {
  const Quiz& quiz = model.state.quiz;
  const tasks::NetTask* net = tasks::net_asked(quiz.item().problem);
  const bool has_cards = net != nullptr && net->has_letters();
  if (!has_cards || index >= choices_for(quiz.item(), quiz.setup.seed, quiz.number).size()) {
    return {};
  }
  item_work(model).spoken = index;
  fold_card(model);
  return "talk about option " + practice::letter(index);
}

/// All wrong options were tried (of more than two): picking the one that is left shows nothing.
bool is_decided(const std::vector<practice::Choice>& choices, const std::vector<std::size_t>& tried) {
  const auto wrong = std::count_if(choices.begin(), choices.end(), [](const auto& one) { return !one.is_right; });
  const auto met = std::count_if(tried.begin(), tried.end(), [&](std::size_t one) { return !choices[one].is_right; });
  return choices.size() > 2 && met == wrong;
}

std::string choose_option(Model& model, std::size_t index) {
  const QuizItem& item = model.state.quiz.item();
  ItemWork& place = item_work(model);
  if (place.asks_why) {
    return choose_reason(model, index);
  }
  if (place.asks_value) {
    return {};
  }
  const std::vector<practice::Choice> choices = choices_for(item, model.state.quiz.setup.seed, model.state.quiz.number);
  if (index >= choices.size() || !is_new(place.tried, index)) {
    return {};
  }
  if (choices[index].is_right && !reasons_for(item).empty()) {
    return ask_why(model);
  }
  if (choices[index].is_right && tasks::asks_which_mistake(item.problem)) {
    return ask_value(model, choices[index]);
  }
  const tasks::NetTask* net = tasks::net_asked(item.problem);
  take_answer(model, net == nullptr         ? practice::letter(index)
                     : net->takes_several() ? places_so_far(choices, place.tried)
                                            : said(choices[index].text));
  if (!item_work(model).done && is_decided(choices, item_work(model).tried)) {
    show_solution(model);
  }
  return "answer";
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
  fold_card(model);
}

void fold_card(Model& model) {
  if (!begins_flat(model.state)) {
    return;
  }
  if (model.view.settings.reduced_motion) {
    model.view.fold = 0;
    model.view.motion = Motion::Still;
  } else {
    model.view.fold = 1;
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
  const AnswerForm form = answer_form(model.state.quiz.item());
  if (!is_worked(form)) {
    return;
  }
  const WorkedProblem worked = worked_for(model.state);
  Work& work = place.desk->work;
  work.decided = true;
  work.reached = worked.count;
  if (worked.count > 0) {
    if (tries(place) > 0) {
      place.failing = tasks::failing_step(worked, faces_of_answers(place));
    }
    work.present = place.failing.value_or(worked.count - 1);
    work.line = worked.board.lines.empty() ? 0 : worked.board.lines.size() - 1;
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
  if (model.state.in_item() && item_work(model).done) {
    return show_option(model, command.index);
  }
  if (!takes_answers(model.state)) {
    return {};
  }
  const Quiz& quiz = model.state.quiz;
  const AnswerForm form = answer_form(quiz.item());
  if (is_chosen(form)) {
    return choose_option(model, command.index);
  }
  if (!is_name(form)) {
    return {};
  }
  const std::vector<std::string> names = names_for(quiz.item(), quiz.setup.seed, quiz.number).names;
  if (command.index >= names.size() || !is_new(item_work(model).tried, command.index)) {
    return {};
  }
  take_answer(model, names[command.index]);
  return "answer";
}

std::string on(Model& model, const ShowHint&) {
  if (!takes_answers(model.state) ||
      item_work(model).hints >= hints_for(model.state.quiz.item(), class_notation(model.state)).size()) {
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
  if (model.state.is_asking()) {
    count_once(model, practice::solution_read, false);
  }
  show_solution(model);
  return "show the solution";
}

std::string on(Model& model, const TryNewNumbers&) {
  Quiz& quiz = model.state.quiz;
  if (!model.state.in_item() || quiz.setup.audience != Audience::Student || !quiz.work().done) {
    return {};
  }
  const std::size_t retries = quiz.work().retries + 1;
  const std::uint64_t seed = tasks::choice_seed(quiz.setup.seed, quiz.number + retries * quiz.set->size());
  std::optional<QuizItem> similar = tasks::similar_item(quiz.item(), quiz.setup.level, seed);
  if (!similar) {
    return {};
  }
  QuizSet set = *quiz.set;
  set[quiz.number] = std::move(*similar);
  quiz.set = std::make_shared<const QuizSet>(std::move(set));
  item_work(model) = {};
  item_work(model).retries = retries;
  come_to_item(model);
  return "try new numbers";
}

}  // namespace fw::state::handlers
