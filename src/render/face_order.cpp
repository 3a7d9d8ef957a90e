#include "render/face_order.hpp"

#include <algorithm>
#include <cmath>
#include <optional>

#include "geometry/polygon.hpp"

namespace fw::render {
namespace {

using geometry::Polygon;
using geometry::Vec2;
using geometry::Vec3;

struct Card {
  std::vector<Vec3> corners;
  Vec3 normal{};
  double offset = 0;    ///< of its plane: dot(normal, point) = offset
  double eye_side = 0;  ///< how far the eye is before the plane, with its sign
  double mean_depth = 0;
  Polygon picture;  ///< counterclockwise, in pixels of a square viewport
  Vec2 lowest{}, highest{};
};

constexpr Viewport square{1000, 1000};

/// Twice the area times the normal. Source: Newell's method.
Vec3 newell_normal(const std::vector<Vec3>& corners) {
  Vec3 sum{};
  for (std::size_t i = 0; i < corners.size(); ++i) sum += glm::cross(corners[i], corners[(i + 1) % corners.size()]);
  return sum;
}

Card card_of(const std::vector<Vec3>& corners, const Camera& camera) {
  Card card;
  const Vec3 eye = camera.eye();
  for (const Vec3& corner : corners) card.corners.push_back(corner - eye);  // the eye is the origin from here on
  Vec3 middle{};
  for (const Vec3& corner : card.corners) middle += corner / static_cast<double>(corners.size());
  std::vector<Vec3> around_middle;
  for (const Vec3& corner : card.corners) around_middle.push_back(corner - middle);
  const Vec3 doubled = newell_normal(around_middle);
  if (glm::length(doubled) > 0) card.normal = glm::normalize(doubled);
  card.offset = glm::dot(card.normal, middle);
  card.eye_side = -card.offset;
  card.mean_depth = glm::dot(middle, camera.forward());
  for (const Vec3& corner : corners) card.picture.push_back(camera.project(corner, square).pixel);
  if (geometry::signed_area(card.picture) < 0) std::reverse(card.picture.begin(), card.picture.end());
  card.lowest = card.highest = card.picture.front();
  for (const Vec2& corner : card.picture) {
    card.lowest = glm::min(card.lowest, corner);
    card.highest = glm::max(card.highest, corner);
  }
  return card;
}

bool boxes_meet(const Card& a, const Card& b) {
  return a.lowest.x < b.highest.x && b.lowest.x < a.highest.x && a.lowest.y < b.highest.y && b.lowest.y < a.highest.y;
}

enum class Side { Behind, Before, Level, Both };

/// Where `card` lies of the plane of `other`, as the eye sees it.
Side side_of(const Card& card, const Card& other, double slack) {
  bool behind = false, before = false;
  for (const Vec3& corner : card.corners) {
    const double height = (glm::dot(other.normal, corner) - other.offset) * (other.eye_side > 0 ? 1 : -1);
    behind = behind || height < -slack;
    before = before || height > slack;
  }
  if (behind && before) return Side::Both;
  if (behind) return Side::Behind;
  return before ? Side::Before : Side::Level;
}

std::optional<Vec2> crossing(Vec2 a, Vec2 b, Vec2 c, Vec2 d) {
  const Vec2 along = b - a, other = d - c, gap = c - a;
  const double turn = along.x * other.y - along.y * other.x;
  if (std::abs(turn) < 1e-12) return std::nullopt;
  const double s = (gap.x * other.y - gap.y * other.x) / turn;
  const double t = (gap.x * along.y - gap.y * along.x) / turn;
  if (s < 0 || s > 1 || t < 0 || t > 1) return std::nullopt;
  return a + along * s;
}

/// Points where both pictures are: corners of one in the other, and crossings of their sides.
std::vector<Vec2> common_points(const Polygon& a, const Polygon& b) {
  std::vector<Vec2> points;
  for (const Vec2& corner : a) {
    if (geometry::contains(b, corner)) points.push_back(corner);
  }
  for (const Vec2& corner : b) {
    if (geometry::contains(a, corner)) points.push_back(corner);
  }
  for (std::size_t i = 0; i < a.size(); ++i) {
    for (std::size_t j = 0; j < b.size(); ++j) {
      if (const auto point = crossing(a[i], a[(i + 1) % a.size()], b[j], b[(j + 1) % b.size()])) {
        points.push_back(*point);
      }
    }
  }
  return points;
}

/// How far the plane of a card is along a ray from the eye.
double distance_along(const Card& card, Vec3 direction) { return card.offset / glm::dot(card.normal, direction); }

/// Positive: `a` lies behind `b` where their pictures meet; zero where they do not.
double depth_lead(const Card& a, const Card& b, const Camera& camera) {
  double lead = 0;
  for (const Vec2& point : common_points(a.picture, b.picture)) {
    const Vec3 direction = camera.ray_through(point, square).direction;
    const double difference = distance_along(a, direction) - distance_along(b, direction);
    if (std::isfinite(difference) && std::abs(difference) > std::abs(lead)) lead = difference;
  }
  return lead;
}

/// Positive: paint `a` first; negative: `b`; zero: either way.
int painted_first(const Card& a, const Card& b, const Camera& camera, double slack) {
  if (std::abs(a.eye_side) <= slack || std::abs(b.eye_side) <= slack) return 0;  // seen edge-on
  if (!boxes_meet(a, b)) return 0;
  const Side a_of_b = side_of(a, b, slack);
  const Side b_of_a = side_of(b, a, slack);
  if (a_of_b == Side::Level || b_of_a == Side::Level) return 0;
  const bool behind = a_of_b == Side::Behind || b_of_a == Side::Before;
  const bool before = a_of_b == Side::Before || b_of_a == Side::Behind;
  if (behind && before) return 0;  // no ray meets both
  if (behind) return 1;
  if (before) return -1;
  const double lead = depth_lead(a, b, camera);
  return std::abs(lead) <= slack ? 0 : (lead > 0 ? 1 : -1);
}

/// Which face must be painted before which, and what is still to be painted.
class Painting {
 public:
  Painting(std::vector<Card> cards, const Camera& camera, double slack)
      : cards_(std::move(cards)), first_(cards_.size(), std::vector<char>(cards_.size(), 0)) {
    for (std::size_t a = 0; a < cards_.size(); ++a) {
      for (std::size_t b = a + 1; b < cards_.size(); ++b) {
        const int verdict = painted_first(cards_[a], cards_[b], camera, slack);
        if (verdict > 0) first_[a][b] = 1;
        if (verdict < 0) first_[b][a] = 1;
      }
      waiting_.push_back(a);
    }
  }

  [[nodiscard]] std::vector<std::size_t> order() {
    std::vector<std::size_t> order;
    while (!waiting_.empty()) {
      auto next = farthest([this](std::size_t card) { return is_free(card); });
      if (!next) {
        forget_pairs_apart();
        next = farthest([this](std::size_t card) { return is_free(card); });
      }
      if (!next) next = farthest([](std::size_t) { return true; });
      order.push_back(*next);
      waiting_.erase(std::find(waiting_.begin(), waiting_.end(), *next));
    }
    return order;
  }

 private:
  [[nodiscard]] bool is_free(std::size_t card) const {
    return std::none_of(waiting_.begin(), waiting_.end(), [&](std::size_t other) { return first_[other][card] != 0; });
  }

  template <class Allowed>
  [[nodiscard]] std::optional<std::size_t> farthest(Allowed allowed) const {
    std::optional<std::size_t> found;
    for (const std::size_t card : waiting_) {
      if (allowed(card) && (!found || cards_[card].mean_depth > cards_[*found].mean_depth)) found = card;
    }
    return found;
  }

  /// The plane tests order faces whose pictures are apart, too; in a ring those orders are in the way.
  void forget_pairs_apart() {
    for (const std::size_t a : waiting_) {
      for (const std::size_t b : waiting_) {
        if (first_[a][b] != 0 && !geometry::overlap(cards_[a].picture, cards_[b].picture)) first_[a][b] = 0;
      }
    }
  }

  std::vector<Card> cards_;
  std::vector<std::vector<char>> first_;
  std::vector<std::size_t> waiting_;
};

}  // namespace

std::vector<std::size_t> back_to_front(const std::vector<std::vector<Vec3>>& faces, const Camera& camera) {
  std::vector<Card> cards;
  double size = 0;
  for (const auto& face : faces) {
    cards.push_back(card_of(face, camera));
    for (const Vec3& corner : face) size = std::max(size, glm::length(corner - faces.front().front()));
  }
  return Painting(std::move(cards), camera, size * 1e-7).order();
}

}  // namespace fw::render
