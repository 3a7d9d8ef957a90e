#pragma once

#include <optional>
#include <string>
#include <vector>

#include "lessons/read_problem.hpp"
#include "practice/answered_by.hpp"
#include "tasks/generate/made_up.hpp"

// What a file states of its type of question.
namespace fw::tasks {

using lessons::Context;
using lessons::JsonNode;
using lessons::Members;
using lessons::Problem;
using lessons::Task;
using lessons::TaskText;
using practice::Asked;
using practice::Choice;
using practice::Question;
using reasoning::Explanation;
using reasoning::SolutionOptions;
using reasoning::TaskWork;
using words::Message;
using words::message;
using words::Noun;

/// A type of question: a row of the table.
struct Row {
  std::string key;  ///< "claim"

  // ---- how a lesson writes it; none of these where it shares the keys of a row before ----

  std::vector<std::string> keys = {};  ///< of a problem, beside "find": the first one says that it is asked
  bool takes_find = false;             ///< what stands in "find" is asked in its way
  bool judges_find = false;            ///< and judged by it
  bool is_alone = false;               ///< nothing else is asked beside it, no face is open
  /// What of the first key can be judged before the solid stands. Errors: told to the context.
  void (*check_form)(const JsonNode& value, const Context& context) = nullptr;
  /// Where the first key or the second is there. Errors: told to the context; none then.
  std::vector<Task> (*read)(const TaskText& text) = nullptr;
  /// What else can stand in "find" beside its first key.
  std::vector<std::string> (*offers)(const JsonNode& value) = nullptr;
  std::vector<std::string> finds = {};  ///< entries of "find" that ask this, of any solid that it fits
  /// The task of one of these.
  Task (*named)(const std::string& find) = nullptr;
  /// Where its entry of "find" is asked alone, why it does not go with a solid: "goes with a cube"; empty where it
  /// does. Null: it goes with every solid, and other entries may stand beside it.
  Message (*unfit)(const solids::Solid& solid) = nullptr;

  std::vector<MadeUp> made = {};           ///< its types of made-up problems
  std::vector<std::string> examples = {};  ///< members of a problem that ask this, one of each sort
};

/// A measure that is asked for, and is the only one; nothing, with a fault, where none is asked for, several, or no
/// measure. `key`: the node that needs it, `name` its key.
[[nodiscard]] std::optional<std::string> one_measure(const TaskText& text, const JsonNode& key, std::string_view name);

/// A fault: "12 ft" cannot be compared with a solid measured in square centimeters, or the like.
[[nodiscard]] Message not_comparable(const units::WrittenQuantity& quantity, const solids::Solid& solid);

/// What a class calls a measure that can be asked for: "slant height"; its name where it cannot.
[[nodiscard]] words::Noun asked_noun(const Problem& problem, const std::string& measure);

}  // namespace fw::tasks
