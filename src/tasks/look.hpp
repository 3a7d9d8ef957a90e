#pragma once

#include <optional>
#include <string>
#include <string_view>

#include "practice/answered_by.hpp"

namespace fw::tasks {

/// What is told by looking at the solid: its name, or how many faces, edges or vertices it has.
class Look : public practice::NumberTask {
 public:
  /// `find`: "name", "faces", "edges", "vertices".
  explicit Look(std::string find) : find_(std::move(find)) {}

  [[nodiscard]] std::string key() const override { return find_; }
  [[nodiscard]] std::string find() const override { return find_; }
  [[nodiscard]] std::string measure() const override { return {}; }
  [[nodiscard]] words::Message sentence(const lessons::Problem& problem) const override;
  [[nodiscard]] Result<practice::Question, words::Message> question(const lessons::Problem& problem) const override;
  [[nodiscard]] std::string type(const lessons::Problem&) const override { return find_; }
  [[nodiscard]] Result<reasoning::Explanation, words::Message> explained(
      const lessons::Problem& problem, const reasoning::SolutionOptions& options) const override;
  [[nodiscard]] Result<std::vector<practice::Hint>, words::Message> hints(
      const lessons::Problem& problem, const reasoning::ClassNotation& notation) const override;
  [[nodiscard]] practice::AnswerForm form() const override;
  [[nodiscard]] words::Message asks_to_type() const override {
    return is_name() ? words::message("name of the solid") : words::message("how many");
  }
  [[nodiscard]] Result<std::vector<practice::Choice>, words::Message> choices(const lessons::Problem& problem,
                                                                              const practice::Question& question,
                                                                              practice::Seed& seed) const override;
  [[nodiscard]] Result<words::Message, words::Message> answer(const lessons::Problem& problem,
                                                              const practice::Question& question) const override;
  [[nodiscard]] Result<practice::Diagnosis, words::Message> judged(const lessons::Problem& problem,
                                                                   const practice::Question& question,
                                                                   std::string_view typed,
                                                                   std::uint64_t seed) const override;

 private:
  [[nodiscard]] bool is_name() const { return find_ == "name"; }
  std::string find_;
};

/// Requires: it is "faces", "edges" or "vertices".
[[nodiscard]] practice::Asked parts_asked(std::string_view find);
/// What other books count, of a solid with a curved side; nothing where all agree.
[[nodiscard]] std::optional<std::size_t> other_count(const solids::Solid& solid, const std::string& find);
/// Its steps. Requires: `find` is one of Look's.
[[nodiscard]] reasoning::TaskWork looking_work(const solids::Solid& solid, const std::string& find);

}  // namespace fw::tasks
