#pragma once

#include <fstream>
#include <map>
#include <sstream>
#include <string>
#include <string_view>
#include <utility>

#include "base/ensure.hpp"
#include "render/gl/draw_scene.hpp"
#include "render/gl/headless.hpp"
#include "render/gl/offscreen.hpp"

namespace fw::test {

/// The text of a file of shaders/; lives as long as the process.
inline std::string_view shader_text(std::string_view name) {
  static std::map<std::string, std::string, std::less<>> read;
  const auto known = read.find(name);
  if (known != read.end()) return known->second;
  std::ifstream file(FOLDWRIGHT_SOURCE_DIR "/shaders/" + std::string(name));
  std::ostringstream text;
  text << file.rdbuf();
  ensure(!text.str().empty(), "a shader file is missing");
  return read.emplace(name, text.str()).first->second;
}

/// A context, a painter and a picture to paint; draws without a window.
class Studio {
 public:
  Studio(int width, int height, render::gl::Dialect dialect = render::gl::Dialect::Core33)
      : context_(good(render::gl::HeadlessContext::make(dialect))),
        painter_(good(render::gl::BenchPainter::make(dialect, shader_text))),
        target_(good(render::gl::Offscreen::make(width, height))) {}

  [[nodiscard]] render::Viewport viewport() const {
    return {static_cast<double>(target_.width()), static_cast<double>(target_.height())};
  }
  [[nodiscard]] render::gl::Rectangle whole() const { return {0, 0, target_.width(), target_.height()}; }
  [[nodiscard]] const render::gl::BenchPainter& painter() const { return painter_; }
  [[nodiscard]] const render::gl::Offscreen& target() const { return target_; }

  [[nodiscard]] render::Picture drawn(const render::Scene& scene, const Color& ground) const {
    target_.begin(ground);
    painter_.draw(scene, whole());
    return target_.read_back();
  }
  [[nodiscard]] render::Picture face_ids(const render::Scene& scene) const {
    target_.begin({0, 0, 0, 0});
    painter_.draw_face_ids(scene, whole());
    return target_.read_back();
  }

 private:
  template <class T>
  static T good(Result<T, std::string> result) {
    ensure(result.has_value(), result.has_value() ? std::string() : result.error());
    return std::move(result).value();
  }

  render::gl::HeadlessContext context_;
  render::gl::BenchPainter painter_;
  render::gl::Offscreen target_;
};

}  // namespace fw::test
