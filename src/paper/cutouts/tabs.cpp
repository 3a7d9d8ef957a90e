#include "paper/cutouts/tabs.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>

namespace fw::paper {
namespace {

constexpr double pi = std::numbers::pi;
constexpr double shrinking = 0.05;          // tabs may touch what they do not overlap
constexpr double least_gap = 4 * pi / 180;  // less is closed
constexpr std::size_t most_candidates = 5;  // of a side
constexpr std::size_t most_tried = 1'500;   // steps of the search
constexpr double deep_enough = 8;

/// Where a tab could be.
struct Candidate {
  NetSide on;
  Polygon shape;
  double depth = 0, base = 0;
  std::size_t from_root = 0;
  bool is_on_lid = false;
};

double cot(double angle) { return angle >= pi / 2 ? 0 : std::cos(angle) / std::sin(angle); }

Vec2 corner(const Polygon& polygon, std::size_t i) { return polygon[i % polygon.size()]; }

double angle_of(Vec2 way) { return std::atan2(way.y, way.x); }
double positive(double angle) {
  const double turn = std::fmod(angle, 2 * pi);
  return turn < 0 ? turn + 2 * pi : turn;
}

double inner_angle(const Polygon& polygon, std::size_t i) {
  const std::size_t n = polygon.size();
  const Vec2 next = corner(polygon, i + 1) - corner(polygon, i);
  const Vec2 before = corner(polygon, i + n - 1) - corner(polygon, i);
  return positive(angle_of(before) - angle_of(next));
}

Polygon shrunk(const Polygon& tab) {
  Vec2 middle{};
  for (const Vec2& p : tab) middle += p / static_cast<double>(tab.size());
  Polygon smaller = tab;
  for (Vec2& p : smaller) {
    const double length = glm::length(middle - p);
    p += (middle - p) * std::min(0.5, shrinking / std::max(length, shrinking));
  }
  return smaller;
}

bool meet(const Polygon& a, const Polygon& b) {
  Vec2 low_a = a.front(), high_a = a.front(), low_b = b.front(), high_b = b.front();
  for (const Vec2& p : a) {
    low_a = glm::min(low_a, p);
    high_a = glm::max(high_a, p);
  }
  for (const Vec2& p : b) {
    low_b = glm::min(low_b, p);
    high_b = glm::max(high_b, p);
  }
  const bool are_near = low_a.x < high_b.x && low_b.x < high_a.x && low_a.y < high_b.y && low_b.y < high_a.y;
  return are_near && geometry::overlap(a, b);
}

/// Free room outside of the net at a corner, beside one of its sides.
struct Gap {
  double angle = 2 * pi;
  std::optional<NetSide> across;  ///< the side on the other end of it
};

/// The gap at the begin (or the end) of a side, going outward from it.
Gap gap_at(const FlatNet& net, NetSide side, bool at_end) {
  const Polygon& own = net.faces[side.face.index()];
  const Vec2 here = corner(own, side.side + (at_end ? 1 : 0));
  const double along = angle_of(corner(own, side.side + (at_end ? 0 : 1)) - here);
  const double near = 1e-6 * (1 + glm::length(here));
  Gap gap;
  for (std::size_t f = 0; f < net.faces.size(); ++f) {
    const Polygon& face = net.faces[f];
    for (std::size_t i = 0; i < face.size(); ++i) {
      if (glm::length(face[i] - here) > near) continue;
      // A face lies counterclockwise from its side that begins here to the one that ends here.
      const std::size_t before = (i + face.size() - 1) % face.size();
      const double begins = angle_of(corner(face, i + 1) - here);
      const double ends = angle_of(corner(face, before) - here);
      const double turn = at_end ? positive(begins - along) : positive(along - ends);
      const bool is_own = f == side.face.index();
      const double room = turn < 1e-7 && is_own ? 2 * pi : turn;
      if (room < gap.angle) {
        gap = {room, NetSide{FaceId::at(f), at_end ? i : before}};
      }
    }
  }
  return gap;
}

class TabSearch {
 public:
  explicit TabSearch(FlatNet& net) : net_(net) {}

  void run() {
    for (const GluedPair& pair : net_.pairs) {
      candidates_.push_back(candidates_of(pair));
    }
    order_.resize(candidates_.size());
    for (std::size_t i = 0; i < order_.size(); ++i) order_[i] = i;
    std::stable_sort(order_.begin(), order_.end(),
                     [&](std::size_t a, std::size_t b) { return candidates_[a].size() < candidates_[b].size(); });
    chosen_.assign(candidates_.size(), nullptr);
    best_.assign(candidates_.size(), nullptr);
    least_ = candidates_.size() + 1;
    search(0, 0);
    for (std::size_t i = 0; i < best_.size(); ++i) {
      if (best_[i] != nullptr) {
        net_.pairs[i].tab_on = best_[i]->on;
        net_.pairs[i].tab = best_[i]->shape;
        net_.pairs[i].depth = best_[i]->depth;
      }
    }
  }

 private:
  [[nodiscard]] std::vector<Candidate> candidates_of(const GluedPair& pair) const {
    std::vector<Candidate> all;
    for (const bool is_first : {true, false}) {
      const std::vector<Candidate> some = candidates_on(is_first ? pair.a : pair.b, is_first ? pair.b : pair.a);
      all.insert(all.end(), some.begin(), some.end());
    }
    std::stable_sort(all.begin(), all.end(), [](const Candidate& a, const Candidate& b) {
      const auto rank = [](const Candidate& one) {
        return std::make_tuple(-std::min(one.depth, deep_enough), one.is_on_lid, one.from_root, -one.base);
      };
      return rank(a) < rank(b);
    });
    return all;
  }

  [[nodiscard]] std::vector<Candidate> candidates_on(NetSide on, NetSide mate) const {
    std::vector<Candidate> all;
    const Polygon& own = net_.faces[on.face.index()];
    const Polygon& other = net_.faces[mate.face.index()];
    const double length = glm::length(corner(own, on.side + 1) - corner(own, on.side));
    const Gap begin = gap_at(net_, on, false);
    const Gap end = gap_at(net_, on, true);
    if (begin.angle < least_gap || end.angle < least_gap) return all;
    const auto flat_room = [&](const Gap& gap) { return gap.across == mate ? gap.angle : gap.angle / 2; };
    // The mate runs the other way: its end meets the begin of this side.
    const double at_begin = std::min(inner_angle(other, (mate.side + 1) % other.size()), flat_room(begin));
    const double at_end = std::min(inner_angle(other, mate.side), flat_room(end));
    for (const double clearance : {1.5, 0.6}) {
      for (const double depth : {10.0, 8.0, 6.5, 5.0, 4.0}) {
        for (const double slope : {pi / 3, pi / 4}) {
          const auto inset = [&](double angle) {
            return std::max(0.0, depth * cot(angle) - depth * cot(slope) + clearance);
          };
          const double from = inset(at_begin);
          const double base = length - from - inset(at_end);
          const double top = base - 2 * depth * cot(slope);
          if (base < 6 || top < 3 || all.size() >= most_candidates) continue;
          const Candidate candidate = candidate_at(on, from, base, depth, slope);
          if (is_free(candidate) && is_covered(candidate, mate)) all.push_back(candidate);
        }
      }
    }
    return all;
  }

  [[nodiscard]] Candidate candidate_at(NetSide on, double from, double base, double depth, double slope) const {
    const Polygon& own = net_.faces[on.face.index()];
    const Vec2 a = corner(own, on.side);
    const Vec2 along = glm::normalize(corner(own, on.side + 1) - a);
    const Vec2 out{along.y, -along.x};
    const double lean = depth * cot(slope);
    const auto at = [&](double x, double y) { return a + along * x + out * y; };
    Candidate one;
    one.on = on;
    one.shape = {at(from + base, 0), at(from, 0), at(from + lean, depth), at(from + base - lean, depth)};
    one.depth = depth;
    one.base = base;
    one.from_root = net_.from_root[on.face.index()];
    one.is_on_lid = on.face == net_.lid;
    return one;
  }

  [[nodiscard]] bool is_free(const Candidate& candidate) const {
    const Polygon smaller = shrunk(candidate.shape);
    return std::none_of(net_.faces.begin(), net_.faces.end(),
                        [&](const Polygon& face) { return !face.empty() && meet(smaller, face); });
  }

  /// Whether the tab, glued to its mate, lies inside of it, so that nothing sticks out.
  [[nodiscard]] bool is_covered(const Candidate& candidate, NetSide mate) const {
    const Polygon& own = net_.faces[candidate.on.face.index()];
    const Polygon& other = net_.faces[mate.face.index()];
    const Vec2 a = corner(own, candidate.on.side);
    const Vec2 along = glm::normalize(corner(own, candidate.on.side + 1) - a);
    const Vec2 out{along.y, -along.x};
    const Vec2 mate_a = corner(other, mate.side + 1);
    const Vec2 mate_along = glm::normalize(corner(other, mate.side) - mate_a);
    const Vec2 mate_in{mate_along.y, -mate_along.x};
    Polygon glued;
    for (const Vec2& p : shrunk(candidate.shape)) {
      glued.push_back(mate_a + mate_along * glm::dot(p - a, along) + mate_in * glm::dot(p - a, out));
    }
    const bool holds_corners =
        std::all_of(glued.begin(), glued.end(), [&](Vec2 p) { return geometry::contains(other, p); });
    return holds_corners &&
           std::none_of(other.begin(), other.end(), [&](Vec2 p) { return geometry::contains(glued, p); });
  }

  [[nodiscard]] bool clashes(const Candidate& candidate) const {
    const Polygon smaller = shrunk(candidate.shape);
    return std::any_of(chosen_.begin(), chosen_.end(),
                       [&](const Candidate* other) { return other != nullptr && meet(smaller, shrunk(other->shape)); });
  }

  void search(std::size_t place, std::size_t taped) {
    if (taped >= least_ || tried_ > most_tried) return;
    ++tried_;
    if (place == order_.size()) {
      least_ = taped;
      best_ = chosen_;
      return;
    }
    const std::size_t pair = order_[place];
    for (const Candidate& candidate : candidates_[pair]) {
      if (!clashes(candidate)) {
        chosen_[pair] = &candidate;
        search(place + 1, taped);
        chosen_[pair] = nullptr;
      }
      if (least_ == 0) return;
    }
    search(place + 1, taped + 1);
  }

  FlatNet& net_;
  std::vector<std::vector<Candidate>> candidates_;
  std::vector<std::size_t> order_;
  std::vector<const Candidate*> chosen_, best_;
  std::size_t least_ = 0, tried_ = 0;
};

}  // namespace

void add_tabs(FlatNet& net) { TabSearch(net).run(); }

}  // namespace fw::paper
