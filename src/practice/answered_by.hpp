#pragma once

#include "practice/task_type.hpp"

// How most types of questions are answered: by a number, or by one of a few options.
namespace fw::practice {

/// Answered by a number. Options are the right one and three that a mistake each leads to.
class NumberTask : public TaskType {
 public:
  [[nodiscard]] AnswerForm form() const override { return AnswerForm::Number; }
  [[nodiscard]] Result<std::vector<Choice>, words::Message> choices(const lessons::Problem& problem,
                                                                    const Question& question,
                                                                    Seed& seed) const override;
  [[nodiscard]] Result<words::Message, words::Message> answer(const lessons::Problem& problem,
                                                              const Question& question) const override;
  [[nodiscard]] Result<Diagnosis, words::Message> judged(const lessons::Problem& problem, const Question& question,
                                                         std::string_view typed, std::uint64_t seed) const override;
};

/// Answered by one of a few options of its own. Requires: it has work.
class OptionTask : public TaskType {
 public:
  [[nodiscard]] AnswerForm form() const override { return AnswerForm::Option; }
  [[nodiscard]] Result<std::vector<Hint>, words::Message> hints(
      const lessons::Problem& problem, const reasoning::ClassNotation& notation) const override;
  [[nodiscard]] Result<words::Message, words::Message> answer(const lessons::Problem& problem,
                                                              const Question& question) const override;
  [[nodiscard]] Result<Diagnosis, words::Message> judged(const lessons::Problem& problem, const Question& question,
                                                         std::string_view typed, std::uint64_t seed) const override;

 protected:
  /// Which option a text stands for that is neither its letter nor its words.
  [[nodiscard]] virtual std::optional<std::size_t> option_meant(const Question& question,
                                                                const std::vector<Choice>& choices,
                                                                const std::string& typed) const;
  /// What a text shows that stands for an option.
  [[nodiscard]] virtual Diagnosis judged_option(const lessons::Problem& problem, const Question& question,
                                                const Choice& choice, const std::string& typed) const;
  /// What a text shows that stands for none.
  [[nodiscard]] virtual Diagnosis judged_other(const lessons::Problem& problem, const Question& question,
                                               const std::vector<Choice>& choices, const std::string& typed) const;
};

/// A letter of an option, judged; nothing for other text and where there are no such options.
[[nodiscard]] std::optional<Diagnosis> judged_letter(const TaskType& task, const lessons::Problem& problem,
                                                     const Question& question, std::string_view typed,
                                                     std::uint64_t seed);
/// Shuffled; a failure, where there is nothing to choose from.
[[nodiscard]] Result<std::vector<Choice>, words::Message> shuffled_choices(std::vector<Choice> choices, Seed& seed);

}  // namespace fw::practice
