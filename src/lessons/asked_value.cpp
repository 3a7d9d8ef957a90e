#include "lessons/asked_value.hpp"

#include <algorithm>

#include "base/ensure.hpp"
#include "lessons/asked.hpp"
#include "lessons/open_faces.hpp"

namespace fw::lessons {
namespace {

using exact::Number;

const algebra::Symbol* length_named(const solids::Solid& solid, const std::string& name) {
  for (const solids::Measure& measure : solid.statement().measures) {
    const std::string key = measure.in_base ? "base." + measure.key : measure.key;
    if (measure.symbol.name == name || (!measure.key.empty() && key == name)) {
      return &measure.symbol;
    }
  }
  return nullptr;
}

long long whole_times(const Number& edge, const Number& item) {
  constexpr double most = 1e6;  // three of them can be multiplied
  return static_cast<long long>(std::min(exact::floor(edge / item).to_double(), most));
}

}  // namespace

std::optional<int> dimension_of_asked(const solids::Solid& solid, const std::string& find) {
  if (const std::optional<int> dimension = dimension_of_whole(find)) {
    return dimension;
  }
  const algebra::Symbol* length = length_named(solid, find);
  return length == nullptr ? std::nullopt : std::optional(length->dimension);
}

std::optional<Number> asked_value(const Problem& problem, const solids::Solid& solid, const std::string& find) {
  if (find == "surface_area") {
    const std::vector<geometry::FaceId> open = open_faces(problem);
    Number area = solid.surface_area().amount();
    for (const geometry::FaceId face : open) {
      area = area - solid.faces()[face].area.amount();
    }
    return area;
  }
  if (find == "lateral_area") {
    return solid.lateral_area() ? std::optional(solid.lateral_area()->amount()) : std::nullopt;
  }
  if (find == "base_area") {
    return solid.base_area() ? std::optional(solid.base_area()->amount()) : std::nullopt;
  }
  if (find == "volume") {
    return solid.volume().amount();
  }
  const algebra::Symbol* length = length_named(solid, find);
  const auto value = length == nullptr ? solid.values().end() : solid.values().find(length->name);
  return value == solid.values().end() ? std::nullopt : std::optional(value->second);
}

std::optional<std::array<Number, 3>> edges_of_box(const solids::Solid& solid) {
  if (!solid.traits().box_edges) {
    return std::nullopt;
  }
  std::array<Number, 3> edges;
  std::transform(solid.traits().box_edges->begin(), solid.traits().box_edges->end(), edges.begin(),
                 [&](const algebra::Symbol& edge) { return solid.values().at(edge.name); });
  return edges;
}

bool has_same_number(const solids::Solid& solid) { return solid.surface_area().amount() == solid.volume().amount(); }

std::optional<WholeBox> whole_box(const solids::Solid& solid) {
  const auto edges = edges_of_box(solid);
  if (!edges) {
    return std::nullopt;
  }
  WholeBox box{};
  for (std::size_t i = 0; i < box.size(); ++i) {
    constexpr double longest = 1000;
    if (!(*edges)[i].is_whole() || (*edges)[i].to_double() > longest) {
      return std::nullopt;
    }
    box[i] = static_cast<long long>((*edges)[i].to_double());
  }
  return box;
}

bool has_two_lengths(const solids::Face& face) { return face.lengths.size() == 2; }

std::vector<Packing> packings(const Problem& problem) {
  const auto edges = edges_of_box(problem.solid);
  ensure(edges && problem.supply && problem.supply->box, "items are packed into a solid that has no three edges");
  const ItemBox& box = *problem.supply->box;
  std::array<Number, 3> item;
  const std::array<const units::WrittenQuantity*, 3> written{&box.length, &box.width, &box.height};
  for (std::size_t i = 0; i < item.size(); ++i) {
    item[i] = written[i]->number.value * units::conversion(written[i]->unit, problem.solid.unit());
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

}  // namespace fw::lessons
