#pragma once

#include <functional>
#include <map>
#include <string>
#include <string_view>
#include <vector>

#include "base/result.hpp"
#include "render/gl/loader.hpp"

namespace fw::render::gl {

/// What stands before every shader's text, so that one text serves both dialects.
[[nodiscard]] std::string_view prelude(Dialect dialect);

/// A linked program whose uniforms are known and all there.
class Program {
 public:
  /// Errors: a sentence with the program's name: what the compiler says about which stage, what the linker says,
  ///         or a uniform that the shaders have and `uniforms` lacks, or the other way round.
  [[nodiscard]] static Result<Program, std::string> make(const std::string& name, Dialect dialect,
                                                         std::string_view vertex_text, std::string_view fragment_text,
                                                         const std::vector<std::string>& uniforms);
  Program(const Program&) = delete;
  Program& operator=(const Program&) = delete;
  Program(Program&& other) noexcept;
  Program& operator=(Program&& other) noexcept;
  ~Program();

  void use() const;
  /// After the context was lost: there is nothing left to remove.
  void forget() { name_ = 0; }
  /// Requires: `uniform` was in make()'s list.
  [[nodiscard]] GLint location(std::string_view uniform) const;

 private:
  explicit Program(GLuint name) : name_(name) {}
  GLuint name_ = 0;
  std::map<std::string, GLint, std::less<>> locations_;
};

}  // namespace fw::render::gl
