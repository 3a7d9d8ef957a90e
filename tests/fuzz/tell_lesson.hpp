#pragma once

#include <string>
#include <string_view>

#include "base/ensure.hpp"
#include "geometry/polygon.hpp"
#include "practice/task_type.hpp"
#include "reasoning/explanation.hpp"
#include "solids/body/body_nets.hpp"
#include "tasks/catalog.hpp"
#include "tasks/nets/net_task.hpp"
#include "tasks/word_problems/word_problem.hpp"

// What a fuzz target and a property say of a lesson: all that the verbs check, measure, explain and nets do.
namespace fw::test {

/// Everything that is told of a problem, as text; how long it is, is of no interest.
inline std::string told(const lessons::Problem& problem) {
  constexpr int places = 2;
  constexpr std::size_t most_nets = 12;
  const solids::Solid& solid = problem.solid;
  std::string text = solid.name() + units::text(solid.surface_area(), places) + units::text(solid.volume(), places);
  for (std::size_t i = 0; i < solid.marks().size(); ++i) {
    text += solid.label(solids::MarkId::at(i));
  }
  for (const solids::Face& face : solid.faces()) {
    text += units::text(face.area, places);
    const geometry::Vec2 place = geometry::label_point(solid.body().flat(face.id).outline);
    ensure(place.x == place.x && place.y == place.y, "a label has a place");
  }
  (void)tasks::supply_work(problem, places);
  if (tasks::net_asked(problem) != nullptr) {
    text += reasoning::steps_text(tasks::net_steps(problem)) + said(tasks::net_answer(problem));
  }
  for (const reasoning::Route route : {reasoning::Route::Formula, reasoning::Route::FaceByFace}) {
    reasoning::SolutionOptions options;
    options.route = route;
    const auto all = practice::explained(problem, options);
    ensure(all || !all.error().empty(), "what is not explained has a reason");
    for (const reasoning::Explanation& one : all ? *all : std::vector<reasoning::Explanation>{}) {
      text += reasoning::steps_text(reasoning::all_steps(one)) + said(one.answer);
    }
  }
  if (solids::can_list_nets(solid.body())) {
    const auto nets = solids::distinct_nets(solid.body(), solid.classic_net().root(), most_nets);
    ensure(!nets.nets.empty(), "a solid has a net");
    (void)solids::unfolded(solid.body(), nets.nets.back());
  }
  return text;
}

/// Reads a text as a lesson and tells everything of it; false where it is refused, which needs a reason.
inline bool tell_lesson(std::string_view text) {
  const lessons::Reading reading = tasks::reading_of(text);
  if (!reading.lesson) {
    ensure(!reading.findings.empty() && !reading.findings.front().message.empty(), "what is refused has a reason");
    return false;
  }
  for (const lessons::Problem& problem : reading.lesson->problems) {
    ensure(!told(problem).empty(), "there is something to tell of a problem");
  }
  return true;
}

}  // namespace fw::test
