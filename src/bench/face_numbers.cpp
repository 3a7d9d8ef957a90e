#include "bench/face_numbers.hpp"

#include <algorithm>
#include <cmath>

#include "figures/label_layout.hpp"
#include "geometry/flat_math.hpp"
#include "geometry/ray.hpp"
#include "solids/body/standing.hpp"

namespace fw::bench {

namespace {

using figures::Rect;
using figures::Segment;
using geometry::Polygon;
using geometry::Vec2;

constexpr double usual_radius = 0.72;  // of the label's size
constexpr double least_radius = 0.55;  // below it a number is not read from the back
constexpr double low_bench = 8;        // label sizes: the circles must leave the faces to be seen
constexpr double largest_share = 1.0 / 3;
constexpr double pi = 3.141592653589793;

double distance_to(const Segment& s, Vec2 p) { return geometry::distance_to_segment(p, s.from, s.to); }

/// Distance to the outline, whether inside of it or outside.
double distance_to(const Polygon& outline, Vec2 p) {
  double least = 1e300;
  for (std::size_t i = 0; i < outline.size(); ++i) {
    least = std::min(least, geometry::distance_to_segment(p, outline[i], outline[(i + 1) % outline.size()]));
  }
  return least;
}

/// The facets as they are seen, in pixels of the window.
std::vector<Polygon> seen_facets(const BenchPicture& picture) {
  std::vector<Polygon> seen;
  for (const auto& corners : picture.look.faces) {
    seen.emplace_back();
    for (const geometry::Vec3& corner : corners) {
      seen.back().push_back(picture.camera.project(corner, picture.viewport).pixel +
                            Vec2{picture.rect.x, picture.rect.y});
    }
  }
  return seen;
}

/// A face as it is seen.
struct SeenFace {
  Vec2 point;  ///< well inside of it
  bool in_sight = false;
  double area = 0;
  double room = 0;  ///< from the point to its outline
  std::vector<Polygon> facets;
};

/// Where the number of a face stands: on one that bends, the middle of the strip that looks at the eye most squarely.
geometry::Vec3 number_point(const BenchPicture& picture, const solids::Body& body, FaceId face) {
  const solids::PlacedFace placed(body, picture.look.faces, face);
  if (!body.bends(face)) {
    return placed.label_point();
  }
  const std::size_t count = body.facet_count(face);
  geometry::Vec3 best = placed.middle_of(count / 2);
  double most = 0;
  for (std::size_t step = 0; step < count;
       ++step) {  // from the middle outward, so that the middle wins where all agree
    const std::size_t strip = count / 2 + (step % 2 == 0 ? step / 2 : count - (step + 1) / 2);
    const std::size_t facet = body.first_facet(face).index() + strip % count;
    const std::vector<geometry::Vec3>& corners = picture.look.faces[facet];
    const geometry::Vec3 normal = glm::normalize(glm::cross(corners[1] - corners[0], corners.back() - corners[0]));
    const geometry::Vec3 middle = placed.middle_of(strip % count);
    const double facing = std::abs(glm::dot(normal, glm::normalize(picture.camera.eye() - middle)));
    const Vec2 pixel = picture.camera.project(middle, picture.viewport).pixel;
    const auto hit = geometry::nearest_hit(picture.look.faces, picture.camera.ray_through(pixel, picture.viewport));
    if (facing > most + 1e-6 && hit && hit->face.index() == facet) {
      most = facing;
      best = middle;
    }
  }
  return best;
}

/// From a point of a face to the drawn sides of one of its facets.
double room_before(const BenchPicture& picture, const std::vector<Polygon>& facets, std::size_t facet, Vec2 point) {
  const Polygon& outline = facets[facet];
  double room = 1e300;
  for (std::size_t i = 0; i < outline.size(); ++i) {
    if (picture.drawn_sides.empty() || picture.drawn_sides[facet][i]) {
      room = std::min(room, geometry::distance_to_segment(point, outline[i], outline[(i + 1) % outline.size()]));
    }
  }
  return room;
}

bool is_front(const Polygon& facet) { return geometry::signed_area(facet) > 0; }

SeenFace seen_face(const BenchPicture& picture, const std::vector<Polygon>& facets, const solids::Body& body,
                   FaceId face) {
  SeenFace seen;
  const geometry::Vec3 point = number_point(picture, body, face);
  const render::Projected projected = picture.camera.project(point, picture.viewport);
  seen.point = projected.pixel + Vec2{picture.rect.x, picture.rect.y};
  seen.in_sight = projected.depth > 0 && face_behind(picture, projected.pixel) == face;
  const auto shows =
      seen.in_sight && body.bends(face)
          ? geometry::nearest_hit(picture.look.faces, picture.camera.ray_through(projected.pixel, picture.viewport))
          : std::nullopt;
  seen.room = 1e300;  // to be taken from the sides that are drawn: a curved side is one face, strips or no strips
  for (std::size_t i = 0; i < picture.faces.size(); ++i) {
    if (picture.faces[i] == face) {
      seen.facets.push_back(facets[i]);
      if (shows && is_front(facets[i]) != is_front(facets[shows->face.index()])) {
        continue;  // the far part of a face that bends leaves the near one its room
      }
      seen.area += std::abs(geometry::signed_area(facets[i]));
      seen.room = std::min(seen.room, room_before(picture, facets, i, seen.point));
    }
  }
  return seen;
}

/// A place on a face behind others where its number is clear of theirs.
std::optional<Vec2> place_between(const SeenFace& seen, double radius, const std::vector<FaceNumber>& numbers) {
  const auto is_clear = [&](Vec2 p) {
    return std::all_of(numbers.begin(), numbers.end(), [&](const FaceNumber& other) {
      return glm::distance(other.center, p) > other.radius + radius * 1.15;
    });
  };
  if (is_clear(seen.point)) {
    return seen.point;
  }
  std::optional<Vec2> nearest;
  for (const Polygon& facet : seen.facets) {
    const Rect box = figures::bounding_rect(facet);
    constexpr int steps = 12;
    for (int i = 1; i < steps * steps; ++i) {
      const int column = i % steps;
      const int row = i / steps;
      const Vec2 p{box.x + box.w * column / steps, box.y + box.h * row / steps};
      const bool fits = geometry::contains(facet, p) && distance_to(facet, p) > radius && is_clear(p);
      if (fits && (!nearest || glm::distance(p, seen.point) < glm::distance(*nearest, seen.point))) {
        nearest = p;
      }
    }
  }
  return nearest;
}

/// A facet with the box round it, by which most places are ruled out.
struct BoxedFacet {
  Polygon outline;
  Rect box;
};

/// What a number beside the figure must keep clear of.
struct Taken {
  std::vector<BoxedFacet> facets;
  std::vector<Rect> boxes;
  std::vector<Segment> leaders;
};

bool is_free(const Taken& taken, Vec2 p, double radius) {
  const Rect box{p.x - radius, p.y - radius, 2 * radius, 2 * radius};
  const double apart = radius * 1.2;
  return std::none_of(taken.facets.begin(), taken.facets.end(),
                      [&](const BoxedFacet& facet) {
                        return facet.box.inset(-apart).contains(p) &&
                               (geometry::contains(facet.outline, p) || distance_to(facet.outline, p) < apart);
                      }) &&
         std::none_of(taken.boxes.begin(), taken.boxes.end(), [&](const Rect& other) { return box.overlaps(other); });
}

/// How badly the number `n` would stand at `p`; nothing where it would lie on another.
std::optional<double> cost_at(const BenchPicture& picture, const Taken& taken, std::size_t n, Vec2 p) {
  const FaceNumber& number = picture.numbers[n];
  const Segment leader{p, number.leader->to};
  double cost = glm::distance(p, leader.to);
  for (std::size_t i = 0; i < picture.numbers.size(); ++i) {
    const FaceNumber& other = picture.numbers[i];
    const bool stands = i != n && !(other.leader && other.center == other.leader->to);
    if (!stands) {
      continue;
    }
    if (glm::distance(other.center, p) < other.radius + number.radius * 1.15) {
      return std::nullopt;
    }
    cost += distance_to(leader, other.center) < other.radius * 1.1 ? 12 * number.radius : 0;
    cost += other.leader && distance_to(*other.leader, p) < number.radius * 1.1 ? 12 * number.radius : 0;
    cost += other.leader && figures::cross(*other.leader, leader) ? 6 * number.radius : 0;
  }
  for (const Segment& other : taken.leaders) {
    cost += figures::cross(other, leader) || distance_to(other, p) < number.radius * 1.1 ? 6 * number.radius : 0;
  }
  for (const Rect& box : taken.boxes) {
    cost += figures::meets(leader, box) ? 12 * number.radius : 0;
  }
  return cost;
}

}  // namespace

std::optional<FaceId> face_behind(const BenchPicture& picture, Vec2 pixel) {
  const auto hit = geometry::nearest_hit(picture.look.faces, picture.camera.ray_through(pixel, picture.viewport));
  return hit ? std::optional(picture.faces[hit->face.index()]) : std::nullopt;
}

void add_face_numbers(BenchPicture& picture, const solids::Body& body, const std::vector<FaceNumber>& faces,
                      bool also_hidden, const Theme& theme) {
  const std::vector<Polygon> facets = seen_facets(picture);
  const double label = theme.sizes.label;
  const double least = least_radius * label;
  const double most = picture.rect.h > low_bench * label ? usual_radius * label : least;
  std::vector<std::pair<FaceNumber, SeenFace>> hidden;
  for (FaceNumber number : faces) {
    SeenFace seen = seen_face(picture, facets, body, number.face);
    if (!seen.in_sight) {
      hidden.emplace_back(number, std::move(seen));
      continue;
    }
    const double fitting = std::min({most, std::sqrt(seen.area * largest_share / pi), seen.room * 0.95});
    number.center = seen.point;
    number.radius = std::max(least, fitting);
    const bool is_clear = std::all_of(picture.numbers.begin(), picture.numbers.end(), [&](const FaceNumber& other) {
      return other.leader || glm::distance(other.center, number.center) > other.radius + number.radius;
    });
    if (fitting < least || !is_clear) {
      number.leader = Segment{seen.point, seen.point};
    }
    picture.numbers.push_back(number);
  }
  for (auto& [number, seen] : hidden) {
    if (!also_hidden) {
      return;
    }
    number.is_behind = true;
    number.radius = least;
    const std::optional<Vec2> place = place_between(seen, least, picture.numbers);
    number.center = place.value_or(seen.point);
    if (!place) {
      number.leader = Segment{seen.point, seen.point};
    }
    picture.numbers.push_back(number);
  }
}

namespace {

Taken taken_places(const BenchPicture& picture, const MeasureText& measure, const Theme& theme) {
  Taken taken;
  for (Polygon& outline : seen_facets(picture)) {
    const Rect box = figures::bounding_rect(outline);
    taken.facets.push_back({std::move(outline), box});
  }
  for (const BenchLabel& label : picture.labels) {
    const Vec2 size = measure(label.text);
    const double gap = theme.sizes.space * 0.5;
    taken.boxes.push_back(Rect{label.center.x - size.x / 2, label.center.y - size.y / 2, size.x, size.y}.inset(-gap));
    if (label.leader) {
      taken.leaders.push_back(*label.leader);
    }
  }
  return taken;
}

std::vector<Vec2> free_places(const Taken& taken, const Rect& room, double radius) {
  std::vector<Vec2> free;
  for (double y = room.y; y <= room.bottom(); y += radius * 0.8) {
    for (double x = room.x; x <= room.right(); x += radius * 0.8) {
      if (is_free(taken, {x, y}, radius)) {
        free.push_back({x, y});
      }
    }
  }
  return free;
}

/// Those with a leader. The ones near the rim first: their leaders are short, and the others go round them.
std::vector<std::size_t> led_from_the_rim(const BenchPicture& picture, const std::vector<Vec2>& free) {
  std::vector<std::pair<double, std::size_t>> order;
  for (std::size_t i = 0; i < picture.numbers.size(); ++i) {
    if (picture.numbers[i].leader) {
      double way_out = 1e300;
      for (const Vec2& p : free) {
        way_out = std::min(way_out, glm::distance(p, picture.numbers[i].leader->to));
      }
      order.emplace_back(way_out, i);
    }
  }
  std::sort(order.begin(), order.end());
  std::vector<std::size_t> led;
  std::transform(order.begin(), order.end(), std::back_inserter(led), [](const auto& one) { return one.second; });
  return led;
}

}  // namespace

void lead_face_numbers(BenchPicture& picture, const MeasureText& measure, const Theme& theme) {
  const auto first = std::find_if(picture.numbers.begin(), picture.numbers.end(),
                                  [](const FaceNumber& number) { return number.leader.has_value(); });
  if (first == picture.numbers.end()) {
    return;
  }
  const double radius = first->radius;
  Taken taken = taken_places(picture, measure, theme);
  const Rect room = picture.rect.inset(radius + theme.sizes.space * 0.5);
  const std::vector<Vec2> free = free_places(taken, room, radius);
  for (const std::size_t i : led_from_the_rim(picture, free)) {
    FaceNumber& number = picture.numbers[i];
    std::optional<std::pair<double, Vec2>> best;
    for (const Vec2& p : free) {
      const std::optional<double> cost = cost_at(picture, taken, i, p);
      if (cost && (!best || *cost < best->first)) {
        best = {*cost, p};
      }
    }
    if (best) {
      number.center = best->second;
      number.leader->from = best->second;
    } else {
      number.leader.reset();  // no room anywhere: on its face
    }
  }
}

}  // namespace fw::bench
