#pragma once

#include <cstddef>
#include <string>
#include <string_view>

#include "base/result.hpp"
#include "practice/progress.hpp"

namespace fw::practice {

/// What is kept of practice is far smaller than this, at all its limits too.
inline constexpr std::size_t progress_byte_limit = std::size_t{2} << 20U;

/// Progress as the text of a file, and back: {"progress": 1, "skills": {"surface": {"seen", "right", "causes", "box",
/// "back"}}}, the day in days since January 1, 1970.
/// Errors: a sentence that says what is damaged; unknown entries of later versions are passed over.
[[nodiscard]] std::string progress_text(const Progress& progress);
[[nodiscard]] Result<Progress, words::Message> read_progress(std::string_view text);

}  // namespace fw::practice
