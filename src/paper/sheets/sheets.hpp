#pragma once

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

#include "lessons/lesson.hpp"
#include "paper/cutouts/scale.hpp"
#include "paper/packet.hpp"
#include "paper/sheets/sheet_work.hpp"

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

  // Of a test.
  std::size_t versions = 1;
  std::uint64_t seed = 1;

  // Of nets to cut out.
  bool has_letters = true;  ///< false: letters, name and areas are for the class to fill in
  bool has_lengths = true;
  bool only_usual_net = false;
  std::optional<PaperScale> scale = std::nullopt;  ///< nothing: the largest that fits on a page
};

/// Numbered problems with their figures and space to work; for a test, with its version.
void handout(SheetWork& work, const Fonts& fonts, const lessons::Lesson& lesson, const SheetOptions& options);
/// Worked solutions with gaps.
void notes(SheetWork& work, const Fonts& fonts, const lessons::Lesson& lesson, const SheetOptions& options);
/// Answers; with steps and their points, what else counts as right, and what wrong numbers look like.
void key(SheetWork& work, const Fonts& fonts, const lessons::Lesson& lesson, const SheetOptions& options);
/// Nets to cut out, with tabs, to scale, one on a page or tiled over several.
void nets(SheetWork& work, const Fonts& fonts, const lessons::Lesson& lesson, const SheetOptions& options);

/// The lesson as a test, in parallel versions, with the key of each and a table of all answers.
void test(SheetWork& work, const Fonts& fonts, const lessons::Lesson& lesson, const SheetOptions& options);
/// Exit slips, two on a page with a line to cut along: an area, a volume, and which is which.
void slips(SheetWork& work, const Fonts& fonts, const lessons::Lesson& lesson, const SheetOptions& options);
/// Cards to cut apart and match: solid, net, name, numbers. The last page is their key.
void cards(SheetWork& work, const Fonts& fonts, const lessons::Lesson& lesson, const SheetOptions& options);
/// The words for the lesson's solids, each with a picture, a sentence and a line for another language.
void solid_words(SheetWork& work, const Fonts& fonts, const lessons::Lesson& lesson, const SheetOptions& options);
/// The mistakes that the lesson's problems show, with boxes to mark and what to ask about each.
void tally(SheetWork& work, const Fonts& fonts, const lessons::Lesson& lesson, const SheetOptions& options);
/// For a class without its teacher: what to say and when, the student pages, the key.
void pack(SheetWork& work, const Fonts& fonts, const lessons::Lesson& lesson, const SheetOptions& options);

}  // namespace fw::paper
