#include "base/color.hpp"

#include <algorithm>
#include <cmath>

namespace fw {
namespace {

double linear(float channel) {
  const double c = static_cast<double>(channel);
  return c <= 0.04045 ? c / 12.92 : std::pow((c + 0.055) / 1.055, 2.4);
}

double luminance(const Color& c) { return 0.2126 * linear(c.r) + 0.7152 * linear(c.g) + 0.0722 * linear(c.b); }

}  // namespace

double contrast(const Color& a, const Color& b) {
  const double la = luminance(a);
  const double lb = luminance(b);
  return (std::max(la, lb) + 0.05) / (std::min(la, lb) + 0.05);
}

Color over(const Color& top, const Color& below) {
  const auto mix = [&](float t, float u) { return top.a * t + (1.0F - top.a) * u; };
  return {mix(top.r, below.r), mix(top.g, below.g), mix(top.b, below.b), 1.0F};
}

}  // namespace fw
