#pragma once

#include <optional>
#include <string>

#include "practice/answered_by.hpp"

namespace fw::tasks {

/// A measure of the solid, worked out from what is given: "What is the volume?"
class Measure : public practice::NumberTask {
 public:
  /// `find`: "surface_area", "height", "base.side".
  explicit Measure(std::string find) : find_(std::move(find)) {}

  [[nodiscard]] std::string key() const override { return find_; }
  [[nodiscard]] std::string find() const override { return find_; }
  [[nodiscard]] bool is_rounded() const override { return true; }
  [[nodiscard]] words::Message sentence(const lessons::Problem& problem) const override;
  [[nodiscard]] Result<practice::Question, words::Message> question(const lessons::Problem& problem) const override;
  [[nodiscard]] std::string type(const lessons::Problem& problem) const override;
  [[nodiscard]] Result<reasoning::Explanation, words::Message> explained(
      const lessons::Problem& problem, const reasoning::SolutionOptions& options) const override;
  [[nodiscard]] Result<std::vector<practice::Hint>, words::Message> hints(
      const lessons::Problem& problem, const reasoning::ClassNotation& notation) const override;
  /// In which the answer is asked; nothing: the solid's own.
  [[nodiscard]] virtual std::optional<units::Unit> unit_asked() const { return std::nullopt; }

 private:
  std::string find_;
};

}  // namespace fw::tasks
