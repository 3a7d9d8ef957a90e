#include <CLI/CLI.hpp>
#include <iostream>
#include <memory>

#include "cli/text_table.hpp"
#include "cli/verbs/verbs.hpp"
#include "lessons/write_lesson.hpp"
#include "platform/files.hpp"
#include "practice/choices.hpp"
#include "practice/figure.hpp"
#include "tasks/generate/generate.hpp"

namespace fw::cli {
namespace {

using tasks::PracticeRequest;

constexpr std::size_t most_problems = 200;
constexpr std::size_t most_versions = 12;

struct PracticeOptions {
  PracticeRequest request;
  std::string output;
};

// "set.json" for one version; "set-1.json", "set-2.json" for several.
std::string path_of(const std::string& output, std::size_t version, std::size_t versions) {
  if (versions == 1) {
    return output;
  }
  const std::size_t slash = output.find_last_of('/');
  const std::size_t dot = output.find_last_of('.');
  const bool has_ending = dot != std::string::npos && (slash == std::string::npos || dot > slash + 1) && dot > 0;
  const std::size_t at = has_ending ? dot : output.size();
  return output.substr(0, at) + "-" + std::to_string(version + 1) + output.substr(at);
}

std::string answer_of(const lessons::Problem& problem) {
  const auto answer = practice::right_answer(problem);
  return answer ? *answer : "";
}

// The key for the teacher: what each problem asks for, and its answer in each version.
void print_key(const std::vector<lessons::Lesson>& versions) {
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
  std::cout << text_table(rows, aligns, 0);
}

ExitStatus practice_verb(const PracticeOptions& options) {
  const auto lessons = tasks::generated(options.request);
  if (!lessons) {
    std::cerr << "foldwright: " << lessons.error() << '\n';
    return ExitStatus::WrongUsage;
  }
  for (std::size_t v = 0; v < lessons->size(); ++v) {
    const std::string path = path_of(options.output, v, lessons->size());
    const auto fault = platform::desktop_files()->write_atomically(path, lessons::write_lesson((*lessons)[v]));
    if (fault) {
      std::cerr << "foldwright: " << fault->message << '\n';
      return ExitStatus::WrongUsage;
    }
    std::cout << path << ": " << (*lessons)[v].problems.size() << " problems\n";
  }
  print_key(*lessons);
  return ExitStatus::Done;
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
  verb->add_option("--types", options->request.types, "Types of problems, parted by commas: " + known_types())
      ->delimiter(',');
  verb->add_option("--level", options->request.level, "From 1, whole numbers and few steps, to 3")
      ->check(CLI::Range(1, 3))
      ->capture_default_str();
  verb->add_option("--seed", options->request.seed, "The same number gives the same problems")->capture_default_str();
  verb->add_option("--count", options->request.count, "Problems in a version")
      ->check(CLI::Range(std::size_t{1}, most_problems))
      ->capture_default_str();
  verb->add_option("--versions", options->request.versions, "Parallel versions, each in a file of its own")
      ->check(CLI::Range(std::size_t{1}, most_versions))
      ->capture_default_str();
  verb->add_option("--title", options->request.title, "The lesson's title")->capture_default_str();
  verb->add_option("-o,--output", options->output, "The lesson file to write")->required();
  verb->callback([options, &status] { status = practice_verb(*options); });
}

}  // namespace fw::cli
