#pragma once

#include <cstdint>
#include <string>
#include <vector>

#include "lessons/lesson.hpp"
#include "practice/task_type.hpp"

// What of a problem is printed as text.
namespace fw::paper {

/// One thing that a problem asks for.
struct AskedItem {
  const practice::TaskType* type = nullptr;
  practice::Question question;
};
/// All that have an answer, in order; of a word problem the last question alone, since the others lead to it.
[[nodiscard]] std::vector<AskedItem> asked_items(const lessons::Problem& problem);

/// The prompt with all that it has to tell; without a prompt, that alone.
[[nodiscard]] std::string prompt_text(const lessons::Problem& problem);
/// The questions as sentences, if there are several or the prompt is empty; otherwise the prompt asks.
[[nodiscard]] std::vector<std::string> question_lines(const lessons::Problem& problem);
/// "A  yes", of a question that is answered by one of a few options; none for others. `seed`: of their order.
[[nodiscard]] std::vector<std::string> option_lines(const lessons::Problem& problem, const AskedItem& item,
                                                    std::uint64_t seed);
/// The right answer as a key has it, with the letter of its option.
[[nodiscard]] std::string answer_line(const lessons::Problem& problem, const AskedItem& item, std::uint64_t seed);
/// Other ways to write the answer, and how far it may be rounded; empty where there is one way alone.
[[nodiscard]] std::string accepted_line(const lessons::Problem& problem, const AskedItem& item);

/// A wrong number, and what it looks like.
struct LikelyMistake {
  std::string number;  ///< with its unit
  std::string told;
  std::string cause;  ///< id of the mistake
};
/// The usual wrong numbers in the order of the table of mistakes: each number once, none that counts as right.
[[nodiscard]] std::vector<LikelyMistake> likely_mistakes(const lessons::Problem& problem, const AskedItem& item,
                                                         std::size_t most);

/// "(a)".
[[nodiscard]] std::string part_letter(std::size_t index);
/// Six letters that go by what the lesson holds: two prints with the same letters have the same problems.
[[nodiscard]] std::string lesson_code(const lessons::Lesson& lesson);

}  // namespace fw::paper
