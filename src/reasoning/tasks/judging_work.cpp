#include <algorithm>
#include <tuple>

#include "exact/print_number.hpp"
#include "lessons/asked_value.hpp"
#include "reasoning/nouns.hpp"
#include "reasoning/phrases.hpp"
#include "reasoning/tasks/task_parts.hpp"

// A label, an answer or an estimate is judged: can it be true, how far is it off, between which bounds does it lie?
namespace fw::reasoning {
namespace {

using exact::Number;
using lessons::Problem;

std::string amount_text(const Number& amount, const units::Unit& unit, int places) {
  const exact::Shown rounded = shown_apart(amount, places);
  return (rounded.exact ? "" : "≈ ") + rounded.text + " " + unit.text();
}

// The figure with the claimed label beside the others.
solids::Description with_label(const Problem& problem) {
  solids::Description description = problem.description;
  const std::string& name = problem.claim->measure;
  const std::string in_base = "base.";
  const solids::LengthEntry entry{problem.claim->value};
  if (name.rfind(in_base, 0) == 0 && !description.base.empty()) {
    description.base.front().fields[name.substr(in_base.size())] = entry;
  } else {
    description.fields[name] = entry;
  }
  return description;
}

units::Unit unit_asked(const Problem& problem, const std::string& find) {
  return problem.solid.unit().to_the(lessons::dimension_of_asked(problem.solid, find).value_or(1));
}

Number amount_in(const units::WrittenQuantity& quantity, const units::Unit& unit) {
  return quantity.number.value * units::conversion(quantity.unit, unit);
}

std::string shown(const units::WrittenQuantity& quantity) {
  return quantity.has_unit && quantity.number.text != quantity.text ? quantity.number.text + " " + quantity.unit.text()
                                                                    : quantity.text;
}

// To one digit that counts: 63 -> 60, 126 -> 100, 0.45 -> 0.5.
Number to_one_digit(const Number& number) {
  Number scale = Number::whole(1);
  Number digit = number;
  while (digit >= Number::whole(10)) {
    digit = digit / Number::whole(10);
    scale = scale * Number::whole(10);
  }
  while (digit < Number::whole(1) && !digit.is_zero()) {
    digit = digit * Number::whole(10);
    scale = scale / Number::whole(10);
  }
  return exact::rounded(digit, 0) * scale;
}

// The lengths of a volume, or the kinds of faces of an area, each to one digit, and what they come to.
void write_estimate(const Problem& problem, const std::string& find, TaskSheet& sheet) {
  const units::Unit unit = unit_asked(problem, find);
  std::vector<algebra::Notation> parts;
  Number sum;
  std::vector<std::size_t> groups;
  for (const solids::Face& face : problem.solid.faces()) {
    const auto counts = [&](const solids::Face& one) {
      return one.group == face.group && (find == "surface_area" || one.role == solids::FaceRole::Lateral);
    };
    const auto& faces = problem.solid.faces();
    const auto alike = static_cast<long long>(std::count_if(faces.begin(), faces.end(), counts));
    if (alike == 0 || std::find(groups.begin(), groups.end(), face.group.index()) != groups.end()) {
      continue;
    }
    groups.push_back(face.group.index());
    const Number rough = to_one_digit(face.area.amount());
    sum = sum + Number::whole(alike) * rough;
    if (!parts.empty()) {
      parts.push_back(algebra::leaf(algebra::Notation::Kind::Sign, "+"));
    }
    if (alike > 1) {
      parts.push_back(algebra::leaf(algebra::Notation::Kind::Number, std::to_string(alike)));
      parts.push_back(algebra::leaf(algebra::Notation::Kind::Sign, "×"));
    }
    parts.push_back(sheet.steps().notation({rough, unit, std::nullopt, ""}));
  }
  std::ignore = sheet.steps().state(StepKind::Work, "Estimate first: take each face to one digit and add them up.",
                                    algebra::row(std::move(parts)), true, {sum, unit, {}, ""});
}

bool is_added_up(const Problem& problem, const std::string& find) {
  return (find == "surface_area" && problem.open.empty()) || find == "lateral_area";
}

}  // namespace

ClaimVerdict judged_claim(const Problem& problem) {
  ClaimVerdict verdict;
  const auto fitting = lessons::asked_value(problem, problem.solid, problem.claim->measure);
  verdict.fitting = fitting ? *fitting : Number{};
  const auto figure = solids::Solid::make(with_label(problem), problem.known);
  verdict.can_be = figure.has_value();
  if (figure) {
    const std::vector<solids::Fault>& remarks = figure->remarks();
    verdict.is_rounded = std::any_of(remarks.begin(), remarks.end(), [](const solids::Fault& remark) {
      return remark.severity == solids::Severity::Rounding;
    });
  } else {
    verdict.why = said(figure.error().front().message);
  }
  return verdict;
}

TaskWork claim_work(const Problem& problem, int places) {
  const ClaimVerdict verdict = judged_claim(problem);
  const std::string title = title_named(problem, problem.claim->measure);
  const units::Unit unit = problem.solid.unit();
  const std::string fitting = amount_text(verdict.fitting, unit, places);
  const std::string claimed = shown(problem.claim->value);
  TaskSheet sheet(places);
  sheet.steps().say(StepKind::Check,
                    "Claimed: " + title + " " + claimed + ". The other labels fix it: " + fitting + ".");
  std::string sentence = "No: this figure cannot be. A " + title + " of " + fitting + " would fit.";
  if (verdict.can_be) {
    sentence = verdict.is_rounded ? "Yes, this figure can be: " + claimed + " is that number, rounded."
                                  : "Yes, this figure can be.";
  } else {
    sheet.steps().say(StepKind::Check, sentence_case(verdict.why) + (verdict.why.back() == '.' ? "" : "."));
  }
  TaskWork task{"claim", problem.claim->measure, "then the claim", "", {}, {}, std::nullopt, 0, ""};
  task.answer = verdict.can_be ? "yes" : "no, " + fitting + " would fit";
  return std::move(sheet).finished(std::move(task), sentence);
}

TaskWork mistake_work(const Problem& problem, int places) {
  const std::string& find = problem.find.front();
  const units::Unit unit = unit_asked(problem, find);
  const auto value = lessons::asked_value(problem, problem.solid, find);
  const Number right = value ? *value : Number{};
  const Number wrong = amount_in(*problem.wrong, unit);
  TaskSheet sheet(places);
  const SupplyNumber a =
      sheet.number(right, unit, Source::Kind::EarlierStep, "the " + title_named(problem, find) + ", worked out before");
  const SupplyNumber b =
      sheet.number(wrong, unit, Source::Kind::Known, "what somebody got", problem.wrong->number.text);
  const bool is_less = wrong < right;
  std::ignore = sheet.steps().work_out(
      StepKind::Check, "Somebody got " + shown(*problem.wrong) + ". How far is that off?", is_less ? a : b, "−",
      is_less ? b : a, {is_less ? right - wrong : wrong - right, unit, {}, ""});
  TaskWork task{
      "mistake", find, "then the mistake", "", {}, {}, Outcome{right, unit}, 0, amount_text(right, unit, places)};
  return std::move(sheet).finished(std::move(task), "The right value is " + amount_text(right, unit, places) +
                                                        ". Which part of the work is missing, or too much?");
}

TaskWork interval_work(const Problem& problem, int places) {
  const std::string& find = problem.find.front();
  const units::Unit unit = unit_asked(problem, find);
  const auto value = lessons::asked_value(problem, problem.solid, find);
  const Number amount = value ? *value : Number{};
  const std::string text = amount_text(amount, unit, places);
  TaskSheet sheet(places);
  if (is_added_up(problem, find)) {
    write_estimate(problem, find, sheet);
  }
  const bool has_estimate = is_added_up(problem, find);
  const std::string title = title_named(problem, find);
  TaskWork task{"interval", find, "then the interval", "", {}, {}, std::nullopt, 0, ""};
  task.lead = has_estimate ? 1 : 0;
  const auto& bounds = problem.between;
  for (std::size_t i = 0; i + 1 < bounds.size(); ++i) {
    if (amount_in(bounds[i], unit) < amount && amount < amount_in(bounds[i + 1], unit)) {
      task.answer = "between " + shown(bounds[i]) + " and " + shown(bounds[i + 1]);
    }
  }
  if (task.answer.empty()) {
    task.answer =
        amount < amount_in(bounds.front(), unit) ? "below " + shown(bounds.front()) : "above " + shown(bounds.back());
  }
  const std::string sentence = "The " + title + " of " + text + " lies " + task.answer + ".";
  return std::move(sheet).finished(std::move(task), sentence);
}

}  // namespace fw::reasoning
