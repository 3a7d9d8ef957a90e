#include <algorithm>

#include "reasoning/phrases.hpp"
#include "reasoning/tasks/task_parts.hpp"

// Numbers are held against each other: an area and a volume of one number, boxes that hold as much.
namespace fw::reasoning {
namespace {

using algebra::Notation;
using exact::Number;
using lessons::WholeBox;
using solids::Solid;

std::string edges_text(const WholeBox& box, const units::Unit& unit) {
  return std::to_string(box[0]) + " × " + std::to_string(box[1]) + " × " + std::to_string(box[2]) + " " + unit.text();
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

}  // namespace

long long surface_of(const WholeBox& box) { return 2 * (box[0] * box[1] + box[0] * box[2] + box[1] * box[2]); }

std::vector<WholeBox> boxes_with_volume(long long volume) {
  std::vector<WholeBox> boxes;
  for (long long a = 1; a * a * a <= volume; ++a) {
    for (long long b = a; volume % a == 0 && a * b * b <= volume; ++b) {
      if (volume / a % b == 0) {
        boxes.push_back({a, b, volume / a / b});
      }
    }
  }
  std::stable_sort(boxes.begin(), boxes.end(),
                   [](const WholeBox& x, const WholeBox& y) { return surface_of(x) > surface_of(y); });
  return boxes;
}

TaskWork same_number_work(const lessons::Problem& problem) {
  const Solid& solid = problem.solid;
  TaskSheet sheet(2);
  sheet.steps().say(StepKind::Ask, "Asked is whether the surface area and the volume are the same.");
  const auto tell = [&](const std::string& reason, const char* letter, const Number& amount, int dimension) {
    sheet.steps().state(StepKind::Count, reason, algebra::leaf(Notation::Kind::Letter, letter), true,
                        {amount, solid.unit().to_the(dimension), {}, ""});
  };
  tell("The surface area, in squares that cover it.", "S", solid.surface_area().amount(), 2);
  tell("The volume, in cubes that fill it.", "V", solid.volume().amount(), 3);
  sheet.steps().say(StepKind::Check, "A square is no cube. Written in another unit, even the numbers differ.");
  return std::move(sheet).finished({"same_number", "", "", "one number, two quantities", {}, {}, std::nullopt, 0, "no"},
                                   "No: the number is the same, what it counts is not.");
}

TaskWork least_surface_work(const lessons::Problem& problem) {
  const units::Unit unit = problem.solid.unit();
  const WholeBox own = *lessons::whole_box(problem.solid);
  const std::vector<WholeBox> boxes = boxes_with_volume(own[0] * own[1] * own[2]);
  TaskSheet sheet(0);
  sheet.steps()
      .say(StepKind::Ask,
           message("Asked is the least surface area of a box with whole edges that holds as much, in {unit}.",
                   {{"unit", unit_in_words(unit.to_the(2))}}))
      .unit = unit.to_the(2);
  const std::array<const char*, 3> titles{"length", "width", "height"};
  std::vector<SupplyNumber> edges;
  for (std::size_t i = 0; i < own.size(); ++i) {
    edges.push_back(sheet.number(Number::whole(own[i]), unit, Source::Kind::Label,
                                 std::string("the ") + titles[i] + " of this box"));
  }
  std::ignore = sheet.multiply("What it holds stays the same.", edges,
                               {Number::whole(own[0] * own[1] * own[2]), unit.to_the(3), {}, ""});
  for (const WholeBox& box : boxes) {
    sheet.steps().state(StepKind::Count, "A box of " + edges_text(box, unit) + " holds as much.", surface_work(box),
                        true, {Number::whole(surface_of(box)), unit.to_the(2), {}, ""});
  }
  const std::string answer = std::to_string(surface_of(boxes.back())) + " " + unit.to_the(2).text();
  const Outcome outcome{Number::whole(surface_of(boxes.back())), unit.to_the(2)};
  return std::move(sheet).finished({"least_surface", "", "", "least surface area", {}, {}, outcome, 0, answer},
                                   "The least is " + answer + ", of the box of " + edges_text(boxes.back(), unit) +
                                       ": its edges are the nearest to each other.");
}

}  // namespace fw::reasoning
