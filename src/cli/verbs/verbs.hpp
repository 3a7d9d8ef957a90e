#pragma once

#include "cli/exit_status.hpp"

namespace CLI {
class App;
}

// One function a verb; each is a file of this folder.
namespace fw::cli {

void add_measure(CLI::App& app, ExitStatus& status);
void add_check(CLI::App& app, ExitStatus& status);
void add_nets(CLI::App& app, ExitStatus& status);

}  // namespace fw::cli
