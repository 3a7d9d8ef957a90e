#pragma once

#include <cstdint>
#include <string>
#include <vector>

#include "base/result.hpp"
#include "lessons/lesson.hpp"
#include "words/message.hpp"

namespace fw::practice {

/// One of the options that an answer is chosen from.
struct Choice {
  words::Message text;  ///< "286 cm²", "yes", "between 200 cm² and 400 cm²"
  bool is_right = false;
  std::string cause;  ///< id of the mistake that leads there: "A1"; empty of the right one
  /// What to say when it is chosen, in the conditional and with one action; "Right." of the right one.
  words::Message message;
  std::vector<geometry::FaceId> faces;  ///< that the message speaks of
};

/// The options of a question, A first, in an order drawn from the seed; the same on every machine.
///   a number: the right one and three that a mistake each leads to, written as a student would, with their unit; no
///   two
///             of them are near each other, and no message comes twice
///   a name:   the right one and others with as many faces
///   a net:    those of net_choices(); of a missing piece several can be right
///   else:     what can be chosen by the problem: yes or no, an interval, a mistake, what is measured
/// An empty `find` is the first thing that is asked.
/// Errors: a sentence, when the problem does not ask for it, or its numbers leave fewer than two options.
[[nodiscard]] Result<std::vector<Choice>, words::Message> choices_of(const lessons::Problem& problem,
                                                                     std::uint64_t seed, const std::string& find = "");

/// The answer as a key has it: "286 cm²", "≈ 20.65 cm²", "4", "square pyramid", "no, 13 cm would fit", "between 200 cm²
/// and 400 cm²", "260 would be the sloping faces alone. 360 cm²". Errors: as above.
[[nodiscard]] Result<words::Message, words::Message> right_answer(const lessons::Problem& problem,
                                                                  const std::string& find = "");

/// "A" of the first option.
[[nodiscard]] std::string letter(std::size_t option);

}  // namespace fw::practice
