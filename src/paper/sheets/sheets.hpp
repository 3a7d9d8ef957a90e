#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "lessons/lesson.hpp"
#include "paper/cutouts/scale.hpp"
#include "paper/packet.hpp"

// What can be printed of a lesson, each as pages. All of it comes from the problems, solutions and mistakes that the
// window shows.
namespace fw::paper {

/// The paper below a problem: to be written on.
enum class WorkSpace { Ruled, Grid, Blank };
/// What of notes is left out.
enum class Gaps { All, Half, None };
/// How much of a solution is printed.
enum class Steps { None, Board, Every };

struct SheetOptions {
  PageStyle style;
  std::string version = {};  ///< "A"; empty where there is only one
  std::uint64_t order = 1;   ///< of the options of a question, a number a version
  std::size_t per_page = 0;  ///< problems on a page; 0: as many as there is room for
  WorkSpace work = WorkSpace::Ruled;
  bool gives_units = false;  ///< the answer line has its unit already
  bool has_name_line = true;
  Gaps gaps = Gaps::All;
  Steps steps = Steps::Board;

  // Of nets to cut out.
  bool has_letters = true;  ///< false: letters, name and areas are for the class to fill in
  bool has_lengths = true;
  bool only_usual_net = false;
  std::optional<PaperScale> scale = std::nullopt;  ///< nothing: the largest that fits on a page
};

/// Numbered problems with their figures and space to work; for a test, with its version.
[[nodiscard]] Printed handout(const Fonts& fonts, const lessons::Lesson& lesson, const SheetOptions& options);
/// Worked solutions with gaps.
[[nodiscard]] Printed notes(const Fonts& fonts, const lessons::Lesson& lesson, const SheetOptions& options);
/// Answers; with steps and their points, what else counts as right, and what wrong numbers look like.
[[nodiscard]] Printed key(const Fonts& fonts, const lessons::Lesson& lesson, const SheetOptions& options);
/// Nets to cut out, with tabs, to scale, one on a page or tiled over several.
[[nodiscard]] Printed nets(const Fonts& fonts, const lessons::Lesson& lesson, const SheetOptions& options);

}  // namespace fw::paper
