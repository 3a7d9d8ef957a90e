#pragma once

#include <optional>
#include <string>
#include <vector>

#include "nets/cutout.hpp"
#include "solids/solid.hpp"

namespace fw::lessons {

/// What is asked about a net.
enum class NetAsk {
  Name,      ///< which solid folds from it
  Choose,    ///< which of several cut-outs is a net of the solid
  IsIt,      ///< whether a cut-out is one
  Complete,  ///< along which edges a missing piece can be hung
};

/// A piece as a lesson gives it: {"face": 3, "on": 1, "edge": 2, "by": 1}, all numbers from 1; its corners and their
/// unit in place of a face where it is a copy of none.
struct PieceEntry {
  std::optional<geometry::FaceId> face = std::nullopt;
  std::vector<solids::PointEntry> corners = {};
  std::string unit = {};                            ///< of the corners: "cm"; empty: that of the solid
  std::optional<nets::Joint> joint = std::nullopt;  ///< nothing for the first piece and for a missing one
  friend bool operator==(const PieceEntry&, const PieceEntry&) = default;
};

/// A cut-out as it lies before the class.
struct NetSheet {
  std::vector<PieceEntry> pieces;
  int turn_degrees = 0;  ///< counterclockwise, 0 to 359
  bool flipped = false;  ///< turned over first
  nets::Cutout cutout;   ///< of those pieces, in the solid's unit; neither turned nor flipped, free of overlap
  friend bool operator==(const NetSheet&, const NetSheet&) = default;
};

/// A question about nets of the problem's solid: the key "net".
struct NetTask {
  NetAsk ask = NetAsk::Name;
  std::vector<NetSheet> sheets;                      ///< one; of Choose the candidates, exactly one of them a net
  std::optional<PieceEntry> missing = std::nullopt;  ///< of Complete: the piece that is not there yet
  std::vector<nets::Joint> places = {};              ///< of Complete: where it could hang; at least one is right
  friend bool operator==(const NetTask&, const NetTask&) = default;
};

/// The polygon of a piece, in the solid's unit. Requires: its face is one of the solid's.
[[nodiscard]] geometry::Polygon shape_of(const PieceEntry& piece, const solids::Solid& solid);
/// The sheet's cut-out with the missing piece hung at one of the places. Requires: a task that asks to Complete.
[[nodiscard]] nets::Cutout completed(const NetTask& task, const solids::Solid& solid, std::size_t place);

}  // namespace fw::lessons
