#include <CLI/CLI.hpp>
#include <charconv>
#include <iostream>
#include <map>
#include <memory>

#include "cli/arguments.hpp"
#include "cli/open_lesson.hpp"
#include "cli/output_file.hpp"
#include "cli/verbs/verbs.hpp"
#include "paper/pdf_file.hpp"
#include "paper/sheets/print.hpp"
#include "paper/svg_file.hpp"
#include "state/paper_type.hpp"

namespace fw::cli {
namespace {

using paper::SheetKind;
using paper::SheetOptions;

struct PrintOptions {
  std::string lesson;
  std::string what = "handout";
  std::vector<std::string> problems;
  std::string paper;
  std::string work = "ruled";
  std::string units = "ask";
  std::string blanks = "all";
  std::string steps = "board";
  std::string scale;
  bool is_blank = false;
  bool has_no_lengths = false;
  bool is_anonymous = false;
  SheetOptions sheet;
  OutputOptions output;
};

template <class T>
T named(const std::map<std::string, T>& names, const std::string& word) {
  return names.at(word);  // the library has checked that it is one of them
}

const std::map<std::string, paper::WorkSpace>& work_names() {
  static const std::map<std::string, paper::WorkSpace> names{
      {"ruled", paper::WorkSpace::Ruled}, {"grid", paper::WorkSpace::Grid}, {"blank", paper::WorkSpace::Blank}};
  return names;
}
const std::map<std::string, paper::Gaps>& blank_names() {
  static const std::map<std::string, paper::Gaps> names{
      {"all", paper::Gaps::All}, {"half", paper::Gaps::Half}, {"none", paper::Gaps::None}};
  return names;
}
const std::map<std::string, paper::Steps>& steps_names() {
  static const std::map<std::string, paper::Steps> names{
      {"none", paper::Steps::None}, {"board", paper::Steps::Board}, {"every", paper::Steps::Every}};
  return names;
}
template <class T>
std::vector<std::string> words_of(const std::map<std::string, T>& names) {
  std::vector<std::string> words;
  words.reserve(names.size());
  for (const auto& [word, value] : names) {
    words.push_back(word);
  }
  return words;
}

std::vector<std::string> sheet_words() {
  std::vector<std::string> words;
  words.reserve(paper::sheet_kinds().size());
  for (const SheetKind& kind : paper::sheet_kinds()) {
    words.push_back(kind.key);
  }
  return words;
}
std::string sheet_help() {
  std::string text = "What to print:";
  for (const SheetKind& kind : paper::sheet_kinds()) {
    text += "\n  " + kind.key + ": " + kind.says;
  }
  return text;
}
std::vector<std::string> paper_words() {
  std::vector<std::string> words;
  words.reserve(paper::paper_sizes().size());
  for (const paper::PaperSize& size : paper::paper_sizes()) {
    words.push_back(size.key);
  }
  return words;
}

/// "1:4" as a scale; nothing for other texts.
std::optional<paper::PaperScale> scale_of(const std::string& text) {
  paper::PaperScale scale;
  const char* end = text.data() + text.size();
  const auto paper = std::from_chars(text.data(), end, scale.paper);
  const bool is_parted = paper.ec == std::errc() && paper.ptr != end && *paper.ptr == ':';
  const auto thing = is_parted ? std::from_chars(paper.ptr + 1, end, scale.thing) : paper;
  const auto is_usual = [](int number) { return number >= 1 && number <= 1000; };
  const bool is_scale =
      is_parted && thing.ec == std::errc() && thing.ptr == end && is_usual(scale.paper) && is_usual(scale.thing);
  return is_scale ? std::optional(scale) : std::nullopt;
}
CLI::Validator a_scale() {
  return {[](const std::string& text) {
            return scale_of(text) ? std::string() : "\"" + text + "\" is not a scale: write one such as 1:4";
          },
          "PAPER:THING"};
}

/// The lesson with the problems that were asked for alone; a problem that is not there is told.
std::optional<lessons::Lesson> chosen_lesson(const PrintOptions& options, ExitStatus& status) {
  std::optional<lessons::Lesson> lesson = open_lesson(options.lesson, status);
  if (!lesson || options.problems.empty()) {
    return lesson;
  }
  std::vector<lessons::Problem> chosen;
  for (const std::string& id : options.problems) {
    for (lessons::Problem& problem : chosen_problems(*lesson, options.lesson, id, status)) {
      chosen.push_back(std::move(problem));
    }
  }
  lesson->problems = std::move(chosen);
  return lesson;
}

/// Writes the pages as one document, or each as a drawing. Returns whether that went well.
bool write_pages(const PrintOptions& options, const paper::Printed& printed, const std::string& title) {
  if (!has_ending(options.output.path, svg_drawing().ending)) {
    return !is_told(write_output(options.output, paper::pdf_file(printed.pages, state::paper_type(), title)));
  }
  const std::size_t count = printed.pages.size();
  std::vector<OutputOptions> places;
  for (std::size_t i = 0; i < count; ++i) {
    places.push_back({numbered_path(options.output.path, i, count), options.output.force});
    if (is_told(output_refusal(places.back(), svg_drawing(), options.lesson))) {
      return false;
    }
  }
  for (std::size_t i = 0; i < count; ++i) {
    if (is_told(write_output(places[i], paper::svg_file(printed.pages[i], title)))) {
      return false;
    }
  }
  return true;
}

ExitStatus print(PrintOptions options) {
  const bool is_svg = has_ending(options.output.path, svg_drawing().ending);
  if (is_told(output_refusal(options.output, is_svg ? svg_drawing() : pdf_document(), options.lesson))) {
    return ExitStatus::WrongUsage;
  }
  ExitStatus status = ExitStatus::Done;
  const std::optional<lessons::Lesson> lesson = chosen_lesson(options, status);
  if (!lesson || status == ExitStatus::WrongUsage) {
    return status;
  }
  options.sheet.work = named(work_names(), options.work);
  options.sheet.gaps = named(blank_names(), options.blanks);
  options.sheet.steps = named(steps_names(), options.steps);
  options.sheet.has_letters = !options.is_blank;
  options.sheet.has_lengths = !options.has_no_lengths;
  options.sheet.scale = scale_of(options.scale);
  options.sheet.gives_units = options.units == "give";
  options.sheet.has_name_line = !options.is_anonymous;
  options.sheet.style.paper = options.paper.empty() ? paper::usual_paper(*lesson) : *paper::find_paper(options.paper);
  const SheetKind& kind = *paper::find_sheet(options.what);
  const paper::Printed printed = paper::made(kind.plan, state::paper_type(), *lesson, options.sheet);
  for (const words::Message& remark : paper::remarks_on(printed)) {
    std::cerr << "foldwright: " << said(remark) << '\n';
  }
  if (printed.pages.empty()) {
    std::cerr << "foldwright: There is nothing to print, so nothing was written.\n";
    return ExitStatus::WrongUsage;
  }
  return write_pages(options, printed, lesson->title) ? status : ExitStatus::WrongUsage;
}

void add_sheet_options(CLI::App& verb, PrintOptions& options) {
  verb.add_option("--as", options.what, sheet_help())->check(CLI::IsMember(sheet_words()))->capture_default_str();
  verb.add_option("--problem", options.problems, "The id of a problem, once for each; all of them otherwise");
  verb.add_option("--paper", options.paper, "Otherwise letter for inches and feet, a4 for metric units")
      ->check(CLI::IsMember(paper_words()));
  verb.add_flag("--large", options.sheet.style.is_large, "Large print: 18 points, one problem a page");
  verb.add_option("--per-page", options.sheet.per_page, "Problems on a page of a handout; otherwise as many as fit")
      ->check(CLI::IsMember({"1", "2", "3", "4", "6"}));
  verb.add_option("--work", options.work, "The space to work in")
      ->check(CLI::IsMember(words_of(work_names())))
      ->capture_default_str();
  verb.add_option("--units", options.units, "Whether the answer line gives the unit or asks for it")
      ->check(CLI::IsMember({"ask", "give"}))
      ->capture_default_str();
  verb.add_flag("--anonymous", options.is_anonymous, "No line for name and date");
  verb.add_option("--blanks", options.blanks, "How many blanks the notes have")
      ->check(CLI::IsMember(words_of(blank_names())))
      ->capture_default_str();
  verb.add_option("--steps", options.steps, "How much of a solution the key and the notes show")
      ->check(CLI::IsMember(words_of(steps_names())))
      ->capture_default_str();
  verb.add_option("--versions", options.sheet.versions, "Parallel versions of a test; the first is the lesson itself")
      ->check(CLI::Range(std::size_t{1}, std::size_t{8}))
      ->capture_default_str();
  verb.add_option("--seed", options.sheet.seed, "The same number gives the same versions")
      ->check(whole_number())
      ->capture_default_str();
  verb.add_option("--scale", options.scale, "Of nets, such as 1:4; otherwise the largest that fits on a page")
      ->check(a_scale());
  verb.add_flag("--usual-net", options.sheet.only_usual_net,
                "The net of most textbooks, even if another prints larger");
  verb.add_flag("--blank", options.is_blank, "Nets without letters, names and areas, for the class to fill in");
  verb.add_flag("--no-lengths", options.has_no_lengths, "Nets without lengths");
}

}  // namespace

void add_print(CLI::App& app, ExitStatus& status) {
  const auto options = std::make_shared<PrintOptions>();
  CLI::App* verb = app.add_subcommand("print", "Prints a lesson on paper, as PDF or SVG");
  verb->add_option("LESSON", options->lesson, "The lesson file")->type_name(file_type)->required();
  add_sheet_options(*verb, *options);
  verb->add_option(
          "-o,--output", options->output.path,
          "Where to write: a name that ends in .pdf or .svg (one drawing a page); - is standard output, as PDF")
      ->type_name(file_type)
      ->required();
  verb->add_flag("--force", options->output.force,
                 "Replace a file of another kind; the lesson that is read is never replaced");
  verb->callback([options, &status] { status = print(*options); });
}

}  // namespace fw::cli
