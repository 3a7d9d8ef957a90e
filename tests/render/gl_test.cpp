#include <gmock/gmock.h>
#include <gtest/gtest.h>

#include <array>
#include <cstdlib>
#include <filesystem>
#include <fstream>
#include <iostream>
#include <vector>

#include "bench_support.hpp"
#include "gl_support.hpp"
#include "render/gl/draw_panels.hpp"
#include "render/gl/program.hpp"
#include "support/polyhedra.hpp"

namespace fw::render::gl::gl_test {
namespace {

using ::testing::HasSubstr;

constexpr std::string_view plain_vertex =
    "layout(location = 0) in vec3 position;\n"
    "uniform mat4 view;\n"
    "void main() { gl_Position = view * vec4(position, 1.0); }\n";
constexpr std::string_view plain_fragment =
    "layout(location = 0) out vec4 color;\n"
    "uniform vec4 ink;\n"
    "void main() { color = ink; }\n";

class ProgramGl : public ::testing::TestWithParam<Dialect> {
 protected:
  ProgramGl() : context_(HeadlessContext::make(GetParam())) {}
  void SetUp() override { ASSERT_TRUE(context_.has_value()) << context_.error(); }
  static std::string error_of(const Result<Program, std::string>& made) {
    return made.has_value() ? "no error" : made.error();
  }
  Result<HeadlessContext, std::string> context_;
};
INSTANTIATE_TEST_SUITE_P(BothDialects, ProgramGl, ::testing::Values(Dialect::Core33, Dialect::Es30),
                         [](const auto& which) { return which.param == Dialect::Core33 ? "Core33" : "Es30"; });

TEST_P(ProgramGl, ListedUniformsAreThere) {
  const auto made = Program::make("card", GetParam(), plain_vertex, plain_fragment, {"view", "ink"});
  ASSERT_TRUE(made.has_value()) << made.error();
  EXPECT_GE(made->location("view"), 0);
  EXPECT_GE(made->location("ink"), 0);
}

TEST_P(ProgramGl, UniformThatTheShadersLackIsNamed) {
  EXPECT_EQ(error_of(Program::make("card", GetParam(), plain_vertex, plain_fragment, {"view", "ink", "shine"})),
            "The shaders of \"card\" make no use of the uniform \"shine\".");
}

TEST_P(ProgramGl, UniformThatIsNeverSetIsNamed) {
  EXPECT_EQ(error_of(Program::make("card", GetParam(), plain_vertex, plain_fragment, {"view"})),
            "The program \"card\" never sets its shaders' uniform \"ink\".");
}

TEST_P(ProgramGl, CompilersComplaintIsPassedOn) {
  const std::string error = error_of(Program::make("card", GetParam(), plain_vertex, "void main() { paper }", {}));
  EXPECT_THAT(error, HasSubstr("The fragment shader of \"card\" does not compile: "));
  EXPECT_THAT(error, HasSubstr("0:1(")) << "the line of the file, less the prelude";
}

TEST_P(ProgramGl, LinkersComplaintIsPassedOn) {
  const std::string error = error_of(Program::make(
      "card", GetParam(), plain_vertex,
      "uniform vec4 view;\nlayout(location = 0) out vec4 color;\nvoid main() { color = view; }\n", {"view"}));
  EXPECT_THAT(error, HasSubstr("The shaders of \"card\" do not fit together: "));
}

TEST(HeadlessGl, DialectIsTheOneAskedFor) {
  for (const Dialect dialect : {Dialect::Core33, Dialect::Es30}) {
    const auto made = HeadlessContext::make(dialect);
    ASSERT_TRUE(made.has_value()) << made.error();
    EXPECT_EQ(made->dialect(), dialect);
    EXPECT_THAT(driver_name(), HasSubstr(", "));
  }
}

TEST(HeadlessGl, WithoutAnyDriverTheMessageSaysSo) {
  GTEST_FLAG_SET(death_test_style, "threadsafe");  // drivers are looked for once in a process
  const auto ask = [] {
    ::setenv("__EGL_VENDOR_LIBRARY_FILENAMES", "/nowhere/driver.json", 1);
    const auto made = HeadlessContext::make();
    std::cerr << (made.has_value() ? "a context" : made.error()) << '\n';
    std::exit(7);
  };
  EXPECT_EXIT(ask(), ::testing::ExitedWithCode(7), "No picture can be drawn without a window: .*driver");
}

TEST(HeadlessGl, LoaderWithoutAContextIsAnError) {
  const auto loaded = load_gl([](const char*) -> GLADapiproc { return nullptr; });
  ASSERT_FALSE(loaded.has_value());
  EXPECT_EQ(loaded.error(), "There is no OpenGL context to draw with.");
}

TEST(OffscreenGl, ImpossibleSizesAreRefused) {
  const auto context = HeadlessContext::make();
  ASSERT_TRUE(context.has_value()) << context.error();
  for (const auto& [width, height] : std::vector<std::pair<int, int>>{{0, 10}, {10, -1}, {1000000, 10}}) {
    const auto made = Offscreen::make(width, height);
    ASSERT_FALSE(made.has_value());
    EXPECT_THAT(made.error(), HasSubstr("A picture of " + std::to_string(width) + " x " + std::to_string(height)));
  }
}

TEST(OffscreenGl, RowsComeFromTheTop) {
  const test::Studio studio(8, 6);
  studio.target().begin({0, 0, 0, 1});
  glEnable(GL_SCISSOR_TEST);
  glScissor(0, 5, 8, 1);  // OpenGL's uppermost row
  glClearColor(1, 0.5F, 0.25F, 1);
  glClear(GL_COLOR_BUFFER_BIT);
  const Picture picture = studio.target().read_back();
  EXPECT_EQ(picture.at(3, 0), (std::array<std::uint8_t, 4>{255, 128, 64, 255}));
  EXPECT_EQ(picture.at(3, 1), (std::array<std::uint8_t, 4>{0, 0, 0, 255}));
}

/// Sets OpenGL as no painter wants it.
void set_odd_state(const Program& program, GLuint array, GLuint buffer) {
  glViewport(3, 5, 17, 19);
  glScissor(2, 4, 30, 31);
  for (const GLenum name : std::initializer_list<GLenum>{GL_SCISSOR_TEST, GL_CULL_FACE, GL_POLYGON_OFFSET_FILL,
                                                         GL_STENCIL_TEST, GL_DEPTH_TEST})
    glEnable(name);
  glStencilFunc(GL_NEVER, 1, 1);
  glDisable(GL_BLEND);
  glColorMask(GL_TRUE, GL_FALSE, GL_TRUE, GL_FALSE);
  glDepthMask(GL_FALSE);
  glDepthFunc(GL_NEVER);
  glBlendFuncSeparate(GL_DST_COLOR, GL_ZERO, GL_ONE, GL_SRC_ALPHA);
  glBlendEquationSeparate(GL_FUNC_SUBTRACT, GL_MAX);
  glPolygonOffset(3, 7);
  glActiveTexture(GL_TEXTURE1);
  glPixelStorei(GL_UNPACK_ALIGNMENT, 8);
  program.use();
  glBindVertexArray(array);
  glBindBuffer(GL_ARRAY_BUFFER, buffer);
}

/// A square of 20 units in the left upper corner, tinted, and one beside it that is cut to its upper half.
PanelDrawing two_squares() {
  PanelDrawing drawing;
  drawing.width = 64;
  drawing.height = 48;
  for (const float left : {0.0F, 20.0F}) {
    for (const auto& [x, y] : std::vector<std::pair<float, float>>{{0, 0}, {20, 0}, {20, 20}, {0, 20}}) {
      drawing.vertices.push_back({{left + x, y}, {0.5F, 0.5F}, {255, 0, 0, 128}});
    }
  }
  drawing.indices = {0, 1, 2, 0, 2, 3, 4, 5, 6, 4, 6, 7};
  drawing.runs = {{{0, 0, 64, 48}, 6}, {{0, 38, 64, 10}, 6}};
  return drawing;
}

PanelPainter panel_painter(Dialect dialect) {
  auto made = PanelPainter::make(dialect, test::shader_text);
  ensure(made.has_value(), "the panels' shaders compile");
  PanelPainter painter = std::move(made).value();
  const std::array<std::uint8_t, 3> opaque{255, 255, 255};  // rows of three bytes, which need an alignment of one
  painter.take_atlas(3, 1, opaque.data());
  return painter;
}

TEST(PanelGl, TintsAndCutsInBothDialects) {
  for (const Dialect dialect : {Dialect::Core33, Dialect::Es30}) {
    const test::Studio studio(64, 48, dialect);
    const PanelPainter painter = panel_painter(dialect);
    studio.target().begin({0, 0, 1, 1});
    painter.draw(two_squares(), 64, 48);
    const Picture picture = studio.target().read_back();
    EXPECT_EQ(picture.at(10, 10)[0], 128);
    EXPECT_NEAR(picture.at(10, 10)[2], 127, 1);
    EXPECT_EQ(picture.at(10, 18)[0], 128);
    EXPECT_EQ(picture.at(30, 5)[0], 128);
    EXPECT_EQ(picture.at(30, 15)[0], 0) << "below the cut";
    EXPECT_EQ(picture.at(10, 30), (std::array<std::uint8_t, 4>{0, 0, 255, 255}));
    EXPECT_EQ(glGetError(), static_cast<GLenum>(GL_NO_ERROR));
  }
}

TEST(PainterGl, WhateverTheStateWasThePictureIsTheSame) {
  for (const Dialect dialect : {Dialect::Core33, Dialect::Es30}) {
    const test::Studio studio(64, 48, dialect);
    const PanelPainter panels = panel_painter(dialect);
    const nets::Pose pose = test::opened(test::cube(), 0.2);
    BenchLook look = test::plain_look(pose, 0.8F);
    look.edge = {Color::hex(0), 3, 0, 0};
    look.hidden_edge = look.edge;
    const Scene scene = bench_scene(look, Camera{}.fitted(test::all_corners(pose), 64.0 / 48, 0.1));
    const Picture expected = studio.drawn(scene, {1, 1, 1, 1});
    const Picture expected_ids = studio.face_ids(scene);
    studio.target().begin({0, 1, 1, 1});
    panels.draw(two_squares(), 64, 48);
    const Picture expected_panels = studio.target().read_back();

    const auto program = Program::make("card", dialect, plain_vertex, plain_fragment, {"view", "ink"});
    ASSERT_TRUE(program.has_value()) << program.error();
    const VertexArray array;
    const Buffer buffer;
    const auto upset = [&] { set_odd_state(*program, array.name(), buffer.name()); };
    upset();
    EXPECT_EQ(studio.drawn(scene, {1, 1, 1, 1}), expected);
    studio.target().begin({1, 1, 1, 1});
    upset();
    studio.painter().draw(scene, studio.whole());
    EXPECT_EQ(studio.target().read_back(), expected);
    upset();
    EXPECT_EQ(studio.face_ids(scene), expected_ids);
    upset();
    studio.target().begin({0, 1, 1, 1});
    upset();
    panels.draw(two_squares(), 64, 48);
    EXPECT_EQ(studio.target().read_back(), expected_panels);
    EXPECT_EQ(glGetError(), static_cast<GLenum>(GL_NO_ERROR));
  }
}

// After a lost context the names belong to nobody: were they removed, objects of the new context would be hit.
TEST(PainterGl, WhatIsForgottenIsNotRemoved) {
  const test::Studio studio(64, 48);
  studio.target().begin({1, 1, 1, 1});
  GLuint kept = 0;
  {
    PanelPainter panels = panel_painter(Dialect::Core33);
    auto bench = BenchPainter::make(Dialect::Core33, test::shader_text);
    ASSERT_TRUE(bench.has_value());
    BenchPainter painter = std::move(bench).value();
    GLint program = 0;
    panels.draw(two_squares(), 64, 48);
    glGetIntegerv(GL_CURRENT_PROGRAM, &program);
    kept = static_cast<GLuint>(program);
    panels.forget();
    painter.forget();
  }
  EXPECT_EQ(glIsProgram(kept), GL_TRUE);
  EXPECT_EQ(glGetError(), static_cast<GLenum>(GL_NO_ERROR));
  {
    const PanelPainter panels = panel_painter(Dialect::Core33);
    panels.draw(two_squares(), 64, 48);
    GLint program = 0;
    glGetIntegerv(GL_CURRENT_PROGRAM, &program);
    kept = static_cast<GLuint>(program);
  }
  glUseProgram(0);
  EXPECT_EQ(glIsProgram(kept), GL_FALSE) << "one that is not forgotten goes";
}

TEST(PainterGl, FaultyShaderIsReported) {
  const auto context = HeadlessContext::make();
  ASSERT_TRUE(context.has_value()) << context.error();
  const auto made = BenchPainter::make(Dialect::Core33, [](std::string_view name) -> std::string_view {
    return name == "bench_line.frag" ? "void main() { ink }" : test::shader_text(name);
  });
  ASSERT_FALSE(made.has_value());
  EXPECT_THAT(made.error(), HasSubstr("bench_line"));
}

// The reference compiler of the Khronos group is stricter than drivers: it refuses what one of the two lacks.
TEST(ShaderGl, EveryShaderIsRightInBothDialects) {
  namespace fs = std::filesystem;
  ASSERT_EQ(std::system("glslangValidator --version > /dev/null"), 0) << "the package glslang-tools is missing";
  int checked = 0;
  for (const auto& entry : fs::directory_iterator(FOLDWRIGHT_SOURCE_DIR "/shaders")) {
    const std::string name = entry.path().filename().string();
    for (const Dialect dialect : {Dialect::Core33, Dialect::Es30}) {
      const std::string copy = ::testing::TempDir() + (dialect == Dialect::Core33 ? "core_" : "es_") + name;
      std::ofstream(copy) << prelude(dialect) << test::shader_text(name);
      EXPECT_EQ(std::system(("glslangValidator '" + copy + "'").c_str()), 0) << name;
      fs::remove(copy);
      ++checked;
    }
  }
  EXPECT_GE(checked, 12);
}

}  // namespace
}  // namespace fw::render::gl::gl_test
