#include <cmath>

#include "practice/signatures.hpp"

// Equal items are packed into a solid in rows, or a box is chosen among those that hold as much.
// Source: common practice, no source.
namespace fw::practice {
namespace {

double fits_along(const Packing& way, std::size_t edge) { return (way.edges[edge] / way.item[edge]).to_double(); }

void volumes_divided(const Figure& figure, Finds& finds) {
  const Packing& best = figure.question->ways.front();
  const double quotient = fits_along(best, 0) * fits_along(best, 1) * fits_along(best, 2);
  finds.push_back({std::floor(quotient + 1e-9), {}});
  finds.push_back({std::round(quotient), {}});
  finds.push_back({quotient, {}});
}
void one_row_or_layer(const Figure& figure, Finds& finds) {
  const Packing& best = figure.question->ways.front();
  for (std::size_t edge = 0; edge < best.rows.size(); ++edge) {
    const auto row = static_cast<double>(best.rows[edge]);
    finds.push_back({row, {}});
    finds.push_back({row * static_cast<double>(best.rows[(edge + 1) % best.rows.size()]), {}});
  }
}
void rounded_up_along(const Figure& figure, Finds& finds) {
  const Packing& best = figure.question->ways.front();
  double up = 1;
  for (std::size_t edge = 0; edge < best.rows.size(); ++edge) {
    up *= std::ceil(fits_along(best, edge) - 1e-9);
  }
  finds.push_back({up, {}});
}
void rows_added(const Figure& figure, Finds& finds) {
  const Packing& best = figure.question->ways.front();
  finds.push_back({static_cast<double>(best.rows[0] + best.rows[1] + best.rows[2]), {}});
}
void another_way_round(const Figure& figure, Finds& finds) {
  const std::vector<Packing>& ways = figure.question->ways;
  for (const Packing& way : ways) {
    finds.push_back({way.count < ways.front().count ? static_cast<double>(way.count) : 0, {}});
  }
}

// ---- of boxes that hold as much ----

void box_shown(const Figure& figure, Finds& finds) { finds.push_back({figure.closed, {}}); }
void as_equal_edges(const Figure& figure, Finds& finds) {
  finds.push_back({6 * std::pow(figure.volume, 2.0 / 3.0), {}});
}
void list_left_early(const Figure& figure, Finds& finds) {
  const auto boxes = boxes_with_volume(std::llround(figure.volume));
  for (std::size_t i = 0; i + 1 < boxes.size(); ++i) {  // but for the best one, which is the last, and the one shown
    const auto surface = static_cast<double>(surface_of(boxes[i]));
    finds.push_back({std::abs(surface - figure.closed) < 0.5 ? 0 : surface, {}});
  }
}

}  // namespace

std::vector<Signature> packing_signatures() {
  const std::vector<Asked> packed{Asked::Packed};
  const std::vector<Asked> least{Asked::LeastSurface};
  return {
      {"L7", packed, volumes_divided,
       Saying("{n} is what you get if you divide the volumes.", "How many whole ones fit along each edge?")},
      {"L8", packed, one_row_or_layer,
       Saying("{n} is only one row or one layer.", "How many rows or layers are there?")},
      {"L3", packed, rounded_up_along, Saying("{n} is what you get if you round up.", "Can you pack part of one?")},
      {"L10", packed, another_way_round,
       Saying("{n} is how many fit if they are turned another way.", "Do more fit if you turn them another way?")},
      {"L11", packed, rows_added,
       Saying("{n} is what you get if you add the rows.", "How many fit in one layer, and how many layers are there?")},
      {"L12", least, box_shown, Saying("{n} is what this box takes.", "Which other boxes have the same volume?")},
      {"L13", least, as_equal_edges,
       Saying("{n} is what a cube with the same volume would take.", "Are all of its edges whole numbers?")},
      {"L14", least, list_left_early,
       Saying("{n} is what another box takes, but not the one with the least.",
              "List all the boxes. Do any have edges closer in length?")},
  };
}

}  // namespace fw::practice
