#include "paper/sheets/sheet_work.hpp"

#include <memory>
#include <utility>

#include "base/ensure.hpp"
#include "paper/sheets/sheets.hpp"

namespace fw::paper {

void SheetWork::add_part(std::size_t count, std::function<void(SheetWork&)> plan) {
  const auto part = std::make_shared<SheetWork>();
  for (std::size_t i = 0; i < count; ++i) {
    add([part, plan, count, i](SheetWork& work) {
      if (i == 0) {
        plan(*part);
        ensure(part->size() == count, "a part of a sheet has other steps than were told");
      }
      part->step();
      if (part->is_done()) {
        work.printed.add(std::move(part->printed));
      }
    });
  }
}

void SheetWork::step() {
  ensure(!is_done(), "a sheet that is made has no step left");
  const Step step = std::exchange(steps_[done_], {});
  ++done_;
  step(*this);
}

Printed made(SheetPlan plan, const Fonts& fonts, const lessons::Lesson& lesson, const SheetOptions& options) {
  SheetWork work;
  plan(work, fonts, lesson, options);
  while (!work.is_done()) {
    work.step();
  }
  return std::move(work.printed);
}

void add_packet(SheetWork& work, std::shared_ptr<Packet> packet, std::size_t problems,
                std::function<void(Packet&, std::size_t)> add_problem) {
  for (std::size_t i = 0; i < problems; ++i) {
    work.add([packet, add_problem, i](SheetWork&) { add_problem(*packet, i); });
  }
  work.add([packet](SheetWork& done) { done.printed.add(packet->printed()); });
}

}  // namespace fw::paper
