#pragma once

#include <string>

namespace fw::platform {

enum class PathKind {
  Nothing,  ///< no such name
  File,     ///< a regular file
  Folder,
  Stream,  ///< a device, a pipe or a socket: it is written into, never replaced
};
/// What a path leads to; links are followed.
[[nodiscard]] PathKind path_kind(const std::string& path);

/// Whether both paths lead to the very same file, under whatever names.
[[nodiscard]] bool same_file(const std::string& a, const std::string& b);

/// The folder that the path's last name lies in; "." where the path is a bare name.
[[nodiscard]] std::string folder_of(const std::string& path);

/// The folder that the running program lies in; links are followed. "." where the system does not tell.
[[nodiscard]] std::string program_folder();

/// The page that opens in a browser: where it came with the program, or was built; empty where it is not there.
[[nodiscard]] std::string page_file();

}  // namespace fw::platform
