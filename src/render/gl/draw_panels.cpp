#include "render/gl/draw_panels.hpp"

#include <initializer_list>
#include <utility>

#include "render/gl/objects.hpp"
#include "render/gl/program.hpp"

namespace fw::render::gl {
namespace {

void prepare_for_panels(int width_px, int height_px) {
  glViewport(0, 0, width_px, height_px);
  glEnable(GL_SCISSOR_TEST);
  glDisable(GL_DEPTH_TEST);
  glDisable(GL_CULL_FACE);
  glDisable(GL_STENCIL_TEST);
  glColorMask(GL_TRUE, GL_TRUE, GL_TRUE, GL_TRUE);
  glEnable(GL_BLEND);
  glBlendEquationSeparate(GL_FUNC_ADD, GL_FUNC_ADD);
  glBlendFuncSeparate(GL_SRC_ALPHA, GL_ONE_MINUS_SRC_ALPHA, GL_ONE, GL_ONE_MINUS_SRC_ALPHA);
}

void use_atlas(const Texture& atlas) {
  glActiveTexture(GL_TEXTURE0);
  glBindTexture(GL_TEXTURE_2D, atlas.name());
}

}  // namespace

struct PanelPainter::Parts {
  explicit Parts(Program panel_program) : program(std::move(panel_program)) {
    glBindVertexArray(array.name());
    glBindBuffer(GL_ARRAY_BUFFER, vertices.name());
    describe({0, 2, offsetof(PanelVertex, place)}, sizeof(PanelVertex));
    describe({1, 2, offsetof(PanelVertex, on_atlas)}, sizeof(PanelVertex));
    describe({2, 4, offsetof(PanelVertex, tint), GL_UNSIGNED_BYTE}, sizeof(PanelVertex));
    glBindBuffer(GL_ELEMENT_ARRAY_BUFFER, indices.name());
    use_atlas(atlas);
    for (const GLenum side : std::initializer_list<GLenum>{GL_TEXTURE_WRAP_S, GL_TEXTURE_WRAP_T}) {
      glTexParameteri(GL_TEXTURE_2D, side, GL_CLAMP_TO_EDGE);
    }
    for (const GLenum way : std::initializer_list<GLenum>{GL_TEXTURE_MIN_FILTER, GL_TEXTURE_MAG_FILTER}) {
      glTexParameteri(GL_TEXTURE_2D, way, GL_LINEAR);
    }
    program.use();
    glUniform1i(program.location("atlas"), 0);
  }

  Program program;
  VertexArray array;
  Buffer vertices, indices;
  Texture atlas;
};

PanelPainter::PanelPainter(std::unique_ptr<Parts> parts) : parts_(std::move(parts)) {}
PanelPainter::PanelPainter(PanelPainter&&) noexcept = default;
PanelPainter& PanelPainter::operator=(PanelPainter&&) noexcept = default;
PanelPainter::~PanelPainter() = default;

Result<PanelPainter, std::string> PanelPainter::make(Dialect dialect, const ShaderTexts& shaders) {
  auto program = Program::make("panel", dialect, shaders("panel.vert"), shaders("panel.frag"), {"atlas", "size"});
  if (!program) return failure(program.error());
  return PanelPainter(std::make_unique<Parts>(std::move(program).value()));
}

void PanelPainter::take_atlas(int width, int height, const std::uint8_t* opacities) {
  use_atlas(parts_->atlas);
  glPixelStorei(GL_UNPACK_ALIGNMENT, 1);
  glTexImage2D(GL_TEXTURE_2D, 0, GL_R8, width, height, 0, GL_RED, GL_UNSIGNED_BYTE, opacities);
}

void PanelPainter::draw(const PanelDrawing& drawing, int width_px, int height_px) const {
  if (drawing.indices.empty() || width_px <= 0 || height_px <= 0) return;
  prepare_for_panels(width_px, height_px);
  use_atlas(parts_->atlas);
  parts_->program.use();
  glUniform2f(parts_->program.location("size"), static_cast<float>(drawing.width), static_cast<float>(drawing.height));
  glBindVertexArray(parts_->array.name());
  fill(GL_ARRAY_BUFFER, parts_->vertices, drawing.vertices.data(), drawing.vertices.size() * sizeof(PanelVertex));
  fill(GL_ELEMENT_ARRAY_BUFFER, parts_->indices, drawing.indices.data(),
       drawing.indices.size() * sizeof(std::uint32_t));
  std::size_t first = 0;
  for (const PanelRun& run : drawing.runs) {
    glScissor(run.clip.left, run.clip.bottom, run.clip.width, run.clip.height);
    // NOLINTNEXTLINE(performance-no-int-to-ptr): OpenGL takes the offset as a pointer
    const void* offset = reinterpret_cast<const void*>(first * sizeof(std::uint32_t));
    glDrawElements(GL_TRIANGLES, static_cast<GLsizei>(run.index_count), GL_UNSIGNED_INT, offset);
    first += run.index_count;
  }
}

void PanelPainter::forget() {
  parts_->program.forget();
  parts_->array.forget();
  parts_->vertices.forget();
  parts_->indices.forget();
  parts_->atlas.forget();
}

}  // namespace fw::render::gl
