#pragma once

#include <vector>

#include "cli/exit_status.hpp"

namespace CLI {
class App;
}

namespace fw::cli {

/// A verb of the program. Adding one is a file in cli/verbs/ and a line in cli/verb_table.cpp.
struct Verb {
  /// Adds the verb's subcommand with its options. Its callback does the work and sets `status`, which outlives it.
  void (*add)(CLI::App& app, ExitStatus& status);
  /// What `foldwright` alone does; at most one verb has it.
  ExitStatus (*without_arguments)() = nullptr;
};

/// In the order in which --help lists them.
[[nodiscard]] const std::vector<Verb>& verbs();

/// The program's own options and all its verbs. `status` outlives `app`.
void add_command_line(CLI::App& app, ExitStatus& status);

/// The whole program: reads the arguments, runs a verb, and returns the exit status.
[[nodiscard]] int run(int argc, const char* const* argv);

}  // namespace fw::cli
