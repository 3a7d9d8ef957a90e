#include <algorithm>
#include <utility>

#include "practice/choice_parts.hpp"
#include "practice/read_answer.hpp"
#include "reasoning/tasks/task.hpp"

// Options for the two lengths of a face.
namespace fw::practice {
namespace {

using lessons::Problem;

Choice wrong(std::string text, std::string cause, std::string message) {
  return {std::move(text), false, std::move(cause), std::move(message), {}};
}

// The two lengths of a text, the shorter first: "10 cm and 7 cm", "7 cm x 10 cm", "7, 10 cm"; a unit serves those
// before.
std::optional<std::pair<exact::Number, exact::Number>> lengths_in(std::string text) {
  for (const std::string sign : {" and ", " by ", " x ", "×", "*", ",", "&"}) {
    for (std::size_t at = text.find(sign); at != std::string::npos; at = text.find(sign)) {
      text.replace(at, sign.size(), ";");
    }
  }
  std::vector<TypedAnswer> read;
  for (std::size_t start = 0; start <= text.size();) {
    const std::size_t end = std::min(text.find(';', start), text.size());
    if (const auto one = read_answer(text.substr(start, end - start))) {
      read.push_back(*one);
    }
    start = end + 1;
  }
  if (read.size() != 2) {
    return std::nullopt;
  }
  std::vector<exact::Number> values;
  for (const TypedAnswer& one : read) {
    const std::optional<units::Unit> unit = one.unit ? one.unit : read.back().unit;
    if (unit && unit->dimension() != 1) {
      return std::nullopt;
    }
    values.push_back(one.number.value * (unit ? unit->factor() : exact::Number::whole(1)));
  }
  std::sort(values.begin(), values.end());
  return std::pair(values[0], values[1]);
}

bool same_lengths(const std::string& one, const std::string& other) {
  const auto a = lengths_in(one);
  const auto b = lengths_in(other);
  return a && b && *a == *b;
}

// The shorter first, so that "7 cm and 9 cm" is the same pair as "9 cm and 7 cm".
std::pair<double, double> pair_of(const solids::Face& face) {
  const double a = face.lengths[0].value.to_double();
  const double b = face.lengths[1].value.to_double();
  return {std::min(a, b), std::max(a, b)};
}

// The face with a height that stands elsewhere, or an edge, in the place of one of its own lengths.
void push_swapped(const Problem& problem, const solids::Face& face, std::vector<Choice>& choices) {
  const std::string name = "face " + std::to_string(face.id.index() + 1);
  for (std::size_t i = 0; i < problem.solid.marks().size(); ++i) {
    const solids::MarkId id = solids::MarkId::at(i);
    const solids::Mark& mark = problem.solid.marks()[id];
    for (std::size_t kept = 0; kept < 2; ++kept) {
      const solids::FaceLength& swapped = face.lengths[1 - kept];
      const bool is_own = mark.symbol == face.lengths[0].symbol || mark.symbol == face.lengths[1].symbol;
      if (is_own || !problem.solid.is_given(mark.symbol)) {
        continue;
      }
      const std::string pair =
          reasoning::length_text(problem.solid, face.lengths[kept]) + " and " + problem.solid.label(id);
      choices.push_back(wrong(
          pair, swapped.is_height ? "D1" : "B6",
          "That would take the " + mark.title + " for the " + swapped.title + ". Which line of " + name + " is it?"));
    }
  }
}

}  // namespace

std::vector<Choice> lengths_choices(const Problem& problem, Seed& seed) {
  constexpr std::size_t most = 4;
  const solids::Solid& solid = problem.solid;
  const solids::Face& asked = solid.faces()[*problem.face];
  std::vector<Choice> others;
  push_swapped(problem, asked, others);
  for (const solids::Face& face : solid.faces()) {
    if (lessons::has_two_lengths(face) && pair_of(face) != pair_of(asked)) {
      others.push_back(wrong(reasoning::two_lengths(solid, face.id), "B6",
                             "Those are the lengths of face " + std::to_string(face.id.index() + 1) +
                                 ". Put a finger on face " + std::to_string(asked.id.index() + 1) +
                                 " and follow its edges."));
      others.back().faces = {face.id};
    }
  }
  shuffle(others, seed);
  std::vector<Choice> choices{{reasoning::two_lengths(solid, asked.id), true, "", "Right.", {}}};
  for (Choice& one : others) {
    const bool is_new = std::none_of(choices.begin(), choices.end(), [&](const Choice& other) {
      return same_lengths(other.text, one.text) || other.message == one.message;
    });
    if (is_new && choices.size() < most) {
      choices.push_back(std::move(one));
    }
  }
  shuffle(choices, seed);
  return choices;
}

std::optional<std::size_t> lengths_typed(const std::vector<Choice>& choices, std::string_view typed) {
  const auto found = std::find_if(choices.begin(), choices.end(),
                                  [&](const Choice& choice) { return same_lengths(choice.text, std::string(typed)); });
  return found == choices.end() ? std::nullopt : std::optional(static_cast<std::size_t>(found - choices.begin()));
}

}  // namespace fw::practice
