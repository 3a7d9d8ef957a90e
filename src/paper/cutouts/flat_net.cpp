#include "paper/cutouts/flat_net.hpp"

#include <algorithm>
#include <numbers>

#include "geometry/flat_math.hpp"
#include "solids/body/body_nets.hpp"

namespace fw::paper {
namespace {

constexpr double least_bridge = 3;  // millimeters; a narrower one tears

/// The outline of a face that bends, and which of its sides are its seam.
struct Bent {
  Polygon outline;
  std::size_t seam_right = 0, seam_left = 0;
};

/// Without the points on a straight line.
std::vector<Vec2> straightened(const std::vector<Vec2>& line) {
  std::vector<Vec2> corners;
  for (std::size_t i = 0; i < line.size(); ++i) {
    const bool is_end = i == 0 || i + 1 == line.size();
    if (!is_end) {
      const Vec2 in = line[i] - line[i - 1];
      const Vec2 out = line[i + 1] - line[i];
      if (std::abs(geometry::cross(in, out)) <= geometry::tolerance * glm::length(in) * glm::length(out)) continue;
    }
    corners.push_back(line[i]);
  }
  return corners;
}

/// One side of all strips, counterclockwise round them: 0, the lower one, or 2. The tip of a cone is one point.
std::vector<Vec2> line_of(const std::vector<Polygon>& strips, std::size_t side) {
  std::vector<Vec2> line;
  if (side == 0) {
    for (const Polygon& strip : strips) line.push_back(strip[0]);
    line.push_back(strips.back()[1]);
    return line;
  }
  for (auto strip = strips.rbegin(); strip != strips.rend(); ++strip) line.push_back((*strip)[2]);
  if (strips.front().size() == 3) return {line.front()};
  line.push_back(strips.front()[3]);
  return line;
}

Bent bent(const std::vector<Polygon>& strips) {
  Bent face{straightened(line_of(strips, 0)), 0, 0};
  face.seam_right = face.outline.size() - 1;
  const std::vector<Vec2> upper = straightened(line_of(strips, 2));
  face.outline.insert(face.outline.end(), upper.begin(), upper.end());
  face.seam_left = face.outline.size() - 1;
  return face;
}

class Laying {
 public:
  Laying(const Body& body, const nets::HingeTree& tree, double scale, const std::vector<FaceId>& open)
      : body_(body), tree_(tree), open_(open), layout_(solids::unfolded(body, tree)) {
    for (std::size_t i = 0; i < layout_.size(); ++i) {
      for (Vec2& p : layout_[FaceId::at(i)]) p *= scale;
    }
  }

  FlatNet net() {
    for (std::size_t i = 0; i < body_.face_count(); ++i) add_face(FaceId::at(i));
    for (std::size_t e = 0; e < body_.facet_edge_count(); ++e) join(EdgeId::at(e));
    for (std::size_t i = 0; i < body_.face_count(); ++i) {
      if (body_.bends(FaceId::at(i))) add_rims(FaceId::at(i));
    }
    add_order();
    return std::move(net_);
  }

 private:
  [[nodiscard]] bool is_open(FaceId face) const { return std::find(open_.begin(), open_.end(), face) != open_.end(); }
  [[nodiscard]] std::vector<Polygon> strips(FaceId face) const {
    const auto first = layout_.begin() + static_cast<std::ptrdiff_t>(body_.first_facet(face).index());
    return {first, first + static_cast<std::ptrdiff_t>(body_.facet_count(face))};
  }
  /// The place of an edge round a facet.
  [[nodiscard]] std::size_t side_on(FaceId facet, EdgeId edge) const {
    const std::vector<EdgeId>& edges = body_.edges_of(facet);
    return static_cast<std::size_t>(std::find(edges.begin(), edges.end(), edge) - edges.begin());
  }

  void add_face(FaceId face) {
    net_.faces.emplace_back();
    if (is_open(face)) return;
    if (body_.bends(face)) {
      const Bent one = bent(strips(face));
      net_.faces.back() = one.outline;
      const EdgeId seam = body_.edges_of(body_.first_facet(face)).back();
      net_.straights.push_back({{face, one.seam_right}, seam});
      net_.straights.push_back({{face, one.seam_left}, seam});
      net_.pairs.push_back({seam, {face, one.seam_right}, {face, one.seam_left}, std::nullopt, {}, 0});
      return;
    }
    net_.faces.back() = layout_[face];
    const std::vector<EdgeId>& edges = body_.edges_of(face);
    for (std::size_t i = 0; i < edges.size(); ++i) {
      if (!body_.bends(body_.face_of(body_.across(edges[i], face)))) net_.straights.push_back({{face, i}, edges[i]});
    }
  }

  void join(EdgeId edge) {
    const auto [first, second] = body_.faces_at(edge);
    if (body_.bends(body_.face_of(first)) || body_.bends(body_.face_of(second))) return;
    if (is_open(first) || is_open(second)) return;
    if (tree_.is_hinge(edge)) {
      net_.folds.push_back(edge);
    } else {
      net_.pairs.push_back({edge, {first, side_on(first, edge)}, {second, side_on(second, edge)}, std::nullopt, {}, 0});
    }
  }

  void add_rims(FaceId side) {
    const std::size_t first = body_.first_facet(side).index();
    const std::size_t count = body_.facet_count(side);
    for (const std::size_t place : {std::size_t{0}, std::size_t{2}}) {
      if (place == 2 && body_.edges_of(FaceId::at(first)).size() == 3) continue;
      Rim rim;
      rim.side = side;
      if (!is_open(side)) rim.on_side = line_of(strips(side), place);
      for (std::size_t i = 0; i < count; ++i) {
        const FaceId facet = FaceId::at(first + (place == 0 ? i : count - 1 - i));
        const EdgeId edge = body_.edges_of(facet)[place];
        rim.disk = body_.across(edge, facet);
        const Polygon& disk = layout_[rim.disk];
        const std::size_t at = side_on(rim.disk, edge);
        if (!is_open(rim.disk)) {  // it runs the other way round the disk
          rim.on_disk.push_back(disk[(at + 1) % disk.size()]);
          if (i + 1 == count) rim.on_disk.push_back(disk[at]);
        }
        if (tree_.is_hinge(edge)) {
          rim.from = i;
          rim.to = i + 1;
        }
      }
      if (rim.is_glued()) {
        widen_bridge(rim);
      } else {
        rim.from = rim.to = std::nullopt;
      }
      if (!rim.on_side.empty() || !rim.on_disk.empty()) net_.rims.push_back(std::move(rim));
    }
  }

  /// A small circle holds on to more than one strip: beside the middle one it is a hair's breadth away.
  static void widen_bridge(Rim& rim) {
    while (rim.from && *rim.from > 1 && *rim.to + 2 < rim.on_side.size() &&
           glm::length(rim.on_side[*rim.to] - rim.on_side[*rim.from]) < least_bridge) {
      --*rim.from;
      ++*rim.to;
    }
  }

  void add_order() {
    net_.from_root.assign(body_.face_count(), 0);
    std::vector<std::size_t> depth(layout_.size(), 0);
    for (const FaceId facet : tree_.order()) {
      if (const auto& link = tree_.link(facet)) {
        const bool is_within = body_.face_of(facet) == body_.face_of(link->parent);
        depth[facet.index()] = depth[link->parent.index()] + (is_within ? 0 : 1);
      }
      net_.from_root[body_.face_of(facet).index()] = depth[facet.index()];
    }
    net_.lid = body_.face_of(tree_.order().back());
  }

  const Body& body_;
  const nets::HingeTree& tree_;
  const std::vector<FaceId>& open_;
  nets::Layout layout_;
  FlatNet net_;
};

template <class F>
void each_point(FlatNet& net, const F& change) {
  const auto all = [&](std::vector<Vec2>& points) { std::for_each(points.begin(), points.end(), change); };
  for (Polygon& face : net.faces) all(face);
  for (GluedPair& pair : net.pairs) all(pair.tab);
  for (Rim& rim : net.rims) {
    all(rim.on_side);
    all(rim.on_disk);
    for (Tooth& tooth : rim.teeth) {
      all(tooth.foot);
      all(tooth.shape);
    }
  }
}

}  // namespace

std::size_t FlatNet::taped() const {
  return static_cast<std::size_t>(
      std::count_if(pairs.begin(), pairs.end(), [](const GluedPair& pair) { return !pair.tab_on; }));
}

FlatNet flat_net(const Body& body, const nets::HingeTree& tree, double mm_per_unit, const std::vector<FaceId>& open) {
  return Laying(body, tree, mm_per_unit, open).net();
}

bool is_leaf(const Body& body, const nets::HingeTree& tree, FaceId face) {
  return std::count_if(tree.hinges().begin(), tree.hinges().end(), [&](EdgeId hinge) {
           const auto [first, second] = body.faces_at(hinge);
           return (body.face_of(first) == face) != (body.face_of(second) == face);
         }) == 1;
}

std::optional<std::size_t> side_along(const Body& body, FaceId face, geometry::Vec3 from, geometry::Vec3 to) {
  const solids::FlatFace flat = body.flat(face);
  const Polygon outline = body.bends(face) ? bent(body.strips(face)).outline : flat.outline;
  const double slack = 1e-6 * geometry::diagonal(outline);
  for (std::size_t i = 0; i < outline.size(); ++i) {
    const auto lies_on = [&](geometry::Vec3 point) {
      return geometry::distance_to_segment(flat.plane.flat(point), outline[i], outline[(i + 1) % outline.size()]) <
             slack;
    };
    if (lies_on(from) && lies_on(to)) return i;
  }
  return std::nullopt;
}

double upright(const FlatNet& net, double angle_rad) {
  for (const GluedPair& pair : net.pairs) {
    const auto is_lower = [&](const Rim& rim) { return rim.side == pair.a.face && !rim.on_side.empty(); };
    const auto rim = std::find_if(net.rims.begin(), net.rims.end(), is_lower);  // the first of two is the lower one
    if (!(pair.a.face == pair.b.face) || rim == net.rims.end()) continue;
    const Polygon& face = net.faces[pair.a.face.index()];
    const Vec2 seam = (face[pair.a.side] + face[(pair.a.side + 1) % face.size()] + face[pair.b.side] +
                       face[(pair.b.side + 1) % face.size()]) *
                      0.25;
    const Vec2 up = turned(seam - rim->on_side[rim->on_side.size() / 2], angle_rad);
    return up.y < -1e-6 * glm::length(up) ? angle_rad + std::numbers::pi : angle_rad;
  }
  return angle_rad;
}

std::vector<Vec2> corners_of(const FlatNet& net) {
  std::vector<Vec2> points;
  for (const Polygon& face : net.faces) points.insert(points.end(), face.begin(), face.end());
  for (const GluedPair& pair : net.pairs) points.insert(points.end(), pair.tab.begin(), pair.tab.end());
  for (const Rim& rim : net.rims) {
    for (const Tooth& tooth : rim.teeth) points.insert(points.end(), tooth.shape.begin(), tooth.shape.end());
  }
  return points;
}

FlatNet placed(FlatNet net, double angle_rad) {
  each_point(net, [&](Vec2& p) { p = turned(p, angle_rad); });
  const std::vector<Vec2> points = corners_of(net);
  Vec2 low = points.front();
  for (const Vec2& p : points) low = glm::min(low, p);
  each_point(net, [&](Vec2& p) { p -= low; });
  return net;
}

}  // namespace fw::paper
