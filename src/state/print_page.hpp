#pragma once

#include <cstddef>
#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "paper/sheets/print.hpp"
#include "state/state.hpp"

namespace fw::state {

/// What is to be printed of a lesson, as it is chosen in the window.
struct PrintChoices {
  std::string sheet = "handout";  ///< key of its kind
  std::string paper = {};         ///< key of its size; empty: the usual one for the lesson
  bool only_this = false;         ///< the problem in view alone
  bool is_large = false;
  bool has_name_line = true;
  std::size_t versions = 2;
  std::uint64_t seed = 1;
  paper::Gaps gaps = paper::Gaps::All;
  paper::Steps steps = paper::Steps::Board;
  paper::WorkSpace work = paper::WorkSpace::Ruled;
  bool is_blank = false;                                  ///< nets without letters, names and areas
  std::optional<paper::PaperScale> scale = std::nullopt;  ///< of nets; nothing: the largest that fits on a page
  friend bool operator==(const PrintChoices&, const PrintChoices&) = default;
};
inline constexpr std::size_t most_versions = 8;

/// The page on which a lesson is printed: what was chosen, the pages as they will be, and where they go.
struct PrintPage {
  bool shown = false;
  PrintChoices choices;
  std::string folder;            ///< where the next file goes; from outside
  std::string place;             ///< as it was typed; empty: a name that goes by the lesson and what is printed
  std::size_t page = 0;          ///< that is looked at
  bool is_stopped = false;       ///< by the user, until something else is chosen
  std::string message;           ///< what became of the last saving
  bool is_refused = false;       ///< nothing was saved
  std::size_t done = 0, of = 0;  ///< steps of making the pages
  std::shared_ptr<const paper::Printed> printed = nullptr;  ///< none: they are still being made
  bool can_share = false;  ///< a page for browsers is there, which the lesson can go into; from outside
  friend bool operator==(const PrintPage&, const PrintPage&) = default;

  [[nodiscard]] bool is_making() const { return shown && !is_stopped && printed == nullptr && of > 0; }
};

/// What was chosen, as options of a sheet.
[[nodiscard]] paper::SheetOptions sheet_options(const PrintChoices& choices, const lessons::Lesson& lesson);
/// The lesson with the problems that are printed.
[[nodiscard]] std::shared_ptr<const lessons::Lesson> printed_lesson(const State& state, const PrintChoices& choices);
/// The file that the pages will be saved in: its whole path, as far as it is known.
[[nodiscard]] std::string print_path(const PrintPage& page, const lessons::Lesson& lesson);
/// The file that the page for browsers will be saved in, in the same folder.
[[nodiscard]] std::string page_path(const PrintPage& page, const lessons::Lesson& lesson);

}  // namespace fw::state
