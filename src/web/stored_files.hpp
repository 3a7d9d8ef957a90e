#pragma once

#include "platform/files.hpp"

namespace fw::web {

/// Files in the browser's own storage, and in its folder of downloads.
///
/// Why localStorage: a text is there, whole, when the call returns, or the old one is and we are told, as with a file
/// that is renamed over another. IndexedDB answers later, when the reply to an answer was long shown. What we keep is
/// far smaller than what it holds (5 MB).
class StoredFiles final : public platform::Files {
 public:
  using platform::Files::read;
  [[nodiscard]] Result<std::string, platform::FileError> read(const std::string& path,
                                                              std::size_t byte_limit) const override;
  /// What lies in documents_folder() becomes a download.
  [[nodiscard]] std::optional<platform::FileError> write_atomically(const std::string& path,
                                                                    const std::string& text) override;
  /// Nobody has to be kept out: what a page does between two of its frames, no other page of it interrupts.
  [[nodiscard]] Result<std::unique_ptr<platform::FolderLock>, platform::FileError> lock_folder(
      const std::string& folder) override;
  [[nodiscard]] bool exists(const std::string& path) const override;
  /// Of a download nothing is known: the browser gives it another name where there is one already.
  [[nodiscard]] platform::PathKind kind(const std::string& path) const override;
  [[nodiscard]] Result<std::string, platform::FileError> move_aside(const std::string& path) override;
  [[nodiscard]] std::optional<platform::FileError> erase(const std::string& path) override;
  [[nodiscard]] Result<std::string, platform::FileError> config_folder() const override;
  [[nodiscard]] Result<std::string, platform::FileError> data_folder() const override;
  [[nodiscard]] Result<std::string, platform::FileError> documents_folder() const override;
};

}  // namespace fw::web
