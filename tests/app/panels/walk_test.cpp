// Any commands in any order: what must be true of the program after each of them.
#include <rapidcheck.h>

#include <csignal>
#include <cstdio>
#include <tuple>

#include "app/state/any_command.hpp"
#include "frame_driver.hpp"
#include "panels/ids.hpp"
#include "panels/screen.hpp"
#include "solids/body/body_nets.hpp"
#include "state/keeping.hpp"
#include "state/session.hpp"

namespace fw::panels::test::walk_test {
namespace {

using Move = std::tuple<std::size_t, std::vector<unsigned>>;

/// Of the walk under way, for a test that is aborted.
std::string& trail() {
  static std::string text;
  return text;
}
extern "C" void tell_trail(int) { std::fputs(trail().c_str(), stderr); }

int some_day() { return 20000; }

const std::vector<std::string> lesson_names{"lantern_fair.json", "lantern_market.json", "candle_boxes.json",
                                            "lantern_nets.json"};

const lessons::Lesson& lesson_of(std::size_t number) {
  static const std::vector<lessons::Lesson> all = [] {
    std::vector<lessons::Lesson> read;
    for (const std::string& name : lesson_names) {
      read.push_back(tasks::read_lesson(platform::asset(name)).value());
    }
    return read;
  }();
  return all[number];
}

// ---- what must be true ----

bool exists(FaceId face, const solids::Solid& solid) { return face.index() < solid.faces().size(); }

std::string fault_of_desk(const Desk& desk) {
  const auto is_there = [&](FaceId face) { return exists(face, desk.solid); };
  if (!std::all_of(desk.counted.begin(), desk.counted.end(), is_there)) {
    return "a face is counted that is not there. ";
  }
  if (desk.picked && !is_there(*desk.picked)) {
    return "a face is lifted out that is not there. ";
  }
  const auto net = solids::net_with(desk.solid.body(), desk.net.root(), desk.net.hinges());
  if (!net || !(net.value() == desk.net)) {
    return "the net is none of the solid. ";
  }
  const Work& work = desk.work;
  if (work.reached == 0 ? work.present != 0 : work.present >= work.reached) {
    return "the present step is not shown. ";
  }
  const auto is_shown = [&](const FilledBlank& blank) { return blank.step < work.reached; };
  return std::all_of(work.blanks.begin(), work.blanks.end(), is_shown) ? "" : "a gap is filled that is not shown. ";
}

std::string fault_of_quiz(const Quiz& quiz) {
  if (quiz.setup.level < 1 || quiz.setup.level > 3) {
    return "there is no such level. ";
  }
  if (!quiz.set) {
    return quiz.items.empty() && quiz.number == 0 ? "" : "there are answers to no set. ";
  }
  if (quiz.items.size() != quiz.set->size() || quiz.number >= quiz.items.size() || !quiz.work().desk) {
    return "there is no item in view. ";
  }
  std::string fault;
  for (const ItemWork& item : quiz.items) {
    fault += item.desk ? fault_of_desk(*item.desk) : "";
    for (const int hands : item.hands) {
      fault += hands >= 0 && hands <= 999 ? "" : "no class has so many hands. ";
    }
    for (const Reply& reply : item.replies) {
      for (const FaceId face : reply.faces) {
        fault += item.desk && exists(face, item.desk->solid) ? "" : "a reply speaks of a face that is not there. ";
      }
    }
  }
  return fault;
}

std::string fault_of_state(const State& state) {
  const std::size_t count = state.lesson->problems.size();
  if (state.desks.size() != count || state.problem >= count || !state.desks[state.problem]) {
    return "there is no desk for the problem in view. ";
  }
  std::string fault = fault_of_quiz(state.quiz);
  for (const std::optional<Desk>& desk : state.desks) {
    fault += desk ? fault_of_desk(*desk) : "";
  }
  return fault;
}

std::string fault_of_view(const Model& model) {
  const View& view = model.view;
  const solids::Solid& solid = model.state.desk().solid;
  std::string fault;
  fault += !view.hovered || exists(*view.hovered, solid) ? "" : "a face under the pointer is not there. ";
  fault += !view.dragged || exists(*view.dragged, solid) ? "" : "a face is dragged that is not there. ";
  fault += view.fold >= 0 && view.fold <= 1 ? "" : "the fold is beyond its ends. ";
  fault += view.nearness >= 0.4 && view.nearness <= 4 ? "" : "the camera is too near or too far. ";
  fault += std::abs(view.tilt) <= 1.6 && std::abs(view.turn) <= 3.15 ? "" : "the camera is turned too far. ";
  fault += !view.keys_shown || !view.progress.shown ? "" : "two pages are open. ";
  if (view.presenting) {
    for (const figures::Rect& window : {figures::Rect{0, 0, 1920, 1080}, figures::Rect{0, 0, 1024, 768}}) {
      const Theme theme = Theme::make(view.settings.theme, theme::reading_height(window.w, window.h));
      const Screen screen = screen_for(window, model, theme.sizes, {});
      fault += screen.has_rail || screen.rail.w > 0 ? "the rail is shown while presenting. " : "";
    }
  }
  return fault;
}

/// What undo and redo leave alone; the rest hangs on what stands on the bench.
View left_alone(View view) {
  view.hovered.reset();
  view.dragged.reset();
  view.pointed.reset();
  view.notice.reset();
  view.motion = Motion::Still;
  view.fold = 0;
  return view;
}

std::string fault_of_undo(const Model& before, const Model& model, const Command& command) {
  std::string fault;
  const bool goes_back = command.as<Undo>() != nullptr || command.as<Redo>() != nullptr;
  if (goes_back && !(left_alone(before.view) == left_alone(model.view))) {
    fault += "undo or redo has changed how it is looked at. ";
  }
  if (goes_back || !model.history.can_undo() || before.history == model.history) {
    return fault;
  }
  const Model back = after(model, {Undo{}});
  const auto* slid = command.as<SetMeasure>();
  if (!(back.state == before.state) && !(slid != nullptr && slid->by_slider)) {
    fault += "undo does not bring back what was. ";
  }
  const Model again = after(back, {Redo{}});
  fault += again.state == model.state ? "" : "redo does not bring back what was undone. ";
  return fault;
}

std::size_t answers_kept(const Model& model) {
  std::size_t count = 0;
  if (model.view.progress.kept) {
    for (const auto& [skill, record] : model.view.progress.kept->skills) {
      count += record.seen;
    }
  }
  return count;
}

/// An answer is kept when it is given, and never again.
std::string fault_of_progress(const Model& before, const Model& model, const Command& command) {
  const std::size_t was = before.state.quiz.attempts.size();
  const std::size_t is = model.state.quiz.attempts.size();
  const bool is_given = is > was && command.as<Redo>() == nullptr;
  const bool is_erased = command.as<EraseProgress>() != nullptr && answers_kept(model) == 0;
  const std::size_t expected = answers_kept(before) + (is_given ? is - was : 0);
  return answers_kept(model) == expected || is_erased ? "" : "answers are counted that were not given. ";
}

/// Widgets that change the problem or leave it; none is there while it is presented.
const std::vector<WidgetId> editors{ids::problem,        ids::rail_toggle,   ids::side_tabs, ids::work_tabs,
                                    ids::card_move,      ids::measure_field, ids::unit,      ids::reset,
                                    ids::measure_slider, ids::shelf_item,    ids::theme,     ids::ask_measure,
                                    ids::work_route,     ids::work_fade};

/// The names of the editors on the screen, one after another.
std::string editors_shown(ProgramDriver& program) {
  std::string shown;
  for (const ItemRecord& item : program.user().ui().items()) {
    const auto is_it = [&](const WidgetId& editor) { return editor.name == item.id.name; };
    shown += std::any_of(editors.begin(), editors.end(), is_it) ? std::string(item.id.name) + " " : "";
  }
  return shown;
}

std::string fault_of_screen(const Model& model) {
  static ProgramDriver program(demo_model(), 1280, 720);
  program.show(model);
  const std::string shown = model.view.presenting ? editors_shown(program) : "";
  return shown.empty() ? "" : shown + "shown while presenting. ";
}

/// Some intents of all, and undo and redo, so that those that belong together follow each other more often.
/// Source: Groce et al., Swarm Testing, ISSTA 2012 (from memory).
std::vector<Maker> some_makers() {
  std::vector<Maker> some;
  for (const std::size_t one :
       *rc::gen::container<std::vector<std::size_t>>(12, rc::gen::inRange<std::size_t>(0, makers().size()))) {
    some.push_back(makers()[one]);
  }
  for (const Maker& maker : makers()) {
    if (maker.name == "Undo" || maker.name == "Redo") {
      some.push_back(maker);
    }
  }
  return some;
}

void walk(Session& session, const std::vector<Maker>& some, const std::vector<Move>& moves) {
  for (const auto& [number, arguments] : moves) {
    const Maker& maker = some[number % some.size()];
    Choices choices(arguments);
    const Model before = session.model();
    const Command command = maker.make(before, choices);
    trail() += " " + maker.name;
    session.dispatch({command});
    const Model& model = session.model();
    const std::string fault = fault_of_state(model.state) + fault_of_view(model) +
                              fault_of_undo(before, model, command) + fault_of_progress(before, model, command);
    if (!fault.empty()) {
      RC_FAIL(fault + "After:" + trail());
    }
  }
}

class Walk : public testing::Test {
 protected:
  void SetUp() override { old_ = std::signal(SIGABRT, &tell_trail); }
  void TearDown() override { std::ignore = std::signal(SIGABRT, old_); }

 private:
  void (*old_)(int) = nullptr;
};

TEST_F(Walk, KeepsTheProgramSoundWhateverIsCommanded) {
  using rc::gen::inRange;
  const auto move = rc::gen::tuple(inRange<std::size_t>(0, makers().size()),
                                   rc::gen::container<std::vector<unsigned>>(3, inRange(0U, 60U)));
  const bool held = rc::check("any commands in any order", [&] {
    const std::size_t lesson = *inRange<std::size_t>(0, lesson_names.size());
    platform::MemoryFiles files;
    Session session(files, lesson_of(lesson), "", &some_day);
    trail() = " " + lesson_names[lesson];
    // Where commands mean something: a problem, in any mode, and often with a quiz begun.
    const auto problem = *inRange<std::size_t>(0, lesson_of(lesson).problems.size());
    const auto mode = static_cast<Mode>(*inRange(0, 3));
    trail() += ", problem " + std::to_string(problem) + ", mode " + std::to_string(static_cast<int>(mode)) + ":";
    session.dispatch({OpenProblem{problem}, SetMode{mode}});
    if (mode == Mode::Quiz) {
      const auto source = static_cast<QuizSource>(*inRange(0, 4));
      const auto audience = static_cast<Audience>(*inRange(0, 2));
      session.dispatch({SetQuizSource{source}, SetAudience{audience}, StartQuiz{}});
    }
    const std::vector<Maker> some = some_makers();
    walk(session, some, *rc::gen::container<std::vector<Move>>(move));
    const State& state = session.model().state;
    RC_ASSERT(at_place(opened(lesson_of(lesson), ""), place_text(state, "")).has_value());
    const std::string fault = fault_of_screen(session.model());
    if (!fault.empty()) {
      RC_FAIL(fault + "After:" + trail());
    }
  });
  EXPECT_TRUE(held);
}

TEST(History, KeepsFiveHundredSteps) {
  Model model = demo_model("shade");
  const auto shown = [](int step) { return Command(ShowTotal{step % 2 == 0}); };
  for (int step = 0; step < 510; ++step) {
    model = apply(std::move(model), shown(step)).model;
  }
  int back = 0;
  for (; model.history.can_undo(); ++back) {
    model = apply(std::move(model), Undo{}).model;
  }
  EXPECT_EQ(back, 500);
}

TEST(Hovering, EndsWhenTheFaceIsGone) {
  const std::vector<solids::Description> shelf = solids::shelf();
  const auto has_four_faces = [](const solids::Description& one) {
    return solids::Solid::make(one)->faces().size() == 4;
  };
  const auto small = std::find_if(shelf.begin(), shelf.end(), has_four_faces);
  ASSERT_NE(small, shelf.end());
  const Model hovering = after(demo_model("candle-box"), {Hover{FaceId{5}}, DragFace{FaceId{5}}});
  ASSERT_EQ(hovering.view.hovered, std::optional(FaceId{5}));
  const Model model = after(hovering, {PutOnBench{*small}});
  EXPECT_EQ(model.view.hovered, std::nullopt);
  EXPECT_EQ(model.view.dragged, std::nullopt);
  EXPECT_EQ(after(model, {Hover{FaceId{5}}}).view.hovered, std::nullopt);
}

TEST(Redo, CountsNoAnswerTwice) {
  platform::MemoryFiles files;
  Session session(files, lesson_of(0), "", &some_day);
  session.dispatch({SetMode{Mode::Quiz}, StartQuiz{}});
  session.dispatch({AnswerTyped{said(tasks::answer_text(session.model().state.quiz.item()))}});
  ASSERT_EQ(answers_kept(session.model()), 1U);
  session.dispatch({Undo{}, Redo{}});
  EXPECT_EQ(session.model().state.quiz.attempts.size(), 1U);
  EXPECT_EQ(answers_kept(session.model()), 1U);
}

TEST(Presenting, HidesTheRailAndTheEditors) {
  Model model = after(demo_model("shade"), {ShowPanel{SidePanel::Measures}});
  ProgramDriver program(model, 1920, 1080);
  const std::string shown = editors_shown(program);
  for (const char* editor : {"problem ", "rail_toggle ", "side_tabs ", "measure_field ", "unit "}) {
    EXPECT_NE(shown.find(editor), std::string::npos) << editor << "is not in: " << shown;
  }
  program.show(after(model, {SetPresenting{true}, ShowPanel{SidePanel::Measures}}));
  EXPECT_EQ(editors_shown(program), "");
}

TEST_F(Walk, GivesEveryCommand) {
  EXPECT_GT(makers().size(), 70U);
  for (const Maker& maker : makers()) {
    EXPECT_EQ(
        std::count_if(makers().begin(), makers().end(), [&](const Maker& other) { return other.name == maker.name; }),
        1)
        << maker.name;
  }
}

}  // namespace
}  // namespace fw::panels::test::walk_test
