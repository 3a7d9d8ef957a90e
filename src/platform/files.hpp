#pragma once

#include <cstddef>
#include <map>
#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "base/result.hpp"
#include "platform/paths.hpp"

namespace fw::platform {

enum class FileFault { NotFound, NotReadable, TooLarge, NotWritable };

struct FileError {
  FileFault fault = FileFault::NotReadable;
  std::string message;  ///< a sentence that names the path and what the system said
  friend bool operator==(const FileError&, const FileError&) = default;
};

/// Lessons and settings are far smaller than this; what is larger is no file of ours.
inline constexpr std::size_t usual_byte_limit = std::size_t{8} << 20U;

/// Held while files that belong together are read and written.
class FolderLock {
 public:
  FolderLock() = default;
  FolderLock(const FolderLock&) = delete;
  FolderLock& operator=(const FolderLock&) = delete;
  virtual ~FolderLock() = default;
};

/// The only way of this house to files. Paths and texts are UTF-8.
class Files {
 public:
  Files() = default;
  Files(const Files&) = delete;
  Files& operator=(const Files&) = delete;
  virtual ~Files() = default;

  /// The whole text of a regular file (or of a pipe). Never holds more than `byte_limit` + 1 bytes of it.
  [[nodiscard]] virtual Result<std::string, FileError> read(const std::string& path, std::size_t byte_limit) const = 0;
  [[nodiscard]] Result<std::string, FileError> read(const std::string& path) const {
    return read(path, usual_byte_limit);
  }

  /// Puts `text` in place of the file whole: a reader, or a power cut, finds the old text or the new one.
  /// Folders that are missing on the way are made; a link is followed and stays a link. What an interrupted writing of
  /// the same file left long ago is removed. A device or a pipe is written into and stays what it is.
  /// Returns what went wrong, nothing when it is written.
  [[nodiscard]] virtual std::optional<FileError> write_atomically(const std::string& path, const std::string& text) = 0;

  /// Keeps other processes that ask the same out of a folder while the returned value lives. The folder is made if it
  /// is missing. Waits two seconds at most. Where a file system knows no locks, nobody is kept out. Errors: another
  /// process holds it all that time, or the folder cannot be made.
  [[nodiscard]] virtual Result<std::unique_ptr<FolderLock>, FileError> lock_folder(const std::string& folder) = 0;

  [[nodiscard]] virtual bool exists(const std::string& path) const = 0;
  /// What the path leads to; links are followed.
  [[nodiscard]] virtual PathKind kind(const std::string& path) const = 0;

  /// Renames a damaged file to PATH.damaged, or PATH.damaged-2 and so on when that is taken, so that nothing
  /// of it is lost. Returns the new path.
  [[nodiscard]] virtual Result<std::string, FileError> move_aside(const std::string& path) = 0;

  /// Removes the file with everything that was set aside of it and that an interrupted writing left; a link stays.
  /// Returns what went wrong, nothing when none of it is there any more.
  [[nodiscard]] virtual std::optional<FileError> erase(const std::string& path) = 0;

  /// Where settings belong; it need not exist yet. Source: XDG Base Directory Specification 0.8
  /// ($XDG_CONFIG_HOME when it is an absolute path, else $HOME/.config), with our folder's name added.
  [[nodiscard]] virtual Result<std::string, FileError> config_folder() const = 0;

  /// Where what the user does is kept; it need not exist yet. Source: the same, $XDG_DATA_HOME when it is an absolute
  /// path, else $HOME/.local/share.
  [[nodiscard]] virtual Result<std::string, FileError> data_folder() const = 0;

  /// Where a person looks for what a program wrote for them: the folder Documents of the home folder where there is
  /// one, else the home folder.
  [[nodiscard]] virtual Result<std::string, FileError> documents_folder() const = 0;
};

/// Writes bytes as they are to standard output, past any stream. Returns what went wrong.
[[nodiscard]] std::optional<FileError> write_standard_output(const std::string& text);

/// The system's files.
[[nodiscard]] std::unique_ptr<Files> desktop_files();

/// Files in memory, for tests and for browsers: any path is a name, and folders are not needed. Those for documents are
/// there, and those in which a file lies.
class MemoryFiles final : public Files {
 public:
  using Files::read;
  MemoryFiles() = default;
  explicit MemoryFiles(std::map<std::string, std::string> texts) : texts_(std::move(texts)) {}

  [[nodiscard]] Result<std::string, FileError> read(const std::string& path, std::size_t byte_limit) const override;
  [[nodiscard]] std::optional<FileError> write_atomically(const std::string& path, const std::string& text) override;
  [[nodiscard]] Result<std::unique_ptr<FolderLock>, FileError> lock_folder(const std::string& folder) override;
  [[nodiscard]] bool exists(const std::string& path) const override;
  [[nodiscard]] PathKind kind(const std::string& path) const override;
  [[nodiscard]] Result<std::string, FileError> move_aside(const std::string& path) override;
  [[nodiscard]] std::optional<FileError> erase(const std::string& path) override;
  [[nodiscard]] Result<std::string, FileError> config_folder() const override;
  [[nodiscard]] Result<std::string, FileError> data_folder() const override;
  [[nodiscard]] Result<std::string, FileError> documents_folder() const override;

  [[nodiscard]] const std::map<std::string, std::string>& texts() const { return texts_; }
  /// From now on writing and moving fail, as on a full or write-protected disk.
  void refuse_writing(bool refuses = true) { refuses_writing_ = refuses; }

 private:
  std::map<std::string, std::string> texts_;
  bool refuses_writing_ = false;
};

}  // namespace fw::platform
