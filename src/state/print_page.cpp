#include "state/print_page.hpp"

#include "base/utf8.hpp"

namespace fw::state {
namespace {

constexpr const char* pdf_ending = ".pdf";

/// "The winter fair" as a name of a file: "the-winter-fair".
std::string file_word(const std::string& text) {
  std::string word;
  for (const char c : text) {
    const bool is_letter = (c >= 'a' && c <= 'z') || (c >= 'A' && c <= 'Z');
    if (is_letter || is_ascii_digit(c)) {
      word += c >= 'A' && c <= 'Z' ? static_cast<char>(c - 'A' + 'a') : c;
    } else if (!word.empty() && word.back() != '-') {
      word += '-';
    }
  }
  while (!word.empty() && word.back() == '-') {
    word.pop_back();
  }
  return word.empty() ? "lesson" : word;
}

bool ends_with(const std::string& text, const std::string& ending) {
  return text.size() >= ending.size() && text.compare(text.size() - ending.size(), ending.size(), ending) == 0;
}

}  // namespace

paper::SheetOptions sheet_options(const PrintChoices& choices, const lessons::Lesson& lesson) {
  paper::SheetOptions options;
  const paper::PaperSize* size = paper::find_paper(choices.paper);
  options.style.paper = size == nullptr ? paper::usual_paper(lesson) : *size;
  options.style.is_large = choices.is_large;
  options.has_name_line = choices.has_name_line;
  options.versions = choices.versions;
  options.seed = choices.seed;
  options.gaps = choices.gaps;
  options.steps = choices.steps;
  options.work = choices.work;
  options.has_letters = !choices.is_blank;
  options.scale = choices.scale;
  return options;
}

std::shared_ptr<const lessons::Lesson> printed_lesson(const State& state, const PrintChoices& choices) {
  if (!choices.only_this) {
    return state.lesson;
  }
  auto lesson = std::make_shared<lessons::Lesson>(*state.lesson);
  lesson->problems = {state.lesson->problems[state.problem]};
  return lesson;
}

std::string print_path(const PrintPage& page, const lessons::Lesson& lesson) {
  std::string name = page.place;
  if (name.empty()) {
    name = file_word(lesson.title) + "-" + page.choices.sheet + (page.choices.is_large ? "-large" : "") + pdf_ending;
  } else if (!ends_with(name, pdf_ending)) {
    name += pdf_ending;
  }
  const bool has_folder = name.find('/') != std::string::npos;
  return has_folder || page.folder.empty() ? name : page.folder + "/" + name;
}

std::string page_path(const PrintPage& page, const lessons::Lesson& lesson) {
  const std::string pages = print_path(page, lesson);
  return pages.substr(0, pages.rfind('/') + 1) + file_word(lesson.title) + ".html";
}

}  // namespace fw::state
