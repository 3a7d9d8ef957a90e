#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "lessons/lesson.hpp"
#include "reasoning/step.hpp"
#include "reasoning/supply_steps.hpp"

// The page on which a task is worked that asks for something else than a measure.
namespace fw::reasoning {

/// What is asked in another way than by a measure, worked from the measure on that it rests on.
struct TaskWork {
  std::string task;     ///< "copy", "claim", "name": its name in results
  std::string measure;  ///< that is worked out before; empty: none
  Message title;        ///< of the steps: "then the copy"
  Message name;         ///< of what is asked: "number that fit"; empty: that of the measure
  std::vector<Step> steps;
  std::vector<Source> sources;     ///< Source::step is one of `steps`
  std::optional<Outcome> outcome;  ///< none: a word
  std::size_t lead = 0;            ///< steps that come before the measure is worked out
  Message answer;                  ///< "4576 cm²", "no, 13 cm would fit", "12 candles"
};

/// Collects the steps of a task.
class TaskSheet {
 public:
  explicit TaskSheet(int places) : steps_(work_, places) {}
  [[nodiscard]] SupplySteps& steps() { return steps_; }
  /// A number with the sentence that tells where it comes from.
  [[nodiscard]] SupplyNumber number(const exact::Number& value, const std::optional<units::Unit>& unit,
                                    Source::Kind kind, const Message& sentence, const std::string& text = "");
  /// "a × b × c = result", each factor once.
  SupplyNumber multiply(const Message& reason, const std::vector<SupplyNumber>& factors, SupplyNumber result);
  /// The page ends with its answer in a sentence.
  [[nodiscard]] TaskWork finished(TaskWork task, const Message& sentence) &&;

 private:
  SupplyWork work_;
  SupplySteps steps_;
};

/// "+", "×" and the like, as they stand in a line.
[[nodiscard]] algebra::Notation sign(const char* text);
/// What a class calls a measure of the solid: "slant height".
[[nodiscard]] std::string title_named(const solids::Solid& solid, const std::string& find);

}  // namespace fw::reasoning
