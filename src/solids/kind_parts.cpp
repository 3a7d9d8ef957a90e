#include "solids/kind_parts.hpp"

#include <utility>

#include "nets/layout.hpp"

namespace fw::solids {

using algebra::Expression;
using algebra::Symbol;
using geometry::Polyhedron;
using geometry::Vec3;

void name_after_base(SolidStatement& statement, const ShapeStatement& base, const std::string& family,
                     const std::vector<std::string>& special_names) {
  statement.family = family;
  statement.name = name_of({base.adjective, family});
  statement.other_names = special_names;
  for (const std::string& adjective : base.other_adjectives) {
    statement.other_names.push_back(name_of({adjective, family}));
  }
  statement.other_names.push_back(name_of({base.noun, family}));
  statement.other_names.push_back(name_of({base.noun, "based", family}));
}

void call_it(SolidStatement& statement, const std::string& name) {
  statement.other_names.push_back(std::exchange(statement.name, name));
}

Traits upright_traits() {
  return {.has_base = true, .has_second_base = true, .bases_match = true, .sides_make_rectangle = true};
}

namespace {

FaceStatement box_face(const BoxSymbols& symbols, bool is_base, const std::string& noun,
                       std::vector<FaceLengthPlace> lengths) {
  FaceStatement face;
  face.role = !symbols.has_bases ? FaceRole::Face : is_base ? FaceRole::Base : FaceRole::Lateral;
  face.shape = noun;
  const Symbol& first = lengths[0].symbol;
  const Symbol& second = lengths[1].symbol;
  face.area = Expression(first) * second;
  face.lengths = std::move(lengths);
  return face;
}

}  // namespace

BodyStatement box_body(const BoxSymbols& symbols, const algebra::Bindings& bindings) {
  const exact::Number l = value_of(bindings, symbols.length);
  const exact::Number w = value_of(bindings, symbols.width);
  const exact::Number h = value_of(bindings, symbols.height);
  const double x = l.to_double() / 2;
  const double y = w.to_double() / 2;
  const double z = h.to_double();
  BodyStatement body;
  body.vertices = {{-x, -y, 0}, {x, -y, 0}, {x, y, 0}, {-x, y, 0}, {-x, -y, z}, {x, -y, z}, {x, y, z}, {-x, y, z}};
  body.loops = {{0, 3, 2, 1}, {4, 5, 6, 7}, {0, 1, 5, 4}, {2, 3, 7, 6}, {3, 0, 4, 7}, {1, 2, 6, 5}};
  const auto place = [&](const Symbol& symbol, const std::string& title, std::size_t from, std::size_t to) {
    return FaceLengthPlace{symbol, title, body.vertices[from], body.vertices[to]};
  };
  const auto length = [&](std::size_t a, std::size_t b) { return place(symbols.length, symbols.length_title, a, b); };
  const auto width = [&](std::size_t a, std::size_t b) { return place(symbols.width, symbols.width_title, a, b); };
  const auto height = [&](std::size_t a, std::size_t b) { return place(symbols.height, symbols.height_title, a, b); };
  const auto noun = [](const exact::Number& a, const exact::Number& b) {
    return std::string(a == b ? "square" : "rectangle");
  };
  body.faces = {box_face(symbols, true, noun(l, w), {length(0, 1), width(1, 2)}),
                box_face(symbols, true, noun(l, w), {length(4, 5), width(5, 6)}),
                box_face(symbols, false, noun(l, h), {length(0, 1), height(1, 5)}),
                box_face(symbols, false, noun(l, h), {length(2, 3), height(3, 7)}),
                box_face(symbols, false, noun(w, h), {width(3, 0), height(0, 4)}),
                box_face(symbols, false, noun(w, h), {width(1, 2), height(1, 5)})};
  const auto mark = [&](const FaceLengthPlace& where) {
    Mark result{where.symbol, where.title};
    result.from = where.from;
    result.to = where.to;
    return result;
  };
  body.marks = {mark(length(0, 1))};
  if (!(symbols.width == symbols.length)) {
    body.marks.push_back(mark(width(1, 2)));
    body.marks.push_back(mark(height(1, 5)));
  }
  // The cross: four sides round the bottom, the top beyond the back.
  body.classic_hinges = {{0, 2}, {0, 3}, {0, 4}, {0, 5}, {3, 1}};
  return body;
}

Vec3 opening(Vec3 from, Vec3 foot, Vec3 normal, Vec3 toward) {
  Vec3 along = glm::cross(normal, foot - from);
  const double size = glm::length(along);
  if (size == 0) {
    return {0, 0, 0};
  }
  along = along / size;
  return glm::dot(along, toward - foot) < 0 ? -along : along;
}

std::optional<Polyhedron> polyhedron_of(const BodyStatement& body) {
  std::vector<Polyhedron::Loop> loops;
  for (const auto& loop : body.loops) {
    Polyhedron::Loop corners;
    for (const std::size_t corner : loop) {
      corners.push_back(geometry::VertexId::at(corner));
    }
    loops.push_back(corners);
  }
  auto polyhedron = Polyhedron::make(body.vertices, loops);
  return polyhedron ? std::optional(std::move(polyhedron).value()) : std::nullopt;
}

std::optional<nets::HingeTree> net_of(const BodyStatement& body, const Polyhedron& polyhedron,
                                      const HingePairs& hinges) {
  std::vector<geometry::EdgeId> edges;
  for (const auto& [a, b] : hinges) {
    const auto edge = polyhedron.edge_between(geometry::FaceId::at(a), geometry::FaceId::at(b));
    if (!edge) {
      return std::nullopt;
    }
    edges.push_back(*edge);
  }
  auto tree = nets::HingeTree::make(polyhedron, geometry::FaceId::at(body.table_face), edges);
  return tree ? std::optional(std::move(tree).value()) : std::nullopt;
}

bool net_lies_flat(const BodyStatement& body, const HingePairs& hinges) {
  const auto polyhedron = polyhedron_of(body);
  const auto tree = polyhedron ? net_of(body, *polyhedron, hinges) : std::nullopt;
  return tree && nets::overlapping(nets::unfolded(*polyhedron, *tree)).empty();
}

namespace {

/// The lateral faces in a row, cut open before face `cut` of the ring.
HingePairs chain_of(std::size_t ends, std::size_t count, std::size_t cut) {
  HingePairs chain;
  for (std::size_t i = 0; i + 1 < count; ++i) {
    chain.push_back({ends + (cut + i) % count, ends + (cut + i + 1) % count});
  }
  return chain;
}

/// Takes the net where each end face hangs on the lateral face named for it, if it lies flat.
bool take_chain(BodyStatement& body, std::size_t count, std::size_t cut, const std::vector<std::size_t>& carriers) {
  HingePairs hinges = chain_of(carriers.size(), count, cut);
  for (std::size_t end = 0; end < carriers.size(); ++end) {
    hinges.push_back({end, carriers.size() + carriers[end]});
  }
  if (!net_lies_flat(body, hinges)) {
    return false;
  }
  body.classic_hinges = hinges;
  return true;
}

}  // namespace

void choose_net(BodyStatement& body, std::size_t ends, std::size_t count) {
  if (net_lies_flat(body, body.classic_hinges)) {
    return;
  }
  for (std::size_t cut = 0; cut < count; ++cut) {
    for (std::size_t carrier = 0; carrier < count; ++carrier) {
      if (take_chain(body, count, cut, std::vector<std::size_t>(ends, carrier))) {
        return;
      }
    }
  }
  // A base that reaches back past its own side needs the end of the row to itself.
  for (std::size_t cut = 0; cut < count && ends == 2; ++cut) {
    const std::size_t last = (cut + count - 1) % count;
    if (take_chain(body, count, cut, {cut, last}) || take_chain(body, count, cut, {last, cut})) {
      return;
    }
  }
}

}  // namespace fw::solids
