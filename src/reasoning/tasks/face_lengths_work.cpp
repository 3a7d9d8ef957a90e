#include "exact/print_number.hpp"
#include "reasoning/phrases.hpp"
#include "reasoning/tasks/task_parts.hpp"

// The two lengths that a face's area is worked from.
namespace fw::reasoning {
namespace {

// "One length: the height of the prism, 7 cm. Its label stands at this face."
std::string length_sentence(const solids::Solid& solid, const solids::FaceLength& length) {
  std::string text = "One length: the " + length.title + ", " + length_text(solid, length);
  switch (length.origin) {
    case solids::LengthOrigin::OwnLabel:
      return text + ". Its label stands at this face.";
    case solids::LengthOrigin::EqualEdge:
      return text + ". The label stands at an edge of the same length: the " + solid.marks()[*length.mark].title + ".";
    case solids::LengthOrigin::WorkedOut:
      break;
  }
  return text + ". It follows from the other labels.";
}

}  // namespace

std::string length_text(const solids::Solid& solid, const solids::FaceLength& length) {
  const solids::Mark* mark = length.mark ? &solid.marks()[*length.mark] : nullptr;
  if (mark != nullptr && solid.is_given(mark->symbol)) {
    return solid.label(*length.mark);
  }
  const exact::Shown shown = exact::shown(length.value, 2);
  return (shown.exact ? "" : "≈ ") + shown.text + " " + solid.unit().text();
}

std::string two_lengths(const solids::Solid& solid, FaceId face) {
  const std::vector<solids::FaceLength>& lengths = solid.faces()[face].lengths;
  return length_text(solid, lengths.at(0)) + " and " + length_text(solid, lengths.at(1));
}

TaskWork face_lengths_work(const lessons::Problem& problem) {
  const solids::Solid& solid = problem.solid;
  const solids::Face& face = solid.faces()[*problem.face];
  const std::string name = "face " + std::to_string(face.id.index() + 1);
  TaskSheet sheet(2);
  const auto say = [&](StepKind kind, const Message& reason) { sheet.steps().say(kind, reason).faces = {face.id}; };
  say(StepKind::Ask, "Asked are the two lengths that the area of " + name + " is worked from.");
  say(StepKind::Name,
      message("Face {number} is {shape:a}.", {{"number", face.id.index() + 1}, {"shape", Noun{face.shape}}}));
  for (const solids::FaceLength& length : face.lengths) {
    say(StepKind::Count, length_sentence(solid, length));
    if (length.mark) {
      sheet.steps().work().steps.back().marks = {*length.mark};
    }
  }
  const std::string answer = two_lengths(solid, face.id);
  return std::move(sheet).finished({"lengths", "", "", "two lengths of " + name, {}, {}, std::nullopt, 0, answer},
                                   "The two lengths of " + name + " are " + answer + ".");
}

}  // namespace fw::reasoning
