#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "base/place.hpp"
#include "base/result.hpp"
#include "lessons/lesson.hpp"

namespace fw::lessons {

/// A fault of a lesson text: where, what was found, what would be right.
struct Finding {
  Place place;
  std::string problem;  ///< id of the problem, or its number ("problem 3") where it has none; may be empty
  std::string measure;  ///< "base.side"; may be empty
  enum class Kind { Format, Impossible, Missing, Rounding, Masking } kind = Kind::Format;
  words::Message message;  ///< one sentence or two, with what would be right
  std::string nearest;     ///< a value that would fit, as text; may be empty
  bool is_remark = false;  ///< said of a figure that exists: no error
  friend bool operator==(const Finding&, const Finding&) = default;
};
/// "lantern.json:12:20: problem shade, slant_height: ..."
[[nodiscard]] std::string text(const Finding& finding, std::string_view file);

/// Limits of the format.
namespace limits {
inline constexpr std::size_t bytes = 4U << 20U;  ///< of the file
inline constexpr std::size_t nesting = 16;
inline constexpr std::size_t problems = 1000;
inline constexpr std::size_t polygon_corners = 40;
inline constexpr std::size_t net_pieces = 60;
inline constexpr std::size_t net_choices = 6;        ///< cut-outs to choose from
inline constexpr std::size_t net_places = 12;        ///< for a missing piece
inline constexpr double length_meters_least = 1e-6;  ///< of a measure
inline constexpr double length_meters_most = 1e6;
}  // namespace limits

class Context;
struct JsonNode;
struct TaskText;

/// How what a problem asks for is read: which types of questions there are is known in rooms above.
struct TaskReader {
  std::vector<std::string> keys;  ///< of a problem, beside "find"
  /// What can be judged of these keys before the solid stands; `problem` is all of it. Errors: told to the context.
  void (*check_form)(const JsonNode& problem, const Context& context) = nullptr;
  /// The tasks of a problem whose solid stands. Errors: told to the context; what is read then is of no use.
  std::vector<Task> (*read)(const TaskText& text) = nullptr;
  /// One sentence for each usual mistake that would give the right answer, because of the numbers chosen.
  std::vector<words::Message> (*masking)(const Problem& problem) = nullptr;
};

/// Reads a lesson file of version 1.
/// Errors: every fault of the text in one pass, in the order of the text; nothing is half loaded.
///         Remarks are no errors: reading_of() gives them.
[[nodiscard]] Result<Lesson, std::vector<Finding>> read_lesson(std::string_view text, const TaskReader& tasks);

/// What reading a lesson came to: the lesson if the text has no errors, and every finding, errors and remarks alike.
struct Reading {
  std::optional<Lesson> lesson;
  /// Where every error is in some problem: the others, and Lesson::left_out. Nothing if there are none, or no errors.
  std::optional<Lesson> others;
  std::vector<Finding> findings;
};
[[nodiscard]] Reading reading_of(std::string_view text, const TaskReader& tasks);

}  // namespace fw::lessons
