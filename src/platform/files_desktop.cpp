#include <fcntl.h>
#include <sys/file.h>
#include <sys/stat.h>
#include <unistd.h>

#include <array>
#include <cerrno>
#include <chrono>
#include <cstring>
#include <filesystem>
#include <system_error>
#include <thread>
#include <utility>
#include <vector>

#include "platform/environment.hpp"
#include "platform/files.hpp"
#include "platform/paths.hpp"

namespace fw::platform {
namespace {

/// Closes the descriptor when it goes.
class Descriptor {
 public:
  explicit Descriptor(int number) : number_(number) {}
  Descriptor(const Descriptor&) = delete;
  Descriptor& operator=(const Descriptor&) = delete;
  ~Descriptor() {
    if (number_ >= 0) ::close(number_);
  }
  [[nodiscard]] bool is_open() const { return number_ >= 0; }
  [[nodiscard]] int number() const { return number_; }
  /// Closing can tell of a failed write, on network disks for one.
  [[nodiscard]] bool close_now() { return ::close(std::exchange(number_, -1)) == 0; }

 private:
  int number_;
};

std::string reason_of(int error_number) { return std::generic_category().message(error_number); }

FileError cannot_read(const std::string& path, int error_number) {
  if (error_number == ENOENT || error_number == ENOTDIR) {
    return {FileFault::NotFound, "There is no file \"" + path + "\"."};
  }
  return {FileFault::NotReadable, "The file \"" + path + "\" cannot be read: " + reason_of(error_number) + "."};
}

FileError cannot_write(const std::string& path, const std::string& reason) {
  return {FileFault::NotWritable, "The file \"" + path + "\" cannot be written: " + reason + "."};
}

FileError too_large(const std::string& path, std::size_t byte_limit) {
  return {FileFault::TooLarge, "The file \"" + path + "\" is larger than " + std::to_string(byte_limit) +
                                   " bytes, the most that is read of such a file."};
}

bool write_all(int descriptor, const std::string& text) {
  std::size_t done = 0;
  while (done < text.size()) {
    const auto count = ::write(descriptor, text.data() + done, text.size() - done);
    if (count < 0 && errno == EINTR) continue;
    if (count <= 0) return false;
    done += static_cast<std::size_t>(count);
  }
  return true;
}

/// Where a link leads in the end, so that the link itself stays; the path itself where there is none.
std::string followed(const std::string& path) {
  std::error_code error;
  std::filesystem::path place = path;
  for (int step = 0; step < 40 && std::filesystem::is_symlink(place, error); ++step) {
    const auto next = std::filesystem::read_symlink(place, error);
    if (error) break;
    place = next.is_absolute() ? next : place.parent_path() / next;
  }
  return place.string();
}

/// Makes the name in the folder last through a power cut. Some file systems cannot; the text is safe without.
void flush_folder(const std::string& folder) {
  const Descriptor descriptor(::open(folder.c_str(), O_RDONLY | O_CLOEXEC));
  if (descriptor.is_open()) ::fsync(descriptor.number());
}

/// Makes the folders that are missing, each name to last in the folder above it.
std::error_code make_folders(const std::string& folder) {
  std::error_code error;
  std::vector<std::string> missing;
  for (std::string on_the_way = folder; !std::filesystem::exists(on_the_way, error) && !error;
       on_the_way = folder_of(on_the_way)) {
    missing.push_back(on_the_way);
  }
  std::filesystem::create_directories(folder, error);
  for (auto made = missing.rbegin(); !error && made != missing.rend(); ++made) {
    flush_folder(folder_of(*made));
  }
  return error;
}

constexpr const char* part_mark = ".part-";
constexpr const char* aside_mark = ".damaged";

/// The files beside `path` whose names are its own, one of the marks, and anything.
std::vector<std::filesystem::path> beside(const std::string& path, const char* mark) {
  const std::string begin = std::filesystem::path(path).filename().string() + mark;
  std::vector<std::filesystem::path> found;
  std::error_code error;
  for (std::filesystem::directory_iterator entry(folder_of(path), error), end; !error && entry != end;
       entry.increment(error)) {
    if (entry->path().filename().string().rfind(begin, 0) == 0 && !entry->is_directory(error)) {
      found.push_back(entry->path());
    }
  }
  return found;
}

/// Removes what writings that were interrupted left; no writing takes as long as these are old.
void remove_old_parts(const std::string& target) {
  constexpr auto old = std::chrono::minutes(10);
  std::error_code error;
  for (const std::filesystem::path& part : beside(target, part_mark)) {
    const auto written = std::filesystem::last_write_time(part, error);
    if (!error && std::filesystem::file_time_type::clock::now() - written > old) {
      std::filesystem::remove(part, error);
    }
  }
}

/// The rights of the file that is replaced; those that the system gives a new one where there is none.
mode_t rights_for(const std::string& path) {
  struct stat found {};
  if (::stat(path.c_str(), &found) == 0) return found.st_mode & 07777U;
  const mode_t mask = ::umask(0);
  ::umask(mask);
  return 0666U & ~mask;
}

/// Writes the temporary file and flushes it. Returns the reason of a failure, empty when it is done.
std::string fill_temporary(Descriptor& descriptor, const std::string& text, mode_t rights) {
  if (!write_all(descriptor.number(), text)) return reason_of(errno);
  if (::fchmod(descriptor.number(), rights) != 0) return reason_of(errno);
  if (::fsync(descriptor.number()) != 0) return reason_of(errno);
  if (!descriptor.close_now()) return reason_of(errno);
  return {};
}

/// Puts the text into a device or a pipe, which a renamed file would do away with.
std::optional<FileError> write_into(const std::string& path, const std::string& text) {
  Descriptor descriptor(::open(path.c_str(), O_WRONLY | O_CLOEXEC));
  if (!descriptor.is_open()) return cannot_write(path, reason_of(errno));
  if (!write_all(descriptor.number(), text)) return cannot_write(path, reason_of(errno));
  if (!descriptor.close_now()) return cannot_write(path, reason_of(errno));
  return std::nullopt;
}

/// The system lets go of the lock when the descriptor is closed, however the process ends.
class DescriptorLock final : public FolderLock {
 public:
  explicit DescriptorLock(int number) : descriptor_(number) {}
  [[nodiscard]] int number() const { return descriptor_.number(); }

 private:
  Descriptor descriptor_;
};

class DesktopFiles final : public Files {
 public:
  [[nodiscard]] Result<std::string, FileError> read(const std::string& path, std::size_t byte_limit) const override;
  [[nodiscard]] std::optional<FileError> write_atomically(const std::string& path, const std::string& text) override;
  [[nodiscard]] Result<std::unique_ptr<FolderLock>, FileError> lock_folder(const std::string& folder) override;
  [[nodiscard]] bool exists(const std::string& path) const override;
  [[nodiscard]] PathKind kind(const std::string& path) const override { return path_kind(path); }
  [[nodiscard]] Result<std::string, FileError> move_aside(const std::string& path) override;
  [[nodiscard]] std::optional<FileError> erase(const std::string& path) override;
  [[nodiscard]] Result<std::string, FileError> config_folder() const override;
  [[nodiscard]] Result<std::string, FileError> data_folder() const override;
  [[nodiscard]] Result<std::string, FileError> documents_folder() const override;
};

Result<std::string, FileError> DesktopFiles::read(const std::string& path, std::size_t byte_limit) const {
  const Descriptor descriptor(::open(path.c_str(), O_RDONLY | O_CLOEXEC));
  if (!descriptor.is_open()) return failure(cannot_read(path, errno));
  struct stat found {};
  if (::fstat(descriptor.number(), &found) != 0) return failure(cannot_read(path, errno));
  if (S_ISDIR(found.st_mode)) return failure(cannot_read(path, EISDIR));
  if (S_ISREG(found.st_mode) && static_cast<std::uintmax_t>(found.st_size) > byte_limit) {
    return failure(too_large(path, byte_limit));
  }
  std::string text;
  std::array<char, 65536> block{};
  for (;;) {
    const auto count = ::read(descriptor.number(), block.data(), block.size());
    if (count < 0 && errno == EINTR) continue;
    if (count < 0) return failure(cannot_read(path, errno));
    if (count == 0) return text;
    // A pipe does not tell its size beforehand, and a file may grow meanwhile.
    if (static_cast<std::size_t>(count) > byte_limit - text.size()) return failure(too_large(path, byte_limit));
    text.append(block.data(), static_cast<std::size_t>(count));
  }
}

std::optional<FileError> DesktopFiles::write_atomically(const std::string& path, const std::string& text) {
  const PathKind kind = path_kind(path);
  if (kind == PathKind::Folder) return cannot_write(path, reason_of(EISDIR));
  if (kind == PathKind::Stream) return write_into(path, text);
  const std::string target = followed(path);
  const std::string folder = folder_of(target);
  if (const std::error_code fault = make_folders(folder)) return cannot_write(path, fault.message());
  remove_old_parts(target);
  std::string temporary = target + part_mark + "XXXXXX";
  Descriptor descriptor(::mkstemp(temporary.data()));
  if (!descriptor.is_open()) return cannot_write(path, reason_of(errno));
  std::string reason = fill_temporary(descriptor, text, rights_for(target));
  if (reason.empty() && ::rename(temporary.c_str(), target.c_str()) != 0) reason = reason_of(errno);
  if (!reason.empty()) {
    ::unlink(temporary.c_str());
    return cannot_write(path, reason);
  }
  flush_folder(folder);
  return std::nullopt;
}

Result<std::unique_ptr<FolderLock>, FileError> DesktopFiles::lock_folder(const std::string& folder) {
  if (const std::error_code fault = make_folders(folder)) return failure(cannot_write(folder, fault.message()));
  auto lock = std::make_unique<DescriptorLock>(::open(folder.c_str(), O_RDONLY | O_DIRECTORY | O_CLOEXEC));
  if (lock->number() < 0) return failure(cannot_write(folder, reason_of(errno)));
  const auto until = std::chrono::steady_clock::now() + std::chrono::seconds(2);
  while (::flock(lock->number(), LOCK_EX | LOCK_NB) != 0) {
    const bool is_held = errno == EWOULDBLOCK || errno == EINTR;
    if (!is_held) break;  // no locks on this file system
    if (std::chrono::steady_clock::now() > until) {
      return failure(
          FileError{FileFault::NotWritable, "Another program has been using \"" + folder + "\" for too long."});
    }
    std::this_thread::sleep_for(std::chrono::milliseconds(2));
  }
  return std::unique_ptr<FolderLock>(std::move(lock));
}

bool DesktopFiles::exists(const std::string& path) const {
  std::error_code error;
  return std::filesystem::exists(path, error);
}

Result<std::string, FileError> DesktopFiles::move_aside(const std::string& path) {
  std::error_code error;
  if (!std::filesystem::exists(path, error)) return failure(cannot_read(path, ENOENT));
  std::string aside = path + aside_mark;
  for (int number = 2; std::filesystem::exists(aside, error); ++number) {
    aside = path + aside_mark + "-" + std::to_string(number);
  }
  std::filesystem::rename(path, aside, error);
  if (error) {
    return failure(FileError{FileFault::NotWritable, "The file \"" + path + "\" cannot be renamed to \"" + aside +
                                                         "\": " + error.message() + "."});
  }
  return aside;
}

std::optional<FileError> DesktopFiles::erase(const std::string& path) {
  const std::string target = followed(path);
  std::vector<std::filesystem::path> all = beside(target, part_mark);
  for (const std::filesystem::path& aside : beside(path, aside_mark)) all.push_back(aside);
  all.emplace_back(target);
  for (const std::filesystem::path& one : all) {
    std::error_code error;
    std::filesystem::remove(one, error);
    if (error) {
      return FileError{FileFault::NotWritable,
                       "The file \"" + one.string() + "\" cannot be erased: " + error.message() + "."};
    }
  }
  flush_folder(folder_of(target));
  if (folder_of(path) != folder_of(target)) flush_folder(folder_of(path));
  return std::nullopt;
}

/// Our folder where the variable says, when it holds an absolute path, else in the home folder.
Result<std::string, FileError> own_folder(const char* variable, const std::string& in_home, const std::string& what) {
  const auto given = environment_variable(variable);
  if (given && given->front() == '/') return *given + "/foldwright";
  if (const auto home = environment_variable("HOME")) return *home + in_home + "/foldwright";
  return failure(FileError{FileFault::NotFound,
                           "There is no place for " + what + ": neither " + variable + " nor HOME names a folder."});
}

Result<std::string, FileError> DesktopFiles::config_folder() const {
  return own_folder("XDG_CONFIG_HOME", "/.config", "settings");
}

Result<std::string, FileError> DesktopFiles::data_folder() const {
  return own_folder("XDG_DATA_HOME", "/.local/share", "what is kept of practice");
}

Result<std::string, FileError> DesktopFiles::documents_folder() const {
  const auto home = environment_variable("HOME");
  if (!home) {
    return failure(FileError{FileFault::NotFound, "HOME names no folder to put it in."});
  }
  struct stat found {};
  const std::string documents = *home + "/Documents";
  return ::stat(documents.c_str(), &found) == 0 && S_ISDIR(found.st_mode) ? documents : *home;
}

}  // namespace

std::optional<FileError> write_standard_output(const std::string& text) {
  if (write_all(STDOUT_FILENO, text)) return std::nullopt;
  return FileError{FileFault::NotWritable, "Standard output cannot be written: " + reason_of(errno) + "."};
}

std::unique_ptr<Files> desktop_files() { return std::make_unique<DesktopFiles>(); }

}  // namespace fw::platform
