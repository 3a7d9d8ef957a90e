#include "state/progress_keeper.hpp"

#include <utility>

#include "platform/clock.hpp"
#include "practice/progress_text.hpp"

namespace fw::state {
namespace {
constexpr const char* data_file = "/progress.json";
constexpr const char* table_file = "/foldwright-practice.csv";
constexpr const char* not_yet =
    " Your answers stay in this window until the file can be written. Make room on the disk or unlock the folder, and "
    "keep going.";
}  // namespace

ProgressKeeper::ProgressKeeper(platform::Files& files) : files_(files) {
  const auto folder = files_.data_folder();
  if (folder) {
    folder_ = folder.value();
    kept_ = on_disk().value_or(practice::Progress{});
    progress_ = kept_;
  } else {
    tell(folder.error().message + " Answers from this session are not saved.");
  }
}

void ProgressKeeper::tell(std::string trouble) {
  if (trouble != trouble_) {
    messages_.push_back(trouble);
    trouble_ = std::move(trouble);
  }
}

std::optional<practice::Progress> ProgressKeeper::on_disk() {
  const std::string path = folder_ + data_file;
  if (!files_.exists(path)) {
    return practice::Progress{};
  }
  const auto text = files_.read(path, practice::progress_byte_limit);
  auto found = practice::read_progress(text ? text.value() : std::string());
  if (text && found) {
    return std::move(found).value();
  }
  const std::string reason = text ? said(found.error()) : text.error().message;
  const auto moved = files_.move_aside(path);
  if (!moved) {
    tell(reason + " " + moved.error().message + " Answers from this session are not saved.");
    return std::nullopt;
  }
  messages_.push_back(reason + " It was set aside as " + moved.value() + ".");
  return kept_;
}

void ProgressKeeper::record(const std::vector<practice::Attempt>& attempts, int day) {
  if (attempts.empty()) {
    return;
  }
  for (const practice::Attempt& attempt : attempts) {
    waiting_.push_back({attempt, day});
    progress_ = practice::recorded(std::move(progress_), attempt, day);
  }
  if (!folder_.empty()) {
    keep_waiting();
  }
}

void ProgressKeeper::keep_waiting() {
  const auto lock = files_.lock_folder(folder_);
  if (!lock) {
    tell(lock.error().message + not_yet);
    return;
  }
  std::optional<practice::Progress> kept = on_disk();
  if (!kept) {
    return;
  }
  for (const Given& given : waiting_) {
    kept = practice::recorded(std::move(*kept), given.attempt, given.day);
  }
  if (const auto error = files_.write_atomically(folder_ + data_file, practice::progress_text(*kept))) {
    tell(error->message + not_yet);
    return;
  }
  kept_ = std::move(*kept);
  progress_ = kept_;
  waiting_.clear();
  trouble_.clear();
}

std::string ProgressKeeper::export_table() {
  const auto folder = files_.documents_folder();
  if (!folder) {
    return "There is no folder for the table: " + folder.error().message;
  }
  const std::string path = folder.value() + table_file;
  const auto error = files_.write_atomically(path, practice::csv_text(progress_, platform::date_text));
  return error ? error->message : "The table is in " + path;
}

std::string ProgressKeeper::erase() {
  const auto lock = folder_.empty() ? Result<std::unique_ptr<platform::FolderLock>, platform::FileError>(nullptr)
                                    : files_.lock_folder(folder_);
  if (!lock) {
    return lock.error().message;
  }
  if (const auto error = folder_.empty() ? std::nullopt : files_.erase(folder_ + data_file)) {
    return error->message;
  }
  const auto documents = files_.documents_folder();
  if (const auto error = documents ? files_.erase(documents.value() + table_file) : std::nullopt) {
    return error->message;
  }
  kept_ = {};
  progress_ = {};
  waiting_.clear();
  trouble_.clear();
  return "Everything is erased.";
}

std::vector<std::string> ProgressKeeper::take_messages() { return std::exchange(messages_, {}); }

}  // namespace fw::state
