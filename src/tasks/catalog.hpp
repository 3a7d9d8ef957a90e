#pragma once

#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "base/result.hpp"
#include "lessons/read_lesson.hpp"
#include "tasks/row.hpp"

namespace fw::tasks {

/// All types of questions, in the order in which the keys of a lesson are told.
[[nodiscard]] const std::vector<Row>& rows();
/// All types of made-up problems, in the order of their numbers.
[[nodiscard]] const std::vector<MadeUp>& made_up();

/// A measure of the solid, a part of it that is counted, its name: by the entry of "find". Other names are measures
/// that no solid has.
[[nodiscard]] Task named(const std::string& find);
/// Whether the question can be asked of a solid: the least surface, for one, is asked of a box of whole numbers alone.
[[nodiscard]] bool goes_with(const Task& task, const solids::Solid& solid);
/// The same problem with this alone asked, where it is not among what is asked already; the problem for an empty key.
[[nodiscard]] Problem asking(Problem problem, const std::string& key);

/// Reads a lesson file of version 1, with every type of question.
/// Errors: every fault of the text in one pass, in the order of the text; nothing is half loaded.
[[nodiscard]] Result<lessons::Lesson, std::vector<lessons::Finding>> read_lesson(std::string_view text);
/// The same with everything that can be said of the text: errors as above, and the remarks on figures that exist.
[[nodiscard]] lessons::Reading reading_of(std::string_view text);
[[nodiscard]] std::vector<lessons::Finding> findings_of(std::string_view text);

}  // namespace fw::tasks
