#pragma once

#include <optional>
#include <vector>

#include "figures/canvas.hpp"
#include "geometry/polygon.hpp"

namespace fw::figures {

struct Segment {
  Vec2 from, to;
  friend bool operator==(const Segment&, const Segment&) = default;
};
struct Disc {
  Vec2 center;
  double radius = 0;
};

/// A label to be placed beside the segment that it measures.
struct LabelRequest {
  Segment segment;
  Vec2 size;                      ///< of the label's box
  std::vector<Segment> others{};  ///< as long as it: the label may stand there if it has no good place at its own
};

/// What the labels must keep clear of.
struct LabelSurroundings {
  Rect viewport;                ///< labels stay inside
  Vec2 away_from;               ///< the figure's center: labels stand on the far side of their segment if they can
  std::vector<Segment> lines;   ///< edges, heights; a request's own segment need not be among them
  std::vector<Segment> rivals;  ///< those in sight, which a label that stands nearer to them would be read on
  std::vector<Disc> discs;      ///< number circles
  std::vector<Rect> boxes;      ///< texts that stand already
  std::vector<geometry::Polygon> faces;  ///< a label stands outside of them if it can, where it is best read
  double gap = 6;                        ///< least distance between a label and what it must keep clear of
};

struct PlacedLabel {
  Vec2 center;                    ///< of the label's box
  std::optional<Segment> leader;  ///< from the box to the segment, where the label could not stand beside one
  std::size_t segment = 0;        ///< that it measures there: 0 its own, i the one others[i - 1]
  bool clear = true;              ///< false: no candidate was free, and the least bad one was taken
};

/// One place for each request, in the order of the requests.
///
/// Guarantees:
///   (1) a label never meets a line, a disc, a box, another label or the viewport's border as long as one of its
///       candidates is free when its turn comes;
///   (2) the same input gives the same places;
///   (3) a label that stands beside its segment has no leader, and no other line runs between the two; one farther
///       away has a leader;
///   (4) a label stands at another segment only where its own has no clear place beside it outside of the faces;
///   (5) a label that is clear is nearer to a segment that it measures than to any other line; with a leader it stands
///       apart from all of them.
[[nodiscard]] std::vector<PlacedLabel> place_labels(const std::vector<LabelRequest>& requests,
                                                    const LabelSurroundings& surroundings);

/// Whether two segments cross; ends that only touch may count or not.
[[nodiscard]] bool cross(const Segment& a, const Segment& b);

/// Whether a segment meets a rectangle.
[[nodiscard]] bool meets(const Segment& segment, const Rect& rect);

}  // namespace fw::figures
