#include "lessons/supply.hpp"

namespace fw::lessons {

const char* word_of(Purpose purpose) {
  return purpose == Purpose::Cover ? "cover" : purpose == Purpose::Fill ? "fill" : "edge";
}

int dimension_of(Purpose purpose) { return purpose == Purpose::Cover ? 2 : purpose == Purpose::Fill ? 3 : 1; }

}  // namespace fw::lessons
