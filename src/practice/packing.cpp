#include "practice/packing.hpp"

#include <algorithm>

#include "base/ensure.hpp"

namespace fw::practice {
namespace {

using exact::Number;
using lessons::WholeBox;

long long whole_times(const Number& edge, const Number& item) {
  constexpr double most = 1e6;  // three of them can be multiplied
  return static_cast<long long>(std::min(exact::floor(edge / item).to_double(), most));
}

}  // namespace

std::vector<Packing> packings(const solids::Solid& solid, const ItemBox& box) {
  const auto edges = lessons::edges_of_box(solid);
  ensure(edges.has_value(), "items are packed into a solid that has no three edges");
  std::array<Number, 3> item;
  const std::array<const units::WrittenQuantity*, 3> written{&box.length, &box.width, &box.height};
  for (std::size_t i = 0; i < item.size(); ++i) {
    item[i] = written[i]->number.value * units::conversion(written[i]->unit, solid.unit());
  }
  std::array<std::size_t, 3> order{0, 1, 2};
  std::vector<Packing> all;
  do {
    Packing packing;
    packing.edges = *edges;
    packing.count = 1;
    for (std::size_t i = 0; i < order.size(); ++i) {
      packing.item[i] = item[order[i]];
      packing.rows[i] = whole_times((*edges)[i], packing.item[i]);
      packing.count *= packing.rows[i];
    }
    if (std::none_of(all.begin(), all.end(), [&](const Packing& one) { return one.item == packing.item; })) {
      all.push_back(std::move(packing));
    }
  } while (std::next_permutation(order.begin(), order.end()));
  std::stable_sort(all.begin(), all.end(), [](const Packing& a, const Packing& b) { return a.count > b.count; });
  return all;
}

long long surface_of(const WholeBox& box) { return 2 * (box[0] * box[1] + box[0] * box[2] + box[1] * box[2]); }

std::vector<WholeBox> boxes_with_volume(long long volume) {
  std::vector<WholeBox> boxes;
  for (long long a = 1; a * a * a <= volume; ++a) {
    for (long long b = a; volume % a == 0 && a * b * b <= volume; ++b) {
      if (volume / a % b == 0) {
        boxes.push_back({a, b, volume / a / b});
      }
    }
  }
  std::stable_sort(boxes.begin(), boxes.end(),
                   [](const WholeBox& x, const WholeBox& y) { return surface_of(x) > surface_of(y); });
  return boxes;
}

}  // namespace fw::practice
