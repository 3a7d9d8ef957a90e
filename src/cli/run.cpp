#include <CLI/CLI.hpp>
#include <iostream>

#include "cli/plain_text.hpp"
#include "cli/verb.hpp"
#include "cli/version.hpp"
#include "platform/assets.hpp"

namespace fw::cli {
namespace {

ExitStatus run_without_arguments(const CLI::App& app) {
  for (const Verb& verb : verbs()) {
    if (verb.without_arguments != nullptr) {
      return verb.without_arguments();
    }
  }
  std::cerr << app.help();
  return ExitStatus::WrongUsage;
}

}  // namespace

void add_command_line(CLI::App& app, ExitStatus& status) {
  app.name("foldwright");
  app.description("Foldwright: solids, their nets, and their faces counted one by one.");
  app.set_version_flag("-V,--version", std::string("foldwright ") + version);
  app.add_flag_callback(
      "--licenses",
      [] {
        std::cout << platform::asset("licenses.txt");
        throw CLI::Success();
      },
      "Print the licenses of all that is part of this program");
  app.require_subcommand(0, 1);
  app.footer("Exit status: 0 done; 1 the lesson is at fault; 2 wrong usage, a limit passed, or unreadable input.");
  for (const Verb& verb : verbs()) {
    verb.add(app, status);
  }
}

int run(int argc, const char* const* argv) {
  const PlainText plain_output(std::cout);
  const PlainText plain_error(std::cerr);
  CLI::App app;
  ExitStatus status = ExitStatus::Done;
  add_command_line(app, status);
  try {
    app.parse(argc, argv);
    if (app.get_subcommands().empty()) {
      status = run_without_arguments(app);
    }
  } catch (const CLI::ParseError& error) {
    // Help and version come this way too, with the code 0.
    status = app.exit(error, std::cout, std::cerr) == 0 ? ExitStatus::Done : ExitStatus::WrongUsage;
  }
  if (!std::cout.flush()) {
    std::cerr << "foldwright: the output could not be written.\n";
    status = ExitStatus::WrongUsage;
  }
  return static_cast<int>(status);
}

}  // namespace fw::cli
