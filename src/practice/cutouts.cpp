#include "practice/cutouts.hpp"

#include <algorithm>

#include "practice/choices.hpp"
#include "practice/net_tasks.hpp"
#include "solids/body/body_nets.hpp"

namespace fw::practice {
namespace {

using lessons::NetAsk;
using lessons::NetTask;
using lessons::Problem;

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
  for (std::size_t i = 0; i < task.places.size(); ++i) {
    const nets::Joint& joint = task.places[i];
    const bool was_tried = std::find(tried.begin(), tried.end(), i) != tried.end();
    places.push_back(
        {{joint.on, joint.edge}, letter(i), was_tried ? std::optional(choices[i].is_right) : std::nullopt});
  }
  return places;
}

/// Before an answer is out.
void lay_question(CutoutBench& bench, const Problem& problem, const std::vector<NetChoice>& choices,
                  const std::vector<std::size_t>& tried) {
  const NetTask& task = *problem.net;
  for (std::size_t i = 0; i < task.sheets.size(); ++i) {
    bench.lying.push_back(
        lying(problem, task.sheets[i].cutout, task.sheets[i], task.sheets.size() > 1 ? letter(i) : ""));
  }
  if (task.ask == NetAsk::Complete) {
    bench.places = places_of(task, choices, tried);
    bench.missing = lessons::shape_of(*task.missing, problem.solid);
  }
}

/// Once it is: one cut-out, with what is wrong with it.
void lay_answer(CutoutBench& bench, const Problem& problem, const std::vector<NetChoice>& choices, std::size_t choice) {
  const NetTask& task = *problem.net;
  const bool has_letter = task.ask == NetAsk::Choose || task.ask == NetAsk::Complete;
  const lessons::NetSheet& sheet = task.sheets[task.ask == NetAsk::Choose ? choice : 0];
  bench.lying.push_back(lying(problem, cutout_for(problem, choice), sheet, has_letter ? letter(choice) : ""));
  // Of a cut-out that is judged, what is wrong stands with the wrong answer "yes".
  const NetChoice& wrong = task.ask == NetAsk::IsIt ? choices.front() : choices[choice];
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
  bench.shows_solid = problem.net->ask != NetAsk::Name;
  return bench;
}

}  // namespace fw::practice
