#include <CLI/CLI.hpp>
#include <iostream>
#include <memory>

#include "cli/arguments.hpp"
#include "cli/open_lesson.hpp"
#include "cli/output_file.hpp"
#include "cli/paper_type.hpp"
#include "cli/picture_file.hpp"
#include "cli/verbs/verbs.hpp"
#include "figures/net_sketch.hpp"
#include "paper/pdf_file.hpp"
#include "paper/sheets/problem_figure.hpp"
#include "paper/svg_file.hpp"
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

/// The solid with its lengths, or its flat net, as on paper.
ExitStatus line_drawing(const PictureOptions& options, bool is_svg) {
  constexpr double width = 120;  // millimeters
  constexpr double height = 90;
  constexpr double margin = 5;
  ExitStatus status = ExitStatus::Done;
  if (options.fold != 0 && options.fold != 1) {
    std::cerr << "foldwright: A line drawing shows the closed solid or the flat net: use --fold 0 or --fold 1.\n";
    return ExitStatus::WrongUsage;
  }
  const std::optional<lessons::Lesson> lesson = open_lesson(options.lesson, status);
  if (!lesson) {
    return status;
  }
  const std::vector<lessons::Problem> problems = chosen_problems(*lesson, options.lesson, options.problem, status);
  if (status != ExitStatus::Done) {
    return status;
  }
  const lessons::Problem& problem = problems.front();
  paper::PageCanvas canvas(paper_type(), width, height);
  const figures::Rect rect = figures::Rect{0, 0, width, height}.inset(margin);
  const paper::PageStyle style;
  if (options.fold == 0) {
    paper::draw_problem_figure(canvas, problem, rect, style);
  } else {
    figures::draw_net_sketch(canvas, problem.solid, problem.solid.classic_net(), rect, style.palette());
  }
  const paper::Page& page = canvas.page();
  const std::string bytes = is_svg ? paper::svg_file(page, problem.solid.name())
                                   : paper::pdf_file({page}, paper_type(), problem.solid.name());
  if (const auto error = write_output(options.output, bytes)) {
    std::cerr << "foldwright: " << *error << '\n';
    return ExitStatus::WrongUsage;
  }
  return ExitStatus::Done;
}

/// What kind of file the name asks for.
const OutputKind& kind_of(const std::string& path) {
  return has_ending(path, svg_drawing().ending)    ? svg_drawing()
         : has_ending(path, pdf_document().ending) ? pdf_document()
                                                   : png_picture();
}

ExitStatus picture(const PictureOptions& options) {
  ExitStatus status = ExitStatus::Done;
  const std::optional<PictureSize> size = picture_size(options.size);
  if (!size) {
    return ExitStatus::WrongUsage;
  }
  if (const auto refusal = output_refusal(options.output, kind_of(options.output.path), options.lesson)) {
    std::cerr << "foldwright: " << *refusal << '\n';
    return ExitStatus::WrongUsage;
  }
  if (&kind_of(options.output.path) != &png_picture()) {
    return line_drawing(options, has_ending(options.output.path, svg_drawing().ending));
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
  CLI::App* verb = app.add_subcommand(
      "picture", "Draws the bench as a PNG file, or the solid as a line drawing; no window is needed");
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
  verb->add_option("-o,--output", options->output.path,
                   "Where to write: .png for the bench in color, .svg or .pdf for a line drawing as on paper; - is "
                   "standard output, as PNG")
      ->required();
  verb->add_flag("--force", options->output.force,
                 "Replace a file of another kind; the lesson that is read is never replaced");
  verb->callback([options, &status] { status = picture(*options); });
}

}  // namespace fw::cli
