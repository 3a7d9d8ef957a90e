#include "app/panels/frame_driver.hpp"
#include "app/state/quiz/forms_support.hpp"
#include "panels/ids.hpp"
#include "support/sanitized.hpp"
#include "tasks/nets/net_task.hpp"

// The pages of questions by choice and about nets: by mouse and by keys, and nothing cut off at any size.
namespace fw::panels::test::forms_page_test {
namespace {

constexpr QuizSetup of_class{Audience::Class, QuizSource::Lesson, {}, 1, 1};

void press_letter(ProgramDriver& program, std::size_t option) {
  program.user().press(static_cast<Key>(static_cast<int>(Key::A) + static_cast<int>(option)));
}

// Once the answer is out, nobody scrolls for the right option, whatever is told of the others.
TEST(FormsPage, TheRightOptionStaysInSightBeforeTheClass) {
  std::size_t seen = 0;
  for (const char* lesson : fw::test::some_of<const char*>({"lantern_market.json", "lantern_fair.json"}, 2)) {
    Model next = after(lesson_model(lesson), {SetMode{Mode::Quiz}, SetAudience{Audience::Class}, StartQuiz{}});
    const std::size_t count = next.state.quiz.set->size();
    for (std::size_t number = 0; number < count; ++number, next = after(std::move(next), {StepItem{1}})) {
      ASSERT_EQ(next.state.quiz.number, number);
      const Model model = after(next, {StepQuiz{1}, StepQuiz{1}});
      ProgramDriver program(model, 1280, 720);
      program.user().frames(2);
      for (const std::size_t i : right_options(model.state)) {
        if (program.user().shows(ids::class_option.at(i))) {
          const ItemRecord& option = program.user().item(ids::class_option.at(i));
          EXPECT_GE(option.rect.y, option.clip.y) << lesson << ", item " << number + 1;
          EXPECT_LE(option.rect.bottom(), option.clip.bottom()) << lesson << ", item " << number + 1;
          ++seen;
        }
      }
    }
  }
  EXPECT_GT(seen, fw::test::cases(40, 12));
}

TEST(FormsPage, AWholeSetOfNetsIsGoneThroughByKeysAlone) {
  Model start = lesson_model("lantern_nets.json");
  ProgramDriver program(after(std::move(start), {SetMode{Mode::Quiz}, StartQuiz{}}), 1280, 720);
  const std::size_t count = program.state().quiz.set->size();
  program.user().click(ids::answer_field);
  program.user().type("triangular prism");
  program.user().press(Key::Enter);
  ASSERT_TRUE(program.state().quiz.work().done);
  program.user().press(Key::Enter);
  for (std::size_t i = 1; i < count; ++i) {
    ASSERT_EQ(program.state().quiz.number, i);
    for (const std::size_t option : right_options(program.state())) {
      press_letter(program, option);
    }
    if (program.state().quiz.work().asks_why) {
      const std::vector<tasks::NetChoice> reasons =
          tasks::net_asked(program.state().current())->net_reasons(program.state().current());
      const auto right = std::find_if(reasons.begin(), reasons.end(), [](const auto& one) { return one.is_right; });
      press_letter(program, static_cast<std::size_t>(right - reasons.begin()));
    }
    EXPECT_TRUE(program.state().quiz.work().done) << program.state().current().prompt;
    EXPECT_FALSE(program.model().view.blank) << "B is an option here";
    program.user().press(Key::Enter);
  }
  EXPECT_FALSE(program.state().in_item());
  EXPECT_EQ(program.state().quiz.attempts.size(), count);
}

TEST(FormsPage, OptionsAreClickedOnThePageAndOnTheBench) {
  ProgramDriver program(at_net("planter"), 1280, 720);
  program.user().frames(2);
  const std::vector<std::size_t> right = right_options(program.state());
  for (const BenchSpot& spot : program.frame().picture.spots) {
    if (spot.option == right.front()) {
      const figures::Vec2 place = spot.center;
      program.user().click_at(place);
      break;
    }
  }
  EXPECT_EQ(program.state().quiz.work().tried, std::vector<std::size_t>{right.front()});
  program.user().click(ids::answer_option.at(right.back()));
  EXPECT_EQ(program.state().quiz.work().tried.back(), right.back());
}

TEST(FormsPage, TheCardOfACandidateIsClickedOnTheBench) {
  ProgramDriver program(at_net("lantern-top"), 1280, 720);
  program.user().frames(2);
  ASSERT_EQ(program.frame().picture.spots.size(), 4U);
  const figures::Vec2 place = program.frame().picture.spots[2].center;
  program.user().click_at(place);
  EXPECT_EQ(program.state().quiz.work().tried, std::vector<std::size_t>{2});
}

TEST(FormsPage, NothingTellsTheAnswerBeforeItIsOut) {
  for (const char* id : {"gift-box", "low-spire", "display-stand", "folded-card"}) {
    ProgramDriver program(at_net(id), 1280, 720);
    program.user().frames(2);
    const BenchPicture& picture = program.frame().picture;
    EXPECT_TRUE(picture.spots.empty()) << id << ": pieces are not numbered yet";
    for (const render::FaceLook& look : picture.look.looks) {
      EXPECT_FALSE(look.outline.has_value()) << id;
    }
    for (const auto& piece : picture.look.faces) {
      for (const geometry::Vec3& corner : piece) {
        EXPECT_NEAR(corner.z, 0, 1e-9) << id << ": it lies flat";
      }
    }
    EXPECT_FALSE(program.user().shows_text("prism")) << id;
  }
}

TEST(FormsPage, CardLiesAsTheTaskLaysIt) {
  // Turned by 345 degrees, not flipped: the first side of the first piece points 15 degrees down.
  ProgramDriver program(at_net("gift-box"), 1280, 720);
  program.user().frames(2);
  const std::vector<geometry::Vec3>& piece = program.frame().picture.look.faces.front();
  const geometry::Vec3 side = piece[1] - piece[0];
  EXPECT_NEAR(std::atan2(side.y, side.x), -15 * 3.14159265358979 / 180, 1e-9);
}

TEST(FormsPage, LengthsStandOnFlatCardSoThatItCanBeCompared) {
  // The spire's triangles are 12 cm high on 10 cm: sides of √(5² + 12²) cm = 13 cm. Source: the rule of Pythagoras.
  ProgramDriver program(at_net("low-spire"), 1280, 720);
  program.user().frames(2);
  const std::vector<BenchLabel>& labels = program.frame().picture.labels;
  ASSERT_EQ(labels.size(), 1U) << "each length once";
  EXPECT_EQ(labels.front().text, "13 cm");
}

TEST(FormsPage, CardThatFailsIsLitAndStopsShortOfLyingOnItself) {
  ProgramDriver program(at_net("gift-box"), 1280, 720);
  program.give(RevealAnswer{});
  program.give(SetFold{0});
  std::size_t lit = 0;
  for (const render::FaceLook& look : program.frame().picture.look.looks) {
    lit += look.outline ? 1U : 0U;
  }
  EXPECT_EQ(lit, 2U);
  const auto bad = [](const BenchSpot& spot) { return spot.look == BenchSpot::Look::Bad; };
  const std::vector<BenchSpot>& spots = program.frame().picture.spots;
  EXPECT_GE(std::count_if(spots.begin(), spots.end(), bad), 1) << "a mark beside the color";
}

TEST(FormsPage, FoldedCardIsTheSolidUpToWhereItLies) {
  // Every edge of the folded card is as long as an edge of the solid, and the corners span its volume's box.
  ProgramDriver program(at_net("display-stand"), 1280, 720);
  program.give(AnswerOption{0});
  program.give(SetFold{0});
  const auto spread = [](const std::vector<geometry::Vec3>& points) {
    double sum = 0;
    for (const geometry::Vec3& a : points) {
      for (const geometry::Vec3& b : points) {
        sum = std::max(sum, glm::length(a - b));
      }
    }
    return sum;
  };
  std::vector<geometry::Vec3> card;
  for (const auto& piece : program.frame().picture.look.faces) {
    card.insert(card.end(), piece.begin(), piece.end());
  }
  const auto& vertices = program.state().current().solid.body().facets().vertices();
  EXPECT_NEAR(spread(card), spread({vertices.begin(), vertices.end()}), 1e-3);
  for (const geometry::Vec3& corner : card) {
    EXPECT_GE(corner.z, -1e-6) << "it folds up from the table";
  }
}

struct Scene {
  std::string name;
  Model model;
};

std::vector<Scene> scenes() {
  std::vector<Scene> all;
  for (const char* id : {"folded-card", "lantern-top", "gift-box", "planter"}) {
    const Model start = at_net(id);
    all.push_back({std::string(id) + ", asked", start});
    all.push_back({std::string(id) + ", wrong", after(start, {AnswerOption{1}, AnswerOption{2}, AnswerOption{3}})});
    all.push_back({std::string(id) + ", solution", after(start, {RevealAnswer{}})});
    const Model options = after(at_net(id, of_class), {StepQuiz{1}, SetHands{0, "12"}, SetHands{1, "9"}});
    all.push_back({std::string(id) + ", class", options});
    all.push_back({std::string(id) + ", class, answer", after(options, {StepQuiz{1}})});
  }
  for (const char* id : {"tower-label", "lost-base", "quick-look", "frost"}) {
    const Model start = at_market(id);
    all.push_back({std::string(id) + ", asked", start});
    all.push_back({std::string(id) + ", wrong", after(start, {ShowHint{}, AnswerOption{0}, AnswerOption{1}})});
    all.push_back({std::string(id) + ", class", after(at_market(id, of_class), {StepQuiz{1}, StepQuiz{1}})});
  }
  Model working = lesson_model("lantern_nets.json");
  all.push_back({"work, card", after(working, {OpenProblem{3}, SetMode{Mode::Work}})});
  all.push_back({"work, steps", after(working, {OpenProblem{6}, SetMode{Mode::Work}, StepWork{1}, StepWork{1}})});
  return all;
}

TEST(FormsPage, NothingIsCutOffOrOnTopOfAnotherSlow) {
  const std::vector<Scene> all = scenes();
  for (const auto& [width, height] : {std::pair{1024.0, 768.0}, std::pair{1280.0, 720.0}}) {
    ProgramDriver program(all.front().model, width, height);
    for (const Scene& scene : all) {
      program.show(scene.model);
      for (const std::string& fault : program.user().layout_faults()) {
        ADD_FAILURE() << scene.name << " at " << width << ": " << fault;
      }
    }
  }
}

}  // namespace
}  // namespace fw::panels::test::forms_page_test
