#include <CLI/CLI.hpp>
#include <iostream>
#include <memory>

#include "cli/open_lesson.hpp"
#include "cli/output_file.hpp"
#include "cli/verbs/verbs.hpp"
#include "platform/files.hpp"
#include "platform/paths.hpp"

namespace fw::cli {
namespace {

constexpr std::size_t page_byte_limit = std::size_t{32} << 20U;
constexpr std::string_view lesson_begins = "<script id=\"lesson\" type=\"application/json\">";
constexpr std::string_view lesson_ends = "</script>";

struct ShareOptions {
  std::string lesson;
  std::string page;
  OutputOptions output;
};

/// Where the page lies if nobody says: beside the program, where an installed one has it, or where it is built.
std::string usual_page() {
  const std::string program = platform::program_folder();
  for (const char* place : {"/foldwright.html", "/../share/foldwright/foldwright.html", "/../web/foldwright.html"}) {
    if (platform::path_kind(program + place) == platform::PathKind::File) {
      return program + place;
    }
  }
  return "";
}

/// A lesson's text as it may stand in a page: nothing in it ends the block that it stands in. The JSON is the same.
std::string text_in_page(const std::string& lesson) {
  std::string text;
  for (std::size_t i = 0; i < lesson.size(); ++i) {
    const std::string_view rest = std::string_view(lesson).substr(i);
    if (rest.substr(0, 2) == "</") {
      text += "<\\/";
      ++i;
    } else if (rest.substr(0, 2) == "<!") {
      text += "\\u003c";
    } else {
      text += lesson[i];
    }
  }
  return text;
}

/// The page with the lesson in it; nothing where it has no place for one.
std::optional<std::string> page_with(const std::string& page, const std::string& lesson) {
  const std::size_t begin = page.find(lesson_begins);
  const std::size_t end = begin == std::string::npos ? begin : page.find(lesson_ends, begin);
  if (end == std::string::npos) {
    return std::nullopt;
  }
  return page.substr(0, begin + lesson_begins.size()) + text_in_page(lesson) + page.substr(end);
}

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
  const std::string path = options.page.empty() ? usual_page() : options.page;
  if (path.empty()) {
    return refused(
        "There's no page to put the lesson in. Run \"sh third_party/bootstrap.sh web\" to build one, or use --page to "
        "say "
        "where foldwright.html is.");
  }
  const auto page = platform::desktop_files()->read(path, page_byte_limit);
  if (!page) {
    return refused(page.error().message);
  }
  const std::optional<std::string> whole = page_with(page.value(), *lesson);
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
  verb->add_option("LESSON", options->lesson, "The lesson file")->required();
  verb->add_option("--page", options->page, "Where foldwright.html is; otherwise the one that came with the program");
  add_output_options(*verb, options->output, page_file());
  verb->callback([options, &status] { status = share(*options); });
}

}  // namespace fw::cli
