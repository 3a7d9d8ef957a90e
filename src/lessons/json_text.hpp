#pragma once

#include <string>
#include <vector>

#include "lessons/task.hpp"
#include "solids/description.hpp"

// Values as JSON text, for those who write parts of a lesson.
namespace fw::lessons {

[[nodiscard]] std::string quote(const std::string& text);
/// "[a, b]", "{a, b}" of texts that are JSON already.
[[nodiscard]] std::string in_line(const std::vector<std::string>& items, char open, char close);
[[nodiscard]] std::string object_in_line(const Members& members);
/// One member a line; `indent` is the column of the closing brace.
[[nodiscard]] std::string object_in_lines(const Members& members, std::size_t indent);
/// As a number where JSON has a number of that form, so that nothing of what was written is lost.
[[nodiscard]] std::string coordinate_text(const exact::Written& coordinate);

}  // namespace fw::lessons
