#include "platform/paths.hpp"

#include <filesystem>
#include <system_error>

namespace fw::platform {

PathKind path_kind(const std::string& path) {
  std::error_code error;
  const auto status = std::filesystem::status(path, error);
  if (!std::filesystem::exists(status)) {
    return PathKind::Nothing;
  }
  if (std::filesystem::is_directory(status)) {
    return PathKind::Folder;
  }
  return std::filesystem::is_regular_file(status) ? PathKind::File : PathKind::Stream;
}

bool same_file(const std::string& a, const std::string& b) {
  std::error_code error;
  return std::filesystem::equivalent(a, b, error) && !error;
}

std::string program_folder() {
  std::error_code error;
  const auto program = std::filesystem::read_symlink("/proc/self/exe", error);
  return error ? "." : folder_of(program.string());
}

std::string page_file() {
  const std::string program = program_folder();
  for (const char* place : {"/foldwright.html", "/../share/foldwright/foldwright.html", "/../web/foldwright.html"}) {
    if (path_kind(program + place) == PathKind::File) {
      return program + place;
    }
  }
  return "";
}

}  // namespace fw::platform
