#pragma once

#include <iosfwd>
#include <optional>
#include <string>
#include <vector>

#include "cli/exit_status.hpp"
#include "lessons/lesson.hpp"
#include "lessons/read_lesson.hpp"

namespace fw::cli {

/// How many findings of one lesson are printed; the rest is counted.
inline constexpr std::size_t most_findings = 100;

/// The text of a lesson file; "-" is standard input. Errors: told on standard error; the status is WrongUsage then.
[[nodiscard]] std::optional<std::string> read_lesson_text(const std::string& path, ExitStatus& status);

/// The lesson of a file, without the problems that have a mistake. Errors: all told on standard error, with file, line
/// and column; the status is WrongUsage for a file that cannot be read and LessonAtFault where anything is wrong.
[[nodiscard]] std::optional<lessons::Lesson> open_lesson(const std::string& path, ExitStatus& status);

/// The same of a text that was read from `path`.
[[nodiscard]] std::optional<lessons::Lesson> lesson_in_text(const std::string& text, const std::string& path,
                                                            ExitStatus& status);

/// "and 12 more" where there are more findings than are printed; else empty.
[[nodiscard]] std::string more_findings(std::size_t count);

/// The problem with the id, or all problems for no id. Errors: an id that no problem has is told on standard error with
/// the nearest one; the list is empty and the status WrongUsage then.
[[nodiscard]] std::vector<lessons::Problem> chosen_problems(const lessons::Lesson& lesson, const std::string& path,
                                                            const std::optional<std::string>& id, ExitStatus& status);

/// A lesson, and those of its problems that are meant.
struct ChosenProblems {
  lessons::Lesson lesson;
  std::vector<lessons::Problem> problems;
};

/// The lesson at `path` and the problem with this id, or all that have no mistake; nothing where none is left. What is
/// wrong is told, and `status` gets worse by it.
[[nodiscard]] std::optional<ChosenProblems> open_problems(const std::string& path, const std::optional<std::string>& id,
                                                          ExitStatus& status);

}  // namespace fw::cli
