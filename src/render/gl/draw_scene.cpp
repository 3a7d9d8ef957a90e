#include "render/gl/draw_scene.hpp"

#include <algorithm>
#include <array>
#include <cstddef>
#include <utility>
#include <vector>

#include "render/gl/objects.hpp"
#include "render/gl/program.hpp"

namespace fw::render::gl {
namespace {

using Rgba = std::array<float, 4>;

struct FaceVertex {
  std::array<float, 3> position;
  std::array<float, 2> flat;
  Rgba fill;
  Rgba hatch_ink;
  std::array<float, 2> hatch;  ///< which; lines a model unit
};
struct LineVertex {
  std::array<float, 3> from, to;
  std::array<float, 2> corner;
  Rgba ink;
  std::array<float, 3> stroke;
};

Rgba premultiplied(const Color& color) { return {color.r * color.a, color.g * color.a, color.b * color.a, color.a}; }

Rgba id_color(FaceId face) {
  const auto number = face.value + 1;
  return {static_cast<float>(number % 256U) / 255.0F, static_cast<float>(number / 256U % 256U) / 255.0F, 0.0F, 1.0F};
}

enum class Fill { Look, Id };

std::vector<FaceVertex> face_vertices(const Scene& scene, Fill fill) {
  std::vector<FaceVertex> vertices;
  vertices.reserve(scene.vertices.size());
  for (const SceneFace& face : scene.faces) {
    const Rgba color = fill == Fill::Look ? premultiplied(face.fill) : id_color(face.face);
    const std::array<float, 2> hatch{static_cast<float>(face.hatch),
                                     face.hatch_period > 0 ? 1 / face.hatch_period : 0.0F};
    for (std::size_t i = 0; i < face.vertex_count; ++i) {
      const FillVertex& vertex = scene.vertices[face.first_vertex + i];
      vertices.push_back({vertex.position, vertex.flat, color, premultiplied(face.hatch_ink), hatch});
    }
  }
  return vertices;
}

void add_quads(const std::vector<SceneLine>& lines, std::vector<LineVertex>& vertices) {
  constexpr std::array<std::array<float, 2>, 6> corners{
      {{0.0F, -1.0F}, {1.0F, -1.0F}, {1.0F, 1.0F}, {0.0F, -1.0F}, {1.0F, 1.0F}, {0.0F, 1.0F}}};
  for (const SceneLine& line : lines) {
    for (const auto& corner : corners) {
      vertices.push_back({line.from,
                          line.to,
                          corner,
                          premultiplied(line.stroke.ink),
                          {line.stroke.width_px, line.stroke.dash_px, line.stroke.gap_px}});
    }
  }
}

float widest(const Scene& scene) {
  float width = 0;
  for (const SceneLine& line : scene.visible_lines) width = std::max(width, line.stroke.width_px);
  return width;
}

std::array<float, 16> matrix_of(const Scene& scene, const Rectangle& viewport) {
  // The origin is taken in before the numbers are shortened to floats.
  geometry::Mat4 to_origin(1);
  to_origin[3] = geometry::Vec4(scene.origin, 1);
  const double aspect = static_cast<double>(viewport.width) / static_cast<double>(viewport.height);
  const geometry::Mat4 whole = scene.camera.view_projection(aspect) * to_origin;
  std::array<float, 16> numbers{};
  for (std::size_t i = 0; i < 16; ++i) numbers[i] = static_cast<float>(whole[i / 4][i % 4]);
  return numbers;
}

template <class Vertex>
void upload(const Buffer& buffer, const std::vector<Vertex>& vertices) {
  fill(GL_ARRAY_BUFFER, buffer, vertices.data(), vertices.size() * sizeof(Vertex));
}

void draw_run(std::size_t first, std::size_t count) {
  if (count > 0) glDrawArrays(GL_TRIANGLES, static_cast<GLint>(first), static_cast<GLsizei>(count));
}

/// Sets all that drawing depends on, whatever the caller left.
void prepare(const Rectangle& viewport) {
  glViewport(viewport.left, viewport.bottom, viewport.width, viewport.height);
  glScissor(viewport.left, viewport.bottom, viewport.width, viewport.height);
  glEnable(GL_SCISSOR_TEST);
  glDisable(GL_CULL_FACE);
  glDisable(GL_STENCIL_TEST);
  glDisable(GL_POLYGON_OFFSET_FILL);
  glColorMask(GL_TRUE, GL_TRUE, GL_TRUE, GL_TRUE);
  glDepthMask(GL_TRUE);
  glClear(GL_DEPTH_BUFFER_BIT);
}

void set_matrix(const Program& program, const std::array<float, 16>& matrix) {
  program.use();
  glUniformMatrix4fv(program.location("view_projection"), 1, GL_FALSE, matrix.data());
}

}  // namespace

struct BenchPainter::Parts {
  Parts(Program hatched_program, Program flat_program, Program line_program);

  void draw_fills(const Scene& scene, const std::array<float, 16>& matrix) const;
  void draw_depths(const Scene& scene, const std::array<float, 16>& matrix) const;
  void draw_lines(const std::array<float, 16>& matrix, const Rectangle& viewport, std::size_t hidden,
                  std::size_t visible) const;

  Program hatched, flat, line;
  VertexArray face_array, line_array;
  Buffer face_buffer, line_buffer;
};

BenchPainter::Parts::Parts(Program hatched_program, Program flat_program, Program line_program)
    : hatched(std::move(hatched_program)), flat(std::move(flat_program)), line(std::move(line_program)) {
  glBindVertexArray(face_array.name());
  glBindBuffer(GL_ARRAY_BUFFER, face_buffer.name());
  describe({0, 3, offsetof(FaceVertex, position)}, sizeof(FaceVertex));
  describe({1, 2, offsetof(FaceVertex, flat)}, sizeof(FaceVertex));
  describe({2, 4, offsetof(FaceVertex, fill)}, sizeof(FaceVertex));
  describe({3, 4, offsetof(FaceVertex, hatch_ink)}, sizeof(FaceVertex));
  describe({4, 2, offsetof(FaceVertex, hatch)}, sizeof(FaceVertex));
  glBindVertexArray(line_array.name());
  glBindBuffer(GL_ARRAY_BUFFER, line_buffer.name());
  describe({0, 3, offsetof(LineVertex, from)}, sizeof(LineVertex));
  describe({1, 3, offsetof(LineVertex, to)}, sizeof(LineVertex));
  describe({2, 2, offsetof(LineVertex, corner)}, sizeof(LineVertex));
  describe({3, 4, offsetof(LineVertex, ink)}, sizeof(LineVertex));
  describe({4, 3, offsetof(LineVertex, stroke)}, sizeof(LineVertex));
}

void BenchPainter::Parts::draw_fills(const Scene& scene, const std::array<float, 16>& matrix) const {
  glDisable(GL_DEPTH_TEST);  // the order of the faces sees to it
  glEnable(GL_BLEND);
  glBlendEquationSeparate(GL_FUNC_ADD, GL_FUNC_ADD);
  glBlendFuncSeparate(GL_ONE, GL_ONE_MINUS_SRC_ALPHA, GL_ONE, GL_ONE_MINUS_SRC_ALPHA);
  set_matrix(hatched, matrix);
  set_matrix(flat, matrix);
  glBindVertexArray(face_array.name());
  for (const SceneFace& face : scene.faces) {
    // A hatch costs a software driver more than all the rest.
    (face.hatch == Hatch::None ? flat : hatched).use();
    draw_run(face.first_vertex, face.vertex_count);
  }
}

void BenchPainter::Parts::draw_depths(const Scene& scene, const std::array<float, 16>& matrix) const {
  glEnable(GL_DEPTH_TEST);
  glDepthFunc(GL_LESS);
  glColorMask(GL_FALSE, GL_FALSE, GL_FALSE, GL_FALSE);
  // A line keeps its own depth all across its width, so a sloping face must give way by half of that width.
  glEnable(GL_POLYGON_OFFSET_FILL);
  glPolygonOffset(widest(scene) * 0.5F + 1.5F, 16.0F);
  set_matrix(flat, matrix);
  glBindVertexArray(face_array.name());
  // The nearest first, so that most of what lies behind is not even looked at.
  for (auto face = scene.faces.rbegin(); face != scene.faces.rend(); ++face) {
    draw_run(face->first_vertex, face->vertex_count);
  }
  glDisable(GL_POLYGON_OFFSET_FILL);
  glColorMask(GL_TRUE, GL_TRUE, GL_TRUE, GL_TRUE);
}

void BenchPainter::Parts::draw_lines(const std::array<float, 16>& matrix, const Rectangle& viewport, std::size_t hidden,
                                     std::size_t visible) const {
  glDepthMask(GL_FALSE);
  set_matrix(line, matrix);
  glUniform2f(line.location("viewport_px"), static_cast<float>(viewport.width), static_cast<float>(viewport.height));
  glBindVertexArray(line_array.name());
  glDepthFunc(GL_GREATER);
  draw_run(0, hidden);
  glDepthFunc(GL_LEQUAL);
  draw_run(hidden, visible);
}

BenchPainter::BenchPainter(std::unique_ptr<Parts> parts) : parts_(std::move(parts)) {}
BenchPainter::BenchPainter(BenchPainter&&) noexcept = default;
BenchPainter& BenchPainter::operator=(BenchPainter&&) noexcept = default;
BenchPainter::~BenchPainter() = default;

Result<BenchPainter, std::string> BenchPainter::make(Dialect dialect, const ShaderTexts& shaders) {
  const auto program = [&](const std::string& name, const std::vector<std::string>& uniforms) {
    return Program::make(name, dialect, shaders(name + ".vert"), shaders(name + ".frag"), uniforms);
  };
  auto hatched = program("bench_face", {"view_projection"});
  if (!hatched) return failure(hatched.error());
  auto flat = program("bench_flat", {"view_projection"});
  if (!flat) return failure(flat.error());
  auto line = program("bench_line", {"view_projection", "viewport_px"});
  if (!line) return failure(line.error());
  return BenchPainter(
      std::make_unique<Parts>(std::move(hatched).value(), std::move(flat).value(), std::move(line).value()));
}

void BenchPainter::draw(const Scene& scene, const Rectangle& viewport) const {
  if (viewport.width <= 0 || viewport.height <= 0) return;
  prepare(viewport);
  upload(parts_->face_buffer, face_vertices(scene, Fill::Look));
  std::vector<LineVertex> lines;
  add_quads(scene.hidden_lines, lines);
  const std::size_t hidden = lines.size();
  add_quads(scene.visible_lines, lines);
  upload(parts_->line_buffer, lines);

  const auto matrix = matrix_of(scene, viewport);
  parts_->draw_fills(scene, matrix);
  if (!lines.empty()) parts_->draw_depths(scene, matrix);
  if (!lines.empty()) parts_->draw_lines(matrix, viewport, hidden, lines.size() - hidden);
}

void BenchPainter::draw_face_ids(const Scene& scene, const Rectangle& viewport) const {
  if (viewport.width <= 0 || viewport.height <= 0) return;
  prepare(viewport);
  const auto faces = face_vertices(scene, Fill::Id);
  upload(parts_->face_buffer, faces);
  glDisable(GL_BLEND);
  glEnable(GL_DEPTH_TEST);
  glDepthFunc(GL_LEQUAL);
  set_matrix(parts_->flat, matrix_of(scene, viewport));
  glBindVertexArray(parts_->face_array.name());
  draw_run(0, faces.size());
}

void BenchPainter::forget() {
  for (Program* program : {&parts_->hatched, &parts_->flat, &parts_->line}) program->forget();
  for (VertexArray* array : {&parts_->face_array, &parts_->line_array}) array->forget();
  for (Buffer* buffer : {&parts_->face_buffer, &parts_->line_buffer}) buffer->forget();
}

}  // namespace fw::render::gl
