#include "solids/solid.hpp"

#include <gtest/gtest.h>

#include <type_traits>

#include "sound_solid.hpp"
#include "support/describe_solid.hpp"

namespace fw::solids::solid_test {
namespace {

static_assert(std::is_copy_constructible_v<Solid> && !std::is_default_constructible_v<Solid>);

std::string shown_surface(const std::string& text) { return units::text(test::solid(text).surface_area(), 2); }
std::string shown_volume(const std::string& text) { return units::text(test::solid(text).volume(), 2); }

TEST(SolidMeasures, TakeTheLabelAsWritten) {
  const std::string text = "prism | height: 10 cm | base equilateral triangle | side: 12 cm | height: 10.39 cm";
  EXPECT_EQ(shown_surface(text), "484.68 cm²");
  EXPECT_EQ(shown_volume(text), "623.4 cm³");
  // The figure itself is drawn from the exact side.
  EXPECT_NEAR(geometry::volume(test::solid(text).body().facets()), 360 * std::sqrt(3.0), 1e-9);
}

TEST(SolidMeasures, FollowFromWhateverIsGiven) {
  EXPECT_EQ(shown_surface("pyramid | slant_height: 9 cm | base square | side: 6 cm"), "144 cm²");
  EXPECT_EQ(shown_surface("pyramid | height: 12 cm | base square | side: 10 cm"), "360 cm²");
  // The height is √(9² - 32) = 7 cm.
  EXPECT_EQ(shown_volume("pyramid | lateral_edge: 9 cm | base square | side: 8 cm"), "≈ 149.33 cm³");
}

TEST(SolidMeasures, ComeBackFromSurfaceAndVolume) {
  EXPECT_EQ(test::solid("rectangular prism | length: 12 ft | width: 5 ft | height: ? | known volume: 180 ft^3")
                .values()
                .at("height"),
            exact::Number::whole(3));
  EXPECT_EQ(test::solid("pyramid | slant_height: 9 cm | base square | side: ? | known surface_area: 144 cm^2")
                .values()
                .at("base.side"),
            exact::Number::whole(6));
  EXPECT_EQ(test::solid("pyramid | height: 12 cm | base square | side: ? | known surface_area: 360 cm^2")
                .values()
                .at("base.side"),
            exact::Number::whole(10));
  EXPECT_EQ(test::solid("prism | height: 7 cm | base square | side: ? | known surface_area: 240 cm^2")
                .values()
                .at("base.side"),
            exact::Number::whole(6));
  EXPECT_EQ(test::solid("cube | edge: ? | known volume: 64 L").values().at("edge"), exact::Number::whole(40));
}

TEST(SolidMeasures, ABoxComesBackFromSurfaceVolumeAndOneEdge) {
  const Solid box = test::solid(
      "rectangular prism | length: 9 cm | width: ? | height: ? | known surface_area: 286 cm^2 | known volume: 315 "
      "cm^3");
  EXPECT_EQ(box.values().at("width"), exact::Number::whole(7));
  EXPECT_EQ(box.values().at("height"), exact::Number::whole(5));
}

TEST(SolidUnits, KeepEveryDigitWhenTheyAreSwitched) {
  const Description pyramid =
      test::described("pyramid | slant_height: 10.39 cm | base square | side: 7.50 cm").description;
  const auto text = [](const Description& description) {
    return std::get<LengthEntry>(description.fields.at("slant_height")).written->text;
  };
  const Description in_millimeters = in_unit(pyramid, *units::Unit::find("mm"));
  EXPECT_EQ(text(in_millimeters), "103.9 mm");
  EXPECT_EQ(text(in_unit(in_millimeters, *units::Unit::find("cm"))), "10.39 cm");
  const Description in_inches = in_unit(pyramid, *units::Unit::find("in"));
  EXPECT_EQ(text(in_inches), "4 23/254 in");  // 1039 ÷ 254
  EXPECT_EQ(text(in_unit(in_inches, *units::Unit::find("cm"))), "10.39 cm");
}

TEST(SolidUnits, UnlikeOnesAreConvertedExactly) {
  const Solid solid = test::solid("rectangular prism | length: 9 cm | width: 70 mm | height: 0.05 m");
  EXPECT_EQ(solid.unit().text(), "cm");
  EXPECT_EQ(units::text(solid.volume(), 2), "315 cm³");
  EXPECT_EQ(shown_volume("prism | height: 1 ft | base square | side: 6 in"), "432 in³");
  const Solid bare = test::solid("cube | edge: 3");
  EXPECT_EQ(bare.volume().amount(), exact::Number::whole(27));
  EXPECT_EQ(shown_surface("prism | height: 1 m | base polygon | vertices: 0 0, 30 0, 30 40 | unit: cm"), "13,200 cm²");
}

TEST(SolidFaces, SayWhereEachLengthIsWritten) {
  const Solid box = test::solid("rectangular prism | length: 9 cm | width: 7 cm | height: 5 cm");
  const auto& bottom = box.faces()[FaceId::at(0)];
  const auto& top = box.faces()[FaceId::at(1)];
  const auto& right = box.faces()[FaceId::at(5)];
  EXPECT_EQ(bottom.lengths[0].origin, LengthOrigin::OwnLabel);
  EXPECT_EQ(top.lengths[0].origin, LengthOrigin::EqualEdge);
  ASSERT_TRUE(top.lengths[0].mark.has_value());
  EXPECT_EQ(box.label(*top.lengths[0].mark), "9 cm");
  EXPECT_EQ(right.lengths[1].origin, LengthOrigin::OwnLabel);
  const Solid pyramid = test::solid("pyramid | slant_height: ? | height: 12 cm | base square | side: 10 cm");
  std::size_t own = 0;
  for (const Face& face : pyramid.faces()) {
    own += face.role == FaceRole::Lateral && face.lengths[1].origin == LengthOrigin::OwnLabel ? 1U : 0U;
  }
  EXPECT_EQ(own, 1U) << "the slant height is written on the front face alone";
  const Solid worked = test::solid("pyramid | height: 12 cm | base square | side: 10 cm");
  EXPECT_EQ(worked.faces()[FaceId::at(1)].lengths[1].origin, LengthOrigin::WorkedOut);
}

TEST(SolidLabels, StandAsTheLessonWritesThem) {
  const Solid solid = test::solid("prism | height: 7 1/2 ft | base right triangle | legs: 3 ft, ? | hypotenuse: 5 ft");
  std::vector<std::string> labels;
  for (std::size_t i = 0; i < solid.marks().size(); ++i) {
    labels.push_back(solid.label(MarkId::at(i)));
  }
  EXPECT_EQ(labels, (std::vector<std::string>{"3 ft", "5 ft", "?", "7 1/2 ft"}));
  EXPECT_TRUE(solid.is_given({"base.legs.1", "a", 1}));
  EXPECT_FALSE(solid.is_given({"base.legs.2", "b", 1}));
  const Solid polygon = test::solid("prism | height: 2 cm | base polygon | vertices: 0 0, 4 0, 3 2 | unit: cm");
  EXPECT_EQ(polygon.label(MarkId::at(2)), "≈ 3.61 cm");
}

/// Common practice, no source: length in front, width on the right, heights inside, slant heights on the front face.
TEST(SolidMarks, StandWhereATextbookDrawsThem) {
  const Solid pyramid = test::solid("pyramid | height: 12 cm | slant_height: ? | base square | side: 10 cm");
  ASSERT_EQ(pyramid.marks().size(), 3U);
  const Mark& side = pyramid.marks()[MarkId::at(0)];
  const Mark& height = pyramid.marks()[MarkId::at(1)];
  const Mark& slant = pyramid.marks()[MarkId::at(2)];
  EXPECT_EQ(side.place, MarkPlace::Edge);
  EXPECT_NEAR(side.from.y, -5, 1e-12);
  EXPECT_NEAR(side.to.y, -5, 1e-12);
  EXPECT_EQ(height.place, MarkPlace::Inside);
  EXPECT_NEAR(height.from.z, 12, 1e-12);
  EXPECT_NEAR(glm::length(height.to), 0, 1e-12);
  EXPECT_EQ(slant.place, MarkPlace::OnFace);
  EXPECT_NEAR(slant.to.y, -5, 1e-12);
  EXPECT_NEAR(slant.to.z, 0, 1e-12);
  EXPECT_GT(glm::length(slant.square_to), 0.99);
  const Solid prism = test::solid("prism | height: 10 cm | base triangle | sides: 8 cm, 5 cm, 5 cm | height: 3 cm");
  const Mark& across = prism.marks()[MarkId::at(3)];
  EXPECT_EQ(across.place, MarkPlace::OnFace);
  EXPECT_EQ(across.face, std::optional<std::size_t>(1));
}

TEST(PrismsOnTheirSide, RestOnALateralFaceWithTheEndInFront) {
  for (const std::string base :
       {"triangle | sides: 8 cm, 5 cm, 5 cm", "trapezoid | bases: 9 cm, 5 cm | height: 4 cm | legs: 5 cm, ?",
        "regular polygon | count: 5 | side: 4 cm", "right triangle | legs: 6 cm, 8 cm"}) {
    const Solid solid = test::solid("prism | height: 11 cm | lies: side | base " + base);
    SCOPED_TRACE(base);
    EXPECT_EQ(solid.faces()[solid.classic_net().root()].role, FaceRole::Lateral);
    const auto& vertices = solid.body().facets().vertices();
    EXPECT_NEAR(geometry::bounding_box({vertices.begin(), vertices.end()}).lowest.z, 0, 1e-12);
    EXPECT_EQ(solid.body().faces_toward({0, -1, 0}), std::vector<FaceId>{FaceId::at(1)});
    test::expect_sound(solid);
  }
}

TEST(Trapezoids, AreTheSameWhicheverLegIsGiven) {
  const std::string base = "prism | height: 11 cm | base trapezoid | bases: 9 cm, 5 cm | height: 3 cm | legs: ";
  for (const char* legs : {"5 cm, ?", "?, 5 cm"}) {
    const Solid solid = test::solid(base + legs);
    SCOPED_TRACE(legs);
    EXPECT_EQ(solid.name(), test::solid(base + "5 cm, 3 cm").name()) << "3, 4, 5 at one end, upright at the other";
    EXPECT_EQ(units::text(solid.surface_area(), 2), units::text(test::solid(base + "5 cm, 3 cm").surface_area(), 2));
    test::expect_sound(solid);
  }
}

TEST(ConcavePrisms, HaveANetWithoutOverlap) {
  const Solid star = test::solid(
      "prism | height: 3 cm | base polygon | vertices: 0 10, -2 3, -9 3, -4 -1, -6 -8, 0 -4, 6 -8, 4 -1, 9 3, 2 3 | "
      "unit: cm");
  test::expect_sound(star);
  const Solid low = test::solid(
      "prism | height: 0.5 cm | base polygon | vertices: 0 10, -2 3, -9 3, -4 -1, -6 -8, 0 -4, 6 -8, 4 -1, 9 3, 2 3 "
      "| unit: cm");
  test::expect_sound(low);
}

TEST(ObliquePyramids, AreSoundWhereverTheApexStands) {
  for (const std::string over : {"0 cm, 0 cm", "3 cm, 3 cm", "20 cm, 9 cm", "6 cm, 0 cm", "3 cm, 40 cm"}) {
    SCOPED_TRACE(over);
    test::expect_sound(test::solid("pyramid | height: 5 cm | apex_over: " + over + " | base square | side: 6 cm"));
    test::expect_sound(
        test::solid("pyramid | height: 5 cm | apex_over: " + over + " | base triangle | sides: 6 cm, 7 cm, 9 cm"));
  }
}

TEST(RegularPolygons, ServeUpToFortySides) {
  for (const std::string count : {"3", "4", "7", "9", "11", "12", "25", "40"}) {
    SCOPED_TRACE(count);
    const std::string base = " | base regular polygon | count: " + count + " | side: 3 cm";
    test::expect_sound(test::solid("prism | height: 8 cm" + base));
    test::expect_sound(test::solid("pyramid | height: 8 cm" + base));
    test::expect_sound(test::solid("pyramid | height: 0.4 cm" + base));
  }
}

TEST(Trapezoids, TakeLegsInEveryForm) {
  const auto area = [](const std::string& rest) {
    const Solid solid = test::solid("prism | height: 1 cm | base trapezoid | " + rest);
    test::expect_sound(solid);
    return solid.base_area()->amount();
  };
  const auto fifty_two = exact::Number::whole(52);
  EXPECT_EQ(area("bases: 16 cm, 10 cm | height: 4 cm | legs: 5 cm"), fifty_two);
  EXPECT_EQ(area("bases: 10 cm, 16 cm | height: 4 cm | legs: 5 cm, 5 cm"), fifty_two);
  EXPECT_EQ(area("bases: 16 cm, 10 cm | legs: 5 cm, 5 cm"), fifty_two);
  EXPECT_EQ(area("bases: 16 cm, ? | height: 4 cm | legs: 5 cm"), fifty_two);
  // A right trapezoid: one leg is the height.
  EXPECT_EQ(area("bases: 13 cm, 10 cm | height: 4 cm | legs: 4 cm, 5 cm"), exact::Number::whole(46));
  EXPECT_EQ(area("bases: 13 cm, 10 cm | height: 4 cm | legs: 4 cm, ?"), exact::Number::whole(46));
  // One that leans: legs 13 and 15 over a difference of 4, height 12.
  EXPECT_EQ(area("bases: 14 cm, 10 cm | legs: 13 cm, 15 cm"), exact::Number::whole(144));
}

// Corners may run either way round, and the first side stays the first.
TEST(Polygon, IsTheSameEitherWayRound) {
  for (const std::string start :
       {"prism | height: 9 cm", "pyramid | height: 9 cm", "pyramid | height: 9 cm | apex_over: 2 cm, 1 cm"}) {
    const std::string text = start + " | base polygon | unit: cm | vertices: ";
    const auto one = test::made(text + "0 0, 12 0, 12 7, 6 15, 0 7");
    // The mirror image, whose corners run clockwise, from the same first side.
    const auto other = test::made(text + "0 0, 12 0, 12 -7, 6 -15, 0 -7");
    ASSERT_TRUE(one.has_value() && other.has_value()) << text;
    test::expect_sound(*other);
    EXPECT_EQ(one->surface_area().amount(), other->surface_area().amount()) << text;
    EXPECT_EQ(one->volume().amount(), other->volume().amount()) << text;
    EXPECT_EQ(one->group_count(), other->group_count()) << text;
  }
}

TEST(Pyramid, OnCornersHasTheDistancesThatItsFootHas) {
  const auto solid =
      test::made("pyramid | height: 9 cm | base polygon | unit: cm | vertices: 0 0, 12 0, 12 7, 6 15, 0 7");
  ASSERT_TRUE(solid.has_value());
  const auto& derivations = solid->statement().derivations;
  ASSERT_EQ(derivations.size(), 5U);
  for (const Derivation& derivation : derivations) {
    EXPECT_EQ(derivation.value(solid->values()), solid->values().at(derivation.symbol.name));
  }
}

}  // namespace
}  // namespace fw::solids::solid_test
