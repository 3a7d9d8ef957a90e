// What is told of every solid and every problem agrees: measure, explanation, key, options and diagnosis.
#include <algorithm>
#include <set>

#include "lessons/asked.hpp"
#include "lessons/write_lesson.hpp"
#include "made_up.hpp"
#include "practice/choices.hpp"
#include "practice/diagnosis.hpp"
#include "reasoning/explanation.hpp"
#include "solids/naming.hpp"
#include "support/diagnosed_problems.hpp"
#include "tasks/catalog.hpp"
#include "tasks/generate/generate.hpp"
#include "tasks/nets/net_task.hpp"

namespace fw::laws {
namespace {

using lessons::Problem;
using practice::AnswerVerdict;

const std::set<std::string> parts{"faces", "edges", "vertices"};

/// A problem that asks of the solid all that can be asked and is not given.
Problem asking_all(const Solid& solid) {
  std::vector<std::string> find = lessons::askable(solid);
  find.emplace_back("name");
  find.insert(find.end(), parts.begin(), parts.end());
  const auto needs_no_work = [&](const std::string& name) {
    const bool is_length = !lessons::dimension_of_whole(name) && name != "name" && parts.count(name) == 0;
    return is_length && (solid.values().count(name) == 0 || solid.is_given({name, "", 1}));
  };
  find.erase(std::remove_if(find.begin(), find.end(), needs_no_work), find.end());
  return {"made-up", "", solid.description(), {}, solid, {}, test::tasks_of(find)};
}

/// The value as the verb "measure" prints it, with both sides of a rounded one: "≈ 20.65 cm²".
std::string measured(const Solid& solid, const std::string& name) {
  constexpr int places = 2;
  if (name == "volume") {
    return units::text(solid.volume(), places);
  }
  return units::text(name == "lateral_area" ? *solid.lateral_area()
                     : name == "base_area"  ? *solid.base_area()
                                            : solid.surface_area(),
                     places);
}

/// "faces", or "face" of a single one.
std::string counted_noun(const reasoning::Explanation& one) {
  const bool is_one = said(one.answer).rfind("1 ", 0) == 0;
  return !is_one ? one.find : one.find == "vertices" ? "vertex" : one.find.substr(0, one.find.size() - 1);
}

std::string explanations_end_in_the_measure(const Solid& solid, test::Dice&) {
  const Problem problem = asking_all(solid);
  const auto all = practice::explained(problem);
  if (!all) {
    return said(all.error());
  }
  std::string wrong = all->size() == problem.tasks.size() ? "" : "something that is asked is not explained. ";
  for (const reasoning::Explanation& one : *all) {
    const bool counts = parts.count(one.find) != 0;  // its key is the number alone
    const std::string answer = said(one.answer);
    const std::string key =
        said(practice::right_answer(problem, one.find).value()) + (counts ? " " + counted_noun(one) : "");
    if (answer != key) {
      wrong += one.find + " is explained as " + answer + ", the key has another. ";
    }
    if (!lessons::dimension_of_whole(one.find)) {
      continue;
    }
    if (answer != measured(solid, one.find)) {
      wrong += one.find + " is explained as " + answer + " and measured " + measured(solid, one.find) + ". ";
    }
    const std::vector<reasoning::Step> steps = reasoning::all_steps(one);
    const auto last = std::find_if(steps.rbegin(), steps.rend(), [](const auto& step) {
      return step.line.has_value() && step.kind != reasoning::StepKind::Check;
    });
    const std::string line = last == steps.rend() ? "" : algebra::plain_text(*last->line);
    if (line.size() < answer.size() || line.substr(line.size() - answer.size()) != answer) {
      wrong += "the last line, " + line + ", does not end in " + answer + ". ";
    }
  }
  return wrong;
}

std::string verdict_of(const Problem& problem, const std::string& typed, const std::string& find) {
  const auto diagnosis = practice::diagnosed(problem, typed, find);
  return diagnosis ? practice::text(diagnosis->verdict) : said(diagnosis.error());
}

std::string right_answers_are_right(const Solid& solid, test::Dice& dice) {
  const Problem problem = asking_all(solid);
  std::string wrong;
  for (const std::string& find : lessons::find_of(problem)) {
    const std::string answer = said(practice::right_answer(problem, find).value());
    const std::string verdict = verdict_of(problem, answer, find);
    wrong += verdict == "right" ? "" : answer + " for " + find + " is judged " + verdict + ". ";
  }
  // In another unit, and a tenth more than it is.
  const units::Unit unit = dice.below(2) == 0 ? *units::Unit::find("cm^3") : *units::Unit::find("ft^3");
  const units::Volume volume = solid.volume().in(unit);
  const std::string answer = exact::fixed_text(volume.amount(), 12) + " " + unit.ascii();
  const std::string more = exact::fixed_text(volume.amount() * exact::Number::ratio(11, 10), 12) + " " + unit.ascii();
  wrong += verdict_of(problem, answer, "volume") == "right" ? "" : answer + " is not judged right. ";
  wrong += verdict_of(problem, more, "volume") != "right" ? "" : more + " is judged right. ";
  return wrong;
}

/// What is wrong with the options to a problem, judged as they are chosen; empty if nothing.
std::string options_are_what_they_say(const Problem& problem, const std::string& find, std::uint64_t seed) {
  const auto options = practice::choices_of(problem, seed, find);
  if (!options) {
    return find + " has no options: " + said(options.error()) + ". ";
  }
  const auto is_right = [](const practice::Choice& one) { return one.is_right; };
  const auto right = std::count_if(options->begin(), options->end(), is_right);
  // Several are right where a piece has several places; then all are asked for, and the tests of practice judge them.
  std::string wrong =
      right == 1 || (right > 1 && tasks::net_asked(problem) != nullptr) ? "" : "not one option is right. ";
  for (std::size_t i = 0; i < options->size(); ++i) {
    const practice::Choice& one = (*options)[i];
    if (one.is_right && right > 1) {
      continue;
    }
    const std::string text = said(one.text);
    const auto diagnosis =
        practice::diagnosed(problem, tasks::net_asked(problem) != nullptr ? text : practice::letter(i), find, seed);
    const bool is_judged_right = diagnosis && diagnosis->verdict == AnswerVerdict::Right;
    wrong += is_judged_right == one.is_right ? "" : text + " for " + find + " is not judged as its option says. ";
    wrong += one.message.empty() || (one.cause.empty() && !one.is_right) ? text + " says nothing. " : "";
    if (diagnosis && !one.is_right && tasks::net_asked(problem) == nullptr &&
        said(diagnosis->message) != said(one.message)) {
      wrong += text + " is told another thing than its option says. ";
    }
  }
  return wrong;
}

std::string options_of_measures(const Solid& solid, test::Dice& dice) {
  const Problem problem = asking_all(solid);
  const std::vector<std::string> asked{"surface_area", "volume", "edges", "name"};
  const std::string& find = asked[dice.below(asked.size())];
  const auto names = solids::names_with_face_count(solid.faces().size());
  const auto is_another = [&](const std::string& name) {
    return solids::judge_name(solid, name) != solids::NameVerdict::Right;
  };
  const bool has_options = find != "name" || std::any_of(names.begin(), names.end(), is_another);
  return has_options ? options_are_what_they_say(problem, find, dice.next() % 1000) : "";
}

TEST(LawsOfAnswers, ExplanationsEndInTheMeasure) {
  expect_law("explanations end in the measure", &explanations_end_in_the_measure);
}
TEST(LawsOfAnswers, RightAnswersAreRight) { expect_law("right answers are right", &right_answers_are_right); }
TEST(LawsOfAnswers, OptionsAreWhatTheySay) { expect_law("options are what they say", &options_of_measures); }

/// Problems of every type that the level has, from a seed.
lessons::Lesson generated_lesson(std::uint64_t seed, int level, std::size_t count) {
  tasks::PracticeRequest request;
  request.seed = seed;
  request.level = level;
  request.count = count;
  const auto lessons = tasks::generated(request);
  RC_ASSERT(lessons.has_value());
  return lessons->front();
}

void expect_valid(const Problem& problem, std::uint64_t seed) {
  const auto worked = practice::explained(problem);
  if (!worked) {
    RC_FAIL(problem.prompt + ": " + said(worked.error()));
  }
  RC_ASSERT(!tasks::is_masked(problem));
  RC_ASSERT(!practice::type_of(problem).empty());
  const std::string wrong = options_are_what_they_say(problem, "", seed);
  if (!wrong.empty()) {
    RC_FAIL(problem.prompt + ": " + wrong);
  }
  const auto key = practice::right_answer(problem);
  RC_ASSERT(key.has_value());
  const std::string answer = said(*key);
  if (tasks::net_asked(problem) != nullptr || practice::first_task(problem)->key() == "mistake") {
    return;  // its key is a sentence, or names places: it is chosen and not typed
  }
  if (verdict_of(problem, answer, "") != "right") {
    RC_FAIL(problem.prompt + ": " + answer + " is judged " + verdict_of(problem, answer, ""));
  }
}

TEST(LawsOfProblems, GeneratedOnesAreValidAndComeBackWithTheSameAnswers) {
  const bool held = rc::check("generated problems", [] {
    const std::uint64_t seed = *rc::gen::inRange<std::uint64_t>(0, 1000000);
    const lessons::Lesson lesson = generated_lesson(seed, *rc::gen::inRange(1, 4), 1);
    const std::string text = lessons::write_lesson(lesson);
    RC_ASSERT(tasks::findings_of(text).empty());
    const auto again = tasks::read_lesson(text);
    RC_ASSERT(again.has_value());
    RC_ASSERT(*again == lesson);
    for (std::size_t i = 0; i < lesson.problems.size(); ++i) {
      expect_valid(lesson.problems[i], seed);
      RC_ASSERT(said(practice::right_answer(again->problems[i]).value()) ==
                said(practice::right_answer(lesson.problems[i]).value()));
    }
  });
  EXPECT_TRUE(held);
}

TEST(LawsOfProblems, MadeUpOnesComeBackWithTheSameAnswers) {
  const bool held = rc::check("made-up problems, written and read again", [] {
    const Solid solid = made_up_solid();
    const Problem problem = asking_all(solid);
    const auto again = tasks::read_lesson(lessons::write_lesson({"Laws", {problem}}));
    RC_ASSERT(again.has_value());
    const Problem& back = again->problems.front();
    RC_ASSERT(back == problem);
    for (const std::string& find : lessons::find_of(problem)) {
      RC_ASSERT(said(practice::right_answer(back, find).value()) ==
                said(practice::right_answer(problem, find).value()));
    }
  });
  EXPECT_TRUE(held);
}

}  // namespace
}  // namespace fw::laws
