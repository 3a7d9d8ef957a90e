#pragma once

#include "practice/choices.hpp"
#include "practice/figure.hpp"
#include "practice/seed.hpp"

// What the options of several kinds of questions are made of; private to the room.
namespace fw::practice {

/// The right number of a question and up to three that mistakes lead to, in the order in which they were drawn.
[[nodiscard]] std::vector<Choice> number_choices(const lessons::Problem& problem, const Question& question, Seed& seed);
/// A number as a student writes it: all of its decimals where they are few, else rounded to three digits or more.
[[nodiscard]] exact::Number as_written_down(double value);
/// "286 cm²", "4 rolls", "5 faces": a number with what it counts.
[[nodiscard]] std::string answer_text(const lessons::Problem& problem, const Question& question,
                                      const exact::Number& number);
/// The message with the number in the place of {n}.
[[nodiscard]] std::string filled_in(std::string message, const std::string& number);

template <class T>
void shuffle(std::vector<T>& all, Seed& seed) {
  for (std::size_t i = all.size(); i > 1; --i) {
    std::swap(all[i - 1], all[seed.below(i)]);
  }
}

}  // namespace fw::practice
