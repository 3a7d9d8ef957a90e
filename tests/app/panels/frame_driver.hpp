#pragma once

#include "app/state/model_support.hpp"
#include "panels/frame.hpp"
#include "state/derived.hpp"
#include "support/ui_driver.hpp"

namespace fw::panels::test {

using namespace bench;
using namespace state;
using namespace state::test;
using namespace ui;

/// The whole program without a window: a model, its frames, and a user at it.
class ProgramDriver {
 public:
  ProgramDriver(Model start, double width, double height)
      : model_(std::move(start)), user_(width, height, [this](Ui& ui, const Fonts& fonts) { draw(ui, fonts); }) {}

  [[nodiscard]] const Model& model() const { return model_; }
  [[nodiscard]] const State& state() const { return model_.state; }
  [[nodiscard]] const FrameResult& frame() const { return frame_; }
  [[nodiscard]] fw::test::UiDriver& user() { return user_; }
  void give(const Command& command) {
    model_ = apply(std::move(model_), command).model;
    user_.frames(2);
  }
  /// Puts another model before the user, in the same window.
  void show(Model model) {
    model_ = std::move(model);
    user_.frames(3);
  }
  /// Where the number of a face stands.
  [[nodiscard]] figures::Vec2 place_of(FaceId face) const {
    for (const FaceNumber& number : frame_.picture.numbers) {
      if (number.face == face) {
        return number.center;
      }
    }
    throw std::runtime_error("face " + std::to_string(face.index() + 1) + " is not to be seen");
  }

 private:
  void draw(Ui& ui, const Fonts& fonts) {
    const ImVec2 window = ImGui::GetIO().DisplaySize;
    frame_ = draw_frame(ui, fonts, model_, memo_.of(model_.state),
                        theme::reading_height(static_cast<double>(window.x), static_cast<double>(window.y)));
    for (const Command& command : frame_.commands) {
      model_ = apply(std::move(model_), command).model;
    }
  }

  Model model_;
  DerivedMemo memo_;
  FrameResult frame_;
  fw::test::UiDriver user_;
};

}  // namespace fw::panels::test
