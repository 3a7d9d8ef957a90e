#pragma once

#include <functional>
#include <optional>
#include <string>
#include <string_view>
#include <vector>

#include "base/result.hpp"
#include "paper/sheets/sheets.hpp"

namespace fw::paper {

/// What can be chosen of a sheet, beside its paper.
enum class SheetChoice {
  Versions,
  Gaps,
  Steps,
  Work,
  Cutouts,  ///< scale, and what stands on them
};

/// Something that can be printed of a lesson.
struct SheetKind {
  std::string key;    ///< "handout"
  std::string title;  ///< "handout"
  std::string says;   ///< in a line what it is
  SheetPlan plan;
  std::vector<SheetChoice> choices;  ///< that change it
  [[nodiscard]] bool has(SheetChoice choice) const;
};
/// All of them, in the order in which they are told.
[[nodiscard]] const std::vector<SheetKind>& sheet_kinds();
[[nodiscard]] const SheetKind* find_sheet(std::string_view key);

/// The paper for a lesson that names none: letter where its first problem is in inches or feet, else A4.
[[nodiscard]] const PaperSize& usual_paper(const lessons::Lesson& lesson);

/// What a teacher has to know of what was printed, a sentence each.
[[nodiscard]] std::vector<words::Message> remarks_on(const Printed& printed);

}  // namespace fw::paper
