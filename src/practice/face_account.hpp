#pragma once

#include <string>
#include <vector>

#include "exact/written.hpp"
#include "practice/figure.hpp"
#include "words/message.hpp"

namespace fw::practice {

/// Alike faces, counted as often as a typed number has them.
struct FaceChange {
  std::vector<FaceId> faces;
  int right = 0;        ///< how often they count
  int counted = 0;      ///< how often the number has them
  words::Message area;  ///< "35 cm²"
};

/// A number written as a sum of the areas of a solid's faces, each kind of face as often as it fits, with as few
/// changes as can be from what is asked: one, or two. Nothing where that is not enough, or where two such sums fit
/// equally well. Source: of random numbers within 60 % of a box's surface area, 1 to 3 % fit with one change, 4 to 10 %
/// with two and 18 to 43 % with any; counted for eight boxes. So one change can be told, two can be offered, and more
/// say nothing.
[[nodiscard]] std::vector<FaceChange> face_account(const Figure& figure, const exact::Written& typed);

/// "the face of 35 cm² once, not twice", a message a change.
[[nodiscard]] std::vector<words::Message> account_told(const std::vector<FaceChange>& changes);

}  // namespace fw::practice
