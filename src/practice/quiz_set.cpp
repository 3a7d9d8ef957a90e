#include "practice/quiz_set.hpp"

#include <algorithm>

#include "practice/figure.hpp"
#include "practice/generate/generate.hpp"
#include "practice/net_tasks.hpp"
#include "reasoning/tasks/task.hpp"
#include "reasoning/unknown.hpp"

namespace fw::practice {
namespace {

using lessons::Problem;

constexpr const char* ask_net = "Which solid folds from this net?";
constexpr const char* ask_name = "What is the name of this solid?";

QuizItem item_of(Problem problem) {
  std::string skill = type_of(problem);
  return {std::move(problem), std::move(skill), false};
}

std::string measure_title(const Problem& problem, const std::string& name) {
  for (const reasoning::Askable& one : reasoning::askable_measures(problem.solid)) {
    if (one.name == name) {
      return one.title;
    }
  }
  return name;
}

/// What is asked in another way than by a measure, in words; empty where nothing is.
std::string asked_task(const Problem& problem) {
  if (problem.net) {
    return net_question_text(problem);
  }
  if (problem.claim) {
    return "Can the " + measure_title(problem, problem.claim->measure) + " be " + problem.claim->value.text + "?";
  }
  if (problem.face) {
    return "Which two lengths is the area of face " + std::to_string(problem.face->index() + 1) + " worked from?";
  }
  const std::string title = problem.find.empty() ? "" : measure_title(problem, problem.find.front());
  if (problem.wrong) {
    return "For the " + title + " somebody got " + problem.wrong->number.text + " " + problem.wrong->unit.text() +
           ". Which mistake was it?";
  }
  if (!problem.between.empty()) {
    return "Between which two numbers does the " + title + " lie?";
  }
  if (problem.scale) {
    return title == "scale" ? "How many times as long are the edges of the copy?"
                            : "What is the " + title + " of the copy?";
  }
  if (title == "same_number") {
    return "The surface area and the volume are one number. Are they the same?";
  }
  if (title == "least_surface") {
    return "What is the least surface area of a box with whole edges that holds as much?";
  }
  if (title == "purpose") {
    return "What has to be known here?";
  }
  return problem.supply ? "How many does it take?" : "";
}

/// What is asked, in words.
std::string asked_text(const Problem& problem) {
  const std::string task = asked_task(problem);
  if (!task.empty()) {
    return task;
  }
  if (problem.find.front() == "name") {
    return ask_name;
  }
  const std::string title = measure_title(problem, problem.find.front());
  return reasoning::is_looked_at(title) ? "How many " + title + " are there?" : "What is the " + title + "?";
}

/// A problem that asks for several things, once for each of them.
void add_items(QuizSet& set, const Problem& problem) {
  if (problem.supply || problem.find.size() < 2) {
    if (question_of(problem)) {
      Problem one = problem;
      one.prompt = one.prompt.empty() ? asked_text(one) : one.prompt;
      set.push_back(item_of(std::move(one)));
    }
    return;
  }
  for (const std::string& find : problem.find) {
    Problem one = problem;
    one.find = {find};
    if (question_of(one)) {
      one.prompt += (one.prompt.empty() ? "" : " ") + asked_text(one);
      set.push_back(item_of(std::move(one)));
    }
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
  problem.find = {"name"};
  problem.prompt = ask_net;
  problem.supply.reset();
  problem.scale.reset();
  problem.unit.reset();
  problem.claim.reset();
  problem.face.reset();
  problem.wrong.reset();
  problem.between.clear();
  problem.net.reset();
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
  for (const Problem* problem : pool) {
    solids.push_back(problem->solid);
  }
  QuizSet set;
  for (std::size_t number = 0; number < items_in_a_set; ++number) {
    const solids::Solid drawn = net_question(solids, seed, number).solid;
    const auto found = std::find_if(pool.begin(), pool.end(), [&](const Problem* one) { return one->solid == drawn; });
    set.push_back(net_item(**found));
  }
  return set;
}

std::vector<std::string> types_of_level(const QuizSetup& setup) {
  std::vector<std::string> keys;
  for (const TypeName& type : type_names()) {
    const bool is_chosen = std::find(setup.types.begin(), setup.types.end(), type.key) != setup.types.end();
    if (is_chosen && type.level <= setup.level) {
      keys.push_back(type.key);
    }
  }
  return keys;
}

Result<QuizSet, std::string> made_up_set(const QuizSetup& setup) {
  PracticeRequest request;
  request.types = types_of_level(setup);
  request.level = setup.level;
  request.seed = setup.seed;
  request.count = items_in_a_set;
  const auto lessons = generated(request);
  if (!lessons) {
    return failure("No set of these: " + lessons.error() + ".");
  }
  QuizSet set;
  bool from_net = setup.seed % 2 == 1;
  for (const Problem& problem : lessons->front().problems) {
    if (problem.find != std::vector<std::string>{"name"}) {
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
  const auto question = question_of(item.problem);
  if (question && question->asked == Asked::Net) {
    return item.problem.net->ask == lessons::NetAsk::Name ? AnswerForm::CutoutName : AnswerForm::Cutout;
  }
  if (!question || question->form == Form::Name) {
    return item.from_net ? AnswerForm::NetName : AnswerForm::Name;
  }
  if (question->form != Form::Number) {
    return AnswerForm::Option;
  }
  return counts_parts(question->asked) ? AnswerForm::Count : AnswerForm::Number;
}

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

Result<QuizSet, std::string> quiz_set(const QuizSetup& setup, const lessons::Lesson& lesson) {
  switch (setup.source) {
    case QuizSource::Lesson: {
      QuizSet set = set_of_lesson(lesson);
      if (set.empty()) {
        return failure(std::string("This lesson asks for nothing. Choose its nets, or made up."));
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

NetQuestion net_question_of(const QuizItem& item, std::uint64_t seed, std::size_t number) {
  return net_question({item.problem.solid}, seed, number);
}

}  // namespace fw::practice
