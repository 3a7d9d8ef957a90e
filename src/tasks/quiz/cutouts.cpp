#include "tasks/quiz/cutouts.hpp"

#include <algorithm>

#include "practice/choices.hpp"
#include "solids/body/body_nets.hpp"
#include "tasks/nets/net_task.hpp"

namespace fw::tasks {
namespace {

using practice::letter;

constexpr double rad_per_degree = 0.017453292519943295;

/// The choice whose cut-out is spoken of. Requires: the answer is out.
std::size_t spoken_choice(const CutoutProgress& progress, const std::vector<NetChoice>& choices) {
  if (progress.spoken && *progress.spoken < choices.size()) {
    return *progress.spoken;
  }
  const auto right = std::find_if(choices.begin(), choices.end(), [](const NetChoice& one) { return one.is_right; });
  return static_cast<std::size_t>(right - choices.begin());
}

LyingCutout lying(const Problem& problem, const nets::Cutout& cutout, const lessons::NetSheet& sheet,
                  std::string letter) {
  return {cutout, solids::fold_test(problem.solid.body(), cutout), sheet.turn_degrees * rad_per_degree, sheet.flipped,
          std::move(letter)};
}

std::vector<CutoutPlace> places_of(const NetTask& task, const std::vector<NetChoice>& choices,
                                   const std::vector<std::size_t>& tried) {
  std::vector<CutoutPlace> places;
  const std::vector<nets::Joint> joints = task.places();
  for (std::size_t i = 0; i < joints.size(); ++i) {
    const nets::Joint& joint = joints[i];
    const bool was_tried = std::find(tried.begin(), tried.end(), i) != tried.end();
    places.push_back(
        {{joint.on, joint.edge}, letter(i), was_tried ? std::optional(choices[i].is_right) : std::nullopt});
  }
  return places;
}

/// Before an answer is out.
void lay_question(CutoutBench& bench, const Problem& problem, const std::vector<NetChoice>& choices,
                  const std::vector<std::size_t>& tried) {
  const NetTask& task = *net_asked(problem);
  const std::vector<lessons::NetSheet>& sheets = task.sheets();
  for (std::size_t i = 0; i < sheets.size(); ++i) {
    bench.lying.push_back(lying(problem, sheets[i].cutout, sheets[i], sheets.size() > 1 ? letter(i) : ""));
  }
  if (task.missing() != nullptr) {
    bench.places = places_of(task, choices, tried);
    bench.missing = lessons::shape_of(*task.missing(), problem.solid);
  }
}

/// Once it is: one cut-out, with what is wrong with it.
void lay_answer(CutoutBench& bench, const Problem& problem, const std::vector<NetChoice>& choices, std::size_t choice) {
  const NetTask& task = *net_asked(problem);
  bench.lying.push_back(lying(problem, task.cutout_for(problem, choice), task.sheet_for(choice),
                              task.has_letters() ? letter(choice) : ""));
  const NetChoice& wrong = choices[task.finding_of(choice)];
  bench.bad = wrong.pieces;
  bench.differ = wrong.edges;
  bench.has_numbers = true;
}

}  // namespace

CutoutBench cutout_bench(const Problem& problem, const CutoutProgress& progress) {
  const std::vector<NetChoice> choices = net_choices(problem);
  CutoutBench bench{{}, {}, {}, {}, std::nullopt, problem.solid};
  if (progress.is_out) {
    lay_answer(bench, problem, choices, spoken_choice(progress, choices));
  } else {
    lay_question(bench, problem, choices, progress.tried);
  }
  bench.has_numbers = bench.has_numbers || progress.is_replied;
  bench.shows_solid = net_asked(problem)->shows_solid();
  return bench;
}

}  // namespace fw::tasks
