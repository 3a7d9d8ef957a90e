#pragma once

#include <optional>
#include <string>
#include <vector>

#include "platform/files.hpp"
#include "practice/progress.hpp"

namespace fw::state {

/// Keeps the progress in the user's data folder: every answer is on the disk before its reply is shown. What is on the
/// disk is the truth: answers are added to it under a lock, so that two windows lose nothing of each other's.
class ProgressKeeper {
 public:
  /// Reads what was kept. A damaged file is set aside; where that fails nothing is written over it.
  explicit ProgressKeeper(platform::Files& files);

  /// Counts answers given on this day, and writes.
  void record(const std::vector<practice::Attempt>& attempts, int day);
  /// Writes the table as foldwright-practice.csv where a person finds it (Files::documents_folder). Returns a sentence:
  /// where it is, or why not.
  [[nodiscard]] std::string export_table();
  /// Erases what is kept, the exported table and all that was set aside. Returns a sentence: done, or why not.
  [[nodiscard]] std::string erase();

  /// What has to be known as long as answers of this run are not kept, and what to do about it; empty while all is
  /// kept.
  [[nodiscard]] const std::string& trouble() const { return trouble_; }
  [[nodiscard]] const practice::Progress& progress() const { return progress_; }
  /// What the user should know about files, in sentences; each is handed out once.
  [[nodiscard]] std::vector<std::string> take_messages();

 private:
  struct Given {
    practice::Attempt attempt;
    int day = 0;
  };
  /// What lies on the disk. A damaged file is set aside, and what was last read takes its place. Nothing, with trouble,
  /// where the file must not be written over.
  [[nodiscard]] std::optional<practice::Progress> on_disk();
  void keep_waiting();
  void tell(std::string trouble);  ///< once

  platform::Files& files_;
  std::string folder_;           ///< empty: there is none, and nothing is kept
  practice::Progress kept_;      ///< as it was last seen on the disk
  practice::Progress progress_;  ///< the same with the answers that wait
  std::vector<Given> waiting_;   ///< answers that are not on the disk yet
  std::string trouble_;
  std::vector<std::string> messages_;
};

}  // namespace fw::state
