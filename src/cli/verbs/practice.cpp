#include <CLI/CLI.hpp>
#include <iostream>
#include <memory>

#include "base/ensure.hpp"
#include "cli/arguments.hpp"
#include "cli/open_lesson.hpp"
#include "cli/output_file.hpp"
#include "cli/text_table.hpp"
#include "cli/told_solution.hpp"
#include "cli/verbs/verbs.hpp"
#include "lessons/write_lesson.hpp"
#include "practice/choices.hpp"
#include "practice/figure.hpp"
#include "tasks/generate/generate.hpp"
#include "tasks/generate/versions.hpp"
#include "tasks/nets/net_task.hpp"

namespace fw::cli {
namespace {

using tasks::PracticeRequest;

constexpr std::size_t most_problems = 200;
constexpr std::size_t most_versions = 12;

struct PracticeOptions {
  PracticeRequest request;
  std::string like;  ///< a lesson whose problems are varied; empty: new ones are made
  OutputOptions output;
  bool works_key = false;
  SolutionStyle style{"board", {}};
};

std::string answer_of(const lessons::Problem& problem) {
  const auto answer = practice::right_answer(problem);
  return answer ? said(*answer) : "";
}

// The key for the teacher: what each problem asks for, and its answer in each version.
void print_key(const std::vector<lessons::Lesson>& versions, std::ostream& out) {
  std::vector<std::vector<std::string>> rows{{"id", "solid", "asked"}};
  std::vector<Align> aligns(3, Align::Left);
  for (std::size_t v = 0; v < versions.size(); ++v) {
    rows[0].push_back(versions.size() == 1 ? "answer" : "version " + std::to_string(v + 1));
    aligns.push_back(Align::Right);
  }
  for (std::size_t i = 0; i < versions[0].problems.size(); ++i) {
    const lessons::Problem& first = versions[0].problems[i];
    const auto question = practice::question_of(first);
    rows.push_back({first.id, first.solid.name(), question ? question->find : ""});
    for (const lessons::Lesson& version : versions) {
      rows.back().push_back(answer_of(version.problems[i]));
    }
  }
  out << text_table(rows, aligns, 0);
}

// Each problem of a version worked out.
void print_worked(const lessons::Lesson& lesson, const SolutionStyle& style, std::ostream& out) {
  reasoning::SolutionOptions options;
  if (style.is_board()) {
    options.notation = lesson.notation;
  }
  for (const lessons::Problem& problem : lesson.problems) {
    out << told_heading(problem) << '\n';
    if (tasks::net_asked(problem) != nullptr) {
      out << told_net(problem) << '\n';
      continue;
    }
    const auto all = practice::explained(problem, options);
    ensure(all.has_value(), "a new problem cannot be worked out");
    for (const reasoning::Explanation& one : *all) {
      out << told_solution(one, style.is_board(), lesson.notation) << '\n';
    }
  }
}

/// New problems, or a lesson with others like it. Errors: told; the list is empty then.
std::vector<lessons::Lesson> lessons_for(const PracticeOptions& options, ExitStatus& status) {
  if (options.like.empty()) {
    auto made = tasks::generated(options.request);
    if (made) {
      return std::move(made).value();
    }
    std::cerr << "foldwright: " << said(made.error()) << '\n';
    status = ExitStatus::WrongUsage;
    return {};
  }
  const std::optional<lessons::Lesson> lesson = open_lesson(options.like, status);
  if (!lesson || status != ExitStatus::Done) {
    return {};
  }
  tasks::Versions made = tasks::versions_like(*lesson, options.request.versions, options.request.seed);
  for (const words::Message& one : made.unchanged) {
    std::cerr << "foldwright: " << said(one) << '\n';
  }
  return std::move(made.lessons);
}

ExitStatus practice_verb(const PracticeOptions& options) {
  const bool to_output = options.output.path == "-";
  const std::size_t versions = options.request.versions;
  std::vector<OutputOptions> places;
  for (std::size_t v = 0; v < versions; ++v) {
    places.push_back({numbered_path(options.output.path, v, versions), options.output.force});
    if (const auto refusal = output_refusal(places.back(), lesson_file(), options.like)) {
      std::cerr << "foldwright: " << *refusal << '\n';
      return ExitStatus::WrongUsage;
    }
  }
  if (to_output && versions > 1) {
    std::cerr << "foldwright: Standard output holds one version. Give -o a file name to write several.\n";
    return ExitStatus::WrongUsage;
  }
  ExitStatus status = ExitStatus::Done;
  std::vector<lessons::Lesson> lessons = lessons_for(options, status);
  if (lessons.empty()) {
    return status;
  }
  std::ostream& words = to_output ? std::cerr : std::cout;  // a lesson that goes on to a program stands alone
  for (std::size_t v = 0; v < versions; ++v) {
    lessons[v].notation = options.style.notation(lessons[v]);
    if (const auto fault = write_output(places[v], lessons::write_lesson(lessons[v]))) {
      std::cerr << "foldwright: " << *fault << '\n';
      return ExitStatus::WrongUsage;
    }
    words << places[v].path << ": " << lessons[v].problems.size() << " problems\n";
  }
  print_key(lessons, words);
  for (std::size_t v = 0; options.works_key && v < versions; ++v) {
    words << '\n' << places[v].path << ":\n\n";
    print_worked(lessons[v], options.style, words);
  }
  return status;
}

std::string known_types() {
  std::string text;
  for (const practice::TypeName& type : tasks::type_names()) {
    text += (text.empty() ? "" : ", ") + type.key;
  }
  return text;
}

}  // namespace

void add_practice(CLI::App& app, ExitStatus& status) {
  const auto options = std::make_shared<PracticeOptions>();
  CLI::App* verb = app.add_subcommand("practice", "Writes a lesson of new problems, mixed, in parallel versions");
  verb->add_option("--types", options->request.types, "Types of problems, separated by commas: " + known_types())
      ->delimiter(',');
  verb->add_option("--level", options->request.level, "From 1, whole numbers and few steps, to 3")
      ->check(CLI::Range(1, 3))
      ->capture_default_str();
  verb->add_option("--seed", options->request.seed, "The same number gives the same problems")
      ->check(whole_number())
      ->capture_default_str();
  verb->add_option("--count", options->request.count, "Problems in a version")
      ->check(CLI::Range(std::size_t{1}, most_problems))
      ->capture_default_str();
  verb->add_option("--versions", options->request.versions, "Parallel versions, each in a file of its own")
      ->check(CLI::Range(std::size_t{1}, most_versions))
      ->capture_default_str();
  verb->add_option("--like", options->like,
                   "A lesson: its problems with other numbers; the first version is the lesson itself")
      ->type_name(file_type);
  verb->add_option("--title", options->request.title, "The lesson's title")->capture_default_str();
  verb->add_flag("--worked", options->works_key, "Print the key with every problem worked out");
  add_style_options(*verb, options->style);
  add_output_options(*verb, options->output, lesson_file());
  verb->callback([options, &status] { status = practice_verb(*options); });
}

}  // namespace fw::cli
