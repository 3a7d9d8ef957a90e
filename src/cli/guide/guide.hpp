#pragma once

#include <string>

#include "cli/guide/program_help.hpp"

// What an installed program brings for people who work in a terminal.
namespace fw::cli {

/// The man page, in section 1. `date`: as it stands in the page's foot, "2026-11-30". Source: groff_man(7).
[[nodiscard]] std::string man_page(const ProgramHelp& help, const std::string& date);

/// Scripts that complete verbs, options, words and file names on the command line.
[[nodiscard]] std::string bash_completion(const ProgramHelp& help);
[[nodiscard]] std::string zsh_completion(const ProgramHelp& help);
[[nodiscard]] std::string fish_completion(const ProgramHelp& help);

}  // namespace fw::cli
