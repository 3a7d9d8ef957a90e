#include "app/cutouts.hpp"

#include <algorithm>

#include "practice/choices.hpp"
#include "practice/net_tasks.hpp"
#include "solids/body/body_nets.hpp"

namespace fw::app {
namespace {

using lessons::NetAsk;
using lessons::NetTask;
using lessons::Problem;

constexpr double rad_per_degree = 0.017453292519943295;

/// The choice whose cut-out is spoken of; none: none is yet.
std::optional<std::size_t> spoken_choice(const State& state, const std::vector<practice::NetChoice>& choices) {
  if (!state.in_item()) {
    const Work& work = state.desk().work;
    return work.reached > 0 ? std::optional(std::min(work.present, choices.size() - 1)) : std::nullopt;
  }
  const ItemWork& work = state.quiz.work();
  if (!work.done) {
    return std::nullopt;
  }
  if (work.spoken && *work.spoken < choices.size()) {
    return work.spoken;
  }
  const auto right =
      std::find_if(choices.begin(), choices.end(), [](const practice::NetChoice& one) { return one.is_right; });
  return static_cast<std::size_t>(right - choices.begin());
}

LyingCutout lying(const Problem& problem, const nets::Cutout& cutout, const lessons::NetSheet& sheet,
                  std::string letter) {
  return {cutout, solids::fold_test(problem.solid.body(), cutout), sheet.turn_degrees * rad_per_degree, sheet.flipped,
          std::move(letter)};
}

std::vector<CutoutPlace> places_of(const State& state, const std::vector<practice::NetChoice>& choices) {
  const NetTask& task = *state.current().net;
  std::vector<CutoutPlace> places;
  for (std::size_t i = 0; i < task.places.size(); ++i) {
    const nets::Joint& joint = task.places[i];
    places.push_back({{joint.on, joint.edge}, practice::letter(i), std::nullopt});
    if (state.in_item()) {
      const std::vector<std::size_t>& tried = state.quiz.work().tried;
      const bool was_tried = std::find(tried.begin(), tried.end(), i) != tried.end();
      places.back().is_right = was_tried ? std::optional(choices[i].is_right) : std::nullopt;
    }
  }
  return places;
}

/// Before an answer is out.
void lay_question(CutoutBench& bench, const State& state, const std::vector<practice::NetChoice>& choices) {
  const Problem& problem = state.current();
  const NetTask& task = *problem.net;
  for (std::size_t i = 0; i < task.sheets.size(); ++i) {
    const std::string letter = task.sheets.size() > 1 ? practice::letter(i) : "";
    bench.lying.push_back(lying(problem, task.sheets[i].cutout, task.sheets[i], letter));
  }
  if (task.ask == NetAsk::Complete) {
    bench.places = places_of(state, choices);
    bench.missing = lessons::shape_of(*task.missing, problem.solid);
  }
}

/// Once it is: one cut-out, with what is wrong with it.
void lay_answer(CutoutBench& bench, const Problem& problem, const std::vector<practice::NetChoice>& choices,
                std::size_t choice) {
  const NetTask& task = *problem.net;
  const bool has_letter = task.ask == NetAsk::Choose || task.ask == NetAsk::Complete;
  const lessons::NetSheet& sheet = task.sheets[task.ask == NetAsk::Choose ? choice : 0];
  bench.lying.push_back(
      lying(problem, practice::cutout_for(problem, choice), sheet, has_letter ? practice::letter(choice) : ""));
  // Of a cut-out that is judged, what is wrong stands with the wrong answer "yes".
  const practice::NetChoice& wrong = task.ask == NetAsk::IsIt ? choices.front() : choices[choice];
  bench.bad = wrong.pieces;
  bench.differ = wrong.edges;
  bench.has_numbers = true;
}

}  // namespace

bool shows_cutouts(const State& state) {
  if (state.in_item()) {
    return state.current().net.has_value();
  }
  return state.mode == Mode::Work && state.current().net && state.desk().work.asked.empty() &&
         state.desk().solid == state.current().solid;
}

bool lies_flat(const State& state) {
  if (state.in_item()) {
    return begins_flat(state) && state.is_asking();
  }
  const std::optional<lessons::NetTask>& net = state.current().net;
  return shows_cutouts(state) || (net && net->ask == NetAsk::Name);
}

CutoutBench cutouts_on_bench(const State& state) {
  const Problem& problem = state.current();
  const std::vector<practice::NetChoice> choices = practice::net_choices(problem);
  CutoutBench bench{{}, {}, {}, {}, std::nullopt, problem.solid};
  const std::optional<std::size_t> choice = spoken_choice(state, choices);
  if (choice) {
    lay_answer(bench, problem, choices, *choice);
  } else {
    lay_question(bench, state, choices);
  }
  if (state.in_item()) {  // a reply can speak of pieces by their numbers
    const ItemWork& work = state.quiz.work();
    bench.has_numbers = bench.has_numbers || !work.replies.empty();
  }
  bench.shows_solid = problem.net->ask != NetAsk::Name;
  return bench;
}

}  // namespace fw::app
