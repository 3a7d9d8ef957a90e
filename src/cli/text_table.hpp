#pragma once

#include <string>
#include <vector>

namespace fw::cli {

enum class Align { Left, Right };

/// Rows of cells as lines with their columns aligned, two spaces between them and `indent` spaces before; a line has
/// no spaces at its end. Widths count characters (UTF-8 code points), each taken to be one column wide.
/// Requires: every row has as many cells as `aligns`.
[[nodiscard]] std::string text_table(const std::vector<std::vector<std::string>>& rows,
                                     const std::vector<Align>& aligns, std::size_t indent);

}  // namespace fw::cli
