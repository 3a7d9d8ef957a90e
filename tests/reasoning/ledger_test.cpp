#include "reasoning/ledger.hpp"

#include <gmock/gmock.h>
#include <rapidcheck/gtest.h>

#include <algorithm>
#include <cmath>

#include "solids/catalog.hpp"
#include "support/pocket_calculator.hpp"

namespace fw::reasoning::ledger_test {
namespace {

using exact::Number;
using solids::Description;
using solids::Solid;
using testing::ElementsAre;

solids::LengthEntry length(const std::string& text) { return {*units::parse_quantity(text)}; }

Solid made(const Description& description, const solids::Known& known = {}) {
  const auto solid = Solid::make(description, known);
  ensure(solid.has_value(), "a solid of a test exists");
  return *solid;
}

Solid pyramid(const std::string& side, const std::string& slant) {
  return made({"pyramid", {{"slant_height", length(slant)}}, {{"square", {{"side", length(side)}}, {}}}});
}
Solid box(const std::string& l, const std::string& w, const std::string& h) {
  return made({"rectangular prism", {{"length", length(l)}, {"width", length(w)}, {"height", length(h)}}, {}});
}

std::vector<FaceId> all_faces(const Solid& solid) {
  std::vector<FaceId> faces;
  for (const solids::Face& face : solid.faces()) {
    faces.push_back(face.id);
  }
  return faces;
}

std::vector<std::string> works(const Ledger& ledger) {
  std::vector<std::string> texts;
  for (const LedgerRow& row : ledger.rows) {
    texts.push_back(row.work);
  }
  return texts;
}

// 6 × 6 + 4 × (6 × 9 ÷ 2) = 144, worked by hand.
TEST(Ledger, CountsFaceByFaceToTheSurfaceArea) {
  const Solid shade = pyramid("6 cm", "9 cm");
  std::vector<FaceId> counted;
  const int sums[] = {36, 63, 90, 117, 144};
  for (const FaceId face : all_faces(shade)) {
    counted.push_back(face);
    const Ledger now = ledger(shade, counted, Grouping::EachFace);
    EXPECT_EQ(now.faces_counted, counted.size());
    EXPECT_EQ(now.faces_total, 5U);
    EXPECT_EQ(now.so_far.amount(), Number::whole(sums[counted.size() - 1]));
    EXPECT_EQ(now.is_surface_area, counted.size() == 5);
    EXPECT_EQ(now.addends.size(), counted.size());
    EXPECT_EQ(now.addends.back(), Number::whole(counted.size() == 1 ? 36 : 27));
  }
  const Ledger whole = ledger(shade, counted, Grouping::EachFace);
  EXPECT_EQ(units::text(whole.so_far, 2), "144 cm²");
  EXPECT_EQ(whole.so_far.amount(), shade.surface_area().amount());
}

TEST(Ledger, ShowsTheWorkOfEachFace) {
  const Ledger empty = ledger(pyramid("6 cm", "9 cm"), {}, Grouping::EachFace);
  ASSERT_EQ(empty.rows.size(), 5U);
  EXPECT_EQ(empty.faces_counted, 0U);
  EXPECT_TRUE(empty.so_far.amount().is_zero());
  EXPECT_FALSE(empty.is_surface_area);
  EXPECT_EQ(empty.rows[1].work, "6 × 9 ÷ 2");
  EXPECT_EQ(empty.rows[1].symbols, "s · ℓ ÷ 2");
  EXPECT_EQ(empty.rows[1].times_counted, 0U);
  EXPECT_TRUE(empty.rows[1].addend.is_zero());
}

TEST(Ledger, CountsAlikeFacesTogether) {
  const Solid shade = pyramid("6 cm", "9 cm");
  const Ledger together = ledger(shade, all_faces(shade), Grouping::AlikeTogether);
  ASSERT_EQ(together.rows.size(), 2U);
  EXPECT_EQ(together.rows[1].faces.size(), 4U);
  EXPECT_EQ(together.rows[1].times_counted, 4U);
  EXPECT_EQ(together.rows[1].work, "4 × (6 × 9 ÷ 2)");
  EXPECT_EQ(together.rows[1].symbols, "4 · (s · ℓ ÷ 2)");
  EXPECT_EQ(together.rows[1].addend, Number::whole(108));
  EXPECT_THAT(together.addends, ElementsAre(Number::whole(36), Number::whole(108)));
  EXPECT_TRUE(together.is_surface_area);
}

TEST(Ledger, ShowsAGroupAsFarAsItIsCounted) {
  const Solid crate = box("9 cm", "7 cm", "5 cm");
  const Ledger empty = ledger(crate, {}, Grouping::AlikeTogether);
  EXPECT_THAT(works(empty), ElementsAre("2 × (9 × 7)", "2 × (9 × 5)", "2 × (7 × 5)"));
  const Ledger one = ledger(crate, {FaceId{0}}, Grouping::AlikeTogether);
  EXPECT_EQ(one.rows[0].work, "9 × 7");
  EXPECT_EQ(one.rows[0].addend, Number::whole(63));
  EXPECT_EQ(one.rows[0].times_counted, 1U);
}

TEST(Ledger, KeepsAFaceThatIsCountedTwice) {
  const Solid crate = box("9 cm", "7 cm", "5 cm");
  std::vector<FaceId> counted = all_faces(crate);
  counted.push_back(FaceId{0});
  const Ledger twice = ledger(crate, counted, Grouping::EachFace);
  EXPECT_EQ(twice.faces_counted, 6U);
  EXPECT_THAT(twice.counted_twice, ElementsAre(FaceId{0}));
  EXPECT_EQ(twice.rows[0].times_counted, 2U);
  EXPECT_EQ(twice.rows[0].work, "2 × (9 × 7)");
  EXPECT_EQ(twice.so_far.amount(), Number::whole(286 + 63));
  EXPECT_FALSE(twice.is_surface_area);
  counted.push_back(FaceId{0});
  EXPECT_THAT(ledger(crate, counted, Grouping::EachFace).counted_twice, ElementsAre(FaceId{0}));
}

TEST(Ledger, TwiceCountedAndLeftOutIsNoSurfaceAreaThoughTheSumFits) {
  const Solid crate = box("9 cm", "7 cm", "5 cm");
  std::vector<FaceId> counted = all_faces(crate);
  ASSERT_EQ(crate.faces()[FaceId{0}].group, crate.faces()[FaceId{1}].group);
  counted[1] = FaceId{0};
  const Ledger wrong = ledger(crate, counted, Grouping::EachFace);
  EXPECT_EQ(wrong.so_far.amount(), crate.surface_area().amount());
  EXPECT_EQ(wrong.faces_counted, 5U);
  EXPECT_FALSE(wrong.is_surface_area);
}

// A box without a lid: 63 + 2 × 45 + 2 × 35 = 223, by hand.
TEST(Ledger, LeavesOpenFacesOutOfTheTotal) {
  const Solid crate = box("9 cm", "7 cm", "5 cm");
  const std::vector<FaceId> open{FaceId{1}};
  std::vector<FaceId> counted = all_faces(crate);
  counted.erase(counted.begin() + 1);
  const Ledger whole = ledger(crate, counted, Grouping::EachFace, open);
  EXPECT_EQ(whole.faces_total, 5U);
  EXPECT_EQ(whole.faces_counted, 5U);
  EXPECT_TRUE(whole.is_surface_area);
  EXPECT_EQ(whole.so_far.amount(), Number::whole(223));
  EXPECT_THAT(whole.counted_open, testing::IsEmpty());
  ASSERT_EQ(whole.rows.size(), 6U);
  EXPECT_THAT(whole.rows[0].open, testing::IsEmpty());
  EXPECT_THAT(whole.rows[1].open, ElementsAre(FaceId{1}));
  EXPECT_FALSE(ledger(crate, counted, Grouping::EachFace).is_surface_area);
}

TEST(Ledger, KeepsAnOpenFaceThatIsCountedAllTheSame) {
  const Solid crate = box("9 cm", "7 cm", "5 cm");
  std::vector<FaceId> counted = all_faces(crate);
  counted.push_back(FaceId{1});
  const Ledger wrong = ledger(crate, counted, Grouping::EachFace, {FaceId{1}});
  EXPECT_THAT(wrong.counted_open, ElementsAre(FaceId{1}));
  EXPECT_THAT(wrong.counted_twice, ElementsAre(FaceId{1}));
  EXPECT_EQ(wrong.faces_counted, 5U);
  EXPECT_EQ(wrong.so_far.amount(), Number::whole(286 + 63));
  EXPECT_FALSE(wrong.is_surface_area);
  counted.pop_back();
  EXPECT_FALSE(ledger(crate, counted, Grouping::EachFace, {FaceId{1}}).is_surface_area);
}

TEST(Ledger, GroupsShowOnlyTheFacesThatCount) {
  const Solid crate = box("9 cm", "7 cm", "5 cm");
  const Ledger lidless = ledger(crate, {}, Grouping::AlikeTogether, {FaceId{1}});
  EXPECT_THAT(works(lidless), ElementsAre("9 × 7", "2 × (9 × 5)", "2 × (7 × 5)"));
  EXPECT_EQ(lidless.rows[0].faces.size(), 2U);
  EXPECT_THAT(lidless.rows[0].open, ElementsAre(FaceId{1}));
  const Ledger tube = ledger(crate, {}, Grouping::AlikeTogether, {FaceId{0}, FaceId{1}});
  EXPECT_EQ(tube.rows[0].open.size(), 2U);
  EXPECT_EQ(tube.rows[0].work, "9 × 7");
  EXPECT_EQ(tube.faces_total, 4U);
}

TEST(Ledger, WritesNumbersAsTheLessonDoes) {
  EXPECT_EQ(ledger(pyramid("6.0 cm", "7 1/2 cm"), {}, Grouping::EachFace).rows[1].work, "6.0 × 7 1/2 ÷ 2");
  // Another unit than the solid's is converted; 1 ft = 12 in.
  const Solid mixed = box("15 in", "1 ft", "5 in");
  ASSERT_EQ(mixed.unit().text(), "in");
  EXPECT_EQ(ledger(mixed, {}, Grouping::EachFace).rows[0].work, "15 × 12");
  // 3 ft 6 in is three feet and a half.
  EXPECT_EQ(ledger(box("3 ft 6 in", "4 ft", "5 ft"), {}, Grouping::EachFace).rows[0].work, "3.5 × 4");
}

TEST(Worked, AreaOfAFace) {
  const Solid shade = pyramid("9 cm", "11 cm");
  EXPECT_EQ(worked_area(shade, FaceId{1}, 2), "9 cm × 11 cm ÷ 2 = 49.5 cm²");
}

// The height is √40, so V = 36 × 6.3245… ÷ 3 = 75.894…, by hand.
TEST(Worked, VolumeInLines) {
  EXPECT_THAT(worked_volume(box("9 cm", "7 cm", "5 cm"), 2).back(), "V = 315 cm³");
  EXPECT_THAT(worked_volume(pyramid("6 cm", "7 cm"), 1),
              ElementsAre("V = B · h ÷ 3", "V = 36 cm² × 6.325 cm ÷ 3", "V ≈ 75.9 cm³"));
}

TEST(AddingUp, PutsThePointsUnderEachOther) {
  const AddendColumn column = adding_up(
      {Number::whole(49), *Number::from_decimal("108.5"), square_root(Number::whole(2)), Number::whole(7)}, 2);
  ASSERT_EQ(column.addends.size(), 4U);
  EXPECT_EQ(column.addends[0].whole, "\u200749");
  EXPECT_EQ(column.addends[0].fraction, "");
  EXPECT_EQ(column.addends[1].whole, "108");
  EXPECT_EQ(column.addends[1].fraction, ".5");
  EXPECT_EQ(column.addends[2].whole, "\u2007\u20071");
  EXPECT_EQ(column.addends[2].fraction, ".41");
  EXPECT_FALSE(column.addends[2].exact);
  EXPECT_TRUE(column.addends[3].exact);
  EXPECT_TRUE(column.is_rounded);
  EXPECT_EQ(column.extra_digits, 0);
  EXPECT_TRUE(adding_up({}, 2).addends.empty());
  EXPECT_FALSE(adding_up({Number::whole(49)}, 2).is_rounded);
}

// A reader who adds up the column that is printed, and rounds once, gets the sum that is printed under it: for every
// solid of the shelf, at each stage of its count, each face by itself and congruent ones together.
TEST(AddingUp, ThePrintedColumnMakesThePrintedSum) {
  bool once_needed_more = false;
  for (const Description& description : solids::shelf()) {
    const Solid solid = made(description);
    for (const Grouping grouping : {Grouping::EachFace, Grouping::AlikeTogether}) {
      std::vector<FaceId> counted;
      for (const solids::Face& face : solid.faces()) {
        counted.push_back(face.id);
        const Ledger now = ledger(solid, counted, grouping);
        Number printed;
        for (const ColumnNumber& addend : now.column.addends) {
          std::string text = addend.whole + addend.fraction;
          while (text.rfind("\u2007", 0) == 0) {
            text.erase(0, 3);
          }
          printed = printed + *Number::from_decimal(text);
        }
        const auto sum = [](const Number& exact) { return exact::fixed_text(exact::rounded(exact, ledger_places), 2); };
        ASSERT_EQ(sum(printed), sum(now.so_far.amount())) << solid.name() << ", " << counted.size() << " counted";
        once_needed_more = once_needed_more || now.column.extra_digits > 0;
      }
    }
  }
  EXPECT_TRUE(once_needed_more) << "or this shows nothing";
}

// Whatever is counted, in whatever order: the addends make the sum, and the sum is S exactly when each face was
// counted once (or a mistake makes up for another, which the ledger must not believe).
RC_GTEST_PROP(Ledger, AddendsMakeTheSum, ()) {
  const std::vector<Description> shelf = solids::shelf();
  const Solid solid = made(*rc::gen::elementOf(shelf));
  const auto count = static_cast<std::uint32_t>(solid.faces().size());
  const auto indexes = *rc::gen::container<std::vector<std::uint32_t>>(rc::gen::inRange<std::uint32_t>(0, count));
  std::vector<FaceId> counted;
  std::vector<std::size_t> times(count, 0);
  for (const std::uint32_t index : indexes) {
    counted.push_back(FaceId{index});
    ++times[index];
  }
  const bool once_each = std::all_of(times.begin(), times.end(), [](std::size_t n) { return n == 1; });
  for (const Grouping grouping : {Grouping::EachFace, Grouping::AlikeTogether}) {
    const Ledger now = ledger(solid, counted, grouping);
    Number of_addends;
    for (const Number& addend : now.addends) {
      of_addends = of_addends + addend;
    }
    Number of_rows;
    std::size_t faces = 0;
    for (const LedgerRow& row : now.rows) {
      of_rows = of_rows + row.addend;
      faces += row.faces.size();
    }
    RC_ASSERT(faces == count);
    RC_ASSERT(std::abs((of_addends - now.so_far.amount()).to_double()) < 1e-9);
    RC_ASSERT(std::abs((of_rows - now.so_far.amount()).to_double()) < 1e-9);
    RC_ASSERT(now.is_surface_area == once_each);
  }
  const Ledger whole = ledger(solid, all_faces(solid), Grouping::EachFace);
  RC_ASSERT(whole.is_surface_area);
  RC_ASSERT(std::abs((whole.so_far.amount() - solid.surface_area().amount()).to_double()) <
            1e-9 * solid.surface_area().amount().to_double());
}

// Who types the work of a row into a calculator gets the area that stands beside it.
TEST(Ledger, WorkComesOutAsItIsPrinted) {
  std::size_t tried = 0;
  for (const solids::Description& description : solids::shelf()) {
    for (const units::Unit& unit : units::Unit::lengths()) {
      const auto solid = Solid::make(solids::in_unit(description, unit));
      for (const Grouping grouping : {Grouping::EachFace, Grouping::AlikeTogether}) {
        const Ledger rows = solid ? ledger(*solid, {}, grouping) : Ledger{};
        for (const LedgerRow& row : rows.rows) {
          const std::optional<double> typed = test::PocketCalculator::value(row.work);
          if (!typed) {
            continue;  // a polygon has no two lengths
          }
          const Number area =
              Number::whole(static_cast<long long>(row.faces.size())) * solid->faces()[row.faces.front()].area.amount();
          const double scale = std::pow(10, exact::enough_places(area, ledger_places));
          const auto in_last_places = [&](double number) { return std::round(number * scale * (1 + 1e-12)); };
          EXPECT_EQ(in_last_places(*typed), in_last_places(area.to_double())) << solid->name() << ": " << row.work;
          ++tried;
        }
      }
    }
  }
  EXPECT_GT(tried, 200U);
}

}  // namespace
}  // namespace fw::reasoning::ledger_test
