// Nets of solids with a face that bends, to cut out: true in area and length, with teeth that can be cut.
#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <cmath>
#include <numbers>
#include <random>

#include "geometry/flat_math.hpp"
#include "paper/cutouts/cutout.hpp"
#include "paper/cutouts/cutout_drawing.hpp"
#include "paper/cutouts/tabs.hpp"
#include "paper/cutouts/teeth.hpp"
#include "paper/sheets/print.hpp"
#include "printing.hpp"
#include "support/sanitized.hpp"

namespace fw::paper::round_cutout_test {
namespace {

using testing::HasSubstr;
using testing::Not;

constexpr double pi = std::numbers::pi;
// A circle in 73 pieces that is as long round as the true one has so much less area: the area of a regular polygon by
// its perimeter is P² ÷ (4n·tan(π ÷ n)), that of a circle C² ÷ 4π.
const double polygon_loss = 1 - (pi / 73) / std::tan(pi / 73);

std::string cylinder(int radius, int height) {
  return R"({"kind": "cylinder", "radius": ")" + std::to_string(radius) + R"( mm", "height": ")" +
         std::to_string(height) + R"( mm"})";
}
std::string cone(int radius, int height) {
  return R"({"kind": "cone", "radius": ")" + std::to_string(radius) + R"( mm", "height": ")" + std::to_string(height) +
         R"( mm"})";
}

lessons::Lesson lesson_of(const std::string& solid, const std::string& more = "") {
  auto lesson =
      tasks::read_lesson(R"({"lesson": 1, "title": "T", "problems": [{"id": "one", "prompt": "Find it.", "solid": )" +
                         solid + R"(, "find": ["surface_area"])" + more + "}]}");
  EXPECT_TRUE(lesson.has_value()) << solid;
  return std::move(lesson).value();
}

FlatNet whole_net(const solids::Solid& solid) {
  FlatNet net = flat_net(solid.body(), solid.classic_net(), mm_per_unit(solid), {});
  add_tabs(net);
  add_teeth(net);
  return net;
}

// Made up by chance: a solid with its measures in millimeters.
struct Made {
  solids::Solid solid;
  bool is_cone = false;
  double radius = 0, height = 0;
  [[nodiscard]] double around() const { return 2 * pi * radius; }
  [[nodiscard]] double slant() const { return std::hypot(radius, height); }
};
std::vector<Made> made_up(std::size_t count) {
  std::mt19937 chance{7};
  const auto number = [&](int from, int to) {
    return from + static_cast<int>(chance() % static_cast<unsigned>(to - from));
  };
  std::vector<Made> all;
  for (std::size_t i = 0; i < count; ++i) {
    const bool is_cone = i % 2 == 1;
    const int radius = number(8, 130);
    const int height = number(i % 10 < 2 ? 5 : 12, i % 10 > 7 ? 700 : 200);
    const lessons::Lesson lesson = lesson_of(is_cone ? cone(radius, height) : cylinder(radius, height));
    all.push_back({lesson.problems.front().solid, is_cone, double(radius), double(height)});
  }
  return all;
}

Polygon smaller(Polygon polygon, double by) {
  const Vec2 middle = geometry::centroid(polygon);
  for (Vec2& p : polygon) {
    p += glm::normalize(middle - p) * by;
  }
  return polygon;
}

double side_length(const FlatNet& net, NetSide side) {
  const Polygon& face = net.faces[side.face.index()];
  return glm::length(face[(side.side + 1) % face.size()] - face[side.side]);
}

double off_outline(const Polygon& outline, Vec2 point) {
  double least = 1e9;
  for (std::size_t i = 0; i < outline.size(); ++i) {
    least = std::min(least, geometry::distance_to_segment(point, outline[i], outline[(i + 1) % outline.size()]));
  }
  return least;
}

TEST(RoundNets, HaveTheExactAreas) {
  for (const Made& made : made_up(fw::test::cases(200, 20))) {
    const FlatNet net = whole_net(made.solid);
    const double base = pi * made.radius * made.radius;
    for (std::size_t i = 0; i + 1 < net.faces.size(); ++i) {
      EXPECT_NEAR(geometry::signed_area(net.faces[i]) / base, 1 - polygon_loss, 1e-9);
    }
    const double side = geometry::signed_area(net.faces.back());
    if (made.is_cone) {
      // Its strips are as high as from the tip to the middle of a chord, which is between h and ℓ.
      EXPECT_LE(side, pi * made.radius * made.slant() * (1 + 1e-9));
      EXPECT_GE(side, pi * made.radius * made.slant() * (1 - polygon_loss));
    } else {
      EXPECT_NEAR(side / (made.around() * made.height), 1, 1e-9);
    }
  }
}

TEST(RoundNets, HaveEqualLengthsWhereTheyMeet) {
  for (const Made& made : made_up(fw::test::cases(200, 20))) {
    const FlatNet net = whole_net(made.solid);
    ASSERT_EQ(net.pairs.size(), 1U);
    const GluedPair& seam = net.pairs.front();
    EXPECT_EQ(seam.a.face, seam.b.face);
    EXPECT_NEAR(side_length(net, seam.a), side_length(net, seam.b), 1e-6);
    const double wanted = made.is_cone ? made.slant() : made.height;
    EXPECT_NEAR(side_length(net, seam.a) / wanted, 1, polygon_loss);
    ASSERT_EQ(net.rims.size(), made.is_cone ? 1U : 2U);
    for (const Rim& rim : net.rims) {
      ASSERT_EQ(rim.on_side.size(), 74U);
      ASSERT_EQ(rim.on_disk.size(), 74U);
      double around = 0;
      for (std::size_t i = 0; i + 1 < rim.on_side.size(); ++i) {
        const double piece = glm::length(rim.on_side[i + 1] - rim.on_side[i]);
        EXPECT_NEAR(piece, glm::length(rim.on_disk[i + 1] - rim.on_disk[i]), 1e-6);
        around += piece;
      }
      EXPECT_NEAR(around / made.around(), 1, 1e-9);
      EXPECT_NEAR(glm::length(rim.on_disk.front() - rim.on_disk.back()), 0, 1e-9);
      for (const std::size_t middle : {36U, 37U}) {  // the strip on which the disk hangs
        EXPECT_NEAR(glm::length(rim.on_disk[middle] - rim.on_side[middle]), 0, 1e-6);
      }
    }
  }
}

// Sizes: common practice, no source.
void expect_good_tooth(const Tooth& tooth, const std::string& name) {
  const std::size_t n = tooth.shape.size();
  const Vec2 a = tooth.foot.front();
  const Vec2 b = tooth.foot.back();
  const double foot = glm::length(b - a);
  const double top = glm::length(tooth.shape[n - 1] - tooth.shape[n - 2]);
  EXPECT_GE((foot + top) / 2, 4) << name;
  EXPECT_LT(top, foot) << name << ": it narrows";
  const Vec2 out = (tooth.shape[n - 1] + tooth.shape[n - 2]) * 0.5 - (a + b) * 0.5;
  EXPECT_GE(glm::length(out), 5 - 1e-9) << name;
  EXPECT_LE(glm::length(out), 7) << name;
  EXPECT_NEAR(glm::dot(glm::normalize(out), (b - a) / foot), 0, 1e-9) << name << ": it stands square on its foot";
  EXPECT_GT(geometry::signed_area(tooth.shape), 0) << name;
}

TEST(RoundNets, HaveTeethThatCanBeCut) {
  std::size_t rims = 0;
  for (const Made& made : made_up(fw::test::cases(200, 20))) {
    const FlatNet net = whole_net(made.solid);
    for (const Rim& rim : net.rims) {
      const std::string name =
          made.solid.name() + " " + std::to_string(made.radius) + " " + std::to_string(made.height);
      EXPECT_LE(rim.teeth.size(), 28U) << name;
      EXPECT_GE(rim.teeth.size(), made.radius >= 30 ? 20U : 4U) << name;
      for (const Tooth& tooth : rim.teeth) {
        expect_good_tooth(tooth, name);
      }
      ++rims;
    }
  }
  EXPECT_EQ(rims, fw::test::cases(300, 30));
}

TEST(RoundNets, HaveTeethThatOverlapNothing) {
  for (const Made& made : made_up(fw::test::cases(200, 20))) {
    const FlatNet net = whole_net(made.solid);
    const std::string name = made.solid.name() + " " + std::to_string(made.radius) + " " + std::to_string(made.height);
    std::vector<Polygon> parts = net.faces;
    for (const GluedPair& pair : net.pairs) {
      if (pair.tab_on) parts.push_back(smaller(pair.tab, 0.01));
    }
    for (const Rim& rim : net.rims) {
      for (const Tooth& tooth : rim.teeth) {
        parts.push_back(smaller(tooth.shape, 0.01));
      }
    }
    for (std::size_t i = net.faces.size(); i < parts.size(); ++i) {
      const geometry::FlatBox own = geometry::flat_box(parts[i]);
      for (std::size_t k = 0; k < i; ++k) {
        const geometry::FlatBox other = geometry::flat_box(parts[k]);
        const bool is_far = own.lowest.x > other.highest.x || own.highest.x < other.lowest.x ||
                            own.lowest.y > other.highest.y || own.highest.y < other.lowest.y;
        EXPECT_FALSE(!is_far && geometry::overlap(parts[i], parts[k])) << name << ": parts " << k << " and " << i;
      }
    }
  }
}

// The teeth of a cone point away from its tip.
TEST(RoundNets, HaveTeethThatStandRadially) {
  for (const Made& made : made_up(fw::test::cases(60, 8))) {
    if (!made.is_cone) {
      continue;
    }
    const FlatNet net = whole_net(made.solid);
    const GluedPair& seam = net.pairs.front();
    const Polygon& sector = net.faces[seam.a.face.index()];
    const Vec2 tip = sector[seam.b.side];
    for (const Tooth& tooth : net.rims.front().teeth) {
      const std::size_t n = tooth.shape.size();
      const Vec2 foot = (tooth.foot.front() + tooth.foot.back()) * 0.5;
      const Vec2 top = (tooth.shape[n - 1] + tooth.shape[n - 2]) * 0.5;
      EXPECT_NEAR(glm::dot(glm::normalize(top - foot), glm::normalize(foot - tip)), 1, 1e-4);
    }
  }
}

// What the scissors go round is one line that does not cross itself, and what it goes round is all faces and tabs.
TEST(RoundNets, AreOnePieceOfPaper) {
  for (const Made& made : made_up(fw::test::cases(40, 8))) {
    const FlatNet net = whole_net(made.solid);
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
    go(cut_lines(net.rims[0]).front());
    go_seam(seam.a);
    if (made.is_cone) {
      go({net.faces.back()[seam.b.side]});
    } else {
      go(cut_lines(net.rims[1]).front());
    }
    go_seam(seam.b);
    for (const Rim& rim : net.rims) {
      EXPECT_EQ(cut_lines(rim).size(), 1U);
      for (const Tooth& tooth : rim.teeth) area += geometry::signed_area(tooth.shape);
    }
    for (const Polygon& face : net.faces) area += geometry::signed_area(face);
    const std::string name = made.solid.name() + " " + std::to_string(made.radius) + " " + std::to_string(made.height);
    EXPECT_TRUE(geometry::is_simple(outline)) << name;
    // The bridge of a small circle takes in the wedges beside it.
    EXPECT_NEAR(geometry::signed_area(outline), area, 2.0) << name;
    EXPECT_GE(geometry::signed_area(outline), area - 1e-6) << name;
  }
}

// The seam, and each circle with its row of teeth: no fold on what is rolled.
TEST(RoundNets, HaveNoDashedLineInsideWhatIsRolled) {
  for (const std::string& solid : {cylinder(50, 80), cylinder(9, 30), cone(50, 120), cone(10, 12), cone(60, 8)}) {
    const lessons::Lesson lesson = lesson_of(solid);
    const auto cutout = best_cutout(lesson.problems.front(), {190, 210, 250, 150});
    ASSERT_TRUE(cutout.has_value()) << solid << said(cutout.error());
    PageCanvas canvas(test_fonts(), 300, 300);
    draw_cutout(canvas, lesson.problems.front(), *cutout, {0, 300}, {});
    std::size_t dashed = 0;
    for (const Item& item : canvas.page().items) {
      const auto* path = std::get_if<PathItem>(&item);
      if (path == nullptr || !path->pen || path->pen->pattern.empty()) {
        continue;
      }
      ++dashed;
      for (std::size_t i = 0; i + 1 < path->points.size(); ++i) {
        for (const double share : {0.0, 0.25, 0.5, 0.75, 1.0}) {
          const Vec2 on_page = path->points[i] * (1 - share) + path->points[i + 1] * share;
          EXPECT_LT(off_outline(cutout->net.faces.back(), {on_page.x, 300 - on_page.y}), 1e-6) << solid;
        }
      }
    }
    std::size_t wanted = cutout->net.pairs.front().tab_on ? 1 : 0;
    for (const Rim& rim : cutout->net.rims) wanted += 1 + rim.teeth.size();
    EXPECT_EQ(dashed, wanted) << solid << ": the bridge, and one at the foot of each tooth and tab";
    for (const Rim& rim : cutout->net.rims) {
      EXPECT_GE(glm::length(bridge_of(rim).front() - bridge_of(rim).back()), 2.9) << solid;
    }
  }
}

TEST(RoundNets, HaveTheSameNumberWhereTheyMeet) {
  const lessons::Lesson lesson = lesson_of(cylinder(40, 60));
  const auto cutout = best_cutout(lesson.problems.front(), {190, 210, 250, 150});
  ASSERT_TRUE(cutout.has_value());
  PageCanvas canvas(test_fonts(), 300, 300);
  CutoutLook look;
  look.has_letters = look.has_lengths = look.asks_areas = false;
  draw_cutout(canvas, lesson.problems.front(), *cutout, {0, 300}, look);
  std::vector<std::string> texts;
  for (const Item& item : canvas.page().items) {
    if (const auto* text = std::get_if<TextItem>(&item)) texts.push_back(text->text);
  }
  EXPECT_THAT(texts, testing::UnorderedElementsAre("1", "1", "1", "2", "2", "3", "3"))
      << "both sides of the seam and its tab; each circle and a tooth of its row";
}

std::size_t faces_of(const FlatNet& net) {
  return static_cast<std::size_t>(
      std::count_if(net.faces.begin(), net.faces.end(), [](const Polygon& face) { return !face.empty(); }));
}

TEST(RoundNets, LeaveOutAnOpenDiskWithItsTeeth) {
  const auto net_of = [](const std::string& solid, const std::string& open) {
    const lessons::Lesson lesson = lesson_of(solid, R"(, "open": [)" + open + "]");
    return best_cutout(lesson.problems.front(), {190, 210, 250, 150});
  };
  const auto rows = [](const FlatNet& net) {
    return std::count_if(net.rims.begin(), net.rims.end(), [](const Rim& rim) { return !rim.teeth.empty(); });
  };
  const auto cup = net_of(cylinder(25, 60), R"("top")");
  ASSERT_TRUE(cup.has_value());
  EXPECT_EQ(faces_of(cup->net), 2U);
  EXPECT_EQ(rows(cup->net), 1);
  // The circle is the floor, below the side on an upright page.
  EXPECT_LT(geometry::centroid(cup->net.faces[0]).y, geometry::centroid(cup->net.faces[2]).y);
  const auto hat = net_of(cone(30, 90), R"("bottom")");
  ASSERT_TRUE(hat.has_value());
  EXPECT_EQ(faces_of(hat->net), 1U);
  EXPECT_EQ(rows(hat->net), 0);
  EXPECT_TRUE(hat->net.pairs.front().tab_on.has_value());
  const auto pipe = net_of(cylinder(30, 90), R"("bases")");
  ASSERT_TRUE(pipe.has_value());
  EXPECT_EQ(faces_of(pipe->net), 1U);
  const auto disk = net_of(cone(30, 90), "2");
  ASSERT_TRUE(disk.has_value());
  EXPECT_EQ(faces_of(disk->net), 1U);
  EXPECT_TRUE(disk->net.pairs.empty());
  const auto lids = net_of(cylinder(30, 90), "3");
  ASSERT_FALSE(lids.has_value());
  EXPECT_EQ(said(lids.error()), "Without its open faces, this solid has no net in one piece.");
}

TEST(RoundNets, AreAsLargeAsTheyCanBeCut) {
  const auto scale_of = [](const std::string& solid) {
    const lessons::Lesson lesson = lesson_of(solid);
    const auto cutout = best_cutout(lesson.problems.front(), {190.5, 254, 254, 190.5});
    return cutout ? cutout->scale.text() : said(cutout.error());
  };
  EXPECT_EQ(scale_of(cylinder(25, 60)), "1 : 1");
  EXPECT_EQ(scale_of(cylinder(50, 80)), "1 : 2");
  EXPECT_EQ(scale_of(cylinder(2, 3)), "10 : 1");
  EXPECT_EQ(scale_of(cylinder(1000, 10)),
            "At 1 : 25, the shortest side is too short to cut. Use --scale 1:2 or larger.");
  EXPECT_EQ(scale_of(cylinder(10, 1000)), "At 1 : 4, a circle is too small to cut. Use --scale 1:1 or larger.");
}

Printed printed_nets(const lessons::Lesson& lesson, std::optional<PaperScale> scale = {}) {
  SheetOptions options;
  options.style.paper = *find_paper("letter");
  options.scale = scale;
  return made(nets, test_fonts(), lesson, options);
}

TEST(RoundNets, ArePrintedWithWhatToDo) {
  const Printed can = printed_nets(lesson_of(cylinder(50, 80)));
  ASSERT_EQ(can.pages.size(), 1U);
  EXPECT_THAT(text_of(can.pages), HasSubstr("Roll the side round and glue the seam first, then fold in the"));
  EXPECT_THAT(text_of(can.pages), HasSubstr("teeth and glue on the circles."));
  EXPECT_THAT(text_of(can.pages), HasSubstr("Scissors and knives: follow your school's own safety rules."));
  EXPECT_THAT(text_of(can.pages), HasSubstr("50 mm")) << "the radius";
  EXPECT_THAT(text_of(can.pages), HasSubstr("314.16 mm")) << "the circumference";
  EXPECT_THAT(text_of(printed_nets(lesson_of(cone(50, 80))).pages), HasSubstr("glue on the circle."));
  const PrintedFile file(pdf_file(can.pages, test_fonts(), "Can"));
  EXPECT_EQ(ran("qpdf --check " + file.path()).status, 0);
}

TEST(RoundNets, LieInsideThePrintablePage) {
  const PaperSize paper = *find_paper("letter");
  for (const std::string& solid : {cylinder(50, 80), cylinder(25, 60), cylinder(159, 240), cylinder(20, 200),
                                   cylinder(2, 3), cone(50, 120), cone(60, 8), cone(30, 60), cone(10, 90)}) {
    const Printed printed = printed_nets(lesson_of(solid));
    ASSERT_EQ(printed.pages.size(), 1U) << solid;
    const Page& page = printed.pages.front();
    const Rect box = (page.width > page.height ? paper.lying() : paper).printable();
    EXPECT_TRUE(box.contains(inked(page), 0.2)) << solid;
  }
}

// A net that is long and narrow lies straight, so that it takes no more pages than it has to.
TEST(RoundNets, AreTiledOverFewPages) {
  const Printed pole = printed_nets(lesson_of(cylinder(10, 900)), PaperScale{1, 1});
  EXPECT_EQ(pole.pages.size(), 4U);
  const Printed can = printed_nets(lesson_of(cylinder(50, 80)), PaperScale{1, 1});
  EXPECT_GE(can.pages.size(), 3U);
  EXPECT_LE(can.pages.size(), 4U);
}

TEST(SolidWords, TellOfFlatFacesAndACurvedSurface) {
  SheetOptions options;
  options.style.paper = *find_paper("letter");
  EXPECT_THAT(text_of(made(solid_words, test_fonts(), lesson_of(cone(50, 120)), options).pages),
              HasSubstr("A cone has 1 flat face (1 circle) and 1 curved surface."));
  EXPECT_THAT(text_of(made(solid_words, test_fonts(), lesson_of(cylinder(50, 80)), options).pages),
              HasSubstr("A cylinder has 2 flat faces (2 circles) and 1 curved surface."));
}

}  // namespace
}  // namespace fw::paper::round_cutout_test
