#pragma once

#include <optional>
#include <string>

#include "paper/sheets/print.hpp"
#include "platform/files.hpp"
#include "state/apply.hpp"
#include "state/command.hpp"

namespace fw::state {

/// Pages that are being made, and what they hang on.
struct PrintJob {
  PrintChoices choices;
  std::shared_ptr<const lessons::Lesson> whole;  ///< the lesson that is open
  std::size_t problem = 0;
  std::shared_ptr<const lessons::Lesson> lesson;  ///< that is printed
  paper::SheetWork work;
};

/// Makes the pages that the print page shows, a few steps at a time, and saves them. Without a window.
class Printer {
 public:
  explicit Printer(platform::Files& files) : files_(files) {}

  /// Begins anew when other pages are wanted, and leaves off when none are. Returns what is to be shown of it, if that
  /// is something else.
  [[nodiscard]] std::optional<TakePrinted> follow(const Model& model);
  /// Goes on for about so many seconds. Returns how far it is; nothing where there is nothing to do.
  [[nodiscard]] std::optional<TakePrinted> go_on(double seconds);
  /// Saves the pages in the file that the page names, whole or not at all.
  [[nodiscard]] TakeSaved save(const Model& model) const;

 private:
  [[nodiscard]] bool is_of(const Model& model) const;
  [[nodiscard]] std::optional<std::string> refusal(const std::string& path) const;

  platform::Files& files_;
  std::optional<PrintJob> job_;
};

}  // namespace fw::state
