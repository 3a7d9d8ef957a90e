#include "tasks/generate/open_things.hpp"

#include "lessons/open_faces.hpp"

namespace fw::tasks {

std::vector<OpenWay> open_ways(const Subject& subject, int level) {
  const Thing& thing = *subject.thing;
  const bool is_flat_sided = subject.form->shape == Shape::Box || subject.form->shape == Shape::Block;
  if (thing.shell.empty() || is_flat_sided != (level < 3)) {
    return {};
  }
  std::vector<OpenWay> ways;
  if (level != 2 && thing.has(HasOpenTop) && !subject.form->lies) {
    ways.push_back({{"top"}, "top"});
  }
  if (level == 1 && thing.has(HasBareBottom)) {
    ways.push_back({{"bottom"}, "bottom", true});
  }
  if (level != 1 && thing.has(HasOpenEnds)) {
    ways.push_back(subject.form->lies ? OpenWay{{"bases"}, "front or back"}
                   : level == 3       ? OpenWay{{"bases"}, "top or bottom"}
                                      : OpenWay{{"top", "bottom"}, "top or bottom"});
  }
  return ways;
}

bool leave_open(lessons::Problem& problem, const OpenWay& way) {
  for (const std::string& name : way.faces) {
    const auto faces = lessons::faces_named(problem.solid, name);
    if (!faces) {
      return false;
    }
    problem.open.push_back({name, *faces});
  }
  return true;
}

}  // namespace fw::tasks
