#pragma once

#include "reasoning/supply_steps.hpp"
#include "reasoning/tasks/task.hpp"

// The tasks, each in a file of its own; private to the room.
namespace fw::reasoning {

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
/// What a class calls a measure of the problem's solid: "slant height".
[[nodiscard]] std::string title_named(const lessons::Problem& problem, const std::string& find);

[[nodiscard]] TaskWork packing_work(const lessons::Problem& problem, int places);
[[nodiscard]] TaskWork factor_work(const lessons::Problem& problem, int places);
[[nodiscard]] TaskWork copy_work(const lessons::Problem& problem, int places, const std::string& find);
[[nodiscard]] TaskWork claim_work(const lessons::Problem& problem, int places);
[[nodiscard]] TaskWork mistake_work(const lessons::Problem& problem, int places);
[[nodiscard]] TaskWork interval_work(const lessons::Problem& problem, int places);
[[nodiscard]] TaskWork face_lengths_work(const lessons::Problem& problem);
[[nodiscard]] TaskWork same_number_work(const lessons::Problem& problem);
[[nodiscard]] TaskWork least_surface_work(const lessons::Problem& problem);
[[nodiscard]] TaskWork purpose_work(const lessons::Problem& problem);

}  // namespace fw::reasoning
