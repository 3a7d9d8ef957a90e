#pragma once

#include <string>

#include "practice/answered_by.hpp"

namespace fw::tasks {

/// The two lengths that the area of a face is worked from.
class FaceLengths : public practice::OptionTask {
 public:
  explicit FaceLengths(geometry::FaceId face) : face_(face) {}

  [[nodiscard]] geometry::FaceId face() const { return face_; }
  [[nodiscard]] std::string key() const override { return "lengths"; }
  void write(lessons::Members& members) const override;
  [[nodiscard]] words::Message sentence(const lessons::Problem& problem) const override;
  [[nodiscard]] Result<practice::Question, words::Message> question(const lessons::Problem& problem) const override;
  [[nodiscard]] std::string type(const lessons::Problem&) const override { return "face-lengths"; }
  [[nodiscard]] Result<reasoning::Explanation, words::Message> explained(
      const lessons::Problem& problem, const reasoning::SolutionOptions& options) const override;
  [[nodiscard]] std::optional<reasoning::TaskWork> work(const lessons::Problem& problem, int places) const override;
  [[nodiscard]] Result<std::vector<practice::Choice>, words::Message> choices(const lessons::Problem& problem,
                                                                              const practice::Question& question,
                                                                              practice::Seed& seed) const override;

 protected:
  [[nodiscard]] std::optional<std::size_t> option_meant(const practice::Question& question,
                                                        const std::vector<practice::Choice>& choices,
                                                        const std::string& typed) const override;

 private:
  geometry::FaceId face_;
};

}  // namespace fw::tasks
