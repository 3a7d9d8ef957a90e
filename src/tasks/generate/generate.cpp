#include "tasks/generate/generate.hpp"

#include <algorithm>
#include <cmath>
#include <iterator>
#include <map>
#include <optional>
#include <set>

#include "exact/print_number.hpp"
#include "practice/signatures.hpp"
#include "practice/task_type.hpp"
#include "tasks/catalog.hpp"
#include "tasks/generate/made_up.hpp"

namespace fw::tasks {
namespace {

using lessons::Problem;
using practice::Asked;
using practice::Figure;
using practice::Question;
using practice::WrongNumber;

// Digits of every label and of the answer: equal in parallel problems.
std::string shape_of(const Problem& problem, const std::string& answer) {
  std::string shape = std::to_string(answer.size());
  for (const algebra::Symbol& symbol : {solids::symbols::surface_area(), solids::symbols::volume()}) {
    const units::WrittenQuantity* written = problem.solid.written(symbol);
    shape += written == nullptr ? "" : "," + std::to_string(written->number.text.size());
  }
  for (const solids::Measure& measure : problem.solid.statement().measures) {
    const units::WrittenQuantity* written = problem.solid.written(measure.symbol);
    shape += written == nullptr ? "" : "," + std::to_string(written->number.text.size());
  }
  for (const lessons::Task& task : problem.tasks) {
    shape += "," + std::to_string(practice::stated(task).given_number().size());
  }
  return shape + "," + std::to_string(problem.solid.group_count());
}

// What must not come twice: the figure with its numbers.
std::string figure_key(const Problem& problem) {
  std::string key = problem.solid.name();
  for (const auto& [name, value] : problem.solid.values()) {
    key += ";" + std::to_string(std::llround(1000 * value.to_double()));
  }
  return key;
}

bool is_a_label(const Problem& problem, const exact::Number& number) {
  const std::vector<solids::Measure>& all = problem.solid.statement().measures;
  return std::any_of(all.begin(), all.end(), [&](const solids::Measure& measure) {
    const units::WrittenQuantity* written = problem.solid.written(measure.symbol);
    return written != nullptr && written->number.value == number;
  });
}

// Answers of parallel problems are more than 5 % apart.
bool is_near(double a, double b) { return std::abs(a - b) <= 0.05 * std::max(a, b); }

struct Made {
  Problem problem;
  std::string answer;  ///< with what is asked; empty where it may come again in a lesson
  std::optional<double> number;
};

// Whether a mistake comes too near to the answer.
bool hides_a_mistake(const Problem& problem, const Question& question) {
  constexpr double too_near = 0.01;
  constexpr double too_near_for_the_other_measure = 0.03;
  if (!question.truth || counts_parts(question.asked) || question.asked == Asked::None) {
    return false;
  }
  const double truth = question.truth->to_double();
  const Figure figure = figure_of(problem, question);
  const bool is_area = question.asked == Asked::Surface || question.asked == Asked::Lateral;
  const double other = question.asked == Asked::Volume ? figure.closed : figure.volume;
  const bool is_blurred = (is_area || question.asked == Asked::Volume) &&
                          std::abs(other - figure.truth) <= too_near_for_the_other_measure * figure.truth;
  const std::vector<WrongNumber> wrong = all_wrong_numbers(figure);
  return is_blurred || std::any_of(wrong.begin(), wrong.end(), [&](const WrongNumber& one) {
           return !one.signature->is_rare && std::abs(one.value - truth) <= too_near * truth;
         });
}

// Whether the answer can be written out: with one decimal or, where it is converted, with four digits that count.
bool ends_soon(const Question& question) {
  const exact::Number times_pi = *question.truth / exact::Number::pi();
  if (question.has_circle && times_pi.is_rational()) {
    return exact::shown(times_pi, 1).exact;
  }
  if (!question.is_converted) {
    return exact::shown(*question.truth, 1).exact;
  }
  constexpr int most_places = 6;
  constexpr std::size_t most_digits = 4;
  std::string digits = exact::digits_text(*question.truth, most_places);
  digits.erase(std::remove(digits.begin(), digits.end(), '.'), digits.end());
  const std::size_t first = std::min(digits.find_first_not_of('0'), digits.size());
  const std::size_t last = digits.find_last_not_of('0');
  return exact::decimals_needed(*question.truth, most_places) && last != std::string::npos &&
         last - first < most_digits;
}

// Of a request that names no type: the same seed gives the same problems as long as the lesson format has the same
// number, so that a type that comes later joins the mix together with the format's next number.
constexpr int mixed_types = 35;

class Maker {
 public:
  explicit Maker(const PracticeRequest& request) : request_(&request), plan_{request.seed} {
    for (const MadeUp& type : made_up()) {
      const bool is_wanted = request.types.empty() ? type.number <= mixed_types
                                                   : std::find(request.types.begin(), request.types.end(), type.key) !=
                                                         request.types.end();
      if (is_wanted && type.level <= request.level) {
        types_.push_back(&type);
      }
    }
  }

  Result<std::vector<lessons::Lesson>, words::Message> made() {
    if (figures_at_most() < request_->count * request_->versions) {
      return failure(too_few());
    }
    std::vector<lessons::Lesson> lessons(request_->versions);
    for (std::size_t v = 0; v < lessons.size(); ++v) {
      lessons[v].title =
          lessons.size() == 1
              ? request_->title
              : said(words::message("{title}, version {number}", {{"title", request_->title}, {"number", v + 1}}));
    }
    for (std::size_t i = 0; i < request_->count; ++i) {
      const std::vector<Problem> row = next_row();
      if (row.empty()) {
        return failure(too_few());
      }
      for (std::size_t v = 0; v < row.size(); ++v) {
        lessons[v].problems.push_back(row[v]);
        lessons[v].problems.back().id = "p" + std::to_string(i + 1);
      }
    }
    return lessons;
  }

 private:
  [[nodiscard]] words::Message too_few() const {
    return words::message(
        "these types have too few different figures for {count} problems: ask for fewer, or add a type",
        {{"count", request_->count}});
  }
  [[nodiscard]] bool serves(const MadeUp& type, const Subject& subject) const {
    constexpr int most_at_first = 100;  // at level 1 lengths have two digits
    const auto& sizes = subject.form->sizes;
    const bool is_small =
        std::all_of(sizes.begin(), sizes.end(), [](const Range& one) { return one.most <= most_at_first; });
    const bool is_round = subject.family->traits().has_round_base;
    return is_round == type.of_circles && (request_->level > 1 || is_small) &&
           subject.family->level <= request_->level && type.serves(subject);
  }
  // In how many sizes the things come that serve the types: no figure comes twice.
  [[nodiscard]] std::size_t figures_at_most() const {
    std::size_t count = 0;
    for (const Subject& subject : subjects()) {
      const bool is_used =
          std::any_of(types_.begin(), types_.end(), [&](const MadeUp* type) { return serves(*type, subject); });
      count += is_used ? subject.family->sizes(*subject.form) : 0;
    }
    return count;
  }

  // The next type in a shuffled round of all, whose method is not that of the problem before where there is another.
  const MadeUp& next_type() {
    if (bag_.empty()) {
      bag_ = types_;
      shuffle(bag_, plan_);
    }
    auto next = std::find_if(bag_.begin(), bag_.end(), [&](const MadeUp* type) { return type->method != before_; });
    if (next == bag_.end()) {
      // The rest of the round is all of one method: one of another method comes a second time.
      const auto other =
          std::find_if(types_.begin(), types_.end(), [&](const MadeUp* type) { return type->method != before_; });
      if (other != types_.end()) {
        return **other;
      }
      next = bag_.begin();
    }
    const MadeUp& type = **next;
    bag_.erase(next);
    return type;
  }

  // A shape that serves first, so that all of them come up, then a thing of this shape.
  Blueprint next_blueprint(const MadeUp& type) {
    std::vector<Shape> shapes;
    for (const Subject& subject : subjects()) {
      if (serves(type, subject) && std::find(shapes.begin(), shapes.end(), subject.form->shape) == shapes.end()) {
        shapes.push_back(subject.form->shape);
      }
    }
    const Shape shape = one_of(shapes, plan_);
    std::vector<Subject> fitting;
    std::copy_if(subjects().begin(), subjects().end(), std::back_inserter(fitting),
                 [&](const Subject& subject) { return subject.form->shape == shape && serves(type, subject); });
    Blueprint blueprint;
    blueprint.subject = one_of(fitting, plan_);
    blueprint.level = request_->level;
    blueprint.story = plan_.below(12);
    blueprint.pick = plan_.below(12);
    blueprint.trap = plan_.below(120);
    const auto turn = turns_.find(type.key);
    blueprint.turn = request_->seed % 12 + (turn == turns_.end() ? 0 : turn->second);
    return blueprint;
  }

  // One problem a version; none where no numbers were found for any type. A type without numbers has none later
  // either, so that it is not tried again.
  std::vector<Problem> next_row() {
    while (!types_.empty()) {
      const MadeUp& type = next_type();
      std::vector<Problem> row = row_of(type);
      if (!row.empty()) {
        return row;
      }
      types_.erase(std::remove(types_.begin(), types_.end(), &type), types_.end());
      bag_.erase(std::remove(bag_.begin(), bag_.end(), &type), bag_.end());
    }
    return {};
  }

  std::vector<Problem> row_of(const MadeUp& type) {
    constexpr int most_tried = 60;
    constexpr int most_unsuited = 400;
    const std::size_t draws = 12 + 8 * request_->versions;  // where more are needed, another solid does better
    const std::size_t first_draws = 12;                     // without a problem among them, another solid does too
    for (int tried = 0, unsuited = 0; tried < most_tried && unsuited < most_unsuited;) {
      const Blueprint blueprint = next_blueprint(type);
      std::vector<Made> row;
      Seed numbers{plan_.next()};
      const auto goes_on = [&](std::size_t drawn) {
        return row.size() < request_->versions && drawn < (row.empty() ? first_draws : draws);
      };
      bool is_suited = false;  // things of another shape or size than the level asks for make no problem at all
      for (std::size_t k = 0; goes_on(k); ++k) {
        const std::optional<Problem> drawn = type.make(blueprint, numbers);
        is_suited = is_suited || drawn;
        if (drawn) {
          take_if_good(*drawn, row);
        }
      }
      ++(is_suited ? tried : unsuited);
      if (row.size() == request_->versions) {
        before_ = type.method;
        ++turns_[type.key];
        std::vector<Problem> problems;
        for (const Made& one : row) {
          figures_.insert(figure_key(one.problem));
          answers_.insert(one.answer);
          problems.push_back(one.problem);
        }
        return problems;
      }
    }
    return {};
  }

  void take_if_good(const Problem& problem, std::vector<Made>& row) const {
    const auto question = practice::question_of(problem);
    if (!question || (question->truth && question->truth->sign() <= 0)) {
      return;
    }
    const bool is_number = question->truth && !counts_parts(question->asked);
    const std::string number = is_number ? exact::shown(*question->truth, 3).text : "";
    const std::optional<double> value = is_number ? std::optional(question->truth->to_double()) : std::nullopt;
    const bool is_told = question->asked == Asked::Length || question->asked == Asked::Count ||
                         question->asked == Asked::Packed || question->asked == Asked::Scale ||
                         question->asked == Asked::None;
    const std::string answer = is_number && !is_told ? number + " " + question->find : "";
    const std::string figure = figure_key(problem);
    if (figures_.count(figure) != 0 || (!answer.empty() && answers_.count(answer) != 0)) {
      return;
    }
    for (const Made& other : row) {
      const bool is_parallel = shape_of(other.problem, other.answer) == shape_of(problem, answer);
      if (!is_parallel || figure_key(other.problem) == figure || (value && is_near(*value, *other.number))) {
        return;
      }
    }
    if (question->asked == Asked::Length && is_a_label(problem, *question->truth)) {
      return;
    }
    const bool ends = !is_number || ends_soon(*question);
    if (ends && number != "1" && !hides_a_mistake(problem, *question) && practice::masking_hints(problem).empty()) {
      row.push_back({problem, answer, value});
    }
  }

  const PracticeRequest* request_;
  Seed plan_;
  std::vector<const MadeUp*> types_;
  std::vector<const MadeUp*> bag_;
  std::string before_;
  std::map<std::string, std::size_t> turns_;  ///< problems made of each type
  std::set<std::string> figures_, answers_;
};

}  // namespace

const std::vector<practice::TypeName>& type_names() {
  static const std::vector<practice::TypeName> names = [] {
    std::vector<practice::TypeName> all;
    for (const MadeUp& type : made_up()) {
      all.push_back({type.key, type.title, type.level, type.heading});
    }
    return all;
  }();
  return names;
}

bool is_masked(const Problem& problem) {
  const auto question = practice::question_of(problem);
  return question && hides_a_mistake(problem, *question);
}

Result<std::vector<lessons::Lesson>, words::Message> generated(const PracticeRequest& request) {
  for (const std::string& key : request.types) {
    const auto& all = made_up();
    const auto type = std::find_if(all.begin(), all.end(), [&](const MadeUp& one) { return one.key == key; });
    if (type == all.end()) {
      return failure(words::message("there is no type \"{key}\" of problem", {{"key", key}}));
    }
    if (type->level > request.level) {
      return failure(words::message("problems of the type \"{key}\" begin at level {level}",
                                    {{"key", key}, {"level", type->level}}));
    }
  }
  return Maker(request).made();
}

}  // namespace fw::tasks
