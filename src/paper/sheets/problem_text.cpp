#include "paper/sheets/problem_text.hpp"

#include <algorithm>
#include <cmath>

#include "exact/print_number.hpp"
#include "lessons/write_lesson.hpp"
#include "practice/choice_parts.hpp"
#include "practice/told_prompt.hpp"

namespace fw::paper {
namespace {

using practice::AnswerForm;
using words::message;

bool has_options(const AskedItem& item) {
  const AnswerForm form = item.type->form();
  return form == AnswerForm::Option;
}

}  // namespace

std::vector<AskedItem> asked_items(const lessons::Problem& problem) {
  std::vector<AskedItem> items;
  for (const lessons::Task& task : problem.tasks) {
    const practice::TaskType& type = practice::stated(task);
    if (!type.has_question()) {
      continue;
    }
    auto question = practice::question_of(problem, type.key());
    if (question && type.is_whole_problem()) {
      return {{&type, std::move(question).value()}};
    }
    if (question) {
      items.push_back({&type, std::move(question).value()});
    }
  }
  return items;
}

std::vector<std::string> question_lines(const lessons::Problem& problem) {
  const std::vector<AskedItem> items = asked_items(problem);
  std::vector<std::string> lines;
  if (items.size() > 1 || problem.prompt.empty()) {
    for (const AskedItem& item : items) {
      lines.push_back(said(item.type->sentence(problem)));
    }
  }
  return lines;
}

std::string prompt_text(const lessons::Problem& problem) { return practice::told_prompt(problem); }

std::vector<std::string> option_lines(const lessons::Problem& problem, const AskedItem& item, std::uint64_t seed) {
  std::vector<std::string> lines;
  if (!has_options(item)) {
    return lines;
  }
  const auto choices = practice::choices_of(problem, seed, item.question.find);
  for (std::size_t i = 0; choices && i < choices->size(); ++i) {
    lines.push_back(practice::letter(i) + "   " + said((*choices)[i].text));
  }
  return lines;
}

std::string answer_line(const lessons::Problem& problem, const AskedItem& item, std::uint64_t seed) {
  const auto answer = practice::right_answer(problem, item.question.find);
  std::string text = answer ? said(*answer) : said(answer.error());
  if (!has_options(item)) {
    return text;
  }
  const auto choices = practice::choices_of(problem, seed, item.question.find);
  for (std::size_t i = 0; choices && i < choices->size(); ++i) {
    if ((*choices)[i].is_right) {
      return practice::letter(i) + "   " + text;
    }
  }
  return text;
}

std::string accepted_line(const lessons::Problem& problem, const AskedItem& item) {
  const auto& truth = item.question.truth;
  if (!truth || !item.question.unit || exact::shown(*truth, 2).exact) {
    return {};
  }
  const int places = problem.round_to.value_or(1);
  const std::string rounded = exact::fixed_text(*truth, places);
  const std::string unit = item.question.unit->text();
  const words::Amount least{rounded, unit};
  const std::string exact = exact::has_class_form(*truth) ? exact::exact_text(*truth) : "";
  if (problem.round_to) {
    return exact.empty() ? std::string()
                         : said(message("Also right: {exact}.", {{"exact", words::Amount{exact, unit}}}));
  }
  return exact.empty() ? said(message("Accept {least}, or more decimals.", {{"least", least}}))
                       : said(message("Accept {exact}, {least}, or more decimals.",
                                      {{"exact", words::Amount{exact, unit}}, {"least", least}}));
}

std::vector<LikelyMistake> likely_mistakes(const lessons::Problem& problem, const AskedItem& item, std::size_t most) {
  std::vector<LikelyMistake> mistakes;
  const bool is_number = item.type->form() == AnswerForm::Number || item.type->form() == AnswerForm::Count;
  if (!is_number || !item.question.truth || item.question.asked == practice::Asked::None) {
    return mistakes;
  }
  const practice::Figure figure = practice::figure_of(problem, item.question);
  for (const practice::WrongNumber& wrong : practice::wrong_numbers(figure)) {
    const std::string number = said(practice::answer_text(item.question, practice::as_written_down(wrong.value)));
    const bool is_known =
        std::any_of(mistakes.begin(), mistakes.end(), [&](const LikelyMistake& one) { return one.number == number; });
    if (wrong.signature->is_rare || is_known || mistakes.size() == most) {
      continue;
    }
    const practice::Diagnosis diagnosis = practice::judged_number(problem, item.question, number);
    const bool is_named =
        diagnosis.verdict == practice::AnswerVerdict::Recognized || diagnosis.verdict == practice::AnswerVerdict::Ask;
    if (is_named && !diagnosis.causes.empty()) {
      mistakes.push_back(
          {number, said(words::first_sentence(diagnosis.causes.front().message)), diagnosis.causes.front().id});
    }
  }
  return mistakes;
}

std::string part_letter(std::size_t index) { return "(" + std::string(1, static_cast<char>('a' + index % 26)) + ")"; }

std::string lesson_code(const lessons::Lesson& lesson) {
  // FNV-1a, 64 bits; source: the hash of Fowler, Noll and Vo, from memory. Letters that are easily told apart.
  constexpr std::uint64_t begin = 14695981039346656037U;
  constexpr std::uint64_t prime = 1099511628211U;
  constexpr std::string_view letters = "ABCDEFGHJKLMNPQRSTUVWXYZ";
  std::uint64_t sum = begin;
  for (const char c : lessons::write_lesson(lesson)) {
    sum = (sum ^ static_cast<unsigned char>(c)) * prime;
  }
  std::string code;
  for (int i = 0; i < 6; ++i) {
    code += letters[sum % letters.size()];
    sum /= letters.size();
  }
  return code;
}

}  // namespace fw::paper
