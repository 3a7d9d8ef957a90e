#include <algorithm>
#include <tuple>

#include "state/apply/handlers.hpp"
#include "tasks/generate/generate.hpp"

// The start page of the quiz, and the way from item to item.
namespace fw::state::handlers {
namespace {

constexpr int highest_level = 3;

/// The setup with its types filled in where progress says which come back today.
QuizSetup full_setup(const Model& model) {
  QuizSetup setup = model.state.quiz.setup;
  const ProgressPage& page = model.view.progress;
  if (setup.source != QuizSource::Due) {
    return setup;
  }
  std::vector<std::string> types;
  for (const practice::TypeName& type : tasks::type_names()) {
    if (type.level <= setup.level) {
      types.push_back(type.key);
    }
  }
  const practice::Progress kept = page.kept ? *page.kept : practice::Progress{};
  setup.types = practice::spaced_set(kept, page.today, types, tasks::items_in_a_set);
  return setup;
}

std::string go_forward(Model& model) {
  Quiz& quiz = model.state.quiz;
  if (quiz.results) {
    return on(model, CloseResults{});
  }
  if (!quiz.set) {
    return on(model, StartQuiz{});
  }
  if (quiz.setup.audience == Audience::Class) {
    return step_class(model, 1);
  }
  if (quiz.work().done) {
    return on(model, StepItem{1});
  }
  std::string hint = on(model, ShowHint{});
  return hint.empty() ? on(model, RevealAnswer{}) : hint;
}

std::string go_back(Model& model) {
  const Quiz& quiz = model.state.quiz;
  if (!quiz.set) {
    return {};
  }
  return quiz.setup.audience == Audience::Class ? step_class(model, -1) : on(model, StepItem{-1});
}

void begin_set(Model& model, QuizSet set) {
  Quiz& quiz = model.state.quiz;
  quiz.refusal = {};
  quiz.results.reset();
  quiz.set = std::make_shared<const QuizSet>(std::move(set));
  quiz.number = 0;
  quiz.items.assign(quiz.set->size(), ItemWork{});
  come_to_item(model);
}

/// What one student sees at the end; nothing if no item was worked on.
std::optional<FinishedSet> results_of(const Quiz& quiz) {
  FinishedSet finished{quiz.set, {}};
  for (const ItemWork& work : quiz.items) {
    finished.ends.push_back(end_of(work));
  }
  const bool is_untouched =
      std::all_of(finished.ends.begin(), finished.ends.end(), [](ItemEnd end) { return end == ItemEnd::Skipped; });
  const bool has_page = quiz.setup.audience == Audience::Student && !is_untouched;
  return has_page ? std::optional(std::move(finished)) : std::nullopt;
}

}  // namespace

void come_to_item(Model& model) {
  ItemWork& place = item_work(model);
  if (!place.desk) {
    place.desk = fresh_desk(model.state.quiz.item().problem.solid);
  }
  model.view.notice.reset();
  model.view.turn = 0;
  model.view.tilt = 0;
  model.view.nearness = 1;
}

ItemWork& item_work(Model& model) { return model.state.quiz.items[model.state.quiz.number]; }

std::string on(Model& model, const SetAudience& command) {
  model.state.quiz.setup.audience = command.audience;
  return command.audience == Audience::Class ? "ask the class" : "ask one student";
}

std::string on(Model& model, const SetQuizSource& command) {
  model.state.quiz.setup.source = command.source;
  model.state.quiz.refusal = {};
  return "choose where the problems come from";
}

std::string on(Model& model, const SetQuizLevel& command) {
  model.state.quiz.setup.level = std::clamp(command.level, 1, highest_level);
  model.state.quiz.refusal = {};
  return "choose the level";
}

std::string on(Model& model, const ToggleQuizType& command) {
  std::vector<std::string>& types = model.state.quiz.setup.types;
  model.state.quiz.refusal = {};
  if (command.key.empty()) {
    types.clear();
    return "mix every type";
  }
  const auto place = std::find(types.begin(), types.end(), command.key);
  if (place != types.end()) {
    types.erase(place);
  } else {
    types.push_back(command.key);
  }
  return "choose the types";
}

std::string on(Model& model, const NewNumbers&) {
  ++model.state.quiz.setup.seed;
  model.state.quiz.refusal = {};
  return "new numbers";
}

std::string on(Model& model, const StartQuiz&) {
  Quiz& quiz = model.state.quiz;
  auto set = quiz_set(full_setup(model), *model.state.lesson);
  quiz.finished = 0;
  quiz.results.reset();
  if (!set) {
    quiz.refusal = set.error();
    return "start the quiz";
  }
  begin_set(model, std::move(set).value());
  return "start the quiz";
}

std::string on(Model& model, const AskMissedAgain&) {
  const Quiz& quiz = model.state.quiz;
  QuizSet missed;
  for (std::size_t i = 0; quiz.results && i < quiz.results->ends.size(); ++i) {
    if (quiz.results->ends[i] == ItemEnd::Missed) {
      missed.push_back((*quiz.results->set)[i]);
    }
  }
  if (quiz.set || missed.empty()) {
    return {};
  }
  begin_set(model, std::move(missed));
  return "the missed ones again";
}

std::string on(Model& model, const CloseResults&) {
  if (!model.state.quiz.results) {
    return {};
  }
  model.state.quiz.results.reset();
  return "close the results";
}

std::string on(Model& model, const EndQuiz&) {
  Quiz& quiz = model.state.quiz;
  if (!quiz.set) {
    return {};
  }
  quiz.results = results_of(quiz);
  quiz.set.reset();
  quiz.items.clear();
  quiz.number = 0;
  ++quiz.setup.seed;
  model.view.notice.reset();
  return "end the quiz";
}

std::string on(Model& model, const StepItem& command) {
  Quiz& quiz = model.state.quiz;
  if (!quiz.set) {
    return {};
  }
  const std::size_t count = quiz.set->size();
  if (command.by > 0 && quiz.number + 1 == count) {
    std::ignore = on(model, EndQuiz{});
    quiz.finished = quiz.results ? 0 : count;
    return "end the quiz";
  }
  const bool at_first = command.by < 0 && quiz.number == 0;
  if (command.by == 0 || at_first) {
    return {};
  }
  quiz.number = command.by > 0 ? quiz.number + 1 : quiz.number - 1;
  come_to_item(model);
  return "go to item " + std::to_string(quiz.number + 1);
}

std::string on(Model& model, const StepQuiz& command) {
  if (model.state.mode != Mode::Quiz) {
    return {};
  }
  return command.by > 0 ? go_forward(model) : go_back(model);
}

}  // namespace fw::state::handlers
