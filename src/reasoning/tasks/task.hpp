#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "lessons/asked_value.hpp"
#include "reasoning/step.hpp"

namespace fw::reasoning {

/// What a problem asks in another way than by a measure of its solid.
///   "count"     how many items are packed into the solid
///   "scale"     how many times as long the edges of a copy are
///   "copy"      a measure of the copy
///   "claim"     whether a label can be true
///   "mistake"   which mistake leads to a wrong answer
///   "interval"  between which bounds a measure lies
///   "same_number"    whether a surface area and a volume of one number are the same
///   "least_surface"  the least surface area of a box with whole edges that holds as much
///   "lengths"   the two lengths that the area of a face is worked from
///   "purpose"   whether something is covered, filled or edged
/// Empty: none of these. A word problem with packs is none of them.
[[nodiscard]] std::string task_of(const lessons::Problem& problem);

/// Such a task worked, from the measure on that it rests on.
struct TaskWork {
  std::string task;     ///< as above
  std::string measure;  ///< that is worked out before; empty: none
  std::string title;    ///< of the steps: "then the copy"
  std::string name;     ///< of what is asked: "number that fit"; empty: that of the measure
  std::vector<Step> steps;
  std::vector<Source> sources;     ///< Source::step is one of `steps`
  std::optional<Outcome> outcome;  ///< none: a word
  std::size_t lead = 0;            ///< steps that come before the measure is worked out
  std::string answer;              ///< "4576 cm²", "no, 13 cm would fit", "12 candles"
};

/// The task of a problem; `find` is the measure of the copy where several are asked for, else it is the first one.
/// `places`: decimals that are shown of a number that does not end. Nothing where the problem has no task.
[[nodiscard]] std::optional<TaskWork> task_work(const lessons::Problem& problem, int places = 2,
                                                const std::string& find = "");

/// Whether it is found by looking at the solid and counting: "name", "faces", "edges", "vertices".
[[nodiscard]] bool is_looked_at(std::string_view find);
/// Its steps. Requires: is_looked_at(find).
[[nodiscard]] TaskWork looking_work(const solids::Solid& solid, const std::string& find);
/// How many faces, edges or vertices there are. Requires: is_looked_at(find), other than "name".
[[nodiscard]] std::size_t count_of(const solids::Solid& solid, std::string_view find);

/// A label that is claimed, put to the figure.
struct ClaimVerdict {
  bool can_be = false;
  bool is_rounded = false;  ///< it fits because it may be a rounded number
  exact::Number fitting;    ///< the value that the other labels fix, in the solid's unit
  std::string why;          ///< what must hold and does not; empty where two labels merely differ
};
/// Requires: the problem has a claim.
[[nodiscard]] ClaimVerdict judged_claim(const lessons::Problem& problem);

[[nodiscard]] long long surface_of(const lessons::WholeBox& box);
/// All boxes with whole edges, each in rising order, the one with the least surface area last. Requires: volume > 0.
[[nodiscard]] std::vector<lessons::WholeBox> boxes_with_volume(long long volume);

/// "10 cm": as its label has it, or worked out.
[[nodiscard]] std::string length_text(const solids::Solid& solid, const solids::FaceLength& length);
/// "10 cm and 7 cm". Requires: the face has two lengths.
[[nodiscard]] std::string two_lengths(const solids::Solid& solid, FaceId face);

/// "cover", "fill", "edge", or "one face" where a single base is covered. Requires: the problem has a supply.
[[nodiscard]] std::string purpose_of(const lessons::Supply& supply);

}  // namespace fw::reasoning
