#pragma once

#include <memory>
#include <string>

#include "base/result.hpp"
#include "render/gl/loader.hpp"

namespace fw::render::gl {

/// An OpenGL context without window or display, current from make() until it goes.
class HeadlessContext {
 public:
  /// Errors: a sentence that says what is missing: EGL, a driver, or the asked-for version.
  [[nodiscard]] static Result<HeadlessContext, std::string> make(Dialect dialect = Dialect::Core33);
  HeadlessContext(HeadlessContext&&) noexcept;
  HeadlessContext& operator=(HeadlessContext&&) noexcept;
  ~HeadlessContext();

  [[nodiscard]] Dialect dialect() const;

 private:
  struct Handles;
  explicit HeadlessContext(std::unique_ptr<Handles> handles);
  std::unique_ptr<Handles> handles_;
};

}  // namespace fw::render::gl
