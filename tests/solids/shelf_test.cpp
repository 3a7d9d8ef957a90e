#include <gtest/gtest.h>

#include <set>

#include "solids/naming.hpp"
#include "sound_solid.hpp"
#include "support/random.hpp"

namespace fw::solids::shelf_test {
namespace {

/// Every solid of the shelf: a new kind or base shape is tested here by being in its table.
class Shelf : public testing::TestWithParam<std::size_t> {
 protected:
  static const std::vector<Description>& all() {
    static const std::vector<Description> descriptions = shelf();
    return descriptions;
  }
  [[nodiscard]] Description description() const { return all()[GetParam()]; }
};

TEST_P(Shelf, IsSound) {
  const auto solid = Solid::make(description());
  ASSERT_TRUE(solid.has_value());
  test::expect_sound(*solid);
  EXPECT_TRUE(solid->remarks().empty());
}

TEST_P(Shelf, IsNamedByItsNames) {
  const auto solid = Solid::make(description());
  ASSERT_TRUE(solid.has_value());
  EXPECT_EQ(judge_name(*solid, solid->name()), NameVerdict::Right);
  for (const std::string& name : solid->statement().other_names) {
    EXPECT_EQ(judge_name(*solid, name), NameVerdict::Right) << name;
  }
  const auto names = names_with_face_count(solid->faces().size());
  EXPECT_NE(std::find(names.begin(), names.end(), solid->name()), names.end()) << solid->name();
}

TEST_P(Shelf, HasEveryLabelOnceAndEveryFaceLengthFromSomewhere) {
  const auto solid = Solid::make(description());
  ASSERT_TRUE(solid.has_value());
  std::set<std::string> marked;
  for (const Mark& mark : solid->marks()) {
    EXPECT_TRUE(marked.insert(mark.symbol.name).second) << mark.symbol.name;
    EXPECT_TRUE(solid->is_given(mark.symbol)) << mark.symbol.name;
  }
  for (const Face& face : solid->faces()) {
    for (const FaceLength& length : face.lengths) {
      EXPECT_EQ(length.origin == LengthOrigin::WorkedOut, marked.count(length.symbol.name) == 0) << length.title;
      EXPECT_EQ(length.mark.has_value(), length.origin != LengthOrigin::WorkedOut);
    }
  }
}

TEST_P(Shelf, KeepsItsShapeInAnotherUnit) {
  const auto solid = Solid::make(description());
  const auto turned = Solid::make(in_unit(description(), *units::Unit::find("mm")));
  ASSERT_TRUE(solid.has_value());
  ASSERT_TRUE(turned.has_value());
  EXPECT_EQ(turned->unit().text(), "mm");
  const auto expected = solid->volume().in(turned->volume().unit());
  EXPECT_LT(test::relative_difference(turned->volume().amount().to_double(), expected.amount().to_double()), 1e-12);
}

TEST_P(Shelf, KeepsItsStateRelationsTrue) {
  const auto solid = Solid::make(description());
  ASSERT_TRUE(solid.has_value());
  for (const Relation& relation : solid->statement().relations) {
    const auto left = algebra::evaluate(relation.equation.left, solid->values());
    const auto right = algebra::evaluate(relation.equation.right, solid->values());
    ASSERT_TRUE(left && right) << said(relation.reason);
    EXPECT_LT(test::relative_difference(left->to_double(), right->to_double()), 1e-12) << said(relation.reason);
    EXPECT_FALSE(relation.reason.empty());
  }
}

/// The description with all its lengths grown or shrunk: by a common factor, or each by its own, so that proportions
/// change.
Description varied(const Description& description, std::optional<long long> common_permille, test::Dice& dice) {
  Description result = description;
  const auto change = [&](LengthEntry& entry) {
    const auto permille = common_permille.value_or(static_cast<long long>(dice.between(600, 1700)));
    entry.written->number.value = entry.written->number.value * exact::Number::ratio(permille, 1000);
    entry.written->number.is_fraction = true;  // nothing here is rounded
    entry.written->text = "varied";
  };
  for (auto& field : result.fields) {
    if (auto* entry = std::get_if<LengthEntry>(&field.second)) {
      change(*entry);
    } else if (auto* list = std::get_if<std::vector<LengthEntry>>(&field.second)) {
      for (LengthEntry& item : *list) {
        change(item);
      }
    }
  }
  for (Description& base : result.base) {
    base = varied(base, common_permille, dice);
  }
  return result;
}

TEST_P(Shelf, IsSoundInRandomProportions) {
  test::Dice dice(1000 + GetParam());
  int made = 0;
  for (int attempt = 0; attempt < 25; ++attempt) {
    const auto common = attempt % 5 == 0 ? std::optional<long long>(100 + 317 * attempt) : std::nullopt;
    const auto solid = Solid::make(varied(description(), common, dice));
    if (solid) {
      ++made;
      test::expect_sound(*solid);
    } else {
      // Random sides need not make a figure; then the fault says what would.
      EXPECT_EQ(solid.error().front().severity, Severity::Impossible);
      EXPECT_FALSE(solid.error().front().message.empty());
    }
  }
  EXPECT_GT(made, 2) << "too few of the random figures exist to say anything";
}

/// Whatever measure is taken away and the volume or surface area given instead comes back.
TEST_P(Shelf, FindsAHeightFromTheVolume) {
  const auto solid = Solid::make(description());
  ASSERT_TRUE(solid.has_value());
  Description open = description();
  const auto height = open.fields.find(open.fields.count("height") != 0 ? "height" : "edge");
  ASSERT_NE(height, open.fields.end());
  height->second = LengthEntry{};
  const auto volume = units::parse_quantity(exact::fixed_text(solid->volume().amount(), 12) + " cm^3");
  ASSERT_TRUE(volume.has_value());
  const auto found = Solid::make(open, {{"volume", *volume}});
  ASSERT_TRUE(found.has_value()) << said(found.error().front().message);
  const std::string symbol = height->first;
  EXPECT_LT(test::relative_difference(found->values().at(symbol).to_double(), solid->values().at(symbol).to_double()),
            1e-9);
  EXPECT_FALSE(found->is_given({symbol, "", 1}));
}

INSTANTIATE_TEST_SUITE_P(AllSolids, Shelf, testing::Range(std::size_t{0}, shelf().size()),
                         [](const testing::TestParamInfo<std::size_t>& parameter) {
                           const Description description = shelf()[parameter.param];
                           std::string name = std::to_string(parameter.param) + "_" + description.kind;
                           name += description.base.empty() ? "" : "_" + description.base.front().kind;
                           for (char& letter : name) {
                             letter = letter == ' ' ? '_' : letter;
                           }
                           return name;
                         });

TEST(TheShelf, HoldsEveryKindOnEveryBaseThatItCanStandOn) {
  std::set<std::string> standing;
  for (const Description& description : shelf()) {
    standing.insert(description.kind + (description.base.empty() ? "" : "/" + description.base.front().kind));
  }
  for (const Kind& kind : kinds()) {
    if (!kind.stands_on_base) {
      EXPECT_EQ(standing.count(kind.key), 1U) << kind.key;
      continue;
    }
    for (const ShapeKind& shape : base_shapes()) {
      EXPECT_EQ(standing.count(kind.key + "/" + shape.key), 1U) << kind.key << " on " << shape.key;
    }
  }
}

}  // namespace
}  // namespace fw::solids::shelf_test
