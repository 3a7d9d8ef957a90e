#include "cli/open_lesson.hpp"

#include <algorithm>
#include <iostream>

#include "base/spelling.hpp"
#include "lessons/read_lesson.hpp"
#include "platform/files.hpp"
#include "tasks/catalog.hpp"

namespace fw::cli {
namespace {

const std::string standard_input = "/dev/stdin";

}  // namespace

std::optional<std::string> read_lesson_text(const std::string& path, ExitStatus& status) {
  const std::string& source = path == "-" ? standard_input : path;
  Result<std::string, platform::FileError> text = platform::desktop_files()->read(source, lessons::limits::bytes);
  if (!text) {
    std::cerr << "foldwright: " << text.error().message << '\n';
    status = worse(status, ExitStatus::WrongUsage);
    return std::nullopt;
  }
  return *text;
}

std::string more_findings(std::size_t count) {
  return count > most_findings ? "and " + std::to_string(count - most_findings) + " more" : "";
}

std::optional<lessons::Lesson> open_lesson(const std::string& path, ExitStatus& status) {
  const std::optional<std::string> text = read_lesson_text(path, status);
  return text ? lesson_in_text(*text, path, status) : std::nullopt;
}

std::optional<lessons::Lesson> lesson_in_text(const std::string& text, const std::string& path, ExitStatus& status) {
  lessons::Reading reading = tasks::reading_of(text);
  if (reading.lesson) {
    return std::move(reading.lesson);
  }
  std::vector<lessons::Finding>& findings = reading.findings;
  findings.erase(std::remove_if(findings.begin(), findings.end(), [](const auto& one) { return one.is_remark; }),
                 findings.end());
  for (std::size_t i = 0; i < std::min(findings.size(), most_findings); ++i) {
    std::cerr << lessons::text(findings[i], path) << '\n';
  }
  const std::string more = more_findings(findings.size());
  std::cerr << (more.empty() ? "" : path + ": " + more + "\n");
  status = worse(status, ExitStatus::LessonAtFault);
  return std::move(reading.others);
}

std::vector<lessons::Problem> chosen_problems(const lessons::Lesson& lesson, const std::string& path,
                                              const std::optional<std::string>& id, ExitStatus& status) {
  if (!id) {
    return lesson.problems;
  }
  if (std::find(lesson.left_out.begin(), lesson.left_out.end(), *id) != lesson.left_out.end()) {
    return {};  // its mistakes were told
  }
  std::vector<std::string> ids;
  for (const lessons::Problem& problem : lesson.problems) {
    if (problem.id == *id) {
      return {problem};
    }
    ids.push_back(problem.id);
  }
  const std::optional<std::string> nearest = nearest_spelling(*id, ids);
  std::cerr << "foldwright: " << path << " has no problem \"" << *id << "\"; "
            << (nearest ? said(words::message("did you mean \"{nearest}\"?", {{"nearest", *nearest}}))
                        : said(words::message("its problems are {ids:or}.", {{"ids", ids}})))
            << '\n';
  status = worse(status, ExitStatus::WrongUsage);
  return {};
}

std::optional<ChosenProblems> open_problems(const std::string& path, const std::optional<std::string>& id,
                                            ExitStatus& status) {
  std::optional<lessons::Lesson> lesson = open_lesson(path, status);
  if (!lesson) {
    return std::nullopt;
  }
  std::vector<lessons::Problem> problems = chosen_problems(*lesson, path, id, status);
  if (problems.empty()) {
    return std::nullopt;
  }
  return ChosenProblems{std::move(*lesson), std::move(problems)};
}

}  // namespace fw::cli
