#pragma once

#include <string>
#include <vector>

#include "platform/files.hpp"
#include "practice/progress.hpp"

namespace fw::state {

/// Keeps the progress in the user's data folder: every answer is on the disk before the next one is asked for.
class ProgressKeeper {
 public:
  /// Reads what was kept. A damaged file is set aside; where that fails nothing is written over it.
  explicit ProgressKeeper(platform::Files& files);

  /// Counts answers given on this day, and writes.
  void record(const std::vector<practice::Attempt>& attempts, int day);
  /// Writes the table as progress.csv beside the data. Returns a sentence: where it is, or why not.
  [[nodiscard]] std::string export_table();
  /// Erases what is kept, the exported table and all that was set aside. Returns a sentence: done, or why not.
  [[nodiscard]] std::string erase();

  [[nodiscard]] const practice::Progress& progress() const { return progress_; }
  /// What the user should know about files, in sentences; each is handed out once.
  [[nodiscard]] std::vector<std::string> take_messages();

 private:
  void load();

  platform::Files& files_;
  std::string folder_;     ///< empty: there is none, and nothing is kept
  bool may_write_ = true;  ///< no: a damaged file could not be set aside
  bool said_ = false;      ///< that writing fails
  practice::Progress progress_;
  std::vector<std::string> messages_;
};

}  // namespace fw::state
