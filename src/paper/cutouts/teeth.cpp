#include "paper/cutouts/teeth.hpp"

#include <algorithm>
#include <cmath>
#include <numbers>

#include "geometry/flat_math.hpp"
#include "paper/cutouts/course.hpp"

namespace fw::paper {
namespace {

constexpr double between = 0.8;      // millimeters from one tooth to the next
constexpr double at_seam = 1;        // kept free beside the seam
constexpr double least_pitch = 5.8;  // from tooth to tooth
constexpr double least_top = 3.4;
constexpr double from_disk = 0.6;
constexpr double step = 0.25;

class RimTeeth {
 public:
  RimTeeth(const FlatNet& net, const Rim& rim)
      : net_(net),
        course_(rim.on_side),
        radius_(course_.length() / 2 / std::numbers::pi),
        depth_(std::clamp(radius_ / 4, 5.0, 6.5)),
        pitch_(std::max(least_pitch, course_.length() / static_cast<double>(most_teeth))) {}

  /// Those between two distances along the rim; `from_end`: the disk hangs at that end.
  [[nodiscard]] std::vector<Tooth> run(double from, double to, bool disk_at_end) const {
    while (to - from > pitch_) {
      const auto count = static_cast<std::size_t>((to - from + between) / pitch_);
      const double pitch = (to - from + between) / static_cast<double>(count);
      const Tooth nearest = disk_at_end ? tooth(to - pitch + between, to) : tooth(from, from + pitch - between);
      if (is_free(nearest)) return row(from, pitch, count);
      (disk_at_end ? to : from) += disk_at_end ? -step : step;
    }
    return {};
  }

  [[nodiscard]] const Course& course() const { return course_; }

 private:
  [[nodiscard]] std::vector<Tooth> row(double from, double pitch, std::size_t count) const {
    std::vector<Tooth> teeth;
    for (std::size_t i = 0; i < count; ++i) {
      const double begin = from + static_cast<double>(i) * pitch;
      Tooth one = tooth(begin, begin + pitch - between);
      if (is_free(one)) teeth.push_back(std::move(one));
    }
    return teeth;
  }

  /// Narrower at its top by so much that, folded in, it does not lie on its neighbors.
  [[nodiscard]] Tooth tooth(double from, double to) const {
    Tooth one{course_.part(from, to), {}, from, to};
    const Vec2 a = one.foot.front();
    const Vec2 b = one.foot.back();
    const double width = glm::length(b - a);
    const Vec2 along = (b - a) / width;
    const Vec2 out{along.y, -along.x};
    const double lean = std::min(std::max(depth_ * width / (2 * radius_), 0.8), (width - least_top) / 2);
    one.shape = {one.foot.rbegin(), one.foot.rend()};
    one.shape.push_back(a + along * lean + out * depth_);
    one.shape.push_back(b - along * lean + out * depth_);
    return one;
  }

  [[nodiscard]] bool is_free(const Tooth& one) const {
    // What is beyond the foot; there it touches its own face, and a rim that bends lies before its chord.
    const std::size_t n = one.shape.size();
    const Vec2& a = one.foot.front();
    const Vec2& b = one.foot.back();
    double before = 0.1;
    for (const Vec2& p : one.foot) before = std::max(before, 0.1 + geometry::distance_to_segment(p, a, b));
    const double share = before / depth_;
    const Polygon beyond{b + (one.shape[n - 1] - b) * share, a + (one.shape[n - 2] - a) * share, one.shape[n - 2],
                         one.shape[n - 1]};
    for (const Polygon& face : net_.faces) {
      if (!face.empty() && is_near(beyond, face)) return false;
    }
    return std::none_of(net_.pairs.begin(), net_.pairs.end(), [&](const GluedPair& pair) {
      return !pair.tab.empty() && geometry::overlap(beyond, pair.tab);
    });
  }

  /// Whether the tooth meets the face, or its upper corners come too near for scissors.
  [[nodiscard]] static bool is_near(const Polygon& tooth, const Polygon& face) {
    const auto box = geometry::flat_box(face);
    const auto own = geometry::flat_box(tooth);
    const bool is_far = own.lowest.x > box.highest.x + from_disk || own.highest.x < box.lowest.x - from_disk ||
                        own.lowest.y > box.highest.y + from_disk || own.highest.y < box.lowest.y - from_disk;
    if (is_far) return false;
    for (const Vec2& top : {tooth[2], tooth[3]}) {
      for (std::size_t i = 0; i < face.size(); ++i) {
        if (geometry::distance_to_segment(top, face[i], face[(i + 1) % face.size()]) < from_disk) return true;
      }
    }
    return geometry::overlap(tooth, face);
  }

  const FlatNet& net_;
  Course course_;
  double radius_, depth_, pitch_;
};

/// The line along the rim between two of its points, round the teeth that stand there.
std::vector<Vec2> toothed(const Rim& rim, std::size_t from, std::size_t to) {
  const Course course(rim.on_side);
  std::vector<Vec2> points;
  double at = course.at(from);
  for (const Tooth& tooth : rim.teeth) {
    if (tooth.from < at - 1e-6 || tooth.to > course.at(to) + 1e-6) continue;
    const std::vector<Vec2> gap = course.part(at, tooth.from);
    points.insert(points.end(), gap.begin(), gap.end());
    points.insert(points.end(), tooth.shape.end() - 2, tooth.shape.end());
    at = tooth.to;
  }
  const std::vector<Vec2> rest = course.part(at, course.at(to));
  points.insert(points.end(), rest.begin(), rest.end());
  return points;
}

}  // namespace

std::vector<Vec2> bridge_of(const Rim& rim) {
  if (!rim.from) return {};
  return {rim.on_side.begin() + static_cast<std::ptrdiff_t>(*rim.from),
          rim.on_side.begin() + static_cast<std::ptrdiff_t>(*rim.to) + 1};
}

std::vector<std::vector<Vec2>> cut_lines(const Rim& rim) {
  std::vector<std::vector<Vec2>> lines;
  if (!rim.from) {
    if (!rim.on_side.empty()) lines.push_back(toothed(rim, 0, rim.on_side.size() - 1));
    if (!rim.on_disk.empty()) lines.push_back(rim.on_disk);
    return lines;
  }
  lines.push_back(toothed(rim, 0, *rim.from));
  std::vector<Vec2>& points = lines.back();
  for (std::size_t i = *rim.from + 1; i > 0; --i) points.push_back(rim.on_disk[i - 1]);
  for (std::size_t i = rim.on_disk.size() - 1; i > *rim.to; --i) points.push_back(rim.on_disk[i - 1]);
  const std::vector<Vec2> after = toothed(rim, *rim.to, rim.on_side.size() - 1);
  points.push_back(rim.on_disk[*rim.to]);
  points.insert(points.end(), after.begin(), after.end());
  return lines;
}

void add_teeth(FlatNet& net) {
  for (Rim& rim : net.rims) {
    if (!rim.is_glued()) continue;
    const RimTeeth teeth(net, rim);
    const Course& course = teeth.course();
    const double begin = at_seam;
    const double end = course.length() - at_seam;
    if (!rim.from) {
      rim.teeth = teeth.run(begin, end, true);
      continue;
    }
    rim.teeth = teeth.run(begin, course.at(*rim.from), true);
    const std::vector<Tooth> after = teeth.run(course.at(*rim.to), end, false);
    rim.teeth.insert(rim.teeth.end(), after.begin(), after.end());
  }
}

}  // namespace fw::paper
