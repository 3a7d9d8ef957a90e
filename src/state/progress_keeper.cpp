#include "state/progress_keeper.hpp"

#include <utility>

#include "platform/clock.hpp"
#include "practice/progress_text.hpp"

namespace fw::state {
namespace {
constexpr const char* data_file = "/progress.json";
constexpr const char* table_file = "/progress.csv";
}  // namespace

ProgressKeeper::ProgressKeeper(platform::Files& files) : files_(files) {
  const auto folder = files_.data_folder();
  if (folder) {
    folder_ = folder.value();
    load();
  } else {
    messages_.push_back(folder.error().message);
  }
}

void ProgressKeeper::load() {
  const std::string path = folder_ + data_file;
  if (!files_.exists(path)) {
    return;
  }
  const auto text = files_.read(path, practice::progress_byte_limit);
  auto progress = practice::read_progress(text ? text.value() : std::string());
  if (text && progress) {
    progress_ = std::move(progress).value();
    return;
  }
  const auto moved = files_.move_aside(path);
  may_write_ = moved.has_value();
  messages_.push_back((text ? progress.error() : text.error().message) +
                      (moved ? " It was set aside as " + moved.value() + "."
                             : " " + moved.error().message + " Answers of this run are not kept."));
}

void ProgressKeeper::record(const std::vector<practice::Attempt>& attempts, int day) {
  if (attempts.empty()) {
    return;
  }
  for (const practice::Attempt& attempt : attempts) {
    progress_ = practice::recorded(std::move(progress_), attempt, day);
  }
  if (folder_.empty() || !may_write_) {
    return;
  }
  // Tried again at the next answer, which holds this one too; said once.
  const auto error = files_.write_atomically(folder_ + data_file, practice::progress_text(progress_));
  if (error && !std::exchange(said_, true)) {
    messages_.push_back(error->message);
  }
}

std::string ProgressKeeper::export_table() {
  if (folder_.empty()) {
    return "There is no folder for the table.";
  }
  const std::string path = folder_ + table_file;
  const auto error = files_.write_atomically(path, practice::csv_text(progress_, platform::date_text));
  return error ? error->message : "The table is in " + path;
}

std::string ProgressKeeper::erase() {
  for (const char* file : {data_file, table_file}) {
    const auto error = folder_.empty() ? std::nullopt : files_.erase(folder_ + file);
    if (error) {
      return error->message;
    }
  }
  progress_ = {};
  may_write_ = true;
  return "All is erased.";
}

std::vector<std::string> ProgressKeeper::take_messages() { return std::exchange(messages_, {}); }

}  // namespace fw::state
