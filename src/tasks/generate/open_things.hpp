#pragma once

#include <string>
#include <vector>

#include "lessons/lesson.hpp"
#include "tasks/generate/draw.hpp"

// Things without some of their faces, to make problems of; private to the room.
namespace fw::tasks {

struct OpenWay {
  std::vector<std::string> faces;  ///< as a lesson names them: "top"
  std::string told;                ///< "top or bottom"
  bool is_bare = false;            ///< the faces are there, and get nothing
};
/// In which ways faces of the thing are left out. Level 1: one face of a box. Level 2: two faces of a box. Level 3:
/// faces of a prism whose base is not a rectangle. Empty if the thing has no such faces.
[[nodiscard]] std::vector<OpenWay> open_ways(const Subject& subject, int level);
/// Leaves these faces of the problem open; false where its solid has not got them.
[[nodiscard]] bool leave_open(lessons::Problem& problem, const OpenWay& way);

}  // namespace fw::tasks
