#pragma once

#include <string>
#include <vector>

#include "tasks/generate/made_up.hpp"

// Copies that make sense: scale models of large things, giant copies of small ones; private to the room.
namespace fw::tasks {

struct CopyPlan {
  enum class Sort {
    Real,   ///< a model is shown, and the copy is the thing itself
    Giant,  ///< the thing is shown, and the copy is larger
    Model   ///< the thing is shown, and the copy is a model of it
  };
  Sort sort = Sort::Giant;
  std::string factor;  ///< "4", "2.5", "1/2"
  Form form;           ///< of the solid that is shown
};
/// How the blueprint's thing can be copied: at level 3 also by factors that are not whole. Source of the largest giant,
/// 10 ft or 3 m, and the smallest edge of a model: common practice, no source.
[[nodiscard]] std::vector<CopyPlan> copy_plans(const Blueprint& blueprint);
/// "4 times as long", "half as long".
[[nodiscard]] std::string as_long(const std::string& factor);
/// The stories for this sort of copy.
struct CopyStories {
  Stories real, giant, model;
  [[nodiscard]] const Stories& of(CopyPlan::Sort sort) const {
    return sort == CopyPlan::Sort::Real ? real : sort == CopyPlan::Sort::Giant ? giant : model;
  }
};

}  // namespace fw::tasks
