#include <algorithm>
#include <tuple>

#include "base/utf8.hpp"
#include "state/apply/handlers.hpp"
#include "tasks/nets/net_task.hpp"
#include "tasks/quiz/quiz_help.hpp"

// A class answers with its hands: the question alone, its options, the answer. Only counts of hands are kept.
namespace fw::state::handlers {
namespace {

constexpr int most_hands = 999;

int* hands_of(Model& model, std::size_t option) {
  const bool counts = model.state.in_item() && item_work(model).stage != ClassStage::Question;
  std::vector<int>* hands = counts ? &item_work(model).hands : nullptr;
  return hands != nullptr && option < hands->size() ? &(*hands)[option] : nullptr;
}

void come_to_options(Model& model) {
  ItemWork& place = item_work(model);
  const Quiz& quiz = model.state.quiz;
  place.stage = ClassStage::Options;
  place.hands.resize(choices_for(quiz.item(), quiz.setup.seed, quiz.number).size(), 0);
}

/// A whole number of hands; nothing where the text is none.
std::optional<int> read_hands(const std::string& text) {
  const bool is_number = !text.empty() && text.size() <= 3 && std::all_of(text.begin(), text.end(), is_ascii_digit);
  return is_number ? std::optional(std::stoi(text)) : std::nullopt;
}

std::string step_forward(Model& model) {
  ItemWork& place = item_work(model);
  switch (place.stage) {
    case ClassStage::Question:
      come_to_options(model);
      if (place.hands.size() > 1) {
        return "show the options";
      }
      [[fallthrough]];  // nothing to choose from: the answer comes at once
    case ClassStage::Options:
      place.stage = ClassStage::Answer;
      finish_item(model);
      return "show the answer";
    case ClassStage::Answer:
      break;
  }
  return on(model, StepItem{1});
}

std::string step_back(Model& model) {
  ItemWork& place = item_work(model);
  switch (place.stage) {
    case ClassStage::Answer:
      place.done = false;
      place.solution_shown = false;
      place.spoken.reset();
      place.desk->work = {};
      model.view.motion = Motion::Still;
      model.view.fold = begins_flat(model.state) ? 1.0 : 0.0;
      place.stage = place.hands.size() > 1 ? ClassStage::Options : ClassStage::Question;
      return "hide the answer";
    case ClassStage::Options:
      place.stage = ClassStage::Question;
      return "hide the options";
    case ClassStage::Question:
      break;
  }
  return on(model, StepItem{-1});
}

}  // namespace

std::string step_class(Model& model, int by) { return by > 0 ? step_forward(model) : step_back(model); }

std::string choose_in_class(Model& model, std::size_t option) {
  ItemWork& place = item_work(model);
  if (place.stage == ClassStage::Options) {
    return on(model, StepHands{option, 1});
  }
  if (place.stage != ClassStage::Answer || option >= place.hands.size()) {
    return {};
  }
  place.spoken = place.spoken == option ? std::nullopt : std::optional(option);
  if (tasks::net_asked(model.state.current()) != nullptr) {
    fold_card(model);
  }
  return "talk about option " + std::string(1, static_cast<char>('A' + option));
}

std::string on(Model& model, const SetHands& command) {
  int* hands = hands_of(model, command.option);
  const std::optional<int> count = read_hands(command.text);
  if (hands == nullptr || !count) {
    return {};
  }
  *hands = *count;
  return "count the hands";
}

std::string on(Model& model, const StepHands& command) {
  int* hands = hands_of(model, command.option);
  if (hands == nullptr) {
    return {};
  }
  *hands = std::clamp(*hands + command.by, 0, most_hands);
  return "count the hands";
}

}  // namespace fw::state::handlers
