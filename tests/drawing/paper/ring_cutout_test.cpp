// Nets of frustums of cones, to cut out: the side is a part of a ring, with teeth along both of its arcs.
#include <gtest/gtest.h>

#include <cmath>
#include <numbers>

#include "geometry/flat_math.hpp"
#include "paper/cutouts/cutout.hpp"
#include "paper/cutouts/cutout_drawing.hpp"
#include "paper/cutouts/tabs.hpp"
#include "paper/cutouts/teeth.hpp"
#include "support/random.hpp"
#include "support/sanitized.hpp"
#include "tasks/catalog.hpp"

namespace fw::paper::ring_cutout_test {
namespace {

constexpr double pi = std::numbers::pi;
// As in round_cutout_test.cpp: what 73 corners are short of a circle as long round.
const double polygon_loss = 1 - (pi / 73) / std::tan(pi / 73);

struct Made {
  lessons::Lesson lesson;
  double bottom = 0, top = 0, height = 0;
  [[nodiscard]] const solids::Solid& solid() const { return lesson.problems.front().solid; }
  [[nodiscard]] double slant() const { return std::hypot(height, bottom - top); }
  [[nodiscard]] std::string name() const {
    return std::to_string(bottom) + " " + std::to_string(top) + " " + std::to_string(height);
  }
};

lessons::Lesson lesson_of(std::size_t bottom, std::size_t top, std::size_t height) {
  const auto field = [](const std::string& key, std::size_t value) {
    return "\"" + key + "\": \"" + std::to_string(value) + " mm\"";
  };
  auto lesson = tasks::read_lesson(
      R"({"lesson": 1, "title": "T", "problems": [{"id": "one", "prompt": "Find it.", "find": ["surface_area"], )"
      R"("solid": {"kind": "cone frustum", )" +
      field("radius", bottom) + ", " + field("top_radius", top) + ", " + field("height", height) + "}}]}");
  EXPECT_TRUE(lesson.has_value());
  return std::move(lesson).value();
}

std::vector<Made> made_up(std::size_t count) {
  test::Dice dice(99);
  const auto number = [&](std::size_t from, std::size_t to) { return from + dice.below(to - from); };
  std::vector<Made> all;
  for (std::size_t i = 0; i < count; ++i) {
    const std::size_t top = number(8, 100);
    const std::size_t bottom = top + number(1, i % 3 == 0 ? 5 : 90);
    const std::size_t height = number(i % 10 < 2 ? 5 : 12, i % 10 > 7 ? 700 : 200);
    all.push_back({lesson_of(bottom, top, height), double(bottom), double(top), double(height)});
  }
  return all;
}

FlatNet whole_net(const Made& made) {
  FlatNet net = flat_net(made.solid().body(), made.solid().classic_net(), mm_per_unit(made.solid()), {});
  add_tabs(net);
  add_teeth(net);
  return net;
}

double side_length(const FlatNet& net, NetSide side) {
  const Polygon& face = net.faces[side.face.index()];
  return glm::length(face[(side.side + 1) % face.size()] - face[side.side]);
}

TEST(RingNets, HaveTheExactAreas) {
  for (const Made& made : made_up(fw::test::cases(150, 20))) {
    const FlatNet net = whole_net(made);
    ASSERT_EQ(net.faces.size(), 3U);
    EXPECT_NEAR(geometry::signed_area(net.faces[0]) / (pi * made.bottom * made.bottom), 1 - polygon_loss, 1e-9);
    EXPECT_NEAR(geometry::signed_area(net.faces[1]) / (pi * made.top * made.top), 1 - polygon_loss, 1e-9);
    const double side = geometry::signed_area(net.faces[2]);
    const double wanted = pi * (made.bottom + made.top) * made.slant();
    EXPECT_LE(side, wanted * (1 + 2 * polygon_loss)) << made.name();
    EXPECT_GE(side, wanted * (1 - 2 * polygon_loss)) << made.name();
  }
}

TEST(RingNets, HaveEqualLengthsWhereTheyMeet) {
  for (const Made& made : made_up(fw::test::cases(150, 20))) {
    const FlatNet net = whole_net(made);
    ASSERT_EQ(net.pairs.size(), 1U);
    EXPECT_NEAR(side_length(net, net.pairs[0].a), side_length(net, net.pairs[0].b), 1e-6);
    EXPECT_NEAR(side_length(net, net.pairs[0].a) / made.slant(), 1, 2 * polygon_loss) << made.name();
    ASSERT_EQ(net.rims.size(), 2U);
    for (std::size_t k = 0; k < 2; ++k) {
      const Rim& rim = net.rims[k];
      ASSERT_EQ(rim.on_side.size(), 74U);
      ASSERT_EQ(rim.on_disk.size(), 74U);
      double around = 0;
      for (std::size_t i = 0; i + 1 < rim.on_side.size(); ++i) {
        const double piece = glm::length(rim.on_side[i + 1] - rim.on_side[i]);
        EXPECT_NEAR(piece, glm::length(rim.on_disk[i + 1] - rim.on_disk[i]), 1e-6);
        around += piece;
      }
      EXPECT_NEAR(around / (2 * pi * (k == 0 ? made.bottom : made.top)), 1, 1e-9) << made.name();
    }
  }
}

/// All but the faces a hair smaller, so that what touches does not count.
std::vector<Polygon> parts_of(const FlatNet& net) {
  std::vector<Polygon> parts = net.faces;
  const auto add = [&](Polygon polygon) {
    const Vec2 middle = geometry::centroid(polygon);
    for (Vec2& p : polygon) p += glm::normalize(middle - p) * 0.01;
    parts.push_back(std::move(polygon));
  };
  for (const GluedPair& pair : net.pairs) {
    if (pair.tab_on) add(pair.tab);
  }
  for (const Rim& rim : net.rims) {
    for (const Tooth& tooth : rim.teeth) add(tooth.shape);
  }
  return parts;
}

TEST(RingNets, HaveTeethThatOverlapNothingAndEnoughOfThem) {
  std::size_t roomy = 0;
  for (const Made& made : made_up(fw::test::cases(150, 20))) {
    const FlatNet net = whole_net(made);
    EXPECT_GE(net.rims[0].teeth.size(), 4U) << made.name();
    // Inside the smaller arc the disk may leave no room for teeth.
    const double inner = made.slant() * made.top / (made.bottom - made.top);
    if (inner - made.top > 8) {
      EXPECT_GE(net.rims[1].teeth.size(), 4U) << made.name();
      ++roomy;
    }
    EXPECT_LE(std::max(net.rims[0].teeth.size(), net.rims[1].teeth.size()), 28U) << made.name();
    const std::vector<Polygon> parts = parts_of(net);
    for (std::size_t i = net.faces.size(); i < parts.size(); ++i) {
      const geometry::FlatBox own = geometry::flat_box(parts[i]);
      for (std::size_t k = 0; k < i; ++k) {
        const geometry::FlatBox other = geometry::flat_box(parts[k]);
        const bool is_far = own.lowest.x > other.highest.x || own.highest.x < other.lowest.x ||
                            own.lowest.y > other.highest.y || own.highest.y < other.lowest.y;
        EXPECT_FALSE(!is_far && geometry::overlap(parts[i], parts[k])) << made.name() << ": parts " << k << ", " << i;
      }
    }
  }
  EXPECT_GT(roomy, fw::test::cases(100, 10));
}

// What the scissors go round is one line that does not cross itself, and what it goes round is all faces and tabs.
TEST(RingNets, AreOnePieceOfPaper) {
  for (const Made& made : made_up(fw::test::cases(60, 8))) {
    const FlatNet net = whole_net(made);
    const GluedPair& seam = net.pairs.front();
    Polygon outline;
    double area = 0;
    const auto go = [&](const std::vector<Vec2>& points) {
      for (const Vec2& p : points) {
        if (outline.empty() || (glm::length(p - outline.back()) > 1e-6 && glm::length(p - outline.front()) > 1e-6)) {
          outline.push_back(p);
        }
      }
    };
    const auto go_seam = [&](NetSide side) {
      if (seam.tab_on == side) {
        go({seam.tab[1], seam.tab[2], seam.tab[3], seam.tab[0]});
        area += geometry::signed_area(seam.tab);
      }
    };
    for (std::size_t k = 0; k < 2; ++k) {
      ASSERT_EQ(cut_lines(net.rims[k]).size(), 1U);
      go(cut_lines(net.rims[k]).front());
      go_seam(k == 0 ? seam.a : seam.b);
      for (const Tooth& tooth : net.rims[k].teeth) area += geometry::signed_area(tooth.shape);
    }
    for (const Polygon& face : net.faces) area += geometry::signed_area(face);
    EXPECT_TRUE(geometry::is_simple(outline)) << made.name();
    EXPECT_NEAR(geometry::signed_area(outline), area, 2.0 + 2e-3 * area * polygon_loss) << made.name();
  }
}

// 60, 30 and 8 mm: the ring is so flat that its small disk fills the inner arc.
TEST(RingNets, SayWhichCircleIsTaped) {
  const auto lines = [](std::size_t height) {
    const lessons::Lesson lesson = lesson_of(60, 30, height);
    const lessons::Problem& problem = lesson.problems.front();
    return lines_on(problem, *best_cutout(problem, {190, 210, 250, 150}));
  };
  EXPECT_EQ(lines(100).circles, 2U);
  EXPECT_EQ(lines(100).taped_circles, 0U);
  EXPECT_EQ(lines(8).circles, 1U);
  EXPECT_EQ(lines(8).taped_circles, 1U);
}

}  // namespace
}  // namespace fw::paper::ring_cutout_test
