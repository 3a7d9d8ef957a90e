#include <CLI/CLI.hpp>
#include <iostream>
#include <memory>

#include "cli/arguments.hpp"
#include "cli/open_lesson.hpp"
#include "cli/output_file.hpp"
#include "cli/picture_file.hpp"
#include "cli/verbs/verbs.hpp"
#include "figures/net_sketch.hpp"
#include "paper/pdf_file.hpp"
#include "paper/sheets/problem_figure.hpp"
#include "paper/svg_file.hpp"
#include "state/lesson_steps.hpp"
#include "state/paper_type.hpp"
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
  std::size_t frames = 0;  ///< of the fold; 0: one picture
  std::string steps;       ///< of what; empty: one picture
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
  const std::optional<ChosenProblems> chosen = open_problems(options.lesson, options.problem, status);
  if (!chosen) {
    return status;
  }
  const lessons::Problem& problem = chosen->problems.front();
  paper::PageCanvas canvas(state::paper_type(), width, height);
  const figures::Rect rect = figures::Rect{0, 0, width, height}.inset(margin);
  const paper::PageStyle style;
  if (options.fold == 0) {
    paper::draw_problem_figure(canvas, problem, rect, style);
  } else {
    figures::draw_net_sketch(canvas, problem.solid, problem.solid.classic_net(), rect, style.palette());
  }
  const paper::Page& page = canvas.page();
  const std::string bytes = is_svg ? paper::svg_file(page, problem.solid.name())
                                   : paper::pdf_file({page}, state::paper_type(), problem.solid.name());
  if (const auto error = write_output(options.output, bytes)) {
    std::cerr << "foldwright: " << *error << '\n';
    return ExitStatus::WrongUsage;
  }
  return status;
}

/// What kind of file the name asks for.
const OutputKind& kind_of(const std::string& path) {
  return has_ending(path, svg_drawing().ending)    ? svg_drawing()
         : has_ending(path, pdf_document().ending) ? pdf_document()
                                                   : png_picture();
}

/// The lesson, open at the problem. Nothing if the lesson has no such problem, which is told.
std::optional<state::Model> opened_at_problem(const PictureOptions& options, ExitStatus& status) {
  std::optional<ChosenProblems> chosen = open_problems(options.lesson, options.problem, status);
  if (!chosen) {
    return std::nullopt;
  }
  const std::string id = chosen->problems.front().id;
  state::Model model;
  model.state = state::opened(std::move(chosen->lesson), options.lesson);
  for (std::size_t i = 0; i < model.state.lesson->problems.size(); ++i) {
    if (model.state.lesson->problems[i].id == id) {
      model = state::apply(std::move(model), state::OpenProblem{i}).model;
    }
  }
  model.view.settings.theme = theme_named(options.theme);
  model.view.settings.reduced_motion = true;  // a picture shows the end of what moves
  model.view.order = options.one_by_one ? nets::FoldOrder::OneByOne : nets::FoldOrder::Together;
  model.view.fold = options.fold;
  return model;
}

/// From the closed solid to the flat net.
std::vector<state::Model> fold_frames(const state::Model& model, std::size_t count) {
  std::vector<state::Model> frames(count, model);
  for (std::size_t i = 0; i < count; ++i) {
    frames[i].view.fold = static_cast<double>(i) / static_cast<double>(count - 1);
  }
  return frames;
}

/// Each step that the one button leads a class through, up to the end of the problem.
std::vector<state::Model> count_frames(state::Model model) {
  model = state::apply(std::move(model), state::SetPresenting{true}).model;
  std::vector<state::Model> frames{model};
  for (auto next = state::next_lesson_step(model); next && *next != state::LessonStep::NextProblem;
       next = state::next_lesson_step(model)) {
    model = state::apply(std::move(model), state::StepLesson{1}).model;
    frames.push_back(model);
  }
  return frames;
}

/// Each step of the worked solution, or each line on the board.
std::vector<state::Model> solution_frames(state::Model model) {
  model = state::apply(std::move(model), state::SetPresenting{true}).model;
  model = state::apply(std::move(model), state::SetMode{state::Mode::Work}).model;
  std::vector<state::Model> frames{model};
  const std::size_t problem = model.state.problem;
  constexpr std::size_t most = 200;
  while (frames.size() < most) {
    model = state::apply(std::move(model), state::StepWork{1}).model;
    const state::Work& work = model.state.desk().work;
    if (model.state.problem != problem || work == frames.back().state.desk().work) {
      break;
    }
    frames.push_back(model);
  }
  return frames;
}

std::vector<state::Model> frames_of(const PictureOptions& options, state::Model model) {
  if (options.frames > 0) {
    return fold_frames(model, options.frames);
  }
  if (options.steps.empty()) {
    return {std::move(model)};
  }
  return options.steps == "count" ? count_frames(std::move(model)) : solution_frames(std::move(model));
}

/// Why these options don't go together.
std::optional<std::string> refusal(const PictureOptions& options) {
  const bool is_many = options.frames > 0 || !options.steps.empty();
  if (is_many && &kind_of(options.output.path) != &png_picture()) {
    return "--frames and --steps write PNG pictures, so the name has to end in .png.";
  }
  if (is_many && options.output.path == "-") {
    return "--frames and --steps write several files, so they need a name to number, not -.";
  }
  return output_refusal(options.output, kind_of(options.output.path), options.lesson);
}

ExitStatus picture(const PictureOptions& options) {
  ExitStatus status = ExitStatus::Done;
  const std::optional<PictureSize> size = picture_size(options.size);
  if (!size || is_told(refusal(options))) {
    return ExitStatus::WrongUsage;
  }
  if (&kind_of(options.output.path) != &png_picture()) {
    return line_drawing(options, has_ending(options.output.path, svg_drawing().ending));
  }
  std::optional<state::Model> model = opened_at_problem(options, status);
  if (!model) {
    return status;
  }
  const bool shows_window = options.window || !options.steps.empty();
  const std::vector<state::Model> frames = frames_of(options, std::move(*model));
  std::vector<OutputOptions> places;
  for (std::size_t i = 0; i < frames.size(); ++i) {
    places.push_back({numbered_path(options.output.path, i, frames.size()), options.output.force});
    if (is_told(output_refusal(places.back(), png_picture(), options.lesson))) {
      return ExitStatus::WrongUsage;
    }
  }
  const auto what = shows_window ? window::PictureOf::Window : window::PictureOf::Bench;
  const auto fault = window::off_screen_pictures(
      frames, what, size->width, size->height,
      [&](std::size_t i, const render::Picture& drawn) -> std::optional<std::string> {
        const auto bytes = png_bytes(drawn);
        return bytes ? write_output(places[i], *bytes) : std::optional<std::string>(bytes.error());
      });
  return is_told(fault) ? ExitStatus::WrongUsage : status;
}

}  // namespace

void add_picture(CLI::App& app, ExitStatus& status) {
  const auto options = std::make_shared<PictureOptions>();
  CLI::App* verb = app.add_subcommand(
      "picture", "Draws the bench as a PNG file, or the solid as a line drawing; no window is needed");
  verb->add_option("LESSON", options->lesson, "The lesson file")->type_name(file_type)->required();
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
  CLI::Option* frames =
      verb->add_option("--frames", options->frames,
                       "This many numbered pictures of the net as it opens, starting with the closed solid")
          ->check(CLI::Range(std::size_t{2}, std::size_t{600}));
  verb->add_option("--steps", options->steps,
                   "A numbered picture of the window for each step of the count or of the worked solution")
      ->check(CLI::IsMember({"count", "solution"}))
      ->excludes(frames);
  verb->add_option("-o,--output", options->output.path,
                   "Where to write: .png for the bench in color, .svg or .pdf for a line drawing as on paper; - is "
                   "standard output, as PNG")
      ->type_name(file_type)
      ->required();
  verb->add_flag("--force", options->output.force,
                 "Replace a file of another kind; the lesson that is read is never replaced");
  verb->callback([options, &status] { status = picture(*options); });
}

}  // namespace fw::cli
