// Nets to cut out: their tabs, their scale, their pages.
#include "paper/cutouts/cutout.hpp"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <cmath>

#include "paper/cutouts/tabs.hpp"
#include "paper/sheets/print.hpp"
#include "practice/quiz.hpp"
#include "printing.hpp"
#include "solids/body/body_nets.hpp"
#include "tasks/generate/generate.hpp"

namespace fw::paper::cutout_test {
namespace {

using testing::HasSubstr;

std::vector<solids::Solid> shelf_solids() {
  std::vector<solids::Solid> all;
  for (const solids::Description& description : solids::shelf()) {
    all.push_back(solids::Solid::make(description).value());
  }
  return all;
}

double longest(const solids::Body& body) {
  const auto lengths = body.edge_lengths();
  return *std::max_element(lengths.begin(), lengths.end());
}

Polygon smaller(Polygon polygon, double by) {
  Vec2 middle{};
  for (const Vec2& p : polygon) {
    middle += p / static_cast<double>(polygon.size());
  }
  for (Vec2& p : polygon) {
    p += (middle - p) * by;
  }
  return polygon;
}

// Every law of tabs at once; returns how many sides have to be taped.
std::size_t checked(const FlatNet& net, const std::string& name) {
  std::vector<Polygon> tabs;
  for (const GluedPair& pair : net.pairs) {
    if (!pair.tab_on) {
      EXPECT_TRUE(pair.tab.empty());
      continue;
    }
    EXPECT_TRUE(*pair.tab_on == pair.a || *pair.tab_on == pair.b) << name;
    EXPECT_EQ(pair.tab.size(), 4U);
    EXPECT_GT(geometry::signed_area(pair.tab), 0) << name;
    EXPECT_GE(pair.depth, 4) << name;
    EXPECT_LE(pair.depth, 12) << name;
    // Its first side lies on the side of its face.
    const Polygon& face = net.faces[pair.tab_on->face.index()];
    const Vec2 from = face[pair.tab_on->side];
    const Vec2 along = face[(pair.tab_on->side + 1) % face.size()] - from;
    for (const Vec2& p : {pair.tab[0], pair.tab[1]}) {
      EXPECT_NEAR((along.x * (p.y - from.y) - along.y * (p.x - from.x)) / glm::length(along), 0, 1e-6) << name;
      EXPECT_GE(glm::dot(p - from, along), -1e-9) << name;
      EXPECT_LE(glm::dot(p - from, along), glm::dot(along, along) + 1e-9) << name;
    }
    tabs.push_back(smaller(pair.tab, 0.02));
  }
  for (std::size_t i = 0; i < tabs.size(); ++i) {
    for (const Polygon& face : net.faces) {
      EXPECT_FALSE(!face.empty() && geometry::overlap(tabs[i], face)) << name << ": tab " << i << " lies on a face";
    }
    for (std::size_t k = 0; k < i; ++k) {
      EXPECT_FALSE(geometry::overlap(tabs[i], tabs[k])) << name << ": tabs " << k << " and " << i;
    }
  }
  return net.taped();
}

// Each solid of the shelf with 100 mm as its longest edge has a tab for each pair of sides that meet.
TEST(Tabs, NoSideOfTheShelfHasToBeTaped) {
  for (const solids::Solid& solid : shelf_solids()) {
    FlatNet net = flat_net(solid.body(), solid.classic_net(), 100 / longest(solid.body()), {});
    if (solid.body().is_flat_faced()) {
      EXPECT_EQ(net.pairs.size() + net.folds.size(), solid.body().edge_count());
    } else {
      EXPECT_EQ(net.rims.size(), solid.body().edge_count());
      EXPECT_EQ(net.pairs.size(), 1U) << "the seam";
    }
    add_tabs(net);
    EXPECT_EQ(checked(net, solid.name()), 0U) << solid.name();
  }
}

TEST(Tabs, LieFreeInAnyNet) {
  practice::Seed seed{5};
  for (const solids::Solid& solid : shelf_solids()) {
    if (!solids::has_other_nets(solid.body())) {
      continue;
    }
    for (int i = 0; i < 4; ++i) {
      const nets::HingeTree tree = practice::random_net(solid.body(), solid.classic_net().root(), seed);
      FlatNet net = flat_net(solid.body(), tree, 100 / longest(solid.body()), {});
      add_tabs(net);
      checked(net, solid.name());
      FlatNet twice = flat_net(solid.body(), tree, 200 / longest(solid.body()), {});
      add_tabs(twice);
      EXPECT_LE(twice.taped(), net.taped()) << solid.name() << ": a larger net has more room for its tabs";
    }
  }
}

// 2,000 solids of made-up problems, each with its usual net and one by chance.
TEST(Tabs, LieFreeOnMadeUpSolidsSlow) {
  practice::Seed seed{11};
  std::size_t taped = 0;
  std::size_t pairs = 0;
  std::size_t solids = 0;
  for (std::uint64_t number = 1; number <= 10; ++number) {
    tasks::PracticeRequest request;
    request.level = 3;
    request.seed = number;
    request.count = 200;
    const auto made = tasks::generated(request);
    ASSERT_TRUE(made.has_value());
    for (const lessons::Problem& problem : made->front().problems) {
      const solids::Body& body = problem.solid.body();
      const double scale = 100 / longest(body);
      std::vector<nets::HingeTree> trees{problem.solid.classic_net()};
      if (solids::has_other_nets(body)) {
        trees.push_back(practice::random_net(body, problem.solid.classic_net().root(), seed));
      }
      for (const nets::HingeTree& tree : trees) {
        FlatNet net = flat_net(body, tree, scale, {});
        add_tabs(net);
        taped += checked(net, problem.id);
        pairs += net.pairs.size();
      }
      ++solids;
    }
  }
  EXPECT_EQ(solids, 2'000U);
  RecordProperty("taped", std::to_string(taped) + " of " + std::to_string(pairs));
  EXPECT_LT(static_cast<double>(taped), 0.02 * static_cast<double>(pairs));
}

SheetOptions on_paper(const std::string& key) {
  SheetOptions options;
  options.style.paper = *find_paper(key);
  return options;
}

// Each face on the page is congruent to the solid's, at the scale that the page tells.
TEST(Cutouts, AreTrueToScale) {
  for (const std::string& name : demo_lessons()) {
    for (const lessons::Problem& problem : demo_lesson(name).problems) {
      const auto cutout = best_cutout(problem, {190, 210, 250, 150});
      ASSERT_TRUE(cutout.has_value()) << problem.id << ": " << said(cutout.error());
      EXPECT_LE(cutout->size.x, (cutout->lies ? 250 : 190) + 1e-6);
      EXPECT_LE(cutout->size.y, (cutout->lies ? 150 : 210) + 1e-6);
      const double scale = mm_per_unit(problem.solid) * cutout->scale.factor();
      for (std::size_t f = 0; f < cutout->net.faces.size(); ++f) {
        const Polygon& face = cutout->net.faces[f];
        const Polygon own = problem.solid.body().flat(FaceId::at(f)).outline;
        for (std::size_t i = 0; i < face.size(); ++i) {
          for (std::size_t k = 0; k < i; ++k) {
            EXPECT_NEAR(glm::length(face[i] - face[k]), glm::length(own[i] - own[k]) * scale, 0.01) << problem.id;
          }
        }
      }
    }
  }
}

lessons::Lesson lesson_of(const std::string& solid, const std::string& more = "") {
  auto lesson =
      tasks::read_lesson(R"({"lesson": 1, "title": "T", "problems": [{"id": "one", "prompt": "Find it.", "solid": )" +
                         solid + R"(, "find": ["surface_area"])" + more + "}]}");
  EXPECT_TRUE(lesson.has_value());
  return std::move(lesson).value();
}

// The largest usual scale that fits: no larger one does.
TEST(Cutouts, TakeTheLargestScaleThatFits) {
  const auto scale_of = [](const std::string& solid) {
    const lessons::Lesson lesson = lesson_of(solid);
    const auto cutout = best_cutout(lesson.problems.front(), {190.5, 254, 254, 190.5});
    return cutout ? cutout->scale.text() : said(cutout.error());
  };
  EXPECT_EQ(scale_of(R"({"kind": "cube", "edge": "50 mm"})"), "1 : 1");
  EXPECT_EQ(scale_of(R"({"kind": "cube", "edge": "100 mm"})"), "1 : 2");
  EXPECT_EQ(scale_of(R"({"kind": "cube", "edge": "12 mm"})"), "5 : 1");
  EXPECT_EQ(scale_of(R"({"kind": "cube", "edge": "2 m"})"), "1 : 50");
  EXPECT_EQ(scale_of(R"({"kind": "rectangular prism", "length": "9 m", "width": "9 m", "height": "10 cm"})"),
            "At 1 : 100, the shortest side is too short to cut. Use --scale 1:20 or larger.");
}

// An open box has no lid and no tabs for it.
TEST(Cutouts, LeaveOutWhatIsOpen) {
  const lessons::Lesson lesson = lesson_of(
      R"({"kind": "rectangular prism", "length": "9 cm", "width": "6 cm", "height": "4 cm"})", R"(, "open": ["top"])");
  const auto cutout = best_cutout(lesson.problems.front(), {190, 210, 250, 150});
  ASSERT_TRUE(cutout.has_value());
  std::size_t faces = 0;
  for (const Polygon& face : cutout->net.faces) {
    faces += face.empty() ? 0U : 1U;
  }
  EXPECT_EQ(faces, 5U);
  EXPECT_EQ(cutout->net.folds.size(), 4U);
  EXPECT_EQ(cutout->net.pairs.size(), 4U);
}

// At a scale that does not fit the net goes over several pages, which cover it all.
TEST(Cutouts, AreTiledOverPages) {
  const lessons::Lesson lesson = lesson_of(R"({"kind": "cube", "edge": "15 cm"})");
  SheetOptions options = on_paper("letter");
  options.scale = PaperScale{1, 1};
  const Printed printed = made(nets, test_fonts(), lesson, options);
  ASSERT_GT(printed.pages.size(), 3U);
  for (const Page& page : printed.pages) {
    EXPECT_THAT(text_of(page), HasSubstr("glue the strips under the lines"));
    EXPECT_THAT(text_of(page), HasSubstr("true size"));
  }
  options.scale = PaperScale{10, 1};
  const Printed refused = made(nets, test_fonts(), lesson, options);
  EXPECT_TRUE(refused.pages.empty());
  ASSERT_EQ(refused.remarks.size(), 1U);
  EXPECT_EQ(said(refused.remarks.front()),
            "Problem one: At 10 : 1, this net takes more than 12 pages. Pick a smaller scale.");
}

// What a reader of the file measures: the fold of a cube, and the bars of the ruler.
TEST(Cutouts, AreTrueToScaleInTheFile) {
  const lessons::Lesson lesson = lesson_of(R"({"kind": "cube", "edge": "50 mm"})");
  const Printed printed = made(nets, test_fonts(), lesson, on_paper("letter"));
  ASSERT_EQ(printed.pages.size(), 1U);
  const PrintedFile file(pdf_file(printed.pages, test_fonts(), "Cube"));
  EXPECT_EQ(ran("qpdf --check " + file.path()).status, 0);
  const std::string svg = ran("pdftocairo -svg " + file.path() + " -").out;
  std::vector<double> lengths;
  for (std::size_t at = svg.find(" d=\"M "); at != std::string::npos; at = svg.find(" d=\"M ", at + 1)) {
    double x1 = 0;
    double y1 = 0;
    double x2 = 0;
    double y2 = 0;
    double scale = 1;
    if (std::sscanf(svg.c_str() + at, " d=\"M %lf %lf L %lf %lf", &x1, &y1, &x2, &y2) == 4) {
      const std::size_t matrix = svg.find("matrix(", at);
      if (matrix != std::string::npos && matrix < svg.find("/>", at)) {
        std::sscanf(svg.c_str() + matrix, "matrix(%lf", &scale);
      }
      lengths.push_back(std::hypot(x2 - x1, y2 - y1) * scale * 25.4 / 72);
    }
  }
  const auto count_of = [&](double wanted, double bound) {
    return std::count_if(lengths.begin(), lengths.end(),
                         [&](double length) { return std::abs(length - wanted) < bound; });
  };
  EXPECT_GE(count_of(50, 0.05), 5) << "the five folds of a cube";
  EXPECT_GE(count_of(100, 0.05), 1) << "the bar of 100 mm";
  EXPECT_GE(count_of(101.6, 0.05), 1) << "the bar of 4 in";
}

// Blank for the class to fill in; filled for the key.
TEST(Cutouts, AreBlankOrFilled) {
  const lessons::Lesson lesson = lesson_of(R"({"kind": "cube", "edge": "50 mm"})");
  SheetOptions options = on_paper("letter");
  EXPECT_THAT(text_of(made(nets, test_fonts(), lesson, options).pages), testing::Not(HasSubstr("2500 mm²")));
  options.gaps = Gaps::None;
  EXPECT_THAT(text_of(made(nets, test_fonts(), lesson, options).pages), HasSubstr("2500 mm²"));
  options = on_paper("letter");
  options.has_letters = false;
  EXPECT_THAT(text_of(made(nets, test_fonts(), lesson, options).pages), testing::Not(HasSubstr("cube")));
}

}  // namespace
}  // namespace fw::paper::cutout_test
