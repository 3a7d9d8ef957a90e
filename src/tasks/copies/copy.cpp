#include "tasks/copies/copy.hpp"

#include <algorithm>
#include <tuple>

#include "exact/print_number.hpp"
#include "lessons/asked.hpp"
#include "lessons/asked_value.hpp"
#include "lessons/json_text.hpp"
#include "practice/choice_parts.hpp"
#include "reasoning/phrases.hpp"
#include "reasoning/task_sheet.hpp"
#include "tasks/generate/scale_models.hpp"
#include "tasks/measure.hpp"

// What becomes of the areas and the volume of a copy.
namespace fw::tasks {
namespace {

using exact::Number;
using lessons::in_quotes;
using practice::Fact;
using practice::Hint;
using reasoning::Outcome;
using reasoning::Source;
using reasoning::StepKind;
using reasoning::SupplyNumber;
using reasoning::TaskSheet;

class Copy : public practice::NumberTask {
 public:
  /// `text`: the factor as written.
  Copy(std::string find, std::string text, Number factor)
      : find_(std::move(find)), text_(std::move(text)), factor_(std::move(factor)) {}

  [[nodiscard]] std::string key() const override { return find_; }
  [[nodiscard]] std::string find() const override { return find_; }
  void write(Members& members) const override { members.emplace_back("scale", lessons::quote(text_)); }
  [[nodiscard]] words::Message sentence(const Problem& problem) const override {
    return message("What is the {measure} of the scaled copy?", {{"measure", asked_noun(problem, find_)}});
  }
  [[nodiscard]] Result<Question, words::Message> question(const Problem& problem) const override;
  [[nodiscard]] std::string type(const Problem&) const override { return "copy"; }
  [[nodiscard]] std::vector<Fact> facts(const Problem&) const override {
    return {{text_, message("The edges of the scaled copy are {factor} times as long.", {{"factor", text_}})}};
  }
  [[nodiscard]] Result<Explanation, words::Message> explained(const Problem& problem,
                                                              const SolutionOptions& options) const override {
    return reasoning::explained_with_measure(problem.solid, find_, *work(problem, options.line_places()), options);
  }
  [[nodiscard]] std::optional<TaskWork> work(const Problem& problem, int places) const override;
  [[nodiscard]] Result<std::vector<Hint>, words::Message> hints(const Problem& problem,
                                                                const reasoning::ClassNotation&) const override {
    return practice::hints_to_task(*work(problem, 2));
  }
  [[nodiscard]] std::string given_number() const override { return text_; }
  [[nodiscard]] std::string masked_measure() const override { return {}; }
  [[nodiscard]] std::vector<words::Message> masking(const Problem& problem) const override;

 private:
  [[nodiscard]] int dimension() const { return lessons::dimension_of_whole(find_).value_or(2); }

  std::string find_;
  std::string text_;
  Number factor_;
};

Message grows(int dimension) {
  return dimension == 2 ? message("Area has two dimensions, so multiply by the scale factor twice.")
                        : message("Volume has three dimensions, so multiply by the scale factor three times.");
}

// ---- read ----

std::optional<Number> read_scale_factor(const JsonNode& node, const Context& context) {
  const Result<exact::Written, exact::NumberError> parsed = exact::parse_number(node.text);
  const bool is_factor = parsed && parsed->value.is_rational() && !(parsed->value == Number::whole(1)) &&
                         parsed->value <= Number::whole(1000) && parsed->value >= Number::ratio(1, 1000);
  if (!is_factor) {
    context.fault(node, message("{text} is not a scale factor: write how many times as long the edges of the copy are, "
                                "such as \"4\", \"2.5\" or \"1/2\", from 1/1000 to 1000 and not 1",
                                {{"text", in_quotes(node.text)}}));
    return std::nullopt;
  }
  return parsed->value;
}

void check_asked_of_copy(const TaskText& text, const std::string& written) {
  const JsonNode* find = text.node.find("find");
  if (find == nullptr) {
    text.context.fault(*text.node.find("scale"),
                       message("the problem has a copy but asks nothing: write \"find\": [\"{measure}\"]",
                               {{"measure", written == "?" ? "scale" : "volume"}}));
    return;
  }
  std::vector<std::string> allowed = written == "?" ? std::vector<std::string>{"scale"} : lessons::whole_measures();
  const auto is_missing = [&](const std::string& name) {
    return name != "scale" && !lessons::asked_value(text.problem, text.problem.solid, name);
  };
  allowed.erase(std::remove_if(allowed.begin(), allowed.end(), is_missing), allowed.end());
  for (std::size_t i = 0; i < text.find.size(); ++i) {
    if (std::find(allowed.begin(), allowed.end(), text.find[i]) == allowed.end()) {
      text.context.fault(find->items[i], message("{name} can't be asked about a copy{suggestion}",
                                                 {{"name", in_quotes(text.find[i])},
                                                  {"suggestion", lessons::suggestion(text.find[i], allowed)}}));
    }
  }
}

std::vector<Task> read_copies(const TaskText& text) {
  const JsonNode* scale = text.node.find("scale");
  const JsonNode* copy = text.node.find("copy");
  if (scale == nullptr) {
    text.context.fault(*copy, message("\"copy\" goes with \"scale\": \"?\""));
    return {};
  }
  const Context here = text.context.at("scale");
  const std::string* written = lessons::text_at(*scale, message("a factor"), here);
  if (written == nullptr) {
    return {};
  }
  std::vector<Task> tasks;
  if (*written != "?") {
    const std::optional<Number> factor = read_scale_factor(*scale, here);
    if (copy != nullptr) {
      text.context.fault(*copy, message("the scale factor is given, so the copy needs no measure: leave \"copy\" out, "
                                        "or ask for the factor with \"scale\": \"?\""));
    }
    for (const std::string& find : factor ? text.find : std::vector<std::string>{}) {
      tasks.emplace_back(Copy(find, *written, *factor));
    }
  } else if (copy == nullptr) {
    here.fault(*scale, message("to find the scale factor, give one measure of the copy, such as \"copy\": {example}",
                               {{"example", "{\"surface_area\": \"4576 cm^2\"}"}}));
  } else {
    tasks = read_factor_asked(*copy, text);
  }
  check_asked_of_copy(text, *written);
  return tasks;
}

// ---- made up ----

const CopyStories& copy_stories() {
  static const CopyStories stories{
      {"{Who} makes this scale model of {a thing}. The real edges are {k}. What is the {measure} of the real {thing}?",
       "The solid shown is a scale model of {a thing}. On the real {thing} every edge is {k}. What is its {measure}?",
       "This model of {a thing} is made to scale. The edges of the real {thing} are {k}. Find its {measure}."},
      {"{Who} builds a giant copy of {a thing} for the entrance. Its edges are {k}. What is the {measure} of the copy?",
       "For the stage, {who} makes a larger copy of {a thing}. Every edge is {k}. Find the {measure} of the copy.",
       "A copy of {a thing} has edges that are {k}. What is the {measure} of the copy?"},
      {"{Who} makes a scale model of {a thing}. Its edges are {k}. What is the {measure} of the model?",
       "The edges of a scale model of {a thing} are {k}. Find the {measure} of the model.",
       "{Who} builds a model of {a thing}. Every edge of the model is {k}. What is its {measure}?"}};
  return stories;
}
std::optional<Problem> made_copy(const Blueprint& drawn_blueprint, Seed& seed) {
  const Blueprint blueprint = by_turn(drawn_blueprint);
  const std::vector<CopyPlan> plans = copy_plans(blueprint);
  if (plans.empty()) {
    return std::nullopt;
  }
  const CopyPlan& plan = plans[blueprint.trap % plans.size()];
  const Plain plain = plain_of(blueprint);
  auto problem = made_problem(blueprint.family().draw(seed, blueprint.level, plain.labels, plan.form), "");
  if (problem) {
    problem->prompt = told(copy_stories().of(plan.sort), drawn_blueprint,
                           {{"k", as_long(plan.factor)}, {"measure", plain.is_volume() ? "volume" : "surface area"}});
    problem->tasks = {Copy(plain.find, plan.factor, exact::parse_number(plan.factor)->value)};
  }
  return problem;
}

}  // namespace

std::string plain_factor(const Number& number) {
  const std::string exact = exact::exact_text(number);
  return exact.empty() || exact.size() > 8 ? exact::shown(number, 4).text : exact;
}

Number of_original(const Problem& problem, const std::string& find) {
  const auto value = lessons::asked_value(problem, problem.solid, find);
  return value ? *value : Number{};
}

Result<Question, words::Message> Copy::question(const Problem& problem) const {
  auto of_solid = Measure(find_).question(problem);
  if (!of_solid) {
    return of_solid;
  }
  Question question = std::move(of_solid).value();
  question.asked = dimension() == 3 ? Asked::CopyVolume : Asked::CopyArea;
  question.truth = *question.truth * exact::power(factor_, dimension());
  question.factor = factor_;
  question.first_step = message("Start with one edge of the scaled copy. How long is it?");
  return question;
}

std::vector<words::Message> Copy::masking(const Problem&) const {
  // Factors for which taking the exponent as a factor gives the right number.
  if (!(exact::power(factor_, dimension()) == Number::whole(dimension()) * factor_)) {
    return {};
  }
  return {
      message("with a factor of {factor}, taking it times {times} gives the right number too: another factor would "
              "show the mistake",
              {{"factor", text_}, {"times", dimension()}})};
}

std::optional<TaskWork> Copy::work(const Problem& problem, int places) const {
  const units::Unit unit = problem.solid.unit().to_the(dimension());
  const Noun title{reasoning::title_named(problem.solid, find_)};
  TaskSheet sheet(places);
  sheet.steps()
      .say(StepKind::Ask, message("Find the {measure} of the scaled copy, in {unit}.",
                                  {{"measure", title}, {"unit", reasoning::unit_in_words(unit)}}))
      .unit = unit;
  sheet.steps()
      .say(StepKind::Name,
           message("Every edge of the scaled copy is {factor} times as long.", {{"factor", plain_factor(factor_)}}))
      .outcome = Outcome{factor_, std::nullopt};
  const SupplyNumber k = sheet.number(factor_, std::nullopt, Source::Kind::Known,
                                      message("how many times as long the edges are"), plain_factor(factor_));
  const Number power = exact::power(factor_, dimension());
  SupplyNumber times =
      sheet.multiply(grows(dimension()), std::vector<SupplyNumber>(static_cast<std::size_t>(dimension()), k),
                     {power, {}, {}, plain_factor(power)});
  const Number original = of_original(problem, find_);
  const SupplyNumber amount = sheet.number(original, unit, Source::Kind::EarlierStep,
                                           message("the {measure} of the solid, found before", {{"measure", title}}));
  const Number result = power * original;
  std::ignore = sheet.multiply(message("So the {measure} of the scaled copy is {factor} times that of the solid.",
                                       {{"measure", title}, {"factor", plain_factor(power)}}),
                               {times, amount}, {result, unit, {}, ""});
  const exact::Shown shown = reasoning::shown_apart(result, places);
  TaskWork task{"copy",
                find_,
                message("then the copy"),
                {},
                {},
                {},
                Outcome{result, unit},
                0,
                practice::amount_shown(shown, unit)};
  return std::move(sheet).finished(std::move(task),
                                   message("The {measure} of the scaled copy is {amount}.",
                                           {{"measure", title}, {"amount", reasoning::about(shown, unit.text())}}));
}

namespace row {
Row copy() {
  Row row{"copy", {"scale", "copy"}, true, true};
  row.read = read_copies;
  row.made = {
      {26, "copy", "area or volume of a scaled copy", practice::Heading::CopiesAndUnits, 2, "scale", any, made_copy}};
  row.examples = {R"("solid": {"kind": "cube", "edge": "7 cm"}, "scale": "5", "find": ["surface_area", "volume"])"};
  return row;
}
}  // namespace row

}  // namespace fw::tasks
