#include <CLI/CLI.hpp>
#include <iostream>
#include <memory>

#include "cli/arguments.hpp"
#include "cli/open_lesson.hpp"
#include "cli/output_file.hpp"
#include "cli/verbs/verbs.hpp"
#include "lessons/lesson_page.hpp"
#include "platform/files.hpp"
#include "platform/paths.hpp"
#include "state/sharing.hpp"

namespace fw::cli {
namespace {

struct ShareOptions {
  std::string lesson;
  std::string page;
  OutputOptions output;
};

ExitStatus refused(const std::string& reason) {
  std::cerr << "foldwright: " << reason << '\n';
  return ExitStatus::WrongUsage;
}

ExitStatus share(const ShareOptions& options) {
  if (const auto refusal = output_refusal(options.output, page_file(), options.lesson)) {
    return refused(*refusal);
  }
  ExitStatus status = ExitStatus::Done;
  const std::optional<std::string> lesson = read_lesson_text(options.lesson, status);
  if (!lesson || !lesson_in_text(*lesson, options.lesson, status)) {
    return status;
  }
  const std::string path = options.page.empty() ? platform::page_file() : options.page;
  if (path.empty()) {
    return refused(
        "There's no page to put the lesson in. Run \"sh third_party/bootstrap.sh web\" to build one, or use --page to "
        "say where foldwright.html is.");
  }
  const auto page = platform::desktop_files()->read(path, state::page_byte_limit);
  if (!page) {
    return refused(page.error().message);
  }
  const std::optional<std::string> whole = lessons::page_with(page.value(), *lesson);
  if (!whole) {
    return refused("\"" + path + "\" is not Foldwright's page: it has no place for a lesson.");
  }
  if (const auto error = write_output(options.output, *whole)) {
    return refused(*error);
  }
  return status;
}

}  // namespace

void add_share(CLI::App& app, ExitStatus& status) {
  const auto options = std::make_shared<ShareOptions>();
  CLI::App* verb =
      app.add_subcommand("share", "Turns a lesson into one page that opens in any browser, with no network");
  verb->add_option("LESSON", options->lesson, "The lesson file")->type_name(file_type)->required();
  verb->add_option("--page", options->page, "Where foldwright.html is; otherwise the one that came with the program")
      ->type_name(file_type);
  add_output_options(*verb, options->output, page_file());
  verb->callback([options, &status] { status = share(*options); });
}

}  // namespace fw::cli
