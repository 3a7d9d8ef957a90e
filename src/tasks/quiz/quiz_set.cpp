#include "tasks/quiz/quiz_set.hpp"

#include <algorithm>

#include "tasks/generate/generate.hpp"
#include "tasks/look.hpp"

namespace fw::tasks {
namespace {

using lessons::Problem;

// Prompts are data of a problem.
constexpr const char* ask_net = "Which solid folds from this net?";
constexpr const char* ask_name = "What is the name of this solid?";

QuizItem item_of(Problem problem) {
  std::string skill = practice::type_of(problem);
  return {std::move(problem), std::move(skill), false};
}

/// A problem that asks for several things, once for each of them.
void add_items(QuizSet& set, const Problem& problem) {
  const bool is_one = problem.tasks.size() < 2 ||
                      std::any_of(problem.tasks.begin(), problem.tasks.end(),
                                  [](const lessons::Task& task) { return practice::stated(task).is_whole_problem(); });
  const auto add = [&](Problem one) {
    if (practice::question_of(one)) {
      const std::string asked = said(practice::first_task(one)->sentence(one));
      one.prompt = one.prompt.empty() ? asked : is_one ? one.prompt : one.prompt + " " + asked;
      set.push_back(item_of(std::move(one)));
    }
  };
  if (is_one) {
    add(problem);
    return;
  }
  for (const lessons::Task& task : problem.tasks) {
    Problem one = problem;
    one.tasks = {task};
    add(std::move(one));
  }
}

QuizSet set_of_lesson(const lessons::Lesson& lesson) {
  QuizSet set;
  for (const Problem& problem : lesson.problems) {
    add_items(set, problem);
  }
  return set;
}

QuizItem net_item(Problem problem) {
  problem.tasks = {tasks::Look("name")};
  problem.prompt = ask_net;
  problem.open.clear();
  QuizItem item = item_of(std::move(problem));
  item.from_net = true;
  return item;
}

/// One problem for each name of the lesson, so that a set does not favor what the lesson has often.
std::vector<const Problem*> one_a_name(const lessons::Lesson& lesson) {
  std::vector<const Problem*> pool;
  for (const Problem& problem : lesson.problems) {
    const bool known = std::any_of(pool.begin(), pool.end(),
                                   [&](const Problem* other) { return other->solid.name() == problem.solid.name(); });
    if (!known) {
      pool.push_back(&problem);
    }
  }
  return pool;
}

QuizSet set_of_nets(const lessons::Lesson& lesson, std::uint64_t seed) {
  const std::vector<const Problem*> pool = one_a_name(lesson);
  std::vector<solids::Solid> solids;
  solids.reserve(pool.size());
  for (const Problem* problem : pool) {
    solids.push_back(problem->solid);
  }
  QuizSet set;
  for (std::size_t number = 0; number < items_in_a_set; ++number) {
    const solids::Solid drawn = practice::net_question(solids, seed, number).solid;
    const auto found = std::find_if(pool.begin(), pool.end(), [&](const Problem* one) { return one->solid == drawn; });
    set.push_back(net_item(**found));
  }
  return set;
}

std::vector<std::string> types_of_level(const QuizSetup& setup) {
  std::vector<std::string> keys;
  for (const practice::TypeName& type : tasks::type_names()) {
    const bool is_chosen = std::find(setup.types.begin(), setup.types.end(), type.key) != setup.types.end();
    if (is_chosen && type.level <= setup.level) {
      keys.push_back(type.key);
    }
  }
  return keys;
}

Result<QuizSet, words::Message> made_up_set(const QuizSetup& setup) {
  tasks::PracticeRequest request;
  request.types = types_of_level(setup);
  request.level = setup.level;
  request.seed = setup.seed;
  request.count = items_in_a_set;
  const auto lessons = tasks::generated(request);
  if (!lessons) {
    return failure(words::message("Can't make this quiz: {reason}.", {{"reason", lessons.error()}}));
  }
  QuizSet set;
  bool from_net = setup.seed % 2 == 1;
  for (const Problem& problem : lessons->front().problems) {
    if (practice::first_task(problem)->form() != AnswerForm::Name) {
      add_items(set, problem);
      continue;
    }
    set.push_back(from_net ? net_item(problem) : item_of(problem));
    if (!from_net) {  // a story may speak of a net, and here the solid stands closed
      set.back().problem.prompt = ask_name;
    }
    from_net = !from_net;
  }
  return set;
}

}  // namespace

AnswerForm answer_form(const QuizItem& item) {
  const practice::TaskType* task = practice::first_task(item.problem);
  const bool is_asked = task != nullptr && task->question(item.problem);
  const AnswerForm form = is_asked ? task->form() : AnswerForm::Name;
  return form == AnswerForm::Name && item.from_net ? AnswerForm::NetName : form;
}

Result<QuizSet, words::Message> quiz_set(const QuizSetup& setup, const lessons::Lesson& lesson) {
  switch (setup.source) {
    case QuizSource::Lesson: {
      QuizSet set = set_of_lesson(lesson);
      if (set.empty()) {
        return failure(words::message("This lesson asks no questions. Choose its nets, or new problems."));
      }
      return set;
    }
    case QuizSource::Nets:
      return set_of_nets(lesson, setup.seed);
    case QuizSource::MadeUp:
    case QuizSource::Due:
      break;
  }
  return made_up_set(setup);
}

bool has_similar(const QuizItem& item) {
  const std::vector<practice::TypeName>& types = type_names();
  return std::any_of(types.begin(), types.end(), [&](const practice::TypeName& one) { return one.key == item.skill; });
}

std::optional<QuizItem> similar_item(const QuizItem& item, int level, std::uint64_t seed) {
  const std::vector<practice::TypeName>& types = type_names();
  const auto type =
      std::find_if(types.begin(), types.end(), [&](const practice::TypeName& one) { return one.key == item.skill; });
  if (type == types.end()) {
    return std::nullopt;
  }
  PracticeRequest request;
  request.types = {item.skill};
  request.level = std::max(level, type->level);
  request.seed = seed;
  request.count = 1;
  const auto lessons = generated(request);
  if (!lessons) {
    return std::nullopt;
  }
  const Problem& problem = lessons->front().problems.front();
  if (item.from_net) {
    return net_item(problem);
  }
  QuizSet made;
  add_items(made, problem);
  return made.empty() ? std::nullopt : std::optional(std::move(made.front()));
}

practice::NetQuestion net_question_of(const QuizItem& item, std::uint64_t seed, std::size_t number) {
  return practice::net_question({item.problem.solid}, seed, number);
}

}  // namespace fw::tasks
