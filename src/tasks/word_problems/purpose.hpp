#pragma once

#include <string>

#include "lessons/supply.hpp"
#include "practice/answered_by.hpp"

namespace fw::tasks {

/// What has to be known, before any number: are faces covered, a space filled, edges followed, or is it one face?
class AskedPurpose : public practice::OptionTask {
 public:
  explicit AskedPurpose(lessons::Supply supply) : supply_(std::move(supply)) {}

  /// "cover", "fill", "edge", or "one face" where a single base is covered.
  [[nodiscard]] std::string purpose() const;

  [[nodiscard]] std::string key() const override { return "purpose"; }
  [[nodiscard]] std::string find() const override { return "purpose"; }
  void write(lessons::Members& members) const override;
  [[nodiscard]] std::string measure() const override { return supply_.measure; }
  [[nodiscard]] std::string item() const override { return supply_.item; }
  [[nodiscard]] words::Message sentence(const lessons::Problem&) const override {
    return words::message("What do you need to know here?");
  }
  [[nodiscard]] Result<practice::Question, words::Message> question(const lessons::Problem& problem) const override;
  [[nodiscard]] std::string type(const lessons::Problem&) const override { return "purpose"; }
  [[nodiscard]] bool is_whole_problem() const override { return true; }
  [[nodiscard]] Result<reasoning::Explanation, words::Message> explained(
      const lessons::Problem& problem, const reasoning::SolutionOptions& options) const override;
  [[nodiscard]] std::optional<reasoning::TaskWork> work(const lessons::Problem& problem, int places) const override;
  [[nodiscard]] Result<std::vector<practice::Hint>, words::Message> hints(
      const lessons::Problem& problem, const reasoning::ClassNotation& notation) const override;
  [[nodiscard]] Result<std::vector<practice::Choice>, words::Message> choices(const lessons::Problem& problem,
                                                                              const practice::Question& question,
                                                                              practice::Seed& seed) const override;

 protected:
  [[nodiscard]] std::optional<std::size_t> option_meant(const practice::Question& question,
                                                        const std::vector<practice::Choice>& choices,
                                                        const std::string& typed) const override;

 private:
  lessons::Supply supply_;
};

}  // namespace fw::tasks
