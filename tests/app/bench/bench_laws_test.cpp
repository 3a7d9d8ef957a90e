#include <gmock/gmock.h>

#include <cmath>

#include "app/state/model_support.hpp"
#include "bench/bench_picture.hpp"
#include "bench/landing.hpp"
#include "figures/recording_canvas.hpp"
#include "solids/body/standing.hpp"
#include "state/derived.hpp"
#include "support/sanitized.hpp"
#include "tasks/face_lengths.hpp"
#include "tasks/generate/generate.hpp"

// What holds for every picture of the bench: the shelf, open and closed.
namespace fw::bench::test::bench_laws_test {

using namespace state;
using namespace state::test;

namespace {

using figures::Rect;
using geometry::Vec2;
using geometry::Vec3;

constexpr Rect low_bench{90, 160, 700, 420};
constexpr Rect upright_bench{80, 130, 430, 520};
const Theme paper = Theme::make(theme::ThemeName::Paper, 720);

Vec2 rough_size(const std::string& text) {
  return {0.52 * paper.sizes.label * static_cast<double>(text.size()), 1.1 * paper.sizes.label};
}

BenchPicture picture_of(const Model& model, const Rect& rect = low_bench) {
  DerivedMemo memo;
  return bench_picture(model, memo.of(model.state), paper, rect, rough_size);
}

Vec2 pixel_of(const BenchPicture& picture, Vec3 point) {
  return picture.camera.project(point, picture.viewport).pixel + Vec2{picture.rect.x, picture.rect.y};
}

Rect seen_box(const BenchPicture& picture) {
  std::vector<Vec2> seen;
  for (const auto& face : picture.look.faces) {
    for (const Vec3& corner : face) {
      seen.push_back(pixel_of(picture, corner));
    }
  }
  return figures::bounding_rect(seen);
}

double distance_to(const figures::Segment& s, Vec2 p) {
  const Vec2 along = s.to - s.from;
  const double t = std::clamp(glm::dot(p - s.from, along) / std::max(1e-9, glm::dot(along, along)), 0.0, 1.0);
  return glm::distance(p, s.from + along * t);
}

struct Case {
  std::string name;
  Model model;
  BenchPicture picture;
};

std::vector<Case> made_cases() {
  std::vector<Case> cases;
  std::size_t number = 0;
  for (const solids::Description& description : fw::test::some_of(solids::shelf(), 4)) {
    for (const double fold : {0.0, 0.5, 1.0}) {
      // In turn closed, open, and half folded.
      if (fold != 0.5 * static_cast<double>(number % 3)) {
        continue;
      }
      const bool shows_hidden = number % 2 == 0;
      const Model model = after(demo_model("candle-box"), {PutOnBench{description}, SetFold{fold}, CountNext{},
                                                           PickFace{{}}, ShowHiddenNumbers{shows_hidden}});
      cases.push_back({model.state.desk().solid.name() + " at " + std::to_string(fold), model, picture_of(model)});
    }
    ++number;
  }
  return cases;
}

/// The shelf, closed and open; the pictures are made once.
const std::vector<Case>& shelf_cases() {
  static const std::vector<Case> cases = made_cases();
  return cases;
}

std::vector<const Case*> shelf_at(double fold) {
  std::vector<const Case*> cases;
  for (const Case& one : shelf_cases()) {
    if (one.model.view.fold == fold) {
      cases.push_back(&one);
    }
  }
  return cases;
}

TEST(BenchPictures, FillTheBenchWithRoomForTheirLabels) {
  for (const Case& one : shelf_cases()) {
    for (const Rect& rect : {low_bench, upright_bench}) {
      if (rect == upright_bench && one.model.view.fold != 0.5) {
        continue;
      }
      const BenchPicture picture = rect == low_bench ? one.picture : picture_of(one.model, rect);
      const Rect box = seen_box(picture);
      EXPECT_TRUE(rect.contains(box, 0.5)) << one.name;
      EXPECT_LT(glm::distance(box.center(), rect.center()), 0.12 * rect.w) << one.name;
      const double filled = std::max(box.w / rect.w, box.h / rect.h);
      EXPECT_GT(filled, 0.5) << one.name << ": labels take less than half of it";
      EXPECT_LT(filled, 0.95) << one.name;
      for (const BenchLabel& label : picture.labels) {
        const Vec2 size = rough_size(label.text);
        EXPECT_TRUE(rect.contains(Rect{label.center.x - size.x / 2, label.center.y - size.y / 2, size.x, size.y}, 1))
            << one.name << ", " << label.text;
      }
      for (const FaceNumber& number : picture.numbers) {
        EXPECT_TRUE(rect.inset(number.radius).contains(number.center)) << one.name << ", " << number.text;
      }
    }
  }
}

TEST(BenchPictures, ShowTheClosedSolidFromAboveAndTheNetTrueToShape) {
  for (const Case* one : shelf_at(0)) {
    const Vec3 eye = one->picture.camera.forward();
    EXPECT_LT(eye.z, -0.2) << one->name;
    EXPECT_GT(eye.z, -0.7) << one->name;
  }
  for (const Case* one : shelf_at(1)) {
    EXPECT_LT(one->picture.camera.forward().z, -0.999) << one->name;
    const Rect box = seen_box(one->picture);
    const auto scale = [&](double w, double h) { return std::min(low_bench.w / w, low_bench.h / h); };
    EXPECT_LE(scale(box.h, box.w), 1.25 * scale(box.w, box.h)) << one->name << ": turned, it would be much larger";
  }
}

TEST(BenchPictures, AreDrawnWithThickEdgesAndThinDashedOnesBehind) {
  for (const Case* at : shelf_at(0)) {
    const Case& one = *at;
    const BenchPicture& picture = one.picture;
    ASSERT_TRUE(picture.look.hidden_edge.has_value());
    const render::Stroke& hidden = *picture.look.hidden_edge;
    EXPECT_EQ(picture.look.edge.dash_px, 0);
    EXPECT_NEAR(static_cast<double>(picture.look.edge.width_px), paper.sizes.edge, 1e-5);
    EXPECT_LT(hidden.width_px, 0.8F * picture.look.edge.width_px);
    EXPECT_GT(hidden.dash_px, 2 * hidden.width_px);
    EXPECT_GT(hidden.gap_px, hidden.width_px);
    EXPECT_LT(hidden.gap_px, hidden.dash_px);
    const double width = seen_box(picture).w;
    for (const render::FaceLook& look : picture.look.looks) {
      const double lines = width / (static_cast<double>(look.hatch_period) *
                                    picture.camera.pixels_per_unit(picture.camera.distance, picture.viewport));
      EXPECT_GT(lines, 8) << one.name << ": a hatch is told from a single line";
      EXPECT_LT(lines, 60) << one.name << ": and from a gray";
    }
  }
}

// Labels are apart from one another and from the circles, on the bench of any solid.
TEST(BenchLabels, LieOnNoOtherLabelAndOnNoNumber) {
  std::size_t labels = 0;
  std::size_t unclear = 0;
  for (const Case& one : shelf_cases()) {
    const BenchPicture& picture = one.picture;
    std::vector<Rect> boxes;
    for (const BenchLabel& label : picture.labels) {
      const Vec2 size = rough_size(label.text);
      boxes.push_back({label.center.x - size.x / 2, label.center.y - size.y / 2, size.x, size.y});
    }
    for (std::size_t i = 0; i < boxes.size(); ++i) {
      ++labels;
      for (std::size_t k = i + 1; k < boxes.size(); ++k) {
        unclear += boxes[i].overlaps(boxes[k], 1) ? 1U : 0U;
      }
      for (const FaceNumber& number : picture.numbers) {
        const Vec2 nearest =
            glm::clamp(number.center, Vec2{boxes[i].x, boxes[i].y}, Vec2{boxes[i].right(), boxes[i].bottom()});
        unclear += glm::distance(nearest, number.center) < number.radius - 1 ? 1U : 0U;
      }
    }
  }
  EXPECT_GT(labels, fw::test::cases(30, 1));
  EXPECT_EQ(unclear, 0U);
}

TEST(BenchLabels, HaveALeaderToTheLineThatTheyMeasure) {
  std::size_t leaders = 0;
  for (const Case& one : shelf_cases()) {
    const BenchPicture& picture = one.picture;
    for (const BenchLabel& label : picture.labels) {
      if (!label.leader) {
        continue;
      }
      ++leaders;
      const Vec2 size = rough_size(label.text);
      const Rect box{label.center.x - size.x / 2, label.center.y - size.y / 2, size.x, size.y};
      EXPECT_TRUE(box.inset(-1.5 * paper.sizes.space).contains(label.leader->from)) << one.name << ", " << label.text;
      double nearest = 1e9;
      for (const auto& face : picture.look.faces) {
        for (std::size_t i = 0; i < face.size(); ++i) {
          nearest = std::min(nearest,
                             distance_to({pixel_of(picture, face[i]), pixel_of(picture, face[(i + 1) % face.size()])},
                                         label.leader->to));
        }
      }
      for (const render::LineLook& line : picture.look.lines) {
        nearest = std::min(nearest,
                           distance_to({pixel_of(picture, line.from), pixel_of(picture, line.to)}, label.leader->to));
      }
      EXPECT_LT(nearest, 1) << one.name << ", " << label.text;
    }
  }
  EXPECT_GE(leaders, fw::test::cases(1, 0)) << "or this shows nothing";
}

// A height is a dashed line of the closed solid, and has a right-angle mark where it meets what it is square to.
TEST(BenchMarks, HeightsAreDrawnWithTheirRightAngle) {
  std::size_t heights = 0;
  for (const Case* at : shelf_at(0)) {
    const Case& one = *at;
    const BenchPicture& picture = one.picture;
    const solids::Solid& solid = one.model.state.desk().solid;
    for (const solids::Mark& mark : solid.marks()) {
      const auto is_it = [&](const render::LineLook& line) {
        return glm::distance(line.from, mark.from) < 1e-9 && glm::distance(line.to, mark.to) < 1e-9;
      };
      const auto drawn = std::find_if(picture.look.lines.begin(), picture.look.lines.end(), is_it);
      EXPECT_EQ(drawn != picture.look.lines.end(), mark.place != solids::MarkPlace::Edge) << one.name << mark.title;
      if (drawn != picture.look.lines.end()) {
        EXPECT_GT(drawn->stroke.dash_px, drawn->stroke.width_px);
        EXPECT_GT(drawn->stroke.gap_px, 0.8F * drawn->stroke.width_px);
        EXPECT_TRUE(drawn->hidden.has_value()) << "it is seen through the faces";
      }
      if (glm::length(mark.square_to) == 0) {
        continue;
      }
      ++heights;
      const Vec3 up = glm::normalize(mark.from - mark.to);
      const Vec3 across = glm::normalize(mark.square_to);
      std::size_t sides = 0;
      for (const render::LineLook& line : picture.look.lines) {
        const Vec3 way = line.to - line.from;
        const bool is_near = glm::distance(line.from, mark.to) < 0.45 * glm::distance(mark.from, mark.to) &&
                             glm::distance(line.to, mark.to) < 0.45 * glm::distance(mark.from, mark.to);
        const double along =
            std::max(std::abs(glm::dot(glm::normalize(way), up)), std::abs(glm::dot(glm::normalize(way), across)));
        const bool is_short = line.stroke.dash_px == 0 && is_near;
        sides += is_short && along > 0.999 ? 1U : 0U;
        if (is_short && along > 0.999) {
          EXPECT_LT(line.stroke.width_px, picture.look.edge.width_px) << "finer than an edge";
          const double pixels =
              glm::length(way) * picture.camera.pixels_per_unit(picture.camera.distance, picture.viewport);
          EXPECT_GT(pixels, 3) << one.name;
          EXPECT_LT(pixels, 30) << one.name;
        }
      }
      EXPECT_GE(sides, 2U) << one.name << ", " << mark.title;
    }
  }
  EXPECT_GE(heights, fw::test::cases(4, 0));
}

TEST(BenchMarks, LengthsOfThePickedFaceStandOut) {
  const std::vector<const Case*> closed = shelf_at(0);
  for (std::size_t i = 0; i < closed.size(); i += 3) {
    const Case& one = *closed[i];
    const solids::Solid& solid = one.model.state.desk().solid;
    const FaceId face = one.model.state.desk().counted.front();
    const BenchPicture picture = picture_of(after(one.model, {PickFace{face}}));
    const auto& lengths = solid.faces()[face].lengths;
    for (const BenchLabel& label : picture.labels) {
      const bool is_of_face = std::any_of(lengths.begin(), lengths.end(),
                                          [&](const solids::FaceLength& length) { return length.mark == label.mark; });
      EXPECT_EQ(label.emphasized, is_of_face) << one.name << ", " << label.text;
      const solids::Mark& mark = solid.marks()[*label.mark];
      const bool is_thick = std::any_of(picture.look.lines.begin(), picture.look.lines.end(), [&](const auto& line) {
        return glm::distance(line.from, mark.from) < 1e-9 && glm::distance(line.to, mark.to) < 1e-9 &&
               line.stroke.width_px > 2 * picture.look.edge.width_px;
      });
      EXPECT_EQ(is_thick, is_of_face) << one.name << ", " << label.text;
    }
    const std::vector<FaceId>& counted = one.model.state.desk().counted;
    float widest = 0;
    for (std::size_t k = 0; k < picture.look.looks.size(); ++k) {
      const auto& outline = picture.look.looks[k].outline;
      const bool is_told_apart = std::find(counted.begin(), counted.end(), picture.faces[k]) != counted.end();
      EXPECT_EQ(outline.has_value(), is_told_apart) << one.name;
      if (picture.faces[k] != face && outline) {
        EXPECT_LT(outline->width_px, 2 * picture.look.edge.width_px) << one.name << ": counted, and not picked";
      }
      widest = std::max(widest, outline ? outline->width_px : 0);
    }
    EXPECT_GT(widest, 2 * picture.look.edge.width_px);
  }
}

// A face that is let go over a place lands there; far from all places it lands nowhere; over a face, at its edge.
TEST(Landings, AreFoundWhereTheyAreShown) {
  std::size_t tried = 0;
  for (const Case* at : shelf_at(1)) {
    const Case& one = *at;
    const BenchPicture& picture = one.picture;
    const Desk& desk = one.model.state.desk();
    const FaceId carried = desk.net.order()[desk.net.order().size() - 1];
    const std::vector<Landing> all = landings(picture, one.model, carried);
    for (const Landing& landing : all) {
      const Vec2 middle = figures::bounding_rect(landing.outline).center();
      const Landing* found = landing_near(all, picture, desk, carried, middle);
      ASSERT_NE(found, nullptr) << one.name;
      EXPECT_LT(glm::distance(figures::bounding_rect(found->outline).center(), middle), 1) << one.name;
      ++tried;
    }
    EXPECT_EQ(landing_near({}, picture, desk, carried, low_bench.center()), nullptr);
    EXPECT_EQ(landing_near(all, picture, desk, carried, {-5000, -5000}), nullptr) << one.name;
    for (const Landing& landing : all) {
      const auto neighbor = desk.solid.body().across(landing.edge, carried);
      const Rect box = figures::bounding_rect(outline_of(picture, neighbor));
      const Landing* found = landing_near({landing}, picture, desk, carried, box.center());
      ASSERT_NE(found, nullptr) << one.name << ": at the face that it would hang on";
    }
    EXPECT_TRUE(outline_of(picture, FaceId::at(99)).empty());
  }
  EXPECT_GT(tried, fw::test::cases(10, 0));
}

// The face that a problem asks about is turned toward the class.
TEST(AskedFaces, AreSeenWell) {
  tasks::PracticeRequest request;
  request.types = {"face-lengths"};
  request.count = fw::test::cases(12, 3);
  auto lessons = tasks::generated(request);
  ASSERT_TRUE(lessons.has_value());
  Model start;
  start.state = opened(std::move(lessons.value().front()), "");
  std::size_t asked = 0;
  for (std::size_t i = 0; i < start.state.lesson->problems.size(); ++i) {
    const Model model = after(start, {OpenProblem{i}, SetMode{Mode::Work}, SetFold{0}});
    const auto* task = practice::task_as<tasks::FaceLengths>(model.state.current());
    ASSERT_NE(task, nullptr);
    const BenchPicture picture = picture_of(model);
    const solids::Body& body = model.state.desk().solid.body();
    const Vec3 point = solids::PlacedFace(body, picture.look.faces, task->face()).label_point();
    EXPECT_EQ(face_at(picture, pixel_of(picture, point)), task->face()) << i;
    for (std::size_t k = 0; k < picture.faces.size(); ++k) {
      if (picture.faces[k] == task->face()) {
        ++asked;
        const auto& corners = picture.look.faces[k];
        const Vec3 normal = glm::normalize(glm::cross(corners[1] - corners[0], corners.back() - corners[0]));
        EXPECT_GE(std::abs(glm::dot(normal, picture.camera.forward())), 0.4) << i;
      }
    }
  }
  EXPECT_GT(asked, 0U) << "or this shows nothing";
}

TEST(BenchTexts, AreDrawnAsThePictureTells) {
  for (const Case& one : shelf_cases()) {
    const BenchPicture& picture = one.picture;
    figures::RecordingCanvas canvas;
    draw_bench_texts(canvas, picture, paper);
    EXPECT_EQ(canvas.open_clips(), 0U);
    for (const BenchLabel& label : picture.labels) {
      EXPECT_TRUE(canvas.shows(label.text)) << one.name << ", " << label.text;
    }
    const auto circles = canvas.circles();
    for (const FaceNumber& number : picture.numbers) {
      EXPECT_TRUE(canvas.shows(number.text)) << one.name;
      const auto drawn = std::find_if(circles.begin(), circles.end(), [&](const auto& circle) {
        return circle.center == number.center && circle.radius == number.radius && circle.fill;
      });
      ASSERT_NE(drawn, circles.end()) << one.name << ", " << number.text;
      EXPECT_EQ(*drawn->fill == paper.ink, number.counted) << one.name << ": what is counted is filled";
      const bool has_dashes = std::any_of(circles.begin(), circles.end(), [&](const auto& circle) {
        return circle.center == number.center && circle.stroke && circle.stroke->dash > 0;
      });
      EXPECT_EQ(has_dashes, number.is_behind) << one.name << ", " << number.text;
      if (number.leader) {
        EXPECT_EQ(number.leader->from, number.center) << one.name;
      }
    }
    const auto texts = canvas.texts();
    const auto paths = canvas.paths();
    for (const BenchLabel& label : picture.labels) {
      const auto has_ground = std::any_of(paths.begin(), paths.end(), [&](const auto& path) {
        return path.fill && *path.fill == paper.ground && path.points.size() == 4 &&
               figures::bounding_rect(path.points).contains(label.center);
      });
      EXPECT_TRUE(has_ground || !label.on_face) << one.name << ", " << label.text << ": over a hatch it has a ground";
    }
  }
}

}  // namespace
}  // namespace fw::bench::test::bench_laws_test
