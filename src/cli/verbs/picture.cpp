#include <CLI/CLI.hpp>
#include <iostream>
#include <memory>

#include "cli/arguments.hpp"
#include "cli/open_lesson.hpp"
#include "cli/output_file.hpp"
#include "cli/picture_file.hpp"
#include "cli/verbs/verbs.hpp"
#include "window/off_screen.hpp"

namespace fw::cli {
namespace {

struct PictureOptions {
  std::string lesson;
  std::optional<std::string> problem;
  OutputOptions output;
  std::string size = "1280x960";
  std::string theme = "paper";
  double fold = 0;
  bool one_by_one = false;
  bool window = false;
};

theme::ThemeName theme_named(const std::string& word) {
  if (word == "slate") {
    return theme::ThemeName::Slate;
  }
  return word == "bright" ? theme::ThemeName::BrightRoom : theme::ThemeName::Paper;
}

ExitStatus picture(const PictureOptions& options) {
  ExitStatus status = ExitStatus::Done;
  const std::optional<PictureSize> size = picture_size(options.size);
  if (!size) {
    return ExitStatus::WrongUsage;
  }
  if (const auto refusal = output_refusal(options.output, png_picture(), options.lesson)) {
    std::cerr << "foldwright: " << *refusal << '\n';
    return ExitStatus::WrongUsage;
  }
  std::optional<lessons::Lesson> lesson = open_lesson(options.lesson, status);
  if (!lesson) {
    return status;
  }
  const std::vector<lessons::Problem> problems = chosen_problems(*lesson, options.lesson, options.problem, status);
  if (status != ExitStatus::Done) {
    return status;
  }
  const std::string id = problems.front().id;
  state::Model model;
  model.state = state::opened(std::move(*lesson), options.lesson);
  for (std::size_t i = 0; i < model.state.lesson->problems.size(); ++i) {
    if (model.state.lesson->problems[i].id == id) {
      model = state::apply(std::move(model), state::OpenProblem{i}).model;
    }
  }
  model.view.settings.theme = theme_named(options.theme);
  model.view.order = options.one_by_one ? nets::FoldOrder::OneByOne : nets::FoldOrder::Together;
  model.view.fold = options.fold;
  const auto what = options.window ? window::PictureOf::Window : window::PictureOf::Bench;
  const auto drawn = window::off_screen_picture(model, what, size->width, size->height);
  if (!drawn) {
    std::cerr << "foldwright: " << drawn.error() << '\n';
    return ExitStatus::WrongUsage;
  }
  const auto bytes = png_bytes(drawn.value());
  const auto error = bytes ? write_output(options.output, *bytes) : bytes.error();
  if (error) {
    std::cerr << "foldwright: " << *error << '\n';
    return ExitStatus::WrongUsage;
  }
  return ExitStatus::Done;
}

}  // namespace

void add_picture(CLI::App& app, ExitStatus& status) {
  const auto options = std::make_shared<PictureOptions>();
  CLI::App* verb = app.add_subcommand("picture", "Draws the bench as a PNG file; no window is needed");
  verb->add_option("LESSON", options->lesson, "The lesson file")->required();
  verb->add_option("--problem", options->problem, "The id of the problem; the first one otherwise");
  verb->add_option("--fold", options->fold, "How far the net is open: 0 the closed solid, 1 the flat net")
      ->check(number_between(0, 1))
      ->capture_default_str();
  verb->add_flag("--one-by-one", options->one_by_one, "One hinge after another instead of all at once");
  verb->add_option("--size", options->size, "WIDTHxHEIGHT in pixels")->capture_default_str();
  verb->add_option("--theme", options->theme, "Colors of the picture")
      ->check(CLI::IsMember({"paper", "slate", "bright"}))
      ->capture_default_str();
  verb->add_flag("--window", options->window, "The whole window instead of the bench alone");
  add_output_options(*verb, options->output, png_picture());
  verb->callback([options, &status] { status = picture(*options); });
}

}  // namespace fw::cli
