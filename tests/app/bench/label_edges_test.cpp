#include <gmock/gmock.h>

#include <cmath>

#include "app/state/model_support.hpp"
#include "bench/bench_picture.hpp"
#include "geometry/ray.hpp"
#include "state/derived.hpp"

// Which edge a label is read on: the nearest one in sight.
namespace fw::bench::test::label_edges_test {

using namespace state;
using namespace state::test;

namespace {

using figures::Rect;
using figures::Segment;
using geometry::Vec2;
using geometry::Vec3;

/// About as wide as a font makes it.
MeasureText rough_measure(const Theme& theme) {
  return [size = theme.sizes.label](const std::string& text) {
    return Vec2{0.52 * size * static_cast<double>(text.size()), 1.1 * size};
  };
}

/// A line that is drawn on the bench.
struct Drawn {
  Segment seen;
  double length = 0;  ///< in space
  bool in_sight = false;
};

bool is_visible(const BenchPicture& picture, Vec3 point) {
  const render::Projected seen = picture.camera.project(point, picture.viewport);
  const geometry::Ray ray = picture.camera.ray_through(seen.pixel, picture.viewport);
  const auto hit = geometry::nearest_hit(picture.look.faces, ray);
  return !hit || hit->distance > glm::distance(point, ray.origin) * (1 - 1e-6) - 1e-9;
}

Drawn drawn(const BenchPicture& picture, Vec3 from, Vec3 to) {
  const auto pixel = [&](Vec3 p) {
    return picture.camera.project(p, picture.viewport).pixel + Vec2{picture.rect.x, picture.rect.y};
  };
  Drawn line{{pixel(from), pixel(to)}, glm::distance(from, to), false};
  for (const double place : {0.07, 0.3, 0.5, 0.7, 0.93}) {
    line.in_sight = line.in_sight || is_visible(picture, from + (to - from) * place);
  }
  return line;
}

std::vector<Drawn> all_drawn(const BenchPicture& picture) {
  std::vector<Drawn> lines;
  for (std::size_t facet = 0; facet < picture.look.faces.size(); ++facet) {
    const auto& corners = picture.look.faces[facet];
    for (std::size_t i = 0; i < corners.size(); ++i) {
      if (picture.drawn_sides.empty() || picture.drawn_sides[facet][i]) {
        lines.push_back(drawn(picture, corners[i], corners[(i + 1) % corners.size()]));
      }
    }
  }
  for (const render::LineLook& line : picture.look.lines) {
    lines.push_back(drawn(picture, line.from, line.to));
  }
  return lines;
}

double distance_to(const Segment& s, Vec2 p) {
  const Vec2 along = s.to - s.from;
  const double length = glm::dot(along, along);
  const double t = length > 0 ? std::clamp(glm::dot(p - s.from, along) / length, 0.0, 1.0) : 0.0;
  return glm::distance(p, s.from + along * t);
}

double distance_to(const Segment& s, const Rect& box) {
  if (figures::meets(s, box)) {
    return 0;
  }
  const auto outside = [&](Vec2 p) {
    return glm::distance(p, Vec2{std::clamp(p.x, box.x, box.right()), std::clamp(p.y, box.y, box.bottom())});
  };
  double least = std::min(outside(s.from), outside(s.to));
  for (const Vec2& corner :
       {Vec2{box.x, box.y}, Vec2{box.right(), box.y}, Vec2{box.x, box.bottom()}, Vec2{box.right(), box.bottom()}}) {
    least = std::min(least, distance_to(s, corner));
  }
  return least;
}

constexpr double least_apart = 0.2;  // of a label's height, between one with a leader and what it does not measure

/// What is wrong with the place of a label; empty if nothing is. `length`: of what it measures, in space.
std::string fault(const BenchLabel& label, const solids::Mark& mark, const std::vector<Drawn>& lines, Vec2 size) {
  const double length = glm::distance(mark.from, mark.to);
  const auto measures = [&](const Drawn& line) { return std::abs(line.length - length) < 1e-6 * (1 + length); };
  const Rect box{label.center.x - size.x / 2, label.center.y - size.y / 2, size.x, size.y};
  if (label.leader) {
    double own = 1e300;
    for (const Drawn& line : lines) {
      own = measures(line) ? std::min(own, distance_to(line.seen, label.leader->to)) : own;
    }
    if (own > 1) {
      return label.text + ": its leader ends at another edge";
    }
    for (const Drawn& line : lines) {
      if (line.in_sight && !measures(line) && distance_to(line.seen, box) < least_apart * size.y) {
        return label.text + ": it has a leader, and stands at another edge";
      }
    }
    return "";
  }
  double own = 1e300;
  double other = 1e300;
  for (const Drawn& line : lines) {
    if (measures(line)) {
      own = std::min(own, distance_to(line.seen, box));
    } else if (line.in_sight) {
      other = std::min(other, distance_to(line.seen, box));
    }
  }
  return own <= other + 0.5 ? "" : label.text + ": nearer to another edge";
}

struct Looked {
  std::size_t labels = 0;
  std::size_t led = 0;
  std::vector<std::string> faults;
};

void look_at(Model model, const std::string& name, const Rect& rect, double height, Looked& looked) {
  const Theme theme = Theme::make(theme::ThemeName::Paper, height);
  DerivedMemo memo;
  for (const double fold : {0.0, 0.25, 0.5, 0.75, 1.0}) {
    for (const double turn : {0.0, 0.6, -0.8, 1.7, 3.0}) {
      for (const double tilt : {0.0, 0.5, -0.25}) {
        model.view.fold = fold;
        model.view.turn = turn;
        model.view.tilt = tilt;
        const MeasureText measure = rough_measure(theme);
        const BenchPicture picture = bench_picture(model, memo.of(model.state), theme, rect, measure);
        const std::vector<Drawn> lines = all_drawn(picture);
        const solids::Solid& solid = model.state.desk().solid;
        for (const BenchLabel& label : picture.labels) {
          const solids::Mark& mark = solid.marks()[*label.mark];
          ++looked.labels;
          looked.led += label.leader ? 1U : 0U;
          const std::string wrong = fault(label, mark, lines, measure(label.text));
          if (!wrong.empty()) {
            looked.faults.push_back(name + ", fold " + std::to_string(fold) + ", turn " + std::to_string(turn) +
                                    ", tilt " + std::to_string(tilt) + ", " + std::to_string(rect.w) + ", " +
                                    mark.title + ": " + wrong);
          }
        }
      }
    }
  }
}

// Of every kind on the shelf, on the benches of usual windows, from all around, at every quarter of the fold.
TEST(SlowLabelEdges, TheNearestEdgeInSightOfALabelIsTheOneItMeasures) {
  Looked looked;
  for (const auto& [rect, height] :
       {std::pair{Rect{90, 160, 700, 420}, 720.0}, std::pair{Rect{80, 130, 430, 480}, 768.0},
        std::pair{Rect{140, 160, 1100, 720}, 1080.0}}) {
    for (const solids::Description& description : solids::shelf()) {
      const Model model = after(demo_model("candle-box"), {PutOnBench{description}});
      look_at(model, model.state.desk().solid.name(), rect, height, looked);
    }
  }
  EXPECT_GT(looked.labels, 10000U);
  EXPECT_THAT(looked.faults, testing::IsEmpty());
}

}  // namespace
}  // namespace fw::bench::test::label_edges_test
