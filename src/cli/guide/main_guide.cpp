// Writes the man page and the completions into a folder, for the package: foldwright_guide FOLDER DATE
#include <iostream>

#include "cli/guide/guide.hpp"
#include "platform/files.hpp"

int main(int argc, char** argv) {
  if (argc != 3) {
    std::cerr << "usage: foldwright_guide FOLDER DATE\n";
    return 2;
  }
  const std::string folder = argv[1];
  const fw::cli::ProgramHelp help = fw::cli::program_help();
  const auto files = fw::platform::desktop_files();
  const auto write = [&](const std::string& name, const std::string& text) {
    const auto error = files->write_atomically(folder + "/" + name, text);
    if (error) {
      std::cerr << "foldwright_guide: " << error->message << '\n';
    }
    return !error;
  };
  const bool done = write("foldwright.1", fw::cli::man_page(help, argv[2])) &&
                    write("foldwright.bash", fw::cli::bash_completion(help)) &&
                    write("foldwright.zsh", fw::cli::zsh_completion(help)) &&
                    write("foldwright.fish", fw::cli::fish_completion(help));
  return done ? 0 : 2;
}
