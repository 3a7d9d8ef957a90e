#pragma once

#include <optional>
#include <string>
#include <vector>

#include "app/apply.hpp"
#include "reasoning/tasks/task.hpp"
#include "reasoning/unknown.hpp"
#include "solids/solid.hpp"

namespace fw::app {

/// Steps that belong together: one way to the measure, or the count of a word problem.
struct WorkPart {
  std::string title;  ///< "by formula"; empty where there is only one
  std::vector<reasoning::Step> steps;
  std::vector<reasoning::Source> sources;
  algebra::Bindings values;  ///< of the numbers in the equations of its steps
  std::size_t first = 0;     ///< of its steps among all steps
};

/// A problem worked out, as the mode "Work it out" shows it. Follows from the desk's solid and from what is asked.
struct Worked {
  std::string asked;  ///< the measure
  std::string title;  ///< "slant height"
  std::string letter;
  std::optional<solids::Solid> solid;  ///< with the measure as its unknown; none: it cannot be asked for
  std::vector<WorkPart> parts;
  std::size_t count = 0;                      ///< of all steps
  std::string comparison;                     ///< of two ways; empty for one
  std::vector<std::string> notes;             ///< to the answer
  std::string missing;                        ///< why there are no steps; empty: there are
  std::vector<reasoning::Askable> offered;    ///< what could be given instead
  std::vector<reasoning::Askable> askable;    ///< every measure that can be asked for
  std::vector<reasoning::Askable> by_lesson;  ///< those that the lesson asks for
  bool has_two_routes = false;
  std::optional<reasoning::SupplyWork> supply;  ///< of a word problem
  std::optional<reasoning::TaskWork> task;      ///< what is asked in another way than by a measure
  std::vector<FaceId> open;                     ///< faces that do not count

  [[nodiscard]] const WorkPart& part_of(std::size_t step) const;
  /// Requires: step < count.
  [[nodiscard]] const reasoning::Step& step(std::size_t index) const;
};
[[nodiscard]] Worked worked_for(const State& state);

/// Keeps the last one until another thing is asked, or another solid stands there.
class WorkedMemo {
 public:
  [[nodiscard]] const Worked& of(const State& state);

 private:
  struct Key {
    std::shared_ptr<const lessons::Lesson> lesson;
    std::size_t problem = 0;
    std::shared_ptr<const QuizSet> set;  ///< none: outside the quiz
    std::size_t item = 0;
    solids::Solid solid;
    std::string asked;
    std::optional<std::string> instead;
    RouteChoice route = RouteChoice::Formula;
    friend bool operator==(const Key&, const Key&) = default;
  };
  std::optional<Key> key_;
  Worked worked_;
};

/// Whether the step stands there as a blank.
[[nodiscard]] bool is_blank(const Work& work, const Worked& worked, std::size_t step);
/// What was last typed into the blank of the step, or that it was shown.
[[nodiscard]] const FilledBlank* filled(const Work& work, std::size_t step);
/// A step as it is shown: with blanks in the place of what it asks for, and of numbers of earlier steps that are blanks
/// yet; its reason without them.
struct ShownStep {
  std::optional<algebra::NotationLine> line;
  std::string reason;
  bool has_blank = false;
};
[[nodiscard]] ShownStep shown_step(const Work& work, const Worked& worked, std::size_t step);
/// The sources of the numbers in a line, from left to right: rows of the part's sources.
[[nodiscard]] std::vector<std::size_t> sources_in(const algebra::NotationLine& line);
/// What a pointed number comes from.
[[nodiscard]] const reasoning::Source* pointed_source(const Model& model, const Worked& worked);

/// What of the solid is told apart on the bench.
struct Lit {
  std::vector<FaceId> faces;
  std::vector<solids::MarkId> marks;
  std::vector<FaceId> open;         ///< drawn as outlines
  std::optional<std::size_t> step;  ///< that the pointed number was worked out in
};
[[nodiscard]] Lit lit(const Model& model, const Worked& worked);

}  // namespace fw::app
