#pragma once

#include <string>

#include "practice/answered_by.hpp"

namespace fw::tasks {

/// A label that is claimed, put to the figure.
struct ClaimVerdict {
  bool can_be = false;
  bool is_rounded = false;  ///< it fits because it may be a rounded number
  exact::Number fitting;    ///< the value that the other labels fix, in the solid's unit
  words::Message why;       ///< what must hold and does not; empty where two labels merely differ
};

/// A label that somebody would put to the figure, beside those that the solid has: "Can it be true?"
class Claim : public practice::OptionTask {
 public:
  /// `label`: the name of a length that the solid does not give, "slant_height" or "base.leg", or of a measure of its
  /// whole: "volume".
  Claim(std::string label, units::WrittenQuantity value) : label_(std::move(label)), value_(std::move(value)) {}

  [[nodiscard]] const std::string& label() const { return label_; }
  [[nodiscard]] const units::WrittenQuantity& value() const { return value_; }
  [[nodiscard]] ClaimVerdict verdict(const lessons::Problem& problem) const;
  /// Whether a measure of the whole is claimed.
  [[nodiscard]] bool is_whole() const;
  /// The description of the problem's solid with a label of this name beside the others; of the whole it has none.
  [[nodiscard]] solids::Description described_with(const lessons::Problem& problem,
                                                   const units::WrittenQuantity& value) const;

  [[nodiscard]] std::string key() const override { return "claim"; }
  void write(lessons::Members& members) const override;
  [[nodiscard]] words::Message sentence(const lessons::Problem& problem) const override;
  [[nodiscard]] Result<practice::Question, words::Message> question(const lessons::Problem& problem) const override;
  [[nodiscard]] std::string type(const lessons::Problem&) const override { return "can-it-be"; }
  [[nodiscard]] std::vector<practice::Fact> facts(const lessons::Problem& problem) const override;
  [[nodiscard]] Result<reasoning::Explanation, words::Message> explained(
      const lessons::Problem& problem, const reasoning::SolutionOptions& options) const override;
  [[nodiscard]] std::optional<reasoning::TaskWork> work(const lessons::Problem& problem, int places) const override;
  [[nodiscard]] Result<std::vector<practice::Hint>, words::Message> hints(
      const lessons::Problem& problem, const reasoning::ClassNotation& notation) const override;
  [[nodiscard]] Result<std::vector<practice::Choice>, words::Message> choices(const lessons::Problem& problem,
                                                                              const practice::Question& question,
                                                                              practice::Seed& seed) const override;
  [[nodiscard]] std::string given_number() const override { return value_.text; }

 protected:
  [[nodiscard]] std::optional<std::size_t> option_meant(const practice::Question& question,
                                                        const std::vector<practice::Choice>& choices,
                                                        const std::string& typed) const override;
  [[nodiscard]] practice::Diagnosis judged_option(const lessons::Problem& problem, const practice::Question& question,
                                                  const practice::Choice& choice,
                                                  const std::string& typed) const override;

 private:
  std::string label_;
  units::WrittenQuantity value_;
};

}  // namespace fw::tasks
