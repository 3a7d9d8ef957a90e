#include <gmock/gmock.h>

#include <set>

#include "app/panels/frame_driver.hpp"
#include "panels/ids.hpp"
#include "paper/pdf_file.hpp"
#include "state/paper_type.hpp"
#include "state/session.hpp"

// Printing from the window: the pages that are shown are those that are saved, everything is reached by keys, and what
// cannot be saved is told and leaves no file.
namespace fw::panels::test::print_page_test {
namespace {

using paper::SheetKind;
using ::testing::HasSubstr;

/// A session, its window, and a user at it.
class Printing {
 public:
  explicit Printing(double width = 1280, double height = 720)
      : session_(files_, lesson(), "", [] { return 20000; }),
        user_(width, height, [this](Ui& ui, const Fonts& fonts) { draw(ui, fonts); }) {}

  [[nodiscard]] const PrintPage& page() const { return session_.model().view.print; }
  [[nodiscard]] const Model& model() const { return session_.model(); }
  [[nodiscard]] platform::MemoryFiles& files() { return files_; }
  [[nodiscard]] fw::test::UiDriver& user() { return user_; }
  void give(const Commands& commands) {
    session_.dispatch(commands);
    user_.frames(2);
  }
  /// Time passes until the pages are there.
  void wait() {
    for (int i = 0; i < 5000 && is_moving(session_.model().view); ++i) {
      session_.dispatch({Tick{0.02}});
    }
    user_.frames(2);
  }
  void open(const std::string& sheet = "handout") {
    PrintChoices choices = page().choices;
    choices.sheet = sheet;
    give({ShowPrint{true}, SetPrint{choices}});
    wait();
  }
  void share(const std::string& page_file) { session_.shares(page_file); }
  [[nodiscard]] static lessons::Lesson lesson() {
    auto read = tasks::read_lesson(platform::asset("lantern_fair.json"));
    lessons::Lesson few = std::move(read).value();
    few.problems.erase(few.problems.begin() + 3, few.problems.end());
    return few;
  }

 private:
  void draw(Ui& ui, const Fonts& fonts) {
    const ImVec2 window = ImGui::GetIO().DisplaySize;
    const double height = theme::reading_height(static_cast<double>(window.x), static_cast<double>(window.y));
    const FrameResult frame = draw_frame(ui, fonts, session_.model(), session_.derived(), height);
    session_.dispatch(frame.commands);
  }

  platform::MemoryFiles files_;
  Session session_;
  fw::test::UiDriver user_;
};

TEST(PrintPage, SavesTheVeryPagesThatItShows) {
  Printing printing;
  printing.user().click(ids::show_print);
  EXPECT_TRUE(printing.page().is_making());
  printing.wait();
  for (const SheetKind& kind : paper::sheet_kinds()) {
    printing.open(kind.key);
    ASSERT_NE(printing.page().printed, nullptr) << kind.key;
    const lessons::Lesson lesson = Printing::lesson();
    const paper::Printed printed =
        paper::made(kind.plan, paper_type(), lesson, sheet_options(printing.page().choices, lesson));
    const std::string path = "home/Documents/lantern-fair-" + kind.key + ".pdf";
    const ItemRecord* field = printing.user().ui().item(ids::print_place);
    ASSERT_NE(field, nullptr);
    printing.user().click(ids::print_save);
    EXPECT_THAT(printing.page().message, HasSubstr(" in " + path)) << "it is said where the file is";
    ASSERT_EQ(printing.files().texts().count(path), 1U) << path;
    EXPECT_EQ(printing.files().texts().at(path), paper::pdf_file(printed.pages, paper_type(), lesson.title))
        << kind.key;
  }
}

TEST(PrintPage, EveryChoiceMakesOtherPages) {
  Printing printing;
  for (const SheetKind& kind : paper::sheet_kinds()) {
    printing.open(kind.key);
    for (std::size_t row = 0; printing.user().ui().item(ids::print_more.at(row)) != nullptr; ++row) {
      const PrintChoices before = printing.page().choices;
      printing.user().click(ids::print_more.at(row));
      EXPECT_FALSE(before == printing.page().choices) << kind.key << " " << row;
      printing.user().click(ids::print_less.at(row));
      const PrintChoices back = printing.page().choices;
      EXPECT_EQ(sheet_options(back, Printing::lesson()).style.paper.key,
                sheet_options(before, Printing::lesson()).style.paper.key);
      EXPECT_EQ(back.versions, before.versions);
      EXPECT_EQ(back.scale, before.scale);
    }
    printing.wait();
  }
}

TEST(PrintPage, IsUsedWithTheKeyboardAlone) {
  Printing printing;
  printing.user().press(Key::P, with_control);
  ASSERT_TRUE(printing.page().shown);
  PrintChoices large;
  large.is_large = true;
  printing.give({SetPrint{large}});
  printing.wait();
  ASSERT_GT(printing.page().printed->pages.size(), 1U);
  std::set<std::string> reached;
  for (int i = 0; i < 60; ++i) {
    printing.user().press(Key::Tab);
    const auto focus = printing.user().ui().focus();
    ASSERT_TRUE(focus.has_value());
    reached.insert(std::string(focus->name) + std::to_string(focus->item));
  }
  for (const char* name : {"print_close0", "print_kind0", "print_kind_more0", "print_less0", "print_more0",
                           "print_less3", "print_place0", "print_save0", "page_next0"}) {
    EXPECT_EQ(reached.count(name), 1U) << name;
  }
  for (int i = 0; i < 60 && printing.user().ui().focus() != ids::print_place; ++i) {
    printing.user().press(Key::Tab);
  }
  printing.user().strike("mine");
  printing.user().press(Key::Enter);
  EXPECT_TRUE(printing.files().exists("home/Documents/mine.pdf")) << printing.page().message;
  printing.user().press(Key::Escape);
  EXPECT_FALSE(printing.page().shown);
}

// A remote's keys turn the pages, whatever was clicked; nothing below the sheet moves.
TEST(PrintPage, TurnsItsPagesAfterAnyClick) {
  Printing printing;
  printing.open("key");
  const State before = printing.model().state;
  std::vector<std::pair<std::string, figures::Vec2>> places;
  for (const ItemRecord& item : printing.user().ui().items()) {
    const bool is_widget = item.kind != ItemKind::Text && item.kind != ItemKind::Sheet && item.kind != ItemKind::Panel;
    const figures::Rect seen = figures::common_part(item.rect, item.clip);
    if (item.layer == 1 && is_widget && seen.h > 4 && seen.w > 4 && !(item.id == ids::print_close)) {
      places.emplace_back(std::string(item.id.name), seen.center());
    }
  }
  ASSERT_GT(places.size(), 15U);
  for (const auto& [name, place] : places) {
    printing.open("key");
    printing.user().click_at(place);
    printing.wait();
    if (printing.page().printed->pages.size() > 1) {
      printing.give({TurnPage{-100}});
      printing.user().press(Key::PageDown);
      EXPECT_EQ(printing.page().page, 1U) << name;
      printing.user().press(Key::PageUp);
      EXPECT_EQ(printing.page().page, 0U) << name;
    }
    printing.user().press(Key::Y, with_control);
    printing.user().press(Key::Digit3, with_control);
    EXPECT_EQ(printing.model().state, before) << name;
  }
}

TEST(PrintPage, TellsWhatCannotBeSavedAndLeavesNothing) {
  Printing printing;
  ASSERT_FALSE(printing.files().write_atomically("home/Documents/letter.pdf", "Dear class").has_value());
  printing.open("slips");
  const std::map<std::string, std::string> before = printing.files().texts();
  const auto refused = [&](const std::string& place, const std::string& reason) {
    printing.give({SetPrintPlace{place}, SavePrint{}});
    EXPECT_TRUE(printing.page().is_refused) << place;
    EXPECT_EQ(printing.page().message, reason);
    EXPECT_TRUE(printing.user().shows_text(reason.substr(0, 12))) << place;
    EXPECT_EQ(printing.files().texts(), before);
  };
  refused("nowhere/x.pdf", "The folder \"nowhere\" doesn't exist. Make it first, or save somewhere else.");
  refused("letter", "\"home/Documents/letter.pdf\" already exists and is not a PDF file. Pick another name.");
  printing.files().refuse_writing();
  refused("x.pdf", "The file \"home/Documents/x.pdf\" cannot be written: no space is left.");
  printing.files().refuse_writing(false);
  printing.give({SavePrint{}});
  EXPECT_EQ(printing.page().message, "Saved 1 page in home/Documents/x.pdf");
}

TEST(PrintPage, TellsOfARealDiskWhatItCannotDo) {
  const auto files = platform::desktop_files();
  Session session(*files, Printing::lesson(), "", [] { return 20000; });
  PrintChoices choices;
  choices.sheet = "slips";
  session.dispatch({ShowPrint{true}, SetPrint{choices}});
  while (is_moving(session.model().view)) {
    session.dispatch({Tick{0.02}});
  }
  const PrintPage& page = session.model().view.print;
  session.dispatch({SetPrintPlace{"/proc/slips.pdf"}, SavePrint{}});
  EXPECT_TRUE(page.is_refused);
  EXPECT_THAT(page.message, HasSubstr("The file \"/proc/slips.pdf\" cannot be written"));
  session.dispatch({SetPrintPlace{"/proc/no-such-folder/slips.pdf"}, SavePrint{}});
  EXPECT_THAT(page.message, HasSubstr("The folder \"/proc/no-such-folder\" doesn't exist."));
  EXPECT_EQ(session.model().view.settings.print_folder, "") << "only where something was saved";
}

TEST(PrintPage, RemembersTheFolder) {
  platform::MemoryFiles files(std::map<std::string, std::string>{{"school/plan.txt", "plan"}});
  {
    Session session(files, Printing::lesson(), "", [] { return 20000; });
    session.dispatch({ShowPrint{true}});
    while (is_moving(session.model().view)) {
      session.dispatch({Tick{0.02}});
    }
    session.dispatch({SetPrintPlace{"school/packet"}, SavePrint{}});
    EXPECT_TRUE(files.exists("school/packet.pdf")) << session.model().view.print.message;
    session.save();
  }
  const Session again(files, Printing::lesson(), "", [] { return 20000; });
  EXPECT_EQ(print_path(again.model().view.print, Printing::lesson()), "school/lantern-fair-handout.pdf");
}

TEST(PrintPage, IsStoppedAndBegunAgain) {
  Printing printing;
  printing.give({ShowPrint{true}});
  ASSERT_TRUE(printing.page().is_making());
  printing.user().click(ids::print_stop);
  EXPECT_FALSE(is_moving(printing.model().view)) << "the window rests";
  EXPECT_TRUE(printing.user().shows_text("Stopped."));
  EXPECT_FALSE(printing.user().ui().item(ids::print_save)->enabled);
  printing.user().frames(30);  // no double click
  printing.user().click(ids::print_again);
  printing.wait();
  EXPECT_NE(printing.page().printed, nullptr);
  // There and back again in one go, nothing else in between.
  PrintChoices other = printing.page().choices;
  other.is_large = true;
  printing.give({SetPrint{other}, SetPrint{PrintChoices{}}});
  printing.wait();
  EXPECT_NE(printing.page().printed, nullptr);
}

TEST(PrintPage, StaysShutWhileAnAnswerIsAskedFor) {
  Printing printing;
  printing.give({SetMode{Mode::Quiz}, StartQuiz{}});
  ASSERT_TRUE(printing.model().state.in_item());
  printing.user().click(ids::show_print);
  printing.user().press(Key::P, with_control);
  EXPECT_FALSE(printing.page().shown) << "the key would tell it";
}

TEST(PrintPage, PrintsTheProblemInViewAlone) {
  Printing printing;
  PrintChoices choices;
  choices.only_this = true;
  printing.give({OpenProblem{1}, ShowPrint{true}, SetPrint{choices}});
  printing.wait();
  EXPECT_EQ(printing.page().printed->pages.size(), 1U);
}

class SlowPrintLayout : public testing::TestWithParam<std::pair<int, int>> {};

TEST_P(SlowPrintLayout, HoldsForEverySheetInEveryTheme) {
  const auto [width, height] = GetParam();
  const double least = 0.035 * theme::reading_height(width, height) * figures::line_height - 1;
  Printing printing(width, height);
  const auto look = [&](const std::string& scene) {
    for (const std::string& fault : printing.user().layout_faults()) {
      ADD_FAILURE() << scene << ": " << fault;
    }
    for (const ItemRecord& item : printing.user().ui().items()) {
      EXPECT_TRUE(item.text.empty() || item.text_size.y == 0 || item.text_size.y >= least) << scene << " " << item.text;
    }
  };
  for (const theme::ThemeName name : theme::theme_names()) {
    printing.give({SetTheme{name}, ShowPrint{true}});
    look("being made");
    printing.give({StopPrint{}});
    look("stopped");
    for (const SheetKind& kind : paper::sheet_kinds()) {
      printing.open(kind.key);
      look(kind.key);
    }
    printing.open("test");
    printing.give({SetPrintPlace{"/home/classroom/shared documents/grade seven/a folder that is not there/packet.pdf"},
                   SavePrint{}});
    look("refused");
    printing.give({SetPrintPlace{""}});
  }
}

INSTANTIATE_TEST_SUITE_P(Sizes, SlowPrintLayout,
                         testing::Values(std::pair{1024, 768}, std::pair{1280, 1024}, std::pair{960, 1080},
                                         std::pair{1280, 720}, std::pair{1366, 768}, std::pair{1920, 1080},
                                         std::pair{3840, 2160}),
                         [](const testing::TestParamInfo<std::pair<int, int>>& size) {
                           return std::to_string(size.param.first) + "x" + std::to_string(size.param.second);
                         });

}  // namespace
constexpr const char* page_without_lesson =
    "<!doctype html>\n<script id=\"lesson\" type=\"application/json\"></script>\n";

TEST(PrintPage, TheLessonIsSavedAsAPageForBrowsersWhereThereIsOne) {
  Printing printing;
  printing.open();
  EXPECT_FALSE(printing.user().shows(ids::print_share)) << "no page came with the program";
  printing.share("share/foldwright.html");
  ASSERT_FALSE(printing.files().write_atomically("share/foldwright.html", page_without_lesson).has_value());
  printing.user().frames(2);
  printing.user().click(ids::print_share);
  EXPECT_THAT(printing.page().message, HasSubstr("Students open it with a double-click"));
  EXPECT_FALSE(printing.page().is_refused);
  const std::string path = page_path(printing.page(), *printing.model().state.lesson);
  EXPECT_THAT(path, ::testing::EndsWith("/lantern-fair.html"));
  const auto page = printing.files().read(path);
  ASSERT_TRUE(page);
  EXPECT_THAT(page.value(), HasSubstr("\"title\": \"Lantern fair\""));
  printing.give({SaveAsPage{}});
  EXPECT_FALSE(printing.page().is_refused) << "a page of before is replaced";
}

TEST(PrintPage, WhatIsNoPageIsNeverReplacedByOne) {
  Printing printing;
  printing.open();
  printing.share("share/foldwright.html");
  printing.give({SaveAsPage{}});
  EXPECT_TRUE(printing.page().is_refused) << "the page itself is gone";
  ASSERT_FALSE(printing.files().write_atomically("share/foldwright.html", "<p>another page</p>").has_value());
  printing.give({SaveAsPage{}});
  EXPECT_THAT(printing.page().message, HasSubstr("it has no place for a lesson"));
  ASSERT_FALSE(printing.files().write_atomically("share/foldwright.html", page_without_lesson).has_value());
  const std::string path = page_path(printing.page(), *printing.model().state.lesson);
  ASSERT_FALSE(printing.files().write_atomically(path, "my recipes").has_value());
  printing.give({SaveAsPage{}});
  EXPECT_TRUE(printing.page().is_refused);
  EXPECT_THAT(printing.page().message, HasSubstr("already exists, and it isn't a page with a lesson"));
  EXPECT_EQ(printing.files().read(path).value(), "my recipes");
}

TEST(PrintPage, TellsOfARealDiskWhereAPageCannotGo) {
  const auto files = platform::desktop_files();
  const std::string page_file = testing::TempDir() + "page_without_lesson.html";
  ASSERT_FALSE(files->write_atomically(page_file, page_without_lesson).has_value());
  lessons::Lesson lesson = Printing::lesson();
  Session session(*files, lesson, "", [] { return 20000; });
  session.shares(page_file);
  const PrintPage& page = session.model().view.print;
  session.dispatch({ShowPrint{true}, SetPrintPlace{"/proc/slips.pdf"}, SaveAsPage{}});
  EXPECT_TRUE(page.is_refused);
  EXPECT_THAT(page.message, HasSubstr("\"/proc/lantern-fair.html\" cannot be written"));
  session.dispatch({SetPrintPlace{"/proc/no-such-folder/slips.pdf"}, SaveAsPage{}});
  EXPECT_TRUE(page.is_refused);
  EXPECT_THAT(page.message, HasSubstr("/proc/no-such-folder"));

  lesson.title = std::string(4000, 'a');  // longer than a file's name can be
  Session long_title(*files, lesson, "", [] { return 20000; });
  long_title.shares(page_file);
  long_title.dispatch({ShowPrint{true}, SetPrintPlace{testing::TempDir() + "x.pdf"}, SaveAsPage{}});
  EXPECT_TRUE(long_title.model().view.print.is_refused);
  EXPECT_NE(long_title.model().view.print.message, "");
}

}  // namespace fw::panels::test::print_page_test
