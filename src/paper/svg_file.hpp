#pragma once

#include <string>

#include "paper/page.hpp"

namespace fw::paper {

/// A page as an SVG file, in millimeters: parts are groups with an id, so that a cutter can be told which lines to cut;
/// texts stay texts. It names the type and does not hold it; each text says how wide it is.
/// Source: W3C, SVG 1.1.
[[nodiscard]] std::string svg_file(const Page& page, const std::string& title);

}  // namespace fw::paper
