// A lesson in a page: the page here is a small one with the same place for a lesson. What a browser makes of the real
// one is tested in tests/cli/page/.
#include <gmock/gmock.h>

#include "program.hpp"

namespace fw::cli::share_test {
namespace {

using testing::HasSubstr;
using testing::Not;

constexpr const char* empty_page =
    "<!doctype html>\n<p>Foldwright</p>\n<script id=\"lesson\" "
    "type=\"application/json\"></script>\n<script>1</script>\n";

std::string lesson_titled(const std::string& title) {
  return R"({"lesson": 1, "title": ")" + title +
         R"(", "problems": [{"id": "box", "solid": {"kind": "cube", "edge": "7 in"}, "find": ["volume"]}]})";
}

class Share : public testing::Test {
 protected:
  [[nodiscard]] Outcome share(const std::string& lesson, const std::string& page) const {
    return run_program("share '" + lesson + "' --page '" + page + "' -o '" + made_ + "'");
  }
  Folder folder_;
  std::string page_ = folder_.file("page.html", empty_page);
  std::string made_ = folder_.path("fair.html");
};

TEST_F(Share, PutsTheLessonIntoThePage) {
  const std::string lesson = lesson_titled("Fair");
  const Outcome done = share(folder_.file("fair.json", lesson), page_);
  EXPECT_EQ(done.status, 0) << done.error;
  EXPECT_EQ(done.error, "");
  EXPECT_THAT(contents(made_), HasSubstr("application/json\">" + lesson + "</script>\n<script>1</script>"));
  EXPECT_EQ(share(folder_.file("other.json", lesson_titled("Market")), made_).status, 0) << "a page that has a lesson";
  EXPECT_THAT(contents(made_), HasSubstr("Market"));
  EXPECT_THAT(contents(made_), Not(HasSubstr("Fair")));
}

TEST_F(Share, ReadsAndWritesStreams) {
  const std::string lesson = folder_.file("fair.json", lesson_titled("Fair"));
  const Outcome piped = run_program("share - --page '" + page_ + "' -o -", lesson);
  EXPECT_EQ(piped.status, 0) << piped.error;
  EXPECT_THAT(piped.out, HasSubstr("application/json\">" + lesson_titled("Fair") + "</script>"));
  const Outcome full = run_program("share '" + lesson + "' --page '" + page_ + "' -o /dev/full");
  EXPECT_EQ(full.status, 2);
  EXPECT_NE(full.error, "");
}

TEST_F(Share, NoLessonEndsItsBlock) {
  EXPECT_EQ(share(folder_.file("fair.json", lesson_titled("a </script><!-- b")), page_).status, 0);
  EXPECT_THAT(contents(made_), HasSubstr("a <\\/script>\\u003c!-- b"));
}

TEST_F(Share, ALessonWithAMistakeIsToldAndThePageHoldsIt) {
  const std::string lesson = R"({"lesson": 1, "title": "Two", "problems": [
    {"id": "good", "solid": {"kind": "cube", "edge": "4 cm"}, "find": ["volume"]},
    {"id": "bad", "solid": {"kind": "cube", "edge": "four"}, "find": ["volume"]}]})";
  const Outcome done = share(folder_.file("two.json", lesson), page_);
  EXPECT_EQ(done.status, 1);
  EXPECT_THAT(done.error, HasSubstr("two.json:3:"));
  EXPECT_THAT(contents(made_), HasSubstr("\"good\""));
  const Outcome none = share(folder_.file("none.json", "{"), page_);
  EXPECT_EQ(none.status, 1);
}

TEST_F(Share, WhatIsNoPageIsRefused) {
  const std::string lesson = folder_.file("fair.json", lesson_titled("Fair"));
  const Outcome other = share(lesson, folder_.file("letter.html", "<!doctype html><p>Hello</p>"));
  EXPECT_EQ(other.status, 2);
  EXPECT_THAT(other.error, HasSubstr("is not Foldwright's page: it has no place for a lesson."));
  const Outcome missing = share(lesson, folder_.path("nowhere.html"));
  EXPECT_EQ(missing.status, 2);
  EXPECT_THAT(missing.error, HasSubstr("There is no file"));
  EXPECT_FALSE(std::filesystem::exists(made_));
}

}  // namespace
}  // namespace fw::cli::share_test
