#pragma once

#include <functional>
#include <string>
#include <vector>

#include "platform/clock.hpp"
#include "platform/files.hpp"
#include "state/derived.hpp"
#include "state/printer.hpp"
#include "state/progress_keeper.hpp"

namespace fw::state {

/// The model of a running program, its commands and their effects on files. Without a window.
class Session {
 public:
  /// Opens the lesson where it was left, with the settings of the last run and what is kept of practice. A damaged file
  /// is set aside; messages() says so. `today`: the day, in days since January 1, 1970.
  Session(platform::Files& files, lessons::Lesson lesson, std::string path, int (*today)() = platform::local_day);

  Session(const Session&) = delete;
  Session& operator=(const Session&) = delete;
  ~Session();

  /// From now on what is to be kept is written before a broken invariant ends the program. One session at a time.
  void save_at_last_words();
  /// Applies the commands in order; without any, nothing is copied. Returns whether anything changed that is shown.
  bool dispatch(const Commands& commands);
  /// Keeps answers that were just given; they are on the disk when it returns.
  void record(const std::vector<practice::Attempt>& attempts);
  /// Called with true or false when full screen is entered or left.
  void on_full_screen(std::function<void(bool)> hook) { full_screen_ = std::move(hook); }
  /// From now on the lesson can be saved as a page for browsers. `page_file`: that page without a lesson.
  void shares(std::string page_file);
  /// Writes what is to be kept, if it changed since the last time.
  void save();

  [[nodiscard]] const Model& model() const { return model_; }
  [[nodiscard]] const Derived& derived() { return memo_.of(model_.state); }
  /// What the user should know about files, in sentences; for standard error. The window shows View::file_news.
  [[nodiscard]] const std::vector<std::string>& messages() const { return messages_; }

 private:
  void load(const std::string& folder, State fresh);
  void take(const Command& command);
  void carry_out(Effect effect);
  void record_from(std::size_t first);  ///< of the quiz's attempts
  void show_progress(std::string message);
  void tell_file_news();
  void find_print_folder();
  void go_on_printing(bool time_passes);
  void cannot_save(const std::string& reason);
  void write(const std::string& name, const std::string& text);
  void save_place();
  void set_aside(const std::string& path, const std::string& reason);

  platform::Files& files_;
  int (*today_)();
  ProgressKeeper progress_;
  Printer printer_;
  Model model_;
  bool changed_ = false;  ///< what is shown, since dispatch began
  DerivedMemo memo_;
  std::string page_file_;  ///< empty: there is none
  std::string folder_;     ///< empty: there is none, and nothing is kept
  bool settings_changed_ = false;
  bool place_changed_ = false;
  std::function<void(bool)> full_screen_;
  std::vector<std::string> messages_;
  std::string unsaved_;  ///< why the place and the settings are not saved; empty: they are
};

}  // namespace fw::state
