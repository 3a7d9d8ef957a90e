#include <array>
#include <tuple>

#include "lessons/asked_value.hpp"
#include "practice/packing.hpp"
#include "reasoning/phrases.hpp"
#include "reasoning/task_sheet.hpp"
#include "tasks/boxes.hpp"
#include "tasks/decide/judged_numbers.hpp"
#include "tasks/row.hpp"

// The least surface area of a box with whole edges that holds as much.
namespace fw::tasks {
namespace {

using algebra::Notation;
using exact::Number;
using lessons::WholeBox;
using practice::boxes_with_volume;
using practice::Hint;
using practice::surface_of;
using reasoning::Outcome;
using reasoning::sign;
using reasoning::Source;
using reasoning::StepKind;
using reasoning::SupplyNumber;
using reasoning::TaskSheet;

class LeastSurface : public practice::NumberTask {
 public:
  [[nodiscard]] std::string key() const override { return "least_surface"; }
  [[nodiscard]] std::string find() const override { return key(); }
  [[nodiscard]] std::string measure() const override { return {}; }
  [[nodiscard]] words::Message sentence(const Problem&) const override {
    return message("What is the least surface area of a box with the same volume and whole-number edges?");
  }
  [[nodiscard]] Result<Question, words::Message> question(const Problem& problem) const override;
  [[nodiscard]] std::string type(const Problem&) const override { return "least-surface"; }
  [[nodiscard]] Result<Explanation, words::Message> explained(const Problem& problem,
                                                              const SolutionOptions& options) const override {
    return reasoning::explained_with_measure(problem.solid, key(), *work(problem, options.line_places()), options);
  }
  [[nodiscard]] std::optional<TaskWork> work(const Problem& problem, int places) const override;
  [[nodiscard]] Result<std::vector<Hint>, words::Message> hints(
      const Problem& problem, const reasoning::ClassNotation& notation) const override;
};

Message edges_text(const WholeBox& box, const units::Unit& unit) {
  return message("{length} × {width} × {height} {unit}",
                 {{"length", box[0]}, {"width", box[1]}, {"height", box[2]}, {"unit", unit.text()}});
}

/// "2 × 3 × 4 + 2 × 3 × 6 + 2 × 4 × 6"
Notation surface_work(const WholeBox& box) {
  std::vector<Notation> parts;
  for (const auto& [a, b] : {std::pair{box[0], box[1]}, std::pair{box[0], box[2]}, std::pair{box[1], box[2]}}) {
    if (!parts.empty()) {
      parts.push_back(sign("+"));
    }
    parts.push_back(algebra::leaf(Notation::Kind::Number, "2"));
    for (const long long edge : {a, b}) {
      parts.push_back(sign("×"));
      parts.push_back(algebra::leaf(Notation::Kind::Number, std::to_string(edge)));
    }
  }
  return algebra::row(std::move(parts));
}

// ---- made up ----

bool is_plain_box(const Subject& subject) { return subject.form->shape == Shape::Box; }
std::optional<Problem> made_least_surface(const Blueprint& blueprint, Seed& seed) {
  static const Stories stories{
      "{A thing} holds {volume} one-{unit} cubes. What is the least surface area of a box with whole edges that holds "
      "as "
      "many?",
      "{Who} needs a box that holds as much as this {thing}. With whole edges, what is the least surface area it can "
      "have?",
      "{Who} wants a box with the same volume as {a thing} and whole edges. What is the least surface area possible?"};
  // Volumes with many divisors, whose best box is no cube.
  static const std::vector<long long> pool{24,  30,  36,  40,  42,  48,  54,  56,  60,  70,  72,  80,  84,
                                           90,  96,  100, 105, 108, 112, 120, 126, 132, 140, 144, 150, 160,
                                           162, 168, 180, 192, 196, 198, 200, 210, 220, 224, 240};
  const std::vector<WholeBox> boxes = boxes_with_volume(one_of(pool, seed));
  std::vector<WholeBox> shown;
  for (std::size_t i = 0; i + 1 < boxes.size(); ++i) {  // not the best one
    for (const WholeBox& turned : turned_to_fit(blueprint.form(), boxes[i])) {
      shown.push_back(turned);
    }
  }
  if (shown.empty()) {
    return std::nullopt;
  }
  const WholeBox& box = one_of(shown, seed);
  const std::string unit = blueprint.unit() == "cm" ? "centimeter" : blueprint.unit() == "in" ? "inch" : "foot";
  return box_with_edges(
      blueprint, box, LeastSurface(),
      told(stories, blueprint, {{"volume", std::to_string(box[0] * box[1] * box[2])}, {"unit", unit}}));
}

}  // namespace

Result<Question, words::Message> LeastSurface::question(const Problem& problem) const {
  const Outcome outcome = *work(problem, 0)->outcome;
  Question question;
  question.find = key();
  question.asked = Asked::LeastSurface;
  question.truth = outcome.amount;
  question.unit = outcome.unit;
  question.first_step = message("Start with a list. Which whole-number edges give the same volume?");
  return question;
}

Result<std::vector<Hint>, words::Message> LeastSurface::hints(const Problem& problem,
                                                              const reasoning::ClassNotation&) const {
  const TaskWork worked = *work(problem, 0);
  std::vector<Hint> hints = practice::hints_to_task(worked);
  hints.push_back(practice::hint_of(worked.steps[2]));  // the first box of the list, which takes the most
  return hints;
}

std::optional<TaskWork> LeastSurface::work(const Problem& problem, int) const {
  const units::Unit unit = problem.solid.unit();
  const WholeBox own = *lessons::whole_box(problem.solid);
  const std::vector<WholeBox> boxes = boxes_with_volume(own[0] * own[1] * own[2]);
  TaskSheet sheet(0);
  sheet.steps()
      .say(StepKind::Ask,
           message("Find the least surface area of a box with the same volume and whole-number edges, in {unit}.",
                   {{"unit", reasoning::unit_in_words(unit.to_the(2))}}))
      .unit = unit.to_the(2);
  const std::array<const char*, 3> titles{"length", "width", "height"};
  std::vector<SupplyNumber> edges;
  for (std::size_t i = 0; i < own.size(); ++i) {
    edges.push_back(sheet.number(Number::whole(own[i]), unit, Source::Kind::Label,
                                 message("the {edge} of this box", {{"edge", Noun{titles[i]}}})));
  }
  std::ignore = sheet.multiply(message("What it holds stays the same."), edges,
                               {Number::whole(own[0] * own[1] * own[2]), unit.to_the(3), {}, ""});
  for (const WholeBox& box : boxes) {
    sheet.steps().state(StepKind::Count,
                        message("A box of {edges} has the same volume.", {{"edges", edges_text(box, unit)}}),
                        surface_work(box), true, {Number::whole(surface_of(box)), unit.to_the(2), {}, ""});
  }
  const Outcome outcome{Number::whole(surface_of(boxes.back())), unit.to_the(2)};
  const Message answer = judged_amount(outcome.amount, *outcome.unit, 0);
  return std::move(sheet).finished(
      {key(), "", {}, message("least surface area"), {}, {}, outcome, 0, answer},
      message("The least is {answer}, for the box of {edges}. Its edges are the closest to each other.",
              {{"answer", answer}, {"edges", edges_text(boxes.back(), unit)}}));
}

namespace row {
Row least_surface() {
  Row row{"least_surface"};
  row.finds = {"least_surface"};
  row.named = [](const std::string&) { return Task(LeastSurface()); };
  row.unfit = [](const solids::Solid& solid) {
    return lessons::whole_box(solid)
               ? Message()
               : message("goes with a box whose length, width and height are whole numbers up to 1000");
  };
  row.made = {{35, "least-surface", "box with the least surface area", practice::Heading::DecideAndCheck, 3,
               "list and compare", is_plain_box, made_least_surface}};
  row.examples = {R"("solid": {"kind": "rectangular prism", "length": "6 in", "width": "4 in", "height": "1 in"},
         "find": ["least_surface"])"};
  return row;
}
}  // namespace row

}  // namespace fw::tasks
