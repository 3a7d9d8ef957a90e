#pragma once

#include <optional>
#include <string>

namespace fw::lessons {

/// The page that opens in a browser, with a lesson in it; nothing where it has no place for one, so is not ours. What
/// is in the page already is replaced. `lesson`: the text of a lesson's file.
[[nodiscard]] std::optional<std::string> page_with(const std::string& page, const std::string& lesson);

}  // namespace fw::lessons
