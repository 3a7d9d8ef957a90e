#include <CLI/CLI.hpp>
#include <atomic>
#include <iostream>
#include <memory>

#include "cli/arguments.hpp"
#include "cli/open_lesson.hpp"
#include "cli/picture_file.hpp"
#include "cli/verbs/verbs.hpp"
#include "platform/assets.hpp"
#include "platform/ending.hpp"
#include "platform/files.hpp"
#include "platform/paths.hpp"
#include "state/session.hpp"
#include "tasks/catalog.hpp"
#include "window/window.hpp"

namespace fw::cli {
namespace {

constexpr const char* demo_lesson = "lantern_fair.json";

struct ShowOptions {
  std::string lesson;
  std::string size = "1280x720";
};

ExitStatus show(lessons::Lesson lesson, const std::string& path, const std::string& size) {
  const std::optional<PictureSize> window_size = picture_size(size);
  if (!window_size) {
    return ExitStatus::WrongUsage;
  }
  // The window is closed as by its button when the machine shuts down or logs out, so that the place is kept.
  std::atomic<bool> has_to_end = false;
  std::atomic<window::Window*> shown = nullptr;
  const platform::EndRequests requests([&] {
    has_to_end = true;
    if (window::Window* window = shown) {
      window->ask_to_close();
    }
  });
  const std::unique_ptr<platform::Files> files = platform::desktop_files();
  state::Session session(*files, std::move(lesson), path);
  session.shares(platform::page_file());
  std::size_t said = 0;
  const auto say = [&] {
    for (; said < session.messages().size(); ++said) {
      std::cerr << "foldwright: " << session.messages()[said] << '\n';
    }
  };
  say();
  auto window = window::Window::make(session, {window_size->width, window_size->height, true});
  if (!window) {
    std::cerr << "foldwright: " << window.error() << '\n';
    return ExitStatus::WrongUsage;
  }
  window::Window open = std::move(window).value();
  session.save_at_last_words();
  shown = &open;
  if (!has_to_end) {
    open.run();
  }
  shown = nullptr;
  say();
  return ExitStatus::Done;
}

lessons::Lesson read_demo() {
  auto lesson = tasks::read_lesson(platform::asset(demo_lesson));
  ensure(lesson.has_value(), "the demo lesson inside the program is a lesson");
  return std::move(lesson).value();
}

}  // namespace

ExitStatus show_demo() { return show(read_demo(), "", ShowOptions{}.size); }

void add_show(CLI::App& app, ExitStatus& status) {
  const auto options = std::make_shared<ShowOptions>();
  CLI::App* verb = app.add_subcommand("show", "Opens the window on a lesson");
  const CLI::Option* lesson_option =
      verb->add_option("LESSON", options->lesson, "The lesson file; otherwise the demo lesson")->type_name(file_type);
  verb->add_option("--size", options->size, "Size of the window, WIDTHxHEIGHT")->capture_default_str();
  verb->callback([options, lesson_option, &status] {
    if (lesson_option->count() == 0) {
      status = show(read_demo(), "", options->size);
      return;
    }
    std::optional<lessons::Lesson> lesson = open_lesson(options->lesson, status);
    if (lesson) {
      status = show(std::move(*lesson), options->lesson, options->size);
    }
  });
}

}  // namespace fw::cli
