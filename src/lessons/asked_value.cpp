#include "lessons/asked_value.hpp"

#include <algorithm>

#include "lessons/asked.hpp"
#include "lessons/open_faces.hpp"

namespace fw::lessons {

using exact::Number;

const algebra::Symbol* length_named(const solids::Solid& solid, const std::string& name) {
  const algebra::Symbol* first = nullptr;
  for (const solids::Measure& measure : solid.statement().measures) {
    if (measure.symbol.name == name) {
      return &measure.symbol;
    }
    const std::string key = measure.in_base ? "base." + measure.key : measure.key;
    const bool is_named = !measure.key.empty() && key == name;
    if (is_named && (first == nullptr || (solid.is_given(*first) && !solid.is_given(measure.symbol)))) {
      first = &measure.symbol;
    }
  }
  return first;
}

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

std::size_t count_of(const solids::Solid& solid, std::string_view find) {
  const solids::Body& body = solid.body();
  return find == "edges" ? body.edge_count() : find == "vertices" ? body.vertex_count() : body.face_count();
}

bool has_two_lengths(const solids::Face& face) { return face.lengths.size() == 2; }

}  // namespace fw::lessons
