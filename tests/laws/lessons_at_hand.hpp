#pragma once

#include <gtest/gtest.h>

#include <fstream>
#include <sstream>
#include <string>
#include <vector>

#include "tasks/catalog.hpp"
#include "tasks/generate/generate.hpp"

namespace fw::laws {

/// The demo lessons, and one of `made_up` new problems of each level.
inline std::vector<lessons::Lesson> lessons_at_hand(std::size_t made_up) {
  std::vector<lessons::Lesson> all;
  for (const char* name : {"lantern_fair", "candle_boxes", "lantern_market"}) {
    std::ifstream file(std::string(FOLDWRIGHT_SOURCE_DIR) + "/demo_scenes/" + name + ".json");
    std::stringstream text;
    text << file.rdbuf();
    const auto lesson = tasks::read_lesson(text.str());
    EXPECT_TRUE(lesson.has_value()) << name;
    all.push_back(*lesson);
  }
  for (const int level : {1, 2, 3}) {
    tasks::PracticeRequest request;
    request.level = level;
    request.count = made_up;
    const auto made = tasks::generated(request);
    EXPECT_TRUE(made.has_value());
    all.insert(all.end(), made->begin(), made->end());
  }
  return all;
}

}  // namespace fw::laws
