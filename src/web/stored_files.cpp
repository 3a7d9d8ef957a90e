#include "web/stored_files.hpp"

#include <cstdlib>
#include <sstream>

#include "web/library.hpp"

namespace fw::web {

using platform::FileError;
using platform::FileFault;
using platform::FolderLock;

namespace {

constexpr const char* kept = "foldwright";
constexpr const char* documents = "Downloads";
constexpr const char* aside_mark = ".damaged";

/// A text that the browser handed over.
std::optional<std::string> owned_text(char* text) {
  if (text == nullptr) {
    return std::nullopt;
  }
  std::string copy(text);
  std::free(text);
  return copy;
}

FileError refused(const std::string& what) {
  return {FileFault::NotWritable, "This browser won't let the page " + what + "."};
}

/// What is kept lies in a folder of its own; all else is for the student.
bool is_download(const std::string& path) { return path.rfind(std::string(kept) + "/", 0) != 0; }

}  // namespace

Result<std::string, FileError> StoredFiles::read(const std::string& path, std::size_t byte_limit) const {
  auto text = owned_text(page_stored(path.c_str()));
  if (!text) {
    return failure(FileError{FileFault::NotFound, "There is nothing stored as \"" + path + "\"."});
  }
  if (text->size() > byte_limit) {
    return failure(FileError{FileFault::TooLarge, "What is stored as \"" + path + "\" is too large."});
  }
  return std::move(*text);
}

std::optional<FileError> StoredFiles::write_atomically(const std::string& path, const std::string& text) {
  if (is_download(path)) {
    page_download(path.substr(path.rfind('/') + 1).c_str(), text.data(), static_cast<int>(text.size()));
    return std::nullopt;
  }
  return page_store(path.c_str(), text.c_str()) == 1 ? std::nullopt : std::optional(refused("store anything"));
}

Result<std::unique_ptr<FolderLock>, FileError> StoredFiles::lock_folder(const std::string&) {
  return std::make_unique<FolderLock>();
}

bool StoredFiles::exists(const std::string& path) const { return owned_text(page_stored(path.c_str())).has_value(); }

platform::PathKind StoredFiles::kind(const std::string& path) const {
  if (exists(path)) {
    return platform::PathKind::File;
  }
  return path == documents || path == "." ? platform::PathKind::Folder : platform::PathKind::Nothing;
}

Result<std::string, FileError> StoredFiles::move_aside(const std::string& path) {
  auto text = read(path, std::string::npos);
  if (!text) {
    return text;
  }
  std::string aside = path + aside_mark;
  for (int number = 2; exists(aside); ++number) {
    aside = path + aside_mark + "-" + std::to_string(number);
  }
  // The copy first: a page that is closed in between loses nothing.
  if (const auto error = write_atomically(aside, text.value())) {
    return failure(*error);
  }
  if (page_unstore(path.c_str()) != 1) {
    return failure(refused("change what it stored"));
  }
  return aside;
}

std::optional<FileError> StoredFiles::erase(const std::string& path) {
  std::istringstream names(owned_text(page_stored_names()).value_or(""));
  for (std::string name; std::getline(names, name);) {
    const bool is_of_it = name == path || name.rfind(path + aside_mark, 0) == 0;
    if (is_of_it && page_unstore(name.c_str()) != 1) {
      return refused("erase what it stored");
    }
  }
  return std::nullopt;
}

Result<std::string, FileError> StoredFiles::config_folder() const { return std::string(kept); }
Result<std::string, FileError> StoredFiles::data_folder() const { return std::string(kept); }
Result<std::string, FileError> StoredFiles::documents_folder() const { return std::string(documents); }

}  // namespace fw::web
