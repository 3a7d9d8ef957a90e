#pragma once

#include <sys/wait.h>

#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <sstream>
#include <string>

namespace fw::cli {

/// What a run of the program left: its exit status, and what it wrote.
struct Outcome {
  int status = -1;
  std::string out;
  std::string error;
};

/// A folder of this process's own, with files made for a test; gone when the object is.
class Folder {
 public:
  Folder() {
    std::string pattern = (std::filesystem::temp_directory_path() / "foldwright-test-XXXXXX").string();
    path_ = mkdtemp(pattern.data());
  }
  ~Folder() { std::filesystem::remove_all(path_); }
  Folder(const Folder&) = delete;
  Folder& operator=(const Folder&) = delete;

  /// The path of a new file with this text.
  [[nodiscard]] std::string file(const std::string& name, const std::string& text) const {
    std::ofstream(path_ / name, std::ios::binary) << text;
    return (path_ / name).string();
  }
  [[nodiscard]] std::string path(const std::string& name) const { return (path_ / name).string(); }

 private:
  std::filesystem::path path_;
};

inline std::string contents(const std::string& path) {
  std::ifstream file(path, std::ios::binary);
  std::ostringstream text;
  text << file.rdbuf();
  return text.str();
}

/// Runs the program with these arguments, as a shell reads them, and a file as its standard input.
inline Outcome run_program(const std::string& arguments, const std::string& input = "/dev/null") {
  const Folder folder;
  const std::string out = folder.path("out");
  const std::string error = folder.path("error");
  const std::string command =
      std::string("'") + FOLDWRIGHT_PROGRAM + "' " + arguments + " >'" + out + "' 2>'" + error + "' <'" + input + "'";
  const int status = std::system(command.c_str());
  return {WIFEXITED(status) ? WEXITSTATUS(status) : -1, contents(out), contents(error)};
}

}  // namespace fw::cli
