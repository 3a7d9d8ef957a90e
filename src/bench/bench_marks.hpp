#pragma once

#include "bench/bench_picture.hpp"

namespace fw::bench {

/// What the lengths of the solid are labelled with, and which of them are told apart; one a mark.
struct MarkWords {
  std::vector<std::string> labels;
  std::vector<std::vector<std::string>> later;  ///< what else stands there as the problem is worked out
  std::vector<bool> emphasized;
};
/// A solid and the net that it opens to.
struct MarkedSolid {
  const solids::Solid& solid;
  const nets::HingeTree& net;
};
/// Adds the heights, slant heights and their right-angle marks to the picture, and the labels of all lengths.
void add_marks(BenchPicture& picture, const MarkedSolid& marked, double fold, const MarkWords& words,
               const Theme& theme, const MeasureText& measure);

}  // namespace fw::bench
