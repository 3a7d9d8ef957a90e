#pragma once

#include "cli/exit_status.hpp"

namespace CLI {
class App;
}

// One function a verb; each is a file of this folder.
namespace fw::cli {

void add_show(CLI::App& app, ExitStatus& status);
/// The window on the demo lesson.
[[nodiscard]] ExitStatus show_demo();
void add_measure(CLI::App& app, ExitStatus& status);
void add_explain(CLI::App& app, ExitStatus& status);
void add_diagnose(CLI::App& app, ExitStatus& status);
void add_practice(CLI::App& app, ExitStatus& status);
void add_check(CLI::App& app, ExitStatus& status);
void add_nets(CLI::App& app, ExitStatus& status);
void add_picture(CLI::App& app, ExitStatus& status);
void add_print(CLI::App& app, ExitStatus& status);
void add_share(CLI::App& app, ExitStatus& status);

}  // namespace fw::cli
