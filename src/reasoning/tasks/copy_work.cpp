#include <tuple>

#include "exact/print_number.hpp"
#include "lessons/asked.hpp"
#include "lessons/asked_value.hpp"
#include "reasoning/nouns.hpp"
#include "reasoning/phrases.hpp"
#include "reasoning/tasks/task_parts.hpp"

// A copy of the solid: what becomes of its areas and its volume, and how long its edges are.
namespace fw::reasoning {
namespace {

using exact::Number;

std::string plain(const Number& number) {
  const std::string exact = exact::exact_text(number);
  return exact.empty() || exact.size() > 8 ? exact::shown(number, 4).text : exact;
}

std::string grows(int dimension) {
  return dimension == 2 ? "An area grows in two directions, longer and wider: take the factor twice."
                        : "A volume grows in three directions, longer, wider and taller: take the factor three times.";
}

Number original_of(const lessons::Problem& problem, const std::string& find) {
  const auto value = lessons::asked_value(problem, problem.solid, find);
  return value ? *value : Number{};
}

}  // namespace

TaskWork copy_work(const lessons::Problem& problem, int places, const std::string& find) {
  const int dimension = lessons::dimension_of_whole(find).value_or(2);
  const units::Unit unit = problem.solid.unit().to_the(dimension);
  const std::string title = title_named(problem, find);
  const Number& factor = *problem.scale->factor;
  TaskSheet sheet(places);
  sheet.steps()
      .say(StepKind::Ask, message("Asked is the {measure} of the copy, in {unit}.",
                                  {{"measure", Noun{title}}, {"unit", unit_in_words(unit)}}))
      .unit = unit;
  sheet.steps().say(StepKind::Name, "Every edge of the copy is " + plain(factor) + " times as long.").outcome =
      Outcome{factor, std::nullopt};
  const SupplyNumber k =
      sheet.number(factor, std::nullopt, Source::Kind::Known, "how many times as long the edges are", plain(factor));
  const Number power = exact::power(factor, dimension);
  SupplyNumber times =
      sheet.multiply(grows(dimension), std::vector<SupplyNumber>(static_cast<std::size_t>(dimension), k),
                     {power, {}, {}, plain(power)});
  const Number original = original_of(problem, find);
  const SupplyNumber amount =
      sheet.number(original, unit, Source::Kind::EarlierStep, "the " + title + " of the solid, worked out before");
  const Number result = power * original;
  std::ignore = sheet.multiply("So the " + title + " of the copy is " + plain(power) + " times that of the solid.",
                               {times, amount}, {result, unit, {}, ""});
  const exact::Shown shown = shown_apart(result, places);
  const std::string text = (shown.exact ? "" : "≈ ") + shown.text + " " + unit.text();
  TaskWork task{"copy", find, "then the copy", "", {}, {}, Outcome{result, unit}, 0, text};
  return std::move(sheet).finished(
      std::move(task),
      "The " + title + " of the copy is " + (shown.exact ? "" : "about ") + shown.text + " " + unit.text() + ".");
}

TaskWork factor_work(const lessons::Problem& problem, int places) {
  const auto& [find, known] = *problem.scale->copy.begin();
  const int dimension = lessons::dimension_of_whole(find).value_or(2);
  const units::Unit unit = problem.solid.unit().to_the(dimension);
  const std::string title = title_named(problem, find);
  TaskSheet sheet(places);
  sheet.steps().say(StepKind::Ask, "Asked is how many times as long the edges of the copy are: a plain number.");
  const SupplyNumber written = sheet.number(known.number.value, known.unit, Source::Kind::Known,
                                            "the " + title + " of the copy", known.number.text);
  const SupplyNumber copy = converted(sheet.steps(), written, unit);
  const Number original = original_of(problem, find);
  const SupplyNumber solid =
      sheet.number(original, unit, Source::Kind::EarlierStep, "the " + title + " of the solid, worked out before");
  const Number ratio = copy.value / original;
  SupplyNumber times =
      sheet.steps().work_out(StepKind::Count, "How many times as large is the " + title + " of the copy?", copy, "÷",
                             solid, {ratio, {}, {}, ratio.is_rational() ? plain(ratio) : ""});
  const Number factor = dimension == 2 ? exact::square_root(ratio) : exact::cube_root(ratio);
  algebra::Notation root;
  root.kind = algebra::Notation::Kind::Root;
  root.degree = dimension;
  root.parts = {sheet.steps().notation(times)};
  const std::string reason =
      dimension == 2 ? "An area grows in two directions: which number times itself makes that?"
                     : "A volume grows in three directions: which number, taken three times as a factor, makes that?";
  std::ignore = sheet.steps().state(StepKind::TakeRoot, reason, root, ratio.is_rational(),
                                    {factor, {}, {}, factor.is_rational() ? plain(factor) : ""});
  const std::string text = (factor.is_rational() ? plain(factor) : "≈ " + exact::shown(factor, places).text) + " times";
  TaskWork task{"scale", find, "then the factor", "", {}, {}, Outcome{factor, std::nullopt}, 0, text};
  return std::move(sheet).finished(std::move(task), "The edges of the copy are " + text + " as long.");
}

}  // namespace fw::reasoning
