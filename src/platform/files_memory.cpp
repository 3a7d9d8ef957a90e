#include "platform/files.hpp"

#include <iterator>

namespace fw::platform {

Result<std::string, FileError> MemoryFiles::read(const std::string& path, std::size_t byte_limit) const {
  const auto found = texts_.find(path);
  if (found == texts_.end()) return failure(FileError{FileFault::NotFound, "There is no file \"" + path + "\"."});
  if (found->second.size() > byte_limit) {
    return failure(FileError{FileFault::TooLarge, "The file \"" + path + "\" is larger than " +
                                                      std::to_string(byte_limit) +
                                                      " bytes, the most that is read of such a file."});
  }
  return found->second;
}

std::optional<FileError> MemoryFiles::write_atomically(const std::string& path, const std::string& text) {
  if (refuses_writing_) {
    return FileError{FileFault::NotWritable, "The file \"" + path + "\" cannot be written: no space is left."};
  }
  texts_[path] = text;
  return std::nullopt;
}

Result<std::unique_ptr<FolderLock>, FileError> MemoryFiles::lock_folder(const std::string&) {
  return std::make_unique<FolderLock>();
}

bool MemoryFiles::exists(const std::string& path) const { return texts_.count(path) == 1; }

PathKind MemoryFiles::kind(const std::string& path) const {
  if (exists(path)) return PathKind::File;
  const std::string inside = path + "/";
  const auto after = texts_.lower_bound(inside);
  const bool holds_files = after != texts_.end() && after->first.rfind(inside, 0) == 0;
  const bool is_folder = holds_files || path == "." || path == documents_folder().value_or("");
  return is_folder ? PathKind::Folder : PathKind::Nothing;
}

Result<std::string, FileError> MemoryFiles::move_aside(const std::string& path) {
  const auto found = texts_.find(path);
  if (found == texts_.end()) return failure(FileError{FileFault::NotFound, "There is no file \"" + path + "\"."});
  if (refuses_writing_) {
    return failure(FileError{FileFault::NotWritable, "The file \"" + path + "\" cannot be renamed."});
  }
  std::string aside = path + ".damaged";
  for (int number = 2; exists(aside); ++number) aside = path + ".damaged-" + std::to_string(number);
  texts_[aside] = found->second;
  texts_.erase(path);
  return aside;
}

std::optional<FileError> MemoryFiles::erase(const std::string& path) {
  const std::string aside = path + ".damaged";
  for (auto text = texts_.begin(); text != texts_.end();) {
    const bool is_of_it = text->first == path || text->first == aside || text->first.rfind(aside + "-", 0) == 0;
    if (is_of_it && refuses_writing_) {
      return FileError{FileFault::NotWritable, "The file \"" + text->first + "\" cannot be erased."};
    }
    text = is_of_it ? texts_.erase(text) : std::next(text);
  }
  return std::nullopt;
}

Result<std::string, FileError> MemoryFiles::config_folder() const { return std::string("config/foldwright"); }

Result<std::string, FileError> MemoryFiles::data_folder() const { return std::string("data/foldwright"); }

Result<std::string, FileError> MemoryFiles::documents_folder() const { return std::string("home/Documents"); }

}  // namespace fw::platform
