#pragma once

#include <cstddef>
#include <functional>
#include <memory>
#include <vector>

#include "lessons/lesson.hpp"
#include "paper/packet.hpp"

namespace fw::paper {

struct SheetOptions;
class SheetWork;
/// Writes down the steps that make a sheet. Fonts and lesson must outlive the work.
using SheetPlan = void (*)(SheetWork& work, const Fonts& fonts, const lessons::Lesson& lesson,
                           const SheetOptions& options);

/// A sheet that is being made, about a problem a step: whoever waits for it can see how far it is, and stop.
class SheetWork {
 public:
  using Step = std::function<void(SheetWork&)>;

  void add(Step step) { steps_.push_back(std::move(step)); }
  /// Another sheet within this one, in `count` steps. It is planned when its first step is done.
  void add_part(std::size_t count, std::function<void(SheetWork&)> plan);

  [[nodiscard]] std::size_t size() const { return steps_.size(); }
  [[nodiscard]] std::size_t done() const { return done_; }
  [[nodiscard]] bool is_done() const { return done_ == steps_.size(); }
  /// Does the next step. Requires: there is one.
  void step();

  Printed printed = {};  ///< so far

 private:
  std::vector<Step> steps_;
  std::size_t done_ = 0;
};

/// All steps at once.
[[nodiscard]] Printed made(SheetPlan plan, const Fonts& fonts, const lessons::Lesson& lesson,
                           const SheetOptions& options);

/// A step for each problem of the lesson, and one that lays the packet out.
void add_packet(SheetWork& work, std::shared_ptr<Packet> packet, std::size_t problems,
                std::function<void(Packet&, std::size_t)> add_problem);
/// How many steps that are.
[[nodiscard]] constexpr std::size_t packet_steps(std::size_t problems) { return problems + 1; }

}  // namespace fw::paper
