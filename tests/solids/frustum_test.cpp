#include <gtest/gtest.h>

#include "exact/print_number.hpp"
#include "sound_solid.hpp"
#include "support/describe_solid.hpp"
#include "support/random.hpp"

namespace fw::solids::frustum_test {
namespace {

using exact::Number;

std::string frustum_of(int bottom, int top, int height) {
  return "cone frustum | radius: " + std::to_string(bottom) + " cm | top_radius: " + std::to_string(top) +
         " cm | height: " + std::to_string(height) + " cm";
}
/// A cone of a radius and height that may be fractions.
Solid cone_of(int radius, int whole, int parts) {
  return test::solid("cone | radius: " + std::to_string(radius) + " cm | height: " + std::to_string(whole) + "/" +
                     std::to_string(parts) + " cm");
}
Number value(const Solid& solid, const std::string& name) { return solid.values().at(name); }

// The second route: the whole cone is hR ÷ (R - r) high, the tip cut off hr ÷ (R - r).
TEST(FrustumOfACone, IsTheWholeConeLessItsTip) {
  test::Dice dice(1604);
  for (int attempt = 0; attempt < 150; ++attempt) {
    const int top = 1 + static_cast<int>(dice.below(30));
    const int bottom = top + 1 + static_cast<int>(dice.below(20));
    const int height = 1 + static_cast<int>(dice.below(40));
    const Solid frustum = test::solid(frustum_of(bottom, top, height));
    SCOPED_TRACE(frustum_of(bottom, top, height));
    const Solid all = cone_of(bottom, height * bottom, bottom - top);
    const Solid tip = cone_of(top, height * top, bottom - top);
    EXPECT_EQ(frustum.volume().amount(), all.volume().amount() - tip.volume().amount());
    EXPECT_EQ(value(frustum, "slant_height"), value(all, "slant_height") - value(tip, "slant_height"));
    EXPECT_EQ(value(frustum, "lateral_area"), value(all, "lateral_area") - value(tip, "lateral_area"));
    EXPECT_EQ(frustum.surface_area().amount(),
              all.surface_area().amount() - value(tip, "lateral_area") + tip.base_area()->amount());
  }
}

// Thin and wide, tall and flat, nearly a cylinder and nearly a cone: sound, and the usual net lies flat.
TEST(FrustumOfACone, IsSoundInAllProportions) {
  for (const char* text : {"cone frustum | radius: 9 cm | top_radius: 4 cm | height: 12 cm",
                           "cone frustum | radius: 1000 cm | top_radius: 999.9 cm | height: 3 cm",
                           "cone frustum | radius: 5 cm | top_radius: 4.999999 cm | height: 100 cm",
                           "cone frustum | radius: 5 cm | top_radius: 0.001 cm | height: 4 cm",
                           "cone frustum | radius: 50 cm | top_radius: 49 cm | height: 0.01 cm",
                           "cone frustum | radius: 50 cm | top_radius: 2 cm | height: 0.01 cm",
                           "cone frustum | radius: 2 cm | top_radius: 1 cm | height: 900 cm"}) {
    SCOPED_TRACE(text);
    test::expect_sound(test::solid(text));
  }
}

// R 9, r 4, h 12, l 13: C 18 pi, L 169 pi, S 266 pi, V 532 pi (worked by hand).
TEST(FrustumOfACone, HasAnyMeasureForItsUnknown) {
  for (const char* text :
       {"diameter: 18 cm | top_diameter: 8 cm | height: 12 cm", "radius: 9 cm | top_radius: 4 cm | slant_height: 13 cm",
        "radius: ? | top_radius: 4 cm | height: 12 cm | slant_height: 13 cm",
        "radius: 9 cm | top_radius: ? | height: 12 cm | slant_height: 13 cm",
        "radius: ? | top_radius: 4 cm | height: 12 cm | known volume: 532π cm^3",
        "radius: 9 cm | top_radius: ? | height: 12 cm | known volume: 532π cm^3",
        "radius: 9 cm | top_radius: 4 cm | height: ? | known volume: 532π cm^3",
        "radius: 9 cm | top_radius: 4 cm | slant_height: ? | known surface_area: 266π cm^2",
        "radius: 9 cm | top_radius: ? | slant_height: 13 cm | known surface_area: 266π cm^2",
        "radius: ? | top_radius: 4 cm | slant_height: 13 cm | known surface_area: 266π cm^2",
        "radius: 9 cm | top_radius: ? | slant_height: 13 cm | known lateral_area: 169π cm^2",
        "radius: 9 cm | top_radius: 4 cm | height: ? | known lateral_area: 169π cm^2"}) {
    SCOPED_TRACE(text);
    const Solid solid = test::solid(std::string("cone frustum | ") + text);
    EXPECT_EQ(exact::exact_text(value(solid, "radius")), "9");
    EXPECT_EQ(exact::exact_text(value(solid, "top_radius")), "4");
    EXPECT_EQ(exact::exact_text(value(solid, "height")), "12");
    EXPECT_EQ(exact::exact_text(value(solid, "slant_height")), "13");
    EXPECT_EQ(exact::exact_text(value(solid, "circumference")), "18π");
    EXPECT_EQ(exact::exact_text(value(solid, "lateral_area")), "169π");
    EXPECT_EQ(exact::exact_text(solid.surface_area().amount()), "266π");
    EXPECT_EQ(exact::exact_text(solid.volume().amount()), "532π");
  }
}

// Containers that are open at the wide end. Source: NCERT X 13.4 Q4 (older edition) and an Indian exercise book, as
// reprinted on practice pages; both with 3.14 for pi.
TEST(FrustumOfACone, TakesAsMuchSheetAsPublishedWhenItsWideEndIsOpen) {
  const auto open = [](const Solid& solid) {
    return (solid.surface_area().amount() - solid.base_area()->amount()).to_double() / 3.14159265358979323846 * 3.14;
  };
  EXPECT_NEAR(open(test::solid(frustum_of(20, 8, 16))), 1959.36, 0.005);
  EXPECT_NEAR(open(test::solid(frustum_of(15, 5, 24))), 1711.3, 0.05);
}

}  // namespace
}  // namespace fw::solids::frustum_test
