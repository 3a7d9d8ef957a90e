#pragma once

#include <string>
#include <vector>

namespace fw::paper {

/// A scale: millimeters of paper by millimeters of the thing.
struct PaperScale {
  int paper = 1, thing = 1;
  [[nodiscard]] double factor() const { return static_cast<double>(paper) / thing; }
  friend bool operator==(const PaperScale&, const PaperScale&) = default;
  [[nodiscard]] std::string text() const { return std::to_string(paper) + " : " + std::to_string(thing); }
};
/// Those that a sheet has, the largest first. Small solids may be enlarged.
[[nodiscard]] std::vector<PaperScale> usual_scales(bool is_small);

}  // namespace fw::paper
