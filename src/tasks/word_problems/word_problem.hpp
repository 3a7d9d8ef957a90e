#pragma once

#include <optional>
#include <string>

#include "lessons/supply.hpp"
#include "practice/answered_by.hpp"

namespace fw::tasks {

/// Something is covered, filled or edged with things that are counted: "How many rolls does it take?"
class WordProblem : public practice::NumberTask {
 public:
  explicit WordProblem(lessons::Supply supply) : supply_(std::move(supply)) {}

  [[nodiscard]] const lessons::Supply& supply() const { return supply_; }
  [[nodiscard]] reasoning::SupplyWork worked(const lessons::Problem& problem, int places = 2) const {
    return reasoning::supply_work(problem, supply_, places);
  }

  [[nodiscard]] std::string key() const override { return "count"; }
  void write(lessons::Members& members) const override;
  [[nodiscard]] std::string measure() const override { return supply_.measure; }
  [[nodiscard]] std::string item() const override { return supply_.item; }
  [[nodiscard]] words::Message sentence(const lessons::Problem&) const override {
    return supply_.price ? words::message("What is the total cost?") : words::message("How many does it take?");
  }
  [[nodiscard]] Result<practice::Question, words::Message> question(const lessons::Problem& problem) const override;
  [[nodiscard]] bool has_question() const override { return supply_.each.has_value(); }
  [[nodiscard]] std::string type(const lessons::Problem& problem) const override;
  [[nodiscard]] bool is_whole_problem() const override { return true; }
  [[nodiscard]] std::vector<practice::Fact> facts(const lessons::Problem& problem) const override;
  [[nodiscard]] Result<reasoning::Explanation, words::Message> explained(
      const lessons::Problem& problem, const reasoning::SolutionOptions& options) const override;
  [[nodiscard]] practice::ExplainedAt explained_at(const lessons::Problem& problem) const override;
  [[nodiscard]] Result<std::vector<practice::Hint>, words::Message> hints(
      const lessons::Problem& problem, const reasoning::ClassNotation& notation) const override;
  /// With a price it is the cost; the count alone is a step on the way.
  [[nodiscard]] Result<words::Message, words::Message> answer(const lessons::Problem& problem,
                                                              const practice::Question& question) const override;
  [[nodiscard]] words::Message asks_to_type() const override {
    return supply_.price ? words::message("total cost") : words::message("how many");
  }
  [[nodiscard]] std::vector<words::Message> masking(const lessons::Problem& problem) const override;

 private:
  lessons::Supply supply_;
};

/// The word problem of a problem worked; nothing where it has none.
[[nodiscard]] std::optional<reasoning::SupplyWork> supply_work(const lessons::Problem& problem, int places = 2);

}  // namespace fw::tasks
