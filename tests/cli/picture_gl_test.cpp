// The verbs picture and show as a shell runs them; pictures are drawn off screen, without a display.
#include <gmock/gmock.h>

#include "program.hpp"

namespace fw::cli::picture_gl_test {
namespace {

using testing::HasSubstr;
using testing::IsEmpty;

const char* const tents = R"({"lesson": 1, "title": "Tents", "problems": [
  {"id": "small", "solid": {"kind": "prism", "base": {"shape": "triangle", "sides": ["10 dm", "13 dm", "13 dm"]},
   "height": "7 dm"}},
  {"id": "tower", "solid": {"kind": "regular polyhedron", "faces": 12, "edge": "4 dm"}}]})";

/// Width and height from the header of a PNG file. Source: W3C PNG specification, section 11.2.2.
std::pair<int, int> png_size(const std::string& bytes) {
  if (bytes.size() < 24 || bytes.compare(0, 8, "\x89PNG\r\n\x1a\n") != 0) {
    return {0, 0};
  }
  const auto number = [&](std::size_t at) {
    int value = 0;
    for (std::size_t i = 0; i < 4; ++i) {
      value = value * 256 + static_cast<unsigned char>(bytes[at + i]);
    }
    return value;
  };
  return {number(16), number(20)};
}

class PictureGl : public testing::Test {
 protected:
  Outcome run(const std::string& options) {
    const std::string lesson = folder_.file("tents.json", tents);
    return run_program("picture '" + lesson + "' " + options + " -o '" + folder_.path("picture.png") + "'");
  }
  [[nodiscard]] std::string picture() const { return contents(folder_.path("picture.png")); }
  Folder folder_;
};

TEST_F(PictureGl, HasTheSizeThatWasAskedFor) {
  const Outcome drawn = run("--problem small --size 640x400");
  EXPECT_EQ(drawn.status, 0) << drawn.error;
  EXPECT_EQ(png_size(picture()), std::make_pair(640, 400));
}

TEST_F(PictureGl, ShowsAnotherThingAtAnotherFoldAndProblem) {
  ASSERT_EQ(run("--problem small").status, 0);
  const std::string closed = picture();
  ASSERT_EQ(run("--problem small --fold 0.5").status, 0);
  const std::string half_open = picture();
  ASSERT_EQ(run("--problem tower --fold 0.5").status, 0);
  EXPECT_NE(closed, half_open);
  EXPECT_NE(half_open, picture());
  ASSERT_EQ(run("--problem small --fold 0").status, 0);
  EXPECT_EQ(picture(), closed) << "the same call draws the same picture";
}

TEST_F(PictureGl, SaysWhatIsWrongWithTheCall) {
  EXPECT_EQ(run("--problem smal").status, 2);
  const Outcome size = run("--problem small --size huge");
  EXPECT_EQ(size.status, 2);
  EXPECT_THAT(size.error, HasSubstr("WIDTHxHEIGHT"));
  EXPECT_EQ(run("--problem small --fold 1.5").status, 2);
  const Outcome folder = run_program("picture '" + folder_.file("t.json", tents) + "' -o /no/such/folder/x.png");
  EXPECT_EQ(folder.status, 2);
  EXPECT_THAT(folder.error, HasSubstr("/no/such/folder/x.png"));
}

TEST_F(PictureGl, FramesOfTheFoldAreNumberedFromTheClosedSolidToTheNet) {
  ASSERT_EQ(run("--problem small --size 320x240").status, 0);
  const std::string closed = picture();
  ASSERT_EQ(run("--problem small --size 320x240 --fold 1").status, 0);
  const std::string flat = picture();
  const Outcome drawn = run("--problem small --size 320x240 --frames 11");
  EXPECT_EQ(drawn.status, 0) << drawn.error;
  EXPECT_EQ(contents(folder_.path("picture-01.png")), closed);
  EXPECT_EQ(contents(folder_.path("picture-11.png")), flat);
  EXPECT_NE(contents(folder_.path("picture-06.png")), closed);
  EXPECT_NE(contents(folder_.path("picture-06.png")), contents(folder_.path("picture-07.png")));
  EXPECT_FALSE(std::filesystem::exists(folder_.path("picture-12.png")));
}

TEST_F(PictureGl, StepsOfTheCountAndOfTheSolutionAreNumbered) {
  for (const char* what : {"count", "solution"}) {
    const Outcome drawn = run("--problem small --size 320x240 --steps " + std::string(what));
    EXPECT_EQ(drawn.status, 0) << drawn.error;
    int count = 0;
    std::string before;
    for (const char* zero : {"0", ""}) {
      for (int i = 1; i < 100; ++i) {
        const std::string path =
            folder_.path("picture-" + std::string(i < 10 ? zero : "") + std::to_string(i) + ".png");
        if (!std::filesystem::exists(path)) {
          continue;
        }
        const std::string now = contents(path);
        EXPECT_NE(now, before) << what << " " << i;
        before = now;
        std::filesystem::remove(path);
        ++count;
      }
    }
    EXPECT_GE(count, 5) << what;  // the prism has five faces
  }
}

TEST_F(PictureGl, SeveralPicturesNeedANameToNumber) {
  const std::string lesson = folder_.file("tents.json", tents);
  const Outcome drawing = run_program("picture '" + lesson + "' --frames 3 -o '" + folder_.path("x.svg") + "'");
  EXPECT_EQ(drawing.status, 2);
  EXPECT_THAT(drawing.error, HasSubstr("has to end in .png"));
  const Outcome stream = run_program("picture '" + lesson + "' --steps count -o -");
  EXPECT_EQ(stream.status, 2);
  EXPECT_THAT(stream.error, HasSubstr("they need a name to number"));
  EXPECT_EQ(run("--frames 1").status, 2);
  EXPECT_EQ(run("--frames 3 --steps count").status, 2);
}

TEST(Show, WithoutADisplayIsAClearMessageAndStatusTwo) {
  const Folder folder;
  const std::string lesson = folder.file("t.json", tents);
  const char* display = std::getenv("DISPLAY");
  const std::string kept = display == nullptr ? "" : display;
  unsetenv("DISPLAY");
  const Outcome shown = run_program("show '" + lesson + "'");
  if (!kept.empty()) {
    setenv("DISPLAY", kept.c_str(), 1);
  }
  EXPECT_EQ(shown.status, 2);
  EXPECT_THAT(shown.error, HasSubstr("no display"));
  EXPECT_THAT(shown.out, IsEmpty());
}

}  // namespace
}  // namespace fw::cli::picture_gl_test
