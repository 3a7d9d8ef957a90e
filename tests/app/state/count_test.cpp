#include "app/state/model_support.hpp"

namespace fw::state::test::count_test {
namespace {

std::string so_far(const Model& model) {
  const Desk& desk = model.state.desk();
  return units::text(reasoning::ledger(desk.solid, desk.counted, desk.grouping).so_far, 2);
}

// The square pyramid of the demo has base edge 10 cm and slant height 13 cm: 100 and four times 65.
TEST(Count, RunsFaceByFaceUpToTheSurfaceArea) {
  Model model = demo_model("shade");
  const std::vector<std::string> sums{"100 cm²", "165 cm²", "230 cm²", "295 cm²", "360 cm²"};
  for (const std::string& sum : sums) {
    model = after(model, {CountNext{}});
    EXPECT_EQ(so_far(model), sum);
  }
  EXPECT_EQ(after(model, {CountNext{}}).state, model.state) << "there is no sixth face";
}

TEST(Count, KeepsAFaceThatIsCountedTwice) {
  const Model model = after(demo_model("shade"), {CountFace{FaceId{1}}, CountFace{FaceId{1}}});
  const Desk& desk = model.state.desk();
  const reasoning::Ledger ledger = reasoning::ledger(desk.solid, desk.counted, desk.grouping);
  EXPECT_EQ(ledger.faces_counted, 1U);
  EXPECT_EQ(ledger.counted_twice, std::vector<FaceId>{FaceId{1}});
  EXPECT_EQ(so_far(model), "130 cm²");
}

TEST(Count, TakesBackTheLastFace) {
  const Model model = after(demo_model("shade"), {CountNext{}, CountNext{}, UncountLast{}});
  EXPECT_EQ(model.state.desk().counted, std::vector<FaceId>{FaceId{0}});
}

TEST(Count, CountsAlikeFacesTogether) {
  const Model model =
      after(demo_model("shade"), {SetGrouping{reasoning::Grouping::AlikeTogether}, CountNext{}, CountNext{}});
  EXPECT_EQ(model.state.desk().counted.size(), 5U);
  EXPECT_EQ(so_far(model), "360 cm²");
  EXPECT_EQ(after(model, {UncountLast{}}).state.desk().counted.size(), 1U);
}

TEST(Count, IgnoresAFaceThatIsNotThere) {
  const Model model = demo_model("shade");
  EXPECT_EQ(after(model, {CountFace{FaceId{99}}, PickFace{FaceId{99}}}).state, model.state);
}

TEST(Count, StaysWithItsProblem) {
  const Model away = after(demo_model("shade"), {CountNext{}, CountNext{}, StepProblem{1}});
  EXPECT_TRUE(away.state.desk().counted.empty());
  EXPECT_EQ(after(away, {StepProblem{-1}}).state.desk().counted.size(), 2U);
}

}  // namespace
}  // namespace fw::state::test::count_test
