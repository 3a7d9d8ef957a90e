#pragma once

#include <string>
#include <vector>

#include "paper/page.hpp"

namespace fw::paper {

/// The pages as a PDF file, with the glyphs that they use put into it. It holds no date and no name of a machine, so
/// that the same pages give the same bytes. It asks to be printed at its own size, and its texts can be copied and
/// searched in reading order.
/// Source: ISO 32000-1 (PDF 1.7).
[[nodiscard]] std::string pdf_file(const std::vector<Page>& pages, const Fonts& fonts, const std::string& title);

}  // namespace fw::paper
