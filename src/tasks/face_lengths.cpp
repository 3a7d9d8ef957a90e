#include "tasks/face_lengths.hpp"

#include <algorithm>
#include <utility>

#include "exact/print_number.hpp"
#include "lessons/asked_value.hpp"
#include "lessons/read_description.hpp"
#include "practice/choice_parts.hpp"
#include "reasoning/phrases.hpp"
#include "reasoning/task_sheet.hpp"
#include "tasks/row.hpp"

namespace fw::tasks {
namespace {

using geometry::FaceId;
using reasoning::StepKind;
using reasoning::TaskSheet;

std::size_t number_of(FaceId face) { return face.index() + 1; }

// "10 cm": as its label has it, or worked out.
Message length_of_face(const solids::Solid& solid, const solids::FaceLength& length) {
  const solids::Mark* mark = length.mark ? &solid.marks()[*length.mark] : nullptr;
  if (mark != nullptr && solid.is_given(mark->symbol)) {
    return Message(solid.label(*length.mark));
  }
  return practice::amount_shown(exact::shown(length.value, 2), solid.unit());
}

// "10 cm and 7 cm".
Message two_lengths(const solids::Solid& solid, FaceId face) {
  const std::vector<solids::FaceLength>& lengths = solid.faces()[face].lengths;
  return message("{one} and {other}",
                 {{"one", length_of_face(solid, lengths.at(0))}, {"other", length_of_face(solid, lengths.at(1))}});
}

// "One length: the height of the prism, 7 cm. Its label stands at this face."
Message origin_sentence(const solids::Solid& solid, const solids::FaceLength& length) {
  switch (length.origin) {
    case solids::LengthOrigin::OwnLabel:
      return message("Its label is on this face.");
    case solids::LengthOrigin::EqualEdge:
      return message("The label is on an edge of the same length: the {edge}.",
                     {{"edge", Noun{solid.marks()[*length.mark].title}}});
    case solids::LengthOrigin::WorkedOut:
      break;
  }
  return message("It follows from the other labels.");
}
Message length_sentence(const solids::Solid& solid, const solids::FaceLength& length) {
  return message("One length: the {length}, {value}. {origin}", {{"length", Noun{length.title}},
                                                                 {"value", length_of_face(solid, length)},
                                                                 {"origin", origin_sentence(solid, length)}});
}

// ---- options ----

// The two lengths of a text, the shorter first: "10 cm and 7 cm", "7 cm x 10 cm", "7, 10 cm"; a unit serves those
// before.
std::optional<std::pair<exact::Number, exact::Number>> lengths_in(const std::string& text) {
  const std::vector<practice::TypedAnswer> read =
      practice::quantities_in(text, {" and ", " by ", " x ", "×", "*", ",", "&"});
  if (read.size() != 2) {
    return std::nullopt;
  }
  std::vector<exact::Number> values;
  for (const practice::TypedAnswer& one : read) {
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
  for (std::size_t i = 0; i < problem.solid.marks().size(); ++i) {
    const solids::MarkId id = solids::MarkId::at(i);
    const solids::Mark& mark = problem.solid.marks()[id];
    for (std::size_t kept = 0; kept < 2; ++kept) {
      const solids::FaceLength& swapped = face.lengths[1 - kept];
      const bool is_own = mark.symbol == face.lengths[0].symbol || mark.symbol == face.lengths[1].symbol;
      if (is_own || !problem.solid.is_given(mark.symbol)) {
        continue;
      }
      choices.push_back(practice::wrong_choice(
          message("{one} and {other}",
                  {{"one", length_of_face(problem.solid, face.lengths[kept])}, {"other", problem.solid.label(id)}}),
          swapped.is_height ? "D1" : "B6",
          message("That uses the {other} instead of the {own}. Which line of face {face} is it?",
                  {{"other", Noun{mark.title}}, {"own", Noun{swapped.title}}, {"face", number_of(face.id)}})));
    }
  }
}

// ---- read ----

std::vector<Task> read_face_lengths(const TaskText& text) {
  const JsonNode& node = *text.node.find("face");
  const Context context = text.context.at("face");
  const Problem& problem = text.problem;
  std::optional<FaceId> asked;
  std::vector<std::string> numbers;
  for (const solids::Face& face : problem.solid.faces()) {
    const std::string number = std::to_string(face.id.index() + 1);
    if (lessons::has_two_lengths(face)) {
      numbers.push_back(number);
      asked = node.is(JsonNode::Kind::Number) && node.text == number ? face.id : asked;
    }
  }
  if (!asked) {
    const Message there =
        numbers.empty() ? message("there is none") : message("these are {numbers:and}", {{"numbers", numbers}});
    context.fault(
        node, message("\"face\" is the number of a face whose area is worked from two lengths; of {solid:a} "
                      "{there}; found {found}",
                      {{"solid", Noun{problem.solid.name()}}, {"there", there}, {"found", lessons::found_text(node)}}));
    return {};
  }
  if (!text.find.empty()) {
    context.fault(
        node, message("\"face\" asks for the lengths of a face, \"find\" for something else: ask for one of the two "
                      "in a problem of its own"));
  }
  return {FaceLengths(*asked)};
}

// ---- made up ----

std::optional<Problem> made_face_lengths(const Blueprint& blueprint, Seed& seed) {
  auto problem = made_problem(blueprint.draw(seed, Labels::All), "");
  if (!problem) {
    return std::nullopt;
  }
  std::vector<geometry::FaceId> faces;
  for (const solids::Face& face : problem->solid.faces()) {
    if (lessons::has_two_lengths(face) && !(face.lengths[0].symbol == face.lengths[1].symbol)) {
      faces.push_back(face.id);
    }
  }
  if (faces.empty()) {
    return std::nullopt;
  }
  const FaceLengths task(faces[static_cast<std::size_t>(drawn(seed, 0, static_cast<int>(faces.size()) - 1))]);
  problem->tasks = {task};
  problem->prompt =
      told({"{Who} cuts out face {number} for a model of {a thing}. Which two lengths give its area?",
            "Which two lengths do you multiply for the area of face {number} of {a thing}?",
            "{Who} paints face {number} of a model of {a thing}. Which two lengths do they need to measure?"},
           blueprint, {{"number", std::to_string(task.face().index() + 1)}});
  constexpr std::size_t least_choices = 3;
  Seed order{0};
  return task.choices(*problem, {}, order)->size() < least_choices ? std::nullopt : problem;
}

}  // namespace

void FaceLengths::write(Members& members) const { members.emplace_back("face", std::to_string(face_.index() + 1)); }

words::Message FaceLengths::sentence(const Problem&) const {
  return message("Which two lengths do you need for the area of face {face}?", {{"face", number_of(face_)}});
}

Result<Question, words::Message> FaceLengths::question(const Problem&) const {
  Question question;
  question.find = key();
  return question;
}

Result<Explanation, words::Message> FaceLengths::explained(const Problem& problem,
                                                           const SolutionOptions& options) const {
  return reasoning::explained_with_measure(problem.solid, key(), *work(problem, options.line_places()), options);
}

std::optional<TaskWork> FaceLengths::work(const Problem& problem, int) const {
  const solids::Solid& solid = problem.solid;
  const solids::Face& face = solid.faces()[face_];
  const std::size_t number = number_of(face_);
  TaskSheet sheet(2);
  const auto say = [&](StepKind kind, const Message& reason) { sheet.steps().say(kind, reason).faces = {face.id}; };
  say(StepKind::Ask, message("Find the two lengths you need for the area of face {face}.", {{"face", number}}));
  say(StepKind::Name, message("Face {number} is {shape:a}.", {{"number", number}, {"shape", Noun{face.shape}}}));
  for (const solids::FaceLength& length : face.lengths) {
    say(StepKind::Count, length_sentence(solid, length));
    if (length.mark) {
      sheet.steps().work().steps.back().marks = {*length.mark};
    }
  }
  const Message answer = two_lengths(solid, face.id);
  const Message name = message("two lengths of face {face}", {{"face", number}});
  return std::move(sheet).finished({key(), "", {}, name, {}, {}, std::nullopt, 0, answer},
                                   message("The {name} are {lengths}.", {{"name", name}, {"lengths", answer}}));
}

Result<std::vector<Choice>, words::Message> FaceLengths::choices(const Problem& problem, const Question&,
                                                                 Seed& seed) const {
  constexpr std::size_t most = 4;
  const solids::Solid& solid = problem.solid;
  const solids::Face& asked = solid.faces()[face_];
  std::vector<Choice> others;
  push_swapped(problem, asked, others);
  for (const solids::Face& face : solid.faces()) {
    if (lessons::has_two_lengths(face) && pair_of(face) != pair_of(asked)) {
      others.push_back(practice::wrong_choice(
          two_lengths(solid, face.id), "B6",
          message("Those are the lengths of face {other}. Put your finger on face {asked} and follow its edges.",
                  {{"other", number_of(face.id)}, {"asked", number_of(asked.id)}})));
      others.back().faces = {face.id};
    }
  }
  shuffle(others, seed);
  std::vector<Choice> choices{practice::right_choice(two_lengths(solid, asked.id), message("Right."))};
  for (Choice& one : others) {
    const bool is_new = std::none_of(choices.begin(), choices.end(), [&](const Choice& other) {
      return same_lengths(said(other.text), said(one.text)) || other.message == one.message;
    });
    if (is_new && choices.size() < most) {
      choices.push_back(std::move(one));
    }
  }
  shuffle(choices, seed);
  return choices;
}

std::optional<std::size_t> FaceLengths::option_meant(const Question&, const std::vector<Choice>& choices,
                                                     const std::string& typed) const {
  const auto found = std::find_if(choices.begin(), choices.end(),
                                  [&](const Choice& choice) { return same_lengths(said(choice.text), typed); });
  return found == choices.end() ? std::nullopt : std::optional(static_cast<std::size_t>(found - choices.begin()));
}

namespace row {
Row face_lengths() {
  Row row{"lengths", {"face"}};
  row.read = read_face_lengths;
  row.made = {{5, "face-lengths", "two lengths of a face", practice::Heading::NameAndCount, 1, "read the labels", any,
               made_face_lengths}};
  row.examples = {
      R"("solid": {"kind": "rectangular prism", "length": "9 cm", "width": "7 cm", "height": "5 cm"}, "face": 3)"};
  return row;
}
}  // namespace row

}  // namespace fw::tasks
