#pragma once

#include <string>
#include <string_view>
#include <vector>

#include "lessons/lesson.hpp"
#include "nets/fold_test.hpp"
#include "practice/diagnosis.hpp"
#include "practice/net_reason.hpp"
#include "practice/seed.hpp"
#include "reasoning/worked_problem.hpp"

namespace fw::practice {

/// An answer that can be chosen for a question about nets. Messages are short, conditional, with one thing to do.
struct NetChoice {
  std::string text;  ///< "yes", "B", "square pyramid"; of a reason: a short sentence
  bool is_right = false;
  std::string cause;                   ///< "N2"; empty where it is right
  std::string message;                 ///< what to say to whoever chooses it
  std::vector<nets::PieceId> pieces;   ///< to be lit on the cut-out of this choice: cutout_for()
  std::vector<nets::PieceEdge> edges;  ///< two edges that would meet and differ, to be lit with them
  std::vector<FaceId> faces;           ///< of the solid: those covered twice, then those left open
};

/// What is asked, in one sentence that any panel can show above its prompt: "Is this a net of the solid?"
/// All below require: problem.net is there.
[[nodiscard]] std::string net_question_text(const lessons::Problem& problem);

/// The choices, in the order in which they are shown.
///   name:     names of solids with as many faces; the seed says where the right one stands
///   choose:   one a cut-out, "A", "B" ...
///   is it:    "yes", "no"
///   complete: one a place, "A", "B" ...; more than one can be right, and all right ones are asked for
[[nodiscard]] std::vector<NetChoice> net_choices(const lessons::Problem& problem, Seed seed = {});

/// What a class can say after "no": by count, by place, by edges, by height. Exactly one is right; empty where the
/// cut-out is a net, or something else than "is it" is asked.
[[nodiscard]] std::vector<NetChoice> net_reasons(const lessons::Problem& problem);

/// The cut-out to draw and to fold for a choice: its candidate, or the net with the piece hung at its place; else the
/// one cut-out that there is.
[[nodiscard]] nets::Cutout cutout_for(const lessons::Problem& problem, std::size_t choice);

/// Judges choices by their numbers: one, or for a net to be completed all that were chosen.
[[nodiscard]] Diagnosis judged_choices(const lessons::Problem& problem, const std::vector<std::size_t>& chosen);

/// Judges a typed answer: a name; "B"; "yes" or "no"; "A, C".
[[nodiscard]] Diagnosis judged_net(const lessons::Problem& problem, std::string_view typed);

/// The right answer as a key says it: "square pyramid", "B", "yes", "no (N2)", "A, C".
[[nodiscard]] std::string net_answer(const lessons::Problem& problem);

/// Why the right answer is right: one step a choice; for "name" the sentence that names the solid.
[[nodiscard]] std::vector<reasoning::Step> net_steps(const lessons::Problem& problem);
/// The same for going through it step by step.
[[nodiscard]] reasoning::WorkedProblem worked_net(const lessons::Problem& problem);

}  // namespace fw::practice
