#pragma once

#include <memory>
#include <optional>
#include <string>
#include <vector>

#include "algebra/class_notation.hpp"
#include "nets/folding.hpp"
#include "practice/progress.hpp"
#include "state/print_page.hpp"
#include "state/state.hpp"
#include "theme/theme.hpp"

namespace fw::state {

using theme::ThemeName;

enum class SidePanel { Faces, Measures, Solids, Display };
enum class WorkPanel { Steps, Ask, Options };
enum class Motion { Still, Opening, Closing };

/// A refused change: why, and the value that could be taken instead.
struct Notice {
  std::string text;
  std::string remedy_text = {};                                 ///< "3.1 cm"; empty: there is none to offer
  std::string remedy_field = {};                                ///< the measure that it would set
  std::optional<solids::Description> asked_for = std::nullopt;  ///< the solid that it would set it on
  friend bool operator==(const Notice&, const Notice&) = default;
};

/// A number that can be pointed at: which one, counted from 0 among those of a line that have a source.
struct NumberPlace {
  std::size_t step = 0;  ///< or a line, on the board
  std::size_t number = 0;
  bool on_board = false;
  friend bool operator==(const NumberPlace&, const NumberPlace&) = default;
};

/// How fast a net unfolds and folds up by itself.
enum class PlaySpeed { Slow, Usual, Fast };

/// What is kept from one run to the next.
struct Settings {
  ThemeName theme = ThemeName::Paper;
  bool reduced_motion = false;
  bool letter_keys = true;  ///< single letters work as shortcuts
  bool full_screen = false;
  PlaySpeed speed = PlaySpeed::Usual;
  std::optional<algebra::ClassNotation> notation = {};  ///< of the lines on the board; none: as each lesson says
  std::string print_folder = {};                        ///< where pages were last saved; empty: nowhere yet
  friend bool operator==(const Settings&, const Settings&) = default;
};

/// What one press of a key or a button does to the camera.
inline constexpr double turn_step_rad = 0.2617993877991494;  ///< 15 degrees
inline constexpr double zoom_step = 1.15;

/// What is kept of practice, and the page that shows it.
struct ProgressPage {
  std::shared_ptr<const practice::Progress> kept;  ///< none: nothing yet
  std::vector<practice::SkillSummary> rows;        ///< what is kept, as of today
  int today = 0;                                   ///< in days since January 1, 1970
  bool shown = false;
  bool asks = false;    ///< whether really all is to be erased
  std::string message;  ///< what became of the last export or erasing
  friend bool operator==(const ProgressPage&, const ProgressPage&) = default;
};

/// What a person has to know of the files of the program, in sentences.
struct FileNews {
  std::string unsaved;         ///< what is not being saved and what to do about it, as long as it is so
  bool loses_answers = false;  ///< answers are among what is not being saved
  std::string note;            ///< of files set aside, or problems left out; stays until it is closed
  friend bool operator==(const FileNews&, const FileNews&) = default;
};

/// How the state is looked at; undo leaves it alone.
struct View {
  Settings settings;
  double fold = 0;  ///< 0 closed solid, 1 flat net
  nets::FoldOrder order = nets::FoldOrder::Together;
  Motion motion = Motion::Still;
  double turn = 0;  ///< how far the camera was turned, tilted and brought near by hand
  double tilt = 0;
  double nearness = 1;
  std::optional<FaceId> hovered;
  std::optional<FaceId> dragged;  ///< a face on its way to another hinge
  SidePanel panel = SidePanel::Faces;
  WorkPanel work_panel = WorkPanel::Steps;
  std::optional<Detail> detail;        ///< none: the board for a class that is presented to, every step else
  std::optional<NumberPlace> pointed;  ///< where does this number come from?
  bool rail_open = true;
  bool presenting = false;      ///< rail and editors hidden
  bool hidden_numbers = false;  ///< numbers of faces out of sight are shown too
  bool blank = false;           ///< screen blanked
  bool prompt_shown = true;
  bool keys_shown = false;  ///< the page of keys
  ProgressPage progress;
  PrintPage print;
  FileNews file_news;
  std::optional<Notice> notice;
  friend bool operator==(const View&, const View&) = default;
};

}  // namespace fw::state
