#pragma once

#include <optional>
#include <string>
#include <vector>

#include "practice/answered_by.hpp"
#include "practice/packing.hpp"
#include "tasks/row.hpp"

namespace fw::tasks {

/// Items are packed into a box in rows, all the same way round: "How many fit?"
class Packing : public practice::NumberTask {
 public:
  Packing(std::string item, practice::ItemBox box) : item_(std::move(item)), box_(std::move(box)) {}

  [[nodiscard]] const practice::ItemBox& box() const { return box_; }
  [[nodiscard]] std::string key() const override { return "count"; }
  void write(lessons::Members& members) const override;
  [[nodiscard]] std::string measure() const override { return "volume"; }
  [[nodiscard]] std::string item() const override { return item_; }
  [[nodiscard]] words::Message sentence(const lessons::Problem&) const override {
    return words::message("How many does it take?");
  }
  [[nodiscard]] Result<practice::Question, words::Message> question(const lessons::Problem& problem) const override;
  [[nodiscard]] std::string type(const lessons::Problem&) const override { return "pack"; }
  [[nodiscard]] bool is_whole_problem() const override { return true; }
  [[nodiscard]] std::vector<practice::Fact> facts(const lessons::Problem& problem) const override;
  [[nodiscard]] Result<reasoning::Explanation, words::Message> explained(
      const lessons::Problem& problem, const reasoning::SolutionOptions& options) const override;
  [[nodiscard]] std::optional<reasoning::TaskWork> work(const lessons::Problem& problem, int places) const override;
  [[nodiscard]] Result<std::vector<practice::Hint>, words::Message> hints(
      const lessons::Problem& problem, const reasoning::ClassNotation& notation) const override;
  [[nodiscard]] words::Message asks_to_type() const override { return words::message("how many"); }

 private:
  std::string item_;
  practice::ItemBox box_;
};

struct SupplyText;
/// The edges of one item, and nothing that belongs to other supplies. Errors: told to the context; nothing then.
[[nodiscard]] std::optional<practice::ItemBox> read_item_box(const JsonNode& node, const std::string& item,
                                                             const Context& context);
/// The task that a supply makes that packs. Errors: told to the context; none then.
[[nodiscard]] std::vector<Task> read_packing(const JsonNode& node, const SupplyText& supply, const TaskText& text);

}  // namespace fw::tasks
