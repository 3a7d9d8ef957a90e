#include "practice/type_name.hpp"

namespace fw::practice {

const char* text(Heading heading) {
  static constexpr const char* titles[headings] = {
      "Name and count", "Area",          "Volume",           "A missing length",
      "Nets",           "Word problems", "Copies and units", "Decide and check",
  };
  return titles[static_cast<std::size_t>(heading)];
}

}  // namespace fw::practice
