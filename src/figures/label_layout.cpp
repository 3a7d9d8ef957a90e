#include "figures/label_layout.hpp"

#include <algorithm>
#include <array>
#include <cmath>
#include <numeric>
#include <utility>

#include "geometry/flat_math.hpp"

namespace fw::figures {
namespace {

struct Candidate {
  Vec2 center;
  Segment segment;   ///< what the label is beside
  Segment link;      ///< from the label to its segment
  bool led = false;  ///< whether the link is drawn, as a leader
  double cost = 0;
  std::size_t number = 0;  ///< of the segment: 0 the label's own
};

/// Where on its segment a label may stand, and how far from it in label heights; the rest of a candidate's cost.
constexpr std::array<double, 9> places{0.5, 0.3, 0.7, 0.4, 0.6, 0.2, 0.8, 0.08, 0.92};
constexpr std::array<double, 14> distances{0, 0.3, 0.7, 1.1, 1.6, 2.2, 3, 3.8, 4.6, 5.5, 6.5, 7.5, 8.7, 10};
constexpr double farthest_beside = 0.5;  // label heights; beyond it a leader is drawn
constexpr double place_cost = 1.6;
constexpr double near_side_cost = 0.5;
constexpr double led_askew_cost = 0.4;
constexpr double led_cost = 2.5;            // dearer than a place beside another segment
constexpr double other_segment_cost = 1.5;  // dearer than any place beside the label's own segment
constexpr double inside_cost = 2;           // on a face
// A label that meets something has a trouble of 3 or more. These two let any clear place, however far and however
// its leader runs, win against it: 12 * 1.4 + the dearest place < 12 * 3.
constexpr double worst_blemish = 1.4;
constexpr double trouble_weight = 12;

Rect box_at(Vec2 center, Vec2 size) { return {center.x - size.x / 2, center.y - size.y / 2, size.x, size.y}; }

Vec2 nearest_in(const Rect& rect, Vec2 p) {
  return {std::clamp(p.x, rect.x, rect.right()), std::clamp(p.y, rect.y, rect.bottom())};
}

bool is_on_face(Vec2 point, const LabelSurroundings& around) {
  return std::any_of(around.faces.begin(), around.faces.end(),
                     [&](const geometry::Polygon& face) { return geometry::contains(face, point); });
}

bool meets_disc(const Rect& rect, const Disc& disc) {
  return glm::distance(nearest_in(rect, disc.center), disc.center) < disc.radius;
}

double distance_between(const Segment& s, Vec2 p) { return geometry::distance_to_segment(p, s.from, s.to); }

bool strikes(const Segment& s, const Disc& disc) { return distance_between(s, disc.center) < disc.radius; }

double distance_between(const Segment& s, const Rect& box) {
  if (meets(s, box)) return 0;
  double least = std::min(glm::distance(nearest_in(box, s.from), s.from), glm::distance(nearest_in(box, s.to), s.to));
  for (const Vec2& corner :
       {Vec2{box.x, box.y}, Vec2{box.right(), box.y}, Vec2{box.x, box.bottom()}, Vec2{box.right(), box.bottom()}}) {
    least = std::min(least, distance_between(s, corner));
  }
  return least;
}

bool is_same(const Segment& a, const Segment& b) {
  constexpr double near = 0.5;
  return (glm::distance(a.from, b.from) < near && glm::distance(a.to, b.to) < near) ||
         (glm::distance(a.from, b.to) < near && glm::distance(a.to, b.from) < near);
}

/// The rivals of a label: not what it measures itself.
std::vector<Segment> rivals_of(const LabelRequest& request, const LabelSurroundings& around) {
  std::vector<Segment> rivals;
  for (const Segment& rival : around.lines) {
    const auto is_it = [&](const Segment& own) { return is_same(own, rival); };
    if (!is_it(request.segment) && std::none_of(request.others.begin(), request.others.end(), is_it)) {
      rivals.push_back(rival);
    }
  }
  return rivals;
}

/// A way from the segment to the label: to the far side, to the near side, and with a leader along the window's sides
/// and between them.
struct Way {
  Vec2 direction;
  double cost;
};

/// The places at one segment, beside it or farther off with a leader; each `cost` dearer than it would be.
void add_candidates(std::vector<Candidate>& all, std::size_t number, double cost, bool led, const LabelRequest& request,
                    const LabelSurroundings& around) {
  const Segment& s = number == 0 ? request.segment : request.others[number - 1];
  const Vec2 along = s.to - s.from;
  const double length = glm::length(along);
  const Vec2 middle = (s.from + s.to) * 0.5;
  Vec2 normal = length > 1e-9 ? Vec2{-along.y, along.x} / length : Vec2{0, -1};
  if (glm::dot(normal, middle - around.away_from) < 0) normal = -normal;
  constexpr double slant = 0.7071067811865476;
  const std::array<Way, 10> ways{{{normal, 0},
                                  {-normal, near_side_cost},
                                  {{1, 0}, led_askew_cost},
                                  {{-1, 0}, led_askew_cost},
                                  {{0, 1}, led_askew_cost},
                                  {{0, -1}, led_askew_cost},
                                  {{slant, slant}, led_askew_cost},
                                  {{-slant, slant}, led_askew_cost},
                                  {{slant, -slant}, led_askew_cost},
                                  {{-slant, -slant}, led_askew_cost}}};
  for (const double distance : distances) {
    if ((distance > farthest_beside) != led) continue;
    for (std::size_t i = 0; i < places.size(); ++i) {
      const Vec2 foot = s.from + along * places[i];
      for (std::size_t w = 0; w < (led ? ways.size() : 2); ++w) {
        const Vec2 way = ways[w].direction;
        const double reach = (std::abs(way.x) * request.size.x + std::abs(way.y) * request.size.y) / 2 + around.gap;
        const Vec2 center = foot + way * (reach + distance * request.size.y);
        const Segment link{nearest_in(box_at(center, request.size).inset(-around.gap / 2), foot), foot};
        const Vec2 led_along = link.to - link.from;
        // A leader that runs on along its segment would look like a part of it.
        if (led && std::abs(glm::dot(led_along, along)) > 0.9 * glm::length(led_along) * length) continue;
        const double dearer =
            cost + ways[w].cost + (led ? led_cost : 0) + (is_on_face(center, around) ? inside_cost : 0);
        all.push_back({center, s, link, led, dearer + distance + place_cost * std::abs(places[i] - 0.5), number});
      }
    }
  }
}

void sort_by_cost(std::vector<Candidate>& all) {
  std::stable_sort(all.begin(), all.end(), [](const Candidate& a, const Candidate& b) { return a.cost < b.cost; });
}

/// The candidates of one label, cheapest first. Those with a leader are many and seldom needed, so they are made when
/// nothing beside a segment is as cheap.
class Choices {
 public:
  Choices(const LabelRequest& request, const LabelSurroundings& around) : request_(&request), around_(&around) {
    add_candidates(beside_, 0, 0, false, request, around);
    for (std::size_t i = 1; i <= request.others.size(); ++i) {
      add_candidates(beside_, i, other_segment_cost, false, request, around);
    }
    sort_by_cost(beside_);
  }
  [[nodiscard]] const std::vector<Candidate>& beside() const { return beside_; }
  [[nodiscard]] const std::vector<Candidate>& led() {
    if (led_.empty()) {
      add_candidates(led_, 0, 0, true, *request_, *around_);
      sort_by_cost(led_);
    }
    return led_;
  }

 private:
  const LabelRequest* request_;
  const LabelSurroundings* around_;
  std::vector<Candidate> beside_, led_;
};

/// A line and the box round it, by which most lines are ruled out.
struct BoxedLine {
  Segment line;
  Rect box;
};

/// What stands already.
struct Scene {
  const LabelSurroundings& around;
  const std::vector<BoxedLine>& lines;
  std::vector<Rect> taken{};
  std::vector<Segment> leaders{};
};

Rect hull(const Rect& rect, const Segment& s) {
  const double x = std::min({rect.x, s.from.x, s.to.x});
  const double y = std::min({rect.y, s.from.y, s.to.y});
  return {x, y, std::max({rect.right(), s.from.x, s.to.x}) - x, std::max({rect.bottom(), s.from.y, s.to.y}) - y};
}

bool touch(const Rect& a, const Rect& b) {
  return a.x <= b.right() && b.x <= a.right() && a.y <= b.bottom() && b.y <= a.bottom();
}

/// How badly a candidate stands; 0: free. Not counted further than `stop`.
double trouble(const Candidate& c, const LabelRequest& request, const std::vector<Segment>& rivals, const Scene& scene,
               double stop) {
  const Vec2 size = request.size;
  const LabelSurroundings& around = scene.around;
  const Rect box = box_at(c.center, size);
  const Rect wide = box.inset(-around.gap * 0.6);
  double sum = around.viewport.contains(box) ? 0 : 12;
  double blemish = 0;  // of the leader alone: never worse than a label that meets something
  sum += meets(c.segment, box.inset(-around.gap * 0.3)) ? 4 : 0;
  for (const auto* boxes : {&scene.taken, &around.boxes}) {
    for (const Rect& other : *boxes) {
      sum += wide.overlaps(other) ? 8 : 0;
      sum += c.led && meets(c.link, other) ? 6 : 0;
    }
  }
  const Segment shaft{c.link.from, c.link.to + (c.link.from - c.link.to) * 0.05};
  // A label with a leader must not look as if it stood beside another line.
  const Rect apart = c.led ? box.inset(-around.gap * 2) : wide;
  const Rect reach = hull(apart, c.link);
  for (const BoxedLine& other : scene.lines) {
    if (sum >= stop) return sum;
    if (!touch(other.box, reach)) continue;
    sum += meets(other.line, wide) ? 3 : 0;
    if (other.line == c.segment || !cross(shaft, other.line)) continue;
    // Without a leader nobody would know which of the two lines is meant.
    (c.led ? blemish : sum) += c.led ? 0.45 : 3;
  }
  const double own = distance_between(c.segment, box);
  for (const Segment& rival : rivals) {
    if (sum >= stop) return sum;
    const bool misleads = c.led ? meets(rival, apart) : distance_between(rival, box) < own;
    sum += misleads ? 3 : 0;
  }
  for (const Segment& leader : scene.leaders) {
    sum += meets(leader, wide) ? 6 : 0;
    blemish += c.led && cross(c.link, leader) ? 2 : 0;
  }
  for (const Disc& disc : around.discs) {
    sum += meets_disc(wide, disc) ? 5 : 0;
    sum += c.led && strikes(c.link, disc) ? 3 : 0;
  }
  return sum + std::min(blemish, worst_blemish);
}

struct Attempt {
  std::vector<PlacedLabel> labels;
  std::vector<std::size_t> not_clear;
};

/// The best candidate found so far.
struct Best {
  const Candidate* place = nullptr;
  double total = 1e9;
  double trouble = 1e9;
};

void improve(Best& best, const std::vector<Candidate>& candidates, const LabelRequest& request,
             const std::vector<Segment>& rivals, const Scene& scene) {
  for (const Candidate& c : candidates) {
    if (c.cost >= best.total) return;  // they come cheapest first
    const double bad = trouble(c, request, rivals, scene, (best.total - c.cost) / trouble_weight);
    const double total = trouble_weight * bad + c.cost;
    if (total < best.total) best = {&c, total, bad};
  }
}

Attempt attempt(const std::vector<LabelRequest>& requests, Scene scene, std::vector<Choices>& choices,
                const std::vector<std::size_t>& order) {
  Attempt result{std::vector<PlacedLabel>(requests.size()), {}};
  for (const std::size_t i : order) {
    const std::vector<Segment> rivals = rivals_of(requests[i], scene.around);
    Best best;
    improve(best, choices[i].beside(), requests[i], rivals, scene);
    if (best.total > led_cost) improve(best, choices[i].led(), requests[i], rivals, scene);
    const Candidate& place = *best.place;
    const Rect box = box_at(place.center, requests[i].size);
    // A leader across an edge is no beauty, but the label itself is clear.
    const bool clear = best.trouble <= worst_blemish && scene.around.viewport.contains(box);
    result.labels[i] = {place.center, place.led ? std::optional<Segment>(place.link) : std::nullopt, place.number,
                        clear};
    if (!clear) result.not_clear.push_back(i);
    scene.taken.push_back(box);
    if (place.led) scene.leaders.push_back(place.link);
  }
  return result;
}

}  // namespace

bool cross(const Segment& a, const Segment& b) {
  const auto turn = [](Vec2 p, Vec2 q, Vec2 r) { return (q.x - p.x) * (r.y - p.y) - (q.y - p.y) * (r.x - p.x); };
  return (turn(a.from, a.to, b.from) > 0) != (turn(a.from, a.to, b.to) > 0) &&
         (turn(b.from, b.to, a.from) > 0) != (turn(b.from, b.to, a.to) > 0);
}

bool meets(const Segment& segment, const Rect& rect) {
  // Source: the clipping of Liang and Barsky (1984).
  const Vec2 d = segment.to - segment.from;
  double first = 0;
  double last = 1;
  const auto clip = [&first, &last](double step, double room) {
    if (step == 0) return room >= 0;
    const double t = room / step;
    if (step < 0) {
      first = std::max(first, t);
    } else {
      last = std::min(last, t);
    }
    return first <= last;
  };
  return clip(-d.x, segment.from.x - rect.x) && clip(d.x, rect.right() - segment.from.x) &&
         clip(-d.y, segment.from.y - rect.y) && clip(d.y, rect.bottom() - segment.from.y);
}

std::vector<PlacedLabel> place_labels(const std::vector<LabelRequest>& requests,
                                      const LabelSurroundings& surroundings) {
  std::vector<BoxedLine> lines;
  lines.reserve(surroundings.lines.size());
  for (const Segment& line : surroundings.lines) lines.push_back({line, bounding_rect({line.from, line.to})});
  std::vector<Choices> choices;
  choices.reserve(requests.size());
  for (const LabelRequest& request : requests) choices.emplace_back(request, surroundings);
  std::vector<std::size_t> order(requests.size());
  std::iota(order.begin(), order.end(), std::size_t{0});
  Attempt best = attempt(requests, {surroundings, lines}, choices, order);
  // A label that found no room chooses first in the next attempt.
  constexpr int attempts = 3;
  for (int i = 0; i < attempts && !best.not_clear.empty(); ++i) {
    std::stable_partition(order.begin(), order.end(), [&best](std::size_t at) { return !best.labels[at].clear; });
    Attempt next = attempt(requests, {surroundings, lines}, choices, order);
    if (next.not_clear.size() >= best.not_clear.size()) break;
    best = std::move(next);
  }
  return best.labels;
}

}  // namespace fw::figures
