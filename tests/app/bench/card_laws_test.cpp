#include <gmock/gmock.h>

#include <cmath>
#include <set>

#include "app/state/quiz/forms_support.hpp"
#include "bench/bench_picture.hpp"
#include "nets/cutout.hpp"
#include "state/derived.hpp"
#include "tasks/quiz/cutouts.hpp"

// What holds for every picture of card: one cut-out or several, flat or folded.
namespace fw::bench::test::card_laws_test {

using namespace state;
using namespace state::test;

namespace {

using figures::Rect;
using geometry::Vec2;
using geometry::Vec3;

constexpr Rect bench_rect{90, 160, 700, 420};
const Theme paper = Theme::make(theme::ThemeName::Paper, 720);

struct Case {
  std::string name;
  tasks::CutoutBench bench;
  BenchPicture picture;
  double fold = 1;
};

const std::vector<Case>& all_cases() {
  static const std::vector<Case> cases = [] {
    std::vector<Case> all;
    for (const char* id :
         {"folded-card", "lantern-top", "ice-block", "gift-box", "display-stand", "low-spire", "planter"}) {
      for (const bool answered : {false, true}) {
        Model model = answered ? after(at_net(id), {AnswerOption{0}, AnswerOption{1}}) : at_net(id);
        for (const double fold : {1.0, 0.4, 0.0}) {
          model.view.fold = fold;
          DerivedMemo memo;
          const Derived& derived = memo.of(model.state);
          if (!derived.cutouts) {
            continue;
          }
          all.push_back(
              {std::string(id) + " at " + std::to_string(fold), *derived.cutouts,
               bench_picture(
                   model, derived, paper, bench_rect,
                   [](const std::string& text) {
                     return Vec2{0.5 * paper.sizes.label * static_cast<double>(text.size()), paper.sizes.label};
                   }),
               fold});
        }
      }
    }
    return all;
  }();
  return cases;
}

Vec2 pixel_of(const BenchPicture& picture, Vec3 point) {
  return picture.camera.project(point, picture.viewport).pixel + Vec2{picture.rect.x, picture.rect.y};
}

/// Where each cut-out is seen.
std::vector<Rect> cards_seen(const Case& one) {
  std::vector<Rect> boxes;
  std::size_t face = 0;
  for (const tasks::LyingCutout& card : one.bench.lying) {
    std::vector<Vec2> seen;
    for (std::size_t p = 0; p < card.cutout.pieces().size(); ++p, ++face) {
      for (const Vec3& corner : one.picture.look.faces[face]) {
        seen.push_back(pixel_of(one.picture, corner));
      }
    }
    boxes.push_back(figures::bounding_rect(seen));
  }
  return boxes;
}

TEST(Cards, StandOnTheBenchBesideTheSolidThatTheyShouldMake) {
  ASSERT_GE(all_cases().size(), 20U);
  for (const Case& one : all_cases()) {
    const Rect& rect = one.picture.rect;
    for (const auto& face : one.picture.look.faces) {
      for (const Vec3& corner : face) {
        EXPECT_TRUE(rect.contains(pixel_of(one.picture, corner))) << one.name;
      }
    }
    EXPECT_EQ(one.picture.beside.has_value(), one.bench.shows_solid) << one.name;
    if (one.picture.beside) {
      const Rect& beside = *one.picture.beside;
      EXPECT_FALSE(rect.overlaps(beside, 1e-6)) << one.name;
      EXPECT_NEAR(rect.w * rect.h + beside.w * beside.h, bench_rect.w * bench_rect.h, 1) << one.name;
      EXPECT_TRUE(bench_rect.contains(beside, 1e-6)) << one.name;
      EXPECT_GT(rect.w, beside.w) << one.name << ": the card is what is asked about";
    }
  }
}

// Card is stiff: however far it is folded, each piece keeps its shape, and all pieces of a card their common scale.
TEST(Cards, KeepTheShapeOfTheirPieces) {
  for (const Case& one : all_cases()) {
    std::size_t face = 0;
    for (const tasks::LyingCutout& card : one.bench.lying) {
      double scale = 0;
      double height = 0;
      for (const nets::Piece& piece : card.cutout.pieces()) {
        const std::vector<Vec3>& now = one.picture.look.faces[face++];
        ASSERT_EQ(now.size(), piece.shape.size()) << one.name;
        for (std::size_t i = 0; i < now.size(); ++i) {
          for (std::size_t k = i + 1; k < now.size(); ++k) {
            const double ratio = glm::distance(now[i], now[k]) / glm::distance(piece.shape[i], piece.shape[k]);
            scale = scale == 0 ? ratio : scale;
            EXPECT_NEAR(ratio / scale, 1, 1e-3) << one.name;
          }
          height += now[i].z;
          if (one.fold == 1 && one.bench.lying.size() == 1 && card.test.is_net()) {
            EXPECT_NEAR(now[i].z, 0, 1e-9) << one.name << ": flat";
          }
        }
      }
      EXPECT_GE(height, -1e-9) << one.name << ": it folds toward the eye";
    }
  }
}

TEST(Cards, OfSeveralAnswersLieApartEachWithItsLetterAtItsUpperLeft) {
  std::size_t several = 0;
  for (const Case& one : all_cases()) {
    const std::vector<Rect> seen = cards_seen(one);
    for (std::size_t i = 0; i < seen.size(); ++i) {
      for (std::size_t k = i + 1; k < seen.size(); ++k) {
        EXPECT_FALSE(one.fold == 1 && seen[i].overlaps(seen[k], 1)) << one.name;
      }
      const std::string& letter = one.bench.lying[i].letter;
      if (letter.empty()) {
        continue;
      }
      ++several;
      const auto& spots = one.picture.spots;
      const auto spot =
          std::find_if(spots.begin(), spots.end(), [&](const BenchSpot& other) { return other.text == letter; });
      ASSERT_NE(spot, spots.end()) << one.name;
      EXPECT_EQ(spot->option, seen.size() > 1 ? std::optional(i) : std::nullopt) << one.name;
      EXPECT_LT(spot->center.x, seen[i].center().x) << one.name;
      EXPECT_LT(spot->center.y, seen[i].center().y) << one.name;
      EXPECT_LT(glm::distance(spot->center, Vec2{seen[i].x, seen[i].y}), 2.5 * one.picture.spot_radius) << one.name;
    }
  }
  EXPECT_GT(several, 4U);
}

TEST(Cards, HaveSpotsOnTheBenchThatAreChosenWhereTheyAreShown) {
  for (const Case& one : all_cases()) {
    for (const BenchSpot& spot : one.picture.spots) {
      EXPECT_TRUE(one.picture.rect.inset(one.picture.spot_radius).contains(spot.center)) << one.name << spot.text;
      if (spot.option) {
        EXPECT_EQ(option_at(one.picture, spot.center), spot.option) << one.name;
        EXPECT_FALSE(option_at(one.picture, spot.center + Vec2{1.05 * one.picture.spot_radius, 0}) == spot.option);
      }
    }
    for (std::size_t i = 0; i < one.bench.places.size(); ++i) {
      const nets::PieceEdge& edge = one.bench.places[i].edge;
      const auto& piece = one.picture.look.faces[edge.piece.index()];
      const Vec2 middle = pixel_of(one.picture, (piece[edge.edge] + piece[(edge.edge + 1) % piece.size()]) * 0.5);
      EXPECT_LT(glm::distance(one.picture.spots[i].center, middle), 1e-6) << one.name;
      EXPECT_EQ(one.picture.spots[i].text, one.bench.places[i].letter) << one.name;
      EXPECT_EQ(one.picture.spots[i].look == BenchSpot::Look::Plain, !one.bench.places[i].is_right) << one.name;
    }
  }
}

TEST(Cards, ShowPiecesOfOneShapeAlikeAndOutlineWhatIsWrong) {
  for (const Case& one : all_cases()) {
    const auto& looks = one.picture.look.looks;
    for (std::size_t i = 0; i < looks.size(); ++i) {
      for (std::size_t k = 0; k < i; ++k) {
        const bool is_one_sort = one.picture.look.faces[i].size() == one.picture.look.faces[k].size();
        EXPECT_EQ(looks[i].fill == looks[k].fill && looks[i].hatch == looks[k].hatch, is_one_sort) << one.name;
      }
      EXPECT_LT(looks[i].fill.a, 1) << one.name << ": what lies behind a folded piece shines through";
      EXPECT_GT(looks[i].fill.a, 0.8F) << one.name;
    }
    std::size_t wrong = 0;
    for (const render::FaceLook& look : looks) {
      wrong += look.outline && look.outline->ink == paper.bad ? 1U : 0U;
    }
    EXPECT_EQ(wrong, one.bench.lying.size() == 1 ? one.bench.bad.size() : wrong) << one.name;
    EXPECT_EQ(one.picture.look.lines.size(), one.bench.differ.size()) << one.name;
  }
}

TEST(Cards, TellEachLengthOfTheirOutlineOnce) {
  std::size_t told = 0;
  for (const Case& one : all_cases()) {
    if (!one.bench.shows_solid || one.bench.lying.size() != 1 || one.fold < 1) {
      continue;
    }
    const nets::Cutout& cutout = one.bench.lying.front().cutout;
    std::set<std::string> texts;
    for (const BenchLabel& label : one.picture.labels) {
      if (label.text == "missing" || label.text.size() == 1) {
        continue;
      }
      EXPECT_TRUE(texts.insert(label.text).second) << one.name << ": " << label.text;
      const std::size_t begin = label.text.find_first_of("0123456789");
      ASSERT_NE(begin, std::string::npos) << label.text;
      const double number = std::stod(label.text.substr(begin));
      double nearest = 1e9;
      for (const nets::PieceEdge& edge : nets::free_edges(cutout)) {
        nearest = std::min(nearest, std::abs(nets::edge_length(cutout, edge) - number));
      }
      EXPECT_LE(nearest, 0.0501) << one.name << ": " << label.text;
      EXPECT_EQ(begin > 0, nearest > 1e-3 * number) << one.name << ": " << label.text << " is about, or exact";
      ++told;
    }
    for (const nets::PieceEdge& edge : nets::free_edges(cutout)) {
      const double length = nets::edge_length(cutout, edge);
      const bool is_told = std::any_of(texts.begin(), texts.end(), [&](const std::string& text) {
        return std::abs(std::stod(text.substr(text.find_first_of("0123456789"))) - length) <= 0.0501;
      });
      EXPECT_TRUE(is_told) << one.name << ": " << length;
    }
  }
  EXPECT_GT(told, 5U);
}

}  // namespace
}  // namespace fw::bench::test::card_laws_test
