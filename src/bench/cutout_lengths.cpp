#include <algorithm>
#include <cmath>

#include "bench/bench_parts.hpp"
#include "figures/label_layout.hpp"
#include "units/quantity.hpp"

// The lengths on flat card.
namespace fw::bench {

using namespace state;

namespace {

using geometry::Vec3;
using nets::PieceEdge;

constexpr int length_places = 1;

figures::Segment seen_edge(const BenchPicture& picture, const std::vector<Vec3>& piece, std::size_t edge) {
  const figures::Vec2 shift{picture.rect.x, picture.rect.y};
  return {picture.camera.project(piece[edge], picture.viewport).pixel + shift,
          picture.camera.project(piece[(edge + 1) % piece.size()], picture.viewport).pixel + shift};
}

/// "25 cm", "≈ 13.9 cm". Edges of card have few digits: they were drawn by coordinates.
std::string length_text(double length, const units::Unit& unit) {
  constexpr double finest = 1e-3;
  const double scale = std::pow(10.0, length_places);
  const double rounded = std::round(length * scale) / scale;
  std::string number = std::to_string(rounded);
  number.erase(number.find_last_not_of('0') + 1);
  if (number.back() == '.') {
    number.pop_back();
  }
  return (std::abs(rounded - length) > finest * length ? "≈ " : "") + number + " " + unit.text();
}

figures::LabelSurroundings around_card(const BenchPicture& picture, const Theme& theme) {
  figures::LabelSurroundings around;
  around.viewport = picture.rect.inset(theme.sizes.space);
  around.gap = theme.sizes.space * 0.6;
  figures::Vec2 sum{};
  for (const std::vector<Vec3>& face : picture.look.faces) {
    for (std::size_t i = 0; i < face.size(); ++i) {
      around.lines.push_back(seen_edge(picture, face, i));
      sum += around.lines.back().from;
    }
  }
  around.away_from = sum / static_cast<double>(around.lines.size());
  for (const BenchSpot& spot : picture.spots) {
    around.discs.push_back({spot.center, picture.spot_radius});
  }
  return around;
}

}  // namespace

void add_card_lengths(BenchPicture& picture, const tasks::CutoutBench& bench, const nets::Pose& card,
                      const Theme& theme, const MeasureText& measure) {
  const nets::Cutout& cutout = bench.lying.front().cutout;
  std::vector<std::string> texts;
  std::vector<figures::LabelRequest> requests;
  for (const PieceEdge& edge : nets::free_edges(cutout)) {
    std::string text = length_text(nets::edge_length(cutout, edge), bench.solid.unit());
    if (std::find(texts.begin(), texts.end(), text) == texts.end()) {
      requests.push_back({seen_edge(picture, card[edge.piece.index()], edge.edge), measure(text)});
      texts.push_back(std::move(text));
    }
  }
  const std::vector<figures::PlacedLabel> placed = figures::place_labels(requests, around_card(picture, theme));
  for (std::size_t i = 0; i < placed.size(); ++i) {
    bool on_face = false;
    const figures::Vec2 half = requests[i].size * 0.5;
    for (const figures::Vec2& corner :
         {figures::Vec2{-half.x, 0}, figures::Vec2{half.x, 0}, figures::Vec2{0, half.y}, figures::Vec2{0, -half.y}}) {
      on_face = on_face || face_at(picture, placed[i].center + corner);
    }
    picture.labels.push_back({texts[i], placed[i].center, placed[i].leader, false, on_face});
  }
}

}  // namespace fw::bench
