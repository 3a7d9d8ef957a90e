#pragma once

#include <optional>
#include <vector>

#include "bench/bench_picture.hpp"

// A face of an open net that is carried to another edge.
namespace fw::bench {

/// A place that the carried face can take.
struct Landing {
  EdgeId edge;                         ///< that it would hang on
  std::vector<figures::Vec2> outline;  ///< as it would lie there, in pixels of the window
};

/// Every place but the one where it hangs. `picture`: of this model, not of card.
[[nodiscard]] std::vector<Landing> landings(const BenchPicture& picture, const Model& model, FaceId carried);

/// The landing that is meant by letting go at a pixel: the nearest one, from no farther than it is wide; or the one at
/// the face under the pixel.
[[nodiscard]] const Landing* landing_near(const std::vector<Landing>& all, const BenchPicture& picture,
                                          const Desk& desk, FaceId carried, figures::Vec2 pixel);

/// A face as it lies now, in pixels of the window; empty for none of the picture's.
[[nodiscard]] std::vector<figures::Vec2> outline_of(const BenchPicture& picture, FaceId face);

}  // namespace fw::bench
