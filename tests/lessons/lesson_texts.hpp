#pragma once

#include <string>
#include <vector>

#include "tasks/catalog.hpp"

namespace fw::lessons {

using tasks::findings_of;
using tasks::read_lesson;

/// A lesson of one problem with this solid, all on one line; the solid starts at column 63.
inline std::string lesson_with_solid(const std::string& solid, const std::string& rest = "") {
  return R"({"lesson": 1, "title": "T", "problems": [{"id": "p", "solid": )" + solid + rest + "}]}";
}

/// A lesson whose one problem holds a solid that exists and these further members (", \"find\": ...").
inline std::string lesson_with(const std::string& members) {
  return lesson_with_solid(R"({"kind": "rectangular prism", "length": "9 cm", "width": "7 cm", "height": "5 cm"})",
                           members);
}

/// Every finding as the program prints it.
inline std::vector<std::string> told(const std::vector<Finding>& findings) {
  std::vector<std::string> lines;
  for (const Finding& finding : findings) {
    lines.push_back(text(finding, "a.json"));
  }
  return lines;
}

/// The errors of a lesson text; none for a good one.
inline std::vector<std::string> errors_of(const std::string& text) {
  const auto lesson = read_lesson(text);
  return lesson ? std::vector<std::string>{} : told(lesson.error());
}

}  // namespace fw::lessons
