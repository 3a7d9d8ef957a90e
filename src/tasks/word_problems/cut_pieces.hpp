#pragma once

#include <optional>
#include <string>
#include <vector>

#include "lessons/supply.hpp"
#include "practice/answered_by.hpp"
#include "tasks/row.hpp"

namespace fw::tasks {

struct SupplyText;

/// All edges are cut from items whose leftover pieces cannot be joined: "How many straws does it take?"
class CutPieces : public practice::NumberTask {
 public:
  /// Requires: every edge can be cut from one item, and the least number of items can be found (cut_plan.hpp).
  explicit CutPieces(lessons::Supply supply) : supply_(std::move(supply)) {}

  [[nodiscard]] const lessons::Supply& supply() const { return supply_; }
  [[nodiscard]] std::string key() const override { return "count"; }
  void write(lessons::Members& members) const override;
  [[nodiscard]] std::string measure() const override { return "edges"; }
  [[nodiscard]] std::string item() const override { return supply_.item; }
  [[nodiscard]] words::Message sentence(const lessons::Problem&) const override {
    return words::message("How many does it take?");
  }
  [[nodiscard]] Result<practice::Question, words::Message> question(const lessons::Problem& problem) const override;
  [[nodiscard]] std::string type(const lessons::Problem&) const override { return "edging"; }
  [[nodiscard]] bool is_whole_problem() const override { return true; }
  [[nodiscard]] std::vector<practice::Fact> facts(const lessons::Problem& problem) const override;
  [[nodiscard]] Result<reasoning::Explanation, words::Message> explained(
      const lessons::Problem& problem, const reasoning::SolutionOptions& options) const override;
  [[nodiscard]] std::optional<reasoning::TaskWork> work(const lessons::Problem& problem, int places) const override;
  [[nodiscard]] Result<std::vector<practice::Hint>, words::Message> hints(
      const lessons::Problem& problem, const reasoning::ClassNotation& notation) const override;
  [[nodiscard]] words::Message asks_to_type() const override { return words::message("how many"); }
  [[nodiscard]] std::string masked_measure() const override { return {}; }

 private:
  lessons::Supply supply_;
};

/// The task that a supply makes whose pieces cannot be joined. Errors: told to the context; none then.
[[nodiscard]] std::vector<Task> read_cut_pieces(const JsonNode& node, const SupplyText& supply, const TaskText& text);

}  // namespace fw::tasks
