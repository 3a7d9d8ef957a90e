#include "render/gl/program.hpp"

#include <algorithm>
#include <array>
#include <optional>
#include <utility>

#include "base/ensure.hpp"

namespace fw::render::gl {
namespace {

/// A shader while a program is being made of it.
class Stage {
 public:
  explicit Stage(GLenum kind) : name_(glCreateShader(kind)) {}
  Stage(const Stage&) = delete;
  Stage& operator=(const Stage&) = delete;
  ~Stage() { glDeleteShader(name_); }
  [[nodiscard]] GLuint name() const { return name_; }

  /// Returns what the compiler has to say; nothing when it has compiled.
  [[nodiscard]] std::optional<std::string> compile(std::string_view before, std::string_view text) const {
    const std::array<const GLchar*, 2> parts{before.data(), text.data()};
    const std::array<GLint, 2> sizes{static_cast<GLint>(before.size()), static_cast<GLint>(text.size())};
    glShaderSource(name_, 2, parts.data(), sizes.data());
    glCompileShader(name_);
    GLint is_compiled = GL_FALSE;
    glGetShaderiv(name_, GL_COMPILE_STATUS, &is_compiled);
    if (is_compiled == GL_TRUE) return std::nullopt;
    std::array<GLchar, 2000> log{};
    GLsizei length = 0;
    glGetShaderInfoLog(name_, static_cast<GLsizei>(log.size()), &length, log.data());
    return std::string(log.data(), static_cast<std::size_t>(length));
  }

 private:
  GLuint name_;
};

std::vector<std::string> active_uniforms(GLuint program) {
  GLint count = 0;
  glGetProgramiv(program, GL_ACTIVE_UNIFORMS, &count);
  std::vector<std::string> names;
  for (GLint i = 0; i < count; ++i) {
    std::array<GLchar, 200> name{};
    GLsizei length = 0;
    GLint size = 0;
    GLenum type = 0;
    glGetActiveUniform(program, static_cast<GLuint>(i), static_cast<GLsizei>(name.size()), &length, &size, &type,
                       name.data());
    names.emplace_back(name.data(), static_cast<std::size_t>(length));
  }
  return names;
}

std::optional<std::string> mismatch(const std::string& program, const std::vector<std::string>& in_shaders,
                                    const std::vector<std::string>& listed) {
  const auto lacks = [](const std::vector<std::string>& names, const std::string& name) {
    return std::find(names.begin(), names.end(), name) == names.end();
  };
  for (const std::string& name : listed) {
    if (lacks(in_shaders, name))
      return "The shaders of \"" + program + "\" make no use of the uniform \"" + name + "\".";
  }
  for (const std::string& name : in_shaders) {
    if (lacks(listed, name)) return "The program \"" + program + "\" never sets its shaders' uniform \"" + name + "\".";
  }
  return std::nullopt;
}

}  // namespace

std::string_view prelude(Dialect dialect) {
  // The last line makes the compiler count the lines of the shader's own file.
  return dialect == Dialect::Core33 ? "#version 330 core\n#line 1\n"
                                    : "#version 300 es\nprecision highp float;\nprecision highp int;\n#line 1\n";
}

Result<Program, std::string> Program::make(const std::string& name, Dialect dialect, std::string_view vertex_text,
                                           std::string_view fragment_text, const std::vector<std::string>& uniforms) {
  const Stage vertex(GL_VERTEX_SHADER), fragment(GL_FRAGMENT_SHADER);
  if (const auto log = vertex.compile(prelude(dialect), vertex_text)) {
    return failure("The vertex shader of \"" + name + "\" does not compile: " + *log);
  }
  if (const auto log = fragment.compile(prelude(dialect), fragment_text)) {
    return failure("The fragment shader of \"" + name + "\" does not compile: " + *log);
  }
  Program program(glCreateProgram());
  glAttachShader(program.name_, vertex.name());
  glAttachShader(program.name_, fragment.name());
  glLinkProgram(program.name_);
  glDetachShader(program.name_, vertex.name());
  glDetachShader(program.name_, fragment.name());
  GLint is_linked = GL_FALSE;
  glGetProgramiv(program.name_, GL_LINK_STATUS, &is_linked);
  if (is_linked != GL_TRUE) {
    std::array<GLchar, 2000> log{};
    GLsizei length = 0;
    glGetProgramInfoLog(program.name_, static_cast<GLsizei>(log.size()), &length, log.data());
    return failure("The shaders of \"" + name +
                   "\" do not fit together: " + std::string(log.data(), static_cast<std::size_t>(length)));
  }
  if (const auto fault = mismatch(name, active_uniforms(program.name_), uniforms)) return failure(*fault);
  for (const std::string& uniform : uniforms) {
    program.locations_[uniform] = glGetUniformLocation(program.name_, uniform.c_str());
  }
  return program;
}

Program::Program(Program&& other) noexcept
    : name_(std::exchange(other.name_, 0)), locations_(std::move(other.locations_)) {}

Program& Program::operator=(Program&& other) noexcept {
  std::swap(name_, other.name_);
  std::swap(locations_, other.locations_);
  return *this;
}

Program::~Program() {
  if (name_ != 0) glDeleteProgram(name_);
}

void Program::use() const { glUseProgram(name_); }

GLint Program::location(std::string_view uniform) const {
  const auto found = locations_.find(uniform);
  ensure(found != locations_.end(), "a uniform was asked for that its program does not list");
  return found->second;
}

}  // namespace fw::render::gl
