#include <gmock/gmock.h>

#include <cmath>
#include <numeric>

#include "app/state/model_support.hpp"
#include "bench/bench_picture.hpp"
#include "geometry/polygon.hpp"
#include "state/derived.hpp"
#include "support/sanitized.hpp"

// The circles with the numbers of the faces, and how counted faces are told apart.
namespace fw::bench::test::face_numbers_test {

using namespace state;
using namespace state::test;

namespace {

using figures::Rect;
using geometry::Polygon;
using geometry::Vec2;
using testing::IsEmpty;
using testing::SizeIs;

constexpr Rect low_bench{90, 160, 700, 420};
constexpr Rect narrow_bench{80, 130, 430, 480};

BenchPicture picture_of(const Model& model, const Rect& rect, double height = 720) {
  const Theme theme = Theme::make(theme::ThemeName::Paper, height);
  DerivedMemo memo;
  return bench_picture(model, memo.of(model.state), theme, rect, [&theme](const std::string& text) {
    return Vec2{0.52 * theme.sizes.label * static_cast<double>(text.size()), 1.1 * theme.sizes.label};
  });
}

/// The facets of a face.
std::vector<Polygon> seen(const BenchPicture& picture, FaceId face) {
  std::vector<Polygon> facets;
  for (std::size_t facet = 0; facet < picture.faces.size(); ++facet) {
    if (picture.faces[facet] == face) {
      facets.emplace_back();
      for (const geometry::Vec3& corner : picture.look.faces[facet]) {
        facets.back().push_back(picture.camera.project(corner, picture.viewport).pixel +
                                Vec2{picture.rect.x, picture.rect.y});
      }
    }
  }
  return facets;
}

bool contains(const std::vector<Polygon>& facets, Vec2 point) {
  return std::any_of(facets.begin(), facets.end(),
                     [&](const Polygon& facet) { return geometry::contains(facet, point); });
}

double area(const std::vector<Polygon>& facets) {
  return std::accumulate(facets.begin(), facets.end(), 0.0,
                         [](double sum, const Polygon& facet) { return sum + std::abs(geometry::signed_area(facet)); });
}

constexpr double pi = 3.141592653589793;
double area(const FaceNumber& number) { return pi * number.radius * number.radius; }

std::vector<Model> every_solid_at_every_fold() {
  std::vector<Model> models;
  for (const solids::Description& description : solids::shelf()) {
    for (const double fold : {0.0, 0.3, 0.7, 1.0}) {
      models.push_back(after(demo_model("candle-box"), {PutOnBench{description}, SetFold{fold}}));
    }
  }
  return models;
}

// A circle takes a third of its face at most, or stands beside the figure with a leader; and none lies on another.
TEST(FaceNumbers, TakeAThirdOfTheirFaceAtMostOrHaveALeader) {
  std::size_t led = 0;
  const std::vector<Model> all = every_solid_at_every_fold();
  for (std::size_t i = 0; i < all.size(); i += fw::test::cases(1, 15)) {
    const Model& model = all[i];
    for (const Rect& rect : {low_bench, narrow_bench}) {
      const BenchPicture picture = picture_of(model, rect);
      const std::string name = model.state.desk().solid.name() + " at " + std::to_string(model.view.fold);
      for (const FaceNumber& number : picture.numbers) {
        const std::vector<Polygon> outline = seen(picture, number.face);
        if (number.leader) {
          ++led;
          EXPECT_TRUE(contains(outline, number.leader->to)) << name << ", " << number.text;
          EXPECT_FALSE(contains(outline, number.center)) << name << ", " << number.text;
        } else {
          EXPECT_LE(area(number), area(outline) / 3 + 1) << name << ", " << number.text;
        }
        for (const FaceNumber& other : picture.numbers) {
          if (other.face != number.face) {
            EXPECT_GE(glm::distance(other.center, number.center), number.radius + other.radius - 1)
                << name << ", " << number.text << " and " << other.text;
          }
        }
      }
    }
  }
  EXPECT_GT(led, fw::test::cases(20, 1)) << "or this shows nothing of leaders";
}

// A key shows the numbers of faces out of sight: every face has one then, wherever the solid is looked at from.
TEST(FaceNumbers, OfHiddenFacesAreShownAtAKey) {
  for (const solids::Description& description : fw::test::some_of(solids::shelf(), 5)) {
    const Model model = after(demo_model("candle-box"), {PutOnBench{description}});
    const std::size_t faces = model.state.desk().solid.faces().size();
    EXPECT_LT(picture_of(model, low_bench).numbers.size(), faces) << model.state.desk().solid.name();
    for (const double turn : {0.0, 0.9}) {
      const BenchPicture all = picture_of(after(model, {ShowHiddenNumbers{true}, Orbit{turn, 0}}), low_bench);
      EXPECT_THAT(all.numbers, SizeIs(faces)) << model.state.desk().solid.name();
    }
  }
}

// A face in two colors, through which another shows, is read as two faces; a pale one as another letter.
TEST(CountedFaces, AreToldApartByDiscAndEdgeAndStayOpaque) {
  for (const Model& start : {demo_model("candle-box"), after(demo_model("shade"), {SetMode{Mode::Work}, LastStep{}})}) {
    const Model model =
        start.state.mode == Mode::Explore ? after(start, {CountNext{}, CountNext{}, PickFace{{}}}) : start;
    const BenchPicture picture = picture_of(model, low_bench);
    std::size_t outlined = 0;
    for (const render::FaceLook& look : picture.look.looks) {
      EXPECT_EQ(look.fill.a, 1.0F);
      outlined += look.outline ? 1U : 0U;
    }
    for (const FaceNumber& number : picture.numbers) {
      EXPECT_EQ(number.counted, picture.look.looks[number.face.index()].outline.has_value()) << number.text;
    }
    if (model.state.mode == Mode::Explore) {
      EXPECT_EQ(outlined, 2U);
    }
  }
}

TEST(CountedFaces, AnOpenFaceIsDrawnOpen) {
  const Model model = demo_model("cookie-tin");
  const std::vector<FaceId> open = open_on_desk(model.state);
  ASSERT_THAT(open, testing::Not(IsEmpty()));
  const BenchPicture picture = picture_of(model, low_bench);
  for (std::size_t i = 0; i < picture.look.looks.size(); ++i) {
    const bool is_open = std::find(open.begin(), open.end(), FaceId::at(i)) != open.end();
    EXPECT_EQ(picture.look.looks[i].is_shown, !is_open);
    const bool has_number = std::any_of(picture.numbers.begin(), picture.numbers.end(),
                                        [&](const FaceNumber& one) { return one.face == FaceId::at(i); });
    EXPECT_FALSE(is_open && has_number) << "it would be read as the number of the wall behind it";
  }
}

}  // namespace
}  // namespace fw::bench::test::face_numbers_test
