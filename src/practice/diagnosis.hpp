#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "practice/signatures.hpp"

namespace fw::practice {

/// What a typed answer shows.
enum class AnswerVerdict {
  Right,
  RightNumber,   ///< with a wrong or missing unit
  Recognized,    ///< one mistake leads to it
  Ask,           ///< several do: ask, and do not tell
  Unrecognized,  ///< none does; a possibility may be offered
};
/// "right_number".
[[nodiscard]] std::string text(AnswerVerdict verdict);

/// A mistake that leads to the typed number.
struct Cause {
  std::string id;          ///< "A1"; "B" for a sum of faces with two changes
  words::Message message;  ///< in the conditional, with one thing to do
  std::vector<FaceId> faces;
  bool is_offered = false;  ///< no more than a possibility
};

struct Diagnosis {
  AnswerVerdict verdict = AnswerVerdict::Unrecognized;
  std::vector<Cause> causes;  ///< the likeliest first
  words::Message message;     ///< what to say, short enough to be read from the back of a room
};

/// Judges an answer to what a problem asks for; an empty `find` is the first thing that it asks for.
///   right:  the answer exactly, rounded to one decimal or more, in any unit that measures the same, in any form that
///           a number is written in; where the problem asks for a unit, in this one, to three digits that count; where
///           a label is rounded, from the label or from the exact root
///   unit:   judged apart from the number (G); a conversion by a wrong factor is recognized
///   causes: the table of mistakes in its order, then a sum of faces with one change, then slips of the pen (M)
///   choice: a letter, or the text of an option, of those that choices_of() gives for this seed
///   claim:  "yes", "no", "no, 13 cm"; mistake: an option, or the right value
///   bounds: "100 to 200", an estimate, or the value; purpose: "cover", "volume", "one face"
/// Errors: a sentence, when the problem does not ask for it, or its wrong answer is no single mistake.
[[nodiscard]] Result<Diagnosis, words::Message> diagnosed(const lessons::Problem& problem, std::string_view typed,
                                                          const std::string& find = "", std::uint64_t seed = 0);

/// Judges a typed number, with or without its unit. Requires: the question's truth is a number.
[[nodiscard]] Diagnosis judged_number(const lessons::Problem& problem, const Question& question, std::string_view text);

/// Judges a typed name of the problem's solid, as name_feedback() does.
[[nodiscard]] Diagnosis judged_name(const lessons::Problem& problem, std::string_view typed);

}  // namespace fw::practice
