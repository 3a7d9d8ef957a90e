#include "state/paper_type.hpp"

#include "platform/assets.hpp"

namespace fw::state {

const paper::Fonts& paper_type() {
  static const paper::Fonts fonts{paper::Font::read(platform::asset("Andika-Regular.ttf")).value(),
                                  paper::Font::read(platform::asset("Andika-Bold.ttf")).value()};
  return fonts;
}

}  // namespace fw::state
